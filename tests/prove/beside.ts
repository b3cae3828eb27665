/** Work shared out over the processors: each thread takes the next piece when it has done its last. */
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';

/** What the module at `file` answers to each piece (`answerPieces`), in the order of the pieces. */
export async function workBeside<Piece, Answer>(file: string, pieces: readonly Piece[]): Promise<Answer[]> {
  const answers: Answer[] = [];
  let taken = 0;
  const workThrough = (resolve: () => void, reject: (reason: Error) => void) => {
    const worker = new Worker(new URL(file), { workerData: { answers: file } });
    let at = -1;
    const next = () => {
      at = taken++;
      if (at < pieces.length) return worker.postMessage(pieces[at]);
      resolve();
      return worker.terminate();
    };
    worker.on('message', (answer: Answer) => {
      answers[at] = answer;
      return next();
    });
    worker.on('error', reject);
    next();
  };
  const threads = Math.min(availableParallelism(), pieces.length);
  await Promise.all(Array.from({ length: threads }, () => new Promise<void>(workThrough)));
  return answers;
}

/** To be called as the module at `file` loads: does nothing but in a thread that `workBeside` has begun for it. */
export function answerPieces<Piece, Answer>(file: string, answer: (piece: Piece) => Answer | Promise<Answer>): void {
  if (isMainThread || workerData?.answers !== file) return;
  parentPort!.on('message', async (piece: Piece) => parentPort!.postMessage(await answer(piece)));
}

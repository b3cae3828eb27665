/** Reads files for the desk: small ones where it stands, large ones in a thread that ends when nothing more comes. */
import { Worker } from 'node:worker_threads';
import { DeskError, type DeskRefusal } from '../desk/desk-error.ts';
import type { WholeHousehold } from '../desk/household-file.ts';
import { parseWholeHousehold } from '../desk/parse-household.ts';
import type { DeskPorts, OnItsWayIn, Work } from '../desk/ports.ts';
import type { IntakeChoices, IntakeContext, IntakeResult } from '../intake/intake.ts';
import { isPaper } from '../intake/paper/gather-sheets.ts';
import { readFile } from '../intake/read-file.ts';
import type { Page } from '../intake/terms/paper-reading.ts';
import { currency, language, type Speech, say } from '../words/say.ts';

export interface EvidenceToRead {
  readonly kind: 'evidence';
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly choices: IntakeChoices;
  readonly context: Omit<IntakeContext, 'onProgress' | 'recognise' | 'unpackHeic'>;
}
export interface HouseholdToRead {
  readonly kind: 'household';
  readonly fileName: string;
  readonly bytes: Uint8Array;
  readonly own: OnItsWayIn;
  /** What is refused is said in the thread. */
  readonly speech: Speech;
}
export type ToReader = EvidenceToRead | HouseholdToRead;
export type FromReader =
  | { readonly share: number }
  | { readonly result: IntakeResult | WholeHousehold }
  | { readonly refusal: DeskRefusal }
  | { readonly failure: string };

export type FileReader = Pick<DeskPorts, 'readEvidence' | 'readHousehold'>;

/** Reading this much takes some 50 ms, as long as starting a thread. */
const LARGE_BYTES = 512 * 1024;
/** A preview is mostly followed by its import, which finds the thread warm. */
const IDLE_MS = 20_000;
/** Beyond what the largest file of evidence needs; a file made to hurt ends its thread and nothing else. */
const MOST_MEMORY_MB = 1536;
const YOUNG_MEMORY_MB = 48;
/** A page of a bill takes some ten milliseconds, a look at its picture some seconds, with signs of life between; ten times as long where a computer is busy. */
const LONGEST_SILENCE_MS = 90_000;
const LONGEST_PAPER_MS = 300_000;

const tooSlow = (fileName: string) =>
  new DeskError({
    code: 'paper-too-slow',
    message: say('Reading {fileName} took far longer than a bill does, so it was stopped. Nothing is saved.', {
      fileName,
    }),
    where: fileName,
    remedy: say('Read it again when the computer has less to do. If it is stopped again, type the figures.'),
  });

export function startReader(readerFile: string): FileReader {
  let waiting: Worker | null = null;
  let idle: NodeJS.Timeout | undefined;
  /** What was recognised in pictures that are still held, so that a choice about one does not wait for it again. */
  const seenPages = new WeakMap<Uint8Array, readonly Page[]>();

  function takeWorker(): Worker {
    clearTimeout(idle);
    const warm = waiting;
    waiting = null;
    if (warm !== null) return warm;
    const resourceLimits = { maxOldGenerationSizeMb: MOST_MEMORY_MB, maxYoungGenerationSizeMb: YOUNG_MEMORY_MB };
    // A thread that was given up may still fail on its way out; with nobody listening, that would end the desk.
    return new Worker(readerFile, { resourceLimits }).on('error', () => undefined);
  }

  /** One waits, warm, for the import that mostly follows; it keeps nobody from ending. */
  function layAside(worker: Worker): void {
    if (waiting !== null) return void worker.terminate();
    waiting = worker;
    worker.unref();
    idle = setTimeout(() => {
      void waiting?.terminate();
      waiting = null;
    }, IDLE_MS).unref();
  }

  function readApart(file: EvidenceToRead, work: Work): Promise<IntakeResult>;
  function readApart(file: HouseholdToRead, work: Work): Promise<WholeHousehold>;
  function readApart(file: ToReader, { signal, onProgress }: Work) {
    const worker = takeWorker();
    return new Promise<IntakeResult | WholeHousehold>((resolve, reject) => {
      const hear = (message: FromReader) => {
        if ('share' in message) {
          silence?.refresh();
          return tell(message.share);
        }
        // A household is brought in once, and takes the most memory.
        settle(() => (file.kind === 'household' ? void worker.terminate() : layAside(worker)));
        if ('result' in message) resolve(message.result);
        else reject('refusal' in message ? new DeskError(message.refusal) : new Error(message.failure));
      };
      /** Whoever throws wants no more: the thread is in the middle of the file and only ends as a whole. */
      const tell = (share: number) => {
        try {
          onProgress?.(share);
        } catch (error) {
          giveUp(error as Error);
        }
      };
      const stop = () => tell(0);
      const giveUp = (error: Error) => {
        settle(() => void worker.terminate());
        reject(error);
      };
      const leave = () => giveUp(new Error('the thread that reads files ended'));
      const [silence, limit] = isPaper(file.bytes)
        ? [LONGEST_SILENCE_MS, LONGEST_PAPER_MS].map((ms) => setTimeout(() => giveUp(tooSlow(file.fileName)), ms))
        : [];
      function settle(then: () => void): void {
        worker.off('message', hear).off('error', giveUp).off('exit', leave);
        signal?.removeEventListener('abort', stop);
        clearTimeout(silence);
        clearTimeout(limit);
        then();
      }
      worker.on('message', hear).on('error', giveUp).on('exit', leave);
      signal?.addEventListener('abort', stop);
      worker.ref();
      worker.postMessage(file);
    });
  }

  return {
    async readEvidence(fileName, bytes, choices, { onProgress, ...given }, signal) {
      if (bytes.byteLength < LARGE_BYTES && !isPaper(bytes))
        return readFile(fileName, bytes, choices, { onProgress, ...given });
      const seen = seenPages.get(bytes);
      const context = { ...given, ...(seen ? { seen } : {}) };
      const result = await readApart({ kind: 'evidence', fileName, bytes, choices, context }, { signal, onProgress });
      const { paper } = result.preview;
      if (paper && !paper.isGlance) seenPages.set(bytes, paper.pages);
      return result;
    },
    async readHousehold(fileName, bytes, own, work) {
      if (bytes.byteLength < LARGE_BYTES) return parseWholeHousehold(fileName, bytes, own);
      const speech = { language: language(), currency: currency() };
      return readApart({ kind: 'household', fileName, bytes, own, speech }, work);
    },
  };
}

/** Entry of the thread that reads large files, so that the desk answers meanwhile and their memory goes with the thread. */
import { parentPort } from 'node:worker_threads';
import type { IntakeChoices, IntakeContext, IntervalDays } from '../intake/intake.ts';
import { readEvidence } from '../intake/read-evidence.ts';
import { makeHeicUnpacker } from './heic.ts';
import { makeRecogniser } from './recogniser.ts';
import type { FromReader, ToReader } from './start-reader.ts';

const port = parentPort!;
/** Share of the work that is worth a word. */
const LEAST_STEP = 0.005;
const recognise = makeRecogniser();
const unpackHeic = makeHeicUnpacker();

port.on('message', async ({ fileName, bytes, choices, context }: ToReader) => {
  let told = -1;
  const send = (answer: FromReader, buffers: ArrayBuffer[] = []) => port.postMessage(answer, buffers);
  try {
    const given: IntakeContext = {
      ...context,
      recognise,
      unpackHeic,
      onProgress(share) {
        if (share < told + LEAST_STEP) return;
        told = share;
        send({ share });
      },
    };
    const result = await readEvidence(fileName, bytes, choices as IntakeChoices, given);
    send({ result }, buffersOf(result.intervals));
  } catch (error) {
    send({ failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});

/** Days are handed over as they are where each has its own memory; views of one are copied. */
function buffersOf(intervals: readonly IntervalDays[]): ArrayBuffer[] {
  const buffers = intervals.flatMap(({ days }) => days.map(({ values }) => values.buffer as ArrayBuffer));
  return [...new Set(buffers)];
}

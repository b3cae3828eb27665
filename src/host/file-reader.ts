/** Entry of the thread that reads large files, so that the desk answers meanwhile and their memory goes with the thread. */
import { parentPort } from 'node:worker_threads';
import { DeskError } from '../desk/desk-error.ts';
import type { IntakeContext, IntervalDays } from '../intake/intake.ts';
import { readEvidence } from '../intake/read-evidence.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { speak } from '../words/say.ts';
import { makeHeicUnpacker } from './heic.ts';
import { makeRecogniser } from './recogniser.ts';
import type { EvidenceToRead, FromReader, HouseholdToRead, ToReader } from './start-reader.ts';

const port = parentPort!;
/** Share of the work that is worth a word. */
const LEAST_STEP = 0.005;
const recognise = makeRecogniser();
const unpackHeic = makeHeicUnpacker();
const send = (answer: FromReader, buffers: ArrayBuffer[] = []) => port.postMessage(answer, buffers);

port.on('message', async (file: ToReader) => {
  try {
    await (file.kind === 'evidence' ? answerEvidence(file) : answerHousehold(file));
  } catch (error) {
    send({ failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});

async function answerEvidence({ fileName, bytes, choices, context }: EvidenceToRead): Promise<void> {
  let told = -1;
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
  const result = await readEvidence(fileName, bytes, choices, given);
  send({ result }, buffersOf(result.intervals));
}

async function answerHousehold({ fileName, bytes, own, speech }: HouseholdToRead): Promise<void> {
  // Readings of a meter come more often, and need nothing of this.
  const [{ parseWholeHousehold }, catalogue] = await Promise.all([
    import('../desk/parse-household.ts'),
    catalogueOf(speech.language),
  ]);
  speak(speech, catalogue);
  try {
    const result = parseWholeHousehold(fileName, bytes, own);
    send({ result }, buffersOf(result.evidence.flatMap(({ intervals }) => intervals)));
  } catch (error) {
    if (!(error instanceof DeskError)) throw error;
    send({ refusal: error.toRefusal() });
  }
}

/** The memory of the days, several of which share a piece, is handed over and not copied. */
function buffersOf(intervals: readonly IntervalDays[]): ArrayBuffer[] {
  const buffers = intervals.flatMap(({ days }) => days.map(({ values }) => values.buffer as ArrayBuffer));
  return [...new Set(buffers)];
}

/** Brings a damaged import back: readings from its own raw file, the raw file from its like. */

import type { IntakeContext } from '../intake/intake.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import type { Store } from '../store/store.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import type { OfferedFile } from './offered-files.ts';
import type { ReadEvidence } from './ports.ts';
import { readRemembered } from './remembered-layout.ts';

/** Reads the raw file as it is remembered; only what comes out to the last bit as it was kept is taken. Throws DeskError. */
export async function rebuildReadings(
  store: Store,
  readEvidence: ReadEvidence,
  evidence: Evidence,
  context: IntakeContext,
): Promise<void> {
  const bytes = store.readRawFile(evidence.id);
  if (!bytes) throw cannotRebuild(evidence.fileName);
  const { sheet } = evidence.part ?? {};
  const { result } = await readRemembered(
    store,
    readEvidence,
    { fileName: evidence.fileName, bytes },
    sheet === undefined ? {} : { sheet },
    { ...context, zone: evidence.zone ?? context.zone },
  );
  const wanted = evidence.series.filter(({ resolution }) => resolution === 'interval');
  const mended = wanted.map((series) => {
    // Earlier versions named records otherwise; the store takes none but the very readings.
    const like = result.preview.series.filter(
      ({ carrier, role }) => carrier === series.carrier && role === series.role,
    );
    return like.some(({ id }) => {
      const interval = result.intervals.find(({ seriesId }) => seriesId === id);
      return interval !== undefined && store.mendReadings({ ...interval, seriesId: series.id });
    });
  });
  if (mended.length === 0 || !mended.every((isMended) => isMended)) throw cannotRebuild(evidence.fileName);
}

const cannotRebuild = (fileName: string) =>
  new DeskError({
    code: 'not-rebuilt',
    message: say(
      'The readings of {fileName} do not come out of the saved file exactly as they were, so nothing was changed.',
      {
        fileName,
      },
    ),
    where: fileName,
    remedy: say('Restore the household from your last copy, or remove this import and import the file again.'),
  });

/** Throws DeskError when the file is not the one that was damaged. */
export function replaceRawFile(store: Store, { fileName, bytes }: OfferedFile, evidence: Evidence): void {
  if (store.mendRawFile(bytes)) return;
  throw new DeskError({
    code: 'other-file',
    message: say('{fileName} is not the file that was imported as {kept}: its bytes differ.', {
      fileName,
      kept: evidence.fileName,
    }),
    where: fileName,
    remedy: say('Choose the very file that was imported, unchanged.'),
  });
}

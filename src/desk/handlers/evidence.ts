import { readFile } from '../../intake/read-file.ts';
import { DeskError } from '../contract.ts';
import { dayOf } from '../days.ts';
import { findEvidence, findHousehold, findSeries } from '../find.ts';
import { hashOf } from '../hash.ts';
import type { DeskContext, Handlers, Work } from '../ports.ts';
import { pointsOfDays, pointsOfIntervals } from '../readings.ts';
import { intakeContext, takeIn } from '../take-in.ts';
import { thin } from '../thin.ts';
import { typeEvidence } from '../typed-evidence.ts';

type EvidenceHandlers = Pick<
  Handlers,
  | 'file.offer'
  | 'evidence.preview'
  | 'evidence.accept'
  | 'evidence.type'
  | 'evidence.undo'
  | 'evidence.restore'
  | 'evidence.readings'
>;

const MOST_POINTS = 2000;

export function evidenceHandlers({ ports, store, files }: DeskContext): EvidenceHandlers {
  const contextFor = (householdId: string, work: Work) =>
    intakeContext(findHousehold(store, householdId).household.zone, ports.today(), work.onProgress);

  return {
    'file.offer'({ fileName, bytes }) {
      const fileId = ports.newId();
      files.offer(fileId, { fileName, bytes });
      return { fileId, fileName, size: bytes.byteLength };
    },
    'evidence.preview'({ fileId, householdId, choices }, work) {
      const { fileName, bytes } = files.take(fileId);
      return readFile(fileName, bytes, choices, contextFor(householdId, work)).preview;
    },
    'evidence.accept'({ fileId, householdId, choices }, work) {
      const context = contextFor(householdId, work);
      const file = files.take(fileId);
      const earlier = store.findEvidenceByHash(householdId, hashOf(file.bytes));
      if (earlier) return { evidence: null, duplicateOf: earlier.id };
      const { evidence, intervals } = takeIn({
        file,
        choices,
        context,
        householdId,
        importedOn: ports.now(),
        newId: ports.newId,
      });
      work.onProgress?.(0.95);
      store.addEvidence(evidence, file.bytes, intervals);
      files.drop(fileId);
      return { evidence, duplicateOf: null };
    },
    'evidence.type'(input) {
      findHousehold(store, input.householdId);
      const evidence = typeEvidence(input, ports.now(), ports.newId);
      if (store.findEvidenceByHash(input.householdId, evidence.sha256)) {
        throw new DeskError({
          code: 'typed-twice',
          message: 'Exactly these figures have been typed for this household before.',
          remedy: 'Change the name or a figure if they are meant to count twice.',
        });
      }
      store.addEvidence(evidence, null, []);
      return evidence;
    },
    'evidence.undo'({ evidenceId }) {
      findEvidence(store, evidenceId);
      store.undoEvidence(evidenceId);
      return {};
    },
    'evidence.restore'({ evidenceId }) {
      findEvidence(store, evidenceId);
      return store.restoreEvidence(evidenceId)!;
    },
    'evidence.readings'({ seriesId, from, to }) {
      dayOf(from, 'from');
      dayOf(to, 'to');
      const { series, evidence } = findSeries(store, seriesId);
      const { zone } = findHousehold(store, evidence.householdId).household;
      const intervals = store.readIntervals(seriesId, from, to);
      const points = intervals ? pointsOfIntervals(intervals, zone) : pointsOfDays(series, from, to);
      return [...thin(points, MOST_POINTS)];
    },
  };
}

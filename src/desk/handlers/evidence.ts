import type { IntakeChoices, IntakeContext } from '../../intake/intake.ts';
import { stageOf } from '../../intake/terms/progress.ts';
import type { Evidence, Remark } from '../../model/shapes/evidence.ts';
import { thin } from '../../model/thin/thin.ts';
import type { Store } from '../../store/store.ts';
import { StoreFault } from '../../store/store-fault.ts';
import { remarkSentence } from '../../words/remarks.ts';
import { say } from '../../words/say.ts';
import type { Input } from '../contract.ts';
import { orDamage } from '../damage-notes.ts';
import { DeskError } from '../desk-error.ts';
import { findEvidence, findHousehold, findSeries } from '../find.ts';
import { hashOf } from '../hash.ts';
import { asEvidence, besideStored, joinedWith, overlapsOf, partsOf, recordsOf } from '../join/beside-stored.ts';
import { withOverlaps } from '../join/find-overlaps.ts';
import { type Group, groupSeries } from '../join/group-series.ts';
import { joinPeriods } from '../join/join-periods.ts';
import { joinReadings } from '../join/join-readings.ts';
import { readFrom } from '../join/stored-series.ts';
import { remarkWithoutPeople } from '../mask-people.ts';
import { rebuildReadings, replaceRawFile } from '../mend-evidence.ts';
import type { OfferedFile } from '../offered-files.ts';
import type { DeskContext, Handlers, Work } from '../ports.ts';
import type { Point } from '../readings.ts';
import { pointsOfDays, pointsOfIntervals, pointsOfJoined } from '../readings.ts';
import { refuseQuestions } from '../refuse-remarks.ts';
import { readRemembered, rememberLayout } from '../remembered-layout.ts';
import { isSamePart } from '../same-part.ts';
import { contextOf, intakeContext, namedByDays, takeRead } from '../take-in.ts';
import { typeEvidence } from '../typed-evidence.ts';
import { forgetDamage } from '../upkeep.ts';

type EvidenceHandlers = Pick<
  Handlers,
  | 'file.offer'
  | 'evidence.preview'
  | 'evidence.accept'
  | 'evidence.type'
  | 'evidence.undo'
  | 'evidence.mend'
  | 'evidence.restore'
  | 'evidence.readings'
>;

/** Reading a file takes about this share of an import, storing it the rest. */
const READING_SHARE = 0.65;

/** Nothing is asked of a file that would count once anyway. */
const ofKept = (file: string, sheet: string | undefined): Remark => ({
  code: 'kept-already',
  weight: 'note',
  file,
  ...(sheet === undefined ? {} : { found: sheet }),
});

/** Records are named as they will be kept, without the whole numbers of their meters. */
const NAMES_RECORDS: ReadonlySet<string> = new Set(['several-series', 'registers-by-column']);

const MOST_POINTS = 2000;

/** Days cut by one clock do not stand beside days cut by another. */
function refuseOtherClock({ fileName, zone }: Evidence, zoneOfHome: string): void {
  if (zone === undefined || zone === zoneOfHome) return;
  throw new DeskError({
    code: 'other-clock',
    message: say('{fileName} was cut into days by the clock of {zone}; the home now goes by {zoneOfHome}.', {
      fileName,
      zone,
      zoneOfHome,
    }),
    remedy: say('Choose the file again, or set the clock of the home back in “Heat needed”.'),
  });
}

/** What it is beside the files that came since was asked of nobody. */
function refuseAsked({ fileName }: Evidence, [question]: readonly Remark[]): void {
  if (!question) return;
  throw new DeskError({
    code: question.code,
    message: remarkSentence(question),
    where: fileName,
    remedy: say('Choose the file again, and answer there.'),
  });
}

/** The readings of a record, with those of the imports that it goes on in, thinned to what a chart can show. */
function readingsOf(store: Store, { seriesId, from, to }: Input<'evidence.readings'>): Point[] {
  const { series, evidence } = findSeries(store, seriesId);
  const { zone } = findHousehold(store, evidence.householdId).household;
  const group = groupSeries(store.listEvidence(evidence.householdId)).find((members) =>
    members.some((member) => member.series.id === seriesId),
  ) ?? [{ series, fileName: evidence.fileName, rank: 0, isTyped: evidence.shape === 'typed' }];
  return [...thin(pointsOf(group), MOST_POINTS, ({ value }) => value)];

  function pointsOf(group: Group): Point[] {
    const read = readFrom(store, { from, to });
    if (group.length > 1 && series.resolution !== 'period') {
      const days = joinReadings(group, zone, read)?.days ?? [];
      return pointsOfJoined(days, zone).filter(({ at }) => at >= from && at < to);
    }
    const one = group.length > 1 ? joinPeriods(group) : group[0]!.series;
    const intervals = read(one.id);
    return intervals ? pointsOfIntervals(intervals, zone) : pointsOfDays(one, from, to);
  }
}

export function evidenceHandlers({ ports, store, files }: DeskContext): EvidenceHandlers {
  const readAnew = (file: OfferedFile, choices: IntakeChoices, context: IntakeContext, { signal }: Work) =>
    readRemembered(store, ports.readEvidence, file, choices, context, signal);

  const householdOf = (id: string) => findHousehold(store, id).household;

  const contextFor = (householdId: string, work: Work) =>
    contextOf(householdOf(householdId), ports.today(), work.onProgress);

  const keptPartOf = (evidence: Evidence): Evidence | undefined =>
    store.listEvidence(evidence.householdId).find((one) => one.id !== evidence.id && isSamePart(one, evidence));

  return {
    'file.offer'({ fileName, bytes }) {
      const fileId = ports.newId();
      files.offer(fileId, { fileName, bytes });
      return { fileId, fileName, size: bytes.byteLength };
    },
    async 'evidence.preview'({ fileId, householdId, choices }, work) {
      const file = files.take(fileId);
      const { result } = await readAnew(file, choices, contextFor(householdId, work), work);
      const { preview, intervals } = result;
      const { fileName, shape, series } = preview;
      const coming = { householdId, fileName, sha256: hashOf(file.bytes), shape, series };
      const beside = besideStored(store, coming, intervals);
      const household = householdOf(householdId);
      const joined = joinedWith(household, coming, beside);
      const own = preview.part ? { ...asEvidence(coming), part: preview.part } : asEvidence(coming);
      const of = keptPartOf(own)
        ? [ofKept(fileName, preview.part?.sheet)]
        : [...partsOf(beside), ...overlapsOf(beside), ...joined.asked];
      const remarks = preview.remarks.map((one) =>
        NAMES_RECORDS.has(one.code) ? remarkWithoutPeople(one, result.people) : one,
      );
      return {
        ...preview,
        records: recordsOf(household, beside.evidence, joined, ports.today()),
        remarks: [...remarks, ...of],
      };
    },
    async 'evidence.accept'({ fileId, householdId, choices }, work) {
      const household = householdOf(householdId);
      const context = contextOf(household, ports.today(), stageOf(work.onProgress, 0, READING_SHARE));
      const file = files.take(fileId);
      const { result, layout } = await readAnew(file, choices, context, work);
      // Others had their turn meanwhile: the household may be gone.
      householdOf(householdId);
      const own = { file, zone: household.zone, householdId, importedOn: ports.now(), newId: ports.newId };
      const { evidence, intervals, rawFile } = takeRead(result, own);
      const earlier = keptPartOf(evidence);
      if (earlier) {
        // The same file again takes the place of one that is damaged.
        if (rawFile) store.mendRawFile(rawFile);
        return { evidence: null, duplicateOf: earlier.id };
      }
      const beside = besideStored(store, evidence, intervals);
      const { preview } = result;
      refuseQuestions(
        [...preview.remarks, ...joinedWith(householdOf(householdId), evidence, beside).asked],
        preview,
        result.people,
      );
      const overlaps = overlapsOf(beside);
      const kept = preview.paper ? namedByDays(evidence) : evidence;
      store.addEvidence(kept, rawFile, intervals, stageOf(work.onProgress, READING_SHARE, 1));
      rememberLayout(store, layout);
      files.drop(fileId);
      return { evidence: withOverlaps(kept, overlaps), duplicateOf: null };
    },
    'evidence.type'(input) {
      householdOf(input.householdId);
      const evidence = typeEvidence(input, ports.now(), ports.newId);
      if (keptPartOf(evidence)) {
        throw new DeskError({
          code: 'typed-twice',
          message: say('Exactly these figures have been typed for this household before.'),
          remedy: say('Change the name or a figure if they are meant to count twice.'),
        });
      }
      const overlaps = overlapsOf(besideStored(store, evidence, []));
      store.addEvidence(evidence, null, []);
      return withOverlaps(evidence, overlaps);
    },
    ...keptHandlers({ ports, store, files }, keptPartOf),
  };
}

/** What is done with imports that are kept. */
function keptHandlers(
  { ports, store, files }: DeskContext,
  keptPartOf: (evidence: Evidence) => Evidence | undefined,
): Pick<EvidenceHandlers, 'evidence.undo' | 'evidence.mend' | 'evidence.restore' | 'evidence.readings'> {
  const homeOf = ({ householdId }: Evidence) => findHousehold(store, householdId).household;
  return {
    'evidence.undo'({ evidenceId }) {
      // A damaged one too: taking it back is one way out.
      orDamage(
        () => findEvidence(store, evidenceId),
        () => undefined,
      );
      store.undoEvidence(evidenceId);
      return {};
    },
    async 'evidence.mend'({ evidenceId, fileId }) {
      const evidence = findEvidence(store, evidenceId);
      const { zone } = homeOf(evidence);
      if (fileId === undefined)
        await rebuildReadings(store, ports.readEvidence, evidence, intakeContext(zone, ports.today()));
      else replaceRawFile(store, files.take(fileId), evidence);
      const kind = fileId === undefined ? 'readings' : 'raw-file';
      forgetDamage(store, (one) => one.kind === kind && one.evidenceId === evidenceId);
      return {};
    },
    'evidence.restore'({ evidenceId }) {
      const evidence = findEvidence(store, evidenceId);
      if (keptPartOf(evidence)) throw new StoreFault({ code: 'already-there', path: evidenceId });
      const home = homeOf(evidence);
      refuseOtherClock(evidence, home.zone);
      refuseAsked(evidence, joinedWith(home, evidence, besideStored(store, evidence, [])).asked);
      return store.restoreEvidence(evidenceId)!;
    },
    'evidence.readings': (asked) => readingsOf(store, asked),
  };
}

/** A file on its way in: intake reads it, the desk gives the identifiers, and the same values go to the store as were shown. */
import type { IntakeChoices, IntakeContext, IntakePreview, IntakeResult, IntervalDays } from '../intake/intake.ts';
import { toCivilDate, toDayNumber } from '../model/calendar/civil.ts';
import { currencyOf } from '../model/shapes/country.ts';
import { type Evidence, isCutByClock } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import { gasVolumeOf } from '../reference/gas-of-place.ts';
import { reference } from '../reference/index.ts';
import { say } from '../words/say.ts';
import { hashOf } from './hash.ts';
import { evidenceWithoutPeople } from './mask-people.ts';
import type { OfferedFile } from './offered-files.ts';
import type { ReadEvidence } from './ports.ts';
import { refuseQuestions, refuseRemarks } from './refuse-remarks.ts';

export function intakeContext(zone: string, today: string, onProgress?: (share: number) => void): IntakeContext {
  const { kWhPerUnit, gasVolume } = reference;
  return {
    zone,
    today,
    kWhPerUnit,
    gasVolume: gasVolumeOf(zone, gasVolume),
    ...(onProgress ? { onProgress } : {}),
  };
}

/** The same for a household, whose money a bill has to be in. */
export const contextOf = (
  { zone, country }: Pick<Household, 'zone' | 'country'>,
  today: string,
  onProgress?: (share: number) => void,
): IntakeContext => ({
  ...intakeContext(zone, today, onProgress),
  money: currencyOf({ country }) === 'EUR' ? '€' : '£',
});

export interface TakenIn {
  readonly evidence: Evidence;
  readonly intervals: readonly IntervalDays[];
  readonly preview: IntakePreview;
  /** What is stored beside it: the file, of a paper only where the installer says so, since names stand on it. */
  readonly rawFile: Uint8Array | null;
}

export interface ReadIn {
  readonly file: OfferedFile;
  /** Clock of the home. */
  readonly zone: string;
  readonly householdId: string;
  readonly importedOn: string;
  readonly newId: () => string;
}

export interface TakeInInput extends Omit<ReadIn, 'zone'> {
  readonly choices: IntakeChoices;
  readonly context: IntakeContext;
  readonly readEvidence: ReadEvidence;
}

/** Reads a file for good; refuses it with intake's sentence when it cannot be taken. */
export async function takeIn({ choices, context, readEvidence, ...input }: TakeInInput): Promise<TakenIn> {
  const read = await readEvidence(input.file.fileName, input.file.bytes, choices, context);
  const taken = takeRead(read, { ...input, zone: context.zone });
  refuseQuestions(read.preview.remarks, read.preview, read.people);
  return taken;
}

/** People call the file of a bill by the name or account on it, so it is kept under a name of ours. */
export function namedByDays(evidence: Evidence): Evidence {
  const periods = evidence.series.flatMap((series) => series.periods ?? []);
  const from = periods.map((one) => one.from).toSorted()[0] ?? '';
  const end = periods
    .map(({ to }) => to)
    .toSorted()
    .at(-1);
  const to = end === undefined ? '' : toCivilDate(toDayNumber(end) - 1);
  const ending = /\.[a-z]{2,5}$/i.exec(evidence.fileName)?.[0] ?? '';
  const fileName = `${say('Bill {from} to {to}', { from, to })}${ending}`;
  return { ...evidence, fileName, remarks: evidence.remarks.map((remark) => ({ ...remark, file: fileName })) };
}

/** The same for a file that has been read already. */
export function takeRead(
  { preview, intervals, people }: IntakeResult,
  { file, zone, householdId, importedOn, newId }: ReadIn,
): TakenIn {
  refuseRemarks(preview.remarks, file.fileName, preview.series.length > 0, people);
  const evidenceId = newId();
  const newIds = new Map(preview.series.map(({ id }) => [id, newId()]));
  return {
    preview,
    rawFile: preview.paper && !preview.choices.paper?.keepPaper ? null : file.bytes,
    evidence: evidenceWithoutPeople(
      {
        id: evidenceId,
        householdId,
        fileName: file.fileName,
        importedOn,
        sha256: hashOf(file.bytes),
        ...(preview.part ? { part: preview.part } : {}),
        ...(preview.series.some(isCutByClock) ? { zone } : {}),
        shape: preview.shape ?? '',
        ...(preview.uses ? { columns: preview.uses.map(({ name, use }) => ({ name, use })) } : {}),
        series: preview.series.map((series) => ({ ...series, id: newIds.get(series.id)!, evidenceId })),
        remarks: preview.remarks,
      },
      people,
    ),
    intervals: intervals.map((interval) => ({ ...interval, seriesId: newIds.get(interval.seriesId)! })),
  };
}

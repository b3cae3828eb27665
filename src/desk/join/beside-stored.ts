/** A file on its way in beside the imports that are kept: what it repeats, what has to be asked, what it would be used for. */
import type { IntervalDays } from '../../intake/intake.ts';
import { accountFiles } from '../../model/demand/account-records.ts';
import { demandOfHousehold } from '../../model/heat-of-household.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Evidence, Remark, Series } from '../../model/shapes/evidence.ts';
import type { Household } from '../../model/shapes/household.ts';
import { referenceOf } from '../../reference/index.ts';
import type { Store } from '../../store/store.ts';
import { askOtherMeters } from './find-other-meter.ts';
import { findOverlaps } from './find-overlaps.ts';
import { joinEvidence } from './join-evidence.ts';
import { askLoneParts } from './lone-parts.ts';
import { remarkRivals } from './remark-rivals.ts';
import { readFrom } from './stored-series.ts';

export interface Coming {
  readonly householdId: string;
  readonly fileName: string;
  readonly sha256: string;
  readonly shape: string | null;
  readonly series: readonly Series[];
}

export const asEvidence = ({ shape, series, ...coming }: Coming): Evidence => ({
  ...coming,
  id: '',
  importedOn: '',
  shape: shape ?? '',
  series: [...series],
  remarks: [],
});

/** A file on its way in as the last of the imports that are here, and the readings of all. */
export function besideStored(store: Store, coming: Coming, intervals: readonly IntervalDays[]) {
  const stored = readFrom(store);
  return {
    evidence: [...store.listEvidence(coming.householdId), asEvidence(coming)],
    read: (seriesId: string) => intervals.find((one) => one.seriesId === seriesId) ?? stored(seriesId),
  };
}

/** What a file on its way in repeats of the imports that are here. */
export const overlapsOf = ({ evidence, read }: ReturnType<typeof besideStored>): Remark[] =>
  findOverlaps(evidence, read);

/** A part is kept before the file with the rest of it has come. */
export const partsOf = ({ evidence }: ReturnType<typeof besideStored>): Remark[] =>
  (askLoneParts(evidence).get(evidence.at(-1)!) ?? []).map((one) => ({ ...one, weight: 'note' }));

/** What has to be asked of a file on its way in beside others of its kind, and the records joined with its own. */
export function joinedWith(
  household: Household,
  { series }: Pick<Coming, 'series'>,
  { evidence, read }: ReturnType<typeof besideStored>,
) {
  const joined = joinEvidence(evidence, household.zone, read);
  const rivals = remarkRivals(joined, evidence, ({ id }) => series.some((one) => one.id === id));
  return { asked: [...rivals, ...askOtherMeters(evidence, evidence.at(-1))], joined };
}

/** What the records of the newest file would be used for, and what they are too short for. */
export function recordsOf(
  household: Household,
  evidence: readonly Evidence[],
  { joined: series }: ReturnType<typeof joinedWith>,
  asOf: CivilDate,
) {
  const reference = referenceOf(household);
  const heat = demandOfHousehold({ household, series, reference, asOf });
  return accountFiles(household, evidence.slice(-1), series, heat)[0]!.records;
}

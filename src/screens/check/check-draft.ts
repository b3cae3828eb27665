/** A bill as it is being typed, and the input of a check that it makes once it is whole. */

import type { BillPrefill } from '../../desk/contract.ts';
import { daysBetween } from '../../model/calendar/civil.ts';
import type { BillCheckInput } from '../../model/shapes/bill-check.ts';
import { type CivilDate, isCivilDate } from '../../model/shapes/dates.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import { say } from '../../words/say.ts';
import { dayAfter, dayBefore, type KnownBill } from './bills.ts';

/** The typed days as the model counts them, or null while they are not whole. */
export function spanOf({
  from,
  lastDay,
}: Pick<CheckDraft, 'from' | 'lastDay'>): { from: CivilDate; to: CivilDate } | null {
  return isCivilDate(from) && isCivilDate(lastDay) && lastDay >= from ? { from, to: dayAfter(lastDay) } : null;
}

export interface CheckDraft {
  readonly estimateId: string;
  readonly from: string;
  readonly lastDay: string;
  readonly kWh: number | undefined;
  readonly meter: 'heat-pump' | 'whole-house';
  readonly otherKWh: number | undefined;
  /** Of the roof, used at home and on no bill. */
  readonly ownUseKWh: number | undefined;
  readonly tariff: 'same' | 'changed';
  readonly changedOn: string;
  /** What these kWh would have cost each on the tariff before. */
  readonly beforePence: number | undefined;
  readonly pencePerKWh: number | undefined;
  readonly totalPounds: number | undefined;
  /** To the written estimate's base temperature, where somebody has them and no weather file does. */
  readonly degreeDays: number | undefined;
  readonly readings: 'actual' | 'estimated' | 'unknown';
}

export const emptyDraft = (estimateId: string): CheckDraft => ({
  estimateId,
  from: '',
  lastDay: '',
  kWh: undefined,
  meter: 'heat-pump',
  otherKWh: undefined,
  ownUseKWh: undefined,
  tariff: 'same',
  changedOn: '',
  beforePence: undefined,
  pencePerKWh: undefined,
  totalPounds: undefined,
  degreeDays: undefined,
  readings: 'actual',
});

/** Takes over what a bill of the evidence says; what it does not say is left to be typed. */
export function draftOfBill(draft: CheckDraft, { period, meter }: KnownBill): CheckDraft {
  const { costPence, kWh } = period;
  return {
    ...draft,
    from: period.from,
    lastDay: dayBefore(period.to),
    kWh,
    meter,
    totalPounds: costPence === undefined || meter === 'whole-house' ? undefined : costPence / 100,
    pencePerKWh:
      draft.pencePerKWh ?? (costPence !== undefined && kWh > 0 ? Number((costPence / kWh).toFixed(2)) : undefined),
    readings: period.quality === 'estimated' ? 'estimated' : period.quality === 'unknown' ? 'unknown' : 'actual',
  };
}

/** Takes over what kept readings and the tariff say; what they do not say stays as it was typed. */
export function draftOfReadings(draft: CheckDraft, found: BillPrefill): CheckDraft {
  return {
    ...draft,
    from: found.from,
    lastDay: dayBefore(found.to),
    kWh: Number(found.kWh.toFixed(1)),
    meter: found.meter,
    totalPounds: undefined,
    pencePerKWh: found.pencePerKWh === undefined ? draft.pencePerKWh : Number(found.pencePerKWh.toFixed(2)),
    readings: found.readings,
    ...(found.changed ? { tariff: 'changed' as const, changedOn: found.changed.on ?? draft.changedOn } : {}),
  };
}

export type DraftResult =
  | { readonly kind: 'whole'; readonly input: BillCheckInput; readonly days: number }
  | { readonly kind: 'wanting'; readonly sentence: string };

const wanting = (sentence: string): DraftResult => ({ kind: 'wanting', sentence });

/** The household's own weather where it covers the bill's days; the desk reads the degree days from it. */
export function findOwnWeather(series: readonly Series[], from: CivilDate, to: CivilDate): Series | null {
  return (
    series.find((one) => one.carrier === 'outdoor-temperature' && one.from <= from && one.to >= to && one.days) ?? null
  );
}

export function finishDraft(draft: CheckDraft): DraftResult {
  const { from, lastDay, kWh, meter, otherKWh, ownUseKWh, pencePerKWh, totalPounds } = draft;
  const { tariff, changedOn, beforePence } = draft;
  if (!isCivilDate(from) || !isCivilDate(lastDay)) return wanting(say('Type the first and the last day of the bill.'));
  const to = dayAfter(lastDay);
  const days = daysBetween(from, to);
  if (days <= 0) return wanting(say('The last day is before the first day.'));
  if (days > 731) return wanting(say('The bill is longer than two years. Check its days.'));
  if (kWh === undefined) return wanting(say('Type the kWh of the bill.'));
  if (pencePerKWh === undefined || pencePerKWh <= 0) return wanting(say('Type the price per kWh, VAT included.'));
  if (tariff === 'changed' && !isCivilDate(changedOn)) return wanting(say('Type the day on which the tariff changed.'));
  // Nobody has to know it: the bill is then checked with other things in it, and not judged.
  const other = meter === 'whole-house' ? otherKWh : 0;
  if (other !== undefined && other > kWh) return wanting(say('The other electricity is more than the whole bill.'));
  return {
    kind: 'whole',
    days,
    input: {
      estimateId: draft.estimateId,
      from,
      to,
      boughtKWh: kWh - (other ?? 0),
      ...(other === undefined ? {} : { otherKWh: other }),
      meter,
      ...(meter === 'whole-house' && ownUseKWh !== undefined ? { ownUseKWh } : {}),
      ...(tariff === 'changed'
        ? { tariffChange: { on: changedOn, ...(beforePence === undefined ? {} : { beforePencePerKWh: beforePence }) } }
        : {}),
      pencePerKWh,
      ...(totalPounds === undefined ? {} : { totalPence: totalPounds * 100 }),
      ...(draft.degreeDays === undefined ? {} : { degreeDays: draft.degreeDays }),
      readings: draft.readings,
    },
  };
}

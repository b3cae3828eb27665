/** A bill as the kept readings and the tariff give it, so that a check needs no typing where nothing is unknown. */

import { withEvidence } from '../model/bill-gap/add-evidence.ts';
import {
  addDays,
  firstOfMonth,
  firstOfMonthBefore,
  firstOfNextMonth,
  toCivilDate,
  toDayNumber,
} from '../model/calendar/civil.ts';
import { tariffsOfChange } from '../model/choices/price-change.ts';
import { sumRegisters } from '../model/evidence/sum-registers.ts';
import { bandPrices } from '../model/findings/slot-prices.ts';
import type { Series } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { onOwnMeter } from '../model/tariff/own-meter.ts';
import type { BillPrefill } from './contract.ts';
import { type KnownSince, tariffOf, tariffOn } from './run-check.ts';

interface Span {
  readonly from: string;
  /** Exclusive. */
  readonly to: string;
}

/** Whole months that are taken where nobody says which days. */
const MONTHS = 3;

export interface PrefillInput extends KnownSince {
  readonly estimate: WrittenEstimate;
  readonly span: { readonly from: number; readonly to: number } | null;
}

/** Null where no meter covers the days. The machine's own meter comes before the house's. */
export function prefillBill({ estimate, span, household, readings, ...known }: PrefillInput): BillPrefill | null {
  const series = sumRegisters(known.series);
  const meters = series
    .filter(
      ({ carrier, role, days }) => carrier === 'electricity' && (role === 'heat-pump' || role === 'import') && days,
    )
    .toSorted((a, b) => Number(b.role === 'heat-pump') - Number(a.role === 'heat-pump'));
  for (const meter of meters) {
    const days = span
      ? { from: toCivilDate(span.from), to: toCivilDate(span.to) }
      : newestMonths(meter, estimate.appraisal.asOf);
    const kWh = days && unitsOf(meter, days);
    if (!days || kWh === null) continue;
    const price = priceByTariff({ household, series, readings }, estimate.id, meter.role === 'heat-pump', days);
    return {
      ...days,
      meter: meter.role === 'heat-pump' ? 'heat-pump' : 'whole-house',
      kWh,
      ...(price ? { pencePerKWh: price.pencePerKWh, tariffName: price.tariffName } : {}),
      readings: meter.estimatedCount === 0 ? 'actual' : 'unknown',
      meterName: meter.name,
      ...changedSince(estimate, household, days),
    };
  }
  return null;
}

/** Another tariff in use than the estimate's, where it holds on some day of the bill. */
function changedSince(estimate: WrittenEstimate, household: Household, { to }: Span): Pick<BillPrefill, 'changed'> {
  const known = tariffsOfChange({ estimate, household });
  if (!known) return {};
  const { from } = known.after.versions[0]!;
  if (from >= to) return {};
  return { changed: { tariffName: known.after.name, ...(from > estimate.appraisal.asOf ? { on: from } : {}) } };
}

function unitsOf({ days }: Series, { from, to }: Span): number | null {
  const offset = toDayNumber(from) - toDayNumber(days!.first);
  let sum = 0;
  for (let i = 0; i < toDayNumber(to) - toDayNumber(from); i++) {
    const value = days!.values[offset + i] ?? null;
    if (value === null) return null;
    sum += value;
  }
  return sum;
}

/** Up to three whole months in a row, the newest that the meter has since the written estimate. */
function newestMonths(meter: Series, since: string): Span | null {
  const last = addDays(meter.days!.first, meter.days!.values.length - 1);
  let from: string | null = null;
  let to: string | null = null;
  let count = 0;
  for (let month = firstOfMonth(last); month >= since && month >= firstOfMonth(meter.from) && count < MONTHS; ) {
    const end = firstOfNextMonth(month);
    if (unitsOf(meter, { from: month, to: end }) !== null) {
      from = month;
      to ??= end;
      count++;
    } else if (to !== null) break;
    month = firstOfMonthBefore(month);
  }
  return from !== null && to !== null ? { from, to } : null;
}

/**
 * Price of a unit [p/kWh] by the household's tariff: where the hour makes no odds the mean of its days, else that of the
 * hours at which the machine ran. Undefined where the tariff cannot say it.
 */
export function priceByTariff(
  known: KnownSince,
  estimateId: string,
  isMachine: boolean,
  { from, to }: Span,
): { readonly pencePerKWh: number; readonly tariffName: string } | undefined {
  const dates = Array.from({ length: toDayNumber(to) - toDayNumber(from) }, (_, i) => addDays(from, i));
  const versions = dates.flatMap((date) => tariffOn(known.household, date) ?? []);
  const [version] = versions;
  if (!version || versions.length < dates.length) return undefined;
  const { name: tariffName } = tariffOf(known.household)!;
  const prices = versions.map((one) => bandPrices(isMachine ? onOwnMeter(one) : one));
  if (prices.every(([first, ...others]) => others.every((price) => price === first)))
    return { pencePerKWh: prices.reduce((sum, [price]) => sum + price!, 0) / prices.length, tariffName };
  if (!isMachine || versions.some((one) => one !== version)) return undefined;
  const bill = { estimateId, from, to, boughtKWh: 1, otherKWh: 0, meter: 'heat-pump', readings: 'actual' } as const;
  const { ratesKWh = [] } = withEvidence({ ...bill, pencePerKWh: 1 }, { ...known, version });
  const units = ratesKWh.reduce((sum, { kWh }) => sum + kWh, 0);
  if (!(units > 0)) return undefined;
  return { pencePerKWh: ratesKWh.reduce((sum, one) => sum + one.kWh * one.pencePerKWh, 0) / units, tariffName };
}

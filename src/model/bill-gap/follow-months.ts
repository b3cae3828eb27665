/** Month by month, the written estimate against what the meter says, with the weather put right. */

import { compareDates, toCivilDate, toDayNumber } from '../calendar/civil.ts';
import type { FollowedMonth } from '../shapes/bill-check.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Reference } from '../shapes/reference.ts';
import type { WrittenEstimate } from '../shapes/written-estimate.ts';
import { sumOf } from '../units/sums.ts';
import { actualWeather } from './actual-weather.ts';
import { spaceInWeather } from './cost-state.ts';
import { estimateForDays, heatPumpOf } from './estimate-for-days.ts';
import { expectedRange } from './expected-range.ts';

/** Fewer days are no month to judge by. Common practice, no source. */
const LEAST_DAYS = 7;

/**
 * Each month of a heat pump's daily record [kWh] against the estimate for the same days: estimated, expected in the
 * weather that came (as `checkBill` has it), the range about it, and the meter. Spans under a week are left out.
 */
export function followMonths(
  estimate: WrittenEstimate,
  series: Series,
  weather: Series | undefined,
  reference: Pick<Reference, 'spread'>,
): FollowedMonth[] {
  const pump = heatPumpOf(estimate);
  let gapSoFarKWh = 0;
  return spansOf(series).map(({ from, to }): FollowedMonth => {
    const estimated = estimateForDays(estimate, from, to);
    const bill = { estimateId: '', from, to, boughtKWh: 0, otherKWh: 0, meter: 'heat-pump', pencePerKWh: 0 } as const;
    const baseC = estimate.appraisal.demand.baseC;
    const known = actualWeather({ ...bill, readings: 'actual' }, baseC, estimated.degreeDays, weather);
    const typical = sumOf(estimated.degreeDays);
    const expectedKWh = spaceInWeather(estimated, known ? known.degreeDays - typical : 0) + estimated.otherKWh;
    // A thousand times the units, since the range comes in whole numbers.
    const range = expectedRange({
      expectedPence: expectedKWh * 1000,
      bought: pump.bought,
      days: estimated.days,
      spaceShare: estimated.spaceShare,
      weatherKnown: known !== null,
      spread: reference.spread,
    });
    const lowKWh = range.low / 1000;
    const highKWh = range.high / 1000;
    const actualKWh = unitsOf(series, from, to);
    if (actualKWh !== null) gapSoFarKWh += actualKWh - expectedKWh;
    return {
      month: from.slice(0, 7),
      from,
      to,
      days: estimated.days,
      estimatedKWh: estimated.spaceKWh + estimated.otherKWh,
      expectedKWh,
      lowKWh,
      highKWh,
      actualKWh,
      weatherKnown: known !== null,
      verdict: actualKWh === null ? 'unknown' : actualKWh > highKWh ? 'above' : actualKWh < lowKWh ? 'below' : 'inside',
      gapSoFarKWh,
    };
  });
}

/**
 * The months since the estimate [kWh] on the machine's own meter; empty without one, since a meter of the whole house
 * does not say what the heating took.
 */
export function followEstimate(
  estimate: WrittenEstimate,
  series: readonly Series[],
  reference: Pick<Reference, 'spread'>,
): FollowedMonth[] {
  const since = estimate.appraisal.asOf;
  const meters = series.filter(({ role, carrier, days }) => role === 'heat-pump' && carrier === 'electricity' && days);
  const newest = meters.toSorted((a, b) => compareDates(b.to, a.to)).map((one) => daysSince(one, since))[0];
  const weather = series.find(({ carrier, days }) => carrier === 'outdoor-temperature' && days);
  return newest ? followMonths(estimate, newest, weather, reference) : [];
}

function daysSince(series: Series, since: CivilDate): Series {
  const { first, values } = series.days!;
  const skip = toDayNumber(since) - toDayNumber(first);
  return skip > 0 ? { ...series, days: { first: since, values: values.slice(skip) } } : series;
}

/** The series' days cut at the beginnings of months. */
function spansOf(series: Series): { from: CivilDate; to: CivilDate }[] {
  if (!series.days) return [];
  const first = toDayNumber(series.days.first);
  const end = first + series.days.values.length;
  const spans: { from: CivilDate; to: CivilDate }[] = [];
  for (let start = first; start < end; ) {
    const month = toCivilDate(start).slice(0, 7);
    let next = start + 1;
    while (next < end && toCivilDate(next).startsWith(month)) next++;
    if (next - start >= LEAST_DAYS) spans.push({ from: toCivilDate(start), to: toCivilDate(next) });
    start = next;
  }
  return spans;
}

function unitsOf({ days }: Series, from: CivilDate, to: CivilDate): number | null {
  const offset = toDayNumber(from) - toDayNumber(days!.first);
  let sum = 0;
  for (let i = 0; i < toDayNumber(to) - toDayNumber(from); i++) {
    const value = days!.values[offset + i];
    if (value === null || value === undefined) return null;
    sum += value;
  }
  return sum;
}

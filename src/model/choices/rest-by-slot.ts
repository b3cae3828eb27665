/** The electricity that a home uses beside heating, laid over the half-hours of the year. */
import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import type { YearSlots } from '../calendar/zone.ts';

/**
 * kWh of every half-hour. Each day of a month takes the same part of the month's energy [kWh, 12 of them] and spreads it by
 * the weights of 48 half-hours of that month (12 × 48) over those that it has, so that nothing is lost at a clock change.
 * A month whose weights are all nothing takes the mean of the others.
 */
export function restBySlot(
  monthlyKWh: readonly number[],
  byMonth: readonly (readonly number[])[],
  slots: YearSlots,
): Float64Array {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const known = byMonth
    .filter((weights) => sum(weights) > 0)
    .map((weights) => weights.map((one) => one / sum(weights)));
  const usual = Array.from({ length: 48 }, (_, half) =>
    known.length > 0 ? sum(known.map((weights) => weights[half]!)) / known.length : 1 / 48,
  );
  const weightsOf = byMonth.map((weights) => (sum(weights) > 0 ? weights : usual));
  const kWh = new Float64Array(slots.count);
  for (let day = 0; day + 1 < slots.dayStart.length; day++) {
    const [start, end] = [slots.dayStart[day]!, slots.dayStart[day + 1]!];
    const month = slots.month[start]!;
    const weights = weightsOf[month]!;
    let ofDay = 0;
    for (let slot = start; slot < end; slot++) ofDay += weights[(slots.minute[slot]! / 30) | 0]!;
    const perWeight = monthlyKWh[month]! / COMMON_MONTH_DAYS[month]! / ofDay;
    for (let slot = start; slot < end; slot++) kWh[slot] = perWeight * weights[(slots.minute[slot]! / 30) | 0]!;
  }
  return kWh;
}

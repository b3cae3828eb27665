/** A cold day of the typical year: the one that is shown, and how cold such a day is. */
import type { YearSlots } from '../calendar/zone.ts';

interface Year {
  readonly slots: YearSlots;
  readonly outdoorC: Float64Array;
}

/** Mean outdoor temperature of the coldest month [°C], and the half-hour with which its day nearest to that begins. */
export function coldDay({ slots, outdoorC }: Year): { readonly meanC: number; readonly start: number } {
  const sums = new Float64Array(12);
  const counts = new Float64Array(12);
  for (let slot = 0; slot < slots.count; slot++) {
    sums[slots.month[slot]!]! += outdoorC[slot]!;
    counts[slots.month[slot]!]! += 1;
  }
  const means = sums.map((sum, month) => sum / counts[month]!);
  const meanC = Math.min(...means);
  const month = means.indexOf(meanC);
  let [start, nearest] = [0, Number.POSITIVE_INFINITY];
  for (let day = 0; day + 1 < slots.dayStart.length; day++) {
    const first = slots.dayStart[day]!;
    if (slots.month[first] !== month || slots.dayStart[day + 1]! - first !== 48) continue;
    const mean = outdoorC.subarray(first, first + 48).reduce((sum, one) => sum + one, 0) / 48;
    if (Math.abs(mean - meanC) < nearest) [start, nearest] = [first, Math.abs(mean - meanC)];
  }
  return { meanC, start };
}

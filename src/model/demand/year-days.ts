/** The days of a typical year as a prediction takes them. */
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../year/typical-year.ts';
import type { DaysToCome } from './predict-informed.ts';

const known = new WeakMap<TypicalYear, DaysToCome>();

/** A whole year: the waves of its seasons cancel out. Degree days are summed once for each base temperature. */
export function yearDays(year: TypicalYear): DaysToCome {
  const before = known.get(year);
  if (before) return before;
  const byBase = new Map<number, number>();
  const days: DaysToCome = {
    days: year.dailyMeanC.length,
    waveSum: 0,
    degreeDays: (baseC) => {
      const sum = byBase.get(baseC) ?? degreeDaysFromMeans(year.dailyMeanC, baseC);
      byBase.set(baseC, sum);
      return sum;
    },
  };
  known.set(year, days);
  return days;
}

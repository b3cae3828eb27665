/** The days of a typical year as a prediction takes them. */
import { degreeDaysFromMeans } from '../weather/degree-days.ts';
import type { TypicalYear } from '../weather/typical-year.ts';
import type { DaysToCome } from './predict-informed.ts';

/** A whole year: the waves of its seasons cancel out. */
export function yearDays(year: TypicalYear): DaysToCome {
  return {
    days: year.dailyMeanC.length,
    waveSum: 0,
    degreeDays: (baseC) => degreeDaysFromMeans(year.dailyMeanC, baseC),
  };
}

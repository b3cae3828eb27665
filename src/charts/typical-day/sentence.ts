import { counted, grouped } from '../../words/numbers.ts';
import { type DaySeries, mostDifferent } from './series.ts';

export const DAY_NAME = 'The day by the clock';

/** "02:00" for the reading that begins at two. */
export const clockOf = (reading: number, minutes: number): string => {
  const at = reading * minutes;
  return `${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}`;
};

export function daySentence(series: DaySeries): string {
  const place = mostDifferent(series);
  const at = clockOf(place, series.minutes);
  const seen = `${grouped(series.seenKW[place] ?? Number.NaN, 1)} kW at ${at}`;
  const days = `On the mean of ${counted(series.seenDays, 'day')} the meter shows ${seen}`;
  if (!series.otherwiseKW) return `${days}.`;
  return `${days}, against ${grouped(series.otherwiseKW[place] ?? Number.NaN, 1)} kW on days as cold.`;
}

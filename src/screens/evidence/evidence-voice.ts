import { isTemperature, type Series } from '../../model/evidence/evidence.ts';
import { completenessOf } from './completeness.ts';
import { CARRIER_WORDS } from './series-words.ts';

const MONTH_DAYS = 365.25 / 12;
const NUMBER_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven'];

export function spanWords(days: number): string {
  const months = Math.round(days / MONTH_DAYS);
  if (months < 1) return days === 1 ? 'one day' : `${days} days`;
  if (months % 12 === 0) {
    const years = months / 12;
    return years === 1 ? 'a year' : `${NUMBER_WORDS[years] ?? years} years`;
  }
  return months === 1 ? 'one month' : `${NUMBER_WORDS[months] ?? months} months`;
}

/** The sentence of the stage: what is known of this home from its own meters and bills. */
export function evidenceVoice(series: readonly Series[]): { readonly sentence: string; readonly remainder: string } {
  const energy = series.filter((one) => !isTemperature(one.carrier) && one.role !== 'export');
  if (energy.length === 0) {
    return {
      sentence: 'Nothing is known yet of what this home uses.',
      remainder:
        'A year of bills is enough to begin. Without any, the sums rest on size and age, and the ranges are wide.',
    };
  }
  const parts = energy.map((one) => `${spanWords(completenessOf(one).daysSpan)} of ${CARRIER_WORDS[one.carrier]}`);
  const unique = [...new Set(parts)];
  const list = unique.length === 1 ? unique[0]! : `${unique.slice(0, -1).join(', ')} and ${unique.at(-1)}`;
  const weather = series.some((one) => one.carrier === 'outdoor-temperature');
  return {
    sentence: `We know ${list} in this home.`,
    remainder: weather
      ? 'The outdoor temperatures of the same days are its own.'
      : 'The weather of those days is taken from the typical year of the region.',
  };
}

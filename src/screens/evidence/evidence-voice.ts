import { isUse, type Series } from '../../model/shapes/evidence.ts';
import { completenessOf } from '../../words/completeness.ts';
import { listed, numberWord } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { CARRIER_WORDS } from './series-words.ts';

const MONTH_DAYS = 365.25 / 12;
export function spanWords(days: number): string {
  const months = Math.round(days / MONTH_DAYS);
  if (months < 1) return say('{days, plural, one {one day} other {# days}}', { days });
  if (months % 12 === 0) {
    const years = months / 12;
    return say('{years, plural, one {a year} other {{word} years}}', { years, word: numberWord(years) });
  }
  return say('{months, plural, one {one month} other {{word} months}}', { months, word: numberWord(months) });
}

/** The sentence of the stage: what is known of this home from its own meters and bills. */
export function evidenceVoice(series: readonly Series[]): { readonly sentence: string; readonly remainder: string } {
  const energy = series.filter(isUse);
  if (energy.length === 0) {
    return {
      sentence: say('Nothing is known yet of what this home uses.'),
      remainder: say(
        'A year of bills is enough to begin. Without any, we work from size and age, and the ranges are wide.',
      ),
    };
  }
  const parts = energy.map((one) =>
    say('{amount} of {what}', {
      amount: spanWords(completenessOf(one).daysSpan),
      what: say(CARRIER_WORDS[one.carrier]),
    }),
  );
  const list = listed([...new Set(parts)]);
  const weather = series.some((one) => one.carrier === 'outdoor-temperature');
  return {
    sentence: say('We know {list} in this home.', { list }),
    remainder: weather
      ? say('The outdoor temperatures are those of the same days.')
      : say('For the weather of those days we use a typical year in the region.'),
  };
}

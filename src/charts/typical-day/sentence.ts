import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped, uncapitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { type DaySeries, mostDifferent } from './series.ts';

/** Name of the figure of one finding. */
export const dayName = (finding: string) => say('The day by the clock: {finding}', { finding: uncapitalised(finding) });

export function daySentence(series: DaySeries): string {
  const place = mostDifferent(series);
  const at = clockTimeOf(place * series.minutes);
  const values = {
    days: series.seenDays,
    power: grouped(series.seenKW[place] ?? Number.NaN, 1),
    at,
  };
  if (!series.otherwiseKW)
    return say(
      'On average over {days, plural, one {# day} other {# days}} the meter shows {power} kW at {at}.',
      values,
    );
  return say(
    'On average over {days, plural, one {# day} other {# days}} the meter shows {power} kW at {at}, compared with {otherPower} kW on days as cold.',
    { ...values, otherPower: grouped(series.otherwiseKW[place] ?? Number.NaN, 1) },
  );
}

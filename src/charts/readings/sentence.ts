import { grouped, longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { carrierName } from '../../words/systems.ts';
import type { ReadingsSeries } from './series.ts';

export function readingsSentence({ carrier, unit, readings, missing, first, last }: ReadingsSeries): string {
  const values = readings.flatMap((reading) => (reading.value === null ? [] : [reading.value]));
  if (values.length === 0) return say('No readings could be shown.');
  const [from, to] = [longDate(first), longDate(last)];
  const digits = unit === '°C' ? 1 : values.some((value) => Math.abs(value) >= 10) ? 0 : 2;
  const low = grouped(
    values.reduce((a, b) => Math.min(a, b)),
    digits,
  );
  const high = grouped(
    values.reduce((a, b) => Math.max(a, b)),
    digits,
  );
  const lies = { low, high, same: low === high ? 'yes' : 'no' };
  const all =
    from === to
      ? say(
          'On {from} each reading of {carrier} {same, select, yes {is {low}} other {lies between {low} and {high}}} {unit}.',
          {
            from,
            carrier: carrierName(carrier),
            ...lies,
            unit,
          },
        )
      : say(
          'From {from} to {to} each reading of {carrier} {same, select, yes {is {low}} other {lies between {low} and {high}}} {unit}.',
          {
            from,
            to,
            carrier: carrierName(carrier),
            ...lies,
            unit,
          },
        );
  if (missing === 0) return all;
  return `${all} ${say('{missing, plural, one {# reading is} other {# readings are}} missing.', { missing })}`;
}

import { exactPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { MonthlyRow, MonthlySeries } from './series.ts';

export const monthlyName = () => say('Cost by month');

export function monthlySentence({ rows, besideName }: MonthlySeries): string {
  const known = rows.filter((row): row is MonthlyRow & { pump: number } => row.pump !== null);
  if (known.length === 0) return say('The cost by month is not known yet.');
  const dearest = known.reduce((best, row) => (row.pump > best.pump ? row : best));
  const cheapest = known.reduce((best, row) => (row.pump < best.pump ? row : best));
  const first =
    exactPounds(dearest.pump) === exactPounds(cheapest.pump)
      ? say('Every month costs about {amount} with the heat pump.', { amount: exactPounds(dearest.pump) })
      : say('With the heat pump {dearest} costs most, about {amount}. {cheapest} costs least, {leastAmount}.', {
          dearest: dearest.month,
          amount: exactPounds(dearest.pump),
          cheapest: cheapest.month,
          leastAmount: exactPounds(cheapest.pump),
        });
  const both = known.filter((row) => row.beside !== null);
  if (besideName === '' || both.length === 0) return first;
  const less = both.filter((row) => row.pump < row.beside! - 100).length;
  const count = less === both.length ? 'all' : less === 0 ? 'none' : 'some';
  const second = say(
    'It costs less than “{name}” in {count, select, all {every month} none {no month} other {{less, plural, one {# month} other {# months}} of {months}}}.',
    { name: besideName, count, less, months: both.length },
  );
  return `${first} ${second}`;
}

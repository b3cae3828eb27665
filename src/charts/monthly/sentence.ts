import { spokenPounds } from '../../words/numbers.ts';
import type { MonthlyRow, MonthlySeries } from './series.ts';

export const MONTHLY_NAME = 'Cost by month';

export function monthlySentence({ rows, besideName }: MonthlySeries): string {
  const known = rows.filter((row): row is MonthlyRow & { pump: number } => row.pump !== null);
  if (known.length === 0) return 'The cost by month is not known yet.';
  const dearest = known.reduce((best, row) => (row.pump > best.pump ? row : best));
  const cheapest = known.reduce((best, row) => (row.pump < best.pump ? row : best));
  const first =
    spokenPounds(dearest.pump) === spokenPounds(cheapest.pump)
      ? `Every month costs about ${spokenPounds(dearest.pump)} with the heat pump.`
      : `With the heat pump ${dearest.month} costs most, about ${spokenPounds(dearest.pump)}. ${cheapest.month} costs least, ${spokenPounds(cheapest.pump)}.`;
  const both = known.filter((row) => row.beside !== null);
  if (besideName === '' || both.length === 0) return first;
  const less = both.filter((row) => row.pump < row.beside! - 100).length;
  const count =
    less === both.length
      ? 'every month'
      : less === 0
        ? 'no month'
        : `${less} ${less === 1 ? 'month' : 'months'} of ${both.length}`;
  return `${first} It costs less than “${besideName}” in ${count}.`;
}

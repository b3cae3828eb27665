/** What the meter should show in a mild, a typical and a cold year, each with its range. */
import type { YearAhead } from '../../model/shapes/appraisal.ts';
import { grouped } from '../../words/numbers.ts';
import { phrase, say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';

const WINTERS = {
  mild: phrase('mild, 1 in 10'),
  typical: phrase('typical'),
  cold: phrase('cold, 1 in 10'),
} as const;

export function yearsAheadTable(years: readonly YearAhead[]): ChartTable {
  return {
    caption: say('What the meter should show in a year to come. 8 such years in 10 lie between low and high.'),
    columns: [
      { name: say('Year') },
      ...[say('degree days'), say('kWh'), say('low'), say('high')].map((name) => ({ name, number: true })),
    ],
    rows: years.map(({ winter, degreeDays, kWh, low, high }) => ({
      cells: [say(WINTERS[winter]), ...[degreeDays, kWh, low, high].map((value) => grouped(value))],
    })),
  };
}

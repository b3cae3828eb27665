import type { YearPoint } from '../../model/lifetime/lifetime.ts';
import { exactPounds } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { YearsSeries } from './series.ts';

const cells = ({ value, low, high }: YearPoint) => [value, low, high].map(exactPounds);

export function yearsTable({ kind, pump, beside }: YearsSeries): ChartTable {
  const what = kind === 'whole' ? 'Purchase and running costs' : 'Running costs alone';
  return {
    caption: `${what}, paid in all by the end of each year, in the money of today. 8 cases in 10 lie between low and high.`,
    columns: [
      { name: 'Years from now' },
      ...[pump.name, beside.name].flatMap((name) => [
        { name, number: true },
        { name: `${name}, low`, number: true },
        { name: `${name}, high`, number: true },
      ]),
    ],
    rows: pump.points.map((point, index) => ({
      cells: [point.year === 0 ? 'now' : String(point.year), ...cells(point), ...cells(beside.points[index]!)],
    })),
  };
}

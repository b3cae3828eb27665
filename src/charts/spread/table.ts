import { exactPounds } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { SpreadRow } from './series.ts';

export function spreadTable(rows: readonly SpreadRow[]): ChartTable {
  return {
    caption: 'Cost of heating and hot water, a year. 8 cases in 10 lie between low and high.',
    columns: [
      { name: 'Way of heating' },
      { name: 'As reckoned', number: true },
      { name: 'Low', number: true },
      { name: 'High', number: true },
    ],
    rows: rows.map((row) => ({
      cells: [
        row.name,
        ...(row.cost
          ? [row.cost.middle, row.cost.low, row.cost.high].map(exactPounds)
          : ['not known', 'not known', 'not known']),
      ],
      ours: row.ours,
    })),
  };
}

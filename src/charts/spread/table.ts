import { exactPounds, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { SpreadRow } from './series.ts';

export function spreadTable(rows: readonly SpreadRow[]): ChartTable {
  return {
    caption: say('Cost of heating and hot water, a year. 8 cases in 10 lie between low and high.'),
    columns: [
      { name: say('Way of heating') },
      { name: say('As reckoned'), number: true },
      { name: say('Low'), number: true },
      { name: say('High'), number: true },
    ],
    rows: rows.map((row) => ({
      cells: [
        row.name,
        ...(row.cost
          ? [row.cost.middle, row.cost.low, row.cost.high].map(exactPounds)
          : [unknown(), unknown(), unknown()]),
      ],
      ours: row.ours,
    })),
  };
}

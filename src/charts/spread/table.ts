import { exactPounds, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { SpreadRow } from './series.ts';

export function spreadTable(rows: readonly SpreadRow[]): ChartTable {
  const withPrice = rows.some(({ price }) => price);
  const withDesign = rows.some(({ designed }) => designed !== undefined);
  return {
    caption: say('Cost of heating and hot water, a year. 8 in 10 homes like yours lie between low and high.'),
    columns: [
      { name: say('Way of heating') },
      { name: say('As worked out'), number: true },
      { name: say('Low'), number: true },
      { name: say('High'), number: true },
      ...(withDesign ? [{ name: say('As designed'), number: true }] : []),
      ...(withPrice ? [{ name: say('Price') }] : []),
    ],
    rows: rows.map((row) => ({
      cells: [
        row.name,
        ...(row.cost
          ? [row.cost.middle, row.cost.low, row.cost.high].map(exactPounds)
          : [unknown(), unknown(), unknown()]),
        ...(withDesign ? [row.designed === undefined ? '–' : exactPounds(row.designed)] : []),
        ...(withPrice ? [row.price ?? ''] : []),
      ],
      ours: row.ours,
    })),
  };
}

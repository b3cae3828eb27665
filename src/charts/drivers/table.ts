import type { Driver, EmitterCase } from '../../model/what-drives/what-drives.ts';
import { driverName, driverValue, emitterName } from '../../words/drivers.ts';
import { exactPounds, factor } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';

const CAPTION = 'The heat pump’s year, all else as it is. The factor is for rooms and hot water, pumps counted (H4).';

export function driverTable({ name, today, points }: Driver): ChartTable {
  return {
    caption: CAPTION,
    columns: [{ name: driverName(name) }, { name: 'Cost of a year', number: true }, { name: 'Factor', number: true }],
    rows: points.map(({ at, costPence, factor: reached }) => ({
      cells: [`${driverValue(name, at)}${at === today ? ', as it is' : ''}`, exactPounds(costPence), factor(reached)],
      ours: at === today,
    })),
  };
}

export function emitterTable(cases: readonly EmitterCase[]): ChartTable {
  return {
    caption: `${CAPTION} 8 cases in 10 lie between low and high.`,
    columns: [
      { name: 'Emitters' },
      ...['As reckoned', 'Low', 'High', 'Factor'].map((name) => ({ name, number: true })),
    ],
    rows: cases.map((one) => ({
      cells: [
        `${emitterName(one)}${one.today ? ', as it is' : ''}`,
        ...[one.cost.value, one.cost.low, one.cost.high].map(exactPounds),
        factor(one.factor),
      ],
      ours: one.today,
    })),
  };
}

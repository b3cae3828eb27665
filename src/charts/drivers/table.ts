import type { Driver, EmitterCase } from '../../model/what-drives/what-drives.ts';
import { driverName, driverValue, emitterName, shownRow } from '../../words/drivers.ts';
import { exactPounds, factor } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';

const caption = () =>
  say('The heat pump’s year, all else as shown. The factor is for rooms and hot water, pumps counted (H4).');

export function driverTable({ name, now, points }: Driver): ChartTable {
  return {
    caption: caption(),
    columns: [
      { name: driverName(name) },
      { name: say('Cost of a year'), number: true },
      { name: say('Seasonal factor'), number: true },
    ],
    rows: points.map(({ at, costPence, factor: reached }) => ({
      cells: [
        at === now ? shownRow(driverValue(name, at)) : driverValue(name, at),
        exactPounds(costPence),
        factor(reached),
      ],
      ours: at === now,
    })),
  };
}

export function emitterTable(cases: readonly EmitterCase[]): ChartTable {
  return {
    caption: `${caption()} ${say('8 in 10 homes like yours lie between low and high.')}`,
    columns: [
      { name: say('Emitters') },
      ...[say('As worked out'), say('Low'), say('High'), say('Seasonal factor')].map((name) => ({
        name,
        number: true,
      })),
    ],
    rows: cases.map((one) => ({
      cells: [
        one.now ? shownRow(emitterName(one)) : emitterName(one),
        ...[one.cost.value, one.cost.low, one.cost.high].map(exactPounds),
        factor(one.factor),
      ],
      ours: one.now,
    })),
  };
}

import { exactKWh, MONTH_NAMES } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { HeatMonths } from './layout.ts';

export function heatMonthsTable({ spaceKWh, waterKWh }: HeatMonths): ChartTable {
  return {
    caption: 'Heat needed in a typical year, by month.',
    columns: [
      { name: 'Month' },
      { name: 'Rooms', number: true },
      { name: 'Hot water', number: true },
      { name: 'Together', number: true },
    ],
    rows: MONTH_NAMES.map((name, month) => {
      const [rooms, water] = [spaceKWh[month] ?? Number.NaN, waterKWh[month] ?? Number.NaN];
      return { cells: [name, exactKWh(rooms), exactKWh(water), exactKWh(rooms + water)] };
    }),
  };
}

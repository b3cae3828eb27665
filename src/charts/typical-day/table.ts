import { grouped } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { clockOf } from './sentence.ts';
import type { DaySeries } from './series.ts';

const kW = (value: number): string => (Number.isFinite(value) ? `${grouped(value, 2)} kW` : 'not known');

export function dayTable(series: DaySeries): ChartTable {
  const { otherwiseKW } = series;
  return {
    caption: `Mean power by the clock: ${series.name.toLowerCase()}.`,
    columns: [
      { name: 'From' },
      { name: 'These days', number: true },
      ...(otherwiseKW ? [{ name: 'Days as cold', number: true }] : []),
    ],
    rows: series.seenKW.map((seen, i) => ({
      cells: [clockOf(i, series.minutes), kW(seen), ...(otherwiseKW ? [kW(otherwiseKW[i]!)] : [])],
    })),
  };
}

import { monthVerdict } from '../../words/following.ts';
import { exactKWh, monthSpan, unknown } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { FollowingSeries } from './series.ts';

export function followingTable({ months }: FollowingSeries): ChartTable {
  return {
    caption: 'The promise for the days of each month that were read, and what the heat pump’s meter shows.',
    columns: [
      { name: 'Month' },
      { name: 'Days', number: true },
      { name: 'In usual weather', number: true },
      { name: 'In this weather', number: true },
      { name: 'Low', number: true },
      { name: 'High', number: true },
      { name: 'Meter', number: true },
      { name: 'It lies' },
      { name: 'Gap so far', number: true },
    ],
    rows: months.map((month) => ({
      cells: [
        monthSpan(month.from, month.from),
        String(month.days),
        exactKWh(month.promisedKWh),
        month.weatherKnown ? exactKWh(month.expectedKWh) : unknown(),
        exactKWh(month.lowKWh),
        exactKWh(month.highKWh),
        month.actualKWh === null ? unknown() : exactKWh(month.actualKWh),
        monthVerdict(month.verdict),
        exactKWh(month.gapSoFarKWh),
      ],
    })),
  };
}

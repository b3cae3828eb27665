import { monthVerdict } from '../../words/following.ts';
import { exactKWh, monthSpan, unknown } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { FollowingSeries } from './series.ts';

export function followingTable({ months }: FollowingSeries): ChartTable {
  return {
    caption: say('The estimate for the days of each month that were read, and what the heat pump’s meter shows.'),
    columns: [
      { name: say('Month') },
      { name: say('Days'), number: true },
      { name: say('In normal weather'), number: true },
      { name: say('In this weather'), number: true },
      { name: say('Low'), number: true },
      { name: say('High'), number: true },
      { name: say('Meter'), number: true },
      { name: say('It lies') },
      { name: say('Difference so far'), number: true },
    ],
    rows: months.map((month) => ({
      cells: [
        monthSpan(month.from, month.from),
        String(month.days),
        exactKWh(month.estimatedKWh),
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

import { exactKWh, exactPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { UnitsInput } from './layout.ts';

export function unitsTable({ meterKWh, heatKWh, meterPence, source }: UnitsInput): ChartTable {
  return {
    caption: say('Heat for rooms and hot water in a typical year, and where it comes from.'),
    columns: [
      { name: say('Heat') },
      { name: say('A year'), number: true },
      { name: say('Paid for energy'), number: true },
    ],
    rows: [
      { cells: [say('From the meter'), exactKWh(meterKWh), exactPounds(meterPence)] },
      {
        cells: [
          say('From the {source, select, air {air} other {ground}}', { source }),
          exactKWh(Math.max(heatKWh - meterKWh, 0)),
          exactPounds(0),
        ],
      },
      { cells: [say('In rooms and hot water'), exactKWh(heatKWh), exactPounds(meterPence)], ours: true },
    ],
  };
}

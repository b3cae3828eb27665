import { exactKWh, exactPounds } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { UnitsInput } from './layout.ts';

export function unitsTable({ meterKWh, heatKWh, meterPence, source }: UnitsInput): ChartTable {
  return {
    caption: 'Heat for rooms and taps in a typical year, and where it comes from.',
    columns: [{ name: 'Heat' }, { name: 'A year', number: true }, { name: 'Paid for units', number: true }],
    rows: [
      { cells: ['From the meter', exactKWh(meterKWh), exactPounds(meterPence)] },
      { cells: [`From the ${source}`, exactKWh(Math.max(heatKWh - meterKWh, 0)), exactPounds(0)] },
      { cells: ['In rooms and taps', exactKWh(heatKWh), exactPounds(meterPence)], ours: true },
    ],
  };
}

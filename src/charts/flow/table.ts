import { exactKWh, percent } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { type FlowInput, flowSeries } from './series.ts';

export function flowTable(input: FlowInput): ChartTable {
  const flow = flowSeries(input);
  const all = flow ? flow.meterKWh + flow.sourceKWh : Number.NaN;
  const row = (name: string, side: string, kWh: number, ours = false) => ({
    cells: [name, side, exactKWh(kWh), percent(kWh / all)],
    ours,
  });
  return {
    caption:
      'Heat of a typical year: where it comes from and where it goes. Pumps and standby are in the meter’s part.',
    columns: [{ name: 'Part' }, { name: 'Side' }, { name: 'A year', number: true }, { name: 'Of all', number: true }],
    rows: flow
      ? [
          row(`From the ${flow.source}`, 'comes in', flow.sourceKWh),
          row('From the meter', 'comes in', flow.meterKWh),
          row('Rooms', 'goes out', flow.roomsKWh, true),
          row('Taps', 'goes out', flow.tapsKWh, true),
          ...(flow.lostKWh > 0 ? [row('No heat of any room', 'goes out', flow.lostKWh)] : []),
        ]
      : [],
  };
}

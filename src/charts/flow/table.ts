import { exactKWh, percent } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
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
    caption: say(
      'Heat of a typical year: where it comes from and where it goes. Pumps and standby are in the meter’s part.',
    ),
    columns: [
      { name: say('Part') },
      { name: say('Side') },
      { name: say('A year'), number: true },
      { name: say('Of all'), number: true },
    ],
    rows: flow
      ? [
          row(
            say('From the {source, select, air {air} other {ground}}', { source: flow.source }),
            say('comes in'),
            flow.sourceKWh,
          ),
          row(say('From the meter'), say('comes in'), flow.meterKWh),
          row(say('Rooms'), say('goes out'), flow.roomsKWh, true),
          row(say('Hot water'), say('goes out'), flow.tapsKWh, true),
          ...(flow.lostKWh > 0 ? [row(say('No heat for the rooms'), say('goes out'), flow.lostKWh)] : []),
        ]
      : [],
  };
}

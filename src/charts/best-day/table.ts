import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped, pence } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { BestDaySeries } from './series.ts';

export function bestDayTable({ name, pencePerKWh, usualKW, bestKW, roomC }: BestDaySeries): ChartTable {
  return {
    caption: say('A cold day on “{name}”: price, heat and rooms, half-hour by half-hour.', { name }),
    columns: [
      { name: say('From') },
      { name: say('Price'), number: true },
      { name: say('Heat, usual hours, kW'), number: true },
      { name: say('Heat, best hours, kW'), number: true },
      { name: say('Rooms, °C'), number: true },
    ],
    rows: pencePerKWh.map((price, i) => ({
      cells: [
        clockTimeOf(i * 30),
        pence(price),
        grouped(usualKW[i]!, 2),
        grouped(bestKW[i]!, 2),
        grouped(roomC[i]!, 2),
      ],
    })),
  };
}

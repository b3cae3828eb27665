import { say } from '../../words/say.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import type { CycleSeries } from './series.ts';

export function cycleTable({ places, loop }: CycleSeries): ChartTable {
  return {
    caption: say('The refrigerant cycle at this moment, with {refrigerant}. Pressures as a gauge shows them.', {
      refrigerant: loop.refrigerant,
    }),
    columns: [{ name: say('Place') }, { name: say('What') }, { name: say('How much'), number: true }],
    rows: places.flatMap((place) =>
      place.readings.map((reading) => ({
        cells: [`${place.number} ${place.name}`, reading.name, reading.text],
        ours: place.step === 'house',
      })),
    ),
  };
}

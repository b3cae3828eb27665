import type { ChartTable } from '../frame/chart-table.tsx';
import type { CycleSeries } from './series.ts';

export function cycleTable({ places, loop }: CycleSeries): ChartTable {
  return {
    caption: `The round of the heat at this moment, with ${loop.refrigerant} in the machine. Pressures as a gauge shows them.`,
    columns: [{ name: 'Place' }, { name: 'What' }, { name: 'How much', number: true }],
    rows: places.flatMap((place) =>
      place.readings.map((reading) => ({
        cells: [`${place.number} ${place.name}`, reading.name, reading.text],
        ours: place.step === 'house',
      })),
    ),
  };
}

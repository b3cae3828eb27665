import { pence, percent } from '../../words/numbers.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { HALVES_A_DAY, type WeekPrices } from './series.ts';

const DAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const clock = (half: number): string =>
  `${String(Math.floor(half / 2)).padStart(2, '0')}:${half % 2 === 0 ? '00' : '30'}`;

/** Stretches of one price, day by day; days that are alike stand together. */
export function weekPricesTable({ steps, bands }: WeekPrices): ChartTable {
  const stretches = new Map<string, { days: string[]; price: string }>();
  DAYS.forEach((day, index) => {
    let from = 0;
    for (let half = 1; half <= HALVES_A_DAY; half++) {
      const here = steps[index * HALVES_A_DAY + from]!;
      const next = half < HALVES_A_DAY ? steps[index * HALVES_A_DAY + half] : undefined;
      if (next?.band === here.band && next.pence === here.pence) continue;
      const key = `${clock(from)} to ${clock(half)}|${here.band}`;
      const price = here.pence === null ? 'no price' : pence(here.pence);
      const known = stretches.get(key) ?? { days: [], price };
      known.days.push(day);
      stretches.set(key, known);
      from = half;
    }
  });
  const share = new Map(bands.map((band) => [band.name, percent(band.share)]));
  return {
    caption: 'Price of a unit through a week, VAT included.',
    columns: [
      { name: 'Days' },
      { name: 'Hours' },
      { name: 'Band' },
      { name: 'Price', number: true },
      { name: 'Share of the week', number: true },
    ],
    rows: [...stretches].map(([key, { days, price }]) => {
      const [hours = '', band = ''] = key.split('|');
      const said = days.length === 7 ? 'every day' : days.join(', ');
      return { cells: [said, hours, band, price, share.get(band) ?? ''] };
    }),
  };
}

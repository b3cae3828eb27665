import { clockTimeOf } from '../../model/calendar/civil.ts';
import { pence, percent, shortWeekdayNames } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import type { ChartTable } from '../frame/chart-table.tsx';
import { HALVES_A_DAY, type WeekPrices } from './series.ts';

/** Stretches of one price, day by day; days that are alike stand together. */
export function weekPricesTable({ steps, bands }: WeekPrices): ChartTable {
  const stretches = new Map<string, { days: string[]; price: string }>();
  shortWeekdayNames().forEach((day, index) => {
    let from = 0;
    for (let half = 1; half <= HALVES_A_DAY; half++) {
      const here = steps[index * HALVES_A_DAY + from]!;
      const next = half < HALVES_A_DAY ? steps[index * HALVES_A_DAY + half] : undefined;
      if (next?.band === here.band && next.pence === here.pence) continue;
      const key = `${say('{low} to {high}', { low: clockTimeOf(from * 30), high: clockTimeOf(half * 30) })}|${sayTold(here.band)}`;
      const price = here.pence === null ? say('no price') : pence(here.pence);
      const known = stretches.get(key) ?? { days: [], price };
      known.days.push(day);
      stretches.set(key, known);
      from = half;
    }
  });
  const share = new Map(bands.map((band) => [sayTold(band.name), percent(band.share)]));
  return {
    caption: say('Price per kWh through a week, VAT included.'),
    columns: [
      { name: say('Days') },
      { name: say('Hours') },
      { name: say('Band') },
      { name: say('Price'), number: true },
      { name: say('Share of the week'), number: true },
    ],
    rows: [...stretches].map(([key, { days, price }]) => {
      const [hours = '', band = ''] = key.split('|');
      const said = days.length === 7 ? say('every day') : days.join(', ');
      return { cells: [said, hours, band, price, share.get(band) ?? ''] };
    }),
  };
}

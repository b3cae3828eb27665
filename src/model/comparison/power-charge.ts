/** A charge on the highest half-hour of each month: what a way of heating adds to it. */

import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import type { YearSlots } from '../calendar/zone.ts';
import type { PricedVersion } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import type { Working } from '../shapes/working.ts';
import { inclVat } from '../tariff/slot-price.ts';
import { sumOf } from '../units/sums.ts';
import type { DayUse } from '../year/share-out.ts';
import type { HomePeaks } from './rest-of-home.ts';

/** Electricity of one way of heating in each half-hour of the heaviest day of each month [kWh], 12 × 48. */
export type HeaviestDays = readonly Float64Array[];

export interface PowerCharge {
  readonly byMonthPence: readonly number[];
  readonly pence: number;
  /** Highest half-hours of the year as power [kW], without the heating and with it. */
  readonly homeKW: number;
  readonly withKW: number;
  readonly working: Working;
}

/** The heaviest days of each month of uses that are laid over their days by weights. */
export function heaviestOf(uses: readonly DayUse[], slots: YearSlots): Float64Array[] {
  const heaviest = Array.from({ length: 12 }, () => new Float64Array(48));
  for (const { kWh, dayShare, weights } of uses) {
    const sum = sumOf(weights);
    const ofMonth = new Float64Array(12);
    for (let day = 0; day < dayShare.length; day++) {
      const month = slots.month[slots.dayStart[day]!]!;
      ofMonth[month] = Math.max(ofMonth[month]!, dayShare[day]!);
    }
    heaviest.forEach((halves, month) => {
      for (let half = 0; half < 48; half++) halves[half]! += (kWh * ofMonth[month]! * weights[half]!) / sum;
    });
  }
  return heaviest;
}

/** The most of each half-hour of the clock in each month, of uses known by the half-hour [kWh]. */
export function heaviestOfSlots(lists: readonly Float64Array[], slots: YearSlots): Float64Array[] {
  const heaviest = Array.from({ length: 12 }, () => new Float64Array(48));
  for (let slot = 0; slot < slots.count; slot++) {
    let kWh = 0;
    for (const list of lists) kWh += list[slot]!;
    const halves = heaviest[slots.month[slot]!]!;
    const half = (slots.minute[slot]! / 30) | 0;
    if (kWh > halves[half]!) halves[half] = kWh;
  }
  return heaviest;
}

/**
 * What a way of heating adds to a charge on power [pence a year, VAT included]: Σ over the months of (highest half-hour
 * with it − without it) × 2 × price of a kW. The home's highest use of each half-hour of the day and that of the heating
 * are added as if both fell on one day, so more than that is not to be feared from the days; what a machine draws within
 * its half-hours comes from its mean over the heaviest day, so switching on and off can make it more. Null where the
 * version has no such charge, has an agreed power instead, or the home's half-hours are not known.
 */
export function powerCharge(version: PricedVersion, home: HomePeaks, heating: HeaviestDays): PowerCharge | null {
  const { demand } = version;
  if (!demand || demand.agreedKW !== undefined || !home.known) return null;
  const price = inclVat(version, demand.pencePerKWPerMonth);
  const without = home.kWh.map((halves) => 2 * Math.max(...halves));
  const withIt = home.kWh.map((halves, month) => 2 * Math.max(...halves.map((kWh, i) => kWh + heating[month]![i]!)));
  const byMonthPence = COMMON_MONTH_DAYS.map((_, month) => (withIt[month]! - without[month]!) * price);
  const pence = sumOf(byMonthPence);
  const grade = home.months === 12 ? 'measured' : 'estimated';
  const origin = tell('half-hours-of-months', { months: home.months });
  return {
    byMonthPence,
    pence,
    homeKW: Math.max(...without),
    withKW: Math.max(...withIt),
    working: {
      title: tell('charge-on-power'),
      formula: tell('power-with-less-without'),
      inputs: [
        {
          name: tell('power-without'),
          value: sumOf(without),
          unit: 'kW',
          grade,
          origin,
        },
        {
          name: tell('power-with'),
          value: sumOf(withIt),
          unit: 'kW',
          grade: 'assumed',
          origin: tell('same-with-heaviest'),
        },
        { name: tell('price-of-power'), value: price, unit: 'p', grade, origin: tell('the-prices') },
      ],
      result: { value: pence, unit: 'p' },
    },
  };
}

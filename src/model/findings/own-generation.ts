/** Electricity made at home, as the house's meter shows it: by day less is bought than what always runs by night. */

import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { leastOf, type MeterDays } from './meter-days.ts';

/** Hours by the clock in which it is dark all year, and in which the sun is high, in Britain and Germany. */
const DARK = { from: 22, to: 4 } as const;
const NOON = { from: 10, to: 16 } as const;
/** What always runs in a home, least, kW; about noon less than this share of it is bought where something else gives. */
const LEAST_ALWAYS_KW = 0.03;
const MOST_SHARE = 0.4;
/** The third quietest night shows it, since a power cut is quiet too. */
const QUIET_NIGHT = 2;
const LEAST_DAYS = 12;
/** Such days come again and again while the sun is high, at least one in so many. */
const LEAST_OFTEN = 0.08;
const LOW_HOURS = 2;

/** Days on which two hours about noon took less than two fifths of what runs all night even on quiet nights. */
function sunnyDays(days: MeterDays): number[] {
  if (days.meter !== 'whole-house' || days.count < LEAST_DAYS) return [];
  const all = Array.from({ length: days.count }, (_, day) => day);
  const [dark, noon] = [slotsBetween(days, DARK), slotsBetween(days, NOON)];
  const nights = all.map((day) => lowestKW(days, day, dark)).sort((a, b) => a - b);
  const alwaysKW = nights[QUIET_NIGHT]!;
  if (alwaysKW < LEAST_ALWAYS_KW) return [];
  return all.filter((day) => lowestKW(days, day, noon) < MOST_SHARE * alwaysKW);
}

/** Readings of a day between two clock times; from ten to four those of the day's beginning and its end. */
function slotsBetween({ perDay, hours }: MeterDays, { from, to }: { from: number; to: number }): number[] {
  const isInside = (hour: number) => (from < to ? hour >= from && hour < to : hour >= from || hour < to);
  return Array.from({ length: perDay }, (_, slot) => slot).filter((slot) => isInside(slot * hours));
}

/** The lowest two hours of some of a day's readings, kW. */
function lowestKW({ kWh, perDay, hours }: MeterDays, day: number, slots: readonly number[]): number {
  const least = leastOf(LOW_HOURS / hours, slots.length, (i) => kWh[day * perDay + slots[i]!]!);
  return meanOf([...least]) / hours;
}

/** Panels or another source at home. What it gave is not on this meter, so there is no amount: [kWh] and [pence] are zero. */
export function findOwnGeneration(days: MeterDays): Finding[] {
  const sunny = sunnyDays(days);
  const [first, last] = [sunny[0], sunny.at(-1)];
  if (first === undefined || last === undefined || sunny.length < LEAST_DAYS) return [];
  if (sunny.length < LEAST_OFTEN * (last - first + 1)) return [];
  return [
    {
      code: 'own-generation',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[first]!),
      to: toCivilDate(days.dayNumber[last]! + 1),
      sure: sureOf(0.8 + sunny.length / 400),
      grade: 'measured',
      seen: { days: sunny.length },
      ...{ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 },
      ask: ['panels'],
      check: ['panel-meter'],
      cautions: [],
    },
  ];
}

/** The same days without the hours in which the sun may shine. */
export function darkHours(days: MeterDays): MeterDays {
  const keep = Array.from({ length: days.perDay }, (_, slot) => slot).filter(
    (slot) => slot * days.hours < DARK.to || slot * days.hours >= DARK.from,
  );
  const perDay = keep.length;
  const kWh = new Float64Array(days.count * perDay);
  const dayKWh = new Float64Array(days.count);
  for (let day = 0; day < days.count; day++) {
    keep.forEach((slot, i) => {
      const value = days.kWh[day * days.perDay + slot]!;
      kWh[day * perDay + i] = value;
      dayKWh[day]! += value;
    });
  }
  return { ...days, perDay, kWh, dayKWh };
}

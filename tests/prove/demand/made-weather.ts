/** Made weather: a region's typical months with cold and mild spells, winters that differ, and days that hang together. */

import { COMMON_MONTH_DAYS } from '../../../src/model/calendar/civil.ts';
import type { ClimateRegion } from '../../../src/model/shapes/reference.ts';
import { smoothDailyMeans } from '../../../src/model/year/mean-preserving.ts';

export type Random = () => number;

/** Even numbers from 0 to 1 out of a seed (mulberry32, public domain). */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Standard normal (Box and Muller). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Lognormal about a middle with a relative spread. */
export const about = (random: Random, middle: number, spread: number): number =>
  middle * Math.exp(spread * normal(random));

/** A series whose neighbours are alike: standard deviation 1, lag-1 correlation `likeness`. */
export function spells(random: Random, count: number, likeness: number): number[] {
  let last = normal(random);
  return Array.from({ length: count }, () => {
    last = likeness * last + Math.sqrt(1 - likeness ** 2) * normal(random);
    return last;
  });
}

/**
 * Daily means [°C] from a day number on. Spells of a week or two (2.3 K, likeness 0.75) on seasons that run cold or mild
 * (1.1 K, likeness 0.985): degree days of single years then differ by about 8 %, as British ones do.
 */
export function madeTemperatures(random: Random, region: ClimateRegion, first: number, days: number): number[] {
  const smooth = smoothDailyMeans(region.monthlyMeanC, COMMON_MONTH_DAYS);
  const quick = spells(random, days, 0.75);
  const slow = spells(random, days, 0.985);
  return Array.from({ length: days }, (_, i) => {
    const date = new Date((first + i) * 86_400_000);
    const ofYear = first + i - Date.UTC(date.getUTCFullYear(), 0, 1) / 86_400_000;
    return smooth[Math.min(ofYear, 364)]! + 2.3 * quick[i]! + 1.1 * slow[i]!;
  });
}

/** The fixed ups and downs of a typical year: what each day is above or below the smooth curve, and the swing within a day. */

import { sumOf } from '../units/sums.ts';

/** Spread of daily means within a month, K: 2.8 in winter, 2.4 in summer; computed from one British site, 2020 to 2022. */
const SPREAD_MIDDLE_K = 2.6;
const SPREAD_SWING_K = 0.2;
/** Likeness of one day to the one before; from memory for British daily means. */
const DAY_TO_DAY = 0.75;
/** Half the difference between the warmest and the coldest hour, K: 2.3 in January, 3.9 in July; same site. */
const SWING_MIDDLE_K = 3.1;
const SWING_SUMMER_K = 0.8;
/** Clock time of the warmest hour, minutes; from memory. */
const WARMEST_MINUTE = 15 * 60;

/** Standard normal numbers, the same on every machine: two of a 32-bit linear congruential sequence make one (Box and Muller). */
export function normalNumbers(seed: number): () => number {
  let state = seed >>> 0;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

const summerness = (month: number): number => -Math.cos((2 * Math.PI * (month + 0.5)) / 12);

function buildPattern(): readonly Float64Array[] {
  const normal = normalNumbers(20_260_101);
  let last = 0;
  return Array.from({ length: 12 }, () =>
    Float64Array.from({ length: 31 }, () => {
      last = DAY_TO_DAY * last + Math.sqrt(1 - DAY_TO_DAY ** 2) * normal();
      return last;
    }),
  );
}

const PATTERN = buildPattern();

/**
 * Deviations [K] of the days of one month (0 to 11) from the smooth curve. They sum to zero and have the spread
 * of a British month: 2.8 K in January to 2.4 K in July.
 */
export function dayDeviations(month: number, days: number): Float64Array {
  const raw = PATTERN[month]!.slice(0, days);
  const mean = sumOf(raw) / days;
  const spread = Math.sqrt(raw.reduce((sum, v) => sum + (v - mean) ** 2, 0) / days);
  const wanted = SPREAD_MIDDLE_K - SPREAD_SWING_K * summerness(month);
  return raw.map((v) => ((v - mean) * wanted) / spread);
}

/** Temperature above the day's mean [K] at a clock time [minutes after midnight]: a cosine, warmest at 15:00. */
export function swingAt(month: number, minute: number): number {
  const halfK = SWING_MIDDLE_K + SWING_SUMMER_K * summerness(month);
  return halfK * Math.cos((2 * Math.PI * (minute - WARMEST_MINUTE)) / 1440);
}

/** How long a home keeps warm, by its own half-hours: what is not given in a night without heat, and has to be made good after it. */

import type { YearSlots } from '../calendar/zone.ts';
import { quantileOf } from '../chance/quantiles.ts';
import { meanOf } from '../units/sums.ts';

/** Hours, with the 10 and 90 % points of what the months say. */
export interface FittedWarmth {
  readonly hours: number;
  readonly low: number;
  readonly high: number;
  readonly months: number;
}

/** Judgements, no source: what counts as a night without heat, as good made of it, and as steady heat for the rest of the day. */
const SUMMER = [5, 6, 7];
const OFF_SHARE = 0.2;
const LEAST_OFF = 6;
const MOST_OFF = 22;
const MORNING = 4;
const LEAST_BOOST = 1.1;
const LEAST_STEADY = 8;
const MOST_UNSTEADY = 0.15;
const LEAST_MONTHS = 3;
/** Months with less than this share of the coldest one's heat say little. */
const LEAST_HEAT = 0.5;
const SEARCHED_HOURS = { from: 4, to: 200 } as const;
/** By how much the swing from day to night of one place and winter differs from the typical one, with the sun on it. A judgement. */
const SWING_DOUBT = 0.25;
/** From the middle of a normal spread to its 90 % point. */
const TO_NINETY = 1.2816;
const DAY = 48;

/**
 * Time constant [hours] of a home whose meter of heating has these mean half-hours by month (12 × 48, in any unit; hot water is
 * taken off as in summer), at the typical outdoor temperature of each half-hour [°C]. While no heat is given the rooms fall
 * by what is lost, and q − P is what they miss: with a loss of q at the usual temperature and heat P, they are at it again
 * when Σ (q − P) e^(t / τ) from the beginning of the night is 0. That has one root in τ, whatever the unit and the loss. Null where the home
 * is not let go by night, is heated in spells by day, or fewer than three months show it.
 */
export function fitWarmth(
  shape: readonly (readonly number[])[],
  outdoorC: readonly (readonly number[])[],
  roomC: number,
): FittedWarmth | null {
  const summer = Array.from({ length: DAY }, (_, half) => meanOf(SUMMER.map((month) => shape[month]![half]!)));
  const heat = shape.map((halves) => halves.map((kWh, half) => kWh - summer[half]!));
  const coldest = Math.max(...heat.map(meanOf));
  const fits = heat.flatMap((halves, month) => {
    const fit = meanOf(halves) < LEAST_HEAT * coldest ? null : fitDay(halves, outdoorC[month]!, roomC);
    return fit ? [fit] : [];
  });
  if (fits.length < LEAST_MONTHS) return null;
  const logs = fits.map(({ hours }) => Math.log(hours));
  const middle = quantileOf(Float64Array.from(logs), 0.5);
  const apart = Math.sqrt(meanOf(logs.map((one) => (one - middle) ** 2)));
  // The doubts of the steady heat and of the nights' cold are common to the months; their spread is on top.
  const steady = meanOf(fits.map(({ doubt }) => doubt));
  const swing = meanOf(fits.map(({ swingDoubt }) => swingDoubt));
  const spread = TO_NINETY * Math.hypot(apart, steady, swing);
  return {
    hours: Math.exp(middle),
    low: Math.exp(middle - spread),
    high: Math.exp(middle + spread),
    months: fits.length,
  };
}

/** Time constant [hours] by one mean day, and the standard deviations of its logarithm that the steady heat and the swing from day to night leave. */
function fitDay(heat: readonly number[], outdoorC: readonly number[], roomC: number) {
  const night = longestOff(heat);
  if (!night || night.length < LEAST_OFF || night.length > MOST_OFF) return null;
  const at = (i: number) => (night.start + i) % DAY;
  const perK = Array.from({ length: DAY }, (_, i) => heat[at(i)]! / (roomC - outdoorC[at(i)]!));
  const evening = meanOf(perK.slice(-LEAST_STEADY));
  // Made good once it heats as in the evening.
  const settled = 1 + perK.findLastIndex((one) => one > LEAST_BOOST * evening);
  const morning = meanOf(perK.slice(night.length, night.length + MORNING));
  if (morning < LEAST_BOOST * evening || settled > DAY - LEAST_STEADY) return null;
  const steady = perK.slice(settled);
  const mean = meanOf(steady);
  const deviation = Math.sqrt(meanOf(steady.map((one) => (one - mean) ** 2)));
  if (!(mean > 0) || deviation > MOST_UNSTEADY * mean) return null;
  const error = deviation / Math.sqrt(steady.length);
  const meanC = meanOf(outdoorC);
  /** By a loss a kelvin that is so much otherwise, and by a swing about the day's mean that is so many times the typical one. */
  const timeBy = (more: number, swing: number) => {
    const kelvin = (i: number) => roomC - meanC - swing * (outdoorC[at(i)]! - meanC);
    const evenly = meanOf(steady.map((_, i) => heat[at(settled + i)]! / kelvin(settled + i)));
    return rootOf(Array.from({ length: settled }, (_, i) => (evenly + more) * kelvin(i) - heat[at(i)]!));
  };
  const hours = timeBy(0, 1);
  if (!hours) return null;
  const { from, to } = SEARCHED_HOURS;
  const half = (less: number | null, more: number | null) => Math.abs(Math.log((more ?? from) / (less ?? to))) / 2;
  return {
    hours,
    doubt: half(timeBy(-error, 1), timeBy(error, 1)),
    swingDoubt: half(timeBy(0, 1 - SWING_DOUBT), timeBy(0, 1 + SWING_DOUBT)),
  };
}

/** τ [hours] at which what is missed half-hour by half-hour is made good at the end; null where none of those searched does. */
function rootOf(missed: readonly number[]): number | null {
  const left = (hours: number) =>
    missed.reduce((sum, one, i) => sum + one * Math.exp((i - missed.length) / 2 / hours), 0);
  let [low, high] = [SEARCHED_HOURS.from as number, SEARCHED_HOURS.to as number];
  if (left(low) > 0 || left(high) < 0) return null;
  for (let i = 0; i < 40; i++) {
    const middle = Math.sqrt(low * high);
    if (left(middle) < 0) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

/** The longest run of half-hours all but without heat, over midnight. */
function longestOff(heat: readonly number[]): { readonly start: number; readonly length: number } | null {
  const most = OFF_SHARE * meanOf(heat);
  const isOff = (half: number) => heat[half % DAY]! < most;
  let best: { start: number; length: number } | null = null;
  for (let start = 0; start < DAY; start++) {
    if (!isOff(start) || isOff(start + DAY - 1)) continue;
    let length = 1;
    while (length < DAY && isOff(start + length)) length++;
    if (!best || length > best.length) best = { start, length };
  }
  return best;
}

/** Typical outdoor temperature of each half-hour of the clock by month [°C], 12 × 48. */
export function outdoorByMonth(outdoorC: Float64Array, { month, minute, count }: YearSlots): number[][] {
  const sums = Array.from({ length: 12 }, () => new Array<number>(DAY).fill(0));
  const counts = Array.from({ length: 12 }, () => new Array<number>(DAY).fill(0));
  for (let slot = 0; slot < count; slot++) {
    const half = (minute[slot]! / 30) | 0;
    sums[month[slot]!]![half]! += outdoorC[slot]!;
    counts[month[slot]!]![half]! += 1;
  }
  return sums.map((halves, m) => halves.map((sum, half) => sum / counts[m]![half]!));
}

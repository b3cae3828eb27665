/** The price of every half-hour of a week, as one version of a tariff has it. */
import { monthOf, toDayNumber, weekdayIndex } from '../../model/calendar/civil.ts';
import type { PricedVersion, PriceSeries } from '../../model/shapes/tariff.ts';
import type { Wording } from '../../model/shapes/told.ts';
import { bandAt } from '../../model/tariff/band-times.ts';
import { sortIntoClasses } from '../../model/tariff/price-classes.ts';
import { inclVat } from '../../model/tariff/slot-price.ts';
import { thin } from '../../model/thin/thin.ts';

export interface WeekPrices {
  /** 336 half-hours from Monday midnight on, and one entry past the end so that the last step has its width. */
  readonly steps: readonly { readonly half: number; readonly pence: number | null; readonly band: Wording }[];
  /** Bands met in the week, cheapest first, with the share of the week each holds. */
  readonly bands: readonly { readonly name: Wording; readonly pence: number; readonly share: number }[];
  /** 1 to 12. */
  readonly month: number;
  /** The first units of a day or month cost another price than the one shown. */
  readonly isStepped?: boolean;
  /** Of dated prices, which differ from week to week. */
  readonly isMean?: boolean;
}

export const HALVES_A_DAY = 48;
const HALVES_A_WEEK = 7 * HALVES_A_DAY;

/**
 * A week in the month given (1 to 12) without bank holidays, prices with VAT; a half-hour without a price stays a gap.
 * Of dated prices it is the mean at each half-hour and weekday of that month, of all days where the month has none.
 */
export function weekPricesSeries(version: PricedVersion, month: number): WeekPrices {
  if (version.series) return meanWeek(version, version.series, month);
  const counts = new Map<number, number>();
  const steps = Array.from({ length: HALVES_A_WEEK }, (_, half) => {
    // In summer a meter that stays on winter time is an hour behind the clock on the wall.
    const at = (half + HALVES_A_WEEK - (isHourBehind(version, month) ? 2 : 0)) % HALVES_A_WEEK;
    const index = bandAt(version, month, Math.floor(at / HALVES_A_DAY), (at % HALVES_A_DAY) * 30);
    const band = version.bands[index];
    if (!band) return { half, pence: null, band: '' };
    counts.set(index, (counts.get(index) ?? 0) + 1);
    return { half, pence: inclVat(version, band.pencePerKWh), band: band.name };
  });
  const last = steps.at(-1)!;
  const bands = [...counts].map(([index, count]) => ({
    name: version.bands[index]!.name,
    pence: inclVat(version, version.bands[index]!.pencePerKWh),
    share: count / HALVES_A_WEEK,
  }));
  return {
    steps: [...steps, { ...last, half: HALVES_A_WEEK }],
    bands: bands.sort((a, b) => a.pence - b.pence),
    month,
    ...(version.bands.some(({ blocks }) => blocks) ? { isStepped: true } : {}),
  };
}

/** April to October: the months that are wholly or nearly in summer time in Europe. */
const isHourBehind = ({ staysOnWinterTime }: PricedVersion, month: number): boolean =>
  staysOnWinterTime === true && month >= 4 && month <= 10;

function meanWeek(version: PricedVersion, series: PriceSeries, month: number): WeekPrices {
  const ofMonth = series.days.filter(({ date }) => monthOf(date) === month);
  const days = ofMonth.length >= 7 ? ofMonth : series.days;
  const sums = new Float64Array(HALVES_A_WEEK);
  const counts = new Float64Array(HALVES_A_WEEK);
  for (const { date, pencePerKWh } of days) {
    // The two days on which the clock changes have no place at some half-hours.
    if (pencePerKWh.length !== HALVES_A_DAY) continue;
    const monday = weekdayIndex(toDayNumber(date)) * HALVES_A_DAY;
    pencePerKWh.forEach((pence, half) => {
      if (pence === null) return;
      sums[monday + half]! += inclVat(version, pence);
      counts[monday + half]! += 1;
    });
  }
  const means = Array.from(sums, (sum, half) => (counts[half]! > 0 ? sum / counts[half]! : null));
  const known = means.filter((pence) => pence !== null);
  const classes = sortIntoClasses(known);
  const shares = new Float64Array(classes.names.length);
  let at = 0;
  const steps = means.map((pence, half) => {
    if (pence === null) return { half, pence, band: '' };
    const place = classes.bucketOfSlot[at++]!;
    shares[place]! += 1 / known.length;
    return { half, pence, band: classes.names[place]! };
  });
  return {
    steps: [...steps, { ...steps.at(-1)!, half: HALVES_A_WEEK }],
    bands: classes.names.map((name, place) => ({ name, pence: classes.pencePerKWh[place]!, share: shares[place]! })),
    month,
    isMean: true,
  };
}

/**
 * A step holds until the next, so that one with the price before it draws nothing and goes first; of what is left,
 * cheapest and dearest of each slice stay. The first and the last stay always: they bound the week.
 */
export function thinSteps(steps: WeekPrices['steps'], most: number): WeekPrices['steps'] {
  const turns = steps.filter(
    (step, at) =>
      at === 0 ||
      at === steps.length - 1 ||
      step.pence !== steps[at - 1]!.pence ||
      // The painter ends a line at its last step before a gap.
      (step.pence !== null && steps[at + 1]!.pence === null),
  );
  if (turns.length <= most) return turns;
  return thin(turns, most, ({ pence }) => pence);
}

/** Moves labels apart that would stand on each other, keeping their order; each stays as near as it can. */
export function spreadLabels(places: readonly number[], gap: number): number[] {
  const order = places.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  const moved = order.map((one) => one.place);
  for (let i = 1; i < moved.length; i++) moved[i] = Math.max(moved[i]!, moved[i - 1]! + gap);
  // What was pushed down is pulled back by half, so that a crowd stays centred on its marks.
  const pushed = moved.reduce((sum, place, i) => sum + place - order[i]!.place, 0) / Math.max(moved.length, 1);
  const result = new Array<number>(places.length);
  order.forEach((one, i) => {
    result[one.index] = moved[i]! - pushed;
  });
  return result;
}

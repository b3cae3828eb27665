/** Brine over the visits to one plant: whether it falls from year to year, and not only as every winter goes on. */
import { compareDates, toDayNumber } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { SiteVisit } from '../shapes/site-readings.ts';
import { type FluidTables, freezingPoint, massPercent } from './brine.ts';

export interface BrineReading {
  readonly date: CivilDate;
  readonly inC: number;
  readonly outC: number | null;
}
/** `years`: the same time of the year; `season`: a fall that a winter alone may bring. */
export const FALLS = ['years', 'season'] as const;
export interface BrineFall {
  readonly kind: (typeof FALLS)[number];
  readonly from: BrineReading;
  readonly to: BrineReading;
  readonly fallK: number;
}
export interface BrineCourse {
  /** One a day, oldest first. */
  readonly readings: readonly BrineReading[];
  /** Of the newest brine whose glycol was read [°C]. */
  readonly freezingC: number | null;
  readonly fall: BrineFall | null;
}

const YEAR_DAYS = 365.25;
/** Days of the year this close are the same time of it: brine lags the weather by weeks. Common practice. */
const SAME_TIME_DAYS = 30;
/** Two thermometers, each good for half a kelvin. Common practice. */
const LEAST_FALL_K = 1;
/** Within one winter brine falls by several kelvin of itself; less than this is not worth a word. A judgement. */
const LEAST_SEASON_FALL_K = 2;
/** A visit this little warmer than the one before is no turn. */
const UNEVEN_K = 0.3;

/**
 * Brine by visit [°C] and its fall [K], if it has one: the newest against the oldest at the same time of another year;
 * else over three visits or more of which each is colder than the one before. A visit whose brine in and out are exchanged
 * is left out. Common practice: brine is compared with that of last year in the same week.
 */
export function brineCourse(visits: readonly SiteVisit[], fluids: FluidTables): BrineCourse {
  const byDate = new Map<CivilDate, BrineReading>();
  let freezingC: number | null = null;
  for (const { date, readings } of visits.toSorted((a, b) => compareDates(a.date, b.date))) {
    const { brineInC, brineOutC, glycol } = readings;
    if (glycol) {
      const percent = glycol.basis === 'mass' ? glycol.percent : massPercent(fluids, glycol.kind, glycol.percent);
      freezingC = freezingPoint(fluids, glycol.kind, percent);
    }
    if (brineInC === undefined || (brineOutC !== undefined && brineOutC >= brineInC)) continue;
    byDate.set(date, { date, inC: brineInC, outC: brineOutC ?? null });
  }
  const readings = [...byDate.values()];
  return { readings, freezingC, fall: overYears(readings) ?? overSeason(readings) };
}

function overYears(readings: readonly BrineReading[]): BrineFall | null {
  const to = readings.at(-1);
  const from = to && readings.find((one) => isSameTime(one, to));
  return from && from.inC - to.inC >= LEAST_FALL_K ? { kind: 'years', from, to, fallK: from.inC - to.inC } : null;
}

function isSameTime(a: BrineReading, b: BrineReading): boolean {
  const years = (toDayNumber(b.date) - toDayNumber(a.date)) / YEAR_DAYS;
  return Math.round(years) >= 1 && Math.abs(years - Math.round(years)) * YEAR_DAYS <= SAME_TIME_DAYS;
}

function overSeason(readings: readonly BrineReading[]): BrineFall | null {
  if (readings.length < 3) return null;
  const falls = readings.every((one, i) => i === 0 || one.inC <= readings[i - 1]!.inC + UNEVEN_K);
  const [from, to] = [readings[0]!, readings.at(-1)!];
  return falls && from.inC - to.inC >= LEAST_SEASON_FALL_K
    ? { kind: 'season', from, to, fallK: from.inC - to.inC }
    : null;
}

/** The truth of one made home: whole local days of 2025, each reading a whole number of watt-hours or tenths of a degree. */
import { seededRandom } from '../../build/damage.ts';
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import { startOfDay } from '../../src/model/calendar/zone.ts';

export interface Reading {
  /** Instant of its start [ms since 1970]. */
  readonly at: number;
  /** Wh, or tenths of a degree. */
  readonly value: number;
  readonly missing: boolean;
}
export interface MadeDay {
  readonly date: string;
  readonly start: number;
  readonly readings: readonly Reading[];
}

export const FIRST_DAY = toDayNumber('2025-01-01');
export const YEAR_DAYS = 365;

export interface MadeRecord {
  readonly minutes: number;
  readonly days: readonly MadeDay[];
}

/** @param minutes length of a reading; 1440 is the local day @param what sets the size by the season */
export function makeRecord(
  zone: string,
  minutes: number,
  what: 'use' | 'sun' | 'gas' | 'degrees',
  seed: number,
  withGaps: boolean,
): MadeRecord {
  const random = seededRandom(seed);
  const gaps = new Set(withGaps ? Array.from({ length: 4 }, () => 5 + Math.floor(random() * (YEAR_DAYS - 10))) : []);
  const days = Array.from({ length: YEAR_DAYS }, (_, i): MadeDay => {
    const day = FIRST_DAY + i;
    const start = startOfDay(zone, day);
    const count = minutes >= 1440 ? 1 : (startOfDay(zone, day + 1) - start) / (minutes * 60_000);
    const cold = 0.5 + 0.5 * Math.cos((2 * Math.PI * (i - 15)) / 365);
    const weather = 0.7 + 0.6 * random();
    const readings = Array.from({ length: count }, (__, n): Reading => {
      const hour = (n * minutes) / 60;
      const value = Math.round(sizeOf(what, hour, cold, weather, minutes, random));
      return { at: start + n * minutes * 60_000, value, missing: gaps.has(i) && n % 7 === 3 };
    });
    return { date: toCivilDate(day), start, readings };
  });
  return { minutes, days };
}

function sizeOf(
  what: 'use' | 'sun' | 'gas' | 'degrees',
  hour: number,
  cold: number,
  weather: number,
  minutes: number,
  random: () => number,
): number {
  const sun = Math.max(0, Math.sin((Math.PI * (hour - 6)) / 12));
  const share = minutes / 60;
  if (what === 'degrees') return 10 * (18 - 17 * cold + 8 * (weather - 1) + (minutes >= 1440 ? 0 : 4 * sun));
  if (minutes >= 1440) {
    const ofDay = { use: 8000 + 4000 * cold, sun: 14_000 * (1.1 - cold), gas: 2000 + 60_000 * cold }[what];
    return ofDay * weather;
  }
  if (what === 'sun') return 2500 * (1.1 - cold) * sun * weather * share;
  if (what === 'gas') return (200 + 4000 * cold * weather * (hour > 5 && hour < 22 ? 1 : 0.2)) * share;
  const peak = hour >= 17 && hour < 20 ? 700 : 0;
  return (180 + 260 * random() + peak * weather + 150 * cold) * share;
}

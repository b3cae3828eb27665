/** Hours of an invented year: outdoor air that follows the day, and the sun behind clouds of its own. */
import { madeDays } from '../../../sample-bills/made-weather.ts';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import type { Chance } from '../chance.ts';

export const SLOTS = 48;

export interface MadeAir {
  /** Day number of the first day. */
  readonly first: number;
  readonly count: number;
  readonly dayMeanC: Float64Array;
  /** By half-hour: outdoor air, °C, and sun on level ground, kW/m². */
  readonly airC: Float64Array;
  readonly sun: Float64Array;
}

const LATITUDE = (52.5 / 180) * Math.PI;
const TILT = (23.45 / 180) * Math.PI;

/** From −1 to 1 over a day, by half-hour, greatest at an hour. */
const roundOfDay = (hour: number) =>
  Float64Array.from({ length: SLOTS }, (_, i) => Math.cos((2 * Math.PI * (i / 2 + 0.25 - hour)) / 24));
const AFTERNOON = roundOfDay(15);
const NOON = roundOfDay(12.2);

/** Days of a region, each with its own swing from night to afternoon: wide under a clear sky, narrow under cloud. */
export function makeAir(regionId: number, from: string, to: string, seed: number, chance: Chance): MadeAir {
  const days = madeDays(regionId, from, to, seed);
  const count = days.length;
  const airC = new Float64Array(count * SLOTS);
  const sun = new Float64Array(count * SLOTS);
  let clear = 0.5;
  days.forEach(({ dayNumber, meanC }, day) => {
    clear = Math.min(1, Math.max(0.08, 0.45 + 0.45 * (clear - 0.45) + chance.normal(0, 0.25)));
    const season = Math.cos((2 * Math.PI * ((dayNumber % 365.25) - 171)) / 365.25);
    const swingK = (1.2 + 1.6 * (1 + season)) * (0.4 + clear);
    const declination = TILT * season;
    const mean = Math.sin(LATITUDE) * Math.sin(declination);
    const swing = Math.cos(LATITUDE) * Math.cos(declination);
    for (let i = 0; i < SLOTS; i++) {
      airC[day * SLOTS + i] = meanC + swingK * AFTERNOON[i]!;
      const height = mean + swing * NOON[i]!;
      sun[day * SLOTS + i] =
        height > 0 ? 0.95 * height ** 1.15 * Math.max(0.05, clear + chance.uniform(-0.15, 0.15)) : 0;
    }
  });
  return {
    first: toDayNumber(from),
    count,
    dayMeanC: Float64Array.from(days, ({ meanC }) => meanC),
    airC,
    sun,
  };
}

/** Invented weather for the invented households: a region's monthly means plus days that hang together, from a seed. */
import { toDayNumber } from '../src/model/calendar/civil.ts';
import { regions } from '../src/reference/climate.ts';

/** Small seeded generator (mulberry32, public domain): the same seed makes the same household on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Standard normal value from two uniform ones (Box and Muller). */
export function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

export interface MadeDay {
  readonly dayNumber: number;
  readonly meanC: number;
}

/** Daily mean temperatures from `from` up to `to` (exclusive). `shiftK` makes the whole span colder or milder. */
export function madeDays(regionId: number, from: string, to: string, seed: number, shiftK = 0): MadeDay[] {
  const region = regions.find((r) => r.id === regionId);
  if (!region) throw new Error(`there is no climate region ${regionId}`);
  const random = seeded(seed);
  const days: MadeDay[] = [];
  let deviationK = 0;
  for (let dayNumber = toDayNumber(from); dayNumber < toDayNumber(to); dayNumber++) {
    // One day follows the other with a correlation of 0.75 and a spread of 2.8 K: about what daily records show.
    deviationK = 0.75 * deviationK + 2.8 * Math.sqrt(1 - 0.75 ** 2) * normal(random);
    days.push({ dayNumber, meanC: smoothMeanC(region.monthlyMeanC, dayNumber) + deviationK + shiftK });
  }
  return days;
}

/** Straight lines through the middles of the months. */
function smoothMeanC(monthlyMeanC: readonly number[], dayNumber: number): number {
  const at = new Date(dayNumber * 86_400_000);
  const position = at.getUTCMonth() + (at.getUTCDate() - 0.5) / 30.44 - 0.5;
  const before = Math.floor(position);
  const share = position - before;
  const a = monthlyMeanC[(before + 12) % 12]!;
  const b = monthlyMeanC[(before + 13) % 12]!;
  return a + share * (b - a);
}

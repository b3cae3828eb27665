/** Seeded chance for the made households. */
import { normal, seeded } from '../../sample-bills/made-weather.ts';

export interface Chance {
  readonly uniform: (low: number, high: number) => number;
  readonly normal: (mean: number, spread: number) => number;
  readonly yes: (share: number) => boolean;
  readonly pick: <T>(values: readonly T[]) => T;
  readonly random: () => number;
}

export function chanceOf(seed: number): Chance {
  const random = seeded(seed * 2_654_435_761);
  return {
    random,
    uniform: (low, high) => low + (high - low) * random(),
    normal: (mean, spread) => mean + spread * normal(random),
    yes: (share) => random() < share,
    pick: (values) => values[Math.floor(random() * values.length)]!,
  };
}

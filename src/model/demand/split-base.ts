/** Splits what a record uses every day of the year into hot water, cooking or appliances, and what neither explains. */

import { normalShare } from '../chance/normal-share.ts';
import type { Household } from '../shapes/household.ts';
import { together } from './figure.ts';
import type { HotWaterDemand } from './hot-water.ts';
import { besideWater, UNCOUNTED_KWH } from './known-base.ts';
import type { Efficiency } from './present-efficiency.ts';
import type { RecordMeter } from './record.ts';

export interface BaseSplit {
  /** Heat for hot water, kWh a year; absent where another meter sees it. */
  readonly waterKWh?: number;
  readonly waterErrorKWh?: number;
  /** Use as metered for cooking, or for lights and appliances on a whole-house meter, kWh a year. */
  readonly besideKWh: number;
  /** Heat the base could make at most, what goes beside it taken off. */
  readonly baseHeatKWh: number;
  /** Heat of the base that neither explains: losses of pipes and boiler, towel rails, anything else. */
  readonly leftoverKWh: number;
}

export interface RecordBase {
  /** Use of every day alike, kWh a year as metered, with one standard error. */
  readonly kWh: number;
  readonly errorKWh: number;
  /** False where the base itself was taken from the hot-water method, and so says nothing about it. */
  readonly seen: boolean;
}

/** In 1 home of 10 something large runs in any weather: a pool, an outbuilding, a room always heated. Common practice, no source. */
const UNCOUNTED = [
  { share: 0.9, kWh: UNCOUNTED_KWH },
  { share: 0.1, kWh: 5000 },
] as const;

/**
 * Heat for hot water [kWh a year] out of a record's base = hot water W + beside C + uncounted O, O never below nothing.
 * W is known beforehand from the people with its spread (lognormal), C with its own (normal), O by its mean
 * (exponential, now and then large); what the base says is weighed against that on a row of possible W. So a base that is
 * too small pulls the hot water down, while from one that is far too large the people take no more than people do.
 * Source: Bayes' rule on a grid; a normal and an exponential quantity added (exponentially modified Gaussian, any text).
 */
export function splitBase(
  base: RecordBase,
  meter: RecordMeter,
  household: Household,
  efficiency: Efficiency,
  need: HotWaterDemand,
): BaseSplit {
  const beside = besideWater(meter, household, need.people);
  const besideKWh = Math.min(base.kWh, beside.kWh);
  const baseHeatKWh = (base.kWh - besideKWh) * efficiency.value;
  const seenElsewhere = household.present.hotWaterFrom === 'immersion' && meter !== 'whole-house';
  if (seenElsewhere) return { besideKWh, baseHeatKWh, leftoverKWh: baseHeatKWh };
  if (!base.seen) {
    const waterKWh = Math.min(need.kWh, baseHeatKWh);
    return { waterKWh, waterErrorKWh: need.errorKWh, besideKWh, baseHeatKWh, leftoverKWh: baseHeatKWh - waterKWh };
  }
  const wholeHeatKWh = base.kWh * efficiency.value;
  const restErrorKWh = together(
    base.errorKWh * efficiency.value,
    wholeHeatKWh * efficiency.error,
    beside.errorKWh * efficiency.value,
  );
  const rest = { kWh: wholeHeatKWh - beside.kWh * efficiency.value, errorKWh: Math.max(1, restErrorKWh) };
  const water = weigh(need, rest);
  // However unsure the base is, it makes no more than its heat.
  const waterKWh = Math.min(water.mean, wholeHeatKWh);
  return {
    waterKWh,
    waterErrorKWh: water.error,
    besideKWh,
    baseHeatKWh,
    leftoverKWh: Math.max(0, baseHeatKWh - waterKWh),
  };
}

/** Possible amounts of hot water that are weighed. */
const STEPS = 160;
const SPREADS = 8;

/** Mean and standard deviation of the hot water [kWh a year], given what the base holds beside cooking. */
function weigh(need: HotWaterDemand, rest: { kWh: number; errorKWh: number }): { mean: number; error: number } {
  const sigma = Math.sqrt(Math.log1p((Math.max(1, need.errorKWh) / Math.max(1, need.kWh)) ** 2));
  const middle = Math.log(Math.max(1, need.kWh));
  const top = Math.min(Math.exp(middle + SPREADS * sigma), Math.max(0, rest.kWh) + SPREADS * rest.errorKWh);
  const kWh = Array.from({ length: STEPS }, (_, i) => ((i + 0.5) * top) / STEPS);
  const logs = kWh.map((w) => {
    const left = rest.kWh - w;
    const ofNeed = -0.5 * ((Math.log(w) - middle) / sigma) ** 2 - Math.log(w);
    return (
      ofNeed + logSum(UNCOUNTED.map(({ share, kWh: mean }) => Math.log(share) + logDensity(left, rest.errorKWh, mean)))
    );
  });
  const most = Math.max(...logs);
  let sum = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i < STEPS; i++) {
    const weight = Math.exp(logs[i]! - most);
    sum += weight;
    first += weight * kWh[i]!;
    second += weight * kWh[i]! ** 2;
  }
  const mean = first / sum;
  return { mean, error: Math.sqrt(Math.max(0, second / sum - mean ** 2)) };
}

/** Logarithm of the density at `x` of an exponential quantity of this mean, seen with a normal error. */
function logDensity(x: number, error: number, mean: number): number {
  const pull = error / mean;
  return (pull * pull) / 2 - x / mean - Math.log(mean) + logShare(x / error - pull);
}

const logSum = (logs: readonly number[]): number => {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
};

/** Natural logarithm of the normal share below `z`; far down by its first term, where the share itself is nothing. */
const logShare = (z: number): number =>
  z > -7 ? Math.log(normalShare(z)) : -0.5 * z * z - Math.log(-z * Math.sqrt(2 * Math.PI));

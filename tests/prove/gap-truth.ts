/**
 * The true parts of a made bill: the made home itself is lived through again with each set of causes switched on or off,
 * day by day, and Shapley's mean taken. Nothing here knows of the split that is being proved but the mean itself.
 */

import { heatPumpOf } from '../../src/model/bill-gap/estimate-for-days.ts';
import { shapley } from '../../src/model/bill-gap/shapley.ts';
import { toDayNumber } from '../../src/model/calendar/civil.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { reference } from '../../src/reference/index.ts';
import { bandShares, type GapCase, sumOf } from './gap-case.ts';
import { estimatedRatesFor } from './gap-prices.ts';
import { factorAt } from './made-home.ts';

const IN_ORDER = [
  'price',
  'when',
  'weather',
  'heat-used',
  'hot-water',
  'efficiency-rooms',
  'efficiency-water',
  'backup',
  'other-electricity',
] as const;
export const TRUE_CAUSES = [...IN_ORDER, 'metering'] as const;
export type TrueCause = (typeof TRUE_CAUSES)[number];

export type TrueParts = Readonly<Record<TrueCause | 'standing-charge', number>>;

/** Pence of each cause, beyond the calendar's. */
export function trueParts(made: GapCase): TrueParts {
  const { record, firstDay, days, estimated, home } = made;
  const pump = heatPumpOf(made.estimate);
  const space = spaceUnits(made);
  const water = (waterOn: number, efficiencyOn: number) => {
    const heat = waterOn ? sumDays(record.waterHeat, firstDay, days) : estimated.waterKWh * pump.waterEfficiency;
    return heat / (efficiencyOn ? home.waterFactor : pump.waterEfficiency);
  };
  const rates = estimatedRatesFor(made);
  const shares = bandShares(made);
  const heaterKWh = sumOf(record.heater, firstDay, days);
  const extrasKWh = estimated.otherKWh - estimated.waterKWh;
  const cost = (on: readonly number[]) => {
    const [price, when, weather, heat, hotWater, inRooms, inWater, backup, other] = on as number[];
    const units =
      space[weather! * 4 + heat! * 2 + inRooms!]! +
      water(hotWater!, inWater!) +
      extrasKWh +
      backup! * heaterKWh +
      other! * made.otherKWh;
    const prices = price ? made.billedPrices : rates.prices;
    const mean = (when ? shares : rates.shares).reduce((sum, share, i) => sum + share * prices[i]!, 0);
    return units * mean;
  };
  const parts = shapley(
    IN_ORDER.map(() => 0),
    IN_ORDER.map(() => 1),
    cost,
  );
  const named = Object.fromEntries(IN_ORDER.map((cause, i) => [cause, parts[i]!])) as Record<
    (typeof IN_ORDER)[number],
    number
  >;
  // What was billed and not used is overpaid at the bill's own price.
  const metering = made.meteringKWh * shares.reduce((sum, share, i) => sum + share * made.billedPrices[i]!, 0);
  return { ...named, metering, 'standing-charge': (made.standing.billed - made.standing.estimated) * days };
}

/** Units for the rooms by (weather, heat used, efficiency), each as estimated or as it came. */
function spaceUnits(made: GapCase): number[] {
  const { record, firstDay, days, estimated, home, estimate, from } = made;
  const pump = heatPumpOf(estimate);
  const { climate, demand } = estimate.appraisal;
  const region = reference.regions.find(({ id }) => id === climate.regionId)!;
  const start = toDayNumber(from);
  const units = new Array<number>(8).fill(0);
  for (let i = 0; i < days; i++) {
    const year = new Date((start + i) * 86_400_000).getUTCFullYear();
    const typical = typicalYear(region, year, estimate.household.zone).dailyMeanC[
      start + i - toDayNumber(`${year}-01-01`)
    ]!;
    const asked = (home.lossWPerK * 24 * Math.max(0, home.baseC - record.outdoorC[firstDay + i]!)) / 1000;
    const unsteady = asked > 0 ? record.spaceHeat[firstDay + i]! / asked : 1;
    for (const weather of [0, 1]) {
      const outdoorC = weather ? record.outdoorC[firstDay + i]! : typical;
      const heats = [
        (made.estimatedLossWPerK * 24 * Math.max(0, demand.baseC - outdoorC)) / 1000,
        (home.lossWPerK * 24 * Math.max(0, home.baseC - outdoorC) * unsteady) / 1000,
      ];
      heats.forEach((heat, used) => {
        units[weather * 4 + used * 2]! += heat / pump.spaceEfficiency;
        units[weather * 4 + used * 2 + 1]! += heat / factorAt(home, outdoorC);
      });
    }
  }
  // The written estimate shares its months' heat a little otherwise than the line of a single loss and base does.
  const share = estimated.spaceKWh / units[0]!;
  return units.map((kWh, place) => ((place >> 1) & 1 ? kWh : kWh * share));
}

function sumDays(byDay: Float64Array, firstDay: number, days: number): number {
  let sum = 0;
  for (let i = firstDay; i < firstDay + days; i++) sum += byDay[i]!;
  return sum;
}

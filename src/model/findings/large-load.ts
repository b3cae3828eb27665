/** A large load of even power on the whole house's meter that is not the heating: a vehicle, a tub. */

import { type Finding, sureOf } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { daysAndCost, type EvenLoad, hoursEach, isOfCompressor } from './even-loads.ts';
import { isHeater } from './heater.ts';
import type { MeterDays, Prices } from './meter-days.ts';
import type { Step } from './steps.ts';

const LEAST_DAYS = 7;
const LEAST_LIKENESS = 0.5;
const MOST_RAMP = 0.06;
/** A charger at a socket (10 A) runs for hours; one with its own supply is stronger than anything in the kitchen. */
const SOCKET = { leastKW: 1.9, leastHours: 3 } as const;
const OWN_SUPPLY = { leastKW: 3.3, leastHours: 1 } as const;

function isLarge(load: EvenLoad, days: MeterDays): boolean {
  const hours = hoursEach(load);
  const { powerKW, likeness } = load;
  const long = [SOCKET, OWN_SUPPLY].some(({ leastKW, leastHours }) => powerKW >= leastKW && hours >= leastHours);
  return (
    long &&
    likeness >= LEAST_LIKENESS &&
    Math.abs(load.ramp ?? 0) <= MOST_RAMP &&
    load.days.length >= LEAST_DAYS &&
    !isOfCompressor(load, days) &&
    !isHeater(load, days) &&
    !isOfTheCold(load, days)
  );
}

/** Days about a load's own, and by how much its own are colder where it comes with the cold: the mean of them below that, K and °C. Judgements. */
const OF_THE_COLD = { aboutDays: 14, leastOthers: 4, colderK: 3, belowC: 3.5 } as const;

/** Whether a load runs on the coldest days only: a heater that helps, not something that is charged or washed. */
function isOfTheCold({ days: own }: EvenLoad, { dayNumber, outdoorC }: MeterDays): boolean {
  const { aboutDays, leastOthers, colderK, belowC } = OF_THE_COLD;
  const [first, last] = [dayNumber[own[0]!]! - aboutDays, dayNumber[own.at(-1)!]! + aboutDays];
  const others = [...dayNumber.keys()].filter(
    (day) => dayNumber[day]! >= first && dayNumber[day]! <= last && !own.includes(day),
  );
  const meanC = (places: readonly number[]) => meanOf(places.map((day) => outdoorC[day]!));
  return others.length >= leastOthers && meanC(own) < belowC && meanC(own) <= meanC(others) - colderK;
}

/** For some hours a heater looks the same, alone or with a compressor that runs beside it; at its own power for longer too. */
const HEATER = { mostKW: 6.2, mostHours: 3.3, ownKW: [2.5, 3.2] } as const;
const mayBeHeater = (load: EvenLoad) =>
  (load.powerKW < HEATER.mostKW && hoursEach(load) < HEATER.mostHours) ||
  (load.powerKW >= HEATER.ownKW[0] && load.powerKW <= HEATER.ownKW[1]);

/** A charger at a socket is as strong as much else: of what is nearly as high beside it, this share of its least hours is as long. A judgement. */
const AS_LONG = 0.75;

/**
 * A large load with the steps beside its own that are nearly as high: a heat pump that runs meanwhile has changed them.
 * `counted` are those that another load has already.
 */
function withNear(load: EvenLoad, counted: Set<Step>): EvenLoad {
  const leastKWh = load.powerKW >= OWN_SUPPLY.leastKW ? 0 : SOCKET.leastHours * load.powerKW * AS_LONG;
  const near = load.near.filter((step) => load.steps.includes(step) || step.kWh >= leastKWh);
  const steps = near.filter((step) => !counted.has(step));
  for (const step of steps) counted.add(step);
  return {
    ...load,
    steps,
    days: [...new Set(steps.map(({ day }) => day))],
    kWh: steps.reduce((sum, { kWh }) => sum + kWh, 0),
  };
}

/** The large loads among the even ones, with all their steps. */
export function largeLoads(days: MeterDays, loads: readonly EvenLoad[]): EvenLoad[] {
  if (days.meter !== 'whole-house') return [];
  const counted = new Set<Step>();
  return loads
    .filter((load) => isLarge(load, days))
    .map((load) => withNear(load, counted))
    .filter((load) => load.days.length >= LEAST_DAYS);
}

/** Units [kWh] of even loads too strong or too long for a household's usual appliances. */
export function findLargeLoad(days: MeterDays, loads: readonly EvenLoad[], prices: Prices): Finding[] {
  return largeLoads(days, loads).map((load): Finding => {
    return {
      code: 'large-load',
      meter: days.meter,
      sure: sureOf(0.4 + 0.35 * load.likeness + (load.powerKW > OWN_SUPPLY.leastKW ? 0.15 : 0)),
      grade: 'estimated',
      seen: {
        powerKW: load.powerKW,
        days: load.days.length,
        hoursEach: hoursEach(load),
        hour: load.hour,
      },
      ...daysAndCost(load, days, prices),
      ...(mayBeHeater(load) ? { may: ['large-load' as const, 'heater' as const] } : {}),
      ask: ['vehicle', 'tub-or-pool', 'new-appliance'],
      check: ['sub-meter'],
      cautions: [],
    };
  });
}

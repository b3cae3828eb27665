/** A large load of even power on the whole house's meter that is not the heating: a vehicle, a tub. */
import { type Finding, sureOf } from '../shapes/finding.ts';
import { daysAndCost, type EvenLoad, hoursEach, isOfCompressor } from './even-loads.ts';
import { isHeater } from './heater.ts';
import type { MeterDays, Prices } from './meter-days.ts';

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
    !isHeater(load, days)
  );
}

/** For some hours a heater looks the same, alone or with a compressor that runs beside it; at its own power for longer too. */
const HEATER = { mostKW: 6.2, mostHours: 3.3, ownKW: [2.5, 3.2] } as const;
const mayBeHeater = (load: EvenLoad) =>
  (load.powerKW < HEATER.mostKW && hoursEach(load) < HEATER.mostHours) ||
  (load.powerKW >= HEATER.ownKW[0] && load.powerKW <= HEATER.ownKW[1]);

/** Units [kWh] of even loads too strong or too long for a household's usual appliances. */
export function findLargeLoad(days: MeterDays, loads: readonly EvenLoad[], prices: Prices): Finding[] {
  if (days.meter !== 'whole-house') return [];
  return loads
    .filter((load) => isLarge(load, days))
    .map((load): Finding => {
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

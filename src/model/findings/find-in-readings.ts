/** All detectors over what is known of a household's readings. */
import type { EvidencePeriod } from '../shapes/evidence.ts';
import type { Finding } from '../shapes/finding.ts';
import { findBaseLoad } from './base-load.ts';
import { findBehaviour } from './behaviour.ts';
import { findDearHours } from './dear-hours.ts';
import { findEstimateCorrected } from './estimate-corrected.ts';
import { findHeater } from './heater.ts';
import { findLargeLoad } from './large-load.ts';
import { loadsOf } from './loads-of.ts';
import { type MeterDays, type MeterReadings, meterDays, type OutdoorDays, type Prices } from './meter-days.ts';
import { findNightSetback } from './night-setback.ts';
import { findRegistersSwapped } from './registers-swapped.ts';
import type { TwoRegisters } from './two-registers.ts';
import { findWaterOften } from './water-often.ts';
import { withoutLoads, withoutMachine } from './without-loads.ts';

export interface FindingsInput {
  readonly readings: readonly MeterReadings[];
  readonly outdoor?: OutdoorDays;
  readonly prices: Prices;
  /** Bills or meter-reading periods, for estimates. */
  readonly periods?: readonly EvidencePeriod[];
  /** Bills of a two-rate meter. */
  readonly registers?: readonly TwoRegisters[];
}

/**
 * Findings in half-hourly or hourly readings [kWh], the dearest a year first.
 * Where the machine has a meter of its own, the house's meter is looked at less the machine's, so that neither is taken
 * for the other. Each detector's rates of false alarm and of hits are measured in `npm run prove`.
 */
export function findInReadings({ readings, outdoor, prices, periods, registers }: FindingsInput): Finding[] {
  const meters = readings.flatMap((one) => meterDays(one, outdoor) ?? []);
  const machine = meters.find(({ meter }) => meter === 'heat-pump');
  const house = meters.find(({ meter }) => meter === 'whole-house');
  const rest = machine && house ? withoutMachine(house, machine) : house;
  const findings = [
    ...(machine ? findOnMeter(machine, prices, true) : []),
    ...(rest ? findOnMeter(rest, prices, !machine) : []),
    ...(house && registers ? findRegistersSwapped(registers, house, prices) : []),
    ...(periods ? findEstimateCorrected(periods, outdoor, prices) : []),
  ];
  return findings.sort((a, b) => Math.abs(b.penceYear) - Math.abs(a.penceYear));
}

/** `heats` where the heating is on this meter: nights, mornings and the weather speak of it only there. */
function findOnMeter(days: MeterDays, prices: Prices, heats: boolean): Finding[] {
  const loads = loadsOf(days);
  const heaters = findHeater(days, loads, prices);
  const large = findLargeLoad(days, loads, prices);
  const found = new Set([...heaters, ...large].map(({ seen }) => seen.powerKW));
  const without = withoutLoads(
    days,
    loads.filter(({ powerKW }) => found.has(powerKW)),
  );
  return [
    ...heaters,
    ...large,
    ...findWaterOften(without, prices),
    ...findBaseLoad(without, prices),
    ...findDearHours(without, prices),
    ...(heats ? [...findNightSetback(without, prices), ...findBehaviour(without, prices)] : []),
  ];
}

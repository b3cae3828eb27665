/** Causes that these readings could not have shown, so that their silence says nothing. */
import type { Finding, FindingCode, OpenCause } from '../shapes/finding.ts';
import { dailyLow } from './base-load.ts';
import { clockPrices } from './clock-prices.ts';
import {
  knownWeather,
  type MeterDays,
  type MeterReadings,
  median,
  meterDays,
  type OutdoorDays,
  type Prices,
} from './meter-days.ts';
import { waterCycles } from './water-often.ts';

/** What a finding with one name says of the causes. */
const SAYS: Readonly<Partial<Record<FindingCode, OpenCause>>> = {
  'heater-running': 'heater',
  'backup-in-cold': 'backup-heater',
  'meter-scale': 'meter-wrong',
  'base-load-rose': 'base-load',
  'large-load': 'large-load',
  'own-generation': 'own-generation',
  'home-empty': 'home-empty',
  'night-setback': 'night-setback',
  'dear-hours': 'dear-hours',
};

/**
 * A cause from before the first reading has no day before; a small one is lost in the days' own ups and downs, a heavy house
 * hides its nights, and an empty home that is kept warm, or stands empty in summer, takes hardly less.
 */
const ALWAYS: readonly OpenCause[] = [
  'machine-works-less',
  'more-heat',
  'rooms-warmer',
  'more-water',
  'heater',
  'meter-wrong',
  'night-setback',
  'home-empty',
];
const IN_WARM_DAYS: readonly OpenCause[] = ['summer-heating', 'water-often'];
/**
 * Warm days that take no more than the hot water of two people, and little between, leave no room for heating nor for a tank
 * that is heated often, kWh and kW. Common practice, no source.
 */
const LITTLE_WATER_KWH = 3;
const LITTLE_BETWEEN_KW = 0.1;
const IN_COLD_DAYS: readonly OpenCause[] = ['backup-heater'];
const BESIDE_HEATING: readonly OpenCause[] = ['base-load', 'other-use', 'large-load'];
const COLD_C = 3.5;
const LEAST_DAYS = 10;

/** Whether warm days were read on the machine's own meter and took hot water for a few people at most, and nothing all day. */
function takesLittle(machine: MeterDays | undefined): boolean {
  const water = machine ? waterCycles(machine) : null;
  if (!machine || !water || water.kWhPerDay > LITTLE_WATER_KWH) return false;
  const low = dailyLow(machine);
  return median(water.days.map((day) => low[day]!)) <= LITTLE_BETWEEN_KW;
}

/**
 * Causes that no reading of these meters rules out and that no finding has named. Warm and cold days must have been read
 * on the heat pump's own meter to speak of hot water, summer and the heater that helps in the cold; what else a home
 * uses shows only where the house's meter can be read less the heat pump's; hours matter where `prices` differ by them.
 */
export function notRuledOut(
  readings: readonly MeterReadings[],
  outdoor: OutdoorDays | undefined,
  findings: readonly Finding[],
  prices?: Prices,
): OpenCause[] {
  const days = readings.flatMap((one) => meterDays(one, outdoor) ?? []);
  const machine = days.find(({ meter }) => meter === 'heat-pump');
  const hasHouse = days.some(({ meter }) => meter === 'whole-house');
  if (days.length === 0) return [];
  const read = machine ? knownWeather(machine).map((day) => machine.outdoorC[day]!) : [];
  const knows = (is: (outdoorC: number) => boolean) => read.filter(is).length >= LEAST_DAYS;
  const open = [
    ...ALWAYS,
    ...(takesLittle(machine) ? [] : IN_WARM_DAYS),
    ...(knows((outdoorC) => outdoorC < COLD_C) ? [] : IN_COLD_DAYS),
    ...(hasHouse && !machine ? BESIDE_HEATING : []),
    ...(prices && days.some((one) => clockPrices(one, prices)) ? (['dear-hours'] as const) : []),
  ];
  const named = findings.flatMap(({ code, may }) => may ?? SAYS[code] ?? []);
  return open.filter((cause) => !named.includes(cause));
}

/** Causes that these readings could not have shown, so that their silence says nothing. */
import type { Finding, FindingCode, LikelyCause } from '../shapes/finding.ts';
import { knownWeather, type MeterDays, type MeterReadings, meterDays, type OutdoorDays } from './meter-days.ts';
import { waterCycles } from './water-often.ts';

/** What a finding with one name says of the causes. */
const SAYS: Readonly<Partial<Record<FindingCode, LikelyCause>>> = {
  'heater-running': 'heater',
  'backup-in-cold': 'backup-heater',
  'meter-scale': 'meter-wrong',
  'base-load-rose': 'base-load',
  'large-load': 'large-load',
  'own-generation': 'own-generation',
  'home-empty': 'home-empty',
};

/** A cause from before the first reading has no day before; a small one is lost in the days' own ups and downs. */
const ALWAYS: readonly LikelyCause[] = [
  'machine-works-less',
  'more-heat',
  'rooms-warmer',
  'more-water',
  'heater',
  'meter-wrong',
];
const IN_WARM_DAYS: readonly LikelyCause[] = ['water-often'];
/** Warm days that take no more than the hot water of two people leave no room for heating, kWh. Common practice, no source. */
const LITTLE_WATER_KWH = 3;
const IN_COLD_DAYS: readonly LikelyCause[] = ['backup-heater'];
const BESIDE_HEATING: readonly LikelyCause[] = ['base-load', 'other-use', 'large-load'];
const WARM_C = 16.5;
const COLD_C = 3.5;
const LEAST_DAYS = 10;

/** Whether warm days were read on the machine's own meter and took hot water for a few people at most. */
function takesLittle(machine: MeterDays | undefined): boolean {
  const water = machine ? waterCycles(machine) : null;
  return water !== null && water.kWhPerDay <= LITTLE_WATER_KWH;
}

/**
 * Causes that no reading of these meters rules out and that no finding has named. Warm and cold days must have been read
 * on the heat pump's own meter to speak of hot water, summer and the heater that helps in the cold; what else a home uses
 * shows only where the house's meter can be read less the heat pump's.
 */
export function notRuledOut(
  readings: readonly MeterReadings[],
  outdoor: OutdoorDays | undefined,
  findings: readonly Finding[],
): LikelyCause[] {
  const days = readings.flatMap((one) => meterDays(one, outdoor) ?? []);
  const machine = days.find(({ meter }) => meter === 'heat-pump');
  const hasHouse = days.some(({ meter }) => meter === 'whole-house');
  if (days.length === 0) return [];
  const read = machine ? knownWeather(machine).map((day) => machine.outdoorC[day]!) : [];
  const knows = (is: (outdoorC: number) => boolean) => read.filter(is).length >= LEAST_DAYS;
  const open = [
    ...ALWAYS,
    ...(knows((outdoorC) => outdoorC >= WARM_C) ? [] : IN_WARM_DAYS),
    ...(takesLittle(machine) ? [] : (['summer-heating'] as const)),
    ...(knows((outdoorC) => outdoorC < COLD_C) ? [] : IN_COLD_DAYS),
    ...(hasHouse && !machine ? BESIDE_HEATING : []),
  ];
  const named = findings.flatMap(({ code, may }) => may ?? SAYS[code] ?? []);
  return open.filter((cause) => !named.includes(cause));
}

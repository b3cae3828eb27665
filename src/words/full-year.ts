/** The machine's year worked out by the half-hour, in words: what uses electricity, and what it hangs on most. */
import type { ElectricUse } from '../model/heat-pump/full/year.ts';
import { spokenKWh, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';

const USES: Readonly<Record<ElectricUse, string>> = {
  space: phrase('Compressor, for the rooms'),
  water: phrase('Compressor, for hot water'),
  'source-pump': phrase('Brine pump or fan'),
  backup: phrase('Backup heater'),
  pasteurisation: phrase('Weekly heating of the hot water tank'),
  circulator: phrase('Heating circuit pump'),
  standby: phrase('Standby'),
};
export const electricUseName = (use: ElectricUse): string => say(USES[use]);

/** What less of something would bring in a year; negative where it would cost more. */
export interface Drive {
  readonly driver: 'flow' | 'hot-water' | 'array';
  readonly savedKWh: number;
  readonly savedPence: number;
}

const SAVINGS: Readonly<Record<Drive['driver'], string>> = {
  flow: phrase('A flow temperature 5 degrees lower would save about {amount} a year ({units}).'),
  'hot-water': phrase('Hot water 5 degrees cooler would save about {amount} a year ({units}).'),
  array: phrase('50% more pipe in the ground would save about {amount} a year ({units}).'),
};

/** Below so much a year nobody would change anything for it. */
const LEAST_PENCE = 300;

/** "Heating water 5 degrees cooler would save about £60 a year (210 units)." The largest first, two at most. */
export function drivesSentence(drives: readonly Drive[]): string {
  const worth = drives
    .filter((drive) => drive.savedPence >= LEAST_PENCE)
    .toSorted((a, b) => b.savedKWh - a.savedKWh)
    .slice(0, 2);
  if (worth.length === 0) return say('A lower flow temperature or more pipe in the ground would change little here.');
  return worth
    .map(({ driver, savedKWh, savedPence }) =>
      say(SAVINGS[driver], { amount: spokenPounds(savedPence), units: spokenKWh(savedKWh) }),
    )
    .join(' ');
}

export const wayExplained = (way: 'quick' | 'full'): string =>
  way === 'quick'
    ? say('Two seasonal factors, from a data sheet or a certificate.')
    : say('From the rated points, the ground and the weather, half-hour by half-hour.');

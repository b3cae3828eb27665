/** The machine's year worked out by the half-hour, in words: what uses electricity, and what it hangs on most. */
import type { ElectricUse } from '../model/heat-pump/full/year.ts';
import { spokenKWh, spokenPounds } from './numbers.ts';

const USES: Readonly<Record<ElectricUse, string>> = {
  space: 'Compressor, for the rooms',
  water: 'Compressor, for hot water',
  'source-pump': 'Source pump or fan',
  backup: 'Backup heater',
  pasteurisation: 'Weekly heating of the hot water tank',
  circulator: 'Pump of the heating circuit',
  standby: 'Standby',
};
export const electricUseName = (use: ElectricUse): string => USES[use];

/** What less of something would bring in a year; negative where it would cost more. */
export interface Drive {
  readonly driver: 'flow' | 'hot-water' | 'array';
  readonly savedKWh: number;
  readonly savedPence: number;
}

const SUBJECTS: Readonly<Record<Drive['driver'], string>> = {
  flow: 'Heating water 5 degrees cooler',
  'hot-water': 'Hot water 5 degrees cooler',
  array: 'Half as much pipe again in the ground',
};

/** Below so much a year nobody would change anything for it. */
const LEAST_PENCE = 300;

/** "Heating water 5 degrees cooler would save about £60 a year (210 units)." The largest first, two at most. */
export function drivesSentence(drives: readonly Drive[]): string {
  const worth = drives
    .filter((drive) => drive.savedPence >= LEAST_PENCE)
    .toSorted((a, b) => b.savedKWh - a.savedKWh)
    .slice(0, 2);
  if (worth.length === 0) return 'Cooler water or more pipe in the ground would change little here.';
  return worth
    .map(
      ({ driver, savedKWh, savedPence }) =>
        `${SUBJECTS[driver]} would save about ${spokenPounds(savedPence)} a year (${spokenKWh(savedKWh)}).`,
    )
    .join(' ');
}

export const wayExplained = (way: 'quick' | 'full'): string =>
  way === 'quick'
    ? 'Two factors for the whole year, from a data sheet or a certificate.'
    : 'From the rated points, the ground and the weather, half-hour by half-hour.';

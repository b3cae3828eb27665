import type { Driver } from '../../model/what-drives/what-drives.ts';
import { driverSentence } from '../../words/drivers.ts';
import { phrase } from '../../words/say.ts';

/** Short name of each figure, for its buttons and its saved files: to be said. */
export const DRIVER_NAMES = {
  flow: phrase('Cost by flow temperature'),
  room: phrase('Cost by room temperature'),
  'water-temperature': phrase('Cost by hot water temperature'),
  'water-use': phrase('Cost by hot water used'),
  array: phrase('Cost by size of the ground array'),
  emitters: phrase('Cost with radiators and with underfloor heating'),
};

export function driversSentence(driver: Pick<Driver, 'name' | 'effects'>): string {
  return driverSentence(driver);
}

import type { Driver } from '../../model/what-drives/what-drives.ts';
import { driverSentence } from '../../words/drivers.ts';

export const DRIVER_NAMES = {
  flow: 'Cost by heating water temperature',
  room: 'Cost by room temperature',
  'water-temperature': 'Cost by hot water temperature',
  'water-use': 'Cost by hot water used',
  array: 'Cost by size of the ground array',
  emitters: 'Cost with radiators and with a warm floor',
};

export function driversSentence(driver: Driver): string {
  return driverSentence(driver);
}

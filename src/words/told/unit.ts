/** English of the units that the model tells. */
import type { ToldUnit } from '../../model/shapes/told-unit.ts';
import { sentences } from './sentences.ts';

export const UNIT = sentences<ToldUnit>()({
  'kwh-a-year': 'kWh a year',
  'kwh-a-day': 'kWh a day',
  'kwh-a-square-metre-and-year': 'kWh per m² and year',
  'kwh-a-kelvin-and-day': 'kWh per K and day',
  'kwh-of-heat-a-kwh': 'kWh of heat per kWh',
  'kelvin-days': 'K·day',
  'of-uk-average': 'of the UK average',
  'of-the-use': 'of the use',
  'of-the-factor': 'of the factor',
  'of-the-cop': 'of the COP',
  'of-the-most': 'of the most',
  'of-the-usual': 'of the usual',
  'of-all-electricity': 'of all electricity',
  'litres-a-day': 'litres a day',
  'litres-a-minute': 'litres a minute',
  litres: 'litres',
  days: 'days',
  years: 'years',
  'too-few-years': 'years are too few',
});

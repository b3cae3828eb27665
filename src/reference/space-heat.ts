/**
 * Heat for the rooms by floor area and age, kWh of delivered heat per m² and year, UK average climate.
 * A last resort where neither a record nor a heat loss is to hand, hence the wide spread.
 */
import type { Reference } from '../model/shapes/reference.ts';

const SOURCE =
  'Set by hand, from memory, around the mean metered gas use of British homes (13,200 kWh a year, NEED 2020 Annex A, read) ' +
  'less hot water at 84 % efficiency over about 94 m²; new homes checked against 125 kWh/m² of all fuels ' +
  '(Energy consumption in new domestic buildings 2015 to 2017, read)';

const row = (ageBand: string, low: number, middle: number, high: number): Reference['spacePerM2'][number] => ({
  ageBand,
  low,
  middle,
  high,
  source: SOURCE,
  provenance: 'memory',
});

export const spacePerM2: Reference['spacePerM2'] = [
  row('before 1930', 60, 105, 165),
  row('1930 to 1966', 55, 95, 150),
  row('1967 to 1982', 48, 80, 130),
  row('1983 to 2002', 42, 68, 110),
  row('2003 to 2012', 34, 55, 88),
  row('2013 or later', 22, 42, 70),
];

/** The sum behind what a finding costs. */
import { daysBetween } from '../calendar/civil.ts';
import type { Finding } from '../shapes/finding.ts';
import type { Working } from '../shapes/working.ts';

const UNITS: Readonly<Record<string, string>> = { KW: 'kW', W: 'W', KWh: 'kWh', Hours: 'h' };
const unitOf = (name: string): string => {
  const ending = Object.keys(UNITS).find((one) => name.endsWith(one));
  if (ending) return UNITS[ending]!;
  return name === 'hours' ? 'h' : name === 'days' ? 'days' : '';
};
/** Names that say too little by themselves. */
const NAMES: Readonly<Record<string, string>> = {
  powerKW: 'steady power',
  ratedKW: 'heater of that size',
  days: 'days on which it ran',
  hours: 'hours in all',
  hour: 'hour of the day at which it mostly begins',
};
/** "priceShareBefore" is "price share before". */
const plainName = (name: string): string =>
  NAMES[name] ??
  (name
    .replace(/(KWh|KW|W)$/, '')
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .trim() ||
    'units');

/** What was seen, the units [kWh] and the cost [pence] of these days, and of a year of such days. */
export function findingWorking(finding: Finding, title: string): Working {
  const { seen, grade, kWh, pence, kWhYear, penceYear, from, to } = finding;
  const input = (name: string, value: number | string, unit: string, origin: string) => ({
    name,
    value,
    unit,
    grade,
    origin,
  });
  const origin = `readings, ${from} to ${to} (not included)`;
  return {
    title,
    formula:
      kWh === 0
        ? 'the same units at the price paid − at the price before'
        : 'units it took × price of a unit; a year of such days beside it',
    inputs: [
      ...Object.entries(seen).map(([name, value]) => input(plainName(name), value, unitOf(name), origin)),
      input('all days', daysBetween(from, to), 'days', 'from the first to the last'),
      input('units in these days', kWh, 'kWh', 'worked out from the readings'),
      ...(kWh === 0 ? [] : [input('price of a unit', pence / kWh, 'p/kWh', 'the bill')]),
      input('units in a year of such days', kWhYear, 'kWh', 'worked out'),
      input('cost of a year of such days', penceYear, 'pence', 'worked out'),
    ],
    result: { value: pence, unit: 'pence' },
  };
}

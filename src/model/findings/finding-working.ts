/** The sum behind what a finding costs. */
import { daysBetween } from '../calendar/civil.ts';
import type { Finding } from '../shapes/finding.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import type { ToldFinding } from '../shapes/told-finding.ts';
import type { Working } from '../shapes/working.ts';

const UNITS: Readonly<Record<string, string>> = { KW: 'kW', W: 'W', KWh: 'kWh', Hours: 'h', belowC: '°C' };
const unitOf = (name: string): Wording => {
  const ending = Object.keys(UNITS).find((one) => name.endsWith(one));
  if (ending) return UNITS[ending]!;
  return name === 'hours' ? 'h' : name === 'days' ? tell('days') : '';
};

type SeenField = keyof ToldFinding extends infer C ? (C extends `seen-${infer Field}` ? Field : never) : never;
/** What a finding may have seen. */
const SEEN: ReadonlySet<string> = new Set<Exclude<SeenField, 'amount'>>([
  'powerKW',
  'ratedKW',
  'days',
  'hours',
  'hour',
  'hoursEach',
  'riseW',
  'beforeW',
  'afterW',
  'share',
  'kind',
  'kWhPerDay',
  'pencePerDay',
  'estimatedKWh',
  'likelyKWh',
  'backKWh',
  'until',
  'nightShare',
  'morningShare',
  'recoveryKWhPerDay',
  'billedDearKWh',
  'billedCheapKWh',
  'dearKWh',
  'cheapKWh',
  'cyclesPerDay',
  'belowC',
  'coldCorrelation',
  'times',
]);
const isNamed = (field: string): field is Exclude<SeenField, 'amount'> => SEEN.has(field);
const nameOf = (field: string): Told => (isNamed(field) ? tell(`seen-${field}`) : tell('seen-amount', { field }));

/** What was seen, the units [kWh] and the cost [pence] of these days, and of a year of such days. */
export function findingWorking(finding: Finding): Working {
  const { code, seen, grade, kWh, pence, kWhYear, penceYear, from, to } = finding;
  const input = (name: Told, value: number | string, unit: Wording, origin: Wording) => ({
    name,
    value,
    unit,
    grade,
    origin,
  });
  const origin = tell('readings-between', { from: { on: from }, to: { on: to } });
  return {
    title: tell(code === 'behaviour-changed' && kWh < 0 ? 'found-less-used' : `found-${code}`),
    formula: tell(kWh !== 0 ? 'units-by-price-and-year' : pence !== 0 ? 'paid-less-before' : 'amount-not-known'),
    inputs: [
      ...Object.entries(seen).map(([field, value]) => input(nameOf(field), value, unitOf(field), origin)),
      input(tell('all-days'), daysBetween(from, to), tell('days'), tell('first-to-last')),
      input(tell('units-in-days'), kWh, 'kWh', tell('from-readings')),
      ...(kWh === 0 ? [] : [input(tell('price-of-unit'), pence / kWh, 'p/kWh', tell('the-bill'))]),
      input(tell('units-in-year'), kWhYear, 'kWh', tell('worked-out')),
      input(tell('cost-in-year'), penceYear, 'pence', tell('worked-out')),
    ],
    result: { value: pence, unit: 'pence' },
  };
}

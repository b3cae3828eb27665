/** What an installer chose for a file, said in a row: "gas, in m³, day first". */
import type { IntakeChoices } from '../intake/intake.ts';
import type { Carrier, SeriesRole } from '../model/evidence/evidence.ts';

const CARRIERS: Record<Carrier, string> = {
  electricity: 'electricity',
  gas: 'gas',
  oil: 'oil',
  lpg: 'LPG',
  heat: 'heat',
  'outdoor-temperature': 'outdoor temperature',
};
const ROLES: Record<SeriesRole, string> = {
  import: 'what the home buys',
  export: 'what the home sends out',
  'heat-pump': 'what the heat pump uses',
  'heat-output': 'heat given out',
  weather: 'weather',
};
const CLOCKS = { local: 'local time', utc: 'UTC', standard: 'winter time all year' } as const;

export function choicesInWords(choices: IntakeChoices): string {
  const { shape, carrier, role, unit, dayFirst, decimal, clock, stamp, toInclusive, columns } = choices;
  return [
    ...(shape === undefined ? [] : [`shape ${shape}`]),
    ...(carrier === undefined ? [] : [CARRIERS[carrier]]),
    ...(role === undefined ? [] : [ROLES[role]]),
    ...(unit === undefined ? [] : [`in ${unit}`]),
    ...(dayFirst === undefined ? [] : [dayFirst ? 'day first' : 'month first']),
    ...(decimal === undefined ? [] : [decimal === ',' ? 'decimal comma' : 'decimal point']),
    ...(clock === undefined ? [] : [CLOCKS[clock]]),
    ...(stamp === undefined ? [] : [`stamps name the ${stamp}`]),
    ...(toInclusive === undefined
      ? []
      : [toInclusive ? 'the last day belongs to the bill' : 'the last day begins the next bill']),
    ...(columns === undefined ? [] : ['your columns']),
  ].join(', ');
}

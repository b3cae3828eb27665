/** What an installer chose for a file, said in a row: "gas, in m³, day first". */
import type { IntakeChoices } from '../intake/intake.ts';
import type { SeriesRole } from '../model/shapes/evidence.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { carrierName } from './systems.ts';

const ROLES: Record<SeriesRole, string> = {
  import: phrase('what the home buys'),
  export: phrase('what the home sends out'),
  generation: phrase('what the home makes itself'),
  'heat-pump': phrase('what the heat pump uses'),
  'heat-output': phrase('heat given out'),
  weather: phrase('weather'),
  machine: phrase('a temperature of the heat pump'),
};
export const roleName = (role: SeriesRole): string => say(ROLES[role]);

const CLOCKS = { local: phrase('local time'), utc: phrase('UTC'), standard: phrase('winter time all year') } as const;

export function choicesInWords(choices: IntakeChoices): string {
  const { shape, carrier, role, unit, dayFirst, yearFirst, decimal, clock, stamp, toInclusive, columns, every } =
    choices;
  const { net, ownUse, ofColumns } = choices;
  return [
    ...(shape === undefined ? [] : [say('type {shape}', { shape: sayTold(shape) })]),
    ...(carrier === undefined ? [] : [carrierName(carrier)]),
    ...(role === undefined ? [] : [roleName(role)]),
    ...(unit === undefined ? [] : [say('in {unit}', { unit: sayTold(unit) })]),
    ...(dayFirst === undefined ? [] : [say(dayFirst ? 'day first' : 'month first')]),
    ...(yearFirst === undefined ? [] : [say(yearFirst ? 'year first' : 'year last')]),
    ...(decimal === undefined ? [] : [say(decimal === ',' ? 'decimal comma' : 'decimal point')]),
    ...(clock === undefined ? [] : [say(CLOCKS[clock])]),
    ...(stamp === undefined ? [] : [say(stamp === 'start' ? 'times name the start' : 'times name the end')]),
    ...(toInclusive === undefined
      ? []
      : [say(toInclusive ? 'the last day belongs to the bill' : 'the last day begins the next bill')]),
    ...(columns === undefined ? [] : [say('your columns')]),
    ...(every === undefined ? [] : [say(every ? 'all columns of one kind' : 'no other columns')]),
    ...(net === undefined ? [] : [say(net ? 'sent out below nought' : 'faults below nought')]),
    ...(ownUse === undefined ? [] : [say(ownUse === 'within' ? 'own use within it' : 'all of it bought')]),
    ...(ofColumns === undefined ? [] : [say('what you said of single columns')]),
  ].join(', ');
}

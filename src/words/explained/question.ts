/** What an open question rests on: the amounts that its sentence names. */
import type { Question } from '../../model/shapes/appraisal.ts';
import { phrase } from '../say.ts';
import { inWords } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';

/** The unit that the end of a field's name tells: `spaceKWh`, `flowC`. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/WPerK$/, 'W/K'],
  [/WattsPerKM2$|wattsPerKM2$/, 'W/(K m²)'],
  [/M2$/, 'm²'],
  [/KWh$|^kWh$/, 'kWh'],
  [/PencePerKWh$/, 'p/kWh'],
  [/Pence$|^pence$/, 'p'],
  [/C$/, '°C'],
  [/KW$|^kW$/, 'kW'],
  [/[sS]hare$/, 'share'],
];

/** Names of the amounts that a question may rest on, by their field. */
const AMOUNTS: Readonly<Record<string, string>> = {
  aKWh: phrase('one estimate'),
  bKWh: phrase('the other estimate'),
  baseKWh: phrase('use of every day'),
  coldestC: phrase('coldest'),
  count: phrase('how many'),
  days: phrase('days'),
  derived: phrase('derived'),
  designOutdoorC: phrase('design outdoor temperature'),
  efficiency: phrase('efficiency'),
  floorAreaM2: phrase('floor area'),
  found: phrase('found'),
  heatLossKW: phrase('heat loss'),
  heatLossWPerK: phrase('heat loss coefficient'),
  high: phrase('high'),
  homeKW: phrase('the home alone'),
  leftoverKWh: phrase('left over: losses and anything else'),
  low: phrase('low'),
  middle: phrase('middle'),
  outdoorC: phrase('outdoor temperature'),
  people: phrase('people'),
  perhapsKWh: phrase('perhaps'),
  reckoned: phrase('worked out'),
  roomC: phrase('room temperature'),
  share: phrase('share'),
  shareHigh: phrase('share, high'),
  shareLow: phrase('share, low'),
  space: phrase('factor for rooms'),
  spaceKWh: phrase('heat for the rooms'),
  sure: phrase('how sure'),
  typed: phrase('typed'),
  water: phrase('factor for hot water'),
  waterKWh: phrase('heat for hot water'),
  wattsPerKM2: phrase('heat loss coefficient per m²'),
  withKW: phrase('with the heating'),
};

/** The amounts of a question as inputs; nothing where it names none. The first stands as what it is about. */
export function questionWorkings(question: Question): ShownWorking[] {
  const amounts = Object.entries(question.data).flatMap(([name, value]): (ShownInput & { value: number })[] => {
    if (typeof value !== 'number') return [];
    const unit = UNITS.find(([pattern]) => pattern.test(name))?.[1];
    return [
      {
        name: inWords(AMOUNTS[name] ?? phrase('amount')),
        value,
        ...(unit === undefined ? {} : { unit }),
        grade: 'estimated',
        origin: inWords('worked out from what is typed and read of this home'),
      },
    ];
  });
  const first = amounts[0];
  if (!first) return [];
  return [
    {
      title: inWords('What the question rests on'),
      formula: inWords('the amounts that were compared'),
      inputs: amounts,
      result: { value: first.value, unit: first.unit ?? '' },
    },
  ];
}

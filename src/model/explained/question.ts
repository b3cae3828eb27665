/** What an open question rests on: the amounts that its sentence names. */
import type { Question } from '../shapes/appraisal.ts';
import type { Working, WorkingInput } from '../shapes/working.ts';

/** The unit that the end of a field's name tells: `spaceKWh`, `flowC`. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/KWh$/, 'kWh'],
  [/PencePerKWh$/, 'p/kWh'],
  [/Pence$/, 'p'],
  [/C$/, '°C'],
  [/KW$/, 'kW'],
  [/[sS]hare$/, 'share'],
];

/** The amounts of a question as inputs; nothing where it names none. The first stands as what it is about. */
export function questionWorkings(question: Question): Working[] {
  const amounts = Object.entries(question.data).flatMap(([name, value]): (WorkingInput & { value: number })[] => {
    if (typeof value !== 'number') return [];
    const [ending, unit] = UNITS.find(([pattern]) => pattern.test(name)) ?? [];
    const words = (ending ? name.replace(ending, '') : name).replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
    return [
      {
        name: words || question.code.replaceAll('-', ' '),
        value,
        ...(unit === undefined ? {} : { unit }),
        grade: 'estimated',
        origin: 'worked out from what is typed and read of this home',
      },
    ];
  });
  const first = amounts[0];
  if (!first) return [];
  return [
    {
      title: `Question: ${question.code.replaceAll('-', ' ')}`,
      formula: 'the amounts that were held against each other',
      inputs: amounts,
      result: { value: first.value, unit: first.unit ?? '' },
    },
  ];
}

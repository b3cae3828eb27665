/** The year reckoned anew with one thing moved: what each step came to. */
import type { Figure } from '../appraisal/appraisal.ts';
import type { Driver, EmitterCase } from '../what-drives/what-drives.ts';
import type { Working, WorkingInput } from '../working.ts';
import { rangedWorking } from './ranged.ts';

const ANEW = 'the whole year reckoned anew, all else as it is';

/** A driver's steps [p a year]; `effect` is what its sentence says of them. */
export function driverWorking(
  { points, today }: Driver,
  cost: Figure,
  said: { readonly title: string; readonly name: (at: number) => string; readonly effectPence: readonly number[] },
): Working {
  const at = points.find((point) => point.at === today);
  return {
    title: said.title,
    formula: 'cost of a year at each step; what is said is the difference between steps beside today’s',
    inputs: [
      ...points.map(
        (point): WorkingInput => ({
          name: point.at === today ? `${said.name(point.at)}, as it is` : said.name(point.at),
          value: point.costPence,
          unit: 'p',
          grade: point.at === today ? cost.grade : 'estimated',
          origin: ANEW,
        }),
      ),
      ...said.effectPence.map(
        (value): WorkingInput => ({
          name: 'Difference as said',
          value,
          unit: 'p',
          grade: 'estimated',
          origin: 'slope between the steps beside today’s',
        }),
      ),
    ],
    result: { value: at?.costPence ?? cost.value, unit: 'p' },
    steps: [cost.working],
  };
}

/** Radiators and a warm floor: each year's own sum and range, and what lies between them [p]. */
export function emitterWorkings(cases: readonly EmitterCase[], name: (one: EmitterCase) => string): Working[] {
  const today = cases.find((one) => one.today);
  const other = cases.find((one) => !one.today);
  if (!today || !other) return [];
  const line = (one: EmitterCase): WorkingInput => ({
    name: name(one),
    value: one.cost.value,
    unit: 'p',
    grade: one.cost.grade,
    origin: ANEW,
  });
  const flow = (one: EmitterCase): WorkingInput => ({
    name: `Water at its hottest, ${name(one)}`,
    value: one.flowC,
    unit: '°C',
    grade: one.today ? one.cost.grade : 'assumed',
    origin: one.today ? 'as it is' : 'usual for it; common practice, no source',
  });
  return [
    {
      title: 'Other emitters',
      formula: 'cost of a year with the other − cost of a year as it is',
      inputs: [line(other), line(today), flow(other), flow(today)],
      result: { value: other.cost.value - today.cost.value, unit: 'p' },
    },
    ...[today, other].map((one) => {
      const working = rangedWorking(one.cost);
      return { ...working, title: `${working.title}: ${name(one)}` };
    }),
  ];
}

/** Single changes against today's year [p]: what each came to. */
export function changesWorking(
  cost: Figure,
  changes: readonly { readonly name: string; readonly pence: number }[],
): Working {
  return {
    title: 'What single changes do to the year',
    formula: 'cost of a year with the change − cost of a year as it is',
    inputs: changes.map(({ name, pence }) => ({ name, value: pence, unit: 'p', grade: 'estimated', origin: ANEW })),
    result: { value: cost.value, unit: 'p' },
    steps: [cost.working],
  };
}

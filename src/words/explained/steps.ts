/** The year reckoned anew with one thing moved: what each step came to. */
import type { Figure } from '../../model/shapes/appraisal.ts';
import type { Driver, EmitterCase, WhatDrives } from '../../model/what-drives/what-drives.ts';
import { phrase } from '../say.ts';
import { inWords, sayTold } from '../say-told.ts';
import type { ShownInput, ShownWorking } from '../working.ts';
import { rangedWorking } from './ranged.ts';

const ANEW = phrase('the full year worked out again, all else as it is');

/** A driver's steps [p a year], then the effects that its sentence names with their ranges. */
export function driverWorkings(
  { points, now, effects }: Pick<Driver, 'points' | 'now' | 'effects'>,
  of: { readonly title: string; readonly name: (at: number) => string },
): ShownWorking[] {
  const shown = points.find(({ at }) => at === now) ?? points[0];
  if (!shown) return [];
  return [
    {
      title: { said: of.title },
      formula: inWords('cost of a year at each step, worked out again each time'),
      inputs: points.map(
        ({ at, costPence }): ShownInput => ({
          name: { said: of.name(at) },
          value: costPence,
          unit: 'p',
          grade: 'estimated',
          origin: inWords(at === now ? 'as it is shown' : ANEW),
        }),
      ),
      result: { value: shown.costPence, unit: 'p' },
    },
    ...effects.map(rangedWorking),
  ];
}

/** Radiators and a warm floor: what lies between them, then each year's own sum and range [p]. */
export function emitterWorkings(
  { emitters, emittersApart }: Pick<WhatDrives, 'emitters' | 'emittersApart'>,
  name: (one: EmitterCase) => string,
): ShownWorking[] {
  return [
    rangedWorking(emittersApart),
    ...emitters.map((one): ShownWorking => {
      const working = rangedWorking(one.cost);
      const flow: ShownInput = {
        name: inWords('Water at its hottest'),
        value: one.flowC,
        unit: '°C',
        grade: one.now ? one.cost.grade : 'assumed',
        origin: inWords(one.now ? 'as it is shown' : 'usual for it; common practice, no source'),
      };
      return {
        ...working,
        title: { said: `${sayTold(working.title)}: ${name(one)}` },
        inputs: [...working.inputs, flow],
      };
    }),
  ];
}

/** Single changes against today's year [p]: what each came to. */
export function changesWorking(
  cost: Figure,
  changes: readonly { readonly name: string; readonly pence: number }[],
): ShownWorking {
  return {
    title: inWords('What single changes do to the year'),
    formula: inWords('cost of a year with the change − cost of a year as it is'),
    inputs: changes.map(({ name, pence }) => ({
      name: { said: name },
      value: pence,
      unit: 'p',
      grade: 'estimated',
      origin: inWords(ANEW),
    })),
    result: { value: cost.value, unit: 'p' },
    steps: [cost.working],
  };
}

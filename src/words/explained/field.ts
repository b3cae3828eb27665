/** What was measured in other homes, beside this machine's own factor. */
import type { MachineResult } from '../../model/shapes/appraisal.ts';
import { inWords, type Said } from '../say-told.ts';
import type { ShownWorking } from '../working.ts';

/** The spread met in metered homes [1], and how many reached what they were designed for. */
export function fieldWorking({ fieldSpread }: Pick<MachineResult, 'fieldSpread'>): ShownWorking {
  const { low, middle, high, boundary, count, reachedDesignShare, source } = fieldSpread;
  const line = (name: Said, value: number, unit = 'factor') =>
    ({ name, value, unit, grade: 'measured', origin: source }) as const;
  return {
    title: inWords('Measured in other homes'),
    formula: inWords('heat of a year / electricity of a year at {boundary}, home by home; the middle one of them', {
      boundary,
    }),
    inputs: [
      line(inWords('Low, 1 in 10 homes below'), low),
      line(inWords('High, 1 in 10 homes above'), high),
      ...(count === undefined ? [] : [line(inWords('Homes'), count, '')]),
      ...(reachedDesignShare === undefined
        ? []
        : [line(inWords('Reached the factor of their design'), reachedDesignShare, 'share')]),
    ],
    result: { value: middle, unit: 'factor' },
    source,
  };
}

/** Electricity counted outside the boundary of the given factors [kWh]: pumps, standby and the like. */
export function extrasWorking({ whole, extraKWh }: Pick<MachineResult, 'whole' | 'extraKWh'>): ShownWorking {
  return {
    title: inWords('Pumps, standby and the like'),
    formula: inWords('the lines of electricity that are neither rooms nor hot water'),
    inputs: whole.working.inputs,
    result: { value: extraKWh, unit: 'kWh' },
  };
}

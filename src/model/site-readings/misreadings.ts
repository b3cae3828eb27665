/** Pressures that fit nothing as they were typed, tried as they may have been meant: one thing changed at a time. */
import { RefrigerantName } from '../shapes/refrigerant.ts';
import { type Misreading, PressureUnit, type SiteReadings, type SiteValue } from '../shapes/site-readings.ts';
import { type CircuitTables, readCircuit } from './refrigerant-side.ts';

/** A list longer than this says nothing any more. */
const MOST_NAMED = 3;

/** Slips that are met, the commoner ones first. Common practice. */
function misreadingsOf({ refrigerant, suction, discharge }: SiteReadings): Misreading[] {
  const one = suction ?? discharge;
  if (!one || !refrigerant) return [];
  return [
    ...(suction && discharge ? [{ kind: 'exchanged' as const }] : []),
    { kind: 'basis', basis: one.basis === 'gauge' ? 'absolute' : 'gauge' },
    ...PressureUnit.options.flatMap((unit): Misreading[] => (unit === one.unit ? [] : [{ kind: 'unit', unit }])),
    ...RefrigerantName.options.flatMap((name): Misreading[] =>
      name === refrigerant ? [] : [{ kind: 'refrigerant', refrigerant: name }],
    ),
  ];
}

function asMeant(readings: SiteReadings, misreading: Misreading): SiteReadings {
  const { suction, discharge, restPressure } = readings;
  if (misreading.kind === 'refrigerant') return { ...readings, refrigerant: misreading.refrigerant };
  if (misreading.kind === 'exchanged') return { ...readings, suction: discharge, discharge: suction };
  const { kind: _kind, ...change } = misreading;
  return {
    ...readings,
    ...(suction ? { suction: { ...suction, ...change } } : {}),
    ...(discharge ? { discharge: { ...discharge, ...change } } : {}),
    ...(restPressure ? { restPressure: { ...restPressure, ...change } } : {}),
  };
}

export interface Meant {
  readonly misreading: Misreading;
  /** What the circuit comes to as it may have been meant. */
  readonly values: readonly SiteValue[];
}

export const outsideOf = (values: readonly SiteValue[]): SiteValue[] =>
  values.filter(({ standing }) => standing === 'below' || standing === 'above');

/** Ways to read the pressures under which nothing is impossible and at least `leastJudged` results can be judged. */
export function waysMeant(readings: SiteReadings, tables: CircuitTables, leastJudged: number): Meant[] {
  return misreadingsOf(readings).flatMap((misreading) => {
    const { values, remarks } = readCircuit(asMeant(readings, misreading), tables);
    const judged = values.filter(({ standing }) => standing !== 'no band').length;
    return remarks.length === 0 && judged >= leastJudged ? [{ misreading, values }] : [];
  });
}

/** Of those, the ones that leave the fewest results outside their bands, and at most half of what is judged. */
export function likelyMeant(ways: readonly Meant[]): Misreading[] {
  const rated = ways
    .map(({ misreading, values }) => ({
      misreading,
      outside: outsideOf(values).length,
      judged: values.filter(({ standing }) => standing !== 'no band').length,
    }))
    .filter(({ outside, judged }) => outside <= judged / 2);
  const least = Math.min(...rated.map(({ outside }) => outside));
  return rated
    .filter(({ outside }) => outside === least)
    .slice(0, MOST_NAMED)
    .map(({ misreading }) => misreading);
}

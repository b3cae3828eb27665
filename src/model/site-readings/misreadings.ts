/** Pressures that fit nothing as they were typed, tried as they may have been meant: one thing changed at a time. */
import { REFRIGERANTS, type RefrigerantName } from '../shapes/refrigerant.ts';
import { type Misreading, PRESSURE_UNITS, type SiteReadings, type SiteValue } from '../shapes/site-readings.ts';
import { type CircuitSide, type CircuitTables, readCircuit } from './refrigerant-side.ts';

/** A list longer than this says nothing any more. */
const MOST_NAMED = 3;

/** Slips that are met, the commoner ones first. Common practice. */
function misreadingsOf({ refrigerant, suction, discharge }: SiteReadings): Misreading[] {
  const one = suction ?? discharge;
  if (!one || !refrigerant) return [];
  return [
    ...(suction && discharge ? [{ kind: 'exchanged' as const }] : []),
    { kind: 'basis', basis: one.basis === 'gauge' ? 'absolute' : 'gauge' },
    ...PRESSURE_UNITS.flatMap((unit): Misreading[] => (unit === one.unit ? [] : [{ kind: 'unit', unit }])),
    ...REFRIGERANTS.flatMap((name): Misreading[] =>
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

/** Refrigerants that boil and condense so nearly alike [K] that no other reading but the hot gas tells them apart. A judgement. */
const ALIKE_K = 3.2;
/** Sound compressors show a hot gas that is neither in the coldest nor in the hottest fifth of its band. A judgement. */
const USUAL_SHARE = 0.2;

/** Other refrigerants that these readings fit as well: by their pressures alone, or better by the hot gas. */
export interface Alike {
  readonly others: readonly RefrigerantName[];
  readonly by: 'pressures' | 'hot-gas';
}

/** Null where the hot gas speaks for the one that was chosen, or no other has such pressures. */
export function alikeRefrigerants(readings: SiteReadings, circuit: CircuitSide, tables: CircuitTables): Alike | null {
  const { refrigerant: chosen, suction, discharge } = readings;
  if (!chosen || !suction || !discharge || circuit.remarks.length > 0) return null;
  const near = REFRIGERANTS.flatMap((name) => {
    const other = name === chosen ? null : readCircuit({ ...readings, refrigerant: name }, tables);
    return other && other.remarks.length === 0 && isAlike(circuit, other) ? [{ name, share: hotGasShare(other) }] : [];
  });
  const share = hotGasShare(circuit);
  const others = share === null ? near : isUsual(share) ? [] : near.filter((one) => isUsual(one.share));
  if (others.length === 0) return null;
  return { others: others.map(({ name }) => name), by: share === null ? 'pressures' : 'hot-gas' };
}

const isAlike = (one: CircuitSide, other: CircuitSide): boolean =>
  (['evaporating', 'condensing'] as const).every((quantity) => {
    const [a, b] = [one, other].map(({ values }) => values.find((each) => each.quantity === quantity)?.value);
    return a !== undefined && b !== undefined && Math.abs(a - b) <= ALIKE_K;
  });

/** Where the hot gas stands in its band, 0 to 1 inside it; null where it was not read. */
function hotGasShare({ values }: CircuitSide): number | null {
  const found = values.find(({ quantity }) => quantity === 'discharge');
  const { low, high } = found?.band ?? { low: null, high: null };
  return found === undefined || low === null || high === null ? null : (found.value - low) / (high - low);
}

const isUsual = (share: number | null): boolean => share !== null && share >= USUAL_SHARE && share <= 1 - USUAL_SHARE;

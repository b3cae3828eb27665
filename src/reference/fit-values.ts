/** Whether values from elsewhere have the form of the program's own, and what they would change. */
import type { Reference, Sourced } from '../model/shapes/reference.ts';

const PROVENANCES: readonly unknown[] = [
  'read',
  'memory',
  'computed',
  'common practice, no source',
] satisfies Sourced['provenance'][];

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * The place, such as `quarters.3.pencePerKWh`, where `given` does not have the form of `known`; null where all of it has.
 * A group has the same fields; rows of a list have the fields that all known rows have, and no field that none has.
 */
export function misfit(known: unknown, given: unknown, place: string): string | null {
  const first = (fits: readonly (string | null)[]) => fits.find((one) => one !== null) ?? null;
  if (Array.isArray(known)) {
    if (!Array.isArray(given) || given.length === 0) return place;
    return first(given.map((row, at) => misfitOfRow(known, row, `${place}.${at}`)));
  }
  if (!isGroup(known)) {
    if (place.endsWith('.provenance')) return PROVENANCES.includes(given) ? null : place;
    return typeof given === typeof known && (typeof given !== 'number' || Number.isFinite(given)) ? null : place;
  }
  if (!isGroup(given)) return place;
  const strange = Object.keys(given).find((name) => !Object.hasOwn(known, name));
  if (strange !== undefined) return `${place}.${strange}`;
  return first(Object.keys(known).map((name) => misfit(known[name], given[name], `${place}.${name}`)));
}

function misfitOfRow(known: readonly unknown[], row: unknown, place: string): string | null {
  if (!isGroup(row)) return misfit(known[0], row, place);
  const rows = known.filter(isGroup);
  // A field that some rows lack may be lacking here too.
  const form = Object.assign({}, ...rows) as Record<string, unknown>;
  const fields = Object.entries(form).filter(([name]) => name in row || rows.every((one) => name in one));
  return misfit(Object.fromEntries(fields), row, place);
}

export interface ValueChange {
  /** Where the value stands, such as `['quarters', 'gas 2027-01-01', 'pencePerKWh']`. */
  readonly path: string[];
  /** Undefined: was not there; or goes. */
  readonly before: string | number | undefined;
  readonly after: string | number | undefined;
}

/** A row is known by what it says of itself in words, not by its place in the list. */
const NAMING = ['fuel', 'from', 'ageBand', 'place', 'rule', 'name', 'area', 'districtFrom'];
const nameOfRow = (row: unknown, at: number): string =>
  (isGroup(row) ? NAMING.flatMap((field) => (row[field] === undefined ? [] : [String(row[field])])).join(' ') : '') ||
  String(at + 1);

type Leaf = readonly [path: readonly string[], value: string | number];

/** Figures and texts with their way to them; sources belong to the value beside them and are not told apart. */
function leavesOf(value: unknown, path: readonly string[]): Leaf[] {
  if (typeof value === 'string' || typeof value === 'number') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap((row, at) => leavesOf(row, [...path, nameOfRow(row, at)]));
  return isGroup(value)
    ? Object.entries(value).flatMap(([name, part]) =>
        /^(source|provenance|unit)$/.test(name) ? [] : leavesOf(part, [...path, name]),
      )
    : [];
}

/** Every figure and date that differs, in the order of the newer values. Both hold the same topics. */
export function changesBetween(before: Partial<Reference>, after: Partial<Reference>): ValueChange[] {
  const byPath = (values: Partial<Reference>) =>
    new Map(leavesOf(values, []).map(([path, value]) => [path.join('\n'), value]));
  const [old, fresh] = [byPath(before), byPath(after)];
  return [...new Set([...fresh.keys(), ...old.keys()])]
    .filter((key) => old.get(key) !== fresh.get(key))
    .map((key) => ({ path: key.split('\n'), before: old.get(key), after: fresh.get(key) }));
}

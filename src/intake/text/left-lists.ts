/** What a tree of names and values holds beside the lists that were read of it. */

/** A list of which nothing was read. */
export interface LeftList {
  readonly name: string;
  /** Its values, or its records that hold one. */
  readonly count: number;
  /** Whether it may be what was used, without its times. */
  readonly mayBeUse: boolean;
}

/** Fewer numbers are a place, or the ends of a range. */
const LEAST_NUMBERS = 5;
const LEAST_RECORDS = 3;
/** So many are no prices of a tariff and no means of months. A judgement. */
const MANY = 24;
const OF_PLACE = /coord|geometr|polygon|bbox|bound|\bgeo|latit|longit|location|position/i;

/** @param used lists and records that were read @param rows how many rows they gave */
export function leftLists(tree: unknown, used: ReadonlySet<unknown>, rows: number, name = ''): LeftList[] {
  if (used.has(tree) || typeof tree !== 'object' || tree === null || OF_PLACE.test(name)) return [];
  if (Array.isArray(tree)) {
    const bare = tree.filter(isNumber).length;
    const records = tree.filter((one) => isRecord(one) && Object.values(one).some(isNumber)).length;
    const count = Math.max(bare, records);
    if (bare >= LEAST_NUMBERS || records >= LEAST_RECORDS)
      return [{ name, count, mayBeUse: count >= MANY || count === rows }];
    return tree.flatMap((one) => leftLists(one, used, rows, name));
  }
  return Object.entries(tree).flatMap(([own, one]) => leftLists(one, used, rows, `${name} ${own}`.trim()));
}

const isRecord = (value: unknown): value is object => typeof value === 'object' && value !== null;
const isNumber = (value: unknown): boolean =>
  typeof value === 'number' || (typeof value === 'string' && /^-?\d+([.,]\d+)?$/.test(value));

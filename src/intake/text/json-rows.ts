/**
 * Records in JSON, or in any tree of names and values, as lines of a table: one line a record, one column a name. Lists of
 * records, lists of pairs, lists side by side, values by date, and lists of such lists are what programs write.
 */
import { rowsOfSteps } from './even-steps.ts';
import { type LeftList, leftLists } from './left-lists.ts';
import { isPeriodOfPoints, recordsOfPeriod } from './market-points.ts';
import { nestsTooDeep } from './nesting.ts';

const MOST_NAMES = 60;
type Value = string | number | boolean | null;
type Row = Readonly<Record<string, Value>>;
interface Found {
  readonly rows: readonly Row[];
  /** The lists and records of the tree that they were made of. */
  readonly from: readonly unknown[];
  /** Plain values beside the list. */
  readonly titles: readonly (readonly [string, Value])[];
  /** Whether each record is a day with its parts side by side. */
  readonly isByDay?: boolean;
  /** Whether the values have no names of their own. */
  readonly isBare?: boolean;
}

/** A tree as lines, and what of it is not in them. */
export interface Listed {
  readonly text: string;
  readonly left: readonly LeftList[];
}

/** Undefined where the text is no JSON, or holds no list of records. */
export function linesOfJson(text: string): Listed | undefined {
  if (!/^\s*[[{]/.test(text)) return undefined;
  const whole = parsed(text);
  return linesOfTree(whole ?? parsed(`[${text.trim().replaceAll(/\}\s*\n\s*\{/g, '},{')}]`));
}

function parsed(text: string): unknown {
  try {
    return nestsTooDeep(text) ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Whether a text is JSON, whatever it holds. */
export const isJson = (text: string): boolean => /^\s*[[{]/.test(text) && parsed(text) !== undefined;

export function linesOfTree(tree: unknown): Listed | undefined {
  const found = findRows(tree);
  if (!found) return undefined;
  const names = [...new Set(found.rows.flatMap((row) => Object.keys(row)))];
  if (names.length > MOST_NAMES + (found.isByDay ? MOST_PARTS : 0)) return undefined;
  const write = (value: Value | undefined) => String(value ?? '').replaceAll(/[\t\r\n"]/g, ' ');
  const titles = found.titles.map((title) =>
    title
      .filter((word) => word !== '')
      .map(write)
      .join(': '),
  );
  const rows = found.rows.map((row) => names.map((name) => write(row[name])).join('\t'));
  const lines = [...titles, ...(found.isBare ? [] : [names.map(write).join('\t')]), ...rows];
  return { text: `${lines.join('\n')}\n`, left: leftLists(tree, new Set(found.from), rows.length) };
}

const isPlain = (value: unknown): value is Value =>
  value === null || ['string', 'number', 'boolean'].includes(typeof value);
const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A record with its inner records in it, "energy" and "value" as "energy value"; undefined where it holds a list. */
function flatRow(value: unknown): Row | undefined {
  if (!isObject(value)) return undefined;
  const row: Record<string, Value> = {};
  for (const [name, one] of Object.entries(value)) {
    if (isPlain(one)) row[name] = one;
    // Coordinates and marks are no values of their own.
    else if (Array.isArray(one) && one.length <= MOST_MARKS && one.every(isPlain)) continue;
    else {
      const inner = flatRow(one);
      if (!inner) return undefined;
      for (const [own, part] of Object.entries(inner)) row[`${name} ${own}`] = part;
    }
  }
  return row;
}

/** The parts of a day of hours, and of the longest day of five minutes. */
const [LEAST_PARTS, MOST_PARTS] = [23, 300];

/** A record that holds one list of numbers, for the parts of its day: each under its number, beside what else it says. */
function dayRow(value: unknown): Row | undefined {
  const row: Record<string, Value> = {};
  const lists: (readonly Value[])[] = [];
  const add = (record: Record<string, unknown>) => {
    for (const [name, one] of Object.entries(record)) {
      if (isPlain(one)) row[name] = one;
      else if (isObject(one)) add(one);
      else if (isPartList(one)) lists.push(one);
      else row[name] = JSON.stringify(one);
    }
  };
  if (isObject(value)) add(value);
  if (lists.length !== 1) return undefined;
  return { ...row, ...Object.fromEntries(lists[0]!.map((one, i) => [`interval ${i + 1}`, one])) };
}

const isPartList = (value: unknown): value is readonly Value[] =>
  Array.isArray(value) &&
  value.length >= LEAST_PARTS &&
  value.length <= MOST_PARTS &&
  value.every((one) => one === null || typeof one === 'number');

const isPair = (value: unknown): value is readonly Value[] =>
  Array.isArray(value) && value.length >= 2 && value.every(isPlain);
const LEAST_DATES = 3;
const MOST_MARKS = 4;
const IS_DATE = /^\d{4}-\d{2}(-\d{2}([T ]\d{2}:\d{2}\S*)?)?$|^\d{2}[./]\d{2}[./]\d{4}( \d{2}:\d{2}(:\d{2})?)?$/;

/** The one list of records, with the plain values beside it as titles; two lists in one file say nothing of which. */
function findRows(value: unknown, curve?: unknown): Found | undefined {
  if (Array.isArray(value)) return rowsOfList(value, curve);
  if (!isObject(value)) return undefined;
  if (isPeriodOfPoints(value)) return rowsOfPeriods([value], curve);
  const own = rowsOfNames(value);
  if (own) return own;
  const entries = Object.entries(value);
  const { curveType } = value;
  const steps = rowsOfSteps(value);
  const named = steps ? [] : entries.flatMap(([name, one]) => namedRows(name, findRows(one, curveType)));
  const inner = steps ? { ...steps, titles: [] } : joinNamed(named);
  if (!inner) return undefined;
  const titles = entries.flatMap(([name, one]): (readonly [string, Value])[] => {
    const row = isPlain(one) ? { '': one } : inner.from.includes(one) ? undefined : flatRow(one);
    return row && Object.keys(row).length <= MOST_NAMES
      ? Object.entries(row).map(([part, plain]) => [`${name} ${part}`.trim(), plain] as const)
      : [];
  });
  return { ...inner, titles: [...titles, ...inner.titles] };
}

interface Named {
  readonly name: string;
  readonly found: Found;
}

const namedRows = (name: string, found: Found | undefined): readonly Named[] => (found ? [{ name, found }] : []);

/** What a list is of by its name; the first that fits. */
const KINDS = [
  /export|feed.?in|einspeis|inject|returned/i,
  /generat|solar|\bpv\b|erzeug|produc/i,
  /gas/i,
  /heat|w(ä|ae)rme|chaleur|varme/i,
  /water|wasser|\beau\b/i,
  /weather|temperat|wetter|meteo/i,
  /elec|elek|strom|stroom|import|consum|usage|verbrauch/i,
];
const IS_WHEN = /^(19|20)\d\d([-/]\d\d)?$/;

/** Whether no two of the names say the same: "daily" and "hourly" are of one use. */
function tellApart(names: readonly string[]): boolean {
  const kinds = names.map((name) => KINDS.findIndex((kind) => kind.test(name)));
  return names.every((name) => IS_WHEN.test(name)) || (!kinds.includes(-1) && new Set(kinds).size === kinds.length);
}

/**
 * Lists under names of their own, as one for each fuel: the name goes with each row, and so do the plain values beside its
 * list. Lists without dates tell of meters and prices.
 */
function joinNamed(all: readonly Named[]): Found | undefined {
  const dated = all.filter(({ found: { rows } }) => rows.some((row) => Object.entries(row).some(isDated)));
  const [only, another] = dated.length > 0 ? dated : all;
  if (!only) return undefined;
  if (!another) return withName(only);
  if (
    dated.length === 0 ||
    dated.some(({ found: { isByDay } }) => isByDay) ||
    !tellApart(dated.map(({ name }) => name))
  )
    return undefined;
  const rows = dated.flatMap(({ name, found }) =>
    found.rows.map((row) => ({
      ...Object.fromEntries(found.titles),
      ...(found.isBare ? { time: row['0']!, value: row['1']! } : row),
      register: row['register'] === undefined ? name : `${name} ${row['register']}`,
    })),
  );
  return { rows, titles: [], from: dated.flatMap(({ found: { from } }) => from) };
}

/** What the only list is of may be said by its name alone. */
const withName = ({ name, found }: Named): Found =>
  KINDS.some((kind) => kind.test(name))
    ? { ...found, titles: [['', name.replaceAll(/_|(?<=[a-z])(?=[A-Z])/g, ' ')], ...found.titles] }
    : found;

const IS_OF_TIME = /time|date|stamp|epoch|^ts?$/i;
const isDated = ([name, value]: readonly [string, Value]): boolean =>
  typeof value === 'string'
    ? /^\d{4}-\d{2}|^\d{1,2}[-./]\d{1,2}[-./]\d{4}/.test(value)
    : typeof value === 'number' && value > 1e9 && IS_OF_TIME.test(name);

function rowsOfPeriods(periods: readonly unknown[], curve: unknown): Found | undefined {
  const records = periods.map((one) => (isPeriodOfPoints(one) ? recordsOfPeriod(one, curve) : undefined));
  const rows = records.flatMap((of) => of?.map(flatRow) ?? [undefined]).filter((row) => row !== undefined);
  return records.includes(undefined) || rows.length === 0 ? undefined : { rows, titles: [], from: periods };
}

function rowsOfList(list: readonly unknown[], curve?: unknown): Found | undefined {
  if (isPeriodOfPoints(list[0])) return rowsOfPeriods(list, curve);
  if (list.length > 1 && list.every(isPair)) {
    const rows = list.filter(isPair).map((pair): Row => Object.fromEntries(pair.map((one, i) => [String(i), one])));
    return { rows, titles: [], from: [list], isBare: true };
  }
  const rows = list.map(flatRow).filter((row) => row !== undefined);
  if (list.length > 1 && rows.length === list.length) return { rows, titles: [], from: [list] };
  if (list.length === 1) return findRows(list[0], curve);
  const days = list.map(dayRow).filter((row) => row !== undefined);
  if (days.length > 0 && days.length === list.length) return { rows: days, titles: [], from: [list], isByDay: true };
  // Several records that each hold one list: what they say of themselves goes with each of its rows.
  const several = list.map(findRows).filter((one) => one !== undefined);
  if (list.length === 0 || several.length < list.length) return undefined;
  const joined = several.flatMap((one) =>
    one.rows.map((row) => ({
      ...Object.fromEntries(one.titles),
      ...(one.isBare ? { time: row['0']!, value: row['1']! } : row),
    })),
  );
  return { rows: joined, titles: [], from: several.flatMap(({ from }) => from) };
}

/** Values by date, or lists side by side of one length. */
function rowsOfNames(value: Record<string, unknown>): Found | undefined {
  const entries = Object.entries(value);
  if (entries.length >= LEAST_DATES && entries.every(([name]) => IS_DATE.test(name))) {
    const rows: Row[] = [];
    for (const [date, one] of entries) {
      const row: Row | undefined = isPlain(one) ? ({ value: one } satisfies Row) : flatRow(one);
      if (!row) return undefined;
      rows.push({ date, ...row });
    }
    return { rows, titles: [], from: [value] };
  }
  const lists = entries.flatMap(([name, one]) =>
    Array.isArray(one) && one.every(isPlain) ? [[name, one] as const] : [],
  );
  const length = lists[0]?.[1].length ?? 0;
  if (lists.length < 2 || length < LEAST_DATES || lists.some(([, list]) => list.length !== length)) return undefined;
  const rows = Array.from({ length }, (_, i) => Object.fromEntries(lists.map(([name, list]) => [name, list[i]!])));
  const titles = entries.flatMap(([name, one]) => (isPlain(one) ? [[name, one] as const] : []));
  return { rows, titles, from: lists.map(([, list]) => list) };
}

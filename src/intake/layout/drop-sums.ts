/** Rows of a date column that sum up others: days among times, months among days or weeks, quarters among months. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import type { StampKind } from '../dates/stamp-reader.ts';
import { cellCount, cellText, type Table } from '../text/table.ts';
import { numberEitherWay } from './column-facts.ts';

/** Rows read so far; the arrays are in use up to `count`. */
interface ReadRows {
  readonly rows: Uint32Array;
  readonly civilMinute: Float64Array;
  readonly offsets: Float64Array | null;
  readonly count: number;
}

/** Kinds of labels from the finest on, and the most days that one has. */
const LABELS: readonly (readonly [kind: StampKind, days: number])[] = [
  ['time', 0],
  ['day', 1],
  ['week', 7],
  ['month', 31],
  ['quarter', 92],
];
const rankOf = (kind: StampKind): number => LABELS.findIndex(([one]) => one === kind);

/**
 * Which rows are no readings of their own. Among times a day without one is its midnight, as spreadsheets write it; where
 * the midnights stand there too, such rows are sums. "Q1 2025" is a sum where its months stand there.
 * @returns sums, and labels whose length is not that of the others, which cannot be read beside them
 */
export function findSums(
  read: ReadRows,
  kindOf: (index: number) => StampKind,
): { sums: Set<number>; others: Set<number> } {
  const sums = new Set<number>();
  const others = new Set<number>();
  const counts = new Map<StampKind, number>();
  for (let i = 0; i < read.count; i++) counts.set(kindOf(i), (counts.get(kindOf(i)) ?? 0) + 1);
  if (counts.size < 2) return { sums, others };
  const commonest = [...counts].toSorted((a, b) => b[1] - a[1])[0]![0];
  const days = new Set<number>();
  for (let i = 0; i < read.count; i++) if (kindOf(i) === commonest) days.add(Math.floor(read.civilMinute[i]! / 1440));
  // A spreadsheet writes some months as dates and others by name.
  const areFirsts = commonest === 'day' && [...days].every((day) => toCivilDate(day).endsWith('-01'));
  for (let i = 0; i < read.count; i++) {
    const kind = kindOf(i);
    const length = LABELS[rankOf(kind)]![1];
    if (kind === commonest || kind === 'time' || kind === 'day') continue;
    if (areFirsts && kind === 'month') continue;
    const first = Math.floor(read.civilMinute[i]! / 1440);
    const isSum = rankOf(kind) > rankOf(commonest) && range(first, first + length - 3).some((day) => days.has(day));
    (isSum ? sums : others).add(i);
  }
  if (commonest === 'time') for (const i of bareSums(read, kindOf)) sums.add(i);
  return { sums, others };
}

const range = (from: number, before: number): number[] => Array.from({ length: before - from }, (_, i) => from + i);

/** Days without a time whose midnights stand there too. */
function bareSums({ civilMinute, count }: ReadRows, kindOf: (index: number) => StampKind): readonly number[] {
  const bare: number[] = [];
  const timed = new Set<number>();
  for (let i = 0; i < count; i++)
    if (kindOf(i) === 'day') bare.push(i);
    else if (civilMinute[i]! % 1440 === 0) timed.add(civilMinute[i]!);
  return bare.filter((i) => timed.has(civilMinute[i]!)).length * 2 < bare.length ? [] : bare;
}

/** Fewer rows may come to another by chance. A judgement. */
const LEAST_SUMMED = 3;
/** Of a sum, what its rows may be off by their own rounding. */
const ROUNDED = 1e-4;

/** The last or the first row where it stands under the date of its neighbour and a number in it is the sum of all others'. */
export function findGrandTotal(table: Table, { rows, civilMinute, count }: ReadRows): number | undefined {
  if (count <= LEAST_SUMMED) return undefined;
  const ends = [
    [count - 1, count - 2],
    [0, 1],
  ] as const;
  return ends.find(
    ([i, beside]) => civilMinute[i] === civilMinute[beside] && isSumOfOthers(table, rows, count, i),
  )?.[0];
}

function isSumOfOthers(table: Table, rows: Uint32Array, count: number, i: number): boolean {
  const numberAt = (row: number, column: number) => numberEitherWay(cellText(table, row, column));
  return range(0, cellCount(table, rows[i]!)).some((column) => {
    const total = numberAt(rows[i]!, column);
    if (!(total > 0)) return false;
    let [sum, summed] = [0, 0];
    for (let other = 0; other < count; other++) {
      const number = other === i ? 0 : numberAt(rows[other]!, column);
      if (!(number > 0)) continue;
      sum += number;
      summed++;
      if (number * 1.5 >= total || sum > total * (1 + ROUNDED)) return false;
    }
    return summed >= LEAST_SUMMED && sum >= total * (1 - ROUNDED);
  });
}

/** Takes rows out, in place; answers how many are left. */
export function takeOut({ rows, civilMinute, offsets, count }: ReadRows, gone: ReadonlySet<number>): number {
  let kept = 0;
  for (let i = 0; i < count; i++) {
    if (gone.has(i)) continue;
    rows[kept] = rows[i]!;
    civilMinute[kept] = civilMinute[i]!;
    if (offsets) offsets[kept] = offsets[i]!;
    kept++;
  }
  return kept;
}

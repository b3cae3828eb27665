/** What a column is, told by the columns beside it. */
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ, UNREADABLE } from '../dates/stamp-reader.ts';
import { cellText, type Table } from '../text/table.ts';
import { type ColumnFacts, isClockColumn, isDateColumn, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import { AMOUNT, METER } from './vocabulary.ts';

/** An "index" that goes up by more than one is a reading where nothing else is an amount. */
export function nameIndex(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isOther = (c: ColumnFacts) => isNumberColumn(c) && ['value', 'reading'].includes(c.meaning.role);
  const isIndex = (c: ColumnFacts) =>
    isNumberColumn(c) && (c.rising || c.falling) && !c.counting && /^index$/i.test(c.heading.trim());
  if (columns.some(isOther)) return [...columns];
  return columns.map((c) => (isIndex(c) ? { ...c, meaning: { ...c.meaning, role: 'reading' } } : c));
}

/** A moment that stands in every row alike tells of the file, where another column of dates goes on. */
export function setStillAside(table: Table, rows: readonly number[], columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isStill = (c: ColumnFacts) =>
    rows.every((row) => cellText(table, row, c.index) === cellText(table, rows[0]!, c.index));
  const still = rows.length < 3 ? [] : columns.filter((c) => isDateColumn(c) && isStill(c));
  if (!columns.some((c) => isDateColumn(c) && !still.includes(c))) return [...columns];
  return columns.map((c) => (still.includes(c) ? { ...c, dates: 0, words: c.sampled, meaning: { role: 'index' } } : c));
}

/** So many rows of a list of bills begin where another ends. A judgement. */
const MOSTLY_CHAINED = 0.7;

/** Two columns of dates of which the one goes on where the other left off are the ends of a period, whatever their names. */
export function nameEnds(
  table: Table,
  rows: readonly number[],
  columns: readonly ColumnFacts[],
): readonly ColumnFacts[] {
  const dates = columns.filter(isDateColumn);
  if (dates.length < 2 || rows.length < 3 || dates.some((c) => ['from', 'to'].includes(c.meaning.role))) return columns;
  const text = (row: number, c: ColumnFacts) => cellText(table, row, c.index);
  const reader = createStampReader();
  const dayOf = (cell: string, dayFirst: boolean) =>
    readStamp(cell, 0, cell.length, dayFirst, reader) === READ && reader.kind === 'day'
      ? reader.civilMinute
      : Number.NaN;
  const isBefore = (from: string, to: string) => [true, false].some((first) => dayOf(from, first) < dayOf(to, first));
  const isChain = (from: ColumnFacts, to: ColumnFacts, step: 1 | -1) => {
    const links = rows.filter(
      (row, i) => rows[i + step] !== undefined && text(row, to) === text(rows[i + step]!, from),
    );
    return (
      links.length >= (rows.length - 1) * MOSTLY_CHAINED &&
      rows.every((row) => isBefore(text(row, from), text(row, to)))
    );
  };
  const pairs = dates.flatMap((from) => dates.filter((to) => to !== from).map((to) => [from, to] as const));
  const named = pairs.find(([a, b]) => /\bfrom$/.test(plainWords(a.heading)) && /\bto$/.test(plainWords(b.heading)));
  const pair = named ?? pairs.find(([from, to]) => isChain(from, to, 1) || isChain(from, to, -1));
  if (!pair) return columns;
  const roles = new Map<ColumnFacts, 'from' | 'to'>([
    [pair[0], 'from'],
    [pair[1], 'to'],
  ]);
  return columns.map((c) => (roles.has(c) ? { ...c, meaning: { ...c.meaning, role: roles.get(c)! } } : c));
}

/**
 * Among several date columns the one named as start comes first, then one named as date, then the leftmost. Where rows
 * share their day and a moment stands beside it, the moment tells them apart.
 */
const OF_ISSUE =
  /\b(bill|invoice|issued?|created?|printed|paid|payment|due|posted|statement|upload\w*|export(ed)?|download\w*|rechnungs ?datum|facture|factura|fattura|factuur\w*|faktura\w*|(re)?order(ed|s)?|booked|quoted|bestell\w*|bestelt|besteld|auftrags\w*|commandee?|(date|jour) (de|du) (la )?commande|commande|pedido|encargado|encomenda\w*|ordinat[oa]|ordine|bestilt|bestilling\w*|bestalld|bestallning\w*|bestalt|zamowi\w*|objedn\w*|tila(ttu|us\w*))\b(?! ?period)/;

export function preferredDate(
  table: Table,
  rows: readonly number[],
  columns: readonly ColumnFacts[],
  dateColumn: number,
): number {
  const all = columns.filter(isDateColumn);
  // When a bill or a file was made says least of when something was used.
  const own = all.filter((c) => c.meaning.role !== 'to' && !OF_ISSUE.test(plainWords(c.heading)));
  const dates = own.length > 0 ? own : all;
  const named = dates.find((c) => c.meaning.role === 'from') ?? dates.find((c) => c.meaning.role === 'stamp');
  const other = dates.find((c) => c.meaning.role !== 'to');
  const best = named ?? other;
  if (best?.dateKind !== 'day' || columns.some(isClockColumn)) return best?.index ?? dateColumn;
  const differ = ({ index }: ColumnFacts) => new Set(rows.map((row) => cellText(table, row, index))).size;
  const reader = createStampReader();
  const minuteOf = (row: number, { index }: ColumnFacts) => {
    const cell = cellText(table, row, index);
    return readStamp(cell, 0, cell.length, true, reader) === UNREADABLE ? Number.NaN : reader.civilMinute;
  };
  const isNear = (c: ColumnFacts) => rows.every((row) => Math.abs(minuteOf(row, c) - minuteOf(row, best)) < 2 * 1440);
  const moments = dates.filter((c) => c.dateKind === 'time' && c.meaning.role !== 'to');
  return moments.find((c) => differ(c) > 2 * differ(best) && isNear(c))?.index ?? best.index;
}

/** Amounts hardly change so little from row to row as a counter does that has run for years. A judgement. */
const RUN_FOR_YEARS = 10;

/** Amounts of a home rise so often one after another in no year. A judgement. */
const MANY_RISES = 11;

/** "Date read": the rows are readings of the meters. */
export const isOfReadings = (c: ColumnFacts): boolean =>
  isDateColumn(c) &&
  /\b(date (of )?(meter )?read(ing)?|(meter )?read(ing)? (date|taken))\b/.test(plainWords(c.heading));

/** "Gas meter" above numbers that go up, as those of a counter do, shows readings; an exchange begins near nought. */
export function nameMeter(c: ColumnFacts, isListOfReadings: boolean): ColumnFacts {
  const words = plainWords(c.heading);
  const isMeter =
    (METER.test(words) || isListOfReadings) && !AMOUNT.test(words) && ['value', 'unknown'].includes(c.meaning.role);
  const goesOn = c.numbers - 1 - c.falls;
  if (!isMeter || !isNumberColumn(c) || c.falls > 1 || goesOn < 2 || goesOn <= 2 * c.falls || c.rises === 0) return c;
  const beganAnew = (c.falls === 1 || goesOn > c.rises) && c.smallest < c.largest / 5;
  if (!beganAnew && !(c.falls === 0 && c.rises >= MANY_RISES) && c.smallest < RUN_FOR_YEARS * (c.largest - c.smallest))
    return c;
  return { ...c, meaning: { ...c.meaning, role: 'reading' } };
}

const LAST = /\blast (meter )?(read(ing)?s?|index|register)\b/;

/** Gives such a column its part of a bill; other tables come back as they are. */
export function pairLastReadings(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const has = (part: 'opening' | 'closing') => columns.some((c) => c.meaning.bill === part);
  const bill = has('closing') ? 'opening' : has('opening') ? 'closing' : undefined;
  if (bill === undefined) return columns;
  return columns.map((c) =>
    c.meaning.bill === undefined && LAST.test(plainWords(c.heading))
      ? { ...c, meaning: { ...c.meaning, role: 'reading', bill } }
      : c,
  );
}

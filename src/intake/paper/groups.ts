/**
 * Which charges of a page belong together: those that a printed tax and total hold. What no total holds is a comparison,
 * a projection or another bill's, and is never added to it.
 */
import type { DatePair } from './date-pairs.ts';
import type { Figure, RowFacts } from './figures.ts';
import type { PaperLine } from './lines.ts';
import { isMoney, type Proof, penceOf } from './relations.ts';
import { findTotals, type Totals } from './totals.ts';
import { COMPARED, EARLIER, PAYMENT } from './vocabulary.ts';

export interface ChargeGroup {
  readonly lines: readonly PaperLine[];
  readonly totals: Totals;
  /** The dates that stand with it. */
  readonly pairs: readonly DatePair[];
}

/** More charges than that on a bill are a table of months, whose parts would fit each other by chance. */
const MOST_LINES = 16;

export function groupCharges(
  rows: readonly RowFacts[],
  lines: readonly PaperLine[],
  pairs: readonly DatePair[],
  taken: ReadonlySet<Figure>,
): ChargeGroup[] {
  if (lines.length < 2 || lines.length > MOST_LINES) return [];
  const columnOf = columnsOf(lines);
  const across = lines.toSorted((a, b) => columnOf(a) - columnOf(b) || a.amount.row - b.amount.row);
  const found = [...runsOf(lines), ...runsOf(across)].flatMap((run): ChargeGroup[] => {
    if (run.length === lines.length || !run.some(({ kind }) => kind === 'energy')) return [];
    const totals = findTotals({ rows, lines: run, taken });
    return totals?.vat && totals.total && totals.confirmed >= 2 ? [{ lines: run, totals, pairs: [] }] : [];
  });
  const groups: ChargeGroup[] = [];
  for (const one of found.toSorted(
    (a, b) => b.totals.confirmed - a.totals.confirmed || b.lines.length - a.lines.length,
  )) {
    const isFree = groups.every(
      ({ lines: own, totals }) => totals.total !== one.totals.total && !own.some((line) => one.lines.includes(line)),
    );
    if (isFree) groups.push(one);
  }
  const inOrder = groups.toSorted((a, b) => firstRow(a) - firstRow(b) || endOf(a.lines[0]!) - endOf(b.lines[0]!));
  const dated = inOrder.map((one, i) => ({ ...one, pairs: pairsOf(one, inOrder[i - 1], inOrder, pairs) }));
  return dated.filter((one, i) => i === 0 || belongsWith(one, dated.slice(0, i), rows));
}

/** Every stretch of lines that follow each other. */
function runsOf(lines: readonly PaperLine[]): PaperLine[][] {
  return lines.flatMap((_, from) => lines.slice(from).map((__, length) => lines.slice(from, from + length + 1)));
}

/** Amounts of one column end at the same place, or nearly. */
const COLUMN = 30;
const endOf = ({ amount: { box } }: PaperLine): number => box.x + box.width;
function columnsOf(lines: readonly PaperLine[]): (line: PaperLine) => number {
  const ends = lines.map(endOf).toSorted((a, b) => a - b);
  const starts = ends.filter((end, i) => i === 0 || end - ends[i - 1]! > COLUMN);
  return (line) => starts.findLastIndex((start) => start <= endOf(line));
}
const firstRow = ({ lines }: ChargeGroup): number => Math.min(...lines.map(({ amount }) => amount.row));
const lastRow = ({ lines }: ChargeGroup): number => Math.max(...lines.map(({ amount }) => amount.row));

/** The dates above or among the charges of a group, after those of the group before; of columns beside each other those nearest. */
function pairsOf(
  own: ChargeGroup,
  before: ChargeGroup | undefined,
  all: readonly ChargeGroup[],
  pairs: readonly DatePair[],
): DatePair[] {
  const beside = all.filter((one) => firstRow(one) <= lastRow(own) && lastRow(one) >= firstRow(own));
  const away = (pair: DatePair, { lines }: ChargeGroup) =>
    Math.abs(pair.from.box.x - (lines[0]!.quantity ?? lines[0]!.amount).box.x);
  if (beside.length > 1)
    return pairs.filter((pair) => beside.every((one) => one === own || away(pair, own) < away(pair, one)));
  const above = before ? lastRow(before) : -1;
  const since = pairs.filter(({ from, to }) => from.row > above && to.row <= lastRow(own));
  return since.length > 0 ? since : [...pairs];
}

/** Further charges are of this paper where one sum holds the totals, or where they are of days of their own. */
function belongsWith(one: ChargeGroup, before: readonly ChargeGroup[], rows: readonly RowFacts[]): boolean {
  if (isCompared(one.lines, rows)) return false;
  return grandTotal([...before, one], rows) !== undefined || before.every((other) => areApart(one, other));
}

/** The printed sum of some totals. */
export function grandTotal(groups: readonly ChargeGroup[], rows: readonly RowFacts[]): Proof | undefined {
  const totals = groups.map(({ totals: { total } }) => total!);
  const pence = groups.reduce((sum, { totals: { totalPence } }) => sum + totalPence, 0);
  const printed = rows
    .flatMap(({ figures }) => figures)
    .filter((one) => isMoney(one) && !one.negative && penceOf(one) === pence && !totals.includes(one));
  const [grand] = printed;
  if (!grand || groups.length < 2) return undefined;
  const sum = `${totals.map(({ text }) => text).join(' + ')} = ${grand.text}`;
  return { figures: [...totals, grand], sum, bits: Math.log2(pence) };
}

const spanOf = ({ pairs }: ChargeGroup): DatePair | undefined => pairs.toSorted((a, b) => b.days - a.days)[0];
/** Whether two groups state days of which none is shared; a first day may be the last of the other. */
export function areApart(a: ChargeGroup, b: ChargeGroup): boolean {
  const [one, other] = [spanOf(a), spanOf(b)];
  if (!one || !other || one === other) return false;
  return one.from.day >= other.to.day || other.from.day >= one.to.day;
}

/** Rows of a table above a number, rows of words above those, and words of a title; more are running text. */
const [TABLE_ROWS, TITLE_ROWS, TITLE_WORDS] = [14, 2, 8];
/** The words, at the head of a number's column or above its table, that say it is of another time than the bill. */
export const earlierWords = (figure: Figure, rows: readonly RowFacts[]): string | undefined =>
  wordsOver(figure, rows, EARLIER);

/** In a list of payments, whose title names no charges beside them. */
export function isOfPayments(figure: Figure, rows: readonly RowFacts[]): boolean {
  const title = wordsOver(figure, rows, PAYMENT);
  return title !== undefined && !/charge|cost|bill|rechnung|kosten/i.test(title);
}

/** What is said at the head of a number's column or above its table, where it says one of some words. */
function wordsOver({ heading, row: at }: Figure, rows: readonly RowFacts[], said: RegExp): string | undefined {
  if (said.test(heading)) return heading;
  const { row } = rows[at]!;
  // The head of several columns says of each its own, one beside the table nothing of it.
  const isTitle = ({ row: { page, words }, text, figures }: RowFacts) =>
    page === row.page &&
    figures.length === 0 &&
    !/\t|[.!?]$/.test(text) &&
    words[0]!.x < row.words[0]!.x + row.height * 3;
  const from = Math.max(0, at - TABLE_ROWS);
  const title = rows.slice(from, at).findLastIndex(isTitle);
  if (title < 0) return undefined;
  const above = rows.slice(Math.max(0, from + title + 1 - TITLE_ROWS), from + title + 1).filter(isTitle);
  return above.find(({ words }) => said.test(words) && words.split(' ').length <= TITLE_WORDS)?.text;
}

const ABOVE = 4;
/** Whether the words beside or above some charges say that they are compared or foreseen; of a list the words above it. */
export function isCompared(
  lines: readonly Pick<PaperLine, 'amount' | 'quantity'>[],
  rows: readonly RowFacts[],
): boolean {
  // What is charged for may stand far from its price and sum.
  const starts = lines.map(({ amount, quantity }) =>
    quantity && quantity.row < amount.row && amount.row - quantity.row <= ABOVE ? quantity.row : amount.row,
  );
  return starts.every((start, i) => {
    if (earlierWords(lines[i]!.amount, rows) !== undefined) return true;
    let at = start;
    while (starts.includes(at - 1)) at--;
    return rows.slice(Math.max(0, at - ABOVE), start + 1).some(({ words }) => COMPARED.test(words));
  });
}

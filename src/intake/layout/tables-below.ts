/** Tables one below the other on one sheet: under headings of their own, or under titles that tell them apart. */
import { monthOfName } from '../dates/month-names.ts';
import { quarterOfName } from '../dates/quarter-names.ts';
import { isDated } from '../dates/read-stamp.ts';
import { pickRows } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowsWithoutDigit, rowTexts, type Table } from '../text/table.ts';
import { numberEitherWay } from './column-facts.ts';
import { carrierOfWords, meaningOf, plainWords, unitOfWords } from './headings.ts';
import { RATE_REGISTER, TOTALS } from './vocabulary.ts';

export interface PartTable {
  readonly name: string;
  readonly table: Table;
}

export const SEARCHED_ROWS = 40;

export const isDateLike = (cell: string): boolean => isDated(cell) || monthOfName(cell.replace(/\.$/, '')) > 0;
export const isWords = (cell: string): boolean => cell !== '' && !isDated(cell) && Number.isNaN(numberEitherWay(cell));

const known = new Map<string, boolean>();
/** Whether dates stand below such a heading; the few headings of a file are asked about once. */
export function isOfDates(heading: string): boolean {
  if (heading.length < 3 || heading.length > 40 || /\d/.test(heading)) return false;
  let is = known.get(heading);
  if (is === undefined) {
    if (known.size > 1000) known.clear();
    is = ['stamp', 'from', 'to', 'time'].includes(meaningOf(heading).role);
    known.set(heading, is);
  }
  return is;
}

/** Numbers of pages, bills and weeks, and that a table goes on: parts of one record. */
const OF_A_PART =
  /(?<![a-z])(page|seite|pagina|side|sida|sheet|blatt|part|teil|week|kw|woche|day|tag|bill|invoice|statement|quarter|period|rechnung|abrechnung|facture|factura|fattura)s?[ .:]*(no|nr|number)?[ .:]*\d+( ?(of|von|de|\/) ?\d+)?(?![a-z\d])|\(?(?<![a-z])(continued|cont|fortsetzung|suite)(?![a-z])[.)]*/g;
const OF_A_TIME =
  /^(19|20)\d\d([/-](19|20)?\d\d)?$|^(winter|spring|summer|autumn|sommer|herbst|(mon|tues|wednes|thurs|fri|satur|sun)day)$/;

/** A title without what it says of when and of which part: that of tables that go on in each other. */
export function withoutTime(title: string): string {
  const words = plainWords(title)
    .replaceAll(OF_A_PART, ' ')
    .replaceAll(/[#*:,()]+/g, ' ')
    .trim()
    .split(/\s+/);
  const isOfMonth = words.some((word) => monthOfName(word) > 0);
  return words
    .filter((word) => !isDateLike(word) && quarterOfName(word) === 0 && !OF_A_TIME.test(word))
    .filter((word) => !(isOfMonth && /^\d{1,2}\.?(st|nd|rd|th)?$/.test(word)) && !/^[-–/]$/.test(word))
    .join(' ');
}

/** Where a table begins: its title and headings, where it has them, and its first row of data. */
interface Start {
  readonly title?: number;
  readonly heads?: number;
  readonly first: number;
}
const firstRowOf = ({ title, heads, first }: Start): number => Math.min(title ?? first, heads ?? first);

const filledOf = (table: Table, row: number): readonly string[] => rowTexts(table, row).filter((cell) => cell !== '');
/** Of a year, a column may be named by that alone. */
const isHead = (cell: string): boolean => isWords(cell) || /^(19|20)\d\d$/.test(cell);
const isTitle = (table: Table, row: number): boolean => {
  const cells = row < 0 ? [] : filledOf(table, row);
  return cells.length === 1 && isHead(cells[0]!) && !TOTALS.test(cells[0]!);
};

function startsWithLetter(table: Table, row: number, column: number): boolean {
  const cell = table.rowStart[row]! + column;
  const from = table.cellFrom[cell]!;
  const code = table.codes[from]!;
  // Digits and signs, with which nearly all begin, come before the letters.
  if (!(code >= 65 || code === 35) || cell >= table.rowStart[row + 1]! || from >= table.cellTo[cell]!) return false;
  return code > 191 || code === 35 || ((code | 32) >= 97 && (code | 32) <= 122);
}

/** What happened stands between rows too, and begins no table. */
const OF_AN_EVENT =
  /(?<![a-z])(install\w*|fit(ted)?|remov\w*|replac\w*|chang\w*|start\w*|stop\w*|broke\w*|repair\w*|service[ds]?|mov(ed?|ing)|switch\w*|added|swap\w*|ein(gebaut|zug)|aus(gebaut|zug)|getauscht|wechsel)(?![a-z])/;
const MOST_WORDS = 3;

/** Whether a line by itself between two rows of data is the title of those below it. */
function isOfOwn(table: Table, row: number, before: Start): boolean {
  const words = wordsOf(table, row);
  if (standsAbove(table, row, firstRowOf(before))) return false;
  if (words.length > MOST_WORDS || OF_AN_EVENT.test(words.join(' '))) return false;
  const said = words.join(' ');
  const isKnown = carrierOfWords(said) !== undefined || RATE_REGISTER.test(said);
  if (words.length === 1 && isKnown) return true;
  const isApart = table.lineOfRow[row]! > table.lineOfRow[row - 1]! + 1;
  if (before.title === undefined) return isKnown && isApart;
  if (!isKnown && /^\p{Ll}/u.test(filledOf(table, row)[0]!)) return false;
  const others = wordsOf(table, before.title);
  const isAlike = others.length === words.length && words.some((word) => others.includes(word));
  // Directly over data, below the headings of all, nothing but the title of a part stands.
  return isKnown || isApart || isAlike || before.title === before.first - 1;
}

/** A line that stands above all tables too, as a remark does that is written again and again. */
const standsAbove = (table: Table, row: number, end: number): boolean =>
  Array.from({ length: end }, (_, above) => filledOf(table, above)).some(
    (cells) => cells.length === 1 && cells[0] === filledOf(table, row)[0],
  );

/** The words of a title, without units. */
const wordsOf = (table: Table, row: number): readonly string[] =>
  withoutTime(filledOf(table, row)[0]!)
    .split(' ')
    .filter((word) => word !== '' && unitOfWords(word) === undefined);

/** Whether a row has nothing but words, and more than a title has or none over the dates. */
const areHeads = (table: Table, row: number): boolean => {
  const filled = filledOf(table, row);
  return filled.every(isHead) && (filled.length > 1 || cellText(table, row, 0) === '');
};

/** Where the first table begins: below words over dates, or with a first row of a date and a number. */
function firstStart(table: Table): { readonly start: Start; readonly column: number } | undefined {
  for (let row = 0; row < Math.min(SEARCHED_ROWS, table.rowCount - 1); row++) {
    const cells = rowTexts(table, row);
    const filled = cells.filter((cell) => cell !== '');
    const isWordy = filled.length > 1 && filled.every(isHead) && monthOfName(filled[0]!) === 0;
    const hasNumber = filled.some((cell) => !isDateLike(cell) && !Number.isNaN(numberEitherWay(cell)));
    const column = cells.findIndex((cell, c) =>
      isWordy ? isOfDates(cell) && isDateLike(cellText(table, row + 1, c)) : hasNumber && isDateLike(cell),
    );
    if (column < 0 || !isDateLike(cellText(table, row + 1, column))) continue;
    const near = (is: (row: number) => boolean) => [row - 1, row - 2].find((one) => one >= 0 && is(one));
    // The row of units stands below that of headings, and says nothing over the dates.
    const overDates = (one: number) => areHeads(table, one) && cellText(table, one, column) !== '';
    const heads = isWordy ? row : (near(overDates) ?? near((one) => areHeads(table, one)));
    const title = [row - 1, (heads ?? row) - 1].find((one) => one !== heads && isTitle(table, one));
    const first = isWordy ? row + 1 : row;
    return {
      start: { ...(title === undefined ? {} : { title }), ...(heads === undefined ? {} : { heads }), first },
      column,
    };
  }
  return undefined;
}

function startsOf(table: Table): readonly Start[] {
  const { start, column } = firstStart(table) ?? { start: undefined, column: 0 };
  if (!start) return [];
  const starts = [start];
  const isDatedAt = (row: number) => row < table.rowCount && isDateLike(cellText(table, row, column));
  // A row of units may stand between.
  const isBetween = (row: number) =>
    row < table.rowCount && cellText(table, row, column) === '' && areHeads(table, row);
  for (const row of rowsWithoutDigit(table, column)) {
    if (row <= start.first || row + 1 >= table.rowCount) continue;
    const c = cellCount(table, row) === 1 ? 0 : column;
    if (!startsWithLetter(table, row, c) || isDateLike(cellText(table, row, c))) continue;
    const cells = filledOf(table, row);
    const first = isDatedAt(row + 1) ? row + 1 : row + 2;
    if (!cells.every(isHead) || (first > row + 1 && !(isBetween(row + 1) && isDatedAt(first)))) continue;
    if (cells.length > 1 && isOtherHeads(table, row, column))
      starts.push({ ...(isTitle(table, row - 1) ? { title: row - 1 } : {}), heads: row, first });
    else if (isTitle(table, row) && (first > row + 1 || isOfOwn(table, row, start)))
      starts.push({ title: row, ...(first > row + 1 ? { heads: row + 1 } : {}), first });
  }
  return starts;
}

/** Whether a row of words over dates is one of headings; below an empty line it is, whatever it speaks of. */
function isOtherHeads(table: Table, row: number, column: number): boolean {
  const cell = cellText(table, row, column);
  const cells = filledOf(table, row);
  const isApart = table.lineOfRow[row]! > table.lineOfRow[row - 1]! + 1;
  return (
    monthOfName(cells[0]!) === 0 &&
    (isApart || isOfDates(cell) || cells.some((one) => ['value', 'reading'].includes(meaningOf(one).role)))
  );
}

/** The tables of a sheet by their titles and headings; what goes on under the same ones is one table, as on the next page. */
export function belowEachOther(table: Table): readonly PartTable[] {
  const starts = startsOf(table);
  const whole = [{ name: '', table }];
  if (starts.length < 2) return whole;
  const range = (from: number, before: number) => Array.from({ length: before - from }, (_, i) => from + i);
  const headsOf = ({ heads = starts[0]!.heads }: Start) => (heads === undefined ? [] : rowTexts(table, heads));
  const titleOf = ({ title }: Start) => (title === undefined ? '' : filledOf(table, title)[0]!);
  const hasDates = starts.every(({ first }) => rowTexts(table, first).some(isDated));
  const lastTitle = new Map<string, string>();
  const parts = Map.groupBy(starts, (one) => {
    const heads = headsOf(one).map(plainWords).join('\n');
    const title = titleOf(one) || (lastTitle.get(heads) ?? '');
    lastTitle.set(heads, title);
    return `${hasDates ? withoutTime(title) : title}\n${heads}`;
  });
  if (parts.size < 2) return whole;
  const before = range(0, firstRowOf(starts[0]!));
  const ofDates = headsOf(starts[0]!).findIndex(isOfDates);
  return [...parts.values()].map((own, i) => {
    const rows = own.flatMap((one) => {
      const { heads, first } = one.heads === undefined ? starts[0]! : one;
      const next = starts[starts.indexOf(one) + 1];
      const above = range(heads ?? first, first).filter((row) => row !== one.title && row !== starts[0]!.title);
      const its = range(one.first, next === undefined ? table.rowCount : firstRowOf(next));
      return [...(one.title === undefined ? [] : [one.title]), ...above, ...its];
    });
    const words = headsOf(own[0]!).filter((cell, c) => cell !== '' && c !== ofDates);
    return { name: titleOf(own[0]!) || words.join(', ') || `${i + 1}`, table: pickRows(table, [...before, ...rows]) };
  });
}

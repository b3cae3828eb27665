/** Tables with days, weeks, months or years across and hours, dates, years or names down: one row a cell instead. */
import { toCivilDate, twoDigits } from '../../model/calendar/civil.ts';
import { monthOfName } from '../dates/month-names.ts';
import { quarterOfName } from '../dates/quarter-names.ts';
import { isClock } from '../dates/read-clock.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { isMissing } from '../numbers/read-number.ts';
import { tableOfRows } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { YEAR, yearOfTitles } from './date-parts.ts';
import { plainWords, slotOfHeading, unitOfWords } from './headings.ts';
import { TOTALS, WEEK } from './vocabulary.ts';

const SEARCHED_ROWS = 40;
/** Fewer dates side by side may be the two ends of a bill and others. A judgement. */
const LEAST_ACROSS = 6;
const LEAST_MONTHS = 3;
const LEAST_WEEKS = 12;
const MOSTLY = 0.9;
const MOST_CELLS = 400_000;
/** What lies between the years across. */
const COMPARES = /^(([+-]|\+\/-) ?)?(%|change|increase|saving|variance|vs)(?!\p{L})/iu;

/** What a cell above or on the left says of when. */
interface When {
  /** A date, month or week with its year, as it is read. */
  readonly date?: string;
  readonly hour?: string;
  readonly year?: string;
  readonly quarter?: number;
  readonly month?: number;
  readonly day?: number;
  readonly week?: number;
  /** Column of the week, from its first on. */
  readonly weekday?: number;
  /** Day since 1970 with which the row's week begins. */
  readonly first?: number;
  /** What a year's column is of. */
  readonly of?: string;
}
type Kind = (text: string) => When | undefined;

interface Across {
  readonly columns: readonly number[];
  readonly above: readonly When[];
  readonly leftColumn: number;
  readonly down: Kind;
  /** What the titles say of when. */
  readonly title: When;
  /** Columns on the left that say of what a row is. */
  readonly names: readonly number[];
}

/** Undefined where nothing of the kind stands across, or where a row does not say when it was. */
export function unfoldAcross(table: Table, fileName: string): Table | undefined {
  for (let row = 0; row < Math.min(table.rowCount, SEARCHED_ROWS); row++) {
    const heads = headsOf(table, row);
    const across = heads.length >= 3 ? findAcross(table, row, heads, titleOf(table, row, fileName)) : undefined;
    if (across && (table.rowCount - row) * across.columns.length <= MOST_CELLS)
      return unfold(table, row, heads, across);
  }
  return undefined;
}

/** The texts of a row; below a row of years, each over the months after it, with the year. */
function headsOf(table: Table, row: number): string[] {
  const heads = rowTexts(table, row).map((head) => (head.startsWith('#') ? '' : head));
  const over = row === 0 ? [] : rowTexts(table, row - 1);
  if (
    !over.some((cell, c) => c > 0 && isYear(cell)) ||
    !over.every((cell) => cell === '' || isYear(cell) || TOTALS.test(cell))
  )
    return heads;
  let year = '';
  return heads.map((head, c) => {
    if ((over[c] ?? '') !== '') year = isYear(over[c]!) ? over[c]! : '';
    return year !== '' && monthNumber(head) > 0 ? `${year}-${twoDigits(monthNumber(head))}` : head;
  });
}

/** What stands on the left of each row below, sums and remarks left off. */
function rowsBelow(table: Table, row: number, column: number): string[] {
  return Array.from({ length: table.rowCount - row - 1 }, (_, i) => row + 1 + i)
    .filter((at) => !isRemark(table, at))
    .map((at) => cellText(table, at, column))
    .filter((left) => left !== '' && !TOTALS.test(left));
}

/** A row of words with nothing beside them. */
function isRemark(table: Table, row: number): boolean {
  for (let column = 1; column < cellCount(table, row); column++) if (cellText(table, row, column) !== '') return false;
  return true;
}

/** The one year of the titles and the corner, else of the file's name, and the one month of the titles. */
function titleOf(table: Table, headingRow: number, fileName: string): When {
  const titles = Array.from({ length: headingRow }, (_, row) => rowTexts(table, row)).flat();
  const year =
    yearOfTitles([...titles, cellText(table, headingRow, 0)]) ?? yearOfTitles([fileName.replace(/\.\w{2,4}$/, '')]);
  const months = titles.flatMap((title) => asMonth(title) ?? []);
  return { ...(year === undefined ? {} : { year }), ...(months.length === 1 ? months[0] : {}) };
}

const isYear = (text: string): boolean => /^(19[9]\d|20\d\d)$/.test(text);
const YEAR_WITHIN = /(?<!\d)(19[9]\d|20\d\d)(?!\d)/;
const reader = createStampReader();
const kindOf = (text: string, dayFirst = true): string | undefined =>
  text.length >= 6 && readStamp(text, 0, text.length, dayFirst, reader) === READ ? reader.kind : undefined;
const monthNumber = (text: string): number =>
  /^\d{1,2}$/.test(text) && Number(text) <= 12 ? Number(text) : monthOfName(text.replace(/\.$/, ''));
const numberOf = (text: string, most: number): number => {
  const number = /^\d{1,2}\.?$/.test(text) ? Number.parseInt(text, 10) : 0;
  return number <= most ? number : 0;
};

const asYear: Kind = (text) => {
  const year = YEAR_WITHIN.exec(text)?.[0];
  return year === undefined ? undefined : { year, of: text.replace(year, '').replaceAll(/\s+/g, ' ').trim() };
};
const asBareYear: Kind = (text) => (isYear(text) ? { year: text } : undefined);
const asQuarter: Kind = (text) => (quarterOfName(text) > 0 ? { quarter: quarterOfName(text) } : undefined);
const asMonthName: Kind = (text) => (monthNumber(text) > 0 ? { month: monthNumber(text) } : undefined);
function asMonth(text: string): When | undefined {
  if (kindOf(text) !== 'month') return undefined;
  const date = toCivilDate(reader.civilMinute / 1440);
  return { year: date.slice(0, 4), month: Number(date.slice(5, 7)) };
}
const asDayOfMonth: Kind = (text) => (numberOf(text, 31) > 0 ? { day: numberOf(text, 31) } : undefined);
const asDated: Kind = (text) =>
  asMonth(text) ?? (['day', 'week'].includes(kindOf(text) ?? '') ? { date: text } : undefined);
/** A day with its year, or with that of the titles. */
const dayKind =
  (year: string | undefined): Kind =>
  (text) => {
    const whole = [
      text,
      ...(year === undefined || text.length > 12 ? [] : ['', '/', ' '].map((sign) => `${text}${sign}${year}`)),
    ];
    const date = whole.find((one) => kindOf(one) === 'day');
    return date === undefined ? undefined : { date };
  };
const asHour: Kind = (text) => {
  if (isClock(text, true)) return { hour: text };
  const slot = slotOfHeading(text);
  return slot && 'ordinal' in slot && slot.ordinal <= 24 ? { hour: String(slot.ordinal) } : undefined;
};
/** Bare numbers may be dates too. */
const asName: Kind = (text) =>
  /\p{L}/u.test(text) && kindOf(text) === undefined && asHour(text) === undefined ? {} : undefined;
const weekKind =
  (corner: string): Kind =>
  (text) => {
    const bare = WEEK.test(plainWords(corner)) ? numberOf(text, 53) : 0;
    const week = bare || Number(/^(?:kw|wk?|s|sem\w*|sett\w*|[^\d\s.]{3,12})[ .-]*(\d{1,2})$/i.exec(text)?.[1] ?? 0);
    const isNamed = bare > 0 || /^(kw|wk?|s)[ .-]*\d/i.test(text) || WEEK.test(plainWords(text.replace(/\W*\d+$/, '')));
    return isNamed && week > 0 && week <= 53 ? { week } : undefined;
  };

/** The first two letters of the days from Monday on: English, German, French, Spanish, Italian, Dutch, Nordic, Polish, Czech, Portuguese, Finnish. */
const WEEKS = [
  ...['mo tu we th fr sa su', 'mo di mi do fr sa so', 'lu ma me je ve sa di', 'lu ma mi ju vi sa do'],
  ...['lu ma me gi ve sa do', 'ma di wo do vr za zo', 'ma ti on to fr lo so', 'po wt sr cz pi so ni'],
  ...['pn wt sr cz pt so nd', 'po ut st ct pa so ne', 'se te qu qu se sa do', 'ma ti ke to pe la su'],
].map((days) => days.split(' '));

/** Which day of the week the first of five to seven is that follow each other, Monday 0; -1 where they are none. */
function firstWeekday(texts: readonly string[]): number {
  const stems = texts.map((text) => (/^\p{L}{2,12}\.?$/u.test(text) ? plainWords(text).slice(0, 2) : ''));
  if (stems.length < 5) return -1;
  return [0, 1, 2, 3, 4, 5, 6].findIndex((first) =>
    WEEKS.some((days) => stems.every((stem, i) => stem === days[(first + i) % 7])),
  );
}

/** Whether a row of the table names the seven days of a week side by side. */
export const hasWeekdaysAcross = (table: Table): boolean =>
  Array.from({ length: Math.min(table.rowCount, SEARCHED_ROWS) }, (_, row) => rowTexts(table, row)).some((heads) =>
    heads.some((_, c) => firstWeekday(heads.slice(c, c + 5)) >= 0),
  );

const WEEKDAY_OF_DAY_0 = 3;
const weekdayOf = (day: number): number => (((day + WEEKDAY_OF_DAY_0) % 7) + 7) % 7;

/** The day with which each row's week begins, where the dates fall on the first or the last of its days in one order of day and month only. */
function weeksFrom(texts: readonly string[], first: number, days: number): Kind | undefined {
  const dayOf = (text: string, dayFirst: boolean): number => {
    const from = text.split(/ [-–—] | bis | to | au | al /)[0]!;
    const kind = kindOf(from, dayFirst);
    return kind === 'day' || kind === 'week' ? reader.civilMinute / 1440 : Number.NaN;
  };
  const ways = [true, false].flatMap((dayFirst) => [0, days - 1].map((late) => ({ dayFirst, late })));
  const fitting = ways.filter(({ dayFirst, late }) =>
    texts.every((text) => weekdayOf(dayOf(text, dayFirst) - late) === first),
  );
  const [one, other] = fitting;
  if (!one || (other && texts.some((text) => dayOf(text, true) !== dayOf(text, false)))) return undefined;
  return (text) => ({ first: dayOf(text, one.dayFirst) - one.late });
}

/** What may stand across and down, whether the one is all that stands there, and how many rows the other has at least and at most. */
type Pair = readonly [
  across: Kind,
  fits: (found: readonly When[], isWhole: boolean) => boolean,
  down: Kind,
  rows?: readonly [least: number, most: number],
];

const countUp =
  (part: 'month' | 'quarter' | 'day' | 'week', least: number): Pair[1] =>
  (found, isWhole) =>
    isWhole &&
    found.length >= least &&
    found.every((one, i) => (i === 0 ? part === 'week' || one[part] === 1 : one[part] === found[i - 1]![part]! + 1));
/** Of each use at least one year is another's too. */
const areYears: Pair[1] = (found, isWhole) =>
  isWhole &&
  new Set(found.map((one) => `${one.year} ${one.of}`)).size === found.length &&
  found.some((one) => one.of === found[0]!.of && one.year !== found[0]!.year);
const areDated: Pair[1] = (found, isWhole) =>
  isWhole && found.length >= (found.every((one) => one.month !== undefined) ? LEAST_MONTHS : LEAST_ACROSS);
const DAYS_OF_MONTH = [28, 31] as const;

function findAcross(table: Table, row: number, heads: readonly string[], title: When): Across | undefined {
  const columns = heads
    .map((_, c) => c)
    .filter((c) => c > 0 && heads[c] !== '' && !TOTALS.test(heads[c]!) && !COMPARES.test(heads[c]!))
    // Behind months or quarters the year is their sum.
    .filter((c) => c < heads.length - 1 || !YEAR.test(plainWords(heads[c]!)));
  // The rows are looked through only where something stands across, since most tables are long and have nothing.
  const known = new Map<number, readonly string[]>();
  const downOf = (column: number): readonly string[] => {
    if (!known.has(column)) known.set(column, rowsBelow(table, row, column));
    return known.get(column)!;
  };
  const asWeek = weekKind(cellText(table, row, 0));
  const asMonthOf: Kind = (text) => asMonth(text) ?? asMonthName(text);
  const pairs: Pair[] = [
    // Remarks may stand beside the days.
    [dayKind(title.year), (found) => found.length >= 3 && found.length >= columns.length * MOSTLY, asHour],
    [asMonthName, countUp('month', 12), asBareYear],
    [asMonthName, countUp('month', 12), asDayOfMonth, DAYS_OF_MONTH],
    [asQuarter, countUp('quarter', 4), asBareYear],
    [asWeek, countUp('week', LEAST_WEEKS), asBareYear],
    [asYear, areYears, asQuarter, [3, 4]],
    [asYear, areYears, asWeek, [3, 54]],
    [asYear, areYears, asMonthName, [3, 12]],
    [asMonth, (_, isWhole) => isWhole, asDayOfMonth, DAYS_OF_MONTH],
    [asDated, areDated, asName, [1, MOST_CELLS]],
    [asDayOfMonth, countUp('day', 28), asMonthOf],
    [asMonthName, countUp('month', 12), asName, [1, MOST_CELLS]],
    [asWeek, countUp('week', LEAST_WEEKS), asName, [1, MOST_CELLS]],
    [asDayOfMonth, countUp('day', 28), asName, [1, MOST_CELLS]],
  ];
  // Seven days stand in few rows.
  const isShort = table.rowCount - row <= SEARCHED_ROWS;
  for (let column = 0; isShort && column < columns[0]!; column++) {
    const days = downOf(column);
    const asDayName: Kind = (text) => (days.includes(text) ? { weekday: days.indexOf(text) } : undefined);
    if (firstWeekday(days) === 0) pairs.unshift([asWeek, countUp('week', 3), asDayName, [7, 7]]);
  }
  const week = columns.find((c) => firstWeekday(heads.slice(c, c + 7)) >= 0);
  if (week !== undefined) {
    const days = heads.slice(week, week + 7);
    const first = firstWeekday(days);
    const asWeekday: Kind = (text) => (days.includes(text) ? { weekday: days.indexOf(text) } : undefined);
    const weeks = heads.slice(0, week).flatMap((_, c) => weeksFrom(downOf(c), first, days.length) ?? []);
    for (const down of [...weeks, ...(first === 0 ? [asWeek] : [])])
      pairs.unshift([asWeekday, (_, isWhole) => isWhole, down, [1, MOST_CELLS]]);
  }
  for (const [kind, fits, down, [least, most] = [2, MOST_CELLS]] of pairs) {
    const own = columns.filter((c) => kind(heads[c]!) !== undefined);
    const above = own.map((c) => kind(heads[c]!)!);
    const before = columns.filter((c) => c < own[0]!);
    if (own.length < 2 || !fits(above, own.length + before.length === columns.length)) continue;
    for (let leftColumn = 0; leftColumn < own[0]!; leftColumn++) {
      const texts = downOf(leftColumn);
      if (texts.length < least || texts.length > most) continue;
      if (down === asName && firstWeekday(texts.slice(0, 7)) >= 0) continue;
      const found = texts.map((text) => down(text));
      const isWhole = (one: When | undefined) =>
        one !== undefined && stampOf({ ...title, ...one, ...above[0] }) !== undefined;
      if (!found.every(isWhole) || above.some((one) => stampOf({ ...title, ...found[0], ...one }) === undefined))
        continue;
      // Above what a row is of there may be nothing.
      const names = [...(down === asName || leftColumn > 0 ? [0] : []), ...before].filter(
        (c) => down === asName || c !== leftColumn,
      );
      return { columns: own, above, leftColumn, down, names, title };
    }
  }
  return undefined;
}

/** The stamp of a cell by what stands over it, above and on the left; undefined where that makes none. */
function stampOf({ date, year, quarter, month, day, week, weekday, first }: When): string | undefined {
  if (date !== undefined) return date;
  if (first !== undefined && weekday !== undefined) return toCivilDate(first + weekday);
  if (year === undefined) return undefined;
  if (week !== undefined && weekday !== undefined) {
    const fourth = Date.UTC(Number(year), 0, 4) / 86_400_000;
    return toCivilDate(fourth - weekdayOf(fourth) + 7 * (week - 1) + weekday);
  }
  if (weekday !== undefined) return undefined;
  if (week !== undefined) return `${year}-W${twoDigits(week)}`;
  if (quarter !== undefined) return `${year} Q${quarter}`;
  if (month === undefined) return undefined;
  return day === undefined ? `${year}-${twoDigits(month)}` : `${year}-${twoDigits(month)}-${twoDigits(day)}`;
}

function unfold(table: Table, headingRow: number, heads: readonly string[], across: Across): Table | undefined {
  const { columns, above, leftColumn, down, names, title } = across;
  const made: { line: number; cells: readonly string[] }[] = [];
  const put = (row: number, cells: readonly string[]) => made.push({ line: table.lineOfRow[row]!, cells });
  for (let row = 0; row < headingRow; row++) put(row, rowTexts(table, row));
  const lefts = new Map<number, string>();
  let last = '';
  for (let row = headingRow + 1; row < table.rowCount; row++) {
    const left = cellText(table, row, leftColumn);
    // A year over several rows, as merged cells leave it, holds for each that bears a name.
    const isMerged = left === '' && names.some((c) => cellText(table, row, c) !== '');
    last = isMerged ? last : left;
    if (last !== '' && !TOTALS.test(last) && !isRemark(table, row)) lefts.set(row, last);
  }
  const rows = [...lefts.keys()];
  const corner = cellText(table, headingRow, 0);
  const ofs = new Set(above.map((one) => one.of ?? ''));
  // The name of the only row is the heading of its amounts.
  const only = names.length === 1 && rows.length === 1 ? cellText(table, rows[0]!, names[0]!) : '';
  const told = only === '' ? names : [];
  const said = (ofs.size === 1 ? [...ofs][0]! : '') || only || 'Value';
  const under = [...new Set(rowTexts(table, headingRow + 1).filter((cell) => cell !== ''))];
  // "KW" is a week in German.
  const isUnit = (text: string) => unitOfWords(plainWords(text)) !== undefined && !WEEK.test(plainWords(text));
  const unit = isUnit(said) ? undefined : [corner, ...(under.length === 1 ? under : [])].find(isUnit);
  const value = unit === undefined ? said : `${said} ${unit}`;
  const named = [...told.map((c) => heads[c] || 'Type'), ...(ofs.size > 1 ? ['Type'] : [])];
  const hasHours = down === asHour;
  put(headingRow, [...named, 'Date', ...(hasHours ? ['Time'] : []), value]);
  const putCell = (row: number, i: number): boolean => {
    const cell = columns[i]! < cellCount(table, row) ? cellText(table, row, columns[i]!) : '';
    // The thirtieth of February is an empty cell.
    if (isMissing(cell) && (!hasHours || columns[i]! >= cellCount(table, row))) return true;
    const when = { ...title, ...down(lefts.get(row)!), ...above[i] };
    const stamp = stampOf(when);
    if (stamp === undefined) return false;
    const own = [...told.map((c) => cellText(table, row, c)), ...(ofs.size > 1 ? [above[i]!.of ?? ''] : [])];
    put(row, [...own, stamp, ...(hasHours ? [when.hour!] : []), cell]);
    return true;
  };
  // In order of time, which is what tells a counter.
  const { date, year } = above[0]!;
  const { day, weekday } = down(lefts.get(rows[0]!)!)!;
  const byRow = date === undefined && year === undefined && day === undefined && weekday === undefined;
  const places = byRow
    ? rows.flatMap((row) => columns.map((_, i) => [row, i] as const))
    : columns.flatMap((_, i) => rows.map((row) => [row, i] as const));
  if (!places.every(([row, i]) => putCell(row, i))) return undefined;
  return tableOfRows(made);
}

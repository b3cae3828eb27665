/** Year, month and day in columns of their own become one column of dates. */
import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { monthOfName } from '../dates/month-names.ts';
import { quarterOfName } from '../dates/quarter-names.ts';
import { isClock } from '../dates/read-clock.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellCount, cellText, rowTexts, type Table } from '../text/table.ts';
import { carrierOfWords, plainWords } from './headings.ts';
import { AMOUNT, BESIDE_THE_ENERGY, OF_A_COMPANY, OF_A_DAY, OF_A_PARTY, RECORD, TOTALS, WEEK } from './vocabulary.ts';

export const YEAR = /^(year|yr|yyyy|jahr|annee|an|ano|anno|jaar|ar|rok|vuosi)$/;
const MONTH = /^(month|mon|mo|mm|m|monat|mois|mes|mese|maand|maned|manad|miesiac|mesic|kk|kuukausi)$/;
const QUARTER =
  /^(quarter|qtr|q|quartal|kvartal|kwartaal|kwartal|trimestre|trimester|ctvrtleti)( ?(no|nr|number)\.?)?$/;
const DAY_OF_YEAR =
  /^(doy|yday|j(ulian )?day|julian|day of (the )?year|tag des jahres|jour julien|dag (van het|i) (jaar|aret))$/;
export const DAY = /^(day|dy|dd|d|tag|jour|dia|giorno|dag|dzien|den|paiva)$/;
const COLUMN_OF = { month: MONTH, week: WEEK, quarter: QUARTER, 'day of year': DAY_OF_YEAR };
const MOST_OF = { month: 12, week: 53, quarter: 4, 'day of year': 366 };
const SEARCHED_ROWS = 40;
const SAMPLE_ROWS = 300;
/** Weather stations have been read for so long. */
const EARLIEST = 1850;

interface Parts {
  readonly headingRow: number;
  readonly year: number;
  readonly month: number;
  /** -1 where rows are months, weeks or quarters, or days of the year. */
  readonly day: number;
  /** What the column of the month numbers or names. */
  readonly of: keyof typeof COLUMN_OF;
}

/** The table with its dates in the column of the year, or undefined where no row has such headings above such numbers. */
export function joinDateParts(table: Table): Table | undefined {
  const parts = findParts(table);
  if (!parts) return undefined;
  const { headingRow, year, month, day } = parts;
  return rewriteCells(table, (row, column) => {
    if (row < headingRow || ![year, month, day].includes(column)) return undefined;
    if (cellCount(table, row) <= Math.max(year, month, day)) return undefined;
    if (column !== year) return [];
    const joined = joinedText(table, row, parts);
    return joined === undefined ? undefined : [joined];
  });
}

/** Whether a column names months, weeks or quarters, or a row all months, and none their years. */
export function lacksYear(table: Table): boolean {
  const rows = Array.from({ length: Math.min(table.rowCount, SEARCHED_ROWS) }, (_, row) => row);
  if (rows.filter((row) => monthOfName(plainWords(cellText(table, row, 0))) > 0).length >= LEAST_MONTHS) return true;
  return rows.some((row) => {
    const words = rowTexts(table, row).map(plainWords);
    // A profile of hours names no day, whatever its year.
    if (words.filter((word) => monthOfName(word) > 0).length === 12) return !isClock(cellText(table, row + 1, 0), true);
    return (
      words.length > 1 &&
      !words.some((word) => YEAR.test(word)) &&
      // Where the cells name years, their year is not what they lack.
      words.some(
        (word, column) =>
          (MONTH.test(word) || WEEK.test(word) || QUARTER.test(word)) &&
          !/(19|20)\d\d/.test(cellText(table, row + 1, column)),
      )
    );
  });
}

const YEAR_IN_WORDS = /(?<![\d./-])(?:19|20)\d\d(?![\d./-])/g;

/** The only year that words name: of a heading, or of titles. */
function onlyYear(texts: readonly string[]): string | undefined {
  const years = new Set(texts.flatMap((text) => text.match(YEAR_IN_WORDS) ?? []));
  return years.size === 1 ? [...years][0] : undefined;
}

/** Since when something is there. */
const OF_ANOTHER_YEAR =
  /\b(since|from|built|installed|new|boiler|tariff|seit|ab|gebaut|baujahr|eingebaut|kessel|tarif|depuis|desde|dal|sinds|bouwjaar|siden|fra)\b/;

/** Whether the year of a title is that of the data: "Electricity 2025", not "Customer since 2019" nor "Boiler of 2012". */
function isOfItsYear(words: string): boolean {
  const isOnlyYear = words.replaceAll(BESIDE_THE_ENERGY, ' ').trim().split(/ +/).length <= 1;
  const isOther = [OF_A_PARTY, OF_A_DAY, OF_A_COMPANY, OF_ANOTHER_YEAR].some((one) => one.test(words));
  return !isOther && (isOnlyYear || RECORD.test(words) || AMOUNT.test(words) || carrierOfWords(words) !== undefined);
}

/** The only year that lines about the data name: no day of printing, no year of a boiler. */
export const yearOfTitles = (titles: readonly string[]): string | undefined =>
  onlyYear(
    titles
      .filter((title) => /(19|20)\d\d/.test(title) && isOfItsYear(plainWords(title)))
      .map((title) => title.replaceAll('_', ' ')),
  );

/** Months or quarters by name below "Month 2025", or below a title that names their year; the year goes to each. */
export function joinYearAbove(table: Table): Table | undefined {
  const titles: string[] = [];
  for (let row = 0; row < Math.min(table.rowCount, SEARCHED_ROWS); row++) {
    const cells = rowTexts(table, row);
    for (const [column, head] of cells.entries()) {
      const above = plainWords(head.replace(YEAR_IN_WORDS, ''));
      const isOfMonths = MONTH.test(above) || QUARTER.test(above);
      const year = onlyYear([head]) ?? (isOfMonths ? onlyYear(titles) : undefined);
      if (year === undefined || cells.length < 2) continue;
      const last = lastMonthBelow(table, row, column);
      if (last === undefined) continue;
      return rewriteCells(table, (at, c) => {
        const cell = c === column && at > row && at <= last ? cellText(table, at, c) : '';
        if (namedMonth(cell) > 0) return [`${cell} ${year}`];
        const quarter = quarterOfName(cell);
        return quarter > 0 ? [`Q${quarter} ${year}`] : undefined;
      });
    }
    const words = cells.join(' ');
    if (isOfItsYear(plainWords(words)) && !words.split(/[^\p{L}]+/u).some((word) => monthOfName(word) > 0))
      titles.push(words);
  }
  return undefined;
}

const SUM_OF_YEAR = /^((?:19|20)\d\d)(?: total)?$/i;
const LEAST_MONTHS = 3;

/** Months below their years in one column, as folded tables show them: each gets its year, and what stands beside a year is a sum. */
export function joinYearOutline(table: Table): Table | undefined {
  for (const column of [0, 1]) {
    const texts = new Map<number, string>();
    let [year, years, months] = ['', 0, 0];
    const isOutline = Array.from({ length: table.rowCount }, (_, row) => row).every((row) => {
      const cell = cellText(table, row, column);
      const own = SUM_OF_YEAR.exec(cell)?.[1];
      if (own !== undefined) {
        if (own !== year) years++;
        year = own;
        if (cellCount(table, row) > column + 1) texts.set(row, `Total ${own}`);
        return true;
      }
      if (cell === '' || TOTALS.test(cell)) return true;
      if (namedMonth(cell) === 0) return year === '';
      texts.set(row, `${cell} ${year}`);
      months++;
      return year !== '';
    });
    if (isOutline && years > 1 && months >= LEAST_MONTHS)
      return rewriteCells(table, (row, at) => {
        const text = at === column ? texts.get(row) : undefined;
        return text === undefined ? undefined : [text];
      });
  }
  return undefined;
}

const namedMonth = (cell: string): number => monthOfName(cell.replace(/\.$/, ''));

/** Row of the last of at least three months or quarters that go on within one year; undefined where others stand between. */
function lastMonthBelow(table: Table, headingRow: number, column: number): number | undefined {
  let month = 0;
  let count = 0;
  let last: number | undefined;
  for (let row = headingRow + 1; row < table.rowCount; row++) {
    const cell = cellText(table, row, column);
    // "Média" begins like a month of Wales.
    if (cell === '' || TOTALS.test(cell)) continue;
    const next = namedMonth(cell) || quarterOfName(cell);
    if (next <= month) return undefined;
    month = next;
    last = row;
    count++;
  }
  return count >= 3 ? last : undefined;
}

function joinedText(table: Table, row: number, { headingRow, year, month, day, of }: Parts): string | undefined {
  const cells = [year, month, ...(day < 0 ? [] : [day])].map((column) => cellText(table, row, column));
  if (row === headingRow) return cells.join(' ');
  const numbers = cells.map((cell, i) => (i === 1 ? partNumber(cell, of) : Number(cell)));
  if (cells.includes('') || numbers.some(Number.isNaN)) return undefined;
  if (of === 'quarter') return `${numbers[0]} Q${numbers[1]}`;
  if (of === 'day of year') return toCivilDate(toDayNumber(`${numbers[0]}-01-01`) + numbers[1]! - 1);
  return numbers.map((n, i) => String(n).padStart(i === 0 ? 4 : 2, '0')).join(of === 'week' ? '-W' : '-');
}

const monthNumber = (cell: string): number => (/^\d{1,2}$/.test(cell) ? Number(cell) : monthOfName(cell) || Number.NaN);

function partNumber(cell: string, of: Parts['of']): number {
  if (of === 'day of year') return /^\d{1,3}$/.test(cell) ? Number(cell) : Number.NaN;
  if (of === 'week') return Number(/^[a-z. ]{0,8}(\d{1,2})$/i.exec(cell)?.[1] ?? Number.NaN);
  return of === 'quarter' && !/^\d$/.test(cell) ? quarterOfName(cell) || Number.NaN : monthNumber(cell);
}

function findParts(table: Table): Parts | undefined {
  for (let row = 0; row < Math.min(table.rowCount, SEARCHED_ROWS); row++) {
    const words = Array.from({ length: Math.min(cellCount(table, row), 40) }, (_, c) =>
      plainWords(cellText(table, row, c)),
    );
    const at = (pattern: RegExp) => words.findIndex((word) => pattern.test(word));
    const of = at(MONTH) >= 0 ? 'month' : at(WEEK) >= 0 ? 'week' : at(QUARTER) >= 0 ? 'quarter' : 'day of year';
    const parts = {
      headingRow: row,
      year: at(YEAR),
      month: at(COLUMN_OF[of]),
      // Beside English months PV is what the roof makes.
      day: of === 'month' ? at(words.includes('kk') ? /^pv$/ : DAY) : -1,
      of,
    } as const;
    if (parts.year >= 0 && parts.month >= 0 && holdDates(table, parts)) return parts;
  }
  return undefined;
}

function holdDates(table: Table, { headingRow, year, month, day, of }: Parts): boolean {
  const end = Math.min(table.rowCount, headingRow + SAMPLE_ROWS);
  let good = 0;
  for (let row = headingRow + 1; row < end; row++) {
    const y = Number(cellText(table, row, year));
    const m = partNumber(cellText(table, row, month), of);
    const d = day < 0 ? 1 : Number(cellText(table, row, day));
    if (y >= EARLIEST && y <= 2100 && m >= 1 && m <= MOST_OF[of] && d >= 1 && d <= 31) good++;
  }
  return good >= 3 && good >= (end - headingRow - 1) * 0.8;
}

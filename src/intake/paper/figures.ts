/** Numbers and dates of a page, each with its place, its unit and the words about it. */

import { fullYear, isCivilDay, toCivilDate, yearOf } from '../../model/calendar/civil.ts';
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import { monthOfName } from '../dates/month-names.ts';
import { civilDay, EARLIEST_YEAR, LATEST_YEAR } from '../dates/stamp-reader.ts';
import { readNumber } from '../numbers/read-number.ts';
import type { Word } from '../terms/paper-reading.ts';
import { KWH_PER_THERM } from '../terms/units.ts';
import { type Row, textOfRow } from './page.ts';
import { ENERGY, NET, NO_UNIT, REGISTERS, STANDING, TOTAL, VAT } from './vocabulary.ts';

/** What a number is of, as far as its own unit or its column says. `price` is money for one of something. */
export type FigureKind =
  | 'energy'
  | 'volume'
  | 'days'
  | 'months'
  | 'percent'
  | 'price'
  | 'money'
  | 'heat'
  /** Counted in what is no energy here: litres, kilograms, kilowatts. */
  | 'other'
  | 'reading'
  | 'plain';

export interface Box {
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Figure {
  readonly row: number;
  readonly box: Box;
  /** As printed, with its signs and unit. */
  readonly text: string;
  /** Without sign. */
  readonly value: number;
  readonly decimals: number;
  readonly negative: boolean;
  readonly kind: FigureKind;
  /** Of a price: what one unit of its money is in hundredths; undefined where nothing says pence or pounds. */
  readonly hundredths?: 1 | 100;
  readonly per?: 'unit' | 'day' | 'month' | 'year';
  /** Of energy, or of a price for it, where its unit is not the kWh: how many it is. */
  readonly kWh?: number;
  /** A word stands where its unit would, and is none that is known. */
  readonly oddUnit?: string;
  /** Words of the row before it, and those above its column. */
  readonly before: string;
  readonly heading: string;
}

export interface DateMark {
  readonly row: number;
  readonly box: Box;
  readonly text: string;
  /** Days since 1970 of the date, and of the other order of day and month where that is a date too. */
  readonly day: number;
  readonly otherDay?: number;
  readonly before: string;
}

export interface RowFacts {
  readonly row: Row;
  readonly text: string;
  /** The same without its numbers and dates. */
  readonly words: string;
  readonly figures: readonly Figure[];
  readonly dates: readonly DateMark[];
}

type Decimal = '.' | ',';
/** Maart is a month, "12 maanden" are a count of them. */
const MONTH = '(?!maand)[A-Za-zäÄ]{3,9}';
type FoundDay = Pick<DateMark, 'day' | 'otherDay'>;
/** What dates in numbers, and those whose month goes first, cannot do without; most rows have neither. */
const [TWO_MARKS, MONTH_FIRST] = [/\d([./-])\d{1,2}\1/, /[A-Za-zäÄ]{3}[.,]? \d/];
/** Two digits with such a word behind them count something, "25 May, 25 days". */
const COUNTED =
  '\\s*(?:days?|nights?|weeks?|months?|tagen?|tage|wochen|monate?|jours?|dagen|dage?|dager|dagar|d[ií]as|giorni|units?|einheiten|[kM]?Wh|m³|m3|%|×|x\\s|p|pence|ct)(?![\\p{L}\\d])';
const DATES: readonly (readonly [RegExp, (match: RegExpMatchArray) => FoundDay | undefined, needs?: RegExp])[] = [
  // The first of two days whose year, or whose month too, stands behind the second.
  [
    /(?<![\d.,])(\d{1,2})\.(\d{1,2})\.(?= ?(?:[-–]|bis) ?\d{1,2}\.\d{1,2}\.(?:\d{4}|\d{2})(?!\d))/g,
    ([, day, month]) => yearlessDay(Number(month), Number(day)),
    TWO_MARKS,
  ],
  [
    new RegExp(
      `(?<![\\d.,/£€$-])(\\d{1,2})(?:st|nd|rd|th|\\.)?(?= ?(?:[-–]|to|bis) ?\\d{1,2}(?:st|nd|rd|th|\\.)? (${MONTH}),? (\\d{4})(?!\\d))`,
      'g',
    ),
    ([, day, month = '', year]) => realDay(Number(year), monthOfName(month), Number(day)),
    MONTH_FIRST,
  ],
  [
    /(?<![\d.,/-])(\d{4})-(\d{2})-(\d{2})(?!\d)/g,
    ([, year, month, day]) => realDay(Number(year), Number(month), Number(day)),
    TWO_MARKS,
  ],
  [/(?<![\d.,/]|\d-)(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?![\d/])/g, dayOfNumbers, TWO_MARKS],
  // A date without its year takes that of the next one.
  [
    new RegExp(
      `(?<![\\d.,])(\\d{1,2})(?:st|nd|rd|th|\\.)?(?: (?:of|de)(?= ))?[ -]?(${MONTH})\\.?,?(?:(?: de)?[ -]?(\\d{4}|\\d{2}(?=\\s|$|[,.;)–-])(?!${COUNTED})))?(?![\\d])`,
      'gu',
    ),
    ([, day, month = '', year]) =>
      year === undefined
        ? yearlessDay(monthOfName(month), Number(day))
        : realDay(fullYear(year), monthOfName(month), Number(day)),
  ],
  [
    new RegExp(
      `(?<![\\p{L}])(${MONTH})\\.? (\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4})(?!\\d)|(?= ?(?:-|–|to |through )))`,
      'gu',
    ),
    ([, month = '', day, year]) =>
      year === undefined
        ? yearlessDay(monthOfName(month), Number(day))
        : realDay(Number(year), monthOfName(month), Number(day)),
    MONTH_FIRST,
  ],
];
/** What has digits and is no number of the bill: clock times, telephone numbers, names of accounts and meters, banks. */
const NO_NUMBERS: readonly RegExp[] = [
  /\b\d{1,2}:\d{2}(?::\d{2})?\b/g,
  /(?<=\()[0-2]\d\.[0-5]\d ?[-–] ?[0-2]\d\.[0-5]\d(?=\))/g,
  /[A-Z]{2}\d{2}(?: ?[\dA-Z]{4}){3,}(?: ?[\dA-Z]{1,4})?/g,
  /(?<![\d.,])\+?0\d{2,5}[ /-]\d{2,}(?:[ -]\d{2,})*/g,
  /(?<![\d.,£€$])\d{8,}(?![\d.,])/g,
  /(?<![\d.,£€$])\d{2,}(?: \d{2,}){2,}(?![\d.,])/g,
  /\b(?=\w*\d)(?=\w*\p{L}\w*\d|\d\w*\p{L}{2,}\w*\d)\w{5,}\b/gu,
  /(?<!\p{L})(?!(?:[SN]?m|ft)3(?![\p{L}\d]))\p{L}+-?\d[\p{L}\d-]*/gu,
];
/** What none of them can do without, found from its digit: most rows are looked through once. */
const HAS_NO_NUMBER = /\d(?::\d|\.\d\d ?[-–] ?\d|\d{7}|\d(?: \d{2,}){2})|0\d{2,5}[ /-]\d|(?<=[\p{L}_]-?)\d/u;
const UNITS =
  /^(?: ?|\t(?=[^\t\d]{1,10}(?:\t|$)))(?:(?<heat>kWh\s?\/\s?(?:m³|m3)|MJ(?:\s?\/\s?(?:m³|m3)|\s?per\s?(?:m³|cubic metre))?)|(?<money>p|pence|ct|cents?|c|¢|£|€|\$|euros?|eur|gbp)? ?(?:\/|per\s|je\s|pro\s|an?\s)\s?(?<per>[kM]Wh|GJ|therms?|ccf|smc|units?|einheit|days?|tag|jour|dag|giorno|día|months?|mths?|mnd|monat|mois|maand|mes[ei]?|years?|jahr|jaar|an|a\b)|(?<energy>[kM]Whs?|kilowatt[- ]?(?:hours?|stunden?)|GJ|therms?|thm|units?(?!\s*(?:rate|price))|einheiten)|(?<volume>[SN]?m³|[SN]?m3|[SN]mc|cbm|cubic met(?:re|er)s?|ft³|hcf|ccf)|(?<other>lit(?:re|er|ro)s?|kg|tonnes?|tonnen?|kVArh|kVAh|kVA|kW)|(?<days>(?:billing |calendar )?days?|tagen?|tage|nights?|jours?|dagen|giorni|días)|(?<months>months?|mths?\.?|mnd\.?|mos?\.|monat(?:en?)?|mois|maanden?|mes[ei]s?|mesi)|(?<percent>%|per ?cent|prozent|v\.h\.)|(?<pence>p|pence|ct\.?|cents?|¢)|(?<sign>£|€|\$|eur|gbp))(?![\p{L}\d³])/iu;
/** What it may begin with goes first, for all other letters fail there. */
const NUMBER =
  /(?=[-−–+(£€$EG\d]| [-−–\d])(?<![\p{L}\d.,/])([-−–+] ?|\()?(£|€|\$|EUR |GBP )? ?([-−–])?(\d+(?:[.,'’]\d+)*(?:(?<=(?<![\d.,'’])\d{1,3})(?:[ \u00a0\u202f]\d{3})+[.,]\d{1,4}|(?<=(?:^|\t)[£€$]?\d{1,3})(?:[ \u00a0\u202f]\d{3})+|(?<=[\p{Ll}:] \d{1,3})(?:[ \u00a0\u202f]\d{3})+(?= ?kWh))?)(?![\d])/gu;

/** Keeps what was found on the last rows that were asked about: a weak map carries all of them through the collector's quick rounds. */
export function keptForLast<T>(find: (rows: readonly RowFacts[]) => T): (rows: readonly RowFacts[]) => T {
  let last: readonly [rows: readonly RowFacts[], found: T] | undefined;
  return (rows) => {
    if (last?.[0] !== rows) last = [rows, find(rows)];
    return last[1];
  };
}

/** Reads the rows under one decimal sign. */
export function readRows(rows: readonly Row[], decimal: Decimal): RowFacts[] {
  const plain = rows.map((row, number) => readRow(row, number, decimal));
  return plain.map((facts, i) => ({
    ...facts,
    figures: facts.figures.map((figure) => {
      const headed = withHeading(figure, plain, i);
      if (headed.kind !== figure.kind && isHeadingBelow(figure, plain, i)) return headed;
      const named = withUnitBelow(figure, plain, i);
      return named === figure ? headed : withHeading(named, plain, i);
    }),
  }));
}

function readRow(row: Row, number: number, decimal: Decimal): RowFacts {
  const { text, starts } = textOfRow(row);
  if (!/\d/.test(text)) return { row, text, words: plainWords(text), figures: [], dates: [] };
  const boxOf = (from: number, to: number): Box => {
    let [x, y, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < starts.length && starts[i]! < to; i++) {
      const word = row.words[i]!;
      if (starts[i]! + word.text.length <= from) continue;
      x = Math.min(x, word.x);
      y = Math.min(y, word.y);
      right = Math.max(right, word.x + word.width);
      bottom = Math.max(bottom, word.y + word.height);
    }
    return { page: row.page, x, y, width: right - x, height: bottom - y };
  };
  let left = text;
  const blank = (from: number, length: number) => {
    left = left.slice(0, from) + BLANK.repeat(length) + left.slice(from + length);
  };
  const dates: DateMark[] = [];
  const lacked = [TWO_MARKS, MONTH_FIRST].filter((need) => !need.test(text));
  for (const [pattern, dayOf, needs] of DATES) {
    if (needs && lacked.includes(needs)) continue;
    const searched = left;
    pattern.lastIndex = 0;
    for (let match = pattern.exec(searched); match; match = pattern.exec(searched)) {
      const { index } = match;
      const counted = countsItsDays(match, dates.at(-1));
      const whole = counted ? match[0].replace(/\s*\d{2}$/, '') : match[0];
      const found = counted ?? dayOf(match);
      if (!found) {
        // "61 days, 8 May 2025": what is no date may have run over the beginning of one.
        pattern.lastIndex = index + 1;
        continue;
      }
      dates.push({
        row: number,
        box: boxOf(index, index + whole.length),
        text: whole.trim(),
        before: text.slice(0, index),
        ...found,
      });
      blank(index, whole.length);
    }
  }
  for (const pattern of HAS_NO_NUMBER.test(left) ? NO_NUMBERS : []) {
    for (const { index, 0: whole } of everyMatch(left, pattern)) blank(index, whole.length);
  }
  const figures: Figure[] = [];
  let bare = '';
  let done = 0;
  for (const match of everyMatch(left, NUMBER)) {
    const [whole, open, money, minus = '', body = ''] = match;
    const value = readNumber(body, 0, body.length, decimal);
    if (Number.isNaN(value) || value > 1e8) continue;
    const end = match.index + whole.length;
    const decimals = body.includes(decimal) ? body.length - 1 - body.lastIndexOf(decimal) : 0;
    const rest = left.slice(end);
    const behindIt = rest === '' ? null : UNITS.exec(rest);
    // What stands behind money in the next cell is no unit of it.
    const unit = money && !behindIt?.groups?.per ? null : behindIt;
    const unitEnd = end + (unit?.[0].length ?? 0);
    // Small and close behind a fraction it is a cent; else it may be the sign of a customer's reading.
    const isCent = decimals > 0 && !money && !unit && /^c(?![\p{L}\d])/u.test(rest);
    // "(12.30)" is taken off; "(24.44 pence each)" only says more.
    const sign = open === '(' && !/^\s?\)/.test(left.slice(unitEnd)) ? undefined : open?.[0];
    const isMinusBehind = unitEnd < left.length && /^\s?(?:CR\b|[-−](?=\s|$))/.test(left.slice(unitEnd));
    const from = match.index + (whole.length - whole.trimStart().length);
    figures.push({
      row: number,
      box: boxOf(from, unitEnd),
      text: text.slice(open === '(' || sign === '+' ? from + 1 : from, unitEnd).trim(),
      value,
      decimals,
      negative: (sign !== undefined && sign !== '+') || minus !== '' || isMinusBehind,
      before: plainWords(left.slice(0, from)),
      heading: '',
      ...(isCent ? CENTS : kindOf(money, unit?.groups)),
      ...(isCent ? {} : oddUnitIn(left.slice(unit ? unitEnd : end), unit?.groups)),
    });
    bare += left.slice(done, match.index) + ' '.repeat(whole.length);
    done = end;
  }
  dates.sort((a, b) => a.box.x - b.box.x);
  return { row, text, words: plainWords(bare + left.slice(done)), figures: byYear(figures, text), dates };
}

/** "416 xyz", or of a price "30.40 p/xyz"; between a number and the next a short word in a cell of its own. */
function oddUnitIn(rest: string, unit: Record<string, string | undefined> | undefined): { oddUnit?: string } {
  if (unit && !unit.pence && !unit.sign) return {};
  const word = (unit ? ODD_PER : ODD_UNIT).exec(rest)?.[1];
  return word === undefined || NO_UNITS.some((one) => one.test(word)) ? {} : { oddUnit: word };
}
const ODD_PER = /^ ?(?:\/|(?:per|je|pro) ) ?(\p{L}{1,12})(?![\p{L}\d])/iu;
const ODD_UNIT = /^(?: |\t(?=\p{L}{1,10}\t[^\t\d]*\d))?(\p{L}{1,16})(?![\p{L}\d'’.-])/u;

const CENTS: Kind = { kind: 'price', hundredths: 1 };

/** All matches at once: `matchAll` makes a pattern of its own for each text, which takes longer than most searches. */
function everyMatch(text: string, pattern: RegExp): RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) found.push(match);
  return found;
}

/** "£182.50 × 91 ÷ 365", "91 days × £182.50 ÷ 365": a price for a year, and days of it. */
function byYear(figures: readonly Figure[], text: string): readonly Figure[] {
  if (figures.length < 2 || !/36[56]/.test(text)) return figures;
  const share = DAYS_OF_YEAR.exec(text);
  const [, last, first] = share ?? [];
  const at = share ? figures.findIndex((one) => one.value === Number(first ?? last) && one.decimals === 0) : -1;
  const price = figures[first === undefined ? at - 1 : at + 1];
  if (!price || (price.kind !== 'money' && price.kind !== 'plain')) return figures;
  return figures
    .filter(({ value, decimals }, i) => i <= at || decimals > 0 || (value !== 365 && value !== 366))
    .map((one, i) => {
      if (i === at) return { ...one, kind: 'days' };
      return one === price ? { ...one, kind: 'price', per: 'year', hundredths: 100 } : one;
    });
}

/** Days right before the days of a year, or before the price that is divided by them. */
const DAYS_OF_YEAR =
  /(?:(\d+)(?: ?\p{L}+)?|(\d+)(?: ?\p{L}+)? ?[x×*] ?[£€$]? ?\d[\d.,]*[.,]\d+ ?[£€$]?) ?[÷/:] ?36[56](?!\d)/u;

/** Stands in for what is no number; of one byte, so that texts with it are searched as quickly as those without. */
const BLANK = '\u0080';
const plainWords = (text: string): string =>
  (text.includes(BLANK) || text.includes('  ') ? text.replaceAll(/[\u0080 ]{2,}|\u0080/g, ' ') : text).trim();

type Kind = Pick<Figure, 'kind' | 'hundredths' | 'per' | 'kWh'>;

function kindOf(money: string | undefined, unit: Record<string, string | undefined> | undefined): Kind {
  if (unit?.heat) return { kind: 'heat' };
  if (unit?.per) {
    const sign = unit.money ?? money;
    const isPence = sign !== undefined && /^(p|c|¢)/i.test(sign);
    return {
      kind: 'price',
      per: perOf(unit.per),
      ...(sign === undefined ? {} : { hundredths: isPence ? 1 : 100 }),
      ...kWhOf(unit.per),
    };
  }
  if (money || unit?.sign) return { kind: 'money' };
  if (unit?.energy) return { kind: 'energy', ...kWhOf(unit.energy) };
  if (unit?.other) return { kind: 'other' };
  if (unit?.volume) return { kind: 'volume' };
  if (unit?.days) return { kind: 'days' };
  if (unit?.months) return { kind: 'months' };
  if (unit?.percent) return { kind: 'percent' };
  if (unit?.pence) return { kind: 'price', hundredths: 1 };
  return { kind: 'plain' };
}

const kWhOf = (unit: string): Pick<Figure, 'kWh'> =>
  /^th/i.test(unit)
    ? { kWh: KWH_PER_THERM }
    : /^mwh/i.test(unit)
      ? { kWh: 1000 }
      : /^gj/i.test(unit)
        ? { kWh: 1000 / MJ_PER_KWH }
        : {};

const perOf = (word: string): NonNullable<Figure['per']> =>
  /^(d|tag|jo|gi)/i.test(word) ? 'day' : /^m(?!wh)/i.test(word) ? 'month' : /^(y|j|a)/i.test(word) ? 'year' : 'unit';

function dayOfNumbers([, one, mark, three, four = '']: RegExpMatchArray): FoundDay | undefined {
  const year = fullYear(four);
  const [first, second] = [Number(one), Number(three)];
  const day = realDay(year, second, first);
  const other = mark === '.' || first === second ? undefined : realDay(year, first, second)?.day;
  if (day) return { ...day, ...(other === undefined ? {} : { otherDay: other }) };
  return other === undefined ? undefined : { day: other };
}

/** Below every real day, so that whoever pairs dates can tell. */
/** "1 May – 25 May 25": two digits that are the days since the date before, which has no year either, may be their count. */
function countsItsDays(
  [, day, month = '', year]: RegExpMatchArray,
  before: DateMark | undefined,
): FoundDay | undefined {
  if (!before || !isYearless(before.day) || year?.length !== 2) return undefined;
  const found = yearlessDay(monthOfName(month), Number(day));
  const dated = realDay(fullYear(year), monthOfName(month), Number(day));
  const days = dated && dated.day - yearBefore(before.day, dated.day);
  return found && days !== undefined && [days, days + 1].includes(Number(year)) ? found : undefined;
}
const yearlessDay = (month: number, day: number): FoundDay | undefined =>
  month > 0 && month <= 12 && day > 0 && day <= 31 ? { day: -(month * 100 + day) - 1_000_000 } : undefined;
export const isYearless = (day: number): boolean => day < -1_000_000;
/** The yearless date in the last year that is not after another day. */
export function yearBefore(day: number, other: number): number {
  const [month, date] = [Math.floor((-day - 1_000_000) / 100), (-day - 1_000_000) % 100];
  const year = yearOf(toCivilDate(other));
  const same = realDay(year, month, date)?.day ?? Number.NaN;
  return same <= other ? same : (realDay(year - 1, month, date)?.day ?? Number.NaN);
}

function realDay(year: number, month: number, day: number): { day: number } | undefined {
  const isReal = year >= EARLIEST_YEAR && year <= LATEST_YEAR && isCivilDay(year, month, day);
  return isReal ? { day: civilDay(year, month, day) } : undefined;
}

/** In a narrow column the unit of a number stands under it. */
function withUnitBelow(figure: Figure, rows: readonly RowFacts[], at: number): Figure {
  if (figure.kind !== 'plain') return figure;
  const { x, width, page } = figure.box;
  const { row } = rows[at]!;
  for (const { row: below } of rows.slice(at + 1, at + 3)) {
    if (below.page !== page || below.y - row.y > 2.2 * row.height) break;
    const under = below.words.find((word) => word.x < x + width + 2 && word.x + word.width > x - 2);
    const text = under ? cellAround(below, under) : '';
    const unit = UNITS.exec(text);
    const kind = unit && unit[0].length === text.length && text !== '' ? kindOf(undefined, unit.groups) : undefined;
    // Below the last charge for energy stands the heading of the days.
    const isOfDays = kind?.kind === 'days' || kind?.per === 'day';
    if (isOfDays && ENERGY.test(rows[at]!.words) && !STANDING.test(rows[at]!.words)) return figure;
    if (kind) return { ...figure, text: `${figure.text} ${text}`, ...kind };
  }
  return figure;
}

/** Whether the words under a number are no unit of it but the heading of another table, whose numbers stand as close. */
function isHeadingBelow({ box: { page } }: Figure, rows: readonly RowFacts[], at: number): boolean {
  const [own, words, next] = rows.slice(at, at + 3);
  if (!words || next?.row.page !== page || next.figures.length < 2 || words.figures.length > 0) return false;
  return next.row.y - words.row.y <= (words.row.y - own!.row.y) * GAP;
}

const LOOK_UP = 16;
/** Times the distance of the rows below; before there is one, times so many heights. */
const [GAP, WIDE] = [1.5, 2.4];
/** A number without a unit takes that of the words above it. */
function withHeading(figure: Figure, rows: readonly RowFacts[], at: number): Figure {
  const { x, width, page } = figure.box;
  const others = rows[at]!.figures.filter((one) => one.box.x !== x);
  const isOfOther = (word: Word) => !isOver(word, figure.box) && others.some(({ box }) => isOver(word, box));
  let heading = '';
  let found: number | undefined;
  let below = rows[at]!.row;
  let pitch = Number.POSITIVE_INFINITY;
  for (let i = at - 1; i >= Math.max(0, at - LOOK_UP); i--) {
    const { row, figures, dates } = rows[i]!;
    // A wider gap than between the rows so far ends the table.
    if (row.page !== page || below.y - row.y > Math.min(pitch, WIDE * row.height) * GAP) break;
    pitch = Math.min(pitch, Math.max(below.y - row.y, row.height));
    below = row;
    if (found !== undefined && rows[found]!.row.y - row.y > 2 * row.height) break;
    // A heading may name the rate of the tax below it.
    const hasNumbers = dates.length > 0 || figures.some(({ kind }) => kind !== 'percent');
    if (hasNumbers && found === undefined) continue;
    const above = row.words.filter((w) => w.x < x + width + 2 && w.x + w.width > x - 2);
    if (above.length === 0) continue;
    if (hasNumbers || !above.some((w) => /\p{L}|[£€$%]/u.test(w.text))) {
      if (found !== undefined) break;
      continue;
    }
    heading = `${cellAround(row, above[0]!, isOfOther)} ${heading}`;
    if (found !== undefined) break;
    found = i;
  }
  heading = heading.trim();
  // "Grundpreis für 1 Jahr" says itself what it counts.
  if (figure.kind === 'plain' && isInText(figure, rows[at]!)) return figure;
  if (figure.kind !== 'plain') return heading === '' ? figure : { ...figure, heading };
  const named = kindOfHeading(heading, figure);
  // Behind a count may stand its price and its sum.
  const isAlike = figure.decimals === rows[at]!.figures[0]!.decimals;
  const kind = named.kind || !figure.before || !isAlike ? named : kindOfRow(figure);
  // In a column of units the days of a standing charge stand too.
  if (kind.kind === 'energy' && DAYS_ROW.test(rows[at]!.words)) return { ...figure, heading, kind: 'days' };
  const isOfDays = kind.kind === 'energy' && STANDING.test(rows[at]!.words);
  // A table of sums below one of prices has no heading of its own.
  const isOfSums = (one: RowFacts | undefined) => one !== undefined && [NET, VAT].some((word) => word.test(one.words));
  const isSum =
    figure.decimals === 2 &&
    (kind.kind === 'price'
      ? SUMS.some((one) => one.test(rows[at]!.words))
      : // Nor has one of charges, whose use says its unit itself.
        kind.kind === 'energy' &&
        (isOfSums(rows[at]) || isOfSums(rows[at - 1]) || rows[at]!.figures.some((one) => one.kind === 'energy')));
  return { ...figure, heading, ...(isOfDays || isSum ? {} : kind) };
}
const NO_UNITS: readonly RegExp[] = [NO_UNIT, ENERGY, ...REGISTERS.map(([pattern]) => pattern)];

/** Between words of running text, closer than those of two columns. */
function isInText({ box }: Figure, { row: { words, height } }: RowFacts): boolean {
  const at = words.findIndex(({ x, width }) => x + width > box.x + 1);
  const [before, own, after] = [words[at - 1], words[at], words[at + 1]];
  const isClose = (one: Word, next: Word) => next.x - one.x - one.width < height * 0.5;
  return (
    before !== undefined &&
    own !== undefined &&
    after !== undefined &&
    /\p{Ll}$/u.test(before.text) &&
    /^\p{L}{3}/u.test(after.text) &&
    isClose(before, own) &&
    isClose(own, after)
  );
}

const DAYS_ROW = /^(?:number of )?(?:days|tage)\b/i;

const SUMS: readonly RegExp[] = [NET, VAT, TOTAL];

/** Where the words of a table stand beside it, they name the unit: "Used (kWh)", "Days". */
function kindOfRow(figure: Figure): Partial<Kind> {
  const label = figure.before.split('\t')[0]!.trim();
  if (/\((?:p|pence|ct|cents?)\)$/i.test(label))
    return { kind: 'price', hundredths: 1, ...(/(?:per|a|each) day|daily/i.test(label) ? { per: 'day' } : {}) };
  const unit =
    /^(?:(?:units|kwh|therms|ccf)(?: used)?|days)$/i.exec(label)?.[0] ?? /\(([^()]{1,12})\)$/.exec(label)?.[1];
  return unit === undefined ? {} : kindOfHeading(unit, figure);
}

const isOver = (word: Word, { x, width }: Box): boolean => word.x < x + width && word.x + word.width > x;

/** The words of a heading that stand close to one of them, without those above another number. */
function cellAround({ words, height }: Row, word: Word, isOfOther = (_: Word) => false): string {
  let from = words.indexOf(word);
  let to = from;
  const isNear = (a: Word, b: Word) => b.x - a.x - a.width < height * 0.7;
  while (from > 0 && isNear(words[from - 1]!, words[from]!) && !isOfOther(words[from - 1]!)) from--;
  while (to < words.length - 1 && isNear(words[to]!, words[to + 1]!) && !isOfOther(words[to + 1]!)) to++;
  return words
    .slice(from, to + 1)
    .map((w) => w.text)
    .join(' ');
}

function kindOfHeading(heading: string, { decimals }: Figure): Partial<Kind> {
  if (heading === '') return {};
  const text = heading.toLowerCase();
  if (/kwh ?\/ ?m|mj/.test(text)) return { kind: 'heat' };
  const price =
    /(?<![\p{L}])(p|pence|ct|cents?|c|£|€|\$|eur|gbp) ?(?:\/|per|je|pro|a) ?([km]wh|gj|therms?|units?|days?|tag|jour|dag|month|mth|mnd|monat|mois|maand|year|jahr|jaar)/u.exec(
      text,
    );
  if (price)
    return {
      kind: 'price',
      hundredths: /^(p|c)/.test(price[1]!) ? 1 : 100,
      per: perOf(price[2]!),
      ...kWhOf(price[2]!),
    };
  if (/\bpence\b/.test(text) && !/\b(?:rate|price)\b/.test(text)) return { kind: 'price', hundredths: 1 };
  if (/\b(rate|price)\b|preis/.test(text)) {
    if (/\((p|pence|ct|cent)\)|\bp\b|\bct\b|\bpence\b|\bcent\b/.test(text)) return { kind: 'price', hundredths: 1 };
    return { kind: 'price', ...(/[£€$]|\beur\b/.test(text) ? { hundredths: 100 as const } : {}) };
  }
  if (
    /\breading|\bearlier\b|\blater\b|\bprevious\b|\bpresent\b|\bold\b|\bnew\b|stand\b|\bopening\b|\bclosing\b|zähler|\balt\b|\bneu\b/.test(
      text,
    ) &&
    decimals < 2
  )
    return { kind: 'reading' };
  // "Quantity (kWh or days)" is of energy; a standing charge takes nothing from it.
  if (/\bdays?\b|\btage?\b|\bjours\b|\bdagen\b/.test(text) && !/\bkwh\b/.test(text)) return { kind: 'days' };
  if (/[£€$]|\beur\b|\bamount\b|\bcost\b|\bcharges?\b|\bbetrag\b|\bsumme\b|\bpounds?\b/.test(text) && decimals === 2)
    return { kind: 'money' };
  if (/\bkwh\b/.test(text)) return { kind: 'energy' };
  if (/\b(therms?|mwh|gj)\b/.test(text)) return { kind: 'energy', ...kWhOf(/therm|mwh|gj/.exec(text)![0]) };
  if (/\b(?:lit(?:re|er|ro)s?|kg)\b/.test(text)) return { kind: 'other' };
  if (/\bccf\b/.test(text)) return { kind: 'volume' };
  if (/\bunits?\b|\bused?\b|verbrauch|\bconsumption\b|\bmenge\b/.test(text) && decimals !== 2)
    return { kind: 'energy' };
  if (/m³|\bm3\b|cubic|\bcbm\b/.test(text)) return { kind: 'volume' };
  return {};
}

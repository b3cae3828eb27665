/** Lists typed by hand, a date and an amount in each line with nothing but spaces, a colon or a dash between them. */
import { minuteEitherWay } from '../dates/read-stamp.ts';

const LEAST_LINES = 3;
/** Titles, sums and remarks may stand among the lines. A judgement. */
const LEAST_SHARE = 0.75;

const DATE =
  "\\d{1,4}[./-]\\d{1,2}[./-]\\d{2,4}|\\d{1,2}(?:st|nd|rd|th|\\.)? ?\\p{L}{3,9}\\.?,? ?(?:\\d{4}|'?\\d{2})|\\p{L}{3,9}\\.?(?: ?(?:\\d{4}|'?\\d{2}))?";
const CLOCK = '(?:,? (?:at |um )?\\d{1,2}[:.]\\d{2}(?: ?[ap]m)?)?';
const NUMBER = "[+-]?(?:\\d{1,3}(?:[ ',.]\\d{3})+|\\d+)(?:[.,]\\d+)?";
const UNIT = 'k?wh|mwh|m3|m³|ft3|ft³|units?|l|litres?|liters?|liter|kg|tonnes?|therms?|[gm]j|°c|°f';
const LINE = new RegExp(
  `^[-*•]? ?(${DATE})(${CLOCK})(?: ?[:=]| ?[-–—]+>?(?= )|(?= )) *(${NUMBER}) ?(${UNIT})?(?![\\p{L}\\d.,/:]) *(\\D*|\\(.*\\)|\\[.*\\])$`,
  'iu',
);

const TITLE = /^\D{2,40}$/;

/** The text with tabs between date, amount and remark; undefined where it is no such list. */
export function tabsForTypedList(text: string): string | undefined {
  const lines = text.split(/\r\n|\r|\n/);
  let others = lines.filter((line) => /\S/.test(line)).length * (1 - LEAST_SHARE);
  const read: (Cells | undefined)[] = [];
  for (const [i, line] of lines.entries()) {
    lines[i] = line.trim().replaceAll(/\s+/g, ' ');
    read[i] = cellsOf(lines[i]!);
    // Of a long file of something else a part tells.
    if (read[i] === undefined && lines[i] !== '' && --others < 0) return undefined;
  }
  const cells = read.filter((one) => one !== undefined);
  if (cells.length < LEAST_LINES || !areInSteps(cells)) return undefined;
  const first = read.findIndex((one) => one !== undefined);
  const rows = lines.map((line, i) => read[i]?.join('\t') ?? line);
  // A title of few words is the heading, so that every line keeps its number.
  const title = lines.slice(0, first).findLastIndex((line) => line !== '');
  if (TITLE.test(lines[title] ?? '')) rows[title] = `Date\t${lines[title]!.replace(/:$/, '')}\tNote`;
  return rows.join('\n');
}

type Cells = readonly [date: string, amount: string, remark: string];

function cellsOf(line: string): Cells | undefined {
  const [, date, clock, number, unit, remark] = LINE.exec(line) ?? [];
  if (date === undefined || number === undefined || !isDate(date)) return undefined;
  return [`${date}${clock}`, unit ? `${number} ${unit}` : number, remark!.replace(/^[([{]|[)\]}]$/g, '')];
}

/** Months by themselves are dates whose year is missing, which is told later on. */
const isDate = (words: string): boolean => [words, `${words} 2025`].some((one) => !Number.isNaN(minuteEitherWay(one)));

/** "Jan 25" may be a month or a day: it is a month where one follows the other. */
const SHORT_YEAR = /^\p{L}+\.? ?'?\d{2}$/u;
const HALF_A_YEAR = 190 * 1440;
function areInSteps(cells: readonly Cells[]): boolean {
  if (!cells.some(([date]) => SHORT_YEAR.test(date))) return true;
  const minutes = cells.map(([date]) => minuteEitherWay(date));
  const steps = minutes.slice(1).map((minute, i) => minute - minutes[i]!);
  return [1, -1].some((sign) => steps.every((step) => step * sign > 0 && step * sign < HALF_A_YEAR));
}

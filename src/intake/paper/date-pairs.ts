/** Two dates that belong together: the first day and the last of a bill, a charge or a stretch of readings. */
import { monthOf, toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { monthOfName } from '../dates/month-names.ts';
import { type DateMark, isYearless, type RowFacts, yearBefore } from './figures.ts';
import { COMPARED, EARLIER } from './vocabulary.ts';

export interface DatePair {
  readonly from: DateMark;
  readonly to: DateMark;
  readonly days: number;
}

/** A span shorter than this is no bill, a longer one a contract. */
const [LEAST_DAYS, MOST_DAYS] = [3, 800];

/** Two dates one after the other, a later one second, in one row or in two that follow each other. */
export function pairDates(rows: readonly RowFacts[]): DatePair[] {
  const pairs: DatePair[] = [];
  rows.forEach(({ dates, row }, at) => {
    // In a narrow column the second date stands under the first, perhaps with the middle of the row between.
    const next = rows.slice(at + 1, at + 3).find((one) => one.dates.length > 0);
    const below = next && next.row.page === row.page && next.row.y - row.y < row.height * 2.6 ? next.dates : [];
    const isPair =
      dates.length === 1 && below.length === 1 && (!isList(rows, dates[0]!) || leadsOn(rows[at]!, dates[0]!));
    const far = dates.length === 1 && !isPair ? underWord(rows, at, dates[0]!) : [];
    const alone = isPair ? [...dates, ...below] : [...dates, ...far];
    for (let i = 1; i < alone.length; i++) {
      const [from, last] = [alone[i - 1]!, alone[i]!];
      const to = isYearless(last.day) ? withYear(last, rows) : last;
      if (!to) continue;
      const first = isYearless(from.day) ? { ...from, day: yearBefore(from.day, to.day) } : from;
      const days = to.day - first.day;
      if (days >= LEAST_DAYS && days <= MOST_DAYS) pairs.push({ from: first, to, days });
    }
  });
  return pairs;
}

const MONTH_OF_YEAR = /(\p{L}{3,9}) (20\d{2})(?!\d)/gu;

/** A bill is written soon after its last day. A judgement. */
const WRITTEN_WITHIN_DAYS = 200;

/** A date without a year, in the only year that the page names beside its month: "Electricity for May 2026". */
function withYear(date: DateMark, rows: readonly RowFacts[]): DateMark | undefined {
  const days = rows.flatMap(({ text, words }) =>
    [...text.matchAll(MONTH_OF_YEAR)].flatMap(([, month = '', year]) => {
      if (COMPARED.test(words) || EARLIER.test(words)) return [];
      const day = yearBefore(date.day, toDayNumber(`${Number(year)}-12-31`));
      return monthOf(toCivilDate(day)) === monthOfName(month) ? [day] : [];
    }),
  );
  const latest = Math.max(...rows.flatMap(({ dates }) => dates.map(({ day }) => day)));
  const [day] = days;
  const isOne = day !== undefined && days.every((one) => one === day);
  return isOne && latest - day < WRITTEN_WITHIN_DAYS ? { ...date, day } : undefined;
}

/** In a side panel the second date stands under the first, with only a "to" between them. */
function underWord(rows: readonly RowFacts[], at: number, { box }: DateMark): readonly DateMark[] {
  const below = rows
    .slice(at + 1, at + PANEL_ROWS)
    .filter(({ row }) => row.page === box.page && row.y - box.y < box.height * PANEL_LINES)
    .map((one) => ({ ...one, own: one.row.words.filter(({ x }) => Math.abs(x - box.x) < box.height) }))
    .filter(({ own }) => own.length > 0);
  const [word, next] = below;
  const date = next?.dates.find(({ box: { x } }) => Math.abs(x - box.x) < box.height);
  return date && LEADS_ON.test(word!.own[0]!.text) ? [date] : [];
}
const [PANEL_ROWS, PANEL_LINES] = [8, 5];
const LEADS_ON = /^(?:[-–−]|to|bis|until|au|t\/m|tot|al?)$/i;

/** A date with a dash or a "to" behind it waits for another. */
function leadsOn({ row }: RowFacts, { box }: DateMark): boolean {
  const next = row.words.find(({ x }) => x >= box.x + box.width - 1);
  return next !== undefined && LEADS_ON.test(next.text);
}

const LIST = 3;
/** Three dates and more under each other are a list, such as readings of earlier bills. */
function isList(rows: readonly RowFacts[], { box }: DateMark): boolean {
  const inColumn = rows.filter(
    ({ dates }) =>
      dates.length === 1 && dates[0]!.box.page === box.page && Math.abs(dates[0]!.box.x - box.x) < box.height,
  );
  return inColumn.length >= LIST;
}

/** The dates in the other order of day and month, where they can be read so, and whether that is the only way. */
export function swapDayAndMonth(rows: readonly RowFacts[]): { rows: RowFacts[]; isOnly: boolean } | undefined {
  const slashed = rows.flatMap(({ dates }) => dates).filter(({ text }) => /^\d{1,2}[/-]\d{1,2}[/-]/.test(text));
  const numbers = slashed.map(({ text }) => text.split(/[/-]/).map(Number));
  const first = numbers.filter(([one = 0]) => one > 12).length;
  const second = numbers.filter(([, two = 0]) => two > 12).length;
  if (first > 0 || !slashed.some(({ otherDay }) => otherDay !== undefined)) return undefined;
  const swapped = rows.map((one) => ({
    ...one,
    dates: one.dates.map((date) =>
      date.otherDay === undefined ? date : { ...date, day: date.otherDay, otherDay: date.day },
    ),
  }));
  return { rows: swapped, isOnly: second > 0 };
}

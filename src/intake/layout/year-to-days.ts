/** Days that are written without their year. */
import { toCivilDate, twoDigits } from '../../model/calendar/civil.ts';
import { monthOfName } from '../dates/month-names.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { rewriteCells } from '../text/rewrite-cells.ts';
import { cellText, rowTexts, type Table } from '../text/table.ts';
import { DAY, yearOfTitles } from './date-parts.ts';
import { plainWords } from './headings.ts';

const SEARCHED_ROWS = 40;
/** "14.01.", "14/1", "14 Jan", "Jan 14". */
const DAY_ALONE = /^(\d{1,2})(?:\.(\d{1,2})\.|\/(\d{1,2})|[. -]+(\p{L}{3,9})\.?)$|^(\p{L}{3,9})\.? (\d{1,2})$/u;
const LEAST_DAYS = 5;

/**
 * Days without a year that go on within one, below a title that names it: the year goes to each. Where none does, "Jan 14"
 * is turned, so that it is no January of 2014.
 */
export function joinYearToDays(table: Table): Table | undefined {
  const searched = Array.from({ length: Math.min(table.rowCount, SEARCHED_ROWS) }, (_, row) => row);
  for (const column of [0, 1]) {
    const first = searched.find((row) => DAY_ALONE.test(cellText(table, row, column)));
    if (first === undefined) continue;
    const found = new Map<number, RegExpExecArray>();
    for (let row = first; row < table.rowCount; row++) {
      const parts = DAY_ALONE.exec(cellText(table, row, column));
      if (parts) found.set(row, parts);
    }
    const days = [...found.values()];
    const isNameFirst = days[0]![5] !== undefined;
    if (days.length < LEAST_DAYS || !goOn(days) || (isNameFirst && !areDays(days))) continue;
    const year = yearOfTitles(searched.slice(0, first).map((row) => rowTexts(table, row).join(' ')));
    if (year === undefined && !isNameFirst) continue;
    return rewriteCells(table, (row, at) => {
      const parts = at === column ? found.get(row) : undefined;
      if (!parts) return undefined;
      const [, one, dotted, slashed, behind, before, day] = parts;
      if (dotted !== undefined) return [`${one}.${dotted}.${year}`];
      if (slashed !== undefined) return [`${one}/${slashed}/${year}`];
      return [`${one ?? day} ${behind ?? before}${year === undefined ? '' : ` ${year}`}`];
    });
  }
  return undefined;
}

/** Whether "Jan 14" is followed by "Jan 15" and so on, rather than by other months or years. */
function areDays(days: readonly RegExpExecArray[]): boolean {
  const next = days.slice(1).filter((day, i) => {
    const before = days[i]!;
    return day[5] === before[5] && Math.abs(Number(day[6]) - Number(before[6])) === 1;
  });
  return next.length >= LEAST_DAYS - 1 && next.length * 2 > days.length;
}

/** Whether days of one year go on in one direction, whichever of their numbers is the month. */
function goOn(days: readonly RegExpExecArray[]): boolean {
  const places = (isMonthFirst: boolean) =>
    days.map(([, one, dotted, slashed, behind, before, day]) => {
      const name = behind ?? before;
      if (name !== undefined) return monthOfName(name.toLowerCase()) * 100 + Number(one ?? day);
      const other = dotted ?? slashed;
      return isMonthFirst ? Number(one) * 100 + Number(other) : Number(other) * 100 + Number(one);
    });
  return [true, false].some((isMonthFirst) => {
    const all = places(isMonthFirst);
    const isReal = all.every((at) => at > 100 && at < 1232);
    return isReal && [1, -1].some((way) => all.every((at, i) => i === 0 || (at - all[i - 1]!) * way >= 0));
  });
}

/** Days by their numbers below a title that names their month and its year: the month goes to each. */
export function joinMonthToDays(table: Table): Table | undefined {
  const searched = Array.from({ length: Math.min(table.rowCount, SEARCHED_ROWS) }, (_, row) => row);
  const reader = createStampReader();
  for (const row of searched) {
    const column = rowTexts(table, row).findIndex((cell) => DAY.test(plainWords(cell)));
    if (column < 0) continue;
    const months = searched
      .slice(0, row)
      .flatMap((above) => rowTexts(table, above))
      .flatMap((title) => {
        const isMonth =
          title.length >= 6 && readStamp(title, 0, title.length, true, reader) === READ && reader.kind === 'month';
        return isMonth ? [toCivilDate(reader.civilMinute / 1440).slice(0, 7)] : [];
      });
    const days = new Map<number, number>();
    for (let at = row + 1; at < table.rowCount; at++) {
      const cell = cellText(table, at, column);
      if (/^\d{1,2}\.?$/.test(cell)) days.set(at, Number.parseInt(cell, 10));
    }
    const numbers = [...days.values()];
    const [month] = months;
    if (month === undefined || months.length > 1 || numbers.length < LEAST_DAYS) continue;
    if (!numbers.every((day, i) => day >= 1 && day <= 31 && (i === 0 || day > numbers[i - 1]!))) continue;
    return rewriteCells(table, (at, c) => {
      const day = c === column ? days.get(at) : undefined;
      return day === undefined ? undefined : [`${month}-${twoDigits(day)}`];
    });
  }
  return undefined;
}

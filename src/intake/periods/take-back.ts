/** Rows of a bill that give back: use below nought, and money back without any use. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { sumOf } from '../../model/units/sums.ts';
import { isNumberColumn } from '../layout/column-facts.ts';
import type { Sheet } from '../layout/sheet.ts';
import { countAsNumber } from '../numbers/read-number.ts';
import { tellAmount } from '../readings/screen-values.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';
import type { RawPeriod } from './raw-period.ts';
import type { RowPeriods } from './row-periods.ts';

/** Rounding on bills. A judgement. */
const CLOSE_KWH = 0.5;

/**
 * Rows that undo another: of the same days and the same amount, with one number of that row below nought instead, as the
 * money of a bill that is credited.
 */
export function undoneRows(
  { table, columns }: Sheet,
  rows: Uint32Array,
  values: Float64Array,
  { fromDay, toDay }: Pick<RowPeriods, 'fromDay' | 'toDay'>,
): ReadonlySet<number> {
  const numbers = columns.filter(isNumberColumn);
  const amount = (i: number, column: number) => countAsNumber(cellText(table, rows[i]!, column));
  const undoes = (i: number, other: number) =>
    values[i] === values[other] &&
    numbers.some(({ index }) => amount(i, index) < 0 && amount(i, index) === -amount(other, index));
  const alike = Map.groupBy(rows.keys(), (i) => `${fromDay[i]} ${toDay[i]}`);
  return new Set(
    [...alike.values()].flatMap((same) =>
      same.length < 2 ? [] : same.filter((i) => values[i]! > 0 && same.some((other) => undoes(i, other))),
    ),
  );
}

/**
 * The rows with what others give back taken off: the one row that is given back whole goes with it, else each row within
 * the days of the correction loses its share, or the one row in whose days it lies. What no row can bear is asked about. A
 * row of money back without use is no reading of its days.
 * @param written some of them below nought
 * @param mayBeLeftOut as the installer said of what could not be read
 */
export function takeBack(
  written: readonly RawPeriod[],
  column: string,
  mayBeLeftOut: boolean,
  book: RemarkBook,
): RawPeriod[] {
  const isCredit = (row: RawPeriod) =>
    row.kWh === 0 &&
    (row.costPence ?? 0) < 0 &&
    written.some((one) => one.kWh > 0 && one.fromDay < row.toDay && one.toDay > row.fromDay);
  let rows = written.filter((row) => row.kWh >= 0 && !isCredit(row));
  for (const row of written) {
    const where = { row: row.line, from: toCivilDate(row.fromDay), to: toCivilDate(row.toDay) };
    if (isCredit(row)) book.tally('money-back', 'note', where);
    if (row.kWh >= 0) continue;
    const inside = rows.filter((one) => one.fromDay >= row.fromDay && one.toDay <= row.toDay);
    const around = rows.filter((one) => one.fromDay <= row.fromDay && one.toDay >= row.toDay);
    const within = inside.length === 0 && around.length === 1 ? around : inside;
    const whole = within.findLast((one) => Math.abs(one.kWh + row.kWh) <= CLOSE_KWH);
    const sum = sumOf(within.map(({ kWh }) => kWh));
    const left = whole ? 0 : (sum + row.kWh) / sum;
    if (!whole && !(left > 0)) {
      const facts = { row: row.line, column, foundTold: tellAmount(row.kWh) };
      if (mayBeLeftOut) book.tally('negative', 'note', facts);
      else book.tally('unread-credit-asked', 'question', facts);
      continue;
    }
    book.tally('taken-back', 'note', { ...where, effectKWh: row.kWh });
    const back = whole ? [whole] : within;
    const scaled = (one: RawPeriod): RawPeriod => ({
      ...one,
      quantity: one.quantity * left,
      kWh: one.kWh * left,
      ...(one.costPence === undefined ? {} : { costPence: one.costPence + ((row.costPence ?? 0) * one.kWh) / sum }),
    });
    rows = rows.flatMap((one) => (!back.includes(one) ? [one] : whole ? [] : [scaled(one)]));
  }
  return rows;
}

/** Rows of a bill that give back: use below nought, and money back without any use. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { sumOf } from '../../model/units/sums.ts';
import { tellAmount } from '../readings/screen-values.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { RawPeriod } from './raw-period.ts';

/** Rounding on bills. A judgement. */
const CLOSE_KWH = 0.5;

/**
 * The rows with what others give back taken off: the one row that is given back whole goes with it, else each row within
 * the days of the correction loses its share. What no row can bear is left out and named. A row of money back without
 * use is no reading of its days.
 * @param written some of them below nought
 */
export function takeBack(written: readonly RawPeriod[], column: string, book: RemarkBook): RawPeriod[] {
  const isCredit = (row: RawPeriod) =>
    row.kWh === 0 &&
    (row.costPence ?? 0) < 0 &&
    written.some((one) => one.kWh > 0 && one.fromDay < row.toDay && one.toDay > row.fromDay);
  let rows = written.filter((row) => row.kWh >= 0 && !isCredit(row));
  for (const row of written) {
    const where = { row: row.line, from: toCivilDate(row.fromDay), to: toCivilDate(row.toDay) };
    if (isCredit(row)) book.tally('money-back', 'note', where);
    if (row.kWh >= 0) continue;
    const within = rows.filter((one) => one.fromDay >= row.fromDay && one.toDay <= row.toDay);
    const whole = within.findLast((one) => Math.abs(one.kWh + row.kWh) <= CLOSE_KWH);
    const sum = sumOf(within.map(({ kWh }) => kWh));
    const left = whole ? 0 : (sum + row.kWh) / sum;
    if (!whole && !(left > 0)) {
      book.tally('negative', 'note', { row: row.line, column, foundTold: tellAmount(row.kWh) });
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

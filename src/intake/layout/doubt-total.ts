/** Holds the sum that a sheet states of itself against the rows that were read: a row that was lost shows in it. */

import { isTemperature } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { readAwkwardNumber } from '../numbers/read-number.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { cellCount, cellText, rowTexts } from '../text/table.ts';
import { isADay, isSince } from './column-words.ts';
import { quantityColumns } from './quantity-columns.ts';
import type { Dates } from './read-dates.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { columnName } from './value-cells.ts';
import { SUMS } from './vocabulary.ts';

/** Rows are rounded, and so is their sum. A judgement. */
const ROUNDED = 0.005;
/** Fewer rows are known at a glance. */
const LEAST_ROWS = 3;

/** Asks where the one row of sums differs from all rows with a date, in a column that can be added up. */
export function askTotal(sheet: Sheet, dates: Dates, choices: IntakeChoices, book: RemarkBook): void {
  if (choices.leaveUnread || dates.count < LEAST_ROWS) return;
  const { table } = sheet;
  const sums = dates.strays.filter(({ row }) => rowTexts(table, row).some((cell) => SUMS.test(cell)));
  const row = sums[0]?.row;
  if (row === undefined || sums.length > 1) return;
  const columns = quantityColumns(sheet, [sheet.dateColumn, stepOf(sheet).toColumn]).filter(
    (c) =>
      [undefined, c.index].includes(choices.columns?.value) &&
      c.meaning.role === 'value' &&
      !['W', 'kW', 'BTU/h', '°C', 'tenth of °C', '°F', 'K'].includes(c.meaning.unit ?? '') &&
      !(c.meaning.carrier && isTemperature(c.meaning.carrier)) &&
      !isADay(c) &&
      !isSince(c),
  );
  // A line that was not cut into cells names the sum of the only column.
  const isLine = cellCount(table, row) === 1 && columns.length === 1;
  const ofLine = cellText(table, row, 0).replace(/^[^\d]*/, '');
  for (const { index } of columns) {
    const found = isLine ? ofLine : cellText(table, row, index);
    const comparisons = (['.', ','] as const).flatMap((decimal) => {
      const total = readAwkwardNumber(found, decimal);
      const written = Array.from(dates.rows.subarray(0, dates.count), (one) =>
        readAwkwardNumber(cellText(table, one, index), decimal),
      );
      // A row that stands there twice is in the sum once.
      const once = new Map(written.map((number, i) => [`${dates.civilMinute[i]} ${number}`, number]));
      const rows = [...once.values()].filter((number) => !Number.isNaN(number));
      const isRising = rows.every((number, i) => i === 0 || number >= rows[i - 1]!);
      return total > 0 && rows.length >= LEAST_ROWS && !isRising ? [{ total, read: sumOf(rows) }] : [];
    });
    const [first] = comparisons;
    if (!first || comparisons.some(({ total, read }) => Math.abs(total - read) <= total * ROUNDED)) continue;
    book.add('unread-total-asked', 'question', {
      row: table.lineOfRow[row]!,
      column: columnName(sheet, index),
      found,
      ...tellNumber(Math.round(first.read * 100) / 100),
    });
    return;
  }
}

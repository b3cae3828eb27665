/** Order of the rows, said once for a file, and stamps after today. */
import { toDayNumber } from '../../model/calendar/civil.ts';
import { tell } from '../../model/shapes/told.ts';
import { orderOfRows, type RowOrder } from '../dates/interval.ts';
import { takeOut } from '../layout/drop-sums.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Sheet } from '../layout/sheet.ts';
import type { IntakeContext } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';

export function remarkOrder(dates: Dates, book: RemarkBook): RowOrder {
  const { order, breaks } = orderOfRows(dates.civilMinute, dates.count);
  if (order === 'newest first') book.add('newest-first', 'note');
  if (order === 'mixed') book.add('not-in-order', 'note', { count: breaks });
  return order;
}

/** The rows that can have been measured, in the same arrays: what is later than today is expected, or its date misread. */
export function leaveOutLater(sheet: Sheet, dates: Dates, { today }: IntakeContext, book: RemarkBook): Dates {
  const limit = (toDayNumber(today) + 1) * 1440;
  const later = new Set<number>();
  for (let i = 0; i < dates.count; i++) if (dates.civilMinute[i]! > limit) later.add(i);
  const [first] = later;
  if (first === undefined) return dates;
  const row = dates.rows[first]!;
  book.add('after-today', 'note', {
    row: sheet.table.lineOfRow[row]!,
    found: cellText(sheet.table, row, sheet.dateColumn),
    expectedTold: tell('that-day', { on: { on: today } }),
    count: later.size,
  });
  return { ...dates, count: takeOut(dates, later) };
}

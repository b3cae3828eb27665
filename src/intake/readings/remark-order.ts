/** Order of the rows and stamps after today, said once for a file. */
import { toDayNumber } from '../../model/calendar/civil.ts';
import { orderOfRows, type RowOrder } from '../dates/interval.ts';
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

export function remarkAfterToday(sheet: Sheet, dates: Dates, context: IntakeContext, book: RemarkBook): void {
  const limit = (toDayNumber(context.today) + 1) * 1440;
  let count = 0;
  let first = -1;
  for (let i = 0; i < dates.count; i++) if (dates.civilMinute[i]! > limit && count++ === 0) first = i;
  if (count === 0) return;
  const row = dates.rows[first]!;
  book.add('after-today', 'note', {
    row: sheet.table.lineOfRow[row]!,
    found: cellText(sheet.table, row, sheet.dateColumn),
    expected: context.today,
    count,
  });
}

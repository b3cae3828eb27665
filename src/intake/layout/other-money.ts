/** Amounts in another money than the home's are no costs of it: they are left out, and named. */
import type { IntakeContext } from '../terms/choices.ts';
import { moneysIn } from '../terms/money-words.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { namesOf } from './column-words.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

export function leaveOutOtherMoney(sheet: Sheet, { money }: IntakeContext, book: RemarkBook): Sheet {
  if (money === undefined) return sheet;
  const isOther = (column: ColumnFacts): boolean => {
    if (!isNumberColumn(column) || !isMoneyColumn(column)) return false;
    const said = `${plainWords(column.heading)} ${cellText(sheet.table, sheet.firstRow, column.index).toLowerCase()}`;
    const found = moneysIn(said);
    return found.length > 0 && !found.includes(money);
  };
  const others = sheet.columns.filter(isOther);
  if (others.length === 0) return sheet;
  book.add('cost-other-money', 'note', { found: namesOf(sheet, others) });
  return {
    ...sheet,
    columns: sheet.columns.map((c) =>
      others.includes(c) ? { ...c, isOtherMoney: true, meaning: { role: 'cost' } } : c,
    ),
  };
}

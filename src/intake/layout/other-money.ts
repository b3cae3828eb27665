/** Amounts in another money than the home's are no costs of it: they are left out, and named. */
import type { IntakeContext } from '../terms/choices.ts';
import { type Money, moneysIn } from '../terms/money-words.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { cellText } from '../text/table.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { namesOf } from './column-words.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

/** Every money that its heading or its first cell names. */
const moneysOf = ({ table, firstRow }: Sheet, { heading, index }: ColumnFacts): Money[] =>
  moneysIn(`${plainWords(heading)} ${cellText(table, firstRow, index).toLowerCase()}`);

/** The money of a column: its own where it names one, else the home's. */
export const moneyOfColumn = (sheet: Sheet, column: ColumnFacts, { money = '£' }: IntakeContext): Money =>
  moneysOf(sheet, column)[0] ?? money;

export function leaveOutOtherMoney(sheet: Sheet, { money }: IntakeContext, book: RemarkBook): Sheet {
  if (money === undefined) return sheet;
  const isOther = (column: ColumnFacts): boolean => {
    if (!isNumberColumn(column) || !isMoneyColumn(column)) return false;
    const found = moneysOf(sheet, column);
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

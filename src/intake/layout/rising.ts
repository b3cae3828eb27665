/** Amounts that only rise may be a counter under another name. */
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { isOfDegrees } from '../terms/units.ts';
import { cellText } from '../text/table.ts';
import type { ColumnFacts } from './column-facts.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';
import { stepOf } from './sheet-step.ts';
import { statedUnit } from './stated-energy.ts';
import { columnName } from './value-cells.ts';
import { AMOUNT, METER } from './vocabulary.ts';

/** Amounts of so many days or months rise and fall with the season. A judgement. */
const LEAST_RISING = 8;

/** So little of itself a counter rises that has run for a while. A judgement. */
const HARDLY_MOVES = 3;
/** Under a word for an amount it takes so many. A judgement. */
const LEAST_AMOUNTS = 4;
/** Of the digits that a counter has. */
const LEADING_NOUGHT = /^0\d{3}/;

/** Asks where each row has more than the one before: it may be the counter rather than what was used. */
export function remarkRising(
  sheet: Sheet,
  columns: readonly ColumnFacts[],
  choices: IntakeChoices,
  book: RemarkBook,
): void {
  const { isNewestFirst, toColumn } = stepOf(sheet);
  // Two readings of what is called a meter may be its counter already.
  const isMeter = ({ heading, index, smallest, largest, numbers }: ColumnFacts) => {
    const words = plainWords(heading);
    const namesAmount = AMOUNT.test(words);
    const hardlyMoves = smallest > HARDLY_MOVES * (largest - smallest) && (!namesAmount || numbers >= LEAST_AMOUNTS);
    const isSaid = METER.test(words) || LEADING_NOUGHT.test(cellText(sheet.table, sheet.firstRow, index));
    return toColumn === undefined && (hardlyMoves || (isSaid && !namesAmount));
  };
  const rising = columns.find(
    (c) =>
      (isNewestFirst ? c.rises : c.falls) === 0 &&
      c.rises + c.falls >= (isMeter(c) ? 2 : LEAST_RISING) - 1 &&
      c.meaning.bill === undefined,
  );
  if (choices.shape !== undefined || !rising || isOfDegrees(statedUnit(sheet, rising))) return;
  book.add('register-rising-asked', 'question', { column: columnName(sheet, rising.index), count: rising.numbers });
}

/** Money and shares on a bill in one unit each: pence, pence a unit, parts of one. */
import { tell } from '../../model/shapes/told.ts';
import type { ShapeInput } from '../importer/shape.ts';
import type { ColumnFacts } from '../layout/column-facts.ts';
import { plainWords } from '../layout/headings.ts';
import { moneyOfColumn } from '../layout/other-money.ts';
import { columnName } from '../layout/value-cells.ts';
import { UNITS_OF } from '../terms/money-words.ts';

const inPounds = (column: ColumnFacts): boolean =>
  /£|€|\bgbp\b|\beur(os?)?\b|\bpounds?\b/.test(plainWords(column.heading)) || column.money > 0;
const inPence = (column: ColumnFacts): boolean =>
  /\((p|ct)\)|\b(p|ct) ?\/|\b(p|ct)$|\b(p|ct) (per|je|pro)\b|\b(pence|cents?)\b/.test(plainWords(column.heading)) ||
  ['p', 'ct'].includes(column.suffix.toLowerCase());

/** An amount [pence]; pounds where nothing says pence. No column: it is in pence already. */
export function penceOf(column: ColumnFacts | undefined, value: number | undefined): number | undefined {
  if (value === undefined) return undefined;
  return Math.round(!column || inPence(column) ? value : value * 100);
}

/** A price [pence a unit or day]: as the heading or the signs say, else in pounds where it is below `pounds`. */
export function priceOf(
  column: ColumnFacts | undefined,
  value: number | undefined,
  pounds: number,
): number | undefined {
  if (value === undefined || column === undefined) return undefined;
  const isPounds = inPence(column) ? false : inPounds(column) || column.largest < pounds;
  return isPounds ? Number((value * 100).toFixed(6)) : value;
}

/** Whether a standing charge without words for it is for a day: below £3, or the same in every row. */
export function settleStanding(
  column: ColumnFacts | undefined,
  hasPrice: boolean,
  { sheet, context, book }: Pick<ShapeInput, 'sheet' | 'context' | 'book'>,
): 'price' | 'charge' | undefined {
  if (!column) return undefined;
  if (hasPrice) return 'charge';
  const isPrice = column.largest < 3 || (column.smallest === column.largest && !inPounds(column));
  const [main, hundredth] = UNITS_OF[moneyOfColumn(sheet, column, context)];
  book.add('standing-taken', 'note', {
    column: columnName(sheet, column.index),
    expectedTold: isPrice
      ? tell('money-a-day', { unit: column.largest < 3 ? main : hundredth })
      : tell('money-for-the-bill', { unit: main }),
  });
  return isPrice ? 'price' : 'charge';
}

/** Whether VAT stands there as a share; undefined where there is no such column. */
export function vatShare(column: ColumnFacts | undefined): boolean | undefined {
  if (!column) return undefined;
  const isRate = (value: number) => [0, 0.05, 0.2, 5, 17.5, 20].includes(value);
  return column.money === 0 && isRate(column.smallest) && isRate(column.largest);
}

/** What a quantity times its rate comes to is money, whatever stands above it. */
import { cellText, type Table } from '../text/table.ts';
import { type ColumnFacts, isMoneyColumn, isNumberColumn, numberEitherWay } from './column-facts.ts';

const LEAST_ROWS = 3;
/** Rows that hold all three and agree. A judgement. */
const MOST = 0.95;
/** Rates in pounds or pence. */
const PARTS = [1, 100];
/** Money is printed to a hundredth, what it is made of to fewer figures than were reckoned with. */
const isClose = (product: number, money: number): boolean =>
  Math.abs(product - money) <= 0.011 + 0.005 * Math.abs(money);

export function nameProducts(table: Table, rows: readonly number[], columns: readonly ColumnFacts[]): ColumnFacts[] {
  const rates = columns.filter((c) => c.meaning.role === 'rate' && isNumberColumn(c));
  if (rates.length === 0) return [...columns];
  const numbersOf = ({ index }: ColumnFacts) => rows.map((row) => numberEitherWay(cellText(table, row, index)));
  const amounts = columns.filter(
    (c) => isNumberColumn(c) && !isMoneyColumn(c) && (c.meaning.role === 'value' || c.meaning.role === 'unknown'),
  );
  return columns.map((c): ColumnFacts => {
    if (!amounts.includes(c) || c.meaning.unit !== undefined || c.meaning.carrier !== undefined) return c;
    const money = numbersOf(c);
    const isProduct = amounts.some((amount) => {
      if (amount === c) return false;
      const quantities = numbersOf(amount);
      return rates.some((rate) => {
        const prices = numbersOf(rate);
        return PARTS.some((parts) => {
          const whole = money.flatMap((sum, i) => {
            const product = (quantities[i]! * prices[i]!) / parts;
            return Number.isNaN(sum + product) || sum === 0 || prices[i] === parts ? [] : [isClose(product, sum)];
          });
          return whole.length >= LEAST_ROWS && whole.filter(Boolean).length >= MOST * whole.length;
        });
      });
    });
    return isProduct ? { ...c, meaning: { role: 'cost' } } : c;
  });
}

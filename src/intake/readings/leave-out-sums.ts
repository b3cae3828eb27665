/** A record that is the sum of the others of its kind, as a register of all rates beside those of each, is one use again. */
import type { Series } from '../../model/shapes/evidence.ts';
import { listNames, type RemarkBook } from '../terms/remark-book.ts';

/** Registers are printed to a tenth or a thousandth each. A judgement. */
const CLOSE = 0.002;

const isClose = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.05, Math.abs(b) * CLOSE);

/** Amounts by day or period, in order. */
const partsOf = ({ days, periods }: Series): readonly (number | null)[] =>
  days ? days.values : (periods ?? []).map(({ kWh }) => kWh);

function isSumOf(whole: Series, others: readonly Series[]): boolean {
  if (
    !isClose(
      others.reduce((sum, one) => sum + one.total, 0),
      whole.total,
    )
  )
    return false;
  const parts = others.map(partsOf);
  return partsOf(whole).every((amount, i) => {
    const sum = parts.reduce((all, one) => all + (one[i] ?? Number.NaN), 0);
    return amount === null || Number.isNaN(sum) || isClose(sum, amount);
  });
}

/** The ids of such sums, with a remark for each. */
export function sumsAmong(series: readonly Series[], book: RemarkBook): ReadonlySet<string> {
  const sums = new Set<string>();
  const kinds = Map.groupBy(series, (one) => `${one.carrier} ${one.role} ${one.resolution} ${one.from} ${one.to}`);
  for (const kind of kinds.values()) {
    const whole = kind.find(
      (one) =>
        one.total > 0 &&
        kind.length > 2 &&
        isSumOf(
          one,
          kind.filter((other) => other !== one),
        ),
    );
    if (!whole) continue;
    sums.add(whole.id);
    const others = kind.filter((one) => one !== whole).map(({ name }) => name);
    book.add('sum-left-out', 'note', { column: whole.name, found: listNames(others) });
  }
  return sums;
}

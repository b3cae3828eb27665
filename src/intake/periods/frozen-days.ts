/** Runs of the same daily value: a meter that stood still, or a supply that was off. */
import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import { tellAmount } from '../readings/screen-values.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

/** Daily values have three decimals or none; five whole numbers alike by chance are rare. Common practice, no source. */
const FROZEN_DAYS = 5;
/** A house with its supply on uses some electricity every day. */
const ZERO_DAYS = 2;

/** Not for counters: one that rises evenly does not stand still. */
export function remarkFrozenDays({ carrier, role, days, total, present, filled }: Series, book: RemarkBook): void {
  if (!days || isTemperature(carrier) || carrier === 'water') return;
  const zeroMatters = carrier === 'electricity' && role === 'import';
  const likelyKWh = (total - (filled ?? []).reduce((sum, { kWh }) => sum + kWh, 0)) / present;
  const { values } = days;
  const first = toDayNumber(days.first);
  for (let from = 0; from < values.length; ) {
    const value = values[from]!;
    let to = from + 1;
    while (to < values.length && values[to] === value) to++;
    const count = to - from;
    const isOdd = value === 0 ? zeroMatters && count >= ZERO_DAYS : value !== null && count >= FROZEN_DAYS;
    if (isOdd) {
      book.tally(value === 0 ? 'zero-run' : 'frozen', 'note', {
        from: toCivilDate(first + from),
        to: toCivilDate(first + to - 1),
        foundTold: tellAmount(value),
        count,
        effectKWh: Math.round(count * (value === 0 ? likelyKWh : value) * 10) / 10,
      });
    }
    from = to;
  }
}

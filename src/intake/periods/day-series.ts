/** Values by civil day as a series: energies as they are, temperatures as means. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { isTemperature, type Series } from '../../model/shapes/evidence.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import { remarkFilled } from '../readings/remark-filled.ts';
import { refuseDoubled } from '../readings/screen-values.ts';
import type { IntakeChoices } from '../terms/choices.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import { remarkGapsIn } from '../terms/remark-gaps.ts';
import { fillDays } from './fill-days.ts';

export interface DayValue {
  readonly day: number;
  /** kWh or °C; NaN where missing. */
  readonly value: number;
  readonly line: number;
  readonly estimated?: boolean;
}

export function daySeries(
  id: string,
  name: string,
  quantity: Quantity,
  values: readonly DayValue[],
  /** Rows that are marked as estimated, where the values do not say it themselves. */
  marked: number,
  book: RemarkBook,
  fill: IntakeChoices['fill'] = 'none',
): Series | undefined {
  const inDegrees = isTemperature(quantity.carrier);
  const byDay = new Map<number, number>();
  let doubled = 0;
  const estimated = new Set<number>();
  for (const { day, value, line, estimated: isEstimated } of values) {
    if (Number.isNaN(value)) continue;
    const known = byDay.get(day);
    if (known === value) book.tally('duplicate-same', 'note', { row: line, from: toCivilDate(day), count: 1 });
    else if (known !== undefined) {
      doubled++;
      book.tally('duplicate-different', 'note', {
        row: line,
        from: toCivilDate(day),
        count: 1,
        ...(inDegrees ? {} : { effectKWh: value - known }),
      });
    }
    byDay.set(day, value);
    if (isEstimated) estimated.add(day);
    else estimated.delete(day);
  }
  if (byDay.size === 0) return undefined;
  refuseDoubled(doubled, byDay.size, values[0]!.line, name, book);
  const days = [...byDay.keys()].sort((a, b) => a - b);
  const first = days[0]!;
  const last = days.at(-1)!;
  const asRead = Array.from({ length: last - first + 1 }, (_, i) => byDay.get(first + i) ?? null);
  const sum = days.reduce((total, day) => total + byDay.get(day)!, 0);
  remarkMissingDays(days, inDegrees ? Number.NaN : sum / days.length, book);
  const estimatedCount = Math.max(marked, estimated.size);
  if (estimatedCount > 0)
    book.add('estimated', 'note', { count: estimatedCount, ...estimatedSpan(estimated, byDay, inDegrees) });
  const filling = fill === 'none' || inDegrees ? undefined : fillDays(asRead, first);
  if (filling) remarkFilled(filling.filled, filling.left, book);
  const list = filling?.values ?? asRead;
  const filled = filling?.filled ?? [];
  const filledKWh = filled.reduce((total, { kWh }) => total + kWh, 0);
  return {
    id,
    evidenceId: '',
    name,
    carrier: quantity.carrier,
    role: quantity.role,
    resolution: 'day',
    from: toCivilDate(first),
    to: toCivilDate(last + 1),
    total: inDegrees ? sum / days.length : sum + filledKWh,
    days: { first: toCivilDate(first), values: list },
    present: days.length,
    expected: list.length,
    estimatedCount: estimatedCount + filled.length,
    ...(filled.length > 0 ? { filled } : {}),
  };
}

function estimatedSpan(estimated: ReadonlySet<number>, byDay: ReadonlyMap<number, number>, inDegrees: boolean) {
  if (estimated.size === 0) return {};
  const days = [...estimated].sort((a, b) => a - b);
  const kWh = days.reduce((sum, day) => sum + byDay.get(day)!, 0);
  const span = { from: toCivilDate(days[0]!), to: toCivilDate(days.at(-1)!) };
  return inDegrees ? span : { ...span, effectKWh: Math.round(kWh * 10) / 10 };
}

function remarkMissingDays(days: readonly number[], meanKWh: number, book: RemarkBook): void {
  const gaps = days.slice(1).flatMap((day, i) => {
    const count = day - days[i]! - 1;
    return count > 0 ? [{ from: toCivilDate(days[i]! + 1), to: toCivilDate(day - 1), count }] : [];
  });
  remarkGapsIn(gaps, meanKWh, book);
}

export const dayPicture = (series: Series): { at: string; value: number | null }[] =>
  (series.days?.values ?? []).slice(0, 7).map((value, i) => ({
    at: `${toCivilDate(Math.round(Date.parse(series.days!.first) / 86_400_000) + i)}T00:00`,
    value,
  }));

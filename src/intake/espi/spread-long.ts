/** Readings of another length than the rest brought onto its steps: long ones shared out, short ones of one step summed. */
import { tell } from '../../model/shapes/told.ts';
import type { RemarkBook } from '../terms/remark-book.ts';
import type { SpanReading } from './clean-readings.ts';

/** No more steps than this come of one reading; beyond it the length is a slip. */
const MOST_STEPS = 96;

export function spreadOverSlots(readings: readonly SpanReading[], seconds: number, book: RemarkBook): SpanReading[] {
  const out: SpanReading[] = [];
  const short = new Map<number, SpanReading>();
  const repeats = new Set<string>();
  readings.forEach((r, i) => {
    if (r.duration === seconds) {
      out.push(r);
      return;
    }
    if (r.duration < seconds) {
      const key = `${r.start} ${r.duration} ${r.value}`;
      if (repeats.has(key)) {
        book.tally('duplicate-same', 'note', { row: r.line, count: 1 });
        return;
      }
      repeats.add(key);
      const slot = Math.floor(r.start / seconds) * seconds;
      const known = short.get(slot);
      short.set(slot, {
        ...r,
        start: slot,
        duration: seconds,
        value: r.value + (known?.value ?? 0),
        estimated: r.estimated || (known?.estimated ?? false),
      });
      return;
    }
    // At a clock change a length of two steps may overlap the next reading; then the length is what is wrong.
    const next =
      readings.slice(i + 1, i + 200).find((later) => later.start > r.start)?.start ?? Number.POSITIVE_INFINITY;
    const steps = Math.max(
      1,
      Math.min(Math.round(r.duration / seconds), Math.floor((next - r.start) / seconds), MOST_STEPS),
    );
    book.tally('espi-long-reading', 'note', {
      row: r.line,
      foundTold: tell('so-many-minutes', { minutes: Math.round(r.duration / 60) }),
      expectedTold: tell('so-many-minutes', { minutes: Math.round(seconds / 60) }),
      count: steps,
    });
    for (let s = 0; s < steps; s++)
      out.push({ ...r, start: r.start + s * seconds, duration: seconds, value: r.value / steps, cost: r.cost / steps });
  });
  return [...out, ...short.values()].sort((a, b) => a.start - b.start);
}

/** A feed often gives one meter's use by the hour and again by the day; the same energy must not count twice. */
import type { RemarkBook } from '../terms/remark-book.ts';
import type { RecordInput } from './build-record.ts';
import { commonestDuration } from './clean-readings.ts';

/** Leaves out a record whose span lies within that of a finer one of the same meter and direction. */
export function dropCoarser<T extends RecordInput & { readonly meter: string }>(
  records: readonly T[],
  book: RemarkBook,
): T[] {
  const spans = records.map(({ readings }) => {
    const seconds = commonestDuration(readings) ?? 0;
    const last = readings.at(-1)!;
    return { seconds, from: readings[0]!.start, to: last.start + last.duration };
  });
  return records.filter((record, i) => {
    const own = spans[i]!;
    const finer = records.findIndex((other, j) => {
      const span = spans[j]!;
      return (
        i !== j &&
        other.meter === record.meter &&
        other.quantity.carrier === record.quantity.carrier &&
        other.quantity.role === record.quantity.role &&
        span.seconds > 0 &&
        span.seconds < own.seconds &&
        span.from <= own.from + own.seconds &&
        span.to >= own.to - own.seconds
      );
    });
    if (finer >= 0) book.tally('espi-coarser', 'note', { column: record.name, found: records[finer]!.name });
    return finer < 0;
  });
}

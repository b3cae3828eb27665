/** What has nothing in any night and its middle about noon is rather made by panels than bought. */
import type { RemarkBook } from '../terms/remark-book.ts';
import type { Placed } from './place-readings.ts';

/** Fewer days may be those of somebody who was away. A judgement. */
const LEAST_DAYS = 10;
/** Hours of the local clock between which no sun shines where people heat. */
const NIGHT = { from: 22, to: 3 } as const;
/** Middle of what panels make in a day, on a clock with or without summer time. */
const NOON = { earliest: 11, latest: 14.5 } as const;

/** Asks which way electricity goes of which neither its words nor a person said it. */
export function remarkDarkNights({ days, intervalMinutes }: Placed, column: string, book: RemarkBook): void {
  // Of longer readings none is of the night alone.
  if (intervalMinutes > 240) return;
  let [total, moment, bright] = [0, 0, 0];
  for (const { values } of days) {
    let ofDay = 0;
    for (let s = 0; s < values.length; s++) {
      const value = values[s]!;
      if (!(value > 0)) continue;
      const hour = ((s + 0.5) * 24) / values.length;
      if (hour >= NIGHT.from || hour < NIGHT.to) return;
      ofDay += value;
      moment += value * hour;
    }
    if (ofDay > 0) bright++;
    total += ofDay;
  }
  const middle = moment / total;
  if (bright >= LEAST_DAYS && middle >= NOON.earliest && middle <= NOON.latest)
    book.add('made-by-day-asked', 'question', { column });
}

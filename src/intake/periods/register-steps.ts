/** Differences of a cumulative register: never negative, with rollover and exchange of the meter told apart. */
import { tell } from '../../model/shapes/told.ts';
import { leaps, rangeOf, turnsOver } from '../layout/column-facts.ts';
import { ROWS_A_STEP } from '../terms/progress.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

export interface RegisterStep {
  /** Index into the readings, of the earlier and the later one. */
  readonly before: number;
  readonly after: number;
  /** In the register's unit; NaN where the meter was exchanged between, or at that moment. */
  readonly used: number;
}

/** Where the readings stand, for what is remarked of them. */
export interface RegisterPlaces {
  readonly lineOf: (index: number) => number;
  readonly dayOf: (index: number) => string;
  /** Any measure of time: two readings of one moment are the old meter's last and the new one's first. */
  readonly timeOf: (index: number) => number;
  /** Whether a reading was estimated, and whether a note beside it tells of a new meter. */
  readonly isEstimated?: (index: number) => boolean;
  readonly tellsOfExchange?: (index: number) => boolean;
  /** Whether a reading is the first after the counter began anew, as it does each year. */
  readonly beginsAnew?: (index: number) => boolean;
  readonly onStep?: () => void;
}

/** Another meter begins below so much of the last reading of the one before. A judgement. */
const BEGINS_ANEW = 0.5;

/** What a counter turns over by is at most so many times the fastest that it ever rose; rises enough to tell. Judgements. */
const MOST_OF_RATE = 2;
const LEAST_RATES = 4;

/** @param order indices of the readings in order of time */
export function registerSteps(
  order: readonly number[],
  readings: Float64Array,
  { lineOf, dayOf, timeOf, isEstimated, tellsOfExchange, beginsAnew, onStep }: RegisterPlaces,
  book: RemarkBook,
): RegisterStep[] {
  const steps: RegisterStep[] = [];
  let before: number | undefined;
  let fallen: number | undefined;
  for (const [place, after] of order.entries()) {
    if (place % ROWS_A_STEP === 0) onStep?.();
    if (Number.isNaN(readings[after]!)) continue;
    if (before !== undefined && isLapse(place, readings[before]!)) {
      book.tally('counter-noughts', 'note', { row: lineOf(after), from: dayOf(after) });
      continue;
    }
    if (before !== undefined && isSlip(place, before)) {
      book.tally('register-slip', 'note', {
        row: lineOf(after),
        foundTold: tell('first-then', { first: readings[before]!, next: readings[after]! }),
        from: dayOf(after),
      });
      continue;
    }
    // An estimate above the reading that follows was too high: the use is that of both times together.
    while (before !== undefined && readings[after]! < readings[before]! && isEstimated?.(before) && isAbove(after)) {
      const last = steps.pop()!;
      book.tally('estimated-merged', 'note', {
        row: lineOf(before),
        from: dayOf(last.before),
        to: dayOf(after),
        effectKWh: readings[after]! - readings[last.before]!,
      });
      before = last.before;
    }
    if (before !== undefined && isPeak(place, before)) {
      book.tally('register-peak', 'note', {
        row: lineOf(before),
        foundTold: tell('first-then', { first: readings[before]!, next: readings[after]! }),
        from: dayOf(before),
      });
      before = steps.pop()!.before;
    }
    if (before !== undefined) steps.push({ before, after, used: difference(before, after) });
    before = after;
  }
  return steps;

  /** Whether the reading before the last one is below this one. */
  function isAbove(after: number): boolean {
    const last = steps.at(-1);
    return last !== undefined && readings[last.before]! <= readings[after]!;
  }

  /** Nought after which the counter goes on from where it was: the reading failed, the meter did not begin anew. */
  function isLapse(place: number, last: number): boolean {
    if (last <= 0 || readings[order[place]!] !== 0) return false;
    const next = order.slice(place).find((at) => readings[at]! > 0);
    return next !== undefined && readings[next]! >= last;
  }

  /** A fall by a little after which the counter is above where it was again: a digit too few, and no meter that began anew. */
  function isSlip(place: number, before: number): boolean {
    const [last, fallen] = [readings[before]!, readings[order[place]!]!];
    if (!(fallen < last && fallen > last * BEGINS_ANEW) || timeOf(before) === timeOf(order[place]!)) return false;
    if ([before, order[place]!].some((at) => tellsOfExchange?.(at) || isEstimated?.(at))) return false;
    const next = order.slice(place + 1).find((at) => !Number.isNaN(readings[at]!));
    return next !== undefined && readings[next]! >= last;
  }

  /**
   * A reading above all that follow it, though below them without it: a digit too many, or a mark of none, and no meter
   * that began anew. One that runs backwards falls more often.
   */
  function isPeak(place: number, before: number): boolean {
    const after = order[place]!;
    const [last, fallen] = [readings[before]!, readings[after]!];
    if (!(fallen < last && isAbove(after))) return false;
    const isLeap = leaps(readings[steps.at(-1)!.before]!, last);
    if (!isLeap && fallen <= last * BEGINS_ANEW) return false;
    if (timeOf(before) === timeOf(after) || [before, after].some((at) => tellsOfExchange?.(at))) return false;
    const next = order.slice(place + 1).find((at) => !Number.isNaN(readings[at]!));
    return next !== undefined && readings[next]! < last && (isLeap || falls() === 1);
  }

  /** The most that the counter rose by in a unit of time; without limit where too few rises tell. */
  function fastest(): number {
    const read = order.filter((at) => !Number.isNaN(readings[at]!));
    const rates = read.slice(1).flatMap((at, i) => {
      const rise = readings[at]! - readings[read[i]!]!;
      return rise > 0 && timeOf(at) > timeOf(read[i]!) ? [rise / (timeOf(at) - timeOf(read[i]!))] : [];
    });
    return rates.length < LEAST_RATES ? Number.POSITIVE_INFINITY : Math.max(...rates);
  }

  function falls(): number {
    const read = order.map((at) => readings[at]!).filter((reading) => !Number.isNaN(reading));
    fallen ??= read.filter((reading, i) => i > 0 && reading < read[i - 1]!).length;
    return fallen;
  }

  function difference(from: number, to: number): number {
    const low = readings[from]!;
    const high = readings[to]!;
    if (high >= low) return high - low;
    if (beginsAnew?.(to)) return Number.NaN;
    const where = {
      row: lineOf(to),
      foundTold: tell('first-then', { first: low, next: high }),
      from: dayOf(from),
      to: dayOf(to),
    };
    if (timeOf(from) === timeOf(to)) {
      book.tally('register-exchange-read', 'note', where);
      return Number.NaN;
    }
    // A register turns over from just below a power of ten to just above nought; any other fall is another meter.
    const range = rangeOf(low);
    const isUsual = () => (high + range - low) / (timeOf(to) - timeOf(from)) <= MOST_OF_RATE * fastest();
    const last = steps.at(-1);
    const before = last && readings[last.before];
    if (turnsOver(low, high, before) && !tellsOfExchange?.(from) && !tellsOfExchange?.(to) && isUsual()) {
      book.tally('register-rollover', 'note', { ...where, expected: String(range), effectKWh: high + range - low });
      return high + range - low;
    }
    book.tally('register-exchange', 'note', where);
    return Number.NaN;
  }
}

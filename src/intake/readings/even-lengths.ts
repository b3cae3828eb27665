/** A record whose readings change their length, as where a network goes from hours to quarter-hours: all of the longer one. */
import { meanOf } from '../../model/units/sums.ts';
import { isIntervalLength } from '../dates/interval.ts';
import type { StampSide } from './stamp-side.ts';

interface Stamped {
  readonly civil: Float64Array;
  readonly offsets: Float64Array | null;
  readonly count: number;
  readonly newestFirst: boolean;
}

/** Stretches of the two lengths in turn, in order of time. */
export interface Lengths {
  readonly shorter: number;
  readonly longer: number;
  /** Readings from the oldest to the newest, by their place in the file, and the length of each in minutes. */
  readonly order: readonly number[];
  readonly length: Float64Array;
}

/** Fewer readings of a length are gaps or slips, and so are lengths that change more often. Judgements. */
const LEAST_READINGS = 48;
const MOST_CHANGES = 6;

/** Undefined where readings have one length, or two that are mixed. @param side which end stamps name, as far as known */
export function lengthsOf(stamped: Stamped, side: StampSide): Lengths | undefined {
  const often = commonSteps(stamped);
  if (often.length !== 2) return undefined;
  const { civil, offsets, count, newestFirst } = stamped;
  const time = (i: number) => civil[i]! - (offsets?.[i] || 0);
  const [shorter, longer] = often.toSorted((a, b) => a - b) as [number, number];
  if (!isIntervalLength(shorter) || !isIntervalLength(longer) || longer % shorter !== 0 || longer > 60)
    return undefined;
  const order = Array.from({ length: count }, (_, n) => (newestFirst ? count - 1 - n : n));
  const at = (n: number) => time(order[n]!);
  const length = new Float64Array(count);
  let changes = 0;
  // A reading reaches to the next, or back to the one before; one beside a gap is as long as its neighbour.
  for (let k = 0; k < count; k++) {
    const n = side === 'start' ? count - 1 - k : k;
    const beside = side === 'start' ? n + 1 : n - 1;
    const step = beside < 0 || beside >= count ? Number.NaN : Math.abs(at(beside) - at(n));
    const isOne = step === shorter || step === longer;
    length[n] = isOne ? step : k === 0 ? Number.NaN : length[beside]!;
    if (k > 0 && !Number.isNaN(length[beside]!) && length[n] !== length[beside]) changes++;
  }
  const edge = side === 'start' ? count - 1 : 0;
  if (Number.isNaN(length[edge]!)) length[edge] = length[side === 'start' ? count - 2 : 1]!;
  return changes <= MOST_CHANGES ? { shorter, longer, order, length } : undefined;
}

/** Distances of neighbours in the file that come often; most files have one, so that they are gone through quickly. */
function commonSteps({ civil, offsets, count }: Stamped): number[] {
  const times = new Map<number, number>();
  let last = Number.NaN;
  let run = 0;
  let before = Number.NaN;
  for (let i = 0; i <= count; i++) {
    const now = i === count ? Number.NaN : offsets ? civil[i]! - (offsets[i]! || 0) : civil[i]!;
    const step = Math.abs(now - before);
    before = now;
    if (step === last) {
      run++;
      continue;
    }
    if (run > 0) times.set(last, (times.get(last) ?? 0) + run);
    last = step;
    run = 1;
  }
  return [...times].flatMap(([step, seen]) => (step > 0 && seen >= LEAST_READINGS ? [step] : []));
}

/** Hours hold more energy than their quarters do; hours of quarters that are missing do not. */
export function areAmounts({ shorter, longer, order, length }: Lengths, values: Float64Array): boolean {
  const mean = (minutes: number) => {
    const own = order.flatMap((i, n) => (length[n] === minutes && !Number.isNaN(values[i]!) ? [values[i]!] : []));
    return meanOf(own);
  };
  return mean(longer) > mean(shorter) * Math.sqrt(longer / shorter);
}

/** The readings of the file that make each of the longer length, whole ones only, in order of time. */
export function groupsOf(
  { shorter, longer, order, length }: Lengths,
  civil: Float64Array,
  side: StampSide,
): number[][] {
  const groups: number[][] = [];
  let open: number[] = [];
  order.forEach((i, n) => {
    if (length[n] === longer) {
      groups.push([i]);
      return;
    }
    const last = open.at(-1);
    // The clocks may change between two quarters.
    const step = last === undefined ? 0 : Math.abs(civil[i]! - civil[last]! - shorter);
    if (step !== 0 && step !== 60) open = [];
    const begin = civil[i]! - (side === 'end' ? shorter : 0);
    if (open.length > 0 || begin % longer === 0) open.push(i);
    if (open.length < longer / shorter) return;
    groups.push(open);
    open = [];
  });
  return groups;
}

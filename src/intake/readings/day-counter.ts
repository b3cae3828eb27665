/** A counter that begins at nought each midnight, under the name of an amount: "today's use", written every hour. */

/** Nine steps of ten alike, as in a made example: no home uses so. */
function isEven(values: Float64Array, fell: ReadonlySet<number>, count: number): boolean {
  const steps: number[] = [];
  for (let i = 1; i < count; i++)
    if (!fell.has(i) && values[i]! > values[i - 1]!) steps.push(values[i]! - values[i - 1]!);
  const middle = steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 0;
  return steps.filter((step) => Math.abs(step - middle) < middle * 1e-6).length >= steps.length * 0.9;
}

function risesOf(values: Float64Array, count: number): number {
  let rises = 0;
  for (let i = 1; i < count; i++) if (values[i]! > values[i - 1]!) rises++;
  return rises;
}

/** Fewer days or readings a day are no pattern. A judgement. */
const LEAST_DAYS = 5;
const LEAST_A_DAY = 12;
/** Of the readings of a day so many rise: what is sent out between dawn and the end of a night rate rises a few times only. A judgement. */
const LEAST_RISES = 0.3;
/** What the first reading of a day shows of the mean step. A judgement. */
const MOST_STEPS = 3;

/**
 * What was used in each reading, or undefined for other columns. Readings that fall at one time of day, once a day, and
 * never else, count the day. Where nought stands at the fall, each counts what came before it: the use of the last
 * reading of the day is then not known.
 * @param civil minutes of each reading, in the order of the file
 */
export function usedSinceMidnight(values: Float64Array, civil: Float64Array, count: number): Float64Array | undefined {
  const falls: number[] = [];
  for (let i = 1; i < count; i++) {
    if (civil[i]! <= civil[i - 1]!) continue;
    if (values[i]! < values[i - 1]!) falls.push(i);
  }
  const days = count > 0 ? (civil[count - 1]! - civil[0]!) / 1440 : 0;
  const isDaily = falls.length >= LEAST_DAYS && Math.abs(falls.length - days) <= 1 + days * 0.05;
  if (!isDaily || count < days * LEAST_A_DAY) return undefined;
  const times = Map.groupBy(falls, (i) => civil[i]! % 1440);
  const most = Math.max(...[...times.values()].map((at) => at.length));
  if (most < falls.length * 0.9) return undefined;
  const fell = new Set(falls);
  if (isEven(values, fell, count) || risesOf(values, count) < count * LEAST_RISES) return undefined;
  // A use that only rises in the day falls by less than to a single step.
  const fallenTo = falls.reduce((sum, i) => sum + values[i]!, 0) / falls.length;
  const risen = falls.reduce((sum, i) => sum + values[i - 1]! - values[i]!, 0) / falls.length;
  if (fallenTo > (MOST_STEPS * risen) / (count / days)) return undefined;
  const isFromNought = falls.every((i) => values[i] === 0);
  const at = isFromNought ? -1 : 0;
  const used = new Float64Array(values.length).fill(Number.NaN);
  for (let i = 1; i < count; i++) {
    if (fell.has(i)) {
      if (!isFromNought) used[i] = values[i]!;
    } else used[i + at] = values[i]! - values[i - 1]!;
  }
  return used;
}

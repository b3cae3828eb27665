/** A daily figure with what follows the cold taken out of it. */
import { fitSignature } from '../demand/signature.ts';
import type { SignatureData } from '../demand/signature-data.ts';

export interface ColdLine {
  readonly intercept: number;
  /** Units a degree below the base. */
  readonly slope: number;
  /** Degrees below the base, one a day, K. */
  readonly below: Float64Array;
}

/** Base temperature and line of a daily use through its outdoor temperatures (`fitSignature`), for days that are all known. */
export function coldLine(perDay: ArrayLike<number>, outdoorC: ArrayLike<number>): ColdLine {
  const n = perDay.length;
  const data: SignatureData = {
    first: Int32Array.from({ length: n }, (_, i) => i),
    days: new Float64Array(n).fill(1),
    perDayKWh: Float64Array.from(perDay),
    outdoorC: Float64Array.from(outdoorC),
    start: Uint32Array.from({ length: n + 1 }, (_, i) => i),
  };
  const { baseC, line } = fitSignature(data);
  const below = Float64Array.from({ length: n }, (_, i) => Math.max(0, baseC - outdoorC[i]!));
  return { intercept: line.intercept, slope: line.slope, below };
}

/** Prices that all differ, sorted into a few classes that can be named and shown. */
import { type Told, tell } from '../shapes/told.ts';

/** Widths of a class [pence/kWh]; the narrowest that gives no more than `MOST_CLASSES` is taken. Prices of ±£15 fit the last. */
const WIDTHS: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200, 500];
const MOST_CLASSES = 8;

export interface PriceClasses {
  /** "10 to 15 p", from cheap to dear; classes without a half-hour are left out. */
  readonly names: readonly Told[];
  /** Plain mean of the half-hours in each class. */
  readonly pencePerKWh: readonly number[];
  readonly bucketOfSlot: Uint8Array;
}

/** Sorts the half-hours into classes of price [pence/kWh]. */
export function sortIntoClasses(penceOfSlot: ArrayLike<number>): PriceClasses {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let slot = 0; slot < penceOfSlot.length; slot++) {
    low = Math.min(low, penceOfSlot[slot]!);
    high = Math.max(high, penceOfSlot[slot]!);
  }
  const classesAt = (width: number) => Math.floor(high / width) - Math.floor(low / width) + 1;
  const width = WIDTHS.find((one) => classesAt(one) <= MOST_CLASSES)!;
  const lowest = Math.floor(low / width);
  const counts = new Float64Array(classesAt(width));
  const sums = new Float64Array(counts.length);
  for (let slot = 0; slot < penceOfSlot.length; slot++) {
    const at = Math.floor(penceOfSlot[slot]! / width) - lowest;
    counts[at]! += 1;
    sums[at]! += penceOfSlot[slot]!;
  }
  const filled = [...counts.keys()].filter((at) => counts[at]! > 0);
  const placeOf = new Uint8Array(counts.length);
  filled.forEach((at, place) => {
    placeOf[at] = place;
  });
  const bucketOfSlot = new Uint8Array(penceOfSlot.length);
  for (let slot = 0; slot < penceOfSlot.length; slot++) {
    bucketOfSlot[slot] = placeOf[Math.floor(penceOfSlot[slot]! / width) - lowest]!;
  }
  return {
    names: filled.map((at) => tell('pence-between', { low: (lowest + at) * width, high: (lowest + at + 1) * width })),
    pencePerKWh: filled.map((at) => sums[at]! / counts[at]!),
    bucketOfSlot,
  };
}

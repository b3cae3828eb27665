/** Sums and means of plain numbers, in the order of the list. */

export function sumOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum;
}

/** Of none it is no number. */
export const meanOf = (values: ArrayLike<number>): number => sumOf(values) / values.length;

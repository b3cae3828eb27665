/** Splits a difference exactly among the things that changed. */

const MOST_FACTORS = 12;

/**
 * Shapley value of each factor of a cost [unit of the cost]: the mean, over every order in which the factors can be
 * switched from estimated to actual, of the change that switching this one makes.
 * part[k] = Σ over sets S without k of |S|! (n − |S| − 1)! / n! × (C(S with k) − C(S)). The parts sum to
 * C(all actual) − C(all estimated). Up to 12 factors; 2^n evaluations of the cost.
 * Source: L. S. Shapley, A Value for n-Person Games (1953).
 */
export function shapley(
  estimated: readonly number[],
  actual: readonly number[],
  cost: (values: readonly number[]) => number,
): number[] {
  const count = estimated.length;
  if (count !== actual.length) throw new RangeError('estimated and actual differ in length');
  if (count > MOST_FACTORS) throw new RangeError(`at most ${MOST_FACTORS} factors, not ${count}`);
  const costs = costOfSets(estimated, actual, cost);
  const weights = weightBySize(count);
  const sizes = sizesOfSets(costs.length);
  const parts = new Array<number>(count).fill(0);
  for (let k = 0; k < count; k++) {
    const bit = 1 << k;
    let part = 0;
    for (let set = 0; set < costs.length; set++) {
      if ((set & bit) === 0) part += weights[sizes[set]!]! * (costs[set | bit]! - costs[set]!);
    }
    parts[k] = part;
  }
  return parts;
}

function costOfSets(
  estimated: readonly number[],
  actual: readonly number[],
  cost: (values: readonly number[]) => number,
): Float64Array {
  const costs = new Float64Array(1 << estimated.length);
  const values = [...estimated];
  for (let set = 0; set < costs.length; set++) {
    for (let k = 0; k < values.length; k++) values[k] = set & (1 << k) ? actual[k]! : estimated[k]!;
    costs[set] = cost(values);
  }
  return costs;
}

/** |S|! (n − |S| − 1)! / n! for each size of S. */
function weightBySize(count: number): number[] {
  const factorial = [1];
  for (let i = 1; i <= count; i++) factorial.push(factorial[i - 1]! * i);
  return Array.from(
    { length: count },
    (_, size) => (factorial[size]! * factorial[count - size - 1]!) / factorial[count]!,
  );
}

function sizesOfSets(count: number): Uint8Array {
  const sizes = new Uint8Array(count);
  for (let set = 1; set < count; set++) sizes[set] = sizes[set >> 1]! + (set & 1);
  return sizes;
}

/**
 * Rounds the parts of a sum to whole pence so that they still sum to `totalPence` [pence].
 * Each part is rounded down and the pennies left over go to those that lost most by it (largest remainder), so no part
 * moves by a penny or more where the parts sum to the total before rounding. `totalPence` is a whole number.
 */
export function pennyParts(parts: readonly number[], totalPence: number): number[] {
  if (!Number.isInteger(totalPence)) throw new RangeError(`${totalPence} is not a whole number of pence`);
  if (parts.length === 0) return [];
  const whole = parts.map(Math.floor);
  const left = totalPence - whole.reduce((sum, pence) => sum + pence, 0);
  const byLoss = parts.map((part, place) => ({ place, loss: part - whole[place]! })).sort((a, b) => b.loss - a.loss);
  const step = Math.sign(left);
  for (let i = 0; i < Math.abs(left); i++) {
    const order = step > 0 ? i % parts.length : parts.length - 1 - (i % parts.length);
    whole[byLoss[order]!.place]! += step;
  }
  return whole.map((pence) => pence + 0);
}

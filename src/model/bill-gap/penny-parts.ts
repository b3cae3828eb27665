/**
 * Rounds the parts of a sum to whole pence so that they still sum to `totalPence` [pence].
 * Each part is rounded down and the pennies left over go to those that lost most by it (largest remainder), so no part
 * moves by a penny or more where the parts sum to the total before rounding. `totalPence` is a whole number.
 */
export function pennyParts(parts: readonly number[], totalPence: number): number[] {
  if (!Number.isInteger(totalPence)) throw new RangeError(`${totalPence} is not a whole number of pence`);
  const whole = parts.map(Math.floor);
  const left = totalPence - whole.reduce((sum, pence) => sum + pence, 0);
  if (Math.abs(left) > parts.length) throw new RangeError(`parts that miss ${totalPence} by ${left} pence`);
  const byLoss = parts.map((part, place) => ({ place, loss: part - whole[place]! })).sort((a, b) => b.loss - a.loss);
  const step = Math.sign(left);
  for (let i = 0; i < Math.abs(left); i++) {
    whole[byLoss[step > 0 ? i : parts.length - 1 - i]!.place]! += step;
  }
  return whole.map((pence) => pence + 0);
}

/** Moves labels apart that would stand on each other, keeping their order; each stays as near as it can. */
export function spreadLabels(places: readonly number[], gap: number): number[] {
  const order = places.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  const moved = order.map((one) => one.place);
  for (let i = 1; i < moved.length; i++) moved[i] = Math.max(moved[i]!, moved[i - 1]! + gap);
  // What was pushed down is pulled back by half, so that a crowd stays centred on its marks.
  const pushed = moved.reduce((sum, place, i) => sum + place - order[i]!.place, 0) / Math.max(moved.length, 1);
  const result = new Array<number>(places.length);
  order.forEach((one, i) => {
    result[one.index] = moved[i]! - pushed;
  });
  return result;
}

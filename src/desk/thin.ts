/** Thins a line of points for a picture without losing its peaks. */
export interface Point {
  readonly at: string;
  readonly value: number | null;
}

/**
 * Keeps the lowest and the highest point of each of `most` / 2 equal slices, in order of time; a slice with
 * nothing but missing values keeps one missing point, so that a gap stays a gap.
 */
export function thin(points: readonly Point[], most: number): readonly Point[] {
  if (points.length <= most) return points;
  const slices = Math.floor(most / 2);
  const kept: Point[] = [];
  for (let slice = 0; slice < slices; slice++) {
    const from = Math.floor((slice * points.length) / slices);
    const to = Math.floor(((slice + 1) * points.length) / slices);
    let low = -1;
    let high = -1;
    for (let i = from; i < to; i++) {
      const value = points[i]!.value;
      if (value === null) continue;
      if (low < 0 || value < points[low]!.value!) low = i;
      if (high < 0 || value > points[high]!.value!) high = i;
    }
    if (low < 0) kept.push(points[from]!);
    else if (low === high) kept.push(points[low]!);
    else kept.push(points[Math.min(low, high)]!, points[Math.max(low, high)]!);
  }
  return kept;
}

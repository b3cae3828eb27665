/**
 * Thins a series to the pixels it is drawn on without losing a peak: each slice keeps its first, lowest, highest and
 * last reading in order of time, and one gap where readings are missing.
 */
export interface Reading {
  /** Minutes, on any scale that runs evenly. */
  readonly minute: number;
  readonly value: number | null;
}

const isKnown = (reading: Reading): boolean => reading.value !== null && Number.isFinite(reading.value);

/** At most five readings a slice, so `most` is at least 5. Short series come back as they are. */
export function thinReadings(readings: readonly Reading[], most: number): Reading[] {
  const slices = Math.max(1, Math.floor(most / 5));
  if (readings.length <= Math.max(most, 5)) return [...readings];
  const thinned: Reading[] = [];
  for (let slice = 0; slice < slices; slice++) {
    const from = Math.floor((slice * readings.length) / slices);
    const to = Math.floor(((slice + 1) * readings.length) / slices);
    thinned.push(...thinSlice(readings.slice(from, to)));
  }
  return thinned;
}

function thinSlice(slice: readonly Reading[]): Reading[] {
  if (slice.length === 0) return [];
  const kept = new Set<number>([0, slice.length - 1]);
  let lowest = -1;
  let highest = -1;
  slice.forEach((reading, index) => {
    if (!isKnown(reading)) return;
    if (lowest < 0 || reading.value! < slice[lowest]!.value!) lowest = index;
    if (highest < 0 || reading.value! > slice[highest]!.value!) highest = index;
  });
  if (lowest >= 0) kept.add(lowest).add(highest);
  const gap = slice.findIndex((reading) => !isKnown(reading));
  if (gap >= 0) kept.add(gap);
  return [...kept].sort((a, b) => a - b).map((index) => slice[index]!);
}

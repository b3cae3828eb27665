/** Thins the days of a signature to the pixels it is drawn on: by temperature, so that no cold or dear day is lost. */
import { thinReadings } from './thin-readings.ts';

type Points = readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];

/** Keeps the coldest and the warmest day and, of each slice between, the lowest and the highest use. */
export function thinPoints(points: Points, most: number): Points {
  if (points.length <= most) return points;
  const byTemperature = [...points]
    .sort((a, b) => a.outdoorC - b.outdoorC)
    .map(({ outdoorC, kWhPerDay }) => ({ minute: outdoorC, value: kWhPerDay }));
  return thinReadings(byTemperature, most).map(({ minute, value }) => ({ outdoorC: minute, kWhPerDay: value ?? 0 }));
}

/** How cold the days of a bill were, as far as it is known. */

import { daysBetween } from '../calendar/civil.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import type { Series } from '../shapes/evidence.ts';
import { tell, type Wording } from '../shapes/told.ts';
import type { Grade } from '../shapes/working.ts';

export interface ActualWeather {
  readonly degreeDays: number;
  readonly grade: Grade;
  readonly origin: Wording;
}

/** With fewer days than this the household's own file does not speak for the bill; common practice, no source. */
const LEAST_SHARE_KNOWN = 0.9;

/**
 * Degree days [K·day] of the bill's days to `baseC`: as typed, else from daily means of the weather series; days that
 * the series lacks, up to one in ten, take the typical year's. Null where nothing is known.
 */
export function actualWeather(
  bill: BillCheckInput,
  baseC: number,
  typicalDegreeDays: ArrayLike<number>,
  weather?: Series,
): ActualWeather | null {
  if (bill.degreeDays !== undefined) {
    return { degreeDays: bill.degreeDays, grade: 'estimated', origin: tell('typed-with-bill') };
  }
  const { days } = weather ?? {};
  if (!weather || !days) return null;
  const offset = daysBetween(days.first, bill.from);
  const count = typicalDegreeDays.length;
  let degreeDays = 0;
  let known = 0;
  for (let i = 0; i < count; i++) {
    const mean = days.values[offset + i] ?? null;
    if (mean !== null) known++;
    degreeDays += mean === null ? typicalDegreeDays[i]! : Math.max(0, baseC - mean);
  }
  if (known < LEAST_SHARE_KNOWN * count) return null;
  return { degreeDays, grade: known === count ? 'measured' : 'estimated', origin: weather.name };
}

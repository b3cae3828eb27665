/** Steps in a meter's readings: power goes up, stays, and comes down again. */
import type { MeterDays } from './meter-days.ts';

export interface Step {
  /** Place of the day in the readings, and of the first reading in that day. */
  readonly day: number;
  readonly slot: number;
  readonly slots: number;
  /** Height over what ran before and after, kW. */
  readonly powerKW: number;
  /** Largest departure of the full readings from that height, as a share. */
  readonly unevenness: number;
  /** Readings at full height; the first and the last are often cut by the clock. */
  readonly fullSlots: number;
  readonly kWh: number;
}

/** Smaller steps are lost in what else is switched in a home, kW. */
const LEAST_KW = 0.7;
const MOST_HOURS = 12;
/** A reading at this share of the height was on all through. */
const FULL_SHARE = 0.85;
/** The step is over once it has come down to this share of its height. */
const OVER_SHARE = 0.35;

/**
 * All steps of at least 0.7 kW and at most 12 hours, in order of time. The height is taken over the mean of the reading
 * before and the one after; a step cut by a missing day is left out.
 */
export function findSteps(days: MeterDays): Step[] {
  const { kWh, perDay, hours, dayNumber } = days;
  const steps: Step[] = [];
  const most = MOST_HOURS / hours;
  let i = 1;
  while (i < kWh.length - 1) {
    const before = kWh[i - 1]! / hours;
    if (kWh[i]! / hours - before < LEAST_KW * 0.35) {
      i++;
      continue;
    }
    let top = kWh[i]! / hours;
    let end = i;
    while (end + 1 < kWh.length && end - i < most) {
      const next = kWh[end + 1]! / hours;
      if (next - before < OVER_SHARE * (top - before)) break;
      top = Math.max(top, next);
      end++;
    }
    const isShort = end - i < most && end + 1 < kWh.length;
    const unbroken = dayNumber[Math.floor((end + 1) / perDay)]! - dayNumber[Math.floor((i - 1) / perDay)]! <= 1;
    const step = isShort && unbroken ? measureStep(days, i, end) : null;
    if (step) steps.push(step);
    i = step ? end + 1 : i + 1;
  }
  return steps;
}

function measureStep({ kWh, hours, perDay }: MeterDays, first: number, last: number): Step | null {
  const base = (kWh[first - 1]! + kWh[last + 1]!) / 2 / hours;
  let top = 0;
  let total = 0;
  for (let k = first; k <= last; k++) {
    const height = kWh[k]! / hours - base;
    top = Math.max(top, height);
    total += height * hours;
  }
  if (top < LEAST_KW) return null;
  let sum = 0;
  let fullSlots = 0;
  let low = top;
  for (let k = first; k <= last; k++) {
    const height = kWh[k]! / hours - base;
    if (height < FULL_SHARE * top) continue;
    sum += height;
    low = Math.min(low, height);
    fullSlots++;
  }
  const powerKW = sum / fullSlots;
  return {
    day: Math.floor(first / perDay),
    slot: first % perDay,
    slots: last - first + 1,
    powerKW,
    unevenness: Math.max(top - powerKW, powerKW - low) / powerKW,
    fullSlots,
    kWh: total,
  };
}

/** Steps in a meter's readings: power goes up, stays, and comes down again. */
import type { MeterDays } from './meter-days.ts';

export interface Step {
  /** Place of the day in the readings, and of the first reading in that day. */
  readonly day: number;
  readonly slot: number;
  readonly slots: number;
  /** Height over what ran before and after, kW. */
  readonly powerKW: number;
  /** Rise between its inner readings as a share of the height; null where it is too short to have two. */
  readonly ramp: number | null;
  readonly kWh: number;
}

/** Smaller steps are lost in what else is switched in a home, kW. */
const LEAST_KW = 0.7;
const MOST_HOURS = 12;
/** While a step lasts its readings stay within this share of its height. */
const LEVEL_SHARE = 0.2;
/** The step is over once it has come down to this share of its height. */
const OVER_SHARE = 0.35;
/** Neighbouring readings within this belong to the same state of the home, kW. */
const ALIKE_KW = 0.4;

/**
 * Steps of at least 0.7 kW and at most 12 hours, in order of time: up within two readings, level, and down within two,
 * since the clock cuts the first and the last. The height is taken over what ran just before and just after, so that a
 * step on top of another is seen as well; one cut by a missing day is left out.
 */
export function findSteps(days: MeterDays): Step[] {
  const { kWh, perDay, dayNumber } = days;
  const steps: Step[] = [];
  for (let i = 1; i < kWh.length; ) {
    const end = endOfStep(days, i);
    const dayAt = (place: number) => dayNumber[Math.floor(place / perDay)]!;
    const step = end !== null && dayAt(end + 1) - dayAt(i - 1) <= 1 ? measureStep(days, i, end) : null;
    if (step) steps.push(step);
    i = step ? end! + 1 : i + 1;
  }
  return steps;
}

/** Last reading of the step that begins at `first`; null where none begins there. Beyond the readings nothing is level nor over. */
function endOfStep({ kWh, hours }: MeterDays, first: number): number | null {
  const before = kWh[first - 1]! / hours;
  const height = (place: number) => kWh[place]! / hours - before;
  const level = Math.max(height(first), height(first + 1));
  if (level < LEAST_KW || height(first) < LEAST_KW * OVER_SHARE) return null;
  let end = height(first) < level ? first + 1 : first;
  const most = first + MOST_HOURS / hours;
  while (end < most && Math.abs(height(end + 1) / level - 1) <= LEVEL_SHARE) end++;
  if (height(end + 1) > level * (1 + LEVEL_SHARE)) return null;
  // One reading more may be the cut last one; after it the step must be over.
  if (height(end + 1) > OVER_SHARE * level) end++;
  return height(end + 1) <= OVER_SHARE * level ? end : null;
}

function measureStep(days: MeterDays, first: number, last: number): Step {
  const { kWh, hours, perDay } = days;
  const base = baseAbout(days, first, last);
  const height = (place: number) => kWh[place]! / hours - base;
  const slots = last - first + 1;
  let [all, most] = [0, Number.NEGATIVE_INFINITY];
  for (let i = first; i <= last; i++) {
    all += height(i);
    most = Math.max(most, height(i));
  }
  // The clock cuts the first and the last reading; between them the step is level.
  let inner = 0;
  for (let i = first + 1; i < last; i++) inner += height(i);
  const powerKW = slots > 2 ? inner / (slots - 2) : most;
  return {
    day: Math.floor(first / perDay),
    slot: first % perDay,
    slots,
    powerKW,
    ramp: slots > 3 ? (height(last - 1) - height(first + 1)) / powerKW : null,
    kWh: all * hours,
  };
}

/** What runs beside the step: mean of the readings about it, two on each side where they are alike, kW. */
function baseAbout({ kWh, hours }: MeterDays, first: number, last: number): number {
  const side = (near: number, far: number) => {
    const one = kWh[near]!;
    const two = kWh[far]!;
    return Math.abs(two - one) <= ALIKE_KW * hours ? (one + two) / 2 : one;
  };
  return (side(first - 1, first - 2) + side(last + 1, last + 2)) / 2 / hours;
}

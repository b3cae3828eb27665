/** Loads of one even power that come again and again at about the same hour: resistance heaters, chargers. */
import { toCivilDate } from '../calendar/civil.ts';
import { yearOfDays } from '../shapes/finding.ts';
import { dearnessOf } from './clock-prices.ts';
import { type MeterDays, median, type Prices, unitsAndCost } from './meter-days.ts';
import { findSteps, type Step } from './steps.ts';

export interface EvenLoad {
  readonly powerKW: number;
  readonly steps: readonly Step[];
  /** These and all others of about this size in these hours and days: what runs beside one changes its height. */
  readonly near: readonly Step[];
  /** Share of the steps of about this size in these hours and days that have this very power, 0 to 1. */
  readonly likeness: number;
  /** How much the power rises while they last, as a share; a resistance's does not. null where they are too short to tell. */
  readonly ramp: number | null;
  /** Steps of this very power at other hours of the same days, for each step here. */
  readonly elsewhere: number;
  /** Steps of nearly this power at these hours in the month before and after, for each step here: a machine's own drift. */
  readonly drift: number;
  /** Hour at which they begin. */
  readonly hour: number;
  /** Places of the days with such a step, ascending. */
  readonly days: readonly number[];
  readonly kWh: number;
}

/** How long the load's steps last at its power, the middle of them, hours. */
export const hoursEach = ({ steps }: EvenLoad): number => median(steps.map(({ kWh, powerKW }) => kWh / powerKW));

/** From the first of its days to the day after the last, with units [kWh] and what they cost at its own hours [pence]. */
export function daysAndCost(load: EvenLoad, days: MeterDays, prices: Prices) {
  const first = days.dayNumber[load.days[0]!]!;
  const last = days.dayNumber[load.days.at(-1)!]! + 1;
  const kWhAt = loadByReading(load, days);
  const dearness = dearnessOf(days, prices, (place) => kWhAt[place]!);
  return {
    from: toCivilDate(first),
    to: toCivilDate(last),
    ...unitsAndCost(load.kWh, yearOfDays(load.kWh, last - first), prices, dearness),
  };
}

/** Units of the load by reading [kWh], its steps spread evenly over their readings. */
function loadByReading({ steps }: Pick<EvenLoad, 'steps'>, days: MeterDays): Float64Array {
  const kWh = new Float64Array(days.kWh.length);
  for (const step of steps) {
    const first = step.day * days.perDay + step.slot;
    kWh.subarray(first, first + step.slots).fill(step.kWh / step.slots);
  }
  return kWh;
}

/** A reading so near a load's own height may be the same thing; the height is that of its fuller readings. */
const ALIKE_SHARE = 0.08;
const FULLER = 0.6;

/** More readings of that height at other hours are those of a compressor. */
const MOST_ALIKE = 0.6;
export const isOfCompressor = (load: EvenLoad, days: MeterDays): boolean => alikeElsewhere(load, days) > MOST_ALIKE;

/**
 * Readings of the load's own height at other hours of its days, for each reading of its steps: a compressor that is on or
 * off has them whenever it runs, a heater beside it has not.
 */
function alikeElsewhere({ steps, days: places }: Pick<EvenLoad, 'steps' | 'days'>, days: MeterDays): number {
  const { kWh, perDay } = days;
  const own = new Set<number>();
  const heights: number[] = [];
  for (const { day, slot, slots } of steps) {
    const first = day * perDay + slot;
    for (let i = first - 1; i <= first + slots; i++) own.add(i);
    for (let i = first; i < first + slots; i++) heights.push(kWh[i]!);
  }
  const height = heights.sort((a, b) => a - b)[Math.floor(FULLER * heights.length)]!;
  let alike = 0;
  for (const day of places) {
    for (let i = day * perDay; i < (day + 1) * perDay; i++) {
      if (!own.has(i) && Math.abs(kWh[i]! / height - 1) <= ALIKE_SHARE) alike++;
    }
  }
  return alike / heights.length;
}

/** A step of one reading may have any power: it was on for an unknown part of it. */
const LEAST_SLOTS = 2;
const LEAST_STEPS = 4;
/** Steps of one resistance differ by the mains voltage and by what else changes while they last. */
const SAME_SHARE = 0.07;
const LIKE_SHARE = 0.25;
/** A timer or a thermostat keeps to its time of the day, hours either side. */
const HOURS_ABOUT = 1.5;
/** A longer pause ends one spell and begins another, days. */
const MOST_PAUSE = 16;
const MOST_LOADS = 16;
/** Days before and after a spell, in which a machine's own power is still near. */
const AROUND = 25;
/** One step in three long enough to show a rise speaks for the others. */
const RAMPS_SHARE = 3;

/**
 * Even loads: the commonest power and hour among the steps, its spell of days, then the next commonest.
 * A compressor's steps stray with brine, water and speed and rise as its water gets hot: `likeness` and `ramp` tell.
 */
export function findEvenLoads(days: MeterDays): EvenLoad[] {
  const steps = findSteps(days).filter(({ slots }) => slots >= LEAST_SLOTS);
  let left: readonly Placed[] = steps.map((step) => ({ step, key: keyOf(step, days) }));
  const loads: EvenLoad[] = [];
  for (let i = 0; i < MOST_LOADS; i++) {
    const centre = commonest(left, days);
    if (!centre) break;
    const same = left.filter(({ step }) => isNear(step, centre, days, SAME_SHARE)).map(({ step }) => step);
    left = left.filter(({ step }) => !isNear(step, centre, days, SAME_SHARE));
    for (const spell of spellsOf(same, days)) loads.push(loadOf(spell, centre, steps, days));
  }
  return loads;
}

interface Centre {
  readonly powerKW: number;
  readonly hour: number;
}

const hourOf = ({ slot }: Step, { hours }: MeterDays) => slot * hours;

/** Hours between two clock times, at most 12. */
function apartHours(a: number, b: number): number {
  const apart = Math.abs(a - b);
  return Math.min(apart, 24 - apart);
}

const isNear = (step: Step, { powerKW, hour }: Centre, days: MeterDays, share: number) =>
  Math.abs(step.powerKW / powerKW - 1) <= share && apartHours(hourOf(step, days), hour) <= HOURS_ABOUT;

const BIN = 0.035;

/** Rows of the table: powers from e⁻³·⁵ (0.03) to e⁵·⁴ kW (230). */
const BINS = 256;

/** A step and its place in a table of 3.5 % in power and one reading in time. */
interface Placed {
  readonly step: Step;
  readonly key: number;
}

const keyOf = ({ powerKW, slot }: Step, { perDay }: MeterDays): number =>
  Math.min(BINS - 2, Math.max(1, Math.floor(Math.log(powerKW) / BIN) + 100)) * perDay + (slot % perDay);

/** Power and hour with the most steps about them. */
function commonest(steps: readonly Placed[], days: MeterDays): Centre | null {
  const { perDay } = days;
  const about = Math.floor(HOURS_ABOUT / days.hours);
  const counts = new Uint16Array(BINS * perDay);
  for (const { key } of steps) counts[key]! += 1;
  const countNear = (key: number) => {
    const slot = key % perDay;
    let sum = 0;
    for (let row = key - slot - perDay; row <= key - slot + perDay; row += perDay) {
      for (let s = slot - about; s <= slot + about; s++) sum += counts[row + ((s + perDay) % perDay)]!;
    }
    return sum;
  };
  let most = LEAST_STEPS - 1;
  let centre: number | null = null;
  for (const key of new Set(steps.map(({ key }) => key))) {
    const count = countNear(key);
    if (count <= most) continue;
    most = count;
    centre = key;
  }
  if (centre === null) return null;
  const [bin, slot] = [Math.floor(centre / perDay), centre % perDay];
  const best = steps
    .filter(({ key }) => {
      const apart = Math.abs((key % perDay) - slot);
      return Math.abs(Math.floor(key / perDay) - bin) <= 1 && Math.min(apart, perDay - apart) <= about;
    })
    .map(({ step }) => step);
  // The middle of hours that may lie about midnight: counted from the first one's own clock.
  const zero = hourOf(best[0]!, days);
  const from = best.map((step) => ((hourOf(step, days) - zero + 36) % 24) - 12);
  return { powerKW: median(best.map(({ powerKW }) => powerKW)), hour: (zero + median(from) + 24) % 24 };
}

/** Steps, in order of time, cut into spells at pauses of more than 16 days; spells of fewer than four are chance. */
function spellsOf(steps: readonly Step[], { dayNumber }: MeterDays): Step[][] {
  const spells: Step[][] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const step of steps) {
    const day = dayNumber[step.day]!;
    if (day - last > MOST_PAUSE) spells.push([]);
    spells.at(-1)!.push(step);
    last = day;
  }
  return spells.filter(({ length }) => length >= LEAST_STEPS);
}

function loadOf(same: readonly Step[], centre: Centre, all: readonly Step[], days: MeterDays): EvenLoad {
  const [first, last] = [same[0]!.day, same.at(-1)!.day];
  const inSpell = all.filter(({ day }) => day >= first && day <= last);
  const powerKW = median(same.map((step) => step.powerKW));
  const near = inSpell.filter((step) => isNear(step, centre, days, LIKE_SHARE));
  const elsewhere = inSpell.filter(
    (step) =>
      Math.abs(step.powerKW / powerKW - 1) <= SAME_SHARE && apartHours(hourOf(step, days), centre.hour) > HOURS_ABOUT,
  );
  const around = all.filter(
    ({ day }) => (day < first && day >= first - AROUND) || (day > last && day <= last + AROUND),
  );
  const drifting = around.filter(
    (step) => isNear(step, centre, days, LIKE_SHARE) && Math.abs(step.powerKW / powerKW - 1) > SAME_SHARE,
  ).length;
  const daysAround = Math.min(AROUND, first) + Math.min(AROUND, days.count - 1 - last);
  const ramps = same.flatMap(({ ramp }) => ramp ?? []);
  return {
    powerKW,
    steps: same,
    near,
    likeness: same.length / near.length,
    ramp: ramps.length * RAMPS_SHARE >= same.length ? median(ramps) : null,
    elsewhere: elsewhere.length / same.length,
    drift: daysAround > 0 ? drifting / daysAround / (same.length / (last - first + 1)) : 0,
    hour: centre.hour,
    days: [...new Set(same.map(({ day }) => day))],
    kWh: same.reduce((sum, { kWh }) => sum + kWh, 0),
  };
}

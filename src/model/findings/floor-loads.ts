/** Even loads seen in what the machine uses at least at each hour, over a fortnight: what comes and goes falls out. */
import type { EvenLoad } from './even-loads.ts';
import { leastOf, type MeterDays, median } from './meter-days.ts';
import { findSteps, type Step } from './steps.ts';

const WINDOW_DAYS = 14;
const STEP_DAYS = 7;
/** The fourth lowest of fourteen days: a load that misses three days of them still stands. */
const LOW_PLACE = 3;
/** A load stands on a day when its readings reach this share of its power. */
const THERE_SHARE = 0.85;
const HOURS_ABOUT = 1;
const SAME_SHARE = 0.08;

interface Seen {
  readonly first: number;
  readonly step: Step;
}

/**
 * Steps [kW] of the low profile of each fortnight, joined over fortnights: a compressor that starts at other hours each
 * day leaves nothing there, while a heater on a timer stands out with its own power. Only steps long enough to show that
 * their power stays level; the cylinder's own cycles rise.
 */
export function findFloorLoads(days: MeterDays): EvenLoad[] {
  const seen: Seen[] = [];
  for (let first = 0; first + WINDOW_DAYS <= days.count; first += STEP_DAYS) {
    for (const step of findSteps(lowProfile(days, first))) {
      // The profile stands three times in a row, so that a step over midnight is whole in the middle one.
      if (step.day === 1 && step.ramp !== null) seen.push({ first, step });
    }
  }
  return joinFortnights(seen, days).map((group) => loadOf(group, days));
}

/** The low profile of a fortnight as three equal days. */
function lowProfile(days: MeterDays, first: number): MeterDays {
  const { perDay } = days;
  const kWh = new Float64Array(3 * perDay);
  for (let slot = 0; slot < perDay; slot++) {
    const low = leastOf(LOW_PLACE + 1, WINDOW_DAYS, (i) => days.kWh[(first + i) * perDay + slot]!)[LOW_PLACE]!;
    for (let day = 0; day < 3; day++) kWh[day * perDay + slot] = low;
  }
  return { ...days, count: 3, kWh, dayNumber: Int32Array.from([0, 1, 2]) };
}

/** Fortnights that follow each other with a step of the same power at the same hour. */
function joinFortnights(seen: readonly Seen[], days: MeterDays): Seen[][] {
  const groups: Seen[][] = [];
  for (const one of seen) {
    const group = groups.find((members) => {
      const last = members.at(-1)!;
      return (
        one.first - last.first <= WINDOW_DAYS &&
        one.first > last.first &&
        Math.abs(one.step.slot - last.step.slot) * days.hours <= HOURS_ABOUT &&
        Math.abs(one.step.powerKW / last.step.powerKW - 1) <= SAME_SHARE
      );
    });
    if (group) group.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** The group's step on each day on which it stands. */
function loadOf(group: readonly Seen[], days: MeterDays): EvenLoad {
  const powerKW = median(group.map(({ step }) => step.powerKW));
  const typical = group.toSorted((a, b) => a.step.kWh - b.step.kWh)[group.length >> 1]!.step;
  const first = group[0]!.first;
  const end = Math.min(days.count, group.at(-1)!.first + WINDOW_DAYS);
  const steps: Step[] = [];
  for (let day = first; day < end; day++)
    if (isThere(days, day, typical, powerKW)) steps.push({ ...typical, day, powerKW });
  return {
    powerKW,
    steps,
    near: steps,
    likeness: steps.length / (end - first),
    ramp: median(group.map(({ step }) => step.ramp!)),
    elsewhere: 0,
    drift: 0,
    hour: typical.slot * days.hours,
    days: steps.map(({ day }) => day),
    kWh: steps.length * typical.kWh,
  };
}

/** Whether the readings between the step's first and last, which the clock cuts, all reach its power. */
function isThere(days: MeterDays, day: number, { slot, slots }: Step, powerKW: number): boolean {
  for (let i = slot + 1; i < slot + slots - 1; i++) {
    const place = day * days.perDay + i;
    if (place >= days.kWh.length || days.kWh[place]! / days.hours < THERE_SHARE * powerKW) return false;
  }
  return true;
}

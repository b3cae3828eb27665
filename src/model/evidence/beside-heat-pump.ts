/** Electricity that a home bought without what a heat pump took of it, where its own meter tells the two apart. */

import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import type { CivilDate } from '../shapes/dates.ts';
import { type Series, withoutHours } from '../shapes/evidence.ts';
import { sumOf } from '../units/sums.ts';
import { sumRegisters } from './sum-registers.ts';

/** Days that follow each other, with both meters read, before one can say whether one meter counts what the other does. Common practice, no source. */
const LEAST_CHANGES = 30;
/** Of each kWh more at the heat pump, so much shows at the home's meter: about all where it is behind it, none where it is not. */
const [APART_MOST, INSIDE_LEAST] = [0.3, 0.7];

/** Whether bought electricity of a home may be counted as its other use. */
interface BesideHeatPump {
  /** Bought electricity with registers of one meter added; days and periods that may hold a heat pump are left out, and the hours with them. */
  readonly imports: readonly Series[];
  readonly isCut: boolean;
}

/** Of a home that has its heat pump for as long as anybody knows. */
export const EVER: CivilDate = '1900-01-01';

/**
 * Bought electricity of the days before the heat pump's own meter counted anything [kWh], and of later ones as far as that
 * meter covers them, its units taken off where the home's meter counts them too. From `mayHeatFrom` on it may hold
 * heating without one. Nothing changes where neither is there.
 */
export function besideHeatPump(series: readonly Series[], mayHeatFrom?: CivilDate): BesideHeatPump {
  const electric = series.filter(({ carrier, beside }) => carrier === 'electricity' && beside !== 'aside');
  const imports = sumRegisters(electric.filter(({ role }) => role === 'import'));
  const pumps = sumRegisters(electric.filter(({ role }) => role === 'heat-pump'));
  const began = Math.min(mayHeatFrom === undefined ? Infinity : toDayNumber(mayHeatFrom), ...pumps.map(firstUse));
  const end = Math.max(...imports.map(({ to }) => toDayNumber(to)));
  if (began >= end) return { imports, isCut: false };
  const pumpOn = daysOfAll(pumps);
  return { imports: imports.map((one) => cut(one, began, pumpOn)), isCut: true };
}

function cut(one: Series, began: number, pumpOn: ReadonlyMap<number, number>): Series {
  const { days, periods, ...rest } = withoutHours(one);
  if (!days) return { ...rest, periods: (periods ?? []).filter(({ to }) => toDayNumber(to) <= began) };
  const first = toDayNumber(days.first);
  const inside = isInside(days.values, first, pumpOn);
  const values = days.values.map((kWh, i) => {
    if (kWh === null || first + i < began) return kWh;
    const pumpKWh = pumpOn.get(first + i);
    if (pumpKWh === undefined || inside === null) return null;
    return inside ? Math.max(0, kWh - pumpKWh) : kWh;
  });
  return { ...rest, days: { first: toCivilDate(first), values } };
}

/** Whether a meter counts what the heat pump's does, by how both change from day to day; null where that does not say. */
function isInside(
  values: readonly (number | null)[],
  first: number,
  pumpOn: ReadonlyMap<number, number>,
): boolean | null {
  const changes: { own: number; pump: number }[] = [];
  for (let i = 1; i < values.length; i++) {
    const [before, now] = [values[i - 1] ?? null, values[i] ?? null];
    const [pumpBefore, pumpNow] = [pumpOn.get(first + i - 1), pumpOn.get(first + i)];
    if (before === null || now === null || pumpBefore === undefined || pumpNow === undefined) continue;
    changes.push({ own: now - before, pump: pumpNow - pumpBefore });
  }
  const moved = sumOf(changes.map(({ pump }) => pump ** 2));
  if (changes.length < LEAST_CHANGES || !(moved > 0)) return null;
  const share = sumOf(changes.map(({ own, pump }) => own * pump)) / moved;
  return share >= INSIDE_LEAST ? true : share <= APART_MOST ? false : null;
}

/** Day number on which a meter first counted something. */
function firstUse({ days, periods = [] }: Series): number {
  const used = days ? days.values.findIndex((kWh) => kWh !== null && kWh > 0) : -1;
  const ofDays = used < 0 ? Infinity : toDayNumber(days!.first) + used;
  return Math.min(ofDays, ...periods.filter(({ kWh }) => kWh > 0).map(({ from }) => toDayNumber(from)));
}

/** Units of every day that all meters have read, by day number; one before its first use took nothing. */
function daysOfAll(meters: readonly Series[]): Map<number, number> {
  const units = new Map<number, number>();
  const read = new Map<number, number>();
  for (const { days } of meters) {
    const first = days ? toDayNumber(days.first) : 0;
    days?.values.forEach((kWh, i) => {
      if (kWh === null) return;
      units.set(first + i, (units.get(first + i) ?? 0) + kWh);
      read.set(first + i, (read.get(first + i) ?? 0) + 1);
    });
  }
  return new Map([...units].filter(([day]) => read.get(day) === meters.length));
}

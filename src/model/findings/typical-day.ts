/** The picture behind a finding: the mean day with it, beside days as cold without it. */

import { toDayNumber } from '../calendar/civil.ts';
import type { TypicalDay } from '../shapes/bill-check.ts';
import type { Finding } from '../shapes/finding.ts';
import type { MeterDays } from './meter-days.ts';

const WEEK = 7;

/**
 * Mean use by the clock [kWh each reading] over the finding's days, and over as many of the other days: for each day the
 * one nearest in outdoor temperature, else nearest in time. What comes once a week is held against the week's other days.
 */
export function typicalDay(days: MeterDays, finding: Finding): TypicalDay | null {
  const [first, end] = [toDayNumber(finding.from), toDayNumber(finding.to)];
  const weekly = finding.code === 'weekly-pasteurisation';
  const all = Array.from({ length: days.count }, (_, day) => day);
  const inSpan = (day: number) => days.dayNumber[day]! >= first && days.dayNumber[day]! < end;
  const has = (day: number) => inSpan(day) && (!weekly || (days.dayNumber[day]! - first) % WEEK === 0);
  const seen = all.filter(has);
  if (seen.length === 0) return null;
  const others = all.filter((day) => !has(day) && (!weekly || inSpan(day)));
  const alike = others.length > 0 ? seen.map((day) => nearest(days, day, others)) : null;
  return {
    minutes: days.hours * 60,
    seen: meanDay(days, seen),
    seenDays: seen.length,
    ...(alike ? { otherwise: meanDay(days, alike) } : {}),
  };
}

function nearest(days: MeterDays, day: number, others: readonly number[]): number {
  const known = Number.isFinite(days.outdoorC[day]);
  const away = (other: number) =>
    known && Number.isFinite(days.outdoorC[other])
      ? Math.abs(days.outdoorC[other]! - days.outdoorC[day]!)
      : Number.POSITIVE_INFINITY;
  const apart = (other: number) => Math.abs(days.dayNumber[other]! - days.dayNumber[day]!);
  return others.reduce((best, other) => {
    const [a, b] = [away(other), away(best)];
    return a < b || (a === b && apart(other) < apart(best)) ? other : best;
  });
}

function meanDay({ kWh, perDay }: MeterDays, days: readonly number[]): number[] {
  return Array.from(
    { length: perDay },
    (_, i) => days.reduce((sum, day) => sum + kWh[day * perDay + i]!, 0) / days.length,
  );
}

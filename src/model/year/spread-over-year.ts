/** Spreads yearly heat over the days and months of the typical year. */
import { sumOf } from '../units/sums.ts';
import type { TypicalYear } from './typical-year.ts';

/** Share of yearly space heat of each day: its degrees below the base over the year's degree days; they sum to 1. */
export function spaceShareByDay(year: TypicalYear, baseC: number): Float64Array {
  const shares = new Float64Array(year.dailyMeanC.length);
  let sum = 0;
  for (let day = 0; day < shares.length; day++) {
    shares[day] = Math.max(0, baseC - year.dailyMeanC[day]!);
    sum += shares[day]!;
  }
  // A base below every day of the year means no heating; the shares still have to sum to 1.
  if (sum === 0) return shares.fill(1 / shares.length);
  for (let day = 0; day < shares.length; day++) shares[day]! /= sum;
  return shares;
}

/** A year's amount by month [same unit], by the shares of its days; the months sum to the amount. */
export function byMonth(amount: number, shareByDay: Float64Array, monthDays: readonly number[]): number[] {
  let day = 0;
  const months = monthDays.map((days) => {
    let share = 0;
    for (let i = 0; i < days; i++) share += shareByDay[day++]!;
    return amount * share;
  });
  return sumTo(amount, months);
}

/** The months scaled so that they sum to the amount. */
export function sumTo(amount: number, months: readonly number[]): number[] {
  const sum = sumOf(months);
  if (sum === 0) return months.map(() => amount / months.length);
  return months.map((v) => (v * amount) / sum);
}

/** What a record leads one to expect of days to come, of a month or of a year, with a range that counts habits too. */

import { MONTH_HABITS } from './demand-assumptions.ts';
import type { InformedFit } from './informed-fit.ts';
import { type DaysToCome, predictInformed } from './predict-informed.ts';
import type { FittedSignature } from './signature.ts';

export interface ExpectedUse {
  readonly kWh: number;
  /** One standard error of what the meter will say, not of the long-run mean alone. */
  readonly errorKWh: number;
}

export interface Habits {
  /** Relative standard deviation of one year's use about the household's mean in the same weather. */
  readonly yearShare: number;
  /** Years of record behind the line. */
  readonly recordYears: number;
  /** The line was laid through days, whose scatter does not show how months differ. */
  readonly byDay: boolean;
}

const RHO_MOST = 0.95;
const DAYS_OF_YEAR = 365.25;
const DAYS_OF_MONTH = 30.4;
/** Months that carry nearly all heating, October to April. */
const HEATING_MONTHS = 7;
/**
 * Use as metered over the days to come [kWh] with one standard error: variance of the lines, scatter of the days
 * s² m (1 + ρ)/(1 − ρ), months, and the habits both of the record's years and of the year to come.
 * Source: prediction interval of least squares; habits by the reference table.
 */
export function predictSpan(fit: InformedFit, plain: FittedSignature, to: DaysToCome, habits: Habits): ExpectedUse {
  const mean = predictInformed(fit, to);
  // Of the likeness of a few neighbours what chance alone gives is taken off, as in the fit.
  const rho = Math.min(RHO_MOST, Math.max(0, plain.rho - 1 / Math.sqrt(plain.line.count)));
  const scatter = (plain.line.variance * to.days * (1 + rho)) / (1 - rho);
  const ofRecord = habitsOfRecord(habits);
  const toCome = Math.hypot(habits.yearShare, habits.byDay ? monthsEvenOut(to.days / DAYS_OF_MONTH) : 0);
  const ofHabits = mean.totalKWh * Math.hypot(ofRecord, toCome);
  return {
    kWh: mean.totalKWh,
    errorKWh: Math.hypot(mean.totalErrorKWh, Math.sqrt(scatter), ofHabits),
  };
}

const monthsEvenOut = (months: number): number => MONTH_HABITS / Math.sqrt(Math.max(1, months));

/** Share by which a record's years and months may lie beside the household's long-run mean in the same weather. */
export function habitsOfRecord({ yearShare, recordYears, byDay }: Habits): number {
  const ofYears = yearShare / Math.sqrt(Math.max(1, recordYears));
  return Math.hypot(ofYears, byDay ? monthsEvenOut(HEATING_MONTHS * recordYears) : 0);
}

export const yearsOf = (days: number): number => days / DAYS_OF_YEAR;

/** Months since the estimate: the range for the weather that came, what a usual year would take, and the meter. */
import type { FollowedMonth } from '../../model/shapes/bill-check.ts';

export interface FollowingSeries {
  readonly months: readonly FollowedMonth[];
  /** Price of a unit for saying what the gap costs, p/kWh; not a number where it is not known. */
  readonly pencePerKWh: number;
}

/** More months than a year and a half are hard to tell apart; the table holds them all. */
export const MONTHS_IN_PICTURE = 18;

export const shownMonths = ({ months }: FollowingSeries): readonly FollowedMonth[] => months.slice(-MONTHS_IN_PICTURE);

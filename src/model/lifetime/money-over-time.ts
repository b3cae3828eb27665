/**
 * Money over time. Year 0 is the day of buying; what is paid or saved within a year is counted at its end, so that the
 * first saving falls at the end of year 1 and is not yet escalated. Rates are fractions a year (0.035 for 3.5 %).
 */

/** Below this difference of rates the limit is taken, since the quotient loses its digits. */
const SAME_RATE = 1e-9;

/**
 * Present worth of 1 a year, paid at the end of each of `years` years [years].
 * a = (1 − (1 + r)^−n) / r, n where r is zero. Valid for r > −1. Source: standard annuity formula.
 */
export function annuityFactor(rate: number, years: number): number {
  return presentWorthOfGrowing(1, 0, rate, years);
}

/**
 * Present worth of a yearly amount that grows [the amount's unit].
 * P = A1 (1 − ((1 + g)/(1 + r))^n) / (r − g), and n A1 / (1 + r) where r = g; A1 falls at the end of year 1.
 * Valid for rates above −1. Source: geometric gradient series of engineering economics.
 */
export function presentWorthOfGrowing(first: number, growth: number, rate: number, years: number): number {
  if (Math.abs(rate - growth) < SAME_RATE) return (first * years) / (1 + rate);
  const logRatio = Math.log1p(growth) - Math.log1p(rate);
  return (first * -Math.expm1(years * logRatio)) / (rate - growth);
}

/** Present worth of one amount at the end of year `year` [the amount's unit]: F / (1 + r)^k. */
export const presentWorth = (amount: number, rate: number, year: number): number => amount / (1 + rate) ** year;

/** Net present value of amounts by year, the first one at year 0 [their unit]: sum of F_k / (1 + r)^k. */
export function netPresentValue(byYear: readonly number[], rate: number): number {
  return byYear.reduce((sum, amount, year) => sum + presentWorth(amount, rate, year), 0);
}

/** Level amount a year with the same present worth [unit a year]: P / a. Valid for years above zero. */
export function equivalentAnnual(presentValue: number, rate: number, years: number): number {
  return presentValue / annuityFactor(rate, years);
}

/**
 * Years until level savings have brought back a cost [years]: C / S. Zero where nothing is to be brought back, null where
 * nothing is saved. It leaves the discount out, so that a payback within the life is no proof of worth.
 */
export function simplePayback(cost: number, saving: number): number | null {
  if (cost <= 0) return 0;
  return saving > 0 ? cost / saving : null;
}

/**
 * Years until the present worth of savings has brought back a cost [years], savings growing by `growth`.
 * n = ln(1 − C (r − g)/S) / ln((1 + g)/(1 + r)); C (1 + r)/S where r = g; null where the savings never do.
 * Source: the geometric series solved for n.
 */
export function discountedPayback(cost: number, saving: number, rate: number, growth = 0): number | null {
  if (cost <= 0) return 0;
  if (!(saving > 0)) return null;
  if (Math.abs(rate - growth) < SAME_RATE) return (cost * (1 + rate)) / saving;
  const spent = (cost * (rate - growth)) / saving;
  return spent < 1 ? Math.log1p(-spent) / (Math.log1p(growth) - Math.log1p(rate)) : null;
}

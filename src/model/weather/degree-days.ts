/** Degree days from daily means and from monthly means. */

/**
 * Degree days [K·day] of a run of daily mean temperatures [°C]: Σ max(0, base − mean).
 * Days without a temperature (NaN) count nothing. Source: mean-temperature method, CIBSE TM41 (from memory).
 */
export function degreeDaysFromMeans(dailyMeanC: ArrayLike<number>, baseC: number): number {
  let sum = 0;
  for (let i = 0; i < dailyMeanC.length; i++) {
    const below = baseC - dailyMeanC[i]!;
    if (below > 0) sum += below;
  }
  return sum;
}

/** Spread of temperature within a month as Hitchin's formula has it, 1/K; value from memory. */
const HITCHIN_PER_K = 0.71;

/**
 * Degree days [K·day] of a month from its mean temperature [°C]: D = n (Tb − T) / (1 − exp(−k (Tb − T))), k = 0.71;
 * n/k where the mean equals the base. Valid for monthly means in a British climate. Source: E. R. Hitchin's formula (from memory).
 */
export function degreeDaysHitchin(monthMeanC: number, days: number, baseC: number): number {
  const below = HITCHIN_PER_K * (baseC - monthMeanC);
  return (days / HITCHIN_PER_K) * (below === 0 ? 1 : below / -Math.expm1(-below));
}

/**
 * Heating use [kWh] put right for the weather: use × standard degree days / actual degree days, hot water left alone.
 * Valid where the actual degree days are well above zero. Source: standard degree-day year, as UK publishers explain it.
 */
export function correctForWeather(heatingKWh: number, standardDegreeDays: number, actualDegreeDays: number): number {
  return (heatingKWh * standardDegreeDays) / actualDegreeDays;
}

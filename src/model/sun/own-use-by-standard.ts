/** Own use by the standard's monthly rule, to stand beside what the half-hours give. */

const MOST_BATTERY_KWH = 15;

/**
 * Solar electricity used in the home [kWh], of monthly amounts made and needed: beta = min(exp(−C1 (C2 R)^C3), 1/R), where R
 * is made over needed and the constants hang on the battery's usable kWh, at most 15. Source: SAP 10.2 Appendix M1 section 3.
 */
export function ownUseByStandard(sunKWh: readonly number[], neededKWh: readonly number[], batteryKWh: number): number {
  const kWh = Math.min(batteryKWh, MOST_BATTERY_KWH);
  const [c1, c2, c3] = [1.61 - 0.0973 * kWh, 0.415 - 0.00776 * kWh, 0.511 + 0.0866 * kWh];
  return sunKWh.reduce((sum, made, month) => {
    const needed = neededKWh[month]!;
    if (!(made > 0 && needed > 0)) return sum;
    const r = made / needed;
    return sum + made * Math.min(Math.exp(-c1 * (r * c2) ** c3), 1 / r);
  }, 0);
}

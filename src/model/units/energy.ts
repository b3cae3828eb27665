/** Conversions to kWh, the one unit of energy used inside the model. */

/** Yearly heat [kWh] of a heat loss coefficient [W/K] over degree days [K·day]: Q = HLC × DD × 24/1000. */
export function heatOfDegreeDaysKWh(heatLossWPerK: number, degreeDays: number): number {
  return (heatLossWPerK * degreeDays * 24) / 1000;
}

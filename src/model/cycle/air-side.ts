/** What an air machine uses beside its compressor: a fan, and the melting of frost. */

/**
 * Fan, W for each kW of heat while it runs: 0.1 m³/s of air for a kW at 5 K, 60 Pa, three tenths of the fan's power
 * in the air. Common practice, no source.
 */
export const FAN_W_PER_KW = 20;
/** Share of all electricity that goes into melting frost, where it forms: drier air brings hardly any. Common practice, no source. */
const FROST_SHARE = 0.1;
const FROST_BAND_C = { from: -10, to: 6 };

export const frostShare = (airC: number): number =>
  airC >= FROST_BAND_C.from && airC <= FROST_BAND_C.to ? FROST_SHARE : 0;

export interface AirSide {
  readonly fanKW: number;
  /** Electricity of melting and of giving back the heat it took, spread over the time of running. */
  readonly frostKW: number;
}

/** COP of the compressor alone [1] from a COP with fan and frost in it, as EN 14511 rates: 1/COP = (1 − frost)/rated − fan. */
export const compressorCop = (ratedCop: number, airC: number): number =>
  1 / ((1 - frostShare(airC)) / ratedCop - FAN_W_PER_KW / 1000);

/** Electricity of fan and frost [kW] beside that of the compressor; with it, together heat / rated COP. */
export function reckonAirSide(heatKW: number, compressorKW: number, airC: number): AirSide {
  const fanKW = (heatKW * FAN_W_PER_KW) / 1000;
  const share = frostShare(airC);
  return { fanKW, frostKW: ((compressorKW + fanKW) * share) / (1 - share) };
}

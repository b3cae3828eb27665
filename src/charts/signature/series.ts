/** Use by day against the outdoor temperature, with the line that was laid through it. */
import type { Signature } from '../../model/appraisal/appraisal.ts';

export interface SignatureSeries {
  readonly carrier: string;
  readonly period: Signature['period'];
  readonly points: readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];
  /** Two straight pieces: falling to the base temperature, level above it. */
  readonly line: readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];
  readonly baseC: number;
  readonly basePerDayKWh: number;
  readonly slopeKWhPerKDay: number;
  readonly r2: number;
}

export function signatureSeries(signature: Signature): SignatureSeries {
  const points = signature.points.filter(
    (point) => Number.isFinite(point.outdoorC) && Number.isFinite(point.kWhPerDay),
  );
  const { baseC, basePerDayKWh, slopeKWhPerKDay } = signature;
  const on = (outdoorC: number) => ({
    outdoorC,
    kWhPerDay: basePerDayKWh + slopeKWhPerKDay * Math.max(0, baseC - outdoorC),
  });
  const temperatures = points.map((point) => point.outdoorC);
  const low = Math.min(baseC - 1, ...temperatures);
  const high = Math.max(baseC + 1, ...temperatures);
  return {
    carrier: signature.carrier,
    period: signature.period,
    points,
    line: Number.isFinite(baseC) ? [on(low), on(baseC), on(high)] : [],
    baseC,
    basePerDayKWh,
    slopeKWhPerKDay,
    r2: signature.r2,
  };
}

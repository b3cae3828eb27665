/** Use by day against the outdoor temperature, with the line that was laid through it. */
import type { HouseChange, Signature, SignaturePart } from '../../model/shapes/appraisal.ts';

export interface SignatureSeries {
  readonly carrier: string;
  readonly period: Signature['period'];
  readonly points: readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];
  /** Two straight pieces: falling to the base temperature, level above it. */
  readonly line: readonly { readonly outdoorC: number; readonly kWhPerDay: number }[];
  /** The line of the days before the house changed, over the same temperatures. */
  readonly before?: { readonly until: string; readonly line: SignatureSeries['line'] };
  readonly baseC: number;
  readonly basePerDayKWh: number;
  readonly slopeKWhPerKDay: number;
  readonly r2: number;
}

type Bent = Pick<SignaturePart, 'baseC' | 'basePerDayKWh' | 'slopeKWhPerKDay'>;

/** Where a change is given and the line is that of the days since, the one before it stands beside. */
export function signatureSeries(signature: Signature, change?: HouseChange): SignatureSeries {
  const points = signature.points.filter(
    (point) => Number.isFinite(point.outdoorC) && Number.isFinite(point.kWhPerDay),
  );
  const { baseC, basePerDayKWh, slopeKWhPerKDay } = signature;
  const temperatures = points.map((point) => point.outdoorC);
  const low = Math.min(baseC - 1, ...temperatures);
  const high = Math.max(baseC + 1, ...temperatures);
  const lineOf = (bent: Bent) =>
    Number.isFinite(bent.baseC)
      ? [low, Math.min(high, bent.baseC), high].map((outdoorC) => ({
          outdoorC,
          kWhPerDay: bent.basePerDayKWh + bent.slopeKWhPerKDay * Math.max(0, bent.baseC - outdoorC),
        }))
      : [];
  return {
    carrier: signature.carrier,
    period: signature.period,
    points,
    line: lineOf(signature),
    ...(change?.used ? { before: { until: change.on, line: lineOf(change.before) } } : {}),
    baseC,
    basePerDayKWh,
    slopeKWhPerKDay,
    r2: signature.r2,
  };
}

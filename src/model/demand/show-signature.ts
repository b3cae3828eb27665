/** The signature as the screens and documents see it, with points for its picture. */

import { toCivilDate } from '../calendar/civil.ts';
import type { Signature } from '../shapes/appraisal.ts';
import { thinPoints } from '../thin/thin.ts';
import type { FittedRecord } from './fit-record.ts';
import type { HeatRecord } from './record.ts';
import type { FittedSignature } from './signature.ts';

const POINTS_MOST = 400;

/** Base and slope [kWh/day, kWh/K·day] with errors, and at most 400 points, the coldest and the dearest among them. */
export function showSignature(record: HeatRecord, fitted: FittedRecord, signature: FittedSignature): Signature {
  const { data, period } = fitted.weather;
  const { line } = signature;
  const count = data.days.length;
  const last = count - 1;
  const points: Signature['points'] = [];
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let k = data.start[i]!; k < data.start[i + 1]!; k++) sum += data.outdoorC[k]!;
    points.push({ outdoorC: sum / data.days[i]!, kWhPerDay: data.perDayKWh[i]! });
  }
  return {
    carrier: record.carrier,
    seriesId: record.series[0]!.id,
    from: toCivilDate(data.first[0]!),
    to: toCivilDate(data.first[last]! + data.days[last]!),
    count,
    period,
    baseC: signature.baseC,
    basePerDayKWh: line.intercept,
    slopeKWhPerKDay: line.slope,
    slopeStandardError: line.slopeError,
    baseStandardError: line.interceptError,
    r2: line.r2,
    cvRmse: signature.cvRmse,
    rho: signature.rho,
    points: [...thinPoints(points, POINTS_MOST)],
  };
}

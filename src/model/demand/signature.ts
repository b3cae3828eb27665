/**
 * Energy signature: use per day = base + slope × max(0, base temperature − outdoor temperature).
 * The base temperature is searched on a grid; the rest is a straight line.
 */
import { type FittedLine, fitLine } from './least-squares.ts';
import { searchBase } from './search-base.ts';
import type { SignatureData } from './signature-data.ts';

export interface FittedSignature {
  readonly baseC: number;
  readonly line: FittedLine;
  /** Root mean square error over the mean. */
  readonly cvRmse: number;
  /** Lag-1 correlation of the residuals of neighbouring spans. */
  readonly rho: number;
}

/**
 * Fits the three-parameter change point [kWh/day, kWh/K·day, °C] by least squares, base temperature on a 0.1 K grid
 * from 8 to 22 °C, degrees of freedom n − 3, spans weighted by their days, base and slope not below zero.
 * Valid from four spans up. Source: three-parameter heating change point, ASHRAE Guideline 14 (from memory).
 */
export function fitSignature(data: SignatureData): FittedSignature {
  const baseC = searchBase(data);
  return fitSignatureAt(data, baseC);
}

/** The same at a base temperature that is already known [°C]. */
export function fitSignatureAt(data: SignatureData, baseC: number): FittedSignature {
  const x = degreesPerDay(data, baseC);
  const line = fitLine(x, data.perDayKWh, data.days, { parameters: 3, notNegative: true });
  let days = 0;
  let use = 0;
  for (let i = 0; i < x.length; i++) {
    days += data.days[i]!;
    use += data.days[i]! * data.perDayKWh[i]!;
  }
  const rmse = Math.sqrt(((line.squaredError / days) * x.length) / (x.length - 3));
  return { baseC, line, cvRmse: use > 0 ? rmse / (use / days) : 0, rho: lagOne(data, x, line) };
}

/** Mean degrees below the base over the days of each span, K. */
export function degreesPerDay(data: SignatureData, baseC: number): Float64Array {
  const x = new Float64Array(data.days.length);
  for (let i = 0; i < x.length; i++) {
    let sum = 0;
    for (let k = data.start[i]!; k < data.start[i + 1]!; k++) {
      const below = baseC - data.outdoorC[k]!;
      if (below > 0) sum += below;
    }
    x[i] = sum / data.days[i]!;
  }
  return x;
}

function lagOne(data: SignatureData, x: Float64Array, line: FittedLine): number {
  let together = 0;
  let own = 0;
  let last = 0;
  for (let i = 0; i < x.length; i++) {
    const residual = Math.sqrt(data.days[i]!) * (data.perDayKWh[i]! - line.intercept - line.slope * x[i]!);
    own += residual * residual;
    const neighbours = i > 0 && data.first[i - 1]! + data.days[i - 1]! === data.first[i];
    if (neighbours) together += residual * last;
    last = residual;
  }
  return own > 0 ? together / own : 0;
}

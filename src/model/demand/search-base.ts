/**
 * The base temperature with the least squared error, on a 0.1 K grid from 8 to 22 °C. A record of days is summed into
 * the grid's steps once, so that a trial costs a handful of multiplications however many years the record has.
 */
import type { SignatureData } from './signature-data.ts';

const GRID_FROM = 80;
const GRID_TO = 220;
const PER_K = 10;

/** Weighted sums of x (degrees below the base) and y (use per day). */
interface Sums {
  w: number;
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
}

/** Base temperature [°C] of the best line that neither starts below zero nor falls. */
export function searchBase(data: SignatureData): number {
  const sumsAt = data.outdoorC.length === data.days.length ? sumDays(data) : (baseC: number) => sumSpans(data, baseC);
  let best = GRID_FROM;
  let least = Number.POSITIVE_INFINITY;
  for (let tenths = GRID_FROM; tenths <= GRID_TO; tenths++) {
    const error = squaredErrorOf(sumsAt(tenths / PER_K));
    // A flat record fits equally well anywhere; the hair's breadth keeps the lowest base among equals.
    if (error < least * (1 - 1e-12)) {
      least = error;
      best = tenths;
    }
  }
  return best / PER_K;
}

function squaredErrorOf({ w, x, y, xx, xy, yy }: Sums): number {
  const sxx = xx - (x * x) / w;
  const sxy = xy - (x * y) / w;
  const syy = yy - (y * y) / w;
  if (!(sxx > 1e-9 * xx) || sxy <= 0) return syy;
  if (y - (sxy / sxx) * x < 0) return yy - (xy * xy) / xx;
  return syy - (sxy * sxy) / sxx;
}

/** Sums over spans of any length, with each span's degrees added up day by day. */
function sumSpans(data: SignatureData, baseC: number): Sums {
  const sums: Sums = { w: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 };
  for (let i = 0; i < data.days.length; i++) {
    let below = 0;
    for (let k = data.start[i]!; k < data.start[i + 1]!; k++) below += Math.max(0, baseC - data.outdoorC[k]!);
    const weight = data.days[i]!;
    const y = data.perDayKWh[i]!;
    sums.w += weight;
    sums.x += below;
    sums.y += weight * y;
    sums.xx += (below * below) / weight;
    sums.xy += below * y;
    sums.yy += weight * y * y;
  }
  return sums;
}

/**
 * Sums over single days: with n days colder than the base b, Σx = b n − ΣT, Σx² = b² n − 2 b ΣT + ΣT², Σxy = b Σy − ΣTy.
 * The sums on the right are gathered once into the step of the grid from which on a day counts.
 */
function sumDays(data: SignatureData): (baseC: number) => Sums {
  const steps = GRID_TO - GRID_FROM + 1;
  const cells = [0, 1, 2, 3, 4].map(() => new Float64Array(steps + 1));
  const [n, t, tt, y, ty] = cells as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  const all = { w: 0, y: 0, yy: 0 };
  for (let i = 0; i < data.days.length; i++) {
    const outdoor = data.outdoorC[i]!;
    const use = data.perDayKWh[i]!;
    const step = Math.min(steps, Math.max(0, Math.ceil(outdoor * PER_K - 1e-9) - GRID_FROM));
    n[step]! += 1;
    t[step]! += outdoor;
    tt[step]! += outdoor * outdoor;
    y[step]! += use;
    ty[step]! += outdoor * use;
    all.w += 1;
    all.y += use;
    all.yy += use * use;
  }
  for (const cell of cells) for (let step = 1; step <= steps; step++) cell[step]! += cell[step - 1]!;
  return (b) => {
    const step = Math.round(b * PER_K) - GRID_FROM;
    const x = b * n[step]! - t[step]!;
    const xx = b * b * n[step]! - 2 * b * t[step]! + tt[step]!;
    return { ...all, x, xx, xy: b * y[step]! - ty[step]! };
  };
}

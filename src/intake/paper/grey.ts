/** Pictures in grey, and their plainest changes. */
import type { Grey } from '../terms/paper-reading.ts';

/** Smaller by a whole factor, each point the mean of those it stands for. */
export function shrink({ width, height, points }: Grey, by: number): Grey {
  if (by <= 1) return { width, height, points };
  const [w, h] = [Math.max(1, Math.floor(width / by)), Math.max(1, Math.floor(height / by))];
  const small = new Uint8Array(w * h);
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      let sum = 0;
      for (let dy = 0; dy < by; dy++) {
        const row = (y * by + dy) * width + x * by;
        for (let dx = 0; dx < by; dx++) sum += points[row + dx]!;
      }
      small[y * w + x] = sum / (by * by);
    }
  }
  return { width: w, height: h, points: small };
}

/** By so many quarters to the right. */
export function turnQuarters(picture: Grey, quarters: number): Grey {
  const { width, height, points } = picture;
  const times = ((quarters % 4) + 4) % 4;
  if (times === 0) return picture;
  const turned = new Uint8Array(points.length);
  const [w, h] = times === 2 ? [width, height] : [height, width];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = times === 1 ? x * w + (w - 1 - y) : times === 2 ? (h - 1 - y) * w + (w - 1 - x) : (h - 1 - x) * w + y;
      turned[at] = points[y * width + x]!;
    }
  }
  return { width: w, height: h, points: turned };
}

type Corner = readonly [x: number, y: number];
/** Left above, right above, right below, left below. */
export type Corners = readonly [Corner, Corner, Corner, Corner];

/** The map of planes that takes the square of one to four corners. */
export function planeOf([[x0, y0], [x1, y1], [x2, y2], [x3, y3]]: Corners) {
  const [sx, sy] = [x0 - x1 + x2 - x3, y0 - y1 + y2 - y3];
  const [dx1, dx2, dy1, dy2] = [x1 - x2, x3 - x2, y1 - y2, y3 - y2];
  const under = dx1 * dy2 - dx2 * dy1;
  const [g, h] = [(sx * dy2 - dx2 * sy) / under, (dx1 * sy - sx * dy1) / under];
  const [a, b, d, e] = [x1 - x0 + g * x1, x3 - x0 + h * x3, y1 - y0 + g * y1, y3 - y0 + h * y3];
  return (u: number, v: number): Corner => {
    const w = g * u + h * v + 1;
    return [(a * u + b * v + x0) / w, (d * u + e * v + y0) / w];
  };
}

/** So many points are fetched along a straight line before the next place is asked for; they err by hundredths of a point. */
const STRIDE = 8;

/** Each point fetched from where `from` says that it was; white beyond the edges. */
export function redraw(
  { width, height, points }: Grey,
  size: { readonly width: number; readonly height: number },
  from: (x: number, y: number, into: Float64Array) => void,
): Grey {
  const drawn = new Uint8Array(size.width * size.height).fill(255);
  const place = new Float64Array(2);
  for (let y = 0; y < size.height; y++) {
    from(0, y, place);
    let [u, v] = [place[0]!, place[1]!];
    for (let start = 0; start < size.width; start += STRIDE) {
      from(start + STRIDE, y, place);
      const nextU = place[0]!;
      const nextV = place[1]!;
      const stepU = (nextU - u) / STRIDE;
      const stepV = (nextV - v) / STRIDE;
      const end = Math.min(start + STRIDE, size.width);
      for (let x = start; x < end; x++, u += stepU, v += stepV) {
        const left = Math.floor(u);
        const top = Math.floor(v);
        if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) continue;
        const across = u - left;
        const at = top * width + left;
        const above = points[at]! + (points[at + 1]! - points[at]!) * across;
        const below = points[at + width]! + (points[at + width + 1]! - points[at + width]!) * across;
        drawn[y * size.width + x] = above + (below - above) * (v - top) + 0.5;
      }
      u = nextU;
      v = nextV;
    }
  }
  return { ...size, points: drawn };
}

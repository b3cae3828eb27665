/** The sheets of paper in a photograph: bright four-cornered patches on something darker, or none. */
import type { Grey } from '../terms/paper-reading.ts';
import { type Corners, shrink } from './grey.ts';
import { type Point, sheetByEdges, areaOf as signedAreaOf, supportsOf } from './straight-edges.ts';

const SMALL_SIDE = 220;
/** Of the picture that the sheet covers. */
const LEAST_COVER = 0.2;
const MOST_COVER = 0.97;
/** What the four corners hold of all that is bright, and what the bright fills of the four corners. */
const LEAST_FIT = 0.93;
const LEAST_CONTRAST = 30;
/** The sides of a sheet that is rightly found are held by a step nearly all along. */
const WELL_HELD = 0.9;

/** Shares of the parting brightness: a shadow over the sheet may be darker than what parts most of it from the table. */
const DIMMER = [1, 0.8, 0.65];
/** By so much the sheets that a dimmer limit finds must cover more. */
const CLEARLY_MORE = 1.08;

/** A page that fills the picture but for the shade of a fold covers so much. */
const NEARLY_ALL = 0.8;
const isAll = (small: Grey, patch: readonly Point[]): boolean =>
  areaOf(hullOf(patch)) > small.points.length * MOST_COVER;

/** Every sheet in the picture, from the left; none where the page fills it. */
export function findSheets(photo: Grey): Corners[] {
  const by = Math.max(1, Math.round(Math.max(photo.width, photo.height) / SMALL_SIDE));
  const small = shrink(photo, by);
  const limit = parting(small.points);
  let best: Point[][] = [];
  const area = small.width * small.height;
  const covered = (sheets: readonly Point[][]) => sheets.reduce((sum, four) => sum + areaOf(four), 0);
  for (const dimmer of DIMMER) {
    const patches = patchesOf(small, limit * dimmer);
    const found = patches.flatMap((patch) => cornersOf(small, patch) ?? []);
    // The shade of a fold parts a sheet in two, and less bright it is whole.
    const isWhole = found.length === 1 && best.length > 1 && covered(found) > covered(best);
    if (covered(found) > covered(best) * CLEARLY_MORE || isWhole) best = found;
    else if (best.length > 1 && patches.some((patch) => isAll(small, patch)) && covered(best) > area * NEARLY_ALL)
      best = [];
  }
  best = best.map(ordered);
  // Where part of the table is brighter than part of the sheet, the edges part them.
  const held = Math.min(1, ...best.map((four) => heldBy(small, four)));
  if (best.length === 1 && held === 0) best = [];
  if (best.length === 0 || held < WELL_HELD) {
    const byEdges = sheetByEdges(small);
    if (byEdges && (best.length === 0 || heldBy(small, byEdges) > held)) best = [byEdges];
  }
  const corners = (four: readonly Point[]) =>
    four.map(([x, y]) => [(x + 0.5) * by, (y + 0.5) * by] as const) as unknown as Corners;
  return best.map(corners).toSorted(([a], [b]) => a[0] - b[0]);
}

const heldBy = (small: Grey, four: readonly Point[]): number => Math.min(...supportsOf(small, four));

function cornersOf(small: Grey, patch: readonly Point[]): [Point[]] | undefined {
  const hull = hullOf(patch);
  const area = areaOf(hull);
  if (area > small.points.length * MOST_COVER) return undefined;
  const four = largestFour(hull);
  if (areaOf(four) < area * LEAST_FIT) return undefined;
  return contrastOf(small, four) < LEAST_CONTRAST ? undefined : [four];
}

/** The brightness that parts a picture best in two (Otsu, 1979). */
function parting(points: Uint8Array): number {
  const counts = new Float64Array(256);
  for (const point of points) counts[point]!++;
  const sum = counts.reduce((all, count, value) => all + count * value, 0);
  let [below, sumBelow, best, at] = [0, 0, -1, 128];
  for (let value = 0; value < 256; value++) {
    below += counts[value]!;
    sumBelow += counts[value]! * value;
    const above = points.length - below;
    if (below === 0 || above === 0) continue;
    const apart = below * above * (sumBelow / below - (sum - sumBelow) / above) ** 2;
    if (apart > best) [best, at] = [apart, value];
  }
  return at;
}

/** The patches of bright points that touch each other and are large enough for a sheet. */
function patchesOf({ width, height, points }: Grey, limit: number): Point[][] {
  const seen = new Uint8Array(points.length);
  const patches: number[][] = [];
  for (let start = 0; start < points.length; start++) {
    if (seen[start] || points[start]! <= limit) continue;
    const patch = [start];
    seen[start] = 1;
    for (let i = 0; i < patch.length; i++) {
      const at = patch[i]!;
      const x = at % width;
      for (const next of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (next < 0 || next >= width * height || seen[next] || points[next]! <= limit) continue;
        seen[next] = 1;
        patch.push(next);
      }
    }
    if (patch.length >= points.length * LEAST_COVER) patches.push(patch);
  }
  return patches.map((patch) => patch.map((at) => [at % width, Math.floor(at / width)]));
}

const turn = (o: Point, a: Point, b: Point): number => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** Convex hull (Andrew, 1979). */
function hullOf(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (some: readonly Point[]) => {
    const out: Point[] = [];
    for (const point of some) {
      while (out.length > 1 && turn(out.at(-2)!, out.at(-1)!, point) <= 0) out.pop();
      out.push(point);
    }
    return out.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

const areaOf = (points: readonly Point[]): number => Math.abs(signedAreaOf(points));

const MOST_HULL = 28;
/** The four points of the hull that hold most of it. */
function largestFour(hull: readonly Point[]): Point[] {
  let corners = [...hull];
  // Points that stand out least go first.
  while (corners.length > MOST_HULL) {
    const out = corners.map((point, i) =>
      Math.abs(turn(corners.at(i - 1)!, point, corners[(i + 1) % corners.length]!)),
    );
    const least = out.indexOf(Math.min(...out));
    corners = corners.filter((_, i) => i !== least);
  }
  let best: Point[] = corners.slice(0, 4);
  const count = corners.length;
  for (let a = 0; a < count - 3; a++)
    for (let b = a + 1; b < count - 2; b++)
      for (let c = b + 1; c < count - 1; c++)
        for (let d = c + 1; d < count; d++) {
          const four = [corners[a]!, corners[b]!, corners[c]!, corners[d]!];
          if (areaOf(four) > areaOf(best)) best = four;
        }
  return best;
}

/** How much brighter it is just inside the edges than just outside them. */
function contrastOf({ width, height, points }: Grey, four: readonly Point[]): number {
  const [middleX, middleY] = [0, 1].map((i) => four.reduce((sum, point) => sum + point[i]!, 0) / 4) as [number, number];
  let [sum, count] = [0, 0];
  four.forEach((from, i) => {
    const to = four[(i + 1) % 4]!;
    for (let t = 0.1; t < 0.95; t += 0.1) {
      const [x, y] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
      const at = (share: number): number | undefined => {
        const [u, v] = [Math.round(x + (middleX - x) * share), Math.round(y + (middleY - y) * share)];
        return u < 0 || v < 0 || u >= width || v >= height ? undefined : points[v * width + u]!;
      };
      const [inside, outside] = [at(0.06), at(-0.06)];
      if (inside === undefined || outside === undefined) continue;
      sum += inside - outside;
      count++;
    }
  });
  return count === 0 ? 0 : sum / count;
}

/** From the corner that is nearest to the left above, round to the right. */
function ordered(four: readonly Point[]): Point[] {
  const round = signedAreaOf(four) > 0 ? [...four] : four.toReversed();
  const first = round.reduce((best, [x, y], i) => (x + y < round[best]![0] + round[best]![1] ? i : best), 0);
  return [...round.slice(first), ...round.slice(0, first)];
}

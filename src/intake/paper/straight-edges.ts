/** A sheet by its edges: four straight lines from dark to bright, where light falls so that no one brightness parts paper from table. */
import type { Grey } from '../terms/paper-reading.ts';

export type Point = readonly [x: number, y: number];
/** All points at this distance along a direction, which looks from the table to the paper. */
interface Edge {
  readonly across: number;
  readonly down: number;
  readonly distance: number;
}

/** One for each degree. */
const DIRECTIONS = 360;
/** How far a side of a sheet may lean, degrees, and how far the step at a point of it may look aside. */
const [MOST_LEAN, ASIDE] = [44, 4];
const EDGES_A_SIDE = 5;
/** Nearer than that, in degrees and points, two edges are one. */
const [SAME_WAY, SAME_PLACE] = [10, 4];
/** Steps of brightness, as logarithms, since shade divides paper and table alike. */
const [LEAST_STEP, MOST_STEP, CLEAR_STEP] = [0.04, 0.15, 0.25];
/** A rim says nothing of what lies beyond. */
const RIM_SUPPORT = 0.6;
const LEAST_SUPPORT = 0.6;
/** So near to the rim, points, an edge lies on it. */
const RIM = 3;
const LEAST_COVER = 0.2;
const MOST_COVER = 0.97;
/** Corners may lie beyond the picture by that share of it. */
const BEYOND = 0.04;
/** Just within and without an edge, then farther off: what is bright again there was a rule on the page. */
const [INSIDE, OUTSIDE] = [2, [-2, -7, -12]];

/** The four corners of the sheet that is best held by its edges, from the left above round to the right. */
export function sheetByEdges(small: Grey): Point[] | undefined {
  const { width, height } = small;
  const logs = logsOf(small);
  const [lefts, tops, rights, bottoms] = edgesOf(small, logs) as [Edge[], Edge[], Edge[], Edge[]];
  let best: Point[] | undefined;
  let most = 0;
  for (const left of lefts)
    for (const top of tops)
      for (const right of rights)
        for (const bottom of bottoms) {
          const corners = [meet(left, top), meet(right, top), meet(right, bottom), meet(left, bottom)];
          if (!corners.every((point) => point !== undefined && isNear(point, small))) continue;
          const cover = areaOf(corners as Point[]) / (width * height);
          const worth = cover ** 0.25;
          if (cover < LEAST_COVER || cover > MOST_COVER || 4 * worth <= most) continue;
          const held = supportsOf(small, corners as Point[], logs);
          const score = held.reduce((sum, one) => sum + one, 0) * worth;
          if (score > most && Math.min(...held) >= LEAST_SUPPORT) [best, most] = [corners as Point[], score];
        }
  return best && levelWith(levelWith(best, small, logs), small, logs);
}

/** Straight lines by the votes of the points on them (Hough, 1962; Duda and Hart, 1972): left, top, right, bottom of sheets. */
function edgesOf({ width, height }: Grey, logs: Float32Array): Edge[][] {
  const reach = Math.ceil(Math.hypot(width, height));
  const span = 2 * reach + 1;
  const votes = new Float32Array(DIRECTIONS * span);
  const [cosines, sines] = [Math.cos, Math.sin].map((of) =>
    Float64Array.from({ length: DIRECTIONS }, (_, i) => of((i / DIRECTIONS) * 2 * Math.PI)),
  ) as [Float64Array, Float64Array];
  const around = (direction: number) => (direction + DIRECTIONS) % DIRECTIONS;
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const [above, below] = [at - width, at + width];
      const across =
        logs[above + 1]! +
        2 * logs[at + 1]! +
        logs[below + 1]! -
        logs[above - 1]! -
        2 * logs[at - 1]! -
        logs[below - 1]!;
      const down =
        logs[below - 1]! + 2 * logs[below]! + logs[below + 1]! - logs[above - 1]! - 2 * logs[above]! - logs[above + 1]!;
      const step = Math.hypot(across, down) / 8;
      if (step < LEAST_STEP) continue;
      const about = Math.round((Math.atan2(down, across) / (2 * Math.PI)) * DIRECTIONS);
      for (let turn = about - ASIDE; turn <= about + ASIDE; turn++) {
        const direction = around(turn);
        const distance = Math.round(x * cosines[direction]! + y * sines[direction]!);
        votes[direction * span + distance + reach]! +=
          Math.min(step, MOST_STEP) * (1 - Math.abs(turn - about) / (ASIDE + 1));
      }
    }
  }
  // A sheet may end with the picture.
  const rims = [0, 0, 1 - width, 1 - height];
  return rims.map((rim, side) => {
    const straight = around(side * 90);
    const found: Edge[] = [{ across: cosines[straight]!, down: sines[straight]!, distance: rim }];
    while (found.length <= EDGES_A_SIDE) {
      let [most, place] = [0, 0];
      for (let lean = -MOST_LEAN; lean <= MOST_LEAN; lean++) {
        const from = around(straight + lean) * span;
        for (let at = from; at < from + span; at++) if (votes[at]! > most) [most, place] = [votes[at]!, at];
      }
      if (most === 0) break;
      const direction = Math.floor(place / span);
      const column = place % span;
      found.push({ across: cosines[direction]!, down: sines[direction]!, distance: column - reach });
      for (let turn = -SAME_WAY; turn <= SAME_WAY; turn++) {
        const from = around(direction + turn) * span;
        votes.fill(0, from + Math.max(0, column - SAME_PLACE), from + Math.min(span, column + SAME_PLACE + 1));
      }
    }
    return found;
  });
}

function meet(a: Edge, b: Edge): Point | undefined {
  const under = a.across * b.down - a.down * b.across;
  if (Math.abs(under) < 0.2) return undefined;
  return [(a.distance * b.down - b.distance * a.down) / under, (a.across * b.distance - b.across * a.distance) / under];
}

const isNear = ([x, y]: Point, { width, height }: Grey): boolean =>
  x > -BEYOND * width && y > -BEYOND * height && x < (1 + BEYOND) * width && y < (1 + BEYOND) * height;

/** More than nothing where the corners go round to the right. */
export const areaOf = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    return sum + x * nextY - nextX * y;
  }, 0) / 2;

const logsOf = ({ points }: Grey): Float32Array => Float32Array.from(points, (point) => Math.log(16 + point));

/**
 * How well each side of a sheet is held by a step from a dark table to bright paper, 0 to 1.
 * @param four its corners, from the left above round to the right
 */
export function supportsOf(small: Grey, four: readonly Point[], logs = logsOf(small)): number[] {
  const { width, height } = small;
  const isLow = (value: number) => value < RIM;
  const rimsOf = ([x, y]: Point) => [isLow(x), isLow(y), isLow(width - 1 - x), isLow(height - 1 - y)];
  const isOnRim = four.map((point, i) => {
    const other = rimsOf(four[(i + 1) % 4]!);
    return rimsOf(point).some((is, side) => is && other[side]);
  });
  // As wide as the picture: what is dark above or below may be a printed head of the page.
  if (isOnRim[1] && isOnRim[3]) return [0, 0, 0, 0];
  return four.map((point, i) => {
    if (isOnRim[i]) return RIM_SUPPORT;
    const steps = stepsAlong(point, four[(i + 1) % 4]!, small, logs, 2);
    return steps.reduce((sum, { step }) => sum + Math.min(1, step / CLEAR_STEP), 0) / steps.length;
  });
}

interface Step {
  /** How far along the side, as a share of it. */
  readonly share: number;
  /** How far within the side the step is, points. */
  readonly off: number;
  /** Its height, as a logarithm; none where the paper is no brighter. */
  readonly step: number;
}

/** The highest step from table to paper near each of some places of a side. */
function stepsAlong([x, y]: Point, [endX, endY]: Point, small: Grey, logs: Float32Array, reach: number): Step[] {
  const { width, height } = small;
  const length = Math.hypot(endX - x, endY - y);
  const [inX, inY] = [(y - endY) / length, (endX - x) / length];
  const steps: Step[] = [];
  for (let share = 0.04; share < 1; share += 0.046) {
    const [u, v] = [x + (endX - x) * share, y + (endY - y) * share];
    const at = (off: number): number => {
      const [column, row] = [Math.round(u + inX * off), Math.round(v + inY * off)];
      return column < 0 || row < 0 || column >= width || row >= height ? 0 : logs[row * width + column]!;
    };
    let best: Step = { share, off: 0, step: 0 };
    for (let off = -reach; off <= reach; off++) {
      let outside = 0;
      for (const by of OUTSIDE) outside = Math.max(outside, at(off + by));
      const step = outside === 0 ? 0 : at(off + INSIDE) - outside;
      if (step > best.step) best = { share, off, step };
    }
    steps.push(best);
  }
  return steps;
}

/** Each side laid through the steps along it (least squares); what lies on the rim stays. */
function levelWith(four: readonly Point[], small: Grey, logs: Float32Array): Point[] {
  const sides = four.map((from, i): Edge => {
    const to = four[(i + 1) % 4]!;
    const steps = stepsAlong(from, to, small, logs, 4).filter(({ step }) => step > CLEAR_STEP / 2);
    const [length, count] = [Math.hypot(to[0] - from[0], to[1] - from[1]), steps.length];
    const [across, down] = [(from[1] - to[1]) / length, (to[0] - from[0]) / length];
    const mean = (of: (step: Step) => number) => steps.reduce((sum, step) => sum + of(step), 0) / Math.max(1, count);
    const [share, off] = [mean((step) => step.share), mean((step) => step.off)];
    const spread = mean((step) => (step.share - share) ** 2);
    const lean = count < 6 ? 0 : mean((step) => (step.share - share) * (step.off - off)) / spread;
    const turn = Math.atan2(lean, length);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const [newAcross, newDown] = [across * cos - down * sin, across * sin + down * cos];
    const [x, y] = [0, 1].map((k) => from[k]! + (to[k]! - from[k]!) * share + [across, down][k]! * off) as [
      number,
      number,
    ];
    return { across: newAcross, down: newDown, distance: newAcross * x + newDown * y };
  });
  return four.map((point, i) => meet(sides.at(i - 1)!, sides[i]!) ?? point);
}

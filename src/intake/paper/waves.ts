/** The waves of a page that was folded, curled or crumpled: how its lines lean from place to place, by which they are laid level. */
import type { Grey } from '../terms/paper-reading.ts';

/** Darker than that is ink, on a page that is evenly lit. */
export const INK = 110;
/** Points of ink, x and y in turn. */
export type Ink = Float32Array;
/** Where the point of a level page, at so much across and down, lies on the wavy one: how far down. */
export type Waves = (x: number, y: number) => number;

type Size = Pick<Grey, 'width' | 'height'>;
/** Leaning as tangents, at the middles of tiles, row by row. */
interface Leans {
  readonly columns: number;
  readonly rows: number;
  readonly leans: Float64Array;
}

/**
 * From waves as long as half a page to those of a crumpled one: tiles across and down, the steepest lean looked for,
 * its step, and how much each tile must lean like those beside it.
 */
const LOOKS = [
  [4, 6, 0.16, 0.016, 0.04],
  [8, 14, 0.12, 0.01, 0.08],
  [12, 24, 0.064, 0.008, 0.25],
] as const;
/** Waves that move hardly any ink farther than that share of the page's height, a quarter of a line, need no mending. */
const [LEAST_WAVE, LITTLE] = [0.003, 0.02];

/**
 * What lays the lines level; undefined where they are.
 * @param ink of a page whose lines lie level on the whole
 */
export function wavesOf(ink: Ink, size: Size): Waves | undefined {
  let waves: Waves | undefined;
  let level = ink;
  const add = (more: Waves) => {
    const before = waves;
    waves = gridded(before ? (x, y) => before(x, more(x, y)) : more, size);
    level = levelled(ink, waves);
  };
  for (const [look, [columns, rows, reach, step, stiff]] of LOOKS.entries()) {
    add(alongLeans(smoothed(leansOf(level, size, columns, rows, reach, step), stiff), size));
    if (look === 1 && !isMoved(ink, level, size)) return undefined;
  }
  return waves;
}

/** Whether more than a little of the ink lies elsewhere; where none is, waves are a guess. */
function isMoved(ink: Ink, level: Ink, { height }: Size): boolean {
  let moved = 0;
  for (let i = 1; i < ink.length; i += 2) if (Math.abs(level[i]! - ink[i]!) > LEAST_WAVE * height) moved += 2;
  return moved > LITTLE * ink.length;
}

function levelled(ink: Ink, waves: Waves): Ink {
  const level = ink.slice();
  for (let i = 0; i < ink.length; i += 2) level[i + 1] = levelOf(waves, ink[i]!, ink[i + 1]!);
  return level;
}

function levelOf(waves: Waves, x: number, y: number): number {
  let at = y;
  for (let turn = 0; turn < 3; turn++) at += y - waves(x, at);
  return at;
}

/** Longest strokes of letters, across and down, of the small page. */
const [WIDEST_STROKE, HIGHEST_STROKE] = [28, 20];
/** The points of ink that may be of letters: not of rules, creases, or the table about the sheet. */
export function lettersOf({ width, height, points }: Grey): Ink {
  const down = new Uint16Array(width);
  const letters: number[] = [];
  const isLetter = new Uint8Array(points.length);
  for (let y = 0; y < height; y++) {
    let right = 0;
    for (let x = 0; x <= width; x++) {
      const at = y * width + x;
      if (x < width && points[at]! < INK) {
        right++;
        continue;
      }
      if (right > 0 && right <= WIDEST_STROKE) isLetter.fill(1, at - right, at);
      right = 0;
    }
  }
  for (let y = 0; y <= height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      if (y < height && points[at]! < INK) {
        down[x]!++;
        continue;
      }
      if (down[x]! <= HIGHEST_STROKE)
        for (let up = 1; up <= down[x]!; up++) if (isLetter[at - up * width]) letters.push(x, y - up);
      down[x] = 0;
    }
  }
  return Float32Array.from(letters);
}

export interface Lean {
  readonly lean: number;
  readonly weight: number;
}
interface Tiles {
  readonly columns: number;
  readonly rows: number;
  readonly leans: readonly Lean[];
}

/** By the leans of tiles: at what height of a level page a point of the wavy one lies. */
export function wavesAlong({ stiff, ...tiles }: Tiles & { readonly stiff: number }, size: Size): Waves {
  const waves = alongLeans(smoothed(tiles, stiff), size);
  return (x, y) => levelOf(waves, x, y);
}

/** In each tile and half of those about it the slope along which rows of ink are sharpest. */
function leansOf(ink: Ink, { width, height }: Size, columns: number, rows: number, reach: number, step: number): Tiles {
  const tiles: number[][] = Array.from({ length: columns * rows }, () => []);
  for (let i = 0; i < ink.length; i += 2) {
    const [u, v] = [(ink[i]! / width) * columns, (ink[i + 1]! / height) * rows];
    // Tiles overlap by half on every side.
    for (let row = Math.max(0, Math.floor(v - 0.5)); row <= Math.min(rows - 1, Math.floor(v + 0.5)); row++)
      for (
        let column = Math.max(0, Math.floor(u - 0.5));
        column <= Math.min(columns - 1, Math.floor(u + 0.5));
        column++
      )
        tiles[row * columns + column]!.push(i);
  }
  const high = Math.ceil((2 * height) / rows + (2 * reach * width) / columns) + 6;
  const profile = new Float64Array(high);
  const leans = tiles.map((own, at): Lean => {
    if (own.length < LEAST_INK) return { lean: 0, weight: 0 };
    const middle = ((at % columns) + 0.5) * (width / columns);
    const top = (Math.floor(at / columns) - 0.5) * (height / rows) - (reach * width) / columns - 2;
    const sharp: number[] = [];
    for (let lean = -reach; lean <= reach + 1e-9; lean += step) {
      profile.fill(0);
      for (const i of own) {
        const down = ink[i + 1]! - lean * (ink[i]! - middle) - top;
        const row = Math.floor(down);
        profile[row + 1]! += down - row;
        profile[row]! += 1 - down + row;
      }
      let sum = 0;
      for (let i = 1; i < high; i++) sum += (profile[i]! - profile[i - 1]!) ** 2;
      sharp.push(sum);
    }
    const best = sharp.indexOf(Math.max(...sharp));
    const mean = sharp.reduce((sum, one) => sum + one, 0) / sharp.length;
    // Between steps by the parabola through three of them.
    const [before, peak, after] = [sharp[best - 1], sharp[best]!, sharp[best + 1]];
    // At the end of what was looked for nothing was found.
    if (before === undefined || after === undefined) return { lean: 0, weight: 0 };
    const under = before - 2 * peak + after;
    const off = under === 0 ? 0 : (before - after) / (2 * under);
    return {
      lean: -reach + (best + off) * step,
      weight: Math.max(0, peak / mean - 1) * Math.min(1, own.length / MUCH_INK),
    };
  });
  return { columns, rows, leans };
}
const [LEAST_INK, MUCH_INK] = [30, 200];

/** What differs by more than that from the tiles beside it counts for less. */
const ODD = 0.03;
/** Leans of paper change little by little: those of tiles without lines, and wrong ones, follow from the others. */
function smoothed({ columns, rows, leans }: Tiles, stiff: number): Leans {
  const out = Float64Array.from(leans, ({ lean }) => lean);
  for (let turn = 0; turn < 120; turn++) {
    for (let at = 0; at < out.length; at++) {
      const [column, row] = [at % columns, Math.floor(at / columns)];
      const { lean, weight } = leans[at]!;
      const own = turn < 20 ? weight : weight / (1 + ((lean - out[at]!) / ODD) ** 2);
      let [sum, count] = [own * lean, own];
      const beside = (next: number) => {
        sum += stiff * out[next]!;
        count += stiff;
      };
      if (column > 0) beside(at - 1);
      if (column < columns - 1) beside(at + 1);
      if (row > 0) beside(at - columns);
      if (row < rows - 1) beside(at + columns);
      out[at] = sum / count;
    }
  }
  return { columns, rows, leans: out };
}

const COLUMNS = 48;
const ROWS = 72;
/** Each line followed from the middle to both sides as it leans. */
function alongLeans({ columns, rows, leans }: Leans, { width, height }: Size): Waves {
  const leanAt = (x: number, y: number): number =>
    between(leans, columns, rows, (x / width) * columns - 0.5, (y / height) * rows - 0.5);
  const step = width / COLUMNS;
  const grid = new Float64Array((COLUMNS + 1) * (ROWS + 1));
  for (let row = 0; row <= ROWS; row++) {
    for (const way of [-1, 1]) {
      let y = (row / ROWS) * height;
      for (let column = COLUMNS / 2; column >= 0 && column <= COLUMNS; column += way) {
        grid[row * (COLUMNS + 1) + column] = y;
        y += way * step * leanAt((column + way / 2) * step, y);
      }
    }
  }
  return onGrid(grid, { width, height });
}

const gridded = (waves: Waves, size: Size): Waves =>
  onGrid(
    Float64Array.from({ length: (COLUMNS + 1) * (ROWS + 1) }, (_, at) =>
      waves(((at % (COLUMNS + 1)) / COLUMNS) * size.width, (Math.floor(at / (COLUMNS + 1)) / ROWS) * size.height),
    ),
    size,
  );

const onGrid =
  (grid: Float64Array, { width, height }: Size): Waves =>
  (x, y) =>
    between(grid, COLUMNS + 1, ROWS + 1, (x / width) * COLUMNS, (y / height) * ROWS);

/** A value of a grid between its places, beyond its edge that of the edge. */
function between(grid: Float64Array, columns: number, rows: number, column: number, row: number): number {
  const [x, y] = [Math.max(0, Math.min(columns - 1.001, column)), Math.max(0, Math.min(rows - 1.001, row))];
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const at = top * columns + left;
  const above = grid[at]! + (grid[at + 1]! - grid[at]!) * (x - left);
  const below = grid[at + columns]! + (grid[at + columns + 1]! - grid[at + columns]!) * (x - left);
  return above + (below - above) * (y - top);
}

/** The light on a page made even: each point by the paper about it, whatever hand, fold or lamp shades it. */
import type { Grey } from '../terms/paper-reading.ts';

const BLOCK = 16;
/** The brightest fifth of a block is paper, unless ink covers all of it; then a block beside it is. */
const PAPER_SHARE = 0.8;

/** Bands of colour with letters in them are narrower than seven blocks of a page: 14 mm. */
const WIDEST_INK = 3;

/** Each point as a share of the paper about it, and what is left stretched from ink to paper. */
export function divideShade({ width, height, points }: Grey): Grey {
  const [columns, rows] = [Math.ceil(width / BLOCK), Math.ceil(height / BLOCK)];
  const bright = new Float32Array(columns * rows);
  const middle = new Float32Array(columns * rows);
  const brightest = new Float32Array(columns * rows);
  const counts = new Uint16Array(256);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      counts.fill(0);
      let count = 0;
      for (let y = row * BLOCK; y < Math.min(height, (row + 1) * BLOCK); y++) {
        for (let x = column * BLOCK; x < Math.min(width, (column + 1) * BLOCK); x++, count++)
          counts[points[y * width + x]!]!++;
      }
      const brighterThan = (share: number) => {
        let value = 255;
        for (let left = count * share; value > 0 && left > counts[value]!; value--) left -= counts[value]!;
        return value;
      };
      bright[row * columns + column] = brighterThan(1 - PAPER_SHARE);
      middle[row * columns + column] = brighterThan(0.5);
      brightest[row * columns + column] = brighterThan(WHITE_LETTERS);
    }
  }
  // Closed: what is narrower is ink that was covered, what is wider is shade with an edge, as of a hand.
  const covered = around(bright, columns, rows, WIDEST_INK, 'most');
  const closed = around(covered, columns, rows, WIDEST_INK, 'least');
  const isShade = (at: number) => bright[at]! > DARKEST * closed[at]!;
  for (const at of shadedIn(middle, brightest, closed, columns)) if (isShade(at)) closed[at] = bright[at]!;
  const paper = around(closed, columns, rows, 1, 'mean');
  const flat = new Uint8Array(points.length);
  const shares = new Uint32Array(256);
  const line = new Float32Array(columns);
  for (let y = 0; y < height; y++) {
    const v = Math.max(0, Math.min(rows - 1.001, y / BLOCK - 0.5));
    const top = Math.floor(v) * columns;
    for (let column = 0; column < columns; column++) {
      const above = paper[top + column]!;
      line[column] = Math.max(24, above + (paper[top + columns + column]! - above) * (v - Math.floor(v)));
    }
    for (let x = 0; x < width; x++) {
      const u = Math.max(0, Math.min(columns - 1.001, x / BLOCK - 0.5));
      const left = Math.floor(u);
      const about = line[left]! + (line[left + 1]! - line[left]!) * (u - left);
      const share = Math.min(255, (points[y * width + x]! / about) * 235) | 0;
      flat[y * width + x] = share;
      shares[share]!++;
    }
  }
  let ink = 0;
  for (let left = flat.length / 100; ink < 130 && left > shares[ink]!; ink++) left -= shares[ink]!;
  let noise = noiseOf(flat);
  const isNoisy = noise > NOISY;
  if (isNoisy) soften(flat, width, height);
  noise *= isNoisy ? SOFTENED : 1;
  const [dark, light] = [Math.min(130, ink + 10), Math.max(150, Math.min(220, 232 - 3.5 * noise))];
  const stretched = Uint8Array.from({ length: 256 }, (_, share) =>
    Math.max(0, Math.min(255, ((share - dark) / (light - dark)) * 255)),
  );
  for (let i = 0; i < flat.length; i++) flat[i] = stretched[flat[i]!]!;
  return { width, height, points: flat };
}

/** The brightest points of a block: letters in white, if there are any. */
const WHITE_LETTERS = 0.03;
/** Shares of the paper about it: darker than the first is shade or ink, darker than the second no shade on paper is. */
const [LIT, DARKEST] = [0.9, 0.45];
/** How much brighter, as such a share, white letters are than their ground. */
const CLEAR = 0.2;
/** So many blocks with white letters in them, and that share, make a band of colour. */
const [WRITTEN, WRITTEN_SHARE] = [4, 0.04];
/** The blocks in the narrow shades of folds and creases: patches darker than the paper about them, in which nothing is written in white. */
function shadedIn(middle: Float32Array, brightest: Float32Array, closed: Float32Array, columns: number): number[] {
  const beside = (at: number) => [at - 1, at + 1, at - columns, at + columns];
  const isDark = Uint8Array.from(middle, (value, at) => (value < LIT * closed[at]! ? 1 : 0));
  const isSeen = new Uint8Array(middle.length);
  const shaded: number[] = [];
  for (let start = 0; start < middle.length; start++) {
    if (!isDark[start] || isSeen[start]) continue;
    const patch = [start];
    isSeen[start] = 1;
    for (const at of patch) {
      for (const next of beside(at)) {
        if (!isDark[next] || isSeen[next]) continue;
        isSeen[next] = 1;
        patch.push(next);
      }
    }
    const inner = patch.filter((at) => beside(at).every((next) => isDark[next]));
    const isWritten = (at: number) =>
      brightest[at]! > LIT * closed[at]! && brightest[at]! - middle[at]! > CLEAR * closed[at]!;
    const written = inner.filter(isWritten).length;
    if (inner.length > 0 && written < Math.max(WRITTEN, inner.length * WRITTEN_SHARE)) shaded.push(...patch);
  }
  return shaded;
}

/** Above this much noise, of 255, letters are softened so that the paper between them stays white. */
const NOISY = 5;
/** What softening over nine points leaves of noise. */
const SOFTENED = 0.375;

/** Standard deviation of the noise, from how much points beside each other differ; most of a page is paper. */
function noiseOf(points: Uint8Array): number {
  const counts = new Uint32Array(256);
  let all = 0;
  for (let i = 1; i < points.length; i += 3, all++) counts[Math.abs(points[i]! - points[i - 1]!)]!++;
  let half = 0;
  for (let left = all / 2; left > counts[half]!; half++) left -= counts[half]!;
  // The median of such differences is 0.95 of the deviation of one point.
  return half / 0.95;
}

/** Each point mixed with the eight about it, as one, two, four. */
function soften(points: Uint8Array, width: number, height: number): void {
  const line = new Uint16Array(points.length);
  for (let i = 1; i < points.length - 1; i++) line[i] = points[i - 1]! + 2 * points[i]! + points[i + 1]!;
  for (let i = width; i < width * (height - 1); i++)
    points[i] = (line[i - width]! + 2 * line[i]! + line[i + width]!) >> 4;
}

function around(
  values: Float32Array,
  columns: number,
  rows: number,
  reach: number,
  how: 'most' | 'least' | 'mean',
): Float32Array {
  const out = new Float32Array(values.length);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let [sum, count, most, least] = [0, 0, 0, 255];
      for (let y = Math.max(0, row - reach); y <= Math.min(rows - 1, row + reach); y++) {
        for (let x = Math.max(0, column - reach); x <= Math.min(columns - 1, column + reach); x++, count++) {
          const value = values[y * columns + x]!;
          sum += value;
          most = Math.max(most, value);
          least = Math.min(least, value);
        }
      }
      out[row * columns + column] = how === 'most' ? most : how === 'least' ? least : sum / count;
    }
  }
  return out;
}

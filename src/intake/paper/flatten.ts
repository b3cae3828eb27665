/**
 * A photographed page made flat: the sheet cut out of the table it lies on, its shade divided away, its lines level.
 * On photograph-like pages this brings the numbers that are recognised from half to nearly all.
 */
import type { Grey } from '../terms/paper-reading.ts';
import { findSheets } from './find-sheet.ts';
import { type Corners, planeOf, redraw, shrink, turnQuarters } from './grey.ts';

/** Long side of the page that is recognised: A4 at 200 dots an inch. */
const LONG_SIDE = 2340;
/** No small picture is enlarged beyond this. */
const MOST_LARGER = 1.6;

/** Each sheet of the picture, or all of it where it shows none. */
export function flatten(photo: Grey): Grey[] {
  const paper = isLightOnDark(photo) ? turnedRound(photo) : photo;
  const sheets = findSheets(paper);
  const cuts = sheets.length > 0 ? sheets.map((sheet) => cutOut(paper, sheet)) : [resized(paper)];
  return cuts.map((cut) => {
    const lit = divideShade(cut);
    const { quarters, top, bottom } = findLines(lit);
    return levelled(turnQuarters(lit, quarters), top, bottom);
  });
}

const LETTERS_SIDE = 1200;
const LETTERS_BLOCK = 12;
/** Of brightness, 255, between letters and what they stand on. */
const CLEAR_LETTERS = 60;
const FEW_BLOCKS = 20;
/** Screens at night show light letters on a dark ground: nearly everywhere where light and dark meet, most is dark. */
function isLightOnDark(photo: Grey): boolean {
  const by = Math.max(1, Math.round(Math.max(photo.width, photo.height) / LETTERS_SIDE));
  const { width, height, points } = shrink(photo, by);
  let [light, dark] = [0, 0];
  for (let top = 0; top + LETTERS_BLOCK <= height; top += LETTERS_BLOCK) {
    for (let left = 0; left + LETTERS_BLOCK <= width; left += LETTERS_BLOCK) {
      let [least, most, sum] = [255, 0, 0];
      for (let y = top; y < top + LETTERS_BLOCK; y++) {
        for (let at = y * width + left; at < y * width + left + LETTERS_BLOCK; at++) {
          const point = points[at]!;
          sum += point;
          if (point < least) least = point;
          if (point > most) most = point;
        }
      }
      if (most - least < CLEAR_LETTERS) continue;
      if (sum / LETTERS_BLOCK ** 2 < (least + most) / 2) dark++;
      else light++;
    }
  }
  return dark > FEW_BLOCKS && dark > 3 * light;
}

const turnedRound = ({ width, height, points }: Grey): Grey => ({
  width,
  height,
  points: points.map((point) => 255 - point),
});

const scaleFor = (longSide: number): number => Math.min(MOST_LARGER, LONG_SIDE / longSide);

function resized(photo: Grey): Grey {
  const scale = scaleFor(Math.max(photo.width, photo.height));
  if (Math.abs(scale - 1) < 0.02) return photo;
  const by = Math.max(1, Math.floor(1 / scale));
  const small = shrink(photo, by);
  const step = 1 / (scale * by);
  const size = { width: Math.floor(small.width / step), height: Math.floor(small.height / step) };
  return redraw(small, size, (x, y, into) => {
    into[0] = Math.min(small.width - 1.001, x * step);
    into[1] = Math.min(small.height - 1.001, y * step);
  });
}

/** The plane map that takes the corners of a rectangle to those of the sheet, turned round: where each point was. */
function cutOut(photo: Grey, corners: Corners): Grey {
  const [a, b, c, d] = corners;
  const side = (p: readonly [number, number], q: readonly [number, number]) => Math.hypot(p[0] - q[0], p[1] - q[1]);
  const [wide, high] = [(side(a, b) + side(c, d)) / 2, (side(b, c) + side(d, a)) / 2];
  const scale = scaleFor(Math.max(wide, high));
  const by = Math.max(1, Math.floor(1 / scale));
  const small = shrink(photo, by);
  const size = { width: Math.round(wide * scale), height: Math.round(high * scale) };
  const plane = planeOf(corners.map(([x, y]) => [x / by, y / by]) as unknown as Corners);
  return redraw(small, size, (x, y, into) => {
    [into[0], into[1]] = plane(x / size.width, y / size.height);
  });
}

const BLOCK = 16;
/** The brightest fifth of a block is paper, unless ink covers all of it; then a block beside it is. */
const PAPER_SHARE = 0.8;

/** Bands of colour with letters in them are narrower than seven blocks of a page: 14 mm. */
const WIDEST_INK = 3;

/** Each point as a share of the paper about it, and what is left stretched from ink to paper. */
function divideShade({ width, height, points }: Grey): Grey {
  const [columns, rows] = [Math.ceil(width / BLOCK), Math.ceil(height / BLOCK)];
  const bright = new Float32Array(columns * rows);
  const counts = new Uint16Array(256);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      counts.fill(0);
      let count = 0;
      for (let y = row * BLOCK; y < Math.min(height, (row + 1) * BLOCK); y++) {
        for (let x = column * BLOCK; x < Math.min(width, (column + 1) * BLOCK); x++, count++)
          counts[points[y * width + x]!]!++;
      }
      let value = 255;
      for (let left = count * (1 - PAPER_SHARE); value > 0 && left > counts[value]!; value--) left -= counts[value]!;
      bright[row * columns + column] = value;
    }
  }
  // Closed: what is narrower is ink that was covered, what is wider is shade with an edge, as of a hand.
  const covered = around(bright, columns, rows, WIDEST_INK, 'most');
  const paper = around(around(covered, columns, rows, WIDEST_INK, 'least'), columns, rows, 1, 'mean');
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

interface Lines {
  /** Quarter turns to the right after which the lines lie level, or nearly. */
  readonly quarters: 0 | 1;
  /** Their slope in the upper and in the lower half then, as a tangent. */
  readonly top: number;
  readonly bottom: number;
}

const SMALL_SIDE = 800;
const INK = 110;
const MOST_SLOPE = 0.27;
/** Letters of a word stand closer than that, lines farther apart, in points of the small page. */
const LETTER_GAP = 3;

/** Lines of writing leave empty rows between them: the slope with the sharpest rows is theirs. */
function findLines(page: Grey): Lines {
  const small = shrink(page, Math.max(1, Math.round(Math.max(page.width, page.height) / SMALL_SIDE)));
  const turned = turnQuarters(small, 1);
  const quarters = lengthOfRuns(turned) > lengthOfRuns(small) ? 1 : 0;
  const chosen = quarters === 1 ? turned : small;
  const ink = inkOf(chosen);
  const { slope } = sharpest(ink, chosen, 0, MOST_SLOPE, 0.015);
  const half = chosen.height / 2;
  const fine = (part: Ink) => sharpest(part, chosen, slope, 0.03, 0.0025).slope;
  const [above, below] = [ink.filter(([, y]) => y < half), ink.filter(([, y]) => y >= half)];
  const whole = fine(ink);
  // A half with hardly any writing says nothing of its own.
  const isMuch = (part: Ink) => part.length > ink.length * 0.15;
  return { quarters, top: isMuch(above) ? fine(above) : whole, bottom: isMuch(below) ? fine(below) : whole };
}

/** Of the width: what is longer is a rule, or the table about the sheet. */
const LONGEST_RUN = 0.25;
/** Of the small page: longer than the stroke of any letter, without a gap, are a rule, a bar of a chart, a band of colour. */
const LONGEST_STROKE = 14;
/** Mean length of what stands together along a row, as an inked point has it: words along a line, single letters across lines. */
function lengthOfRuns({ width, height, points }: Grey): number {
  let [squares, length] = [0, 0];
  const margin = Math.round(Math.min(width, height) * 0.02);
  for (let y = margin; y < height - margin; y++) {
    let [from, last, inked] = [-1, -1, 0];
    const end = () => {
      const run = last - from + 1;
      if (from < 0 || run > width * LONGEST_RUN || (run > LONGEST_STROKE && inked === run)) return;
      // A thin rule that is crossed counts for next to nothing.
      squares += run * run;
      length += run;
    };
    for (let x = margin; x < width - margin; x++) {
      if (points[y * width + x]! >= INK) continue;
      if (from < 0 || x - last > LETTER_GAP) {
        end();
        [from, inked] = [x, 0];
      }
      last = x;
      inked++;
    }
    end();
  }
  return length === 0 ? 0 : squares / length;
}

type Ink = readonly (readonly [x: number, y: number])[];
function inkOf({ width, height, points }: Grey): Ink {
  const ink: [number, number][] = [];
  // What lies along the very edge is the table or a shadow.
  const margin = Math.round(width * 0.02);
  for (let y = margin; y < height - margin; y++)
    for (let x = margin; x < width - margin; x++) if (points[y * width + x]! < INK) ink.push([x, y]);
  return ink;
}

interface Sharpness {
  readonly sharp: number;
  readonly slope: number;
}

function sharpest(ink: Ink, { width, height }: Grey, about: number, reach: number, step: number): Sharpness {
  const reachRows = Math.ceil((Math.abs(about) + reach) * width) + 1;
  let best: Sharpness = { sharp: -1, slope: about };
  for (let slope = about - reach; slope <= about + reach + 1e-9; slope += step) {
    const rows = new Float64Array(height + 2 * reachRows);
    for (const [x, y] of ink) rows[Math.round(y - slope * (x - width / 2)) + reachRows]!++;
    let sharp = 0;
    for (let i = 1; i < rows.length; i++) sharp += (rows[i]! - rows[i - 1]!) ** 2;
    if (sharp > best.sharp) best = { sharp, slope };
  }
  return best;
}

/** Turned by the mean slope, and what is left of it above and below taken out too. */
function levelled(page: Grey, top: number, bottom: number): Grey {
  const { width, height } = page;
  const mean = (top + bottom) / 2;
  const more = (bottom - top) / 2;
  if (Math.abs(top) < 0.003 && Math.abs(bottom) < 0.003) return page;
  const [cos, sin] = [Math.cos(Math.atan(mean)), Math.sin(Math.atan(mean))];
  const size = {
    width: Math.round(width * cos + height * Math.abs(sin)),
    height: Math.round(height * cos + width * Math.abs(sin)),
  };
  return redraw(page, size, (x, y, into) => {
    const [u, v] = [x - size.width / 2, y - size.height / 2];
    // The middles of the halves lie a quarter above and below the middle.
    const left = v + u * more * Math.max(-1.5, Math.min(1.5, v / (height / 4)));
    into[0] = u * cos - left * sin + width / 2;
    into[1] = u * sin + left * cos + height / 2;
  });
}

/** Lighter than that is paper, darker may be the soft edge of a rule. */
const PALE = 180;
/** Points of the page that is recognised: no stroke of a letter is so long, no rule so thick. */
const [SHORTEST_RULE, THICKEST_RULE] = [100, 8];
/** The rules of a table made white: words in frames are taken for parts of a picture, and lost. */
export function withoutRules({ width, height, points }: Grey): Grey {
  const bare = points.slice();
  const wipe = (end: number, count: number, along: number, across: number) => {
    for (let at = end - count * along; at < end; at += along) {
      let thick = 1;
      for (let by = across; thick <= THICKEST_RULE && points[at - by]! < PALE; by += across) thick++;
      for (let by = across; thick <= THICKEST_RULE && points[at + by]! < PALE; by += across) thick++;
      if (thick <= THICKEST_RULE) bare[at] = 255;
    }
  };
  // How much is dark without a gap, in each column and along the row.
  const down = new Uint16Array(width + 1);
  for (let y = 0; y <= height; y++) {
    let right = 0;
    for (let x = 0; x <= width; x++) {
      const at = y * width + x;
      if (x < width && y < height && points[at]! < PALE) {
        right++;
        down[x]!++;
        continue;
      }
      if (right >= SHORTEST_RULE) wipe(at, right, 1, width);
      if (down[x]! >= SHORTEST_RULE) wipe(at, down[x]!, width, 1);
      right = 0;
      down[x] = 0;
    }
  }
  return { width, height, points: bare };
}

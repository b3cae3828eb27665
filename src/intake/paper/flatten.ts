/**
 * A photographed page made flat: the sheet cut out of the table it lies on, its shade divided away, its lines level.
 * On photograph-like pages this brings the numbers that are recognised from half to nearly all.
 */
import type { Grey } from '../terms/paper-reading.ts';
import { findSheets } from './find-sheet.ts';
import { type Corners, planeOf, redraw, shrink, turnQuarters } from './grey.ts';
import { divideShade } from './shade.ts';
import { INK, lettersOf, wavesOf } from './waves.ts';

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
    const lines = findLines(lit);
    return levelled(turnQuarters(lit, lines.quarters), lines);
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

interface Lines {
  /** Quarter turns to the right after which the lines lie level, or nearly. */
  readonly quarters: 0 | 1;
  /** Their slope then, as a tangent. */
  readonly slope: number;
  /** The page so turned, many times smaller. */
  readonly small: Grey;
}

const SMALL_SIDE = 800;
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
  return { quarters, slope: sharpest(ink, chosen, slope, 0.03, 0.0025).slope, small: chosen };
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

/** Less than that turns no line by half its height. */
const LEAST_TURN = 0.003;

/** Turned by the slope of its lines, and the waves of the paper taken out. */
function levelled(page: Grey, { slope, small }: Lines): Grey {
  const { width, height } = page;
  const isTurned = Math.abs(slope) >= LEAST_TURN;
  const [cos, sin] = isTurned ? [Math.cos(Math.atan(slope)), Math.sin(Math.atan(slope))] : [1, 0];
  const size = {
    width: Math.round(width * cos + height * Math.abs(sin)),
    height: Math.round(height * cos + width * Math.abs(sin)),
  };
  const by = Math.max(1, Math.round(Math.max(width, height) / SMALL_SIDE));
  const ink = lettersOf(small);
  for (let i = 0; i < ink.length; i += 2) {
    const [u, v] = [ink[i]! - small.width / 2, ink[i + 1]! - small.height / 2];
    ink[i] = u * cos + v * sin + size.width / by / 2;
    ink[i + 1] = v * cos - u * sin + size.height / by / 2;
  }
  const waves = wavesOf(ink, { width: size.width / by, height: size.height / by });
  if (!isTurned && !waves) return page;
  return redraw(page, size, (x, y, into) => {
    const [u, v] = [x - size.width / 2, (waves ? waves(x / by, y / by) * by : y) - size.height / 2];
    into[0] = u * cos - v * sin + width / 2;
    into[1] = u * sin + v * cos + height / 2;
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

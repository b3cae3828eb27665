/** Heat as tiles: what is bought at the meter, what the ground or the air adds, and both together. */
import { spokenCount, spokenKWh, spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { niceStep } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';

export interface UnitsInput {
  readonly meterKWh: number;
  /** Heat made: rooms and hot water. */
  readonly heatKWh: number;
  readonly meterPence: number;
  readonly source: 'ground' | 'air';
}
export interface Tile {
  readonly x: number;
  readonly y: number;
  readonly from: 'meter' | 'source';
}
export interface TileGroup {
  readonly x: number;
  readonly width: number;
  /** Where the tiles end and the words begin. */
  readonly bottom: number;
  readonly title: string;
  readonly below: string;
  readonly tiles: readonly Tile[];
}
export interface UnitsLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly tile: number;
  readonly groups: readonly TileGroup[];
  readonly arrow: { readonly x: number; readonly y: number };
  readonly tileKWh: number;
}

/** Tiles of a rounded size, so that all together are 60 to 200; 0 where there is no heat to show. */
export function tileSize(heatKWh: number): number {
  return heatKWh > 0 && Number.isFinite(heatKWh) ? niceStep(heatKWh / 200) : 0;
}

/** Whole tiles of each kind; they add up to the tiles of the heat. A machine below a factor of 1 adds nothing. */
export function countTiles(input: UnitsInput): { meter: number; source: number; total: number; tileKWh: number } {
  const heat = Math.max(input.heatKWh, input.meterKWh, 0);
  const tileKWh = tileSize(heat);
  if (tileKWh === 0) return { meter: 0, source: 0, total: 0, tileKWh: 0 };
  const total = Math.round(heat / tileKWh);
  const meter = Math.min(total, Math.max(0, Math.round(input.meterKWh / tileKWh)));
  return { meter, source: total - meter, total, tileKWh };
}

const GAP = 3;
const ROWS = 10;
const USUAL_TILE = 26;
/** Where there is height for it, tiles grow to this, px. */
const LARGEST_TILE = 44;

/** Units with the shortest word there is for them, so that three groups stand beside each other. */
const shortUnits = (kWh: number): string =>
  Number.isFinite(kWh)
    ? say('{count, select, 1 {1 kWh} other {{count} kWh}}', { count: spokenCount(kWh) })
    : spokenKWh(kWh);

export function layOutUnits(
  input: UnitsInput,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): UnitsLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const { meter, source, total, tileKWh } = countTiles(input);
  const sourceKWh = Math.max(input.heatKWh - input.meterKWh, 0);
  const words = [
    { title: say('from the meter'), below: `${shortUnits(input.meterKWh)} · ${spokenPounds(input.meterPence)}` },
    {
      title: say('from the {source, select, air {air} other {ground}}', { source: input.source }),
      below: say('{units} · no charge', { units: shortUnits(sourceKWh) }),
    },
    {
      title: say('heat for rooms and hot water'),
      below:
        tileKWh > 0
          ? say('{units} · one tile is {tile}', { units: shortUnits(input.heatKWh), tile: spokenCount(tileKWh) })
          : shortUnits(input.heatKWh),
    },
  ];
  const wordWidths = words.map(
    (word) => Math.max(textWidth(word.title, font, true), textWidth(word.below, faint)) + 14,
  );
  const columns = [meter, source, total].map((count) => Math.max(1, Math.ceil(count / ROWS)));
  const arrowWidth = font * 4;
  // Where the words alone are too wide for one line, what comes of it stands below, and the arrow before it.
  const stacked = wordWidths.reduce((sum, each) => sum + each, arrowWidth) > width;
  const widthsAt = (edge: number) =>
    columns.map((count, index) => Math.max(count * (edge + GAP) - GAP + font, wordWidths[index]!));
  const needed = (edge: number) => {
    const [first, second, both] = widthsAt(edge) as [number, number, number];
    return stacked ? Math.max(first + second, arrowWidth + both) : first + second + arrowWidth + both;
  };
  // The largest tile with which the groups, or their words where those are wider, fit beside each other.
  const roomy = place.height === undefined ? USUAL_TILE : (place.height - (font + faint + 40)) / ROWS - GAP;
  let tile = size === 'paper' || stacked ? 16 : Math.max(USUAL_TILE, Math.min(LARGEST_TILE, Math.floor(roomy)));
  const wordsHeight = font + faint + 40;
  const tall = (edge: number) => (stacked ? 2 : 1) * (ROWS * (edge + GAP) - GAP + wordsHeight) + 4;
  const fits = (edge: number) => needed(edge) <= width && (place.height === undefined || tall(edge) <= place.height);
  while (tile > 4 && !fits(tile)) tile -= 0.5;
  const [first, second] = widthsAt(tile) as [number, number, number];
  const blockHeight = ROWS * (tile + GAP) - GAP;
  const tops = stacked ? [4, 4, 4 + blockHeight + wordsHeight] : [4, 4, 4];
  const xs = stacked ? [2, 2 + first, arrowWidth] : [2, 2 + first, 2 + first + second + arrowWidth];
  const tilesOf = (count: number, group: number, kind: (index: number) => Tile['from']): Tile[] =>
    Array.from({ length: count }, (_, index) => ({
      x: xs[group]! + Math.floor(index / ROWS) * (tile + GAP),
      y: tops[group]! + (index % ROWS) * (tile + GAP),
      from: kind(index),
    }));
  const tiles = [
    tilesOf(meter, 0, () => 'meter'),
    tilesOf(source, 1, () => 'source'),
    tilesOf(total, 2, (index) => (index < meter ? 'meter' : 'source')),
  ];
  return {
    width: Math.max(width, Math.ceil(needed(tile))),
    height: tops[2]! + blockHeight + wordsHeight,
    font,
    faint,
    tile,
    groups: words.map((word, index) => ({
      ...word,
      x: xs[index]!,
      width: columns[index]! * (tile + GAP) - GAP,
      bottom: tops[index]! + blockHeight,
      tiles: tiles[index]!,
    })),
    arrow: { x: xs[2]! - arrowWidth + font * 0.5, y: tops[2]! + blockHeight / 2 },
    tileKWh,
  };
}

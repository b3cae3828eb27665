/** Stem from zero, band where 8 cases in 10 lie, dot at the most likely: where each mark goes. */
import { poundsRange, spokenPounds } from '../../words/numbers.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, widestWord, wrapText } from '../frame/text.ts';
import type { SpreadRow } from './series.ts';

export interface SpreadMark {
  readonly row: SpreadRow;
  /** Middle line of the row. */
  readonly y: number;
  readonly thickness: number;
  readonly nameLines: readonly string[];
  /** Under the name, in `note` size. */
  readonly priceLines: readonly string[];
  /** Null where the cost is not known: an open dashed bar takes its place. */
  readonly cost: {
    readonly stem: { readonly x: number; readonly width: number } | null;
    readonly band: { readonly x: number; readonly width: number };
    readonly dotX: number;
    /** Where the cost as designed stands; null where there is none. */
    readonly designedX: number | null;
    readonly labelX: number;
    readonly middle: string;
    readonly range: string;
  } | null;
}
export interface SpreadLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly note: number;
  readonly top: number;
  readonly bottom: number;
  readonly zeroX: number;
  readonly openBar: { readonly x: number; readonly width: number };
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly marks: readonly SpreadMark[];
  /** True where the range stands below the figure, since the line is too narrow for both. */
  readonly stacked: boolean;
}

const GAP = 12;
/** Height of a line over its type. */
const LINE = 1.15;
const SMALLEST_BAND = 4;
/** A row with its range below its figure holds so many heights of its type, else the rows run into each other. */
const STACKED_LINES = 2.7;
const SMALLEST_FONT = 13;
const ROW_HEIGHT = { desk: 62, table: 76, paper: 50 } as const;

/** Room for bars, px. */
const LEAST_BARS = 48;
/** How far a bold word may be wider than reckoned, px. */
const ROUGH = 6;

export function layOutSpread(
  rows: readonly SpreadRow[],
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): SpreadLayout {
  const { width, font: usualFont, faint } = measuresOf(size, place.width);
  const bottomMargin = faint + 18;
  const top = 6;
  // Many rows stand closer, but a row never gets lower than two lines of its name.
  const rowHeight = Math.max(
    2.3 * usualFont,
    Math.min(ROW_HEIGHT[size], (ROW_HEIGHT[size] * 6) / Math.max(rows.length, 1)),
  );
  const height = place.height ?? top + bottomMargin + rowHeight * Math.max(rows.length, 1);
  const bottom = height - bottomMargin;
  const step = (bottom - top) / Math.max(rows.length, 1);
  const stacked = width < 36 * usualFont;
  const font = stacked ? Math.max(SMALLEST_FONT, Math.min(usualFont, step / STACKED_LINES)) : usualFont;
  const thickness = Math.min(step * 0.5, font * 2.1);

  // As many lines of the price as fit under one of the name; where that is one, its column is wider.
  const note = Math.max(12.5, faint * 0.7);
  const notes = Math.min(2, Math.max(0, Math.floor((step - LINE * font) / (LINE * note))));
  const priceWidth = notes > 1 ? 0.6 : 1;
  const named = rows.flatMap((row) => [
    textWidth(row.name, font, row.ours),
    priceWidth * textWidth(row.price ?? '', note),
  ]);
  const middles = rows.map((row) => (row.cost ? textWidth(spokenPounds(row.cost.middle), font, true) : 0));
  const ranges = rows.map((row) => (row.cost ? textWidth(poundsRange(row.cost.low, row.cost.high), font) : 0));
  const labels = rows.map((_, index) =>
    stacked ? Math.max(middles[index]!, ranges[index]!) : middles[index]! + 8 + ranges[index]!,
  );
  const right = Math.max(...labels, font * 6) + GAP + 6;
  // A long word of a name in a narrow window takes some of the room of the bars, and none of their figures.
  const words = Math.max(0, ...rows.map((row) => widestWord([row.name], font, row.ours)));
  const nameWidth = Math.max(
    Math.min(Math.max(...named, font * 4), width * 0.36),
    Math.min(words + ROUGH, width * 0.45, width - right - LEAST_BARS - GAP - 4),
  );
  const left = nameWidth + GAP + 4;

  const costs = rows.flatMap((row) =>
    row.cost ? [row.cost.low, row.cost.middle, row.cost.high, row.designed ?? row.cost.middle] : [],
  );
  // As many axis figures as can stand side by side, five at most.
  const widestTick = textWidth(spokenPounds(Math.max(100, ...costs.map(Math.abs))), faint) + faint * 1.4;
  const plotWidth = Math.max(LEAST_BARS, width - left - right);
  const axis = axisFor(costs, Math.max(1, Math.min(5, Math.floor(plotWidth / widestTick) - 1)), 100);
  const x = placeOn(axis, left, left + plotWidth);
  const zeroX = x(0);

  const marks = rows.map((row, index): SpreadMark => {
    const y = top + step * (index + 0.5);
    const nameLines = wrapText(row.name, font, nameWidth + 2);
    // A name of two lines takes one from the price.
    const priceLines = wrapText(row.price ?? '', note, nameWidth + 2, Math.max(1, notes + 1 - nameLines.length));
    const shared = { row, y, thickness, nameLines, priceLines: notes > 0 ? priceLines : [] };
    if (row.cost === null) return { ...shared, cost: null };
    const { low, middle, high } = row.cost;
    const bandWidth = Math.max(x(high) - x(low), SMALLEST_BAND);
    const bandX = (x(low) + x(high)) / 2 - bandWidth / 2;
    const stem =
      low > 0
        ? { x: zeroX, width: Math.max(bandX - zeroX, 0) }
        : high < 0
          ? { x: bandX + bandWidth, width: Math.max(zeroX - bandX - bandWidth, 0) }
          : null;
    return {
      ...shared,
      cost: {
        stem,
        band: { x: bandX, width: bandWidth },
        dotX: x(middle),
        designedX: row.designed === undefined ? null : x(row.designed),
        labelX: Math.max(bandX + bandWidth, zeroX) + GAP,
        middle: spokenPounds(middle),
        range: poundsRange(low, high),
      },
    };
  });
  return {
    width,
    height,
    font,
    faint,
    note,
    top,
    bottom,
    zeroX,
    openBar: { x: zeroX, width: Math.min(font * 7, x(axis.high) - zeroX) },
    ticks: axis.ticks.map((value) => ({ x: x(value), label: spokenPounds(value) })),
    marks,
    stacked,
  };
}

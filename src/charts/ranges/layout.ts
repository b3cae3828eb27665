/** Stem, band and dot for quantities other than money: heat in kWh, seasonal factors. */
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import type { RangeRow, RangeScale } from './series.ts';

export interface RangeMark {
  readonly row: RangeRow;
  readonly y: number;
  readonly nameLines: readonly string[];
  readonly stem: { readonly x: number; readonly width: number };
  readonly band: { readonly x: number; readonly width: number };
  readonly dotX: number;
  readonly labelX: number;
}

export interface RangesLayout {
  readonly width: number;
  readonly height: number;
  readonly top: number;
  readonly bottom: number;
  readonly zeroX: number;
  readonly thickness: number;
  readonly font: number;
  readonly faint: number;
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly marks: readonly RangeMark[];
}

const ROW_HEIGHT = 52;
const TOP = 6;
const BOTTOM_MARGIN = 30;
const GAP = 12;
/** A band is never drawn so thin that its outline closes on itself. */
const SMALLEST_BAND = 4;

export function layOutRanges(
  rows: readonly RangeRow[],
  { tickLabel, smallestStep }: RangeScale,
  size: PictureSize,
  place: { readonly width?: number } = {},
): RangesLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const nameWidth = Math.min(Math.max(...rows.map((row) => textWidth(row.name, font, true)), 60), width * 0.32);
  const left = nameWidth + GAP + 6;
  const right = Math.max(...rows.map((row) => textWidth(row.label, font, true) + 8 + textWidth(row.range, font)), 60);
  const axis = axisFor(
    rows.flatMap((row) => [row.low, row.middle, row.high]),
    4,
    smallestStep,
  );
  const x = placeOn(axis, left, Math.max(left + 80, width - right - GAP - 8));
  const height = TOP + BOTTOM_MARGIN + ROW_HEIGHT * Math.max(1, rows.length);
  const zeroX = x(0);
  const marks = rows.map((row, index): RangeMark => {
    const bandWidth = Math.max(x(row.high) - x(row.low), SMALLEST_BAND);
    const bandX = Math.max((x(row.low) + x(row.high)) / 2 - bandWidth / 2, zeroX);
    return {
      row,
      y: TOP + ROW_HEIGHT * (index + 0.5),
      nameLines: wrapText(row.name, font, nameWidth + 2),
      stem: { x: zeroX, width: Math.max(0, bandX - zeroX) },
      band: { x: bandX, width: bandWidth },
      dotX: x(row.middle),
      labelX: bandX + bandWidth + GAP,
    };
  });
  return {
    width,
    height,
    top: TOP,
    bottom: height - BOTTOM_MARGIN,
    zeroX,
    thickness: 28,
    font,
    faint,
    ticks: axis.ticks.map((value) => ({ x: x(value), label: tickLabel(value) })),
    marks,
  };
}

/** Where each step of the bridge stands, with the dashed box of what was estimated for these days. */
import { exactPounds, poundsRange, signedPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import type { BridgeSeries, BridgeStep } from './series.ts';

export interface BridgeMark {
  readonly step: BridgeStep;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Baseline of the amount above the bar. */
  readonly labelY: number;
  readonly label: string;
  readonly nameLines: readonly string[];
  /** Dotted line on to the next step. */
  readonly on: { readonly y: number; readonly to: number } | null;
}
export interface BridgeLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  /** Of the names below; smaller where a word would not fit below its bar. */
  readonly nameFont: number;
  readonly left: number;
  readonly baseY: number;
  readonly namesY: number;
  readonly marks: readonly BridgeMark[];
  readonly box: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly lines: readonly string[];
    readonly textX: number;
    readonly textY: number;
  } | null;
}

const HEIGHT = { desk: 420, table: 460, paper: 330 } as const;
const SMALLEST_BAR = 2;
const SMALLEST_NAME = 0.7;

export function layOutBridge(
  series: BridgeSeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): BridgeLayout {
  const { width, font } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const left = 8;
  const top = font * 2.2;
  const step = (width - left - 8) / series.steps.length;
  const thickness = step * 0.62;
  const lineHeight = font * 1.25;
  const words = series.steps.flatMap((one) => one.name.split(/\s+/));
  const widestWord = Math.max(...words.map((word) => textWidth(word, font)));
  const nameFont = font * Math.min(1, Math.max(SMALLEST_NAME, (step - 6) / widestWord));
  const names = series.steps.map((one) => wrapText(one.name, nameFont, step - 5, 3));
  const bottom = font + Math.max(...names.map((lines) => lines.length)) * lineHeight + font * 1.6;
  const known = series.steps.flatMap((one) => [one.from, one.to]);
  const axis = axisFor(series.expected ? [...known, series.expected.low, series.expected.high] : known, 4, 100);
  // No figures on this axis: the top is the highest mark itself, not the next rounded figure.
  const tops = [...known, series.expected?.high ?? 0].filter(Number.isFinite);
  const tight = { ...axis, low: Math.min(0, ...tops), high: Math.max(100, ...tops) };
  const y = placeOn(tight, height - bottom, top);
  const at = (value: number) => (Number.isFinite(value) ? y(value) : y(0));

  const marks = series.steps.map((one, index): BridgeMark => {
    const x = left + index * step + (step - thickness) / 2;
    const upper = Math.min(at(one.from), at(one.to));
    // The amount paid stands above the box of what was estimated, where the box reaches higher than the bar.
    const boxTop = one.kind === 'paid' && series.expected ? at(series.expected.high) : upper;
    const barHeight = Math.max(Math.abs(at(one.from) - at(one.to)), SMALLEST_BAR);
    return {
      step: one,
      x,
      y: upper,
      width: thickness,
      height: barHeight,
      labelY: Math.min(upper, boxTop) - font * 0.5,
      label: one.kind === 'part' ? signedPounds(one.amount) : exactPounds(one.amount),
      nameLines: names[index]!,
      on: one.kind === 'paid' ? null : { y: at(one.to), to: x + step },
    };
  });
  return {
    width,
    height,
    font,
    nameFont,
    left,
    baseY: y(0),
    namesY: Math.max(y(0), y(tight.low)) + font * 1.35,
    marks,
    box: series.expected
      ? layOutBox(series.expected, at, marks, { step, thickness, font, lineHeight, left, top, floor: y(0) })
      : null,
  };
}

/** The dashed box about the last bar, and its words to the left where no step stands in their way. */
function layOutBox(
  expected: { low: number; high: number },
  at: (value: number) => number,
  marks: readonly BridgeMark[],
  room: { step: number; thickness: number; font: number; lineHeight: number; left: number; top: number; floor: number },
): BridgeLayout['box'] {
  const { font, lineHeight } = room;
  const last = marks.at(-1)!;
  const margin = Math.min(18, (room.step - room.thickness) / 2);
  const y = at(expected.high);
  const height = Math.max(at(expected.low) - y, 3);
  const lines = [
    say('estimated for these days'),
    say('and prices: {range}', { range: poundsRange(expected.low, expected.high) }),
  ];
  const textX = last.x - margin - 10;
  const textLeft = textX - Math.max(...lines.map((line) => textWidth(line, font)));
  // The words go below the lowest step that stands over them, else above the base line.
  const inWay = marks.filter((mark) => mark.step.kind === 'part' && mark.x + mark.width > textLeft && mark.x < textX);
  const below = Math.max(y + height / 2 - lineHeight / 2, ...inWay.map((mark) => mark.y + mark.height + font * 0.8));
  const textY = Math.min(below + font, room.floor - lineHeight - font * 0.5);
  return { x: last.x - margin, y, width: last.width + 2 * margin, height, lines, textX, textY };
}

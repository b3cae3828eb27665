/** Two lines with their bands over the years: where each mark goes. */
import { roughPence } from '../../words/lifetime.ts';
import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, niceStep, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, wrapText } from '../frame/text.ts';
import type { YearsLine, YearsSeries } from './series.ts';

export interface YearsMark {
  readonly whose: 'pump' | 'beside';
  /** Paths of SVG. */
  readonly line: string;
  readonly band: string;
  readonly nameLines: readonly string[];
  readonly total: string;
  readonly labelX: number;
  /** Baseline of the first line of the label. */
  readonly labelY: number;
}
export interface YearsLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly yearTicks: readonly { readonly x: number; readonly label: string }[];
  readonly moneyTicks: readonly { readonly y: number; readonly label: string }[];
  readonly marks: readonly YearsMark[];
  readonly breakEven: {
    readonly x: number;
    readonly y: number;
    readonly label: string;
    readonly labelX: number;
    readonly anchor: 'start' | 'end';
  } | null;
}

const HEIGHT = { desk: 360, table: 420, paper: 280 } as const;
const GAP = 10;

export function layOutYears(
  series: YearsSeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): YearsLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const lines = [series.pump, series.beside];
  const values = lines.flatMap(({ points }) => points.flatMap(({ low, value, high }) => [low, value, high]));
  const axis = axisFor(values, height > 300 ? 5 : 4, 100);
  const money = axis.ticks.map((value) => ({ value, label: spokenPounds(value) }));
  const left = Math.max(...money.map(({ label }) => textWidth(label, faint))) + GAP;
  const widest = (texts: readonly string[]) => Math.max(...texts.map((text) => textWidth(text, font, true)));
  const names = lines.map(({ name }) => name);
  // A name may break between its words and behind its hyphens, never within one.
  const parts = names.flatMap((name) => name.split(/\s+|(?<=\p{L}-)(?=\p{L})/u));
  const nameWidth = Math.min(widest(names), Math.max(width * 0.2, widest(parts)), width * 0.4);
  const right = width - nameWidth - GAP - 6;
  // The line of the measure, and below it the label of the break-even.
  const top = faint * 1.3 + font * 1.6;
  const bottom = height - faint * 2.9;
  const y = placeOn(axis, bottom, top);
  const years = Math.max(1, series.pump.points.length - 1);
  const x = placeOn({ low: 0, high: years }, left, right);
  const step = Math.max(1, niceStep(years / Math.max(2, Math.min(6, Math.floor((right - left) / (faint * 3))))));
  const yearStep = Number.isInteger(step) ? step : Math.ceil(step);
  const labels = placeLabels(
    lines.map(({ points }) => y(points.at(-1)!.value)),
    font,
    { top, bottom },
    lines.map(({ name }) => wrapText(name, font, nameWidth + 2, 3)),
  );
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    top,
    bottom,
    yearTicks: Array.from({ length: Math.floor(years / yearStep) + 1 }, (_, index) => index * yearStep).map((year) => ({
      x: x(year),
      label: year === 0 ? say('now') : String(year),
    })),
    moneyTicks: money.map(({ value, label }) => ({ y: y(value), label })),
    marks: lines.map((line, index) => ({
      whose: index === 0 ? 'pump' : 'beside',
      line: linePath(line, x, y),
      band: bandPath(line, x, y),
      nameLines: labels[index]!.nameLines,
      total: spokenPounds(roughPence(line.points.at(-1)!.value)),
      labelX: right + GAP,
      labelY: labels[index]!.y,
    })),
    breakEven: series.breakEven ? markBreakEven(series.breakEven, { x, y, left, right, font }) : null,
  };
}

type Place = (value: number) => number;
const at = (x: number, y: number) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** Corner points of a line: within a year it rises evenly, at the end of it equipment is a step. */
function corners({ points }: YearsLine, pick: 'value' | 'low' | 'high'): [number, number][] {
  return points.flatMap((point): [number, number][] => {
    const value = point[pick];
    if (point.year === 0 || point.outlay === 0) return [[point.year, value]];
    return [
      [point.year, value - point.outlay],
      [point.year, value],
    ];
  });
}

function linePath(line: YearsLine, x: Place, y: Place): string {
  return `M${corners(line, 'value')
    .map(([year, pence]) => at(x(year), y(pence)))
    .join('L')}`;
}

function bandPath(line: YearsLine, x: Place, y: Place): string {
  const edge = (pick: 'low' | 'high') => corners(line, pick).map(([year, pence]) => at(x(year), y(pence)));
  return `M${[...edge('high'), ...edge('low').reverse()].join('L')}Z`;
}

/** Labels at the ends of their lines, pushed apart where the lines end close together. */
function placeLabels(
  ends: readonly number[],
  font: number,
  { top, bottom }: { readonly top: number; readonly bottom: number },
  names: readonly (readonly string[])[],
): { readonly y: number; readonly nameLines: readonly string[] }[] {
  const heights = names.map((lines) => (lines.length + 1) * font * 1.15);
  const order = ends.map((_, index) => index).sort((a, b) => ends[a]! - ends[b]!);
  const [upper, lower] = order as [number, number];
  const middleOf = (index: number) => ends[index]! - heights[index]! / 2;
  let upperTop = middleOf(upper);
  let lowerTop = middleOf(lower);
  const overlap = upperTop + heights[upper]! + font * 0.4 - lowerTop;
  if (overlap > 0) {
    upperTop -= overlap / 2;
    lowerTop += overlap / 2;
  }
  const low = bottom - heights[lower]!;
  if (lowerTop > low) {
    upperTop -= Math.max(0, upperTop + heights[upper]! + font * 0.4 - low);
    lowerTop = low;
  }
  if (upperTop < top - font) {
    upperTop = top - font;
    lowerTop = Math.max(lowerTop, upperTop + heights[upper]! + font * 0.4);
  }
  const tops = { [upper]: upperTop, [lower]: lowerTop };
  return names.map((nameLines, index) => ({ y: tops[index]! + font * 0.9, nameLines }));
}

function markBreakEven(
  { years, pence }: NonNullable<YearsSeries['breakEven']>,
  frame: { x: Place; y: Place; left: number; right: number; font: number },
): NonNullable<YearsLayout['breakEven']> {
  const label = say('the same after {years, plural, one {one year} other {# years}}', { years: Math.round(years) });
  const x = frame.x(years);
  const wide = textWidth(label, frame.font, true) + 8;
  const anchor = x + wide <= frame.right ? 'start' : 'end';
  return { x, y: frame.y(pence), label, anchor, labelX: anchor === 'start' ? x + 8 : x - 8 };
}

/** One line of cost against one thing that drives it: where each mark goes. */
import type { Driver } from '../../model/what-drives/what-drives.ts';
import { driverAxisName, driverTick, shownLabel } from '../../words/drivers.ts';
import { factor, spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';

export interface DriverMark {
  readonly x: number;
  readonly y: number;
  /** Empty where the axis has no room for it. */
  readonly label: string;
  readonly factor: string;
  readonly now: boolean;
}
export interface DriverLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly name: { readonly text: string; readonly x: number; readonly font: number };
  readonly line: string;
  readonly marks: readonly DriverMark[];
  readonly moneyTicks: readonly { readonly y: number; readonly label: string }[];
  readonly nowLabel: {
    readonly x: number;
    readonly y: number;
    readonly text: string;
    readonly anchor: 'start' | 'middle' | 'end';
  } | null;
}

const HEIGHT = { desk: 250, table: 380, paper: 220 } as const;

/** `highestPence` is the top of all pictures that stand side by side, so that they share a scale. */
export function layOutDriver(
  driver: Driver,
  size: PictureSize,
  place: { width?: number; height?: number; highestPence?: number } = {},
): DriverLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const { points } = driver;
  const axis = axisFor([...points.map(({ costPence }) => costPence), place.highestPence ?? 0], 4, 100);
  const money = axis.ticks.map((value) => ({ value, label: spokenPounds(value) }));
  const left =
    Math.max(...[...money.map(({ label }) => label), say('seasonal factor')].map((text) => textWidth(text, faint))) +
    10;
  const right = width - font * 1.6;
  const top = font * 1.9;
  const bottom = height - faint * 4.1;
  const inner = left + font * 1.4;
  const [first, last] = [points[0]!.at, points.at(-1)!.at];
  const x = placeOn(last > first ? { low: first, high: last } : { low: first - 1, high: first + 1 }, inner, right);
  const y = placeOn(axis, bottom, top);
  const marks = labelled(
    points.map((point) => ({
      x: x(point.at),
      y: y(point.costPence),
      label: driverTick(driver.name, point.at),
      factor: factor(point.factor),
      now: point.at === driver.now,
    })),
    faint,
  );
  const now = points.find(({ at }) => at === driver.now);
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    top,
    bottom,
    name: placeName(driverAxisName(driver.name), (left + right) / 2, { width, faint }),
    line: `M${marks.map((mark) => `${mark.x.toFixed(1)} ${mark.y.toFixed(1)}`).join('L')}`,
    marks,
    moneyTicks: money.map(({ value, label }) => ({ y: y(value), label })),
    nowLabel: now
      ? placeNow(
          {
            x: x(now.at),
            y: y(now.costPence),
            costPence: now.costPence,
            rising: points.at(-1)!.costPence >= points[0]!.costPence,
          },
          { font, left, right },
        )
      : null,
  };
}

/** The label of what is shown stays; of the others those that would touch a label already there fall away, from left to right. */
function labelled(marks: readonly DriverMark[], faint: number): DriverMark[] {
  const half = (mark: DriverMark) => textWidth(mark.label, faint) / 2 + 4;
  const kept = marks.filter(({ now }) => now);
  for (const mark of marks) {
    if (kept.includes(mark)) continue;
    if (kept.every((other) => Math.abs(other.x - mark.x) >= half(other) + half(mark))) kept.push(mark);
  }
  return marks.map((mark) => (kept.includes(mark) ? mark : { ...mark, label: '', factor: '' }));
}

/** In the middle of its axis as far as the picture has room on both sides, and smaller where it is wider than the picture. */
function placeName(text: string, middle: number, { width, faint }: { readonly width: number; readonly faint: number }) {
  const wide = textWidth(text, faint);
  const font = faint * Math.min(1, (width - 4) / wide);
  const half = Math.min(wide, width - 4) / 2 + 2;
  return { text, x: Math.max(half, Math.min(middle, width - half)), font };
}

/** Beside the dot, on the side where the line lies lower, so that no step is covered. */
function placeNow(
  mark: { readonly x: number; readonly y: number; readonly costPence: number; readonly rising: boolean },
  frame: { readonly font: number; readonly left: number; readonly right: number },
): NonNullable<DriverLayout['nowLabel']> {
  const { font, left, right } = frame;
  const text = shownLabel(spokenPounds(mark.costPence));
  const wide = textWidth(text, font, true);
  const y = mark.y - font * 0.8;
  if (mark.rising && mark.x + 6 - wide >= left) return { x: mark.x + 6, y, text, anchor: 'end' };
  if (!mark.rising && mark.x - 6 + wide <= right) return { x: mark.x - 6, y, text, anchor: 'start' };
  // No room on that side: above the other one, clear of the steps.
  return mark.rising
    ? { x: left + 6, y: y - font * 1.2, text, anchor: 'start' }
    : { x: right, y: y - font * 1.2, text, anchor: 'end' };
}

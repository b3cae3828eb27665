/** Bars from zero, the upper part on the lower, both named beside December. */
import { monthNames, shortMonthNames, spokenCount, spokenPounds } from '../../words/numbers.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';
import type { MonthParts } from './series.ts';

export interface MonthBar {
  readonly month: string;
  readonly x: number;
  readonly width: number;
  readonly lower: { readonly y: number; readonly height: number };
  readonly upper: { readonly y: number; readonly height: number };
}
export interface MonthPartsLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly baseY: number;
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly bars: readonly MonthBar[];
  readonly names: readonly { readonly text: string; readonly x: number; readonly y: number }[];
}

const HEIGHT = { desk: 300, table: 380, paper: 220 } as const;
const atLeastZero = (value: number | undefined): number => (Number.isFinite(value) ? Math.max(0, value!) : 0);

export function layOutMonthParts(
  parts: MonthParts,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): MonthPartsLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const baseY = height - faint - 14;
  const sums = monthNames().map(
    (_, month) => atLeastZero(parts.lower.values[month]) + atLeastZero(parts.upper.values[month]),
  );
  const axis = axisFor(sums, 4, parts.what === 'heat' ? 10 : 100);
  const spoken = parts.what === 'heat' ? spokenCount : spokenPounds;
  const labels = axis.ticks.map((value) => spoken(value));
  const left = Math.max(...labels.map((label) => textWidth(label, faint))) + 12;
  const right = width - Math.max(...[parts.lower, parts.upper].map(({ name }) => textWidth(name, font))) - 16;
  const y = placeOn(axis, baseY, faint);
  const step = (right - left) / 12;
  const bars = monthNames().map((_, month): MonthBar => {
    const lower = y(atLeastZero(parts.lower.values[month]));
    const top = y(sums[month]!);
    return {
      month: shortMonthNames()[month]!,
      x: left + step * (month + 0.18),
      width: step * 0.64,
      lower: { y: lower, height: baseY - lower },
      upper: { y: top, height: lower - top },
    };
  });
  // The two names never lie on each other nor below the base, however thin the parts of December are.
  const { lower, upper } = bars[11]!;
  const middle = ({ y: from, height: tall }: { y: number; height: number }) => from + tall / 2 + font * 0.35;
  const hasUpper = parts.upper.values.some((value) => value !== 0);
  const upperY = Math.min(middle(upper), baseY - font * 1.3);
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    baseY,
    ticks: axis.ticks.map((value, index) => ({ y: y(value), label: labels[index]! })),
    bars,
    // Electric heating has nothing fixed: what is not there is not named.
    names: hasUpper
      ? [
          { text: parts.upper.name, x: right + 8, y: upperY },
          { text: parts.lower.name, x: right + 8, y: Math.max(middle(lower), upperY + font * 1.2) },
        ]
      : [{ text: parts.lower.name, x: right + 8, y: middle(lower) }],
  };
}

/** A band for what was estimated in the weather that came, a short dashed line for a usual year, a mark for the meter. */

import { monthOf, yearOf } from '../../model/calendar/civil.ts';
import type { FollowedMonth } from '../../model/shapes/bill-check.ts';
import { shortMonthNames, spokenCount } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, fromZero, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';
import { type FollowingSeries, shownMonths } from './series.ts';

export interface FollowingMark {
  readonly month: string;
  readonly name: string;
  /** Under January and the first month. */
  readonly year: string | null;
  readonly x: number;
  readonly width: number;
  readonly middle: number;
  readonly band: { readonly y: number; readonly height: number };
  readonly expectedY: number;
  readonly estimatedY: number;
  readonly actual: { readonly y: number; readonly label: string; readonly labelY: number } | null;
  readonly verdict: FollowedMonth['verdict'];
  readonly weatherKnown: boolean;
}
export interface FollowingName {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Mark that stands before it; none before the second line of a name. */
  readonly mark: 'actual' | 'band' | 'estimated' | null;
}
export interface FollowingLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly baseY: number;
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly marks: readonly FollowingMark[];
  readonly names: readonly FollowingName[];
}

const HEIGHT = { desk: 330, table: 400, paper: 250 } as const;
const WIDEST_STEP = 90;
/** Room of a mark before its name. */
export const KEY_WIDTH = 26;
const markNames = () => ({
  actual: say('the meter'),
  band: say('estimated, in'),
  band2: say('this weather'),
  estimated: say('normal weather'),
});

export function layOutFollowing(
  series: FollowingSeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): FollowingLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const months = shownMonths(series);
  const baseY = height - faint * 2.4 - 10;
  const highs = months.flatMap(({ highKWh, estimatedKWh, actualKWh }) => [
    fromZero(highKWh),
    fromZero(estimatedKWh),
    fromZero(actualKWh ?? 0),
  ]);
  const axis = axisFor(highs, 4, 10);
  const labels = axis.ticks.map(spokenCount);
  const left = Math.max(...labels.map((label) => textWidth(label, faint))) + 12;
  const longest = Math.max(...Object.values(markNames()).map((name) => textWidth(name, font)));
  const room = width - longest - KEY_WIDTH - 20 - left;
  const step = Math.min(WIDEST_STEP, room / Math.max(1, months.length));
  const right = left + step * Math.max(1, months.length);
  const y = placeOn(axis, baseY, font * 1.6);
  const marks = months.map((month, index): FollowingMark => {
    const x = left + step * (index + 0.2);
    const [low, high] = [y(fromZero(month.lowKWh)), y(fromZero(month.highKWh))];
    const actualY = month.actualKWh === null ? null : y(fromZero(month.actualKWh));
    const showsYear = index === 0 || monthOf(month.from) === 1;
    return {
      month: month.month,
      name: shortMonthNames()[monthOf(month.from) - 1]!,
      year: showsYear ? String(yearOf(month.from)) : null,
      x,
      width: step * 0.6,
      middle: x + step * 0.3,
      band: { y: high, height: Math.max(low - high, 2) },
      expectedY: y(fromZero(month.expectedKWh)),
      estimatedY: y(fromZero(month.estimatedKWh)),
      actual:
        actualY === null
          ? null
          : {
              y: actualY,
              label: spokenCount(month.actualKWh!),
              // Above the band, so that it lies on none of its lines.
              labelY: Math.min(high, actualY - font * 0.35) - font * 0.35,
            },
      verdict: month.verdict,
      weatherKnown: month.weatherKnown,
    };
  });
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    baseY,
    ticks: axis.ticks.map((value, index) => ({ y: y(value), label: labels[index]! })),
    marks,
    names: placeNames(marks.at(-1), right + 14 + KEY_WIDTH, font, baseY),
  };
}

/** Names beside the last month with their marks, one below the other in the order of the marks there. */
function placeNames(last: FollowingMark | undefined, x: number, font: number, baseY: number): FollowingName[] {
  if (!last) return [];
  const line = font * 1.25;
  const names = markNames();
  const wanted = [
    ...(last.actual ? [{ mark: 'actual' as const, lines: [names.actual], at: last.actual.y }] : []),
    { mark: 'band' as const, lines: [names.band, names.band2], at: last.expectedY },
    { mark: 'estimated' as const, lines: [names.estimated], at: last.estimatedY },
  ].toSorted((a, b) => a.at - b.at);
  const lines = wanted.flatMap(({ mark, lines: texts }) =>
    texts.map((text, i) => ({ text, mark: i === 0 ? mark : null })),
  );
  // Never so low that those below have no room left above the base line.
  const first = Math.max(font, Math.min(wanted[0]!.at + font * 0.35, baseY - (lines.length - 1) * line));
  return lines.map(({ text, mark }, i) => ({ text, mark, x, y: first + i * line }));
}

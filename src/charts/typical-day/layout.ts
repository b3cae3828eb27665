/** Two stepped lines over the 24 hours: the day with the finding filled, the other dashed. */
import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped, uncapitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, decimalsOf, fromZero, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';
import { type DaySeries, mostDifferent } from './series.ts';

export interface DayLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly baseY: number;
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly hours: readonly { readonly x: number; readonly label: string }[];
  /** Outline of the filled day, closed along the base line. */
  readonly seenPath: string;
  readonly otherwisePath: string | null;
  readonly names: readonly { readonly text: string; readonly x: number; readonly y: number }[];
}

const HEIGHT = { desk: 230, table: 300, paper: 190 } as const;
const EVERY_HOURS = 4;

export function layOutDay(
  series: DaySeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): DayLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const baseY = height - faint - 12;
  const axis = axisFor([...series.seenKW, ...(series.otherwiseKW ?? [])].map(fromZero), 3, 0.2);
  const labels = axis.ticks.map(
    (value, i) => `${grouped(value, decimalsOf(axis.step))}${i === axis.ticks.length - 1 ? ' kW' : ''}`,
  );
  const left = Math.max(...labels.map((label) => textWidth(label, faint))) + 12;
  const right = width - font;
  const y = placeOn(axis, baseY, font * 1.4);
  const x = (reading: number) => left + ((right - left) * reading) / series.seenKW.length;
  const steps = (values: readonly number[]) =>
    values
      .map(
        (value, i) =>
          `${i === 0 ? 'M' : 'L'}${round(x(i))} ${round(y(fromZero(value)))}L${round(x(i + 1))} ${round(y(fromZero(value)))}`,
      )
      .join('');
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    baseY,
    ticks: axis.ticks.map((value, i) => ({ y: y(value), label: labels[i]! })),
    hours: Array.from({ length: 24 / EVERY_HOURS + 1 }, (_, i) => ({
      x: left + ((right - left) * i * EVERY_HOURS) / 24,
      label: clockTimeOf(i * EVERY_HOURS * 60),
    })),
    seenPath: `${steps(series.seenKW)}L${round(right)} ${round(baseY)}L${round(left)} ${round(baseY)}Z`,
    otherwisePath: series.otherwiseKW ? steps(series.otherwiseKW) : null,
    names: placeNames(series, { x, y, font, left, right }),
  };
}

/** The finding's name beside where the two days differ most. */
function placeNames(
  series: DaySeries,
  at: { x: (i: number) => number; y: (kW: number) => number; font: number; left: number; right: number },
): DayLayout['names'] {
  const { seenKW } = series;
  const place = mostDifferent(series);
  const top = at.y(fromZero(seenKW[place]!)) + at.font * 0.9;
  const texts = [uncapitalised(series.name), ...(series.otherwiseKW ? [say('dashed: days as cold')] : [])];
  const widest = Math.max(...texts.map((text) => textWidth(text, at.font)));
  let end = place;
  // Past the neighbours that stand as high, so that the words lie on none of it.
  while (end + 1 < seenKW.length && at.y(fromZero(seenKW[end + 1]!)) < top + at.font * 1.6) end++;
  const after = at.x(end + 1) + 10;
  let start = place;
  while (start > 0 && at.y(fromZero(seenKW[start - 1]!)) < top + at.font * 1.6) start--;
  const before = at.x(start) - 10 - widest;
  // Where neither side has room, as in a low picture, they stand in one line above the highest reading.
  if (after + widest > at.right && before < at.left + 4) {
    const gap = at.font * 1.5;
    const whole = texts.reduce((sum, text) => sum + textWidth(text, at.font) + gap, -gap);
    let x = Math.max(at.left, Math.min(at.x(place), at.right - whole));
    return texts.map((text) => {
      const name = { text, x, y: at.font };
      x += textWidth(text, at.font) + gap;
      return name;
    });
  }
  const x = after + widest <= at.right ? after : before;
  return texts.map((text, i) => ({ text, x, y: top + i * at.font * 1.25 }));
}

const round = (value: number) => Math.round(value * 10) / 10;

/** Two lines over time, a mark a visit: brine in filled, brine out open; dashed where the brine freezes. */
import { toDayNumber } from '../../model/calendar/civil.ts';
import { degrees, shortDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';
import { type BrineSeries, shownReadings } from './series.ts';

export interface BrineMark {
  readonly date: string;
  readonly x: number;
  readonly inY: number;
  readonly outY: number | null;
  /** The temperature of the brine in, above its mark. */
  readonly label: string;
  /** The day below the axis; null where the one before it leaves no room. */
  readonly day: string | null;
}
export interface BrineLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly baseY: number;
  readonly zeroY: number;
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly marks: readonly BrineMark[];
  readonly freezingY: number | null;
  /** Names beside the last marks, never on one another. */
  readonly names: readonly { readonly text: string; readonly y: number }[];
}

const HEIGHT = { desk: 300, table: 380, paper: 220 } as const;
const ROOM_OF_DAY = 14;

export function layOutBrine(
  series: BrineSeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): BrineLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const readings = shownReadings(series);
  const baseY = height - faint - 14;
  const { freezingC } = series;
  const axis = axisFor([...readings.flatMap(({ inC, outC }) => [inC, outC ?? inC]), freezingC ?? 0], 4, 1);
  const labels = axis.ticks.map((value) => degrees(value));
  const left = Math.max(...labels.map((label) => textWidth(label, faint))) + 12;
  const texts = { in: say('brine in'), out: say('brine out'), freezes: say('brine freezes') };
  const right = width - Math.max(...Object.values(texts).map((text) => textWidth(text, font))) - 16;
  const y = placeOn(axis, baseY, font * 1.8);
  const days = readings.map(({ date }) => toDayNumber(date));
  const [first, last] = [days[0] ?? 0, days.at(-1) ?? 0];
  const edge = textWidth(readings[0] ? shortDate(readings[0].date) : '', faint) / 2;
  const x = last > first ? placeOn({ low: first, high: last }, left + edge, right - edge) : () => (left + right) / 2;
  let taken = Number.NEGATIVE_INFINITY;
  const marks = readings.map((reading, i): BrineMark => {
    const at = x(days[i]!);
    const text = shortDate(reading.date);
    const half = textWidth(text, faint) / 2;
    const fits = at - half > taken + ROOM_OF_DAY;
    if (fits) taken = at + half;
    return {
      date: reading.date,
      x: at,
      inY: y(reading.inC),
      outY: reading.outC === null ? null : y(reading.outC),
      label: degrees(reading.inC),
      day: fits ? text : null,
    };
  });
  const end = marks.at(-1);
  const freezingY = freezingC === null ? null : y(freezingC);
  const wanted = [
    ...(end ? [{ text: texts.in, y: end.inY }] : []),
    ...(end && end.outY !== null ? [{ text: texts.out, y: end.outY }] : []),
    ...(freezingY === null ? [] : [{ text: texts.freezes, y: freezingY }]),
  ].toSorted((a, b) => a.y - b.y);
  let above = Number.NEGATIVE_INFINITY;
  const names = wanted.map((name) => {
    above = Math.max(name.y + font * 0.35, above + font * 1.15);
    return { text: name.text, y: above };
  });
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    baseY,
    zeroY: y(0),
    ticks: axis.ticks.map((value, i) => ({ y: y(value), label: labels[i]! })),
    marks,
    freezingY,
    names,
  };
}

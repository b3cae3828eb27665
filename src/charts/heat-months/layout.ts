/** Heat needed by month: rooms below, hot water on top, as bars from zero. */
import { MONTH_NAMES, SHORT_MONTH_NAMES, spokenCount } from '../../words/numbers.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';

export interface HeatMonths {
  readonly spaceKWh: readonly number[];
  readonly waterKWh: readonly number[];
}
export interface HeatBar {
  readonly month: string;
  readonly x: number;
  readonly width: number;
  readonly roomsY: number;
  readonly roomsHeight: number;
  readonly waterY: number;
  readonly waterHeight: number;
}
export interface HeatMonthsLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly baseY: number;
  readonly ticks: readonly { readonly y: number; readonly label: string }[];
  readonly bars: readonly HeatBar[];
  /** Where the two parts are named: beside the first bar high enough for it. */
  readonly names: { readonly x: number; readonly roomsY: number; readonly waterY: number };
}

const HEIGHT = { desk: 300, table: 380, paper: 220 } as const;
const known = (value: number | undefined): number => (Number.isFinite(value) ? Math.max(0, value!) : 0);

export function layOutHeatMonths(
  { spaceKWh, waterKWh }: HeatMonths,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): HeatMonthsLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const baseY = height - faint - 14;
  const sums = MONTH_NAMES.map((_, month) => known(spaceKWh[month]) + known(waterKWh[month]));
  const axis = axisFor(sums, 4, 10);
  const tickLabels = axis.ticks.map((value) => spokenCount(value));
  const left = Math.max(...tickLabels.map((label) => textWidth(label, faint))) + 12;
  // Room at the right for the names of the two parts, beside December's bar.
  const right = width - textWidth('hot water', font) - 14;
  const y = placeOn(axis, baseY, faint);
  const step = (right - left) / 12;
  const barWidth = step * 0.64;
  const bars = MONTH_NAMES.map((_, month): HeatBar => {
    const rooms = known(spaceKWh[month]);
    const water = known(waterKWh[month]);
    return {
      month: SHORT_MONTH_NAMES[month]!,
      x: left + step * month + (step - barWidth) / 2,
      width: barWidth,
      roomsY: y(rooms),
      roomsHeight: baseY - y(rooms),
      waterY: y(rooms + water),
      waterHeight: y(rooms) - y(rooms + water),
    };
  });
  const last = bars[11]!;
  const waterY = last.waterY + last.waterHeight / 2 + font * 0.35;
  return {
    width,
    height,
    font,
    faint,
    left,
    right,
    baseY,
    ticks: axis.ticks.map((value, index) => ({ y: y(value), label: tickLabels[index]! })),
    bars,
    names: {
      x: right + 8,
      waterY: Math.min(waterY, baseY - font * 1.5),
      // The two names never lie on each other, however thin the parts are.
      roomsY: Math.max(
        last.roomsY + last.roomsHeight / 2 + font * 0.35,
        Math.min(waterY, baseY - font * 1.5) + font * 1.2,
      ),
    },
  };
}

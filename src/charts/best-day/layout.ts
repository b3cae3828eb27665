/** Three strips over one day: the price as bars, the heat as a filled step beside the usual hours, the rooms as a line. */
import { clockTimeOf } from '../../model/calendar/civil.ts';
import { grouped, pence, rangeSaid } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { axisFor, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import type { BestDaySeries } from './series.ts';

interface Strip {
  readonly name: string;
  readonly nameY: number;
  readonly baseY: number;
}
export interface BestDayLayout {
  readonly width: number;
  readonly height: number;
  readonly faint: number;
  readonly left: number;
  readonly right: number;
  readonly price: Strip & { readonly path: string };
  readonly heat: Strip & { readonly bestPath: string; readonly usualPath: string };
  readonly rooms: Strip & { readonly path: string; readonly band: { readonly y: number; readonly height: number } };
  readonly hours: readonly { readonly x: number; readonly label: string }[];
}

const HEIGHT = { desk: 300, table: 380, paper: 260 } as const;
const EVERY_HOURS = 6;
/** Rooms are drawn over at least this many kelvin, so that a tenth of one looks small. */
const LEAST_K = 2;

export function layOutBestDay(
  series: BestDaySeries,
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): BestDayLayout {
  const { width, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const [left, right] = [2, width - 4];
  const x = (half: number) => left + ((right - left) * half) / 48;
  const strip = (height - faint - 12) / 3;
  /** Under each name what it measures. */
  const top = (nth: number) => strip * nth + faint * 1.5;
  const base = (nth: number) => strip * (nth + 1) - 6;
  const steps = (values: readonly number[], y: (value: number) => number) =>
    values
      .map((value, i) => `${i === 0 ? 'M' : 'L'}${one(x(i))} ${one(y(value))}L${one(x(i + 1))} ${one(y(value))}`)
      .join('');
  const closed = (values: readonly number[], y: (value: number) => number) =>
    `${steps(values, y)}L${one(right)} ${one(y(0))}L${one(left)} ${one(y(0))}Z`;
  const price = placeOn(axisFor(series.pencePerKWh, 2), base(0), top(0));
  const heat = placeOn(axisFor([...series.bestKW, ...series.usualKW], 2), base(1), top(1));
  const [least, most] = [Math.min(...series.roomC), Math.max(...series.roomC)];
  const spare = Math.max(0, LEAST_K - (most - least)) / 2;
  const rooms = placeOn({ low: least - spare, high: most + spare }, base(2), top(2));
  const named = (nth: number, name: string) => ({ name, nameY: strip * nth + faint, baseY: base(nth) });
  return {
    width,
    height,
    faint,
    left,
    right,
    price: {
      ...named(
        0,
        say('price on a cold day, {range}', {
          range: rangeSaid(pence(Math.min(...series.pencePerKWh)), pence(Math.max(...series.pencePerKWh))),
        }),
      ),
      baseY: price(0),
      path: closed(series.pencePerKWh, price),
    },
    heat: {
      ...named(1, say('heat, to {most} kW; dashed: as usual', { most: grouped(Math.max(...series.bestKW), 1) })),
      bestPath: closed(series.bestKW, heat),
      usualPath: steps(series.usualKW, heat),
    },
    rooms: {
      ...named(2, say('rooms, {range} °C', { range: rangeSaid(grouped(least, 1), grouped(most, 1)) })),
      path: series.roomC.map((c, i) => `${i === 0 ? 'M' : 'L'}${one(x(i + 1))} ${one(rooms(c))}`).join(''),
      band: { y: rooms(most), height: rooms(least) - rooms(most) },
    },
    hours: Array.from({ length: 24 / EVERY_HOURS + 1 }, (_, i) => ({
      x: x(i * EVERY_HOURS * 2),
      label: clockTimeOf(i * EVERY_HOURS * 60),
    })),
  };
}

const one = (value: number) => Math.round(value * 10) / 10;

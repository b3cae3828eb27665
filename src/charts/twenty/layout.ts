/** Twenty equally likely savings as dots in bins, on the sides "costs more" and "costs less". */
import { spokenPounds } from '../../words/numbers.ts';
import { axisFor, niceStep, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';

export interface TwentyDot {
  readonly x: number;
  readonly y: number;
  readonly side: 'less' | 'more';
}
export interface TwentyLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly top: number;
  readonly base: number;
  readonly left: number;
  readonly right: number;
  readonly zeroX: number;
  readonly radius: number;
  readonly dots: readonly TwentyDot[];
  readonly ticks: readonly {
    readonly x: number;
    readonly label: string;
    readonly anchor: 'start' | 'middle' | 'end';
  }[];
  /** Whether each side is wide enough for its name. */
  readonly room: { readonly more: boolean; readonly less: boolean };
}

const LARGEST_RADIUS = { desk: 20, table: 25, paper: 15 } as const;
const HEIGHT = { desk: 330, table: 400, paper: 230 } as const;
/** A bin narrower than a pound would show a difference that nobody can promise. */
const SMALLEST_BIN_PENCE = 100;

export function layOutTwenty(
  savingsPence: readonly number[],
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): TwentyLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const base = height - faint - 20;
  const top = 8;
  const left = 12;
  const right = width - 12;
  const known = savingsPence.filter(Number.isFinite);
  const spread = known.length > 0 ? Math.max(0, ...known) - Math.min(0, ...known) : 0;
  // Half a step of air on each side, so that both names have their place.
  const air = Math.max(spread, 40 * SMALLEST_BIN_PENCE) * 0.12;
  const axis = axisFor([Math.min(0, ...known) - air, Math.max(0, ...known) + air], width < 560 ? 3 : 4);
  const x = placeOn(axis, left, right);
  const wanted = LARGEST_RADIUS[size];
  const bin = Math.max(niceStep(((axis.high - axis.low) * (2 * wanted + 4)) / (right - left)), SMALLEST_BIN_PENCE);

  const stacks = new Map<number, number>();
  const placed = known
    .toSorted((a, b) => a - b)
    .map((value) => {
      const place = Math.floor(value / bin);
      const level = stacks.get(place) ?? 0;
      stacks.set(place, level + 1);
      return { place, level, side: value < 0 ? ('more' as const) : ('less' as const) };
    });
  const highest = Math.max(1, ...stacks.values());
  const columnWidth = x(bin) - x(0);
  const radius = Math.max(2, Math.min(wanted, columnWidth / 2 - 1.5, (base - top - font * 2) / (2 * highest) - 1.5));
  return {
    width,
    height,
    font,
    faint,
    top,
    base,
    left,
    right,
    zeroX: x(0),
    radius,
    dots: placed.map((dot) => ({
      x: x((dot.place + 0.5) * bin),
      y: base - radius - 2 - dot.level * (2 * radius + 3),
      side: dot.side,
    })),
    ticks: axis.ticks.map((value, index) => ({
      x: x(value),
      label: value === 0 ? 'the same' : `${spokenPounds(Math.abs(value))} ${value < 0 ? 'more' : 'less'}`,
      anchor: index === 0 ? 'start' : index === axis.ticks.length - 1 ? 'end' : 'middle',
    })),
    room: {
      more: x(0) - left > textWidth('costs more', font) + 24,
      less: right - x(0) > textWidth('costs less', font) + 24,
    },
  };
}

/** Twenty equally likely savings as dots in bins, on the sides "costs more" and "costs less". */
import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { niceStep, placeOn } from '../frame/scale.ts';
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
  const worst = Math.min(0, ...known);
  const best = Math.max(0, ...known);
  const wanted = LARGEST_RADIUS[size];
  // Columns as close as the dots allow: bins of a rounded size, with two empty ones at each end for the names.
  const columns = Math.max(8, Math.floor((right - left) / (2 * wanted + 4)));
  const bin = Math.max(niceStep((best - worst) / (columns - 4)), SMALLEST_BIN_PENCE);
  const axis = {
    low: (Math.min(worst < 0 ? -1 : 0, Math.floor(worst / bin)) - 2) * bin,
    high: (Math.floor(best / bin) + 3) * bin,
  };
  const step = niceStep((axis.high - axis.low) / Math.max(2, Math.min(5, (right - left) / (faint * 8))));
  const x = placeOn(axis, left, right);

  const stacks = new Map<number, number>();
  const placed = known
    .toSorted((a, b) => a - b)
    .map((value) => {
      const place = value < 0 ? Math.min(-1, Math.floor(value / bin)) : Math.floor(value / bin);
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
    ticks: ticksWithin(axis, step).map((value) => ({
      x: x(value),
      label: savingText(value),
      anchor: x(value) < left + faint * 3 ? 'start' : x(value) > right - faint * 3 ? 'end' : 'middle',
    })),
    room: {
      more: x(0) - left > textWidth(say('costs more'), font) + 24,
      less: right - x(0) > textWidth(say('costs less'), font) + 24,
    },
  };
}

/** What the heat pump costs in one future: "the same", "£200 less". */
export function savingText(pence: number): string {
  if (pence === 0) return say('the same');
  const amount = spokenPounds(Math.abs(pence));
  return pence < 0 ? say('{amount} more', { amount }) : say('{amount} less', { amount });
}

function ticksWithin(axis: { low: number; high: number }, step: number): number[] {
  const first = Math.ceil(axis.low / step);
  const last = Math.floor(axis.high / step);
  return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
}

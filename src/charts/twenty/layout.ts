/** Twenty equally likely savings as dots in bins, on the sides "costs more" and "costs less". */
import { spokenPounds } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { niceStep, placeOn } from '../frame/scale.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth, widestWord } from '../frame/text.ts';

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
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  /** What each side is called, line under line. */
  readonly names: readonly {
    readonly line: string;
    readonly x: number;
    readonly y: number;
    readonly textAnchor: 'start' | 'end';
  }[];
}

const LARGEST_RADIUS = { desk: 20, table: 25, paper: 15 } as const;
const HEIGHT = { desk: 330, table: 400, paper: 230 } as const;
/** A bin narrower than a pound would show a difference that nobody can promise. */
const SMALLEST_BIN_PENCE = 100;
/** Into how many bins the futures may fall; of all of them the ones with the largest dots are taken. */
const BINS = Array.from({ length: 30 }, (_, i) => 34 - i);
/** Steps of the axis from the finest on: the first whose labels stand apart is taken. */
const STEPS = [7, 6, 5, 4, 3, 2, 1] as const;
/** Between a name and the edge or what stands beside it, px. */
const ASIDE = 12;
const LINE_HEIGHT = 1.1;

interface Range {
  readonly low: number;
  readonly high: number;
}

export function layOutTwenty(
  savingsPence: readonly number[],
  size: PictureSize,
  place: { width?: number; height?: number } = {},
): TwentyLayout {
  const { width, font, faint } = measuresOf(size, place.width);
  const height = place.height ?? HEIGHT[size];
  const frame = { left: 12, right: width - 12, top: 8, base: height - faint - 20, font, faint };
  const known = savingsPence.filter(Number.isFinite).toSorted((a, b) => a - b);
  const span = Math.max(0, ...known) - Math.min(0, ...known);
  const bins = new Set(BINS.map((count) => Math.max(niceStep(span / count), SMALLEST_BIN_PENCE)));
  const { dots, radius, range, names } = [...bins]
    .map((bin) => stackDots(known, bin, LARGEST_RADIUS[size], frame))
    .reduce((best, next) => (next.radius > best.radius ? next : best));
  const placed = (lines: readonly string[], x: number, textAnchor: 'start' | 'end') =>
    lines.map((line, nth) => ({ line, x, y: frame.top + font + nth * font * LINE_HEIGHT, textAnchor }));
  return {
    width,
    height,
    ...frame,
    zeroX: placeOn(range, frame.left, frame.right)(0),
    radius,
    dots,
    ticks: layOutTicks(range, known, frame),
    names: [...placed(names.more, frame.left + ASIDE, 'start'), ...placed(names.less, frame.right, 'end')],
  };
}

type Frame = Pick<TwentyLayout, 'left' | 'right' | 'top' | 'base' | 'font' | 'faint'>;

/** The futures in bins of this size, their dots as large as columns, stacks and the names above them allow. */
function stackDots(known: readonly number[], bin: number, largest: number, frame: Frame) {
  const { left, right, top, base, font } = frame;
  const places = known.map((value) => (value < 0 ? Math.min(-1, Math.floor(value / bin)) : Math.floor(value / bin)));
  const range = withRoomForNames(
    { low: Math.min(-2, (places[0] ?? 0) - 1) * bin, high: Math.max(2, (places.at(-1) ?? 0) + 2) * bin },
    bin,
    frame,
  );
  const x = placeOn(range, left, right);
  const names = {
    more: nameLines(say('costs more'), x(0) - left, font),
    less: nameLines(say('costs less'), right - x(0), font),
  };
  const stacks = Map.groupBy(places, (place) => place);
  const columnWidth = x(bin) - x(0);
  const radii = [...stacks].map(([place, { length }]) => {
    const [from, to] = [x(place * bin), x((place + 1) * bin)];
    const under = Math.max(
      from < left + ASIDE + widest(names.more, font) ? names.more.length : 0,
      to > right - widest(names.less, font) ? names.less.length : 0,
    );
    return (base - top - under * font * LINE_HEIGHT - (under > 0 ? 6 : 0)) / (2 * length) - 1.5;
  });
  const radius = Math.max(2, Math.min(largest, columnWidth / 2 - 1.5, ...radii));
  const dots = [...stacks].flatMap(([place, stack]) =>
    stack.map((_, level) => ({
      x: x((place + 0.5) * bin),
      y: base - radius - 2 - level * (2 * radius + 3),
      side: place < 0 ? ('more' as const) : ('less' as const),
    })),
  );
  return { dots, radius, range, names };
}

const widest = (lines: readonly string[], font: number) => Math.max(0, ...lines.map((line) => textWidth(line, font)));

/** Bins are added to a side that would be too narrow for its name. */
function withRoomForNames({ low, high }: Range, bin: number, { left, right, font }: Frame): Range {
  const needs = (name: string) => widestWord([name], font) + 2 * ASIDE;
  const widened = (side: number, all: number, needed: number) => {
    const lacking = (needed * all - side * (right - left)) / (right - left - needed);
    return lacking > 0 ? Math.ceil(lacking / bin) * bin : 0;
  };
  const more = widened(-low, high - low, needs(say('costs more')));
  const less = widened(high, high - low + more, needs(say('costs less')));
  return { low: low - more, high: high + less };
}

/** In one line, else word under word. */
function nameLines(name: string, room: number, font: number): readonly string[] {
  const fits = (lines: readonly string[]) => widest(lines, font) + 2 * ASIDE <= room + 1;
  return [[name], name.split(' ')].find(fits) ?? [];
}

/**
 * The finest steps whose labels stand apart and name an amount on each side on which futures lie, else on one of them.
 * Where whole labels have no room, the amounts stand alone: the sides bear their names above.
 */
function layOutTicks(range: Range, known: readonly number[], { left, right, faint }: Frame): TwentyLayout['ticks'] {
  const x = placeOn(range, left, right);
  const sides = [-1, 1].filter((side) => known.some((value) => value * side > 0));
  const bare = (pence: number) => (pence === 0 ? savingText(0) : spokenPounds(Math.abs(pence)));
  const apart = [savingText, bare].flatMap((text) =>
    STEPS.map((count) => {
      const step = Math.max(niceStep((range.high - range.low) / count), SMALLEST_BIN_PENCE);
      const ticks = ticksWithin(range, step).map((value) => {
        const label = text(value);
        return { value, label, x: x(value), half: textWidth(label, faint) / 2 };
      });
      return ticks.filter(({ value, x, half }) => value === 0 || (x > half && x + half < right + left));
    }).filter((ticks) =>
      ticks.every(({ x, half }, i) => i === 0 || x - half > ticks[i - 1]!.x + ticks[i - 1]!.half + faint * 0.6),
    ),
  );
  const named = (ticks: (typeof apart)[number]) =>
    sides.filter((side) => ticks.some(({ value }) => value * side > 0)).length;
  const most = Math.max(...apart.map(named));
  const shown = apart.find((ticks) => named(ticks) === most) ?? [{ x: x(0), label: savingText(0) }];
  return shown.map(({ x, label }) => ({ x, label }));
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

/** Where the ribbons of heat lie: in from the left, through the machine, out to the right; widths in proportion to kWh. */
import { sumOf } from '../../model/units/sums.ts';
import { spokenKWh } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { measuresOf, type PictureSize } from '../frame/size.ts';
import { textWidth } from '../frame/text.ts';
import { type FlowInput, flowSeries } from './series.ts';

export type FlowKind = 'source' | 'meter' | 'rooms' | 'taps' | 'lost';

export interface Ribbon {
  readonly kind: FlowKind;
  /** Closed outline. */
  readonly path: string;
  readonly name: string;
  readonly amount: string;
  /** Where its words stand, and which way they run. */
  readonly at: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' };
}

export interface FlowLayout {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly faint: number;
  readonly ribbons: readonly Ribbon[];
  readonly machine: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/** Thickness of all heat together, of the picture's height. */
const THICK_SHARE = 0.5;
/** A part that is there is never thinner than this, px. */
const THINNEST = 2;
const EDGE = 4;

interface Part {
  readonly kind: FlowKind;
  readonly name: string;
  readonly kWh: number;
}

export function layOutFlow(
  input: FlowInput,
  size: PictureSize,
  place: { readonly width?: number; readonly height?: number } = {},
): FlowLayout | null {
  const flow = flowSeries(input);
  if (!flow) return null;
  const { width, font, faint } = measuresOf(size, place.width);
  const height = Math.max(place.height ?? (size === 'table' ? 340 : 220), 5 * (font + faint));
  const thick = height * THICK_SHARE;
  const all = flow.meterKWh + flow.sourceKWh;
  const scale = (kWh: number) => (kWh > 0 ? Math.max(THINNEST, (kWh / all) * thick) : 0);
  const there = (parts: readonly Part[]) => parts.filter(({ kWh }) => kWh > 0);
  // The meter stands above the ground, as the house does above the bore.
  const coming = there([
    { kind: 'meter', name: say('from the meter'), kWh: flow.meterKWh },
    {
      kind: 'source',
      name: say('from the {source, select, air {air} other {ground}}', { source: flow.source }),
      kWh: flow.sourceKWh,
    },
  ]);
  const going = there([
    { kind: 'rooms', name: say('rooms'), kWh: flow.roomsKWh },
    { kind: 'taps', name: say('hot water'), kWh: flow.tapsKWh },
    { kind: 'lost', name: say('no heat for the rooms'), kWh: flow.lostKWh },
  ]);
  const wordWidth = (parts: readonly Part[]) =>
    Math.max(...parts.map(({ name, kWh }) => Math.max(textWidth(name, font, true), textWidth(spokenKWh(kWh), faint))));
  const from = EDGE + wordWidth(coming) + font;
  const to = width - EDGE - wordWidth(going) - font;
  const machineWidth = Math.max(font * 2, Math.min(font * 6, (to - from) * 0.18));
  const machineX = (from + to - machineWidth) / 2;
  const machineY = (height - thick) / 2;
  const side = (parts: readonly Part[], outer: number, inner: number, anchor: 'start' | 'end'): Ribbon[] => {
    const thicknesses = parts.map(({ kWh }) => scale(kWh));
    const spare = height - 2 * EDGE - sumOf(thicknesses);
    // Room between the parts for two lines of words each, the rest above and below.
    const gap = parts.length > 1 ? Math.min(spare / (parts.length - 1), font + faint + 12) : 0;
    let outerY = EDGE + (spare - gap * (parts.length - 1)) / 2;
    let innerY = machineY;
    return parts.map(({ kind, name, kWh }, index) => {
      const thickness = thicknesses[index]!;
      const path = ribbonPath({ x: outer, y: outerY }, { x: inner, y: innerY }, thickness);
      const at = { x: anchor === 'end' ? outer - font * 0.6 : outer + font * 0.6, y: outerY + thickness / 2, anchor };
      outerY += thickness + gap;
      innerY += thickness;
      return { kind, path, name, amount: spokenKWh(kWh), at };
    });
  };
  return {
    width,
    height,
    font,
    faint,
    ribbons: [...side(coming, from, machineX, 'end'), ...side(going, to, machineX + machineWidth, 'start')],
    machine: { x: machineX, y: machineY - 6, width: machineWidth, height: thick + 12 },
  };
}

/** A ribbon of even thickness between two edges, level where it meets them. */
function ribbonPath(
  a: { readonly x: number; readonly y: number },
  b: { readonly x: number; readonly y: number },
  thickness: number,
): string {
  const middle = (a.x + b.x) / 2;
  const n = (value: number) => Number(value.toFixed(1));
  return [
    `M${n(a.x)} ${n(a.y)}`,
    `C${n(middle)} ${n(a.y)} ${n(middle)} ${n(b.y)} ${n(b.x)} ${n(b.y)}`,
    `v${n(thickness)}`,
    `C${n(middle)} ${n(b.y + thickness)} ${n(middle)} ${n(a.y + thickness)} ${n(a.x)} ${n(a.y + thickness)}`,
    'z',
  ].join('');
}

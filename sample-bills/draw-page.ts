/** Pages of text as a scanner or a camera sees them: letters drawn from their outlines, turned, shaded, at an angle, with noise. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { encode as encodeJpeg } from 'jpeg-js';
import { type Font, parse } from 'opentype.js/dist/opentype.mjs';
import { type Corners, planeOf } from '../src/intake/paper/grey.ts';
import type { Grey } from '../src/intake/terms/paper-reading.ts';
import { normal } from './made-weather.ts';
import { A4, type PlacedText } from './write-pdf.ts';

export interface View {
  readonly width: number;
  readonly height: number;
  /** Where the corners of the page lie in the picture: left above, right above, right below, left below. */
  readonly corners: Corners;
  /** How dark the darkest corner is, 0 to 1. */
  readonly shade: number;
  /** Which way the light falls, radians. */
  readonly light: number;
  /** Standard deviation of the noise, of 255. */
  readonly noise: number;
  /** Radius in pixels by which it is out of focus, a whole number. */
  readonly blur: number;
  readonly random: () => number;
}

// Found as a package is, since the built benchmark lies in another folder.
const { resolve } = createRequire(import.meta.url);
const fontOf = (name: string): Font => {
  const bytes = readFileSync(resolve(`pdfjs-dist/standard_fonts/${name}`));
  return parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer);
};
let fonts: { readonly plain: Font; readonly bold: Font } | undefined;

type Place = (x: number, y: number) => readonly [number, number];

/** Straight above a page at so many dots an inch, as a flat scanner sees it. */
export function flatView(dpi: number, random: () => number): View {
  const [width, height] = [A4.width, A4.height].map((points) => Math.round((points * dpi) / 72)) as [number, number];
  const corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return { width, height, corners, shade: 0, light: 0, noise: 0, blur: 0, random };
}

/** The page as it is seen. */
export function drawPage(texts: readonly PlacedText[], view: View): Grey {
  fonts ??= { plain: fontOf('LiberationSans-Regular.ttf'), bold: fontOf('LiberationSans-Bold.ttf') };
  const { width, height } = view;
  const place = placeBy(view.corners);
  const paper = new Float32Array(width * height);
  cover(paper, width, height, [outline([...pageEdge(place)])]);
  const ink = new Float32Array(width * height);
  for (const { text, x, y, size, bold } of texts) {
    const font = bold ? fonts.bold : fonts.plain;
    for (const part of [...text.matchAll(/\S+/g)]) {
      const at = x + font.getAdvanceWidth(text.slice(0, part.index), size);
      cover(ink, width, height, contoursOf(font, part[0], at, y, size, place));
    }
  }
  const grey = new Uint8Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const i = row * width + column;
      const across = (column / width - 0.5) * Math.cos(view.light) + (row / height - 0.5) * Math.sin(view.light);
      const lit = 1 - view.shade * (0.5 + across * 0.9);
      const table = 62 + 14 * Math.sin(column / 37 + row / 171);
      grey[i] = Math.max(0, Math.min(255, (table + (244 - table) * paper[i]! - 214 * ink[i]!) * lit));
    }
  }
  const soft = view.blur > 0 ? softened(grey, width, height, view.blur) : grey;
  if (view.noise > 0)
    for (let i = 0; i < soft.length; i++) soft[i] = clamp(soft[i]! + normal(view.random) * view.noise);
  return { width, height, points: soft };
}

const clamp = (value: number): number => Math.max(0, Math.min(255, Math.round(value)));

export function asJpeg({ width, height, points }: Grey, quality: number): Uint8Array {
  const data = new Uint8Array(width * height * 4);
  for (let i = 0; i < points.length; i++) data.fill(points[i]!, i * 4, i * 4 + 3);
  return new Uint8Array(encodeJpeg({ width, height, data }, quality).data);
}

/** Where a place of the page, in points, lies in the picture. */
function placeBy(corners: Corners): Place {
  const plane = planeOf(corners);
  return (x, y) => plane(x / A4.width, y / A4.height);
}

function* pageEdge(place: Place) {
  yield place(0, 0);
  yield place(A4.width, 0);
  yield place(A4.width, A4.height);
  yield place(0, A4.height);
}

type Outline = readonly (readonly [number, number])[];
const outline = (points: (readonly [number, number])[]): Outline => [...points, points[0]!];

const STEPS = 5;
/** Curves of the letters as short straight lines, where they lie in the picture. */
function contoursOf(font: Font, text: string, x: number, y: number, size: number, place: Place): Outline[] {
  const contours: Outline[] = [];
  let points: (readonly [number, number])[] = [];
  let [fromX, fromY] = [0, 0];
  for (const command of font.getPath(text, x, y, size).commands) {
    if (command.type === 'Z') continue;
    if (command.type === 'M') close();
    if (command.type === 'Q') {
      for (let step = 1; step < STEPS; step++) {
        const t = step / STEPS;
        const at = (from: number, over: number, to: number) =>
          (1 - t) ** 2 * from + 2 * t * (1 - t) * over + t * t * to;
        points.push(place(at(fromX, command.x1, command.x), at(fromY, command.y1, command.y)));
      }
    }
    points.push(place(command.x, command.y));
    [fromX, fromY] = [command.x, command.y];
  }
  close();
  return contours;

  function close(): void {
    if (points.length > 2) contours.push(outline(points));
    points = [];
  }
}

/** How much of each pixel lies within the outlines, by the signed areas that their edges cut off. */
function cover(into: Float32Array, width: number, height: number, outlines: readonly Outline[]): void {
  const all = outlines.flat();
  const left = Math.max(0, Math.floor(Math.min(...all.map(([x]) => x))));
  const right = Math.min(width - 1, Math.ceil(Math.max(...all.map(([x]) => x))) + 1);
  const top = Math.max(0, Math.floor(Math.min(...all.map(([, y]) => y))));
  const bottom = Math.min(height - 1, Math.ceil(Math.max(...all.map(([, y]) => y))));
  const across = right - left + 2;
  if (across < 2 || bottom < top) return;
  const areas = new Float32Array(across * (bottom - top + 1));
  for (const points of outlines) {
    for (let i = 1; i < points.length; i++) addEdge(points[i - 1]!, points[i]!);
  }
  for (let row = top; row <= bottom; row++) {
    let sum = 0;
    for (let column = left; column <= right; column++) {
      sum += areas[(row - top) * across + column - left]!;
      const i = row * width + column;
      into[i] = Math.min(1, into[i]! + Math.abs(sum));
    }
  }

  function addEdge([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): void {
    if (ay === by) return;
    const way = ay < by ? 1 : -1;
    const [x0, y0, x1, y1] = ay < by ? [ax, ay, bx, by] : [bx, by, ax, ay];
    for (let row = Math.max(top, Math.floor(y0)); row <= Math.min(bottom, Math.floor(y1)); row++) {
      const [from, to] = [Math.max(y0, row), Math.min(y1, row + 1)];
      if (to <= from) continue;
      const xAt = (y: number) => x0 + ((y - y0) / (y1 - y0)) * (x1 - x0) - left;
      const middle = Math.max(0, Math.min(across - 1.001, (xAt(from) + xAt(to)) / 2));
      const column = Math.floor(middle);
      const share = (to - from) * way;
      const at = (row - top) * across + column;
      areas[at]! += share * (1 - (middle - column));
      areas[at + 1]! += share * (middle - column);
    }
  }
}

function softened(grey: Uint8Array, width: number, height: number, radius: number): Uint8Array {
  const out = new Uint8Array(grey.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let [sum, count] = [0, 0];
      for (let dy = -radius; dy <= radius; dy++) {
        for (let dx = -radius; dx <= radius; dx++) {
          const [u, v] = [x + dx, y + dy];
          if (u < 0 || v < 0 || u >= width || v >= height) continue;
          const weight = 1 / (1 + dx * dx + dy * dy);
          sum += grey[v * width + u]! * weight;
          count += weight;
        }
      }
      out[y * width + x] = Math.round(sum / count);
    }
  }
  return out;
}

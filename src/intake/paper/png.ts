/** PNG to grey and back (PNG specification, third edition): row by row, so that no picture takes more memory than its points. */
import { Unzlib, zlibSync } from 'fflate';
import type { Grey } from '../terms/paper-reading.ts';

const HEAD = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
export const isPng = (bytes: Uint8Array): boolean => HEAD.every((byte, i) => bytes[i] === byte);

export interface PngHead {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** 0 grey, 2 colours, 3 a palette, 4 grey and 6 colours that may be see-through. */
  readonly kind: number;
  readonly interlaced: boolean;
}
const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };
const PIECE = 64 * 1024;

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

export function headOfPng(bytes: Uint8Array): PngHead | undefined {
  if (bytes.length < 33) return undefined;
  const view = viewOf(bytes);
  const [depth, kind] = [bytes[24]!, bytes[25]!];
  if (CHANNELS[kind] === undefined || ![1, 2, 4, 8, 16].includes(depth)) return undefined;
  return { width: view.getUint32(16), height: view.getUint32(20), depth, kind, interlaced: bytes[28] === 1 };
}

/** Throws where the file is damaged. What is see-through is laid on white. */
export function decodePng(bytes: Uint8Array, { width, height, depth, kind }: PngHead): Grey {
  const points = new Uint8Array(width * height);
  const channels = CHANNELS[kind]!;
  const length = Math.ceil((width * channels * depth) / 8);
  const step = Math.max(1, (channels * depth) >> 3);
  let [row, before] = [new Uint8Array(length), new Uint8Array(length)];
  let [y, at, filter] = [0, -1, 0];
  let palette: Uint8Array | undefined;
  const inflate = new Unzlib((piece) => {
    for (let from = 0; from < piece.length && y < height; ) {
      if (at < 0) {
        filter = piece[from++]!;
        at = 0;
        continue;
      }
      const taken = piece.subarray(from, from + length - at);
      row.set(taken, at);
      at += taken.length;
      from += taken.length;
      if (at < length) continue;
      unfilter(row, before, filter, step);
      greyRow(row, points.subarray(y * width, (y + 1) * width), { depth, kind, channels, palette });
      [row, before] = [before, row];
      y++;
      at = -1;
    }
  });
  const view = viewOf(bytes);
  for (let from = 8; from + 12 <= bytes.length && y < height; ) {
    const size = view.getUint32(from);
    const name = view.getUint32(from + 4);
    const body = bytes.subarray(from + 8, from + 8 + size);
    if (name === 0x504c5445) palette = body; // PLTE
    if (name === 0x49444154) {
      // IDAT
      for (let i = 0; i < body.length && y < height; i += PIECE) inflate.push(body.subarray(i, i + PIECE));
    }
    from += 12 + size;
  }
  if (y < height) throw new Error('the PNG ends before its last row');
  return { width, height, points };
}

function unfilter(row: Uint8Array, before: Uint8Array, filter: number, step: number): void {
  for (let i = 0; i < row.length; i++) {
    const left = i >= step ? row[i - step]! : 0;
    const up = before[i]!;
    const corner = i >= step ? before[i - step]! : 0;
    if (filter === 1) row[i]! += left;
    else if (filter === 2) row[i]! += up;
    else if (filter === 3) row[i]! += (left + up) >> 1;
    else if (filter === 4) row[i]! += paeth(left, up, corner);
    else if (filter !== 0) throw new Error('a row of the PNG is packed in no known way');
  }
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

interface RowForm {
  readonly depth: number;
  readonly kind: number;
  readonly channels: number;
  readonly palette: Uint8Array | undefined;
}

function greyRow(row: Uint8Array, into: Uint8Array, { depth, kind, channels, palette }: RowForm): void {
  const bytes = depth === 16 ? 2 : 1;
  const most = 2 ** depth - 1;
  for (let x = 0; x < into.length; x++) {
    if (depth < 8) {
      const bit = x * depth;
      const value = (row[bit >> 3]! >> (8 - depth - (bit & 7))) & most;
      into[x] = kind === 3 ? lightOf(palette, value) : (value * 255) / most;
      continue;
    }
    const i = x * channels * bytes;
    const light =
      kind === 3
        ? lightOf(palette, row[i]!)
        : channels < 3
          ? row[i]!
          : brightness(row[i]!, row[i + bytes]!, row[i + 2 * bytes]!);
    const seen = kind === 4 ? row[i + bytes]! : kind === 6 ? row[i + 3 * bytes]! : 255;
    into[x] = 255 + ((light - 255) * seen) / 255;
  }
}

const lightOf = (palette: Uint8Array | undefined, value: number): number =>
  palette ? brightness(palette[value * 3] ?? 0, palette[value * 3 + 1] ?? 0, palette[value * 3 + 2] ?? 0) : 0;
/** Luma of ITU-R BT.601. */
export const brightness = (red: number, green: number, blue: number): number =>
  0.299 * red + 0.587 * green + 0.114 * blue;

/** Grey at four bits a point: sixteen shades, enough to see a page by. */
export function encodePng({ width, height, points }: Grey): Uint8Array {
  const length = Math.ceil(width / 2);
  const rows = new Uint8Array((length + 1) * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const shade = Math.round(points[y * width + x]! / 17);
      rows[y * (length + 1) + 1 + (x >> 1)]! |= x % 2 === 0 ? shade << 4 : shade;
    }
  }
  const head = new Uint8Array(13);
  const view = viewOf(head);
  view.setUint32(0, width);
  view.setUint32(4, height);
  head[8] = 4;
  const parts = [
    Uint8Array.from(HEAD),
    chunk('IHDR', head),
    chunk('IDAT', zlibSync(rows, { level: 6 })),
    chunk('IEND', new Uint8Array()),
  ];
  const file = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  parts.reduce((at, part) => {
    file.set(part, at);
    return at + part.length;
  }, 0);
  return file;
}

function chunk(name: string, body: Uint8Array): Uint8Array {
  const whole = new Uint8Array(body.length + 12);
  const view = viewOf(whole);
  view.setUint32(0, body.length);
  whole.set(
    Array.from(name, (letter) => letter.charCodeAt(0)),
    4,
  );
  whole.set(body, 8);
  view.setUint32(body.length + 8, checksum(whole.subarray(4, body.length + 8)));
  return whole;
}

/** Cyclic redundancy check of 32 bits, ISO 3309. */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

/**
 * The installer's own logo: a PNG or JPEG, known by its bytes and not by its name. Drawings that can run script or fetch
 * something (SVG) are not taken, since the logo goes into documents that must do neither.
 */
import { Buffer } from 'node:buffer';
import { crc32, inflateSync } from 'node:zlib';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { LARGEST_LOGO_BYTES, refuseLargeLogo } from './limits.ts';

/** No printer resolves more over the width of a page, and a small file can unfold into a huge picture. */
const MOST_PIXELS = 4000;
const ADDRESS = /^data:[a-z0-9.+/-]*;base64,([A-Za-z0-9+/]+={0,2})$/;
const PNG_HEAD = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

export interface LogoFacts {
  readonly mediaType: 'image/png' | 'image/jpeg';
  readonly width: number;
  readonly height: number;
}

/** PNG specification (W3C), 5.2 signature and 11.2.2 IHDR: width and height are the first two numbers of the first chunk. */
function readPng(bytes: Uint8Array): LogoFacts | null {
  if (bytes.length < 33 || PNG_HEAD.some((byte, at) => bytes[at] !== byte)) return null;
  if (String.fromCharCode(...bytes.subarray(12, 16)) !== 'IHDR') return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return { mediaType: 'image/png', width: view.getUint32(16), height: view.getUint32(20) };
}

/** Frames that carry a size: ITU-T T.81, table B.1, SOF0 to SOF15 without DHT, JPG and DAC. */
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** ITU-T T.81, annex B: segments of marker, length and content up to the frame's head. */
function readJpeg(bytes: Uint8Array): LogoFacts | null {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    // Any number of FF may stand before a marker.
    if (marker === 0xff) at += 1;
    else if (isFrame(marker)) {
      return { mediaType: 'image/jpeg', width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    } else at += 2 + Math.max(2, view.getUint16(at + 2));
  }
  return null;
}

/** PNG specification, 5.3: every chunk whole by its own sum up to IEND, and the picture in them as large as the head says. */
function isWholePng(bytes: Uint8Array, { width, height }: LogoFacts): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const packed: Uint8Array[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 8 + view.getUint32(at);
    if (end + 4 > bytes.length || crc32(bytes.subarray(at + 4, end)) !== view.getUint32(end)) return false;
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (name === 'IDAT') packed.push(bytes.subarray(at + 8, end));
    if (name === 'IEND') return holdsPixels(packed, bytes, width, height);
    at = end + 4;
  }
  return false;
}

/** Samples a pixel by colour type (PNG specification, table 11.1). */
const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

function holdsPixels(packed: readonly Uint8Array[], head: Uint8Array, width: number, height: number): boolean {
  const bits = head[24]! * (CHANNELS[head[25]!] ?? Number.NaN);
  // One byte a row says how the row is filtered; interlaced pictures have more rows, never fewer.
  const expected = height * (1 + Math.ceil((width * bits) / 8));
  try {
    return inflateSync(Buffer.concat(packed), { maxOutputLength: expected * 2 + 64 }).length >= expected;
  } catch {
    return false;
  }
}

/** ITU-T T.81, annex B: a scan after the frame, and the mark that ends the picture. */
function isWholeJpeg(bytes: Uint8Array): boolean {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const scan = text.indexOf(Buffer.of(0xff, 0xda));
  return scan > 0 && text.indexOf(Buffer.of(0xff, 0xd9), scan + 2) > 0;
}

export const readLogo = (bytes: Uint8Array): LogoFacts | null => readPng(bytes) ?? readJpeg(bytes);

const startsAsText = (bytes: Uint8Array) =>
  /^\s*<(\?xml|svg|!)/i.test(new TextDecoder().decode(bytes.subarray(0, 200)));

/** The logo under the media type that its bytes have, or a refusal in words. An empty one stays empty. */
export function settleLogo(address: string): string {
  if (address === '') return '';
  const base64 = ADDRESS.exec(address)?.[1];
  const bytes = base64 === undefined ? new Uint8Array() : new Uint8Array(Buffer.from(base64, 'base64'));
  if (bytes.length > LARGEST_LOGO_BYTES) throw refuseLargeLogo(bytes.length);
  const facts = readLogo(bytes);
  if (!facts) {
    throw new DeskError({
      code: 'logo-unknown',
      message: startsAsText(bytes)
        ? say('This logo is a drawing (SVG), which can carry programs; only PNG and JPEG pictures are taken.')
        : say('This logo is neither a PNG nor a JPEG picture.'),
      where: 'logo',
      remedy: say('Save the logo as PNG and choose that file.'),
    });
  }
  const { mediaType, width, height } = facts;
  if (width < 1 || height < 1 || width > MOST_PIXELS || height > MOST_PIXELS) {
    throw new DeskError({
      code: 'logo-pixels',
      message: say('This logo is {width} by {height} pixels; up to {most} a side are taken.', {
        width,
        height,
        most: MOST_PIXELS,
      }),
      where: 'logo',
      remedy: say('Save it smaller: 800 pixels across are plenty for paper.'),
    });
  }
  if (mediaType === 'image/png' ? !isWholePng(bytes, facts) : !isWholeJpeg(bytes)) {
    throw new DeskError({
      code: 'logo-broken',
      message: say('This logo cannot be shown; the file may be incomplete.'),
      where: 'logo',
      remedy: say('Save the logo again as PNG and choose that file.'),
    });
  }
  return `data:${mediaType};base64,${base64}`;
}

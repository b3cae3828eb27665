/** A photograph or scan to points of grey, upright as the camera meant it. Nothing larger than a page needs is unpacked. */
import type { Grey, UnpackHeic } from '../terms/paper-reading.ts';
import { shrink, turnQuarters } from './grey.ts';
import { brightness, decodePng, headOfPng, isPng } from './png.ts';

export type PictureFault = 'picture-kind' | 'picture-broken' | 'picture-large' | 'picture-small';

/** Above that many points a picture is no page; cameras of telephones take 12 to 25 million. */
export const MOST_POINTS = 40_000_000;
/** From so many on every second point is taken: 12 million show a page at some 400 dots an inch. */
const MANY_POINTS = 10_000_000;
/** Shorter than this no page of a bill can be read. */
const LEAST_SIDE = 300;

const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;
const letters = (bytes: Uint8Array, from: number, count: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + count));
/** Pictures of telephones, by their makers' mark (ISO 23008-12). */
const isHeic = (bytes: Uint8Array): boolean =>
  letters(bytes, 4, 4) === 'ftyp' && /^(?:hei[cxms]|hev[cxms]|mif1|msf1)/.test(letters(bytes, 8, 4));
/** What cameras and scanners write too and is not read here: AVIF, WebP, TIFF, GIF, BMP. */
const isOtherPicture = (bytes: Uint8Array): boolean =>
  (letters(bytes, 4, 4) === 'ftyp' && letters(bytes, 8, 3) === 'avi') ||
  (letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 4) === 'WEBP') ||
  ['II*\0', 'MM\0*', 'GIF8'].includes(letters(bytes, 0, 4)) ||
  (letters(bytes, 0, 2) === 'BM' && bytes[6] === 0 && bytes[7] === 0 && bytes[8] === 0 && bytes[9] === 0);

export const isPicture = (bytes: Uint8Array): boolean =>
  isJpeg(bytes) || isPng(bytes) || isHeic(bytes) || isOtherPicture(bytes);

export async function decodePicture(bytes: Uint8Array, unpackHeic?: UnpackHeic): Promise<Grey | PictureFault> {
  if (isHeic(bytes)) return unpackHeic ? sized(unpackHeic(bytes, MOST_POINTS)) : 'picture-kind';
  if (!isJpeg(bytes) && !isPng(bytes)) return 'picture-kind';
  const png = isPng(bytes) ? headOfPng(bytes) : undefined;
  if (png?.interlaced) return 'picture-kind';
  const size = png ?? (isPng(bytes) ? undefined : sizeOfJpeg(bytes));
  if (!size) return 'picture-broken';
  if (size.width * size.height > MOST_POINTS) return 'picture-large';
  if (Math.max(size.width, size.height) < LEAST_SIDE) return 'picture-small';
  try {
    return png ? decodePng(bytes, png) : turnQuarters(await decodeJpeg(bytes, size), quartersOf(bytes));
  } catch {
    return 'picture-broken';
  }
}

function sized(photo: ReturnType<UnpackHeic>): Grey | PictureFault {
  if (photo === 'large') return 'picture-large';
  if (!photo) return 'picture-broken';
  if (Math.max(photo.width, photo.height) < LEAST_SIDE) return 'picture-small';
  return photo.width * photo.height > MANY_POINTS ? shrink(photo, 2) : photo;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Each marker of a JPEG with where its body begins (ITU-T T.81, annex B). */
function* markersOf(
  bytes: Uint8Array,
): Generator<{ readonly marker: number; readonly at: number; readonly length: number }> {
  for (let at = 2; at + 4 < bytes.length && bytes[at] === 0xff; ) {
    const marker = bytes[at + 1]!;
    if (marker === 0xff) {
      at++;
      continue;
    }
    const length = (bytes[at + 2]! << 8) | bytes[at + 3]!;
    yield { marker, at: at + 4, length: length - 2 };
    if (marker === 0xda || length < 2) return;
    at += 2 + length;
  }
}

function sizeOfJpeg(bytes: Uint8Array): Size | undefined {
  for (const { marker, at } of markersOf(bytes)) {
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (!isFrame) continue;
    const size = { height: (bytes[at + 1]! << 8) | bytes[at + 2]!, width: (bytes[at + 3]! << 8) | bytes[at + 4]! };
    return size.width > 0 && size.height > 0 ? size : undefined;
  }
  return undefined;
}

/** How the camera was held, as quarter turns to the right that set the picture upright (Exif 2.32, tag 0x0112). */
function quartersOf(bytes: Uint8Array): number {
  for (const { marker, at, length } of markersOf(bytes)) {
    if (marker !== 0xe1 || letters(bytes, at, 4) !== 'Exif' || length < 20) continue;
    const view = new DataView(bytes.buffer, bytes.byteOffset + at + 6, length - 6);
    const little = view.getUint16(0) === 0x4949;
    const from = view.getUint32(4, little);
    if (from + 2 > view.byteLength) return 0;
    for (let i = 0, entry = from + 2; i < view.getUint16(from, little); i++, entry += 12) {
      if (entry + 12 > view.byteLength) return 0;
      if (view.getUint16(entry, little) !== 0x0112) continue;
      return { 3: 2, 6: 1, 8: 3 }[view.getUint16(entry + 8, little)] ?? 0;
    }
  }
  return 0;
}

async function decodeJpeg(bytes: Uint8Array, { width, height }: Size): Promise<Grey> {
  const { JpegImage, setVerbosityLevel, VerbosityLevel } = await import(
    'pdfjs-dist/legacy/image_decoders/pdf.image_decoders.mjs'
  );
  setVerbosityLevel(VerbosityLevel.ERRORS);
  const image = new JpegImage({});
  image.parse(bytes);
  const by = width * height > MANY_POINTS ? 2 : 1;
  const [w, h] = [Math.floor(width / by), Math.floor(height / by)];
  if (image.numComponents === 3 && image._isColorConversionNeeded) {
    // The first of the three is the brightness itself (ITU-T T.871); its colours are never laid out.
    image.components.length = 1;
    image.numComponents = 1;
  }
  const isGrey = image.numComponents === 1;
  const data = image.getData({ width: w, height: h, forceRGB: !isGrey }) as Uint8Array;
  if (isGrey) return { width: w, height: h, points: data };
  const points = new Uint8Array(w * h);
  for (let i = 0; i < points.length; i++) points[i] = brightness(data[i * 3]!, data[i * 3 + 1]!, data[i * 3 + 2]!);
  return { width: w, height: h, points };
}

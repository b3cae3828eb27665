/** Whatever is handed over as paper, as its sheets in order: pages with words, and flat pictures of pages. */
import { type UnzipFileInfo, unzipSync } from 'fflate';
import type { Grey, Page, UnpackHeic } from '../terms/paper-reading.ts';
import { type Progress, stageOf } from '../terms/progress.ts';
import { flatten } from './flatten.ts';
import { isPdf, type PdfFault, readPdfWords } from './pdf-words.ts';
import { decodePicture, isPicture, type PictureFault } from './picture.ts';

/** A page with words, or the flat picture of one. */
export type Sheet = Page | Grey;
export type PaperFault = PdfFault | PictureFault | 'many-pictures';

/** Pages are recognised one after the other, some seconds each. */
export const MOST_PICTURES = 12;
const MOST_IN_BUNDLE = 20;
const MOST_BUNDLE_BYTES = 64 * 1024 * 1024;

/** Pages of one bill that were handed over together come as one packed file. */
function isBundle(bytes: Uint8Array): boolean {
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b || bytes[2] !== 3 || bytes[3] !== 4) return false;
  const length = bytes[26]! | (bytes[27]! << 8);
  return isPaperName(String.fromCharCode(...bytes.subarray(30, 30 + Math.min(length, 400))));
}
/** Among pages that were put in order a picture of a kind that is not read is refused, and never left out. */
const isPaperName = (name: string): boolean =>
  /\.(pdf|jpe?g|png|hei[cf])$|^\d+ .*\.(jfif|webp|avif|gif|tiff?|bmp|svg)$/i.test(name);

export const isPaper = (bytes: Uint8Array): boolean => isPdf(bytes) || isPicture(bytes) || isBundle(bytes);

/** Of a fault in a bundle it is told which page has it. */
export async function gatherSheets(
  bytes: Uint8Array,
  unpackHeic: UnpackHeic | undefined,
  onProgress?: Progress,
): Promise<{ readonly sheets: readonly Sheet[] } | { readonly fault: PaperFault; readonly page?: string }> {
  const files = isBundle(bytes) ? unpack(bytes) : [{ file: bytes }];
  if (files === undefined) return { fault: 'bomb' };
  const sheets: Sheet[] = [];
  for (const [i, { file, ...named }] of files.entries()) {
    const read = await sheetsOf(file, unpackHeic, stageOf(onProgress, i / files.length, (i + 1) / files.length));
    if ('fault' in read) return { ...named, ...read };
    sheets.push(...read.sheets);
    if (sheets.filter((sheet) => 'points' in sheet).length > MOST_PICTURES) return { fault: 'many-pictures' };
  }
  return { sheets };
}

async function sheetsOf(bytes: Uint8Array, unpackHeic: UnpackHeic | undefined, onProgress: Progress) {
  if (isPdf(bytes)) return readPdfWords(bytes, flatten, onProgress);
  const picture = await decodePicture(bytes, unpackHeic);
  onProgress(0.5);
  return typeof picture === 'string' ? { fault: picture } : { sheets: flatten(picture) };
}

/** The files of a bundle in the order of their numbered names; undefined where they unpack to more than any bill holds. */
function unpack(bytes: Uint8Array): { readonly page: string; readonly file: Uint8Array }[] | undefined {
  let [count, together] = [0, 0];
  const isTaken = ({ name, originalSize }: UnzipFileInfo) => {
    if (!isPaperName(name)) return false;
    count++;
    together += originalSize;
    return count <= MOST_IN_BUNDLE && together <= MOST_BUNDLE_BYTES;
  };
  try {
    const files = unzipSync(bytes, { filter: isTaken });
    if (count > MOST_IN_BUNDLE || together > MOST_BUNDLE_BYTES) return undefined;
    return Object.keys(files)
      .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }))
      .map((name) => ({ page: name.replace(/^\d+ /, ''), file: files[name]! }));
  } catch {
    return undefined;
  }
}

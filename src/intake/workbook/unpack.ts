/** The parts of a workbook out of its packed archive, never more than we are ready to hold, whatever the archive claims. */

import { Gunzip, Unzip, UnzipInflate } from 'fflate';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { crc32, sumsOfParts } from './archive-sums.ts';

/** Ten years of half-hours are some 25 MB of sheet. */
export const MAX_UNPACKED_BYTES = 64 * 1024 * 1024;
/** A sheet of readings packs some ten to fifty times; beyond this, once it has grown, it is made to hurt. */
const MOST_TIMES = 250;
const GROWN_BYTES = 8 * 1024 * 1024;
/** Small pieces, so that a packed bomb is noticed before it has grown. */
const CHUNK = 1 << 13;
const MOST_PARTS = 2000;
const PARTS = /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|styles\.xml|worksheets\/[^/]+\.xml)$/i;

export type Unpacked =
  | { readonly parts: ReadonlyMap<string, Uint8Array> }
  | { readonly fault: 'too large' | 'damaged'; readonly found: Wording };

/** @param wanted which parts are unpacked, by their names */
export function unpack(bytes: Uint8Array, onProgress?: (share: number) => void, wanted = PARTS): Unpacked {
  const sums = sumsOfParts(bytes);
  if (!sums) return { fault: 'damaged', found: 'it is cut off' };
  const parts = new Map<string, Uint8Array>();
  let held = 0;
  let entries = 0;
  // The unpacker catches what its callbacks throw, so that a flag must stop it.
  let isTooLarge = false;
  let isDamaged = false;
  const unzip = new Unzip((file) => {
    if (++entries > MOST_PARTS) isTooLarge = true;
    if (isTooLarge) return;
    const name = file.name.replaceAll('\\', '/').replace(/^\/+/, '');
    if (!wanted.test(name)) return;
    const pieces: Uint8Array[] = [];
    let size = 0;
    file.ondata = (error, piece, isLast) => {
      if (error) isDamaged = true;
      if (error || isTooLarge) return;
      held += piece.length;
      size += piece.length;
      if (held > MAX_UNPACKED_BYTES) {
        isTooLarge = true;
        pieces.length = 0;
        return;
      }
      pieces.push(piece);
      if (!isLast) return;
      const part = joined(pieces, size);
      if (crc32(part) === sums.get(file.name)) parts.set(name.toLowerCase(), part);
      else isDamaged = true;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !isTooLarge; at += CHUNK) {
      if (held > GROWN_BYTES && held > MOST_TIMES * at)
        return { fault: 'damaged', found: tell('unpacks-to-over', { times: MOST_TIMES }) };
      unzip.push(bytes.subarray(at, at + CHUNK), at + CHUNK >= bytes.length);
      if ((at & 0xfffff) === 0) onProgress?.((at / bytes.length) * 0.3);
    }
  } catch {
    isDamaged = true;
  }
  if (isTooLarge)
    return { fault: 'too large', found: tell('over-megabytes', { megabytes: MAX_UNPACKED_BYTES / 1_048_576 }) };
  return isDamaged ? { fault: 'damaged', found: 'its packing is damaged' } : { parts };
}

/** What a packed single file (RFC 1952) holds; undefined where it is damaged or grows beyond what we hold. */
function unpackOne(bytes: Uint8Array): Uint8Array | undefined {
  const pieces: Uint8Array[] = [];
  let size = 0;
  const gunzip = new Gunzip((piece) => {
    size += piece.length;
    if (size <= MAX_UNPACKED_BYTES) pieces.push(piece);
  });
  let isAlone = true;
  gunzip.onmember = () => {
    isAlone = false;
  };
  try {
    for (let at = 0; at < bytes.length; at += CHUNK) {
      if (size > MAX_UNPACKED_BYTES || (size > GROWN_BYTES && size > MOST_TIMES * at)) return undefined;
      gunzip.push(bytes.subarray(at, at + CHUNK), at + CHUNK >= bytes.length);
    }
  } catch {
    return undefined;
  }
  if (size > MAX_UNPACKED_BYTES) return undefined;
  const whole = joined(pieces, size);
  // One archive may go on where another ends; only of a single one does the sum at the end say all.
  const sum = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(bytes.length - 8, true);
  return !isAlone || crc32(whole) === sum ? whole : undefined;
}

function joined(pieces: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** One of the data files of a packed archive; each is read by itself, as the sheets of a workbook are. */
export interface PackedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const DATA = /\.(csv|tsv|txt|dat|json|xml|epw|xlsx)$/i;
/** Marks that one system of computers packs beside each file. */
const HIDDEN = /^__macosx\/|(^|\/)\./i;

/**
 * The files that may hold data, by the names that the archive gives them; undefined where it cannot be unpacked.
 * @param fileName names the one file of an archive that packs a single one without a name
 */
export function unpackFiles(fileName: string, bytes: Uint8Array): readonly PackedFile[] | undefined {
  if (bytes[0] === 0x1f) {
    const alone = unpackOne(bytes);
    return alone && [{ name: fileName.replace(/\.gz$/i, ''), bytes: alone }];
  }
  const unpacked = unpack(bytes, undefined, DATA);
  if ('fault' in unpacked) return undefined;
  return [...unpacked.parts].flatMap(([name, part]) => (HIDDEN.test(name) ? [] : [{ name, bytes: part }]));
}

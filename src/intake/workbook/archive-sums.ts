/** The sums by which an archive tells whether its parts came whole: a flipped digit inflates as well as a true one. */

import { strFromU8 } from 'fflate';

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  return sum;
});

/** The cyclic sum of 32 bits that archives keep (ISO 3309, as RFC 1952 gives it), as a number without a sign. */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) sum = TABLE[(sum ^ bytes[i]!) & 0xff]! ^ (sum >>> 8);
  return ~sum >>> 0;
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
/** The end of an archive and the longest remark that may follow it. */
const LONGEST_END = 22 + 0xffff;

/**
 * The sum of each part by its name as the archive writes it, from the list at the end (ISO/IEC 21320-1, 4.3); undefined
 * where there is no such list, for a file that was cut off.
 */
export function sumsOfParts(bytes: Uint8Array): ReadonlyMap<string, number> | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== END) if (--end < bytes.length - LONGEST_END) return undefined;
  if (end < 0) return undefined;
  const sums = new Map<string, number>();
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (at + 46 > end || view.getUint32(at, true) !== ENTRY) return undefined;
    const length = view.getUint16(at + 28, true);
    const isUnicode = (view.getUint16(at + 8, true) & 0x800) !== 0;
    sums.set(strFromU8(bytes.subarray(at + 46, at + 46 + length), !isUnicode), view.getUint32(at + 16, true));
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return sums;
}

/** The raw file of an import, packed in pieces, so that packing a large one can be stopped between them. */
import { Buffer } from 'node:buffer';
import { constants, crc32, deflateRawSync, unzipSync } from 'node:zlib';

/** Level 1: a file of ten years takes 15 ms instead of 110, and a fifth more room. */
const LEVEL = 1;
/** Some 50 ms of packing. */
const PIECE_BYTES = 4 * 1024 * 1024;
/** What is handed over at a time; by zlib's own measure of 16 KiB a file of ten years would be in sixty pieces. */
const CHUNK_BYTES = 256 * 1024;
/** Head of a gzip file without name and time (RFC 1952, section 2.3). */
const HEAD = Uint8Array.of(0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 255);

/** One gzip member. Throw from `onProgress` to stop. */
export function packFile(bytes: Uint8Array, onProgress?: (share: number) => void): Uint8Array {
  const parts: Uint8Array[] = [HEAD];
  let checksum = 0;
  let at = 0;
  do {
    onProgress?.(at / Math.max(1, bytes.length));
    const piece = bytes.subarray(at, at + PIECE_BYTES);
    at += PIECE_BYTES;
    checksum = crc32(piece, checksum);
    const finishFlush = at >= bytes.length ? constants.Z_FINISH : constants.Z_FULL_FLUSH;
    parts.push(deflateRawSync(piece, { level: LEVEL, finishFlush, chunkSize: CHUNK_BYTES }));
  } while (at < bytes.length);
  const tail = Buffer.alloc(8);
  tail.writeUInt32LE(checksum, 0);
  tail.writeUInt32LE(bytes.length, 4);
  return Buffer.concat([...parts, tail]);
}

/** Reads what `packFile` wrote, and the plain deflated files of earlier versions. */
export const unpackFile = (packed: Uint8Array): Uint8Array => new Uint8Array(unzipSync(packed));

/** The raw file of an import, packed by Zstandard (RFC 8878): a file of ten years takes half of deflate's time, and less room. */
import { constants, unzipSync, zstdCompressSync, zstdDecompressSync } from 'node:zlib';

/** Level 1: the next one takes half as long again for no less room. */
const PACKING = { [constants.ZSTD_c_compressionLevel]: 1 };
/** What is handed over at a time; by zlib's own measure of 16 KiB a file of ten years would be in three hundred pieces. */
const CHUNK_BYTES = 256 * 1024;
/** Where it sees this much room (`ZSTD_COMPRESSBOUND` of zstd.h and a little), it packs the file where it lies; else it copies it first. */
const roomFor = (bytes: number) => bytes + (bytes >> 8) + 128;
const FRAME = [0x28, 0xb5, 0x2f, 0xfd];

export const packFile = (bytes: Uint8Array): Uint8Array =>
  zstdCompressSync(bytes, { params: PACKING, chunkSize: roomFor(bytes.byteLength) });

/** Reads what `packFile` wrote, and the deflated files of earlier versions. */
export const unpackFile = (packed: Uint8Array): Uint8Array =>
  new Uint8Array(
    FRAME.every((byte, i) => packed[i] === byte)
      ? zstdDecompressSync(packed, { chunkSize: CHUNK_BYTES })
      : unzipSync(packed),
  );

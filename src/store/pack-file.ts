/** The raw file of an import, packed by Zstandard (RFC 8878): a file of ten years takes half of deflate's time, and less room. */
import zlib from 'node:zlib';

/** Level 1: the next one takes half as long again for no less room. */
const PACKING = { [zlib.constants.ZSTD_c_compressionLevel]: 1 };
/** Two threads, in two thirds of the time, from the size on from which Zstandard shares a file out (512 KiB). */
const SHARED = { ...PACKING, [zlib.constants.ZSTD_c_nbWorkers]: 2 };
const LEAST_SHARED = 1024 * 1024;
/** What is handed over at a time; by zlib's own measure of 16 KiB a file of ten years would be in three hundred pieces. */
const CHUNK_BYTES = 256 * 1024;
/** Where it sees this much room (`ZSTD_COMPRESSBOUND` of zstd.h and a little), it packs the file where it lies; else it copies it first. */
const roomFor = (bytes: number) => bytes + (bytes >> 8) + 128;
const FRAME = [0x28, 0xb5, 0x2f, 0xfd];

/** Node can from 22.15 on. Where it cannot, what is whole would look damaged. */
export const canPack = (): boolean => typeof zlib.zstdCompressSync === 'function';

export function packFile(bytes: Uint8Array): Uint8Array {
  const chunkSize = roomFor(bytes.byteLength);
  if (bytes.byteLength >= LEAST_SHARED)
    try {
      return zlib.zstdCompressSync(bytes, { params: SHARED, chunkSize });
    } catch {
      // A library that was built without threads refuses the setting.
    }
  return zlib.zstdCompressSync(bytes, { params: PACKING, chunkSize });
}

/** Reads what `packFile` wrote, and the deflated files of earlier versions. */
export const unpackFile = (packed: Uint8Array): Uint8Array =>
  new Uint8Array(
    FRAME.every((byte, i) => packed[i] === byte)
      ? zlib.zstdDecompressSync(packed, { chunkSize: CHUNK_BYTES })
      : zlib.unzipSync(packed),
  );

/** Small pictures as an installer's logo: a whole PNG, and heads with any size. */
import { crc32, deflateSync } from 'node:zlib';

export const logoAddress = (bytes: Uint8Array, mediaType = 'image/png'): string =>
  `data:${mediaType};base64,${Buffer.from(bytes).toString('base64')}`;

function chunk(name: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** A grey rectangle, whole and readable. */
export function smallPng(width = 60, height = 20): Uint8Array<ArrayBuffer> {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc((width + 1) * Math.min(height, 200), 90).map((byte, at) =>
    at % (width + 1) === 0 ? 0 : byte,
  );
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      chunk('IHDR', head),
      chunk('IDAT', deflateSync(rows)),
      chunk('IEND', Buffer.alloc(0)),
    ]),
  );
}

/** The head of a JPEG up to its frame: JFIF, a table, and a baseline or progressive frame of this size. */
export function jpegHead(width: number, height: number, frame: 0xc0 | 0xc2 = 0xc0): Uint8Array {
  const jfif = [0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0];
  // A Huffman table lies among the frame markers and is none; its content looks like one.
  const table = [0xff, 0xc4, 0, 8, 0xff, 0xc0, 0, 17, 8, 0];
  const size = [0xff, 0xff, frame, 0, 17, 8, height >> 8, height & 255, width >> 8, width & 255];
  return Uint8Array.from([0xff, 0xd8, ...jfif, ...table, ...size, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1]);
}

/** The same with a scan behind it and the mark of the end. */
export const wholeJpeg = (width: number, height: number): Uint8Array =>
  Uint8Array.from([...jpegHead(width, height), 0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x55, 0xff, 0xd9]);

/** Icons as each system wants them, from the pictures in icons/, which are plainwarmth.svg at several sizes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const icon = (name: string): string => join(import.meta.dirname, 'icons', name);
const png = (size: number): Buffer => readFileSync(icon(`${size}.png`));

/** Windows: a directory of pictures, each a PNG. */
export function icoFile(sizes: readonly number[] = [16, 32, 48, 256]): Buffer {
  const pictures = sizes.map((size) => ({ size, bytes: png(size) }));
  const head = Buffer.alloc(6 + 16 * pictures.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(pictures.length, 4);
  let offset = head.length;
  pictures.forEach(({ size, bytes }, index) => {
    const at = 6 + 16 * index;
    // A side of 256 is written as 0.
    head.writeUInt8(size % 256, at);
    head.writeUInt8(size % 256, at + 1);
    head.writeUInt16LE(1, at + 4);
    head.writeUInt16LE(32, at + 6);
    head.writeUInt32LE(bytes.length, at + 8);
    head.writeUInt32LE(offset, at + 12);
    offset += bytes.length;
  });
  return Buffer.concat([head, ...pictures.map(({ bytes }) => bytes)]);
}

/** macOS: named pieces, each a PNG. */
export function icnsFile(): Buffer {
  const pieces = [
    ['ic07', 128],
    ['ic08', 256],
    ['ic09', 512],
  ] as const;
  const parts = pieces.map(([name, size]) => {
    const bytes = png(size);
    const head = Buffer.alloc(8);
    head.write(name, 'latin1');
    head.writeUInt32BE(bytes.length + 8, 4);
    return Buffer.concat([head, bytes]);
  });
  const body = Buffer.concat(parts);
  const head = Buffer.alloc(8);
  head.write('icns', 'latin1');
  head.writeUInt32BE(body.length + 8, 4);
  return Buffer.concat([head, body]);
}

/** Pages of one bill that are handed over together, packed into one file in their order. */
import { zipSync } from 'fflate';

/** Pictures are packed already; this only lays them behind each other, always alike. */
export const bundle = (files: readonly (readonly [name: string, bytes: Uint8Array])[]): Uint8Array =>
  zipSync(
    Object.fromEntries(
      files.map(([name, bytes], i) => [`${i + 1} ${name}`, [bytes, { level: 0, mtime: '1980-01-02' }] as const]),
    ) as Parameters<typeof zipSync>[0],
  );

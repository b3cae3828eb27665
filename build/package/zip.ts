/** A folder as a zip, with its modes and one time for all, so that the same files give the same bytes. */
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Zippable, zipSync } from 'fflate';
import { PACKED_AT } from './about.ts';
import { filesBelow } from './folder.ts';

/** Unix, as the system that made it: unpackers take the modes from such a zip. */
const MADE_ON_UNIX = 3;

export function zipFolder(folder: string, topName: string, out: string): void {
  // The format keeps the clock on the wall; this one reads the same everywhere.
  const wallClock = new Date(PACKED_AT.getUTCFullYear(), PACKED_AT.getUTCMonth(), PACKED_AT.getUTCDate(), 12);
  const entries: Zippable = {};
  for (const name of filesBelow(folder)) {
    const path = join(folder, name);
    entries[`${topName}/${name}`] = [
      readFileSync(path),
      { level: 9, mtime: wallClock, os: MADE_ON_UNIX, attrs: (statSync(path).mode << 16) >>> 0 },
    ];
  }
  writeFileSync(out, zipSync(entries));
}

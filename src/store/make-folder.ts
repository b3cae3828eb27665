import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

/**
 * Makes a folder and those above it, for their owner only. Step by step, since Node's own way never ends where a file
 * system makes no folders, and says "not there" of a disk that can only be read. Throws the system's reason.
 */
export function makeFolder(path: string): void {
  const isThere = () => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
  if (isThere()) return;
  if (dirname(path) !== path) makeFolder(dirname(path));
  try {
    mkdirSync(path, { mode: 0o700 });
  } catch (error) {
    // Another start may have made it meanwhile.
    if (!isThere()) throw error;
  }
}

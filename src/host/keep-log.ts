/** Behind a window nobody reads a console: what is said there goes into a log beside the data as well. */
import { appendFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { format } from 'node:util';
import { makeFolder } from '../store/make-folder.ts';
import { cacheFolder } from './data-folder.ts';

const LOG_NAME = 'plainwarmth.log';
/** A longer one is put beside and begun anew, so that two of these are the most there is. */
const LARGEST_BYTES = 1024 * 1024;

function begin(folder: string): string {
  makeFolder(folder);
  const path = join(folder, LOG_NAME);
  appendFileSync(path, '', { mode: 0o600 });
  if (statSync(path).size > LARGEST_BYTES) renameSync(path, `${path}.old`);
  return path;
}

/** The folder itself may be what is wrong; then the message matters most. */
function beginSomewhere(folders: readonly string[]): string | null {
  for (const folder of folders) {
    try {
      return begin(folder);
    } catch {
      // The next one, or on a disk that is full to its last byte, none: the window opens all the same.
    }
  }
  return null;
}

/**
 * Answers where the log lies: beside the data, or in the person's own cache folder where that cannot be. Never among the
 * temporary files of all, since it may name homes and paths.
 */
export function keepLog(folder: string): string | null {
  const path = beginSomewhere([folder, cacheFolder('log')]);
  const note = (parts: readonly unknown[]) => {
    try {
      if (path !== null) appendFileSync(path, `${new Date().toISOString()} ${format(...parts)}\n`, { mode: 0o600 });
    } catch {
      // A full disk is told by the window.
    }
  };
  for (const level of ['log', 'warn', 'error'] as const) {
    const say = console[level].bind(console);
    console[level] = (...parts: unknown[]) => {
      note(parts);
      say(...parts);
    };
  }
  process.on('uncaughtExceptionMonitor', (error) => note([error]));
  return path;
}

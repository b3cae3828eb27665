/** Behind a window nobody reads a console: what is said there goes into a log beside the data as well. */
import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { format } from 'node:util';

const LOG_NAME = 'plainwarmth.log';
/** A longer one is put beside and begun anew, so that two of these are the most there is. */
const LARGEST_BYTES = 1024 * 1024;

function begin(folder: string): string {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = join(folder, LOG_NAME);
  appendFileSync(path, '', { mode: 0o600 });
  if (statSync(path).size > LARGEST_BYTES) renameSync(path, `${path}.old`);
  return path;
}

function beginSomewhere(folder: string): string {
  try {
    return begin(folder);
  } catch {
    // The folder itself may be what is wrong; then the message matters most.
    return begin(tmpdir());
  }
}

/** Answers where the log lies: beside the data, or in the system's folder for temporary files where that cannot be. */
export function keepLog(folder: string): string {
  const path = beginSomewhere(folder);
  const note = (parts: readonly unknown[]) => {
    try {
      appendFileSync(path, `${new Date().toISOString()} ${format(...parts)}\n`, { mode: 0o600 });
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

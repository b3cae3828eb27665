/**
 * How many changes the store has kept, written beside it after every one. The database counts them too, in its head,
 * so that a start notices when changes that had been kept are no longer there: a log that was lost, a file that was
 * emptied, or another one put in its place.
 */
import { Buffer } from 'node:buffer';
import { closeSync, openSync, readFileSync, readSync, writeSync } from 'node:fs';

export interface Counted {
  /** Changes kept so far. */
  readonly count: number;
  /** The counts that the head of the main file may have: it lags behind while changes are in the log only. */
  readonly heads: readonly number[];
  readonly households: number;
}

export const tallyPath = (path: string): string => `${path}-tally`;

/** Undefined where there is none, or none that can be read: then nothing is known of what had been kept. */
export function readTally(path: string): Counted | undefined {
  try {
    const { count, heads, households } = JSON.parse(readFileSync(tallyPath(path), 'utf8')) as Counted;
    return Number.isInteger(count) && Array.isArray(heads) ? { count, heads, households } : undefined;
  } catch {
    return undefined;
  }
}

/** Always the same length, written over in one go, so that a kill leaves the old or the new line. */
const LENGTH = 240;

export interface TallyFile {
  write(counted: Counted): void;
  close(): void;
}

export function openTally(path: string): TallyFile {
  // "a" makes it where there is none, but writes at the end only; "r+" writes where it is told.
  closeSync(openSync(tallyPath(path), 'a', 0o600));
  const handle = openSync(tallyPath(path), 'r+');
  return {
    write(counted) {
      try {
        writeSync(handle, `${JSON.stringify(counted).padEnd(LENGTH - 1)}\n`, 0);
      } catch {
        // A tally that lags behind raises no false alarm, and what it counts has been kept.
      }
    },
    close: () => closeSync(handle),
  };
}

/** The count lies in the head of the database where SQLite has room for a program's own number: "P", then 24 bits. */
const MARK = 0x50;
const MOST = 0xff_ffff;

export const toHead = (count: number): number => MARK * 0x100_0000 + (count & MOST);
export const fromHead = (head: number): number => (head >>> 24 === MARK ? head & MOST : 0);

/** Where SQLite's file format keeps that number (section 1.3 of its description, "Application ID"). */
const HEAD_AT = 68;

/** The count in the main file, as it was when the log was last carried over. To be read before SQLite opens the file. */
export function readHead(path: string): number {
  const bytes = Buffer.alloc(4);
  const file = openSync(path, 'r');
  try {
    return readSync(file, bytes, 0, 4, HEAD_AT) === 4 ? fromHead(bytes.readUInt32BE(0)) : 0;
  } finally {
    closeSync(file);
  }
}

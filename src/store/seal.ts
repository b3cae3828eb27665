/**
 * Every stored piece carries the SHA-256 of what was stored, and is held against it whenever it is read. Raw files are
 * named by theirs; documents have a column `sealed`; the days of a series are sealed together, since a hash a day would
 * make storing half as slow again.
 */
import { createHash, type Hash, hash } from 'node:crypto';
import type { Database } from 'better-sqlite3';

export const seal = (content: string | Uint8Array): string => hash('sha256', content, 'hex');

export interface StoredDay {
  /** Days since 1970-01-01. */
  readonly day: number;
  readonly readings: Uint8Array;
}

/** Of the days of one series, in their order. */
export function sealDays(days: Iterable<StoredDay>): string {
  const sum = createHash('sha256');
  for (const one of days) addDay(sum, one);
  return sum.digest('hex');
}

const head = new Int32Array(2);

function addDay(sum: Hash, { day, readings }: StoredDay): void {
  head[0] = day;
  head[1] = readings.byteLength;
  sum.update(new Uint8Array(head.buffer)).update(readings);
}

/** What the step of the schema needs that seals what earlier versions stored. */
export function addSealFunctions(database: Database): void {
  database.function('seal', { deterministic: true }, (content) => seal(content as string | Uint8Array));
  database.aggregate('seal_days', {
    varargs: true,
    start: () => createHash('sha256'),
    step: (sum: Hash, ...[day, readings]: readonly unknown[]) => {
      addDay(sum, { day: day as number, readings: readings as Uint8Array });
      return sum;
    },
    result: (sum: Hash) => sum.digest('hex'),
  });
}

/** A day of readings as bytes: 64-bit floating point, little-endian, so that what was read comes back to the last digit. */
export function toBlob(values: Float64Array): Uint8Array {
  return new Uint8Array(values.buffer, values.byteOffset, values.byteLength);
}

export function fromBlob(blob: Uint8Array): Float64Array {
  // The database hands out views at any offset; a copy starts at a multiple of eight.
  return new Float64Array(blob.slice().buffer);
}

/**
 * Every stored piece carries the SHA-256 of what was stored, and is held against it whenever it is read. Raw files are
 * named by theirs; documents and readings have a column `sealed`.
 */
import { hash } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import { type PackedDay, packDays } from './pack-days.ts';

export const seal = (content: string | Uint8Array): string => hash('sha256', content, 'hex');

/** What the steps of the schema need that seal what earlier versions stored, and put its days together. */
export function addSealFunctions(database: Database): void {
  database.function('seal', { deterministic: true }, (content) => seal(content as string | Uint8Array));
  const ofDays = (result: (days: PackedDay[]) => unknown) => ({
    varargs: true,
    start: (): PackedDay[] => [],
    step: (days: PackedDay[], ...[day, readings]: readonly unknown[]) => {
      days.push({ day: day as number, readings: new Uint8Array(readings as Uint8Array) });
    },
    result,
  });
  database.aggregate(
    'seal_days',
    ofDays((days) => seal(packDays(days))),
  );
  database.aggregate('join_days', ofDays(packDays));
}

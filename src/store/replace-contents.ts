/** Everything in the store as one file, and everything in a file put in its place. */
import { createHash } from 'node:crypto';
import { closeSync, fsyncSync, openSync, rmSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { withFaults } from './store-fault.ts';

/** A copy holds nothing of what was erased, and is whole when this answers. `to` must not exist. */
export function saveCopy(database: Database, to: string): void {
  // Readable by its owner only, from its first byte on. Throws the system's reason where it cannot be made.
  closeSync(openSync(to, 'wx', 0o600));
  try {
    withFaults(to, () => database.prepare('VACUUM INTO ?').run(to));
    const file = openSync(to, 'r+');
    fsyncSync(file);
    closeSync(file);
  } catch (error) {
    rmSync(to, { force: true });
    throw error;
  }
}

/** Parents before what names them. */
const TABLES = ['households', 'raw_files', 'evidence', 'series', 'estimates', 'checks', 'settings', 'shelf'] as const;

/** From the database attached as `copy`, which has the same schema; inside a transaction, so that a kill leaves all of the old or all of the new. */
export function replaceBy(database: Database): void {
  for (const table of TABLES.toReversed()) database.exec(`DELETE FROM main.${table}`);
  for (const table of TABLES) database.exec(`INSERT INTO main.${table} SELECT * FROM copy.${table} ORDER BY rowid`);
}

/** One hash of everything stored, from the hashes of its pieces: two stores that hold the same have the same. */
export function sealOfAll(database: Database): string {
  const sum = createHash('sha256');
  const pieces = [
    'SELECT id, sealed, archived, revision FROM households ORDER BY id',
    'SELECT sha256, size FROM raw_files ORDER BY sha256',
    'SELECT id, sealed, place, undone, raw_sha256 FROM evidence ORDER BY id',
    'SELECT id, sealed, interval_minutes FROM series ORDER BY id',
    'SELECT id, sealed, number FROM estimates ORDER BY id',
    'SELECT id, sealed, place FROM checks ORDER BY id',
    'SELECT name, sealed FROM settings ORDER BY name',
    'SELECT id, sealed FROM shelf ORDER BY id',
  ];
  for (const sql of pieces) {
    for (const row of database.prepare<[], unknown[]>(sql).raw().iterate()) sum.update(`${JSON.stringify(row)}\n`);
  }
  return sum.digest('hex');
}

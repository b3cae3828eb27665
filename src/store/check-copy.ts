/** A copy read back after writing, without changing a byte of it. */
import Database from 'better-sqlite3';
import { findDamage } from './find-damage.ts';
import { isSound } from './open-database.ts';
import { sealOfAll } from './replace-contents.ts';
import { openNames } from './sealed.ts';
import type { Damage } from './store-fault.ts';

export interface CopyFacts {
  /** Whether SQLite reads it through without a fault. */
  readonly isSound: boolean;
  /** Hash of all that is in it. */
  readonly sealed: string;
  readonly damage: readonly Damage[];
}

export function checkCopy(path: string): CopyFacts {
  const database = new Database(path, { readonly: true });
  try {
    const damage = [...findDamage(database, openNames(database))].flatMap((looked) => looked.damage ?? []);
    return { isSound: isSound(database), sealed: sealOfAll(database), damage };
  } finally {
    database.close();
  }
}

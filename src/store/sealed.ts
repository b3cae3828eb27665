/** Documents as they lie in the tables: read only when they still have the hash they were stored under. */
import type { Database } from 'better-sqlite3';
import { seal } from './seal.ts';
import { type Damage, StoreFault } from './store-fault.ts';

export interface SealedRow {
  readonly document: string;
  readonly sealed: string;
}

/** Hears of a damaged piece that is left out; without it, a damaged piece is a fault. */
export type OnDamage = (damage: Damage) => void;

export const isWhole = ({ document, sealed }: SealedRow): boolean => seal(document) === sealed;

/** Throws StoreFault `damaged` with what `name` calls the piece. */
export function readSealed<T>(row: SealedRow, name: () => Damage): T {
  if (!isWhole(row)) throw damaged(name());
  return JSON.parse(row.document) as T;
}

export const damaged = (damage: Damage): StoreFault => new StoreFault({ code: 'damaged', path: '', damage });

/** The whole ones of several; of the others `onDamage` hears what `read` throws, or the first of them is thrown. */
export function readWhole<R, T>(rows: readonly R[], read: (row: R) => T, onDamage: OnDamage | undefined): T[] {
  return rows.flatMap((row) => {
    try {
      return [read(row)];
    } catch (error) {
      if (!onDamage || !(error instanceof StoreFault) || !error.data.damage) throw error;
      onDamage(error.data.damage);
      return [];
    }
  });
}

/** What a damaged piece is called, from whatever can still be read around it. */
export interface Names {
  household(id: string): Pick<Damage, 'householdId' | 'household'>;
  evidence(id: string): Pick<Damage, 'householdId' | 'household' | 'evidenceId' | 'fileName'>;
}

export function openNames(database: Database): Names {
  const household = database.prepare<[string], { name: string | null; searched: string }>(
    `SELECT CASE WHEN json_valid(document) THEN json_extract(document, '$.name') END AS name, searched
     FROM households WHERE id = ?`,
  );
  const evidence = database.prepare<[string], { householdId: string; fileName: string | null }>(
    `SELECT household_id AS householdId,
       CASE WHEN json_valid(document) THEN json_extract(document, '$.fileName') END AS fileName
     FROM evidence WHERE id = ?`,
  );
  const names: Names = {
    household(id) {
      const row = household.get(id);
      if (!row) return { householdId: id };
      // The name stands first among the words it is found by, in small letters.
      return { householdId: id, household: row.name ?? row.searched.split('\n')[0] ?? '' };
    },
    evidence(id) {
      const row = evidence.get(id);
      if (!row) return { evidenceId: id };
      const fileName = row.fileName === null ? {} : { fileName: row.fileName };
      return { ...names.household(row.householdId), evidenceId: id, ...fileName };
    },
  };
  return names;
}

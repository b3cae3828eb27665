/** Holds every stored piece against its hash, one after the other, so that one that is damaged hides no other. */
import type { Database } from 'better-sqlite3';
import { unpackFile } from './pack-file.ts';
import { seal } from './seal.ts';
import { isWhole, type Names, type SealedRow } from './sealed.ts';
import type { Damage } from './store-fault.ts';

/** One piece that was looked at. */
export interface Looked {
  readonly damage: Damage | null;
  /** Of all pieces. */
  readonly share: number;
}

interface Piece {
  readonly id: string | number;
}

/**
 * Yields after each piece, with the damage when it is damaged, so that the caller can do other things in between and
 * knows how far it is. What SQLite itself can no longer read counts as damaged.
 */
export function* findDamage(database: Database, names: Names): Generator<Looked> {
  const count = (table: string) => database.prepare<[], number>(`SELECT count(*) FROM ${table}`).pluck().get()!;
  const tables = ['households', 'evidence', 'series', 'raw_files', 'estimates', 'checks', 'settings', 'shelf'];
  const all = Math.max(
    1,
    tables.reduce((sum, table) => sum + count(table), 0),
  );
  let looked = 0;

  function* look<P extends Piece>(
    table: string,
    columns: string,
    isSound: (piece: P) => boolean,
    name: (piece: P) => Damage,
  ): Generator<Looked> {
    // The keys first: a row that cannot be read stops a walk over the rows, and no walk over the keys.
    const keys = database.prepare<[], number>(`SELECT rowid FROM ${table}`).pluck().all();
    const byKey = database.prepare<[number], P>(`SELECT ${columns} FROM ${table} WHERE rowid = ?`);
    for (const key of keys) {
      let piece: P | undefined;
      let sound = false;
      try {
        piece = byKey.get(key);
        sound = piece === undefined || isSound(piece);
      } catch {
        sound = false;
      }
      looked++;
      yield { damage: sound ? null : name(piece ?? ({ id: key } as unknown as P)), share: Math.min(1, looked / all) };
    }
  }

  type Document = SealedRow & Piece & { readonly householdId: string; readonly number: number };
  const documents = 'document, sealed';
  yield* look<Document>('households', `id, ${documents}`, isWhole, ({ id }) => ({
    kind: 'household',
    ...names.household(String(id)),
  }));
  yield* look<Document>('evidence', `id, ${documents}`, isWhole, ({ id }) => ({
    kind: 'import',
    ...names.evidence(String(id)),
  }));
  yield* look<Piece & { evidenceId: string; sealed: string; readings: Uint8Array }>(
    'series',
    'key AS id, evidence_id AS evidenceId, sealed, readings',
    ({ sealed, readings }) => seal(readings) === sealed,
    ({ evidenceId }) => ({ kind: 'readings', ...names.evidence(evidenceId) }),
  );
  const owner = database.prepare<[string], string>('SELECT id FROM evidence WHERE raw_sha256 = ?').pluck();
  yield* look<Piece & { packed: Uint8Array }>(
    'raw_files',
    'sha256 AS id, packed',
    ({ id, packed }) => seal(unpackFile(packed)) === id,
    ({ id }) => ({ kind: 'raw-file', ...names.evidence(owner.get(String(id)) ?? '') }),
  );
  yield* look<Document>(
    'estimates',
    `id, household_id AS householdId, number, ${documents}`,
    isWhole,
    ({ householdId, number }) => ({ kind: 'estimate', number, ...names.household(householdId) }),
  );
  yield* look<Document>('checks', `id, household_id AS householdId, ${documents}`, isWhole, ({ householdId }) => ({
    kind: 'check',
    ...names.household(householdId),
  }));
  const isWholeValue = ({ document, sealed }: SealedRow) => seal(document) === sealed;
  yield* look<Document>('settings', 'name AS id, value AS document, sealed', isWholeValue, () => ({
    kind: 'settings',
  }));
  yield* look<Document>('shelf', `id, ${documents}`, isWhole, () => ({ kind: 'tariff' }));
}

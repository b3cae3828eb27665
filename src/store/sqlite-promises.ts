/** Promises and bill checks in SQLite. A promise is written once; a trigger refuses every change. */
import type { Database } from 'better-sqlite3';
import type { BillCheck, KeptPromise } from '../model/shapes/promise.ts';
import type { Store } from './store.ts';

type PromisePart = Pick<
  Store,
  | 'nextPromiseNumber'
  | 'addPromise'
  | 'listPromises'
  | 'readPromise'
  | 'addCheck'
  | 'listChecks'
  | 'readCheck'
  | 'dropCheck'
>;

/** Name in `settings` under which the highest number given so far is kept, since numbers of erased promises are not used again. */
const COUNTER = 'last promise number';

export function openPromises(database: Database): PromisePart {
  const readCounter = database.prepare<[string], { value: string }>('SELECT value FROM settings WHERE name = ?');
  const writeCounter = database.prepare(
    'INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );
  const add = database.prepare('INSERT INTO promises (id, household_id, number, document) VALUES (?, ?, ?, ?)');
  const list = database.prepare<[string], { document: string }>(
    'SELECT document FROM promises WHERE household_id = ? ORDER BY number, rowid',
  );
  const byId = database.prepare<[string], { document: string }>('SELECT document FROM promises WHERE id = ?');
  const addCheck = database.prepare(
    `INSERT INTO checks (id, place, household_id, promise_id, document)
     VALUES (?, (SELECT coalesce(max(place), 0) + 1 FROM checks), ?, ?, ?)`,
  );
  const listChecks = database.prepare<[string], { document: string }>(
    'SELECT document FROM checks WHERE household_id = ? ORDER BY place',
  );
  const checkById = database.prepare<[string], { document: string }>('SELECT document FROM checks WHERE id = ?');
  const dropCheck = database.prepare('DELETE FROM checks WHERE id = ?');

  const lastNumber = () => Number(readCounter.get(COUNTER)?.value ?? 0);

  return {
    nextPromiseNumber: () => lastNumber() + 1,
    addPromise: database.transaction((promise: KeptPromise) => {
      add.run(promise.id, promise.householdId, promise.number, JSON.stringify(promise));
      if (promise.number > lastNumber()) writeCounter.run(COUNTER, String(promise.number));
    }),
    listPromises: (householdId) => list.all(householdId).map(({ document }) => JSON.parse(document) as KeptPromise),
    readPromise(id) {
      const row = byId.get(id);
      return row && (JSON.parse(row.document) as KeptPromise);
    },
    addCheck(check, householdId) {
      addCheck.run(check.id, householdId, check.promiseId, JSON.stringify(check));
    },
    listChecks: (householdId) => listChecks.all(householdId).map(({ document }) => JSON.parse(document) as BillCheck),
    readCheck(id) {
      const row = checkById.get(id);
      return row && (JSON.parse(row.document) as BillCheck);
    },
    dropCheck(id) {
      dropCheck.run(id);
    },
  };
}

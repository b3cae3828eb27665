/** Written estimates and bill checks in SQLite. A written estimate is written once; a trigger refuses every change. */
import type { Database } from 'better-sqlite3';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import type { Store } from './store.ts';

type EstimatePart = Pick<
  Store,
  | 'nextEstimateNumber'
  | 'addEstimate'
  | 'listEstimates'
  | 'readEstimate'
  | 'addCheck'
  | 'listChecks'
  | 'readCheck'
  | 'dropCheck'
>;

/** Name in `settings` under which the highest number given so far is kept, since numbers of erased estimates are not used again. */
const COUNTER = 'last estimate number';

export function openEstimates(database: Database): EstimatePart {
  const readCounter = database.prepare<[string], { value: string }>('SELECT value FROM settings WHERE name = ?');
  const writeCounter = database.prepare(
    'INSERT INTO settings (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value',
  );
  const add = database.prepare('INSERT INTO estimates (id, household_id, number, document) VALUES (?, ?, ?, ?)');
  const list = database.prepare<[string], { document: string }>(
    'SELECT document FROM estimates WHERE household_id = ? ORDER BY number, rowid',
  );
  const byId = database.prepare<[string], { document: string }>('SELECT document FROM estimates WHERE id = ?');
  const addCheck = database.prepare(
    `INSERT INTO checks (id, place, household_id, estimate_id, document)
     VALUES (?, (SELECT coalesce(max(place), 0) + 1 FROM checks), ?, ?, ?)`,
  );
  const listChecks = database.prepare<[string], { document: string }>(
    'SELECT document FROM checks WHERE household_id = ? ORDER BY place',
  );
  const checkById = database.prepare<[string], { document: string }>('SELECT document FROM checks WHERE id = ?');
  const dropCheck = database.prepare('DELETE FROM checks WHERE id = ?');

  const lastNumber = () => Number(readCounter.get(COUNTER)?.value ?? 0);

  return {
    nextEstimateNumber: () => lastNumber() + 1,
    addEstimate: database.transaction((estimate: WrittenEstimate) => {
      add.run(estimate.id, estimate.householdId, estimate.number, JSON.stringify(estimate));
      if (estimate.number > lastNumber()) writeCounter.run(COUNTER, String(estimate.number));
    }),
    listEstimates: (householdId) =>
      list.all(householdId).map(({ document }) => JSON.parse(document) as WrittenEstimate),
    readEstimate(id) {
      const row = byId.get(id);
      return row && (JSON.parse(row.document) as WrittenEstimate);
    },
    addCheck(check, householdId) {
      addCheck.run(check.id, householdId, check.estimateId, JSON.stringify(check));
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

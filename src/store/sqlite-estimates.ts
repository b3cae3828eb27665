/** Written estimates and bill checks in SQLite. A written estimate is written once; a trigger refuses every change. */
import type { Database } from 'better-sqlite3';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { seal } from './seal.ts';
import { type Names, readSealed, readWhole, type SealedRow } from './sealed.ts';
import type { Store } from './store.ts';
import type { Damage } from './store-fault.ts';

type EstimatePart = Pick<
  Store,
  | 'nextEstimateNumber'
  | 'lastEstimate'
  | 'addEstimate'
  | 'listEstimates'
  | 'readEstimate'
  | 'addCheck'
  | 'saveCheck'
  | 'listChecks'
  | 'readCheck'
  | 'dropCheck'
>;

/** Name in `settings` under which the highest number given so far is kept, since numbers of erased estimates are not used again. */
const COUNTER = 'last estimate number';

interface OwnedRow extends SealedRow {
  householdId: string;
}
interface EstimateRow extends OwnedRow {
  number: number;
}

export function openEstimates(database: Database, names: Names): EstimatePart {
  const readCounter = database.prepare<[string], { value: string }>('SELECT value FROM settings WHERE name = ?');
  const writeCounter = database.prepare(
    `INSERT INTO settings (name, value, sealed) VALUES (?, ?, ?)
     ON CONFLICT (name) DO UPDATE SET value = excluded.value, sealed = excluded.sealed`,
  );
  const add = database.prepare(
    'INSERT INTO estimates (id, household_id, number, document, sealed) VALUES (?, ?, ?, ?, ?)',
  );
  const list = database.prepare<[string], EstimateRow>(
    'SELECT household_id AS householdId, number, document, sealed FROM estimates WHERE household_id = ? ORDER BY number, rowid',
  );
  const byId = database.prepare<[string], EstimateRow>(
    'SELECT household_id AS householdId, number, document, sealed FROM estimates WHERE id = ?',
  );
  const addCheck = database.prepare(
    `INSERT INTO checks (id, place, household_id, estimate_id, document, sealed)
     VALUES (?, (SELECT coalesce(max(place), 0) + 1 FROM checks), ?, ?, ?, ?)`,
  );
  const saveCheck = database.prepare('UPDATE checks SET document = ?, sealed = ? WHERE id = ?');
  const listChecks = database.prepare<[string], OwnedRow>(
    'SELECT household_id AS householdId, document, sealed FROM checks WHERE household_id = ? ORDER BY place',
  );
  const checkById = database.prepare<[string], OwnedRow>(
    'SELECT household_id AS householdId, document, sealed FROM checks WHERE id = ?',
  );
  const dropCheck = database.prepare('DELETE FROM checks WHERE id = ?');

  // The estimates themselves say it too, should the counter be damaged.
  const highest = database.prepare<[], number>('SELECT coalesce(max(number), 0) FROM estimates').pluck();
  const lastNumber = () => Math.max(Number(readCounter.get(COUNTER)?.value ?? 0) || 0, highest.get()!);
  const latest = database.prepare<[], { number: number; madeOn: string }>(
    `SELECT number, json_extract(document, '$.madeOn') AS madeOn FROM estimates ORDER BY number DESC, rowid DESC LIMIT 1`,
  );
  const nameEstimate = ({ householdId, number }: EstimateRow): Damage => ({
    kind: 'estimate',
    number,
    ...names.household(householdId),
  });
  const nameCheck = ({ householdId }: OwnedRow): Damage => ({ kind: 'check', ...names.household(householdId) });
  const readEstimate = (row: EstimateRow) => readSealed<WrittenEstimate>(row, () => nameEstimate(row));
  const readCheck = (row: OwnedRow) => readSealed<BillCheck>(row, () => nameCheck(row));

  return {
    nextEstimateNumber: () => lastNumber() + 1,
    lastEstimate: () => latest.get(),
    addEstimate: database.transaction((estimate: WrittenEstimate) => {
      const document = JSON.stringify(estimate);
      if (estimate.number > lastNumber()) {
        const number = String(estimate.number);
        writeCounter.run(COUNTER, number, seal(number));
      }
      add.run(estimate.id, estimate.householdId, estimate.number, document, seal(document));
    }),
    listEstimates: (householdId, onDamage) => readWhole(list.all(householdId), readEstimate, onDamage),
    readEstimate(id) {
      const row = byId.get(id);
      return row && readEstimate(row);
    },
    addCheck(check, householdId) {
      const document = JSON.stringify(check);
      addCheck.run(check.id, householdId, check.estimateId, document, seal(document));
    },
    saveCheck(check) {
      const document = JSON.stringify(check);
      saveCheck.run(document, seal(document), check.id);
    },
    listChecks: (householdId, onDamage) => readWhole(listChecks.all(householdId), readCheck, onDamage),
    readCheck(id) {
      const row = checkById.get(id);
      return row && readCheck(row);
    },
    dropCheck(id) {
      dropCheck.run(id);
    },
  };
}

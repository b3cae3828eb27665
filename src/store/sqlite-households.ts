/** Households in SQLite: one JSON document each, with a revision that counts up at every save. */
import type { Database } from 'better-sqlite3';
import type { Household } from '../model/shapes/household.ts';
import { seal } from './seal.ts';
import { type Names, readSealed, readWhole, type SealedRow } from './sealed.ts';
import type { HouseholdRow, Store, StoredHousehold } from './store.ts';

type HouseholdPart = Pick<
  Store,
  'listHouseholds' | 'readHousehold' | 'createHousehold' | 'saveHousehold' | 'archiveHousehold' | 'eraseHousehold'
>;

interface Row extends SealedRow {
  id: string;
  revision: number;
  archived: number;
  changedOn: string;
}

interface ListedRow extends Row {
  evidenceCount: number;
  estimateCount: number;
}

const COLUMNS = 'households.id, document, sealed, revision, archived, changed_on AS changedOn';

const searchedText = (household: Household) =>
  [household.name, household.jobNumber ?? '', household.home.postcode ?? ''].join('\n').toLocaleLowerCase('en-GB');

const read = (row: Row, names: Names): StoredHousehold => ({
  household: readSealed<Household>(row, () => ({ kind: 'household', ...names.household(row.id) })),
  revision: row.revision,
  archived: row.archived === 1,
  changedOn: row.changedOn,
});

export function openHouseholds(database: Database, names: Names): HouseholdPart {
  const list = database.prepare<[number, string], ListedRow>(
    `SELECT ${COLUMNS},
       (SELECT count(*) FROM evidence WHERE household_id = households.id AND undone = 0) AS evidenceCount,
       (SELECT count(*) FROM estimates WHERE household_id = households.id) AS estimateCount
     FROM households WHERE archived = ? AND instr(searched, ?) > 0 ORDER BY changed_on DESC, id`,
  );
  const byId = database.prepare<[string], Row>(`SELECT ${COLUMNS} FROM households WHERE id = ?`);
  const create = database.prepare(
    'INSERT INTO households (id, document, sealed, searched, revision, changed_on) VALUES (?, ?, ?, ?, 1, ?)',
  );
  const save = database.prepare(
    `UPDATE households SET document = ?, sealed = ?, searched = ?, revision = revision + 1, changed_on = ?
     WHERE id = ? AND revision = ?`,
  );
  const archive = database.prepare('UPDATE households SET archived = ?, changed_on = ? WHERE id = ?');
  const erase = database.transaction((id: string) => {
    // Checks go before the written estimates that they name.
    database.prepare('DELETE FROM checks WHERE household_id = ?').run(id);
    database.prepare('DELETE FROM households WHERE id = ?').run(id);
    database
      .prepare(
        'DELETE FROM raw_files WHERE sha256 NOT IN (SELECT raw_sha256 FROM evidence WHERE raw_sha256 IS NOT NULL)',
      )
      .run();
  });

  return {
    listHouseholds: ({ find, archived }, onDamage): HouseholdRow[] =>
      readWhole(
        list.all(archived ? 1 : 0, (find ?? '').trim().toLocaleLowerCase('en-GB')),
        (row) => ({ ...read(row, names), evidenceCount: row.evidenceCount, estimateCount: row.estimateCount }),
        onDamage,
      ),
    readHousehold(id) {
      const row = byId.get(id);
      return row && read(row, names);
    },
    createHousehold(household, now) {
      const document = JSON.stringify(household);
      create.run(household.id, document, seal(document), searchedText(household), now);
      return read(byId.get(household.id)!, names);
    },
    saveHousehold(household, revision, now) {
      const document = JSON.stringify(household);
      const row = [document, seal(document), searchedText(household), now, household.id, revision];
      return save.run(...row).changes === 1 ? read(byId.get(household.id)!, names) : undefined;
    },
    archiveHousehold(id, archived, now) {
      archive.run(archived ? 1 : 0, now, id);
    },
    eraseHousehold: erase,
  };
}

/** The store on one SQLite file. */
import type { Migration } from './migrations.ts';
import { type Opening, openDatabase } from './open-database.ts';
import { openEstimates } from './sqlite-estimates.ts';
import { openEvidence } from './sqlite-evidence.ts';
import { openHouseholds } from './sqlite-households.ts';
import { openSettings } from './sqlite-settings.ts';
import type { Store } from './store.ts';
import { StoreFault } from './store-fault.ts';

export interface SqliteStore extends Store {
  readonly opening: Opening;
}

/** Opens or makes the database at `path`; `:memory:` keeps nothing. Throws StoreFault. */
export function openSqliteStore(path: string, migrations?: readonly Migration[]): SqliteStore {
  const { database, opening } = openDatabase(path, migrations);
  return {
    opening,
    ...openHouseholds(database),
    ...openEvidence(database),
    ...openEstimates(database),
    ...openSettings(database),
    together: (work) => database.transaction(work)(),
    async backup(to) {
      // A vacuumed copy holds nothing of what was erased, and waits for no other process.
      try {
        database.prepare('VACUUM INTO ?').run(to);
      } catch {
        throw new StoreFault({ code: 'unreadable', path: to });
      }
    },
    close() {
      database.close();
    },
  };
}

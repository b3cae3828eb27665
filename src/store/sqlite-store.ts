/** The store on one SQLite file. */
import { findDamage } from './find-damage.ts';
import { type Keeper, keepIn } from './keep-store.ts';
import { type OpenDatabase, type Opening, openDatabase } from './open-database.ts';
import { replaceBy, saveCopy, sealOfAll } from './replace-contents.ts';
import { openNames } from './sealed.ts';
import { openEstimates } from './sqlite-estimates.ts';
import { openEvidence } from './sqlite-evidence.ts';
import { openHouseholds } from './sqlite-households.ts';
import { openSettings } from './sqlite-settings.ts';
import type { Store } from './store.ts';

export interface SqliteStore extends Store {
  readonly opening: Opening;
}

/** Methods that change what is stored. */
const WRITES: ReadonlySet<string> = new Set<keyof Store>([
  'createHousehold',
  'saveHousehold',
  'archiveHousehold',
  'eraseHousehold',
  'addEvidence',
  'mendRawFile',
  'mendReadings',
  'undoEvidence',
  'restoreEvidence',
  'addEstimate',
  'addCheck',
  'saveCheck',
  'dropCheck',
  'writeSettings',
  'writeUpkeep',
  'writeLayout',
  'keepOnShelf',
  'dropFromShelf',
]);

/** Puts the keeper around every method. */
function keepAll<T extends object>(parts: T, keeper: Keeper): T {
  const kept = Object.entries(parts).map(([name, method]) => {
    const work = method as (...given: unknown[]) => unknown;
    const way = WRITES.has(name) ? keeper.write : keeper.read;
    return [name, (...given: unknown[]) => way(() => work(...given))] as const;
  });
  return Object.fromEntries(kept) as T;
}

/** Opens or makes the database at `path`; `:memory:` keeps nothing. Throws StoreFault. */
export function openSqliteStore(path: string, how: OpenDatabase = {}): SqliteStore {
  const { database, opening, counted } = openDatabase(path, how);
  const keeper = keepIn(database, path, counted);
  const names = openNames(database);
  const parts = keepAll(
    {
      ...openHouseholds(database, names),
      ...openEvidence(database, names),
      ...openEstimates(database, names),
      ...openSettings(database),
    },
    keeper,
  );
  return {
    path,
    opening,
    ...parts,
    eraseHousehold(id) {
      parts.eraseHousehold(id);
      // What was erased must not live on in the log beside the file.
      keeper.carryOver();
    },
    together: keeper.write,
    sealOfAll: () => keeper.read(() => sealOfAll(database)),
    findDamage: () => findDamage(database, names),
    saveCopy: (to) => keeper.read(() => saveCopy(database, to)),
    replaceBy(copy) {
      database.prepare('ATTACH ? AS copy').run(copy);
      try {
        keeper.write(() => replaceBy(database));
      } finally {
        database.exec('DETACH copy');
      }
      // What was there before must not live on in the log.
      keeper.carryOver();
    },
    close: keeper.close,
  };
}

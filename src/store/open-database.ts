/**
 * Opens the database file: one process at a time, checked before use, carried to the newest schema with a copy made
 * first. A damaged file is set aside under a new name and never written over.
 */
import { existsSync, mkdirSync, readdirSync, renameSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { MIGRATIONS, type Migration } from './migrations.ts';
import { StoreFault } from './store-fault.ts';

/** What happened on opening, for the window to say. */
export interface Opening {
  /** Whether there was no database yet, or none that could be read. */
  readonly created: boolean;
  /** Where the damaged file lies now. */
  readonly setAside: string | null;
  /** The copy made before the schema was changed. */
  readonly backup: string | null;
}

/** Files up to this size are read through on every start; larger ones only when the last session ended badly. */
const CHECK_ALWAYS_BYTES = 64 * 1024 * 1024;

export function openDatabase(
  path: string,
  migrations: readonly Migration[] = MIGRATIONS,
): { database: Database.Database; opening: Opening } {
  if (path === ':memory:') {
    const database = configure(new Database(path));
    migrate(database, path, migrations);
    return { database, opening: { created: true, setAside: null, backup: null } };
  }
  // Readable by its owner only: it holds other people's bills.
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const existed = existsSync(path) && statSync(path).size > 0;
  const opened = tryToOpen(path);
  if (opened !== 'damaged') {
    const backup = migrate(opened, path, migrations);
    return { database: opened, opening: { created: !existed, setAside: null, backup } };
  }
  const setAside = putAside(path);
  const database = tryToOpen(path);
  if (database === 'damaged') throw new StoreFault({ code: 'unreadable', path });
  migrate(database, path, migrations);
  return { database, opening: { created: true, setAside, backup: null } };
}

/**
 * FULL, since an estimate handed over must outlive a power cut, and an installer saves seldom enough not to notice.
 * EXCLUSIVE keeps the file's lock for as long as the process lives, and the system frees it when the process dies,
 * so that no lock file can be left behind.
 */
function configure(database: Database.Database): Database.Database {
  database.pragma('locking_mode = EXCLUSIVE');
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
  database.pragma('secure_delete = ON');
  database.pragma('trusted_schema = OFF');
  return database;
}

function tryToOpen(path: string): Database.Database | 'damaged' {
  const log = `${path}-wal`;
  const endedBadly = existsSync(log) && statSync(log).size > 0;
  const size = existsSync(path) ? statSync(path).size : 0;
  let database: Database.Database | undefined;
  try {
    database = configure(new Database(path, { timeout: 1000 }));
    // Takes the lock now, not at the first save.
    database.exec('BEGIN IMMEDIATE; COMMIT');
    if (endedBadly || size <= CHECK_ALWAYS_BYTES) {
      const verdict = database.pragma('quick_check(1)', { simple: true });
      if (verdict !== 'ok') {
        database.close();
        return 'damaged';
      }
    }
    return database;
  } catch (error) {
    database?.close();
    const code = (error as { code?: string }).code ?? '';
    if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
      throw new StoreFault({ code: 'in-use', path });
    }
    if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return 'damaged';
    if (code.startsWith('SQLITE_CANTOPEN') || code.startsWith('SQLITE_READONLY') || code.startsWith('SQLITE_IOERR')) {
      throw new StoreFault({ code: 'unreadable', path });
    }
    throw error;
  }
}

const stamp = () => new Date().toISOString().slice(0, 19).replaceAll(':', '-');

/** A name in the same folder that no file has yet. */
function freeName(path: string, addition: string): string {
  const folder = dirname(path);
  const taken = new Set(readdirSync(folder));
  const [stem, ending] = [basename(path).replace(/\.[^.]*$/, ''), basename(path).match(/\.[^.]*$/)?.[0] ?? ''];
  for (let n = 1; ; n++) {
    const name = `${stem}-${addition}${n === 1 ? '' : `-${n}`}${ending}`;
    if (!taken.has(name)) return join(folder, name);
  }
}

function putAside(path: string): string {
  const aside = freeName(path, `damaged-${stamp()}`);
  // The log may hold what is still to be rescued, so it moves along under the matching name.
  for (const ending of ['', '-wal', '-shm']) {
    if (existsSync(path + ending)) renameSync(path + ending, aside + ending);
  }
  return aside;
}

/** Carries the file to the newest schema; a file that cannot be carried there is closed as it was. */
function migrate(database: Database.Database, path: string, migrations: readonly Migration[]): string | null {
  try {
    return takeSteps(database, path, migrations);
  } catch (error) {
    database.close();
    throw error;
  }
}

/** Takes the steps that the file has not seen, each in a transaction. Answers the path of the copy made before, if any. */
function takeSteps(database: Database.Database, path: string, migrations: readonly Migration[]): string | null {
  const from = database.pragma('user_version', { simple: true }) as number;
  const newest = migrations.at(-1)?.version ?? 0;
  if (from > newest) {
    throw new StoreFault({ code: 'newer', path, found: from, expected: newest });
  }
  if (from === newest) return null;
  let backup: string | null = null;
  if (from > 0 && path !== ':memory:') {
    backup = freeName(path, `before-version-${newest}-${stamp()}`);
    database.prepare('VACUUM INTO ?').run(backup);
  }
  for (const migration of migrations.filter(({ version }) => version > from)) {
    database.transaction(() => {
      database.exec(migration.sql);
      database.pragma(`user_version = ${migration.version}`);
    })();
  }
  return backup;
}

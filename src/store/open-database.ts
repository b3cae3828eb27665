/**
 * Opens the database file: one process at a time, checked before use, carried to the newest schema with a copy made
 * first. What is damaged, foreign, emptied or left without its log is set aside under a new name and never written over.
 */
import { Buffer } from 'node:buffer';
import {
  chmodSync,
  closeSync,
  copyFileSync,
  existsSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { makeFolder } from './make-folder.ts';
import { MIGRATIONS, type Migration } from './migrations.ts';
import { canPack } from './pack-file.ts';
import { addSealFunctions } from './seal.ts';
import { StoreFault, withFaults } from './store-fault.ts';
import { type Counted, fromHead, readHead, readTally } from './tally.ts';

/** Something had happened to the file since the last session. */
export interface Incident {
  /**
   * `emptied`: changes had been kept, and the file is gone or empty; `lost-changes`: the file opens, but what was kept
   * last is not in it; `other-log`: the log beside it belonged to another file.
   */
  readonly kind: 'damaged' | 'foreign' | 'emptied' | 'other-log' | 'lost-changes';
  /** Where what was found lies now, untouched; null where nothing was left. */
  readonly setAside: string | null;
  /** Changes that had been kept and are missing. */
  readonly missing?: number;
  /** Households that had been kept. */
  readonly households?: number;
}

/** What happened on opening, for the window to say. */
export interface Opening {
  /** Whether there was no database yet, or none that could be read. */
  readonly created: boolean;
  readonly incident: Incident | null;
  /** The copy made before the schema was changed. */
  readonly backup: string | null;
}

export interface OpenedDatabase {
  readonly database: Database.Database;
  readonly opening: Opening;
  readonly counted: Counted;
}

/** Files up to this size are read through on every start; larger ones only when the last session ended badly. */
const CHECK_ALWAYS_BYTES = 64 * 1024 * 1024;
/**
 * What SQLite keeps of a file; a smaller one is rescued from there when somebody empties it. Of a larger one fetching the
 * pages takes longer than looking them through, so it is seen as memory meanwhile.
 */
const CACHE_BYTES = 16_000 * 1024;
/** Of a new file. Ten years of half-hours are written to the log and from there in two thirds of the time of SQLite's own 4 KiB. */
const PAGE_BYTES = 16 * 1024;
const PIECE_BYTES = 1024 * 1024;
const NOTHING: Counted = { count: 0, heads: [0], households: 0 };

export interface OpenDatabase {
  readonly migrations?: readonly Migration[];
  /** Called once no other process can have the file, before it is looked through. */
  readonly onHeld?: () => void;
}

export function openDatabase(path: string, how: OpenDatabase = {}): OpenedDatabase {
  const { migrations = MIGRATIONS } = how;
  if (!canPack()) throw new StoreFault({ code: 'old-runtime', path });
  if (path === ':memory:') {
    const database = configure(new Database(path));
    migrate(database, path, migrations);
    return { database, opening: { created: true, incident: null, backup: null }, counted: NOTHING };
  }
  // Readable by its owner only: it holds other people's bills.
  makeFolder(dirname(path));
  const seen = readTally(path);
  const before = lookBefore(path, seen);
  const existed = sizeOf(path) > 0;
  makePrivate(path);
  const head = existed ? readHead(path) : 0;
  const endedBadly = sizeOf(logOf(path)) > 0;
  const log = keepLog(path);
  const opened = tryToOpen(path, log, endedBadly, how);
  if (!('setAside' in opened)) {
    const count = fromHead(opened.pragma('application_id', { simple: true }) as number);
    const lost =
      seen !== undefined && before === null && count < seen.count ? keepAsFound(path, log, seen, count) : null;
    if (log !== null) rmSync(log, { force: true });
    const backup = withFaults(path, () => migrate(opened, path, migrations));
    const opening = { created: !existed && before === null, incident: lost ?? before, backup };
    return { database: opened, opening, counted: { ...NOTHING, count, heads: [head, count] } };
  }
  makePrivate(path);
  const database = tryToOpen(path, null, false, how);
  if ('setAside' in database) throw new StoreFault({ code: 'unreadable', path });
  withFaults(path, () => migrate(database, path, migrations));
  const incident = { ...opened, ...(seen ? { households: seen.households } : {}) };
  return { database, opening: { created: false, incident, backup: null }, counted: NOTHING };
}

const sizeOf = (path: string): number => statSync(path, { throwIfNoEntry: false })?.size ?? 0;
const logOf = (path: string): string => `${path}-wal`;

/** Before SQLite sees it: an empty file makes SQLite delete the log, and another file's log would be laid over this one. */
function lookBefore(path: string, seen: Counted | undefined): Incident | null {
  const hasLog = sizeOf(logOf(path)) > 0;
  if (sizeOf(path) === 0) {
    if (!hasLog && !(seen && seen.count > 0)) return null;
    return { kind: 'emptied', setAside: putAside(path, 'emptied'), ...(seen ? { households: seen.households } : {}) };
  }
  if (!hasLog || !seen || seen.heads.includes(readHead(path))) return null;
  const setAside = `${freeName(path, `other-log-${stamp()}`)}-wal`;
  renameSync(logOf(path), setAside);
  return { kind: 'other-log', setAside };
}

/** In a folder that was there before, the file itself must keep others out. Throws the system's reason where it cannot be made. */
function makePrivate(path: string): void {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) throw new StoreFault({ code: 'unreadable', path });
  closeSync(openSync(path, 'a', 0o600));
  if (process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0) chmodSync(path, 0o600);
}

/** Opening carries on with the good part of a log and drops the rest; this keeps the whole of it until all is seen to be there. */
function keepLog(path: string): string | null {
  if (sizeOf(logOf(path)) === 0) return null;
  const kept = `${logOf(path)}-before`;
  try {
    copyFileSync(logOf(path), kept);
    return kept;
  } catch (error) {
    // On a full disk the households come before the means to look into what was lost.
    rmSync(kept, { force: true });
    if (!['ENOSPC', 'EDQUOT'].includes(String((error as { code?: unknown }).code))) throw error;
    return null;
  }
}

function keepAsFound(path: string, log: string | null, seen: Counted, count: number): Incident {
  const setAside = freeName(path, `older-${stamp()}`);
  copyFileSync(path, setAside);
  if (log !== null) renameSync(log, logOf(setAside));
  return { kind: 'lost-changes', setAside, missing: seen.count - count, households: seen.households };
}

/**
 * FULL, since an estimate handed over must outlive a power cut, and an installer saves seldom enough not to notice.
 * EXCLUSIVE keeps the file's lock for as long as the process lives, and the system frees it when the process dies,
 * so that no lock file can be left behind. The log is carried over by the store itself, which counts when.
 */
function configure(database: Database.Database): Database.Database {
  database.pragma('journal_mode = WAL');
  database.pragma('wal_autocheckpoint = 0');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
  database.pragma('secure_delete = ON');
  database.pragma('trusted_schema = OFF');
  addSealFunctions(database);
  return database;
}

function tryToOpen(
  path: string,
  log: string | null,
  endedBadly: boolean,
  { migrations = MIGRATIONS, onHeld }: OpenDatabase,
): Database.Database | Incident {
  const size = sizeOf(path);
  const isChecked = endedBadly || size <= CHECK_ALWAYS_BYTES;
  const isMapped = isChecked && size > CACHE_BYTES;
  let database: Database.Database | undefined;
  try {
    if (isMapped) readThrough(path);
    database = new Database(path, { timeout: 1000 });
    database.pragma('locking_mode = EXCLUSIVE');
    // Before anything is written into its head.
    if (isForeign(database)) return leave(database, path, log, 'foreign');
    // A new file has nothing that a journal could bring back, and is spared the four waits for the disk that one costs.
    if (size === 0) {
      database.pragma(`page_size = ${PAGE_BYTES}`);
      database.pragma('journal_mode = MEMORY');
    }
    configure(database);
    // Takes the lock now, not at the first save.
    database.exec('BEGIN IMMEDIATE; COMMIT');
    refuseNewer(database, path, migrations);
    onHeld?.();
    if (isChecked) {
      if (isMapped) database.pragma(`mmap_size = ${size}`);
      const sound = isSound(database);
      if (isMapped) database.pragma('mmap_size = 0');
      if (!sound) return leave(database, path, log, 'damaged');
    }
    return database;
  } catch (error) {
    const code = (error as { code?: string }).code ?? '';
    if (code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return leave(database, path, log, 'damaged');
    database?.close();
    return withFaults(path, () => {
      throw error;
    });
  }
}

/**
 * What a disk cannot give is told here, as a fault: while the file is seen as memory it would end the program. To be done
 * before SQLite opens the file, since closing it here gives up every lock that this process has on it.
 */
function readThrough(path: string): void {
  const file = openSync(path, 'r');
  try {
    const piece = Buffer.allocUnsafe(PIECE_BYTES);
    while (readSync(file, piece) > 0);
  } finally {
    closeSync(file);
  }
}

/** Whether SQLite reads the file through without a fault. What a document says is held against its own hash, and spoils no other. */
export function isSound(database: Database.Database): boolean {
  database.pragma('ignore_check_constraints = ON');
  const verdict = database.pragma('quick_check(1)', { simple: true });
  database.pragma('ignore_check_constraints = OFF');
  return verdict === 'ok';
}

/** Closes and sets aside. Closing carries the log over, so that where there is one, what was found is copied before. */
function leave(
  database: Database.Database | undefined,
  path: string,
  log: string | null,
  kind: 'damaged' | 'foreign',
): Incident {
  if (log === null) {
    database?.close();
    return { kind, setAside: putAside(path, kind) };
  }
  const setAside = freeName(path, `${kind}-${stamp()}`);
  copyFileSync(path, setAside);
  renameSync(log, logOf(setAside));
  database?.close();
  for (const ending of ['', '-wal', '-shm']) rmSync(path + ending, { force: true });
  return { kind, setAside };
}

/** A database of some other program: it has tables, and not ours. */
function isForeign(database: Database.Database): boolean {
  const names = database.prepare<[], string>(`SELECT name FROM sqlite_schema WHERE type = 'table'`).pluck().all();
  return names.length > 0 && !names.includes('households');
}

const stamp = () => new Date().toISOString().slice(0, 19).replaceAll(':', '-');

/** A name in the same folder that no file has yet. */
export function freeName(path: string, addition: string): string {
  const folder = dirname(path);
  const taken = new Set(readdirSync(folder));
  const [stem, ending] = [basename(path).replace(/\.[^.]*$/, ''), basename(path).match(/\.[^.]*$/)?.[0] ?? ''];
  for (let n = 1; ; n++) {
    const name = `${stem}-${addition}${n === 1 ? '' : `-${n}`}${ending}`;
    if (!taken.has(name) && !taken.has(`${name}-wal`)) return join(folder, name);
  }
}

/** Answers the new name of what there was of file, log and index, the first of them; null where there was nothing. */
function putAside(path: string, what: string): string | null {
  const aside = freeName(path, `${what}-${stamp()}`);
  const found = ['', '-wal', '-shm'].filter((ending) => existsSync(path + ending));
  // The log may hold what is still to be rescued, so it moves along under the matching name.
  for (const ending of found) renameSync(path + ending, aside + ending);
  return found.length === 0 ? null : aside + found[0];
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

const versionOf = (database: Database.Database) => database.pragma('user_version', { simple: true }) as number;

function refuseNewer(database: Database.Database, path: string, migrations: readonly Migration[]): void {
  const [found, expected] = [versionOf(database), migrations.at(-1)?.version ?? 0];
  if (found <= expected) return;
  const copy = newestCopy(path);
  throw new StoreFault({ code: 'newer', path, found, expected, ...(copy ? { copy } : {}) });
}

/** Takes the steps that the file has not seen, all or none of them. Answers the path of the copy made before, if any. */
function takeSteps(database: Database.Database, path: string, migrations: readonly Migration[]): string | null {
  const from = versionOf(database);
  const newest = migrations.at(-1)?.version ?? 0;
  if (from === newest) return null;
  let backup: string | null = null;
  if (from > 0 && path !== ':memory:') {
    backup = freeName(path, `before-version-${newest}-${stamp()}`);
    database.prepare('VACUUM INTO ?').run(backup);
  }
  database.transaction(() => {
    for (const { version, sql } of migrations) if (version > from) database.exec(sql);
    database.pragma(`user_version = ${newest}`);
  })();
  return backup;
}

/** The copy that a newer program made before it changed the file, if it lies here; its name ends with the time. */
function newestCopy(path: string): string | undefined {
  const stem = `${basename(path).replace(/\.[^.]*$/, '')}-before-version-`;
  const made = readdirSync(dirname(path)).filter((name) => name.startsWith(stem));
  const latest = made.sort((a, b) => (a.slice(-26) < b.slice(-26) ? -1 : 1)).at(-1);
  return latest === undefined ? undefined : join(dirname(path), latest);
}

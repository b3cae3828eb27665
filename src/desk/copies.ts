/** Everything as one file to another place, and back again: one way for window, command line and tests. */
import { createHash } from 'node:crypto';
import {
  closeSync,
  copyFileSync,
  createReadStream,
  existsSync,
  fsyncSync,
  mkdtempSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { checkCopy } from '../store/check-copy.ts';
import { type CopyKey, isLocked, lockCopy, unlockCopy } from '../store/locked-copy.ts';
import { openSqliteStore, type SqliteStore } from '../store/sqlite-store.ts';
import type { Store } from '../store/store.ts';
import { type Damage, StoreFault } from '../store/store-fault.ts';
import { say } from '../words/say.ts';
import { countHouseholds } from './data-state.ts';
import { DeskError } from './desk-error.ts';
import { explainStoreFault } from './store-refusal.ts';

const PLAIN_ENDING = '.sqlite';
const LOCKED_ENDING = '.locked';
/** How folders begin in which something lies beside the data for a while. */
export const WORK_FOLDER = 'plainwarmth-work-';

export interface SaveOrder {
  readonly store: Store;
  readonly dataFolder: string;
  readonly folder: string;
  /** What the name begins with; the day follows. */
  readonly stem: string;
  readonly today: string;
  readonly lock?: CopyKey | undefined;
}

export interface SavedCopy {
  readonly path: string;
  readonly size: number;
  readonly households: number;
  /** What was damaged already, and is as damaged in the copy. */
  readonly damage: readonly Damage[];
}

/** Writes a copy, reads it back, and only then gives it its name. */
export async function saveCopyInto(order: SaveOrder): Promise<SavedCopy> {
  const { store, folder, stem, today, lock } = order;
  if (!statSync(folder).isDirectory()) {
    throw new DeskError({
      code: 'not-a-folder',
      message: say('{path} is a file, or leads through one, where a folder is needed.', { path: folder }),
      where: folder,
      remedy: say('Name a folder, or another place.'),
    });
  }
  const ending = lock === undefined ? PLAIN_ENDING : LOCKED_ENDING;
  const path = freePath(join(folder, `${stem} ${today}`), ending);
  const part = `${path}.part`;
  clearParts(folder, stem);
  try {
    const damage = await (lock === undefined
      ? writePlain(store, part)
      : writeLocked(store, part, lock, order.dataFolder));
    renameSync(part, path);
    keepName(folder);
    return { path, size: statSync(path).size, households: countHouseholds(store), damage };
  } finally {
    rmSync(part, { force: true });
  }
}

/** What a kill left half written goes before the next copy of its kind, of whatever day; nothing of another name is touched. */
function clearParts(folder: string, stem: string): void {
  for (const name of readdirSync(folder))
    if (name.startsWith(`${stem} `) && /\.(sqlite|locked)\.part(-journal)?$/.test(name))
      rmSync(join(folder, name), { force: true });
}

/** A name too is only kept once the disk has it: a stick may be pulled out the moment "saved" is said. Windows has no such call. */
function keepName(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

function writePlain(store: Store, path: string): readonly Damage[] {
  store.saveCopy(path);
  const { isSound, sealed, damage } = checkCopy(path);
  if (!isSound || sealed !== store.sealOfAll()) throw copyFailed(path);
  return damage;
}

async function writeLocked(store: Store, path: string, lock: CopyKey, dataFolder: string) {
  const work = makeWorkFolder(dataFolder);
  try {
    const plain = join(work, 'copy.sqlite');
    const damage = writePlain(store, plain);
    await lockCopy(plain, path, lock);
    const sum = createHash('sha256');
    for await (const piece of createReadStream(plain)) sum.update(piece as Buffer);
    if ((await unlockCopy(path, lock)) !== sum.digest('hex')) throw copyFailed(path);
    return damage;
  } finally {
    rmSync(work, { recursive: true, force: true });
  }
}

const copyFailed = (path: string) =>
  new DeskError({
    code: 'copy-failed',
    message: say('The copy came back from {path} other than it was written, so it was thrown away.', { path }),
    where: path,
    remedy: say('Do not trust this stick or disk. Save the copy elsewhere.'),
  });

function freePath(base: string, ending: string): string {
  for (let n = 1; ; n++) {
    const path = `${base}${n === 1 ? '' : ` (${n})`}${ending}`;
    if (!existsSync(path)) return path;
  }
}

/** Files laid down on the way, beside the data, where nobody else may read; what a kill left behind goes first. */
function makeWorkFolder(dataFolder: string): string {
  for (const name of readdirSync(dataFolder)) {
    if (name.startsWith(WORK_FOLDER)) rmSync(join(dataFolder, name), { recursive: true, force: true });
  }
  return mkdtempSync(join(dataFolder, WORK_FOLDER));
}

export interface OpenedCopy {
  readonly store: SqliteStore;
  /** What should be known of it, such as a log that is missing. */
  readonly remark: string | null;
  readonly damage: readonly Damage[];
  /** The database to be put in the place of another; the store is closed by this. */
  settle(): string;
  close(): void;
}

export interface CopyToOpen {
  readonly path: string;
  readonly passphrase?: string | undefined;
  readonly dataFolder: string;
  /** The file that is open now, which is no copy. */
  readonly ownPath: string;
}

/**
 * Opens a copy made by this or any earlier version, a locked one, or a bare database that was copied with its log
 * beside it. What is opened is laid down apart; the copy itself is only read. Throws DeskError.
 */
export async function openCopy({ path, passphrase, dataFolder, ownPath }: CopyToOpen): Promise<OpenedCopy> {
  refuseNoCopy(path, ownPath);
  const work = makeWorkFolder(dataFolder);
  const close = () => rmSync(work, { recursive: true, force: true });
  try {
    const file = join(work, 'copy.sqlite');
    if (isLocked(path)) await unlockInto(path, passphrase, file);
    else
      for (const ending of ['', '-wal', '-tally'])
        if (existsSync(path + ending)) copyFileSync(path + ending, file + ending);
    const store = openSqliteStore(file);
    const { incident, created } = store.opening;
    if (created || (incident && ['damaged', 'foreign', 'emptied'].includes(incident.kind))) {
      store.close();
      throw noCopy(path);
    }
    const damage = [...store.findDamage()].flatMap((looked) => looked.damage ?? []);
    return {
      store,
      remark:
        incident &&
        say('The last changes are missing from this copy: the log beside it was lost or belongs to another file.'),
      damage,
      settle() {
        store.close();
        return file;
      },
      close() {
        store.close();
        close();
      },
    };
  } catch (error) {
    close();
    if (error instanceof StoreFault) throw new DeskError(explainStoreFault({ ...error.data, path }));
    throw error;
  }
}

/** Opening the file that is in use, even only to read it, would take its lock away. */
function refuseNoCopy(path: string, ownPath: string): void {
  const facts = statSync(path, { bigint: true });
  const own = statSync(ownPath, { bigint: true, throwIfNoEntry: false });
  if (own && own.ino === facts.ino && own.dev === facts.dev) {
    throw new DeskError({
      code: 'own-data',
      message: say('{path} is the data file that is open now, and no copy.', { path }),
      where: path,
      remedy: say('Choose a copy.'),
    });
  }
  if (!facts.isFile()) throw noCopy(path);
}

async function unlockInto(path: string, passphrase: string | undefined, file: string): Promise<void> {
  if (passphrase === undefined) {
    throw new DeskError({
      code: 'passphrase-needed',
      message: say('{file} is locked with a passphrase.', { file: basename(path) }),
      where: path,
      remedy: say('Type the passphrase that it was saved with.'),
    });
  }
  if ((await unlockCopy(path, passphrase, file)) !== false) return;
  throw new DeskError({
    code: 'passphrase-wrong',
    message: say('{file} does not open with this passphrase.', { file: basename(path) }),
    where: path,
    remedy: say('Type it again, capitals and spaces too. If it is right, the copy is damaged: take another.'),
  });
}

const noCopy = (path: string) =>
  new DeskError({
    code: 'no-copy',
    message: say('{file} is no copy of Plainwarmth’s data, or it is damaged.', { file: basename(path) }),
    where: path,
    remedy: say('Choose a file that “Save a copy” wrote, or the file plainwarmth.sqlite of another computer.'),
  });

/** Puts all of the copy in the place of what is here, which is kept as a copy first; answers where that lies. */
export function restoreCopy(store: Store, copy: OpenedCopy, dataFolder: string, now: string): string | null {
  const stamp = now.slice(0, 19).replaceAll(':', '-');
  const keptAs = freePath(join(dataFolder, `plainwarmth-before-restore-${stamp}`), PLAIN_ENDING);
  const hadAny = countHouseholds(store) > 0;
  if (hadAny) store.saveCopy(keptAs);
  const ownUpkeep = store.readUpkeep();
  const sealed = copy.store.sealOfAll();
  const file = copy.settle();
  store.replaceBy(file);
  if (store.sealOfAll() !== sealed) throw copyFailed(file);
  // When and where copies are saved belongs to this computer.
  store.writeUpkeep(ownUpkeep ?? {});
  return hadAny ? keptAs : null;
}

/** Names of copies in a folder, the newest first. */
export function listCopies(folder: string) {
  return readdirSync(folder)
    .filter((name) => name.endsWith(PLAIN_ENDING) || name.endsWith(LOCKED_ENDING))
    .flatMap((name) => {
      const facts = statSync(join(folder, name), { throwIfNoEntry: false });
      return facts?.isFile() ? [{ name, size: facts.size, changedOn: facts.mtime.toISOString() }] : [];
    })
    .sort((a, b) => (a.changedOn < b.changedOn ? 1 : -1));
}

/** Copies of the day that are kept; older ones give way. */
const DAILY_KEPT = 14;
export const DAILY_STEM = 'plainwarmth-daily';

/** Takes away the oldest copies of the day, and nothing that is named otherwise; the one at `path`, just saved, stays whatever its day. */
export function thinDailyCopies(path: string): void {
  const folder = dirname(path);
  const others = readdirSync(folder).filter(
    (name) => name !== basename(path) && /^plainwarmth-daily \d{4}-\d{2}-\d{2}( \(\d+\))?\.(sqlite|locked)$/.test(name),
  );
  for (const name of others.sort().slice(0, 1 - DAILY_KEPT)) rmSync(join(folder, name), { force: true });
}

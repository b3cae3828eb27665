/** Copies and the way back without a window, by the same services; the window must be closed. */
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { openCopy, restoreCopy, saveCopyInto } from '../desk/copies.ts';
import { listDamage } from '../desk/damage-notes.ts';
import { countHouseholds } from '../desk/data-state.ts';
import { DeskError } from '../desk/desk-error.ts';
import { PASSPHRASE_LETTERS } from '../desk/limits.ts';
import { readRegularFile } from '../desk/regular-file.ts';
import { changeUpkeep, checkPieces } from '../desk/upkeep.ts';
import { makeCopyKey } from '../store/locked-copy.ts';
import { makeFolder } from '../store/make-folder.ts';
import { openSqliteStore, type SqliteStore } from '../store/sqlite-store.ts';
import type { Damage } from '../store/store-fault.ts';
import { catalogueOf } from '../words/catalogues.ts';
import { speak } from '../words/say.ts';
import { DATABASE_NAME, defaultDataFolder, fromHere } from './data-folder.ts';
import { describeOpening } from './opening-notice.ts';
import { runCommand, type Terminal } from './terminal.ts';

const BACKUP_USAGE = `plainwarmth backup TASK [options]     (in the project's folder: npm run backup -- TASK)
  save FOLDER   write everything into one file there, and read it back
  look FILE     say what is inside a copy
  restore FILE  put everything in the copy in the place of what is here, which is kept as a copy first
  check         hold every stored piece against its hash
  --data DIR    folder of the data (default: the system's usual place)
  --passphrase-file FILE   the copy is locked with the first line of this file
  --help        this text
Plainwarmth itself must be closed; while it runs, its window does the same under Copies.
Exit code 0: done. 2: refused, with the reasons, or damage was found. 1: our own failure.`;

const refuse = (message: string) =>
  new DeskError({ code: 'bad-option', message, where: 'the command line', remedy: BACKUP_USAGE });

const TASKS = ['save', 'look', 'restore', 'check'] as const;

function readBackupOptions(args: readonly string[]) {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    throw refuse((error as Error).message);
  }
  const { values, positionals } = parsed;
  const task = TASKS.find((name) => name === positionals[0]);
  const expected = task === 'check' ? 1 : 2;
  if (!values.help && (task === undefined || positionals.length !== expected)) {
    throw refuse('One of save FOLDER, look FILE, restore FILE and check is expected.');
  }
  const keyFile = values['passphrase-file'];
  return {
    help: values.help ?? false,
    task: task ?? 'check',
    path: fromHere(positionals[1] ?? '.'),
    dataFolder: values.data === undefined ? defaultDataFolder() : fromHere(values.data),
    passphrase: keyFile === undefined ? undefined : readPassphrase(fromHere(keyFile)),
  };
}

/** The first line as it would be typed: UTF-16 and the marks that editors of Windows put first are none of it. Throws DeskError. */
function readPassphrase(path: string): string {
  const bytes = readRegularFile(path);
  const isWide = bytes[0] === 0xff && bytes[1] === 0xfe;
  const [passphrase] = new TextDecoder(isWide ? 'utf-16le' : 'utf-8').decode(bytes).split(/\r?\n/);
  const { least, most } = PASSPHRASE_LETTERS;
  if (passphrase!.length >= least && passphrase!.length <= most) return passphrase!;
  throw new DeskError({
    code: 'bad-passphrase',
    message: `The first line of ${path} has ${passphrase!.length} letters; a passphrase has ${least} to ${most}.`,
    where: path,
    remedy: 'Write the passphrase into the first line of this file.',
  });
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { data: { type: 'string' }, 'passphrase-file': { type: 'string' }, help: { type: 'boolean' } },
  });
}

export const backup = (args: readonly string[], raw: Terminal): Promise<0 | 1 | 2> =>
  runCommand(raw, async (terminal) => {
    const options = readBackupOptions(args);
    if (options.help) {
      terminal.out(`${BACKUP_USAGE}\n`);
      return 0;
    }
    speak({ language: 'en-GB', currency: 'GBP' }, await catalogueOf('en-GB'));
    makeFolder(options.dataFolder);
    const store = openSqliteStore(join(options.dataFolder, DATABASE_NAME));
    try {
      const notice = describeOpening(store.opening);
      if (notice !== undefined) terminal.err(`${notice}\n`);
      return await doTask(options, store, terminal);
    } finally {
      store.close();
    }
  });

async function doTask(
  { task, path, dataFolder, passphrase }: ReturnType<typeof readBackupOptions>,
  store: SqliteStore,
  { out, today }: Terminal,
): Promise<0 | 2> {
  const now = new Date().toISOString();
  const tell = (damage: readonly Damage[]): 0 | 2 => {
    for (const { message, remedy } of listDamage(damage)) out(`${message} ${remedy}\n`);
    return damage.length === 0 ? 0 : 2;
  };
  if (task === 'check') {
    const { damage } = await checkPieces(store, now);
    if (damage.length === 0) out('Nothing is damaged.\n');
    return tell(damage);
  }
  if (task === 'save') {
    const lock = passphrase === undefined ? undefined : await makeCopyKey(passphrase);
    const saved = await saveCopyInto({ store, dataFolder, folder: path, stem: 'Plainwarmth', today, lock });
    changeUpkeep(store, { lastCopyOn: now, lastCopyPath: saved.path, folder: path });
    out(`Saved and read back: ${saved.path}, ${saved.size} bytes, households: ${saved.households}.\n`);
    return tell(saved.damage);
  }
  const copy = await openCopy({ path, passphrase, dataFolder, ownPath: store.path });
  try {
    if (copy.remark !== null) out(`${copy.remark}\n`);
    if (task === 'look') {
      for (const archived of [false, true]) {
        for (const { household, changedOn } of copy.store.listHouseholds({ archived }, () => undefined)) {
          out(`${household.name}, changed ${changedOn.slice(0, 10)}\n`);
        }
      }
      return tell(copy.damage);
    }
    const keptAs = restoreCopy(store, copy, dataFolder, now);
    out(`Restored, households: ${countHouseholds(store)}.\n`);
    if (keptAs !== null) out(`What was here before is kept as ${keptAs}.\n`);
    return tell(copy.damage);
  } finally {
    copy.close();
  }
}

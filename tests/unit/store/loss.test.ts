import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';
import { StoreFault } from '../../../src/store/store-fault.ts';
import { tallyPath } from '../../../src/store/tally.ts';
import { runApart } from './run-apart.ts';

const NOW = '2026-11-25T10:00:00.000Z';
let folder: string;
let path: string;
let log: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-loss-'));
  path = join(folder, 'plainwarmth.sqlite');
  log = `${path}-wal`;
});
afterEach(() => rmSync(folder, { recursive: true }));

let killedFolder: string;
/** Three households in the file, then three more in the log only, and a kill. */
beforeAll(() => {
  killedFolder = mkdtempSync(join(tmpdir(), 'plainwarmth-loss-'));
  const killed = runApart(`
    const open = () => openSqliteStore(${JSON.stringify(join(killedFolder, 'plainwarmth.sqlite'))});
    const first = open();
    for (const id of ['a', 'b', 'c']) first.createHousehold(emptyHousehold(id, id), NOW);
    first.close();
    const second = open();
    for (const id of ['d', 'e', 'f']) second.createHousehold(emptyHousehold(id, id), NOW);
    die();`);
  expect([killed.signal, killed.said]).toEqual(['SIGKILL', '']);
});
afterAll(() => rmSync(killedFolder, { recursive: true }));

/** The folder as that kill left it. */
function fillAndKill(): void {
  cpSync(killedFolder, folder, { recursive: true });
  expect(statSync(log).size).toBeGreaterThan(0);
}

function open() {
  const store = openSqliteStore(path);
  const names = store.listHouseholds({ archived: false }).map(({ household }) => household.name);
  const { opening } = store;
  store.close();
  return { names: names.sort().join(''), opening, incident: opening.incident };
}

test('after a kill everything is there, and nothing is said', () => {
  fillAndKill();
  expect(open()).toMatchObject({ names: 'abcdef', incident: null });
  expect(open()).toMatchObject({ names: 'abcdef', incident: null });
});

describe('changes that had been kept and are no longer there are noticed, and what was found stays untouched', () => {
  test.each<[string, () => void]>([
    ['the log deleted', () => unlinkSync(log)],
    ['the log emptied', () => truncateSync(log, 0)],
    ['the log cut off', () => truncateSync(log, statSync(log).size - 5000)],
    [
      'a byte of the log flipped',
      () => {
        const bytes = readFileSync(log);
        bytes[bytes.length - 3000]! ^= 1;
        writeFileSync(log, bytes);
      },
    ],
  ])('%s', (_, lose) => {
    fillAndKill();
    lose();
    const found = [readFileSync(path), existsSync(log) ? readFileSync(log) : Buffer.alloc(0)] as const;
    const { names, incident } = open();
    expect(incident).toMatchObject({ kind: 'lost-changes', households: 6 });
    expect(incident!.missing).toBeGreaterThanOrEqual(1);
    expect(names.startsWith('abc')).toBe(true);
    expect(readFileSync(incident!.setAside!)).toEqual(found[0]);
    if (found[1].length > 0) expect(readFileSync(`${incident!.setAside}-wal`)).toEqual(found[1]);
    expect(open()).toMatchObject({ incident: null });
  });

  test.each<[string, () => void, boolean]>([
    ['the file deleted, its log left', () => unlinkSync(path), true],
    ['the file emptied, its log left', () => truncateSync(path, 0), true],
    [
      'file and log deleted',
      () => {
        unlinkSync(path);
        unlinkSync(log);
      },
      false,
    ],
  ])('%s', (_, lose, isLeft) => {
    fillAndKill();
    lose();
    const left = isLeft ? readFileSync(log) : null;
    const { names, incident, opening } = open();
    expect([names, opening.created, incident]).toMatchObject(['', false, { kind: 'emptied', households: 6 }]);
    // What is named is there: the file, or where that is gone, its log.
    const aside = incident!.setAside;
    if (left) {
      expect(existsSync(aside!)).toBe(true);
      expect(readFileSync(aside!.replace(/(-wal)?$/, '-wal'))).toEqual(left);
    } else expect(aside).toBeNull();
    expect(open()).toMatchObject({ names: '', incident: null });
  });

  test('a copy put over the file beside an old log is opened without that log', () => {
    runApart(`
      const store = openSqliteStore(${JSON.stringify(path)});
      store.createHousehold(emptyHousehold('a', 'a'), NOW);
      store.saveCopy(${JSON.stringify(join(folder, 'copy.sqlite'))});
      store.close();`);
    fillAndKillMore();
    const old = readFileSync(log);
    copyFileSync(join(folder, 'copy.sqlite'), path);
    const { names, incident } = open();
    expect([names, incident?.kind]).toEqual(['a', 'other-log']);
    expect(readFileSync(incident!.setAside!)).toEqual(old);
    expect(open()).toMatchObject({ names: 'a', incident: null });
  });

  function fillAndKillMore(): void {
    runApart(`
      const store = openSqliteStore(${JSON.stringify(path)});
      for (const id of ['d', 'e', 'f']) store.createHousehold(emptyHousehold(id, id), NOW);
      store.close();
      const again = openSqliteStore(${JSON.stringify(path)});
      again.createHousehold(emptyHousehold('g', 'g'), NOW);
      die();`);
  }

  test('a database of another program is set aside untouched', () => {
    const other = new Database(path);
    other.exec(`CREATE TABLE songs (title TEXT); INSERT INTO songs VALUES ('The lark')`);
    other.close();
    const bytes = readFileSync(path);
    const { incident } = open();
    expect(incident?.kind).toBe('foreign');
    expect(readFileSync(incident!.setAside!)).toEqual(bytes);
  });

  test('a database of another program in the place of ours: how many households were here is known', () => {
    fillAndKill();
    for (const ending of ['', '-wal', '-shm']) rmSync(path + ending, { force: true });
    const other = new Database(path);
    other.exec('CREATE TABLE songs (title TEXT)');
    other.close();
    expect(open().incident).toMatchObject({ kind: 'foreign', households: 6 });
  });

  test('a damaged file with a log is set aside with it, both untouched', () => {
    runApart(`
      const store = openSqliteStore(${JSON.stringify(path)});
      for (let n = 0; n < 200; n++) store.createHousehold({ ...emptyHousehold('h' + n, 'x'), notes: 'y'.repeat(900) }, NOW);
      store.close();
      openSqliteStore(${JSON.stringify(path)}).createHousehold(emptyHousehold('z', 'z'), NOW);
      die();`);
    const bytes = readFileSync(path);
    bytes.fill(0xaa, 4096 * 20, 4096 * 21);
    writeFileSync(path, bytes);
    const [main, rest] = [readFileSync(path), readFileSync(log)];
    const { incident } = open();
    expect(incident?.kind).toBe('damaged');
    expect([readFileSync(incident!.setAside!), readFileSync(`${incident!.setAside}-wal`)]).toEqual([main, rest]);
  });
});

test('a folder that moved to another computer with its log opens with everything, with or without its tally', () => {
  fillAndKill();
  const elsewhere = mkdtempSync(join(tmpdir(), 'plainwarmth-moved-'));
  for (const ending of ['', '-wal', '-tally']) {
    copyFileSync(path + ending, join(elsewhere, `plainwarmth.sqlite${ending}`));
    copyFileSync(path + ending, join(elsewhere, `bare.sqlite${ending}`));
  }
  unlinkSync(tallyPath(join(elsewhere, 'bare.sqlite')));
  for (const name of ['plainwarmth.sqlite', 'bare.sqlite']) {
    const store = openSqliteStore(join(elsewhere, name));
    expect([store.listHouseholds({ archived: false }).length, store.opening.incident]).toEqual([6, null]);
    store.close();
  }
  rmSync(elsewhere, { recursive: true });
});

describe('while it runs', () => {
  const keep = (
    store: { createHousehold: (household: ReturnType<typeof emptyHousehold>, now: string) => unknown },
    id: string,
  ) => {
    try {
      store.createHousehold(emptyHousehold(id, id), NOW);
      return 'kept';
    } catch (error) {
      return error instanceof StoreFault ? error.data : error;
    }
  };

  test('the file deleted is noticed before anything is said to be kept, and written anew with all of it', () => {
    const store = openSqliteStore(path);
    expect(keep(store, 'a')).toBe('kept');
    unlinkSync(path);
    expect(keep(store, 'b')).toEqual({ code: 'gone', path, rescued: true });
    expect(keep(store, 'c')).toEqual({ code: 'gone', path, rescued: true });
    store.close();
    expect(open()).toMatchObject({ names: 'a', incident: null });
  });

  test('the file emptied or cut short is noticed too, and written anew as long as memory holds all of it', () => {
    for (const size of [0, 4096]) {
      const store = openSqliteStore(path);
      expect(keep(store, `a${size}`)).toBe('kept');
      truncateSync(path, size);
      expect(keep(store, 'b')).toEqual({ code: 'gone', path, rescued: true });
      store.close();
      expect(open()).toMatchObject({ names: size === 0 ? 'a0' : 'a0a4096', incident: null });
    }
  });

  test('the file deleted and another put there is not written over', () => {
    const store = openSqliteStore(path);
    keep(store, 'a');
    renameSync(path, `${path}.moved`);
    writeFileSync(path, 'something else');
    expect(keep(store, 'b')).toEqual({ code: 'gone', path, rescued: false });
    store.close();
    expect(readFileSync(path, 'utf8')).toBe('something else');
  });

  test('the folder gone, as with a stick pulled out, is noticed', () => {
    const store = openSqliteStore(path);
    keep(store, 'a');
    renameSync(folder, `${folder}.pulled`);
    expect(keep(store, 'b')).toEqual({ code: 'gone', path, rescued: false });
    renameSync(`${folder}.pulled`, folder);
    store.close();
    expect(open()).toMatchObject({ names: 'a', incident: null });
  });

  test('the log deleted loses nothing, even with a kill right after', () => {
    const killed = runApart(`
      const { unlinkSync } = await import('node:fs');
      const store = openSqliteStore(${JSON.stringify(path)});
      store.createHousehold(emptyHousehold('a', 'a'), NOW);
      unlinkSync(${JSON.stringify(log)});
      store.createHousehold(emptyHousehold('b', 'b'), NOW);
      die();`);
    expect(killed).toEqual({ said: '', signal: 'SIGKILL' });
    expect(open()).toMatchObject({ names: 'ab', incident: null });
  });
});

test.skipIf(process.platform === 'win32')('in a folder that others may read, the data may not be', () => {
  chmodSync(folder, 0o755);
  writeFileSync(path, '');
  chmodSync(path, 0o644);
  const store = openSqliteStore(path);
  store.createHousehold(emptyHousehold('a', 'a'), NOW);
  store.saveCopy(join(folder, 'copy.sqlite'));
  for (const file of [path, log, tallyPath(path), join(folder, 'copy.sqlite')]) {
    expect([file, statSync(file).mode & 0o077]).toEqual([file, 0]);
  }
  store.close();
});

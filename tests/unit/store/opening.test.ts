import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { MIGRATIONS, type Migration } from '../../../src/store/migrations.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';
import { StoreFault } from '../../../src/store/store-fault.ts';

const NOW = '2026-11-25T10:00:00.000Z';
let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-opening-'));
  path = join(folder, 'plainwarmth.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

function faultOf(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error instanceof StoreFault ? error.data : error;
  }
  return 'no fault';
}

function fill(): void {
  const store = openSqliteStore(path);
  for (let n = 0; n < 200; n++) {
    store.createHousehold({ ...emptyHousehold(`h${n}`, `Household ${n}`), notes: 'x'.repeat(900) }, NOW);
  }
  store.close();
}

describe('a damaged database is set aside, never written over', () => {
  const DAMAGES: readonly { name: string; damage: (bytes: Buffer) => Buffer }[] = [
    {
      name: 'text where a database should be',
      damage: () => Buffer.from('this is a letter, not a database\n'.repeat(40)),
    },
    { name: 'the head overwritten', damage: (bytes) => Buffer.concat([Buffer.alloc(100, 7), bytes.subarray(100)]) },
    { name: 'cut in the middle', damage: (bytes) => bytes.subarray(0, Math.floor(bytes.length / 2)) },
    {
      name: 'a page of rubbish in the middle',
      damage: (bytes) => Buffer.concat([bytes.subarray(0, 8192), Buffer.alloc(4096, 0xaa), bytes.subarray(12288)]),
    },
  ];
  test.each(DAMAGES)('$name', ({ damage }) => {
    fill();
    const damaged = damage(readFileSync(path));
    writeFileSync(path, damaged);
    const store = openSqliteStore(path);
    expect(store.opening).toMatchObject({ created: true, backup: null });
    expect(store.listHouseholds({ archived: false })).toEqual([]);
    store.close();
    expect(store.opening.setAside).toMatch(/plainwarmth-damaged-\d{4}-\d{2}-\d{2}T[\d-]+\.sqlite$/);
    expect(readFileSync(store.opening.setAside!)).toEqual(damaged);
  });

  test('two damaged files on one day both stay', () => {
    for (let n = 0; n < 2; n++) {
      writeFileSync(path, `damaged file ${n}`.padEnd(2000, '.'));
      openSqliteStore(path).close();
    }
    expect(readdirSync(folder).filter((name) => name.includes('damaged'))).toHaveLength(2);
  });
});

test('a second process on the same file is refused, and let in when the first is gone', () => {
  const first = openSqliteStore(path);
  expect(faultOf(() => openSqliteStore(path))).toEqual({ code: 'in-use', path });
  const script = `const D=require('better-sqlite3');const d=new D(${JSON.stringify(path)},{timeout:50});
    try{d.prepare('SELECT count(*) FROM households').get();console.log('read')}catch(e){console.log(e.code)}`;
  expect(spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' }).stdout.trim()).toBe('SQLITE_BUSY');
  first.close();
  openSqliteStore(path).close();
});

test('what was kept before a process was killed is there afterwards', () => {
  const script = `
    import { openSqliteStore } from ${JSON.stringify(join(import.meta.dirname, '../../../src/store/sqlite-store.ts'))};
    import { emptyHousehold } from ${JSON.stringify(join(import.meta.dirname, '../../../src/model/shapes/household.ts'))};
    const store = openSqliteStore(${JSON.stringify(path)});
    store.createHousehold(emptyHousehold('h', 'Kept'), '${NOW}');
    process.kill(process.pid, 'SIGKILL');`;
  const killed = spawnSync(process.execPath, ['--input-type=module-typescript', '-e', script], { encoding: 'utf8' });
  expect(killed.signal).toBe('SIGKILL');
  const store = openSqliteStore(path);
  expect(store.readHousehold('h')?.household.name).toBe('Kept');
  expect(store.opening).toEqual({ created: false, setAside: null, backup: null });
  store.close();
});

describe('the schema goes forward from every earlier version', () => {
  // Steps that do not exist yet stand for later ones, so that the way of migrating is tried before it is needed.
  const newest = MIGRATIONS.at(-1)!.version;
  const later: readonly Migration[] = [
    {
      version: newest + 1,
      what: 'a column more',
      sql: `ALTER TABLE households ADD COLUMN firm TEXT NOT NULL DEFAULT ''`,
    },
    { version: newest + 2, what: 'a table more', sql: 'CREATE TABLE firms (id TEXT PRIMARY KEY) STRICT' },
  ];
  const all = [...MIGRATIONS, ...later];

  test.each(all.slice(0, -1).map(({ version }) => version))('from version %i', (version) => {
    const old = openSqliteStore(
      path,
      all.filter((step) => step.version <= version),
    );
    old.createHousehold(emptyHousehold('h', 'Kept'), NOW);
    old.close();
    const store = openSqliteStore(path, all);
    expect(store.readHousehold('h')?.household.name).toBe('Kept');
    store.close();
    const copy = new Database(store.opening.backup!, { readonly: true });
    expect(copy.pragma('user_version', { simple: true })).toBe(version);
    expect(copy.prepare('SELECT count(*) FROM households').pluck().get()).toBe(1);
    copy.close();
    expect(openSqliteStore(path, all)).toMatchObject({ opening: { backup: null } });
  });

  test('a step that fails leaves the file as it was', () => {
    openSqliteStore(path).close();
    const broken = [...MIGRATIONS, { version: newest + 1, what: 'broken', sql: 'CREATE TABLE a (b TEXT); NONSENSE' }];
    expect(() => openSqliteStore(path, broken)).toThrow(/NONSENSE/);
    const raw = new Database(path);
    expect(raw.pragma('user_version', { simple: true })).toBe(newest);
    expect(raw.prepare(`SELECT count(*) FROM sqlite_schema WHERE name = 'a'`).pluck().get()).toBe(0);
    raw.close();
  });

  test('a file from a newer Plainwarmth is refused and left alone', () => {
    openSqliteStore(path, all).close();
    const before = readFileSync(path);
    expect(faultOf(() => openSqliteStore(path))).toEqual({ code: 'newer', path, found: newest + 2, expected: newest });
    expect(readFileSync(path)).toEqual(before);
  });
});

test('a backup is a whole database of its own', async () => {
  const store = openSqliteStore(path);
  store.createHousehold(emptyHousehold('h', 'Kept'), NOW);
  const copy = join(folder, 'copy.sqlite');
  await store.backup(copy);
  store.close();
  const opened = openSqliteStore(copy);
  expect(opened.readHousehold('h')?.household.name).toBe('Kept');
  opened.close();
  expect(existsSync(copy)).toBe(true);
});

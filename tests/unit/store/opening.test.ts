import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { MIGRATIONS, type Migration } from '../../../src/store/migrations.ts';
import { openDatabase } from '../../../src/store/open-database.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';
import { StoreFault } from '../../../src/store/store-fault.ts';
import { madeIntervals } from './made-evidence.ts';
import { runApart } from './run-apart.ts';

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
    expect(store.opening).toMatchObject({ created: false, backup: null });
    expect(store.listHouseholds({ archived: false })).toEqual([]);
    store.close();
    const { setAside, kind } = store.opening.incident!;
    expect([kind, setAside]).toEqual([
      'damaged',
      expect.stringMatching(/plainwarmth-damaged-\d{4}-\d{2}-\d{2}T[\d-]+\.sqlite$/),
    ]);
    expect(readFileSync(setAside!)).toEqual(damaged);
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
  expect(runApart(`openSqliteStore(${JSON.stringify(path)});`).said).toBe(`in-use: ${path}`);
  const script = `const D=require('better-sqlite3');const d=new D(${JSON.stringify(path)},{timeout:50});
    try{d.prepare('SELECT count(*) FROM households').get();console.log('read')}catch(e){console.log(e.code)}`;
  expect(spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' }).stdout.trim()).toBe('SQLITE_BUSY');
  first.close();
  openSqliteStore(path).close();
});

test('what was kept before a process was killed is there afterwards', () => {
  const killed = runApart(`
    openSqliteStore(${JSON.stringify(path)}).createHousehold(emptyHousehold('h', 'Kept'), NOW);
    die();`);
  expect(killed.signal).toBe('SIGKILL');
  const store = openSqliteStore(path);
  expect(store.readHousehold('h')?.household.name).toBe('Kept');
  expect(store.opening).toEqual({ created: false, incident: null, backup: null });
  store.close();
});

test('a runtime that cannot pack is refused, and the data is not touched', () => {
  fill();
  const before = readFileSync(path);
  const lines = `const { default: zlib } = await import('node:zlib');
    zlib.zstdCompressSync = undefined;
    openSqliteStore(${JSON.stringify(path)});`;
  expect(runApart(lines).said).toBe(`old-runtime: ${path}`);
  expect([readFileSync(path).equals(before), readdirSync(folder).filter((name) => name.includes('damaged'))]).toEqual([
    true,
    [],
  ]);
});

const PUT_HOUSEHOLD = `INSERT INTO households (id, document, searched, revision, changed_on) VALUES ('h', ?, '', 1, ?)`;

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
    const { database } = openDatabase(path, { migrations: all.filter((step) => step.version <= version) });
    const document = JSON.stringify(emptyHousehold('h', 'Kept'));
    database.prepare(PUT_HOUSEHOLD).run(document, NOW);
    if (version >= 4) database.exec('UPDATE households SET sealed = seal(document)');
    database.close();
    const store = openSqliteStore(path, { migrations: all });
    expect(store.readHousehold('h')?.household.name).toBe('Kept');
    store.close();
    const copy = new Database(store.opening.backup!, { readonly: true });
    expect(copy.pragma('user_version', { simple: true })).toBe(version);
    expect(copy.prepare('SELECT count(*) FROM households').pluck().get()).toBe(1);
    copy.close();
    expect(openSqliteStore(path, { migrations: all })).toMatchObject({ opening: { backup: null } });
  });

  test.each([1, 3, 5])('the readings of version %i, a row a day then, are those of one piece', (version) => {
    const { database } = openDatabase(path, { migrations: MIGRATIONS.filter((step) => step.version <= version) });
    database.prepare(PUT_HOUSEHOLD).run(JSON.stringify(emptyHousehold('h', 'Kept')), NOW);
    database.exec(`
      INSERT INTO evidence (id, place, household_id, document, sha256) VALUES ('e', 1, 'h', '{}', '');
      INSERT INTO series (key, id, evidence_id, interval_minutes) VALUES (3, 'half-hours', 'e', 30), (4, 'bills', 'e', NULL);
    `);
    const days = madeIntervals('half-hours', '2025-01-01', 5).days;
    for (const at of [3, 0, 4, 1, 2]) {
      const put = database.prepare('INSERT INTO days (series_key, day, readings) VALUES (3, ?, ?)');
      put.run(toDayNumber(days[at]!.date), new Uint8Array(days[at]!.values.buffer));
    }
    if (version >= 4)
      database.exec(`UPDATE series SET sealed = (
        SELECT seal_days(day, readings) FROM (SELECT day, readings FROM days WHERE series_key = key ORDER BY day))`);
    database.close();
    const store = openSqliteStore(path);
    expect(store.readIntervals('half-hours', '2024-01-01', '2026-01-01')?.days).toEqual(days);
    expect(store.readIntervals('half-hours', '2025-01-02', '2025-01-04')?.days).toEqual(days.slice(1, 3));
    expect(store.readIntervals('bills', '2024-01-01', '2026-01-01')).toBeUndefined();
    expect([...store.findDamage()].filter(({ damage }) => damage?.kind === 'readings')).toEqual([]);
    store.close();
  });

  test('a step that fails leaves the file as it was', () => {
    openSqliteStore(path).close();
    const broken = [...MIGRATIONS, { version: newest + 1, what: 'broken', sql: 'CREATE TABLE a (b TEXT); NONSENSE' }];
    expect(() => openSqliteStore(path, { migrations: broken })).toThrow(/NONSENSE/);
    const raw = new Database(path);
    expect(raw.pragma('user_version', { simple: true })).toBe(newest);
    expect(raw.prepare(`SELECT count(*) FROM sqlite_schema WHERE name = 'a'`).pluck().get()).toBe(0);
    raw.close();
  });

  test('a file from a newer Plainwarmth is refused and left alone', () => {
    openSqliteStore(path, { migrations: all }).close();
    const before = readFileSync(path);
    expect(faultOf(() => openSqliteStore(path))).toEqual({ code: 'newer', path, found: newest + 2, expected: newest });
    expect(readFileSync(path)).toEqual(before);
  });
});

describe('what was kept as a promise is a written estimate, with every figure as it was', () => {
  /** The documents as they lie in a file of an earlier version. */
  function readOld(file: string) {
    const raw = new Database(file, { readonly: true });
    const read = (table: string) =>
      raw
        .prepare<[], string>(`SELECT document FROM ${table}`)
        .pluck()
        .all()
        .map((text) => JSON.parse(text));
    const found = { promises: read('promises'), checks: read('checks') };
    raw.close();
    return found;
  }

  test('in a database that the program of version 2 left behind', () => {
    writeFileSync(path, gunzipSync(readFileSync(new URL('database-version-2.sqlite.gz', import.meta.url))));
    const { promises, checks } = readOld(path);
    const store = openSqliteStore(path);
    const { household } = store.listHouseholds({ archived: false })[0]!;
    const [estimate] = store.listEstimates(household.id);
    expect(estimate).toEqual(promises[0]);
    expect(store.readEstimate(estimate!.id)).toEqual(estimate);
    expect(store.nextEstimateNumber()).toBe(2);
    const [check] = store.listChecks(household.id);
    expect(BillCheck.parse(check)).toEqual(check);
    const [old] = checks;
    expect(check).toMatchObject({
      estimateId: old.promiseId,
      estimatedPence: old.promisedPence,
      estimatedKWh: old.promisedKWh,
      standing: { estimatedPence: old.standing.promisedPence },
      input: { estimateId: old.promiseId, estimatedStandingPencePerDay: 54.5 },
    });
    expect(check!.months!.map(({ estimatedKWh }) => estimatedKWh)).toEqual(
      old.months.map(({ promisedKWh }: { promisedKWh: number }) => promisedKWh),
    );
    expect([check!.parts, check!.expected, check!.actualPence]).toEqual([old.parts, old.expected, old.actualPence]);
    store.close();
    expect(readOld(store.opening.backup!)).toEqual({ promises, checks });
  });

  test.each([1, 2])('from version %i, where a text names a key', (version) => {
    const note = 'he said "promiseId": 7, "promisedPence":8';
    const { database } = openDatabase(path, { migrations: MIGRATIONS.filter((step) => step.version <= version) });
    database.prepare(PUT_HOUSEHOLD).run(JSON.stringify(emptyHousehold('h', 'Kept')), NOW);
    database.prepare(`INSERT INTO promises VALUES ('p', 'h', 4, ?)`).run(JSON.stringify({ id: 'p', number: 4, note }));
    database
      .prepare(`INSERT INTO checks VALUES ('c', 1, 'h', 'p', ?)`)
      .run(JSON.stringify({ id: 'c', promiseId: 'p', input: { promiseId: 'p', readings: note }, promisedPence: 0.1 }));
    database.prepare(`INSERT INTO settings VALUES ('last promise number', '6')`).run();
    database.close();
    const store = openSqliteStore(path);
    expect(store.readEstimate('p')).toEqual({ id: 'p', number: 4, note });
    expect(store.readCheck('c')).toEqual({
      id: 'c',
      estimateId: 'p',
      input: { estimateId: 'p', readings: note },
      estimatedPence: 0.1,
    });
    expect(store.nextEstimateNumber()).toBe(7);
    store.close();
    const raw = new Database(path);
    expect(() => raw.prepare(`UPDATE estimates SET number = 5`).run()).toThrow('a written estimate never changes');
    expect(() => raw.prepare(`DELETE FROM estimates`).run()).toThrow('FOREIGN KEY');
    raw.close();
  });
});

test('a copy is a whole database of its own', () => {
  const store = openSqliteStore(path);
  store.createHousehold(emptyHousehold('h', 'Kept'), NOW);
  const copy = join(folder, 'copy.sqlite');
  store.saveCopy(copy);
  store.close();
  const opened = openSqliteStore(copy);
  expect(opened.readHousehold('h')?.household.name).toBe('Kept');
  opened.close();
  expect(existsSync(copy)).toBe(true);
});

import fs, {
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { MIGRATIONS } from '../../../src/store/migrations.ts';
import { openDatabase } from '../../../src/store/open-database.ts';
import { runApart } from '../store/run-apart.ts';
import { type Machine, makeMachines, refusalOf } from './open-file-desk.ts';

const NOW = '2026-11-25T10:00:00.000Z';
let machines: ReturnType<typeof makeMachines>;
let stick: string;
beforeEach(() => {
  machines = makeMachines('copies');
  stick = machines.folderOf('stick');
});
afterEach(() => machines.remove());

/** Every row of every table but what belongs to the one computer. */
function everyRow({ store }: Machine, name: string): Record<string, unknown[]> {
  const copy = join(machines.folderOf('rows'), `${name}.sqlite`);
  rmSync(copy, { force: true });
  store.saveCopy(copy);
  const database = new Database(copy, { readonly: true });
  const tables = database.prepare<[], string>(`SELECT name FROM sqlite_schema WHERE type = 'table'`).pluck().all();
  const rows = tables.map((table) => {
    const all = database.prepare<[], unknown[]>(`SELECT * FROM "${table}"`).raw().all();
    return [table, table === 'settings' ? all.filter(([key]) => key !== 'upkeep') : all] as const;
  });
  database.close();
  return Object.fromEntries(rows);
}

describe('a machine is lost, and a new one has everything from the stick, to the last byte', () => {
  test.each([
    { name: 'a plain copy', passphrase: undefined },
    { name: 'a copy under a passphrase', passphrase: 'a roof, a ladder, a laptop' },
  ])('$name', async ({ passphrase }) => {
    const old = await machines.openWithSample('old');
    await old.call('settings.write', { ...(await old.call('settings.read', {})), installerName: 'Fern and Sons' });
    const { path, households } = await old.call('data.save', { folder: stick, passphrase });
    const before = everyRow(old, 'before');
    expect(Object.values(before).flat().length).toBeGreaterThan(8);
    const readings = (before.series as unknown[][]).flatMap((row) => row.filter((cell) => cell instanceof Uint8Array));
    expect(Math.max(...readings.map(({ byteLength }) => byteLength))).toBeGreaterThan(300 * 24 * 8);
    old.close();
    rmSync(old.dataFolder, { recursive: true });

    const fresh = machines.open('new');
    expect((await fresh.call('data.look', { path, passphrase })).households).toHaveLength(households);
    expect(await fresh.call('data.restore', { path, passphrase })).toEqual({ households });
    expect(everyRow(fresh, 'after')).toEqual(before);
    fresh.close();
    const again = machines.open('new');
    expect([everyRow(again, 'again'), again.store.opening.incident]).toEqual([before, null]);
    expect(readdirSync(again.dataFolder).filter((name) => name.includes('work'))).toEqual([]);
  });
});

test('the folder of the window’s browser is named once it is there', async () => {
  const windowFolder = join(stick, 'window');
  const one = machines.open('one', { windowFolder });
  expect(await one.call('data.read', {})).not.toHaveProperty('windowFolder');
  mkdirSync(windowFolder);
  expect(await one.call('data.read', {})).toMatchObject({ windowFolder });
});

describe('a copy on a stick', () => {
  // Windows has no call that brings a folder to the disk.
  test.skipIf(process.platform === 'win32')('has its name on the disk before it is said to be saved', async () => {
    const one = await machines.openWithSample('one');
    const real = fs.fsyncSync;
    const namesSynced: string[][] = [];
    fs.fsyncSync = (handle) => {
      if (fs.fstatSync(handle).ino === statSync(stick).ino) namesSynced.push(readdirSync(stick));
      real(handle);
    };
    syncBuiltinESMExports();
    try {
      const { path } = await one.call('data.save', { folder: stick });
      expect(namesSynced).toEqual([[basename(path)]]);
    } finally {
      fs.fsyncSync = real;
      syncBuiltinESMExports();
    }
  });

  test('takes away what a kill left half written of its kind, and nothing else', async () => {
    const one = await machines.openWithSample('one');
    const others = ['plainwarmth-daily 2026-11-20.sqlite.part', 'Letters 2026-11-20.sqlite.part', 'film.mp4.part'];
    const left = ['Plainwarmth 2026-11-20.sqlite.part', 'Plainwarmth 2026-11-21 (2).locked.part'];
    for (const name of [...others, ...left]) writeFileSync(join(stick, name), 'half');
    const { path } = await one.call('data.save', { folder: stick });
    expect(readdirSync(stick).sort()).toEqual([...others, basename(path)].sort());
  });
});

describe('what is restored', () => {
  test('what was there is kept, and can be restored in its turn', async () => {
    const one = await machines.openWithSample('one');
    const { path } = await one.call('data.save', { folder: stick });
    const late = await one.call('household.create', { name: 'Made after the copy' });
    const { keptAs } = await one.call('data.restore', { path });
    expect((await refusalOf(one.call('household.open', { id: late.household.id }))).code).toBe('not-there');
    await one.call('data.restore', { path: keptAs! });
    expect((await one.call('household.open', { id: late.household.id })).household.name).toBe('Made after the copy');
  });

  test('a bare database copied with its log while the program ran', async () => {
    const there = machines.folderOf('there');
    const path = join(there, 'plainwarmth.sqlite');
    runApart(`
      const store = openSqliteStore(${JSON.stringify(path)});
      for (let n = 0; n < 20; n++) store.createHousehold(emptyHousehold('h' + n, 'Home ' + n), NOW);
      die();`);
    for (const ending of ['', '-wal']) copyFileSync(path + ending, join(stick, `plainwarmth.sqlite${ending}`));
    expect(statSync(join(stick, 'plainwarmth.sqlite')).size).toBeLessThan(2 * 16_384);
    const bytes = readdirSync(stick).map((name) => readFileSync(join(stick, name)));
    const fresh = machines.open('fresh');
    const seen = await fresh.call('data.look', { path: join(stick, 'plainwarmth.sqlite') });
    expect([seen.households.length, seen.remark]).toEqual([20, undefined]);
    expect((await fresh.call('data.restore', { path: join(stick, 'plainwarmth.sqlite') })).households).toBe(20);
    expect(readdirSync(stick).map((name) => readFileSync(join(stick, name)))).toEqual(bytes);
  });

  test('a bare database whose log was left behind is said to miss something', async () => {
    const path = join(machines.folderOf('there'), 'plainwarmth.sqlite');
    runApart(`
      const first = openSqliteStore(${JSON.stringify(path)});
      first.createHousehold(emptyHousehold('a', 'a'), NOW);
      first.close();
      openSqliteStore(${JSON.stringify(path)}).createHousehold(emptyHousehold('b', 'b'), NOW);
      die();`);
    for (const ending of ['', '-tally']) copyFileSync(path + ending, join(stick, `plainwarmth.sqlite${ending}`));
    const seen = await machines.open('fresh').call('data.look', { path: join(stick, 'plainwarmth.sqlite') });
    expect([seen.households.length, seen.remark]).toEqual([1, expect.stringContaining('The last changes are missing')]);
  });

  test.each(MIGRATIONS.map(({ version }) => version))('a copy made by version %i of the schema', async (version) => {
    const path = join(stick, 'old.sqlite');
    const { database } = openDatabase(path, { migrations: MIGRATIONS.filter((step) => step.version <= version) });
    const put = `INSERT INTO households (id, document, searched, revision, changed_on) VALUES ('h', ?, '', 1, ?)`;
    database.prepare(put).run(JSON.stringify(emptyHousehold('h', 'Kept')), NOW);
    if (version >= 4) database.exec('UPDATE households SET sealed = seal(document)');
    database.close();
    const bytes = readFileSync(path);
    const fresh = machines.open('fresh');
    expect((await fresh.call('data.restore', { path })).households).toBe(1);
    expect((await fresh.call('household.open', { id: 'h' })).household.name).toBe('Kept');
    expect(readFileSync(path)).toEqual(bytes);
  });

  test('one household of a copy comes in beside what is here, with its estimates, as often as is wanted', async () => {
    const old = await machines.openWithSample('old', 'mill-lane');
    const { path } = await old.call('data.save', { folder: stick });
    const [row] = await old.call('household.list', {});
    const other = await machines.openWithSample('other', 'quay-flat');
    for (let n = 1; n <= 2; n++) {
      const { id } = await other.call('data.bring-in', { path, householdId: row!.id });
      expect((await other.call('household.open', { id })).evidence).toHaveLength(row!.evidenceCount);
      expect(await other.call('household.list', {})).toHaveLength(1 + n);
    }
  });
});

describe('what is no copy is refused in words, and changes nothing', () => {
  test.each<[string, (path: string) => void, string]>([
    ['a letter', (path) => writeFileSync(path, 'Dear householder'), 'no-copy'],
    ['an empty file', (path) => writeFileSync(path, ''), 'no-copy'],
    ['a folder', (path) => mkdirSync(path), 'no-copy'],
    ['nothing', () => undefined, 'no-such-file'],
    [
      'another program’s database',
      (path) => {
        const other = new Database(path);
        other.exec('CREATE TABLE songs (title TEXT)');
        other.close();
      },
      'no-copy',
    ],
    [
      'a copy from a newer Plainwarmth',
      (path) => {
        const { database } = openDatabase(path);
        database.pragma('user_version = 999');
        database.close();
      },
      'store-newer',
    ],
  ])('%s', async (_, make, code) => {
    const path = join(stick, 'thing.sqlite');
    make(path);
    const one = await machines.openWithSample('one');
    const before = one.store.sealOfAll();
    const refusal = await refusalOf(one.call('data.restore', { path }).catch((error) => Promise.reject(error)));
    const { toRefusal } = await import('../../../src/desk/refusal.ts');
    expect(toRefusal(refusal)).toMatchObject({ code, message: expect.stringContaining('thing.sqlite') });
    expect(one.store.sealOfAll()).toBe(before);
  });

  test('the data file that is open now, by whatever name, and it stays locked', async () => {
    const one = await machines.openWithSample('one');
    expect((await refusalOf(one.call('data.look', { path: one.path }))).code).toBe('own-data');
    expect(runApart(`openSqliteStore(${JSON.stringify(one.path)});`).said).toContain('in-use');
  });

  test('a passphrase that is missing, wrong, or of a damaged copy', async () => {
    const one = await machines.openWithSample('one', 'quay-flat');
    const { path } = await one.call('data.save', { folder: stick, passphrase: 'Straße und Dach' });
    expect(path.endsWith('.locked')).toBe(true);
    expect(readFileSync(path).includes('SQLite')).toBe(false);
    expect((await refusalOf(one.call('data.look', { path }))).code).toBe('passphrase-needed');
    for (const passphrase of ['Strasse und Dach', 'kurz', '']) {
      const { code, message } = await refusalOf(one.call('data.look', { path, passphrase }));
      expect(code).toBe('passphrase-wrong');
      // It was typed unseen, and stays so.
      expect(message).not.toContain('kurz');
    }
    const same = 'Straße und Dach'.normalize('NFD');
    expect((await one.call('data.look', { path, passphrase: same })).households).toHaveLength(1);
    const bytes = readFileSync(path);
    for (const at of [3, 12, 30, 5000, bytes.length - 1]) {
      const changed = Buffer.from(bytes);
      changed[at]! ^= 1;
      writeFileSync(path, changed);
      const { code } = await refusalOf(one.call('data.look', { path, passphrase: 'Straße und Dach' }));
      expect([at, code]).toEqual([at, at === 3 ? 'no-copy' : 'passphrase-wrong']);
    }
    expect(readdirSync(one.dataFolder).filter((name) => name.includes('work'))).toEqual([]);
  });

  test('a passphrase that is too short to keep anybody out', async () => {
    const one = machines.open('one');
    expect((await refusalOf(one.call('data.save', { folder: stick, passphrase: 'short' }))).code).toBe('bad-value');
  });
});

test('a copy never writes over another, leaves nothing half-written, and says what is damaged in it', async () => {
  const one = await machines.openWithSample('one', 'quay-flat');
  await one.call('data.save', { folder: stick });
  await one.call('data.save', { folder: stick });
  expect(readdirSync(stick).sort()).toEqual(['Plainwarmth 2026-11-25 (2).sqlite', 'Plainwarmth 2026-11-25.sqlite']);
  one.close();
  const raw = new Database(one.path);
  raw.exec(`UPDATE households SET document = replace(document, 'Quay', 'Quey')`);
  raw.close();
  const again = machines.open('one');
  const { damage } = await again.call('data.save', { folder: stick });
  expect(damage.map(({ kind }) => kind)).toEqual(['household']);
});

test('a folder that is not there, and a file for a folder', async () => {
  const one = machines.open('one');
  writeFileSync(join(stick, 'file'), '');
  const { toRefusal } = await import('../../../src/desk/refusal.ts');
  for (const [folder, code] of [
    [join(stick, 'none'), 'no-such-file'],
    [join(stick, 'file'), 'not-a-folder'],
  ] as const) {
    expect(toRefusal(await refusalOf(one.call('data.save', { folder })))).toMatchObject({ code });
  }
  unlinkSync(join(stick, 'file'));
});

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { seal } from '../../../src/store/seal.ts';
import { openSqliteStore, type SqliteStore } from '../../../src/store/sqlite-store.ts';
import { type Damage, StoreFault } from '../../../src/store/store-fault.ts';
import { madeEvidence, madeIntervals } from './made-evidence.ts';

const NOW = '2026-11-25T10:00:00.000Z';
const RAW = new TextEncoder().encode('Stamp,kWh\n2025-01-01 00:00,0.1\n'.repeat(100));
let folder: string;
let path: string;
let store: SqliteStore;

/** Two households with all that can be kept, so that damage to the one can be seen to spare the other. */
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-damage-'));
  path = join(folder, 'plainwarmth.sqlite');
  store = openSqliteStore(path);
  for (const id of ['a', 'b']) {
    store.createHousehold(emptyHousehold(id, `Home ${id.toUpperCase()}`), NOW);
    const raw = new Uint8Array([...RAW, id.charCodeAt(0)]);
    store.addEvidence(madeEvidence(`${id}1`, id, { fileName: `${id}.csv`, sha256: seal(raw) }), raw, [
      madeIntervals(`${id}1-a`, '2025-01-01', 3),
    ]);
    store.addEstimate({ id: `${id}2`, householdId: id, number: id === 'a' ? 1 : 2 } as WrittenEstimate);
    store.addCheck({ id: `${id}3`, estimateId: `${id}2` } as BillCheck, id);
  }
  store.writeSettings({ installerName: 'Fern and Sons' });
  store.keepOnShelf({ id: 't', name: 'Flat' } as Tariff);
});
afterEach(() => {
  store.close();
  rmSync(folder, { recursive: true });
});

/** Changes the file behind the store's back, as rot does: the change counts as no change of the store's. */
function spoil(sql: string): void {
  store.close();
  const raw = new Database(path);
  raw.exec('DROP TRIGGER estimates_never_change');
  raw.pragma('ignore_check_constraints = ON');
  expect(raw.prepare(sql).run().changes).toBe(1);
  raw.exec(`CREATE TRIGGER estimates_never_change BEFORE UPDATE ON estimates
    BEGIN SELECT RAISE (ABORT, 'a written estimate never changes'); END`);
  raw.close();
  store = openSqliteStore(path);
}
const everyDamage = (): Damage[] => [...store.findDamage()].flatMap(({ damage }) => (damage === null ? [] : [damage]));
const faultOf = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    return error instanceof StoreFault ? error.data.damage : error;
  }
};

test('nothing is damaged that was stored and left alone', () => {
  expect(everyDamage()).toEqual([]);
  expect([...store.findDamage()].at(-1)?.share).toBe(1);
});

/** One byte of a column, changed where it lies. */
const flip = (table: string, column: string, where: string) =>
  `UPDATE ${table} SET ${column} = replace(${column}, 'o', 'u') WHERE ${where}`;
/** Three bytes in the middle of a blob. */
const flipBlob = (table: string, column: string, where: string) =>
  `UPDATE ${table} SET ${column} = CAST(substr(${column}, 1, 50) || x'010203' || substr(${column}, 54) AS BLOB) WHERE ${where}`;
const A = { householdId: 'a', household: 'Home A' };

describe('each damaged piece is named, and spares every other', () => {
  test.each<{ name: string; sql: string; damage: Damage; read: () => unknown; list: (told: Damage[]) => unknown[] }>([
    {
      name: 'a sign without which a household is no JSON',
      sql: `UPDATE households SET document = replace(document, '"name"', ' name"') WHERE id = 'a'`,
      // From the words that it is found by.
      damage: { kind: 'household', ...A, household: 'home a' },
      read: () => store.readHousehold('a'),
      list: (told) => store.listHouseholds({ archived: false }, (one) => told.push(one)).map((row) => row.household.id),
    },
    {
      name: 'the entries of a household',
      sql: flip('households', 'document', `id = 'a'`),
      damage: { kind: 'household', ...A, household: 'Hume A' },
      read: () => store.readHousehold('a'),
      list: (told) => store.listHouseholds({ archived: false }, (one) => told.push(one)).map((row) => row.household.id),
    },
    {
      name: 'an import',
      sql: flip('evidence', 'document', `id = 'a1'`),
      damage: { kind: 'import', ...A, evidenceId: 'a1', fileName: 'a.csv' },
      read: () => store.findEvidence('a1'),
      list: (told) => ['b', ...store.listEvidence('a', (one) => told.push(one))],
    },
    {
      name: 'three bytes of readings',
      sql: flipBlob('series', 'readings', 'key = 1'),
      damage: { kind: 'readings', ...A, evidenceId: 'a1', fileName: 'a.csv' },
      read: () => store.readIntervals('a1-a', '2025-01-01', '2025-01-02'),
      list: () => ['b'],
    },
    {
      name: 'a day of readings gone',
      sql: 'UPDATE series SET readings = substr(readings, 1, length(readings) - 392) WHERE key = 1',
      damage: { kind: 'readings', ...A, evidenceId: 'a1', fileName: 'a.csv' },
      read: () => store.readIntervals('a1-a', '2025-01-01', '2025-01-02'),
      list: () => ['b'],
    },
    {
      name: 'a raw file',
      sql: flipBlob('raw_files', 'packed', `sha256 = (SELECT raw_sha256 FROM evidence WHERE id = 'a1')`),
      damage: { kind: 'raw-file', ...A, evidenceId: 'a1', fileName: 'a.csv' },
      read: () => store.readRawFile('a1'),
      list: () => ['b'],
    },
    {
      name: 'a written estimate',
      sql: `UPDATE estimates SET document = replace(document, '1', '7') WHERE id = 'a2'`,
      damage: { kind: 'estimate', number: 1, ...A },
      read: () => store.readEstimate('a2'),
      list: (told) => ['b', ...store.listEstimates('a', (one) => told.push(one))],
    },
    {
      name: 'a bill check',
      sql: `UPDATE checks SET document = '{"id":"a4"}' WHERE id = 'a3'`,
      damage: { kind: 'check', ...A },
      read: () => store.readCheck('a3'),
      list: (told) => ['b', ...store.listChecks('a', (one) => told.push(one))],
    },
  ])('$name', ({ sql, damage, read, list }) => {
    spoil(sql);
    expect(faultOf(read)).toEqual(damage);
    expect(everyDamage()).toEqual([damage]);
    const told: Damage[] = [];
    expect(list(told)).toEqual(['b']);
    if (told.length > 0) expect(told).toEqual([damage]);
    expect(store.readHousehold('b')?.household.name).toBe('Home B');
    expect(store.listEvidence('b')).toHaveLength(1);
    expect(store.readIntervals('b1-a', '2025-01-01', '2025-01-04')?.days).toHaveLength(3);
    expect(store.readRawFile('b1')).toHaveLength(RAW.length + 1);
    expect([store.listEstimates('b').length, store.listChecks('b').length]).toEqual([1, 1]);
  });

  test('settings and kept tariffs', () => {
    spoil(`UPDATE settings SET value = '{"installerName":"Fern and Suns"}' WHERE name = 'installer'`);
    spoil(`UPDATE shelf SET document = '{"id":"t","name":"Flit"}'`);
    expect([store.readSettings(), store.listShelf()]).toEqual([undefined, []]);
    expect(everyDamage().map(({ kind }) => kind)).toEqual(['settings', 'tariff']);
  });

  test('a number of an estimate is not given twice when the counter is lost', () => {
    spoil(`UPDATE settings SET value = '0' WHERE name = 'last estimate number'`);
    expect(store.nextEstimateNumber()).toBe(3);
  });
});

describe('the way back', () => {
  test('readings that are to the last bit what was stored take the place of damaged ones, and no others do', () => {
    spoil(flipBlob('series', 'readings', 'key = 1'));
    const whole = madeIntervals('a1-a', '2025-01-01', 3);
    const other = {
      ...whole,
      days: whole.days.map((day, at) => (at === 1 ? { ...day, values: day.values.fill(1) } : day)),
    };
    expect(store.mendReadings(other)).toBe(false);
    expect(everyDamage()).toHaveLength(1);
    const again = madeIntervals('a1-a', '2025-01-01', 3);
    expect(store.mendReadings(again)).toBe(true);
    expect(everyDamage()).toEqual([]);
    expect(store.readIntervals('a1-a', '2025-01-01', '2025-01-04')).toEqual(again);
  });

  test('the same raw file takes the place of its damaged like, and no other does', () => {
    spoil(flipBlob('raw_files', 'packed', `sha256 = (SELECT raw_sha256 FROM evidence WHERE id = 'a1')`));
    expect(store.mendRawFile(RAW)).toBe(false);
    const bytes = new Uint8Array([...RAW, 'a'.charCodeAt(0)]);
    expect(store.mendRawFile(bytes)).toBe(true);
    expect(store.readRawFile('a1')).toEqual(bytes);
    expect(store.mendRawFile(bytes)).toBe(false);
  });
});

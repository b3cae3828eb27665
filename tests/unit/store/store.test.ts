import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync, gzipSync } from 'node:zlib';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { packDays, unpackDays } from '../../../src/store/pack-days.ts';
import { seal } from '../../../src/store/seal.ts';
import { openSqliteStore, type SqliteStore } from '../../../src/store/sqlite-store.ts';
import { cpuMs } from '../cpu-ms.ts';
import { madeEvidence, madeIntervals, madeSeries } from './made-evidence.ts';

const NOW = '2026-11-25T10:00:00.000Z';
const LATER = '2026-11-25T11:00:00.000Z';
let folder: string;
let path: string;
let store: SqliteStore;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-store-'));
  path = join(folder, 'plainwarmth.sqlite');
  store = openSqliteStore(path);
});
afterEach(() => {
  store.close();
  rmSync(folder, { recursive: true });
});

const household = (id: string, name = id) => emptyHousehold(id, name);
/** The store keeps a written estimate as it comes; what is in it matters to others. */
const estimate = (id: string, number: number, householdId = 'h') =>
  ({ id, number, householdId, note: 'as handed over' }) as unknown as WrittenEstimate;

describe('households', () => {
  test.each([
    { find: 'larch', found: ['b'] },
    { find: 'LARCH', found: ['b'] },
    { find: 'pw-7', found: ['a'] },
    { find: 'td9', found: ['a'] },
    { find: '%', found: [] },
    { find: '', found: ['b', 'a'] },
  ])('finding "$find" answers $found', ({ find, found }) => {
    store.createHousehold({ ...household('a', 'Holm'), jobNumber: 'PW-7', home: { postcode: 'TD9' } }, NOW);
    store.createHousehold(household('b', 'Larch Rise'), LATER);
    expect(store.listHouseholds({ find, archived: false }).map((row) => row.household.id)).toEqual(found);
  });

  test('a save that names an older revision changes nothing', () => {
    store.createHousehold(household('h', 'First'), NOW);
    expect(store.saveHousehold(household('h', 'Second'), 1, LATER)?.revision).toBe(2);
    expect(store.saveHousehold(household('h', 'Third'), 1, LATER)).toBeUndefined();
    expect(store.readHousehold('h')).toMatchObject({ revision: 2, household: { name: 'Second' }, changedOn: LATER });
  });

  test('an archived household is listed apart', () => {
    store.createHousehold(household('h'), NOW);
    store.archiveHousehold('h', true, LATER);
    expect(store.listHouseholds({ archived: false })).toEqual([]);
    expect(store.listHouseholds({ archived: true })).toHaveLength(1);
  });

  test('erasing leaves no row and no byte of it in the file', () => {
    store.createHousehold({ ...household('h', 'Quill Cottage'), notes: 'the key lies under the pot' }, NOW);
    store.addEvidence(madeEvidence('e', 'h'), new Uint8Array([1, 2, 3]), [madeIntervals('e-a', '2025-01-01', 3)]);
    store.addEstimate(estimate('p', 1));
    store.addCheck({ id: 'c', estimateId: 'p' } as BillCheck, 'h');
    store.eraseHousehold('h');
    expect(store.readHousehold('h')).toBeUndefined();
    store.close();
    const raw = new Database(path);
    for (const table of ['households', 'evidence', 'raw_files', 'series', 'estimates', 'checks']) {
      expect([table, raw.prepare(`SELECT count(*) FROM ${table}`).pluck().get()]).toEqual([table, 0]);
    }
    expect(raw.serialize().includes('under the pot')).toBe(false);
    raw.close();
    store = openSqliteStore(path);
  });

  test('a file that two households share stays with the one that is left', () => {
    store.createHousehold(household('h'), NOW);
    store.createHousehold(household('other'), NOW);
    const bytes = new TextEncoder().encode('a,b\n1,2\n');
    store.addEvidence(madeEvidence('e', 'h', { sha256: seal(bytes) }), bytes, []);
    store.addEvidence(madeEvidence('f', 'other', { sha256: seal(bytes) }), bytes, []);
    store.eraseHousehold('h');
    expect(store.readRawFile('f')).toEqual(bytes);
  });
});

describe('evidence', () => {
  beforeEach(() => store.createHousehold(household('h'), NOW));

  test.each([
    ['deflated', deflateSync],
    ['in gzip', gzipSync],
  ])('a raw file that an earlier version kept %s comes back, and is no damage', (_, pack) => {
    const bytes = new TextEncoder().encode('Stamp,kWh\n2025-01-01 00:00,0.1\n'.repeat(1000));
    store.addEvidence(madeEvidence('e', 'h', { sha256: seal(bytes) }), bytes, []);
    store.close();
    const raw = new Database(path);
    expect(raw.prepare('UPDATE raw_files SET packed = ?').run(pack(bytes)).changes).toBe(1);
    raw.close();
    store = openSqliteStore(path);
    expect(store.readRawFile('e')).toEqual(bytes);
    expect([...store.findDamage()].every(({ damage }) => damage === null)).toBe(true);
  });

  test('evidence, raw file and readings come back equal', () => {
    const bytes = new TextEncoder().encode('Stamp,kWh\n2025-01-01 00:00,0.1\n'.repeat(1000));
    const evidence = madeEvidence('e', 'h', { sha256: seal(bytes) });
    const intervals = madeIntervals('e-a', '2025-01-01', 3);
    store.addEvidence(evidence, bytes, [intervals]);
    expect(store.listEvidence('h')).toEqual([evidence]);
    expect(store.readRawFile('e')).toEqual(bytes);
    expect(store.readIntervals('e-a', '2025-01-01', '2025-01-04')).toEqual(intervals);
    expect(store.findEvidenceOfSeries('e-a')?.id).toBe('e');
  });

  test.each([
    { from: '2025-01-02', to: '2025-01-03', dates: ['2025-01-02'] },
    { from: '2024-12-01', to: '2025-01-02', dates: ['2025-01-01'] },
    { from: '2025-02-01', to: '2025-03-01', dates: [] },
  ])('readings from $from to before $to: $dates', ({ from, to, dates }) => {
    store.addEvidence(madeEvidence('e', 'h'), null, [madeIntervals('e-a', '2025-01-01', 3)]);
    expect(store.readIntervals('e-a', from, to)?.days.map(({ date }) => date)).toEqual(dates);
  });

  test('a long raw file, packed in shares by several threads, comes back equal', () => {
    const lines = Array.from({ length: 100_000 }, (_, i) => `2025-01-01 00:00,${(i * 7919) % 10_007}`);
    const bytes = new TextEncoder().encode(lines.join('\n'));
    expect(bytes.length).toBeGreaterThan(2 * 1024 * 1024);
    store.addEvidence(madeEvidence('e', 'h', { sha256: seal(bytes) }), bytes, []);
    expect(seal(store.readRawFile('e')!)).toBe(seal(bytes));
  });

  test('a series of bills has no readings', () => {
    const series = [madeSeries('e-a', 'e', { resolution: 'period' })];
    store.addEvidence(madeEvidence('e', 'h', { series }), null, []);
    expect(store.readIntervals('e-a', '2025-01-01', '2026-01-01')).toBeUndefined();
  });

  test('an import taken back is gone from the list, keeps its file, and can be brought again', () => {
    const evidence = madeEvidence('e', 'h', { sha256: seal(new Uint8Array([7])) });
    store.addEvidence(evidence, new Uint8Array([7]), []);
    store.undoEvidence('e');
    expect(store.listEvidence('h')).toEqual([]);
    expect(store.listUndone('h')).toEqual([evidence]);
    expect(store.readRawFile('e')).toEqual(new Uint8Array([7]));
    expect(store.restoreEvidence('e')).toEqual(evidence);
    expect(store.listEvidence('h')).toEqual([evidence]);
  });

  test('an import cannot be brought again beside a newer import of the same file', () => {
    store.addEvidence(madeEvidence('e', 'h', { sha256: 'same' }), null, []);
    store.undoEvidence('e');
    store.addEvidence(madeEvidence('f', 'h', { sha256: 'same', series: [] }), null, []);
    expect(() => store.restoreEvidence('e')).toThrow(/already-there/);
    expect(store.listEvidence('h').map(({ id }) => id)).toEqual(['f']);
  });

  test('the same part of one file is kept once, another beside it', () => {
    const keep = (id: string, columns: number[]) =>
      store.addEvidence(madeEvidence(id, 'h', { sha256: 'same', part: { sheet: 'A', columns } }), null, []);
    keep('e', [1]);
    keep('f', [2]);
    expect(() => keep('g', [1])).toThrow(/UNIQUE/);
    expect(store.listEvidence('h').map(({ id }) => id)).toEqual(['e', 'f']);
  });

  test('an import that fails half-way leaves nothing', () => {
    const twice = [madeSeries('same', 'e'), madeSeries('same', 'e')];
    expect(() => store.addEvidence(madeEvidence('e', 'h', { series: twice }), new Uint8Array([1]), [])).toThrow();
    expect(store.listEvidence('h')).toEqual([]);
    expect(store.readRawFile('e')).toBeUndefined();
  });

  test.each([0.1, 0.75, 0.9, 0.99])('an import that is stopped at a share of %d leaves nothing', (stopAt) => {
    const raw = new Uint8Array(9 * 1024 * 1024);
    const evidence = madeEvidence('e', 'h', { sha256: seal(raw) });
    const days = madeIntervals('e-a', '2015-01-01', 3650);
    const stop = (share: number) => {
      if (share >= stopAt) throw new Error('stopped');
    };
    expect(() => store.addEvidence(evidence, raw, [days], stop)).toThrow('stopped');
    expect([store.listEvidence('h'), store.readRawFile('e')]).toEqual([[], undefined]);
    expect(store.readIntervals('e-a', '2015-01-01', '2030-01-01')).toBeUndefined();
  });

  test('any days of readings survive the way through bytes, wherever these lie', () => {
    const day = fc.record({
      day: fc.integer({ min: -10_000, max: 60_000 }),
      values: fc.float64Array({ minLength: 0, maxLength: 50 }),
    });
    fc.assert(
      fc.property(fc.array(day, { maxLength: 6 }), fc.nat({ max: 9 }), (days, lead) => {
        const packed = packDays(
          days.map((one) => ({ day: one.day, readings: new Uint8Array(one.values.slice().buffer) })),
        );
        const within = new Uint8Array(lead + packed.length);
        within.set(packed, lead);
        expect(unpackDays(within.subarray(lead))).toEqual(days);
      }),
    );
  });
});

describe('written estimates and checks', () => {
  beforeEach(() => store.createHousehold(household('h'), NOW));

  test('numbers count up and are not given twice, even after erasing', () => {
    store.addEstimate(estimate('p', store.nextEstimateNumber()));
    store.addEstimate(estimate('q', store.nextEstimateNumber()));
    store.eraseHousehold('h');
    expect(store.nextEstimateNumber()).toBe(3);
  });

  test('a written estimate cannot be changed in the file itself', () => {
    store.addEstimate(estimate('p', 1));
    store.close();
    const raw = new Database(path);
    expect(() => raw.prepare(`UPDATE estimates SET document = '{}'`).run()).toThrow('a written estimate never changes');
    raw.close();
    store = openSqliteStore(path);
    expect(store.readEstimate('p')?.note).toBe('as handed over');
  });

  test('checks are listed in the order they were made and can be dropped', () => {
    store.addEstimate(estimate('p', 1));
    for (const id of ['c2', 'c1']) store.addCheck({ id, estimateId: 'p' } as BillCheck, 'h');
    expect(store.listChecks('h').map(({ id }) => id)).toEqual(['c2', 'c1']);
    store.dropCheck('c2');
    expect(store.listChecks('h').map(({ id }) => id)).toEqual(['c1']);
  });
});

test('work done together is kept together or not at all', () => {
  expect(() =>
    store.together(() => {
      store.createHousehold(household('h'), NOW);
      store.addEvidence(madeEvidence('e', 'h'), null, []);
      throw new Error('no more');
    }),
  ).toThrow('no more');
  expect(store.readHousehold('h')).toBeUndefined();
});

test('ten years of half-hours are stored and read back', () => {
  store.createHousehold(household('h'), NOW);
  const intervals = madeIntervals('e-a', '2015-01-01', 3650);
  const begun = cpuMs();
  store.addEvidence(madeEvidence('e', 'h'), null, [intervals]);
  const stored = cpuMs() - begun;
  const back = store.readIntervals('e-a', '2015-01-01', '2030-01-01')!;
  expect(back.days).toHaveLength(3650);
  expect(back.days[3649]?.values).toEqual(intervals.days[3649]?.values);
  // Measured at 15 to 40 ms; the limit is wide since machines differ.
  expect(stored).toBeLessThan(1000);
});

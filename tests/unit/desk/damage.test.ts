import { mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { HouseholdFile } from '../../../src/desk/household-file.ts';
import { keepUp } from '../../../src/desk/keep-up.ts';
import type { Machine } from './open-file-desk.ts';
import { makeMachines, refusalOf } from './open-file-desk.ts';

let machines: ReturnType<typeof makeMachines>;
beforeEach(() => {
  machines = makeMachines('rot');
});
afterEach(() => machines.remove());

/** Changes the file behind the store's back and opens it again. */
function spoil(machine: Machine, sql: string): Machine {
  machine.close();
  const raw = new Database(machine.path);
  raw.exec('DROP TRIGGER estimates_never_change');
  expect(raw.prepare(sql).run().changes).toBeGreaterThan(0);
  raw.exec(`CREATE TRIGGER estimates_never_change BEFORE UPDATE ON estimates
    BEGIN SELECT RAISE (ABORT, 'a written estimate never changes'); END`);
  raw.close();
  return machines.open('one');
}
const spoilBlob = (table: string, column: string, where: string) =>
  `UPDATE ${table} SET ${column} = CAST(substr(${column}, 1, 50) || x'010203' || substr(${column}, 54) AS BLOB) WHERE ${where}`;

describe('one bad piece blocks no other, is named with its household and its way back', () => {
  test('three bytes of readings: the household opens, says so, and has the readings rebuilt to the last bit', async () => {
    const before = await machines.openWithSample('one');
    const [{ id } = { id: '' }] = await before.call('household.list', {});
    const one = spoil(
      before,
      spoilBlob('series', 'readings', 'key = (SELECT min(key) FROM series WHERE length(readings) > 0)'),
    );
    const { damage } = await one.call('data.check', {});
    expect(damage).toMatchObject([
      { kind: 'readings', message: expect.stringMatching(/^The readings of .+\.csv in Larch Rise/) },
    ]);
    const opened = await one.call('household.open', { id });
    expect(opened.damage).toEqual(damage);
    const seriesId = opened.evidence.find((evidence) => evidence.id === damage[0]!.evidenceId)!.series[0]!.id;
    expect(
      (await refusalOf(one.call('evidence.readings', { seriesId, from: '2020-01-01', to: '2030-01-01' }))).code,
    ).toBe('damaged');
    await one.call('evidence.mend', { evidenceId: damage[0]!.evidenceId! });
    expect((await one.call('household.open', { id })).damage).toEqual([]);
    expect((await one.call('data.check', {})).damage).toEqual([]);
    expect(
      (await one.call('evidence.readings', { seriesId, from: '2020-01-01', to: '2030-01-01' })).length,
    ).toBeGreaterThan(100);
  });

  test('a raw file: the household is still exported, without it, and the same file brings it back', async () => {
    const before = await machines.openWithSample('one');
    const [{ id } = { id: '' }] = await before.call('household.list', {});
    const evidence = (await before.call('household.open', { id })).evidence[0]!;
    const bytes = new Uint8Array(before.store.readRawFile(evidence.id)!);
    const one = spoil(before, spoilBlob('raw_files', 'packed', `sha256 = '${evidence.sha256}'`));
    expect((await one.call('household.export', { id })).remark).toBeUndefined();
    const out = await one.call('household.export', { id, withFiles: true });
    expect(out.remark).toContain(`The saved file ${evidence.fileName} in Larch Rise is damaged`);
    const file = HouseholdFile.parse(JSON.parse(Buffer.from(out.base64, 'base64').toString()));
    expect(file.evidence.filter(({ rawFile }) => rawFile === null)).toHaveLength(1);
    expect(file.evidence[0]!.readings.length).toBeGreaterThan(0);

    const other = await one.call('file.offer', { fileName: 'other.csv', bytes: new Uint8Array([1, 2]) });
    expect((await refusalOf(one.call('evidence.mend', { evidenceId: evidence.id, fileId: other.fileId }))).code).toBe(
      'other-file',
    );
    const same = await one.call('file.offer', { fileName: evidence.fileName, bytes });
    await one.call('evidence.mend', { evidenceId: evidence.id, fileId: same.fileId });
    expect(one.store.readRawFile(evidence.id)).toEqual(bytes);
    expect((await one.call('household.export', { id, withFiles: true })).remark).toBeUndefined();
  });

  test('an import taken in again puts the raw file right too', async () => {
    const before = await machines.openWithSample('one');
    const [{ id } = { id: '' }] = await before.call('household.list', {});
    const evidence = (await before.call('household.open', { id })).evidence[0]!;
    const bytes = new Uint8Array(before.store.readRawFile(evidence.id)!);
    const one = spoil(before, spoilBlob('raw_files', 'packed', `sha256 = '${evidence.sha256}'`));
    const { fileId } = await one.call('file.offer', { fileName: evidence.fileName, bytes });
    expect((await one.call('evidence.accept', { fileId, householdId: id, choices: {} })).duplicateOf).toBe(evidence.id);
    expect(one.store.readRawFile(evidence.id)).toEqual(bytes);
  });

  test('an unreadable household: the list shows the others and it, and it can be erased', async () => {
    const before = await machines.openWithSample('one');
    await before.call('household.create', { name: 'Fern Bank' });
    const one = spoil(
      before,
      `UPDATE households SET document = replace(document, 'Larch Rise', 'Lurch Rise') WHERE searched LIKE 'larch%'`,
    );
    const rows = await one.call('household.list', {});
    expect(rows.map(({ name, damaged }) => [name, damaged?.kind])).toEqual([
      ['Lurch Rise', 'household'],
      ['Fern Bank', undefined],
    ]);
    const { id, damaged } = rows[0]!;
    expect([damaged?.message, damaged?.remedy]).toEqual([
      expect.stringContaining('Lurch Rise are damaged'),
      expect.stringContaining('last copy'),
    ]);
    expect((await refusalOf(one.call('household.open', { id }))).code).toBe('damaged');
    await one.call('household.erase', { id, confirmName: 'Lurch Rise' });
    expect((await one.call('household.list', {})).map(({ name }) => name)).toEqual(['Fern Bank']);
    expect((await one.call('data.check', {})).damage).toEqual([]);
  });

  test.each([
    ['an import', `UPDATE evidence SET document = replace(document, '"shape"', '"shope"') WHERE place = 1`, 'import'],
    ['a written estimate', `UPDATE estimates SET document = replace(document, '1', '7')`, 'estimate'],
  ])('%s: the household opens without it and says so', async (_, sql, kind) => {
    const before = await machines.openWithSample('one');
    const [row] = await before.call('household.list', {});
    await before.call('estimate.keep', { householdId: row!.id, note: '' });
    const one = spoil(before, sql);
    const opened = await one.call('household.open', { id: row!.id });
    expect(opened.damage).toMatchObject([{ kind, message: expect.stringContaining('Larch Rise') }]);
    expect(opened.evidence.length).toBe(row!.evidenceCount - (kind === 'import' ? 1 : 0));
    // Nothing is promised or checked on a part of the evidence as if it were all.
    if (kind === 'import') {
      expect((await refusalOf(one.call('estimate.keep', { householdId: row!.id, note: '' }))).code).toBe('damaged');
      await one.call('evidence.undo', { evidenceId: opened.damage[0]!.evidenceId! });
      expect((await one.call('estimate.keep', { householdId: row!.id, note: '' })).number).toBeGreaterThan(0);
    }
  });
});

describe('what the desk does by itself', () => {
  const at = (day: string) => ({ today: () => day, now: () => `${day}T10:00:00.000Z` });

  test('a copy every day, the last 14 kept; a stick that is away is said and not fatal', async () => {
    const one = await machines.openWithSample('one', 'quay-flat');
    const stick = machines.folderOf('stick');
    writeFileSync(join(stick, 'plainwarmth-holiday 2026-01-01.sqlite'), 'mine');
    await one.call('data.daily', { folder: stick });
    const days = Array.from({ length: 17 }, (_, n) => `2026-11-${String(n + 10).padStart(2, '0')}`);
    for (const day of days) {
      for (let turn = 0; turn < 2; turn++) await keepUp({ ...one, ...at(day) });
    }
    const names = readdirSync(stick).sort();
    expect(names).toEqual([
      ...days.slice(3).map((day) => `plainwarmth-daily ${day}.sqlite`),
      'plainwarmth-holiday 2026-01-01.sqlite',
    ]);
    // A clock that was put back makes the newest copy the oldest by name: it stays all the same.
    await keepUp({ ...one, ...at('2020-01-01') });
    expect(readdirSync(stick)).toContain('plainwarmth-daily 2020-01-01.sqlite');
    expect(readdirSync(stick)).toHaveLength(15);
    await one.call('data.daily', { folder: join(stick, 'away') });
    await keepUp({ ...one, ...at('2026-11-28') });
    expect((await one.call('data.read', {})).failure).toContain('is not there');
    mkdirSync(join(stick, 'away'));
    await keepUp({ ...one, ...at('2026-11-28') });
    expect(await one.call('data.read', {})).not.toHaveProperty('failure');
  });

  test('a locked copy every day opens with the passphrase; where its key is gone, nothing is saved open', async () => {
    const one = await machines.openWithSample('one', 'quay-flat');
    const stick = machines.folderOf('stick');
    const passphrase = 'a roof, a ladder, a laptop';
    const state = await one.call('data.daily', { folder: stick, passphrase });
    expect([state.daily, state.dailyLocked]).toEqual([true, true]);
    for (const day of ['2026-11-28', '2026-11-29']) await keepUp({ ...one, ...at(day) });
    const names = ['plainwarmth-daily 2026-11-28.locked', 'plainwarmth-daily 2026-11-29.locked'];
    expect(readdirSync(stick).sort()).toEqual(names);
    const path = join(stick, names[1]!);
    expect((await one.call('data.look', { path, passphrase })).households).toHaveLength(1);
    const key = join(one.dataFolder, 'daily-copies.key');
    expect(statSync(key).mode & 0o777).toBe(0o600);
    rmSync(key);
    await keepUp({ ...one, ...at('2026-11-30') });
    expect((await one.call('data.read', {})).failure).toContain('key of the locked daily copies is missing');
    expect(readdirSync(stick)).toHaveLength(2);
    await one.call('data.daily', { folder: null });
    expect(await one.call('data.read', {})).toMatchObject({ daily: false, dailyLocked: false });
  });

  test('a check of every piece each week', async () => {
    const before = await machines.openWithSample('one', 'quay-flat');
    await keepUp({ ...before, ...at('2026-11-01') });
    const one = spoil(before, `UPDATE evidence SET document = replace(document, '"shape"', '"shope"')`);
    await keepUp({ ...one, ...at('2026-11-07') });
    expect((await one.call('data.read', {})).damage).toEqual([]);
    await keepUp({ ...one, ...at('2026-11-09') });
    const state = await one.call('data.read', {});
    expect([state.lastCheckOn?.slice(0, 10), state.damage.map(({ kind }) => kind)]).toEqual(['2026-11-09', ['import']]);
  });

  test('a reminder when the last copy is older than a month, or there never was one', async () => {
    const one = await machines.openWithSample('one', 'quay-flat');
    await keepUp({ ...one, ...at('2026-10-01') });
    expect((await one.call('data.read', {})).isCopyDue).toBe(true);
    await one.call('data.save', { folder: machines.folderOf('stick') });
    expect((await one.call('data.read', {})).isCopyDue).toBe(false);
  });
});

describe('the clock behind the last estimate', () => {
  test('is said, and the estimate is kept when the clock is said to be right', async () => {
    const one = await machines.openWithSample('one');
    const [{ id } = { id: '' }] = await one.call('household.list', {});
    const late = machines.open('late', {
      store: one.store,
      now: () => '2026-12-25T10:00:00.000Z',
      today: () => '2026-12-25',
    });
    const first = await late.call('estimate.keep', { householdId: id, note: '' });
    const refusal = await refusalOf(one.call('estimate.keep', { householdId: id, note: '' }));
    expect([refusal.code, refusal.message]).toEqual([
      'clock-behind',
      `This computer’s clock says 25 November 2026, but estimate no. ${first.number} was made on 25 December 2026.`,
    ]);
    const second = await one.call('estimate.keep', { householdId: id, note: '', clockIsRight: true });
    expect(second.number).toBe(first.number + 1);
  });
});

/** A disk that is full or write-protected, as a small one mounted for the test; where mounting is not allowed, said and skipped. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { toRefusal } from '../../../src/desk/refusal.ts';
import { noteRunning } from '../../../src/host/running.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';
import { makeMachines, refusalOf } from '../desk/open-file-desk.ts';

const NOW = '2026-11-25T10:00:00.000Z';
let folder: string;
let disk: string;
const mount = (...args: string[]) => spawnSync('mount', args).status === 0;

const canMount = (() => {
  const probe = mkdtempSync(join(tmpdir(), 'plainwarmth-mount-'));
  const can = process.platform === 'linux' && mount('-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', probe);
  if (can) spawnSync('umount', [probe]);
  else console.log('  Disks that are full or write-protected were not tried: mounting is not allowed here.');
  rmSync(probe, { recursive: true });
  return can;
})();

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-disk-'));
  disk = join(folder, 'disk');
  mkdirSync(disk);
});
afterEach(() => {
  spawnSync('umount', [disk]);
  rmSync(folder, { recursive: true });
});

const refusalFrom = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    return toRefusal(error);
  }
  throw new Error('It was not refused.');
};

describe.skipIf(!canMount)('a disk', () => {
  test('that fills up: what is not kept is said, what was kept stays, and with room again it goes on', () => {
    mount('-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', disk);
    const path = join(disk, 'plainwarmth.sqlite');
    const store = openSqliteStore(path);
    store.createHousehold(emptyHousehold('a', 'Kept'), NOW);
    const refusal = refusalFrom(() =>
      store.createHousehold({ ...emptyHousehold('b', 'Large'), notes: 'x'.repeat(2_000_000) }, NOW),
    );
    expect([refusal.code, refusal.message]).toEqual(['disk-full', expect.stringContaining('no room left')]);
    store.createHousehold(emptyHousehold('c', 'Small'), NOW);
    store.close();
    const again = openSqliteStore(path);
    expect(
      again
        .listHouseholds({ archived: false })
        .map(({ household }) => household.name)
        .sort(),
    ).toEqual(['Kept', 'Small']);
    expect(again.opening.incident).toBeNull();
    again.close();
  });

  test('that is full from the start', () => {
    mount('-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk);
    writeFileSync(join(disk, 'filler'), Buffer.alloc(60 * 1024));
    expect(refusalFrom(() => openSqliteStore(join(disk, 'plainwarmth.sqlite'))).code).toBe('disk-full');
  });

  test('that has no room for the note of a running host: it is said, and the host goes on', () => {
    mount('-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', disk);
    writeFileSync(join(disk, 'filler'), Buffer.alloc(64 * 1024));
    const said = vi.spyOn(console, 'error').mockReturnValue();
    try {
      noteRunning(disk, { port: 1, token: 't' });
      expect(said.mock.calls).toEqual([[expect.objectContaining({ code: 'ENOSPC' })]]);
    } finally {
      said.mockRestore();
    }
  });

  test('that can only be read, empty or with data on it', () => {
    mount('-t', 'tmpfs', 'tmpfs', disk);
    const path = join(disk, 'plainwarmth.sqlite');
    mount('-o', 'remount,ro', disk);
    expect(refusalFrom(() => openSqliteStore(path)).code).toBe('read-only');
    expect(refusalFrom(() => openSqliteStore(join(disk, 'new', 'plainwarmth.sqlite'))).code).toBe('read-only');
    mount('-o', 'remount,rw', disk);
    openSqliteStore(path).close();
    const { size } = statSync(path);
    mount('-o', 'remount,ro', disk);
    expect(refusalFrom(() => openSqliteStore(path)).code).toBe('read-only');
    expect(statSync(path).size).toBe(size);
  });

  test('too small for the copy: nothing half-written is left, and it is said', async () => {
    mount('-t', 'tmpfs', '-o', 'size=256k', 'tmpfs', disk);
    const machines = makeMachines('full');
    const one = await machines.openWithSample('one');
    for (const passphrase of [undefined, 'four words on paper']) {
      const refusal = await refusalOf(one.call('data.save', { folder: disk, passphrase }));
      expect(toRefusal(refusal).code).toBe('disk-full');
      expect(readdirSync(disk)).toEqual([]);
    }
    machines.remove();
  });
});

test('a place where no folder can be made, at once', () => {
  // Node's own way to make folders above each other never ends there.
  expect(refusalFrom(() => openSqliteStore('/proc/none/plainwarmth.sqlite')).code).toBe('no-such-file');
});

test('a folder that is a file, and a data file that is a folder', () => {
  const file = join(folder, 'file');
  writeFileSync(file, 'x');
  expect(refusalFrom(() => openSqliteStore(join(file, 'plainwarmth.sqlite'))).code).toBe('not-a-folder');
  mkdirSync(join(folder, 'plainwarmth.sqlite'));
  expect(refusalFrom(() => openSqliteStore(join(folder, 'plainwarmth.sqlite'))).code).toBe('store-unreadable');
});

test('memory that does not suffice is said so', () => {
  expect(refusalFrom(() => new ArrayBuffer(Number.MAX_SAFE_INTEGER)).code).toBe('memory-short');
});

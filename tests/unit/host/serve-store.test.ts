import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MessageChannel } from 'node:worker_threads';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { linkDesk } from '../../../src/host/desk-link.ts';
import { serveStore } from '../../../src/host/serve-store.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { openSqliteStore } from '../../../src/store/sqlite-store.ts';

let folder: string;
let stick: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-serve-'));
  stick = join(folder, 'stick');
  mkdirSync(stick);
  vi.useFakeTimers({ toFake: ['setTimeout', 'setInterval', 'clearTimeout', 'clearInterval'] });
});
afterEach(() => {
  vi.useRealTimers();
  rmSync(folder, { recursive: true });
});

test('whoever quits while the copy of the day is being saved waits for it', async () => {
  const [calls, stops] = [new MessageChannel(), new MessageChannel()];
  const store = openSqliteStore(join(folder, 'plainwarmth.sqlite'));
  store.createHousehold(emptyHousehold('h', 'Larch Rise'), '2026-11-25T10:00:00.000Z');
  const link = linkDesk({ port: calls.port1, stops: stops.port1 });
  await serveStore(
    store,
    calls.port2,
    { host: 'loopback', dataFolder: folder, sample: null, stops: stops.port2 },
    join(folder, 'no-reader.js'),
  );
  for (const kind of ['ready', 'opened']) calls.port2.postMessage({ kind });
  await link.call('data.daily', { folder: stick, passphrase: 'a roof, a ladder, a laptop' });
  // Loads the rest of the desk, which would else still be under way when the test has ended.
  await link.call('tariff.shelf', {});
  vi.advanceTimersByTime(15_000);
  await link.close();
  expect(readdirSync(stick)).toEqual([expect.stringMatching(/^plainwarmth-daily .*\.locked$/)]);
  expect(readdirSync(folder).filter((name) => name.includes('work'))).toEqual([]);
});

/** A desk on a store in memory, with a clock that stands still and identifiers that count up. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createDesk, type Desk, type DeskPorts } from '../../../src/desk/desk.ts';
import { parseWholeHousehold } from '../../../src/desk/parse-household.ts';
import { VALUES_KEY } from '../../../src/desk/values-key.ts';
import { readEvidence } from '../../../src/intake/read-evidence.ts';
import { openSqliteStore, type SqliteStore } from '../../../src/store/sqlite-store.ts';

export const TODAY = '2026-11-25';
export const NOW = '2026-11-25T10:00:00.000Z';

/** Stands in for a printer where only the way to it is tried; the real one has its own test. */
export const printedAs = (html: string): Uint8Array => new TextEncoder().encode(`%PDF of ${html.length} characters`);

export interface OpenedDesk {
  readonly desk: Desk;
  readonly store: SqliteStore;
  readonly ports: DeskPorts;
}

const dataFolder = mkdtempSync(join(tmpdir(), 'plainwarmth-desk-'));
process.on('exit', () => rmSync(dataFolder, { recursive: true, force: true }));

export function openDesk(patch: Partial<DeskPorts> = {}): OpenedDesk {
  const store = openSqliteStore(':memory:');
  let last = 0;
  const ports: DeskPorts = {
    store,
    today: () => TODAY,
    now: () => NOW,
    newId: () => `id-${++last}`,
    printPdf: async (html) => printedAs(html),
    readEvidence,
    readHousehold: parseWholeHousehold,
    host: 'loopback',
    dataFolder,
    valuesKey: VALUES_KEY,
    quit: () => undefined,
    ...patch,
  };
  return { desk: createDesk(ports), store, ports };
}

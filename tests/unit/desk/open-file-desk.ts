/** A desk on a store in a file, as on a computer of its own. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Call } from '../../../src/desk/contract.ts';
import { createDesk } from '../../../src/desk/desk.ts';
import type { DeskError } from '../../../src/desk/desk-error.ts';
import { loadSample } from '../../../src/desk/load-sample.ts';
import { parseWholeHousehold } from '../../../src/desk/parse-household.ts';
import type { DeskPorts } from '../../../src/desk/ports.ts';
import { VALUES_KEY } from '../../../src/desk/values-key.ts';
import { readEvidence } from '../../../src/intake/read-evidence.ts';
import { openSqliteStore, type SqliteStore } from '../../../src/store/sqlite-store.ts';

export interface Machine {
  readonly dataFolder: string;
  readonly path: string;
  readonly store: SqliteStore;
  readonly call: Call;
  close(): void;
}

/** Everything of one test lies in one folder, which `remove` takes away. */
export function makeMachines(name: string) {
  const folder = mkdtempSync(join(tmpdir(), `plainwarmth-${name}-`));
  let last = 0;
  const opened: SqliteStore[] = [];
  const folderOf = (machine: string) => {
    mkdirSync(join(folder, machine), { recursive: true });
    return join(folder, machine);
  };

  function open(machine: string, patch: Partial<DeskPorts> = {}): Machine {
    const dataFolder = folderOf(machine);
    const path = join(dataFolder, 'plainwarmth.sqlite');
    const store = openSqliteStore(path);
    opened.push(store);
    const ports: DeskPorts = {
      store,
      today: () => '2026-11-25',
      now: () => '2026-11-25T10:00:00.000Z',
      newId: () => `${machine}-${++last}`,
      printPdf: null,
      readEvidence,
      readHousehold: parseWholeHousehold,
      host: 'loopback',
      dataFolder,
      valuesKey: VALUES_KEY,
      quit: () => undefined,
      ...patch,
    };
    const desk = createDesk(ports);
    const call = (name: string, input: unknown) => desk.handle(name, input, {});
    return { dataFolder, path, store, call: call as Call, close: () => store.close() };
  }

  return {
    folderOf,
    open,
    /** With an invented household, its files and its written estimate. */
    async openWithSample(machine: string, sample = 'larch-rise'): Promise<Machine> {
      const one = open(machine);
      const clock = { today: () => '2026-11-25', now: () => '2026-11-25T10:00:00.000Z' };
      const newId = () => `${machine}-${sample}-${++last}`;
      await loadSample(join(import.meta.dirname, '../../../sample-bills', sample), {
        store: one.store,
        ...clock,
        newId,
      });
      return one;
    },
    remove() {
      for (const store of opened) store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export async function refusalOf(work: Promise<unknown>): Promise<DeskError> {
  try {
    await work;
  } catch (error) {
    return error as DeskError;
  }
  throw new Error('It was not refused.');
}

/** A desk on a store in a file, as on a computer of its own. */
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
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

const NOW = { today: () => '2026-11-25', now: () => '2026-11-25T10:00:00.000Z' };

/** Data folders with an invented household, each made once in this process for whoever copies it. */
const samples = new Map<string, Promise<string>>();
const samplesFolder = mkdtempSync(join(tmpdir(), 'plainwarmth-samples-'));
process.once('exit', () => rmSync(samplesFolder, { recursive: true, force: true }));

function folderWith(sample: string): Promise<string> {
  const made = samples.get(sample) ?? makeFolderWith(sample);
  samples.set(sample, made);
  return made;
}

async function makeFolderWith(sample: string): Promise<string> {
  const folder = join(samplesFolder, sample);
  mkdirSync(folder);
  const store = openSqliteStore(join(folder, 'plainwarmth.sqlite'));
  let last = 0;
  const newId = () => `${sample}-${++last}`;
  await loadSample(join(import.meta.dirname, '../../../sample-bills', sample), { store, ...NOW, newId });
  store.close();
  return folder;
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
      ...NOW,
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
      cpSync(await folderWith(sample), folderOf(machine), { recursive: true });
      return open(machine);
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

/** Offers damaged files to the services over a real store: looking changes nothing, and what is refused leaves nothing behind. */
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { DeskError } from '../src/desk/desk-error.ts';
import { evidenceHandlers } from '../src/desk/handlers/evidence.ts';
import { householdHandlers } from '../src/desk/handlers/households.ts';
import { keepOfferedFiles } from '../src/desk/offered-files.ts';
import { parseWholeHousehold } from '../src/desk/parse-household.ts';
import type { DeskPorts } from '../src/desk/ports.ts';
import { VALUES_KEY } from '../src/desk/values-key.ts';
import { readFile } from '../src/intake/read-file.ts';
import { openSqliteStore, type SqliteStore } from '../src/store/sqlite-store.ts';
import { damagedFile, readCorpus, seededRandom } from './damage.ts';

export interface StoreFuzzResult {
  readonly files: number;
  readonly accepted: number;
  readonly refused: number;
  readonly faults: readonly string[];
}

const GOOD_FILE = new URL('../tests/corpus/long-start.csv', import.meta.url);

/** Everything of the household that the store holds, as text. */
const snapshot = (store: SqliteStore, householdId: string): string =>
  JSON.stringify([
    store.listHouseholds({ archived: false }),
    store.listEvidence(householdId),
    store.listShelf(),
    store.listEstimates(householdId),
  ]);

export async function fuzzStore(count: number, seed: number): Promise<StoreFuzzResult> {
  const random = seededRandom(seed);
  const corpus = readCorpus();
  const store = openSqliteStore(':memory:');
  let last = 0;
  const ports: DeskPorts = {
    store,
    today: () => '2026-11-25',
    now: () => '2026-11-25T10:00:00.000Z',
    newId: () => `id-${++last}`,
    printPdf: null,
    readEvidence: readFile,
    readHousehold: parseWholeHousehold,
    host: 'loopback',
    dataFolder: tmpdir(),
    valuesKey: VALUES_KEY,
    quit: () => undefined,
  };
  const context = { ports, store, files: keepOfferedFiles(ports.now) };
  const desk = { ...evidenceHandlers(context), ...householdHandlers(context) };
  const faults: string[] = [];
  let accepted = 0;
  let refused = 0;
  try {
    const opened = await desk['household.create']({ name: 'Invented' }, {});
    const householdId = opened.household.id;
    const offer = async (fileName: string, bytes: Uint8Array) =>
      (await desk['file.offer']({ fileName, bytes: new Uint8Array(bytes) }, {})).fileId;
    const good = await offer('long-start.csv', new Uint8Array(readFileSync(GOOD_FILE)));
    await desk['evidence.accept']({ fileId: good, householdId, choices: {} }, {});
    const before = snapshot(store, householdId);
    for (let run = 0; run < count; run++) {
      const { name, bytes } = damagedFile(corpus, random);
      const expectSame = (when: string) => {
        if (snapshot(store, householdId) !== before) faults.push(`run ${run}, ${name}: the store changed ${when}`);
      };
      try {
        const fileId = await offer(name, bytes);
        await desk['evidence.preview']({ fileId, householdId, choices: {} }, {});
        expectSame('by a preview');
        const { evidence } = await desk['evidence.accept']({ fileId, householdId, choices: {} }, {});
        if (evidence === null) continue;
        accepted++;
        await desk['evidence.undo']({ evidenceId: evidence.id }, {});
        expectSame('by an import that was undone');
      } catch (error) {
        if (!(error instanceof DeskError)) throw error;
        refused++;
        expectSame('by a refused file');
      }
    }
  } catch (error) {
    faults.push(error instanceof Error ? (error.stack ?? error.message) : String(error));
  } finally {
    store.close();
  }
  return { files: count, accepted, refused, faults };
}

/** Ten years of half-hours from the file to the store, beside the sqlite3 shell's own import of the same file. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createDesk } from '../../src/desk/desk.ts';
import { parseWholeHousehold } from '../../src/desk/parse-household.ts';
import { VALUES_KEY } from '../../src/desk/values-key.ts';
import { readFile } from '../../src/intake/read-file.ts';
import { emptyHousehold } from '../../src/model/shapes/household.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { type BenchRow, medianMs, mediansInTurn } from './bench-row.ts';
import { startHost } from './host-process.ts';
import { tenYears } from './intake-bench.ts';
import { openShellImport } from './shell-import.ts';

const NOW = '2026-11-25T10:00:00.000Z';
const ROWS = '175,200 half-hours';

/** A new store in `folder` with one household, and the desk in front of it. */
function openDesk(folder: string) {
  const path = join(mkdtempSync(join(folder, 'store-')), 'plainwarmth.sqlite');
  const store = openSqliteStore(path);
  store.createHousehold(emptyHousehold('h', 'Ten years'), NOW);
  let last = 0;
  const desk = createDesk({
    store,
    today: () => NOW.slice(0, 10),
    now: () => NOW,
    newId: () => `id-${++last}`,
    printPdf: null,
    readEvidence: readFile,
    readHousehold: parseWholeHousehold,
    host: 'loopback',
    dataFolder: folder,
    valuesKey: VALUES_KEY,
    quit: () => undefined,
  });
  return { store, desk };
}

async function importOnce(folder: string, file: string): Promise<void> {
  const { store, desk } = openDesk(folder);
  const bytes = new Uint8Array(readFileSync(file));
  const { fileId } = (await desk.handle('file.offer', { fileName: 'ten-years.csv', bytes }, {})) as { fileId: string };
  await desk.handle('evidence.accept', { fileId, householdId: 'h', choices: {} }, {});
  store.close();
}

/** Storing and reading back alone, without the reading of the file. */
async function storeAlone(folder: string, file: string): Promise<BenchRow[]> {
  const { store, desk } = openDesk(folder);
  const bytes = new Uint8Array(readFileSync(file));
  const { fileId } = (await desk.handle('file.offer', { fileName: 'ten-years.csv', bytes }, {})) as { fileId: string };
  await desk.handle('evidence.accept', { fileId, householdId: 'h', choices: {} }, {});
  const [evidence] = store.listEvidence('h');
  const series = evidence!.series[0]!;
  const intervals = store.readIntervals(series.id, series.from, series.to)!;
  let copy = 0;
  const stored = await medianMs(() => {
    const id = `copy-${++copy}`;
    store.addEvidence({ ...evidence!, id, sha256: id, series: [{ ...series, id: `${id}-s`, evidenceId: id }] }, bytes, [
      { ...intervals, seriesId: `${id}-s` },
    ]);
  });
  const back = await medianMs(() => store.readIntervals(series.id, series.from, series.to));
  store.close();
  return [
    { what: `${ROWS}, days and raw file stored in one transaction`, value: stored, unit: 'ms', aim: 100 },
    { what: `${ROWS} read back from the store`, value: back, unit: 'ms' },
  ];
}

/** The import through the running host, for the memory that it takes. */
async function memoryAboveIdle(folder: string, file: string): Promise<BenchRow[]> {
  const host = await startHost(join(folder, 'memory'));
  if (!host) return [];
  try {
    const { household } = await host.call('household.create', { name: 'Ten years' });
    const idle = host.memory();
    const bytes = new Uint8Array(readFileSync(file));
    const { fileId } = await host.call('file.offer', { fileName: 'ten-years.csv', bytes });
    await host.call('evidence.accept', { fileId, householdId: household.id, choices: {} });
    const after = host.memory();
    if (!idle || !after) return [];
    return [
      { what: `${ROWS} imported by the host, memory above idle`, value: after.most - idle.now, unit: 'MB', aim: 150 },
    ];
  } finally {
    await host.end();
  }
}

/** From starting the program to the answered list of 200 households. */
async function startOfHost(folder: string): Promise<BenchRow[]> {
  const dataFolder = join(folder, 'start');
  const store = openSqliteStore(join(dataFolder, 'plainwarmth.sqlite'));
  for (let n = 0; n < 200; n++) store.createHousehold(emptyHousehold(`h${n}`, `Household ${n}`), NOW);
  store.close();
  const times: number[] = [];
  for (let run = 0; run < 5; run++) {
    const begun = performance.now();
    const host = await startHost(dataFolder);
    if (!host) return [];
    const listed = await host.call('household.list', {});
    times.push(performance.now() - begun);
    await host.end();
    if (listed.length !== 200) throw new Error(`${listed.length} of 200 households listed`);
  }
  const value = times.sort((a, b) => a - b)[2]!;
  return [{ what: 'start of the loopback host to the list of 200 households', value, unit: 'ms', aim: 1500 }];
}

export async function storeBench(): Promise<BenchRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plainwarmth-bench-'));
  const file = join(folder, 'ten-years.csv');
  try {
    writeFileSync(file, tenYears());
    const shellImport = openShellImport(folder, file);
    const [whole, shell] = await mediansInTurn([() => importOnce(folder, file), ...(shellImport ? [shellImport] : [])]);
    const peer =
      shell === undefined ? {} : { peer: { what: 'sqlite3 shell, import into an integer-keyed table', value: shell } };
    return [
      { what: `${ROWS}, file to checked, stored and indexed`, value: whole!, unit: 'ms', ...peer },
      ...(await storeAlone(folder, file)),
      ...(await memoryAboveIdle(folder, file)),
      ...(await startOfHost(folder)),
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

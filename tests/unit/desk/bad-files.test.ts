/** Every bad file gets a sentence with its name, and the store is as it was, row for row. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { OpenHousehold } from '../../../src/desk/contract.ts';
import { createDesk, type Desk } from '../../../src/desk/desk.ts';
import { DeskError } from '../../../src/desk/desk-error.ts';
import { parseWholeHousehold } from '../../../src/desk/parse-household.ts';
import { VALUES_KEY } from '../../../src/desk/values-key.ts';
import type { IntakePreview } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { openSqliteStore, type SqliteStore } from '../../../src/store/sqlite-store.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { NOW, TODAY } from './open-desk.ts';

let folder: string;
let store: SqliteStore;
let desk: Desk;
let householdId: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'plainwarmth-bad-'));
  store = openSqliteStore(join(folder, 'store.sqlite'));
  let last = 0;
  const ports = {
    store,
    today: () => TODAY,
    now: () => NOW,
    newId: () => `id-${++last}`,
    printPdf: null,
    readEvidence: readFile,
    readHousehold: parseWholeHousehold,
  };
  desk = createDesk({ ...ports, host: 'loopback', dataFolder: folder, valuesKey: VALUES_KEY, quit: () => undefined });
  householdId = ((await desk.handle('household.create', { name: 'Larch Rise' }, {})) as OpenHousehold).household.id;
  await bring('good.csv', bytesOf(rows(40, () => '0.4')));
});
afterAll(() => {
  store.close();
  rmSync(folder, { recursive: true });
});

const bytesOf = (text: string) => new TextEncoder().encode(text);
const stamp = (slot: number) => new Date(Date.UTC(2026, 0, 5) + slot * 1_800_000).toISOString().slice(0, 16);
const rows = (count: number, writtenOf: (slot: number) => string, heading = 'Start,Electricity used (kWh)') =>
  [heading, ...Array.from({ length: count }, (_, slot) => `${stamp(slot)}Z,${writtenOf(slot)}`)].join('\n');

async function bring(fileName: string, bytes: Uint8Array, choices = {}) {
  const { fileId } = (await desk.handle('file.offer', { fileName, bytes }, {})) as { fileId: string };
  const request = { fileId, householdId, choices };
  const preview = (await desk.handle('evidence.preview', request, {})) as IntakePreview;
  const { evidence } = (await desk.handle('evidence.accept', request, {})) as { evidence: Evidence };
  return { preview, evidence };
}

let copies = 0;
/** Every row of every table, read from a copy, since the store keeps its file to itself. */
async function everyRow(): Promise<Record<string, unknown[]>> {
  const copy = join(folder, `copy-${++copies}.sqlite`);
  store.saveCopy(copy);
  const database = new Database(copy, { readonly: true });
  try {
    const tables = database.prepare("SELECT name FROM sqlite_master WHERE type = 'table'").all() as { name: string }[];
    return Object.fromEntries(
      tables.map(({ name }) => [name, database.prepare(`SELECT * FROM "${name}"`).raw().all()] as const),
    );
  } finally {
    database.close();
  }
}

const REFUSED: readonly { name: string; bytes: () => Uint8Array; words: RegExp }[] = [
  { name: 'a letter', bytes: () => bytesOf('Dear householder,\nyour heating is fine.\n'), words: /date/ },
  { name: 'a web page', bytes: () => bytesOf('<!doctype html><html><p>Log in</p></html>'), words: /web page/ },
  { name: 'a PDF', bytes: () => bytesOf('%PDF-1.7\n1 0 obj'), words: /PDF/ },
  {
    name: 'wrong columns',
    bytes: () => bytesOf('Name,Town,Age\nAnn,York,41\nBen,Hull,52\nCat,Leeds,33'),
    words: /columns/,
  },
  { name: 'dates but no numbers', bytes: () => bytesOf(rows(40, () => 'fine')), words: /numbers?|layout/ },
  { name: 'binary', bytes: () => Uint8Array.from({ length: 5000 }, (_, i) => (i * 131) % 251), words: /not text/ },
  { name: 'empty', bytes: () => new Uint8Array(), words: /empty/ },
  { name: 'only spaces', bytes: () => bytesOf(' \n \n'), words: /empty/ },
  {
    name: 'impossible dates only',
    bytes: () => bytesOf('Date,kWh\n2026-02-30,1\n2026-02-31,2\n2026-13-01,3\n'),
    words: /./,
  },
  { name: 'absurd readings only', bytes: () => bytesOf(rows(96, () => '900000')), words: /./ },
  { name: 'negative readings only', bytes: () => bytesOf(rows(96, (slot) => `-${1 + (slot % 7)}`)), words: /./ },
  {
    name: '17 MB of readings',
    bytes: () => bytesOf(`Start,kWh\n${`${stamp(0)}Z,0.4\n`.repeat(900_000)}`),
    words: /17 MB|18 MB|19 MB|20 MB/,
  },
  { name: 'cut before its first row', bytes: () => bytesOf('Start,Electricity used (kWh)\n2026-01'), words: /./ },
];

describe('a bad file is refused in words and changes nothing', () => {
  test.each(REFUSED)('$name', async ({ bytes, words }) => {
    const before = await everyRow();
    const error: unknown = await bring('wrong.csv', bytes()).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(error).toBeInstanceOf(DeskError);
    const { message, where } = (error as DeskError).toRefusal();
    expect(message).toContain('wrong.csv');
    expect(message).toMatch(words);
    expect(where).toContain('wrong.csv');
    expect(await everyRow()).toEqual(before);
  });

  test('200 MB are refused by the desk, too, and the file is not held', async () => {
    const before = await everyRow();
    const offer = desk.handle('file.offer', { fileName: 'wrong.csv', bytes: new Uint8Array(200 * 1024 * 1024) }, {});
    await expect(offer).rejects.toMatchObject({ code: 'file-too-large', where: 'wrong.csv' });
    expect(await everyRow()).toEqual(before);
  });
});

const DOUBTED: readonly { name: string; text: string; code: string; words: RegExp }[] = [
  {
    name: 'units mixed in one column',
    text: rows(96, (slot) => (slot === 50 ? '0.41 m³' : '0.41 kWh'), 'Start,Electricity'),
    code: 'unit-mixed',
    words: /Line 52 of doubt\.csv.*0\.41 m³/,
  },
  {
    name: 'an impossible date among good ones',
    text: `${rows(96, () => '0.4')}\n2026-02-30T00:00Z,0.4`,
    code: 'date-impossible',
    words: /Line 98 of doubt\.csv.*2026-02-30/,
  },
  {
    name: 'a negative reading',
    text: rows(96, (slot) => (slot === 50 ? '-3' : '0.4')),
    code: 'negative',
    words: /Line 52 of doubt\.csv \(6 January 2026, 01:00\)/,
  },
  {
    name: 'an absurd reading',
    text: rows(96, (slot) => (slot === 50 ? '99999' : '0.4')),
    code: 'spike',
    words: /Line 52 of doubt\.csv.*99999|100,000 kWh|99,999/,
  },
  {
    name: 'a letter O inside a number',
    text: rows(96, (slot) => (slot === 50 ? '8O0' : '0.4')),
    code: 'number-unreadable',
    words: /Line 52 of doubt\.csv: the reading is 8O0 \(with a letter O\)/,
  },
  {
    name: 'a file cut in the middle of a row',
    text: `${rows(96, () => '0.4')}\n2026-01-07T00:0`,
    code: 'row-cut-off',
    words: /Line 98 of doubt\.csv is cut off/,
  },
];

describe('a file with a bad row keeps the good ones, names the bad one, and comes back out whole', () => {
  test.each(DOUBTED)('$name', async ({ text, code, words }) => {
    const before = await everyRow();
    const { preview, evidence } = await bring('doubt.csv', bytesOf(text));
    const remark = evidence.remarks.find((one) => one.code === code);
    expect(evidence.remarks.map((one) => one.code)).toContain(code);
    expect(remarkSentence(remark!)).toMatch(words);
    expect(evidence.remarks).toEqual(preview.remarks);
    await desk.handle('evidence.undo', { evidenceId: evidence.id }, {});
    const { evidence: left } = (await desk.handle('household.open', { id: householdId }, {})) as OpenHousehold;
    expect(left.map(({ fileName }) => fileName)).toEqual(['good.csv']);
    expect((await everyRow()).households).toEqual(before.households);
  });
});

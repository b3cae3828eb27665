/** Another sheet or column of one file is an import of its own; the same one again is not. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import type { Evidence } from '../../../src/model/shapes/evidence.ts';
import { type Cell, writeWorkbook } from '../intake/write-workbook.ts';
import { openHome } from './open-home.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const twoMeters = new Uint8Array(readFileSync(join(import.meta.dirname, '../../corpus/book-two-meters.xlsx')));

/** Days of two meters without words above them. */
const bareColumns = Array.from({ length: 20 }, (_, i) => `2026-01-${String(i + 1).padStart(2, '0')},${5 + (i % 3)},8`);
const headed = ['Date,Flat 1 (kWh),Flat 2 (kWh)', ...bareColumns].join('\n');

async function homeWith(fileName: string, bytes: Uint8Array) {
  const home = openHome();
  const householdId = await home.create();
  const keep = async (choices: IntakeChoices = {}, file = bytes): Promise<Evidence | null> => {
    const { fileId } = await home.call<{ fileId: string }>('file.offer', { fileName, bytes: file });
    const input = { fileId, householdId, choices };
    return (await home.call<{ evidence: Evidence | null }>('evidence.accept', input)).evidence;
  };
  const totals = async () => (await home.open()).series.map(({ carrier, total }) => `${carrier} ${total.toFixed(2)}`);
  return { ...home, keep, totals };
}

describe('sheets of one workbook', () => {
  test('each is kept once, in whatever way it is asked for again', async () => {
    const { keep, totals } = await homeWith('meters.xlsx', twoMeters);
    expect((await keep({ sheet: 'Electricity' }))?.part).toEqual({ sheet: 'Electricity', columns: [1] });
    expect((await keep({ sheet: 'Gas' }))?.part).toEqual({ sheet: 'Gas', columns: [1] });
    expect(await totals()).toEqual(['electricity 41.76', 'gas 210.00']);
    for (const again of [{}, { sheet: 'Electricity' }, { sheet: 'Gas' }, { sheet: 'Gas', unit: 'Wh' as const }])
      expect(await keep(again)).toBeNull();
    expect(await totals()).toEqual(['electricity 41.76', 'gas 210.00']);
  });

  const days = (first: number, kWh: number): Cell[][] => [
    ['Date', 'kWh'],
    ...Array.from({ length: 12 }, (_, i): Cell[] => [{ serial: first + i, form: 'date' }, kWh + (i % 2)]),
  ];
  test.each([
    { name: 'two meters on the same days', second: ['Annexe', 45_600], next: 'Annexe', beside: 'added' as const },
    { name: 'two years of one meter', second: ['2025', 45_965], next: '2025' },
  ])('$name, whichever sheet of the next workbook comes first', async ({ second, next, beside }) => {
    const [name, first] = second as [string, number];
    const book = (add: number) =>
      writeWorkbook([
        { name: '2024', rows: days(45_600 + add, 11) },
        { name, rows: days(first + add, 5) },
      ]);
    const { keep, open } = await homeWith('meters.xlsx', book(0));
    const choices = { unit: 'kWh', carrier: 'electricity', ...(beside ? { beside } : {}) } as const;
    await keep({ ...choices, sheet: '2024' });
    await keep({ ...choices, sheet: next });
    const sums = async () => (await open()).series.map(({ total }) => total);
    expect(await sums()).toEqual([204]);
    await keep({ ...choices, sheet: next }, book(20));
    await keep({ ...choices, sheet: '2024' }, book(20));
    expect(await sums()).toEqual([408]);
  });
});

describe('columns of one file', () => {
  test.each([
    { name: 'with words above them', text: headed },
    { name: 'without', text: bareColumns.join('\n') },
  ])('$name: each is added, and none twice', async ({ text }) => {
    const { keep, totals } = await homeWith('flats.csv', bytesOf(text));
    const kWh = { unit: 'kWh', carrier: 'electricity' } as const;
    await keep({ ...kWh, columns: { value: 1 } });
    expect(await totals()).toEqual(['electricity 119.00']);
    await keep({ ...kWh, columns: { value: 2 }, beside: 'added' });
    expect(await totals()).toEqual(['electricity 279.00']);
    for (const value of [1, 2]) expect(await keep({ ...kWh, role: 'heat-pump', columns: { value } })).toBeNull();
    expect(await keep(kWh)).toBeNull();
  });
});

test('a part taken back is not brought again beside the same part kept since', async () => {
  const { keep, call, totals } = await homeWith('meters.xlsx', twoMeters);
  const first = await keep({ sheet: 'Gas' });
  await call('evidence.undo', { evidenceId: first!.id });
  await keep({ sheet: 'Gas', carrier: 'gas' });
  await keep({ sheet: 'Electricity' });
  await expect(call('evidence.restore', { evidenceId: first!.id })).rejects.toMatchObject({ code: 'already-there' });
  expect(await totals()).toEqual(['gas 210.00', 'electricity 41.76']);
});

test('a household with two sheets of one workbook goes through its file, and with one sheet twice it does not', async () => {
  const { keep, call, open } = await homeWith('meters.xlsx', twoMeters);
  await keep({ sheet: 'Electricity' });
  await keep({ sheet: 'Gas' });
  const { household, evidence } = await open();
  const out = await call<{ base64: string }>('household.export', { id: household.id });
  const written = Buffer.from(out.base64, 'base64');
  const bring = async (bytes: Uint8Array) => {
    const { fileId } = await call<{ fileId: string }>('file.offer', { fileName: 'h.json', bytes });
    return call<{ evidence: Evidence[] }>('household.import', { fileId });
  };
  expect((await bring(new Uint8Array(written))).evidence.map(({ part }) => part)).toEqual(
    evidence.map(({ part }) => part),
  );
  const twice = JSON.parse(written.toString('utf8'));
  twice.evidence[1].import.part = twice.evidence[0].import.part;
  await expect(bring(bytesOf(JSON.stringify(twice)))).rejects.toMatchObject({ code: 'file-does-not-fit' });
});

import { describe, expect, test } from 'vitest';
import type { OpenHousehold } from '../../../src/desk/contract.ts';
import { keepOfferedFiles, MOST_BYTES_TOGETHER } from '../../../src/desk/offered-files.ts';
import { meterFile } from './contract-suite.ts';
import { openDesk } from './open-desk.ts';

describe('files that were handed in', () => {
  const file = (megabytes: number) => ({ fileName: 'a.csv', bytes: new Uint8Array(megabytes * 1024 * 1024) });

  test('one that is too large is refused with a remedy', () => {
    const files = keepOfferedFiles(() => '2026-11-25T10:00:00Z');
    const refusalOf = (fileName: string) => ({ code: 'file-too-large', where: fileName });
    expect(() => files.offer('a', file(65))).toThrow(
      expect.objectContaining({ ...refusalOf('a.csv'), remedy: expect.stringContaining('shorter span') }),
    );
    expect(() => files.offer('a', { ...file(65), fileName: 'a.HEIC' })).toThrow(
      expect.objectContaining({ ...refusalOf('a.HEIC'), remedy: expect.stringContaining('picture smaller') }),
    );
  });

  test('the oldest goes when room runs out', () => {
    const files = keepOfferedFiles(() => '2026-11-25T10:00:00Z');
    const most = MOST_BYTES_TOGETHER / 1024 / 1024;
    for (let n = 0; n < most / 32 + 1; n++) files.offer(`f${n}`, file(32));
    expect(() => files.take('f0')).toThrow(expect.objectContaining({ code: 'file-gone' }));
    expect(files.take('f1').fileName).toBe('a.csv');
  });

  test('they go after two hours', () => {
    let now = '2026-11-25T10:00:00Z';
    const files = keepOfferedFiles(() => now);
    files.offer('old', file(1));
    now = '2026-11-25T12:30:00Z';
    files.offer('new', file(1));
    expect(() => files.take('old')).toThrow(expect.objectContaining({ code: 'file-gone' }));
    expect(files.take('new').bytes).toHaveLength(1024 * 1024);
  });
});

test('an import that is stopped on the way leaves the store as it was', async () => {
  const { desk, store } = openDesk();
  const { household } = (await desk.handle('household.create', { name: 'Larch Rise' }, {})) as OpenHousehold;
  const bytes = new TextEncoder().encode(meterFile());
  const { fileId } = (await desk.handle('file.offer', { fileName: 'm.csv', bytes }, {})) as { fileId: string };
  const request = { fileId, householdId: household.id, choices: {} };
  const stop = new AbortController();
  const stopped = desk.handle('evidence.accept', request, { signal: stop.signal, onProgress: () => stop.abort() });
  await expect(stopped).rejects.toMatchObject({ code: 'stopped' });
  expect(store.listEvidence(household.id)).toEqual([]);
  expect(await desk.handle('evidence.accept', request, {})).toMatchObject({ duplicateOf: null });
  store.close();
});

test('a printer that is not there gives a refusal that names the way out', async () => {
  const { desk, store } = openDesk({ printPdf: async () => null });
  const { household } = (await desk.handle('household.create', { name: 'Larch Rise' }, {})) as OpenHousehold;
  const heat = { heatLossKW: { value: 6, grade: 'estimated', origin: 'sheet' } };
  await desk.handle('household.save', { household: { ...household, heat }, revision: 1 }, {});
  const { id } = (await desk.handle('estimate.keep', { householdId: household.id, note: '' }, {})) as { id: string };
  await expect(desk.handle('estimate.print', { estimateId: id, format: 'pdf' }, {})).rejects.toMatchObject({
    code: 'no-printer',
    remedy: expect.stringContaining('HTML'),
  });
  store.close();
});

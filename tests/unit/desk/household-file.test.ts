import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { z } from 'zod';
import type { FileOut, OpenHousehold } from '../../../src/desk/contract.ts';
import { HouseholdFile } from '../../../src/desk/household-file.ts';
import { HouseholdInput } from '../../../src/desk/household-input.ts';
import { schemaText } from '../../../src/desk/json-schemas.ts';
import { meterFile } from './contract-suite.ts';
import { type OpenedDesk, openDesk } from './open-desk.ts';

let opened: OpenedDesk;
beforeEach(() => {
  opened = openDesk();
});
afterEach(() => opened.store.close());

const ask = async <T>(name: string, input: unknown) => (await opened.desk.handle(name, input, {})) as T;

async function offer(content: string | Uint8Array, fileName = 'household.json'): Promise<string> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return (await ask<{ fileId: string }>('file.offer', { fileName, bytes })).fileId;
}

async function exported(): Promise<{ text: string; id: string }> {
  const { household } = await ask<OpenHousehold>('household.create', { name: 'Larch Rise' });
  const fileId = await offer(meterFile(), 'meter.csv');
  await ask('evidence.accept', { fileId, householdId: household.id, choices: {} });
  const { base64 } = await ask<FileOut>('household.export', { id: household.id, withFiles: true });
  return { text: Buffer.from(base64, 'base64').toString('utf8'), id: household.id };
}

const importing = async (text: string) => ask<OpenHousehold>('household.import', { fileId: await offer(text) });

describe('a household file', () => {
  test('fits its published schema', async () => {
    const { text } = await exported();
    expect(HouseholdFile.safeParse(JSON.parse(text)).success).toBe(true);
  });

  test('stands beside the household that it came from, under new names', async () => {
    const { text, id } = await exported();
    const copy = await importing(text);
    expect(copy.household.id).not.toBe(id);
    const original = await ask<OpenHousehold>('household.open', { id });
    expect(copy.evidence[0]!.id).not.toBe(original.evidence[0]!.id);
    expect(copy.evidence[0]!.series[0]!.total).toBe(original.evidence[0]!.series[0]!.total);
  });

  test('chosen twice at once comes in once', async () => {
    const fileId = await offer(JSON.stringify({ name: 'Twice' }));
    const both = await Promise.allSettled([1, 2].map(() => ask('household.import', { fileId })));
    expect(both).toMatchObject([{ status: 'fulfilled' }, { reason: { code: 'file-gone' } }]);
    expect(opened.store.listHouseholds({ archived: false })).toHaveLength(1);
  });

  test('that a person wrote comes in without its raw files', async () => {
    const written = { name: 'Written', heat: { heatLossKW: 5 }, files: [{ file: 'gas.csv' }] };
    const { household, evidence } = await importing(JSON.stringify(written));
    expect(household.heat.heatLossKW).toEqual({
      value: 5,
      grade: 'estimated',
      origin: 'written in the household file',
    });
    expect(evidence).toEqual([]);
    expect(household.present).toEqual({ system: 'gas-condensing', assumed: true });
    const heated = await importing(JSON.stringify({ ...written, present: { system: 'oil' } }));
    expect(heated.household.present).toEqual({ system: 'oil' });
  });

  const CASES: readonly { name: string; change: (text: string) => string; refusal: object }[] = [
    {
      name: 'of a newer version',
      change: (text) => text.replace('"version":2', '"version":3'),
      refusal: { code: 'file-newer', where: 'household.json, version' },
    },
    { name: 'cut off', change: (text) => text.slice(0, 900), refusal: { code: 'not-json', where: 'household.json' } },
    {
      name: 'with a word for a number',
      change: (text) => text.replace('"intervalMinutes":30', '"intervalMinutes":"half"'),
      refusal: { code: 'bad-value', where: 'household.json, evidence.0.import.series.0.intervalMinutes' },
    },
    {
      name: 'whose raw file was changed',
      change: (text) => text.replace(/"rawFile":"..../, '"rawFile":"QUFB'),
      refusal: { code: 'raw-file-changed', where: 'household.json, evidence.0.rawFile' },
    },
    {
      name: 'whose readings belong to nothing',
      change: (text) => text.replace(/"seriesId":"[^"]+"/, '"seriesId":"nobody"'),
      refusal: { code: 'file-does-not-fit' },
    },
    {
      name: 'whose offer was taken on a day to come',
      change: (text) => text.replace('"tariffs":', '"taken":{"estimateId":"e","on":"2199-01-01"},"tariffs":'),
      refusal: { code: 'taken-later', where: 'household.json, household.taken.on' },
    },
    {
      name: 'with a misspelt field, written by hand',
      change: () => '{"name":"W","heat":{"heatLoss":6}}',
      refusal: { code: 'unknown-field', where: 'household.json, heat.heatLoss' },
    },
  ];
  test.each([
    {
      where: 'heats',
      change: (text: string) => text.replace('"heat":{', '"heats":{},"heat":{'),
      nearest: 'heat',
    },
    {
      where: 'heat.heatLosKW',
      change: (text: string) => text.replace('"heat":{', '"heat":{"heatLosKW":6'),
      nearest: 'heatLossKW',
    },
    {
      where: 'evidence.0.import.series.0.totals',
      change: (text: string) => text.replace('"total":', '"totals":1,"total":'),
      nearest: 'total',
    },
  ])('with $where, which it does not know, is refused with the nearest', async ({ where, change, nearest }) => {
    const { text } = await exported();
    await expect(importing(change(text))).rejects.toMatchObject({
      code: 'unknown-field',
      where: `household.json, ${where}`,
      message: expect.stringContaining(`Is “${nearest}” meant?`),
    });
  });

  test.each(CASES)('$name is refused and nothing is stored', async ({ change, refusal }) => {
    const { text } = await exported();
    await expect(importing(change(text))).rejects.toMatchObject(refusal);
    expect(await ask('household.list', {})).toHaveLength(1);
  });
});

describe('the published schemas are those that the program reads by', () => {
  test.each([
    { file: 'household-file', schema: HouseholdFile },
    { file: 'household-input', schema: HouseholdInput },
  ])('$file.schema.json (after a change: node src/desk/write-schemas.ts)', ({ file, schema }) => {
    const path = new URL(`../../../src/desk/${file}.schema.json`, import.meta.url);
    expect(readFileSync(path, 'utf8')).toBe(schemaText(file, schema as z.ZodType));
    // A pattern that only some readers of JSON Schema know makes the whole file useless to the others.
    expect(schemaText(file, schema as z.ZodType)).not.toMatch(/\\\\p\{/);
  });
});

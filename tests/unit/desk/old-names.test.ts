/** Files from when a written estimate was called a promise. The exported one was made by the program of that day. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { FileOut, OpenHousehold } from '../../../src/desk/contract.ts';
import { HouseholdFile } from '../../../src/desk/household-file.ts';
import { parseHouseholdInput } from '../../../src/desk/parse-household.ts';
import { type OpenedDesk, openDesk } from './open-desk.ts';

const old = gunzipSync(readFileSync(new URL('household-file-version-1.json.gz', import.meta.url))).toString('utf8');
const { promises, checks } = JSON.parse(old);

let opened: OpenedDesk;
beforeEach(() => {
  opened = openDesk();
});
afterEach(() => opened.store.close());

const ask = async <T>(name: string, input: unknown) => (await opened.desk.handle(name, input, {})) as T;

async function importOld(): Promise<OpenHousehold> {
  const bytes = new TextEncoder().encode(old);
  const { fileId } = await ask<{ fileId: string }>('file.offer', { fileName: 'old.json', bytes });
  return ask<OpenHousehold>('household.import', { fileId });
}

test('an exported household of version 1 comes in with every figure, and goes out as version 2', async () => {
  const { household, estimates } = await importOld();
  expect(estimates.map(({ number, note }) => [number, note])).toEqual([[1, 'As talked over at the table']]);
  const { base64 } = await ask<FileOut>('household.export', { id: household.id });
  const text = Buffer.from(base64, 'base64').toString('utf8');
  expect(text).not.toMatch(/"promise\w*":/);
  const file = HouseholdFile.parse(JSON.parse(text));
  expect(file.version).toBe(2);
  expect(file.estimates).toEqual(promises);
  const { promiseId, promisedPence, promisedKWh, standing, input, months, ...same } = checks[0];
  const { promiseId: ofInput, promisedStandingPencePerDay, ...sameInput } = input;
  expect(file.checks).toEqual([
    {
      ...same,
      estimateId: promiseId,
      estimatedPence: promisedPence,
      estimatedKWh: promisedKWh,
      standing: { estimatedPence: standing.promisedPence, billedPence: standing.billedPence },
      input: { ...sameInput, estimateId: ofInput, estimatedStandingPencePerDay: promisedStandingPencePerDay },
      months: months.map(({ promisedKWh: estimatedKWh, ...month }: { promisedKWh: number }) => ({
        ...month,
        estimatedKWh,
      })),
    },
  ]);
  expect([promisedPence, standing.promisedPence, promisedStandingPencePerDay, months.length]).toEqual([
    17496, 3379, 54.5, 2,
  ]);
});

test('an old written estimate is printed with its own figures', async () => {
  const { estimates } = await importOld();
  const { base64 } = await ask<FileOut>('estimate.print', { estimateId: estimates[0]!.id, format: 'csv' });
  const pump = promises[0].appraisal.systems.find(({ id }: { id: string }) => id === 'heat-pump');
  expect(Buffer.from(base64, 'base64').toString('utf8')).toContain((pump.cost.value / 100).toFixed(4));
});

const written = (parts: object) =>
  parseHouseholdInput(new TextEncoder().encode(JSON.stringify({ name: 'Written', ...parts })), 'household.json');
const check = {
  from: '2025-12-01',
  to: '2026-03-01',
  meter: 'heat-pump',
  pencePerKWh: 27,
  readings: 'actual',
};
const asOf = '2025-08-20';

test('a household file written with the old names says the same as with the new ones', () => {
  const before = written({ promise: { asOf }, check: { ...check, promisedStandingPencePerDay: 50 } });
  expect(before).toEqual(written({ estimate: { asOf }, check: { ...check, estimatedStandingPencePerDay: 50 } }));
  expect(before.estimate).toEqual({ asOf });
});

test('a file with both names is refused at the old one', () => {
  expect(() => written({ promise: { asOf }, estimate: { asOf: '2026-01-01' } })).toThrow(
    expect.objectContaining({ code: 'unknown-field', where: 'household.json, promise' }),
  );
});

import { readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { loadSample } from '../../../src/desk/load-sample.ts';
import { openDesk } from './open-desk.ts';

const folder = resolve(import.meta.dirname, '../../../sample-bills');
const samples = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'paper')
  .map(({ name }) => name);

test.each(samples)('%s goes into an empty store as if imported by hand', async (name) => {
  const { store, ports, desk } = openDesk();
  const household = await loadSample(join(folder, name), ports);
  const [row] = store.listHouseholds({ archived: false });
  expect(row?.household).toEqual(household);
  expect(row!.evidenceCount).toBeGreaterThan(0);
  for (const { id } of store.listEvidence(household.id)) expect(store.readRawFile(id)!.byteLength).toBeGreaterThan(0);
  const estimate = (await desk.handle('estimate.keep', { householdId: household.id, note: '' }, {})) as {
    appraisal: { systems: { cost: { value: number } }[] };
  };
  expect(estimate.appraisal.systems[0]!.cost.value).toBeGreaterThan(0);
  store.close();
});

import { describe, expect, test } from 'vitest';
import { reference } from '../../../src/reference/index.ts';

/** Every object with a source, with its path. */
function sourced(value: unknown, path: string): { path: string; value: Record<string, unknown> }[] {
  if (typeof value !== 'object' || value === null) return [];
  const below = Object.entries(value).flatMap(([key, part]) => sourced(part, `${path}.${key}`));
  const record = value as Record<string, unknown>;
  return 'source' in record ? [{ path, value: record }, ...below] : below;
}

const all = sourced(reference, 'reference');

test('every value names its source, and none names a page, a forum or a file of ours', () => {
  expect(all.length).toBeGreaterThan(80);
  for (const { path, value } of all) {
    expect(String(value.source).length, path).toBeGreaterThan(3);
    expect(String(value.source), path).not.toMatch(/forum|transcript of|\/work|shared\//i);
  }
});

test('provenance is one of four words', () => {
  const known = ['read', 'memory', 'computed', 'common practice, no source'];
  for (const { path, value } of all) if ('provenance' in value) expect(known, path).toContain(value.provenance);
});

describe('efficiencies', () => {
  test.each(Object.entries(reference.efficiency))(
    '%s: low ≤ middle ≤ high ≤ 1, hot water no better than rooms',
    (name, row) => {
      for (const { low, middle, high } of [row.space, row.water]) {
        expect(low).toBeLessThanOrEqual(middle);
        expect(middle).toBeLessThanOrEqual(high);
        expect(high).toBeLessThanOrEqual(1);
      }
      if (name !== 'storage') expect(row.water.middle).toBeLessThanOrEqual(row.space.middle);
      expect(row.ownElectricityKWh.value).toBeGreaterThanOrEqual(0);
    },
  );
});

test('there is one region for each of 0 to 21 and postcodes point at them', () => {
  expect(reference.regions.map(({ id }) => id)).toEqual(Array.from({ length: 22 }, (_, id) => id));
  const ids = new Set(reference.regions.map(({ id }) => id));
  for (const { area, regionId } of reference.postcodes) expect(ids.has(regionId), area).toBe(true);
});

test('quarters of a fuel follow each other without a gap', () => {
  for (const fuel of ['electricity', 'gas'] as const) {
    const quarters = reference.quarters.filter((quarter) => quarter.fuel === fuel);
    for (const [i, quarter] of quarters.slice(1).entries()) {
      const dayAfter = new Date(Date.parse(quarters[i]!.to) + 86_400_000).toISOString().slice(0, 10);
      expect(quarter.from).toBe(dayAfter);
    }
  }
});

test('spreads are shares, and prices of gas and electricity go together', () => {
  for (const name of ['winter', 'habits', 'electricityPrice', 'gasPrice'] as const) {
    expect(reference.spread[name].value).toBeGreaterThan(0.03);
    expect(reference.spread[name].value).toBeLessThan(0.4);
  }
  expect(reference.spread.priceCorrelation.value).toBeGreaterThan(0.5);
  expect(reference.spread.priceCorrelation.value).toBeLessThan(1);
});

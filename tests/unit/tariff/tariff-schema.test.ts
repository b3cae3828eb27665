import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { schemaText } from '../../../src/desk/json-schemas.ts';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { Tariff } from '../../../src/model/shapes/tariff.ts';
import { fullTariff } from './tariffs.ts';

describe('the published JSON Schema of a tariff', () => {
  test('is the one that the program reads by (after a change: node src/desk/write-schemas.ts)', () => {
    const path = new URL('../../../src/model/tariff/tariff.schema.json', import.meta.url);
    expect(readFileSync(path, 'utf8')).toBe(schemaText('tariff', Tariff));
  });

  test('a tariff with everything in it comes back from its file as it was', () => {
    const bytes = new TextEncoder().encode(JSON.stringify(fullTariff, null, 2));
    const { tariff, remarks } = readTariff('prices.json', bytes, { zone: 'Europe/London' });
    expect(remarks).toEqual([]);
    expect(tariff).toEqual(fullTariff);
  });

  test('a document written before bank holidays, series, blocks and demand is still a tariff', () => {
    const before = {
      id: 'e1',
      name: 'Night and day',
      fuel: 'electricity',
      origin: 'bill of October 2026',
      grade: 'measured',
      versions: [
        {
          from: '2026-10-01',
          standingPencePerDay: 54.8,
          vat: { rate: 0.05, included: true },
          bands: [
            { name: 'night', pencePerKWh: 14, times: [{ days: ['mon'], from: '00:00', to: '24:00' }] },
            { name: 'day', pencePerKWh: 30, times: 'rest' },
          ],
        },
      ],
    };
    expect(Tariff.parse(before)).toEqual(before);
  });
});

import { describe, expect, test } from 'vitest';
import type { Reference } from '../../../src/model/shapes/reference.ts';
import { findRegion, readPostcode } from '../../../src/model/weather/region.ts';
import { regions } from '../../../src/reference/climate.ts';
import { postcodes } from '../../../src/reference/postcodes.ts';

const reference = { regions, postcodes } as unknown as Reference;

describe('postcode', () => {
  test.each([
    ['SW1A 1AA', { area: 'SW', district: 1 }],
    ['gu28', { area: 'GU', district: 28 }],
    ['LA9 4QP', { area: 'LA', district: 9 }],
    ['M11AE', { area: 'M', district: 1 }],
    ['B33 8TH', { area: 'B', district: 33 }],
    ['AB', { area: 'AB' }],
    ['12345', null],
    ['nowhere', null],
  ])('%s', (postcode, expected) => expect(readPostcode(postcode)).toEqual(expected));
});

describe('region of a home', () => {
  // Rows of SAP 2012 Appendix U.
  test.each([
    ['GU1 1AA', 1],
    ['GU28 0AA', 2],
    ['GU35', 3],
    ['LA5', 7],
    ['LA23', 8],
    ['BT9', 21],
    ['ZE1', 20],
    ['SW1A 1AA', 1],
  ])('%s lies in region %i', (postcode, id) => {
    expect(findRegion({ postcode }, reference)).toMatchObject({ region: { id }, grade: 'estimated' });
  });
  test.each([[{}], [{ postcode: '  ' }], [{ postcode: 'JE2 3AB' }], [{ postcode: '???' }]])(
    '%o is taken for the UK average, assumed',
    (home) => expect(findRegion(home, reference)).toMatchObject({ region: { id: 0 }, grade: 'assumed' }),
  );
  test('a region chosen by hand overrides the postcode', () => {
    expect(findRegion({ postcode: 'ZE1', regionId: 4 }, reference).region.id).toBe(4);
  });
  test('every postcode area of the table leads to a region', () => {
    for (const row of reference.postcodes) expect(reference.regions.some((r) => r.id === row.regionId)).toBe(true);
    expect(new Set(reference.postcodes.map((row) => row.area)).size).toBe(121);
  });
});

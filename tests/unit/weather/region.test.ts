import { describe, expect, test } from 'vitest';
import type { Reference } from '../../../src/model/shapes/reference.ts';
import { designOutdoor } from '../../../src/model/weather/design-outdoor.ts';
import { findRegion, readPostcode } from '../../../src/model/weather/region.ts';
import { regions } from '../../../src/reference/climate.ts';
import { reference as tables } from '../../../src/reference/index.ts';
import { postcodes } from '../../../src/reference/postcodes.ts';

const reference = { country: 'GB', regions, postcodes } as unknown as Reference;

describe('postcode', () => {
  test.each([
    ['SW1A 1AA', { area: 'SW', district: 1 }],
    ['gu28', { area: 'GU', district: 28 }],
    ['LA9 4QP', { area: 'LA', district: 9 }],
    ['M11AE', { area: 'M', district: 1 }],
    ['B33 8TH', { area: 'B', district: 33 }],
    ['AB', { area: 'AB' }],
    ['w1a 0ax', { area: 'W', district: 1 }],
    ['W1A', { area: 'W', district: 1 }],
    ['EC1V 9HX', { area: 'EC', district: 1 }],
    ['B1', { area: 'B', district: 1 }],
    ['ABC1', null],
    ['B123', null],
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

describe('rows made for it', () => {
  const region = (id: number) => ({ ...regions[0]!, id });
  const made = (ids: number[], rows: Reference['postcodes']) =>
    ({ country: 'GB', regions: ids.map(region), postcodes: rows }) as unknown as Reference;
  const rows = [
    { area: 'XX', regionId: 1 },
    { area: 'XX', districtFrom: 5, districtTo: 8, regionId: 2 },
    { area: 'XX', districtFrom: 12, regionId: 3 },
    { area: 'YY', districtFrom: 3, regionId: 4 },
    { area: 'ZZ', regionId: 99 },
  ];
  test.each([
    ['XX4', 1, 'estimated'],
    ['XX5', 2, 'estimated'],
    ['XX8', 2, 'estimated'],
    ['XX9', 1, 'estimated'],
    ['XX11', 1, 'estimated'],
    ['XX12', 3, 'estimated'],
    ['XX13', 1, 'estimated'],
    ['XX', 1, 'estimated'],
    ['YY3', 4, 'estimated'],
    ['YY2', 0, 'assumed'],
    ['YY', 0, 'assumed'],
    ['ZZ1', 0, 'assumed'],
    ['QQ1', 0, 'assumed'],
  ])('%s: region %i, %s', (postcode, id, grade) => {
    const found = findRegion({ postcode }, made([7, 0, 1, 2, 3, 4], rows));
    expect(found).toMatchObject({ region: { id }, grade });
    if (grade === 'estimated') expect(found.origin).toMatchObject({ data: { postcode } });
  });
  test('by hand and unknown: the postcode; without an average the first row; without rows an error', () => {
    expect(findRegion({ postcode: 'XX4', regionId: 88 }, made([0, 1], rows)).region.id).toBe(1);
    expect(findRegion({ regionId: 0 }, made([0, 1], rows))).toMatchObject({ region: { id: 0 }, grade: 'estimated' });
    expect(findRegion({}, made([6, 1], rows)).region.id).toBe(6);
    expect(() => findRegion({}, made([], rows))).toThrow('climate region');
  });
});

describe('design outdoor temperature', () => {
  const row = (place: string, rule: '99 %' | '99.6 %', outdoorC: number) => ({
    place,
    rule,
    outdoorC,
    source: 'made',
    provenance: 'memory' as const,
  });
  const made = (...places: string[]): Reference => ({
    ...tables,
    designTemperatures: places.flatMap((place, i) => [row(place, '99.6 %', -5 - i), row(place, '99 %', -3 - i)]),
  });
  const typed = { value: 1.5, grade: 'measured' as const, origin: 'typed' };
  test.each([
    ['typed', { designOutdoorC: typed }, 1, ['London'], 1.5, undefined],
    ['by the usual rule', {}, 1, ['Leeds', 'London'], -4, { place: 'London', rule: '99 %' }],
    [
      'by the harder rule',
      { designRule: '99.6 %' as const },
      1,
      ['Leeds', 'London'],
      -6,
      { place: 'London', rule: '99.6 %' },
    ],
    [
      'said to be typed and not',
      { designRule: 'typed' as const },
      1,
      ['London'],
      -3,
      { place: 'London', rule: '99 %' },
    ],
    ['the nearest that is listed', {}, 9, ['London', 'Edinburgh'], -4, { place: 'Edinburgh', rule: '99 %' }],
    ['the nearer of two', {}, 9, ['Edinburgh', 'Newcastle'], -4, { place: 'Newcastle', rule: '99 %' }],
    ['of a region without a city', {}, 0, ['London', 'Birmingham'], -4, { place: 'Birmingham', rule: '99 %' }],
    ['of one whose city is not listed', {}, 4, ['London', 'Birmingham'], -4, { place: 'Birmingham', rule: '99 %' }],
    // 14 K below the 6.1 °C of its coldest month.
    ['nothing listed at all', {}, 4, ['London'], -7.9, undefined],
  ] as const)('%s', (_name, heat, regionId, places, value, taken) => {
    const found = designOutdoor(heat, tables.regions.find(({ id }) => id === regionId)!, made(...places));
    expect(found.value).toBeCloseTo(value, 9);
    expect(found.taken).toEqual(taken);
    expect(found.grade).toBe('designOutdoorC' in heat ? 'measured' : 'assumed');
  });
  test('every region of the tables has a city of the design tables, by both rules', () => {
    for (const region of tables.regions)
      for (const designRule of ['99 %', '99.6 %'] as const)
        expect(designOutdoor({ designRule }, region, tables).taken).toBeDefined();
    const of = (designRule: '99 %' | '99.6 %') =>
      [4, 14, 21, 15, 12, 3].map(
        (id) => designOutdoor({ designRule }, tables.regions.find((one) => one.id === id)!, tables).taken!.place,
      );
    const cities = ['Plymouth', 'Glasgow', 'Belfast', 'Edinburgh'];
    expect(of('99.6 %')).toEqual([...cities, 'Norwich', 'Southampton area']);
    expect(of('99 %')).toEqual([...cities, 'London', 'London']); // the other two are in one of the sets only
  });
});

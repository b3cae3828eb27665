import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { WEEKDAYS } from '../../../src/model/calendar/civil.ts';
import type { TariffBand, TariffVersion, TariffWindow } from '../../../src/model/shapes/tariff.ts';
import { clockTimeOf } from '../../../src/model/tariff/band-times.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { allHours, nightAndDay, priceSeries, tariff, version } from './tariffs.ts';

const band = (name: string, ...times: TariffWindow[]): TariffBand => ({ name, pencePerKWh: 25, times });
const faultsOf = (...bands: TariffBand[]) => findTariffFaults(tariff([version(bands)]));

describe('hours without a price, or with two', () => {
  const cases: [string, TariffBand[], object[]][] = [
    ['flat', [allHours(25)], []],
    ['night over midnight, and the rest', [...nightAndDay], []],
    [
      'two windows that meet',
      [band('a', { from: '00:00', to: '12:00' }), band('b', { from: '12:00', to: '24:00' })],
      [],
    ],
    [
      'an hour left out every morning',
      [band('night', { from: '23:00', to: '07:00' }), band('day', { from: '08:00', to: '23:00' })],
      [{ code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '08:00', count: 84 } }],
    ],
    [
      'a gap of ten minutes',
      [band('night', { from: '23:00', to: '07:00' }), band('day', { from: '07:10', to: '23:00' })],
      [
        { code: 'window-off-half-hour', data: { name: 'day', time: '07:10' } },
        { code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '07:10', count: 84 } },
      ],
    ],
    [
      'Sundays forgotten',
      [band('week', { days: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat'], from: '00:00', to: '24:00' })],
      [{ code: 'band-gap', data: { month: 1, day: 'sun', from: '00:00', to: '24:00', count: 12 } }],
    ],
    [
      'summer forgotten',
      [band('winter', { months: [10, 11, 12, 1, 2, 3], from: '00:00', to: '24:00' })],
      [{ code: 'band-gap', data: { month: 4, day: 'mon', from: '00:00', to: '24:00', count: 42 } }],
    ],
    [
      'peak inside day on Fridays in December',
      [
        band('day', { from: '07:00', to: '23:00' }),
        band('peak', { months: [12], days: ['fri'], from: '16:00', to: '19:00' }),
        allHours(20),
      ],
      [
        {
          code: 'band-overlap',
          data: { month: 12, day: 'fri', from: '16:00', to: '19:00', first: 'day', second: 'peak', count: 1 },
        },
      ],
    ],
    [
      'two rests',
      [allHours(20), { ...allHours(21), name: 'other' }],
      [{ code: 'rest-twice', data: { first: 'all hours', second: 'other' } }],
    ],
    [
      'a rest with nothing left',
      [band('day', { from: '07:00', to: '23:00' }), band('night', { from: '23:00', to: '07:00' }), allHours(20)],
      [{ code: 'rest-empty', data: { name: 'all hours' } }],
    ],
    [
      'a window that ends where it begins',
      [band('odd', { from: '07:00', to: '07:00' }), allHours(20)],
      [
        { code: 'window-empty', data: { name: 'odd', time: '07:00' } },
        { code: 'rest-empty', data: { name: 'all hours' } },
      ],
    ],
    [
      'one name twice',
      [band('day', { from: '07:00', to: '12:00' }), band('day', { from: '12:00', to: '23:00' }), allHours(20)],
      [{ code: 'band-name-twice', data: { name: 'day' } }],
    ],
  ];
  test.each(cases)('%s', (_, bands, expected) => {
    expect(faultsOf(...bands)).toEqual(expected.map((fault) => expect.objectContaining(fault)));
  });

  test('Friday 22:00 to 06:00 is Friday’s own first and last hours, so weekdays and weekends meet without a seam', () => {
    const week: TariffWindow['days'] = ['mon', 'tue', 'wed', 'thu', 'fri'];
    expect(
      faultsOf(
        band('night', { days: week, from: '22:00', to: '06:00' }),
        band('day', { days: week, from: '06:00', to: '22:00' }),
        band('weekend', { days: ['sat', 'sun'], from: '00:00', to: '24:00' }),
      ),
    ).toEqual([]);
  });
});

describe('versions and prices', () => {
  const flat = (from: string) => version([allHours(25)], { from });
  const codes = (...args: Parameters<typeof tariff>) => findTariffFaults(tariff(...args)).map(({ code }) => code);
  test.each([
    ['in order', [flat('2026-01-01'), flat('2026-04-01')], {}, []],
    ['out of order', [flat('2026-04-01'), flat('2026-01-01')], {}, ['versions-order']],
    ['the same day twice', [flat('2026-04-01'), flat('2026-04-01')], {}, ['version-twice']],
    ['ended before it began', [flat('2026-04-01')], { until: '2026-03-31' }, ['until-before-version']],
    ['a price in pounds', [version([allHours(0.25)])], {}, ['price-unusual']],
    ['a price of 90 p', [version([allHours(90)])], {}, ['price-unusual']],
    ['a gas price for electricity', [version([allHours(26)])], { fuel: 'gas' }, ['price-unusual']],
    ['standing charge below zero', [version([allHours(25)], { standingPencePerDay: -1 })], {}, ['standing-negative']],
    [
      'standing charge in the wrong unit',
      [version([allHours(25)], { standingPencePerDay: 365 })],
      {},
      ['standing-unusual'],
    ],
    ['VAT of 8 %', [version([allHours(25)], { vat: { rate: 0.08, included: true } })], {}, ['vat-unusual']],
    [
      'gas by the hour',
      [version(nightAndDay.map((b) => ({ ...b, pencePerKWh: 8 })))],
      { fuel: 'gas' },
      ['gas-with-times'],
    ],
  ] as [string, Parameters<typeof tariff>[0], Parameters<typeof tariff>[1], string[]][])(
    '%s',
    (_, versions, change, expected) => {
      expect(codes(versions, change)).toEqual(expected);
    },
  );
});

/** Two kinds of day, each cut at random half-hours, each piece with a band of its own: every minute has one price. */
const tiling = fc
  .record({
    weekend: fc.uniqueArray(fc.constantFrom(...WEEKDAYS), { minLength: 1, maxLength: 6 }),
    cuts: fc.tuple(
      fc.uniqueArray(fc.integer({ min: 0, max: 47 }), { minLength: 2, maxLength: 5 }),
      fc.uniqueArray(fc.integer({ min: 0, max: 47 }), { minLength: 2, maxLength: 5 }),
    ),
  })
  .map(({ weekend, cuts }) => {
    const days = [weekend, WEEKDAYS.filter((day) => !weekend.includes(day))];
    return cuts.flatMap((halves, kind) => {
      const sorted = [...halves].sort((a, b) => a - b);
      return sorted.map((half, i) => {
        const next = sorted[(i + 1) % sorted.length]!;
        const window = {
          days: days[kind]!,
          from: clockTimeOf(half * 30),
          to: clockTimeOf(next === 0 ? 1440 : next * 30),
        };
        return band(`${kind}/${i}`, window);
      });
    });
  });

describe('windows tile the week or are refused', () => {
  test('a tiling has no fault', () => {
    fc.assert(
      fc.property(tiling, (bands) => {
        expect(faultsOf(...bands)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
  test('a tiling less one band has a gap', () => {
    fc.assert(
      fc.property(tiling, fc.nat(), (bands, n) => {
        const left = bands.filter((_, i) => i !== n % bands.length);
        expect(faultsOf(...left).map(({ code }) => code)).toEqual(['band-gap']);
      }),
      { numRuns: 60 },
    );
  });
  test('a tiling with one band said again has an overlap', () => {
    fc.assert(
      fc.property(tiling, fc.nat(), (bands, n) => {
        const again = { ...bands[n % bands.length]!, name: 'again' };
        expect(faultsOf(...bands, again).map(({ code }) => code)).toEqual(['band-overlap']);
      }),
      { numRuns: 60 },
    );
  });
});

describe('charges', () => {
  const steps = (...upTo: number[]) => ({
    ...allHours(30),
    blocks: { per: 'day' as const, steps: upTo.map((upToKWh) => ({ upToKWh, pencePerKWh: 20 })) },
  });
  const series = priceSeries('2026-01-01', 365, () => 20);
  test.each<[string, TariffBand[], Partial<TariffVersion>, object[]]>([
    ['a standing charge by the day', [allHours(25)], { standingPencePerDay: 1 }, []],
    ['one by the month', [allHours(25)], { standingPencePerDay: 0, standingPencePerMonth: 1 }, []],
    [
      'both at once',
      [allHours(25)],
      { standingPencePerDay: 1, standingPencePerMonth: 2 },
      [{ code: 'standing-twice', weight: 'refusal', data: { pence: 1, monthPence: 2 } }],
    ],
    ['steps that rise', [steps(2, 5, 9)], {}, []],
    ['steps equal', [steps(2, 2)], {}, [{ code: 'blocks-order', weight: 'refusal', data: { upTo: 2, before: 2 } }]],
    [
      'steps fall late',
      [steps(2, 5, 4)],
      {},
      [{ code: 'blocks-order', weight: 'refusal', data: { upTo: 4, before: 5 } }],
    ],
    ['steps beside dated prices', [steps(2)], { series }, [{ code: 'blocks-with-series', weight: 'refusal' }]],
    ['export as dear as the dearest unit', nightAndDay.slice(), { exportPencePerKWh: 30 }, []],
    [
      'export dearer than that',
      nightAndDay.slice(),
      { exportPencePerKWh: 30.1 },
      [{ code: 'export-unusual', weight: 'question', data: { pence: 30.1, dearest: 30 } }],
    ],
    [
      'export below the unit with its VAT',
      [allHours(30)],
      { exportPencePerKWh: 31, vat: { rate: 0.05, included: false } },
      [],
    ],
    ['export beside dated prices', [allHours(20)], { exportPencePerKWh: 31, series }, []],
  ])('%s', (_, bands, change, faults) => {
    const found = findTariffFaults(tariff([version(bands, change)]));
    expect(found).toHaveLength(faults.length);
    expect(found).toMatchObject(faults);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockTimeOf, WEEKDAYS } from '../../../src/model/calendar/civil.ts';
import type { TariffBand, TariffVersion, TariffWindow } from '../../../src/model/shapes/tariff.ts';
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
      'both ends off the half-hour',
      [band('day', { from: '07:10', to: '19:20' }), allHours(20)],
      [{ code: 'window-off-half-hour', data: { name: 'day', time: '07:10' } }],
    ],
    [
      'a gap over a time that matters in December only',
      [
        band('night', { from: '10:00', to: '07:00' }),
        band('late', { months: [12], from: '07:00', to: '08:00' }, { months: [12], from: '09:00', to: '10:00' }),
      ],
      // Three stretches a day, eleven months, and one in December.
      [{ code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '10:00', count: 7 * (33 + 1) } }],
    ],
    [
      'two gaps in a day',
      [band('night', { from: '10:00', to: '07:00' }), band('between', { from: '08:00', to: '09:00' })],
      [{ code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '08:00', count: 168 } }],
    ],
    [
      'a gap that the next day goes on from',
      [
        band('mon', { days: ['mon'], from: '08:00', to: '07:00' }),
        band('other', { days: ['tue', 'wed', 'thu', 'fri', 'sat', 'sun'], from: '09:00', to: '08:00' }),
      ],
      [{ code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '08:00', count: 84 } }],
    ],
    [
      'a gap that the next month goes on from',
      [
        band('January', { months: [1], days: ['mon'], from: '08:00', to: '07:00' }),
        band('Mondays', { months: [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], days: ['mon'], from: '09:00', to: '08:00' }),
        band('other', { days: ['tue', 'wed', 'thu', 'fri', 'sat', 'sun'], from: '00:00', to: '24:00' }),
      ],
      [{ code: 'band-gap', data: { month: 1, day: 'mon', from: '07:00', to: '08:00', count: 12 } }],
    ],
    [
      'a window from the end of the day',
      [band('odd', { from: '24:00', to: '06:00' }), allHours(20)],
      [{ code: 'window-empty', data: { name: 'odd', time: '24:00' } }],
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
  const flatGas = (from: string) => version([allHours(8)], { from });
  const bare = (pence: number, standingPencePerDay: number) =>
    version([allHours(pence)], { standingPencePerDay, vat: { rate: 0.05, included: false } });
  const codes = (...args: Parameters<typeof tariff>) => findTariffFaults(tariff(...args)).map(({ code }) => code);
  test.each([
    ['in order', [flat('2026-01-01'), flat('2026-04-01')], {}, []],
    ['out of order', [flat('2026-04-01'), flat('2026-01-01')], {}, ['versions-order']],
    ['the same day twice', [flat('2026-04-01'), flat('2026-04-01')], {}, ['version-twice']],
    ['ended before it began', [flat('2026-04-01')], { until: '2026-03-31' }, ['until-before-version']],
    ['ended on the day it began', [flat('2026-04-01')], { until: '2026-04-01' }, []],
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
    ['the highest usual standing charge', [version([allHours(25)], { standingPencePerDay: 120 })], {}, []],
    ['a little more', [version([allHours(25)], { standingPencePerDay: 120.1 })], {}, ['standing-unusual']],
    ['a charge in pounds', [version([allHours(25)], { standingPencePerDay: 0.58 })], {}, ['standing-low']],
    ['more once VAT is on it', [bare(25, 115)], {}, ['standing-unusual']],
    [
      'none, or as little as 5 p',
      [version([allHours(25)], { standingPencePerDay: 0 }), bare(25, 5)].map((one, i) => ({
        ...one,
        from: `2026-0${i + 1}-01`,
      })),
      {},
      [],
    ],
    [
      'the cheapest and the dearest usual unit',
      [version([{ ...nightAndDay[0]!, pencePerKWh: 4 }, allHours(60)])],
      {},
      [],
    ],
    [
      'a little less, a little more',
      [version([{ ...nightAndDay[0]!, pencePerKWh: 3.9 }, allHours(60.1)])],
      {},
      ['price-unusual', 'price-unusual'],
    ],
    ['more once VAT is on it, a unit', [bare(58, 40)], {}, ['price-unusual']],
    ['gas: the cheapest usual unit', [version([allHours(2)])], { fuel: 'gas' }, []],
    ['gas: the dearest usual unit', [version([allHours(20)])], { fuel: 'gas' }, []],
    ['gas: less', [version([allHours(1.9)])], { fuel: 'gas' }, ['price-unusual']],
    ['gas: more', [version([allHours(20.1)])], { fuel: 'gas' }, ['price-unusual']],
    [
      'gas at one price, its hours written out',
      [version([{ ...band('all', { from: '00:00', to: '24:00' }), pencePerKWh: 8 }])],
      { fuel: 'gas' },
      [],
    ],
    ['no VAT', [version([allHours(25)], { vat: { rate: 0, included: true } })], {}, []],
    ['the standard rate', [version([allHours(25)], { vat: { rate: 0.2, included: true } })], {}, []],
    ['VAT of 17.5 %', [version([allHours(25)], { vat: { rate: 0.175, included: true } })], {}, ['vat-unusual']],
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
  test('each says which version it is about, and what it found', () => {
    const odd = version(
      [
        { ...band('night', { from: '00:00', to: '06:00' }), pencePerKWh: 70 },
        { ...band('morning', { from: '06:00', to: '09:00' }), pencePerKWh: 9 },
        allHours(8),
      ],
      { from: '2026-01-01', standingPencePerDay: 130, vat: { rate: 0.08, included: true } },
    );
    const last = version([allHours(8)], { from: '2026-01-01', standingPencePerDay: -2 });
    const [wrong, question] = [
      { weight: 'refusal' as const, version: 1 },
      { weight: 'question' as const, version: 1 },
    ];
    const faults = findTariffFaults(tariff([flatGas('2026-02-01'), odd, last], { fuel: 'gas', until: '2025-12-31' }));
    expect(faults).toEqual([
      { ...wrong, code: 'versions-order', data: { from: '2026-01-01', previous: '2026-02-01' } },
      { ...wrong, version: 2, code: 'version-twice', data: { from: '2026-01-01' } },
      { ...wrong, version: 2, code: 'until-before-version', data: { from: '2026-01-01', until: '2025-12-31' } },
      { ...question, code: 'price-unusual', data: { name: 'night', pence: 70, low: 2, high: 20 } },
      { ...question, code: 'standing-unusual', data: { pence: 130, high: 120 } },
      { ...question, code: 'vat-unusual', data: { rate: 0.08 } },
      { ...question, code: 'gas-with-times', data: { name: 'night' } },
      { ...wrong, version: 2, code: 'standing-negative', data: { pence: -2 } },
    ]);
  });
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
    ['a standing charge by the day', [allHours(25)], { standingPencePerDay: 10 }, []],
    ['one by the month', [allHours(25)], { standingPencePerDay: 0, standingPencePerMonth: 365 }, []],
    [
      'one by the month in pounds',
      [allHours(25)],
      { standingPencePerDay: 0, standingPencePerMonth: 18.25 },
      [{ code: 'standing-low', weight: 'question', data: { pence: 0.6 } }],
    ],
    [
      'one by the month typed by the year',
      [allHours(25)],
      { standingPencePerDay: 0, standingPencePerMonth: 14_600 },
      [{ code: 'standing-unusual', weight: 'question', data: { pence: 480, high: 120 } }],
    ],
    [
      'both at once',
      [allHours(25)],
      { standingPencePerDay: 10, standingPencePerMonth: 0.5 },
      [{ code: 'standing-twice', weight: 'refusal', data: { pence: 10, monthPence: 0.5 } }],
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

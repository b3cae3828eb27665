import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { TariffBand, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { monthsBetween, splitIntoBlocks } from '../../../src/model/tariff/blocks.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { standingPencePerDayInclVat } from '../../../src/model/tariff/price.ts';
import { recomputeBill } from '../../../src/model/tariff/recompute-bill.ts';
import { allHours, priceSeries, tariff, version } from './tariffs.ts';

const stepped = (per: 'day' | 'month', ...steps: [number, number][]): TariffBand => ({
  ...allHours(20),
  blocks: { per, steps: steps.map(([upToKWh, pencePerKWh]) => ({ upToKWh, pencePerKWh })) },
});
const bill = (one: TariffVersion, kWh: number, from = '2026-01-01', to = '2026-02-01') =>
  recomputeBill({ tariff: tariff([one]), from, to, zone: 'Europe/London', use: { kind: 'total', kWh } });
const daysOf = (from: string, days: number, kWh: (day: number, half: number) => number) => ({
  kind: 'half-hours' as const,
  readings: {
    first: from,
    days: Array.from({ length: days }, (_, day) => Float64Array.from({ length: 48 }, (_, half) => kWh(day, half))),
  },
});

describe('stepped blocks', () => {
  const blocks = [
    { name: 'a', pencePerKWh: 40, fromKWh: 0 },
    { name: 'b', pencePerKWh: 30, fromKWh: 100 },
    { name: 'c', pencePerKWh: 20, fromKWh: 300 },
  ];
  test.each([
    [0, [0, 0, 0]],
    [60, [60, 0, 0]],
    [100, [100, 0, 0]],
    [250, [100, 150, 0]],
    [1000, [100, 200, 700]],
  ])('%i kWh fill the steps as %j', (kWh, parts) => expect(splitIntoBlocks(kWh, blocks)).toEqual(parts));

  test.each([
    // January: 100 × 40 + 150 × 30 p and 31 days at 50 p.
    ['by the month', stepped('month', [100, 40], [300, 30]), 250, 4000 + 4500 + 1550],
    // 31 days of 2 kWh at 40 p, the other 188 kWh at 20 p.
    ['by the day', stepped('day', [2, 40]), 250, 62 * 40 + 188 * 20 + 1550],
  ])('%s', (_, band, kWh, pence) => expect(bill(version([band]), kWh).totalPence).toBe(pence));

  test('a half month has half the threshold', () => {
    // 15 of the 30 days of June: 50 kWh at 40 p, 70 at 20 p, 15 days at 50 p.
    expect(bill(version([stepped('month', [100, 40])]), 120, '2026-06-01', '2026-06-16').totalPence).toBe(
      2000 + 1400 + 750,
    );
  });

  test('with readings each day fills its own step', () => {
    // One day of 48 × 0.5 = 24 kWh, one of 48 × 0.02 = 0.96 kWh; 2 kWh a day at 40 p.
    const use = daysOf('2026-01-05', 2, (day) => (day === 0 ? 0.5 : 0.02));
    const { lines } = recomputeBill({
      tariff: tariff([version([stepped('day', [2, 40])])]),
      from: '2026-01-05',
      to: '2026-01-07',
      zone: 'Europe/London',
      use,
    });
    expect(lines.filter(({ kind }) => kind === 'units').map(({ quantity }) => Number(quantity.toFixed(6)))).toEqual([
      2.96, 22,
    ]);
  });

  test('steps beside dated prices are refused', () => {
    const both = version([stepped('day', [2, 40])], { series: priceSeries('2026-01-01', 365, () => 20) });
    expect(findTariffFaults(tariff([both]))).toMatchObject([{ code: 'blocks-with-series', weight: 'refusal' }]);
  });

  test('steps that go back are refused', () => {
    const faults = findTariffFaults(tariff([version([stepped('month', [300, 30], [100, 40])])]));
    expect(faults).toMatchObject([{ code: 'blocks-order', weight: 'refusal', data: { before: 300, upTo: 100 } }]);
  });
});

describe('a bill over a leap day', () => {
  // 29 days of February 2024 at 50 p; 290 kWh with 5 kWh a day at 40 p and the rest at 20 p.
  test('has 29 days, and 29 first steps', () => {
    const leap = version([stepped('day', [5, 40])], { from: '2024-01-01' });
    expect(bill(leap, 290, '2024-02-01', '2024-03-01').totalPence).toBe(29 * 50 + 145 * 40 + 145 * 20);
  });
  test('a price change on it cuts the bill there', () => {
    const change = tariff([
      version([allHours(20)], { from: '2024-01-01' }),
      version([allHours(30)], { from: '2024-02-29' }),
    ]);
    const { lines } = recomputeBill({
      tariff: change,
      from: '2024-02-01',
      to: '2024-03-01',
      zone: 'Europe/London',
      use: { kind: 'total', kWh: 290 },
    });
    const units = lines
      .filter(({ kind }) => kind === 'units')
      .map(({ from, to, quantity, pence }) => [from, to, quantity, pence]);
    expect(units).toEqual([
      ['2024-02-01', '2024-02-29', 280, 5600],
      ['2024-02-29', '2024-03-01', 10, 300],
    ]);
  });
});

describe('standing charge by the month', () => {
  const monthly = version([allHours(20)], { standingPencePerDay: 0, standingPencePerMonth: 1500 });
  test.each([
    ['2026-01-01', '2027-01-01', 12],
    ['2026-01-01', '2026-02-01', 1],
    ['2026-01-16', '2026-02-15', 16 / 31 + 14 / 28],
  ])('%s to %s is %f months', (from, to, months) => expect(monthsBetween(from, to)).toBeCloseTo(months, 12));
  test('a bill of a year has twelve, the comparison the same over 365 days', () => {
    expect(bill(monthly, 0, '2026-01-01', '2027-01-01').totalPence).toBe(18_000);
    expect(standingPencePerDayInclVat(monthly) * 365).toBeCloseTo(18_000, 8);
  });
  test('both by the day and by the month is refused', () => {
    expect(findTariffFaults(tariff([{ ...monthly, standingPencePerDay: 50 }]))).toMatchObject([
      { code: 'standing-twice' },
    ]);
  });
});

describe('demand, export and dated prices', () => {
  const run = (one: TariffVersion, use: Parameters<typeof recomputeBill>[0]['use'], exportKWh = 0) =>
    recomputeBill({
      tariff: tariff([one]),
      from: '2026-01-05',
      to: '2026-01-07',
      zone: 'Europe/London',
      use,
      exportKWh,
    });
  const use = daysOf('2026-01-05', 2, (day, half) => (day === 1 && half === 36 ? 3 : 0.1));

  test('the largest half-hour of the month counts as power', () => {
    const line = run(version([allHours(20)], { demand: { pencePerKWPerMonth: 310 } }), use).lines.find(
      ({ kind }) => kind === 'demand',
    )!;
    // 3 kWh in a half-hour is 6 kW; two of 31 days at 310 p a month are 20 p a kW.
    expect(line.pence).toBe(120);
  });
  describe('over any readings of February', () => {
    const charged = version([allHours(20)], { demand: { pencePerKWPerMonth: 310 } });
    const readings = fc.array(fc.array(fc.double({ min: 0, max: 8, noNaN: true }), { minLength: 48, maxLength: 48 }), {
      minLength: 28,
      maxLength: 28,
    });
    const demandOf = (days: readonly (readonly number[])[]) =>
      recomputeBill({
        tariff: tariff([charged]),
        from: '2026-02-01',
        to: '2026-03-01',
        zone: 'Europe/London',
        use: { kind: 'half-hours', readings: { first: '2026-02-01', days: days.map((day) => Float64Array.from(day)) } },
      }).lines.filter(({ kind }) => kind === 'demand');

    test('it is twice the largest half-hour, whatever the order', () => {
      fc.assert(
        fc.property(readings, (days) => {
          const [line, ...more] = demandOf(days);
          expect(more).toEqual([]);
          const kW = 2 * Math.max(...days.flat());
          expect(line!.quantity).toBeCloseTo(kW, 9);
          expect(Math.abs(line!.pence - kW * 310)).toBeLessThanOrEqual(0.5 + 1e-6);
          const turned = days.toReversed().map((day) => day.toReversed());
          expect(demandOf(turned)[0]!.pence).toBe(line!.pence);
        }),
        { numRuns: 20 },
      );
    });
    test('more use in any half-hour never makes it less', () => {
      fc.assert(
        fc.property(
          readings,
          fc.nat(27),
          fc.nat(47),
          fc.double({ min: 0, max: 9, noNaN: true }),
          (days, d, h, more) => {
            const raised = days.map((day, i) => day.map((kWh, half) => (i === d && half === h ? kWh + more : kWh)));
            expect(demandOf(raised)[0]!.pence).toBeGreaterThanOrEqual(demandOf(days)[0]!.pence);
          },
        ),
        { numRuns: 20 },
      );
    });
  });
  test('an agreed power needs no readings', () => {
    const agreed = version([allHours(20)], { demand: { pencePerKWPerMonth: 310, agreedKW: 8 } });
    expect(bill(agreed, 0).lines.find(({ kind }) => kind === 'demand')!.pence).toBe(2480);
    expect(() => bill(version([allHours(20)], { demand: { pencePerKWPerMonth: 310 } }), 10)).toThrow(/half-hourly/);
  });
  test('export is taken off and bears no VAT', () => {
    const plain = version([allHours(20)], { vat: { rate: 0.05, included: false }, exportPencePerKWh: 15 });
    // 12.5 kWh × 20 p and two days at 50 p make 350 p, VAT 18 p (17.5 rounded up), less 10 × 15 p.
    const got = run(
      plain,
      daysOf('2026-01-05', 2, (day, half) => (day === 0 && half === 0 ? 12.5 : 0)),
      10,
    );
    expect(got).toMatchObject({ netPence: 200, vatPence: 18, totalPence: 218 });
  });
  test('each half-hour at its own price', () => {
    const dated = version([allHours(99)], { series: priceSeries('2026-01-05', 2, (day, half) => day * 10 + half) });
    // 96 half-hours of 0.1 kWh; sum of prices 2 × (0 + … + 47) + 48 × 10 = 2,736; and 2.9 kWh more at 46 p.
    const units = run(dated, use).lines.filter(({ kind }) => kind === 'units');
    expect(units.map(({ pence }) => pence)).toEqual([Math.round(273.6 + 2.9 * 46)]);
  });
  test('units in total cannot be priced by the half-hour', () => {
    expect(() => bill(version([allHours(20)], { series: priceSeries('2026-01-01', 31, () => 10) }), 5)).toThrow(
      /half-hourly/,
    );
  });
});

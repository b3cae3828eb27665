import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../../src/model/calendar/civil.ts';
import { recomputeBill } from '../../../src/model/tariff/recompute-bill.ts';
import { allHours, nightAndDay, tariff, version } from './tariffs.ts';

const zone = 'Europe/London';

describe('a flat bill', () => {
  test('with VAT in its prices', () => {
    const bill = recomputeBill({
      tariff: tariff([version([allHours(26.32)], { standingPencePerDay: 54.83 })]),
      from: '2026-10-01',
      to: '2026-11-01',
      zone,
      use: { kind: 'total', kWh: 412.5 },
    });
    // By hand: 412.5 × 26.32 = 10,857.00; 31 × 54.83 = 1,699.73 → 1,700; VAT in 12,557 = 12,557 / 21 = 597.95 → 598.
    expect(bill.lines.map(({ pence }) => pence)).toEqual([10_857, 1_700]);
    expect(bill).toMatchObject({ totalPence: 12_557, vatPence: 598, netPence: 11_959, sharedBy: 'readings' });
  });

  test('a half penny goes up: 12.5 kWh at 0.2 p is 2.5 p, charged as 3', () => {
    const bill = recomputeBill({
      tariff: tariff([version([allHours(0.2)], { standingPencePerDay: 0 })]),
      from: '2026-10-01',
      to: '2026-10-02',
      zone,
      use: { kind: 'total', kWh: 12.5 },
    });
    expect(bill.lines[0]!.pence).toBe(3);
  });
});

describe('a price change in the middle', () => {
  const twoPrices = tariff([
    version([allHours(25)], { standingPencePerDay: 50 }),
    version([allHours(30)], { from: '2026-04-01', standingPencePerDay: 60 }),
  ]);
  test('units read only at both ends are shared by days, and it says so', () => {
    const bill = recomputeBill({
      tariff: twoPrices,
      from: '2026-03-22',
      to: '2026-04-11',
      zone,
      use: { kind: 'total', kWh: 400 },
    });
    // 10 days of 20: 200 × 25 = 5,000; 10 × 50 = 500; 200 × 30 = 6,000; 10 × 60 = 600.
    expect(bill.lines.map(({ name, from, pence }) => [name, from, pence])).toEqual([
      ['all hours', '2026-03-22', 5000],
      ['10 days', '2026-03-22', 500],
      ['all hours', '2026-04-01', 6000],
      ['10 days', '2026-04-01', 600],
    ]);
    expect(bill).toMatchObject({ totalPence: 12_100, sharedBy: 'days' });
  });
  test('half-hourly readings are priced on the day they were used', () => {
    const days = Array.from({ length: 20 }, (_, i) => new Float64Array(i === 7 ? 46 : 48).fill(i < 10 ? 0.1 : 0.2));
    const bill = recomputeBill({
      tariff: twoPrices,
      from: '2026-03-22',
      to: '2026-04-11',
      zone,
      use: { kind: 'half-hours', readings: { first: '2026-03-22', days } },
    });
    // 29 March 2026 has 46 half-hours: 478 × 0.1 = 47.8 kWh at 25 p; 480 × 0.2 = 96 kWh at 30 p.
    expect(bill.lines.filter(({ kind }) => kind === 'units').map(({ pence }) => pence)).toEqual([1195, 2880]);
    expect(bill.sharedBy).toBe('readings');
  });
});

describe('night and day', () => {
  const two = tariff([version(nightAndDay)]);
  const day = (from: string, values: Float64Array) =>
    recomputeBill({
      tariff: two,
      from,
      to: addDays(from, 1),
      zone,
      use: { kind: 'half-hours', readings: { first: from, days: [values] } },
    });
  test.each([
    ['an ordinary day', '2026-02-03', 48, 14, 34],
    ['the spring day', '2026-03-29', 46, 12, 34],
    ['the autumn day', '2026-10-25', 50, 16, 34],
  ])('%s', (_, from, slots, night, rest) => {
    const bill = day(from, new Float64Array(slots).fill(1));
    expect(bill.lines.slice(0, 2).map(({ quantity }) => quantity)).toEqual([night, rest]);
  });
  test('missing half-hours are counted, not taken for zero in silence', () => {
    const values = new Float64Array(48).fill(1);
    values[3] = Number.NaN;
    expect(day('2026-02-03', values).missingSlots).toBe(1);
    expect(day('2026-02-04', values).lines[0]!.quantity).toBe(13);
  });
  test('a day of the wrong length is refused', () => {
    expect(() => day('2026-03-29', new Float64Array(48))).toThrow(/46 half-hours/);
  });
  test('units by band', () => {
    const bill = recomputeBill({
      tariff: two,
      from: '2026-02-01',
      to: '2026-03-01',
      zone,
      use: { kind: 'by-band', kWhByBand: { night: 100, day: 200 } },
    });
    expect(bill.totalPence).toBe(100 * 15 + 200 * 30 + 28 * 50);
  });
  test('a total alone, an unknown band and an empty span are refused', () => {
    const span = { tariff: two, from: '2026-02-01', to: '2026-03-01', zone };
    expect(() => recomputeBill({ ...span, use: { kind: 'total', kWh: 1 } })).toThrow(/several bands/);
    expect(() => recomputeBill({ ...span, use: { kind: 'by-band', kWhByBand: { peak: 1 } } })).toThrow(/named peak/);
    expect(() => recomputeBill({ ...span, to: '2026-02-01', use: { kind: 'total', kWh: 1 } })).toThrow(/no days/);
  });
});

/** Halves up, in whole numbers only. */
const roundDiv = (top: bigint, bottom: bigint) => (2n * top + bottom) / (2n * bottom);

test('invented bills worked out in whole numbers come to the same penny', () => {
  const bill = fc.record({
    milliKWh: fc.tuple(fc.integer({ min: 0, max: 9_000_000 }), fc.integer({ min: 0, max: 9_000_000 })),
    milliPence: fc.tuple(fc.integer({ min: 1000, max: 60_000 }), fc.integer({ min: 1000, max: 60_000 })),
    standingMilliPence: fc.integer({ min: 0, max: 100_000 }),
    days: fc.integer({ min: 1, max: 366 }),
    included: fc.boolean(),
    vatPerMille: fc.constantFrom(0, 50, 200),
  });
  fc.assert(
    fc.property(bill, ({ milliKWh, milliPence, standingMilliPence, days, included, vatPerMille }) => {
      const from = '2026-01-01';
      const prices = milliPence.map((p) => p / 1000);
      const got = recomputeBill({
        tariff: tariff([
          version(
            nightAndDay.map((band, i) => ({ ...band, pencePerKWh: prices[i]! })),
            { standingPencePerDay: standingMilliPence / 1000, vat: { rate: vatPerMille / 1000, included } },
          ),
        ]),
        from,
        to: addDays(from, days),
        zone,
        use: { kind: 'by-band', kWhByBand: { night: milliKWh[0] / 1000, day: milliKWh[1] / 1000 } },
      });
      const lines = milliKWh.map((kWh, i) => roundDiv(BigInt(kWh) * BigInt(milliPence[i]!), 1_000_000n));
      lines.push(roundDiv(BigInt(days) * BigInt(standingMilliPence), 1000n));
      const listed = lines.reduce((total, line) => total + line, 0n);
      const rate = BigInt(vatPerMille);
      const vat = included ? roundDiv(listed * rate, 1000n + rate) : roundDiv(listed * rate, 1000n);
      expect(got.lines.map(({ pence }) => BigInt(pence))).toEqual(lines);
      expect(BigInt(got.vatPence)).toBe(vat);
      expect(BigInt(got.totalPence)).toBe(included ? listed : listed + vat);
      expect(daysBetween(from, got.lines[0]!.to)).toBe(days);
    }),
    { numRuns: 500 },
  );
});

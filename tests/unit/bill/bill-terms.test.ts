/** The parts of a bill's check one by one, each sum by hand; whole bills stand in tests/outside. */
import { describe, expect, test } from 'vitest';
import { checkBillSums } from '../../../src/model/bill/check-bill-sums.ts';
import { compareRows, gapOf } from '../../../src/model/bill/compare-rows.ts';
import { agrees, energyOfUnits, meteredUnits, printedKWh } from '../../../src/model/bill/energy.ts';
import { bandFor, expectedTerms } from '../../../src/model/bill/recompute-lines.ts';
import { listSuspicions, withMeterKWh } from '../../../src/model/bill/suspicions.ts';
import { reckonTerms, unitPence } from '../../../src/model/bill/terms.ts';
import type { Bill } from '../../../src/model/shapes/bill.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import { allHours, tariff, version } from '../tariff/tariffs.ts';

const gas = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };
const close = (value: number, digits = 6) => expect.closeTo(value, digits);

/** Thirty days of day and night units, VAT on top, a discount before VAT and a charge after it. */
const BILL: Bill = {
  fuel: 'electricity',
  from: '2026-04-01',
  to: '2026-05-01',
  meterUnit: 'kWh',
  meters: [{ name: 'day' }, { name: 'night' }],
  charges: [
    { meter: 'day', kWh: 100, pencePerKWh: 28 },
    { meter: 'night', kWh: 200, pencePerKWh: 14 },
  ],
  standing: [{ pencePerDay: 60, days: 35 }],
  adjustments: [
    { kind: 'discount', name: 'direct debit', pence: 500, vat: 'before' },
    { kind: 'charge', name: 'late payment', pence: 100, vat: 'after' },
  ],
  vat: { included: false },
};
const twoRates = (from: string, day: number, night: number, standing: number) =>
  version(
    [
      { name: 'Night ', pencePerKWh: night, times: [{ from: '00:00', to: '07:00' }] },
      { name: 'DAY', pencePerKWh: day, times: 'rest' },
    ],
    { from, standingPencePerDay: standing, vat: { rate: 0.05, included: false } },
  );
const TARIFF = tariff([twoRates('2025-10-01', 30, 15, 50), twoRates('2026-04-01', 28, 14, 60)]);
const input = (bill: Bill = BILL, own?: Tariff) => ({ bill, gas, vatRate: 0.05, tariff: own });
const reckon = (bill: Bill = BILL, own?: Tariff) => reckonTerms(expectedTerms(input(bill, own)));

describe('energy of a meter', () => {
  test.each([
    ['the difference', { opening: 1200, closing: 1300 }, 100],
    ['nothing used', { opening: 1200, closing: 1200 }, 0],
    ['over its end of four digits', { opening: 9001, closing: 1 }, 1000],
    ['over its end with a half unit', { opening: 9999.5, closing: 0.5 }, 1],
    ['over its end of six digits', { opening: 990_000, closing: 10 }, 10_010],
    ['back from below nine tenths: no end passed', { opening: 9000, closing: 1 }, -8999],
    ['a counter has four digits at least', { opening: 950, closing: 20 }, -930],
    ['one reading only', { closing: 1300, metered: 70 }, 70],
    ['the other only', { opening: 1300, metered: 71 }, 71],
    ['none', {}, undefined],
  ])('%s', (_, meter, units) => expect(meteredUnits({ name: 'm', ...meter })).toBe(units));
  test.each([
    ['as it is', 'kWh', {}, 100],
    ['gas by the usual constants', 'm³', {}, (100 * 1.02264 * 39.5) / 3.6],
    ['gas by the bill’s', 'm³', { correction: 1.01, calorificMJPerM3: 38 }, (100 * 1.01 * 38) / 3.6],
    ['hundred cubic feet', 'hundred ft³', {}, (283 * 1.02264 * 39.5) / 3.6],
  ] as const)('%s', (_, meterUnit, change, kWh) => {
    expect(energyOfUnits({ ...BILL, meterUnit, ...change }, 100, gas)).toBeCloseTo(kWh, 9);
  });
  test.each([
    ['printed', { name: 'day', kWh: 7 }, BILL.charges, 7],
    ['of its lines', { name: 'day' }, [...BILL.charges, { meter: 'day', kWh: 11 }], 111],
    ['money over price', { name: 'day' }, [{ meter: 'day', pence: 2800, pencePerKWh: 28 }], 100],
    ['money without a price', { name: 'day' }, [...BILL.charges, { meter: 'day', pence: 2800 }], undefined],
    ['money at no price', { name: 'day' }, [{ meter: 'day', pence: 2800, pencePerKWh: 0 }], undefined],
    ['no money', { name: 'day' }, [{ meter: 'day', pencePerKWh: 28 }], undefined],
  ])('%s', (_, meter, charges, kWh) => expect(printedKWh({ ...BILL, charges: [...charges] }, meter)).toBe(kWh));
  test.each([
    [10, 10.5, 0, true],
    [10, 10.51, 0, false],
    [10, 9.49, 0, false],
    [10.2, 10.25, 0, true],
    [10.2, 10.251, 0, false],
    [10.25, 10.269, 0.02, true],
    [10.25, 10.271, 0.02, false],
    // No printed figure is read to more than six decimals.
    [1.1234567, 1.1234571, 0, true],
    [1.1234567, 1.1234597, 0, false],
  ])('%d printed for %d, %d allowed: %s', (printed, reckoned, least, isSame) => {
    expect(agrees(printed, reckoned, least)).toBe(isSame);
  });
});

describe('what a bill comes to', () => {
  test('lines 2,800 + 2,800 + 1,800 − 500 = 6,900 p, VAT 345 p, 100 p after it', () => {
    expect(reckon(BILL, TARIFF)).toEqual({
      units: [2800, 2800],
      standing: [1800],
      netPence: 6900,
      vatPence: 345,
      totalPence: 7345,
    });
  });
  test('VAT inside is a part of the same sum; twice it is laid on itself', () => {
    const terms = expectedTerms(input(BILL, TARIFF));
    // 6,900 × 5 / 105 = 328.57; (6,900 + 345) × 0.05 = 362.25.
    expect(reckonTerms({ ...terms, vat: 'inside' })).toMatchObject({ netPence: 6571, vatPence: 329, totalPence: 7000 });
    expect(reckonTerms({ ...terms, vat: 'twice' })).toMatchObject({ netPence: 6900, vatPence: 707, totalPence: 7707 });
  });
  test('a line of two prices shares its units by days, each rounded', () => {
    const line = { meter: 'm', from: '2026-01-01', to: '2026-02-01', kWh: 101 };
    const pieces = [10, 20].map((quantity, i) => ({ quantity, price: [30.03, 20.02][i]! }));
    expect(unitPence({ ...line, pieces })).toBe(1011 + 1348); // 33.667 × 30.03 = 1,011.01; 67.333 × 20.02 = 1,348.01
    expect(unitPence({ ...line, pieces: [{ quantity: 0, price: 30 }] })).toBe(3030);
  });
});

describe('terms', () => {
  const units = (change: Partial<Bill>, own?: Tariff) =>
    expectedTerms(input({ ...BILL, ...change }, own)).units.map(({ kWh }) => kWh);
  test.each([
    ['as printed', {}, [100, 200]],
    [
      'own readings before those of the bill',
      { meters: [{ name: 'day', opening: 0, closing: 90, ownKWh: 80 }, { name: 'night' }] },
      [80, 200],
    ],
    ['readings before units', { meters: [{ name: 'day', opening: 10, closing: 100 }, { name: 'night' }] }, [90, 200]],
    [
      'a figure rounded on the way stands',
      { meters: [{ name: 'day', opening: 0, closing: 99.985, kWh: 100.004 }, { name: 'night' }] },
      [100.004, 200],
    ],
    [
      'one further off does not',
      { meters: [{ name: 'day', opening: 0, closing: 99.9835, kWh: 100.004 }, { name: 'night' }] },
      [99.9835, 200],
    ],
    ['nothing known', { charges: [{ meter: 'day' }, { meter: 'night', kWh: 200 }] }, [0, 200]],
    [
      'lines of one meter in their own proportion',
      {
        meters: [{ name: 'day', kWh: 80 }],
        charges: [
          { meter: 'day', kWh: 0.3 },
          { meter: 'day', kWh: 0.1 },
        ],
      },
      [60, 20],
    ],
    [
      'else by days: ten and thirty',
      {
        meters: [{ name: 'day', kWh: 80 }],
        charges: [{ meter: 'day', to: '2026-04-11' }, { meter: 'day' }],
      },
      [20, 60],
    ],
  ] as [string, Partial<Bill>, number[]][])('units: %s', (_, change, kWh) => {
    expect(units(change)).toEqual(kWh.map((one) => close(one)));
  });
  test('a price without VAT on a bill with VAT, and the other way', () => {
    const priceOf = (included: boolean, own: Tariff) =>
      expectedTerms(input({ ...BILL, charges: [{ meter: 'day', kWh: 100 }], vat: { included } }, own)).units[0]!.pieces;
    const inIt = tariff([version([allHours(21)], { vat: { rate: 0.05, included: true } })]);
    const onTop = tariff([version([allHours(20)], { vat: { rate: 0.2, included: false } })]);
    expect(priceOf(true, inIt)).toEqual([{ quantity: 30, price: 21 }]);
    expect(priceOf(false, inIt)).toEqual([{ quantity: 30, price: close(20) }]);
    expect(priceOf(true, onTop)).toEqual([{ quantity: 30, price: close(24) }]);
    expect(priceOf(false, onTop)).toEqual([{ quantity: 30, price: 20 }]);
  });
  test('VAT at the tariff’s rate of the bill’s days; without a tariff what homes pay', () => {
    const own = tariff([
      version([allHours(20)], { from: '2026-01-01', vat: { rate: 0.2, included: false } }),
      version([allHours(20)], { from: '2026-04-02', vat: { rate: 0.05, included: false } }),
    ]);
    const bill = { ...BILL, charges: [{ meter: 'day', kWh: 100 }], adjustments: [], standing: [] };
    expect(expectedTerms(input(bill, own)).vatRate).toBe(0.2);
    // 100 units: a day at 20 p and 29 days at 20 p, and VAT of 20 %.
    expect(reckon(bill, own)).toMatchObject({ netPence: 2000, vatPence: 400, totalPence: 2400 });
    expect(expectedTerms({ ...input(bill), vatRate: 0.125 }).vatRate).toBe(0.125);
  });
  test.each([
    ['within rounding the bill’s own', 28.0057, 28.0057],
    ['further off the tariff’s', 28.0063, 28],
  ])('a printed price: %s', (_, printed, price) => {
    const charges = [{ meter: 'day', kWh: 100, pencePerKWh: printed }];
    const { units, standing } = expectedTerms(
      input({ ...BILL, charges, standing: [{ pencePerDay: printed + 32 }] }, TARIFF),
    );
    expect(units[0]!.pieces[0]!.price).toBe(price);
    expect(standing[0]!.pieces[0]!.price).toBeCloseTo(price + 32, 9);
  });
  test('a line is cut where a version begins, and only inside its days', () => {
    const own = tariff([
      twoRates('2026-04-01', 28, 14, 60),
      twoRates('2026-05-01', 33, 14, 66),
      twoRates('2026-04-21', 31, 14, 62),
      twoRates('2026-04-11', 29, 14, 61),
    ]);
    const charges = [
      { meter: 'day', kWh: 90 },
      { meter: 'day', kWh: 1, from: '2026-04-11', to: '2026-04-13' },
    ];
    const { units, standing } = expectedTerms(input({ ...BILL, charges }, own));
    expect(units.map(({ pieces }) => pieces)).toEqual([
      [28, 29, 31].map((price) => ({ quantity: 10, price })),
      [{ quantity: 2, price: 29 }],
    ]);
    expect(standing[0]!.pieces).toEqual([60, 61, 62].map((price) => ({ quantity: 10, price })));
  });
  test('a band of the meter’s name, or the only one; none where the price hangs on more than the register', () => {
    const [one] = TARIFF.versions;
    expect(bandFor(one!, ' day')!.pencePerKWh).toBe(30);
    expect(bandFor(one!, 'NIGHT')!.pencePerKWh).toBe(15);
    expect(bandFor(one!, 'all hours')).toBeUndefined();
    expect(bandFor(version([allHours(21)]), 'day')!.pencePerKWh).toBe(21);
    // Then the bill's own price stands for all of the line.
    const charges = [{ meter: 'evening', kWh: 10, pencePerKWh: 44 }];
    expect(expectedTerms(input({ ...BILL, charges }, TARIFF)).units[0]!.pieces).toEqual([{ quantity: 30, price: 44 }]);
    const half = tariff([twoRates('2025-10-01', 30, 15, 50), version([allHours(28)], { from: '2026-04-11' })]);
    expect(expectedTerms(input({ ...BILL, charges }, half)).units[0]!.pieces).toHaveLength(1);
    expect(expectedTerms(input({ ...BILL, charges: [{ meter: 'evening' }] })).units[0]!.pieces[0]!.price).toBe(0);
  });
});

describe('standing charge', () => {
  const byMonth = (from: string, month: number, day = 0) =>
    version([allHours(20)], {
      from,
      standingPencePerDay: day,
      standingPencePerMonth: month,
      vat: { rate: 0.05, included: false },
    });
  const span = { from: '2026-01-15', to: '2026-03-15' };
  const standing = (line: Bill['standing'][number], own?: Tariff) => {
    const bill = { ...BILL, ...span, charges: [{ meter: 'day', kWh: 0 }], standing: [line] };
    const terms = expectedTerms(input(bill, own));
    return { term: terms.standing[0]!, rows: compareRows(bill, terms), pence: reckonTerms(terms).standing[0]! };
  };
  test.each([
    ['without a tariff at its own price', { pencePerDay: 50 }, undefined, 2950], // 59 days
    ['of its own days', { pencePerDay: 50, from: '2026-02-01', to: '2026-02-11' }, undefined, 500],
    ['without a price its own money', { pence: 2950 }, undefined, 2950],
    ['and its own count of days', { pence: 3000, days: 60 }, undefined, 2950],
    ['nothing printed', {}, undefined, 0],
    // 17 of 31 days, February, 14 of 31: 2 months.
    ['by the month', {}, tariff([byMonth('2026-01-01', 1500)]), 3000],
    // 17/31 of 1,500 p, then a month and 14/31 of 1,860 p: 822.58 and 2,700 p.
    [
      'by the month, dearer from February',
      {},
      tariff([byMonth('2026-01-01', 1500), byMonth('2026-02-01', 1860)]),
      3523,
    ],
    // 17 days at 1,500 × 12 / 365 = 49.315 p and 42 days at 50 p: 838.36 and 2,100 p.
    [
      'by the month, then by the day',
      {},
      tariff([
        byMonth('2026-01-01', 1500),
        version([allHours(20)], { from: '2026-02-01', vat: { rate: 0.05, included: false } }),
      ]),
      2938,
    ],
  ] as [string, Bill['standing'][number], Tariff | undefined, number][])('%s', (_, line, own, pence) => {
    expect(standing(line, own).pence).toBe(pence);
  });
  test('by the month its row counts days, its money months', () => {
    const { term, rows } = standing({ days: 58, pence: 3100 }, tariff([byMonth('2026-01-01', 1500)]));
    expect(term.unit).toBe('month');
    expect(rows.filter(({ kind }) => kind === 'days' || kind === 'standing')).toMatchObject([
      { unit: 'day', printed: 58, reckoned: 59, difference: -1 },
      { unit: 'p', printed: 3100, reckoned: 3000, difference: 100, quantity: close(2), per: 'month' },
    ]);
    const byDay = standing({ days: 58 }, tariff([version([allHours(20)])]));
    expect(byDay.rows.find(({ kind }) => kind === 'days')).toMatchObject({ printed: 58, reckoned: 59 });
    expect(byDay.rows.find(({ kind }) => kind === 'standing')).toMatchObject({ quantity: 59, per: 'day' });
  });
});

test('rows say what is printed and what it comes to; the gap counts lines of money that are printed', () => {
  const bill: Bill = {
    ...BILL,
    charges: [{ ...BILL.charges[0]!, pence: 2810 }, BILL.charges[1]!],
    meters: [{ name: 'day', kWh: 101 }, { name: 'night' }],
    standing: [{ pencePerDay: 60, pence: 1795 }],
    vat: { included: false, pence: 340 },
    netPence: 6800,
    totalPence: 7350,
  };
  const rows = compareRows(bill, expectedTerms(input(bill, TARIFF)));
  expect(
    rows.map(({ kind, unit, printed, reckoned, difference }) => [kind, unit, printed, reckoned, difference]),
  ).toEqual([
    ['energy', 'kWh', 101, 101, 0],
    ['energy', 'kWh', 200, 200, 0],
    ['units', 'p', 2810, 2828, -18],
    ['units', 'p', undefined, 2800, undefined],
    ['standing', 'p', 1795, 1800, -5],
    ['adjustment', 'p', -500, -500, 0],
    ['adjustment', 'p', 100, 100, 0],
    ['net', 'p', 6800, 6928, -128],
    ['vat', 'p', 340, 346, -6],
    ['total', 'p', 7350, 7374, -24],
  ]);
  expect(gapOf(rows)).toEqual({ total: 24, lines: 18 + 5 + 6, count: 3 });
  expect(gapOf(rows.slice(0, 4))).toEqual({ total: 0, lines: 18, count: 1 });
});

describe('what may have gone wrong, each reckoned anew', () => {
  /** Code, data, the pence of the unit lines and of the whole, as each would make them. */
  const suspected = (bill: Bill, own?: Tariff) => {
    const expected = expectedTerms(input(bill, own));
    return listSuspicions(input(bill, own), expected).map(({ code, data, change }) => {
      const { units, totalPence } = reckonTerms(change(expected));
      return [code, data, units, totalPence];
    });
  };
  const OLD = { versionFrom: '2025-10-01', newerFrom: '2026-04-01' };
  const NEW = { versionFrom: '2026-04-01' };
  test('VAT on top', () => {
    expect(suspected({ ...BILL, vat: { included: false, rate: 0.175 } }, TARIFF)).toEqual([
      ['old-rate', { ...OLD, part: 'units' }, [3000, 3000], 7765], // (6,000 + 1,800 − 500) × 1.05 + 100
      ['old-rate', { ...OLD, part: 'standing' }, [2800, 2800], 7030], // (5,600 + 1,500 − 500) × 1.05 + 100
      ['old-rate', { ...OLD, part: 'all' }, [3000, 3000], 7450],
      ['rate-too-early', { ...NEW, part: 'units' }, [2800, 2800], 7345],
      ['rate-too-early', { ...NEW, part: 'standing' }, [2800, 2800], 7345],
      ['rate-too-early', { ...NEW, part: 'all' }, [2800, 2800], 7345],
      ['registers-swapped', { first: 'day', second: 'night' }, [5600, 1400], 8815], // (7,000 + 1,800 − 500) × 1.05 + 100
      ['registers-swapped', { first: 'day', second: 'night' }, [1400, 5600], 8815],
      ['vat-rate', { rate: 0, expected: 0.05 }, [2800, 2800], 7000],
      ['vat-rate', { rate: 0.2, expected: 0.05 }, [2800, 2800], 8380],
      ['vat-rate', { rate: 0.175, expected: 0.05 }, [2800, 2800], 8208], // 6,900 × 0.175 = 1,207.5
      ['vat-twice', { rate: 0.05 }, [2800, 2800], 7707],
      ['vat-order', {}, [2800, 2800], 7375], // (7,400 + 100) × 1.05 − 500
      ['standing-days', { days: 31, expected: 30 }, [2800, 2800], 7408], // 60 × 1.05 more
      ['standing-days', { days: 29, expected: 30 }, [2800, 2800], 7282],
      ['standing-days', { days: 35, expected: 30 }, [2800, 2800], 7660],
      ['discount-missing', { name: 'direct debit', pence: 500 }, [2800, 2800], 7870],
    ]);
  });
  test('VAT in the prices: at another rate each price without it, at that rate', () => {
    const inIt = { ...BILL, vat: { included: true }, standing: [{ pencePerDay: 60 }] };
    const vat = suspected(inIt).filter(([code]) => String(code).startsWith('vat'));
    expect(vat).toEqual([
      // 28 / 1.05 × 100, 14 / 1.05 × 200, 60 / 1.05 × 30: 2,667 + 2,667 + 1,714 − 500 + 100.
      ['vat-rate', { rate: 0, expected: 0.05 }, [2667, 2667], 6648],
      // 32 p, 16 p and 68.571 p: 3,200 + 3,200 + 2,057 − 500 + 100.
      ['vat-rate', { rate: 0.2, expected: 0.05 }, [3200, 3200], 8057],
      ['vat-twice', { rate: 0.05 }, [2800, 2800], 7345],
    ]);
    const none = { ...input(inIt), vatRate: 0 };
    expect(listSuspicions(none, expectedTerms(none)).map(({ code }) => code)).not.toContain('vat-twice');
    const bare = { ...BILL, adjustments: [] };
    expect(suspected(bare).map(([code]) => code)).not.toContain('vat-order');
  });
  test('with one version no other prices, with four the next newer one', () => {
    const codes = (own: Tariff) =>
      suspected(BILL, own).filter(([code]) => /rate$|early/.test(String(code)) && code !== 'vat-rate');
    expect(codes(tariff([twoRates('2025-10-01', 30, 15, 50)]))).toEqual([]);
    const four = tariff([
      twoRates('2026-04-21', 33, 16, 65),
      twoRates('2025-01-01', 30, 15, 50),
      twoRates('2026-04-11', 31, 15, 61),
      twoRates('2026-05-01', 40, 20, 70),
    ]);
    expect(codes(four).map(([code, data]) => [code, (data as { newerFrom?: string }).newerFrom])).toEqual([
      ...new Array(3).fill(['old-rate', undefined]),
      ...new Array(3).fill(['old-rate', '2026-04-11']),
      ...new Array(3).fill(['rate-too-early', '2026-04-21']),
      ...new Array(3).fill(['rate-too-early', undefined]),
    ]);
  });
  test('a price printed with rounding stands for the version’s', () => {
    const charges = [{ meter: 'day', kWh: 1000, pencePerKWh: 30.0057 }];
    const bill = { ...BILL, charges, standing: [], adjustments: [] };
    expect(suspected(bill, TARIFF)[0]!.slice(2)).toEqual([[30_006], 31_506]);
    const far = { ...bill, charges: [{ ...charges[0]!, pencePerKWh: 30.0063 }] };
    expect(suspected(far, TARIFF)[0]!.slice(2)).toEqual([[30_000], 31_500]);
    const other = { ...bill, charges: [{ ...charges[0]!, meter: 'evening' }] };
    expect(suspected(other, TARIFF)[0]!.slice(2)).toEqual([[30_006], 31_506]);
  });
  test('a standing charge by the month has no days to be wrong, but may be an old one', () => {
    const monthly = (from: string, month: number, day = 0) =>
      version([allHours(20)], {
        from,
        standingPencePerDay: day,
        standingPencePerMonth: month,
        vat: { rate: 0.05, included: false },
      });
    const codes = (own: Tariff) =>
      suspected(BILL, own).map(([code, data, , total]) => [code, (data as { part?: string }).part, total]);
    const own = tariff([monthly('2025-10-01', 1400), monthly('2026-04-01', 1500)]);
    expect(codes(own).map(([code]) => code)).not.toContain('standing-days');
    // April: 300 units at 20 p and 1,400 p for 1,500: (6,000 + 1,400 − 500) × 1.05 + 100.
    expect(codes(own)).toContainEqual(['old-rate', 'standing', 7345]);
    // By the day before: 30 days at 50 p for what is now 1,500 p a month; a twelfth of 365 days at 50 p are 1,521 p.
    const daily = tariff([
      version([allHours(20)], { from: '2025-10-01', vat: { rate: 0.05, included: false } }),
      monthly('2026-04-01', 1500),
    ]);
    expect(codes(daily)).toContainEqual(['old-rate', 'standing', 7472]); // 7,021 × 1.05 = 7,372.05
    // By the month before: 1,460 × 12 / 365 = 48 p a day.
    const byDay = tariff([
      monthly('2025-10-01', 1460),
      version([allHours(20)], { from: '2026-04-01', vat: { rate: 0.05, included: false } }),
    ]);
    expect(codes(byDay)).toContainEqual(['old-rate', 'standing', 7387]); // (6,000 + 1,440 − 500) × 1.05 + 100
  });
  test('a day more or fewer is laid on the last price; a day of one leaves none', () => {
    const twoPrices = { ...BILL, from: '2026-03-22', to: '2026-04-11', standing: [{}] };
    // Ten days at 50 p and ten at 60 p; a day more is one at 60 p.
    const [more, less] = suspected(twoPrices, TARIFF).filter(([code]) => code === 'standing-days');
    const right = reckon(twoPrices, TARIFF);
    expect(right.standing).toEqual([1100]);
    expect([more![3], less![3]]).toEqual([right.totalPence + 63, right.totalPence - 63]);
    const asPrinted = suspected({ ...BILL, standing: [{ pencePerDay: 60, days: 30 }] });
    expect(
      asPrinted.filter(([code]) => code === 'standing-days').map(([, data]) => (data as { days: number }).days),
    ).toEqual([31, 29]);
    const oneDay = suspected({ ...BILL, to: '2026-04-02', standing: [{ pencePerDay: 60 }] });
    expect(oneDay.filter(([code]) => code === 'standing-days').map(([, data]) => data)).toEqual([
      { days: 2, expected: 1 },
      { days: 0, expected: 1 },
    ]);
  });
  test.each([
    ['an estimate', { closingKind: 'estimated' }, 'estimated-reading'],
    ['an estimate at the beginning', { openingKind: 'estimated' }, 'estimated-reading'],
    ['a reading', { closingKind: 'actual', openingKind: 'customer' }, 'reading-differs'],
  ] as const)('own readings beside %s', (_, kinds, code) => {
    const bill = { ...BILL, meters: [{ name: 'day', ownKWh: 80, ...kinds }, { name: 'night' }] };
    expect(suspected(bill)[0]).toEqual([
      code,
      { meter: 'day', billedKWh: 100, ownKWh: 80 },
      [2800, 2800],
      reckon().totalPence,
    ]);
    const byReading = {
      ...bill,
      meters: [{ ...bill.meters[0]!, opening: 0, closing: 90 }],
      charges: [{ meter: 'day' }],
    };
    expect(suspected(byReading)[0]!.slice(0, 2)).toEqual([code, { meter: 'day', billedKWh: 90, ownKWh: 80 }]);
    const unread = { ...bill, charges: [{ meter: 'night', kWh: 1 }] };
    expect(suspected(unread).map((one) => one[0])).toContain(code);
  });
  test('units that do not follow from the readings', () => {
    const read = (closing: number) => ({
      ...BILL,
      meters: [{ name: 'day', opening: 0, closing, kWh: 100.004 }, { name: 'night' }],
    });
    expect(suspected(read(99.9835))[0]!.slice(0, 2)).toEqual([
      'units-not-from-readings',
      { meter: 'day', billedKWh: 100.004, readKWh: 99.9835 },
    ]);
    expect(suspected(read(99.985)).map(([code]) => code)).not.toContain('units-not-from-readings');
  });
  test('gas: another calorific value, no correction, another unit', () => {
    // 100 m³ × 1.02264 × 39.3 / 3.6 = 1,116.38 kWh; at 38.0 MJ 1,079.45; without correction 1,091.67; as hundred
    // cubic feet 3,159.36. At 5 p, VAT on top.
    const gasBill = (kWh: number | undefined, change: Partial<Bill> = {}): Bill => ({
      ...BILL,
      fuel: 'gas',
      meterUnit: 'm³',
      calorificMJPerM3: 39.3,
      meters: [{ name: 'gas', opening: 500, closing: 600, ...(kWh !== undefined && { kWh }) }],
      charges: [{ meter: 'gas', pencePerKWh: 5 }],
      standing: [],
      adjustments: [],
      ...change,
    });
    const ofGas = (bill: Bill) =>
      suspected(bill).filter(([code]) => /calorific|correction|meter-unit/.test(String(code)));
    expect(ofGas(gasBill(1079.45))).toEqual([
      ['calorific-value', { meter: 'gas', used: 38, printed: 39.3 }, [5397], 5667],
      ['correction-missing', { meter: 'gas', correction: 1.02264 }, [5458], 5731],
      ['meter-unit', { meter: 'gas', used: 'hundred ft³', printed: 'm³' }, [15_797], 16_587],
    ]);
    const feet = ofGas(gasBill(undefined, { meterUnit: 'hundred ft³', correction: 1 }));
    expect(feet.map(([code, data]) => [code, data])).toEqual([
      ['correction-missing', { meter: 'gas', correction: 1 }],
      ['meter-unit', { meter: 'gas', used: 'm³', printed: 'hundred ft³' }],
    ]);
    const atMJ = (value: number) =>
      ofGas(gasBill((100 * 1.02264 * value) / 3.6)).some(([code]) => code === 'calorific-value');
    expect([34.9, 35.1, 39.34, 39.36, 43.4, 43.6].map(atMJ)).toEqual([false, true, false, true, true, false]);
    expect(ofGas(gasBill(1079.45, { meters: [{ name: 'gas', opening: 600, closing: 600, kWh: 5 }] }))).toEqual([]);
    expect(ofGas(gasBill(1079.45, { meters: [{ name: 'gas', kWh: 5 }] }))).toEqual([]);
    expect(ofGas(gasBill(1079.45, { meterUnit: 'kWh' }))).toEqual([]);
    // Printed figures rounded on the way stand for the reckoned ones: 1,091.686 kWh for 1,091.667,
    // 0.019 off; 0.021 are too many.
    const rounded = suspected(gasBill(1091.686, { charges: [{ meter: 'gas', pencePerKWh: 500 }] }));
    expect(rounded.find(([code]) => code === 'correction-missing')![2]).toEqual([545_843]);
    const apart = suspected(gasBill(1091.688, { charges: [{ meter: 'gas', pencePerKWh: 500 }] }));
    expect(apart.find(([code]) => code === 'correction-missing')![2]).toEqual([545_833]);
  });
  test('units of a meter set anew keep the proportion of its lines; from nothing they are shared', () => {
    const terms = expectedTerms(input({ ...BILL, charges: [...BILL.charges, { meter: 'day', kWh: 300 }] }));
    const kWhOf = (list: typeof terms) => list.units.map(({ kWh }) => kWh);
    expect(kWhOf(withMeterKWh(terms, 'day', 40))).toEqual([10, 200, 30]);
    const empty = { ...terms, units: terms.units.map((unit) => ({ ...unit, kWh: 0 })) };
    expect(kWhOf(withMeterKWh(empty, 'day', 40))).toEqual([20, 0, 20]);
  });
});

describe('what explains a difference', () => {
  /** The bill with 5 pounds after VAT that should have come off, and only its total printed. */
  const bill: Bill = {
    ...BILL,
    adjustments: [{ kind: 'credit', name: 'brought forward', pence: 500, vat: 'after' }],
    standing: [{ pencePerDay: 60 }],
  };
  const right = 7770 - 500; // (5,600 + 1,800) × 1.05 − 500
  const check = (totalPence: number | undefined, change: Partial<Bill> = {}) =>
    checkBillSums({
      bill: { ...bill, ...(totalPence !== undefined && { totalPence }), ...change },
      gas,
      vatRate: 0.05,
    });
  const missing = (over: number) =>
    check(right + 500 + over).explanations.find(({ causes }) => causes[0]!.code === 'discount-missing');
  test('a penny agrees, two do not', () => {
    expect([0, 1, -1, 2, -2].map((off) => check(right + off).agrees)).toEqual([true, true, true, false, false]);
    expect(check(right + 2)).toMatchObject({ printedPence: right + 2, reckonedPence: right, differencePence: 2 });
    expect(check(undefined)).toMatchObject({ agrees: true, reckonedPence: right, explanations: [] });
    expect(check(undefined)).not.toHaveProperty('printedPence');
    expect(check(undefined)).not.toHaveProperty('differencePence');
  });
  test.each([
    [0, 'whole', 0],
    [1, 'whole', 1],
    [2, 'most', 2],
    [120, 'most', 120], // 120 of 620 p are left
    [125, 'most', 125], // a fifth of 625 p
    [130, undefined, undefined], // 130 of 630 p
    [-120, undefined, undefined], // 120 of 380 p
  ])('%d p beside it: %s', (over, reach, left) => {
    expect([missing(over)?.reach, missing(over)?.leftPence]).toEqual([reach, left]);
  });
  test('each cause once, three at most, the closest first', () => {
    const many = check(right + 63, {}).explanations;
    expect(many[0]).toMatchObject({ causes: [{ code: 'standing-days', data: { days: 31 } }], reach: 'whole' });
    for (let over = -700; over <= 3000; over += 50) {
      const { explanations } = check(right + over);
      expect(explanations.length).toBeLessThanOrEqual(3);
      const lefts = explanations.map(({ leftPence }) => leftPence);
      expect(lefts).toEqual(lefts.toSorted((a, b) => a - b));
      expect(new Set(explanations.map(({ causes }) => causes[0]!.code)).size).toBe(explanations.length);
      if (explanations.some(({ reach }) => reach === 'whole'))
        expect(explanations.every(({ reach }) => reach === 'whole')).toBe(true);
    }
  });
  test('of four that close most the three that leave least', () => {
    // Read 63 of the 100 units of the day, and so (1,764 + 2,800 + 1,800) × 1.05 − 1,000 = 5,682 p; printed 1,090 more.
    const four = check(5682 + 1090, {
      meters: [{ name: 'day', opening: 0, closing: 63, kWh: 100 }, { name: 'night' }],
      standing: [{ pencePerDay: 60, days: 47 }], // 17 days too many: 1,071 p
      adjustments: [{ kind: 'credit', name: 'brought forward', pence: 1000, vat: 'after' }],
    });
    expect(four.explanations.map(({ causes, reach, leftPence }) => [causes[0]!.code, reach, leftPence])).toEqual([
      ['units-not-from-readings', 'most', 2],
      ['standing-days', 'most', 19],
      ['discount-missing', 'most', 90], // VAT at 20 % leaves 135
    ]);
  });
  test('two of one kind are not put together', () => {
    const adjustments = [700, 300].map((pence) => ({
      kind: 'credit' as const,
      name: `${pence} p`,
      pence,
      vat: 'after' as const,
    }));
    const charges = BILL.charges.map((charge) => ({ ...charge, pence: 2800 }));
    expect(
      check(7770, { adjustments, charges }).explanations.map(({ causes }) => causes.map(({ code }) => code)),
    ).not.toContainEqual(['discount-missing', 'discount-missing']);
  });
  test('lines a penny off each agree; a line that is wrong while the total agrees is looked into', () => {
    const lines = (day: number, night: number) =>
      check(right, {
        charges: [
          { ...BILL.charges[0]!, pence: day },
          { ...BILL.charges[1]!, pence: night },
        ],
      });
    expect(lines(2801, 2799).agrees).toBe(true);
    expect(lines(2802, 2799).agrees).toBe(false);
    const swapped = lines(1400, 5600);
    expect(swapped.agrees).toBe(false);
    expect(lines(1400, 4200).explanations).toEqual([]);
  });
  test('two causes together only where at least two lines are printed', () => {
    // A day of standing charge too many (63 p) and the credit forgotten (500 p).
    const both = (standing: Bill['standing'][number], charges: Bill['charges']) =>
      check(right + 563, { standing: [standing], charges }).explanations.map(({ causes }) =>
        causes.map(({ code }) => code),
      );
    const [day, night] = BILL.charges as [Bill['charges'][number], Bill['charges'][number]];
    const standing = { pencePerDay: 60, pence: 1860 };
    expect(both(standing, [{ ...day, pence: 2800 }, night])).toEqual([['standing-days', 'discount-missing']]);
    expect(both(standing, [day, night]).every((causes) => causes.length === 1)).toBe(true);
  });
  test('that units do not follow from the readings gives way to what says why', () => {
    const meters = [
      { name: 'day', opening: 0, closing: 200, kWh: 100 },
      { name: 'night', opening: 0, closing: 100, kWh: 200 },
    ];
    const codes = (printed: number, change: Partial<Bill>) =>
      check(printed, { meters, ...change }).explanations.map(({ causes }) => causes.map(({ code }) => code).join(' '));
    // Read 200 and 100: 5,600 + 1,400 + 1,800 = 8,800 × 1.05 − 500 = 8,740; billed the other way 7,270.
    expect(codes(7270, {})[0]).toBe('registers-swapped');
    expect(codes(7270, {})).not.toContain('units-not-from-readings');
  });
});

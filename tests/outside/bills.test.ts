import { describe, expect, test } from 'vitest';
import { checkBillSums } from '../../src/model/bill/check-bill-sums.ts';
import { energyOfUnits } from '../../src/model/bill/energy.ts';
import { addDays, daysBetween } from '../../src/model/calendar/civil.ts';
import type { Bill, BillAdjustment, BillMeter } from '../../src/model/shapes/bill.ts';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { gasKWh, times, vatIn, vatOn } from './pennies.ts';

const GAS = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };
const check = (bill: Bill, tariff?: Tariff) => checkBillSums({ bill, gas: GAS, vatRate: 0.05, tariff });
const BARE: Bill = {
  fuel: 'gas',
  from: '2026-01-01',
  to: '2026-04-01',
  meterUnit: 'm³',
  meters: [{ name: 'gas' }],
  charges: [{ meter: 'gas' }],
  standing: [],
  adjustments: [],
  vat: { included: true },
};

describe('gas volume to energy, by the sum of the regulation', () => {
  // Gas (Calculation of Thermal Energy) Regulations 1996: units × (2.83) × 1.02264 × calorific value ÷ 3.6.
  test.each([
    [100, 'm³', 39.3, 1116.382, 0.001, 'guide of an energy consultant'],
    [100, 'hundred ft³', 39.3, 3159.361, 0.001, 'guide of an energy consultant'],
    [100, 'm³', 38.0, 1079.45, 0.005, 'help page of a gas supplier'],
    [145, 'hundred ft³', 39.7, 4627.7, 0.015, 'consumer guide, which prints 4627.69 after rounding on the way'],
  ] as const)(
    '%d %s at %d MJ/m³ are %d kWh within %d (%s)',
    (...[units, meterUnit, calorificMJPerM3, kWh, tolerance]) => {
      const bill = { ...BARE, meterUnit, calorificMJPerM3 };
      expect(Math.abs(energyOfUnits(bill, units, GAS) - kWh)).toBeLessThanOrEqual(tolerance);
      const whole = check({ ...bill, meters: [{ name: 'gas', opening: 1200, closing: 1200 + units }] });
      expect(whole.rows[0]!.reckoned).toBeCloseTo(energyOfUnits(bill, units, GAS), 9);
    },
  );
  test('a bill that prints the rounded 4627.69 kWh is not called wrong', () => {
    const bill: Bill = {
      ...BARE,
      meterUnit: 'hundred ft³',
      calorificMJPerM3: 39.7,
      meters: [{ name: 'gas', opening: 0, closing: 145, kWh: 4627.69 }],
      charges: [{ meter: 'gas', kWh: 4627.69, pencePerKWh: 5.74, pence: 26_563 }],
      totalPence: 26_563,
    };
    expect(check(bill)).toMatchObject({ agrees: true, differencePence: 0 });
  });
});

describe('the published typical bills of the price cap', () => {
  // Ofgem default tariff cap by quarter, Great Britain average, direct debit, VAT in it; within £1.50, since it is
  // rounded by region before it is averaged: electricity p/kWh, p/day, gas p/kWh, p/day, kWh, kWh, published £ a year.
  test.each([
    ['2023 October to December', 27.35, 53.37, 6.89, 29.62, 2700, 11_500, 1834],
    ['2024 January to March', 28.62, 53.35, 7.42, 29.6, 2700, 11_500, 1928],
    ['2024 April to June', 24.5, 60.1, 6.04, 31.43, 2700, 11_500, 1690],
    ['2024 July to September', 22.36, 60.12, 5.48, 31.41, 2700, 11_500, 1568],
    ['2025 April to June', 27.03, 53.8, 6.99, 32.67, 2700, 11_500, 1849],
    ['2026 January to March', 27.69, 54.75, 5.93, 35.09, 2700, 11_500, 1758],
    ['2026 April to June', 24.67, 57.21, 5.74, 29.09, 2700, 11_500, 1641],
    ['2026 October to December', 26.32, 54.83, 7.97, 29.68, 2500, 9500, 1723],
  ])('%s', (_, electricity, electricityDay, gas, gasDay, electricityKWh, gasKWhUsed, pounds) => {
    const yearBill = (kWh: number, pencePerKWh: number, pencePerDay: number) =>
      check({
        ...BARE,
        meterUnit: 'kWh',
        from: '2026-01-01',
        to: '2027-01-01',
        meters: [{ name: 'gas', kWh }],
        charges: [{ meter: 'gas', pencePerKWh }],
        standing: [{ pencePerDay }],
      }).reckonedPence / 100;
    const total = yearBill(electricityKWh, electricity, electricityDay) + yearBill(gasKWhUsed, gas, gasDay);
    expect(Math.abs(total - pounds)).toBeLessThanOrEqual(1.5);
  });
});

test('VAT inside a year of gas: 12,000 kWh at 7.97 p and 365 days at 29.68 p', () => {
  const { rows } = check({
    ...BARE,
    meterUnit: 'kWh',
    to: '2027-01-01',
    meters: [{ name: 'gas', kWh: 12_000 }],
    charges: [{ meter: 'gas', pencePerKWh: 7.97 }],
    standing: [{ pencePerDay: 29.68 }],
  });
  const pence = Object.fromEntries(rows.map(({ kind, reckoned }) => [kind, reckoned]));
  // VAT Notice 701/19: 5 % on domestic fuel; the sum by hand: 956.40 + 108.33 = 1064.73, 1014.03 without VAT, VAT 50.70.
  expect(pence).toMatchObject({ units: 95_640, standing: 10_833, net: 101_403, vat: 5070, total: 106_473 });
});

test('31.62 p without VAT is 33.20 p with it', () => {
  // Energy Price Guarantee, April 2023: 31.62 p without VAT, 33.2 p with it, both published.
  const plain: Bill = { ...BARE, meterUnit: 'kWh', meters: [{ name: 'gas', kWh: 1000 }], vat: { included: false } };
  const { reckonedPence } = check({ ...plain, charges: [{ meter: 'gas', pencePerKWh: 31.62 }] });
  expect(reckonedPence).toBe(33_201);
});

/** An invented bill in writing; every penny of it is reckoned in whole numbers. */
interface Written {
  readonly name: string;
  readonly from: string;
  readonly days: number;
  readonly lines: readonly (readonly [meter: string, kWh: string, price: string])[];
  readonly standing: string;
  readonly vat: 'in' | 'out';
  readonly percent?: bigint;
  readonly adjust?: readonly BillAdjustment[];
}

function pennies(written: Written, days = written.days) {
  const { lines, standing, vat, percent = 5n, adjust = [] } = written;
  const units = lines.map(([, kWh, price]) => times(kWh, price));
  const standingPence = times(String(days), standing);
  const signed = (one: BillAdjustment) => BigInt(one.kind === 'charge' ? one.pence : -one.pence);
  const of = (side: BillAdjustment['vat']) => adjust.filter((one) => one.vat === side).map(signed);
  const all = [...units, standingPence, ...of('before')].reduce((sum, one) => sum + one, 0n);
  const after = of('after').reduce((sum, one) => sum + one, 0n);
  const vatPence = vat === 'out' ? vatOn(all, percent) : vatIn(all, percent);
  return { units, standingPence, all, vatPence, total: all + (vat === 'out' ? vatPence : 0n) + after };
}

/** The bill that prints all of these pennies. */
function printed(written: Written, change: Partial<Bill> = {}): Bill {
  const { units, standingPence, vatPence, total } = pennies(written);
  const to = addDays(written.from, written.days);
  return {
    fuel: 'electricity',
    from: written.from,
    to,
    meterUnit: 'kWh',
    meters: [...new Set(written.lines.map(([meter]) => meter))].map((name): BillMeter => ({ name })),
    charges: written.lines.map(([meter, kWh, price], i) => ({
      meter,
      kWh: Number(kWh),
      pencePerKWh: Number(price),
      pence: Number(units[i]!),
    })),
    standing: [{ days: written.days, pencePerDay: Number(written.standing), pence: Number(standingPence) }],
    adjustments: [...(written.adjust ?? [])],
    vat: { included: written.vat === 'in', rate: Number(written.percent ?? 5n) / 100, pence: Number(vatPence) },
    totalPence: Number(total),
    ...change,
  };
}

const discount = (pence: number, vat: BillAdjustment['vat'] = 'before'): BillAdjustment => ({
  kind: 'discount',
  name: 'direct debit',
  pence,
  vat,
});
const forward: BillAdjustment = { kind: 'credit', name: 'brought forward', pence: 4150, vat: 'after' };

const RIGHT: readonly Written[] = [
  {
    name: 'one price, VAT in it',
    from: '2026-01-01',
    days: 90,
    lines: [['all hours', '812', '27.69']],
    standing: '54.75',
    vat: 'in',
  },
  {
    name: 'one price, VAT on top',
    from: '2026-01-01',
    days: 90,
    lines: [['all hours', '812', '26.371']],
    standing: '52.143',
    vat: 'out',
  },
  {
    name: 'a half penny in the line',
    from: '2026-02-01',
    days: 28,
    lines: [['all hours', '50', '26.37']],
    standing: '50.125',
    vat: 'out',
  },
  {
    name: 'day and night',
    from: '2026-04-01',
    days: 91,
    lines: [
      ['day', '431.2', '31.5'],
      ['night', '655.9', '19.2'],
    ],
    standing: '54.8',
    vat: 'in',
  },
  {
    name: 'three registers, VAT on top',
    from: '2026-04-01',
    days: 61,
    lines: [
      ['day', '210.5', '29.905'],
      ['peak', '88.4', '41.062'],
      ['night', '312.7', '12.381'],
    ],
    standing: '51.9',
    vat: 'out',
  },
  {
    name: 'gas by the kWh',
    from: '2026-04-01',
    days: 91,
    lines: [['gas', '2310.44', '5.467']],
    standing: '27.705',
    vat: 'out',
  },
  {
    name: 'a discount before VAT',
    from: '2026-07-01',
    days: 92,
    lines: [['all hours', '702', '25.1']],
    standing: '52.2',
    vat: 'out',
    adjust: [discount(1500)],
  },
  {
    name: 'money brought forward',
    from: '2026-07-01',
    days: 92,
    lines: [['all hours', '702', '25.1']],
    standing: '52.2',
    vat: 'out',
    adjust: [forward],
  },
  {
    name: 'discount, credit and a charge',
    from: '2026-10-01',
    days: 31,
    lines: [['all hours', '299.9', '26.32']],
    standing: '54.83',
    vat: 'in',
    adjust: [discount(333), forward, { kind: 'charge', name: 'late payment', pence: 1200, vat: 'after' }],
  },
  {
    name: 'nothing used and no standing charge',
    from: '2026-10-01',
    days: 31,
    lines: [['all hours', '0', '26.32']],
    standing: '0',
    vat: 'out',
  },
  {
    name: 'over a leap day',
    from: '2028-02-15',
    days: 29,
    lines: [['all hours', '333.333', '24.999']],
    standing: '49.999',
    vat: 'out',
  },
];

describe('invented bills that are right agree in every line', () => {
  test.each(RIGHT)('$name', (written) => {
    const checked = check(printed(written));
    expect(checked.rows.filter(({ difference }) => (difference ?? 0) !== 0)).toEqual([]);
    expect(checked).toMatchObject({ agrees: true, differencePence: 0, explanations: [] });
    expect(BigInt(checked.reckonedPence)).toBe(pennies(written).total);
  });
});

// A price change in the middle of the bills below, at 1 April 2026.
const CHANGING: Tariff = {
  id: 'invented',
  name: 'Invented prices',
  fuel: 'electricity',
  origin: 'invented',
  grade: 'measured',
  versions: [
    ['2025-10-01', 26.35, 53.68],
    ['2026-04-01', 24.67, 57.21],
  ].map(([from, pencePerKWh, standingPencePerDay]) => ({
    from: String(from),
    standingPencePerDay: Number(standingPencePerDay),
    vat: { rate: 0.05, included: true },
    bands: [{ name: 'all hours', pencePerKWh: Number(pencePerKWh), times: 'rest' as const }],
  })),
};
const TWO_RATE: Tariff = {
  ...CHANGING,
  versions: [
    {
      from: '2026-01-01',
      standingPencePerDay: 54.8,
      vat: { rate: 0.05, included: true },
      bands: [
        { name: 'night', pencePerKWh: 19.2, times: [{ from: '00:30', to: '07:30' }] },
        { name: 'day', pencePerKWh: 31.5, times: 'rest' },
      ],
    },
  ],
};
const BASE: Written = {
  name: 'base',
  from: '2026-04-01',
  days: 91,
  lines: [['all hours', '900', '24.67']],
  standing: '57.21',
  vat: 'in',
};
const PLAIN: Written = { ...BASE, lines: [['all hours', '900', '23.495']], standing: '54.486', vat: 'out' };

interface Wrong {
  readonly name: string;
  readonly bill: Bill;
  readonly tariff?: Tariff;
  /** What the bill should have come to, in whole numbers. */
  readonly right: bigint;
  readonly code: string;
  readonly data?: object;
}

const twoRate = (day: string, night: string): Written => ({
  ...BASE,
  lines: [
    ['day', day, '31.5'],
    ['night', night, '19.2'],
  ],
  standing: '54.8',
});
const gasBill = (kWh: string, change: Partial<Bill>): Bill =>
  printed({ ...BASE, lines: [['gas', kWh, '5.74']], standing: '29.09' }, { fuel: 'gas', meterUnit: 'm³', ...change });
const gasRight = (kWh: string) => pennies({ ...BASE, lines: [['gas', kWh, '5.74']], standing: '29.09' }).total;
const total = (written: Written) => pennies(written).total;
/** All pennies of the first, with the days that the second has. */
const standingFor = (days: number): Bill => {
  const bill = printed({ ...BASE, days });
  return { ...bill, from: BASE.from, to: addDays(BASE.from, BASE.days) };
};

const WRONG: readonly Wrong[] = [
  {
    name: 'the old price for the whole bill',
    bill: printed({ ...BASE, lines: [['all hours', '900', '26.35']], standing: '53.68' }),
    tariff: CHANGING,
    right: total(BASE),
    code: 'old-rate',
    data: { versionFrom: '2025-10-01', part: 'all' },
  },
  {
    name: 'the old unit price, the new standing charge',
    bill: printed({ ...BASE, lines: [['all hours', '900', '26.35']] }),
    tariff: CHANGING,
    right: total(BASE),
    code: 'old-rate',
    data: { part: 'units' },
  },
  {
    name: 'the new price a month too early',
    bill: printed({ ...BASE, from: '2026-03-01', days: 31 }),
    tariff: CHANGING,
    right: total({ ...BASE, from: '2026-03-01', days: 31, lines: [['all hours', '900', '26.35']], standing: '53.68' }),
    code: 'rate-too-early',
    data: { versionFrom: '2026-04-01' },
  },
  {
    name: 'the change in the middle overlooked',
    bill: printed({ ...BASE, from: '2026-03-02', days: 60, lines: [['all hours', '600', '26.35']], standing: '53.68' }),
    tariff: CHANGING,
    // Half of the days and units at either price.
    right: times('300', '26.35') + times('300', '24.67') + times('30', '53.68') + times('30', '57.21'),
    code: 'old-rate',
  },
  {
    name: 'an estimated reading',
    bill: printed(
      { ...BASE, lines: [['all hours', '1140', '24.67']] },
      {
        meters: [{ name: 'all hours', opening: 8000, closing: 9140, closingKind: 'estimated', ownKWh: 900 }],
      },
    ),
    right: total(BASE),
    code: 'estimated-reading',
    data: { meter: 'all hours', billedKWh: 1140, ownKWh: 900 },
  },
  {
    name: 'a reading called actual that is not the one on the meter',
    bill: printed(
      { ...BASE, lines: [['all hours', '990', '24.67']] },
      {
        meters: [{ name: 'all hours', opening: 8000, closing: 8990, closingKind: 'actual', ownKWh: 900 }],
      },
    ),
    right: total(BASE),
    code: 'reading-differs',
  },
  {
    name: 'units that do not follow from the readings',
    bill: printed(
      { ...BASE, lines: [['all hours', '1900', '24.67']] },
      { meters: [{ name: 'all hours', opening: 8000, closing: 8900 }] },
    ),
    right: total(BASE),
    code: 'units-not-from-readings',
    data: { billedKWh: 1900, readKWh: 900 },
  },
  {
    name: 'day and night swapped in the units',
    bill: printed(twoRate('612', '288'), {
      meters: [
        { name: 'day', opening: 5000, closing: 5288 },
        { name: 'night', opening: 7000, closing: 7612 },
      ],
    }),
    right: total(twoRate('288', '612')),
    code: 'registers-swapped',
    data: { first: 'day', second: 'night' },
  },
  {
    name: 'day and night swapped in the prices',
    bill: printed({
      ...twoRate('288', '612'),
      lines: [
        ['day', '288', '19.2'],
        ['night', '612', '31.5'],
      ],
    }),
    tariff: TWO_RATE,
    right: total(twoRate('288', '612')),
    code: 'registers-swapped',
  },
  {
    name: 'VAT at 20 %',
    bill: printed({ ...PLAIN, percent: 20n }),
    right: total(PLAIN),
    code: 'vat-rate',
    data: { rate: 0.2, expected: 0.05 },
  },
  {
    name: 'VAT at 20 % where 5 % is printed',
    bill: {
      ...printed({ ...PLAIN, percent: 20n }),
      vat: { included: false, rate: 0.05, pence: Number(pennies({ ...PLAIN, percent: 20n }).vatPence) },
    },
    right: total(PLAIN),
    code: 'vat-rate',
  },
  {
    name: 'no VAT where it is due',
    bill: printed({ ...PLAIN, percent: 0n }),
    right: total(PLAIN),
    code: 'vat-rate',
    data: { rate: 0 },
  },
  {
    name: 'VAT on prices that hold it already',
    bill: printed(BASE, { totalPence: Number(total(BASE) + vatOn(total(BASE), 5n)), vat: { included: true } }),
    right: total(BASE),
    code: 'vat-twice',
  },
  {
    name: 'VAT on VAT',
    bill: printed(PLAIN, { totalPence: Number(total(PLAIN) + vatOn(total(PLAIN), 5n)), vat: { included: false } }),
    right: total(PLAIN),
    code: 'vat-twice',
  },
  {
    name: 'a day of standing charge too many',
    bill: standingFor(92),
    right: total(BASE),
    code: 'standing-days',
    data: { days: 92, expected: 91 },
  },
  {
    name: 'a day too few',
    bill: standingFor(90),
    right: total(BASE),
    code: 'standing-days',
    data: { days: 90, expected: 91 },
  },
  {
    name: 'a whole week of standing charge too many',
    bill: standingFor(98),
    right: total(BASE),
    code: 'standing-days',
    data: { days: 98 },
  },
  {
    name: 'a discount printed and not taken off',
    bill: printed(PLAIN, { adjustments: [discount(1500)] }),
    right: total({ ...PLAIN, adjust: [discount(1500)] }),
    code: 'discount-missing',
    data: { name: 'direct debit', pence: 1500 },
  },
  {
    name: 'VAT taken before a discount that lessens it',
    bill: printed({ ...PLAIN, adjust: [discount(1500, 'after')] }, { adjustments: [discount(1500)] }),
    right: total({ ...PLAIN, adjust: [discount(1500)] }),
    code: 'vat-order',
  },
  {
    name: 'a calorific value of 41.2 in place of 39.3',
    bill: gasBill(gasKWh('250', false, 102_264n, '41.2', 2), {
      calorificMJPerM3: 39.3,
      meters: [{ name: 'gas', opening: 1000, closing: 1250 }],
    }),
    right: gasRight(gasKWh('250', false, 102_264n, '39.3', 2)),
    code: 'calorific-value',
    data: { used: 41.2, printed: 39.3 },
  },
  {
    name: 'the correction left out',
    bill: gasBill(gasKWh('250', false, 100_000n, '39.3', 2), {
      calorificMJPerM3: 39.3,
      meters: [{ name: 'gas', opening: 1000, closing: 1250 }],
    }),
    right: gasRight(gasKWh('250', false, 102_264n, '39.3', 2)),
    code: 'correction-missing',
  },
  {
    name: 'a metric meter billed as an imperial one',
    bill: gasBill(gasKWh('250', true, 102_264n, '39.3', 1), {
      calorificMJPerM3: 39.3,
      meters: [{ name: 'gas', opening: 9900, closing: 150 }],
    }),
    right: gasRight(gasKWh('250', false, 102_264n, '39.3', 1)),
    code: 'meter-unit',
    data: { used: 'hundred ft³', printed: 'm³' },
  },
];

describe('invented bills with one mistake: the sum is right, and the mistake is found', () => {
  test.each(WRONG)('$name', ({ bill, tariff, right, code, data = {} }) => {
    const checked = check(bill, tariff);
    // Units worked out from a volume are not rounded on the way here, so that a penny may lie between.
    const off = BigInt(checked.reckonedPence) - right;
    expect(off >= -1n && off <= 1n, `${checked.reckonedPence} and ${right}`).toBe(true);
    if (bill.meterUnit === 'kWh') expect(off).toBe(0n);
    expect(checked.agrees).toBe(false);
    const [first] = checked.explanations;
    expect(first).toMatchObject({ reach: 'whole' });
    const causes = checked.explanations.flatMap(({ causes }) => causes);
    expect(causes).toContainEqual({ code, data: expect.objectContaining(data) });
  });

  test('two mistakes together are found where the lines are printed', () => {
    const bill = { ...standingFor(92), ...{ from: BASE.from } };
    const wrongBoth: Bill = {
      ...bill,
      meters: [{ name: 'all hours', ownKWh: 700, closing: 1900, opening: 1000, closingKind: 'estimated' }],
    };
    const { explanations } = check(wrongBoth);
    expect(explanations[0]).toMatchObject({ reach: 'whole' });
    expect(explanations[0]!.causes.map(({ code }) => code).sort()).toEqual(['estimated-reading', 'standing-days']);
  });

  test('a difference that nothing explains is left unexplained', () => {
    const bill = printed(BASE);
    const { explanations, differencePence } = check({ ...bill, totalPence: bill.totalPence! + 1234 });
    expect(differencePence).toBe(1234);
    expect(explanations).toEqual([]);
  });

  test('days of the invented bills are those of the calendar', () => {
    expect(daysBetween('2026-03-02', '2026-05-01')).toBe(60);
  });
});

import { describe, expect, test } from 'vitest';
import { checkBillSums } from '../../../src/model/bill/check-bill-sums.ts';
import { type BillDraft, emptyBill, periodOf, readBill } from '../../../src/screens/bill-sums/bill-lines-draft.ts';

const GAS = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };
const typed: BillDraft = {
  ...emptyBill('electricity'),
  from: '2026-03-02',
  lastDay: '2026-04-30',
  lines: [
    {
      name: 'all hours',
      from: '',
      estimated: false,
      opening: 100,
      closing: 700,
      kWh: 300,
      pencePerKWh: 26.35,
      pounds: 79.05,
    },
    { name: 'all hours', from: '2026-04-01', estimated: false, kWh: 300, pencePerKWh: 24.67, pounds: 74.01 },
  ],
  standing: [
    { from: '', days: 30, pencePerDay: 53.68, pounds: 16.1 },
    { from: '2026-04-01', days: 30, pencePerDay: 57.21, pounds: 17.16 },
  ],
  vatIncluded: true,
  totalPounds: 186.32,
};
const read = (draft: BillDraft) => {
  const reading = readBill(draft);
  if (reading.kind !== 'whole') throw new Error(reading.sentences.join(' '));
  return reading.bill;
};

describe('a bill while it is typed', () => {
  test('an empty one says what is missing', () => {
    expect(readBill(emptyBill('gas'))).toEqual({
      kind: 'wanting',
      sentences: [
        'Type the first day of the bill.',
        'Type the last day of the bill.',
        'Type both readings, or the kWh.',
        'Type the price per kWh.',
      ],
    });
  });
  test.each([
    ['days the wrong way round', { lastDay: '2026-03-01' }, 'The last day is before the first. Correct one of them.'],
    ['years in one', { from: '2020-01-01' }, 'This is 2,312 days. Take a long bill in parts.'],
    [
      'a price from outside the bill',
      { lines: [typed.lines[0]!, { ...typed.lines[1]!, from: '2026-06-01' }] },
      'A later price must begin on a day inside the bill.',
    ],
  ])('%s', (_, part, sentence) => {
    const reading = readBill({ ...typed, ...part });
    expect(reading.kind === 'wanting' && reading.sentences).toContain(sentence);
  });
  test('a price change within it is two lines with their own days, and the sums come out', () => {
    const bill = read(typed);
    expect(bill.to).toBe('2026-05-01');
    expect(bill.charges.map(({ from, to }) => [from, to])).toEqual([
      ['2026-03-02', '2026-04-01'],
      ['2026-04-01', '2026-05-01'],
    ]);
    expect(bill.meters).toEqual([{ name: 'all hours', opening: 100, closing: 700, kWh: 600, closingKind: 'actual' }]);
    // 300 × 26.35 = 79.05, 300 × 24.67 = 74.01, 30 × 53.68 = 16.10, 30 × 57.21 = 17.16 by hand.
    expect(checkBillSums({ bill, gas: GAS, vatRate: 0.05 })).toMatchObject({ agrees: true, reckonedPence: 18_632 });
  });
  test('money is turned into whole pennies', () => {
    const bill = read({ ...typed, adjustments: [{ kind: 'credit', name: ' ', pounds: 41.15, vat: 'after' }] });
    expect(bill.adjustments).toEqual([{ kind: 'credit', name: 'credit', pence: 4115, vat: 'after' }]);
  });
});

describe('kept as evidence', () => {
  test('the units are those of the readings, the money what the bill asks', () => {
    const bill = read(typed);
    const { name, periods, carrier } = periodOf(bill, checkBillSums({ bill, gas: GAS, vatRate: 0.05 }));
    expect(name).toBe('Electricity bill, 2 March 2026 to 30 April 2026');
    expect(carrier).toBe('electricity');
    expect(periods).toEqual([{ from: '2026-03-02', to: '2026-05-01', kWh: 600, costPence: 18_632, quality: 'actual' }]);
  });
  test.each([
    [undefined, 'estimated'],
    [580, 'actual'],
  ])('an estimated reading, own units %s: %s', (ownKWh, quality) => {
    const bill = read({ ...typed, lines: typed.lines.map((line) => ({ ...line, estimated: true, ownKWh })) });
    const kept = periodOf(bill, checkBillSums({ bill, gas: GAS, vatRate: 0.05 })).periods[0]!;
    expect(kept.quality).toBe(quality);
    expect(kept.kWh).toBeCloseTo(ownKWh ?? 600, 9);
  });
});

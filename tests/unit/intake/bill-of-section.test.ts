import { expect, test } from 'vitest';
import { billOfSection, type SectionInput } from '../../../src/intake/paper/bill-of-section.ts';

const figure = (value: number, negative = false) =>
  ({ value, negative, text: String(value), before: '', decimals: 2, kind: 'amount', row: 0 }) as never;
const line = (negative: boolean) =>
  ({
    kind: 'energy',
    fuel: 'electricity',
    register: undefined,
    quantity: figure(100),
    pence: 26.4,
    amount: figure(26.4, negative),
  }) as const;

/** 100 kWh charged, and 100 given back unless `onlyOne`; a discount of £4.20 on several fuels together. */
const made = (lines: readonly ReturnType<typeof line>[], discountPence: number) => {
  const netPence = lines.reduce(
    (sum, { amount }) => sum + ((amount as { negative: boolean }).negative ? -2640 : 2640),
    0,
  );
  const discount = { name: 'Dual fuel discount', pence: -discountPence };
  const together = {
    netPence: netPence - discountPence,
    totalPence: 0,
    before: [discount],
    after: [],
    proofs: [],
    confirmed: 0,
  };
  return billOfSection({
    section: { fuel: 'electricity', lines, period: undefined, differences: [], gas: [], totals: undefined },
    fuel: 'electricity',
    rows: [],
    together,
    shared: [discount],
    from: '2026-06-01',
    to: '2026-07-01',
    inclusive: true,
    choices: {},
  } as unknown as SectionInput);
};

test('of a discount on all fuels a fuel bears its part by what it was charged', () => {
  expect(made([line(false)], 420)?.sharedPence).toBe(-420);
});

test('where all charges come to nought no part is known, and there is no bill to keep', () => {
  expect(made([line(false), line(true)], 420)).toBeUndefined();
  expect(made([line(false), line(true)], 0)?.sharedPence).toBe(0);
});

import { describe, expect, test } from 'vitest';
import { checkBillSums } from '../../../src/model/bill/check-bill-sums.ts';
import { leavesPricesOpen } from '../../../src/model/bill/recompute-lines.ts';
import type { Bill } from '../../../src/model/shapes/bill.ts';
import { allHours, nightAndDay, priceSeries, tariff, version } from '../tariff/tariffs.ts';

const bill: Bill = {
  fuel: 'electricity',
  from: '2026-01-01',
  to: '2026-02-01',
  meterUnit: 'kWh',
  meters: [{ name: 'all hours', kWh: 100 }],
  charges: [{ meter: 'all hours', kWh: 100, pencePerKWh: 22, pence: 2200 }],
  standing: [],
  adjustments: [],
  vat: { included: true },
  totalPence: 2200,
};
const stepped = { ...allHours(20), blocks: { per: 'month' as const, steps: [{ upToKWh: 10, pencePerKWh: 40 }] } };

describe('prices that the lines of a bill cannot tell are taken from the bill, and that is said', () => {
  test.each([
    ['one price', version([allHours(20)]), false, 200],
    ['day and night, without a register of that name', version(nightAndDay), true, 0],
    ['steps', version([stepped]), true, 0],
    ['half-hours', version([allHours(20)], { series: priceSeries('2026-01-01', 31, () => 9) }), true, 0],
  ])('%s', (_, one, isOpen, difference) => {
    const own = tariff([one]);
    expect(leavesPricesOpen(bill, own)).toBe(isOpen);
    const gas = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };
    expect(checkBillSums({ bill, gas, vatRate: 0.05, tariff: own }).differencePence).toBe(difference);
  });
  test('from the day on which a version has no such price', () => {
    const later = tariff([version([allHours(20)]), version([stepped], { from: '2026-01-20' })]);
    expect(leavesPricesOpen(bill, later)).toBe(true);
    expect(leavesPricesOpen({ ...bill, to: '2026-01-20' }, later)).toBe(false);
  });
});

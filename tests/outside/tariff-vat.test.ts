import { describe, expect, test } from 'vitest';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { inclVat } from '../../src/model/tariff/price.ts';
import { recomputeBill } from '../../src/model/tariff/recompute-bill.ts';

const RATE = 0.05; // domestic fuel and power, 5 %: VAT Notice 701/19; VAT Act 1994, Schedule 7A, Group 1

const gas = (pencePerKWh: number, standingPencePerDay: number, included: boolean): Tariff => ({
  id: 'gas',
  name: 'Gas',
  fuel: 'gas',
  origin: 'Ofgem energy price cap, October to December 2026',
  grade: 'measured',
  versions: [
    {
      from: '2026-10-01',
      standingPencePerDay,
      vat: { rate: RATE, included },
      bands: [{ name: 'all hours', pencePerKWh, times: 'rest' }],
    },
  ],
});

describe('VAT on a domestic bill', () => {
  test.each([
    ['unit rate', 31.62, 33.2], // UK Government, Energy Price Guarantee April 2023: 31.62 p without, 33.20 p with VAT
    ['gas unit rate', 9.82, 10.31], // UK Government, Energy Price Guarantee April 2023: 9.82 p without; × 1.05
    ['standing charge', 50.4, 52.92], // UK Government, Energy Price Guarantee April 2023: 50.4 p without; × 1.05
  ])('%s', (_, without, expected) => {
    expect(inclVat(gas(7, 30, false).versions[0]!, without)).toBeCloseTo(expected, 2);
  });

  test('12,000 kWh of gas at 7.97 p and 365 days at 29.68 p: 1,064.73 pounds, of which VAT 50.70', () => {
    const bill = recomputeBill({
      tariff: gas(7.97, 29.68, true),
      from: '2026-10-01',
      to: '2027-10-01',
      zone: 'Europe/London',
      use: { kind: 'total', kWh: 12_000 },
    });
    // Prices: Ofgem cap, October to December 2026. Sums by hand: 956.40 + 108.33 = 1,064.73; 1,064.73 / 1.05 = 1,014.03.
    expect(bill.lines.map(({ pence }) => pence)).toEqual([95_640, 10_833]);
    expect(bill).toMatchObject({ totalPence: 106_473, netPence: 101_403, vatPence: 5070 });
  });

  test('the same bill from prices without VAT comes to the same total within a penny', () => {
    const bill = recomputeBill({
      tariff: gas(7.97 / 1.05, 29.68 / 1.05, false),
      from: '2026-10-01',
      to: '2027-10-01',
      zone: 'Europe/London',
      use: { kind: 'total', kWh: 12_000 },
    });
    expect(Math.abs(bill.totalPence - 106_473)).toBeLessThanOrEqual(1); // as above; lines are rounded before VAT here
    expect(bill.netPence).toBe(101_403);
  });
});

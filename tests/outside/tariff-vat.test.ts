import { describe, expect, test } from 'vitest';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { inclVat } from '../../src/model/tariff/slot-price.ts';

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
});

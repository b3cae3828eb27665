/** Bills that share weeks: one replaces the other, or both stand; what shares a few days was read late. */
import { describe, expect, test } from 'vitest';
import type { IntakeChoices } from '../../../src/intake/intake.ts';
import { codesOf, previewOf } from './read-text.ts';

const HEAD = 'From,To,Electricity (kWh),Cost,Type';
const read = (rows: readonly string[], choices: IntakeChoices = {}) => previewOf([HEAD, ...rows], { choices });
const totalOf = ({ series }: ReturnType<typeof read>) => series[0]!.total;

describe('bills that share weeks', () => {
  const corrected = [
    '2025-01-01,2025-03-31,900,250,estimated',
    '2025-01-01,2025-04-30,1100,300,actual',
    '2025-05-01,2025-07-31,600,170,actual',
  ];
  test('are asked about', () => {
    const preview = read(corrected);
    expect(codesOf(preview, 'question')).toEqual(['period-overlap-asked']);
    expect(preview.remarks.find(({ weight }) => weight === 'question')).toMatchObject({
      row: 3,
      from: '2025-01-01',
      to: '2025-03-31',
      count: 90,
    });
  });
  test('count once where one replaces the other: what was read before an estimate', () => {
    const once = read(corrected, { overlaps: 'once' });
    expect(codesOf(once, 'question')).toEqual([]);
    expect(totalOf(once)).toBe(1700);
    expect(once.series[0]!.periods!.map(({ from, to }) => [from, to])).toEqual([
      ['2025-01-01', '2025-05-01'],
      ['2025-05-01', '2025-08-01'],
    ]);
    expect(totalOf(read(corrected.toReversed(), { overlaps: 'once' }))).toBe(1700);
  });
  test('count once with a share by days of the bill that begins first', () => {
    const bills = ['2025-04-01,2025-06-30,910,200,actual', '2025-06-01,2025-08-31,600,170,actual'];
    // 61 of 91 days of the first.
    expect(totalOf(read(bills, { overlaps: 'once' }))).toBeCloseTo(910 * (61 / 91) + 600, 6);
  });
  test('count twice where both stand', () => {
    const both = read(corrected, { overlaps: 'both' });
    expect(codesOf(both, 'question')).toEqual([]);
    expect(totalOf(both)).toBe(2600);
  });
});

test('bills that share a day or two are noted', () => {
  const preview = read(['2025-01-01,2025-04-02,900,250,actual', '2025-04-01,2025-07-01,700,200,actual']);
  expect(codesOf(preview, 'question')).not.toContain('period-overlap-asked');
});

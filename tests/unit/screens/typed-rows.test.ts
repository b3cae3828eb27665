import { describe, expect, test } from 'vitest';
import { reference } from '../../../src/reference/index.ts';
import { EMPTY_ROW, readTypedSheet, type TypedRow, type TypedSheet } from '../../../src/screens/evidence/typed-rows.ts';
import { unitsFor } from '../../../src/screens/evidence/typed-units.ts';

const kWh = unitsFor('electricity', reference)[0]!;
const m3 = unitsFor('gas', reference, 39.5).find((unit) => unit.name === 'm³')!;
const litres = unitsFor('oil', reference)[0]!;
const row = (from: string, to: string, amount: string, more: Partial<TypedRow> = {}): TypedRow => ({
  ...EMPTY_ROW,
  from,
  to,
  amount,
  ...more,
});
const sheet = (rows: TypedRow[], more: Partial<TypedSheet> = {}): TypedSheet => ({
  kind: 'bills',
  unit: kWh,
  toInclusive: true,
  rows,
  ...more,
});

describe('bills', () => {
  test('the last day belongs to the bill, pounds become pence, blank rows are skipped', () => {
    const { periods, faults } = readTypedSheet(
      sheet([row('2025-01-01', '2025-03-31', '1,200', { costPounds: '£312.45' }), EMPTY_ROW]),
    );
    expect(faults).toEqual([]);
    expect(periods).toEqual([
      {
        from: '2025-01-01',
        to: '2025-04-01',
        kWh: 1200,
        quantity: 1200,
        unit: 'kWh',
        costPence: 31245,
        quality: 'actual',
        row: 1,
      },
    ]);
  });
  test('the last day begins the next bill when that is chosen', () => {
    const { periods } = readTypedSheet(sheet([row('2025-01-01', '2025-04-01', '9')], { toInclusive: false }));
    expect(periods[0]!.to).toBe('2025-04-01');
  });
  test('gas in m³: 512 × 1.02264 × 39.5 ÷ 3.6 = 5,744.9 kWh, the sum printed on British gas bills', () => {
    const { periods } = readTypedSheet(sheet([row('2025-01-01', '2025-03-31', '512')], { unit: m3 }));
    expect(periods[0]!.kWh).toBeCloseTo((512 * 1.02264 * 39.5) / 3.6, 6);
    expect(periods[0]).toMatchObject({ quantity: 512, unit: 'm³' });
  });
  test.each([
    ['no first day', row('', '2025-03-31', '5'), 'Row 1: the first day is missing.'],
    ['no last day', row('2025-01-01', '', '5'), 'Row 1: the last day is missing.'],
    ['a year mistyped', row('0206-01-01', '2026-03-31', '5'), 'Row 1: “0206-01-01” is no day. Write it as 31/12/2025.'],
    ['no amount', row('2025-01-01', '2025-03-31', ''), 'Row 1: the amount in kWh is missing.'],
    ['a letter O', row('2025-01-01', '2025-03-31', '1O.5'), 'Row 1: “1O.5” is not a number.'],
    ['negative', row('2025-01-01', '2025-03-31', '-4'), 'Row 1: the amount is −4; less than nothing cannot be used.'],
    [
      'backwards',
      row('2025-03-31', '2025-01-01', '5'),
      'Row 1: the last day comes before the first, or both are the same day.',
    ],
    [
      'a wrong year',
      row('2015-01-01', '2025-03-31', '5'),
      'Row 1: 3743 days in one row are too many. Is a year mistyped?',
    ],
  ])('%s is refused', (_, bad, sentence) => {
    const { periods, faults } = readTypedSheet(sheet([bad]));
    expect(faults.map((fault) => fault.sentence)).toEqual([sentence]);
    expect(periods).toEqual([]);
  });
  test('two bills for the same days are refused, the row named', () => {
    const { faults } = readTypedSheet(
      sheet([row('2025-01-01', '2025-03-31', '5'), row('2025-03-01', '2025-05-31', '6')]),
    );
    expect(faults.map((fault) => fault.sentence)).toEqual([
      'Row 2: its days overlap those of row 1. Each day belongs to one row only.',
    ]);
  });
});

describe('readings and deliveries', () => {
  test('readings give their differences, in order of time; one estimated reading makes both its neighbours estimated', () => {
    const { periods } = readTypedSheet(
      sheet(
        [row('2025-07-01', '', '150', { estimated: true }), row('2025-01-01', '', '100'), row('2025-10-01', '', '180')],
        { kind: 'readings' },
      ),
    );
    expect(periods.map(({ from, to, kWh: used, quality }) => [from, to, used, quality])).toEqual([
      ['2025-01-01', '2025-07-01', 50, 'estimated'],
      ['2025-07-01', '2025-10-01', 30, 'estimated'],
    ]);
  });
  test('a falling reading is refused', () => {
    const { faults } = readTypedSheet(
      sheet([row('2025-01-01', '', '100'), row('2025-02-01', '', '90')], { kind: 'readings' }),
    );
    expect(faults[0]!.sentence).toContain('lower than the one before');
  });
  test('a delivery is what was burnt since the one before', () => {
    const { periods } = readTypedSheet(
      sheet([row('2024-11-02', '', '900'), row('2025-02-10', '', '1000', { costPounds: '620' })], {
        kind: 'deliveries',
        unit: litres,
      }),
    );
    expect(periods).toHaveLength(1);
    expect(periods[0]).toMatchObject({ from: '2024-11-02', to: '2025-02-10', quantity: 1000, costPence: 62000 });
    expect(periods[0]!.kWh).toBeCloseTo(1000 * reference.kWhPerUnit.oil.value, 6);
  });
});

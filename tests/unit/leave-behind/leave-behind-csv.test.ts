import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { leaveBehindCsv } from '../../../src/leave-behind/leave-behind-csv.ts';
import { larchRiseEstimate } from './larch-rise.ts';

type Row = Record<string, string>;
const read = (variant = {}): Row[] => parse(leaveBehindCsv(larchRiseEstimate(variant)), { bom: true, columns: true });
const find = (rows: Row[], match: Row) =>
  rows.filter((row) => Object.entries(match).every(([key, value]) => row[key] === value));

describe('figures as text', () => {
  const rows = read();

  test('every line has every column', () => {
    expect(rows.length).toBeGreaterThan(200);
    for (const row of rows) expect(Object.keys(row)).toHaveLength(10);
  });

  test('the written estimate is named', () => {
    expect(find(rows, { part: 'written estimate', what: 'number' })[0]!.value).toBe('12');
    expect(find(rows, { part: 'written estimate', what: 'made on' })[0]!.value).toBe('2026-11-25');
  });

  test.each(['Ground-source heat pump', 'Gas boiler, as now', 'Direct electric'])(
    '%s: months sum to the year',
    (system) => {
      const year = Number(find(rows, { part: 'cost', system, time: 'year', what: 'together' })[0]!.value);
      const months = rows
        .filter((row) => row.part === 'cost' && row.system === system && row.time !== 'year')
        .reduce((sum, row) => sum + Number(row.value), 0);
      // Forty-eight values rounded to a hundredth of a penny.
      expect(months).toBeCloseTo(year, 2);
    },
  );

  test('the same written estimate gives the same bytes', () => {
    expect(leaveBehindCsv(larchRiseEstimate())).toBe(leaveBehindCsv(larchRiseEstimate()));
  });

  test('a name that looks like a formula is no formula', () => {
    const [row] = find(read({ name: '=HYPERLINK("x")' }), { part: 'written estimate', what: 'household' });
    expect(row!.value).toBe(`'=HYPERLINK("x")`);
  });

  test('an unknown stays empty', () => {
    const estimate = larchRiseEstimate();
    const unknown = { ...estimate.appraisal.demand.total, value: Number.NaN };
    const text = leaveBehindCsv({
      ...estimate,
      appraisal: { ...estimate.appraisal, demand: { ...estimate.appraisal.demand, total: unknown } },
    });
    const [row] = find(parse(text, { bom: true, columns: true }), { part: 'heat', what: 'together' });
    expect(row!.value).toBe('');
  });
});

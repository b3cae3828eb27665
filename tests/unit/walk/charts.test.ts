import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutChanges } from '../../../src/charts/changes/layout.ts';
import { changesSentence } from '../../../src/charts/changes/sentence.ts';
import { changeRows } from '../../../src/charts/changes/series.ts';
import { changesTable } from '../../../src/charts/changes/table.ts';
import { layOutMonthParts } from '../../../src/charts/month-parts/layout.ts';
import { monthPartsSentence } from '../../../src/charts/month-parts/sentence.ts';
import { costParts, heatParts, type MonthParts, monthSums } from '../../../src/charts/month-parts/series.ts';
import { monthPartsTable } from '../../../src/charts/month-parts/table.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

const parts = (lower: number[], upper: number[], what: 'heat' | 'cost' = 'heat'): MonthParts => ({
  what,
  lower: { name: 'rooms', values: lower },
  upper: { name: 'hot water', values: upper },
});
const twelve = (value: number) => Array.from({ length: 12 }, () => value);
const months = fc.array(fc.double({ min: 0, max: 1e7, noNaN: true }), { minLength: 12, maxLength: 12 });

describe('months in two parts', () => {
  test('the months of the heat sum to the year', () => {
    const sum = monthSums(heatParts(larchRise())).reduce((total, value) => total + value, 0);
    expect(sum).toBeCloseTo(13_900, 6);
  });
  test('the months of a cost sum to its year', () => {
    const present = larchRise().systems[1]!;
    const sum = monthSums(costParts(present)).reduce((total, value) => total + value, 0);
    expect(sum).toBeCloseTo(present.cost.value, 6);
  });

  test.each([
    [heatParts(larchRise()), 'January needs most, 2,160 kWh. July needs least, 370 kWh.'],
    [parts(twelve(0), twelve(0)), 'No heat is needed in any month.'],
    [parts(twelve(0), twelve(0), 'cost'), 'No month costs anything.'],
    [parts(twelve(Number.NaN), twelve(1)), 'We do not know yet how much heat each month needs.'],
  ])('case %#: %s', (given, sentence) => {
    expect(monthPartsSentence(given)).toBe(sentence);
  });

  test('every bar stands on the base, the upper part on the lower, both names inside the picture', () => {
    fc.assert(
      fc.property(months, months, fc.integer({ min: 300, max: 1200 }), (lower, upper, width) => {
        const layout = layOutMonthParts(parts(lower, upper), 'desk', { width });
        for (const bar of layout.bars) {
          expect(bar.lower.y + bar.lower.height).toBeCloseTo(layout.baseY, 6);
          expect(bar.upper.y + bar.upper.height).toBeCloseTo(bar.lower.y, 6);
          expect(bar.upper.y).toBeGreaterThanOrEqual(0);
          expect(bar.x).toBeGreaterThanOrEqual(layout.left);
          expect(bar.x + bar.width).toBeLessThanOrEqual(layout.right);
        }
        const low = layout.names.at(-1)!;
        if (upper.some((value) => value !== 0)) expect(low.y - layout.names[0]!.y).toBeGreaterThanOrEqual(layout.font);
        else expect(layout.names).toHaveLength(1);
        expect(low.y).toBeLessThanOrEqual(layout.baseY + layout.font);
      }),
    );
  });

  test('the table has a row a month and no invented zero', () => {
    const table = monthPartsTable(parts(twelve(Number.NaN), twelve(10)));
    expect(table.rows).toHaveLength(12);
    expect(table.rows[0]!.cells).toEqual(['January', 'not known', '10 kWh', 'not known']);
  });
});

describe('what single changes do', () => {
  const rows = changeRows([
    { code: 'winter-cold', pence: 9100 },
    { code: 'electricity-up', pence: 21_300 },
    { code: 'flow-up', pence: -6400 },
    { code: 'room-up', pence: Number.NaN },
  ]);
  test('the largest first, the unknown left out', () => {
    expect(rows.map(({ code }) => code)).toEqual(['electricity-up', 'winter-cold', 'flow-up']);
    expect(changesSentence(rows)).toBe('If electricity costs 5 p more per kWh, the year costs about £210 more.');
    expect(changesTable(rows).rows.map(({ cells }) => cells)).toEqual([
      ['Electricity 5 p more per kWh', '+£213'],
      ['A cold winter', '+£91'],
      ['Flow temperature 5 degrees higher', '−£64'],
    ]);
  });
  test('more lies right of zero and less left of it', () => {
    const { marks, zeroX, width } = layOutChanges(rows, 'table');
    expect(marks[0]!.x).toBeCloseTo(zeroX, 6);
    expect(marks[2]!.x + marks[2]!.width).toBeCloseTo(zeroX, 6);
    for (const mark of marks) expect(mark.x + mark.width).toBeLessThanOrEqual(width);
  });
  test('nothing to show', () => {
    expect(changesSentence([])).toBe('We cannot say yet what would change the cost.');
    expect(layOutChanges([], 'desk').marks).toEqual([]);
  });
});

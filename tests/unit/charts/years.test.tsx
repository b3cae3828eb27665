import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutYears } from '../../../src/charts/years/layout.ts';
import { YearsPicture } from '../../../src/charts/years/picture.tsx';
import { yearsSentence } from '../../../src/charts/years/sentence.ts';
import { paidAfter, yearsSeries } from '../../../src/charts/years/series.ts';
import { yearsTable } from '../../../src/charts/years/table.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRise, type Variant } from '../leave-behind/larch-rise.ts';

const reckon = (purchase: Household['purchase'] = {}, variant: Variant = {}, draws = 200) =>
  reckonLifetime({ household: { purchase }, appraisal: larchRise(variant), reference, draws })!;
const bought = { heatPumpGBP: typed(15_000), grantGBP: typed(7500), replacementGBP: typed(3000) };
const whole = reckon(bought);

describe('series', () => {
  test('at the break-even both have paid the same', () => {
    const { breakEven } = yearsSeries(whole);
    expect(breakEven!.years).toBeCloseTo(450_000 / 41_588, 6);
    expect(breakEven!.pence).toBeCloseTo(paidAfter(whole.beside, breakEven!.years), 4);
  });
  test.each([
    ['running costs only', reckon()],
    ['cheaper from the first day', reckon({ ...bought, heatPumpGBP: typed(8000) })],
    ['not within the years', reckon({ heatPumpGBP: typed(60_000) })],
  ])('nothing is marked: %s', (_, lifetime) => expect(yearsSeries(lifetime).breakEven).toBeNull());
});

describe('layout', () => {
  const places = (path: string) =>
    [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])]);
  test('every mark stays inside, labels do not touch, whatever is bought and paid', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 500_000 }),
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.integer({ min: 320, max: 1600 }),
        fc.constantFrom('desk' as const, 'table' as const, 'paper' as const),
        (gbp, years, electricityShare, width, size) => {
          const lifetime = reckon(
            { ...bought, heatPumpGBP: typed(gbp), years: typed(years) },
            { electricityShare },
            30,
          );
          const layout = layOutYears(yearsSeries(lifetime), size, { width });
          for (const mark of layout.marks) {
            for (const [x, y] of [...places(mark.line), ...places(mark.band)]) {
              expect(x).toBeGreaterThanOrEqual(layout.left - 0.1);
              expect(x).toBeLessThanOrEqual(layout.right + 0.1);
              expect(y).toBeGreaterThanOrEqual(layout.top - 0.1);
              expect(y).toBeLessThanOrEqual(layout.bottom + 0.1);
            }
          }
          const tops = layout.marks.map(({ labelY, nameLines }) => [labelY, nameLines.length + 1] as const);
          const [upper, lower] = tops.toSorted((a, b) => a[0] - b[0]);
          expect(lower![0] - upper![0]).toBeGreaterThanOrEqual(upper![1] * layout.font * 1.15);
          if (layout.breakEven) {
            expect(layout.breakEven.x).toBeGreaterThan(layout.left);
            expect(layout.breakEven.x).toBeLessThanOrEqual(layout.right + 0.1);
          }
          expect(layout.yearTicks.length).toBeGreaterThanOrEqual(2);
          expect(layout.yearTicks.length).toBeLessThanOrEqual(12);
        },
      ),
      { numRuns: 60 },
    );
  });
  test('a new boiler is a step at the end of its year, not a slope', () => {
    const line = layOutYears(yearsSeries(whole), 'desk', { width: 900 }).marks[1]!.line;
    const xs = places(line).map(([x]) => x);
    expect(new Set(xs).size).toBe(21);
    expect(xs).toHaveLength(22);
  });
});

describe('picture', () => {
  const html = renderToStaticMarkup(<YearsPicture series={yearsSeries(whole)} size="paper" width={650} />);
  test('two lines that differ without colour, two bands with an outline, the break-even marked', () => {
    expect(html.match(/data-part="line-/g)).toHaveLength(2);
    expect(html.match(/stroke-dasharray="9 5"/g)).toHaveLength(1);
    expect(html.match(/data-part="band-/g)).toHaveLength(2);
    expect(html).toContain('the same after 11 years');
  });
  test('no number goes wrong, no style of its own', () => expect(html).not.toMatch(/NaN|Infinity|style=/));
});

test('sentence and table say the same as the picture', () => {
  expect(yearsSentence(whole)).toContain('after about 11 years');
  const table = yearsTable(yearsSeries(whole));
  expect(table.rows).toHaveLength(21);
  expect(table.rows[0]!.cells).toEqual(['now', '£7,500', '£7,500', '£7,500', '£3,000', '£3,000', '£3,000']);
  expect(table.rows[20]!.cells[1]).toBe('£31,350');
  expect(yearsTable(yearsSeries(reckon())).caption).toContain('Running costs alone');
});

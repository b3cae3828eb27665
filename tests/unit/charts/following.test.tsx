import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutFollowing } from '../../../src/charts/following/layout.ts';
import { FollowingPicture } from '../../../src/charts/following/picture.tsx';
import { followingSentence } from '../../../src/charts/following/sentence.ts';
import { MONTHS_IN_PICTURE } from '../../../src/charts/following/series.ts';
import { followingTable } from '../../../src/charts/following/table.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { FollowedMonth } from '../../../src/model/shapes/bill-check.ts';

/** Months from October 2025 on: 100 kWh expected, 70 to 130 the range; the meter as given. */
function months(actual: readonly (number | null)[], expected = 100): FollowedMonth[] {
  let gapSoFarKWh = 0;
  return actual.map((actualKWh, i) => {
    gapSoFarKWh += actualKWh === null ? 0 : actualKWh - expected;
    const [low, high] = [expected * 0.7, expected * 1.3];
    const month = `${2025 + Math.floor((9 + i) / 12)}-${String(((9 + i) % 12) + 1).padStart(2, '0')}`;
    return {
      month,
      from: `${month}-01`,
      to: `${addDays(`${month}-01`, 31).slice(0, 7)}-01`,
      days: 30,
      estimatedKWh: expected * 0.9,
      expectedKWh: expected,
      lowKWh: low,
      highKWh: high,
      actualKWh,
      weatherKnown: true,
      verdict: actualKWh === null ? 'unknown' : actualKWh > high ? 'above' : actualKWh < low ? 'below' : 'inside',
      gapSoFarKWh,
    };
  });
}
const series = (actual: readonly (number | null)[], expected?: number) => ({
  months: months(actual, expected),
  pencePerKWh: 25,
});

describe('the sentence says what came and whether the next bill will surprise', () => {
  test.each([
    [[100, 98, 103], /In 3 of 3 months .* give or take little\. .* no surprise/],
    [
      [100, 100, 150],
      /In 2 of 3 months .* 50 kWh more .* about £13\. The newest month, December 2025, was above it\. Expect the next bill above/,
    ],
    [[120, 125, 122], /67 kWh more .* ran high\. Expect the next bill at the high end/],
    [[80, 78, 76], /66 kWh less .* ran low\. Expect the next bill at the low end/],
    [[100, 100, 40], /was below it\. Expect the next bill below/],
    [[150], /October 2025 was above what we estimated/],
    [[100, null], /October 2025 was inside/],
    [[null], /No month .* cannot say yet/],
    [[], /No month .* cannot say yet/],
  ] as [(number | null)[], RegExp][])('%o', (actual, said) => {
    expect(followingSentence(series(actual))).toMatch(said);
  });
});

describe('layout', () => {
  test('every mark inside the picture, whatever the amounts', () => {
    const amount = fc.option(fc.double({ min: 0, max: 1e6, noNaN: true }));
    fc.assert(
      fc.property(
        fc.array(amount, { maxLength: 30 }),
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.integer({ min: 420, max: 1400 }),
        (actual, expected, width) => {
          const layout = layOutFollowing(series(actual, expected), 'desk', { width });
          expect(layout.marks.length).toBe(Math.min(actual.length, MONTHS_IN_PICTURE));
          for (const mark of layout.marks) {
            for (const y of [mark.band.y, mark.expectedY, mark.estimatedY, mark.actual?.y ?? 0]) {
              expect(y).toBeGreaterThanOrEqual(0);
              expect(y).toBeLessThanOrEqual(layout.baseY + 1e-6);
            }
            expect(mark.band.height).toBeGreaterThan(0);
            expect(mark.x + mark.width).toBeLessThanOrEqual(layout.right);
          }
          for (const name of layout.names) expect(name.y).toBeLessThanOrEqual(layout.baseY + 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });
  test('a month is higher the more it took; a missing one has no mark but keeps its box', () => {
    const { marks } = layOutFollowing(series([80, 120, null]), 'paper');
    expect(marks[1]!.actual!.y).toBeLessThan(marks[0]!.actual!.y);
    expect(marks[2]!.actual).toBeNull();
    expect(marks.map(({ name, year }) => [name, year])).toEqual([
      ['Oct', '2025'],
      ['Nov', null],
      ['Dec', null],
    ]);
  });
});

test('inside is a dot and outside a diamond, so that the colour is not the only cue', () => {
  const html = renderToStaticMarkup(<FollowingPicture series={series([100, 150])} size="paper" width={650} />);
  expect(html.match(/<circle/g)).toHaveLength(2); // the month and the name beside it
  expect(html).toMatch(/data-verdict="above"[\s\S]*<path/);
  expect(html).not.toMatch(/NaN|undefined/);
});

test('the table holds every month with its range and the meter', () => {
  const { rows, columns } = followingTable(series([100, null]));
  expect(rows).toHaveLength(2);
  expect(rows[0]!.cells).toHaveLength(columns.length);
  expect(rows[0]!.cells).toEqual([
    'October 2025',
    '30',
    '90 kWh',
    '100 kWh',
    '70 kWh',
    '130 kWh',
    '100 kWh',
    'Inside',
    '0 kWh',
  ]);
  expect(rows[1]!.cells).toContain('not known');
});

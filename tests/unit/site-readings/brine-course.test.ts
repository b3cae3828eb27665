/** Brine over several visits: one finding, by the same time of the year where there are years. */
import { describe, expect, test } from 'vitest';
import { judgePlant } from '../../../src/model/judge-plant.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import type { SiteReadings, SiteVisit } from '../../../src/model/shapes/site-readings.ts';
import { brineCourse } from '../../../src/model/site-readings/brine-course.ts';
import { fluids } from '../../../src/reference/brine.ts';
import { reference } from '../../../src/reference/index.ts';
import { siteTables } from '../../../src/reference/site-tables.ts';
import { brineFallText } from '../../../src/words/site-readings.ts';

type Read = readonly [date: string, brineInC: number, more?: SiteReadings];
const visits = (...read: readonly Read[]): SiteVisit[] =>
  read.map(([date, brineInC, more], i) => ({ id: `v${i}`, date, readings: { brineInC, ...more } }));
const fallOf = (...read: readonly Read[]) => brineCourse(visits(...read), fluids).fall;

describe('the fall', () => {
  test.each([
    [
      'three winters, the same week',
      [
        ['2024-02-03', 4.5],
        ['2025-02-10', 3.2],
        ['2026-01-20', 2],
      ],
      'years',
      2.5,
    ],
    [
      'two winters are enough',
      [
        ['2025-02-03', 4],
        ['2026-02-03', 2.9],
      ],
      'years',
      1.1,
    ],
    [
      'less than the thermometers are good for',
      [
        ['2025-02-03', 4],
        ['2026-02-03', 3.1],
      ],
      null,
      0,
    ],
    [
      'another time of the year says nothing of the ground',
      [
        ['2025-10-01', 9],
        ['2027-02-03', 2],
      ],
      null,
      0,
    ],
    [
      '31 days off is another time',
      [
        ['2025-02-03', 4],
        ['2026-03-08', 1],
      ],
      null,
      0,
    ],
    [
      'one winter, visit by visit',
      [
        ['2026-10-05', 8],
        ['2026-11-20', 6],
        ['2027-01-11', 2],
      ],
      'season',
      6,
    ],
    [
      'two visits of one winter are too few',
      [
        ['2026-10-05', 8],
        ['2027-01-11', 2],
      ],
      null,
      0,
    ],
    [
      'it rose in between',
      [
        ['2026-10-05', 5],
        ['2026-11-20', 6],
        ['2027-01-11', 2],
      ],
      null,
      0,
    ],
    [
      'hardly a fall',
      [
        ['2026-10-05', 5],
        ['2026-11-20', 4],
        ['2027-01-11', 3.1],
      ],
      null,
      0,
    ],
    [
      'the years go before the season',
      [
        ['2025-12-01', 6],
        ['2026-03-01', 3],
        ['2026-12-01', 2],
      ],
      'years',
      4,
    ],
    ['nothing read', [], null, 0],
  ] as [string, readonly Read[], 'years' | 'season' | null, number][])('%s', (_, read, kind, fallK) => {
    const fall = fallOf(...read);
    expect(fall?.kind ?? null).toBe(kind);
    if (fall) expect(fall.fallK).toBeCloseTo(fallK, 9);
  });
  test('the order of typing does not matter, exchanged brine is left out, the last reading of a day counts', () => {
    const course = brineCourse(
      visits(
        ['2026-02-03', 2, { brineOutC: -1, glycol: { kind: 'propylene', percent: 25, basis: 'mass' } }],
        ['2025-02-03', 4, { brineOutC: 6 }],
        ['2025-02-03', 4.4, { brineOutC: 1.4 }],
        ['2024-02-03', 5],
      ),
      fluids,
    );
    expect(course.readings).toEqual([
      { date: '2024-02-03', inC: 5, outC: null },
      { date: '2025-02-03', inC: 4.4, outC: 1.4 },
      { date: '2026-02-03', inC: 2, outC: -1 },
    ]);
    expect(course.freezingC).toBeCloseTo(-9.79, 9);
    expect(course.fall).toMatchObject({ kind: 'years', from: { date: '2024-02-03' }, to: { date: '2026-02-03' } });
  });
});

test('one finding: cold ground is not told again of each visit; brine read before counts for frost', () => {
  const home = emptyHousehold('h', 'Fern Bank');
  const judge = (siteReadings: SiteVisit[]) =>
    judgePlant({ household: { ...home, siteReadings }, series: [], reference, asOf: '2026-11-29' }, siteTables);
  const glycol = { kind: 'propylene', percent: 15, basis: 'mass' } as const;
  const falling = visits(
    ['2025-02-03', 3, { brineOutC: 0 }],
    ['2026-02-01', -1],
    ['2026-11-20', 6, { brineOutC: 3, glycol }],
  );
  expect(
    judge(falling.slice(1))
      .judge(falling[1]!)
      .causes.map(({ cause }) => cause),
  ).toEqual(['ground-cold']);
  expect(judge(falling.slice(0, 2)).judge(falling[1]!).causes).toEqual([]);
  // Freezes at −4.87 °C; 3 °C alone would be far from it, but −1 °C left the machine in the year before.
  const cold = visits(['2026-02-01', 2, { brineOutC: -1 }], ['2026-11-20', 6, { brineOutC: 3, glycol }]);
  const margin = judge(cold)
    .judge(cold[1]!)
    .values.find(({ quantity }) => quantity === 'frost-margin')!;
  expect(margin.value).toBeLessThanOrEqual(-1 + 4.87 + 1e-9);
});

test('said with its days, and a winter’s fall as no more than that', () => {
  const band = siteTables.bands.fixed['brine-in'];
  const years = fallOf(['2025-02-03', 4], ['2026-02-03', 2])!;
  expect(brineFallText(years, band)).toMatch(
    /^At the same time of the year the brine is 2\.0 K colder: 4\.0 °C on 3 February 2025, 2\.0 °C on 3 February 2026\. The ground may not get back/,
  );
  const season = (now: number) =>
    brineFallText(fallOf(['2026-10-05', 8], ['2026-11-20', 6], ['2027-01-11', now])!, band);
  expect(season(2)).toMatch(/What counts is the same week of another year\.$/);
  expect(season(-1)).toContain('The ground loop may be giving all it can');
});

import { describe, expect, test } from 'vitest';
import { layOutRanges } from '../../../src/charts/ranges/layout.ts';
import type { RangeRow } from '../../../src/charts/ranges/series.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { evidenceVoice, spanWords } from '../../../src/screens/evidence/evidence-voice.ts';
import { patchSection } from '../../../src/screens/shared/patch.ts';
import { placeLine } from '../../../src/screens/thread/thread.tsx';
import { completenessOf, completenessWords } from '../../../src/words/completeness.ts';

const series = (more: Partial<Series>): Series => ({
  id: 's',
  evidenceId: 'e',
  name: 'gas',
  carrier: 'gas',
  role: 'import',
  resolution: 'day',
  from: '2025-01-01',
  to: '2025-04-11',
  total: 1000,
  present: 100,
  expected: 100,
  estimatedCount: 0,
  ...more,
});
const daily = (have: number, span: number) =>
  series({ days: { first: '2025-01-01', values: Array.from({ length: span }, (_, day) => (day < have ? 1 : null)) } });

describe('completeness', () => {
  test.each([
    [100, 'no day is missing'],
    [97, 'we have 97 days in 100'],
    [50, 'we have 50 days in 100'],
  ])('%d days of 100', (have, words) => expect(completenessWords(completenessOf(daily(have, 100)))).toBe(words));
  test('one missing day in a thousand is not rounded away', () => {
    const long = series({
      from: '2022-01-01',
      to: '2024-09-27',
      days: { first: '2022-01-01', values: Array.from({ length: 1000 }, (_, day) => (day === 500 ? null : 1)) },
    });
    expect(completenessWords(completenessOf(long))).toBe('we have 99 days in 100');
  });
  test('bills with a hole between them', () => {
    const bills = series({
      resolution: 'period',
      from: '2025-01-01',
      to: '2025-12-27',
      periods: [
        { from: '2025-01-01', to: '2025-04-01', kWh: 1, quality: 'actual' },
        { from: '2025-07-01', to: '2025-12-27', kWh: 1, quality: 'actual' },
      ],
    });
    expect(completenessOf(bills)).toEqual({ daysHave: 269, daysSpan: 360, inHundred: 74 });
  });
  test('a day that two bills claim is one day', () => {
    const bills = series({
      resolution: 'period',
      from: '2025-01-01',
      to: '2025-04-11',
      periods: [
        { from: '2025-02-20', to: '2025-04-01', kWh: 1, quality: 'actual' },
        { from: '2025-01-01', to: '2025-03-01', kWh: 1, quality: 'actual' },
        { from: '2025-01-05', to: '2025-01-20', kWh: 1, quality: 'actual' },
      ],
    });
    expect(completenessOf(bills)).toEqual({ daysHave: 90, daysSpan: 100, inHundred: 90 });
  });
});

describe('what is said of the evidence', () => {
  test.each([
    [1, 'one day'],
    [12, '12 days'],
    [30, 'one month'],
    [92, 'three months'],
    [365, 'a year'],
    [730, 'two years'],
    [425, '14 months'],
  ])('%d days are %s', (days, words) => expect(spanWords(days)).toBe(words));
  test('nothing yet', () => expect(evidenceVoice([]).sentence).toBe('Nothing is known yet of what this home uses.'));
  test('two meters', () =>
    expect(evidenceVoice([series({}), series({ id: 't', carrier: 'electricity' })]).sentence).toBe(
      'We know three months of gas and three months of electricity in this home.',
    ));
});

describe('small parts', () => {
  test('a field set to nothing is taken out, not kept as empty', () => {
    const home = patchSection('home', { postcode: 'CV1' })(emptyHousehold('h', 'n'));
    expect(patchSection('home', { postcode: undefined })(home).home).toEqual({});
  });
  test('the line below the name leaves out what is not known', () => {
    const home = emptyHousehold('h', 'n');
    expect(placeLine(home, 'Midlands')).toBe('Midlands');
    const people = { value: 1, grade: 'estimated' as const, origin: 'typed' };
    expect(placeLine({ home: { kind: 'semi', people } }, 'Midlands')).toBe('Semi, 1 person · Midlands');
  });
});

describe('ranges', () => {
  const row = (low: number, middle: number, high: number): RangeRow => ({
    name: `row ${low} ${high}`,
    kind: 'beside',
    grade: 'estimated',
    low,
    middle,
    high,
    label: String(middle),
    range: `${low} to ${high}`,
  });
  test.each([
    ['usual', [row(8000, 11000, 14000), row(9000, 11600, 13000)]],
    ['no width', [row(3, 3, 3)]],
    ['nothing needed', [row(0, 0, 0)]],
    ['huge beside small', [row(1, 2, 3), row(100_000, 200_000, 500_000)]],
  ])('%s: marks stay inside, bands are never closed, the axis begins at zero', (_, rows) => {
    const layout = layOutRanges(rows, { tickLabel: String, smallestStep: 1 }, 'desk', { width: 900 });
    expect(layout.ticks[0]!.label).toBe('0');
    for (const mark of layout.marks) {
      expect(mark.band.width).toBeGreaterThanOrEqual(4);
      expect(mark.stem.x).toBe(layout.zeroX);
      expect(mark.band.x + mark.band.width).toBeLessThanOrEqual(900);
      expect(mark.dotX).toBeGreaterThanOrEqual(layout.zeroX);
    }
  });
});

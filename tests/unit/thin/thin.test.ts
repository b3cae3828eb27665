import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { thin, thinPoints } from '../../../src/model/thin/thin.ts';

const itself = (value: number | null) => value;

describe('a long series thinned', () => {
  test('by hand: of each five tenths the first, lowest, highest, last, and one gap', () => {
    const values = [5, 1, null, null, 9, 3, 4, 6, 7, 2, 8, 8.5, 0, 1, 2, 3];
    //              first low gap       high        last: the first slice of eight keeps 5 1 null 9 6
    expect(thin(values, 10, itself)).toEqual([5, 1, null, 9, 6, 7, 8.5, 0, 3]);
  });
  test('a value that is no number is a gap like none', () => {
    const values = [5, 1, Number.NaN, Number.POSITIVE_INFINITY, 9, 3, 4, 6];
    expect(thin(values, 5, itself)).toEqual([5, 1, Number.NaN, 9, 6]);
  });
  test('a stretch with nothing in it keeps its ends', () => {
    expect(
      thin(
        Array.from({ length: 12 }, () => null),
        5,
        itself,
      ),
    ).toEqual([null, null]);
  });
  test.each([
    [5, 5, 5],
    [6, 6, 6],
    [5, 3, 5],
    [6, 5, 2],
    [9, 9, 9],
    [10, 9, 2],
    [11, 10, 4],
  ])('%i rising values in at most %i are %i', (count, most, left) => {
    expect(
      thin(
        Array.from({ length: count }, (_, i) => i),
        most,
        itself,
      ),
    ).toHaveLength(left);
  });
  test('never more than asked, in their order, each slice with its ends and extremes', () => {
    const values = fc.array(fc.option(fc.integer({ min: -50, max: 50 }), { freq: 6 }), {
      minLength: 11,
      maxLength: 300,
    });
    fc.assert(
      fc.property(values, fc.integer({ min: 5, max: 60 }), (list, most) => {
        const items = list.map((value, place) => ({ value, place }));
        const kept = thin(items, most, ({ value }) => value);
        fc.pre(items.length > most);
        expect(kept.length).toBeLessThanOrEqual(most);
        expect(kept.map(({ place }) => place)).toEqual(
          [...new Set(kept.map(({ place }) => place))].sort((a, b) => a - b),
        );
        const slices = Math.floor(most / 5);
        for (let slice = 0; slice < slices; slice++) {
          const inSlice = ({ place }: { place: number }) =>
            place >= Math.floor((slice * items.length) / slices) &&
            place < Math.floor(((slice + 1) * items.length) / slices);
          const [whole, left] = [items.filter(inSlice), kept.filter(inSlice)];
          expect([left[0], left.at(-1)]).toEqual([whole[0], whole.at(-1)]);
          const known = (list: readonly { value: number | null }[]) => list.flatMap(({ value }) => value ?? []);
          expect(Math.max(...known(left))).toBe(Math.max(...known(whole)));
          expect(Math.min(...known(left))).toBe(Math.min(...known(whole)));
          expect(left.some(({ value }) => value === null)).toBe(whole.some(({ value }) => value === null));
        }
      }),
    );
  });
});

test('days of a signature are thinned by their temperature', () => {
  const points = Array.from({ length: 40 }, (_, i) => ({ outdoorC: (i * 7) % 40, kWhPerDay: (i * 11) % 40 }));
  expect(thinPoints(points, 40)).toBe(points);
  const kept = thinPoints(points, 10);
  expect(kept.map(({ outdoorC }) => outdoorC)).toEqual(kept.map(({ outdoorC }) => outdoorC).sort((a, b) => a - b));
  expect([kept[0]!.outdoorC, kept.at(-1)!.outdoorC]).toEqual([0, 39]);
  const uses = kept.map(({ kWhPerDay }) => kWhPerDay);
  expect([Math.min(...uses), Math.max(...uses)]).toEqual([0, 39]);
});

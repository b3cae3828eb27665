import { describe, expect, test } from 'vitest';
import { RatedPoint } from '../../../src/model/shapes/household.ts';
import {
  EMPTY_POINT,
  POINT_LIMITS,
  type PointRow,
  pointRows,
  readMonths,
  readPoints,
} from '../../../src/screens/machine/typed-list.ts';

const row = (sourceC: string, flowC: string, cop: string, outputKW = ''): PointRow => ({
  sourceC,
  flowC,
  cop,
  outputKW,
});

describe('rated points as they are typed', () => {
  test.each([
    ['nothing', [EMPTY_POINT, EMPTY_POINT], { kind: 'empty' }],
    [
      'two points',
      [row('0', '35', '4.5', '8.2'), EMPTY_POINT, row('0', '55', '2.9')],
      {
        kind: 'whole',
        value: [
          { sourceC: 0, flowC: 35, cop: 4.5, outputKW: 8.2 },
          { sourceC: 0, flowC: 55, cop: 2.9 },
        ],
      },
    ],
    ['a half-typed row', [row('0', '35', '')], { kind: 'wanting', sentence: 'Row 1 still needs its COP.' }],
    [
      'letters',
      [row('0', '35', '4.S')],
      {
        kind: 'wanting',
        sentence: 'Row 1, COP: “4.S” is not a number. A number from 1 to 12 is expected.',
      },
    ],
    [
      'a COP that cannot be',
      [row('0', '35', '45')],
      { kind: 'wanting', sentence: 'Row 1, COP: 45 is outside 1 to 12.' },
    ],
    [
      'the same temperatures twice',
      [row('0', '35', '4.5'), row('0', '35', '4.6')],
      {
        kind: 'wanting',
        sentence: 'Row 2 has the same temperatures as an earlier row.',
      },
    ],
  ])('%s', (_name, rows, expected) => expect(readPoints(rows as PointRow[])).toEqual(expected));

  test('what is kept comes back as it was typed', () => {
    const rows = [row('-5', '35', '4.1', '7'), row('0', '45', '3.4')];
    const read = readPoints(rows);
    expect(read.kind === 'whole' && pointRows(read.value)).toEqual(rows);
  });
  test('the limits are those of the household document', () => {
    for (const cell of ['sourceC', 'flowC', 'cop'] as const) {
      const whole = { sourceC: 0, flowC: 35, cop: 4 };
      for (const at of ['min', 'max'] as const) {
        expect(RatedPoint.safeParse({ ...whole, [cell]: POINT_LIMITS[cell][at] }).success).toBe(true);
      }
      expect(RatedPoint.safeParse({ ...whole, [cell]: POINT_LIMITS[cell].max + 1 }).success).toBe(false);
    }
  });
});

describe('brine by month', () => {
  const twelve = ['5', '4', '4', '5', '7', '9', '11', '12', '11', '9', '7', '6'];
  test('twelve figures', () => expect(readMonths(twelve)).toEqual({ kind: 'whole', value: twelve.map(Number) }));
  test('none', () => expect(readMonths(twelve.map(() => ''))).toEqual({ kind: 'empty' }));
  test.each([
    ['one missing', twelve.with(2, ''), 'All twelve months are needed. March is the first that is missing.'],
    ['one out of bounds', twelve.with(0, '40'), 'January: 40 °C is outside −15 to 25 °C.'],
  ])('%s', (_name, texts, sentence) => expect(readMonths(texts)).toEqual({ kind: 'wanting', sentence }));
});

import { describe, expect, test } from 'vitest';
import { findCrossings } from '../../../src/model/lifetime/pay-back.ts';

describe('crossings, year by year', () => {
  const none = [0, 0, 0, 0];
  test.each([
    ['level savings: cost over saving', [250, 250, 250, 250, 250], [-1000, 0, 0, 0, 0, 0], 4, null],
    ['within a year', [400, 400, 400], [-1000, 0, 0, 0], 2.5, null],
    ['not in these years', [100, 100, 100], [-1000, 0, 0, 0], null, null],
    ['from the first day', [100, 100, 100], [500, 0, 0, 0], 0, null],
    ['cheaper to buy, dearer to run', [-200, -200, -200], [500, 0, 0, 0], null, 2.5],
    ['the other is bought at the end of year 2', [100, 100, 100], [-1000, 0, 900, 0], 2, null],
    ['ahead, bought again, ahead again', [600, 600, 600], [-1000, 0, -500, 0], 2 + 300 / 600, null],
    ['equal throughout', [0, 0, 0], none, 0, null],
  ])('%s', (_, savings, steps, payback, fallsBehind) => {
    const found = findCrossings(savings, steps);
    if (payback === null) expect(found.payback).toBeNull();
    else expect(found.payback).toBeCloseTo(payback, 9);
    expect(found.fallsBehind).toEqual(fallsBehind);
  });
});

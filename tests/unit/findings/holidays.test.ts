import { describe, expect, test } from 'vitest';
import { holidays } from '../../../src/model/findings/holidays.ts';
import { daysOf, heating, outdoorOn } from './made-days.ts';

const COUNT = 300;
const LEFT = 60;
/** A home that heats a fifth of what it would for `away` days from `LEFT` on. */
const homeLeftFor = (away: number) =>
  daysOf(COUNT, (d, h) => 0.06 + (heating(d, h) - 0.06) * (d >= LEFT && d < LEFT + away ? 0.2 : 1), {
    outdoorC: outdoorOn,
  });

describe('a home left in the winter', () => {
  test.each([4, 7, 14, 20, 21])('for %i days is on holiday, from its first day on', (away) => {
    const spells = holidays(homeLeftFor(away));
    expect(spells).toHaveLength(1);
    // The walls take three days to get warm again.
    expect(spells[0]).toEqual([LEFT, LEFT + away + 2]);
  });
  test.each([22, 23, 25, 28, 40])('for %i days is not, and neither from a later day of them', (away) => {
    expect(holidays(homeLeftFor(away))).toEqual([]);
  });
  test('is on holiday within a winter of less, too', () => {
    const days = daysOf(
      COUNT,
      (d, h) => 0.06 + (heating(d, h) - 0.06) * (d >= 100 && d < 110 ? 0.1 : d >= LEFT && d < LEFT + 90 ? 0.5 : 1),
      { outdoorC: outdoorOn },
    );
    expect(holidays(days)).toContainEqual([100, 112]);
  });
});

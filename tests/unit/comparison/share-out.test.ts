import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import {
  ALL_DAY,
  CYLINDER_WINDOWS,
  EVENING,
  STEADY_HEATING,
  WAKING_HOURS,
} from '../../../src/model/year/day-profiles.ts';
import {
  blend,
  cheapestHours,
  daysFromMonths,
  type RateBuckets,
  shareOut,
  sharesByMonth,
} from '../../../src/model/year/share-out.ts';
import { makeTariff } from '../appraisal/make-household.ts';
import { SLOTS_2026, SPACE_SHARE } from './make-demand.ts';

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);
const twoRate = makeTariff('two-rate', [
  { name: 'night', pencePerKWh: 12, times: [{ from: '00:30', to: '07:30' }] },
  { name: 'day', pencePerKWh: 30, times: 'rest' },
]).versions[0]!;
const buckets = rateBuckets(twoRate, SLOTS_2026);

describe('every profile', () => {
  test.each([
    ['all day', ALL_DAY],
    ['steady heating', STEADY_HEATING],
    ['cylinder windows', CYLINDER_WINDOWS],
    ['waking hours', WAKING_HOURS],
    ['evening', EVENING],
  ])('%s has 48 half-hours and loses nothing', (_, weights) => {
    expect(weights).toHaveLength(48);
    const shares = shareOut(SPACE_SHARE, weights, SLOTS_2026, buckets);
    expect(sum(shares.byMonthBand)).toBeCloseTo(1, 12);
    expect(sum(shares.byBand)).toBeCloseTo(1, 12);
    const months = sharesByMonth(SPACE_SHARE, SLOTS_2026);
    for (const [month, share] of shares.byMonth.entries()) expect(share).toBeCloseTo(months[month]!, 12);
  });
});

test('shares of half-hours summed one by one equal the shares by band, clock changes and all', () => {
  const { byMonthBand } = shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, buckets);
  const slow = new Float64Array(24);
  for (let day = 0; day < 365; day++) {
    const from = SLOTS_2026.dayStart[day]!;
    const to = SLOTS_2026.dayStart[day + 1]!;
    const weights = Array.from({ length: to - from }, (_, i) => STEADY_HEATING[SLOTS_2026.minute[from + i]! / 30]!);
    for (let slot = from; slot < to; slot++) {
      const at = SLOTS_2026.month[slot]! * 2 + buckets.bucketOfSlot[slot]!;
      slow[at]! += (SPACE_SHARE[day]! * weights[slot - from]!) / sum(weights);
    }
  }
  for (const [i, share] of slow.entries()) expect(byMonthBand[i]).toBeCloseTo(share, 12);
});

test('a single price needs no half-hours and gives the same months', () => {
  const flat: RateBuckets = { names: ['flat'], pencePerKWh: [30], bucketOfSlot: new Uint8Array(SLOTS_2026.count) };
  const shares = shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, flat);
  expect(sum(shares.byMonth)).toBeCloseTo(1, 12);
  expect(shares.byBand[0]).toBeCloseTo(1, 12);
});

test('a steady use buys 7 hours of 24 at night, but for the two days of clock change', () => {
  const evenly = new Float64Array(365).fill(1 / 365);
  const { byBand } = shareOut(evenly, ALL_DAY, SLOTS_2026, buckets);
  expect(byBand[0]).toBeCloseTo(7 / 24, 3);
});

test('a blend keeps the whole', () => {
  const night = shareOut(SPACE_SHARE, cheapestHours(SLOTS_2026, buckets)!, SLOTS_2026, buckets);
  const boosted = blend(night, shareOut(SPACE_SHARE, EVENING, SLOTS_2026, buckets), 0.1);
  expect(night.byBand[0]).toBeCloseTo(1, 12);
  expect(boosted.byBand[0]).toBeCloseTo(0.9, 12);
  expect(boosted.byBand[1]).toBeCloseTo(0.1, 12);
});

describe('the cheap night of a tariff', () => {
  test('is 00:30 to 07:30 here', () => {
    const weights = cheapestHours(SLOTS_2026, buckets)!;
    expect(weights.map((weight, half) => (weight ? half : -1)).filter((half) => half >= 0)).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14,
    ]);
  });
  test.each([
    ['one price has none', makeTariff('flat', 30)],
    [
      'two cheap hours are too few',
      makeTariff('short', [
        { name: 'cheap', pencePerKWh: 5, times: [{ from: '02:00', to: '04:00' }] },
        { name: 'rest', pencePerKWh: 30, times: 'rest' },
      ]),
    ],
  ])('%s', (_, tariff) => {
    expect(cheapestHours(SLOTS_2026, rateBuckets(tariff.versions[0]!, SLOTS_2026))).toBeNull();
  });
});

test('days from months give the months back, and an empty year is even', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 12, maxLength: 12 }),
      (monthly) => {
        const total = sum(monthly);
        const days = daysFromMonths(monthly, SLOTS_2026);
        expect(sum(days)).toBeCloseTo(1, 9);
        if (total > 1) {
          const back = sharesByMonth(days, SLOTS_2026);
          for (const [month, value] of monthly.entries()) expect(back[month]).toBeCloseTo(value / total, 9);
        }
      },
    ),
  );
});

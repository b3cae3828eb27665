import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import {
  ALL_DAY,
  CYLINDER_WINDOWS,
  DRAWN_WATER,
  EVENING,
  NIGHT,
  STEADY_HEATING,
  WAKING_HOURS,
} from '../../../src/model/year/day-profiles.ts';
import {
  blend,
  cheapestHours,
  daysFromMonths,
  meanDays,
  type RateBuckets,
  shareOut,
  sharesByMonth,
  sharesOfSlots,
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

describe('a year made small', () => {
  /** Two days of January and one of February, of two half-hours each, the last of three. */
  const slots = {
    count: 7,
    day: Uint16Array.of(0, 0, 1, 1, 2, 2, 2),
    month: Uint8Array.of(0, 0, 0, 0, 1, 1, 1),
    minute: Uint16Array.of(0, 30, 0, 30, 0, 30, 60),
    dayStart: Uint32Array.of(0, 2, 4, 7),
  } as unknown as Parameters<typeof shareOut>[2];
  const prices: RateBuckets = {
    names: ['a', 'b'],
    pencePerKWh: [10, 30],
    bucketOfSlot: Uint8Array.of(0, 1, 0, 1, 0, 1, 0),
  };
  const penceOfSlot = Float64Array.of(10, 30, 11, 31, 12, 32, 13);
  const dated: RateBuckets = { ...prices, penceOfSlot };
  const close = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 12));
  test('shares of days by the weights of their half-hours, priced one by one where prices are dated', () => {
    // Weights 1, 3 and 4: days of 1/4 and 3/4 twice, then 1/8, 3/8 and 4/8. Shares of 0.2, 0 and 0.8.
    const expected = {
      byMonthBand: close([0.05, 0.15, 0.5, 0.3, ...new Array<number>(20).fill(0)]),
      byBand: close([0.55, 0.45]),
    };
    const found = shareOut([0.2, 0, 0.8], [1, 3, 4], slots, prices);
    expect([...found.byMonthBand]).toEqual(expected.byMonthBand);
    expect([...found.byBand]).toEqual(expected.byBand);
    expect([...found.byMonth].slice(0, 3)).toEqual(close([0.2, 0.8, 0]));
    expect(found).not.toHaveProperty('penceByMonthBand');
    expect(found.bands).toBe(2);
    const pence = shareOut([0.2, 0, 0.8], [1, 3, 4], slots, dated).penceByMonthBand!;
    expect([...pence].slice(0, 4)).toEqual(close([0.05 * 10, 0.15 * 30, 0.1 * 12 + 0.4 * 13, 0.3 * 32]));
  });
  test('one dated price is priced by its half-hours too; one plain price is the months alone', () => {
    const one: RateBuckets = { names: ['a'], pencePerKWh: [10], bucketOfSlot: new Uint8Array(7) };
    const pence = shareOut([0.2, 0, 0.8], [1, 3, 4], slots, { ...one, penceOfSlot }).penceByMonthBand!;
    expect([...pence].slice(0, 2)).toEqual(close([0.05 * 10 + 0.15 * 30, 0.1 * 12 + 0.3 * 32 + 0.4 * 13]));
    const plain = shareOut([0.2, 0.1, 0.7], [1, 3, 4], slots, one);
    expect([...plain.byMonth].slice(0, 2)).toEqual(close([0.3, 0.7]));
    expect([[...plain.byBand], plain.bands]).toEqual([close([1]), 1]);
  });
  test.each([
    // Whichever day of January is which is made up, so its two days count alike, unless weekdays are the use's own.
    ['by the clock of the month', false, [2 * 21, 3 * 61]],
    ['by its own days', true, [10 + 33, 60 + 124]],
  ])('a use known by the half-hour, %s; none of nothing', (_name, byWeekday, january) => {
    const ofDays = Float64Array.of(1, 2, 3, 4, 5, 6, 7);
    const kWh = byWeekday ? ofDays : meanDays(ofDays, slots);
    const found = sharesOfSlots(kWh, slots, dated)!;
    expect([...found.byMonthBand].slice(0, 4)).toEqual(close([4 / 28, 6 / 28, 12 / 28, 6 / 28]));
    expect([...found.penceByMonthBand!].slice(0, 4)).toEqual(
      close([...january, 60 + 91, 192].map((pence) => pence / 28)),
    );
    expect([...found.byMonth].slice(0, 2)).toEqual(close([10 / 28, 18 / 28]));
    expect(sharesOfSlots(kWh, slots, prices)).not.toHaveProperty('penceByMonthBand');
    const single = { ...prices, names: ['a'], bucketOfSlot: new Uint8Array(7), penceOfSlot };
    const one = sharesOfSlots(kWh, slots, single)!;
    expect([...one.byMonthBand].slice(0, 2)).toEqual(close([10 / 28, 18 / 28]));
    expect([...one.penceByMonthBand!].slice(0, 2)).toEqual(close([(january[0]! + january[1]!) / 28, (151 + 192) / 28]));
    expect(sharesOfSlots(new Float64Array(7), slots, prices)).toBeNull();
  });
  test('a blend mixes shares and pence by the share of the second', () => {
    const [first, second] = [
      shareOut([1, 0, 0], [1, 3, 4], slots, dated),
      shareOut([0, 0, 1], [1, 3, 4], slots, dated),
    ];
    const mixed = blend(first, second, 0.3);
    expect([...mixed.byMonthBand].slice(0, 4)).toEqual(close([0.175, 0.525, 0.1875, 0.1125]));
    expect([...mixed.penceByMonthBand!].slice(0, 4)).toEqual(close([1.75, 15.75, 0.3 * (12 / 8 + 13 / 2), 3.6]));
    expect(blend(first, shareOut([0, 0, 1], [1, 3, 4], slots, prices), 0.3)).not.toHaveProperty('penceByMonthBand');
    expect(mixed.bands).toBe(2);
  });
  test('days of a month share it evenly, and all days an empty year', () => {
    expect([...daysFromMonths([6, 4, 0], slots)]).toEqual(close([0.3, 0.3, 0.4]));
    expect([...daysFromMonths([0, 0, 0], slots)]).toEqual(close([1 / 3, 1 / 3, 1 / 3]));
    expect([...sharesByMonth([0.1, 0.2, 0.7], slots)].slice(0, 3)).toEqual(close([0.3, 0.7, 0]));
  });
});

test.each([
  ['4 hours', ['02:00', '06:00'], 8],
  ['3½ hours are too few', ['02:00', '05:30'], null],
  ['12 hours', ['20:00', '08:00'], 24],
  ['12½ hours are no night', ['20:00', '08:30'], null],
] as const)('the cheapest half-hours of %s', (_name, [from, to], count) => {
  const tariff = makeTariff('night', [
    { name: 'dear', pencePerKWh: 30, times: 'rest' },
    { name: 'cheap', pencePerKWh: 9, times: [{ from, to }] },
  ]);
  const found = cheapestHours(SLOTS_2026, rateBuckets(tariff.versions[0]!, SLOTS_2026));
  expect(found && sum(found)).toBe(count);
});
test('half-hours that are cheap on most days only', () => {
  const weekend = makeTariff('weekend', [
    { name: 'dear', pencePerKWh: 30, times: 'rest' },
    {
      name: 'cheap',
      pencePerKWh: 9,
      times: [
        { days: ['sat', 'sun'], from: '00:00', to: '24:00' },
        { from: '01:00', to: '06:00' },
      ],
    },
  ]);
  const found = cheapestHours(SLOTS_2026, rateBuckets(weekend.versions[0]!, SLOTS_2026))!;
  expect(found.flatMap((weight, half) => (weight ? [half] : []))).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
});

// Sums of the weights by hand, and what lies at a clock time: half-hour 26 begins at 13:00.
test.each([
  ['all day', ALL_DAY, 48, [1, 1, 1, 1]],
  ['steady heating', STEADY_HEATING, 12 * 0.75 + 32 * 1.1 + 4 * 0.9, [0.75, 1.1, 1.1, 0.9]],
  ['cylinder windows', CYLINDER_WINDOWS, 8, [0, 0, 1, 0]],
  ['waking hours', WAKING_HOURS, 6 * 1.5 + 14 * 0.7 + 13 * 1.3, [0, 1.5, 0.7, 1.3]],
  ['drawn water', DRAWN_WATER, 14, [0, 1, 0, 0]],
  ['evening', EVENING, 12, [0, 0, 0, 0]],
  ['night', NIGHT, 14, [0, 1, 0, 0]],
] as const)('%s in half-hours', (_name, profile, whole, at) => {
  expect(sum(profile)).toBeCloseTo(whole, 9);
  expect([0, 13, 27, 44].map((half) => profile[half])).toEqual([...at]);
});
test('edges of the spells of heating and hot water', () => {
  const spells = (profile: readonly number[]) =>
    profile.flatMap((weight, half) => (half > 0 && weight !== profile[half - 1] ? [half / 2] : []));
  expect(spells(STEADY_HEATING)).toEqual([6, 22]);
  expect(spells(CYLINDER_WINDOWS)).toEqual([4, 6, 13, 15]);
  expect(spells(WAKING_HOURS)).toEqual([6, 9, 16, 22.5]);
  expect(spells(DRAWN_WATER)).toEqual([6, 9, 17, 21]);
  expect(spells(EVENING)).toEqual([16, 22]);
  expect(spells(NIGHT)).toEqual([0.5, 7.5]);
});

import { describe, expect, test } from 'vitest';
import { dayShares, splitByBlocks } from '../../../src/model/comparison/block-uses.ts';
import { meanPrice, monthsOf, type Rates, ratesOf, totalOf, type Use } from '../../../src/model/comparison/uses.ts';
import type { TariffBand, TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import { STEADY_HEATING, WAKING_HOURS } from '../../../src/model/year/day-profiles.ts';
import { blend, daysFromMonths, meanDays, shareOut, sharesOfSlots } from '../../../src/model/year/share-out.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { allHours, priceSeries, version } from '../tariff/tariffs.ts';
import { SLOTS_2026, SPACE_SHARE } from './make-demand.ts';

const ELECTRICITY = tell('carrier-electricity');
const dated = version([allHours(25)], {
  series: priceSeries('2026-01-01', 365, (day, half) => 5 + ((day * 13 + half * half) % 301) / 7),
  vat: { rate: 0.05, included: false },
});
const buckets = rateBuckets(dated, SLOTS_2026);
const ratesFor = (times = 1): Rates => ({
  what: ELECTRICITY,
  names: buckets.names.map(() => ELECTRICITY),
  pencePerKWh: buckets.pencePerKWh.map((pence) => pence * times),
  beside: false,
  times,
});
const isWeekend = (day: number) => SLOTS_2026.weekday[SLOTS_2026.dayStart[day]!]! >= 5;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Slot by slot, without classes: kWh × price. */
function slotBySlot(kWhOf: (slot: number) => number): number {
  let pence = 0;
  for (let slot = 0; slot < SLOTS_2026.count; slot++) pence += kWhOf(slot) * buckets.penceOfSlot![slot]!;
  return pence;
}

function layOut(kWh: number, weights: readonly number[]): Float64Array {
  const line = new Float64Array(SLOTS_2026.count);
  for (let day = 0; day < SPACE_SHARE.length; day++) {
    const slots: number[] = [];
    for (let slot = SLOTS_2026.dayStart[day]!; slot < SLOTS_2026.dayStart[day + 1]!; slot++) slots.push(slot);
    const weight = (slot: number) => weights[SLOTS_2026.minute[slot]! / 30]!;
    const all = sum(slots.map(weight));
    for (const slot of slots) line[slot] = (kWh * SPACE_SHARE[day]! * weight(slot)) / all;
  }
  return line;
}

describe('a year on dated half-hourly prices costs what its half-hours cost one by one', () => {
  const line = layOut(4400, STEADY_HEATING);
  const expected = slotBySlot((slot) => line[slot]!);
  test('from shares of days', () => {
    const use = { kWh: 4400, shares: shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, buckets), rates: ratesFor() };
    expect(totalOf([use]).pence).toBeCloseTo(expected, 4);
    expect(sum(monthsOf([use]).unitsPence)).toBeCloseTo(expected, 4);
    expect(sum(ratesOf([use]).map(({ kWh, pencePerKWh }) => kWh * pencePerKWh))).toBeCloseTo(expected, 4);
  });
  test('from half-hours, one by one', () => {
    const use = { kWh: 4400, shares: sharesOfSlots(line, SLOTS_2026, buckets)!, rates: ratesFor() };
    expect(totalOf([use]).pence).toBeCloseTo(expected, 4);
  });
  test('from half-hours, each with the mean of its month, so that no weekday is favoured by a made-up cold day', () => {
    const weekendPrices: TariffVersion = version([
      { name: 'weekend', pencePerKWh: 10, times: [{ days: ['sat', 'sun'], from: '00:00', to: '24:00' }] },
      allHours(20),
    ]);
    const weekend = rateBuckets(weekendPrices, SLOTS_2026);
    const days = (share: (day: number) => number) =>
      sum(Array.from({ length: 365 }, (_, day) => (isWeekend(day) ? share(day) : 0)));
    const shares = sharesOfSlots(meanDays(line, SLOTS_2026), SLOTS_2026, weekend)!;
    // What weekends get of the heat is what they have of the days of each month.
    const even = daysFromMonths([...shares.byMonth], SLOTS_2026);
    expect(shares.byBand[weekend.names.indexOf('weekend')]).toBeCloseTo(
      days((day) => even[day]!),
      3,
    );
    expect(days((day) => even[day]!)).toBeCloseTo(2 / 7, 2);
  });
  test('of two uses laid together, and a tenth dearer', () => {
    const second = layOut(4400, WAKING_HOURS);
    const shares = blend(
      shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, buckets),
      shareOut(SPACE_SHARE, WAKING_HOURS, SLOTS_2026, buckets),
      0.3,
    );
    const mixed = slotBySlot((slot) => line[slot]! * 0.7 + second[slot]! * 0.3);
    expect(totalOf([{ kWh: 4400, shares, rates: ratesFor(1.1) }]).pence).toBeCloseTo(mixed * 1.1, 4);
  });
});

describe('blocks over the months of a year', () => {
  const band = (per: 'day' | 'month', upToKWh: number): TariffBand => ({
    ...allHours(20),
    blocks: { per, steps: [{ upToKWh, pencePerKWh: 40 }] },
  });
  const run = (one: TariffVersion, kWh: readonly number[]) => {
    const flat = rateBuckets(one, SLOTS_2026);
    const rates: Rates = {
      what: ELECTRICITY,
      names: [ELECTRICITY],
      pencePerKWh: flat.pencePerKWh,
      beside: false,
      times: 1,
    };
    const shares = shareOut(SPACE_SHARE, STEADY_HEATING, SLOTS_2026, flat);
    const uses = kWh.map((one): Use => ({ kWh: one, shares, rates }));
    return { before: uses, after: splitByBlocks(uses, rates, one, SLOTS_2026) };
  };
  const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  test.each([
    ['month', 100],
    ['day', 4],
  ] as const)('by the %s, two uses fill one set of steps', (per, upTo) => {
    const { before, after } = run(version([band(per, upTo)]), [3000, 1400]);
    const months = monthsOf(before).boughtKWh;
    const expected = sum(
      months.map((kWh, month) => {
        const first = Math.min(kWh, per === 'day' ? upTo * DAYS[month]! : upTo);
        return first * 40 + (kWh - first) * 20;
      }),
    );
    expect(totalOf(after).pence).toBeCloseTo(expected, 6);
    expect(totalOf(after).kWh).toBeCloseTo(4400, 9);
    expect(sum(ratesOf(after).map(({ kWh }) => kWh))).toBeCloseTo(4400, 6);
    expect(ratesOf(after).map(({ name }) => sayTold(name))).toEqual([
      `electricity, all hours, first ${upTo} kWh a ${per}`,
      `electricity, all hours, above ${upTo} kWh a ${per}`,
    ]);
  });
  test('by the day, a cold day goes beyond a step that the mean day of its month stays under', () => {
    // Every second day takes twice the month's mean of 310 kWh, 20, and those between nothing.
    const one = version([band('day', 15)]);
    const flat = rateBuckets(one, SLOTS_2026);
    const rates: Rates = { what: ELECTRICITY, names: [ELECTRICITY], pencePerKWh: [20], beside: false, times: 1 };
    const january = Float64Array.from({ length: 365 }, (_, day) => (day < 31 ? 1 / 31 : 0));
    const shares = shareOut(january, STEADY_HEATING, SLOTS_2026, flat);
    const dayShare = dayShares(
      Array.from({ length: 365 }, (_, day) => (day < 30 && day % 2 === 0 ? 2 : day < 30 ? 0 : 1)),
      SLOTS_2026,
    );
    const [split] = splitByBlocks([{ kWh: 310, shares, rates, dayShare }], rates, one, SLOTS_2026);
    expect(totalOf([split!]).pence).toBeCloseTo(15 * (15 * 40 + 5 * 20) + 10 * 40, 6);
  });
  test('where nothing is used, the next unit would be one of the first step', () => {
    const [none] = run(version([band('month', 100)]), [0]).after;
    expect([...none!.shares.byBand]).toEqual([expect.closeTo(1, 9), 0]);
    expect(meanPrice([none!])).toBeCloseTo(40, 9);
  });
  test('without blocks the uses stay as they are', () => {
    const { before, after } = run(version([allHours(20)]), [3000]);
    expect(after).toBe(before);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toDayNumber } from '../../../src/model/calendar/civil.ts';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import type { PriceSeries } from '../../../src/model/shapes/tariff.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import { sortIntoClasses } from '../../../src/model/tariff/price-classes.ts';
import { seriesOverYear, seriesPriceOn } from '../../../src/model/tariff/series-prices.ts';
import { rateBuckets } from '../../../src/model/tariff/slot-price.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { cpuMs } from '../cpu-ms.ts';
import { allHours, priceSeries, tariff, version } from './tariffs.ts';

const london2026 = yearSlots(2026, 'Europe/London');
const slotOf = (date: string, half: number) =>
  london2026.dayStart[(Date.parse(date) - Date.parse('2026-01-01')) / 86_400_000]! + half;
const whole = priceSeries('2026-01-01', 365, (day, half) => ((day * 7 + half) % 40) + 0.5);
const faultsOf = (series: PriceSeries) => findTariffFaults(tariff([version([allHours(25)], { series })]));

describe('every half-hour has its dated price', () => {
  test('a promised highest price cuts every half-hour above it and no other', () => {
    const plain = seriesOverYear(whole, london2026);
    const most = [...plain].toSorted((a, b) => a - b)[1000]!;
    const cut = seriesOverYear({ ...whole, mostPencePerKWh: most }, london2026);
    expect([...cut]).toEqual(Array.from(plain, (pence) => Math.min(pence, most)));
    expect(Math.max(...cut)).toBeLessThan(Math.max(...plain));
  });

  test('in the year of the series', () => {
    const prices = seriesOverYear(whole, london2026);
    for (const { date, pencePerKWh } of whole.days) {
      for (const [half, pence] of pencePerKWh.entries()) expect(prices[slotOf(date, half)]).toBe(pence);
    }
  });

  test('in another year that of the same weekday, 52 weeks away', () => {
    const last = priceSeries('2025-01-01', 365, (day) => day);
    const prices = seriesOverYear(last, london2026);
    // 1 January 2026 is a Thursday; 364 days before is Thursday 2 January 2025, the second day of the series.
    expect(prices[slotOf('2026-01-01', 0)]).toBe(1);
    expect(prices[slotOf('2026-12-30', 10)]).toBe(364);
    // Two times 52 weeks before 31 December 2026 lies 2 January 2025 again.
    expect(prices[slotOf('2026-12-31', 10)]).toBe(1);
  });

  test('the clock is kept where only one of the two days changes it', () => {
    const last = priceSeries('2025-01-01', 365, (_, half) => half);
    const prices = seriesOverYear(last, london2026);
    // 29 March 2026 has no hour from 01:00; its match, 30 March 2025, has none either.
    expect(prices[slotOf('2026-03-29', 2)]).toBe(2);
    const shifted = seriesOverYear(
      priceSeries('2024-01-01', 366, (_, half) => half),
      london2026,
    );
    // 31 March 2024 changed the clock; its match in 2026 is Sunday 29 March: 02:00 is the third half-hour of both.
    expect(shifted[slotOf('2026-03-29', 2)]).toBe(2);
    expect(shifted[slotOf('2026-06-10', 47)]).toBe(47);
  });

  test('where only one of the two days changes its clock', () => {
    const slots = yearSlots(2024, 'Europe/London');
    const prices = seriesOverYear(
      priceSeries('2023-01-01', 365, (_, half) => half),
      slots,
    );
    const at = (date: string, half: number) =>
      prices[slots.dayStart[(Date.parse(date) - Date.parse('2024-01-01')) / 86_400_000]! + half];
    // 31 March 2024 has no hour from 01:00; 2 April 2023, 52 weeks before it, has: 02:00 is half-hour 2 of the one, 4 of the other.
    expect([1, 2, 45].map((half) => at('2024-03-31', half))).toEqual([1, 4, 47]);
    // 24 March 2024 has it and 26 March 2023 has not: the price before it stands in.
    expect([1, 2, 3, 4, 47].map((half) => at('2024-03-24', half))).toEqual([1, 1, 1, 2, 45]);
  });
  test('a day that begins at 01:00 gives its first price to the hour that it has not', () => {
    const slots = yearSlots(2024, 'Asia/Beirut');
    const days = [{ date: '2022-03-27', pencePerKWh: Array.from({ length: 46 }, (_, half) => half) }];
    const start = slots.dayStart[31 + 29 + 23]!; // 24 March 2024, twice 52 weeks later, with all of its hours
    expect([...seriesOverYear({ zone: 'Asia/Beirut', days }, slots).slice(start, start + 4)]).toEqual([0, 0, 0, 1]);
  });
  test('a price that is missing is none, and so is one outside the series', () => {
    const days = [
      { date: '2026-03-02', pencePerKWh: [7, null, 9] },
      { date: '2026-03-03', pencePerKWh: new Array<number>(48).fill(5) },
    ];
    const series = { zone: 'Europe/London', days };
    const day = toDayNumber('2026-03-02');
    expect([0, 1, 2, 3].map((half) => seriesPriceOn(series, day, half))).toEqual([7, Number.NaN, 9, Number.NaN]);
    expect([day - 1, day + 1, day + 2].map((one) => seriesPriceOn(series, one, 0))).toEqual([
      Number.NaN,
      5,
      Number.NaN,
    ]);
    const prices = seriesOverYear(series, london2026);
    const start = slotOf('2026-03-02', 0);
    expect([...prices.slice(start - 1, start + 5)]).toEqual([Number.NaN, 7, Number.NaN, 9, 9, 9]);
  });
  test('days out of reach take the band beside the series', () => {
    const january = version([allHours(25)], { series: priceSeries('2026-01-01', 31, () => 10) });
    const { penceOfSlot } = rateBuckets(january, london2026);
    expect(penceOfSlot![slotOf('2026-01-31', 47)]).toBe(10);
    expect(penceOfSlot![slotOf('2026-02-01', 0)]).toBe(25);
  });

  test('VAT goes on prices that leave it out', () => {
    const plain = version([allHours(20)], { series: whole, vat: { rate: 0.05, included: false } });
    expect(rateBuckets(plain, london2026).penceOfSlot![0]).toBeCloseTo(0.5 * 1.05, 12);
  });

  test('a second asking costs nothing', () => {
    const once = version([allHours(20)], { series: whole });
    expect(rateBuckets(once, london2026)).toBe(rateBuckets(once, london2026));
    rateBuckets(once, london2026);
    const began = cpuMs();
    for (let i = 0; i < 100; i++) rateBuckets(once, london2026);
    expect((cpuMs() - began) / 100).toBeLessThan(1);
  });
});

describe('classes of price', () => {
  test('hold every half-hour, at most eight, and their means give the mean of all', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -200, max: 500, noNaN: true }), { minLength: 1, maxLength: 300 }),
        (prices) => {
          const { names, pencePerKWh, bucketOfSlot } = sortIntoClasses(prices);
          expect(names.length).toBeLessThanOrEqual(8);
          const sum = [...bucketOfSlot].reduce((total, bucket) => total + pencePerKWh[bucket]!, 0);
          expect(sum).toBeCloseTo(
            prices.reduce((total, price) => total + price, 0),
            6,
          );
        },
      ),
    );
  });
  // Eight of a width hold what lies just below eight widths; a ninth would be needed at them.
  test.each([1, 2, 5, 10, 20, 50, 100, 200])('of %i p as long as eight of them are enough', (width) => {
    const { names, pencePerKWh, bucketOfSlot } = sortIntoClasses([0, 8 * width - 0.5, 0.25 * width]);
    expect(names).toEqual([
      tell('pence-between', { low: 0, high: width }),
      tell('pence-between', { low: 7 * width, high: 8 * width }),
    ]);
    expect(pencePerKWh).toEqual([0.125 * width, 8 * width - 0.5]);
    expect([...bucketOfSlot]).toEqual([0, 1, 0]);
    expect(sayTold(sortIntoClasses([0, 8 * width]).names[0]!)).not.toBe(`0 to ${width} p`);
  });
  test('of 500 p for the dearest that a series may hold', () =>
    expect(sortIntoClasses([-1300, 1300]).names.map(sayTold)).toEqual(['−1,500 to −1,000 p', '1,000 to 1,500 p']));
  test('are named by their bounds', () => {
    expect(sortIntoClasses([-3, 4.9, 5, 12]).names.map(sayTold)).toEqual([
      '−5 to 0 p',
      '0 to 5 p',
      '5 to 10 p',
      '10 to 15 p',
    ]);
  });
});

describe('gaps are refused and the hour is named', () => {
  const without = (date: string, half: number) => ({
    ...whole,
    days: whole.days.map((day) =>
      day.date === date ? { ...day, pencePerKWh: day.pencePerKWh.map((p, i) => (i === half ? null : p)) } : day,
    ),
  });
  const longer = whole.days.map((day) =>
    day.date === '2026-03-29' ? { ...day, pencePerKWh: [...day.pencePerKWh, 1, 2] } : day,
  );
  test.each([
    ['whole', whole, []],
    [
      'one half-hour',
      without('2026-02-10', 35),
      [{ code: 'series-gap', data: { date: '2026-02-10', time: '17:30', count: 1 } }],
    ],
    // The fourth half-hour of the spring day begins at 02:30 by the clock.
    [
      'on the spring day',
      without('2026-03-29', 3),
      [{ code: 'series-gap', data: { date: '2026-03-29', time: '02:30' } }],
    ],
    [
      'the spring day with 48',
      { ...whole, days: longer },
      [{ code: 'series-day-length', data: { date: '2026-03-29', found: 48, expected: 46 } }],
    ],
    [
      'a day cut short',
      { ...whole, days: [...whole.days.slice(0, 364), { ...whole.days[364]!, pencePerKWh: [1, 2, 3] }] },
      [{ code: 'series-gap', data: { date: '2026-12-31', time: '01:30', count: 45 } }],
    ],
    [
      'two days left out',
      { ...whole, days: whole.days.filter(({ date }) => date !== '2026-05-02' && date !== '2026-05-03') },
      [{ code: 'series-hole', data: { date: '2026-05-02', time: '00:00', days: 2 } }],
    ],
    [
      'two days in the wrong order',
      { ...whole, days: [whole.days[1]!, whole.days[0]!] },
      [{ code: 'series-order', data: { date: '2026-01-01', previous: '2026-01-02' } }],
    ],
    [
      'the second day left out',
      { ...whole, days: whole.days.filter(({ date }) => date !== '2026-01-02') },
      [{ code: 'series-hole', data: { date: '2026-01-02', time: '00:00', days: 1 } }],
    ],
    [
      'a day twice',
      { ...whole, days: [whole.days[0]!, ...whole.days] },
      [{ code: 'series-order', data: { date: '2026-01-01', previous: '2026-01-01' } }],
    ],
    ['fifty-two weeks, which every weekday of a year is found in', { ...whole, days: whole.days.slice(0, 364) }, []],
    [
      'a day less',
      { ...whole, days: whole.days.slice(0, 363) },
      [{ code: 'series-part-year', data: { days: 363, without: 2 } }],
    ],
    [
      'a hundred days',
      { ...whole, days: whole.days.slice(0, 100) },
      [{ code: 'series-part-year', weight: 'question', data: { days: 100, without: 265 } }],
    ],
  ])('%s', (_, series, faults) => {
    const found = faultsOf(series);
    expect(found).toHaveLength(faults.length);
    expect(found).toMatchObject(faults);
  });
});

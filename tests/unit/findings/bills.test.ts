import { describe, expect, test } from 'vitest';
import { addDays, toCivilDate } from '../../../src/model/calendar/civil.ts';
import { findEstimateCorrected } from '../../../src/model/findings/estimate-corrected.ts';
import { findInReadings } from '../../../src/model/findings/find-in-readings.ts';
import { heatingDegrees, type OutdoorDays } from '../../../src/model/findings/meter-days.ts';
import { findRegistersSwapped } from '../../../src/model/findings/registers-swapped.ts';
import { bandsOf } from '../../../src/model/findings/slot-prices.ts';
import type { EvidencePeriod } from '../../../src/model/shapes/evidence.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { daysOf, FIRST, outdoor, outdoorOn, readingsOf, textbook } from './made-days.ts';

/** Months of 30 days whose use follows the cold exactly. */
function bills(change: (month: number, kWh: number) => Partial<EvidencePeriod>): EvidencePeriod[] {
  return Array.from({ length: 9 }, (_, month): EvidencePeriod => {
    let kWh = 0;
    for (let day = month * 30; day < (month + 1) * 30; day++) kWh += 8 + 1.2 * Math.max(0, 15.5 - outdoorOn(day));
    const span = { from: addDays(FIRST, month * 30), to: addDays(FIRST, (month + 1) * 30) };
    return { ...span, kWh, quality: 'actual', ...change(month, kWh) };
  });
}

describe('estimated readings', () => {
  const estimate = (error: number, back: number) => (month: number, kWh: number) =>
    month === 4 ? { kWh: kWh + error, quality: 'estimated' as const } : month === 5 ? { kWh: kWh - back } : {};
  test.each([
    ['200 too much, all of it back', estimate(200, 200), 200],
    ['200 too little, all of it charged later', estimate(-200, -200), -200],
    ['a good estimate', estimate(8, 8), null],
    ['too much, not yet back', estimate(200, 0), null],
  ])('%s', (_, change, kWh) => {
    const input = { readings: [], outdoor: outdoor(280), prices: { pencePerKWh: 25 }, periods: bills(change) };
    const findings = findInReadings(input).filter(({ code }) => code === 'estimate-corrected');
    expect(findings.map((finding) => Math.round(finding.kWh))).toEqual(kWh === null ? [] : [kWh]);
    expect(findings.every(({ kWhYear, penceYear }) => kWhYear === 0 && penceYear === 0)).toBe(true);
  });
  const found = (periods: readonly EvidencePeriod[], weather: OutdoorDays | undefined = outdoor(280)) =>
    findEstimateCorrected(periods, weather, { pencePerKWh: 25 });
  test('its units, cost and days: 200 kWh too much, 160 of them back', () => {
    const periods = bills(estimate(200, 160));
    const [finding, ...others] = found(periods.toReversed());
    expect(others).toEqual([]);
    const likely = bills(() => ({}))[4]!.kWh;
    expect(finding).toMatchObject({
      meter: 'bills',
      from: addDays(FIRST, 120),
      to: addDays(FIRST, 180),
      sure: expect.closeTo(0.9 - 0.2 / 2, 9),
      seen: {
        estimatedKWh: expect.closeTo(likely + 200, 6),
        likelyKWh: expect.closeTo(likely, 6),
        backKWh: expect.closeTo(-160, 6),
        until: addDays(FIRST, 150),
      },
      kWh: expect.closeTo(200, 6),
      pence: expect.closeTo(5000, 6),
    });
  });
  const share = (of: number) => of * bills(() => ({}))[4]!.kWh;
  const without = (place: number): OutdoorDays => ({
    first: FIRST,
    values: [...(outdoor(280).values as number[])].with(place, Number.NaN),
  });
  test.each([
    ['half of it back', bills(estimate(200, 101)), 1],
    ['less than half', bills(estimate(200, 99)), 0],
    ['half as much again', bills(estimate(200, 299)), 1],
    ['more than that', bills(estimate(200, 301)), 0],
    ['a fifth of the month', bills(estimate(share(0.201), share(0.201))), 1],
    ['less than a fifth', bills(estimate(share(0.199), share(0.199))), 0],
    ['both too much', bills(estimate(200, -200)), 0],
    ['four others', bills(estimate(200, 200)).slice(0, 6), 1],
    ['three others', bills(estimate(200, 200)).slice(1, 6), 0],
    [
      'the next one estimated too',
      bills((month, kWh) => ({
        ...estimate(200, 200)(month, kWh),
        ...(month === 5 && { quality: 'estimated' as const }),
      })),
      0,
    ],
    [
      'another estimate is no evidence',
      bills((month, kWh) => (month < 2 ? { quality: 'estimated' as const } : estimate(200, 200)(month, kWh))).slice(
        0,
        7,
      ),
      0,
    ],
    [
      'a month between them is missing',
      bills(estimate(200, 200)).map((one, i) => (i === 5 ? { ...one, from: addDays(one.from, 1) } : one)),
      0,
    ],
    ['the last bill', bills(estimate(200, 200)).slice(0, 5), 0],
  ] as [string, EvidencePeriod[], number][])('%s', (_, periods, count) => expect(found(periods)).toHaveLength(count));
  test('a day without weather in either leaves nothing to say; elsewhere it leaves a period out', () => {
    const periods = bills(estimate(200, 200));
    expect([120, 149, 150, 179].map((place) => found(periods, without(place)).length)).toEqual([0, 0, 0, 0]);
    expect(found(periods, without(119))).toHaveLength(1);
    expect(found(periods.slice(0, 6), without(119))).toEqual([]);
    expect(found(periods, undefined)).toHaveLength(1);
    expect(findEstimateCorrected(periods, undefined, { pencePerKWh: 25 })).toEqual([]);
  });
  test('bills of other lengths count by the day; use that falls with the cold is taken as the same every day', () => {
    const ends = [0, 25, 60, 88, 120, 150, 185, 210, 240, 270];
    const spans = (kWhOn: (day: number) => number, error: number) =>
      ends.slice(1).map((end, i): EvidencePeriod => {
        const days = Array.from({ length: end - ends[i]! }, (_, day) => kWhOn(ends[i]! + day));
        const kWh = days.reduce((sum, one) => sum + one, 0) + (i === 4 ? error : i === 5 ? -error : 0);
        const quality = i === 4 ? 'estimated' : 'actual';
        return { from: addDays(FIRST, ends[i]!), to: addDays(FIRST, end), kWh, quality };
      });
    const cold = (day: number) => heatingDegrees(outdoorOn(day));
    expect(found(spans((day) => 8 + 1.2 * cold(day), 220))[0]!.kWh).toBeCloseTo(220, 6);
    const warmer = spans((day) => 30 - cold(day), 300);
    const others = warmer.filter((_, i) => i !== 4 && i !== 5);
    const days = ends
      .slice(1)
      .map((end, i) => end - ends[i]!)
      .filter((_, i) => i !== 4 && i !== 5);
    const mean = others.reduce((sum, { kWh }) => sum + kWh, 0) / days.reduce((sum, count) => sum + count, 0);
    const level = warmer.map((one, i) =>
      i === 4 ? { ...one, kWh: 30 * mean + 400 } : i === 5 ? { ...one, kWh: 35 * mean - 400 } : one,
    );
    expect(found(level)[0]!.kWh).toBeCloseTo(400, 6);
  });
  test('where bills stray an estimate has to stray twice as far', () => {
    const strays = bills((month, kWh) => ({ kWh: kWh + [90, -80, 70, -90, 0, 0, 100, -60, 80][month]! }));
    const degrees = strays.map((_, month) => {
      const days = Array.from({ length: 30 }, (_, i) => heatingDegrees(outdoorOn(month * 30 + i)));
      return days.reduce((sum, value) => sum + value / 30, 0);
    });
    const others = [0, 1, 2, 3, 6, 7, 8];
    const line = textbook(
      others.map((i) => degrees[i]!),
      others.map((i) => strays[i]!.kWh),
    );
    const apart = 2 * Math.sqrt(line.sse / 5); // seven bills less two for the line
    expect(apart).toBeGreaterThan(0.22 * line.at(degrees[4]!));
    const astray = (kWh: number) =>
      strays.map((one, i): EvidencePeriod => {
        const right = line.at(degrees[i]!);
        return i === 4
          ? { ...one, kWh: right + kWh, quality: 'estimated' }
          : i === 5
            ? { ...one, kWh: right - kWh }
            : one;
      });
    expect(found(astray(1.01 * apart))).toHaveLength(1);
    expect(found(astray(0.99 * apart))).toEqual([]);
  });
});

describe('registers', () => {
  const version: TariffVersion = {
    from: '2025-01-01',
    standingPencePerDay: 50,
    vat: { rate: 0.05, included: true },
    bands: [
      { name: 'night', pencePerKWh: 12, times: [{ from: '00:00', to: '07:00' }] },
      { name: 'day', pencePerKWh: 32, times: 'rest' },
    ],
  };
  const span = { from: FIRST, to: addDays(FIRST, 60) };
  interface Register {
    /** Units a day by day and by night. */
    readonly dear?: number;
    readonly cheap?: number;
    readonly version?: Partial<TariffVersion>;
    readonly count?: number;
  }
  const swapped = (dearKWh: number, cheapKWh: number, change: Register = {}) => {
    const { dear = 17, cheap = 3.5, count = 80 } = change;
    return findInReadings({
      readings: [readingsOf(count, (_, hour) => (hour < 7 ? cheap / 7 : dear / 17), { meter: 'whole-house' })],
      prices: { pencePerKWh: 25, versions: [{ ...version, ...change.version }] },
      registers: [{ ...span, dearKWh, cheapKWh }],
    }).filter(({ code }) => code === 'registers-swapped');
  };
  const three = [
    version.bands[0]!,
    { name: 'peak', pencePerKWh: 40, times: [{ from: '16:00', to: '19:00' }] },
    version.bands[1]!,
  ];
  const blocks = { per: 'day' as const, steps: [{ upToKWh: 5, pencePerKWh: 40 }] };
  const series = { zone: 'Europe/London' as const, days: [{ date: '2025-12-01', pencePerKWh: new Array(48).fill(9) }] };
  // 17 and 3.5 kWh a day: 60 days are 1,020 and 210 kWh.
  test.each([
    ['right', 1020, 210, {}, []],
    ['a little off', 1000, 230, {}, []],
    ['exchanged', 210, 1020, {}, [-16_200]], // 810 kWh × (12 − 32) p
    ['the bands named in the other order', 210, 1020, { version: { bands: version.bands.toReversed() } }, [-16_200]],
    ['VAT on top', 210, 1020, { version: { vat: { rate: 0.05, included: false } } }, [-17_010]],
    // 160 of 1,390 kWh fit neither way, 11.5 %; 175 of 1,405 are 12.5 %.
    ['exchanged, a tenth off', 370, 1020, {}, [-650 * 32 + 810 * 12]],
    ['exchanged, an eighth off', 385, 1020, {}, []],
    ['exchanged, the other register a tenth off', 210, 920, {}, [-810 * 32 + 710 * 12]], // 100 of 1,130 kWh
    ['exchanged, the other an eighth off', 210, 860, {}, []], // 160 of 1,070 kWh
    ['21 % between the two ways', 44.75 * 60, 55.25 * 60, { dear: 55.25, cheap: 44.75 }, [-630 * 20]],
    ['19 %', 45.25 * 60, 54.75 * 60, { dear: 54.75, cheap: 45.25 }, []],
    // 3,525 and 2,475 kWh read: 690 kWh fit neither way, and twice that must stay under the 1,410 as billed.
    ['twice as good the other way', 2475 + 690, 3525, { dear: 58.75, cheap: 41.25 }, [-360 * 32 + 1050 * 12]],
    ['less than twice', 2475 + 710, 3525, { dear: 58.75, cheap: 41.25 }, []],
    ['nine days in ten known, the others like them', 210, 1020, { count: 54 }, [-16_200]],
    ['fewer', 210, 1020, { count: 53 }, []],
    ['nothing billed', 0, 0, {}, []],
    ['three prices', 210, 1020, { version: { bands: three } }, []],
    ['steps', 210, 1020, { version: { bands: [version.bands[0]!, { ...version.bands[1]!, blocks }] } }, []],
    ['dated prices', 210, 1020, { version: { series } }, []],
  ] as [string, number, number, Register, number[]][])('%s', (_, dearKWh, cheapKWh, change, pence) => {
    expect(swapped(dearKWh, cheapKWh, change).map((finding) => Math.round(finding.pence))).toEqual(pence);
  });
  test('what is billed and read, how sure, and a year of it', () => {
    const [finding] = swapped(3165, 3525, { dear: 58.75, cheap: 41.25 });
    expect(finding).toMatchObject({ meter: 'bills', ...span, grade: 'measured', kWh: 0, kWhYear: 0 });
    expect(finding!.seen).toEqual({
      billedDearKWh: 3165,
      billedCheapKWh: 3525,
      dearKWh: expect.closeTo(3525, 6),
      cheapKWh: expect.closeTo(2475, 6),
    });
    expect(finding!.sure).toBeCloseTo(1 - 690 / 1410, 9);
    expect(finding!.penceYear).toBeCloseTo(((-360 * 32 + 1050 * 12) * 365) / 60, 6);
  });
  test('no tariff, no answer', () => {
    expect(
      findRegistersSwapped(
        [{ ...span, dearKWh: 210, cheapKWh: 1020 }],
        daysOf(80, () => 1),
        { pencePerKWh: 25 },
      ),
    ).toEqual([]);
  });
  test('a bank holiday has the price of its own kind of day', () => {
    const holidays: TariffVersion = {
      ...version,
      bankHolidays: 'england-and-wales',
      bands: [
        { name: 'night', pencePerKWh: 12, times: [{ days: ['bank-holiday'], from: '00:00', to: '24:00' }] },
        version.bands[1]!,
      ],
    };
    const days = daysOf(90, () => 1, { meter: 'whole-house' });
    const bands = bandsOf(days, holidays);
    const cheap = Array.from(days.dayNumber)
      .filter((_, day) => bands[day * days.perDay] === 0)
      .map(toCivilDate);
    expect(cheap).toEqual(['2025-12-25', '2025-12-26']); // Banking and Financial Dealings Act 1971, Schedule 1
  });
  test('each month and each reading of the day has its own band', () => {
    const winter: TariffVersion = {
      ...version,
      bands: [
        { name: 'night', pencePerKWh: 12, times: [{ months: [12], from: '23:00', to: '01:00' }] },
        version.bands[1]!,
      ],
    };
    for (const minutes of [30, 60]) {
      const days = daysOf(90, () => 1, { minutes });
      const bands = bandsOf(days, winter);
      const night = [...bands.keys()].filter((i) => bands[i] === 0);
      expect(night).toHaveLength((29 * 2 * 60) / minutes);
      expect(night.slice(0, 2)).toEqual([61 * days.perDay, 61 * days.perDay + (minutes === 30 ? 1 : 23)]);
    }
    const open = { ...version, bands: [version.bands[0]!] };
    expect(
      bandsOf(
        daysOf(1, () => 1, { minutes: 60 }),
        open,
      ),
    ).toEqual(Int8Array.from({ length: 24 }, (_, i) => (i < 7 ? 0 : -1)));
  });
});

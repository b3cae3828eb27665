/** A home simulated by the half-hour, whose meter alone is read: the time constant that comes back. */
import { describe, expect, test } from 'vitest';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import { fitWarmth } from '../../../src/model/hours/fit-warmth.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { makeHousehold, makeTariff } from '../appraisal/make-household.ts';

interface Made {
  readonly hours: number;
  /** Clock hours between which nothing heats. */
  readonly off?: readonly [number, number];
  /** Most heat over the loss on the day in question. */
  readonly boost?: number;
  readonly wobble?: number;
  readonly scale?: number;
}

const ROOM_C = 20;
const OUTDOOR_C = [4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5].map((mean) =>
  Array.from({ length: 48 }, (_, half) => mean - 3 * Math.cos((2 * Math.PI * (half - 8)) / 48)),
);

/** Mean half-hours of the meter by month: rooms kept at 20 °C but by night, 200 W/K, and 0.2 kWh of hot water morning and evening. */
function meterOf({ hours, off, boost = 2, wobble = 0, scale = 1 }: Made): number[][] {
  let noise = 7;
  return OUTDOOR_C.map((outdoor, month) => {
    const kWhPerK = 0.2 * hours;
    const summer = month >= 5 && month <= 7;
    let roomC = ROOM_C;
    let shape: number[] = [];
    for (let day = 0; day < 8; day++) {
      shape = outdoor.map((outdoorC, half) => {
        const isOff = off !== undefined && (half / 2 >= off[0] || half / 2 < off[1]);
        const lost = (0.2 * (roomC - outdoorC)) / 2;
        const wanted = lost + (ROOM_C - roomC) * kWhPerK;
        const most = (boost * 0.2 * (ROOM_C - outdoorC)) / 2;
        noise = (noise * 16807) % 2147483647;
        const given = isOff || summer ? 0 : Math.max(0, Math.min(wanted, most));
        roomC += (given - lost) / kWhPerK;
        if (summer) roomC = ROOM_C;
        const water = half === 14 || half === 38 ? 0.2 : 0;
        return scale * (given * (1 + wobble * (noise / 2147483647 - 0.5)) + water);
      });
    }
    return shape;
  });
}

describe('a home let go by night', () => {
  test.each([
    { hours: 12, off: [22.5, 5.5] },
    { hours: 25, off: [22.5, 5.5] },
    { hours: 50, off: [22, 6] },
    { hours: 25, off: [23, 6], scale: 1.2 },
    { hours: 30, off: [22, 6], boost: 3 },
  ] as const)('comes back with its time constant: %o', (made) => {
    const fit = fitWarmth(meterOf(made), OUTDOOR_C, ROOM_C)!;
    expect(Math.abs(fit.hours / made.hours - 1)).toBeLessThan(0.1);
    expect(fit.low).toBeLessThan(made.hours * 1.1);
    expect(fit.high).toBeGreaterThan(made.hours * 0.9);
    expect(fit.months).toBeGreaterThanOrEqual(5);
  });
  test('is the more in doubt the less steady it is heated', () => {
    const [still, wobbly] = [0, 0.2].map(
      (wobble) => fitWarmth(meterOf({ hours: 25, off: [22, 6], wobble }), OUTDOOR_C, ROOM_C)!,
    );
    const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
    expect(width(wobbly!)).toBeGreaterThan(width(still!));
    expect(wobbly!.low).toBeLessThan(25);
    expect(wobbly!.high).toBeGreaterThan(25);
  });
});

describe('what shows no time constant', () => {
  test.each<readonly [string, readonly (readonly number[])[]]>([
    ['a home heated day and night', meterOf({ hours: 25 })],
    ['nothing at all', OUTDOOR_C.map(() => new Array<number>(48).fill(0))],
    [
      'heat in two spells a day',
      OUTDOOR_C.map((_, m) =>
        Array.from({ length: 48 }, (__, h) => (m > 4 && m < 9 ? 0 : (h > 11 && h < 18) || (h > 34 && h < 44) ? 2 : 0)),
      ),
    ],
    [
      'a night that nobody makes good',
      OUTDOOR_C.map((_, m) => Array.from({ length: 48 }, (__, h) => (m > 4 && m < 9 ? 0 : h > 12 ? 1 : 0))),
    ],
    ['hardly a winter', meterOf({ hours: 25, off: [22, 6] }).map((halves, m, all) => (m === 0 ? halves : all[6]!))],
  ])('%s', (_, shape) => {
    expect(fitWarmth(shape, OUTDOOR_C, ROOM_C)).toBeNull();
  });
});

describe('a mean day that follows by hand', () => {
  const evenly = OUTDOOR_C.map(() => new Array<number>(48).fill(10));
  /** e^(t / τ) of the half-hours of a night and a morning, summed. */
  const grown = (from: number, to: number, hours: number) =>
    Array.from({ length: to - from }, (_, i) => Math.exp((from + i) / 2 / hours)).reduce((sum, one) => sum + one, 0);
  /** Off for so many half-hours, then so many that make it good within τ hours, then those of a steady day; no summer. */
  const dayOf = (off: number, boost: number, hours: number, steady: (i: number) => number = () => 1) => {
    const made = 1 + grown(0, off, hours) / grown(off, off + boost, hours);
    const day = Array.from({ length: 48 }, (_, i) => (i < off ? 0 : i < off + boost ? made : steady(i - off - boost)));
    return OUTDOOR_C.map((_, month) => (month >= 5 && month <= 7 ? day.map(() => 0) : day));
  };
  const fitted = (...of: Parameters<typeof dayOf>) => fitWarmth(dayOf(...of), evenly, ROOM_C);
  test('comes back to the hour, and without doubt', () => {
    const found = fitted(12, 4, 20)!;
    expect([found.hours, found.low, found.high]).toEqual([20, 20, 20].map((hours) => expect.closeTo(hours, 6)));
    expect(found.months).toBe(9);
  });
  test('hot water is taken off as in the mean of June, July and August', () => {
    const water = (month: number) => ({ 5: 0.5, 6: 2, 7: 0.8 })[month] ?? 1.1;
    const shape = dayOf(12, 4, 20).map((halves, month) =>
      halves.map((kWh, half) => kWh + (half === 14 || half === 40 ? water(month) : 0)),
    );
    expect(fitWarmth(shape, evenly, ROOM_C)!.hours).toBeCloseTo(20, 6);
  });
  test('eight half-hours of steady heat are enough, seven are not', () => {
    expect(fitted(22, 18, 60)!.hours).toBeCloseTo(60, 6);
    expect(fitted(22, 19, 60)).toBeNull();
  });
  test('heat that strays by 14 % is steady, by 16 % it is not; the doubt is that of its mean', () => {
    // So many of 32 half-hours at noon give 0.6 in place of 1.
    const dips = (count: number) => (i: number) => (i >= 8 && i < 8 + count ? 0.6 : 1);
    expect(fitted(12, 4, 20, dips(5))).toBeNull();
    const { hours, low, high } = fitted(12, 4, 20, dips(4))!;
    const mean = 1 - (4 * 0.4) / 32;
    const error = (0.4 * Math.sqrt((4 / 32) * (28 / 32))) / Math.sqrt(32);
    const made = 1 + grown(0, 12, 20) / grown(12, 16, 20);
    // With q by night and in the morning: q × all of it is what the morning gave.
    const isRoot = (q: number, tau: number) =>
      expect((q * grown(0, 16, tau)) / (made * grown(12, 16, tau))).toBeCloseTo(1, 6);
    isRoot(mean, hours);
    const tauAt = (q: number) => {
      let [less, more] = [4, 200];
      for (let i = 0; i < 60; i++) {
        const middle = (less + more) / 2;
        if (q * grown(0, 16, middle) < made * grown(12, 16, middle)) less = middle;
        else more = middle;
      }
      return less;
    };
    const spread = (1.2816 * Math.abs(Math.log(tauAt(mean + error) / tauAt(mean - error)))) / 2;
    expect([low, high]).toEqual([
      expect.closeTo(hours * Math.exp(-spread), 4),
      expect.closeTo(hours * Math.exp(spread), 4),
    ]);
  });
});

test('half-hours of gas that show it are taken for the best hours; a typed one stands above, a year heated through shows none', () => {
  const night = makeTariff('two', [
    { name: 'night', pencePerKWh: 10, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: 30, times: 'rest' },
  ]);
  const warmthOf = (made: Made, comfort: Household['comfort'] = {}) => {
    const household = makeHousehold({ prices: { electricityTariffId: 'two' }, tariffs: [night], comfort });
    const gas: Series = {
      id: 'g',
      evidenceId: 'e',
      name: 'gas',
      carrier: 'gas',
      role: 'import',
      resolution: 'interval',
      intervalMinutes: 30,
      from: '2025-10-01',
      to: '2026-10-01',
      total: 14_600,
      days: { first: '2025-10-01', values: new Array<number>(365).fill(40) },
      dayShape: meterOf(made),
      present: 17_520,
      expected: 17_520,
      estimatedCount: 0,
    };
    const { costs } = compareTariffs({ household, series: [gas], reference, asOf: '2026-11-28', draws: 0 })!;
    return costs.find(({ tariffId }) => tariffId === 'two')!.bestHours!.warmth;
  };
  const fitted = warmthOf({ hours: 25, off: [22, 6] });
  expect(fitted.known).toBe('fitted');
  // The outdoor temperatures are now those of the typical year, not of the home that was made.
  expect(fitted.fitted!.low).toBeLessThan(25);
  expect(fitted.fitted!.high).toBeGreaterThan(25);
  expect(fitted.timeConstantHours).toBeCloseTo(fitted.fitted!.low, 9);
  expect(warmthOf({ hours: 25, off: [22, 6] }, { timeConstantHours: 60 })).toEqual({
    known: 'typed',
    timeConstantHours: 60,
  });
  expect(warmthOf({ hours: 25 }).known).toBe('assumed');
});

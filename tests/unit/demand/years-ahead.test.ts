import { describe, expect, test } from 'vitest';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import type { InformedFit } from '../../../src/model/demand/informed-fit.ts';
import { habitsOfRecord, predictSpan, yearsOf } from '../../../src/model/demand/predict-span.ts';
import type { FittedSignature } from '../../../src/model/demand/signature.ts';
import { yearDays } from '../../../src/model/demand/year-days.ts';
import { heatLossOfRecord, yearsAhead } from '../../../src/model/demand/years-ahead.ts';
import { degreeDaysFromMeans } from '../../../src/model/weather/degree-days.ts';
import { reference } from '../../../src/reference/index.ts';
import { yearsAheadSentence } from '../../../src/words/heat.ts';
import { madeHome } from '../../prove/demand/home.ts';
import { normal, seeded } from '../../prove/demand/made-weather.ts';
import { year } from './fixtures.ts';

const BASE_C = 15;
const [base, slope] = [8, 3];
const [s2, rho, habitsShare, winterSpread] = [16, 0.3, 0.05, 0.08];
const covariance = [
  [0.05, 0, -0.004],
  [0, 0, 0],
  [-0.004, 0, 0.0009],
];
const informed: InformedFit = {
  lines: [{ baseC: BASE_C, weight: 1, line: [base, 0, slope], covariance }],
  baseC: BASE_C,
  baseErrorK: 0,
};
const plain = { rho, line: { variance: s2, count: Number.POSITIVE_INFINITY } } as unknown as FittedSignature;
const habits = { yearShare: habitsShare, recordYears: 1, byDay: false };
const found = yearsAhead({ informed, plain, habits, weatherShare: 0 }, year, winterSpread);

describe('the range of a single year, beside the formula written out', () => {
  // Least squares: x'Cx + s² m (1 + ρ)/(1 − ρ), and habits of the record's one year and of the year to come.
  test.each([
    ['mild', -1.2816],
    ['typical', 0],
    ['cold', 1.2816],
  ])('%s', (winter, z) => {
    const m = year.dailyMeanC.length;
    const dd = degreeDaysFromMeans(year.dailyMeanC, BASE_C) * (1 + z * winterSpread);
    const kWh = base * m + slope * dd;
    const ofLine = 0.05 * m * m + 0.0009 * dd * dd - 2 * 0.004 * m * dd;
    const scatter = (s2 * m * 1.3) / 0.7;
    const ofHabits = 2 * (habitsShare * kWh) ** 2;
    const sigma = Math.sqrt(Math.log(1 + (ofLine + scatter + ofHabits) / kWh ** 2));
    const one = found.find((ahead) => ahead.winter === winter)!;
    expect(one.kWh).toBeCloseTo(kWh, 6);
    expect(one.low / (kWh * Math.exp(-1.2816 * sigma))).toBeCloseTo(1, 7);
    expect(one.high / (kWh * Math.exp(1.2816 * sigma))).toBeCloseTo(1, 7);
  });
  test('by drawing lines, days and habits: 8 years of 10 of each kind lie inside', () => {
    const random = seeded(20_261_125);
    const YEARS = 4000;
    // Cholesky of the covariance of base and slope.
    const [a, b] = [Math.sqrt(0.05), -0.004 / Math.sqrt(0.05)];
    const c = Math.sqrt(0.0009 - b * b);
    for (const one of found) {
      const m = year.dailyMeanC.length;
      let inside = 0;
      for (let i = 0; i < YEARS; i++) {
        const [u, v] = [normal(random), normal(random)];
        let noise = 0;
        let last = normal(random) * 4;
        for (let day = 0; day < m; day++) {
          noise += last;
          last = rho * last + Math.sqrt(s2 * (1 - rho * rho)) * normal(random);
        }
        const mean = (base + a * u) * m + (slope + b * u + c * v) * one.degreeDays;
        const actual = mean * (1 + habitsShare * normal(random) * Math.SQRT2) + noise;
        if (actual >= one.low && actual <= one.high) inside++;
      }
      expect(inside / YEARS).toBeGreaterThan(0.78);
      expect(inside / YEARS).toBeLessThan(0.82);
    }
  });
});

test('made homes: the year after the record lies inside the range of a year as cold, 7 to 9.2 times in 10', () => {
  const HOMES = 60;
  let inside = 0;
  for (let seed = 1; seed <= HOMES; seed++) {
    const home = madeHome('gas by day, own weather', seed);
    const { demand } = estimateDemand({ household: home.household, series: home.series, reference, year: home.year });
    const [mild, typical, cold] = demand.yearsAhead!;
    const dd = degreeDaysFromMeans(
      home.after.map(({ outdoorC }) => outdoorC),
      demand.baseC,
    );
    // The two ranges about the winter that came, by a straight line between them.
    const [from, to] = dd > typical!.degreeDays ? [typical!, cold!] : [mild!, typical!];
    const along = (dd - from.degreeDays) / (to.degreeDays - from.degreeDays);
    const at = (pick: 'low' | 'high') => from[pick] + along * (to[pick] - from[pick]);
    const actual = home.after.reduce((sum, { kWh }) => sum + kWh, 0);
    if (actual >= at('low') && actual <= at('high')) inside++;
  }
  expect(inside / HOMES).toBeGreaterThan(0.7);
  expect(inside / HOMES).toBeLessThan(0.92);
});

describe('habits and scatter', () => {
  test.each([
    // Share a year, years, by the day: years even out by their root, months of 0.12 by that of seven a year.
    [0.05, 1, false, 0.05],
    [0.05, 0.5, false, 0.05],
    [0.05, 4, false, 0.025],
    [0.05, 4, true, Math.hypot(0.025, 0.12 / Math.sqrt(28))],
    [0.05, 0.1, true, Math.hypot(0.05, 0.12)],
  ])('%d a year over %d years, by the day %s', (yearShare, recordYears, byDay, expected) => {
    expect(habitsOfRecord({ yearShare, recordYears, byDay })).toBeCloseTo(expected, 12);
  });
  test('a year has 365.25 days', () => expect(yearsOf(730.5)).toBe(2));
  test.each([
    ['days of a winter', 152, 0.3, true, 0.3, Number.POSITIVE_INFINITY],
    ['a week', 7, 0.3, true, 0.3, Number.POSITIVE_INFINITY],
    ['months', 152, 0.3, false, 0.3, Number.POSITIVE_INFINITY],
    // Of twelve bills chance alone makes a likeness of 1/√12.
    ['twelve bills', 152, 0.5, false, 0.5 - 1 / Math.sqrt(12), 12],
    ['neighbours that are unlike', 152, -0.4, true, 0, Number.POSITIVE_INFINITY],
    ['neighbours that are one', 152, 0.99, true, 0.95, Number.POSITIVE_INFINITY],
  ])('what the meter will say over %s', (_name, days, rho, byDay, used, count) => {
    const to = { days, waveSum: 0, degreeDays: () => 5 * days };
    const own = { ...plain, rho, line: { ...plain.line, count } };
    const found = predictSpan(informed, own, to, { yearShare: 0.05, recordYears: 2, byDay });
    const kWh = days * (base + slope * 5);
    const ofLine = days * days * (0.05 + 25 * 0.0009 - 2 * 5 * 0.004);
    const scatter = (s2 * days * (1 + used)) / (1 - used);
    const months = byDay ? 0.12 ** 2 / 14 + 0.12 ** 2 / Math.max(1, days / 30.4) : 0;
    const ofHabits = kWh ** 2 * (0.05 ** 2 / 2 + 0.05 ** 2 + months);
    expect(found.kWh).toBeCloseTo(kWh, 9);
    expect(found.errorKWh).toBeCloseTo(Math.sqrt(ofLine + scatter + ofHabits), 9);
  });
  test('weather that stands in widens every year by its share, by squares', () => {
    const of = (weatherShare: number) => yearsAhead({ informed, plain, habits, weatherShare }, year, winterSpread)[1]!;
    const square = ({ low, high, kWh }: { low: number; high: number; kWh: number }) =>
      (Math.exp((Math.log(high / low) / (2 * 1.2816)) ** 2) - 1) * kWh ** 2;
    const [own, standIn] = [of(0), of(0.09)];
    expect(Math.sqrt(square(standIn) - square(own)) / own.kWh).toBeCloseTo(0.09, 6);
    expect(own.degreeDays).toBeCloseTo(degreeDaysFromMeans(year.dailyMeanC, BASE_C), 9);
  });
  test('the days of a year are summed once for each base temperature', () => {
    expect(yearDays(year)).toBe(yearDays(year));
    expect(yearDays(year)).toMatchObject({ days: 365, waveSum: 0 });
    for (const baseC of [12, 15, 12])
      expect(yearDays(year).degreeDays(baseC)).toBe(degreeDaysFromMeans(year.dailyMeanC, baseC));
  });
});

test('heat loss of the record: mean slope × efficiency × 1000/24, errors by squares', () => {
  const lines = [
    { baseC: 14, weight: 0.25, line: [8, 0, 4] as const, covariance },
    { baseC: 16, weight: 0.75, line: [7, 0, 3] as const, covariance },
  ];
  const efficiency = { value: 0.84, error: 0.05, grade: 'estimated', origin: 'test' } as const;
  const loss = heatLossOfRecord(
    { informed: { ...informed, lines }, plain, habits, weatherShare: 0.06 },
    efficiency,
    'measured',
  );
  // Slopes of 4 and 3 by a quarter and three quarters are 3.25, ± 0.433 apart and 0.03 each.
  const wPerK = (3.25 * 0.84 * 1000) / 24;
  const share = Math.sqrt((0.25 * 0.75 * 1 + 0.0009) / 3.25 ** 2 + 0.05 ** 2 + habitsShare ** 2 + 0.06 ** 2 + 0.1 ** 2);
  const sigma = Math.sqrt(Math.log(1 + share * share));
  expect(loss.value).toBeCloseTo(wPerK, 9);
  expect(loss.low).toBeCloseTo(wPerK * Math.exp(-1.2816 * sigma), 6);
  expect(loss.high).toBeCloseTo(wPerK * Math.exp(1.2816 * sigma), 6);
  expect(loss).toMatchObject({
    unit: 'W/K',
    grade: 'measured',
    working: { inputs: [{ value: 3.25 }, { value: 0.84 }], result: { value: wPerK } },
  });
});

test('in words every winter has its range', () => {
  const signature = { carrier: 'gas' } as Parameters<typeof yearsAheadSentence>[0]['signature'];
  const years = [
    { winter: 'mild' as const, degreeDays: 1900, kWh: 12_000, low: 10_800, high: 13_300 },
    { winter: 'typical' as const, degreeDays: 2100, kWh: 13_000, low: 11_700, high: 14_400 },
    { winter: 'cold' as const, degreeDays: 2300, kWh: 14_000, low: 12_600, high: 15_500 },
  ];
  const sentence = yearsAheadSentence({ yearsAhead: years, ...(signature ? { signature } : {}) });
  expect(sentence).toContain('a typical year lies between 11,700 and 14,400.');
  expect(sentence).toContain('A cold one lies between 12,600 and 15,500, a mild one between 10,800 and 13,300.');
});

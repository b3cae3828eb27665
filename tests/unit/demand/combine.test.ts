import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Choice, chooseDemand } from '../../../src/model/demand/choose.ts';
import { combine, findContradictions, weightOf } from '../../../src/model/demand/combine.ts';
import { heatFigure, leanOf, rangeOf } from '../../../src/model/demand/figure.ts';
import type { Gathered } from '../../../src/model/demand/gather-estimates.ts';
import type { DemandEstimate } from '../../../src/model/shapes/appraisal.ts';
import type { Told } from '../../../src/model/shapes/told.ts';
import { household, typed } from './fixtures.ts';

const estimate = (value: number, share: number) => ({ value, error: value * share, grade: 'estimated' as const });

const working = { title: '', formula: '', inputs: [], result: { value: 0, unit: 'kWh' } };
const way = (
  way: DemandEstimate['way'],
  spaceKWh: number,
  spaceErrorKWh: number,
  more: Partial<DemandEstimate> = {},
): DemandEstimate => ({ way, spaceKWh, spaceErrorKWh, grade: 'estimated', working, ...more });

describe('estimates taken together', () => {
  test('count by the square of value over error, none below 1 kWh', () => {
    expect(weightOf({ value: 100, error: 20 })).toBeCloseTo(25, 12);
    expect(weightOf({ value: 0, error: 0.5 })).toBe(1);
  });
  test('shares go by weight; a grade passes on from a quarter of the value up', () => {
    // Weights 100, 300: a quarter and three quarters. Weights 99 and 301: just under.
    const of = (weak: number) =>
      combine([
        { value: 1000, error: 1000 / Math.sqrt(weak), grade: 'assumed' },
        { value: 1000, error: 1000 / Math.sqrt(400 - weak), grade: 'measured' },
      ]);
    expect(of(100.001).shares[0]).toBeCloseTo(0.25, 4);
    expect([of(100.001).grade, of(99).grade]).toEqual(['assumed', 'measured']);
    expect(of(100.001).error).toBeCloseTo(50, 6);
  });
  // √(100 × 200) = 141.4; χ² = 2 (ln √2 / 0.1)² = 24.0, error = 141.4 × 0.1 / √2 × √24.0 = 49.
  // A third that is ten times as sure as either: weights 1, 1 and 100. Nothing counts as 1 kWh, give or take all of it:
  // weights 44.4 and 1, 20,000^(44.4 / 45.4) = 16,084; √χ² = 9.79.
  test.each([
    ['two that agree', [estimate(100, 0.1), estimate(100, 0.1)], 100, 7.071],
    ['two equally sure that do not', [estimate(100, 0.1), estimate(200, 0.1)], 141.42, 49.01],
    ['one that is far surer', [estimate(100, 0.1), estimate(100, 0.1), estimate(110, 0.01)], 109.8, 1.087],
    ['nothing beside much', [estimate(20_000, 0.15), estimate(0, 0.25)], 16_084, 23_360],
  ])('%s', (_, estimates, value, error) => {
    const joined = combine(estimates);
    expect(joined.value / value).toBeCloseTo(1, 3);
    expect(joined.error / error).toBeCloseTo(1, 2);
  });

  test('between the lowest and the highest, whatever the order and the unit', () => {
    const one = fc.tuple(
      fc.double({ min: 100, max: 40_000, noNaN: true }),
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(one, { minLength: 2, maxLength: 4 }), (pairs) => {
        const estimates = pairs.map(([value, share]) => estimate(value, share));
        const { value, error } = combine(estimates);
        expect(value).toBeGreaterThanOrEqual(Math.min(...estimates.map((e) => e.value)) * (1 - 1e-9));
        expect(value).toBeLessThanOrEqual(Math.max(...estimates.map((e) => e.value)) * (1 + 1e-9));
        const turned = combine(estimates.toReversed());
        expect(turned.value).toBeCloseTo(value, 6);
        const tenfold = combine(estimates.map((e) => ({ ...e, value: e.value * 10, error: e.error * 10 })));
        expect(tenfold.value / value).toBeCloseTo(10, 6);
        expect(tenfold.error / error).toBeCloseTo(10, 6);
      }),
    );
  });
});

describe('a contradiction names what the lower way may have got wrong', () => {
  const of = (way: DemandEstimate['way'], spaceKWh: number): DemandEstimate => ({
    way,
    spaceKWh,
    spaceErrorKWh: 0.1 * spaceKWh,
    grade: 'estimated',
    working: { title: '', formula: '', inputs: [], result: { value: spaceKWh, unit: 'kWh' } },
  });
  test.each([
    ['heat-loss', 'heat-loss-too-low'],
    ['certificate', 'usual-household'],
    ['floor-area', 'unlike-its-age'],
  ] as const)('%s: %s', (way, reason) => {
    const [question] = findContradictions([of('record', 20_000), of(way, 6000)], 0);
    expect(question!.data.likely).toBe(`efficiency,warmer-rooms,${reason}`);
  });
  test.each([
    [8000, 'unheated-rooms,cooler-rooms,other-heat,efficiency', 0.1],
    [8000, 'unheated-rooms,cooler-rooms,other-heat,efficiency,estimated-bills', 0.11],
    [20_000, 'efficiency,warmer-rooms,heat-loss-too-low,estimated-bills', 0.11],
  ])('a record of %i kWh beside a heat loss of 14,000: %s', (kWh, likely, estimatedShare) => {
    const questions = findContradictions([way('record', kWh, 300), way('heat-loss', 14_000, 400)], estimatedShare);
    expect(questions).toMatchObject([
      {
        code: 'estimates-disagree',
        data: {
          a: 'record',
          b: 'heat-loss',
          aKWh: kWh,
          bKWh: 14_000,
          aErrorKWh: 300,
          bErrorKWh: 400,
          differenceKWh: 6000,
          likely,
        },
      },
    ]);
  });
  test('twice the joint error is none yet; every pair is looked at once', () => {
    // 3, 4, 5: twice 500 kWh.
    expect(findContradictions([way('record', 10_000, 300), way('heat-loss', 11_000, 400)], 0)).toEqual([]);
    expect(findContradictions([way('record', 10_000, 300), way('heat-loss', 11_001, 400)], 0)).toHaveLength(1);
    const three = [way('record', 5000, 10), way('heat-loss', 9000, 10), way('certificate', 15_000, 10)];
    expect(findContradictions(three, 0).map(({ data }) => `${data.a} ${data.b}`)).toEqual([
      'record heat-loss',
      'record certificate',
      'heat-loss certificate',
    ]);
  });
});

describe('which way the comparison rests on', () => {
  const method = { monthlyKWh: [], kWh: 2000, errorKWh: 600, grade: 'assumed', people: 3, working } as const;
  const waterWorking = { ...working, result: { value: 2500, unit: 'kWh a year' } };
  const record = way('record', 10_000, 1000, {
    waterKWh: 2500,
    waterErrorKWh: 250,
    working: { ...working, steps: [working, waterWorking] },
  });
  const loss = way('heat-loss', 12_000, 2400);
  const dry = way('certificate', 9000, 2250);
  const certificate = way('certificate', 9000, 2250, { waterKWh: 1800, waterErrorKWh: 450, grade: 'assumed' });
  const choose = (estimates: DemandEstimate[], use?: Choice, more: Partial<Gathered> = {}, baseC?: number) =>
    chooseDemand(
      household({ heat: { ...(use ? { use } : {}), ...(baseC === undefined ? {} : { baseC: typed(baseC) }) } }),
      { estimates, missing: [], questions: [], room: typed(20), recordWeather: 'none', ...more },
      method,
    );
  /** ln of the mean is the mean of the logarithms by (value/error)². */
  const mean = (...pairs: [number, number][]) => {
    const weights = pairs.map(([value, error]) => (value / error) ** 2);
    const whole = weights.reduce((sum, w) => sum + w, 0);
    return Math.exp(pairs.reduce((sum, [value], i) => sum + (weights[i]! / whole) * Math.log(value), 0));
  };
  test.each([
    ['one way alone is itself', [loss], undefined, 12_000, 2000],
    ['the record brings its own hot water', [record], undefined, 10_000, 2500],
    ['two ways are joined', [record, loss], undefined, mean([10_000, 1000], [12_000, 2400]), 2500],
    ['of two one may be picked', [record, loss], 'heat-loss', 12_000, 2000],
    ['a certificate without hot water takes the method’s', [dry], undefined, 9000, 2000],
    ['a certificate alone stands with its own', [certificate], undefined, 9000, 1800],
    [
      'beside a heat loss its water is joined with the method',
      [loss, certificate],
      undefined,
      mean([12_000, 2400], [9000, 2250]),
      mean([1800, 450], [2000, 600]),
    ],
    [
      'beside a record with the record’s',
      [record, certificate],
      undefined,
      mean([10_000, 1000], [9000, 2250]),
      mean([2500, 250], [1800, 450]),
    ],
  ] as const)('%s', (_name, estimates, use, spaceKWh, waterKWh) => {
    const { space, water, chosen } = choose([...estimates], use);
    expect(chosen).toBe(use ?? 'together');
    expect(space.value).toBeCloseTo(spaceKWh, 6);
    expect(water.value).toBeCloseTo(waterKWh, 6);
  });
  test('values of one way come with their error, grade and working; joined ones list each way with its error', () => {
    expect(choose([certificate]).space).toEqual({ value: 9000, error: 2250, grade: 'assumed', working });
    expect(choose([certificate]).water).toMatchObject({
      value: 1800,
      error: 450,
      grade: 'assumed',
      working: { result: { value: 1800 }, inputs: [{ value: 1800, unit: 'kWh', origin: { data: { errorKWh: 450 } } }] },
    });
    expect(choose([record]).water).toMatchObject({ error: 250, working: waterWorking });
    expect(choose([loss]).water).toMatchObject({ value: 2000, error: 600, grade: 'assumed', working });
    const joined = choose([record, loss]).space.working;
    expect(joined.inputs.map(({ value, origin }) => [value, (origin as Told).data!.errorKWh])).toEqual([
      [10_000, 1000],
      [12_000, 2400],
    ]);
    // Weights 100 and 25.
    const shares = (joined.formula as unknown as { data: { shares: { data: { percent: number } }[] } }).data.shares;
    expect(shares.map(({ data }) => data.percent)).toEqual([80, 20].map((percent) => expect.closeTo(percent, 9)));
    expect(joined.steps).toHaveLength(2);
    expect(choose([loss, certificate]).water.working).toMatchObject({
      inputs: [{ value: 1800 }, { value: 2000 }],
      steps: [{}, {}],
    });
  });
  test('a pick that cannot be gone is said with its reason, and all are taken', () => {
    const missing = [
      { way: 'record', reason: 'record-too-short' },
      { way: 'certificate', reason: 'no-certificate' },
    ] as const;
    const { chosen, questions, space } = choose([loss], 'certificate', { missing: [...missing] });
    expect([chosen, space.value]).toEqual(['together', 12_000]);
    expect(questions).toMatchObject([{ code: 'chosen-way-missing', field: 'heat.use', data: missing[1] }]);
    expect(choose([loss], 'heat-loss', { missing: [...missing] }).questions).toEqual([]);
    expect(choose([loss], undefined, { missing: [...missing] }).questions).toEqual([]);
  });
  test.each([
    // use, of the record, of the heat loss, typed: base temperature
    ['heat-loss', 13, 14, 16, 14],
    ['heat-loss', 13, undefined, 16, 16],
    ['heat-loss', 13, undefined, undefined, 15.5],
    ['record', 13, 14, 16, 13],
    ['together', 13, 14, 16, 13],
    ['together', undefined, 14, 16, 16],
    ['together', undefined, 14, undefined, 14],
    ['together', undefined, undefined, undefined, 15.5],
    ['certificate', 13, 14, 16, 16],
    ['certificate', 13, 14, undefined, 14],
    ['certificate', 13, undefined, undefined, 13],
    ['certificate', undefined, undefined, undefined, 15.5],
  ] as const)('%s with %s, %s and %s °C: %d', (use, recordBaseC, heatLossBaseC, typedC, expected) => {
    const of = { ...(recordBaseC ? { recordBaseC } : {}), ...(heatLossBaseC ? { heatLossBaseC } : {}) };
    expect(choose([record, loss, certificate], use, of, typedC).baseC).toBe(expected);
  });
});

test('the range of a figure is lognormal about its value; of nothing it begins at nothing', () => {
  // σ² = ln(1 + 0.2²) = 0.039221, σ = 0.198042; e^(1.2816 × 0.198042) = e^0.253811 = 1.28893.
  const { low, high } = rangeOf(100, 20);
  expect(high).toBeCloseTo(128.893, 2);
  expect(low).toBeCloseTo(10_000 / 128.893, 2);
  expect(rangeOf(0, 10)).toEqual({ low: 0, high: 12.816 });
  expect(rangeOf(0, 0)).toEqual({ low: 0, high: 0 });
  expect(heatFigure(100, 20, 'assumed', working)).toEqual({
    value: 100,
    low,
    high,
    unit: 'kWh',
    grade: 'assumed',
    working,
  });
});

describe('a range that leans', () => {
  test.each([
    // σ² = ln 2 and ln 5 are 0.693 and, at most, 0.64: (0.64 − 0.36) / 2 = 0.14, times the other’s share in the sum.
    { value: 1000, error: 2000, beside: 3000, times: Math.exp(0.14 * 0.75) },
    { value: 3000, error: 6000, beside: 1000, times: Math.exp(0.14 * 0.25) },
    // σ² = ln 1.5 = 0.405465.
    { value: 1000, error: 1000 * Math.SQRT1_2, beside: 1000, times: Math.exp((0.405465 - 0.36) / 4) },
    { value: 1000, error: 600, beside: 3000, times: 1 },
    { value: 1000, error: 2000, beside: 0, times: 1 },
    { value: 0, error: 100, beside: 1000, times: 1 },
  ])('$value ± $error kWh beside $beside kWh count $times times', ({ value, error, beside, times }) => {
    expect(leanOf(value, error, beside)).toBeCloseTo(times, 6);
  });

  test('keeps its ends: only its middle is raised', () => {
    const plain = heatFigure(1000, 900, 'assumed', working);
    const raised = heatFigure(1100, 990, 'assumed', working, 1.1);
    expect(raised.value).toBe(1100);
    expect(raised.low).toBeCloseTo(plain.low, 9);
    expect(raised.high).toBeCloseTo(plain.high, 9);
  });
});

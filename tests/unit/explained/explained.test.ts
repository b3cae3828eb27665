/** The sums told anew for pictures and sections: each comes to the figure that it stands behind. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { findSideBySide } from '../../../src/model/comparison/beside.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { reference } from '../../../src/reference/index.ts';
import { breakEvenWorkings, winterWorkings } from '../../../src/words/explained/balance.ts';
import { sourceWorking } from '../../../src/words/explained/flow.ts';
import { costByMonth, heatByMonth, unitsByMonth } from '../../../src/words/explained/months.ts';
import { electricityPriceWorking, tariffWorking } from '../../../src/words/explained/prices.ts';
import { questionWorkings } from '../../../src/words/explained/question.ts';
import { rangedWorking } from '../../../src/words/explained/ranged.ts';
import { daysWorking, recordWorking } from '../../../src/words/explained/record.ts';
import { heatLossWorkings, signatureWorking, yearsAheadWorking } from '../../../src/words/explained/signature.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import type { ShownWorking } from '../../../src/words/working.ts';
import { makeGasBills, makeHousehold, makeTariff } from '../appraisal/make-household.ts';

const BILLS = makeGasBills([2000, 1800, 1500, 1000, 600, 300, 250, 250, 300, 800, 1400, 1900]);
const appraisal = appraise({
  household: makeHousehold(),
  series: [BILLS],
  reference,
  asOf: '2026-11-25',
  draws: 500,
});
const { pump, beside, versus } = findSideBySide(appraisal);
const numbers = ({ inputs }: ShownWorking) =>
  inputs.map(({ value }) => value).filter((value) => typeof value === 'number');
const months = (working: ShownWorking) => numbers(working).slice(0, 12);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('twelve months come to their year', () => {
  test.each([
    ['cost', costByMonth(pump, { said: 'By the month' })],
    ['heat', heatByMonth(appraisal.demand)],
    ['units', unitsByMonth(pump, pump.monthly.boughtKWh)],
  ] as const)('%s', (_, working) => {
    expect(months(working)).toHaveLength(12);
    expect(sum(months(working))).toBeCloseTo(working.result.value, 6);
  });
});

describe('a range beside a figure', () => {
  test('stands as the last step, and the sum itself is as it was', () => {
    const ranged = rangedWorking(pump.cost);
    const { steps, ...rest } = ranged;
    const { steps: before, ...was } = pump.cost.working;
    expect(rest).toEqual(was);
    expect(steps!.slice(0, -1)).toEqual(before);
    expect(numbers(steps!.at(-1)!).slice(0, 2)).toEqual([pump.cost.low, pump.cost.high]);
  });
  test.each([
    ['none was drawn', 100, 100, 0],
    ['low and high differ', 90, 120, 1],
  ])('%s', (_, low, high, steps) => {
    const working: Working = { title: '', formula: '', inputs: [], result: { value: 100, unit: 'p' } };
    expect(rangedWorking({ value: 100, low, high, unit: 'p', working }).steps ?? []).toHaveLength(steps);
  });
});

test('what comes from the ground and what is bought are the heat of rooms and taps', () => {
  const working = sourceWorking(appraisal);
  expect(working.result.value + pump.bought.value).toBeCloseTo(appraisal.demand.total.value, 6);
});

test('the price of electricity is what all its units cost over the units', () => {
  const { inputs, result } = electricityPriceWorking(appraisal);
  const units = inputs.filter(({ unit }) => unit === 'kWh').map(({ value }) => Number(value));
  const prices = inputs.filter(({ unit }) => unit === 'p/kWh').map(({ value }) => Number(value));
  expect(sum(units.map((kWh, band) => kWh * prices[band]!)) / sum(units)).toBeCloseTo(result.value, 6);
});

test('a tariff lists every band and its standing charge', () => {
  const tariff = makeTariff('t1', 24);
  const working = tariffWorking(tariff.versions[0]!, tariff);
  expect(working.inputs.map(({ name }) => sayTold(name))).toEqual([
    ...tariff.versions[0]!.bands.map(({ name }) => name),
    'Standing charge a day',
  ]);
});

describe('a record', () => {
  test('of bills names each with its days, and comes to their sum', () => {
    const working = recordWorking(BILLS, []);
    const kWh = working.inputs.filter(({ name }) => / days$/.test(sayTold(name))).map(({ value }) => Number(value));
    expect(kWh).toHaveLength(12);
    expect(sum(kWh)).toBeCloseTo(working.result.value, 6);
  });
  test('by the day tells its lowest and highest', () => {
    const { periods: _, ...rest } = BILLS;
    const days: Series = { ...rest, resolution: 'day', days: { first: '2025-01-01', values: [3, null, 12, 7] } };
    expect(numbers(recordWorking(days, [])).slice(0, 2)).toEqual([3, 12]);
  });
  test('without a whole day says so', () => {
    const { periods: _, ...rest } = BILLS;
    expect(recordWorking({ ...rest, days: { first: '2025-01-01', values: [null] } }, []).inputs[0]!.value).toEqual({
      said: 'no whole day',
    });
  });
  test('some days of it are those days', () => {
    expect(daysWorking(BILLS, { from: '2026-01-01', to: '2026-01-31', kWh: 706 }).result.value).toBe(706);
  });
});

test('the line through the record: the years ahead stand in order, and the slope is the result', () => {
  const { signature } = appraisal.demand;
  expect(signatureWorking(signature!, undefined).result.value).toBe(signature!.slopeKWhPerKDay);
  const [mild, , , typical] = numbers(yearsAheadWorking(appraisal.demand)[0]!);
  expect(mild!).toBeLessThan(typical!);
  expect(heatLossWorkings(appraisal.demand)[0]!.result).toEqual({
    value: appraisal.demand.recordHeatLoss!.value,
    unit: 'W/K',
  });
});

test('where the balance tips: only what is known', () => {
  const all = breakEvenWorkings(appraisal, pump, beside!, versus!);
  expect(all.map(({ result }) => result.value)).toEqual([
    versus!.breakEvenFactor,
    versus!.breakEvenFactorAllCosts,
    versus!.priceRatio,
    versus!.breakEvenPriceRatio,
  ]);
  const none = { ...versus!, breakEvenFactor: null, breakEvenFactorAllCosts: null, priceRatio: null };
  expect(breakEvenWorkings(appraisal, pump, beside!, { ...none, breakEvenPriceRatio: null })).toEqual([]);
});

test('a winter is the typical year and the winter’s part', () => {
  for (const working of winterWorkings(pump)) expect(sum(numbers(working))).toBeCloseTo(working.result.value, 6);
});

test('a question tells its amounts with their units, and none where it names none', () => {
  const question = { code: 'estimates-disagree', weight: 'question', stage: 'heat' } as const;
  fc.assert(
    fc.property(fc.double({ noNaN: true }), (value) => {
      const [working] = questionWorkings({ ...question, data: { aKWh: value, why: 'efficiency' } });
      expect(working!.inputs).toEqual([expect.objectContaining({ value, unit: 'kWh' })]);
    }),
  );
  expect(questionWorkings({ ...question, data: { why: 'efficiency' } })).toEqual([]);
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeDemand } from '../../../src/model/demand/change-what-if.ts';
import { estimateDemand } from '../../../src/model/demand/estimate-demand.ts';
import { Climate, Demand, Question, type WhatIf } from '../../../src/model/shapes/appraisal.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { degreeDaysFromMeans } from '../../../src/model/weather/degree-days.ts';
import { reference } from '../../../src/reference/index.ts';
import { daySeries, household, madeRecord, periodSeries, typed, year } from './fixtures.ts';

const estimate = (parts: Partial<Household>, series: Series[] = [], whatIf = {}) =>
  estimateDemand({ household: household(parts), series, reference, year, whatIf });
const codes = (result: { questions: { code: string }[] }) => result.questions.map((q) => q.code);
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, v) => total + v, 0);
const known = madeRecord({ first: '2023-01-01', days: 730, base: 8, slope: 3, baseC: 14, noise: 4 });
const loss = { heatLossKW: typed(6), designOutdoorC: typed(-3), roomC: typed(20) };

describe('what comes back', () => {
  const cases: [string, Partial<Household>, Series[]][] = [
    ['nothing known', {}, []],
    ['floor area only', { home: { floorAreaM2: typed(120), ageBand: typed('before 1930') } }, []],
    ['heat loss', { heat: loss }, []],
    ['certificate', { heat: { certificateSpaceKWh: typed(11_000), certificateWaterKWh: typed(2300) } }, []],
    ['record', {}, [known.gas, known.outdoor]],
    [
      'everything',
      { home: { floorAreaM2: typed(120) }, heat: { ...loss, certificateSpaceKWh: typed(9000) } },
      [known.gas, known.outdoor],
    ],
  ];
  test.each(cases)(
    '%s: fits the agreed shapes; months and days sum to the year; the range holds the value',
    (_name, parts, series) => {
      const result = estimate(parts, series);
      const { demand, climate, questions, heatBySlot } = result;
      Demand.parse(demand);
      Climate.parse(climate);
      for (const question of questions) Question.parse(question);
      expect(sum(demand.monthlySpaceKWh)).toBeCloseTo(demand.space.value, 6);
      expect(sum(demand.monthlyWaterKWh)).toBeCloseTo(demand.water.value, 6);
      expect(demand.total.value).toBeCloseTo(demand.space.value + demand.water.value, 9);
      expect(sum(heatBySlot.spaceShare)).toBeCloseTo(1, 12);
      expect(heatBySlot.spaceShare.length).toBe(365);
      for (const figure of [demand.space, demand.water, demand.total]) {
        expect(figure.low).toBeLessThan(figure.value);
        expect(figure.high).toBeGreaterThan(figure.value);
        expect(figure.working.result.value).toBeCloseTo(figure.value, 9);
      }
      expect(demand.estimates.length + demand.missing.length).toBe(codes(result).includes('demand-unknown') ? 5 : 4);
      // The coefficient handed back makes the space heat out of the degree days.
      const degreeDays = degreeDaysFromMeans(year.dailyMeanC, demand.baseC);
      expect((demand.heatLossWPerK * degreeDays * 24) / 1000).toBeCloseTo(demand.space.value, 6);
      expect(climate.degreeDays).toBeCloseTo(degreeDays, 9);
    },
  );
  test('with nothing at all a typical British home stands in, assumed, with a wide range and a question', () => {
    const result = estimate({});
    expect(codes(result)).toContain('demand-unknown');
    expect(result.demand.space.grade).toBe('assumed');
    expect(result.demand.space.high / result.demand.space.low).toBeGreaterThan(3);
  });
});

describe('record', () => {
  const result = estimate({ present: { system: 'gas-condensing', efficiency: typed(0.84, 'measured') } }, [
    known.gas,
    known.outdoor,
  ]);
  const ofRecord = result.demand.estimates.find((e) => e.way === 'record')!;
  test('own weather and known signature: slope × degree days × efficiency, within one standard error', () => {
    const truth = 3 * degreeDaysFromMeans(year.dailyMeanC, 14) * 0.84;
    expect(Math.abs(ofRecord.spaceKWh - truth)).toBeLessThan(ofRecord.spaceErrorKWh);
    expect(result.climate.recordWeather).toBe('own');
    expect(result.demand.signature).toMatchObject({ period: 'day', count: 730 });
    expect(result.demand.signature!.points.length).toBeLessThanOrEqual(400);
  });
  test('without its own weather days become months, the grade falls and the error grows', () => {
    const standIn = estimate({ present: { system: 'gas-condensing', efficiency: typed(0.84, 'measured') } }, [
      known.gas,
    ]);
    const estimateStandIn = standIn.demand.estimates.find((e) => e.way === 'record')!;
    expect(standIn.demand.signature?.period).toBe('month');
    expect(standIn.climate.recordWeather).toBe('typical');
    expect([ofRecord.grade, estimateStandIn.grade]).toEqual(['measured', 'estimated']);
    expect(estimateStandIn.spaceErrorKWh / estimateStandIn.spaceKWh).toBeGreaterThan(
      ofRecord.spaceErrorKWh / ofRecord.spaceKWh,
    );
    expect(codes(standIn)).toContain('typical-weather-stands-in');
  });
  test('a mild record is put right: use of a year 1.5 K warmer gives nearly the same heat', () => {
    const mild = madeRecord({ first: '2023-01-01', days: 730, base: 8, slope: 3, baseC: 14, noise: 4, warmerK: 1.5 });
    const found = estimate({}, [mild.gas, mild.outdoor]).demand.space.value;
    const usual = estimate({}, [known.gas, known.outdoor]).demand.space.value;
    expect(sum(mild.use)).toBeLessThan(0.9 * sum(known.use));
    expect(Math.abs(found / usual - 1)).toBeLessThan(0.03);
  });
  test('the habits of one year are less to build on than those of two', () => {
    const one = madeRecord({ first: '2024-01-01', days: 366, base: 8, slope: 3, baseC: 14, noise: 4 });
    const share = (series: Series[]) => {
      const found = estimate({}, series).demand.estimates.find((e) => e.way === 'record')!;
      return found.spaceErrorKWh / found.spaceKWh;
    };
    expect(share([one.gas, one.outdoor])).toBeGreaterThan(reference.spread.habits.value);
    expect(share([known.gas, known.outdoor])).toBeLessThan(share([one.gas, one.outdoor]));
  });
  test('monthly bills give a signature by period, estimated ones are kept and said', () => {
    const bills = Array.from({ length: 24 }, (_, i) => {
      const date = (m: number) => `${2023 + Math.floor(m / 12)}-${String((m % 12) + 1).padStart(2, '0')}-01`;
      const first = (Date.parse(date(i)) - Date.parse('2023-01-01')) / 86_400_000;
      const last = (Date.parse(date(i + 1)) - Date.parse('2023-01-01')) / 86_400_000;
      const kWh = sum(known.use.slice(first, last));
      return {
        from: date(i),
        to: date(i + 1),
        kWh,
        quality: i % 6 === 0 ? ('estimated' as const) : ('actual' as const),
      };
    });
    const found = estimate({}, [periodSeries('bills', 'gas', bills), known.outdoor]);
    expect(found.demand.signature).toMatchObject({ period: 'period', count: 24 });
    expect(found.demand.signature!.slopeKWhPerKDay).toBeCloseTo(3, 0);
    expect(codes(found)).toContain('estimated-readings');
    const better = estimate({}, [known.gas, known.outdoor]).demand.space.value;
    expect(Math.abs(found.demand.space.value / better - 1)).toBeLessThan(0.1);
  });
  test('hot water follows the base when it is much smaller than the method says, and a question is asked', () => {
    const small = madeRecord({ first: '2023-01-01', days: 730, base: 1, slope: 3, baseC: 14, noise: 1 });
    const found = estimate({ home: { people: typed(4) } }, [small.gas, small.outdoor]);
    expect(found.demand.water.value).toBeLessThan(400);
    expect(codes(found)).toContain('base-below-hot-water');
  });
  test('cooking on gas comes off the base', () => {
    const water = (cooksOnGas: boolean) =>
      estimate({ present: { system: 'gas-condensing', cooksOnGas } }, [known.gas, known.outdoor]).demand.water.value;
    expect(water(true)).toBeLessThan(water(false));
  });
  test('a wood stove is asked about', () => {
    expect(codes(estimate({ present: { system: 'gas-condensing', otherHeat: 'wood stove' } }))).toContain('other-heat');
  });
  test('a whole-house electricity meter: hot water by the method, and it is said', () => {
    const electric = { ...known.gas, id: 'mains', carrier: 'electricity' as const };
    const found = estimate({ present: { system: 'storage' } }, [electric, known.outdoor]);
    expect(codes(found)).toContain('whole-house-meter');
    expect(found.demand.signature?.carrier).toBe('electricity');
  });
  test('the record is that of the present system: electricity says nothing of a gas boiler', () => {
    const electric = { ...known.gas, id: 'mains', carrier: 'electricity' as const };
    const { missing } = estimate({ present: { system: 'gas-old' } }, [electric, known.outdoor]).demand;
    expect(missing).toContainEqual({ way: 'record', reason: 'no-record' });
  });
  describe('electricity beside a boiler that rises with the cold', () => {
    const electric = (slope: number, leaveOut: (i: number) => number = () => 1) => {
      const { use } = madeRecord({ first: '2024-01-01', days: 366, base: 8, slope, baseC: 15.5, noise: 3 });
      return daySeries(
        'mains',
        'electricity',
        'import',
        '2024-01-01',
        use.map((kWh, i) => kWh * leaveOut(i)),
      );
    };
    const asked = (series: Series[], parts: Partial<Household> = {}) => {
      const present = { system: 'gas-condensing', otherHeat: 'none' } as const;
      return estimate({ present, ...parts }, [known.gas, known.outdoor, ...series]).questions.filter(
        ({ code }) => code === 'electricity-in-the-cold',
      );
    };
    test('is asked about, and about how much it is', () => {
      const [found] = asked([electric(1.5)]);
      const heating = degreeDaysFromMeans(year.dailyMeanC, 15.5) * 1.5;
      expect(found?.field).toBe('present.otherHeat');
      expect(Number(found?.data.inColdKWh) / heating).toBeGreaterThan(0.85);
      expect(Number(found?.data.inColdKWh) / heating).toBeLessThan(1.15);
    });
    test.each([
      ['lights and dryers', electric(0.3), {}],
      ['weeks away in summer', electric(0.3, (i) => (i > 170 && i < 205 ? 0.2 : 1)), {}],
      [
        'heaters that are known',
        electric(1.5),
        { present: { system: 'gas-condensing', otherHeat: 'electric heaters' } },
      ],
      ['electricity that heats', electric(1.5), { present: { system: 'storage' } }],
      ['the heat pump that it took', electric(1.5), { taken: { estimateId: 'e', on: '2023-11-02' } }],
    ] as const)('%s are not', (_, series, parts) => {
      expect(asked([series], parts as Partial<Household>)).toEqual([]);
    });
    test('with what a roof sends out neither, since less is bought in summer', () => {
      expect(asked([electric(1.5), daySeries('sun', 'electricity', 'export', '2024-06-01', [4, 5])])).toEqual([]);
    });
  });
  test('a heat pump’s sub-meter is preferred to the whole house', () => {
    const mains = { ...known.gas, id: 'mains', carrier: 'electricity' as const };
    const own = { ...known.gas, id: 'pump', carrier: 'electricity' as const, role: 'heat-pump' as const };
    const found = estimate({ present: { system: 'heat-pump' } }, [mains, own, known.outdoor]);
    expect(found.demand.signature?.seriesId).toBe('pump');
  });
  test('a record that never changes is no heating record', () => {
    const flat = madeRecord({ first: '2024-01-01', days: 366, base: 5, slope: 0, baseC: 14 });
    const found = estimate({}, [flat.gas, flat.outdoor]);
    expect(codes(found)).toContain('no-heating-in-record');
  });
  test('three summer weeks are too short to say anything', () => {
    const short = madeRecord({ first: '2024-07-01', days: 21, base: 5, slope: 3, baseC: 14 });
    expect(estimate({}, [short.gas, short.outdoor]).demand.missing).toContainEqual({
      way: 'record',
      reason: 'record-too-short',
    });
  });
});

describe('deliveries of oil', () => {
  const fills = ['2022-11-01', '2023-02-20', '2023-10-10', '2024-01-25', '2024-11-01'];
  const periods = fills.slice(1).map((to, i) => ({ from: fills[i]!, to, kWh: 9800, quality: 'actual' as const }));
  const present = { system: 'oil' as const };
  test('the total between the first and the last, put right for the degree days', () => {
    const found = estimate({ present, home: { people: typed(2) } }, [periodSeries('tank', 'oil', periods)]);
    const record = found.demand.estimates.find((e) => e.way === 'record')!;
    const oil = (record.spaceKWh + record.waterKWh!) / 0.84;
    // Four fills of 9,800 kWh in two years are 19,600 kWh a year; hot water is made at a lower efficiency.
    expect(oil).toBeGreaterThan(17_000);
    expect(oil).toBeLessThan(20_000);
    expect(found.demand.signature).toBeUndefined();
    expect(codes(found)).toContain('total-only');
  });
  test('slips written as the day they came on say the same', () => {
    const slips = fills.map((from, i) => ({
      from,
      to: from.replace(/\d\d$/, (day) => String(Number(day) + 1).padStart(2, '0')),
      kWh: i === 0 ? 5000 : 9800,
      quality: 'actual' as const,
    }));
    const spans = estimate({ present }, [periodSeries('tank', 'oil', periods)]).demand.space.value;
    expect(estimate({ present }, [periodSeries('slips', 'oil', slips)]).demand.space.value).toBeCloseTo(spans, 6);
  });
  test('one slip alone says nothing', () => {
    const slip = [{ from: '2024-11-01', to: '2024-11-02', kWh: 9800, quality: 'actual' as const }];
    const { missing } = estimate({ present }, [periodSeries('tank', 'oil', slip)]).demand;
    expect(missing.map((m) => m.way)).toContain('record');
  });
  test('one full winter is less sure than two years', () => {
    const share = (some: typeof periods) => {
      const found = estimate({ present }, [periodSeries('tank', 'oil', some)]).demand.estimates[0]!;
      return found.spaceErrorKWh / found.spaceKWh;
    };
    expect(share(periods.slice(0, 1))).toBeGreaterThan(share(periods));
  });
});

describe('heat loss', () => {
  test('twice the heat loss, base temperature held, is twice the heat', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.double({ min: 1.1, max: 4, noNaN: true }),
        (kW, times) => {
          const heat = (value: number) =>
            estimate({ heat: { ...loss, heatLossKW: typed(value), baseC: typed(15.5), use: 'heat-loss' } }).demand.space
              .value;
          expect(heat(kW * times) / heat(kW)).toBeCloseTo(times, 9);
        },
      ),
      { numRuns: 30 },
    );
  });
  test('the figure is W/K × degree days × 24/1000 on the days of the typical year', () => {
    const { demand } = estimate({ heat: { ...loss, baseC: typed(15.5), use: 'heat-loss' } });
    const wPerK = 6000 / 23;
    expect(demand.heatLossWPerK).toBeCloseTo(wPerK, 9);
    expect(demand.space.value).toBeCloseTo((wPerK * degreeDaysFromMeans(year.dailyMeanC, 15.5) * 24) / 1000, 6);
  });
  test.each([
    ['a heat loss of nothing', { ...loss, heatLossKW: typed(0) }, 'heat-loss-zero', 'refusal'],
    [
      'a room no warmer than the design day',
      { ...loss, designOutdoorC: typed(15), roomC: typed(15) },
      'room-below-design',
      'refusal',
    ],
    ['a heat loss of a factory', { ...loss, heatLossKW: typed(180) }, 'heat-loss-unlikely', 'question'],
    ['no design temperature', { heatLossKW: typed(6) }, 'design-temperature-assumed', 'question'],
  ])('%s is not passed over', (_name, heat, code, weight) => {
    expect(estimate({ heat }).questions).toContainEqual(expect.objectContaining({ code, weight }));
  });
  test('a heat loss far too small is asked about and does not drown the other ways', () => {
    const tiny = { ...loss, heatLossKW: typed(0.1), certificateSpaceKWh: typed(9000) };
    const { demand, questions } = estimate({ heat: tiny });
    expect(questions.map((q) => q.code)).toEqual(expect.arrayContaining(['heat-loss-unlikely', 'estimates-disagree']));
    expect(demand.space.high).toBeGreaterThan(1.2 * demand.space.value);
  });
  test('the two sets of design temperatures give different heat', () => {
    const home = { postcode: 'B1' };
    const heat = (designRule: '99 %' | '99.6 %') =>
      estimateDemand({
        household: household({ home, heat: { heatLossKW: typed(6), designRule, use: 'heat-loss' } }),
        series: [],
        reference,
        year,
      }).demand.space.value;
    expect(heat('99 %')).toBeGreaterThan(heat('99.6 %'));
  });
});

test('a design temperature taken from a table may be 1.5 K off: that much more error of the heat, by squares', () => {
  const lossOf = (heat: Household['heat']) =>
    estimate({ heat: { heatLossKW: typed(6), roomC: typed(20), use: 'heat-loss', ...heat } });
  const assumed = lossOf({});
  const outdoorC = assumed.questions.find((q) => q.code === 'design-temperature-assumed')!.data!.outdoorC as number;
  const [told, taken] = [lossOf({ designOutdoorC: typed(outdoorC) }), assumed].map(
    ({ demand }) => demand.estimates[0]!,
  );
  expect(taken!.spaceKWh).toBeCloseTo(told!.spaceKWh, 6);
  const more = Math.sqrt(taken!.spaceErrorKWh ** 2 - told!.spaceErrorKWh ** 2);
  expect(more / taken!.spaceKWh).toBeCloseTo(1.5 / (20 - outdoorC), 6);
});

describe('together', () => {
  const both = { heat: { ...loss, baseC: typed(15.5), certificateSpaceKWh: typed(14_500) } };
  test('lies between the estimates, and is surer than either', () => {
    const { demand } = estimate(both);
    const values = demand.estimates.map((e) => e.spaceKWh);
    expect(demand.space.value).toBeGreaterThan(Math.min(...values));
    expect(demand.space.value).toBeLessThan(Math.max(...values));
    const alone = estimate({ heat: { ...both.heat, use: 'heat-loss' } }).demand.space;
    expect(demand.space.high / demand.space.low).toBeLessThan(alone.high / alone.low);
  });
  test('a contradiction beyond the errors is asked about, with likely reasons', () => {
    const { questions } = estimate({ heat: { ...loss, heatLossKW: typed(25, 'measured') } }, [
      known.gas,
      known.outdoor,
    ]);
    const question = questions.find((q) => q.code === 'estimates-disagree')!;
    expect(question.data).toMatchObject({ a: 'record', b: 'heat-loss' });
    expect(String(question.data.likely)).toContain('unheated-rooms');
  });
  test('estimates that agree raise no such question', () => {
    expect(codes(estimate(both))).not.toContain('estimates-disagree');
  });
  test('the installer’s pick stands; one that cannot be gone is said and all are taken together', () => {
    expect(estimate({ heat: { ...both.heat, use: 'certificate' } }).demand).toMatchObject({
      chosen: 'certificate',
      space: { value: 14_500 },
    });
    const missing = estimate({ heat: { ...both.heat, use: 'record' } });
    expect(missing.demand.chosen).toBe('together');
    expect(codes(missing)).toContain('chosen-way-missing');
  });
});

describe('what if', () => {
  const parts = { heat: { ...loss, baseC: typed(15.5), use: 'heat-loss' as const } };
  const asIs = estimate(parts).demand;
  test('a room warmer by 2 K raises the base temperature by 2 K', () => {
    const warm = estimate(parts, [], { roomC: 22 }).demand;
    expect(warm.baseC).toBe(17.5);
    const ratio = degreeDaysFromMeans(year.dailyMeanC, 17.5) / degreeDaysFromMeans(year.dailyMeanC, 15.5);
    expect(warm.space.value / asIs.space.value).toBeCloseTo(ratio, 9);
    expect(warm.heatLossWPerK).toBeCloseTo(asIs.heatLossWPerK, 9);
    expect(sum(warm.monthlySpaceKWh)).toBeCloseTo(warm.space.value, 6);
  });
  test('hot water by its share', () => {
    expect(estimate(parts, [], { waterShare: 0.5 }).demand.water.value).toBeCloseTo(asIs.water.value / 2, 9);
    expect(estimate(parts, [], { waterShare: 0 }).demand.water).toMatchObject({ value: 0, low: 0 });
  });
  test('a cold and a mild winter lie as far apart on either side', () => {
    const of = (winter: string) => estimate(parts, [], { winter }).demand.space.value;
    expect(of('cold') / of('typical')).toBeCloseTo(1 + 1.2816 * reference.spread.winter.value, 9);
    expect(of('cold') + of('mild')).toBeCloseTo(2 * of('typical'), 6);
  });
  test('changes multiply value and error alike, each with its line in the working; as it is, nothing is added', () => {
    const reckoned = { value: 10_000, error: 1500, grade: 'estimated' as const, working: asIs.space.working };
    const before = { space: reckoned, water: { ...reckoned, value: 2000, error: 300 }, baseC: 15.5, roomC: 20 };
    const change = (whatIf: WhatIf | undefined) => changeDemand(before, whatIf, year, reference);
    expect(change(undefined)).toEqual({ ...before, waterShare: 1 });
    const inputs = ({ space }: ReturnType<typeof change>) => space.working.inputs.map(({ value }) => value);
    const byRoom = degreeDaysFromMeans(year.dailyMeanC, 17.5) / degreeDaysFromMeans(year.dailyMeanC, 15.5);
    const byCold = 1 + 1.2816 * reference.spread.winter.value;
    const both = change({ roomC: 22, winter: 'cold', waterShare: 0.5 });
    expect(both.space.value).toBeCloseTo(10_000 * byRoom * byCold, 6);
    expect(both.space.error).toBeCloseTo(1500 * byRoom * byCold, 6);
    expect(both.water).toMatchObject({
      value: 1000,
      error: 150,
      working: { inputs: [{ value: 2000 }, { value: 0.5 }], result: { value: 1000 }, steps: [{}] },
    });
    expect(both).toMatchObject({ baseC: 17.5, roomC: 22, waterShare: 0.5 });
    expect(inputs(both)).toEqual([10_000, byRoom, byCold]);
    expect(inputs(change({ roomC: 22 }))).toEqual([10_000, byRoom]);
    expect(inputs(change({ winter: 'mild' }))).toEqual([10_000, 2 - byCold]);
    // Below every day of the year there is nothing to scale.
    const warm = changeDemand({ ...before, baseC: -40 }, { roomC: 22 }, year, reference);
    expect(warm.space.value).toBe(10_000);
    const stormy = {
      ...reference,
      spread: { ...reference.spread, winter: { ...reference.spread.winter, value: 0.9 } },
    };
    expect(changeDemand(before, { winter: 'mild' }, year, stormy).space.value).toBe(0);
  });
  test('the temperature of the room as it is changes nothing', () => {
    expect(estimate(parts, [], { roomC: 20 }).demand.space.value).toBe(asIs.space.value);
  });
});

describe('what is asked besides', () => {
  const present = { system: 'gas-condensing' } as const;
  const loose = { heat: { ...loss, certificateSpaceKWh: typed(9000) } };
  test.each([
    ['a boiler better than its fuel', { ...present, efficiency: typed(1.05) }, ['efficiency-above-one']],
    ['one as good', { ...present, efficiency: typed(1) }, []],
    ['a heat pump', { system: 'heat-pump' as const, efficiency: typed(1.05) }, []],
    ['no other heat', { ...present, otherHeat: 'none' as const }, []],
    [
      'panels for hot water, which bring the rooms nothing',
      { ...present, otherHeat: 'solar thermal' as const },
      ['other-heat'],
    ],
  ])('%s', (_name, of, expected) => {
    const asked = estimate({ ...loose, present: of }).questions.filter(({ code }) =>
      ['other-heat', 'efficiency-above-one'].includes(code),
    );
    expect(asked.map(({ code }) => code)).toEqual(expected);
    for (const { code, data } of asked) if (code === 'other-heat') expect(data.perhapsKWh).toBe(0);
  });
  test('reasons for what is missing, and which ways were gone', () => {
    expect(estimate({}).demand.missing).toEqual([
      { way: 'record', reason: 'no-record' },
      { way: 'heat-loss', reason: 'no-heat-loss' },
      { way: 'certificate', reason: 'no-certificate' },
      { way: 'floor-area', reason: 'no-floor-area' },
    ]);
    const { estimates, missing } = estimate({ ...loose, home: { floorAreaM2: typed(100) } }).demand;
    expect(estimates.map(({ way }) => way)).toEqual(['heat-loss', 'certificate', 'floor-area']);
    expect(missing.map(({ way }) => way)).toEqual(['record']);
    const unknown = estimate({});
    expect(unknown.questions.find(({ code }) => code === 'demand-unknown')!.data.spaceKWh).toBeCloseTo(
      unknown.demand.space.value,
      9,
    );
  });
  test('the total’s error is that of rooms and hot water by squares, with what they have in common; its grade the weaker', () => {
    const { space, water, total } = estimate({
      ...loose,
      heat: { ...loose.heat, use: 'certificate' },
      home: { people: typed(3) },
    }).demand;
    const sigma = ({ low, high }: { low: number; high: number }) => Math.log(high / low) / (2 * 1.2816);
    const error = (figure: typeof space) => figure.value * Math.sqrt(Math.exp(sigma(figure) ** 2) - 1);
    const [rooms, drawn] = [error(space), error(water)];
    expect(error(total)).toBeCloseTo(Math.sqrt(rooms ** 2 + drawn ** 2 + 2 * 0.3 * rooms * drawn), 3);
    expect(total.working.source).toEqual(tell('water-follows', { share: 0.3 }));
    expect(total.working.inputs.map(({ value }) => value)).toEqual([space.value, water.value]);
    expect(total.working.steps).toHaveLength(2);
    expect(estimate({}).demand.total.grade).toBe('assumed');
  });
  test('rooms by the degree days of each month, hot water by its own months', () => {
    const { demand } = estimate({ heat: { ...loss, baseC: typed(15.5), use: 'heat-loss' } });
    const january =
      degreeDaysFromMeans(year.dailyMeanC.slice(0, 31), 15.5) / degreeDaysFromMeans(year.dailyMeanC, 15.5);
    expect(demand.monthlySpaceKWh[0]! / demand.space.value).toBeCloseTo(january, 9);
    const february =
      degreeDaysFromMeans(year.dailyMeanC.slice(31, 59), 15.5) / degreeDaysFromMeans(year.dailyMeanC, 15.5);
    expect(demand.monthlySpaceKWh[1]! / demand.space.value).toBeCloseTo(february, 9);
    expect(demand.monthlyWaterKWh[0]!).toBeGreaterThan(demand.monthlyWaterKWh[6]!);
    expect(demand.typedHeatLossWPerK).toBeCloseTo(6000 / 23, 9);
    expect([demand.signature, demand.change, demand.recordHeatLoss, demand.yearsAhead]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(estimate({}, [known.gas, known.outdoor]).demand.typedHeatLossWPerK).toBeUndefined();
  });
  test('the climate is that of the year’s region; one that is not the home’s is assumed', () => {
    const at = (home: Household['home']) => estimate({ home }).climate;
    expect(at({ regionId: 0 })).toMatchObject({
      regionId: 0,
      grade: 'estimated',
      recordWeather: 'none',
      monthlyMeanC: year.region.monthlyMeanC,
    });
    expect(at({ regionId: 5 })).toMatchObject({ regionId: 0, grade: 'assumed' });
  });
  test('a record that shows no heating leaves out what its line would say of the house', () => {
    const flat = madeRecord({ first: '2024-01-01', days: 366, base: 5, slope: 0, baseC: 14 });
    const { demand } = estimate({}, [flat.gas, flat.outdoor]);
    expect(demand.signature!.slopeKWhPerKDay).toBeCloseTo(0, 1);
    const nothing = madeRecord({ first: '2024-01-01', days: 366, base: 0, slope: 0, baseC: 15 });
    const empty = estimate({}, [nothing.gas, nothing.outdoor]).demand;
    expect([empty.recordHeatLoss, empty.yearsAhead]).toEqual([undefined, undefined]);
    expect(empty.signature!.count).toBe(366);
  });
});

describe('no heat', () => {
  test('a home that needs none gets none, in every month', () => {
    const heat = { certificateSpaceKWh: typed(0), certificateWaterKWh: typed(0), use: 'certificate' as const };
    const { demand } = estimate({ heat });
    expect([demand.space.value, demand.water.value, demand.total.value]).toEqual([0, 0, 0]);
    expect([...demand.monthlySpaceKWh, ...demand.monthlyWaterKWh].every((v) => v === 0)).toBe(true);
    expect(demand.heatLossWPerK).toBe(0);
  });
  test('a record of nothing is a demand of nothing', () => {
    const none = madeRecord({ first: '2024-01-01', days: 366, base: 0, slope: 0, baseC: 15 });
    const { demand } = estimate({ heat: { use: 'record' } }, [none.gas, none.outdoor]);
    expect([demand.space.value, demand.water.value]).toEqual([0, 0]);
  });
});

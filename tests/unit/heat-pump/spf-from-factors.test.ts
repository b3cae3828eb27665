import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { multiplierAt } from '../../../src/model/chance/multiplier.ts';
import { normalShare } from '../../../src/model/chance/normal-share.ts';
import { addedWorking } from '../../../src/model/heat-pump/added-working.ts';
import { reckonExtras } from '../../../src/model/heat-pump/extras.ts';
import { fieldSpread } from '../../../src/model/heat-pump/factor-spread.ts';
import { factorsAtMeter, settleAtMiddle } from '../../../src/model/heat-pump/field-step.ts';
import { designFlow, FLOW_SOURCE, factorAtFlow } from '../../../src/model/heat-pump/flow.ts';
import { findPasteurisation } from '../../../src/model/heat-pump/pasteurisation.ts';
import { settleFactors } from '../../../src/model/heat-pump/settle-factors.ts';
import { reckonMachine } from '../../../src/model/heat-pump/spf-from-factors.ts';
import { carnotCop, waterToSpaceRatio } from '../../../src/model/heat-pump/water-ratio.ts';
import type { Boundary } from '../../../src/model/shapes/household.ts';
import type { Told } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { reference } from '../../../src/reference/index.ts';
import { type HouseholdChange, makeHousehold, typed } from '../appraisal/make-household.ts';
import { makeDemand } from '../comparison/make-demand.ts';

const demand = makeDemand(12_000, 2100);
const reckon = (machine: Parameters<typeof makeHousehold>[0], d = demand) =>
  reckonMachine({ household: makeHousehold(machine), demand: d, reference });
const codes = (questions: readonly { code: string }[]) => questions.map(({ code }) => code);

describe('a typed pair of factors', () => {
  test('at H4 adds nothing: electricity is heat over factor', () => {
    const { machine, extras, spaceKWh, waterKWh } = reckon({
      machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured'), boundary: 'H4' },
    });
    expect(extras).toEqual([]);
    expect(machine.asDesigned).toBeUndefined();
    expect(spaceKWh).toBeCloseTo(3000, 9);
    expect(waterKWh).toBeCloseTo(700, 9);
    expect(machine.whole.value).toBeCloseTo(14_100 / 3700, 9);
  });

  test.each<[Boundary, string[]]>([
    ['H1', ['standby', 'source-pump', 'backup', 'pasteurisation', 'circulator']],
    ['H2', ['standby', 'backup', 'pasteurisation', 'circulator']],
    ['H3', ['standby', 'circulator']],
    ['H4', []],
  ])('at %s adds the lines %j', (boundary, names) => {
    const { extras, machine } = reckon({
      machine: { spaceFactor: typed(4), waterFactor: typed(3), boundary, backupShare: typed(0.02) },
    });
    expect(extras.map(({ name }) => name)).toEqual(names);
    expect(machine.extraKWh).toBeCloseTo(
      extras.reduce((sum, line) => sum + line.kWh, 0),
      9,
    );
    for (const { kWh, working } of extras) expect(working.result.value).toBe(kWh);
  });

  test('metered has its standby inside', () => {
    const { extras } = reckon({
      machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured'), boundary: 'H3' },
    });
    expect(extras.map(({ name }) => name)).toEqual(['circulator']);
  });

  test('a backup share of 1 % at a factor of 3.5 adds 2.5 % to the electricity', () => {
    const lines = reckonExtras({
      spaceKWh: 10_000,
      waterKWh: 0,
      spaceFactor: 3.5,
      waterFactor: 3.5,
      boundary: 'H2',
      metered: true,
      capacityKW: 8,
      backupShare: { value: 0.01, grade: 'estimated', origin: 'test' },
      pasteurisation: null,
    });
    const backup = lines.find(({ name }) => name === 'backup')!;
    expect(backup.kWh / (10_000 / 3.5)).toBeCloseTo(0.025, 9);
  });

  test('no weekly heating where it is switched off', () => {
    const { extras } = reckon({
      machine: { spaceFactor: typed(4), waterFactor: undefined, boundary: 'H4' },
      hotWater: { pasteuriseWeekly: false },
    });
    expect(extras).toEqual([]);
  });
});

describe('factors that were not typed', () => {
  test('both: the field stands in, assumed, at H4, for rooms and hot water together', () => {
    const { machine, questions, extras } = reckon({
      machine: { spaceFactor: undefined, waterFactor: undefined, boundary: undefined },
    });
    expect(machine).toMatchObject({ boundary: 'H4', space: { value: 3.24, grade: 'assumed' }, water: { value: 3.24 } });
    expect(machine.whole.value).toBeCloseTo(3.24, 9);
    // 3.24 × e^(∓1.2816 × 0.175), the deviation between its published shares at 3.0 and 3.5.
    expect(machine.space.low).toBeCloseTo(2.589, 3);
    expect(machine.space.high).toBeCloseTo(4.055, 3);
    expect(extras).toEqual([]);
    expect(codes(questions)).toEqual(['factor-from-field']);
  });

  test('hot water alone: derived below the rooms, with a wider range', () => {
    const { machine, questions, extras } = reckon({ machine: { spaceFactor: typed(3.6), waterFactor: undefined } });
    const width = ({ low, high }: { low: number; high: number }) => Math.log(high / low);
    expect(machine.asDesigned!.water).toBeCloseTo(3.6 * waterToSpaceRatio('ground', 45, 'radiators'), 9);
    expect(machine.water.value / machine.space.value).toBeCloseTo(waterToSpaceRatio('ground', 45, 'radiators'), 9);
    expect(machine.water.grade).toBe('assumed');
    expect(width(machine.water)).toBeGreaterThan(width(machine.space));
    expect(extras.map(({ name }) => name)).toEqual(['pasteurisation']);
    expect(codes(questions)).toContain('water-factor-derived');
  });

  test('the boundary: taken as H3 and asked about', () => {
    const { machine, questions } = reckon({ machine: { boundary: undefined } });
    expect(machine.boundary).toBe('H3');
    expect(codes(questions)).toContain('boundary-not-named');
  });
});

describe('questions and refusals', () => {
  test.each([
    ['below 1', 0.8],
    ['above 8', 9],
    ['not a number', Number.NaN],
  ])('a factor %s is refused and the field stands in', (_, value) => {
    const { machine, questions } = reckon({ machine: { spaceFactor: typed(value) } });
    expect(questions[0]).toMatchObject({ code: 'factor-refused', weight: 'refusal', field: 'machine.spaceFactor' });
    expect(machine.space.value).toBe(3.24);
  });

  test.each([
    [4.5, true],
    [3.9, false],
  ])('a designed factor of %f is above the field: %s', (value, asked) => {
    const { questions } = reckon({ machine: { spaceFactor: typed(value) } });
    expect(codes(questions).includes('factor-above-field')).toBe(asked);
  });

  test('a metered factor above the field is not doubted', () => {
    const { questions } = reckon({ machine: { spaceFactor: typed(4.5, 'measured') } });
    expect(codes(questions)).not.toContain('factor-above-field');
  });

  test.each([
    ['3.97 × √(1 / 1.32) = 3.46 at 60 °C', 60, 3.5, true],
    ['just below it', 60, 3.4, false],
    ['no higher at cool water', 35, 3.9, false],
  ])('a factor held against the flow it is for: %s', (_, flowC, value, asked) => {
    const { questions } = reckon({ machine: { spaceFactor: typed(value), flowC: typed(flowC) } });
    expect(codes(questions).includes('factor-above-flow')).toBe(asked);
    if (asked) {
      const { data } = questions.find(({ code }) => code === 'factor-above-flow')!;
      expect(data).toMatchObject({ typed: value, flowC });
      expect(data!.high).toBeCloseTo(3.455, 3);
    }
    const measured = reckon({ machine: { spaceFactor: typed(value, 'measured'), flowC: typed(flowC) } });
    expect(codes(measured.questions)).not.toContain('factor-above-flow');
  });
});

describe('how far the real factor strays', () => {
  const stepOf = (space: number, water: number, boundary: Boundary) =>
    settleAtMiddle(
      makeHousehold({ machine: { spaceFactor: typed(space), waterFactor: typed(water), boundary } }),
      reference,
    ).step!;

  test('as many reach the design as have at least its factor among the cases drawn', () => {
    const { share, deviation, reachedShare } = stepOf(4, 4, 'H4');
    // The real factor over the middle is e^(deviation z): it reaches the design at z = −ln(share) / deviation.
    expect(reachedShare).toBeCloseTo(1 - normalShare(-Math.log(share) / deviation), 9);
    expect(reachedShare).toBeLessThan(0.2);
  });

  test('what pumps and hot water already take off is not taken off again, and nothing is added', () => {
    // The whole of a usual home comes out at the same middle whether the design's own lines or the step take it off.
    const [bare, lined] = [stepOf(4, 4, 'H4'), stepOf(4, 3, 'H1')];
    expect(lined.share).toBeGreaterThan(bare.share);
    expect(stepOf(3, 1.5, 'H1').share).toBe(1);
  });

  test('a bolder design loses more, and keeps half of what it promises beyond another', () => {
    const [bold, modest] = [stepOf(4.4, 4.4, 'H4'), stepOf(3.6, 3.6, 'H4')];
    expect((4.4 * bold.share) / (3.6 * modest.share)).toBeCloseTo(Math.sqrt(4.4 / 3.6), 9);
  });

  test('a field figure strays as the field does', () => {
    const spread = fieldSpread(reference.fieldFactor.air);
    // Outer deciles of Electrification of Heat, 2.172 and 3.316, by a spread fitted to the Ofgem data alone.
    expect(2.75 * multiplierAt(spread, -1.2815515655)).toBeCloseTo(2.172, 1);
    expect(Math.abs((2.75 * multiplierAt(spread, 1.2815515655)) / 3.316 - 1)).toBeLessThan(0.04);
  });
});

describe('flow temperature', () => {
  test('20 K lower design flow raises the factor by 1.32, and 1 K by 1.4 %', () => {
    expect(factorAtFlow(3, 55, 35)).toBeCloseTo(3 * 1.32, 12);
    expect(factorAtFlow(3, 45, 44) / 3 - 1).toBeCloseTo(0.014, 3);
  });

  test('moves the rooms and never the hot water', () => {
    const household = makeHousehold();
    const asIs = reckonMachine({ household, demand, reference });
    const lower = reckonMachine({ household, demand, reference, whatIf: { flowC: 35 } });
    expect(lower.machine.space.value / asIs.machine.space.value).toBeCloseTo(1.32 ** 0.5, 9);
    expect(lower.machine.water.value).toBe(asIs.machine.water.value);
    expect(lower.machine.whole.value).toBeGreaterThan(asIs.machine.whole.value);
  });
});

test('Carnot at B0/W35 is 8.8043', () => {
  expect(carnotCop(35, 0)).toBeCloseTo(8.8043, 4);
});

test('low ≤ value ≤ high, and the whole factor lies between its parts at H4', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 8, noNaN: true }),
      fc.double({ min: 1, max: 8, noNaN: true }),
      fc.constantFrom<Boundary>('H1', 'H2', 'H3', 'H4'),
      fc.double({ min: 0, max: 30_000, noNaN: true }),
      fc.double({ min: 0, max: 6000, noNaN: true }),
      (space, water, boundary, spaceKWh, waterKWh) => {
        const parts = { spaceFactor: typed(space), waterFactor: typed(water), boundary };
        const { machine } = reckon({ machine: parts }, makeDemand(spaceKWh, waterKWh));
        for (const { low, value, high } of [machine.space, machine.water, machine.whole]) {
          expect(low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(high);
        }
        if (boundary === 'H4' && spaceKWh + waterKWh > 1) {
          const parts = [machine.space.value, machine.water.value];
          expect(machine.whole.value).toBeGreaterThanOrEqual(Math.min(...parts) - 1e-9);
          expect(machine.whole.value).toBeLessThanOrEqual(Math.max(...parts) + 1e-9);
        }
      },
    ),
  );
});

test('with no heat needed nothing runs and nothing breaks', () => {
  const { machine, extras, spaceKWh, waterKWh } = reckon({ machine: { boundary: 'H1' } }, makeDemand(0, 0));
  expect(extras).toEqual([]);
  expect(spaceKWh + waterKWh + machine.extraKWh).toBe(0);
  expect(machine.whole.value).toBe(3.6);
});

describe('lines outside the factor, by hand', () => {
  const input = {
    spaceKWh: 10_000,
    waterKWh: 2000,
    spaceFactor: 4,
    waterFactor: 2.5,
    boundary: 'H1' as Boundary,
    metered: false,
    capacityKW: 8,
    backupShare: { value: 0.05, grade: 'estimated' as const, origin: 'test' },
    pasteurisation: { litres: 200, fromC: 50, grade: 'measured' as const, origin: 'test' },
  };
  const linesOf = (change: Partial<typeof input>) =>
    reckonExtras({ ...input, ...change }).map(({ name, kWh, working }) => [
      name,
      kWh,
      working.inputs.map(({ value }) => value),
    ]);
  const near = (kWh: number) => expect.closeTo(kWh, 9);
  test('each with its inputs', () =>
    expect(linesOf({})).toEqual([
      ['standby', near(87.6), [10, 8760]],
      ['source-pump', near(0.09 * 1500), [90, 1500]],
      // Of 12,000 kWh of heat the machine takes 3,300: a twentieth of the other 8,700.
      ['backup', near(435), [0.05, 12_000, 3300]],
      ['pasteurisation', near((52 * 200 * 4.18 * 10) / 3600), [200, 50]],
      ['circulator', near(0.045 * 4200), [45, 4200]],
    ]));
  test('the circulator of a home with little heat runs four hours for one of full load', () =>
    expect(linesOf({ boundary: 'H3', spaceKWh: 4000, metered: true }).at(-1)).toEqual([
      'circulator',
      near(90),
      [45, 2000],
    ]));
  test.each<[string, Partial<typeof input>, string[]]>([
    ['no heat for rooms', { spaceKWh: 0 }, ['standby', 'source-pump', 'backup', 'pasteurisation']],
    ['no hot water', { waterKWh: 0 }, ['standby', 'source-pump', 'backup', 'circulator']],
    [
      'no resistance',
      { backupShare: { ...input.backupShare, value: 0 } },
      ['standby', 'source-pump', 'pasteurisation', 'circulator'],
    ],
    [
      'a cylinder kept at 60 °C',
      { pasteurisation: { ...input.pasteurisation, fromC: 60 } },
      ['standby', 'source-pump', 'backup', 'circulator'],
    ],
    [
      'one kept hotter',
      { pasteurisation: { ...input.pasteurisation, fromC: 65 } },
      ['standby', 'source-pump', 'backup', 'circulator'],
    ],
  ])('%s', (_, change, names) => expect(linesOf(change).map(([name]) => name)).toEqual(names));

  test.each<[string, number, HouseholdChange, number]>([
    // Hours = 4 × 3,000 kWh / output; the output is the heat loss typed, else 250 W/K between 20 °C and the design air.
    ['typed', 250, { heat: { heatLossKW: typed(6) } }, 2000],
    ['never below 3 kW', 250, { heat: { heatLossKW: typed(2) } }, 4000],
    ['from 250 W/K and −4 °C', 250, { heat: { heatLossKW: undefined, designOutdoorC: typed(-4) } }, 2000],
    [
      'from 250 W/K and the customary −3 °C',
      250,
      { heat: { heatLossKW: undefined, designOutdoorC: undefined } },
      12_000 / 5.75,
    ],
    ['where nothing is known', Number.NaN, { heat: { heatLossKW: undefined } }, 4000],
  ])('output %s', (_, heatLossWPerK, change, hours) => {
    const household = makeHousehold({ ...change, machine: { boundary: 'H3', spaceFactor: typed(4, 'measured') } });
    const { extras } = reckonMachine({ household, demand: { ...makeDemand(3000, 0), heatLossWPerK }, reference });
    expect(extras.find(({ name }) => name === 'circulator')!.kWh).toBeCloseTo(0.045 * hours, 9);
  });
});

describe('the weekly heating of the cylinder', () => {
  const find = (change: HouseholdChange, boundary: Boundary, from: 'typed' | 'derived') =>
    findPasteurisation(makeHousehold(change), {
      boundary,
      water: { value: 3, grade: 'estimated', origin: 'test', from },
    });
  test.each<[Boundary, 'typed' | 'derived', boolean]>([
    ['H1', 'typed', true],
    ['H2', 'typed', true],
    ['H3', 'typed', false],
    ['H4', 'typed', false],
    ['H4', 'derived', true],
  ])('a hot-water factor at %s, %s: beside it %s', (boundary, from, beside) =>
    expect(find({}, boundary, from) !== null).toBe(beside),
  );
  test('of 180 litres from 52 °C, or as typed', () => {
    expect(find({}, 'H1', 'typed')).toMatchObject({ litres: 180, fromC: 52, grade: 'assumed' });
    const hotWater = { cylinderLitres: typed(250, 'measured'), hotC: typed(48) };
    expect(find({ hotWater }, 'H1', 'typed')).toMatchObject({
      litres: 250,
      fromC: 48,
      grade: 'measured',
      origin: 'typed in a test',
    });
    for (const hotC of [60, 65]) expect(find({ hotWater: { hotC: typed(hotC) } }, 'H1', 'typed')).toBeNull();
    expect(find({ hotWater: { pasteuriseWeekly: false } }, 'H1', 'typed')).toBeNull();
  });
});

describe('factors as they are settled', () => {
  const settle = (machine: HouseholdChange['machine'], flowC?: number) =>
    settleFactors(makeHousehold({ machine }).machine, reference, flowC);
  test.each([
    [1, true],
    [8, true],
    [0.99, false],
    [8.01, false],
    [Number.POSITIVE_INFINITY, false],
  ])('a factor of %d is taken: %s', (value, taken) => {
    const { space, water, questions } = settle({ spaceFactor: typed(value), waterFactor: typed(value) });
    expect([space.value, water.value]).toEqual(taken ? [value, value] : [3.24, 3.24]);
    const refused = questions.filter(({ code }) => code === 'factor-refused').map(({ field, data }) => [field, data]);
    const data = { found: value, low: 1, high: 8 };
    expect(refused).toEqual(taken ? [] : ['machine.spaceFactor', 'machine.waterFactor'].map((field) => [field, data]));
  });
  test.each<[string, HouseholdChange['machine'], unknown[]]>([
    ['all given', {}, []],
    ['the best of the field', { spaceFactor: typed(3.97) }, []],
    [
      'above it',
      { spaceFactor: typed(3.98) },
      [['factor-above-field', 'question', { typed: 3.98, low: 2.51, middle: 3.24, high: 3.97 }]],
    ],
    ['no boundary', { boundary: undefined }, [['boundary-not-named', 'question', { taken: 'H3' }]]],
    [
      'hot water alone, no boundary',
      { spaceFactor: undefined, boundary: undefined },
      [
        ['factor-from-field', 'question', { low: 2.51, middle: 3.24, high: 3.97 }],
        ['boundary-not-named', 'question', { taken: 'H3' }],
      ],
    ],
    ['hot water as good as the rooms', { waterFactor: typed(3.6) }, []],
    ['better', { waterFactor: typed(3.61) }, [['water-factor-above-space', 'question', { space: 3.6, water: 3.61 }]]],
    [
      'no hot water',
      { waterFactor: undefined },
      [['water-factor-derived', 'note', { typed: 3.6, derived: expect.any(Number) }]],
    ],
  ])('%s: what is asked', (_, machine, asked) =>
    expect(settle(machine).questions.map(({ code, weight, data }) => [code, weight, data])).toEqual(asked),
  );
  test.each<[string, HouseholdChange['machine'], number, boolean]>([
    ['typed', { flowC: typed(42) }, 42, true],
    ['customary for radiators', { flowC: undefined }, 50, false],
    ['where no emitters are named', { flowC: undefined, emitters: undefined }, 50, false],
    ['customary for floors', { flowC: undefined, emitters: 'floor' }, 35, false],
  ])('flow %s', (_, machine, flowC, given) =>
    expect(designFlow(makeHousehold({ machine }).machine)).toEqual({ flowC, given }),
  );
  test('a flow asked for moves the rooms and nothing else, down to 1 at the least', () => {
    const moved = settle({}, 35);
    expect(moved.space.value).toBeCloseTo(3.6 * 1.32 ** 0.5, 12);
    expect([moved.spaceAsGiven.value, moved.water.value]).toEqual([3.6, 2.7]);
    expect(moved.flow).toEqual({ designC: 35, givenC: 45, given: true });
    expect([moved.space.grade, settle({ spaceFactor: undefined }, 35).space.grade]).toEqual(['estimated', 'assumed']);
    expect(settle({ spaceFactor: typed(3.6, 'measured') }, 35).space.grade).toBe('estimated');
    expect(settle({ spaceFactor: typed(1.05) }, 75).space.value).toBe(1);
    expect(settle({}, 45).space).toEqual(settle({}).space);
  });
  test('hot water derived from the rooms is never below 1', () =>
    expect(settle({ spaceFactor: typed(1.2), waterFactor: undefined }).water).toMatchObject({
      value: 1,
      from: 'derived',
    }));
  test.each([
    // By Carnot: 57 °C over 4 °C (ground) or 10 °C (air); 45 °C by design is 20 + 0.643 × 25 = 36.075 °C on the mean.
    ['ground', 45, 'radiators', 330.15 / 53 / (309.225 / 33.575)],
    ['air', 45, 'radiators', 330.15 / 47 / (309.225 / 30.575)],
    ['air', 35, 'floor', 330.15 / 47 / ((28.985 + 273.15) / 23.485)],
    ['ground', 75, 'radiators', 1],
  ] as const)('hot water over rooms: %s, %i °C, %s', (source, flowC, emitters, ratio) =>
    expect(waterToSpaceRatio(source, flowC, emitters)).toBeCloseTo(ratio, 12),
  );
});

describe('how far each factor strays', () => {
  const slopes = (machine: HouseholdChange['machine']) => {
    const { machine: result, spaceSpread, waterSpread } = reckon({ machine });
    for (const [{ value, low, high }, spread] of [
      [result.space, spaceSpread],
      [result.water, waterSpread],
    ] as const) {
      expect(low).toBeCloseTo(Math.max(1, value * Math.exp(-1.281_551_566 * spread.below)), 6);
      expect(high).toBeCloseTo(value * Math.exp(1.281_551_566 * spread.above), 6);
    }
    return [spaceSpread.below, spaceSpread.above, waterSpread.below, waterSpread.above];
  };
  const field = reference.fieldFactor.ground.deviation;
  test('metered by 5 % from year to year; derived from it by √(0.05² + 0.12²) = 0.13', () => {
    expect(slopes({ spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured') })).toEqual([
      0.05, 0.05, 0.05, 0.05,
    ]);
    expect(slopes({ spaceFactor: typed(4, 'measured'), waterFactor: undefined })).toEqual(
      [0.05, 0.05, 0.13, 0.13].map((slope) => expect.closeTo(slope, 12)),
    );
  });
  test('not typed: as the field does', () =>
    expect(slopes({ spaceFactor: undefined, waterFactor: undefined })).toEqual([field, field, field, field]));
  test('designed: at least as the field does, alike for both', () => {
    const [below, ...others] = slopes({});
    expect(below).toBeGreaterThanOrEqual(field);
    expect(others).toEqual([below, below, below]);
  });
});

describe('factors at the machine’s own meter', () => {
  const metered = { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured') };
  const at = (machine: HouseholdChange['machine'], heatLossKW = 8) =>
    factorsAtMeter(makeHousehold({ heat: { heatLossKW: typed(heatLossKW) }, machine }), reference);
  test('at H4 they are those typed', () => {
    const { space, water } = at({ ...metered, boundary: 'H4' });
    expect([space, water]).toEqual(
      [metered.spaceFactor, metered.waterFactor].map((given) => ({ ...given, from: 'typed' })),
    );
  });
  test('at H1 the lines of a usual home come on top: 12,000 and 2,500 kWh of heat', () => {
    const counted = 12_000 / 4 + 2500 / 3;
    // Source pump 90 W for 14,500 kWh / 8 kW, circulator 45 W for 4,200 h, 180 litres by 8 K a week.
    const lines = (0.09 * 14_500) / 8 + 0.045 * 4200 + (52 * 180 * 4.18 * 8) / 3600;
    const share = counted / (counted + lines);
    const { space, water } = at({ ...metered, boundary: 'H1' });
    expect([space.value, water.value]).toEqual([expect.closeTo(4 * share, 9), expect.closeTo(3 * share, 9)]);
    expect((space.origin as Told).data!.share).toBeCloseTo(share, 12);
    // A machine of 20 kW circulates 4 × 12,000 / 20 hours; a twentieth by resistance is a twentieth of what is not counted.
    const backup = 0.05 * (14_500 - counted);
    const large = lines - 0.045 * (4200 - 2400) + backup;
    const found = at({ ...metered, boundary: 'H1', backupShare: typed(0.05) }, 20).space.value;
    expect(found).toBeCloseTo((4 * counted) / (counted + large), 9);
  });
});

describe('the sums behind the factors', () => {
  const valuesOf = ({ inputs }: Working) => inputs.map(({ name, value }) => [(name as Told).code, value]);
  const sumsOf = (change: HouseholdChange, flowC?: number, d = demand) => {
    const whatIf = flowC === undefined ? {} : { whatIf: { flowC } };
    return reckonMachine({ household: makeHousehold(change), demand: d, reference, ...whatIf });
  };
  const formula = ({ working }: { working: Working }) => (working.formula as Told).code;
  test('metered: the factor as given at its boundary, no step', () => {
    const { machine } = sumsOf({ machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured') } });
    expect(valuesOf(machine.space.working)).toEqual([
      ['factor-as-given', 4],
      ['boundary', 'H4'],
    ]);
    expect(valuesOf(machine.water.working)).toEqual([
      ['factor-as-given', 3],
      ['boundary', 'H4'],
    ]);
    expect([formula(machine.space), machine.space.working.steps]).toEqual(['as-given', undefined]);
  });
  test('designed, and hot water derived from it: the step from design to homes', () => {
    const { machine } = sumsOf({ machine: { spaceFactor: typed(4.2), waterFactor: undefined } });
    const share = machine.space.value / 4.2;
    expect(share).toBeLessThan(1);
    expect(valuesOf(machine.space.working)).toEqual([
      ['factor-as-given', 4.2],
      ['design-to-homes', expect.closeTo(share, 9)],
      ['boundary', 'H4'],
    ]);
    expect(valuesOf(machine.water.working)).toEqual([
      ['factor-for-rooms', 4.2],
      ['water-over-rooms', expect.closeTo(waterToSpaceRatio('ground', 45, 'radiators'), 9)],
      ['design-to-homes', expect.closeTo(share, 9)],
      ['boundary', 'H4'],
    ]);
    expect([formula(machine.space), machine.space.working.steps!.length]).toEqual(['stepped', 1]);
    expect(((machine.water.working.formula as Told).data!.formula as Told).code).toBe('room-factor-by-ratio');
  });
  test('another flow: from which to which, for the rooms alone', () => {
    const { machine } = sumsOf(
      { machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured') } },
      35,
    );
    expect(valuesOf(machine.space.working)).toEqual([
      ['factor-as-given', 4],
      ['flow-held-for', 45],
      ['flow-now', 35],
      ['boundary', 'H4'],
    ]);
    expect([formula(machine.space), formula(machine.water)]).toEqual(['as-given-moved', 'as-given']);
    expect(machine.space.working.inputs[1]).toMatchObject({ grade: 'estimated', origin: { code: 'typed-flow' } });
    expect(machine.space.working.source).toEqual(FLOW_SOURCE);
    const usual = sumsOf({ machine: { spaceFactor: undefined, waterFactor: undefined, flowC: undefined } }, 35).machine;
    expect([formula(usual.space), formula(usual.water)]).toEqual(['field-mean-moved', 'field-mean']);
    expect(usual.space.working.inputs[1]).toMatchObject({
      value: 50,
      grade: 'assumed',
      origin: { code: 'usual-for-emitters' },
    });
    expect(usual.water.working.source).toBe(reference.fieldFactor.ground.source);
  });
  test('the whole: heat and electricity, line by line', () => {
    const { machine, extras, spaceKWh, waterKWh } = sumsOf({
      machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured'), boundary: 'H2' },
    });
    const { working } = machine.whole;
    const immersion = (52 * 180 * 4.18 * 8) / 3600;
    expect(valuesOf(working)).toEqual([
      ['heat-for-rooms', 12_000],
      ['heat-for-water', 2100],
      ['heat-of-immersion', expect.closeTo(immersion, 9)],
      ['electricity-for-rooms', spaceKWh],
      ['electricity-for-water', waterKWh],
      ...extras.map((line) => [(line.working.title as Told).code, line.kWh]),
    ]);
    expect(working.result.value).toBe(machine.whole.value);
    expect(working.steps).toEqual([
      machine.space.working,
      machine.water.working,
      ...extras.map((line) => line.working),
    ]);
    expect(machine.whole.value).toBeCloseTo((14_100 + immersion) / (spaceKWh + waterKWh + machine.extraKWh), 9);
    const none = sumsOf({ machine: { spaceFactor: typed(4, 'measured'), waterFactor: typed(3, 'measured') } });
    expect(valuesOf(none.machine.whole.working).map(([code]) => code)).toEqual([
      'heat-for-rooms',
      'heat-for-water',
      'electricity-for-rooms',
      'electricity-for-water',
    ]);
  });
  test('what the source adds is the factor less one', () => {
    const { machine } = sumsOf({});
    const added = addedWorking(machine.whole);
    expect(added.result.value).toBe(machine.whole.value - 1);
    expect([added.inputs[0]!.value, added.steps]).toEqual([machine.whole.value, [machine.whole.working]]);
  });
});

test('the design’s own figures stand beside the middle, all three at its own factors', () => {
  const { machine, extras } = reckon({ machine: { spaceFactor: typed(4), waterFactor: typed(3), boundary: 'H4' } });
  expect(machine.asDesigned).toMatchObject({ space: 4, water: 3, whole: expect.closeTo(14_100 / 3700, 9) });
  expect(extras).toEqual([]);
  const { low, high } = machine.whole;
  const whole = (space: number, water: number) => 14_100 / (12_000 / space + 2100 / water);
  expect(low).toBeCloseTo(whole(machine.space.low, machine.water.low), 9);
  expect(high).toBeCloseTo(whole(machine.space.high, machine.water.high), 9);
});

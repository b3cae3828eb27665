import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { multiplierAt } from '../../../src/model/chance/multiplier.ts';
import { normalShare } from '../../../src/model/chance/normal-share.ts';
import { reckonExtras } from '../../../src/model/heat-pump/extras.ts';
import { fieldSpread } from '../../../src/model/heat-pump/factor-spread.ts';
import { settleAtMiddle } from '../../../src/model/heat-pump/field-step.ts';
import { factorAtFlow } from '../../../src/model/heat-pump/flow.ts';
import { reckonMachine } from '../../../src/model/heat-pump/spf-from-factors.ts';
import { carnotCop, waterToSpaceRatio } from '../../../src/model/heat-pump/water-ratio.ts';
import type { Boundary } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { makeHousehold, typed } from '../appraisal/make-household.ts';
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

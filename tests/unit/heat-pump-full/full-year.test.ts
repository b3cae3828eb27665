import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { runYear } from '../../../src/model/heat-pump/full/run-year.ts';
import { reckonFullMachine } from '../../../src/model/heat-pump/full/spf-by-half-hour.ts';
import {
  FLOW_FROM_C,
  FLOW_TO_C,
  perHeatSurface,
  readSurface,
  SOURCE_FROM_C,
  SOURCE_TO_C,
} from '../../../src/model/heat-pump/full/surface.ts';
import { type Balance, USES } from '../../../src/model/heat-pump/full/year.ts';
import type { FullMachine } from '../../../src/model/shapes/household.ts';
import { CYLINDER_WINDOWS } from '../../../src/model/year/day-profiles.ts';
import { typed } from '../appraisal/make-household.ts';
import { fullHousehold, reckonFull, settleInput } from './make-year.ts';

const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);
const codes = (questions: readonly { code: string }[]) => questions.map(({ code }) => code);

const point = fc.record({
  sourceC: fc.integer({ min: -15, max: 15 }),
  flowC: fc.integer({ min: 30, max: 65 }),
  cop: fc.double({ min: 1.2, max: 7, noNaN: true }),
});
/** Machines as an installer may type them, sensible or not. */
const machines: fc.Arbitrary<FullMachine> = fc
  .record({
    points: fc.array(point, { minLength: 1, maxLength: 6 }),
    capacityKW: fc.double({ min: 2, max: 25, noNaN: true }),
    control: fc.constantFrom('fixed-speed' as const, 'variable' as const),
    kind: fc.constantFrom('vertical' as const, 'horizontal' as const),
    size: fc.double({ min: 0.4, max: 3, noNaN: true }),
    flow: fc.constantFrom('weather-compensated' as const, 'fixed' as const),
    shift: fc.double({ min: -5, max: 12, noNaN: true }),
  })
  .map(({ points, capacityKW, control, kind, size, flow, shift }) => ({
    ratedPoints: typed(points),
    capacityKW: typed(capacityKW),
    control,
    ground: { kind, size: typed(size) },
    flow,
    curveShiftK: typed(shift),
  }));
const homes = fc.record({
  source: fc.constantFrom('ground' as const, 'air' as const),
  emitters: fc.constantFrom('radiators' as const, 'floor' as const),
  flowC: fc.integer({ min: 30, max: 65 }).map((value) => typed(value)),
});

describe('whatever machine is typed', () => {
  test('a greater lift never raises the COP', () => {
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 1, maxLength: 8 }),
        fc.double({ min: -25, max: 25, noNaN: true }),
        fc.double({ min: 20, max: 70, noNaN: true }),
        fc.double({ min: 0, max: 15, noNaN: true }),
        (points, sourceC, flowC, more) => {
          const { surface } = perHeatSurface(points);
          const at = readSurface(surface, sourceC, flowC);
          expect(readSurface(surface, sourceC, flowC + more)).toBeGreaterThanOrEqual(at - 1e-12);
          expect(readSurface(surface, sourceC - more, flowC)).toBeGreaterThanOrEqual(at - 1e-12);
          expect(at).toBeLessThanOrEqual(1);
          expect(at).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('H1 ≥ H2 ≥ H4; heat = source + compressor; the months and half-hours sum to the year', () => {
    fc.assert(
      fc.property(machines, homes, (full, machine) => {
        const { full: found, machine: result, extras, spaceKWh, waterKWh } = reckonFull(full, { machine });
        const { year, monthly, bySlot } = found;
        const { H1, H2, H3, H4 } = year.factors!;
        expect(H1).toBeGreaterThanOrEqual(H2);
        expect(H2).toBeGreaterThanOrEqual(H4 - 1e-9);
        expect(H3).toBeGreaterThanOrEqual(H4);
        const compressor = year.electricityKWh.space + year.electricityKWh.water;
        expect(year.spaceHeatKWh + year.waterHeatKWh).toBeCloseTo(year.sourceHeatKWh + compressor, 6);
        expect(year.sourceHeatKWh).toBeGreaterThanOrEqual(-1e-9);
        const overMonths = (value: (balance: Balance) => number) => sum(monthly.map(value));
        expect(overMonths((m) => m.spaceHeatKWh)).toBeCloseTo(year.spaceHeatKWh, 6);
        expect(overMonths((m) => m.waterHeatKWh)).toBeCloseTo(year.waterHeatKWh, 6);
        for (const use of USES) {
          expect(overMonths((m) => m.electricityKWh[use])).toBeCloseTo(year.electricityKWh[use], 6);
          expect(sum(bySlot[use])).toBeCloseTo(year.electricityKWh[use], 6);
          expect(bySlot[use].every((kWh) => kWh >= 0)).toBe(true);
        }
        const lines = spaceKWh + waterKWh + sum(extras.map(({ kWh }) => kWh));
        expect(lines).toBeCloseTo(found.electricityKWh, 6);
        expect(result.whole.value).toBeCloseTo(H4, 9);
        expect(result.whole.low).toBeLessThanOrEqual(result.whole.value);
        expect(result.whole.high).toBeGreaterThanOrEqual(result.whole.value);
      }),
      { numRuns: 40 },
    );
  });

  test('no heat is lost: machine and backup give what the home needs', () => {
    fc.assert(
      fc.property(machines, homes, (full, machine) => {
        const { full: found } = reckonFull(full, { machine });
        const plenty = reckonFull({ ...full, capacityKW: typed(60) }, { machine }).full.year;
        const { year } = found;
        const given = year.spaceHeatKWh + year.waterHeatKWh + year.electricityKWh.backup;
        expect(given).toBeCloseTo(plenty.spaceHeatKWh + plenty.waterHeatKWh + plenty.electricityKWh.backup, 5);
        expect(plenty.electricityKWh.backup).toBe(0);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what each thing does to the whole factor', () => {
  const whole = (full: FullMachine = {}, change = {}) => reckonFull(full, change).machine.whole.value;
  test.each<[string, number, number]>([
    ['a lower design flow', whole({}, { machine: { flowC: typed(40) } }), whole({}, { machine: { flowC: typed(50) } })],
    ['a curve not set too high', whole(), whole({ curveShiftK: typed(5) })],
    ['weather compensation', whole(), whole({ flow: 'fixed' })],
    ['a machine that can turn itself down', whole({ control: 'variable' }), whole({ control: 'fixed-speed' })],
    ['a machine of the right size', whole({ capacityKW: typed(6) }), whole({ capacityKW: typed(14) })],
    [
      'a larger array',
      whole({ ground: { kind: 'vertical', size: typed(2) } }),
      whole({ ground: { kind: 'vertical', size: typed(0.5) } }),
    ],
    ['cooler hot water', whole({}, { hotWater: { hotC: typed(48) } }), whole({}, { hotWater: { hotC: typed(60) } })],
    ['floor heating for the same design flow', whole({}, { machine: { emitters: 'floor' } }), whole()],
    ['no backup heater', whole(), whole({}, { machine: { backupShare: typed(0.05) } })],
    [
      'brine typed warmer',
      whole({ brineMonthlyC: typed(new Array<number>(12).fill(8)) }),
      whole({ brineMonthlyC: typed(new Array<number>(12).fill(2)) }),
    ],
  ])('%s is better', (_, better, worse) => expect(better).toBeGreaterThan(worse));
});

describe('a machine too small', () => {
  const { full, questions, extras } = reckonFull({ capacityKW: typed(2.2) });
  test('leaves the rest to the backup heater and says so', () => {
    expect(full.backupShare).toBeGreaterThan(0.01);
    expect(codes(questions)).toContain('capacity-short');
    expect(extras.map(({ name }) => name)).toContain('backup');
    expect(full.year.factors!.H3).toBeLessThan(full.year.factors!.H2);
  });
});

describe('questions', () => {
  test.each<[string, FullMachine]>([
    ['points-assumed', {}],
    [
      'points-bent',
      {
        ratedPoints: typed([
          { sourceC: 0, flowC: 35, cop: 3 },
          { sourceC: 0, flowC: 55, cop: 4 },
        ]),
      },
    ],
    ['brine-too-cold', { ground: { kind: 'horizontal', size: typed(0.4) } }],
    ['array-depth-refused', { ground: { kind: 'horizontal', depthM: typed(100) } }],
    ['full-above-field', { ratedPoints: typed([{ sourceC: 0, flowC: 35, cop: 7 }]), control: 'variable' }],
  ])('%s', (code, full) => expect(codes(reckonFull(full).questions)).toContain(code));
  test('none for a sheet, an array and a usual result', () => {
    const ratedPoints = typed([
      { sourceC: 0, flowC: 35, cop: 4.5 },
      { sourceC: 0, flowC: 55, cop: 2.9 },
    ]);
    expect(reckonFull({ ratedPoints, control: 'fixed-speed' }).questions).toEqual([]);
  });
});

describe('typed brine', () => {
  test('keeps its months', () => {
    const monthly = [4, 3, 3, 4, 6, 8, 10, 11, 10, 8, 6, 5];
    const { full } = reckonFull({ brineMonthlyC: typed(monthly) });
    const january = full.sourceByDayC.slice(0, 31);
    expect(sum(january) / 31).toBeCloseTo(4, 6);
  });
});

describe('brine by array (usual in Britain: 4 to 9 °C over a season in boreholes, 0 to 4 °C late in winter in trenches; practice, from memory)', () => {
  test.each([
    ['Thames', 1],
    ['Midlands', 6],
    ['East Scotland', 15],
  ])('%s', (_, regionId) => {
    const run = (kind: 'vertical' | 'horizontal') =>
      reckonFullMachine(settleInput(fullHousehold({ ground: { kind } }), undefined, regionId)).full;
    const vertical = run('vertical');
    const horizontal = run('horizontal');
    expect(vertical.means.sourceC).toBeGreaterThan(4);
    expect(vertical.means.sourceC).toBeLessThan(9);
    expect(horizontal.coldestSourceC).toBeGreaterThan(0);
    expect(horizontal.coldestSourceC).toBeLessThan(4);
  });
});

describe('a machine of 8 kW and COP 4 at every source and flow, full load or none', () => {
  const slots = yearSlots(2026, 'Europe/London');
  const days = slots.dayStart.length - 1;
  const everywhere = (value: number) =>
    new Float64Array((SOURCE_TO_C - SOURCE_FROM_C + 1) * (FLOW_TO_C - FLOW_FROM_C + 1)).fill(value);
  const run = (spaceKWh: number, waterKWh: number, leastShare = 0) =>
    runYear({
      slots,
      outdoorC: new Float64Array(slots.count).fill(5),
      spaceKWh,
      spaceShare: new Float64Array(days).fill(1 / days),
      waterByDayKWh: new Float64Array(days).fill(waterKWh / days),
      waterFlowC: 50,
      waterHours: CYLINDER_WINDOWS,
      source: { kind: 'typed', byDayC: new Float64Array(days).fill(5) },
      curve: {
        control: 'fixed',
        emitters: 'floor',
        designFlowC: 35,
        spreadK: 5,
        designOutdoorC: -3,
        designRoomC: 20,
        roomC: 20,
        shiftK: 0,
      },
      perHeat: everywhere(1 / 4),
      outputKW: everywhere(8),
      leastShare,
      degradation: 0.9,
      designKW: 8,
      backupShare: 0,
      pasteurisationKWh: 52,
      sourcePumpW: 120,
      circulatorW: 60,
      standbyW: 10,
    }).year.electricityKWh;

  // By hand: heat / 4; the source pump runs heat / 8 kW hours at 120 W, rooms and cylinder alike; controls 8,760 h at 10 W.
  test.each([
    [12_000, 2400],
    [12_000, 0],
    [0, 2400],
  ])('%d kWh for rooms and %d kWh of hot water', (spaceKWh, waterKWh) => {
    const kWh = run(spaceKWh, waterKWh);
    expect(kWh.space).toBeCloseTo(spaceKWh / 4, 6);
    expect(kWh.water).toBeCloseTo(waterKWh / 4, 6);
    expect(kWh['source-pump']).toBeCloseTo((0.12 * (spaceKWh + waterKWh)) / 8, 6);
    // An hour of full load is four of circulating, and no half-hour comes near the quarter load that would cap it.
    expect(kWh.circulator).toBeLessThanOrEqual((0.06 * 4 * spaceKWh) / 8 + 1e-9);
    expect(kWh.backup).toBe(0);
    expect(kWh.pasteurisation).toBeCloseTo(52, 6);
    expect(kWh.standby).toBeCloseTo(87.6, 6);
  });

  test('of fixed speed: at a load ratio r the COP keeps r / (0.9 r + 0.1) of itself (EN 14825)', () => {
    // 4,380 kWh spread evenly would be a load ratio of 1/16 all year; by its hours it lies about that, and the loss with it.
    const kWh = run(4380, 0, 1);
    const even = 1 / 16 / (0.9 / 16 + 0.1);
    expect(kWh.space * even).toBeGreaterThan(4380 / 4 - 1e-6);
    expect(Math.abs((kWh.space * even) / (4380 / 4) - 1)).toBeLessThan(0.02);
  });
});

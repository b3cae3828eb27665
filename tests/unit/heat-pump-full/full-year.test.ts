import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import {
  flowTable,
  flowTemperature,
  type HeatingCurve,
  readFlow,
} from '../../../src/model/heat-pump/full/heating-curve.ts';
import { partLoadShare } from '../../../src/model/heat-pump/full/part-load.ts';
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
import { type Balance, USES, type YearInput } from '../../../src/model/heat-pump/full/year.ts';
import type { FullMachine } from '../../../src/model/shapes/household.ts';
import type { Told } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
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
        // A machine that gives less than its own electricity is bettered by its backup heater, which gives all of it.
        expect(Math.max(H2, 1)).toBeGreaterThanOrEqual(H4 - 1e-9);
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
  const runWith = (spaceKWh: number, waterKWh: number, change: Partial<YearInput> = {}) =>
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
      leastShare: 0,
      degradation: 0.9,
      designKW: 8,
      backupShare: 0,
      pasteurisationKWh: 52,
      sourcePumpW: 120,
      circulatorW: 60,
      standbyW: 10,
      ...change,
    });
  const run = (spaceKWh: number, waterKWh: number, leastShare = 0) =>
    runWith(spaceKWh, waterKWh, { leastShare }).year.electricityKWh;
  /** All heat of the year on one day. */
  const onDay = (day: number) => Float64Array.from({ length: days }, (_, one) => (one === day ? 1 : 0));
  // The day's heat by the hour, common practice: 0.75 until 6, 1.1 until 22, 0.9 until 24; 47.8 half-hours of 1 together.
  const [NIGHT, DAY, LATE, WHOLE] = [0.75, 1.1, 0.9, 47.8];
  /** Electricity of a use at an hour of 11 January, an ordinary Sunday. */
  const SUNDAY = 10;
  const at = (bySlot: Float64Array, hour: number) => bySlot[SUNDAY * 48 + 2 * hour]!;

  test('a day’s heat by its hours, hot water in its windows, the source pump by both', () => {
    const waterByDayKWh = onDay(SUNDAY).map((share) => share * 4);
    const { bySlot } = runWith(47.8, 0, { spaceShare: onDay(SUNDAY), waterByDayKWh });
    expect([3, 12, 22].map((hour) => at(bySlot.space, hour))).toEqual(
      [NIGHT, DAY, LATE].map((kWh) => expect.closeTo(kWh / 4, 12)),
    );
    // Eight half-hours from 4 to 6 and from 13 to 15.
    expect([3, 4, 6, 13, 14, 15].map((hour) => at(bySlot.water, hour))).toEqual(
      [0, 1, 0, 1, 1, 0].map((on) => expect.closeTo(on / 8, 12)),
    );
    // Half an hour gives 4 kWh at most, and the pump takes 0.06 kWh in it.
    expect(at(bySlot['source-pump'], 12)).toBeCloseTo((0.06 * DAY) / 4, 12);
    expect(at(bySlot['source-pump'], 13)).toBeCloseTo((0.06 * (DAY + 0.5)) / 4, 12);
    // The cylinder’s immersion on the fifty-two Sundays of 2026, in the same windows.
    expect([4, 6, 13].map((hour) => at(bySlot.pasteurisation, hour))).toEqual(
      [1 / 8, 0, 1 / 8].map((kWh) => expect.closeTo(kWh, 12)),
    );
    expect(bySlot.pasteurisation[(SUNDAY + 1) * 48 + 8]).toBe(0);
  });
  test.each([
    // kWh on the day: at noon 1.1 / 47.8 of it. The circulator takes 0.03 kWh a half-hour, four times the load ratio of it.
    [47.8, 0.03 * 4 * (1.1 / 4)],
    [43, 0.03 * 4 * ((43 * 1.1) / 47.8 / 4)],
    [60, 0.03],
  ])('circulator at noon of a day of %d kWh', (kWh, circulatorKWh) =>
    expect(at(runWith(kWh, 0, { spaceShare: onDay(SUNDAY) }).bySlot.circulator, 12)).toBeCloseTo(
      Math.min(0.03, circulatorKWh),
      12,
    ),
  );
  test.each([
    ['of fixed speed: r / (0.9 r + 0.1) is left', 47.8, 1, ((0.9 * 1.1) / 4 + 0.1) * (4 / 4)],
    ['down to half: nothing is lost above, little below', 47.8, 0.5, ((0.9 * 1.1) / 2 + 0.1) * (2 / 4)],
    ['down to a quarter: nothing is lost at 1.1 of 4', 47.8, 0.25, 1.1 / 4],
    ['hardly any heat takes no more than a resistance heater', 1.4, 1, (1.4 * 1.1) / 47.8],
  ])('compressor at noon, %s', (_, kWh, leastShare, usedKWh) =>
    expect(at(runWith(kWh, 0, { spaceShare: onDay(SUNDAY), leastShare }).bySlot.space, 12)).toBeCloseTo(usedKWh, 12),
  );
  test('the share of the COP that is left stands among the means', () => {
    const { year, means } = runWith(4380, 0, { leastShare: 1 });
    expect(means.partLoad).toBeCloseTo(4380 / 4 / year.electricityKWh.space, 12);
  });

  test.each([
    // 8 kW for as many hours as the day has: 192 kWh, 184 on 29 March, 200 on 25 October.
    [SUNDAY, 240, 48],
    [SUNDAY, 192, 0],
    [87, 240, 56],
    [297, 240, 40],
  ])('on day %i, of %d kWh the backup heater gives %d', (day, kWh, backupKWh) => {
    const { year, backupShare, bySlot } = runWith(kWh, 0, { spaceShare: onDay(day) });
    expect(year.electricityKWh.backup).toBeCloseTo(backupKWh, 9);
    expect(year.spaceHeatKWh).toBeCloseTo(kWh - backupKWh, 9);
    expect(year.resistanceHeatKWh).toBeCloseTo(backupKWh + 52, 9);
    expect(year.sourceHeatKWh).toBeCloseTo((kWh - backupKWh) * (3 / 4), 9);
    expect(backupShare).toBeCloseTo(backupKWh / kWh, 12);
    if (day === SUNDAY) expect(at(bySlot.backup, 12)).toBeCloseTo((backupKWh * DAY) / WHOLE, 9);
  });
  test('hot water of the day counts towards what it falls short of, and a share typed is the least', () => {
    const waterByDayKWh = onDay(SUNDAY).map((share) => share * 40);
    const short = runWith(200, 0, { spaceShare: onDay(SUNDAY), waterByDayKWh });
    expect(short.year.electricityKWh.backup).toBeCloseTo(48, 9);
    expect(short.year.waterHeatKWh).toBeCloseTo(40 * 0.8, 9);
    expect(short.backupShare).toBeCloseTo(48 / 240, 12);
    const typedShare = runWith(12_000, 2400, { backupShare: 0.1 }).year;
    expect(typedShare.electricityKWh.backup).toBeCloseTo(1440, 6);
    expect(typedShare.electricityKWh.space).toBeCloseTo(2700, 6);
    expect(typedShare.electricityKWh.water).toBeCloseTo(540, 6);
  });

  test('air by the half-hour, and means by the heat', () => {
    const outdoorC = Float64Array.from({ length: slots.count }, (_, slot) => (slots.minute[slot]! < 720 ? 0 : 10));
    const found = runWith(47.8, 0, { spaceShare: onDay(SUNDAY), outdoorC, source: { kind: 'air' } });
    const morning = 12 * NIGHT + 12 * DAY;
    expect(found.means.sourceC).toBeCloseTo((10 * (WHOLE - morning)) / WHOLE, 9);
    expect(found.means.flowC).toBeCloseTo(35, 9);
    expect(found.sourceByDayC[SUNDAY]).toBeCloseTo(5, 12);
  });
  test('brine by the day: mean by the heat, and the coldest of the year', () => {
    const byDayC = Float64Array.from({ length: days }, (_, day) => (day === 300 ? -2 : day < 100 ? 3 : 8));
    const found = runWith(1000, 0, { source: { kind: 'typed', byDayC } });
    expect(found.means.sourceC).toBeCloseTo((100 * 3 + 264 * 8 - 2) / 365, 9);
    expect(found.coldestSourceC).toBe(-2);
  });
  test('where nothing is heated there is no factor, and what stands in are the design’s temperatures', () => {
    const { year, means, backupShare } = runWith(0, 0, { pasteurisationKWh: 0 });
    expect([year.factors, backupShare]).toEqual([null, 0]);
    expect(means).toEqual({ flowC: 35, sourceC: 5, partLoad: 1 });
    expect(year.electricityKWh.pasteurisation).toBe(0);
  });

  test('ground under an even load x of the design: U − D (0.4 x + 0.6 s), s = x (1 − (29/30)^n), n days from 90 before New Year', () => {
    const dropK = 8;
    const source = { kind: 'ground' as const, undisturbedC: new Float64Array(days).fill(10), dropK };
    // A day of 24 kWh for rooms and 12 of hot water, against 24 h of 8 kW at the design; both draw three quarters.
    const { sourceByDayC } = runWith(24 * days, 12 * days, { source });
    const x = 36 / 192;
    for (const day of [0, 1, 30, 364]) {
      const s = x * (1 - (29 / 30) ** (91 + day));
      expect(sourceByDayC[day]).toBeCloseTo(10 - dropK * (0.4 * x + 0.6 * s), 9);
    }
    const untouched = runWith(0, 0, { source }).sourceByDayC;
    expect([untouched[0], untouched[364]]).toEqual([10, 10]);
    expect(runWith(24 * days, 0, { source, designKW: 0 }).sourceByDayC[200]).toBe(10);
  });

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

test.each([
  [1.2, 1],
  [1, 1],
  [0.5, 0.5 / 0.55],
  [0.1, 0.1 / 0.19],
  [0, 0],
  [Number.NaN, 0],
])('at a load ratio of %d the COP keeps %d of itself (EN 14825, C = 0.9)', (ratio, share) => {
  expect(partLoadShare(ratio)).toBeCloseTo(share, 12);
  if (ratio > 0) expect(partLoadShare(ratio, 1)).toBeCloseTo(1, 12);
});

test('the heating curve as a table: within a hundredth of a kelvin, its ends beyond it', () => {
  const curve: HeatingCurve = {
    control: 'weather-compensated',
    emitters: 'radiators',
    designFlowC: 50,
    spreadK: 5,
    designOutdoorC: -3,
    designRoomC: 20,
    roomC: 21,
    shiftK: 1,
  };
  const table = flowTable(curve);
  for (const outdoorC of [-40, -39.9, -3.1, 0, 7.33, 12.6, 44.9, 45])
    expect(Math.abs(readFlow(table, outdoorC) - flowTemperature(curve, outdoorC))).toBeLessThan(0.01);
  expect([readFlow(table, -60), readFlow(table, 60)]).toEqual([flowTemperature(curve, -40), 22]);
});

describe('the figures of a worked-out year', () => {
  const sheet: FullMachine = {
    ratedPoints: typed([
      { sourceC: 0, flowC: 35, cop: 4.6 },
      { sourceC: 0, flowC: 55, cop: 3 },
    ]),
  };
  // √(0.175² − 0.065²) = 0.16248. Φ(z) from printed tables of the normal distribution: 0.2736 at −0.6021, 0.2584 at −0.6484.
  test.each<[string, FullMachine, number, number]>([
    ['with a usual machine', {}, 0.175, 0.2736],
    ['with a data sheet', sheet, Math.sqrt(0.175 ** 2 - 0.065 ** 2), 0.2584],
  ])('%s a deviation of %d, and nine tenths are reached by %d', (_, full, deviation, reachedShare) => {
    const { machine, full: year, extras, spaceKWh, waterKWh, spaceSpread, waterSpread } = reckonFull(full);
    const { spaceHeatKWh, waterHeatKWh, resistanceHeatKWh, electricityKWh } = year.year;
    expect([spaceKWh, waterKWh]).toEqual([electricityKWh.space, electricityKWh.water]);
    expect(machine.space.value).toBeCloseTo(spaceHeatKWh / electricityKWh.space, 12);
    expect(machine.water.value).toBeCloseTo(waterHeatKWh / electricityKWh.water, 12);
    expect([spaceSpread, waterSpread]).toEqual(new Array(2).fill({ below: deviation, above: deviation }));
    const outer = Math.exp(1.281_551_566 * deviation);
    expect(machine.space.low).toBeCloseTo(Math.max(1, machine.space.value / outer), 6);
    expect(machine.space.high).toBeCloseTo(machine.space.value * outer, 6);
    const beside = sum(extras.map(({ kWh }) => kWh));
    expect(machine.extraKWh).toBeCloseTo(beside, 9);
    const whole = (factor: number) =>
      (spaceHeatKWh + waterHeatKWh + resistanceHeatKWh) /
      (electricityKWh.space / factor + electricityKWh.water / factor + beside);
    expect(machine.whole.value).toBeCloseTo(whole(1), 9);
    expect(machine.whole.low).toBeCloseTo(whole(1 / outer), 6);
    expect(machine.whole.high).toBeCloseTo(whole(outer), 6);
    const { asDesigned } = machine;
    expect(asDesigned!.space).toBeCloseTo(machine.space.value / 0.9, 9);
    expect(asDesigned!.water).toBeCloseTo(machine.water.value / 0.9, 9);
    expect(asDesigned!.whole).toBeCloseTo(whole(1 / 0.9), 9);
    expect(asDesigned!.reachedShare).toBeCloseTo(reachedShare, 3);
  });
  test('as in the laboratory: nothing is taken off a design', () => {
    expect(reckonFull({ installedShare: typed(1) }).machine.asDesigned).toBeUndefined();
    expect(reckonFull({ installedShare: typed(1.05) }).machine.asDesigned).toBeUndefined();
  });
  test.each<[string, ReturnType<typeof reckonFull>, string, string]>([
    ['ground, points assumed', reckonFull(), 'H1', 'assumed'],
    ['ground, points typed', reckonFull(sheet), 'H1', 'estimated'],
    ['air', reckonFull(sheet, { machine: { source: 'air' } }), 'H2', 'estimated'],
  ])('%s: tested COP at %s, graded %s', (_, { machine }, boundary, grade) =>
    expect([machine.boundary, machine.space.grade]).toEqual([boundary, grade]),
  );
  test('without hot water the factor for it is 1, and the year is that of the rooms', () => {
    const { machine, waterKWh, full } = reckonFull({}, {}, { waterShare: 0 });
    expect([machine.water.value, waterKWh]).toEqual([1, 0]);
    expect(machine.whole.value).toBeCloseTo(full.year.factors!.H4, 9);
  });
  test('each line is a use of electricity beside rooms and hot water, as sure as what was typed for it', () => {
    const { extras, full } = reckonFull(
      { standbyW: typed(20), circulatorW: typed(0) },
      { machine: { backupShare: typed(0.02) } },
    );
    expect(extras.map(({ name, kWh, grade }) => [name, kWh, grade])).toEqual(
      [
        ['standby', 175.2, 'estimated'],
        ['source-pump', full.year.electricityKWh['source-pump'], 'assumed'],
        ['backup', full.year.electricityKWh.backup, 'assumed'],
        ['pasteurisation', full.year.electricityKWh.pasteurisation, 'assumed'],
      ].map(([name, kWh, grade]) => [name, expect.closeTo(kWh as number, 6), grade]),
    );
    for (const { kWh, working } of extras) {
      expect(working.result.value).toBe(kWh);
      expect(working.inputs).toHaveLength(1);
    }
  });
  test('the sums hold the figures of the year', () => {
    const { machine, extras, full } = reckonFull({}, { machine: { backupShare: typed(0.02) } });
    const { year, means } = full;
    const valuesOf = ({ inputs }: Working) => inputs.map(({ name, value }) => [(name as Told).code, value]);
    expect(valuesOf(machine.space.working).slice(0, 6)).toEqual([
      ['heat-from-machine', year.spaceHeatKWh],
      ['electricity-of-compressor', year.electricityKWh.space],
      ['mean-flow', means.flowC],
      ['mean-source', means.sourceC],
      ['left-after-cycling', means.partLoad],
      ['rated-points', expect.anything()],
    ]);
    expect(valuesOf(machine.water.working).slice(0, 4)).toEqual([
      ['heat-from-machine', year.waterHeatKWh],
      ['electricity-of-compressor', year.electricityKWh.water],
      ['flow-to-cylinder', 57],
      ['rated-points', expect.anything()],
    ]);
    const { H1, H2, H3, H4 } = year.factors!;
    expect(valuesOf(machine.whole.working)).toEqual([
      ['heat-for-rooms', year.spaceHeatKWh],
      ['heat-for-water', year.waterHeatKWh],
      ['heat-of-source', year.sourceHeatKWh],
      ['heat-of-resistance', year.resistanceHeatKWh],
      ['electricity-for-rooms', year.electricityKWh.space],
      ['electricity-for-water', year.electricityKWh.water],
      ...extras.map(({ kWh, working }) => [(working.title as Told).code, kWh]),
      ...[H1, H2, H3, H4].map((factor) => ['factor-at', factor]),
    ]);
    expect(machine.whole.working.steps).toEqual([
      machine.space.working,
      machine.water.working,
      ...extras.map(({ working }) => working),
    ]);
    for (const { value, working } of [machine.space, machine.water, machine.whole])
      expect(working.result.value).toBe(value);
    expect((machine.space.working.title as Told).code).toBe('room-factor-by-half-hour');
    expect((machine.water.working.title as Told).code).toBe('water-factor-by-half-hour');
  });
});

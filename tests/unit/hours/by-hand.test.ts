/** Heat laid over a few half-hours, and hot water over a year, where the cheapest way follows by hand. */
import { describe, expect, test } from 'vitest';
import { yearSlots } from '../../../src/model/calendar/zone.ts';
import { heatAndMachine } from '../../../src/model/choices/save-by-hours.ts';
import { heatOfHousehold } from '../../../src/model/heat-of-household.ts';
import { findBestHours, type HoursInput } from '../../../src/model/hours/best-hours.ts';
import { coldDay } from '../../../src/model/hours/cold-day.ts';
import { LEVELS, penceOfHeat, shiftHeat } from '../../../src/model/hours/shift-heat.ts';
import { homeWarmth } from '../../../src/model/hours/warmth.ts';
import { CYLINDER_WINDOWS, DRAWN_WATER } from '../../../src/model/year/day-profiles.ts';
import { reference } from '../../../src/reference/index.ts';
import { makeHousehold } from '../appraisal/make-household.ts';

interface Row {
  readonly drawn: number;
  readonly most: number;
  /** Pence a kWh, of the first half of the most and of the rest. */
  readonly pence: number;
  readonly dearer?: number;
}
const store = (rows: readonly Row[], { keep = 1, least = -1, full = 1 } = {}) => ({
  drawnKWh: Float64Array.from(rows, ({ drawn }) => drawn),
  mostKWh: Float64Array.from(rows, ({ most }) => most),
  pence: Float64Array.from(
    rows.flatMap(({ most, pence, dearer = pence }) =>
      Array.from({ length: LEVELS }, (_, level) => {
        const kWh = (most * level) / (LEVELS - 1);
        return Math.min(kWh, most / 2) * pence + Math.max(0, kWh - most / 2) * dearer;
      }),
    ),
  ),
  keep,
  leastKWh: least,
  fullKWh: full,
});
const near = (values: readonly number[]) => values.map((one) => expect.closeTo(one, 6));

describe('three half-hours of 1 kWh each', () => {
  test.each<readonly [string, readonly Row[], Parameters<typeof store>[1], readonly number[], readonly number[]]>([
    [
      'dear in the middle: all of it is made before',
      [
        { drawn: 1, most: 2, pence: 10 },
        { drawn: 1, most: 2, pence: 30 },
        { drawn: 1, most: 2, pence: 11 },
      ],
      { least: 0 },
      [2, 0, 1],
      [1, 0, 0],
    ],
    [
      'or after, where that is cheaper and the rooms may cool',
      [
        { drawn: 1, most: 1, pence: 20 },
        { drawn: 1, most: 2, pence: 30 },
        { drawn: 1, most: 2, pence: 10 },
      ],
      {},
      [1, 0, 2],
      [0, -1, 0],
    ],
    [
      'no more than the store takes',
      [
        { drawn: 1, most: 3, pence: 10 },
        { drawn: 1, most: 2, pence: 30 },
        { drawn: 1, most: 2, pence: 30 },
      ],
      { least: 0, full: 0.5 },
      [1.5, 0.5, 1],
      [0.5, 0, 0],
    ],
    [
      'no more than can be made',
      [
        { drawn: 1, most: 1.4, pence: 10 },
        { drawn: 1, most: 2, pence: 30 },
        { drawn: 1, most: 2, pence: 30 },
      ],
      { least: 0, full: 5 },
      [1.4, 0.6, 1],
      [0.4, 0, 0],
    ],
    [
      'dearer by the kWh: the first half of each before the rest of any',
      [
        { drawn: 1, most: 2, pence: 10, dearer: 25 },
        { drawn: 1, most: 2, pence: 12, dearer: 40 },
        { drawn: 1, most: 2, pence: 30 },
      ],
      { least: 0, full: 5 },
      [2, 1, 0],
      [1, 1, 0],
    ],
    [
      'what is held loses a fifth: made before only where it is cheap enough',
      [
        { drawn: 1, most: 3, pence: 10 },
        { drawn: 1, most: 2, pence: 12 },
        { drawn: 1, most: 2, pence: 13 },
      ],
      { least: 0, full: 5, keep: 0.8 },
      [1, 1, 1],
      [0, 0, 0],
    ],
    [
      'and then as much more as is lost',
      [
        { drawn: 1, most: 3, pence: 10 },
        { drawn: 1, most: 2, pence: 13 },
        { drawn: 1, most: 2, pence: 13 },
      ],
      { least: 0, full: 5, keep: 0.8 },
      [2.25, 0, 1],
      [1.25, 0, 0],
    ],
    [
      'too little can be made: all of it is',
      [
        { drawn: 1, most: 0.5, pence: 10 },
        { drawn: 1, most: 0, pence: 0 },
        { drawn: 1, most: 0.5, pence: 30 },
      ],
      { least: 0 },
      [0.5, 0, 0.5],
      [-0.5, -1.5, -2],
    ],
    [
      'what cannot be made later is made before, however dear',
      [
        { drawn: 1, most: 3, pence: 30 },
        { drawn: 1, most: 2, pence: 10 },
        { drawn: 2, most: 0.5, pence: 10 },
      ],
      { least: 0, full: 5 },
      [1.5, 2, 0.5],
      [0.5, 1.5, 0],
    ],
    [
      'paid to take it: filled',
      [
        { drawn: 1, most: 3, pence: -5 },
        { drawn: 1, most: 2, pence: 30 },
        { drawn: 1, most: 2, pence: 30 },
      ],
      { least: 0, full: 1.5 },
      [2.5, 0, 0.5],
      [1.5, 0.5, 0],
    ],
  ])('%s', (_, rows, limits, heat, held) => {
    const one = store(rows, limits);
    const found = shiftHeat(one);
    expect([...found.heatKWh]).toEqual(near(heat));
    expect([...found.heldKWh]).toEqual(near(held));
    expect(found.pence).toBeCloseTo(
      heat.reduce((sum, kWh, slot) => sum + penceOfHeat(one, slot, kWh), 0),
      6,
    );
  });
});

test('the cost of an amount lies straight between the levels, and is nothing where nothing can be made', () => {
  const one = store([
    { drawn: 1, most: 6, pence: 10, dearer: 20 },
    { drawn: 1, most: 0, pence: 10 },
  ]);
  expect([0, 1.5, 3, 4.5, 6].map((kWh) => penceOfHeat(one, 0, kWh))).toEqual(near([0, 15, 30, 60, 90]));
  expect(penceOfHeat(one, 1, 2)).toBe(0);
  // Each level as dear as its square: half-way between two of them lies above the curve, and the last is the last.
  const bent = { ...one, pence: Float64Array.from({ length: 2 * LEVELS }, (_, i) => (i % LEVELS) ** 2) };
  expect([0.5, 1, 4.5, 5.5, 6].map((kWh) => penceOfHeat(bent, 0, kWh))).toEqual(near([0.5, 1, 20.5, 30.5, 36]));
});

const { year } = heatAndMachine(
  heatOfHousehold({ household: makeHousehold(), series: [], reference, asOf: '2026-11-28' }),
  [],
);

describe('a machine of the same COP at all hours, hot water alone', () => {
  const slots = yearSlots(year.slots.year, year.slots.zone);
  const water = {
    ...year,
    waterHours: CYLINDER_WINDOWS,
    perHeat: year.perHeat.map(() => 1 / 3),
    outputKW: year.outputKW.map(() => 80),
  };
  const night = Float64Array.from(slots.minute, (minute) => (minute < 420 ? 10 : 30));
  const find = (change: Partial<HoursInput> = {}) =>
    findBestHours({
      year: water,
      pencePerKWh: night,
      warmth: homeWarmth({}, 200, undefined),
      roomC: 20,
      comfort: { downK: 0, upK: 0 },
      cylinderKWh: 40,
      movesWater: true,
      ...change,
    });
  const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);
  test('is made in the last half-hour of the night, less what the cylinder then loses', () => {
    // A kWh at night and a kWh by day cost 10 and 30 p: half of the usual heat each. 1.5 of 9 kWh are lost a day.
    const keep = 1 - 1.5 / 9 / 48;
    const [made, drawn] = [CYLINDER_WINDOWS, DRAWN_WATER].map((weights) => weights.map((one) => one / sum(weights)));
    // What is drawn is what the usual hours leave of theirs.
    const share = sum(made!.map((one, i) => one * keep ** -i)) / sum(drawn!.map((one, i) => one * keep ** -i));
    const heat = share * sum(drawn!.map((one, i) => one * keep ** -Math.max(0, i - 13)));
    const { waterSaved, spaceSaved, roomC } = find();
    expect(waterSaved).toBeCloseTo(Math.min(1, heat) - heat / 2, 3);
    expect(spaceSaved).toBe(0);
    expect(new Set(roomC)).toEqual(new Set([20]));
  });
  test('no more than the machine gives in a half-hour: in the last half-hours of the night that are free', () => {
    const keep = 1 - 1.5 / 9 / 48;
    const [made, drawn] = [CYLINDER_WINDOWS, DRAWN_WATER].map((weights) => weights.map((one) => one / sum(weights)));
    const share = sum(made!.map((one, i) => one * keep ** -i)) / sum(drawn!.map((one, i) => one * keep ** -i));
    let [usual, found] = [0, 0];
    for (const kWh of water.waterByDayKWh) {
      usual += kWh;
      // 3.2 kW give 1.6 kWh; each kWh drawn by day is made as late in the night as there is room.
      const room = new Array<number>(14).fill(1.6);
      drawn!.forEach((weight, half) => {
        let left = share * kWh * weight;
        for (let slot = Math.min(half, 13); left > 1e-12; slot--) {
          const heat = Math.min(room[slot]!, left * keep ** -(half - slot));
          room[slot]! -= heat;
          found += heat;
          left -= heat * keep ** (half - slot);
        }
      });
    }
    const outputKW = year.outputKW.map(() => 3.2);
    const { waterSaved } = find({ year: { ...water, outputKW } });
    expect(waterSaved).toBeCloseTo(Math.min(1, found / usual) - found / usual / 2, 3);
  });
  test('stays where it is made in cheap hours as it is, where one price holds, and where it is paid for', () => {
    expect(find({ movesWater: false }).waterSaved).toBe(0);
    expect(find({ pencePerKWh: night.map(() => 20) }).waterSaved).toBeCloseTo(0, 2);
    expect(find({ pencePerKWh: night.map(() => -5) }).waterSaved).toBe(0);
  });
});

describe('a machine of the same COP at all hours, the rooms alone', () => {
  const { slots } = year;
  const rooms = {
    ...year,
    waterByDayKWh: year.waterByDayKWh.map(() => 0),
    perHeat: year.perHeat.map(() => 1 / 3),
    outputKW: year.outputKW.map(() => 80),
  };
  const isNight = (slot: number) => slots.minute[slot]! < 420;
  const night = Float64Array.from({ length: slots.count }, (_, slot) => (isNight(slot) ? 10 : 30));
  const find = (comfort: HoursInput['comfort'], roomC = 20, change: Partial<HoursInput> = {}) =>
    findBestHours({
      year: rooms,
      pencePerKWh: night,
      warmth: { kWhPerK: 1, timeConstantHours: 1e9, known: 'typed' },
      roomC,
      comfort,
      cylinderKWh: 0,
      movesWater: false,
      atHome: { otherKWh: even(0), sunPence: 0 },
      ...change,
    });
  const even = (value: number) => new Float64Array(slots.count).fill(value);
  const total = (values: Float64Array) => values.reduce((sum, one) => sum + one, 0);
  test.each([
    ['a kelvin up: 1 kWh of each day is made by night', { downK: 0, upK: 1 }, 20, 1, [20, 21]],
    ['a kelvin down: made good by night', { downK: 1, upK: 0 }, 20, 1, [19, 20]],
    ['half a kelvin up and one down, where nothing is said', {}, 20, 1.5, [19, 20.5]],
    ['never below 18 °C', { downK: 3, upK: 0 }, 18.4, 0.4, [18, 18.4]],
  ] as const)('%s', (_, comfort, roomC, keptKWh, [coldest, warmest]) => {
    const found = find(comfort, roomC);
    const { usual, best } = found.electricity!;
    let [saved, paid] = [0, 0];
    for (let day = 0; day + 1 < slots.dayStart.length; day++) {
      let byDay = 0;
      for (let slot = slots.dayStart[day]!; slot < slots.dayStart[day + 1]!; slot++) {
        paid += usual.space[slot]! * night[slot]!;
        if (!isNight(slot)) byDay += 3 * usual.space[slot]!;
      }
      // A third of the heat is bought, for 20 p a kWh less. The year ends as warm as it began, so its last evening is no cooler.
      const isLast = day + 2 === slots.dayStart.length;
      saved += (Math.min(isLast ? keptKWh - (roomC - coldest) : keptKWh, byDay) * 20) / 3;
    }
    expect(found.spaceSaved).toBeCloseTo(saved / paid, 6);
    expect(total(best.space)).toBeCloseTo(total(usual.space), 4);
    expect([Math.min(...found.roomC), Math.max(...found.roomC)]).toEqual([
      expect.closeTo(coldest, 6),
      expect.closeTo(warmest, 6),
    ]);
    expect([usual.water, best.water].map(total)).toEqual([0, 0]);
  });

  test('a cold day shows its own half-hours: prices, kW of heat and the rooms', () => {
    const { day, electricity, roomC } = find({});
    const { start } = coldDay(rooms);
    const ofDay = (values: Float64Array, times = 1) =>
      near([...values.subarray(start, start + 48)].map((x) => x * times));
    expect(day.pencePerKWh).toEqual(ofDay(night));
    expect(day.roomC).toEqual(ofDay(roomC));
    // A kWh of electricity is 3 of heat, and in half an hour twice as many kW.
    expect(day.usualKW).toEqual(ofDay(electricity!.usual.space, 6));
    expect(day.bestKW).toEqual(ofDay(electricity!.best.space, 6));
  });

  test('rooms that cool need less heat, which is told and is not saved by the hours', () => {
    const warmth = { kWhPerK: 1, timeConstantHours: 15, known: 'typed' } as const;
    const { electricity, spaceSaved } = find({ downK: 1, upK: 0 }, 20, { warmth });
    const { usual, best, heatShare } = electricity!;
    const share = total(best.space) / total(usual.space);
    expect(share).toBeLessThan(0.99);
    expect(heatShare).toEqual({ space: expect.closeTo(share, 6), water: 1 });
    const pence = (kWh: Float64Array) => kWh.reduce((sum, one, slot) => sum + one * night[slot]!, 0);
    expect(spaceSaved).toBeCloseTo(share - pence(best.space) / pence(usual.space), 6);
  });

  test('no more than the machine gives, or the design needs, or what hot water leaves of it', () => {
    const most = (change: Partial<typeof rooms>) => {
      const { usual, best } = find({ downK: 0, upK: 9 }, 20, { year: { ...rooms, ...change } }).electricity!;
      return best.space.reduce((sum, kWh, slot) => Math.max(sum, kWh > usual.space[slot]! + 1e-9 ? 3 * kWh : 0), 0);
    };
    expect(most({})).toBeCloseTo(rooms.designKW / 2, 6);
    expect(most({ outputKW: rooms.outputKW.map(() => 3) })).toBeCloseTo(1.5, 6);
    // Hot water takes 72 of its 40 kWh a half-hour over a day; of the 50 in October it takes least of each.
    const waterHours = new Array<number>(48).fill(1);
    const waterByDayKWh = rooms.waterByDayKWh.map(() => 72);
    expect(most({ waterHours, waterByDayKWh })).toBeCloseTo((rooms.designKW / 2) * (1 - 72 / 50 / 40), 6);
  });

  const noon = (at: number, else_: number) =>
    Float64Array.from(slots.minute, (minute) => (minute >= 660 && minute < 780 ? at : else_));
  test.each<[string, Partial<HoursInput>, Float64Array]>([
    // Nearly four times what is needed: all of it is met, and costs what the sun would have earned.
    [
      'far more than is needed at noon, worth 5 p',
      { atHome: { otherKWh: even(0.1), madeKWh: noon(50, 0), sunPence: 5 } },
      noon(5, 30),
    ],
    [
      'worth more than a kWh costs',
      { atHome: { otherKWh: even(0.1), madeKWh: noon(50, 0), sunPence: 40 } },
      noon(40, 30),
    ],
    // Little more than half of what is needed without it: used already.
    [
      'all used by the rest of the home',
      { atHome: { otherKWh: even(50), madeKWh: noon(25, 0), sunPence: 5 } },
      even(30),
    ],
  ])('sun %s counts as a price', (_, change, pencePerKWh) => {
    const sunny = find({}, 20, { pencePerKWh: even(30), ...change });
    const priced = find({}, 20, { pencePerKWh });
    expect(total(sunny.roomC.map((one, slot) => Math.abs(one - priced.roomC[slot]!)))).toBeLessThan(1e-6);
    expect(sunny.spaceSaved).toBeCloseTo(priced.spaceSaved, 9);
  });
});

describe('warmth that a home holds', () => {
  // ISO 13790: kJ for a kelvin and a square metre. 100 m² of 80 kJ hold 8,000 kJ or 2.222 kWh a kelvin; at 250 W/K that lasts 8.889 h.
  test.each([
    ['very light', 2.222, 8.889],
    ['light', 3.056, 12.222],
    ['medium', 4.583, 18.333],
    ['heavy', 7.222, 28.889],
    ['very heavy', 10.278, 41.111],
  ] as const)('built %s: %f kWh a kelvin, %f hours', (mass, kWhPerK, hours) => {
    const found = homeWarmth({ mass }, 250, 100);
    expect(found.kWhPerK).toBeCloseTo(kWhPerK, 3);
    expect(found.timeConstantHours).toBeCloseTo(hours, 3);
    expect(found.known).toBe('built');
  });
  test('typed hours before all, 15 hours where nothing is known, and the floor wanted beside how it is built', () => {
    expect(homeWarmth({ mass: 'heavy', timeConstantHours: 40 }, 200, 100)).toEqual({
      kWhPerK: 8,
      timeConstantHours: 40,
      known: 'typed',
    });
    const assumed = { kWhPerK: 3, timeConstantHours: 15, known: 'assumed' };
    expect(homeWarmth({}, 200, 100)).toEqual(assumed);
    expect(homeWarmth({ mass: 'heavy' }, 200, undefined)).toEqual(assumed);
  });
});

test('the cold day is the one of the coldest month that is nearest to its mean', () => {
  const slots = yearSlots(2025, 'Europe/London');
  // January's days have 30, 29, … 0 °C, which makes 15 °C; all other days are warmer than that.
  const outdoorC = Float64Array.from({ length: slots.count }, (_, slot) =>
    slot < 31 * 48 ? 30 - Math.floor(slot / 48) : 16,
  );
  expect(coldDay({ slots, outdoorC })).toEqual({ meanC: 15, start: 15 * 48 });
});

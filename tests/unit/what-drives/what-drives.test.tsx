import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutDriver } from '../../../src/charts/drivers/layout.ts';
import { DriverPicture } from '../../../src/charts/drivers/picture.tsx';
import { driversSentence } from '../../../src/charts/drivers/sentence.ts';
import { emitterRows, highestPence } from '../../../src/charts/drivers/series.ts';
import { driverTable, emitterTable } from '../../../src/charts/drivers/table.ts';
import { textWidth } from '../../../src/charts/frame/text.ts';
import { type AppraisedYears, appraise, appraiseYears } from '../../../src/model/appraise.ts';
import type { Appraisal, Figure, WhatIf } from '../../../src/model/shapes/appraisal.ts';
import { type Told, tell } from '../../../src/model/shapes/told.ts';
import { effectOf, type Stood } from '../../../src/model/what-drives/effect.ts';
import { type DriverName, listEffects, listSweeps, type Sweep } from '../../../src/model/what-drives/sweeps.ts';
import { type Driver, stepWhatDrives, type WhatDrives } from '../../../src/model/what-drives/what-drives.ts';
import { reference } from '../../../src/reference/index.ts';
import { driverNote, emitterSentence, startsFromSentence } from '../../../src/words/drivers.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { type HouseholdChange, makeHousehold, typed } from '../appraisal/make-household.ts';
import { readingEase } from '../words/reading-ease.ts';

const about = (household = makeHousehold(), whatIf: WhatIf = {}) => ({
  household,
  series: [],
  reference,
  asOf: '2026-11-25',
  whatIf,
});
const reckonWhatDrives = (shown: Parameters<typeof stepWhatDrives>[0]): WhatDrives => {
  const steps = stepWhatDrives(shown);
  for (;;) {
    const next = steps.next();
    if (next.done) return next.value;
  }
};
const quick = reckonWhatDrives(about());
const full = reckonWhatDrives(about(makeHousehold({ machine: { way: 'full' } })));
const find = (drives: typeof quick, name: string) => drives.drivers.find((one) => one.name === name)!;
const costs = ({ points }: Driver) => points.map(({ costPence }) => costPence);
const rises = (values: readonly number[]) => values.every((value, i) => i === 0 || value > values[i - 1]!);

describe('each step is what the model says', () => {
  test.each([
    ['flow', 60, { flowC: 60 }],
    ['room', 23, { roomC: 23 }],
    ['water-use', 1.5, { waterShare: 1.5 }],
  ] as [string, number, WhatIf][])('%s at %d', (name, at, whatIf) => {
    const appraisal = appraise({ ...about(), whatIf, draws: 0 });
    const point = find(quick, name).points.find((one) => one.at === at)!;
    expect(point.costPence).toBe(appraisal.systems[0]!.cost.value);
    expect(point.factor).toBe(appraisal.machine.whole.value);
  });
  test('a typed factor does not know of cylinder and array, a worked-out one does', () => {
    expect(quick.drivers.map(({ name }) => name)).toEqual(['flow', 'room', 'water-use']);
    expect(full.drivers.map(({ name }) => name)).toEqual(['flow', 'room', 'water-temperature', 'array']);
  });
  test('an air machine has no array', () => {
    const air = reckonWhatDrives(about(makeHousehold({ machine: { way: 'full', source: 'air' } })));
    expect(air.drivers.map(({ name }) => name)).not.toContain('array');
  });
  test('what is shown stands among the steps, 35 to 65 °C among the flows', () => {
    for (const driver of [...quick.drivers, ...full.drivers]) {
      expect(driver.points.filter(({ at }) => at === driver.now)).toHaveLength(1);
      expect(rises(driver.points.map(({ at }) => at))).toBe(true);
    }
    expect(find(quick, 'flow').points.map(({ at }) => at)).toEqual([35, 40, 45, 50, 55, 60, 65]);
  });
});

describe.each([
  ['quick', quick],
  ['full', full],
])('%s way', (_, drives) => {
  test('hotter water, warmer rooms and more hot water cost more', () => {
    for (const driver of drives.drivers) {
      const values = costs(driver);
      // A larger array costs less, though ever less so.
      expect(rises(driver.name === 'array' ? values.toReversed() : values), driver.name).toBe(true);
    }
  });
  test('the factor falls with the flow temperature', () => {
    expect(rises(find(drives, 'flow').points.map(({ factor }) => -factor))).toBe(true);
  });
  test('a warm floor costs less than radiators, at its own flow', () => {
    const [radiators, floor] = drives.emitters;
    expect([radiators!.flowC, floor!.flowC, radiators!.now]).toEqual([45, 35, true]);
    expect(floor!.cost.value).toBeLessThan(radiators!.cost.value);
  });
  test('the same heat at the tap from a hotter cylinder: the heat needed does not move', () => {
    const driver = drives.drivers.find(({ name }) => name === 'water-temperature');
    if (!driver) return;
    // At the temperature that stands, the step and the case as it is agree.
    const at = driver.points.find((point) => point.at === driver.now)!;
    expect(at.costPence).toBe(find(drives, 'flow').points.find((point) => point.at === 45)!.costPence);
  });
});

describe('from what the sliders show', () => {
  const whatIf: WhatIf = { flowC: 52, waterShare: 1.4, electricityShare: 1.2, winter: 'cold', roomC: 21.5 };
  const shown = appraise({ ...about(), whatIf });
  const cost = shown.systems[0]!.cost;
  const turned = reckonWhatDrives(about(makeHousehold(), whatIf));
  test.each([
    ['flow', 52],
    ['room', 21.5],
    ['water-use', 1.4],
  ])('%s stands at %d, at the cost that is shown', (name, at) => {
    const driver = find(turned, name);
    expect(driver.now).toBe(at);
    expect(driver.points.find((point) => point.at === at)!.costPence).toBe(cost.value);
  });
  test('a step keeps every other slider where it is', () => {
    const warmer = appraise({ ...about(), whatIf: { ...whatIf, roomC: 22.5 }, draws: 0 });
    expect(find(turned, 'room').points.find(({ at }) => at === 22.5)!.costPence).toBe(warmer.systems[0]!.cost.value);
  });
  test('the emitters that stand are what is shown, range and all', () => {
    const now = turned.emitters.find((one) => one.now)!;
    expect([now.flowC, now.cost.value, now.cost.low, now.cost.high]).toEqual([52, cost.value, cost.low, cost.high]);
  });
  test('the full way as well: hot water, array and emitters', () => {
    const household = makeHousehold({ machine: { way: 'full' } });
    const drives = reckonWhatDrives(about(household, whatIf));
    const value = appraise({ ...about(household), whatIf, draws: 0 }).systems[0]!.cost.value;
    for (const driver of drives.drivers) {
      expect(driver.points.find(({ at }) => at === driver.now)!.costPence, driver.name).toBe(value);
    }
    const [radiators, floor] = drives.emitters;
    expect([radiators!.now, radiators!.flowC, floor!.flowC]).toEqual([true, 52, 35]);
  });
  test('it pauses after each year it reckons', () => {
    const steps = stepWhatDrives({ ...about(), draws: 16 });
    let pauses = 0;
    while (!steps.next().done) pauses++;
    expect(pauses).toBeGreaterThan(15);
  });
});

describe('what is moved, and by how much', () => {
  const now = (roomC: number, waterKWh = 2000) =>
    ({ demand: { roomC, water: { value: waterKWh } } }) as unknown as Appraisal;
  const sweepsOf = (change: HouseholdChange = {}, whatIf: WhatIf = {}, appraisal = now(21)) =>
    listSweeps(about(makeHousehold(change), whatIf), appraisal);
  const full = (change: HouseholdChange['machine'] = {}) => ({ machine: { way: 'full' as const, ...change } });
  const stands = (list: ReturnType<typeof sweepsOf>) => list.map(({ name, now, values }) => [name, now, values]);
  const flows = [35, 40, 45, 50, 55, 60, 65];
  const shares = [0.5, 0.75, 1, 1.25, 1.5, 2];
  const rooms = [18, 19, 20, 21, 22, 23, 24];
  test('a typed factor: flow, rooms and how much hot water, if there is any', () => {
    expect(stands(sweepsOf())).toEqual([
      ['flow', 45, flows],
      ['room', 21, rooms],
      ['water-use', 1, shares],
    ]);
    expect(stands(sweepsOf({}, { flowC: 52, waterShare: 1.4 })).map(([, at]) => at)).toEqual([52, 21, 1.4]);
    expect(sweepsOf({}, {}, now(21, 0.5)).map(({ name }) => name)).toContain('water-use');
    expect(sweepsOf({}, {}, now(21, 0)).map(({ name }) => name)).toEqual(['flow', 'room']);
  });
  test('a worked-out one: flow, rooms, the cylinder’s temperature and the array', () => {
    const water = [45, 50, 55, 60, 65];
    expect(stands(sweepsOf(full()))).toEqual([
      ['flow', 45, flows],
      ['room', 21, rooms],
      ['water-temperature', 52, water],
      ['array', 1, shares],
    ]);
    const typedOnes = sweepsOf({
      ...full({ full: { ground: { kind: 'vertical', size: typed(1.2) } } }),
      hotWater: { hotC: typed(48) },
    });
    expect(stands(typedOnes).slice(2)).toEqual([
      ['water-temperature', 48, water],
      ['array', 1.2, shares],
    ]);
    const brineMonthlyC = typed(new Array<number>(12).fill(4));
    expect(sweepsOf(full({ full: { brineMonthlyC } })).map(({ name }) => name)).not.toContain('array');
  });
  test.each([
    // To the half degree, three steps either way, between 10 and 30 °C.
    [20.3, [17.5, 18.5, 19.5, 20.5, 21.5, 22.5, 23.5]],
    [20.2, [17, 18, 19, 20, 21, 22, 23]],
    [28, [25, 26, 27, 28, 29, 30]],
    [12, [10, 11, 12, 13, 14, 15]],
  ])('rooms from %d °C', (roomC, values) =>
    expect(sweepsOf({}, {}, now(roomC))[1]).toMatchObject({ now: roomC, values }),
  );
  test('each step changes one thing and is named by it', () => {
    const whatIf: WhatIf = { electricityShare: 1.2 };
    const list = [...sweepsOf({}, whatIf), ...sweepsOf(full(), whatIf)];
    const one = (name: string) => list.find((sweep) => sweep.name === name)!;
    expect(one('flow').step(40)).toEqual({ whatIf: { ...whatIf, flowC: 40 } });
    expect(one('room').step(23)).toEqual({ whatIf: { ...whatIf, roomC: 23 } });
    expect(one('water-use').step(1.5)).toEqual({ whatIf: { ...whatIf, waterShare: 1.5 } });
    expect(one('array').step(0.5).household!.machine.full!.ground).toMatchObject({
      kind: 'vertical',
      size: { value: 0.5 },
    });
    const trench = sweepsOf(full({ full: { capacityKW: typed(9), ground: { kind: 'horizontal', depthM: typed(1) } } }));
    expect(trench.at(-1)!.step(2).household!.machine.full).toMatchObject({
      capacityKW: { value: 9 },
      ground: { kind: 'horizontal', depthM: { value: 1 }, size: { value: 2 } },
    });
    expect(['flow', 'room', 'water-use', 'water-temperature', 'array'].map((name) => one(name).nameOf(7))).toEqual([
      tell('heating-water-at', { flowC: 7 }),
      tell('rooms-at', { roomC: 7 }),
      tell('hot-water-times', { share: 7 }),
      tell('hot-water-at', { hotC: 7 }),
      tell('pipes-times', { size: 7 }),
    ]);
    expect(list.filter(({ source }) => source).map(({ name }) => name)).toEqual(['flow']);
  });
  test.each([45, 60])('a cylinder at %i °C gives the same heat at the tap', (hotC) => {
    const shown = about(makeHousehold(full()), { waterShare: 1.4 });
    const appraisal = appraise({ ...shown, draws: 0 });
    const sweep = listSweeps(shown, appraisal).find(({ name }) => name === 'water-temperature')!;
    const { household, whatIf } = sweep.step(hotC);
    expect(household!.hotWater.hotC!.value).toBe(hotC);
    const moved = appraise({ ...shown, household: household!, whatIf: whatIf!, draws: 0 });
    expect(moved.demand.water.value).toBeCloseTo(appraisal.demand.water.value, 6);
  });
  test('where no hot water is used, none is used at another temperature', () => {
    const shown = about(makeHousehold(full()), { waterShare: 0 });
    const sweep = listSweeps(shown, appraise({ ...shown, draws: 0 })).find(({ name }) => name === 'water-temperature')!;
    expect(appraise({ ...shown, ...sweep.step(60), draws: 0 }).demand.water.value).toBe(0);
  });

  const effectsOf = (name: DriverName, at: number, values: readonly number[]) =>
    listEffects({ name, now: at } as Sweep, values).map(({ here, there, times }) => [here, there, times]);
  test.each<[DriverName, number, readonly number[], [number, number, number][]]>([
    // Slope over the steps on both sides, times the step that is spoken of.
    ['flow', 45, [35, 40, 45, 50, 55], [[50, 40, 0.5]]],
    ['flow', 42, [35, 40, 42, 45], [[45, 40, 1]]],
    ['flow', 35, [35, 40, 45], [[40, 35, 1]]],
    ['flow', 65, [55, 60, 65], [[65, 60, 1]]],
    ['room', 21, [20, 21, 22], [[20, 22, 0.5]]],
    ['room', 30, [28, 29, 30], [[29, 30, 1]]],
    ['water-temperature', 52, [45, 50, 52, 55], [[50, 55, 1]]],
    ['water-use', 1.4, [1, 1.25, 1.4, 1.5], [[1.25, 1.5, 2.8]]],
    [
      'array',
      1.2,
      [0.5, 1.2, 1.5],
      [
        [1.2, 0.5, 1],
        [1.2, 1.5, 1],
      ],
    ],
  ])('%s at %d', (name, at, values, effects) =>
    expect(effectsOf(name, at, values)).toEqual(effects.map((one) => one.map((value) => expect.closeTo(value, 9)))),
  );
});

describe('an effect by hand', () => {
  const stood = (value: number, pence: readonly number[] | null, grade: 'measured' | 'assumed'): Stood => {
    const cost = {
      value,
      low: value,
      high: value,
      unit: 'p',
      grade,
      working: { title: `${value}` },
    } as unknown as Figure;
    const appraisal = { systems: [{ id: 'heat-pump', cost }], versus: [], demand: { estimates: [] } };
    const yearsPence = pence && new Map([['heat-pump', Float64Array.from(pence)]]);
    return { name: tell('rooms-at', { roomC: value }), years: { appraisal, yearsPence } as unknown as AppraisedYears };
  };
  const ten = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
  // Of ten differences 300 to 390 the 10 and 90 % points lie half-way between the first and the last two.
  const [here, there] = [
    stood(
      1000,
      ten.map((i) => 900 + i),
      'measured',
    ),
    stood(
      1340,
      ten.map((i) => 1200 + 11 * i),
      'assumed',
    ),
  ];
  test.each([
    [1, 340, 305, 385],
    [-0.5, -170, -192.5, -152.5],
    [1 / 3, 340 / 3, 305 / 3, 385 / 3],
  ])('%d times there less here', (times, value, low, high) => {
    const found = effectOf(tell('room-1-warmer'), here, there, times);
    expect([found.value, found.low, found.high]).toEqual([value, low, high].map((pence) => expect.closeTo(pence, 9)));
    expect([found.unit, found.grade]).toEqual(['p', 'assumed']);
    const { working } = found;
    expect(working.result.value).toBe(found.value);
    expect(working.inputs.map((one) => one.value)).toEqual(
      times === 1 ? [1340, 1000] : [1340, 1000, Number(times.toFixed(4))],
    );
    expect((working.formula as Told).code).toBe(times === 1 ? 'there-less-here' : 'times-there-less-here');
    expect(working.source).toEqual(tell('range-of-years', { count: 10 }));
    expect(working.steps!.map(({ title }) => title)).toEqual(['1340', '1000']);
  });
  test('a third is written with four digits', () =>
    expect(effectOf(tell('room-1-warmer'), here, there, 1 / 3).working.inputs[2]!.value).toBe(0.3333));
  test('without possible years it is its value, and says so; a rule stands beside it', () => {
    const bare = effectOf(
      tell('room-1-warmer'),
      stood(1000, null, 'measured'),
      stood(1340, null, 'measured'),
      1,
      tell('custom'),
    );
    expect([bare.low, bare.value, bare.high, bare.grade]).toEqual([340, 340, 340, 'measured']);
    expect(bare.working.source).toEqual(tell('both', { first: tell('custom'), second: tell('no-range') }));
    const half = effectOf(tell('room-1-warmer'), stood(1000, null, 'measured'), there, 1);
    expect([half.low, half.high]).toEqual([340, 340]);
  });
});

describe('emitters, each at its own flow', () => {
  const drivesOf = (machine: HouseholdChange['machine'], whatIf: WhatIf = {}) =>
    reckonWhatDrives({ ...about(makeHousehold({ machine }), whatIf), draws: 0 });
  test.each<[string, HouseholdChange['machine'], WhatIf, [number, boolean][]]>([
    [
      'radiators by typed factor',
      {},
      {},
      [
        [45, true],
        [35, false],
      ],
    ],
    [
      'none named',
      { emitters: undefined, flowC: undefined },
      {},
      [
        [50, true],
        [35, false],
      ],
    ],
    [
      'a floor',
      { emitters: 'floor' },
      {},
      [
        [50, false],
        [45, true],
      ],
    ],
  ])('%s: radiators first', (_, machine, whatIf, expected) => {
    const { emitters, emittersApart } = drivesOf(machine, whatIf);
    expect(emitters.map(({ emitters: of }) => of)).toEqual(['radiators', 'floor']);
    expect(emitters.map(({ flowC, now }) => [flowC, now])).toEqual(expected);
    const [here, there] = emitters.toSorted((a, b) => Number(b.now) - Number(a.now));
    expect(emittersApart.value).toBeCloseTo(there!.cost.value - here!.cost.value, 9);
  });
  test('the others are what a home of them would cost', () => {
    // Worked out, a floor at the 40 °C asked for: the radiators at their own 50 °C.
    const { emitters } = drivesOf({ way: 'full', emitters: 'floor' }, { flowC: 40, roomC: 22 });
    expect(emitters.map(({ flowC, now }) => [flowC, now])).toEqual([
      [50, false],
      [40, true],
    ]);
    const radiators = makeHousehold({ machine: { way: 'full', flowC: typed(50) } });
    const alone = appraise({ ...about(radiators), whatIf: { roomC: 22 }, draws: 0 });
    expect(emitters[0]!.cost.value).toBeCloseTo(alone.systems[0]!.cost.value, 6);
    expect(emitters[0]!.factor).toBeCloseTo(alone.machine.whole.value, 9);
    const quickFloor = drivesOf({}, { roomC: 22 }).emitters.find(({ now }) => !now)!;
    const moved = appraise({ ...about(), whatIf: { roomC: 22, flowC: 35 }, draws: 0 });
    expect(quickFloor.cost.value).toBeCloseTo(moved.systems[0]!.cost.value, 9);
  });
});

describe('ranges', () => {
  const effects = [...quick.drivers, ...full.drivers].flatMap((driver) => driver.effects);
  test.each(effects.map((one) => [sayTold(one.working.title), one] as const))(
    '%s: holds its value and is narrower than the bill’s',
    (_, one) => {
      expect(one.low).toBeLessThan(one.high);
      expect(one.low).toBeLessThanOrEqual(one.value);
      expect(one.high).toBeGreaterThanOrEqual(one.value);
      const cost = quick.emitters[0]!.cost;
      // Each possible year is held against itself: what moves both cases alike takes no part.
      expect(one.high - one.low).toBeLessThan(0.35 * (cost.high - cost.low));
    },
  );
  test('the slope is that of the costs on both sides', () => {
    const flow = find(quick, 'flow');
    const at = (c: number) => flow.points.find((point) => point.at === c)!.costPence;
    expect(flow.effects[0]!.value).toBeCloseTo((at(40) - at(50)) / 2, 6);
  });
  test('against itself a case changes nothing, in any possible year', () => {
    const years = appraiseYears({ ...about(), draws: 64 });
    const one = { name: tell('times'), years };
    expect(effectOf(tell('times'), one, one, 1)).toMatchObject({ value: 0, low: 0, high: 0 });
  });
  test('each says its sum: both costs, what they rest on, how many years', () => {
    for (const { value, working } of [...effects, quick.emittersApart]) {
      expect(working.result.value).toBe(value);
      const [there, here, times] = working.inputs.map((input) => Number(input.value)) as [number, number, number?];
      expect((times ?? 1) * (there - here)).toBeCloseTo(value, 0);
      expect(working.steps).toHaveLength(2);
      expect(sayTold(working.source!)).toContain('4096 possible years');
      expect(working.inputs.every(({ grade, origin }) => grade && origin)).toBe(true);
    }
    expect(sayTold(find(quick, 'flow').effects[0]!.working.source!)).toContain('123 brine units');
  });
});

describe('words', () => {
  const figure = (value: number, low: number, high: number) =>
    ({ value: value * 100, low: low * 100, high: high * 100 }) as Figure;
  test.each([
    [
      'flow',
      [figure(-70, -100, -50)],
      'Flow temperature: every 5 degrees lower saves about £70 a year, £50 to £100 for 8 in 10 homes like yours.',
    ],
    ['flow', [figure(-1, -4, 2)], 'Flow temperature: every 5 degrees lower changes almost nothing.'],
    [
      'flow',
      [figure(3, -20, 30)],
      'Flow temperature: every 5 degrees lower may save up to £20 a year or cost up to £30 more, for 8 in 10 homes like yours.',
    ],
    [
      'flow',
      [figure(Number.NaN, 0, 0)],
      'Flow temperature: every 5 degrees lower changes the cost by an unknown amount.',
    ],
    [
      'room',
      [figure(110, 80, 150)],
      'Warmer rooms: every degree more costs about £110 a year more, £80 to £150 for 8 in 10 homes like yours.',
    ],
    [
      'water-use',
      [figure(200, 150, 260)],
      'Using 50% more hot water costs about £200 a year more, £150 to £260 for 8 in 10 homes like yours.',
    ],
    [
      'water-temperature',
      [figure(20, -2, 30)],
      'A hotter cylinder: every 5 degrees more costs about £20 a year more, £0 to £30 for 8 in 10 homes like yours.',
    ],
    [
      'array',
      [figure(100, 70, 140), figure(-30, -40, -20)],
      'Half the usual length of pipe in the ground costs about £100 a year more, £70 to £140 for 8 in 10 homes like yours. 50% more than usual saves about £30 a year, £20 to £40 for 8 in 10 homes like yours.',
    ],
  ] as const)('%s %#', (name, effects, sentence) => expect(driversSentence({ name, effects })).toBe(sentence));
  test('emitters, either way round, alike and unsure', () => {
    expect(emitterSentence(quick)).toMatch(
      /^Underfloor heating at 35 °C would cost about £\d+ a year less \(£\d+ to £\d+ for 8 in 10 homes like yours\) than radiators at 45 °C\.$/,
    );
    const turned = {
      ...quick,
      emitters: quick.emitters.map((one) => ({ ...one, now: !one.now })),
      emittersApart: figure(90, 60, 120),
    };
    expect(emitterSentence(turned)).toBe(
      'Radiators at 45 °C would cost about £90 a year more (£60 to £120 for 8 in 10 homes like yours) than underfloor heating at 35 °C.',
    );
    expect(emitterSentence({ ...quick, emittersApart: figure(0, -1, 1) })).toContain('about the same');
    expect(emitterSentence({ ...quick, emittersApart: figure(5, -20, 30) })).toContain(
      'up to £20 a year less or up to £30 more, for 8 in 10 homes like yours, than radiators',
    );
  });
  test('a factor that rises with warmer rooms is explained; one that falls needs no word', () => {
    const points = [
      { at: 18, costPence: 1, factor: 3.1 },
      { at: 22, costPence: 2, factor: 3.3 },
    ];
    expect(driverNote({ name: 'room', points })).toContain('smaller part');
    expect(driverNote({ name: 'room', points: points.toReversed() })).toBe('');
    expect(driverNote({ name: 'flow', points })).toBe('');
    // Nothing is said of a rise that the figures below the chart do not show.
    const level = [points[0]!, { ...points[1]!, factor: 3.1001 }];
    expect(driverNote({ name: 'room', points: level })).toBe('');
  });
  test('where they start from is said', () => {
    expect(startsFromSentence('')).toContain('all else as typed');
    expect(startsFromSentence('rooms 22 °C')).toContain('as on the sliders: rooms 22 °C.');
  });
  test('the section reads easily', () => {
    const text = [...quick.drivers, ...full.drivers].map(driversSentence).join(' ');
    const { ease, grade } = readingEase(text);
    expect(ease >= 70 || grade <= 6, `${ease} ${grade}`).toBe(true);
    expect(text).not.toMatch(/NaN|undefined|will save|!/);
  });
});

describe('pictures and tables', () => {
  const flow = find(quick, 'flow');
  test('neighbours share a scale from zero', () => {
    const top = highestPence(quick);
    const [first, second] = quick.drivers.map((driver) =>
      layOutDriver(driver, 'desk', { width: 440, highestPence: top }),
    );
    expect(first!.moneyTicks).toEqual(second!.moneyTicks);
    expect(first!.moneyTicks[0]!.label).toBe('£0');
  });
  test.each([220, 320, 440, 900, 1600])('labels do not touch and marks and names stay inside, %d px wide', (width) => {
    for (const driver of [...quick.drivers, ...full.drivers]) {
      const layout = layOutDriver(driver, 'desk', { width });
      const { marks, left, right, top, bottom, name } = layout;
      const half = textWidth(name.text, name.font) / 2;
      expect([name.x - half >= 0, name.x + half <= layout.width]).toEqual([true, true]);
      const shown = marks.filter(({ label }) => label !== '');
      expect(shown.some(({ now }) => now)).toBe(true);
      for (const [i, mark] of marks.entries()) {
        expect(mark.x).toBeGreaterThan(left);
        expect(mark.x).toBeLessThanOrEqual(right + 1e-9);
        expect(mark.y).toBeGreaterThanOrEqual(top);
        expect(mark.y).toBeLessThanOrEqual(bottom);
        if (i > 0) expect(mark.x).toBeGreaterThan(marks[i - 1]!.x);
      }
      for (const [i, mark] of shown.entries()) if (i > 0) expect(mark.x - shown[i - 1]!.x).toBeGreaterThan(20);
    }
  });
  test('one dot is what is shown, nothing goes wrong', () => {
    const html = renderToStaticMarkup(<DriverPicture driver={flow} size="desk" width={440} />);
    expect(html.match(/data-part="now"/g)).toHaveLength(1);
    expect(html.match(/data-part="step"/g)).toHaveLength(6);
    expect(html).not.toMatch(/NaN|Infinity|style=/);
  });
  test('tables hold every step, and both emitters with their range', () => {
    expect(driverTable(flow).rows.map(({ cells }) => cells[0])).toEqual([
      '35 °C',
      '40 °C',
      '45 °C, as shown',
      '50 °C',
      '55 °C',
      '60 °C',
      '65 °C',
    ]);
    expect(emitterTable(quick.emitters).rows.map(({ cells }) => cells[0])).toEqual([
      'Radiators, 45 °C, as shown',
      'Underfloor, 35 °C',
    ]);
    for (const { cost } of emitterRows(quick.emitters)) expect(cost!.low).toBeLessThan(cost!.high);
  });
});

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutDriver } from '../../../src/charts/drivers/layout.ts';
import { DriverPicture } from '../../../src/charts/drivers/picture.tsx';
import { driversSentence } from '../../../src/charts/drivers/sentence.ts';
import { emitterRows, highestPence } from '../../../src/charts/drivers/series.ts';
import { driverTable, emitterTable } from '../../../src/charts/drivers/table.ts';
import type { WhatIf } from '../../../src/model/appraisal/appraisal.ts';
import { appraise } from '../../../src/model/appraisal/appraise.ts';
import { type Driver, reckonWhatDrives } from '../../../src/model/what-drives/what-drives.ts';
import { reference } from '../../../src/reference/index.ts';
import { emitterSentence } from '../../../src/words/drivers.ts';
import { makeHousehold } from '../appraisal/make-household.ts';
import { readingEase } from '../words/reading-ease.ts';

const about = (household = makeHousehold()) => ({ household, series: [], reference, asOf: '2026-11-25' });
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
  test('as it is stands among the steps, 35 to 65 °C among the flows', () => {
    for (const driver of [...quick.drivers, ...full.drivers]) {
      expect(driver.points.filter(({ at }) => at === driver.today)).toHaveLength(1);
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
    expect([radiators!.flowC, floor!.flowC, radiators!.today]).toEqual([45, 35, true]);
    expect(floor!.cost.value).toBeLessThan(radiators!.cost.value);
  });
  test('the same heat at the tap from a hotter cylinder: the heat needed does not move', () => {
    const driver = drives.drivers.find(({ name }) => name === 'water-temperature');
    if (!driver) return;
    // At the temperature that stands, the step and the case as it is agree.
    const at = driver.points.find((point) => point.at === driver.today)!;
    expect(at.costPence).toBe(find(drives, 'flow').points.find((point) => point.at === 45)!.costPence);
  });
});

describe('words', () => {
  const line = (name: Driver['name'], today: number, points: [number, number][]): Driver => ({
    name,
    today,
    points: points.map(([at, costPence]) => ({ at, costPence, factor: 3 })),
  });
  test.each([
    [
      line('flow', 50, [
        [45, 93_000],
        [50, 100_000],
        [55, 107_000],
      ]),
      'Cooler heating water: every 5 degrees lower saves about £70 a year.',
    ],
    [
      line('flow', 50, [
        [45, 99_900],
        [50, 100_000],
        [55, 100_100],
      ]),
      'Cooler heating water: every 5 degrees lower changes almost nothing.',
    ],
    [
      line('room', 20, [
        [20, 100_000],
        [21, 111_000],
      ]),
      'Warmer rooms: every degree more costs about £110 a year more.',
    ],
    [
      line('water-use', 1, [
        [0.75, 90_000],
        [1, 100_000],
        [1.25, 110_000],
      ]),
      'Half as much hot water again costs about £200 a year more.',
    ],
    [
      line('water-temperature', 52, [
        [50, 100_000],
        [52, 101_000],
        [55, 102_000],
      ]),
      'A hotter cylinder: every 5 degrees more costs about £20 a year more.',
    ],
    [
      line('array', 1, [
        [0.5, 110_000],
        [1, 100_000],
        [1.5, 97_000],
      ]),
      'Half the usual length of pipe in the ground costs about £100 a year more. Half as much again saves about £30 a year.',
    ],
    [line('array', 0.9, [[0.9, 100_000]]), 'The pipes in the ground count as well.'],
    [line('flow', 50, [[50, 100_000]]), 'Cooler heating water: every 5 degrees lower changes almost nothing.'],
  ])('%#', (driver, sentence) => expect(driversSentence(driver)).toBe(sentence));
  test('emitters, either way round, and alike', () => {
    expect(emitterSentence(quick.emitters)).toMatch(
      /^A warm floor at 35 °C would cost about £\d+ a year less than radiators at 45 °C\.$/,
    );
    const turned = quick.emitters.map((one) => ({ ...one, today: !one.today }));
    expect(emitterSentence(turned)).toMatch(/^Radiators at 45 °C would cost about £\d+ a year more than a warm floor/);
    const alike = quick.emitters.map((one) => ({ ...one, cost: quick.emitters[0]!.cost }));
    expect(emitterSentence(alike)).toContain('about the same');
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
  test.each([320, 440, 900, 1600])('labels do not touch and marks stay inside, %d px wide', (width) => {
    for (const driver of [...quick.drivers, ...full.drivers]) {
      const { marks, left, right, top, bottom } = layOutDriver(driver, 'desk', { width });
      const shown = marks.filter(({ label }) => label !== '');
      expect(shown.some(({ today }) => today)).toBe(true);
      for (const [i, mark] of marks.entries()) {
        expect(mark.x).toBeGreaterThan(left);
        expect(mark.x).toBeLessThanOrEqual(right);
        expect(mark.y).toBeGreaterThanOrEqual(top);
        expect(mark.y).toBeLessThanOrEqual(bottom);
        if (i > 0) expect(mark.x).toBeGreaterThan(marks[i - 1]!.x);
      }
      for (const [i, mark] of shown.entries()) if (i > 0) expect(mark.x - shown[i - 1]!.x).toBeGreaterThan(20);
    }
  });
  test('one dot is as it is, nothing goes wrong', () => {
    const html = renderToStaticMarkup(<DriverPicture driver={flow} size="desk" width={440} />);
    expect(html.match(/data-part="today"/g)).toHaveLength(1);
    expect(html.match(/data-part="step"/g)).toHaveLength(6);
    expect(html).not.toMatch(/NaN|Infinity|style=/);
  });
  test('tables hold every step, and both emitters with their range', () => {
    expect(driverTable(flow).rows.map(({ cells }) => cells[0])).toEqual([
      '35 °C',
      '40 °C',
      '45 °C, as it is',
      '50 °C',
      '55 °C',
      '60 °C',
      '65 °C',
    ]);
    expect(emitterTable(quick.emitters).rows.map(({ cells }) => cells[0])).toEqual([
      'Radiators, 45 °C, as it is',
      'Floor, 35 °C',
    ]);
    for (const { cost } of emitterRows(quick.emitters)) expect(cost!.low).toBeLessThan(cost!.high);
  });
});

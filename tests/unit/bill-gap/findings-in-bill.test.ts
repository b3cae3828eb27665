import { describe, expect, test } from 'vitest';
import { findingsInBill } from '../../../src/model/bill-gap/findings-in-bill.ts';
import { addDays, toDayNumber } from '../../../src/model/calendar/civil.ts';
import type { MeterDays } from '../../../src/model/findings/meter-days.ts';
import type { BillCheck, BillCheckPart } from '../../../src/model/shapes/bill-check.ts';
import type { Finding } from '../../../src/model/shapes/finding.ts';
import { insidePart } from '../../../src/words/check.ts';
import { costOfFinding } from '../../../src/words/findings.ts';
import { made } from '../words/made-findings.ts';
import { sampleBill } from './sample-estimate.ts';

const FIRST = '2026-11-01';
/** The machine's own days from 1 November on, those named missing; 0 °C in November, 10 °C since. */
const machine = (isMissing: (day: number) => boolean = () => false): MeterDays => {
  const days = Array.from({ length: 120 }, (_, day) => day).filter((day) => !isMissing(day));
  return {
    meter: 'heat-pump',
    perDay: 48,
    hours: 0.5,
    count: days.length,
    dayNumber: Int32Array.from(days, (day) => toDayNumber(FIRST) + day),
    kWh: new Float64Array(days.length * 48),
    dayKWh: new Float64Array(days.length),
    outdoorC: Float64Array.from(days, (day) => (day < 30 ? 0 : 10)),
  };
};
const part = (cause: BillCheckPart['cause'], pence: number, joined?: BillCheckPart['joined']): BillCheckPart => ({
  cause,
  pence,
  grade: 'estimated',
  working: { title: 'made', formula: 'made', inputs: [], result: { value: pence, unit: 'pence' } },
  ...(joined ? { joined } : {}),
});
/** A bill of 1 December to 1 March: 900 units estimated at 25 p, 1,000 billed at 27 p. */
const split = (parts: BillCheckPart[], change = {}) =>
  ({
    input: sampleBill({ from: '2026-12-01', to: '2027-03-01', boughtKWh: 1000, ...change }),
    parts,
    estimatedPence: 20_000,
    seasonPence: 22_500,
    estimatedKWh: 900,
    actualPence: 27_000,
  }) satisfies Partial<BillCheck>;
const found = (change: Partial<Finding>): Finding => ({
  ...made('behaviour-changed'),
  from: FIRST,
  to: addDays(FIRST, 120),
  kWh: 120,
  // At the price paid, 27 p.
  pence: 3240,
  kWhYear: 365,
  penceYear: 9125,
  ...change,
  seen: { kind: 'steady', ...change.seen },
});
const REST = [part('rest', -3900, ['heat-used', 'hot-water', 'efficiency', 'backup'])];
const one = (finding: Finding, parts = REST, meter = machine(), change = {}) =>
  findingsInBill([finding], split(parts, change), [meter])[0]!;

describe('a finding in the days of one bill', () => {
  test('only its days in the bill, at the mean of the price estimated and the price paid', () => {
    // 120 units on 120 days, of which 90 are the bill's; 26 p is half-way between 25 and 27.
    const placed = one(found({}));
    expect([placed.kWh, placed.part]).toEqual([90, 'rest']);
    expect(placed.pence).toBeCloseTo(90 * 26, 6);
  });
  test('standing charges on both sides are no price of a unit, nor is an estimate that another season asks for', () => {
    const standing = { estimatedPence: 4500, billedPence: 4600 };
    const withStanding = { ...split(REST), seasonPence: 27_000, actualPence: 31_600, standing };
    expect(findingsInBill([found({})], withStanding, [machine()])[0]!.pence).toBeCloseTo(90 * 26, 6);
    const { seasonPence: _, ...asEstimated } = split(REST);
    // 20,000 p for 900 units, and 27 p paid.
    expect(findingsInBill([found({})], asEstimated, [machine()])[0]!.pence).toBeCloseTo((90 * (200 / 9 + 27)) / 2, 6);
  });
  test('what ran in cheap hours costs what those cost; the split has it at the mean', () => {
    const placed = one(found({ pence: 1620 }));
    expect(placed.pence).toBeCloseTo(90 * 13, 6);
    expect(placed.splitPence).toBeCloseTo(90 * 26, 6);
    expect(placed.penceYear).toBeCloseTo(120 * 13, 6);
    expect(costOfFinding({ ...placed, part: 'rest' })).toContain(
      'At the mean price, as the parts of the difference have it, it is £23',
    );
    expect(costOfFinding({ ...one(found({})), part: 'rest' })).not.toContain('mean price');
  });
  test('days that were not read hold none of it', () => {
    // 40 of the bill's 90 days are missing; of 80 days that were read, 50 are the bill's.
    expect(
      one(
        found({}),
        REST,
        machine((day) => day >= 40 && day < 80),
      ).kWh,
    ).toBeCloseTo((120 * 50) / 80, 6);
  });
  test('what follows the cold falls on the cold days', () => {
    // 30 days at 15.5 K below, 90 at 5.5 K: 495 of 960 K·day are in the bill.
    expect(one(found({ seen: { kind: 'with-the-cold' } })).kWh).toBeCloseTo((120 * 495) / 960, 6);
  });
  test('what is there on cold days only, or on warm ones, falls on those', () => {
    const cold = (belowC: number) => one(found({ code: 'backup-in-cold', seen: { belowC } })).kWh;
    expect([cold(3), cold(10)]).toEqual([0, 90]);
    // Neither has anything of a day whose weather is not known: of 60 cold days known 30 are the bill's.
    const known = machine();
    const gap = { ...known, outdoorC: known.outdoorC.map((celsius, day) => (day >= 60 ? Number.NaN : celsius)) };
    const inGap = (change: Partial<Finding>) => one(found(change), REST, gap).kWh;
    expect(inGap({ code: 'backup-in-cold', seen: { belowC: 10 } })).toBe(60);
    // 30 days at 15.5 K below and 30 at 5.5 K.
    expect(inGap({ seen: { kind: 'with-the-cold' } })).toBeCloseTo((120 * 5.5) / 21, 6);
    expect(inGap({})).toBe(90);
    // No such day was read: by days alike.
    expect(one(found({ code: 'water-often', seen: {} })).kWh).toBe(90);
  });
  test('a year is the season it was seen in, unless it was seen for nearly a year', () => {
    expect(one(found({})).penceYear).toBeCloseTo(120 * 26, 6);
    const all = one(found({ from: addDays('2027-03-01', -340), to: '2027-03-01' }));
    expect(all.kWhYear).toBe(365);
  });
  test.each<[string, Finding, BillCheckPart[], string | undefined]>([
    ['a heater in its own part', found({ code: 'heater-running' }), [part('backup', 900), ...REST], 'backup'],
    ['a heater where nothing tells it apart', found({ code: 'heater-running' }), REST, 'rest'],
    [
      'what follows the cold',
      found({ seen: { kind: 'with-the-cold' } }),
      [part('rooms', 5), part('steady', 9)],
      'rooms',
    ],
    ['what does not', found({}), [part('rooms', 5), part('steady', 9)], 'steady'],
    [
      'more that may be either: the part that is more',
      found({ seen: { kind: 'unclear' } }),
      [part('rooms', -9, ['heat-used', 'efficiency']), part('steady', 5)],
      'steady',
    ],
    [
      'less that may be either: the part that is less',
      found({ seen: { kind: 'unclear' }, pence: -3240 }),
      [part('steady', 5), part('rooms', -4, ['heat-used', 'efficiency']), part('hot-water', -9)],
      'hot-water',
    ],
    ['dear hours', found({ code: 'dear-hours', kWh: 0 }), [part('when', 5), ...REST], 'when'],
    ['the weekly hot tank, which the estimate has', found({ code: 'weekly-pasteurisation' }), REST, undefined],
    ['weeks of less, with their units', found({ code: 'home-empty', kWh: -20 }), [part('rooms', -9)], 'rooms'],
    ['weeks without ups and downs', found({ code: 'home-empty', kWh: 0 }), [part('rooms', -9)], undefined],
    [
      'a load of the house beside the heat pump’s bill',
      found({ code: 'large-load', meter: 'whole-house' }),
      REST,
      undefined,
    ],
  ])('%s', (_, finding, parts, cause) => expect(one(finding, parts).part).toBe(cause));
  test('what the rest of the house takes is in its own part, and in none where only the heat pump is compared', () => {
    const parts = [part('rooms', 5), part('other-electricity', 9)];
    const finding = found({ code: 'behaviour-changed', meter: 'whole-house', seen: { kind: 'with-the-cold' } });
    const partFor = (heatPumpKWh: number) =>
      one(finding, parts, machine(), { meter: 'whole-house', boughtKWh: 700, heatPumpKWh }).part;
    expect([partFor(600), partFor(700)]).toEqual(['other-electricity', undefined]);
  });
  test('a heater that is a part of its own costs what the part does', () => {
    const heater = found({ code: 'heater-running', from: '2026-12-01', to: '2027-03-01', kWh: 684, pence: 18_468 });
    const placed = one(heater, [part('backup', 18_028), ...REST], machine(), { immersionKWh: 684 });
    expect(placed.pence).toBeCloseTo(18_028, 6);
  });
});

test('evidence that may be wrong first, then the machine, then what may be either, then what the household is asked', () => {
  const evidence = ['own-generation', 'meter-scale', 'registers-swapped', 'estimate-corrected'] as const;
  const ofMachine = [
    'night-setback',
    'dear-hours',
    'water-often',
    'weekly-pasteurisation',
    'backup-in-cold',
    'heater-running',
  ] as const;
  const asked = ['home-empty', 'large-load', 'base-load-rose'] as const;
  const codes = [...evidence, ...ofMachine, 'behaviour-changed', ...asked] as const;
  // Those that cost the same stay as they come; of two of one kind the dearer first.
  const findings = codes.toReversed().map((code) => found({ code, kWh: 0, pence: 900 }));
  const order = findingsInBill(findings, split(REST), [machine()]).map(({ code }) => code);
  const reversed = [evidence, ofMachine, ['behaviour-changed'], asked].flatMap((kind) => kind.toReversed());
  expect(order).toEqual(reversed);
  const dearer = findings.map((finding, i) => ({ ...finding, pence: i % 2 ? -1000 : 900 }));
  const byKind = findingsInBill(dearer, split(REST), [machine()]);
  expect(byKind.slice(0, 4).map(({ pence }) => Math.sign(pence))).toEqual([-1, -1, 1, 1]);
});

test('findings and what is left beside them are their part to the penny', () => {
  const placed = findingsInBill([found({}), found({ code: 'heater-running', kWh: 44.4 })], split(REST), [machine()]);
  const inside = insidePart(REST[0]!, placed as never);
  expect(inside.map(({ name }) => name)).toEqual([
    'of it: Immersion or backup heater',
    'of it: More counted in the same weather',
    'of it: all else',
  ]);
  expect(inside.reduce((sum, { pence }) => sum + pence, 0)).toBe(-3900);
});

import { describe, expect, test } from 'vitest';
import { withEvidence } from '../../../src/model/bill-gap/add-evidence.ts';
import { doubtsOf, isOtherUnknown, unitsOfMeter } from '../../../src/model/bill-gap/bill-doubts.ts';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import type { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import { sampleBill, sampleEstimate } from './sample-estimate.ts';

const household = emptyHousehold('h1', 'Invented household');
/** A meter's days from 1 December on, the same units each day, null where it was not read. */
const meter = (role: Series['role'], kWhADay: number, days: number, isMissing = (_: number) => false): Series => ({
  id: role,
  evidenceId: 'e',
  name: `${role}.csv`,
  carrier: 'electricity',
  role,
  resolution: 'day',
  from: '2026-12-01',
  to: '2027-03-01',
  total: 0,
  days: { first: '2026-12-01', values: Array.from({ length: days }, (_, i) => (isMissing(i) ? null : kWhADay)) },
  present: days,
  expected: days,
  estimatedCount: 0,
});
const billed = (kWh: number, from = '2026-12-01'): Series[] => {
  const { days: _, ...rest } = meter('import', 0, 0);
  return [{ ...rest, resolution: 'period', periods: [{ from, to: '2027-03-01', kWh, quality: 'actual' }] }];
};
/** Ninety days of the machine's own meter at 10 units a day, unless told otherwise. */
const bill = (change: Partial<BillCheckInput> = {}): BillCheckInput =>
  sampleBill({ from: '2026-12-01', to: '2027-03-01', boughtKWh: 900, pencePerKWh: 27, ...change });
const wholeHouse = (boughtKWh: number, otherKWh?: number): BillCheckInput => {
  const { otherKWh: _, ...rest } = bill({ meter: 'whole-house', boughtKWh });
  return otherKWh === undefined ? rest : { ...rest, otherKWh };
};

describe('what is said of a bill before any cause', () => {
  const own = [meter('heat-pump', 10, 90)];
  const house = [meter('import', 18, 90)];
  test.each<[string, BillCheckInput, Series[], string[]]>([
    ['the same', bill(), own, []],
    ['half a day’s units and two whole ones apart', bill({ boughtKWh: 906 }), own, []],
    ['450 kWh above its half-hours, marked actual', bill({ boughtKWh: 1350 }), own, ['bill-above-readings']],
    ['below its readings', bill({ boughtKWh: 700 }), own, ['bill-below-readings']],
    ['fifty days read', bill({ boughtKWh: 1200 }), [meter('heat-pump', 10, 50)], ['readings-cover-part']],
    [
      'fifty days hold more than the bill',
      bill({ boughtKWh: 450 }),
      [meter('heat-pump', 10, 50)],
      ['bill-below-readings'],
    ],
    [
      'forty days missing cannot hold twice the most of any',
      bill({ boughtKWh: 1350 }),
      [meter('heat-pump', 10, 50)],
      ['bill-above-readings'],
    ],
    ['a week missing', bill(), [meter('heat-pump', 10, 90, (i) => i > 39 && i < 47)], ['readings-cover-part']],
    ['readings of other days', bill({ from: '2027-04-01', to: '2027-05-01' }), own, ['readings-cover-part']],
    ['no meter of this kind', bill(), [], []],
    ['the whole home, other things taken off', wholeHouse(900, 720), house, []],
    ['the units of the whole meter although other things are said', wholeHouse(1620, 720), house, ['units-hold-other']],
    ['nobody has said what else', wholeHouse(1620), house, ['other-unknown']],
    ['a saved bill of the same days', wholeHouse(1620, 0), billed(1621), []],
    ['a saved bill that has other units', wholeHouse(1620, 0), billed(1350), ['other-bill']],
    ['a saved bill of part of the days', wholeHouse(1620, 0), billed(1350, '2026-12-08'), []],
    ['readings beside a saved bill', wholeHouse(1620, 0), [...house, ...billed(1350)], []],
    ['a machine above its home', { ...wholeHouse(900, 0), heatPumpKWh: 1000 }, [], ['machine-above-home']],
  ])('%s', (_, input, series, codes) => {
    expect(doubtsOf(input, series, household, reference).map(({ code }) => code)).toEqual(codes);
  });
  test('what the home took before the estimate, and nothing of the days since, which may hold the heat pump', () => {
    const told = (system: 'gas-condensing' | 'direct-electric', values: (number | null)[]) => {
      const days = { first: '2025-07-01', values };
      const record = { ...meter('import', 0, 0), from: '2025-07-01', to: '2027-03-01', days };
      const home = { ...household, present: { ...household.present, system } };
      return doubtsOf(wholeHouse(1620), [record], home, reference, '2026-07-01').find(
        ({ code }) => code === 'other-unknown',
      )!;
    };
    const [before, since] = [new Array<number>(365).fill(5), new Array<number>(243).fill(20)];
    const usual = told('direct-electric', [...before, ...since]);
    expect(told('gas-condensing', [...before, ...since])).toMatchObject({ readKWh: 5 * 90, fromRecord: true });
    expect(usual.fromRecord).toBeUndefined();
    const gap = new Array<null>(165).fill(null);
    const tooShort = [...before.slice(gap.length), ...gap, ...since];
    expect(told('gas-condensing', tooShort).readKWh).toBe(usual.readKWh);
  });
  test('that it ended before the estimate was written, where another heating may have run', () => {
    const codes = (writtenOn: string, system: 'gas-condensing' | 'heat-pump') =>
      doubtsOf(bill(), own, { ...household, present: { ...household.present, system } }, reference, writtenOn).map(
        ({ code }) => code,
      );
    expect(codes('2027-03-01', 'gas-condensing')).toEqual(['before-estimate']);
    expect(codes('2027-02-28', 'gas-condensing')).toEqual([]);
    expect(codes('2027-03-01', 'heat-pump')).toEqual([]);
  });
  test('the difference at the bill’s price, and the part of the bridge that holds it', () => {
    const [doubt] = doubtsOf(bill({ boughtKWh: 1350 }), own, household, reference);
    expect(doubt).toMatchObject({ billKWh: 1350, readKWh: 900, pence: 450 * 27 });
    const input = withEvidence(bill({ boughtKWh: 1350 }), { series: own, readings: [] });
    expect(input.readKWh).toBe(900);
    const { parts } = checkBill({
      estimate: sampleEstimate(),
      bill: input,
      reference: { spread: { winter: { value: 0.1 }, habits: { value: 0.1 } } as never },
      id: 'c',
      madeOn: '2027-03-02',
    });
    expect(parts.find(({ cause }) => cause === 'metering')!.pence).toBe(doubt!.pence);
  });
});

describe('a bill of the whole home of which nobody has said the other use', () => {
  test.each([300, 1620, 9000])('%d units are never called outside the range', (boughtKWh) => {
    const check = checkBill({
      estimate: sampleEstimate(),
      bill: wholeHouse(boughtKWh),
      reference: { spread: { winter: { value: 0.1 }, habits: { value: 0.1 } } as never },
      id: 'c',
      madeOn: '2027-03-02',
    });
    expect(check.verdict).toBe('unknown');
    expect(check.parts.find(({ cause }) => cause === 'rest')!.joined).toContain('other-electricity');
  });
  test('the machine’s own meter says it, and its share of the cost', () => {
    const given = { ...wholeHouse(1620), totalPence: 48_600 };
    const input = withEvidence(given, { series: [meter('heat-pump', 10, 90)], readings: [] });
    expect(isOtherUnknown(input)).toBe(false);
    expect([input.boughtKWh, input.otherKWh, input.totalPence]).toEqual([900, 720, 27_000]);
  });
});

test.each([
  [{ meter: 'whole-house', otherKWh: 600 }, 1500],
  [{ meter: 'whole-house' }, 900],
  [{ meter: 'heat-pump', otherKWh: 0 }, 900],
] as const)('all units of a meter with 900 for the heat pump, of %j: %i', (change, units) =>
  expect(unitsOfMeter(bill(change))).toBe(units),
);

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Block, blocksOf, monthPieces, monthsBetween, splitIntoBlocks } from '../../../src/model/tariff/blocks.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { allHours } from './tariffs.ts';

const kWh = fc.double({ min: 0, max: 20_000, noNaN: true });
/** One to six steps that go up, each with a price. */
const blocks = fc
  .array(
    fc.record({ wide: fc.double({ min: 0.5, max: 3000, noNaN: true }), pence: fc.integer({ min: -20, max: 90 }) }),
    {
      minLength: 1,
      maxLength: 6,
    },
  )
  .map((steps): Block[] => {
    let fromKWh = 0;
    return steps.map(({ wide, pence }, i) => {
      const block = { name: String(i), pencePerKWh: pence, fromKWh };
      fromKWh += wide;
      return block;
    });
  });
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const costOf = (parts: readonly number[], of: readonly Block[]) =>
  sum(parts.map((part, i) => part * of[i]!.pencePerKWh));

describe('units sorted into steps', () => {
  test('the steps together are the whole, and none is less than nothing', () => {
    fc.assert(
      fc.property(kWh, blocks, (amount, of) => {
        const parts = splitIntoBlocks(amount, of);
        expect(sum(parts)).toBeCloseTo(amount, 6);
        for (const part of parts) expect(part).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  test('more units never make a step smaller', () => {
    fc.assert(
      fc.property(kWh, kWh, blocks, (amount, more, of) => {
        const before = splitIntoBlocks(amount, of);
        const after = splitIntoBlocks(amount + more, of);
        for (const [i, part] of after.entries()) expect(part).toBeGreaterThanOrEqual(before[i]! - 1e-9);
      }),
    );
  });
  test('a step fills only when those below it are full', () => {
    fc.assert(
      fc.property(kWh, blocks, (amount, of) => {
        const parts = splitIntoBlocks(amount, of);
        parts.slice(0, -1).forEach((part, i) => {
          if (parts[i + 1]! > 0) expect(part).toBeCloseTo(of[i + 1]!.fromKWh - of[i]!.fromKWh, 9);
        });
      }),
    );
  });
  test('two uses cost together the same whichever comes first', () => {
    fc.assert(
      fc.property(kWh, kWh, blocks, (one, other, of) => {
        const added = (first: number, second: number) => {
          const filled = splitIntoBlocks(first, of);
          const onTop = splitIntoBlocks(first + second, of).map((part, i) => part - filled[i]!);
          return costOf(filled, of) + costOf(onTop, of);
        };
        expect(added(one, other)).toBeCloseTo(added(other, one), 3);
      }),
    );
  });
  test('where no step costs less than nothing, more units never cost less', () => {
    const paid = blocks.filter((of) => of.every(({ pencePerKWh }) => pencePerKWh >= 0));
    fc.assert(
      fc.property(kWh, kWh, paid, (amount, more, of) => {
        const cost = (units: number) => costOf(splitIntoBlocks(units, of), of);
        expect(cost(amount + more)).toBeGreaterThanOrEqual(cost(amount) - 1e-6);
      }),
    );
  });
});

describe('worked by hand', () => {
  const blocks = {
    per: 'month' as const,
    steps: [
      { upToKWh: 120, pencePerKWh: 35 },
      { upToKWh: 300, pencePerKWh: 28 },
    ],
  };
  const steps = blocksOf({ ...allHours(20), blocks });
  test('the steps of a band begin where those before them end', () => {
    expect(steps.map((step) => ({ ...step, name: sayTold(step.name) }))).toEqual([
      { name: 'all hours, first 120 kWh a month', pencePerKWh: 35, fromKWh: 0 },
      { name: 'all hours, to 300 kWh a month', pencePerKWh: 28, fromKWh: 120 },
      { name: 'all hours, above 300 kWh a month', pencePerKWh: 20, fromKWh: 300 },
    ]);
    expect(blocksOf(allHours(20))).toEqual([{ name: 'all hours', pencePerKWh: 20, fromKWh: 0 }]);
  });
  test.each([
    [500, [120, 180, 200]],
    [250, [120, 130, 0]],
    [120, [120, 0, 0]],
    [0, [0, 0, 0]],
  ])('%i kWh', (kWh, parts) => expect(splitIntoBlocks(kWh, steps)).toEqual(parts));
  test('days cut at the ends of months', () => {
    expect(monthPieces('2027-12-15', '2028-03-10')).toEqual([
      { from: '2027-12-15', to: '2028-01-01', days: 17, share: 17 / 31 },
      { from: '2028-01-01', to: '2028-02-01', days: 31, share: 1 },
      { from: '2028-02-01', to: '2028-03-01', days: 29, share: 1 },
      { from: '2028-03-01', to: '2028-03-10', days: 9, share: 9 / 31 },
    ]);
    expect(monthPieces('2026-04-01', '2026-04-01')).toEqual([]);
    expect(monthsBetween('2027-12-15', '2028-03-10')).toBeCloseTo(2 + 26 / 31, 12);
    expect(monthsBetween('2026-06-20', '2027-06-20')).toBeCloseTo(12, 12);
  });
});

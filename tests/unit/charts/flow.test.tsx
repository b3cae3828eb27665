import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutFlow } from '../../../src/charts/flow/layout.ts';
import { FlowPicture } from '../../../src/charts/flow/picture.tsx';
import { flowSentence } from '../../../src/charts/flow/sentence.ts';
import { type FlowInput, flowSeries } from '../../../src/charts/flow/series.ts';
import { flowTable } from '../../../src/charts/flow/table.ts';

const USUAL: FlowInput = { meterKWh: 4210, roomsKWh: 11_840, tapsKWh: 2060, source: 'ground' };
const thicknessOf = (path: string) => Number(/v([\d.]+)C/.exec(path)![1]);

test.each([
  [
    'a usual home',
    USUAL,
    'In a year 9,690 kWh from the ground and 4,210 from the meter become 11,800 kWh for the rooms and 2,060 for hot water.',
  ],
  [
    'no hot water',
    { ...USUAL, tapsKWh: 0 },
    'In a year 7,630 kWh from the ground and 4,210 from the meter become 11,800 kWh of heat for the rooms.',
  ],
  [
    'hot water alone',
    { ...USUAL, roomsKWh: 0, meterKWh: 800 },
    'In a year 1,260 kWh from the ground and 800 from the meter become 2,060 kWh of hot water.',
  ],
  [
    'a factor below 1',
    { ...USUAL, roomsKWh: 500, tapsKWh: 0, meterKWh: 600 },
    'In a year 600 kWh from the meter become 500 kWh of heat for the rooms.',
  ],
  [
    'no heat',
    { ...USUAL, roomsKWh: 0, tapsKWh: 0, meterKWh: 80 },
    'In a year the meter counts 80 kWh, and no heat is needed.',
  ],
  [
    'unknown',
    { ...USUAL, meterKWh: Number.NaN },
    'We do not know yet where the heat would come from and where it would go.',
  ],
] as const)('%s is said: %s', (_, input, sentence) => {
  expect(flowSentence(input)).toBe(sentence);
});

const kWh = fc.double({ min: 0, max: 1e6, noNaN: true });
const inputs = fc.record({
  meterKWh: kWh,
  roomsKWh: kWh,
  tapsKWh: kWh,
  source: fc.constantFrom('ground' as const, 'air' as const),
});

describe('whatever the home', () => {
  test('what comes in goes out', () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const flow = flowSeries(input);
        if (!flow) return;
        const comes = flow.meterKWh + flow.sourceKWh;
        expect(flow.roomsKWh + flow.tapsKWh + flow.lostKWh).toBeCloseTo(comes, 6);
      }),
    );
  });
  test('every ribbon and every word lies inside the picture', () => {
    fc.assert(
      fc.property(inputs, fc.integer({ min: 420, max: 1400 }), (input, width) => {
        const layout = layOutFlow(input, 'desk', { width });
        if (!layout) return;
        for (const { path, at } of layout.ribbons) {
          const [, x, y] = /^M([\d.-]+) ([\d.-]+)/.exec(path)!;
          expect(Number(x)).toBeGreaterThanOrEqual(0);
          expect(Number(x)).toBeLessThanOrEqual(width);
          expect(Number(y)).toBeGreaterThanOrEqual(0);
          expect(Number(y) + thicknessOf(path)).toBeLessThanOrEqual(layout.height + 1);
          expect(at.x).toBeGreaterThan(0);
          expect(at.x).toBeLessThan(width);
        }
      }),
    );
  });
});

test('ribbons are as thick as their kWh', () => {
  const { ribbons } = layOutFlow(USUAL, 'desk', { width: 900 })!;
  const of = (kind: string) => thicknessOf(ribbons.find((one) => one.kind === kind)!.path);
  expect(of('rooms') / of('taps')).toBeCloseTo(11_840 / 2060, 1);
  expect(of('source') / of('meter')).toBeCloseTo(9690 / 4210, 1);
});

test('the table holds both sides, each summing to the same', () => {
  const { rows } = flowTable(USUAL);
  expect(rows.map(({ cells }) => cells[0])).toEqual(['From the ground', 'From the meter', 'Rooms', 'Hot water']);
  expect(flowTable({ ...USUAL, roomsKWh: Number.NaN }).rows).toEqual([]);
});

test('it is painted for screen, table and paper; nothing is painted of what is not known', () => {
  for (const size of ['desk', 'table', 'paper'] as const) {
    const svg = renderToStaticMarkup(<FlowPicture input={USUAL} size={size} width={650} />);
    for (const part of ['meter', 'source', 'rooms', 'taps', 'machine']) expect(svg).toContain(`data-part="${part}"`);
  }
  expect(renderToStaticMarkup(<FlowPicture input={{ ...USUAL, tapsKWh: Number.NaN }} size="paper" width={650} />)).toBe(
    '',
  );
});

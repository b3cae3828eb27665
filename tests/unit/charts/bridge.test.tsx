import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutBridge } from '../../../src/charts/bridge/layout.ts';
import { BridgePicture } from '../../../src/charts/bridge/picture.tsx';
import { bridgeSentence } from '../../../src/charts/bridge/sentence.ts';
import { bridgeSeries } from '../../../src/charts/bridge/series.ts';
import { bridgeTable } from '../../../src/charts/bridge/table.ts';
import type { BillCause } from '../../../src/model/shapes/bill-check.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

const { working } = larchRise().demand.total;
const check = (
  estimatedPence: number,
  parts: readonly (readonly [BillCause, number, ('measured' | 'assumed')?])[],
) => ({
  estimatedPence,
  actualPence: parts.reduce((sum, [, pence]) => sum + pence, estimatedPence),
  expected: { value: 60_500, low: 54_000, high: 67_000 },
  parts: parts.map(([cause, pence, grade]) => ({ cause, pence, grade: grade ?? ('measured' as const), working })),
});
const sketch = check(46_200, [
  ['weather', 5_800],
  ['price', 9_200],
  ['backup', 4_100],
  ['heat-used', 3_400],
  ['rest', -1_300, 'assumed'],
]);

describe('steps', () => {
  test('each starts where the last one ended, and the last ends at what was paid', () => {
    const { steps } = bridgeSeries(sketch);
    const parts = steps.slice(1, -1);
    expect(parts.map((part) => part.from)).toEqual([46_200, ...parts.slice(0, -1).map((part) => part.to)]);
    expect(parts.at(-1)!.to).toBe(67_400);
    expect(steps.map((step) => step.name)).toEqual([
      'Estimated',
      'Colder weather',
      'Higher electricity price',
      'Backup heater',
      'More heat made',
      'All the rest',
      'Paid',
    ]);
    expect(steps.map((step) => step.colour)).toEqual(['ground', 'sky', 'meter', 'over', 'over', 'ground', 'ground']);
  });
});

describe('layout', () => {
  test('bars stay inside and have a height, whatever the amounts', () => {
    const amount = fc.integer({ min: -1e8, max: 1e8 });
    fc.assert(
      fc.property(
        amount,
        fc.array(amount, { maxLength: 7 }),
        fc.integer({ min: 400, max: 1400 }),
        (estimated, parts, width) => {
          const series = bridgeSeries(
            check(
              estimated,
              parts.map((pence) => ['rest', pence] as const),
            ),
          );
          const layout = layOutBridge(series, 'desk', { width });
          for (const mark of layout.marks) {
            expect(mark.height).toBeGreaterThanOrEqual(2);
            expect(mark.y).toBeGreaterThanOrEqual(0);
            expect(mark.y + mark.height).toBeLessThanOrEqual(layout.height);
            expect(mark.x + mark.width).toBeLessThanOrEqual(width);
          }
          expect(layout.box!.y).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
  test('the words of the box stand under the steps that are over them', () => {
    const { box, marks } = layOutBridge(bridgeSeries(sketch), 'desk');
    const over = marks.filter((mark) => mark.step.kind === 'part' && mark.x + mark.width > box!.textX - 170);
    for (const mark of over) expect(box!.textY - 16).toBeGreaterThanOrEqual(mark.y + mark.height);
  });
  test('no name is cut, however many the causes and as low as the letter draws it', () => {
    const causes: BillCause[] = [
      'price',
      'when',
      'standing-charge',
      'weather',
      'heat-used',
      'hot-water',
      'efficiency',
      'backup',
    ];
    for (const all of [causes, [...causes, 'other-electricity', 'metering'] as BillCause[]]) {
      const series = bridgeSeries(
        check(
          46_200,
          all.map((cause) => [cause, 1_000] as const),
        ),
      );
      const { marks, nameFont, font } = layOutBridge(series, 'paper', { width: 650, height: 205 });
      for (const mark of marks) expect(mark.nameLines.join(' ')).toBe(mark.step.name);
      expect(nameFont).toBeGreaterThan(0.69 * font);
    }
  });
  test('without a range there is no box', () =>
    expect(
      layOutBridge(bridgeSeries({ ...sketch, expected: { value: 1, low: Number.NaN, high: 1 } }), 'desk').box,
    ).toBeNull());
});

test('the picture: amounts with sign, the assumed step dashed, grades as shapes', () => {
  const html = renderToStaticMarkup(<BridgePicture series={bridgeSeries(sketch)} size="paper" width={650} />);
  for (const label of ['£462', '+£58', '−£13', '£674', 'and prices: £540 to £670']) expect(html).toContain(label);
  expect(html.match(/stroke-dasharray="5 4"/g)).toHaveLength(1);
  expect(html.match(/<circle/g)).toHaveLength(5);
  expect(html).not.toMatch(/NaN/);
});

test.each([
  [sketch, 'From £460 estimated to £670 paid. The largest step is “higher electricity price”: it added £92.'],
  [
    check(46_200, [['weather', -9_900]]),
    'From £460 estimated to £360 paid. The largest step is “milder weather”: it took away £99.',
  ],
  [check(46_200, [['rest', 0]]), 'From £460 estimated to £460 paid.'],
])('sentence %#', (one, said) => expect(bridgeSentence(bridgeSeries(one))).toBe(said));

test('the table is to the penny', () => {
  const { rows } = bridgeTable(bridgeSeries(sketch));
  expect(rows[5]!.cells).toEqual(['All the rest', '−£13.00', 'assumed']);
  expect(rows[6]!.cells[1]).toBe('£674.00');
});

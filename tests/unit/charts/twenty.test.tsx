import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { textWidth } from '../../../src/charts/frame/text.ts';
import { layOutTwenty } from '../../../src/charts/twenty/layout.ts';
import { TwentyPicture } from '../../../src/charts/twenty/picture.tsx';
import { twentySentence } from '../../../src/charts/twenty/sentence.ts';
import { twentyTable } from '../../../src/charts/twenty/table.ts';

const SKETCH = [-180, -40, 60, 130, 190, 240, 285, 330, 370, 405, 440, 470, 505, 540, 580, 620, 670, 730, 810, 940].map(
  (pounds) => pounds * 100,
);

test('every future is a dot, on its own side, inside the picture, none on another', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { minLength: 20, maxLength: 20 }),
      fc.integer({ min: 320, max: 1600 }),
      (savings, width) => {
        const layout = layOutTwenty(savings, 'desk', { width });
        expect(layout.dots).toHaveLength(20);
        expect(layout.dots.filter((dot) => dot.side === 'more')).toHaveLength(savings.filter((one) => one < 0).length);
        for (const dot of layout.dots) {
          expect(dot.side === 'more' ? dot.x < layout.zeroX : dot.x > layout.zeroX).toBe(true);
          expect(dot.x).toBeGreaterThan(layout.left);
          expect(dot.x).toBeLessThan(layout.right);
          expect(dot.y - layout.radius).toBeGreaterThanOrEqual(layout.top);
        }
        expect(new Set(layout.dots.map((dot) => `${dot.x} ${dot.y}`)).size).toBe(20);
      },
    ),
  );
});

test('both sides bear their names however narrow the picture, and the amounts below stand apart', () => {
  const moved = (pounds: number) => SKETCH.map((pence) => pence + pounds * 100);
  for (const savings of [SKETCH, moved(-400), moved(-2000), moved(1000)]) {
    for (const size of ['desk', 'table', 'paper'] as const) {
      for (let width = 300; width < 1200; width += 50) {
        const { names, ticks, faint, zeroX } = layOutTwenty(savings, size, { width });
        const side = (end: 'start' | 'end') => names.filter(({ textAnchor }) => textAnchor === end);
        expect(
          side('start')
            .map(({ line }) => line)
            .join(' '),
        ).toBe('costs more');
        expect(
          side('end')
            .map(({ line }) => line)
            .join(' '),
        ).toBe('costs less');
        const half = (text: string) => textWidth(text, faint) / 2;
        for (const [i, { x, label }] of ticks.entries()) {
          expect(x + half(label)).toBeLessThan(width);
          expect(x - half(label)).toBeGreaterThan(i === 0 ? 0 : ticks[i - 1]!.x + half(ticks[i - 1]!.label));
          expect(label === 'the same').toBe(x === zeroX);
        }
        expect(ticks.length, `${size} ${width}`).toBeGreaterThan(1);
      }
    }
  }
});

test('in a narrow picture as many bins are taken as make the dots large', () => {
  const { dots, radius } = layOutTwenty(SKETCH, 'table', { width: 320, height: 330 });
  expect(new Set(dots.map(({ x }) => x)).size).toBeGreaterThanOrEqual(5);
  expect(radius).toBeGreaterThan(12);
});

test.each([
  ['all equal', Array.from({ length: 20 }, () => 12_345)],
  ['all nothing', Array.from({ length: 20 }, () => 0)],
  ['tiny', Array.from({ length: 20 }, (_, i) => i / 1000)],
  ['one far off', [...SKETCH.slice(0, 19), 1e9]],
])('%s keeps its shape', (_, savings) => {
  const layout = layOutTwenty(savings, 'table');
  expect(layout.radius).toBeGreaterThanOrEqual(2);
  expect(layout.ticks.some((tick) => tick.label === 'the same')).toBe(true);
});

test('the picture, the sentence and the table count alike', () => {
  const html = renderToStaticMarkup(<TwentyPicture savingsPence={SKETCH} size="paper" width={650} />);
  expect(html.match(/data-side="less"/g)).toHaveLength(18);
  expect(html.match(/data-side="more"/g)).toHaveLength(2);
  expect(html).toContain('costs more');
  expect(html).not.toMatch(/NaN/);
  expect(twentySentence(SKETCH)).toBe('In 18 futures out of 20 the heat pump costs less, in 2 it costs more.');
  const { rows } = twentyTable(SKETCH);
  expect(rows.filter((row) => row.cells[1]!.endsWith('more'))).toHaveLength(2);
  expect(rows.at(-1)!.cells).toEqual(['20', '£940 less']);
});

test('unknown futures are no dots', () => {
  expect(layOutTwenty([Number.NaN, 100], 'desk').dots).toHaveLength(1);
  expect(layOutTwenty([], 'desk').dots).toHaveLength(0);
});

import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutBrine } from '../../../src/charts/brine/layout.ts';
import { BrinePicture } from '../../../src/charts/brine/picture.tsx';
import { brineSentence } from '../../../src/charts/brine/sentence.ts';
import { brineTable } from '../../../src/charts/brine/table.ts';
import { addDays } from '../../../src/model/calendar/civil.ts';
import type { BrineCourse } from '../../../src/model/site-readings/brine-course.ts';

const course = (temperatures: readonly number[], freezingC: number | null = null, apartDays = 60): BrineCourse => ({
  readings: temperatures.map((inC, i) => ({
    date: addDays('2024-02-03', apartDays * i),
    inC,
    outC: i % 2 ? null : inC - 3,
  })),
  freezingC,
  fall: null,
});

describe('layout', () => {
  test('every mark and name inside the picture, colder is lower, whatever was read', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -20, max: 30, noNaN: true }), { maxLength: 30 }),
        fc.option(fc.double({ min: -25, max: 0, noNaN: true })),
        fc.integer({ min: 1, max: 400 }),
        (temperatures, freezingC, apartDays) => {
          const layout = layOutBrine(course(temperatures, freezingC, apartDays), 'desk');
          expect(layout.marks.length).toBe(Math.min(12, temperatures.length));
          for (const { x, inY, outY } of layout.marks) {
            expect(x).toBeGreaterThanOrEqual(layout.left);
            expect(x).toBeLessThanOrEqual(layout.right);
            expect(inY).toBeLessThanOrEqual(layout.baseY + 1e-6);
            expect(outY ?? inY).toBeGreaterThanOrEqual(inY - 1e-6);
          }
          for (const [i, name] of layout.names.entries())
            if (i > 0) expect(name.y - layout.names[i - 1]!.y).toBeGreaterThanOrEqual(layout.font);
          const days = layout.marks.filter(({ day }) => day !== null).map(({ x }) => x);
          for (const [i, x] of days.entries()) if (i > 0) expect(x - days[i - 1]!).toBeGreaterThan(50);
        },
      ),
    );
  });
  test('zero is always on the axis', () => {
    const layout = layOutBrine(course([9, 8]), 'desk');
    expect(layout.ticks.map(({ label }) => label)).toContain('0 °C');
    expect(layout.zeroY).toBeCloseTo(layout.baseY, 6);
  });
});

test('painted: a mark a visit, brine out where it was read, the freezing line where it is known', () => {
  const painted = renderToStaticMarkup(<BrinePicture series={course([5, 3, 2], -9.8)} size="paper" width={650} />);
  expect(painted.match(/data-visit/g)).toHaveLength(3);
  expect(painted.match(/<circle/g)).toHaveLength(3 + 2);
  expect(painted).toContain('brine freezes');
  expect(renderToStaticMarkup(<BrinePicture series={course([5, 3])} size="paper" width={650} />)).not.toContain(
    'freezes',
  );
});

test('said and in a table', () => {
  expect(brineSentence(course([5, 5]))).toBe('Brine of 2 visits: it does not fall.');
  const table = brineTable(course([5, 3], -9.8));
  expect(table.caption).toBe('Brine at each visit. It freezes at −9.8 °C.');
  expect(table.rows.map(({ cells }) => cells)).toEqual([
    ['3 February 2024', '5 °C', '2 °C'],
    ['3 April 2024', '3 °C', 'not known'],
  ]);
});

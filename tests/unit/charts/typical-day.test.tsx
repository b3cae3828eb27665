import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { layOutDay } from '../../../src/charts/typical-day/layout.ts';
import { DayPicture } from '../../../src/charts/typical-day/picture.tsx';
import { daySentence } from '../../../src/charts/typical-day/sentence.ts';
import { daySeries } from '../../../src/charts/typical-day/series.ts';
import { dayTable } from '../../../src/charts/typical-day/table.ts';

const flat = (kWh: number, length = 48) => Array.from({ length }, () => kWh);
const heater = { code: 'heater-running', kWh: 250 } as const;
/** Half-hours of 0.25 kWh; with the heater 1.75 at 02:00 and 02:30. */
const day = {
  minutes: 30,
  seen: flat(0.25).map((kWh, i) => (i === 4 || i === 5 ? 1.75 : kWh)),
  seenDays: 42,
  otherwise: flat(0.25),
};

test('kWh of a half-hour are twice as many kW, and the sentence names the hour', () => {
  const series = daySeries(heater, day);
  expect(series.seenKW[4]).toBe(3.5);
  expect(daySentence(series)).toBe(
    'On average over 42 days the meter shows 3.5 kW at 02:00, compared with 0.5 kW on days as cold.',
  );
  expect(daySentence(daySeries(heater, { ...day, otherwise: undefined }))).toMatch(/3\.5 kW at 02:00\.$/);
});

test('the table has a row for each reading', () => {
  const { rows, columns } = dayTable(daySeries(heater, day));
  expect(rows).toHaveLength(48);
  expect(columns).toHaveLength(3);
  expect(rows[5]!.cells).toEqual(['02:30', '3.50 kW', '0.50 kW']);
});

describe('layout', () => {
  test('paths are finite and names stay inside, whatever the use', () => {
    const kWh = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(kWh, { minLength: 24, maxLength: 24 }),
        fc.integer({ min: 420, max: 1200 }),
        (seen, width) => {
          const layout = layOutDay(daySeries(heater, { minutes: 60, seen, seenDays: 3 }), 'desk', { width });
          expect(layout.seenPath).not.toMatch(/NaN|Infinity/);
          for (const name of layout.names) {
            expect(name.x).toBeGreaterThanOrEqual(0);
            expect(name.y).toBeLessThanOrEqual(layout.height);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
  test('as low as the letter draws it, the names lie on no part of the day', () => {
    const seen = Array.from({ length: 24 }, (_, hour) => (hour === 2 || hour === 3 ? 3.9 : hour === 13 ? 2.5 : 0.9));
    const layout = layOutDay(daySeries(heater, { ...day, minutes: 60, seen, otherwise: flat(0.9, 24) }), 'paper', {
      width: 650,
      height: 88,
    });
    const top = Math.min(...layout.ticks.map(({ y }) => y));
    expect(layout.names).toHaveLength(2);
    for (const name of layout.names) expect(name.y).toBeLessThan(top);
    expect(layout.names[1]!.x).toBeGreaterThan(layout.names[0]!.x + 100);
  });
  test('the other day is dashed', () => {
    const html = renderToStaticMarkup(<DayPicture series={daySeries(heater, day)} size="paper" width={650} />);
    expect(html).toMatch(/stroke-dasharray="5 4"[^>]*data-part="otherwise"/);
    expect(html).not.toMatch(/NaN|undefined/);
  });
});

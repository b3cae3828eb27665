import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { countTiles, layOutUnits, tileSize } from '../../../src/charts/units/layout.ts';
import { UnitsPicture } from '../../../src/charts/units/picture.tsx';
import { unitsSentence } from '../../../src/charts/units/sentence.ts';
import { unitsSeries } from '../../../src/charts/units/series.ts';
import { unitsTable } from '../../../src/charts/units/table.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';

const input = (meterKWh: number, heatKWh: number) => ({
  meterKWh,
  heatKWh,
  meterPence: meterKWh * 26.3,
  source: 'ground' as const,
});

test.each([
  [13_900, 100],
  [4_000, 20],
  [60_000, 500],
  [3, 0.02],
  [0, 0],
  [Number.NaN, 0],
])('for %d kWh one tile is %d', (heat, tile) => expect(tileSize(heat)).toBeCloseTo(tile, 9));

test('60 to 200 tiles of a rounded size, and the two kinds add up', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 1e7, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (heat, share) => {
        const { meter, source, total } = countTiles(input(heat * share, heat));
        expect(total).toBeGreaterThanOrEqual(60);
        expect(total).toBeLessThanOrEqual(200);
        expect(meter + source).toBe(total);
        expect(Math.min(meter, source)).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});

describe('layout', () => {
  test.each([320, 620, 900, 1400])('at %d px nothing leaves the picture', (width) => {
    const layout = layOutUnits(input(4_040, 13_900), 'desk', { width });
    expect(layout.width).toBe(width);
    for (const { x, width: wide } of layout.groups) expect(x + wide).toBeLessThanOrEqual(width);
    expect(layout.groups.map((group) => group.tiles.length)).toEqual([40, 99, 139]);
  });
  test('a machine that adds nothing, a home without heat', () => {
    expect(countTiles(input(5_000, 4_000)).source).toBe(0);
    expect(layOutUnits(input(0, 0), 'desk').groups.every((group) => group.tiles.length === 0)).toBe(true);
    expect(countTiles(input(Number.NaN, Number.NaN)).total).toBe(0);
  });
});

test('bought tiles bear a stroke as well as their colour', () => {
  const html = renderToStaticMarkup(<UnitsPicture input={unitsSeries(larchRise())} size="paper" width={650} />);
  expect(html.match(/data-from="meter"/g)).toHaveLength(80);
  expect(html.match(/data-from="source"/g)).toHaveLength(198);
  expect(html.match(/stroke="var\(--meter\)" stroke-width="1.5"><\/path>/g)).toHaveLength(80);
  expect(html).toContain('one tile is 100');
  expect(html).not.toMatch(/NaN/);
});

test.each([
  [4_040, 13_900, 'In a year: 4,040 kWh from the meter and 9,860 from the ground make 13,900 kWh of heat.'],
  [5_000, 4_000, 'In a year the meter counts 5,000 kWh for 4,000 kWh of heat. The ground adds nothing.'],
  [0, 0, 'This home needs no heat, so nothing is bought.'],
  [Number.NaN, 1, 'We do not know yet how much heat is needed.'],
])('%d of %d kWh', (meter, heat, said) => expect(unitsSentence(input(meter, heat))).toBe(said));

test('the table adds up', () =>
  expect(unitsTable(input(4_040, 13_900)).rows.map((row) => row.cells[1])).toEqual([
    '4,040 kWh',
    '9,860 kWh',
    '13,900 kWh',
  ]));

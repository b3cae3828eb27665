import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../../src/charts/frame/text.ts';
import { layOutSpread } from '../../../src/charts/spread/layout.ts';
import { SpreadPicture } from '../../../src/charts/spread/picture.tsx';
import { spreadSentence } from '../../../src/charts/spread/sentence.ts';
import { type SpreadRow, spreadSeries } from '../../../src/charts/spread/series.ts';
import { spreadTable } from '../../../src/charts/spread/table.ts';
import { figure, larchRise } from '../leave-behind/larch-rise.ts';

const row = (id: string, cost: SpreadRow['cost'], more: Partial<SpreadRow> = {}): SpreadRow => ({
  id,
  name: id,
  ours: false,
  grade: 'estimated',
  cost,
  ...more,
});
const rise = larchRise();
const unknownFirst = {
  ...rise,
  systems: rise.systems.map((system) =>
    system.id === 'oil' ? { ...system, cost: figure(Number.NaN, Number.NaN, Number.NaN, 'pence') } : system,
  ),
};

describe('rows', () => {
  test('go by cost', () =>
    expect(spreadSeries(rise).map((one) => one.id)).toEqual([
      'heat-pump',
      'oil',
      'gas-condensing',
      'present',
      'direct-electric',
    ]));
  test('put what is not known last, open', () => {
    const last = spreadSeries(unknownFirst).at(-1)!;
    expect([last.id, last.cost]).toEqual(['oil', null]);
  });
  test('keep heat pump and present heating when only few have room', () =>
    expect(spreadSeries(rise, 3).map((one) => one.id)).toEqual(['heat-pump', 'oil', 'present']));
});

describe('layout', () => {
  const anyCost = fc.option(
    fc
      .tuple(
        fc.double({ min: -1e8, max: 1e9, noNaN: true }),
        fc.double({ min: 0, max: 1e8, noNaN: true }),
        fc.double({ min: 0, max: 1e8, noNaN: true }),
      )
      .map(([middle, down, up]) => ({ low: middle - down, middle, high: middle + up })),
    { nil: null },
  );
  test('a long word of a name stands whole left of the bars, in a narrow picture too', () => {
    const one = row('floor', { low: 1, middle: 2, high: 3 }, { name: 'Fußbodenheizung, Vorlauf 35 °C', ours: true });
    const { marks, ticks, zeroX, font } = layOutSpread([one], 'desk', { width: 350 });
    expect(marks[0]!.nameLines[0]).toBe('Fußbodenheizung,');
    // The names end so far before the axis.
    expect(Math.min(ticks[0]!.x, zeroX) - 14).toBeGreaterThan(textWidth('Fußbodenheizung,', font, true) + 3);
  });
  test('every mark stays inside the picture, in its row, whatever the costs, names and widths', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(anyCost, fc.string({ maxLength: 90 })), { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 320, max: 1600 }),
        fc.constantFrom('desk' as const, 'table' as const, 'paper' as const),
        (rows, width, size) => {
          const layout = layOutSpread(
            rows.map(([cost, name], i) => row(`r${i}`, cost, { name })),
            size,
            { width },
          );
          let below = 0;
          for (const mark of layout.marks) {
            expect(mark.y - mark.thickness / 2).toBeGreaterThanOrEqual(below);
            below = mark.y + mark.thickness / 2;
            expect(mark.nameLines.length).toBeLessThanOrEqual(2);
            if (!mark.cost) continue;
            const { band, dotX, stem } = mark.cost;
            expect(band.width).toBeGreaterThanOrEqual(4);
            expect(dotX).toBeGreaterThanOrEqual(band.x - 0.01);
            expect(dotX).toBeLessThanOrEqual(band.x + band.width + 0.01);
            if (stem) expect(stem.width).toBeGreaterThanOrEqual(0);
            for (const value of [band.x, band.width, dotX, mark.cost.labelX]) expect(Number.isFinite(value)).toBe(true);
          }
          expect(below).toBeLessThanOrEqual(layout.bottom + 0.01);
        },
      ),
    );
  });
  test('the stem ends where the doubt begins, from zero', () => {
    const [mark] = layOutSpread([row('a', { low: 100_000, middle: 120_000, high: 140_000 })], 'desk').marks;
    expect(mark!.cost!.stem!.x).toBeCloseTo(layOutSpread([row('a', null)], 'desk').zeroX, 0);
    expect(mark!.cost!.stem!.x + mark!.cost!.stem!.width).toBeCloseTo(mark!.cost!.band.x, 6);
  });
  test('a band over zero has no stem; a cost below zero has one on the left', () => {
    const { marks, zeroX } = layOutSpread(
      [
        row('over', { low: -5_000, middle: 100, high: 5_000 }),
        row('below', { low: -90_000, middle: -80_000, high: -70_000 }),
      ],
      'desk',
    );
    expect(marks[0]!.cost!.stem).toBeNull();
    expect(marks[1]!.cost!.stem!.x + marks[1]!.cost!.stem!.width).toBeCloseTo(zeroX, 6);
  });
});

describe('picture', () => {
  const html = renderToStaticMarkup(<SpreadPicture rows={spreadSeries(rise)} size="paper" width={650} />);
  test('one stem, band and dot a row; the heat pump green, the others slate', () => {
    for (const part of ['stem', 'band', 'dot'])
      expect(html.match(new RegExp(`data-part="${part}"`, 'g'))).toHaveLength(5);
    expect(html.match(/fill="var\(--ground\)"/g)).toHaveLength(2);
    expect(html.match(/fill="var\(--fuel\)"/g)).toHaveLength(8);
    expect(html).toContain('£1,050 to £1,400');
  });
  test('no number goes wrong, nothing needs a style sheet rule of its own', () =>
    expect(html).not.toMatch(/NaN|Infinity|style=/));
  test('the unknown is an open dashed bar, the assumed has a dashed outline', () => {
    const open = renderToStaticMarkup(
      <SpreadPicture
        rows={[row('a', null), row('b', { low: 1e5, middle: 2e5, high: 3e5 }, { grade: 'assumed' })]}
        size="desk"
      />,
    );
    expect(open).toContain('not known yet');
    expect(open.match(/stroke-dasharray="5 4"/g)).toHaveLength(2);
    expect(open.match(/data-part="dot"/g)).toHaveLength(1);
  });
});

describe('sentence and table', () => {
  test.each([
    [spreadSeries(rise), 'No other way of heating shown here costs less.'],
    [spreadSeries(larchRise({ electricityShare: 2 })), 'Of the 4 other ways shown here, 3 cost less.'],
    [spreadSeries(larchRise({ electricityShare: 40 })), 'Every other way of heating shown here costs less.'],
    [spreadSeries(unknownFirst), 'Not known yet: oil boiler.'],
    [[], 'No yearly cost is known yet.'],
  ])('%#', (rows, said) => expect(spreadSentence(rows)).toContain(said));
  test('the range is said as doubt, not as ups and downs', () =>
    expect(spreadSentence(spreadSeries(rise))).toContain(
      '8 in 10 homes like yours should lie between £1,050 and £1,400, 2 outside.',
    ));
  test('the table has every row, the unknown as words', () => {
    const table = spreadTable(spreadSeries(unknownFirst));
    expect(table.rows[0]!.cells).toEqual(['Ground-source heat pump', '£1,193', '£1,049', '£1,395']);
    expect(table.rows.at(-1)!.cells).toEqual(['Oil boiler', 'not known', 'not known', 'not known']);
  });
});

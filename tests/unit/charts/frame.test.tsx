import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { ChartFigure } from '../../../src/charts/figure.tsx';
import { tableCsv } from '../../../src/charts/frame/csv.ts';
import { fileNameOf } from '../../../src/charts/frame/save.ts';
import { axisFor, niceStep, placeOn } from '../../../src/charts/frame/scale.ts';
import { textWidth, wrapText } from '../../../src/charts/frame/text.ts';
import { GradeMark } from '../../../src/charts/grade-mark.tsx';
import { WorkingView } from '../../../src/charts/working-view.tsx';
import { larchRise } from '../leave-behind/larch-rise.ts';

describe('axes', () => {
  test.each([
    [857, 1000],
    [100, 100],
    [101, 200],
    [0.03, 0.05],
    [0, 1],
    [Number.NaN, 1],
  ])('a step for %d is %d', (rough, step) => expect(niceStep(rough)).toBeCloseTo(step, 9));

  test('holds every value, has zero on it and few ticks, whatever comes', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true })), (values) => {
        const axis = axisFor(values);
        expect(axis.high).toBeGreaterThan(axis.low);
        expect(axis.low).toBeLessThanOrEqual(Math.min(0, ...values) + axis.step * 1e-6);
        expect(axis.high).toBeGreaterThanOrEqual(Math.max(0, ...values) - axis.step * 1e-6);
        expect(axis.ticks.some((tick) => tick === 0)).toBe(true);
        expect(axis.ticks.length).toBeLessThanOrEqual(8);
      }),
    );
  });
  test('unknown values do not move it', () => expect(axisFor([Number.NaN, 100])).toEqual(axisFor([100])));
  test('places', () => {
    const x = placeOn({ low: -100, high: 300 }, 0, 400);
    expect([x(-100), x(0), x(300)]).toEqual([0, 100, 400]);
  });
});

describe('text', () => {
  test('breaks between words and cuts what is left over', () => {
    expect(wrapText('Gas boiler, as now', 16, 400)).toEqual(['Gas boiler, as now']);
    expect(wrapText('Gas boiler, as now', 16, 80)).toEqual(['Gas boiler,', 'as now']);
    expect(wrapText('Ground-source heat pump', 16, 80)).toEqual(['Ground-', 'source …']);
    expect(wrapText('Ground-source heat pump', 16, 80, 3)).toEqual(['Ground-', 'source', 'heat pump']);
    const long = wrapText('A way of heating with a very long name that nobody expected', 16, 120);
    expect(long).toHaveLength(2);
    expect(long[1]).toMatch(/…$/);
    for (const line of long) expect(textWidth(line, 16)).toBeLessThanOrEqual(120);
  });
  test('a single long word is cut too', () =>
    expect(textWidth(wrapText('x'.repeat(80), 16, 100)[0]!, 16)).toBeLessThanOrEqual(100));
});

const table = {
  caption: 'Costs',
  columns: [{ name: 'Way' }, { name: 'A year, £', number: true }],
  rows: [{ cells: ['Ground-source heat pump', '£1,190'], ours: true }, { cells: ['=HYPERLINK("x")', '−£20'] }],
};

test('figures leave as text that a spreadsheet reads and does not run', () => {
  expect(tableCsv(table)).toBe(
    '\uFEFFWay,"A year, £"\r\nGround-source heat pump,"£1,190"\r\n"\'=HYPERLINK(""x"")",-£20\r\n',
  );
  const written = ['-1+cmd|x', '−120+1', '-@a', '−€120', '−£20 a year', '−1.234,5 kWh', '-5=5', '−12 %'].map((cell) =>
    tableCsv({ ...table, rows: [{ cells: [cell, ''] }] })
      .split('\r\n')[1]!
      .replace(/,$/, ''),
  );
  expect(written).toEqual(["'-1+cmd|x", "'-120+1", "'-@a", '-€120', '-£20 a year', '"-1.234,5 kWh"', "'-5=5", '-12 %']);
  expect(fileNameOf('Cost by month')).toBe('cost-by-month');
  expect(fileNameOf('…')).toBe('picture');
});

describe('the figure', () => {
  const html = renderToStaticMarkup(
    <ChartFigure
      name="Costs"
      sentence="The heat pump costs £1,190."
      picture={<svg aria-hidden="true" />}
      table={table}
    />,
  );
  test('says its sentence, and bears it as the name of the picture, which is one stop', () => {
    expect(html).toContain('<figcaption class="voice">The heat pump costs £1,190.</figcaption>');
    expect(html).toContain('role="img" aria-label="The heat pump costs £1,190." aria-keyshortcuts="T" tabindex="0"');
    expect(html.match(/tabindex/g)).toHaveLength(1);
  });
  test('offers table, picture and figures', () => {
    for (const name of ['As a table', 'Save picture', 'Save figures']) expect(html).toContain(name);
  });
  test('a sentence that the screen has said is only read aloud', () => {
    const quiet = renderToStaticMarkup(
      <ChartFigure name="C" sentence="S." picture={null} table={table} sentenceSaid savable={false} />,
    );
    expect(quiet).toContain('<figcaption class="unseen">');
    expect(quiet).not.toContain('Save');
  });
});

test('grades are shapes with a name', () => {
  const marks = (['measured', 'estimated', 'assumed', 'missing'] as const).map((grade) =>
    renderToStaticMarkup(<GradeMark grade={grade} />),
  );
  expect(new Set(marks.map((mark) => mark.replace(/(aria-label|class)="[^"]*"/g, ''))).size).toBe(4);
  expect(marks[0]).toContain('aria-label="measured"');
  expect(marks[1]).toContain('<path');
  expect(marks[3]).toContain('stroke-dasharray');
  expect(renderToStaticMarkup(<GradeMark grade="assumed" silent />)).toContain('aria-hidden="true"');
});

test('a working shows sum, inputs with grade and origin, source and the sums before it', () => {
  const html = renderToStaticMarkup(<WorkingView working={larchRise().demand.total.working} withTitle />);
  for (const part of [
    'Heat needed',
    '13,900 kWh',
    'gas-2024.csv, row 12',
    'estimated',
    'Source: Invented table',
    '<details',
    'Degree days',
  ]) {
    expect(html).toContain(part);
  }
});

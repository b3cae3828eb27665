import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { renderLeaveBehind } from '../../../src/leave-behind/leave-behind.tsx';
import { leaveBehindCsv } from '../../../src/leave-behind/leave-behind-csv.ts';
import { listAssumptions, listChapters } from '../../../src/leave-behind/list-assumptions.ts';
import { readEstimate } from '../../../src/leave-behind/parts.ts';
import { printedYears } from '../../../src/leave-behind/sections/years.tsx';
import { renderWorking } from '../../../src/leave-behind/working.tsx';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { reference } from '../../../src/reference/index.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRiseEstimate } from './larch-rise.ts';

const settings = { installerName: '', installerContact: '', paper: 'A4' as const };
const bought: Household['purchase'] = {
  heatPumpGBP: typed(15_000),
  grantGBP: typed(7500),
  replacementGBP: typed(3000),
};
const HEADING = '<h2>What the next years may bring</h2>';

function withYears(purchase: Household['purchase']): WrittenEstimate {
  const estimate = larchRiseEstimate();
  const household = { ...estimate.household, purchase };
  const lifetime = reckonLifetime({ household, appraisal: estimate.appraisal, reference })!;
  return { ...estimate, household, lifetime };
}
const whole = withYears(bought);
const running = withYears({});

test.each([
  ['with a purchase', whole],
  ['running costs alone', running],
  ['never paid back', withYears({ heatPumpGBP: typed(90_000) })],
])('what is kept comes back equal from text, %s', (_, estimate) => {
  const kept = JSON.parse(JSON.stringify(estimate));
  expect(WrittenEstimate.parse(kept)).toEqual(estimate);
  expect(renderLeaveBehind(kept, settings)).toBe(renderLeaveBehind(estimate, settings));
});

describe('on paper', () => {
  const html = renderWorking(whole, settings);
  test.each([
    HEADING,
    // £1,608.40 less £1,192.52 a year bring back £4,500 in 10.8 years; over 15 years the boiler is bought again.
    'It might pay that back after about 11 years.',
    'This is a picture of what may come, not advice.',
    'Nobody knows the prices of the years to come.',
    'for 8 in 10 homes like yours',
    'data-part="line-pump"',
    'data-part="band-beside"',
    '<h3>The years to come</h3>',
    'Worth today of all that is saved',
  ])('stands "%s"', (text) => expect(html).toContain(text));
  test('the sums are written out once: what stood with the first stands with no other', () => {
    const { workings } = listChapters(readEstimate(whole, settings)).at(-1)!;
    expect(workings).toHaveLength(7);
    const names = workings.flatMap(({ inputs }) => inputs.map(({ name }) => sayTold(name)));
    expect(names.filter((name) => name === 'Heat pump, put in')).toHaveLength(1);
    expect(names.filter((name) => name === 'Discount rate a year')).toHaveLength(1);
  });
  test('the household’s own paper says it in short', () => {
    const paper = renderLeaveBehind(whole, settings);
    expect(paper).toContain('<h3>Putting it in, and the years to come</h3>');
    expect(paper).toContain('It might pay that back after about 11 years.');
  });
  test('what was bought is among the assumptions, what was worked out is not', () => {
    const names = listAssumptions(readEstimate(whole, settings))
      .at(-1)!
      .inputs.map(({ name }) => sayTold(name));
    expect(names).toContain('Heat pump, put in');
    expect(names).not.toContain('Life left at the end, the other');
  });
  test('without price and grant it is a working and no page', () => {
    for (const estimate of [running, withYears({ heatPumpGBP: typed(15_000) })]) {
      const text = renderWorking(estimate, settings);
      expect(renderLeaveBehind(estimate, settings)).not.toContain('Putting it in');
      expect(text).not.toContain(HEADING);
      expect(text).toContain('<h3>The years to come</h3>');
    }
  });
  test.each([
    [20, [0, 5, 10, 15, 20]],
    [7, [0, 1, 2, 3, 4, 5, 6, 7]],
    [12, [0, 2, 4, 6, 8, 10, 12]],
  ])('of %d years stand these', (years, printed) => {
    expect(printedYears(withYears({ ...bought, years: typed(years) }).lifetime!)).toEqual(printed);
  });
});

test('a written estimate from before the years were kept with it says nothing of them', () => {
  const old = larchRiseEstimate();
  expect(renderWorking(old, settings)).not.toContain(HEADING);
  expect(leaveBehindCsv(old)).not.toContain('paid in all');
});

describe('as text', () => {
  const rows: Record<string, string>[] = parse(leaveBehindCsv(whole), { bom: true, columns: true });
  const years = rows.filter(({ part }) => part === 'years');
  test('every year of both, the last one as the document has it', () => {
    const pump = years.filter(({ what, system }) => what === 'paid in all' && system === 'Ground-source heat pump');
    expect(pump.map(({ time }) => time)).toEqual(Array.from({ length: 21 }, (_, year) => `year ${year}`));
    // £7,500 and twenty times £1,192.52.
    expect(Number(pump.at(-1)!.value)).toBeCloseTo(7500 + 20 * 1192.52, 2);
  });
  test('what it comes to, with its range', () => {
    const [saved] = years.filter(({ what }) => what === 'saved with the heat pump');
    expect(Number(saved!.value)).toBeCloseTo(whole.lifetime!.saved.value / 100, 3);
    expect(Number(saved!.low)).toBeLessThan(Number(saved!.value));
    expect(Number(saved!.high)).toBeGreaterThan(Number(saved!.value));
  });
  test('a payback that does not come is left empty', () => {
    const never: Record<string, string>[] = parse(leaveBehindCsv(withYears({ heatPumpGBP: typed(90_000) })), {
      bom: true,
      columns: true,
    });
    expect(never.find(({ what }) => what === 'years until paid back')!.value).toBe('');
  });
});

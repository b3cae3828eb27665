import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { renderLeaveBehind } from '../../../src/leave-behind/leave-behind.tsx';
import { plainOrigin } from '../../../src/leave-behind/origin.tsx';
import { renderWorking } from '../../../src/leave-behind/working.tsx';
import { catalogueOf } from '../../../src/words/catalogues.ts';
import { speak } from '../../../src/words/say.ts';
import { larchRiseEstimate } from './larch-rise.ts';

const settings = { installerName: 'Hill & Daughters', installerContact: '01234 567 890', paper: 'A4' as const };
const render = (variant = {}, paper: 'A4' | 'Letter' = 'A4') =>
  renderLeaveBehind(larchRiseEstimate(variant), { ...settings, paper });
/** What a reader reads: no style, no tags, the few entities that React writes. */
const textOf = (html: string) =>
  html
    .replace(/<style[\s\S]*?<\/style>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replace(/\s+/g, ' ');

describe('the document', () => {
  const html = render();
  const text = textOf(html);

  test('opens with title, amount, range and what there is now', () => {
    expect(text).toContain('What it would cost to heat Larch Rise with a heat pump');
    expect(text).toContain('About £1,190 a year');
    expect(text).toContain('between £1,050 and £1,400');
    expect(text).toContain('The gas boiler you have now costs about £1,610.');
  });

  test.each(['Beside the other ways of heating', 'Your first winter', 'What this rests on'])(
    'has the heading "%s"',
    (heading) => {
      expect(html).toContain(`<h2>${heading}</h2>`);
    },
  );

  test.each([
    'This is an estimate, not a guarantee: about 2 in 10 homes like yours will fall outside its range.',
    'Estimate no. 12 of 25 November 2026',
    'If electricity rises by 5 p per kWh, add about £200 a year.',
    'A cold winter, met about 1 year in 10, adds about £85.',
    'In 18 futures out of 20 the heat pump costs less, in 2 it costs more.',
    'Your own price: Day and night from October',
    'These prices hold from 1 October 2026 to 31 December 2026.',
    'Refrigerant.',
    'Legionella.',
    'glycol',
    'Call: Hill & Daughters, 01234 567 890',
  ])('says "%s"', (sentence) => {
    expect(text).toContain(sentence);
  });

  test('begins four pages', () => {
    expect(html.match(/<section(?! class="follows")/g)).toHaveLength(4);
  });

  test('names a source or says that it is our own assumption, and has no date, code or error for those who check', () => {
    expect(text).toContain('That is our own assumption.');
    expect(text).not.toMatch(/from memory|common practice|no source|\d{4}-\d\d-\d\d|standard error|0192-larch|reckon/i);
  });

  test('bears the logo of the day once, on its first page, and not one figure changes', () => {
    const logo = 'data:image/png;base64,iVBORw0KGgo=';
    const withLogo = renderLeaveBehind(larchRiseEstimate(), { ...settings, logo });
    expect(withLogo.split(logo)).toHaveLength(2);
    expect(withLogo.indexOf(logo)).toBeLessThan(withLogo.indexOf('<h1'));
    expect(textOf(withLogo)).toBe(text);
    expect(withLogo).toContain(`<img src="${logo}" alt=""/>`);
    expect(renderLeaveBehind(larchRiseEstimate(), { ...settings, installerName: '', logo })).toContain(
      'alt="Logo of the installer"',
    );
  });

  test('fetches nothing and runs nothing', () => {
    expect(html).not.toMatch(/<script|<link|<iframe|\son[a-z]+=|@import/i);
    const addresses = [...html.matchAll(/(?:src|href)=["']([^"']+)["']|url\(["']?([^"')]+)/g)].map(
      (m) => m[1] ?? m[2]!,
    );
    expect(addresses.length).toBeGreaterThan(0);
    for (const address of addresses) expect(address.slice(0, 5)).toBe('data:');
  });

  test('carries its style and both faces', () => {
    expect(html).toContain('--ground: #1c6b5f');
    expect(html.match(/@font-face/g)).toHaveLength(2);
  });

  test('is the same to the last byte from the same written estimate', () => {
    expect(render()).toBe(html);
  });

  test('has one first heading, a language and a title', () => {
    expect(html.match(/<h1/g)).toHaveLength(1);
    expect(html).toMatch(/^<!doctype html><html lang="en-GB"/);
    expect(html).toContain('<title>What it would cost to heat Larch Rise: Estimate no. 12 of 25 November 2026</title>');
  });

  test.each([
    ['A4', 'size: 210mm 297mm'],
    ['Letter', 'size: 8.5in 11in'],
  ] as const)('%s is set by @page', (paper, rule) => {
    expect(render({}, paper)).toContain(rule);
  });
});

describe('the working', () => {
  const html = renderWorking(larchRiseEstimate(), settings);
  const text = textOf(html);
  test.each([
    'Every way of heating, side by side',
    'Month by month',
    'Twenty futures',
    'What went into it',
    'Sources',
    'Words in this paper',
    'The sums',
  ])('has the heading "%s"', (heading) => expect(html).toContain(`<h2>${heading}</h2>`));
  test.each([
    'The working behind the estimate for Larch Rise',
    'Estimate no. 12 of 25 November 2026',
    'Day and night from October, prices of 1 October 2026 to 31 December 2026',
    'model 0.1.0',
    'Invented table for tests, edition 1',
    'gas-2024.csv, row 12',
  ])('says "%s"', (sentence) => expect(text).toContain(sentence));
  test('leaves no mark of a table of values', () => {
    expect(text).not.toMatch(/from memory|common practice|no source|0192-larch/);
  });
});

describe('where a value comes from', () => {
  test.each([
    ['common practice, no source', 'our own assumption'],
    [
      'common practice, no source: usual price of one visit a year',
      'our own assumption: usual price of one visit a year',
    ],
    ['one standard deviation; a judgement, common practice, no source', 'one standard deviation; our own assumption'],
    ['BREDEM 2012, from memory', 'BREDEM 2012; not checked, so our own assumption'],
    ['CIBSE TM41 (from memory); SAP 2012', 'CIBSE TM41 (not checked, so our own assumption); SAP 2012'],
    ['Ofgem price cap, October to December 2026', 'Ofgem price cap, October to December 2026'],
  ])('%s', (kept, said) => expect(plainOrigin(kept)).toBe(said));
  test('in German', async () => {
    speak({ language: 'de-DE', currency: 'GBP' }, await catalogueOf('de-DE'));
    expect(plainOrigin('gängige Praxis, ohne Quelle')).toBe('unsere eigene Annahme');
    expect(plainOrigin('SAP 10.2 Appendix L, aus dem Gedächtnis')).toBe(
      'SAP 10.2 Appendix L; nicht nachgeschlagen, daher unsere eigene Annahme',
    );
  });
});

describe('the words in the working', () => {
  const working = (variant = {}) => renderWorking(larchRiseEstimate(variant), settings);
  const listed = (html: string) => [...html.matchAll(/<dt>([^<]*)<\/dt><dd>/g)].map((match) => match[1]!);
  test('are the terms that are met in it, each with its meaning', () => {
    const words = listed(working().split('<dl class="words">')[1]!.split('</dl>')[0]!);
    expect(words).toEqual(expect.arrayContaining(['kWh', 'Seasonal factor', 'Standing charge']));
    expect(words).not.toContain('Tariff');
    expect(words).toEqual(words.toSorted((a, b) => a.localeCompare(b, 'en-GB')));
  });
});

test('a heat pump that costs more is said on the first page', () => {
  expect(textOf(render({ electricityShare: 2 }))).toContain('So the heat pump costs about £650 a year more to run.');
});

test('every price of a way that is shown stands under what the paper rests on, with what was said of it', () => {
  const estimate = larchRiseEstimate();
  const { appraisal } = estimate;
  const stands = { on: '2026-11-20', said: 'shown for comparison' };
  const basis = { from: '2026-01-01', to: '2026-12-31', grade: 'assumed', origin: 'table', kind: 'assumed' } as const;
  const storage = {
    ...appraisal.systems.find(({ id }) => id === 'direct-electric')!,
    id: 'storage' as const,
    kind: 'storage',
    rates: [
      { name: 'Day', kWh: 1000, pencePerKWh: 31 },
      { name: 'Night', kWh: 9000, pencePerKWh: 15.2 },
    ],
  };
  const systems = appraisal.systems.filter(({ id }) => ['heat-pump', 'present', 'oil'].includes(id));
  const shown = renderLeaveBehind(
    {
      ...estimate,
      appraisal: {
        ...appraisal,
        leftOut: [],
        systems: [...systems, storage],
        prices: { ...appraisal.prices, oil: { ...basis, name: 'Oil', stands }, 'two-rate': { ...basis, name: 'Pair' } },
      },
    },
    settings,
  );
  const rests = textOf(shown.split('<h2>What this rests on</h2>')[1]!);
  expect(rests).toContain('Oil 8.4 p per kWh: assumed price. It is used as assumed, as confirmed on 20 November 2026.');
  expect(rests).toContain('“shown for comparison”');
  expect(rests).toContain('Electricity by day and night 15.2 p and 31.0 p per kWh: assumed price.');
});

test('without a present heating the cheapest other is named and nothing is said of today', () => {
  const text = textOf(render({ withoutPresent: true, withoutRecord: true }));
  expect(text).toContain('With an oil boiler it would be about £1,480.');
  expect(text).toContain('We had no bills of yours, so this is less sure.');
  expect(text).not.toContain('you have now');
});

test('a machine that takes its heat from the air has no ground loop to warn of', () => {
  expect(textOf(render({ source: 'air' }))).not.toContain('ground loop');
});

test('a written estimate is dated in its own zone', () => {
  const late = { ...larchRiseEstimate(), madeOn: '2026-06-30T23:30:00.000Z' };
  expect(textOf(renderLeaveBehind(late, settings))).toContain('Estimate no. 12 of 1 July 2026');
});

test('no name breaks out of the page', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ minLength: 1 }),
        fc.constantFrom('</style><script>alert(1)</script>', '"; } body{}', '\\', '*/'),
      ),
      (name) => {
        const html = render({ name });
        expect(html.match(/<\/style>/g)).toHaveLength(1);
        expect(html).not.toContain('<script');
        expect(html.match(/<main>/g)).toHaveLength(1);
      },
    ),
    { numRuns: 40 },
  );
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EstimateSummary } from '../../../src/desk/contract.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import { reference } from '../../../src/reference/index.ts';
import type { WalkInput } from '../../../src/screens/walk/page.ts';
import { walkPages } from '../../../src/screens/walk/pages.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { typed } from '../appraisal/make-household.ts';
import { larchRise, larchRiseHousehold, type Variant } from '../leave-behind/larch-rise.ts';

const estimate: EstimateSummary = {
  id: 'p1',
  number: 12,
  madeOn: '2026-11-25T14:30:00.000Z',
  note: '',
  heatPumpPence: 119_252,
  lowPence: 104_900,
  highPence: 139_500,
};

function walk(variant: Variant = {}, more: Partial<WalkInput> = {}) {
  const household = more.household ?? larchRiseHousehold(variant);
  const appraisal = more.appraisal ?? larchRise(variant);
  return walkPages({
    household,
    appraisal,
    lifetime: reckonLifetime({ household, appraisal, reference, draws: 100 }),
    series: [],
    estimates: [],
    settings: {
      installerName: 'Hill Heating',
      installerContact: '01234 567 890',
      theme: 'light',
      paper: 'A4',
      language: 'en-GB',
      country: 'GB',
      logo: '',
    },
    today: '2026-11-25',
    changed: false,
    changes: [
      { code: 'winter-cold', pence: 8500 },
      { code: 'electricity-up', pence: 20_200 },
    ],
    ...more,
  });
}
const page = (pages: ReturnType<typeof walk>, name: string) => pages.find((one) => one.name === name)!;

describe('the pages in their order', () => {
  test('eight pages, one idea each, and the years to come once price and grant are known', () => {
    expect(walk().map(({ name }) => name)).toEqual([
      'home',
      'heat',
      'source',
      'cost',
      'sure',
      'change',
      'watch',
      'next',
    ]);
  });

  test.each([
    ['home', 'Larch Rise: heating and hot water cost about £1,610 a year today.'],
    ['heat', 'Your home needs about 13,900 kWh of heat in a typical year.'],
    ['source', 'For every kWh of electricity you buy, the ground adds about 2.4 of heat.'],
    ['cost', 'Your heating and hot water would cost about £1,190 a year. Today they cost about £1,610.'],
    ['sure', 'In 18 futures out of 20 the heat pump costs less, in 2 it costs more.'],
    ['change', 'If electricity costs 5 p more per kWh, the year costs about £200 more.'],
    ['watch', 'Read the meter on the first of each month, and call us if it runs high.'],
    ['next', 'Nothing is promised yet. If you agree, we put these figures in writing.'],
  ])('%s says: %s', (name, sentence) => {
    expect(page(walk(), name).sentence).toBe(sentence);
  });

  test('the household’s name stands on every page', () => {
    for (const { sentence, foot, name } of walk({ name: 'Orchard End' })) {
      expect(`${sentence} ${foot}`, name).toContain('Orchard End');
    }
  });

  test('every page with a figure has a sum to open', () => {
    for (const { workings, name } of walk()) expect(workings.length, name).toBeGreaterThan(0);
  });

  test('the page on the source says that hot water, pumps and standby are in the factor', () => {
    expect(page(walk(), 'source').say).toMatch(
      /Hot water, pumps and standby are counted; for the rooms alone the factor is 3\.7/,
    );
  });
});

test('under a what-if nothing is said of today', () => {
  expect(page(walk({}, { changed: true }), 'cost').sentence).toBe(
    'Your heating and hot water would cost about £1,190 a year. With what you have now it would be about £1,610.',
  );
});

describe('a heat pump that costs more', () => {
  const dearer = walk({ electricityShare: 2 });
  test('is said as plainly', () => {
    expect(page(dearer, 'cost').say).toContain('That is about £650 a year more.');
    expect(page(dearer, 'cost').sentence).toContain('£2,260 a year. Today they cost about £1,610.');
    expect(page(dearer, 'sure').sentence).toBe('In all 20 futures out of 20 the heat pump costs more.');
  });
  test('and the installer is told not to hurry on', () => {
    expect(page(dearer, 'cost').notes[0]).toMatch(/costs more/);
  });
});

describe('what is missing is left out honestly', () => {
  test('no present heating: the first page says that there are no bills, the cost page names another', () => {
    const pages = walk({ withoutPresent: true, withoutRecord: true });
    expect(page(pages, 'home').sentence).toContain('we have no bills of yours yet');
    expect(page(pages, 'home').picture.kind).toBe('none');
    expect(page(pages, 'cost').sentence).not.toContain('Today');
    expect(page(pages, 'cost').sentence).toContain('With an oil boiler it would be about £1,480.');
  });
  test('no record: what is paid today is not claimed to be known', () => {
    const pages = walk({ withoutRecord: true });
    expect(page(pages, 'home').sentence).toBe(
      'Larch Rise: we have no bills of yours yet. A home like it pays about £1,610 a year.',
    );
    expect(page(pages, 'home').say).toContain('Nothing is known of this home yet');
    expect(page(pages, 'cost').sentence).not.toContain('Today');
  });
  test('no record: the heat is said to come from the home', () => {
    expect(page(walk({ withoutRecord: true }), 'heat').say).toContain('not from bills');
  });
  test('nothing to compare with: the page on sureness claims nothing', () => {
    const appraisal = { ...larchRise(), systems: larchRise().systems.slice(0, 1), versus: [] };
    const pages = walk({}, { appraisal });
    expect(page(pages, 'sure').picture.kind).toBe('none');
    expect(page(pages, 'cost').sentence).toBe('Your heating and hot water would cost about £1,190 a year.');
  });
  test('no change could be reckoned', () => {
    expect(page(walk({}, { changes: [] }), 'change').picture.kind).toBe('none');
  });
});

describe('what the next years may bring', () => {
  const purchase = { heatPumpGBP: typed(15_000), grantGBP: typed(7500), replacementGBP: typed(3000) };
  const bought = walk({}, { household: { ...larchRiseHousehold(), purchase } });
  test('with a purchase the page speaks of paying it back', () => {
    expect(page(bought, 'years').sentence).toMatch(/^The heat pump costs more to put in\. After about \d+ years/);
    expect(page(bought, 'years').workings.map(({ title }) => sayTold(title))).toEqual([
      expect.stringMatching(/^Saved over the years/),
      'Paid in all with the heat pump',
      'Paid in all with the other',
      expect.stringMatching(/^Years until the purchase/),
      expect.stringMatching(/^Years until it/),
      'Instalment a month',
      'Instalment and running together, by the month',
      expect.stringMatching(/^Worth today/),
      'What money later is worth',
    ]);
  });
  test.each([
    ['nothing', {}],
    ['no grant', { heatPumpGBP: typed(15_000) }],
    ['no price', { grantGBP: typed(7500) }],
  ])('with %s typed they are no page', (_, purchase) => {
    const pages = walk({}, { household: { ...larchRiseHousehold(), purchase } });
    expect(pages.map(({ name }) => name)).not.toContain('years');
  });
  test('payback with its range and the instalment stand on it; it is no advice', () => {
    const { say } = page(bought, 'years');
    expect(say).toMatch(/for 8 in 10 homes like yours\..*not advice\. Nobody knows the prices/);
    expect(say).toMatch(/It could be \d+ years/);
    // 15,000 less 7,500 over 120 months.
    expect(say).toContain(
      'In instalments over 10 years, without interest, it is £63 a month; with running it £160, against £130 for',
    );
  });
  test('nothing to compare with: the page is left out', () => {
    const appraisal = { ...larchRise(), systems: larchRise().systems.slice(0, 1), versus: [] };
    expect(walk({}, { appraisal }).map(({ name }) => name)).not.toContain('years');
  });
});

test('the last page names the written estimate once it is kept', () => {
  const next = page(walk({}, { estimates: [estimate] }), 'next');
  expect(next.sentence).toBe('We have put it in writing: about £1,190 a year, promise 12 of 25 November 2026.');
  expect(next.say).toContain('between £1,050 and £1,400');
});

test('the watch page calls at the level that the paper and the letter have', () => {
  const { picture } = page(walk(), 'watch');
  if (picture.kind !== 'watch') throw new Error('a table is expected');
  expect(picture.rows.map(({ month }) => month)).toEqual([
    'October',
    'November',
    'December',
    'January',
    'February',
    'March',
  ]);
  for (const row of picture.rows) expect(row.callAbove).toBeGreaterThan(row.units);
});

test('no sentence says NaN, undefined or minus nothing, whatever the prices', () => {
  fc.assert(
    fc.property(
      fc.record({
        electricityShare: fc.double({ min: 0, max: 8, noNaN: true }),
        withoutPresent: fc.boolean(),
        withoutRecord: fc.boolean(),
        source: fc.constantFrom('ground' as const, 'air' as const),
      }),
      (variant) => {
        for (const { sentence, say, foot, notes } of walk(variant)) {
          expect([sentence, say, foot, ...notes].join(' ')).not.toMatch(/NaN|undefined|Infinity|−£0|null/);
          expect(sentence.length).toBeLessThanOrEqual(120);
        }
      },
    ),
    { numRuns: 60 },
  );
});

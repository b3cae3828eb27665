import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EstimateSummary } from '../../../src/desk/contract.ts';
import { reckonLifetime } from '../../../src/model/lifetime/reckon-lifetime.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import { reference } from '../../../src/reference/index.ts';
import type { WalkInput } from '../../../src/screens/walk/page.ts';
import { walkPages } from '../../../src/screens/walk/pages.ts';
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
  grade: 'estimated',
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
  test('six pages, one question each', () => {
    expect(walk().map(({ name }) => name)).toEqual(['home', 'cost', 'source', 'change', 'living', 'next']);
  });

  test.each([
    ['home', 'Larch Rise: heating and hot water cost about £1,610 a year today.'],
    ['cost', 'Your heating and hot water would cost about £1,190 a year. Today they cost about £1,610.'],
    ['source', 'For every kWh of electricity you buy, the ground adds about 2.4 kWh of heat.'],
    ['change', 'If electricity costs 5 p more per kWh, the year costs about £200 more.'],
    ['living', 'Living with it: steady warmth, and one look at the meter each month.'],
    ['next', 'If you agree, we put this in writing: about £1,190 a year.'],
  ])('%s says: %s', (name, sentence) => {
    expect(page(walk(), name).sentence).toBe(sentence);
  });

  test.each([
    ['home', 'Any heating must give it about 13,900 kWh of heat, 2,300 of it for hot water.'],
    ['home', 'Does that sound like your bills?'],
    ['cost', 'In 18 futures out of 20 the heat pump costs less, in 2 it costs more.'],
    ['change', 'You choose your tariff'],
    ['next', 'This is an estimate, not a guarantee: about 2 in 10 homes like yours will fall outside its range.'],
  ])('%s says in passing: %s', (name, sentence) => {
    expect(page(walk(), name).say).toContain(sentence);
  });

  test('no page is without a picture', () => {
    for (const { picture, name } of walk()) expect(picture.kind, name).not.toBe('none');
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
    expect(page(dearer, 'cost').say).toContain('In all 20 futures the heat pump costs more.');
  });
  test('and the installer is told not to hurry on', () => {
    expect(page(dearer, 'cost').notes[0]).toMatch(/costs more/);
  });
});

describe('what is missing is left out honestly', () => {
  test('no present heating: the first page says that there are no bills, the cost page names another', () => {
    const pages = walk({ withoutPresent: true, withoutRecord: true });
    expect(page(pages, 'home').sentence).toContain('we have no bills of yours yet');
    expect(page(pages, 'home').picture).toMatchObject({ kind: 'months', parts: { what: 'heat' } });
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
  test('nothing to compare with: no futures are counted', () => {
    const appraisal = { ...larchRise(), systems: larchRise().systems.slice(0, 1), versus: [] };
    const pages = walk({}, { appraisal });
    expect(page(pages, 'cost').picture).toEqual({ kind: 'cost', beside: null });
    expect(page(pages, 'cost').sentence).toBe('Your heating and hot water would cost about £1,190 a year.');
  });
  test('no change could be reckoned', () => {
    expect(page(walk({}, { changes: [] }), 'change').picture.kind).toBe('none');
  });
});

describe('what comes next', () => {
  const steps = (purchase: Household['purchase']) => {
    const { picture } = page(walk({}, { household: { ...larchRiseHousehold(), purchase } }), 'next');
    if (picture.kind !== 'next') throw new Error('steps are expected');
    return picture;
  };
  const bought = steps({ heatPumpGBP: typed(15_000), grantGBP: typed(7500), replacementGBP: typed(3000) });
  test('price, grant and payback once they are typed, with the years beside them', () => {
    expect(bought.steps[0]).toBe(
      'Installation price £15,000, less the grant of £7,500: you pay £7,500. The grant is not certain.',
    );
    expect(bought.steps[1]).toMatch(
      /^The heat pump costs more to install\. It might pay that back after about \d+ years\. Nobody knows the prices/,
    );
    expect(bought.years).not.toBeNull();
  });
  test.each([
    ['no price', { grantGBP: typed(7500) }, 'We send you a quotation'],
    ['no grant', { heatPumpGBP: typed(15_000) }, 'Installation price £15,000. We tell you which grant'],
  ])('with %s nothing is said of payback', (_, purchase, first) => {
    const { steps: said, years } = steps(purchase);
    expect(said[0]).toContain(first);
    expect(said.join(' ')).not.toMatch(/paid that back|Over \d+ years/);
    expect(years).toBeNull();
  });
  test('it ends with whom to ask', () => {
    expect(bought.steps.at(-1)).toBe('Questions? Ask Hill Heating, 01234 567 890.');
  });
});

test('the last page names the written estimate once it is kept', () => {
  const next = page(walk({}, { estimates: [estimate] }), 'next');
  expect(next.sentence).toBe('It is in writing: about £1,190 a year, estimate no. 12 of 25 November 2026.');
  expect(next.say).toContain('between £1,050 and £1,400');
});

test('the page on living with it calls at the level that the paper and the letter have', () => {
  const { picture } = page(walk(), 'living');
  if (picture.kind !== 'living') throw new Error('a table is expected');
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

test('several offers stand beside the cost, but not under a what-if, which is of one of them alone', () => {
  const household = larchRiseHousehold();
  const { machine, purchase } = household;
  const offers = {
    offer: { id: 'offer-1', name: 'Ground' },
    otherOffers: [{ id: 'offer-2', name: 'Air', machine: { ...machine, source: 'air' as const }, purchase }],
  };
  const beside = (changed: boolean) =>
    page(walk({}, { household: { ...household, ...offers }, changed }), 'cost').picture;
  expect(beside(false)).toEqual({ kind: 'cost', beside: 'offers' });
  expect(beside(true)).toMatchObject({ kind: 'cost', beside: { against: 'present' } });
});

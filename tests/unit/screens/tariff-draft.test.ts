import { describe, expect, test } from 'vitest';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import { Tariff } from '../../../src/model/shapes/tariff.ts';
import { findTariffFaults } from '../../../src/model/tariff/check-tariff.ts';
import {
  bandsOf,
  draftOf,
  finishDraft,
  NIGHT,
  newDraft,
  patternOf,
  type TariffDraft,
  tariffFile,
} from '../../../src/screens/prices/tariff-draft.ts';
import { tariffInShort } from '../../../src/screens/prices/tariff-in-short.ts';
import { dropTariff, pickTariff, placeTariff } from '../../../src/screens/prices/use-tariffs.ts';
import { fullTariff } from '../tariff/tariffs.ts';

const twoRate: TariffDraft = {
  ...newDraft('electricity', '2026-11-25', 0.05),
  id: 'electricity-1',
  name: 'Night and day',
  origin: 'bill of October 2026',
  versions: [
    {
      from: '2026-10-01',
      standingPencePerDay: 54.8,
      vatRate: 0.05,
      vatIncluded: true,
      bands: [
        { name: 'day', pencePerKWh: 30.1, windows: null },
        { name: 'night', pencePerKWh: 14.2, windows: [NIGHT] },
      ],
    },
  ],
};
const finish = (draft: TariffDraft) => {
  const finished = finishDraft(draft);
  if (!('tariff' in finished)) throw new Error(finished.missing.join(' '));
  return finished.tariff;
};

describe('a tariff while it is typed', () => {
  test('a finished draft fits the schema, has no faults, and comes back as the same draft', () => {
    const tariff = finish(twoRate);
    expect(Tariff.parse(tariff)).toEqual(tariff);
    expect(findTariffFaults(tariff)).toEqual([]);
    expect(draftOf(tariff)).toEqual(twoRate);
  });
  test('an empty draft says everything that is missing', () => {
    const finished = finishDraft(newDraft('gas', '2026-11-25', 0.05));
    expect('missing' in finished && finished.missing).toEqual([
      'Give the tariff a name, as it stands on the bill.',
      'Say where the prices come from, such as the bill of March.',
      'The standing charge is missing.',
      'The price for all hours is missing.',
    ]);
  });
  test('midnight as an end is the end of the day', () => {
    const late = { from: '22:00', to: '00:00', days: [], months: [] };
    const version = {
      ...twoRate.versions[0]!,
      bands: [twoRate.versions[0]!.bands[0]!, { name: 'late', pencePerKWh: 9, windows: [late] }],
    };
    expect(finish({ ...twoRate, versions: [version] }).versions[0]!.bands[1]!.times).toEqual([
      { from: '22:00', to: '24:00' },
    ]);
  });
  test('all seven days and all twelve months are the same as none named', () => {
    const all = {
      ...NIGHT,
      days: ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const,
      months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    };
    const version = {
      ...twoRate.versions[0]!,
      bands: [twoRate.versions[0]!.bands[0]!, { name: 'night', pencePerKWh: 9, windows: [all] }],
    };
    expect(finish({ ...twoRate, versions: [version] }).versions[0]!.bands[1]!.times).toEqual([
      { from: '00:30', to: '07:30' },
    ]);
  });
  test.each(['flat', 'two-rate', 'ten-hours', 'months', 'bands'] as const)('the pattern %s is known again', (pattern) =>
    expect(patternOf({ ...twoRate.versions[0]!, bands: bandsOf(pattern) })).toBe(pattern),
  );
  test.each(['car', 'peak', 'network'] as const)(
    'the empty form %s asks for its times before it is a tariff',
    (pattern) => {
      const bands = bandsOf(pattern).map((band) => ({ ...band, pencePerKWh: 20 }));
      const typed = { ...twoRate, versions: [{ ...twoRate.versions[0]!, pattern, bands }] };
      expect(patternOf(typed.versions[0]!)).toBe(pattern);
      const missing = bands
        .filter(({ windows }) => windows)
        .map(({ name }) => `The times of ${name} are not complete.`);
      expect(finishDraft(typed)).toEqual({ missing });
    },
  );
  test('by month, the winter price holds for whole days of its months', () => {
    const bands = bandsOf('months').map((band) => ({ ...band, pencePerKWh: 20 }));
    const version = { ...twoRate.versions[0]!, pattern: 'months' as const, bands };
    expect(finish({ ...twoRate, versions: [version] }).versions[0]!.bands[1]!.times).toEqual([
      { from: '00:00', to: '24:00', months: [1, 2, 3, 10, 11, 12] },
    ]);
  });
  test('a pattern keeps the prices already typed', () => {
    const bands = bandsOf('two-rate', bandsOf('flat', [{ name: 'x', pencePerKWh: 26.3, windows: null }]));
    expect(bands.map((band) => band.pencePerKWh)).toEqual([26.3, undefined]);
  });
});

describe('tariffs of a household', () => {
  const tariff = finish(twoRate);
  const home = placeTariff(tariff, 'electricityTariffId')(emptyHousehold('h', 'Larch Rise'));
  test('a placed tariff is used', () => expect(home.prices.electricityTariffId).toBe('electricity-1'));
  test('placed again it stands once', () =>
    expect(placeTariff(tariff, 'storageTariffId')(home).tariffs).toHaveLength(1));
  test('taken out, no use of it is left', () => {
    const without = dropTariff(tariff.id)(placeTariff(tariff, 'storageTariffId')(home));
    expect([without.tariffs, without.prices]).toEqual([[], {}]);
  });
  test('the built-in price is used when none is picked', () =>
    expect(pickTariff(undefined, 'electricityTariffId')(home).prices).toEqual({}));
  test('a new one gets a free id when it is placed, whatever was placed while it was typed', () => {
    const other = placeTariff({ ...tariff, id: 'electricity-3', name: 'other' }, 'storageTariffId')(home);
    const both = placeTariff({ ...tariff, id: '' }, 'electricityTariffId')(other);
    expect(both.tariffs.map(({ id }) => id)).toEqual(['electricity-1', 'electricity-3', 'electricity-4']);
    expect(both.prices).toEqual({ electricityTariffId: 'electricity-4', storageTariffId: 'electricity-3' });
  });
});

describe('a tariff with everything', () => {
  test('comes back from the editor as it went in', () => {
    expect(finish(draftOf(fullTariff))).toEqual(fullTariff);
  });
  test('comes back from its file as it went out', () => {
    const { fileName, base64 } = tariffFile({ ...fullTariff, name: 'Night & day, ’26' });
    expect(fileName).toBe('tariff-Night-day-26.json');
    const text = new TextDecoder().decode(Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)));
    expect(Tariff.parse(JSON.parse(text))).toEqual({ ...fullTariff, name: 'Night & day, ’26' });
  });
  test('a standing charge of £15.30 a month is 1,530 p', () => {
    const version = { ...twoRate.versions[0]!, standingBy: 'month' as const, standingPounds: 15.3 };
    const tariff = finish({ ...twoRate, versions: [version] });
    expect(tariff.versions[0]).toMatchObject({ standingPencePerDay: 0, standingPencePerMonth: 1530 });
    expect(tariffInShort(tariff.versions[0]!)).toMatch(/standing charge £15\.30 a month\.$/);
  });
  test.each([
    // £48.30 ÷ 3 months, and 150.50 ÷ 12.
    ['quarter', 48.3, 1610],
    ['year', 150.5, 1254.1667],
  ] as const)('a standing charge by the %s of %f is %f p a month', (standingBy, standingPounds, pence) => {
    const tariff = finish({ ...twoRate, versions: [{ ...twoRate.versions[0]!, standingBy, standingPounds }] });
    expect(tariff.versions[0]).toMatchObject({ standingPencePerDay: 0, standingPencePerMonth: pence });
  });
  test('steps begun and not finished are asked for', () => {
    const [day, night] = twoRate.versions[0]!.bands;
    const steps = [{ upToKWh: 2, pencePerKWh: undefined }];
    const version = { ...twoRate.versions[0]!, bands: [{ ...day!, blocks: { per: 'day' as const, steps } }, night!] };
    const finished = finishDraft({ ...twoRate, versions: [version] });
    expect('missing' in finished && finished.missing).toEqual(['The steps of day are not complete.']);
  });
});

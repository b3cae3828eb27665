import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { lineOfPath } from '../../../src/intake/tariff/line-of-path.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { fullTariff } from '../tariff/tariffs.ts';

const BRITISH = { zone: 'Europe/London', money: '£' } as const;
const GERMAN = { zone: 'Europe/Berlin', money: '€' } as const;

const read = (name: string) =>
  readTariff(name, new Uint8Array(readFileSync(new URL(`../../corpus/${name}`, import.meta.url))), BRITISH);

describe('tariff files', () => {
  test('our CSV with two versions', () => {
    const { tariff, remarks } = read('tariff-two-rates.csv');
    expect(remarks).toEqual([]);
    expect(tariff).toMatchObject({
      name: 'Night saver',
      fuel: 'electricity',
      origin: { code: 'from-file', data: { file: 'tariff-two-rates.csv' } },
    });
    const night = [{ from: '00:30', to: '05:30' }];
    const vat = { rate: 0.05, included: true };
    expect(tariff?.versions).toEqual([
      {
        from: '2026-10-01',
        standingPencePerDay: 57.2,
        vat,
        bands: [
          { name: 'night', pencePerKWh: 9.5, times: night },
          { name: 'day', pencePerKWh: 28.1, times: 'rest' },
        ],
      },
      {
        from: '2027-01-01',
        standingPencePerDay: 58,
        vat,
        bands: [
          { name: 'night', pencePerKWh: 9.9, times: night },
          { name: 'day', pencePerKWh: 29, times: 'rest' },
        ],
      },
    ]);
  });
  test('seasons, weekdays and a decimal comma', () => {
    const { tariff, remarks } = read('tariff-seasons.csv');
    expect(remarks).toEqual([]);
    expect(tariff?.versions[0]).toMatchObject({ standingPencePerDay: 57.2, vat: { rate: 0.05, included: false } });
    const days = ['mon', 'tue', 'wed', 'thu', 'fri'];
    expect(tariff?.versions[0]?.bands).toEqual([
      {
        name: 'peak',
        pencePerKWh: 41.5,
        times: [
          { months: [1, 2, 3, 10, 11, 12], days, from: '16:00', to: '19:00' },
          { months: [4, 5, 6, 7, 8, 9], days, from: '17:00', to: '19:00' },
        ],
      },
      { name: 'rest', pencePerKWh: 24, times: 'rest' },
    ]);
  });
  test('JSON as a tariff and as its versions', () => {
    expect(read('tariff.json')).toMatchObject({ tariff: { fuel: 'gas', name: 'Plain' }, remarks: [] });
    const { tariff, remarks } = read('tariff-versions.json');
    expect(tariff?.versions[0]?.bands[0]?.pencePerKWh).toBe(26.32);
    expect(remarks.map((r) => r.code)).toEqual(['tariff-fuel-guessed']);
  });
  test.each([
    [
      'tariff-broken.json',
      [/^Line 4 of tariff-broken\.json breaks the rules of JSON at “"fuel": "gas"” or just before it/],
    ],
    [
      'tariff-absurd.json',
      [
        /^Line 1 of tariff-absurd\.json: fuel is "steam"; it must be one of “electricity”, “gas”\. Correct the file\.$/,
        /versions\.0\.bands\.0\.pencePerKWh is "9000"; it must be at most 500\./,
      ],
    ],
    ['tariff-no-columns.csv', [/no column "p\/kWh"/]],
    [
      'tariff-wrong-row.csv',
      [
        /^Line 5 of tariff-wrong-row\.csv: column "to" is "25:30"; a time such as 05:30 is expected/,
        /^Line 6 .*column "pence per kWh" is "2x8\.1"; a number/,
        /^Line 7 .*column "days" is "caturday"/,
      ],
    ],
    ['refused-picture.csv', [/is a picture/]],
    ['refused-empty.csv', [/is empty/]],
  ])('%s is refused in words', (name, sentences) => {
    const { tariff, remarks } = read(name);
    expect(tariff).toBeNull();
    const refusals = remarks.filter((r) => r.weight === 'refusal').map(remarkSentence);
    expect(refusals.length).toBe(sentences.length);
    sentences.forEach((sentence, i) => {
      expect(refusals[i]).toMatch(sentence);
    });
  });
});

describe('what a tariff file counts its prices in', () => {
  const bands = (
    heads: string,
    {
      cells = '0.095|0.285',
      standing = 'standing,57.2',
      vat = '5 % included',
      from = '2026-10-01',
      home = BRITISH as Parameters<typeof readTariff>[2],
    } = {},
  ) => {
    const [night, day] = cells.split('|');
    const lines = ['fuel,electricity', `valid from,${from}`, standing, `vat,${vat}`, `band,from,to,${heads}`];
    const text = [...lines, `night,00:30,05:30,${night}`, `day,rest,,${day}`].join('\n');
    const { tariff, remarks } = readTariff('prices.csv', new TextEncoder().encode(text), home);
    const [version] = tariff?.versions ?? [];
    return {
      prices: version?.bands.map(({ pencePerKWh }) => pencePerKWh),
      version,
      codes: remarks.map(({ code, weight }) => `${weight}: ${code}`),
    };
  };

  test.each<[string, string, number[]]>([
    ['pence per kWh', '9.5|28.5', [9.5, 28.5]],
    ['unit rate (£/kWh)', '0.095|0.285', [9.5, 28.5]],
    ['price GBP per MWh', '95|285', [9.5, 28.5]],
    ['p/kWh inc VAT', '9.5|28.5', [9.5, 28.5]],
  ])('of a British home: %s', (heads, cells, prices) => {
    expect(bands(heads, { cells })).toMatchObject({ prices, codes: [] });
  });
  test.each<[string, string, number[]]>([
    ['ct/kWh', '22.5|31', [22.5, 31]],
    ['Preis (EUR/kWh)', '0.225|0.31', [22.5, 31]],
    ['EUR/MWh', '225|310', [22.5, 31]],
    ['pence per kWh', '22.5|31', [22.5, 31]],
  ])('of a German home: %s', (heads, cells, prices) => {
    expect(bands(heads, { cells, home: GERMAN })).toMatchObject({ prices, codes: [] });
  });
  test.each<[string, string]>([
    ['price', 'question: tariff-unit-guessed'],
    ['price (EUR/kWh)', 'refusal: tariff-other-money'],
    ['ct/kWh', 'refusal: tariff-other-money'],
    ['øre/kWh', 'refusal: tariff-other-money'],
    ['export p/kWh', 'refusal: tariff-sent-out'],
    ['weekday p/kWh,weekend p/kWh', 'refusal: tariff-prices-beside'],
  ])('%s is not taken silently', (heads, code) => {
    expect(bands(heads, { cells: '9.5,12|28.5,30' }).codes).toEqual([code]);
  });
  test('of what is sold and bought, and of prices with and without VAT, the one that is paid is taken', () => {
    const cells = '4,9.5|4,28.5';
    expect(bands('export p/kWh,import p/kWh', { cells })).toMatchObject({ prices: [9.5, 28.5], codes: [] });
    expect(bands('p/kWh exc VAT,p/kWh inc VAT', { cells })).toMatchObject({ prices: [9.5, 28.5], codes: [] });
  });
  test.each<[string, number | undefined]>([
    ['standing,57.2', 57.2],
    ['standing charge (£/day),0.572', 57.2],
    ['standing,£0.572 a day', 57.2],
    ['standing_charge_p_per_day,57.2', 57.2],
    ['standing charge per month,17.40', undefined],
    ['standing,£208 a year', undefined],
  ])('%s', (standing, pence) => {
    const { version, codes } = bands('pence per kWh', { standing });
    expect(version?.standingPencePerDay).toBe(pence);
    expect(codes).toEqual(pence === undefined ? ['refusal: tariff-row'] : []);
  });
  test('a column that is not known is named, and a charge without a unit below prices in pounds is refused', () => {
    expect(bands('p/kWh,up to kWh', { cells: '9.5,1000|28.5,' }).codes).toEqual(['note: tariff-columns-left-out']);
    const below = (charge: string) => {
      const lines = ['fuel,electricity', 'valid from,2026-10-01', 'vat,5 % included', 'band,from,to,£/kWh'];
      const text = [...lines, `standing charge,,,${charge}`, 'all,rest,,0.285'].join('\n');
      return readTariff('prices.csv', new TextEncoder().encode(text), BRITISH);
    };
    expect(below('0.53').remarks).toMatchObject([{ code: 'tariff-row', row: 5 }]);
    expect(below('£0.53').tariff?.versions[0]?.standingPencePerDay).toBe(53);
  });
  test.each<[string, number | undefined]>([
    ['20 included', 0.2],
    ['0.05 included', 0.05],
    ['17.5 % not included', 0.175],
    ['included', undefined],
  ])('VAT %s', (vat, rate) => {
    expect(bands('pence per kWh', { vat }).version?.vat.rate).toBe(rate);
  });
  test.each<[string, Parameters<typeof readTariff>[2], string, string[]]>([
    ['03/04/2026', BRITISH, '2026-04-03', ['question: tariff-date-asked']],
    ['03/04/2026', { zone: 'America/Chicago' }, '2026-03-04', ['question: tariff-date-asked']],
    ['13/04/2026', BRITISH, '2026-04-13', []],
    ['04/13/2026', BRITISH, '2026-04-13', []],
    ['03.04.2026', GERMAN, '2026-04-03', []],
    ['03.04.2026', { zone: 'America/Chicago' }, '2026-04-03', []],
    ['04/04/2026', BRITISH, '2026-04-04', []],
  ])('from %s', (from, home, day, codes) => {
    expect(bands('pence per kWh', { from, home })).toMatchObject({ version: { from: day }, codes });
  });
});

test.each([
  ['01.03.2026', GERMAN, []],
  ['01/03/2026', GERMAN, ['tariff-date-asked']],
])('of prices by the half-hour %s says its order by its points', (day, home, asked) => {
  const rows = Array.from({ length: 24 }, (_, i) => `${day} ${String(i).padStart(2, '0')}:00,${10 + (i % 7)}`);
  const text = ['Zeit,Preis (ct/kWh)', ...rows].join('\n');
  const { tariff, remarks } = readTariff('prices.csv', new TextEncoder().encode(text), home);
  expect(tariff?.versions[0]?.series?.days.map(({ date }) => date)).toEqual(['2026-03-01']);
  expect(remarks.map(({ code }) => code)).toEqual([...asked, 'tariff-vat-guessed', 'tariff-wrong']);
});

describe('what a file leaves open is asked in the money and tax of the home', () => {
  const said = (text: string, home: Parameters<typeof readTariff>[2]) =>
    readTariff('prices.csv', new TextEncoder().encode(text), home).remarks.map(remarkSentence).join(' ');
  const rows = 'valid from,2026-10-01\nband,from,to,price\nall,rest,,28.5';
  test.each([
    [BRITISH, 0.05, 'as p per kWh', 'including 5 % VAT', 'charge in p a day'],
    [GERMAN, 0.19, 'as ct per kWh', 'including 19 % VAT', 'charge in ct a day'],
  ])('%o', (home, rate, ...words) => {
    for (const word of words) expect(said(rows, home)).toContain(word);
    const { tariff } = readTariff('prices.csv', new TextEncoder().encode(rows), home);
    expect(tariff?.versions[0]?.vat).toEqual({ rate, included: true });
    expect(said('band,from,to\nall,rest,', home)).toContain(home === GERMAN ? '"ct/kWh"' : '"p/kWh"');
  });
  test('more prices than a tariff holds are counted, with what to do', () => {
    const bands = Array.from(
      { length: 26 },
      (_, i) => `b${i},${i >> 1}:${i % 2 ? '30' : '00'},${(i + 1) >> 1}:${i % 2 ? '00' : '30'},${i + 10}`,
    );
    const text = [
      'fuel,electricity',
      'standing,50',
      'vat,5 % included',
      'valid from,2026-10-01',
      'band,from,to,p/kWh',
      ...bands,
    ];
    expect(said(text.join('\n'), BRITISH)).toBe(
      'prices.csv has 26 prices, and at most 24 are read. Give all hours of one price the same name in the column “band”.',
    );
    expect(
      said('fuel,electricity\nstanding,50\nvat,5 % included\nvalid from,2026-10-01\nband,p/kWh\nall,900', BRITISH),
    ).toBe('prices.csv: price is "900"; it must be at most 500. Correct the file.');
  });
});

test.each([
  ['Date,Time,Price inc VAT (p/kWh)', (day: string, at: string) => `${day},${at}`],
  ['Date,From,To,Price inc VAT (p/kWh)', (day: string, at: string) => `${day},${at},${at}`],
])('prices whose day and time stand apart: %s', (heads, of) => {
  const rows = Array.from({ length: 96 }, (_, i) => {
    const at = `${String((i % 48) >> 1).padStart(2, '0')}:${i % 2 ? '30' : '00'}`;
    return `${of(`${13 + Math.floor(i / 48)}/03/2026`, at)},${10 + (i % 7)}`;
  });
  const { tariff } = readTariff('prices.csv', new TextEncoder().encode([heads, ...rows].join('\n')), BRITISH);
  const days = tariff?.versions[0]?.series?.days;
  expect(days?.map(({ date, pencePerKWh }) => [date, pencePerKWh.length])).toEqual([
    ['2026-03-13', 48],
    ['2026-03-14', 48],
  ]);
  expect(days![1]!.pencePerKWh[3]).toBe(10 + (51 % 7));
});

describe('what is wrong in a JSON tariff', () => {
  test('a field that may be of two kinds names both', () => {
    const [first, ...others] = fullTariff.versions;
    const bands = first!.bands.map((band) => ({ ...band, times: 5 }));
    const text = JSON.stringify({ ...fullTariff, versions: [{ ...first, bands }, ...others] });
    const { tariff, remarks } = readTariff('times.json', new TextEncoder().encode(text), BRITISH);
    expect(tariff).toBeNull();
    expect(remarkSentence(remarks[0]!)).toMatch(/versions\.0\.bands\.0\.times is "?5"?; it must be “rest” or a list\./);
  });
});

describe('the line of what is wrong in a JSON tariff', () => {
  const laid = JSON.stringify(fullTariff, null, 2);
  const lines = laid.split('\n');
  const lineWith = (sign: string, which = 0) => lines.flatMap((line, i) => (line.includes(sign) ? [i + 1] : []))[which];
  test.each<[string, (string | number)[], number | undefined]>([
    ['a field', ['grade'], lineWith('"grade"')],
    ['a group', ['versions', 0, 'vat'], lineWith('"vat"')],
    ['a band', ['versions', 0, 'bands', 1, 'name'], lineWith('"rest days"')],
    ['deep down', ['versions', 0, 'bands', 2, 'blocks', 'steps', 1, 'upToKWh'], lineWith('"upToKWh"', 1)],
    ['a later version', ['versions', 1, 'from'], lineWith('"2026-06-01"')],
    ['what is not there', ['versions', 0, 'vat', 'nothing'], lineWith('"vat"')],
    ['nothing', [], 1],
  ])('%s', (_, path, line) => expect(lineOfPath(laid, path)).toBe(line));

  test('every value of any JSON begins on its own line', () => {
    const paths = (of: unknown, path: (string | number)[]): (string | number)[][] =>
      of !== null && typeof of === 'object'
        ? [
            path,
            ...Object.entries(of).flatMap(([key, inner]) =>
              paths(inner, [...path, Array.isArray(of) ? Number(key) : key]),
            ),
          ]
        : [path];
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), fc.integer({ min: 1, max: 4 }), (value, indent) => {
        const text = JSON.stringify(value, null, indent);
        const opening = text.split('\n').flatMap((line, i) => (/^\s*[\]}],?$/.test(line) ? [] : [i + 1]));
        expect(paths(JSON.parse(text), []).map((path) => lineOfPath(text, path))).toEqual(opening);
      }),
    );
  });
});

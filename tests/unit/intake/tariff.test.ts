import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { lineOfPath } from '../../../src/intake/tariff/line-of-path.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { fullTariff } from '../tariff/tariffs.ts';

const read = (name: string) =>
  readTariff(name, new Uint8Array(readFileSync(new URL(`../../corpus/${name}`, import.meta.url))));

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
    ['tariff-no-columns.csv', [/no column "pence per kWh"/]],
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

describe('what is wrong in a JSON tariff', () => {
  test('a field that may be of two kinds names both', () => {
    const [first, ...others] = fullTariff.versions;
    const bands = first!.bands.map((band) => ({ ...band, times: 5 }));
    const text = JSON.stringify({ ...fullTariff, versions: [{ ...first, bands }, ...others] });
    const { tariff, remarks } = readTariff('times.json', new TextEncoder().encode(text));
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

/** Every question about a file has an answer that fits in the window and on the command line, and with it the file can be kept. */
import { describe, expect, test } from 'vitest';
import { readReckonOptions } from '../../../src/host/reckon-options.ts';
import type { IntakePreview } from '../../../src/intake/intake.ts';
import { REMARK_CODES } from '../../../src/intake/terms/remark-codes.ts';
import type { Remark } from '../../../src/model/shapes/evidence.ts';
import { answerSentence, optionsOf } from '../../../src/words/answers.ts';
import { german } from '../../../src/words/german/german.ts';
import { answersTo } from '../../../src/words/remark-answers.ts';
import { speak } from '../../../src/words/say.ts';
import { previewOf } from '../intake/read-text.ts';

const day = (i: number, first = '2026-01-01') =>
  new Date(Date.parse(first) + i * 86_400_000).toISOString().slice(0, 10);
const hour = (i: number) =>
  new Date(Date.parse('2025-06-01') + i * 3_600_000).toISOString().slice(0, 16).replace('T', ' ');
const days = (heading: string, value: (i: number) => number | string = (i) => 9 + ((i * 5) % 7), count = 40) =>
  [`Date,${heading}`, ...Array.from({ length: count }, (_, i) => `${day(i)},${value(i)}`)].join('\n');
const hours = (
  heading: string,
  value: (i: number) => number | string = (i) => (1 + ((i * 5) % 7)) / 10,
  count = 14 * 24,
) => [`Time,${heading}`, ...Array.from({ length: count }, (_, i) => `${hour(i)},${value(i)}`)].join('\n');
const months = (heading: string, value: (i: number) => number | string) =>
  [
    `From,To,${heading}`,
    ...Array.from({ length: 6 }, (_, i) => `2025-0${i + 1}-01,2025-0${i + 2}-01,${value(i)}`),
  ].join('\n');
const both = (i: number) => `${9 + ((i * 5) % 7)},${40 + ((i * 3) % 11)}`;

/** What is asked, of which file, and whose answers have to be among those in the window. */
const CASES: [code: string, text: string, labels: readonly string[], fileName?: string][] = [
  [
    'amount-asked',
    days('Oil delivered,Amount', (i) => `,${500 + i}`, 4).replaceAll(/-0(\d)-0(\d),/g, '-0$2-0$1,'),
    ['What the home used', 'Do not use it'],
  ],
  [
    'carrier-guessed',
    days('kWh used'),
    ['electricity', 'gas', 'heat', 'The heat pump alone', 'All that is made at home', 'Do not use it'],
  ],
  [
    'direction-asked',
    days('kWh'),
    ['Bought', 'Sent out', 'The heat pump alone', 'Do not use it'],
    'electricity-export.csv',
  ],
  ['direction-of-name-asked', days('Electricity (kWh)'), ['All that is made at home', 'Do not use it'], 'solar.csv'],
  ['title-energy-asked', days('Gas (kWh)'), ['gas', 'The heat pump alone', 'Do not use it'], 'heat pump.csv'],
  ['title-way-asked', days('Elforbrug (kWh)'), ['Bought', 'Sent out', 'Do not use it'], 'overskudsproduktion el.csv'],
  ['title-word-asked', days('Electricity (kWh)'), ['What the home used', 'Do not use it'], 'electricity forecast.csv'],
  [
    'made-by-day-asked',
    hours('Electricity (kWh)', (i) => Math.max(0, Math.sin((((i % 24) - 6) / 12) * Math.PI)).toFixed(3)),
    ['Bought', 'All that is made at home', 'Do not use it'],
  ],
  ['part-asked', days('EV charger electricity (kWh)'), ['The whole home', 'Do not use it']],
  [
    'part-register-asked',
    days('Night electricity (kWh)'),
    ['The whole home', 'Another file has the rest', 'Do not use it'],
  ],
  [
    'word-asked',
    days('Electricity glimmer (kWh)'),
    ['What the home used', 'Sent out', 'Heat given out', 'Do not use it'],
  ],
  ['word-asked', days('Gas glimmer (kWh)'), ['What the home used', 'Heat given out', 'Do not use it']],
  ['net-asked', days('Electricity (kWh)', (i) => 3 - ((i * 5) % 7)), ['Faults', 'Do not use it']],
  ['net-asked', hours('Electricity (kWh)', (i) => 3 - ((i * 5) % 7)), ['Sent out', 'Faults', 'Do not use it']],
  ['unit-guessed', days('Electricity used'), ['kWh', 'Do not use it']],
  ['unit-doubtful', days('Electricity (kWh)', (i) => 800 + ((i * 5) % 7)), ['kWh', 'Wh', 'Do not use it']],
  ['degrees-doubtful', days('Outdoor temperature (°C)', (i) => 50 + ((i * 5) % 17)), ['°F', 'Do not use it']],
  ['weather-asked', days('Temperature (°C),Normals 1991-2020', both), ['Measured on these days', 'Do not use it']],
  [
    'weather-smooth-asked',
    days('Outdoor temperature (°C)', (i) => (9 + i / 30).toFixed(2), 90),
    ['Measured on these days', 'Do not use it'],
  ],
  [
    'weather-indoors-asked',
    days('Temperature (°C)', (i) => 20 + ((i * 5) % 4)),
    ['Outdoors, on these days', 'Do not use it'],
  ],
  [
    'weather-extreme-asked',
    days('Overnight low °C', (i) => 2 + ((i * 5) % 11)),
    ['The mean of each day', 'Do not use it'],
  ],
  [
    'register-rising-asked',
    `Quarter,Electricity (kWh)\n${[300, 650, 1000, 1400, 300, 650, 1000, 1400].map((kWh, i) => `202${3 + (i >> 2)} Q${1 + (i % 4)},${kWh}`).join('\n')}`,
    ['A running meter', 'Amounts used'],
  ],
  ['calorific-assumed', months('Gas (m³)', (i) => 90 + ((i * 7) % 30)), ['39.5 is right']],
  ['pulses-asked', hours('Electricity pulses', (i) => 200 + ((i * 5) % 70)), ['1,000 is right']],
  ['clock-assumed', hours('Electricity (kWh)'), ['Local time', 'UTC']],
  [
    'date-order-asked',
    'Date,Electricity (kWh)\n03/02/2025,9\n04/02/2025,8\n05/02/2025,7',
    ['Day first', 'Month first'],
  ],
  [
    'decimal-asked',
    hours('Gas (kWh)', (i) => `1.${100 + 100 * (i % 7)}`),
    ['A point is the decimal', 'A comma is the decimal'],
  ],
  [
    'to-inclusive-asked',
    'From,To,Electricity (kWh)\n2025-01-03,2025-01-31,300\n2025-02-05,2025-03-02,280',
    ['It belongs to the bill', 'It begins the next'],
  ],
  ['unread-asked', days('Electricity (kWh)', (i) => (i % 4 === 0 ? 'oops' : 9 + (i % 5))), ['They may be left out']],
  [
    'unit-price-asked',
    months('Electricity (kWh),Cost (£)', (i) => `${15_000 + ((i * 7) % 5)},${8 + (i % 3)}`),
    ['Wh', 'Do not use it'],
  ],
];

const askedIn = ({ remarks }: IntakePreview) => remarks.filter(({ weight }) => weight === 'question');
const findAsked = (preview: IntakePreview, code: string): Remark => {
  const found = askedIn(preview).find((one) => one.code === code);
  if (!found) throw new Error(`${code} is not asked, but ${preview.remarks.map((one) => one.code).join(', ')}`);
  return found;
};

describe('an answer for every case', () => {
  test.each(CASES)('%s', (code, text, labels, fileName = 'a.csv') => {
    const preview = previewOf(text, { fileName });
    const remark = findAsked(preview, code);
    const answers = answersTo(remark, preview);
    expect(answers.map(({ label }) => label)).toEqual(expect.arrayContaining([...labels]));
    for (const { label, choice } of answers) {
      const after = previewOf(text, { fileName, choices: { ...choice } });
      expect(
        askedIn(after).filter((one) => one.code === code),
        label,
      ).toEqual([]);
      // What is set aside is kept with the file, and its own doubts with it.
      if (label === 'Do not use it')
        expect(
          after.series.map(({ beside }) => beside),
          label,
        ).toContain('aside');
      // The command line says the same.
      const given = ['--read', 'a.csv', ...optionsOf(choice).flatMap((option) => ['--choose', option])];
      expect(readReckonOptions(given).choices).toEqual(choice);
    }
    const some = answers.find(({ label }) => label === labels[0])!;
    expect(previewOf(text, { fileName, choices: some.choice }).series.length).toBeGreaterThan(0);
    speak({ language: 'de-DE', currency: 'EUR' }, german);
    const inGerman = answersTo(remark, preview).map(({ label }) => label);
    for (const label of inGerman) expect(label).not.toMatch(/\b(the|is|use|made|given)\b/i);
    expect(answerSentence(remark, preview)).toMatch(/^Antworten Sie mit “choices”: \{ "\w+": .+ --choose .+\.$/);
  });

  test('what is not used leaves the other records as they are, in whatever sheet they stand', () => {
    const text = days('Electricity glimmer (kWh),Gas (kWh)', both);
    const preview = previewOf(text);
    const aside = answersTo(findAsked(preview, 'word-asked'), preview).find(({ label }) => label === 'Do not use it')!;
    expect(aside.choice).toEqual({ besideOf: { 'Electricity glimmer (kWh)': 'aside' } });
    const after = previewOf(text, { choices: aside.choice });
    expect([after.series.map(({ beside }) => beside), askedIn(after)]).toEqual([['aside', undefined], []]);
  });

  test('an answer about one column of several is one option that the command line takes', () => {
    const preview = previewOf(days('Electricity glimmer (kWh),Gas (kWh)', both));
    expect(answerSentence(findAsked(preview, 'word-asked'), preview)).toBe(
      'Answer with “choices”: { "ofColumns": {"Electricity glimmer (kWh)":{"role":"import"}} } at this file in the household file, or with --choose "ofColumns.Electricity glimmer (kWh).role=import" beside --read (possible: role=import (What the home used), role=heat-pump (The heat pump alone), role=export (Sent out), role=generation (All that is made at home), carrier=heat (Heat given out), besideOf.Electricity glimmer (kWh)=aside (Do not use it)).',
    );
  });

  test('a sheet called by a year is no number', () => {
    expect(readReckonOptions(['--read', 'a.xlsx', '--choose', 'sheet=2025']).choices).toEqual({ sheet: '2025' });
    expect(readReckonOptions(['--read', 'a.pdf', '--choose', 'paper.leftOut=true']).choices).toEqual({
      paper: { leftOut: true },
    });
  });

  test('no code of a question is without an answer', () => {
    const asked = REMARK_CODES.filter(
      (code) => /-asked$/.test(code) && !/^(records-part|tariff|paper-period)/.test(code),
    );
    const sheet = previewOf(days('Electricity (kWh)'));
    const preview = { ...sheet, sheets: ['A', 'B'], uses: [] };
    expect(
      asked.filter(
        (code) =>
          answersTo({ code, weight: 'question', file: 'a.csv', column: 'Electricity (kWh)' }, preview).length === 0,
      ),
    ).toEqual([]);
  });
});

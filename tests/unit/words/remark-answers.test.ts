import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { IntakeChoices, IntakeContext, IntakePreview } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { answerSentence } from '../../../src/words/answers.ts';
import { answersTo } from '../../../src/words/remark-answers.ts';

const CORPUS = fileURLToPath(new URL('../../corpus/', import.meta.url));
const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
const read = (file: string, choices: IntakeChoices = {}) =>
  readFile(file, new Uint8Array(readFileSync(`${CORPUS}${file}`)), choices, context).preview;

const asked = readdirSync(CORPUS)
  .filter((file) => !file.startsWith('tariff'))
  .flatMap((file) => {
    const preview = read(file);
    return preview.remarks
      .filter((r) => r.weight === 'question')
      .map((remark) => ({ file, code: remark.code, remark }));
  });

describe('every question of the corpus can be answered', () => {
  test.each(asked)('$file: $code', ({ file, code, remark }) => {
    const answers = answersTo(remark, read(file));
    expect(answers.length).toBeGreaterThan(0);
    // The answer that holds now is a confirmation: the file comes to the same, and the question is gone.
    const confirmed = answers.find((a) => a.holds) ?? answers[0]!;
    const after = read(file, confirmed.choice);
    expect(after.remarks.filter((r) => r.code === code && r.weight === 'question')).toEqual([]);
    if (confirmed.holds) expect(after.series.map((s) => s.total)).toEqual(read(file).series.map((s) => s.total));
  });

  test('the codes that had no answer are among them', () => {
    const codes = new Set(asked.map((a) => a.code));
    expect(
      [
        'clock-assumed',
        'clock-autumn-asked',
        'date-order-mixed',
        'decimal-mixed',
        'calorific-assumed',
        'sheet-asked',
        'register-still',
        'espi-type-missing',
        'espi-clock-asked',
      ].filter((code) => !codes.has(code)),
    ).toEqual([]);
  });

  const readText = (text: string, choices: IntakeChoices = {}) =>
    readFile('made.csv', new TextEncoder().encode(text), choices, context).preview;
  test('a unit that its energy lacks is not offered again', () => {
    const text = [
      'From,To,Propane (m3)',
      ...[45, 52, 48, 31].map((v, i) => `2026-0${i + 1}-01,2026-0${i + 2}-01,${v}`),
    ].join('\n');
    const isAsked = ({ code }: { readonly code: string }) => code === 'unit-not-of-carrier';
    const preview = readText(text);
    const answers = answersTo(preview.remarks.find(isAsked)!, preview);
    expect(answers.length).toBeGreaterThan(0);
    for (const { choice } of answers) expect(readText(text, choice).remarks.filter(isAsked)).toEqual([]);
  });
  test('amounts beside what is said to be a running meter are named as left out, and the shapes that it can be are told', () => {
    const days = Array.from({ length: 10 }, (_, i) => `2026-01-${i + 10},${11 + (i % 3)},${50 + 51 * i}`);
    const text = ['Date,Electricity (kWh),Gas (kWh)', ...days].join('\n');
    const preview = readText(text);
    const remark = preview.remarks.find(({ code }) => code === 'register-rising-asked')!;
    expect(answerSentence(remark, preview)).toContain(
      '--choose shape=counter beside --read (possible: shape=counter (A running meter), shape=days (Amounts used))',
    );
    const counter = readText(text, { shape: 'counter' });
    expect(counter.series.map(({ name, total }) => [name, total])).toEqual([['Gas (kWh)', 9 * 51]]);
    expect(counter.remarks.find(({ code }) => code === 'columns-left-out')?.found).toBe('Electricity (kWh)');
  });

  test.each([
    ['electricity export.csv', 'export'],
    ['solar generation.csv', 'generation'],
    ['heat pump.csv', 'heat-pump'],
  ])('the key shown for %s is what its name says', (file, role) => {
    const text = [
      'Date,Electricity (kWh)',
      ...Array.from({ length: 10 }, (_, i) => `2026-01-${i + 10},${8 + (i % 3)}`),
    ];
    const { preview } = readFile(file, new TextEncoder().encode(text.join('\n')), {}, context);
    const remark = preview.remarks.find(({ weight }) => weight === 'question')!;
    expect(remark.code).toBe('direction-of-name-asked');
    expect(answerSentence(remark, preview)).toContain(`{ "role": "${role}" }`);
  });

  test('of a unit only those that the kind of energy has are offered', () => {
    const labels = (file: string, text: string) => {
      const preview = readFile(file, new TextEncoder().encode(text), {}, context).preview;
      const remark = preview.remarks.find(({ code }) => code === 'unit-guessed')!;
      return answersTo(remark, preview).map(({ label }) => label);
    };
    const days = (heading: string) =>
      [
        `Date,${heading}`,
        ...Array.from({ length: 30 }, (_, i) => `2026-01-${String(i + 1).padStart(2, '0')},${9 + (i % 4)}`),
      ].join('\n');
    expect(labels('a.csv', days('Electricity'))).toEqual([
      'kWh',
      'Wh',
      'MWh',
      'kW',
      'W',
      'MJ',
      'therm',
      'Do not use it',
    ]);
    expect(labels('a.csv', days('Gas used'))).toEqual(
      expect.arrayContaining(['kWh', 'm³', 'ft³', 'hundred ft³', 'therm']),
    );
    // What was metered is asked too, so that gas by volume is among them.
    expect(labels('a.csv', days('Used'))).toContain('m³');
    expect(labels('a.csv', days('Used'))).not.toContain('litre');
  });

  test('what is said of one column leaves the ways and units of the others', () => {
    const days = Array.from({ length: 12 }, (_, i) => [
      `2025-${String(i + 1).padStart(2, '0')}-01`,
      `2025-${String(i + 1).padStart(2, '0')}-28`,
      `${300 + ((i * 7) % 5)}`,
      `${20 + ((i * 5) % 7)}`,
      `${900 - ((i * 3) % 8)}`,
    ]);
    const files = {
      bills: ['From,To,Electricity glimmer kWh,Export kWh,Gas kWh', ...days.map((row) => row.join(','))],
      days: [
        'Date,Electricity glimmer kWh,Export kWh,Gas kWh',
        ...days.map(([, , ...row], i) => `2025-03-${String(i + 10)},${row.map((one) => Number(one) / 30).join(',')}`),
      ],
      units: ['From,To,Electricity,Export kWh,Gas kWh', ...days.map((row) => row.join(','))],
    };
    for (const lines of Object.values(files)) {
      const bytes = new TextEncoder().encode(lines.join('\n'));
      const of = (choices: IntakeChoices) => readFile('a.csv', bytes, choices, context).preview;
      const asked = of({});
      const [question] = asked.remarks.filter(({ weight }) => weight === 'question');
      const others = (preview: IntakePreview) =>
        preview.series.filter(({ name }) => name !== question?.column).map((s) => [s.name, s.carrier, s.role, s.total]);
      expect(others(asked).length).toBe(2);
      for (const { choice } of answersTo(question!, asked)) expect(others(of(choice))).toEqual(others(asked));
    }
  });

  test('a column that never changes is amounts, if that is chosen', () => {
    const still = read('counter-still.csv');
    const [, amounts] = answersTo(still.remarks.find((r) => r.code === 'register-still')!, still);
    const chosen = read('counter-still.csv', amounts?.choice);
    expect([chosen.shape, chosen.series[0]?.total.toFixed(6)]).toEqual(['days', '4.000000']);
  });

  test('another sheet is read as what it is, whatever was chosen for the first', () => {
    const first = read('book-two-meters.xlsx', { carrier: 'electricity', unit: 'kWh' });
    expect(first.series[0]?.carrier).toBe('electricity');
    const [, gas] = answersTo(first.remarks.find((r) => r.code === 'sheet-asked')!, first);
    const second = read('book-two-meters.xlsx', { ...first.choices, ...gas?.choice });
    expect([gas?.label, second.shape, second.series[0]?.carrier, second.series[0]?.total]).toEqual([
      'Gas',
      'days',
      'gas',
      210,
    ]);
  });
});

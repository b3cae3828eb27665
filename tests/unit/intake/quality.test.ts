/** What is doubtful in a record is listed with its dates and its effect, and is filled only by rule, and marked. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { IntakeChoices, IntakeContext, IntakeResult } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};
const read = (lines: readonly string[], choices: IntakeChoices = {}): IntakeResult =>
  readFile('made.csv', new TextEncoder().encode(lines.join('\n')), choices, context);
const stamp = (slot: number) =>
  new Date(Date.UTC(2026, 0, 5) + slot * 1_800_000).toISOString().slice(0, 16).replace('T', ' ');
const date = (day: number) => new Date(Date.UTC(2026, 0, 5) + day * 86_400_000).toISOString().slice(0, 10);

/** Half-hours from Monday 5 January 2026; by default 0.1 to 0.58 kWh through the day, 16.08 kWh a day. */
function halfHours(days: number, writtenOf: (slot: number) => string | null = () => ''): string[] {
  const rows = Array.from({ length: days * 48 }, (_, slot) => {
    const value = writtenOf(slot);
    return value === null ? null : `${stamp(slot)},${value || (0.1 + (slot % 48) / 100).toFixed(3)}`;
  });
  return ['Start,Electricity kWh', ...rows.filter((row) => row !== null)];
}
const wholeDays = (values: readonly (string | null)[]) => [
  'Date,Electricity kWh',
  ...values.flatMap((value, day) => (value === null ? [] : [`${date(day)},${value}`])),
];

describe('each doubt with its dates and its effect', () => {
  test.each([
    {
      name: 'a frozen meter',
      lines: halfHours(14, (slot) => (slot >= 96 && slot < 192 ? '0.25' : '')),
      remark: { code: 'frozen', from: '2026-01-07 00:00', to: '2026-01-09 00:00', count: 96, effectKWh: 24 },
    },
    {
      name: 'a supply that was off',
      lines: halfHours(14, (slot) => (slot >= 96 && slot < 192 ? '0' : '')),
      remark: { code: 'zero-run', from: '2026-01-07 00:00', to: '2026-01-09 00:00', count: 96, effectKWh: 27.6 },
    },
    {
      name: 'a gap',
      lines: halfHours(14, (slot) => (slot >= 96 && slot < 120 ? null : '')),
      remark: { code: 'gap', from: '2026-01-07 00:00', to: '2026-01-07 12:00', count: 24, effectKWh: 8.1 },
    },
    {
      name: 'a spike',
      lines: halfHours(14, (slot) => (slot === 100 ? '900' : '')),
      remark: { code: 'spike', row: 102, from: '2026-01-07 02:00', effectKWh: 900 },
    },
    {
      name: 'a negative reading',
      lines: halfHours(14, (slot) => (slot === 100 ? '-2' : '')),
      remark: { code: 'negative', row: 102, from: '2026-01-07 02:00', effectKWh: -2 },
    },
    {
      name: 'a duplicate with another value',
      lines: [...halfHours(14), `${stamp(100)},1.14`],
      remark: {
        code: 'duplicate-different',
        row: 674,
        from: '2026-01-07 02:00',
        count: 1,
        effectKWh: expect.closeTo(1, 9) as number,
      },
    },
    {
      name: 'a duplicate',
      lines: [...halfHours(14), `${stamp(100)},0.14`],
      remark: { code: 'duplicate-same', row: 674, from: '2026-01-07 02:00', count: 1 },
    },
    {
      name: 'estimated rows',
      lines: halfHours(14).map((line, i) => `${line},${i === 0 ? 'Quality' : i > 96 && i <= 144 ? 'E' : 'A'}`),
      remark: { code: 'estimated', from: '2026-01-07 00:00', to: '2026-01-07 23:30', count: 48, effectKWh: 16.1 },
    },
    {
      name: 'days that are all alike',
      lines: wholeDays(
        Array.from({ length: 30 }, (_, day) => (day >= 7 && day < 13 ? '9.5' : String(8 + (day % 5) / 10))),
      ),
      remark: { code: 'frozen', from: '2026-01-12', to: '2026-01-17', count: 6, effectKWh: 57 },
    },
    {
      name: 'days of nought',
      lines: wholeDays(
        Array.from({ length: 30 }, (_, day) => (day >= 7 && day < 10 ? '0' : '9'.concat(`.${day % 7}`))),
      ),
      remark: { code: 'zero-run', from: '2026-01-12', to: '2026-01-14', count: 3, effectKWh: 25.1 },
    },
    {
      name: 'estimated days',
      lines: wholeDays(Array.from({ length: 30 }, (_, day) => String(8 + (day % 7)))).map(
        (line, i) => `${line},${i === 0 ? 'Quality' : i <= 2 ? 'Estimated' : 'Actual'}`,
      ),
      remark: { code: 'estimated', from: '2026-01-05', to: '2026-01-06', count: 2, effectKWh: 17 },
    },
  ])('$name', ({ lines, remark }) => {
    const found = read(lines).preview.remarks.find(({ code }) => code === remark.code);
    expect(found).toMatchObject(remark);
    expect(remarkSentence(found!)).toMatch(/2026-01-|January 2026/);
  });
});

test('of seven holes between bills five are named, and the last two are one remark with the days of both', () => {
  const bills = Array.from({ length: 8 }, (_, month) => {
    const first = `2025-${String(month + 1).padStart(2, '0')}`;
    return `${first}-01,${first}-20,200`;
  });
  const holes = read(['From,To,Electricity kWh', ...bills]).preview.remarks.filter(
    ({ code }) => code === 'period-hole',
  );
  // June has 10 days after the 20th, July 11.
  expect(holes.map(({ count }) => count)).toEqual([11, 8, 11, 10, 11, 21]);
  expect(remarkSentence(holes[0]!)).toMatch('no bill from 21 January 2025 to 31 January 2025, 11 days, about 110 kWh');
});

describe('filling', () => {
  const holed = halfHours(28, (slot) => (slot >= 48 * 14 + 10 && slot < 48 * 15 + 5 ? null : ''));

  test('nothing is filled unless it is asked for', () => {
    const { preview } = read(holed);
    expect(preview.series[0]!.filled).toBeUndefined();
    expect(preview.remarks.map(({ code }) => code)).not.toContain('filled');
    expect(preview.series[0]!.days!.values.filter((value) => value === null)).toHaveLength(2);
  });

  test('the mean of the same weekday fills a gap, and it is marked and counted as estimated', () => {
    const { preview, intervals } = read(holed, { fill: 'same weekday mean' });
    const series = preview.series[0]!;
    expect(preview.choices.fill).toBe('same weekday mean');
    expect(series).toMatchObject({ present: 28 * 48 - 43, expected: 28 * 48, estimatedCount: 43 });
    expect(series.filled).toMatchObject([
      { date: '2026-01-19', firstSlot: 10, slots: 38 },
      { date: '2026-01-20', firstSlot: 0, slots: 5 },
    ]);
    expect(intervals[0]!.days[14]!.values[20]).toBeCloseTo(0.3, 12);
    expect(series.total).toBeCloseTo(28 * 16.08, 6);
    const codes = preview.remarks.map(({ code }) => code);
    expect(codes).toContain('gap');
    expect(remarkSentence(preview.remarks.find(({ code }) => code === 'filled')!)).toBe(
      'made.csv: 43 readings missing from 19 January 2026 to 20 January 2026 were filled with the mean of the same weekday, 15.2 kWh in all. They count as estimated.',
    );
  });

  test('a gap longer than a fortnight stays open and is said to', () => {
    const { preview } = read(
      halfHours(60, (slot) => (slot >= 48 * 14 && slot < 48 * 30 ? null : '')),
      { fill: 'same weekday mean' },
    );
    expect(preview.series[0]!.filled).toBeUndefined();
    expect(preview.remarks.find(({ code }) => code === 'fill-left-open')).toMatchObject({ count: 16 * 48 });
  });

  test('days are filled by the same rule', () => {
    const values = Array.from({ length: 35 }, (_, day) => (day === 15 || day === 16 ? null : String(5 + (day % 7))));
    const { preview } = read(wholeDays(values), { fill: 'same weekday mean' });
    expect(preview.series[0]).toMatchObject({
      present: 33,
      expected: 35,
      estimatedCount: 2,
      filled: [
        { date: '2026-01-20', firstSlot: 0, slots: 1, kWh: 6 },
        { date: '2026-01-21', firstSlot: 0, slots: 1, kWh: 7 },
      ],
    });
    expect(preview.series[0]!.total).toBe(5 * 56);
  });

  test('whatever is missing: no reading is changed, and each filled one is marked', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 48 * 28 - 2 }), { minLength: 1, maxLength: 80 }), (missing) => {
        const gone = new Set(missing);
        const lines = halfHours(28, (slot) => (gone.has(slot) ? null : ''));
        const [plain, filled] = [read(lines), read(lines, { fill: 'same weekday mean' })];
        const marked = new Set<string>();
        for (const { date: on, firstSlot, slots } of filled.preview.series[0]!.filled ?? [])
          for (let i = 0; i < slots; i++) marked.add(`${on} ${firstSlot + i}`);
        filled.intervals[0]!.days.forEach(({ date: on, values }, day) => {
          values.forEach((value, slot) => {
            const asRead = plain.intervals[0]!.days[day]!.values[slot]!;
            if (marked.has(`${on} ${slot}`)) expect(asRead).toBeNaN();
            else expect(value).toBe(asRead);
          });
        });
        expect(marked.size).toBe(filled.preview.series[0]!.estimatedCount);
      }),
      { numRuns: 20 },
    );
  });
});

test.each([
  ['a word of estimates under a heading that nobody knows', 'Güte', 'Ersatzwert', 'Echtwert', 3],
  ['letters of which one is for estimates', 'Laji', 'E', 'R', 3],
  ['letters that may be of electricity and gas', 'Art', 'E', 'G', 0],
])('%s', (_, heading, estimate, other, count) => {
  const [head, ...rows] = wholeDays(Array.from({ length: 30 }, (_, day) => String(8 + (day % 3))));
  const lines = [`${head},${heading}`, ...rows.map((row, i) => `${row},${i % 10 === 4 ? estimate : other}`)];
  expect(read(lines).preview.series[0]!.estimatedCount).toBe(count);
});

import { expect, test } from 'vitest';
import { askOtherMeters } from '../../../src/desk/join/find-other-meter.ts';
import type { BillMeter } from '../../../src/model/shapes/bill.ts';
import type { Evidence, Remark, Series } from '../../../src/model/shapes/evidence.ts';
import { sayTold } from '../../../src/words/say-told.ts';

const whyOf = ({ expected, expectedTold }: Remark) => expected ?? (expectedTold && sayTold(expectedTold));

const bill = (from: string, to: string, meter: Partial<BillMeter>, series: Partial<Series> = {}, fuel = 'gas') =>
  ({
    fileName: `${from}.pdf`,
    sha256: from,
    series: [
      {
        carrier: fuel,
        role: 'import',
        name: fuel,
        from,
        to,
        bills: [{ row: 1, bill: { fuel, from, to, meters: [{ name: 'all hours', ...meter }] } }],
        ...series,
      },
    ],
  }) as unknown as Evidence;

const SPRING = bill('2026-03-01', '2026-06-01', { opening: 20_318, closing: 20_636 });
const read = (opening: number, closing: number) => ({ opening, closing });

test.each<[string, Evidence[], string | undefined]>([
  ['the next bill of the meter', [SPRING, bill('2026-06-01', '2026-09-01', read(20_636, 20_702))], undefined],
  ['a day later, read a little on', [SPRING, bill('2026-06-01', '2026-09-01', read(20_640, 20_702))], undefined],
  ['a bill further on', [SPRING, bill('2026-09-01', '2026-12-01', read(20_702, 20_980))], undefined],
  [
    'a bill of a meter that stands lower',
    [SPRING, bill('2026-09-01', '2026-12-01', read(7120, 7400))],
    '20,636 then 7,120',
  ],
  [
    'the next days of a meter that stands higher',
    [SPRING, bill('2026-06-01', '2026-09-01', read(31_000, 31_090))],
    '20,636 then 31,000',
  ],
  ['an earlier bill that comes later', [SPRING, bill('2025-12-01', '2026-03-01', read(19_700, 20_318))], undefined],
  [
    'an earlier bill of a meter that stands higher',
    [SPRING, bill('2025-12-01', '2026-03-01', read(40_100, 40_700))],
    '40,700 then 20,318',
  ],
  [
    'an estimate that was put right',
    [SPRING, bill('2026-06-01', '2026-09-01', { ...read(20_500, 20_702), openingKind: 'estimated' })],
    undefined,
  ],
  [
    'a counter that was full',
    [bill('2026-03-01', '2026-06-01', read(99_100, 99_900)), bill('2026-06-01', '2026-09-01', read(12, 90))],
    undefined,
  ],
  ['a further meter', [SPRING, bill('2026-06-01', '2026-09-01', read(50, 90), { beside: 'added' })], undefined],
  ['another kind of energy', [SPRING, bill('2026-06-01', '2026-09-01', read(50, 90), {}, 'electricity')], undefined],
  ['a bill without readings', [SPRING, bill('2026-06-01', '2026-09-01', { kWh: 700 })], undefined],
])('%s', (_, evidence, expected) => {
  const remarks = askOtherMeters(evidence, evidence[1]);
  expect(remarks.map(whyOf)).toEqual(expected === undefined ? [] : [expected]);
  for (const { file, found } of remarks) expect([file, found]).toEqual([evidence[1]!.fileName, SPRING.fileName]);
  // Whichever comes last, and where all come at once, as much is asked.
  expect(askOtherMeters(evidence.toReversed(), SPRING)).toHaveLength(remarks.length);
  expect(askOtherMeters(evidence)).toHaveLength(remarks.length);
});

test.each<[string, string, string, string, string, string[]]>([
  ['two registers by their headings', 'a.csv', 'Night kWh', 'b.csv', 'Day kWh', ['Night kWh → Day kWh']],
  ['two registers by their files', 'night-1.csv', 'kWh', 'day-2.csv', 'kWh', ['night 1 csv → day 2 csv']],
  ['one by its heading, one by its file', 'nachttarif.csv', 'NT (kWh)', 'ht.csv', 'kWh', ['NT (kWh) → ht csv']],
  ['one register by two names', 'a.csv', 'Night kWh', 'b.csv', 'Off-peak kWh', []],
  ['one register', 'a.csv', 'Day kWh 2024', 'b.csv', 'Day kWh 2025', []],
  ['a register and a whole', 'a.csv', 'Night kWh', 'b.csv', 'Electricity kWh', []],
])('half a year each of %s', (_, fileName, name, otherFile, otherName, expected) => {
  const half = (file: string, heading: string, from: string, to: string) =>
    ({
      id: file,
      fileName: file,
      sha256: file,
      shape: 'days',
      series: [{ name: heading, carrier: 'electricity', role: 'import', from, to }],
    }) as unknown as Evidence;
  const both = [
    half(fileName, name, '2025-01-01', '2025-07-01'),
    half(otherFile, otherName, '2025-07-01', '2026-01-01'),
  ];
  expect(askOtherMeters(both, both[1]).map(whyOf)).toEqual(expected);
});

/** Three months of a meter from a day on, in bills of a month, each day alike. */
const months = (
  fileName: string,
  from: [month: number, day: number],
  opening: number,
  series: Partial<Series> = {},
) => {
  const on = (i: number) => new Date(Date.UTC(2025, from[0] - 1 + i, from[1])).toISOString().slice(0, 10);
  const readOn = (date: string) => opening + Math.round((Date.parse(date) - Date.UTC(2025, 0, 1)) / 8_640_000);
  const cuts = [0, 1, 2].map((i) => ({ from: on(i), to: on(i + 1) }));
  const read = cuts.map((cut) => ({ ...cut, opening: readOn(cut.from), closing: readOn(cut.to) }));
  return {
    fileName,
    sha256: fileName,
    series: [
      {
        id: fileName,
        evidenceId: fileName,
        carrier: 'gas',
        role: 'import',
        name: 'gas',
        resolution: 'period',
        from: on(0),
        to: on(3),
        present: 3,
        estimatedCount: 0,
        periods: read.map(({ from, to, opening, closing }) => ({
          from,
          to,
          kWh: closing - opening,
          quality: 'actual',
        })),
        bills: read.map(({ from, to, opening, closing }) => ({
          row: 1,
          bill: { fuel: 'gas', from, to, meterUnit: 'kWh', meters: [{ name: 'all hours', opening, closing }] },
        })),
        ...series,
      },
    ],
  } as unknown as Evidence;
};
const numbered = (end: string): Partial<Series> => ({ numbers: [{ of: 'meter', end }] });

test.each<[string, Evidence, Evidence, string[]]>([
  ['of one meter', months('a', [1, 1], 2000), months('b', [2, 16], 2000), []],
  ['of a meter that stands elsewhere', months('a', [1, 1], 2000), months('b', [2, 16], 51_000), ['2,310 then 51,460']],
  [
    'of another number',
    months('a', [1, 1], 2000, numbered('1112')),
    months('b', [2, 16], 2000, numbered('8887')),
    ['…1112 → …8887'],
  ],
  ['of one number', months('a', [1, 1], 2000, numbered('1112')), months('b', [2, 16], 51_000, numbered('1112')), []],
])('bills that overlap and are alike, %s', (_, one, other, expected) => {
  for (const both of [
    [one, other],
    [other, one],
  ])
    expect(askOtherMeters(both).map(whyOf)).toEqual(expected);
});

/** Lists as they are typed into a message: a date and an amount in each line, and nothing that parts them but a space. */
import { describe, expect, test } from 'vitest';
import { codesOf, previewOf } from './read-text.ts';

const monthsOf = (text: string) => previewOf(text).series[0]?.periods?.map(({ from, kWh }) => [from, kWh]);

describe('a list typed by hand', () => {
  test.each([
    ['a space', 'Electricity kWh\nJan 2025 320\nFeb 2025 290\nMar 2025 1250'],
    ['a dash, and years of two digits', 'Electricity kWh\nJan 25 - 320\nFeb 25 - 290\nMar 25 - 1250'],
    [
      'a colon, and the unit behind',
      'Electricity:\nJanuary 2025: 320 kWh\nFebruary 2025: 290kWh\nMarch 2025: 1 250 kWh',
    ],
  ])('months and amounts, parted by %s', (_, text) => {
    expect(monthsOf(text)).toEqual([
      ['2025-01-01', 320],
      ['2025-02-01', 290],
      ['2025-03-01', 1250],
    ]);
    expect(codesOf(previewOf(text), 'refusal')).toEqual([]);
  });

  test('readings of a counter are asked about, keep the numbers of their lines and their remarks', () => {
    const text = 'Gas readings\n1/1/25 12345\n3/2/25 12689\n28/2/25 12901 (estimated)\n\n2/4/25 13140\n';
    const preview = previewOf(text, { choices: { shape: 'counter', unit: 'kWh' } });
    expect(preview.series[0]!.total).toBe(13_140 - 12_345);
    expect(preview.series[0]!.periods!.map(({ row }) => row)).toEqual([3, 4, 6]);
    expect(codesOf(previewOf(text), 'question')).toContain('register-rising-asked');
    expect(preview.uses?.map(({ name, use }) => `${name} ${use}`)).toContain('Note quality');
  });

  test('a remark in brackets may hold digits', () => {
    const first = 'Jan 2025: 320\nFeb 2025: 246 (away 2 weeks)\nMar 2025: 290';
    const preview = previewOf(`Electricity kWh\n${first}\nApr 2025: 280\nMay 2025: 260\nJune 2025: 250\nTotal: 1646`);
    expect(preview.series[0]?.total).toBe(1646);
    expect(codesOf(preview, 'question')).toEqual([]);
  });

  test.each([
    ['days of a month after its name', 'Jan 12 12345\nJan 19 12400\nJan 26 12460\nFeb 02 12511', 'no-table'],
    ['months without a year', 'Jan 320\nFeb 290\nMar 250\nApr 200', 'no-year'],
    ['two amounts in a line', '1/1/25 12345 6789\n1/2/25 12400 6801\n1/3/25 12460 6820', 'no-table'],
    ['a letter', 'Dear Sirs\nwe used about 12000 kWh last year\nand 3500 kWh of electricity\nMany thanks', 'no-table'],
  ])('%s are not guessed', (_, text, code) => expect(codesOf(previewOf(text), 'refusal')).toContain(code));
});

test.each(['kWh', 'Gas'])('thousands rounded with a k are counted as such: %s', (heading) => {
  const rows = ['2.01k', '1.7k', '950', '1k'].map((cell, i) => `2025-0${i + 1},${cell}`);
  const { series } = previewOf([`Month,${heading}`, ...rows], { choices: { unit: 'kWh' } });
  expect(series[0]!.periods!.map(({ kWh }) => Math.round(kWh))).toEqual([2010, 1700, 950, 1000]);
});

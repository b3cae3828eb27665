import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readFile } from '../../src/intake/read-file.ts';
import { checkBillSums } from '../../src/model/bill/check-bill-sums.ts';
import type { Bill } from '../../src/model/shapes/bill.ts';
import type { Tariff } from '../../src/model/shapes/tariff.ts';
import { kWhPerUnit } from '../../src/reference/fuels.ts';
import { readBill } from '../../src/screens/bill-sums/bill-lines-draft.ts';
import { draftOfBill } from '../../src/screens/bill-sums/draft-of-bill.ts';
import { type Cell, serialOf, writeWorkbook } from '../unit/intake/write-workbook.ts';
import { gasKWh, times, vatOn } from './pennies.ts';

const GAS = { correction: 1.02264, imperialM3PerHundredCubicFeet: 2.83, calorificMJPerM3: 39.5 };
const CONTEXT = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: GAS,
};
const billsIn = (text: string, name = 'bills.csv'): Bill[] =>
  readFile(name, new TextEncoder().encode(text), {}, CONTEXT).preview.series.flatMap((one) =>
    (one.bills ?? []).map(({ bill }) => bill),
  );
const corpus = (name: string): Bill[] =>
  billsIn(readFileSync(new URL(`../corpus/${name}`, import.meta.url), 'utf8'), name);
const check = (bill: Bill, tariff?: Tariff) => checkBillSums({ bill, gas: GAS, vatRate: 0.05, tariff });

/** Days as a workbook has them, money and figures as numbers. */
function workbookCell(cell: string, row: number): Cell {
  if (row === 0 || cell === '') return cell;
  if (/^\d{4}-/.test(cell)) return { serial: serialOf(`${cell}T00:00`), form: 'date' };
  return Number.isNaN(Number(cell.replace('£', ''))) ? cell : Number(cell.replace('£', ''));
}

const prices = (changes: readonly (readonly [from: string, pencePerKWh: number])[]): Tariff => ({
  id: 'held',
  name: 'Invented prices',
  fuel: 'electricity',
  origin: 'invented',
  grade: 'measured',
  versions: changes.map(([from, pencePerKWh]) => ({
    from,
    standingPencePerDay: 53,
    vat: { rate: 0.05, included: false },
    bands: [{ name: 'all hours', pencePerKWh, times: 'rest' as const }],
  })),
});

/** Pence of a bill with VAT on top: lines and what is taken off before VAT, then what is taken off after it. */
function onTop(lines: readonly bigint[], after = 0n, percent = 5n): number {
  const net = lines.reduce((sum, line) => sum + line, 0n);
  return Number(net + vatOn(net, percent) - after);
}
const gas = (units: string, price: string) => times(gasKWh(units, false, 102_264n, '39.4', 2), price);
const feet = (units: string) => times(gasKWh(units, true, 102_264n, '39.5', 2), '6.03');

test.each([
  ['Last reading', 'This reading', 10_000, 10_300],
  ['This reading', 'Last reading', 10_300, 10_000],
  ['First reading', 'Last reading', 10_000, 10_300],
])('%s beside %s are the readings before and after', (left, right, ...cells) => {
  const [bill] = billsIn(`From,To,${left},${right},Units (kWh)\n2026-01-01,2026-01-31,${cells.join(',')},300\n`);
  expect(bill?.meters).toMatchObject([{ opening: 10_000, closing: 10_300 }]);
});

describe('the bills of the corpus come to the pennies reckoned in whole numbers', () => {
  test.each([
    ['bills-whole-electricity.csv', 0, onTop([times('900', '24.5'), times('90', '53'), -500n])],
    ['bills-whole-electricity.csv', 1, onTop([times('600', '24.5'), times('91', '53')])],
    ['bills-last-reading.csv', 0, onTop([times('300', '24.67'), times('31', '53.8')])],
    ['bills-last-reading.csv', 1, onTop([times('260', '24.67'), times('28', '53.8')])],
    ['bills-whole-day-night.csv', 0, onTop([times('300', '28.5'), times('500', '12.25'), times('31', '48.2')])],
    ['bills-whole-day-night.csv', 1, onTop([times('280', '28.5'), times('450', '12.25'), times('28', '48.2')])],
    ['bills-whole-gas-m3.csv', 0, onTop([gas('150', '5.74'), times('31', '29.11')], 2000n)],
    ['bills-whole-gas-m3.csv', 1, onTop([gas('120', '5.74'), times('28', '29.11')])],
    ['bills-whole-feet.csv', 0, Number(feet('32') + times('31', '30.57'))],
    ['bills-whole-feet.csv', 1, Number(feet('29') + times('28', '30.57'))],
    ['bills-whole-unknown.csv', 0, onTop([times('400', '25'), times('31', '53')], 1000n)],
    ['bills-whole-unknown.csv', 1, onTop([times('300', '25'), times('28', '53')])],
  ])('%s, bill %i: %i p', (file, place, pence) => {
    const checked = check(corpus(file)[place]!);
    expect([checked.reckonedPence, checked.printedPence, checked.agrees]).toEqual([pence, pence, true]);
  });
  test('a workbook gives the bill of the same rows as text', () => {
    const text = readFileSync(new URL('../corpus/bills-whole-gas-m3.csv', import.meta.url), 'utf8');
    const rows = text.trim().split('\n');
    const cells = rows.map((line, at) => line.split(',').map((cell) => workbookCell(cell, at)));
    const book = readFile('bills.xlsx', writeWorkbook([{ name: 'Bills', rows: cells }]), {}, CONTEXT);
    expect(book.preview.series[0]!.bills!.map(({ bill }) => bill)).toEqual(corpus('bills-whole-gas-m3.csv'));
  });
  test('what the screen makes of a bill is the bill of the file', () => {
    for (const file of ['electricity', 'day-night', 'gas-m3', 'feet', 'unknown']) {
      for (const bill of corpus(`bills-whole-${file}.csv`)) {
        const reading = readBill(draftOfBill(bill));
        if (reading.kind !== 'whole') throw new Error(reading.sentences.join(' '));
        expect(check(reading.bill)).toEqual(check(bill));
      }
    }
  });
});

describe('units of gas in a file become energy as published', () => {
  // Gas (Calculation of Thermal Energy) Regulations 1996, worked by others: the first by the guide of an energy consultant, the last by a consumer guide that prints 4,627.69 after rounding.
  test.each([
    ['m3', '100', '39.3', 1116.382, 0.001],
    ['100 cubic ft', '100', '39.3', 3159.361, 0.001],
    ['m3', '100', '38.0', 1079.45, 0.005],
    ['100 cubic ft', '145', '39.7', 4627.7, 0.015],
  ])('(%s) %s at %s MJ/m³: %f kWh', (unit, units, calorific, kWh, within) => {
    const head = `From,To,Previous read (${unit}),Present read (${unit}),Calorific value,Unit rate p/kWh`;
    const closing = 7000 + Number(units);
    const [bill] = billsIn(`${head}\n2026-01-01,2026-03-31,7000,${closing},${calorific},6\n`);
    const energy = check(bill!).rows.find(({ kind }) => kind === 'energy')!;
    expect(Math.abs(energy.reckoned - kWh)).toBeLessThanOrEqual(within);
  });
});

describe('a slip planted in a row of a file is named', () => {
  const HEAD = 'From,To,Opening read,Closing read,Read type,kWh,Unit rate p/kWh,Energy charge £,Standing p/day,Days';
  const ELECTRICITY = `${HEAD},Standing charge £,VAT £,Total £`;
  const pounds = (pence: bigint | number) => (Number(pence) / 100).toFixed(2);
  const row = (kind: string, price: string, percent = 5n) => {
    const [units, standing] = [times('600', price), times('91', '53')];
    const vat = vatOn(units + standing, percent);
    const money = [pounds(units), '53', '91', pounds(standing), pounds(vat), pounds(units + standing + vat)].join(',');
    return billsIn(`${ELECTRICITY}\n2026-04-01,2026-06-30,1000,1600,${kind},600,${price},${money}\n`)[0]!;
  };
  const codes = (bill: Bill, tariff?: Tariff) => {
    const { differencePence, explanations } = check(bill, tariff);
    return [differencePence, explanations[0]?.reach, explanations[0]?.causes.map(({ code }) => code).join(' ')];
  };

  test('an old rate after a price change', () => {
    const bill = row('A', '24.5');
    const apart = onTop([times('600', '24.5'), times('91', '53')]) - onTop([times('600', '22'), times('91', '53')]);
    const held = prices([
      ['2025-10-01', 24.5],
      ['2026-04-01', 22],
    ]);
    expect(codes(bill, held)).toEqual([apart, 'whole', 'old-rate']);
  });
  test('an estimated reading, once the household has read the meter', () => {
    const draft = draftOfBill(row('E', '24.5'));
    expect(draft.lines[0]!.estimated).toBe(true);
    const reading = readBill({ ...draft, lines: [{ ...draft.lines[0]!, ownKWh: 480 }] });
    if (reading.kind !== 'whole') throw new Error('not whole');
    const apart = onTop([times('600', '24.5'), times('91', '53')]) - onTop([times('480', '24.5'), times('91', '53')]);
    expect(codes(reading.bill)).toEqual([apart, 'whole', 'estimated-reading']);
  });
  test('VAT at 20% where homes pay 5%', () => {
    const lines = [times('600', '24.5'), times('91', '53')];
    expect(codes(row('A', '24.5', 20n))).toEqual([onTop(lines, 0n, 20n) - onTop(lines), 'whole', 'vat-rate']);
  });
  test('another calorific value than the bill prints', () => {
    const kWh = gasKWh('160', false, 102_264n, '40.4', 2);
    const [wrong, right] = [times(kWh, '5.74'), gas('160', '5.74')];
    const head = 'From,To,Opening read (m3),Closing read (m3),Gas kWh,CV,Unit rate p/kWh,Gas charge £,VAT £,Total £';
    const vat = vatOn(wrong, 5n);
    const cells = ['4100', '4260', kWh, '39.4', '5.74', pounds(wrong), pounds(vat), pounds(wrong + vat)].join(',');
    const [bill] = billsIn(`${head}\n2026-01-01,2026-01-31,${cells}\n`);
    expect(codes(bill!)).toEqual([onTop([wrong]) - onTop([right]), 'whole', 'calorific-value']);
    expect(check(bill!).explanations).toHaveLength(1);
  });
  test('day and night swapped', () => {
    const heads = ['Day opening read', 'Day closing read', 'Night opening read', 'Night closing read'];
    const head = `From,To,${heads.join(',')},Day kWh,Night kWh,Day rate p/kWh,Night rate p/kWh,Day cost £,Night cost £,VAT £,Total £`;
    const [day, night] = [times('500', '28.5'), times('300', '12.25')];
    const vat = vatOn(day + night, 5n);
    const cells = ['20410', '20710', '8800', '9300', '500', '300', '28.5', '12.25', pounds(day), pounds(night)];
    const [bill] = billsIn(
      `${head}\n2026-01-01,2026-01-31,${[...cells, pounds(vat), pounds(day + night + vat)].join(',')}\n`,
    );
    const apart = onTop([day, night]) - onTop([times('300', '28.5'), times('500', '12.25')]);
    expect(codes(bill!)).toEqual([apart, 'whole', 'registers-swapped']);
  });
});

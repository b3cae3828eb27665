/**
 * What may be done to a written table without a change of what it says, and what changes it by a known factor or way.
 * After each a reader finds the same (or just that change), asks something new, or refuses; never anything else.
 */
import { writeWorkbook } from '../unit/intake/write-workbook.ts';
import type { Dialect } from './draw.ts';
import type { Written } from './write.ts';

export interface WrittenTable {
  readonly titles: readonly (readonly string[])[];
  readonly heads: readonly (readonly string[])[];
  readonly rows: readonly (readonly string[])[];
  readonly separator: string;
  readonly decimal: '.' | ',';
  /** Columns of amounts. */
  readonly values: readonly number[];
}

const oneLine = (text: string) => text.replaceAll(/\s+/g, ' ');

/** The first so many rows of a dialect; undefined where it is no plain table. */
export function tableOf(d: Dialect, { sheet, columns }: Written, most: number): WrittenTable | undefined {
  if (!sheet) return undefined;
  const heads = sheet.heads.map((cells) => cells.map(oneLine));
  const values = heads[0]!.flatMap((head, i) => (columns.some(({ heading }) => oneLine(heading) === head) ? [i] : []));
  if (values.length !== columns.length) return undefined;
  const { titles, rows } = sheet;
  return { titles, heads, rows: rows.slice(0, most), separator: d.separator, decimal: d.decimal, values };
}

export function textOf({ titles, heads, rows, separator }: WrittenTable, lineEnd = '\n', quoted = false): string {
  const write = (cell: string) =>
    quoted || cell.includes(separator) || /["\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
  return [...titles, ...heads, ...rows].map((cells) => `${cells.map(write).join(separator)}${lineEnd}`).join('');
}

type Change = (table: WrittenTable, random: () => number) => WrittenTable | string | Uint8Array | undefined;

const mapCells = (t: WrittenTable, change: (cell: string) => string, only?: readonly number[]): WrittenTable => ({
  ...t,
  rows: t.rows.map((cells) => cells.map((cell, i) => (!only || only.includes(i) ? change(cell) : cell))),
});
const mapHeads = (t: WrittenTable, change: (head: string, column: number) => string): WrittenTable => ({
  ...t,
  heads: t.heads.map((cells) => cells.map(change)),
});
const widthOf = ({ heads, rows }: WrittenTable) => Math.max(...[...heads, ...rows].map(({ length }) => length));
const insert = (t: WrittenTable, at: number, head: string, cell: (row: number) => string): WrittenTable => {
  const put = (cells: readonly string[], text: string) =>
    [...cells, ...Array<string>(Math.max(0, at - cells.length)).fill('')].toSpliced(at, 0, text);
  return {
    ...t,
    heads: t.heads.map((cells, i) => put(cells, i === 0 ? head : '')),
    rows: t.rows.map((cells, i) => put(cells, cell(i))),
  };
};
const shuffled = <T>(list: readonly T[], random: () => number): T[] =>
  list
    .map((one) => [random(), one] as const)
    .sort(([a], [b]) => a - b)
    .map(([, one]) => one);
const fullWidth = (text: string) => text.replaceAll(/\d/g, (digit) => String.fromCharCode(0xff10 + Number(digit)));
const digits = (text: string, change: (number: string) => string) => text.replace(/^-?\d+([.,]\d+)?$/, change);
/** Nought for words and gaps. */
const numberOf = ({ decimal }: WrittenTable, cell = ''): number =>
  Number((decimal === ',' ? cell.replace(',', '.') : cell).replace(/[^\d.-]/g, '')) || 0;
const sumRow = (t: WrittenTable, label: string): string[] =>
  Array.from({ length: widthOf(t) }, (_, i) => {
    if (!t.values.includes(i)) return i === 0 ? label : '';
    const sum = t.rows.reduce((total, cells) => total + numberOf(t, cells[i]), 0);
    return sum.toFixed(6).replace('.', t.decimal);
  });

/** Whatever the rows hold. */
export const HARMLESS: Readonly<Record<string, Change>> = {
  'rows the other way about': (t) => ({ ...t, rows: t.rows.toReversed() }),
  'rows in any order': (t, random) => ({ ...t, rows: shuffled(t.rows, random) }),
  'each row twice': (t) => ({ ...t, rows: t.rows.flatMap((cells) => [cells, cells]) }),
  'all rows again': (t) => ({ ...t, rows: [...t.rows, ...t.rows] }),
  'the file again below': (t) => ({ ...t, rows: [...t.rows, ...t.titles, ...t.heads, ...t.rows] }),
  'headings again': (t) => ({
    ...t,
    rows: t.rows.flatMap((cells, i) => (i % 50 === 49 ? [cells, ...t.heads] : [cells])),
  }),
  'columns the other way about': (t) => {
    const width = widthOf(t);
    const turn = (cells: readonly string[]) => Array.from({ length: width }, (_, i) => cells[width - 1 - i] ?? '');
    return { ...t, heads: t.heads.map(turn), rows: t.rows.map(turn) };
  },
  'an empty column': (t) => insert(t, 0, '', () => ''),
  'numbers of rows': (t) => insert(t, 0, '#', (row) => String(row + 1)),
  remarks: (t) => insert(t, 0, 'Notes', (row) => (row % 5 === 3 ? String(row) : '')),
  'another measure': (t) => insert(t, widthOf(t), 'Humidity (%)', (row) => String(60 + (row % 9))),
  'a running mean': (t) => insert(t, t.values[0]!, 'Moving average (kWh)', (row) => String(1 + (row % 7) / 10)),
  'numbers of no meaning': (t) => insert(t, widthOf(t), 'Qx', (row) => String(3 + (row % 7) / 10)),
  'lines above': (t) => ({ ...t, titles: [['Report for the home'], [''], ...t.titles] }),
  'lines below': (t) => ({ ...t, rows: [...t.rows, [''], ['Page 1 of 1']] }),
  'empty rows': (t) => ({
    ...t,
    rows: t.rows.flatMap((cells, i) => (i % 10 === 9 ? [cells, cells.map(() => '')] : [cells])),
  }),
  'all quoted': (t) => textOf(t, '\r\n', true),
  'old line ends': (t) => textOf(t, '\r'),
  tabs: (t) => ({ ...t, separator: '\t' }),
  'two bytes a letter': (t) => new Uint8Array(Buffer.from(`\uFEFF${textOf(t)}`, 'utf16le')),
  'blanks that do not break': (t) => mapCells(t, (cell) => `\u00a0${cell}\u00a0`),
  'thin blanks': (t) => mapCells(t, (cell) => `\u2009${cell}\u202f`),
  'marks without a width': (t) => mapCells(t, (cell) => `\u200b${cell}`),
  'hyphens that do not break': (t) => mapCells(t, (cell) => cell.replaceAll('-', '\u2011')),
  'digits of full width': (t) => mapCells(t, fullWidth),
  'formulas of text': (t) => mapCells(t, (cell) => `="${cell}"`),
  'large letters': (t) => mapHeads(t, (head) => head.toUpperCase()),
  'small letters': (t) => mapHeads(t, (head) => head.toLowerCase()),
  'headings over two lines': (t) => mapHeads(t, (head) => head.replace(' ', '\n')),
  'noughts at the end': (t) => mapCells(t, (cell) => digits(cell, (n) => (/[.,]/.test(n) ? `${n}0000` : n)), t.values),
  workbook: (t) => writeWorkbook([{ name: 'Data', rows: [...t.titles, ...t.heads, ...t.rows] }]),
};

/** Only where rows hold amounts. */
export const SUMMED: Readonly<Record<string, Change>> = Object.fromEntries(
  ['', 'Total', 'Ø', '—', 'Selected period'].map((label) => [
    `a sum under "${label}"`,
    (t: WrittenTable) => ({ ...t, rows: [...t.rows, sumRow(t, label)] }),
  ]),
);

/** The unit above every number made another: how many times the answer that makes. */
export const UNITS: readonly (readonly [from: string, to: string, times: number])[] = [
  ['kWh', 'Wh', 0.001],
  ['kWh', 'MWh', 1000],
  ['kWh', 'MJ', 1 / 3.6],
  ['MWh', 'kWh', 0.001],
  ['Wh', 'kWh', 1000],
  ['kW', 'W', 0.001],
];
export function withUnit(t: WrittenTable, from: string, to: string): WrittenTable | undefined {
  const unit = new RegExp(`(?<![\\p{L}\\d/])${from}(?![\\p{L}\\d])`, 'gu');
  const change = (cells: readonly string[]) => cells.map((cell) => cell.replaceAll(unit, to));
  if (!t.heads.some((cells) => t.values.some((i) => unit.test(cells[i] ?? '')))) return undefined;
  return { ...t, titles: t.titles.map(change), heads: t.heads.map(change), rows: t.rows.map(change) };
}

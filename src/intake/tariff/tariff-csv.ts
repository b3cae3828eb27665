/**
 * Our tariff CSV. Lines of a word and a value (tariff, fuel, valid from, standing, vat), then rows
 * `band,from,to,days,months,pence per kWh`; another `valid from` begins the next version. A band without times is
 * the rest of the day; a band named twice has two windows.
 */

import { compareDates, toCivilDate } from '../../model/calendar/civil.ts';
import { Tariff, type TariffBand, type TariffVersion, type TariffWindow } from '../../model/shapes/tariff.ts';
import { tell, type Wording } from '../../model/shapes/told.ts';
import { isDotted, writesMonthFirst } from '../dates/decide-day-first.ts';
import { readStamp } from '../dates/read-stamp.ts';
import { createStampReader, READ } from '../dates/stamp-reader.ts';
import { isMissing, readAwkwardNumber } from '../numbers/read-number.ts';
import { moneysIn } from '../terms/money-words.ts';
import { type RemarkBook, tellNumber } from '../terms/remark-book.ts';
import { findSeparator } from '../text/separator.ts';
import { rowTexts, splitTable } from '../text/table.ts';
import { coinOf, type TariffContext, usualVatRate } from './home-terms.ts';
import { findPriceColumn, type PriceColumn, pencePerKWhOf } from './price-column.ts';
import { refuseIssues } from './refuse-issues.ts';
import { readDays, readMonths, readTime } from './windows.ts';

interface Draft {
  from: string | undefined;
  standing: number | undefined;
  vat: TariffVersion['vat'] | undefined;
  readonly bands: { name: string; pencePerKWh: number; windows: TariffWindow[]; rest: boolean }[];
}

const COLUMN_WORDS = {
  band: /^(band|name|rate)$/,
  from: /^(from|start)$/,
  to: /^(to|end|until)$/,
  days: /^days?$/,
  months: /^months?$/,
} as const;
type Columns = Partial<Record<keyof typeof COLUMN_WORDS, number>> & { readonly price: PriceColumn };

export function readTariffCsv(fileName: string, text: string, context: TariffContext, book: RemarkBook): Tariff | null {
  const { separator, start } = findSeparator(text);
  const table = splitTable(text, separator, start);
  if (!table) return null;
  // A whole cell like 41,5 writes its decimals with a comma; a date like 01.10.2026 says nothing of it.
  const writesComma = separator !== ',' && /(^|[;\t|])\s*-?\d+,\d+\s*($|[;\t|\r\n])/m.test(text);
  const decimal = writesComma ? ',' : '.';
  const drafts: Draft[] = [];
  let columns: Columns | undefined;
  let name = fileName.replace(/\.[a-z]{2,5}$/i, '').slice(0, 120) || 'Tariff';
  let fuel: Tariff['fuel'] | undefined;
  const current = (): Draft => {
    const last = drafts.at(-1);
    if (last) return last;
    const first: Draft = { from: undefined, standing: undefined, vat: undefined, bands: [] };
    drafts.push(first);
    return first;
  };
  for (let row = 0; row < table.rowCount; row++) {
    const cells = rowTexts(table, row);
    const line = table.lineOfRow[row]!;
    const word = (cells[0] ?? '')
      .toLowerCase()
      .replaceAll(/[_\s]+/g, ' ')
      .replace(/ ?(\(.*\)|:)$/, '');
    const value = cells.slice(1).find((cell) => cell !== '') ?? '';
    const wrong = (column: string, expectedTold: Wording, found = value) =>
      book.add('tariff-row', 'refusal', { row: line, column, found: found.slice(0, 60), expectedTold });
    if (/^(tariff|tariff name)$/.test(word)) name = value.slice(0, 120) || name;
    else if (word === 'fuel') {
      fuel = /gas/i.test(value) ? 'gas' : /elec/i.test(value) ? 'electricity' : undefined;
      if (!fuel) wrong('fuel', 'electricity or gas');
    } else if (/^valid from$/.test(word)) {
      const date = readDate(value, isDotted(value) || !writesMonthFirst(context.zone), (expected) =>
        book.add('tariff-date-asked', 'question', { row: line, column: cells[0]!, found: value, expected }),
      );
      if (!date) wrong('valid from', 'a date such as 2026-10-01');
      const last = drafts.at(-1);
      if (last && last.from === undefined) last.from = date;
      else drafts.push({ from: date, standing: last?.standing, vat: last?.vat, bands: [] });
    } else if (/^standing( charge)?/.test(word)) {
      const pence = pencePerDay(cells[0]!, value, decimal, columns?.price);
      if (Number.isNaN(pence))
        wrong('standing', tell('money-a-day', { unit: coinOf(context) }), `${cells[0]} ${value}`);
      else current().standing = pence;
    } else if (word === 'vat') {
      const vat = readVat(value, decimal);
      if (vat) current().vat = vat;
      else wrong('vat', '"5 % included" or "5 % not included"');
    } else {
      const price =
        cells.length > 1 && !hasNumber(cells, decimal) ? findPriceColumn(cells, line, context, book) : undefined;
      // Without it none of the rows below can be read.
      if (price === 'refused') return null;
      if (price) {
        columns = columnsOf(cells, price);
        const used = Object.values({ ...columns, price: price.column });
        const others = cells.filter((cell, at) => cell !== '' && !used.includes(at) && !price.others.includes(at));
        if (others.length > 0) book.add('tariff-columns-left-out', 'note', { row: line, found: others.join(', ') });
      } else if (columns) {
        const fault = readBand(cells, columns, decimal, current());
        if (fault) wrong(fault.column, fault.expected, fault.found);
      } else book.tally('tariff-line-left-out', 'note', { row: line, found: cells.join(' ').slice(0, 60) });
    }
  }
  if (!columns) book.add('tariff-columns', 'refusal', { expected: `${coinOf(context)}/kWh` });
  if (book.refused()) return null;
  if (!fuel) book.add('tariff-fuel-guessed', 'question', { expected: 'electricity' });
  const vatRate = usualVatRate(context);
  if (drafts.some((d) => !d.vat)) book.add('tariff-vat-guessed', 'question', tellNumber(100 * vatRate));
  return finish(
    {
      id: 'tariff-1',
      name,
      fuel: fuel ?? 'electricity',
      origin: tell('from-file', { file: fileName }),
      grade: 'measured',
    },
    drafts,
    context,
    book,
  );
}

const hasNumber = (cells: readonly string[], decimal: '.' | ','): boolean =>
  cells.slice(1).some((cell) => !Number.isNaN(readAwkwardNumber(cell, decimal)));

/** @param ask hears which order was taken where both are dates and differ */
function readDate(text: string, isDayFirst: boolean, ask: (taken: 'day first' | 'month first') => void) {
  const reader = createStampReader();
  const [taken, other] = [isDayFirst, !isDayFirst].map((dayFirst) =>
    readStamp(text, 0, text.length, dayFirst, reader) === READ
      ? toCivilDate(Math.floor(reader.civilMinute / 1440))
      : undefined,
  );
  if (taken !== undefined && other !== undefined && taken !== other && !isDotted(text))
    ask(isDayFirst ? 'day first' : 'month first');
  return taken ?? other;
}

/** A daily charge in pence; NaN where it is no number, one of a month or a year, or without a unit below prices that are not in pence. */
function pencePerDay(word: string, value: string, decimal: '.' | ',', above: PriceColumn | undefined): number {
  const said = `${word.toLowerCase().replaceAll('_', ' ')} ${value.toLowerCase()}`;
  const number = value.replace(/ ?(p|pence|ct|cents?|£|€|pounds?|euros?|gbp|eur)?( a day| per day| ?\/ ?day)?$/i, '');
  if (/month|year|annum|annual|quarter|week|kwh/.test(said)) return Number.NaN;
  const amount = readAwkwardNumber(number, decimal);
  const isHundredths = /(?<![a-z])(p|pence|ct|cents?)(?![a-z])/.test(said);
  const isMain = !isHundredths && moneysIn(said).length > 0;
  if (!isHundredths && !isMain && above !== undefined && above.pence !== 1) return Number.NaN;
  return isMain ? Math.round(amount * 10_000) / 100 : amount;
}

function readVat(text: string, decimal: '.' | ','): TariffVersion['vat'] | undefined {
  const words = text.toLowerCase();
  const number = readAwkwardNumber(/[\d.,]+/.exec(words)?.[0] ?? '', decimal);
  if (Number.isNaN(number) || number >= 100) return undefined;
  const rate = words.includes('%') || number >= 1 ? number / 100 : number;
  if (/not incl|excl|without|\bex\b/.test(words)) return { rate, included: false };
  if (/incl/.test(words)) return { rate, included: true };
  return undefined;
}

function columnsOf(cells: readonly string[], price: PriceColumn): Columns {
  const columns: Omit<Columns, 'price'> = {};
  cells.forEach((cell, index) => {
    const words = cell.trim().toLowerCase();
    for (const [column, pattern] of Object.entries(COLUMN_WORDS) as [keyof typeof COLUMN_WORDS, RegExp][])
      if (index !== price.column && columns[column] === undefined && pattern.test(words)) columns[column] = index;
  });
  return { ...columns, price };
}

interface RowFault {
  readonly column: string;
  readonly expected: Wording;
  readonly found: string;
}

function readBand(cells: readonly string[], columns: Columns, decimal: '.' | ',', draft: Draft): RowFault | undefined {
  const cell = (column: keyof typeof COLUMN_WORDS): string =>
    columns[column] === undefined ? '' : (cells[columns[column]] ?? '');
  const name = cell('band') || `band ${draft.bands.length + 1}`;
  const price = cells[columns.price.column] ?? '';
  const amount = readAwkwardNumber(price, decimal);
  const pencePerKWh = pencePerKWhOf(columns.price, amount);
  if (isMissing(price) || Number.isNaN(amount))
    return { column: 'pence per kWh', expected: tell('a-number'), found: price };
  const known = draft.bands.find((band) => band.name === name);
  if (known && known.pencePerKWh !== pencePerKWh)
    return {
      column: 'pence per kWh',
      expected: tell('as-in-other-row', { pence: known.pencePerKWh, band: name }),
      found: price,
    };
  const band = known ?? { name, pencePerKWh, windows: [], rest: false };
  if (!known) draft.bands.push(band);
  const days = readDays(cell('days'));
  if (!days) return { column: 'days', expected: 'days such as mon-fri', found: cell('days') };
  const months = readMonths(cell('months'));
  if (!months) return { column: 'months', expected: 'months such as oct-mar', found: cell('months') };
  if (/^(rest|)$/i.test(cell('from')) && cell('to') === '' && days.length + months.length === 0) {
    band.rest = true;
    return undefined;
  }
  const from = readTime(cell('from') || '00:00');
  if (!from) return { column: 'from', expected: tell('time-such-as', { time: '00:30' }), found: cell('from') };
  const to = readTime(cell('to') || '24:00');
  if (!to) return { column: 'to', expected: tell('time-such-as', { time: '05:30' }), found: cell('to') };
  band.windows.push({
    ...(months.length > 0 ? { months } : {}),
    ...(days.length > 0 ? { days } : {}),
    from: from === '24:00' ? '00:00' : from,
    to,
  });
  return undefined;
}

function finish(
  title: Omit<Tariff, 'versions'>,
  drafts: readonly Draft[],
  context: TariffContext,
  book: RemarkBook,
): Tariff | null {
  const missing = (column: string, expectedTold: Wording) =>
    book.add('tariff-wrong', 'question', { column, found: '', expectedTold });
  if (drafts.some((d) => d.from === undefined)) missing('valid from', 'the first day of these prices');
  if (drafts.some((d) => d.standing === undefined))
    missing('standing', tell('standing-a-day', { unit: coinOf(context) }));
  const versions = drafts.map((draft) => ({
    from: draft.from ?? '2000-01-01',
    standingPencePerDay: draft.standing ?? 0,
    vat: draft.vat ?? { rate: usualVatRate(context), included: true },
    bands: draft.bands.map(
      (band): TariffBand => ({
        name: band.name,
        pencePerKWh: band.pencePerKWh,
        times: band.rest || band.windows.length === 0 ? 'rest' : band.windows,
      }),
    ),
  }));
  const parsed = Tariff.safeParse({ ...title, versions: versions.toSorted((a, b) => compareDates(a.from, b.from)) });
  if (parsed.success) return parsed.data;
  refuseIssues(parsed.error.issues, { versions }, book);
  return null;
}

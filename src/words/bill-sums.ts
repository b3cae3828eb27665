/** The sums of a bill in words: what it should come to, where it differs, and what would explain that. */

import type { CheckedBill, Explanation } from '../model/bill/check-bill-sums.ts';
import type { BillRow } from '../model/bill/compare-rows.ts';
import type { Piece } from '../model/bill/terms.ts';
import { counted, grouped, longDate, percent, poundsAndPence } from './numbers.ts';

/** The answer in one sentence. */
export function billSumsSentence(checked: CheckedBill): string {
  const { differencePence, reckonedPence, rows } = checked;
  if (checked.agrees) {
    return differencePence === undefined
      ? `By these figures the bill comes to ${poundsAndPence(reckonedPence)}.`
      : 'The sums on this bill are right to the penny.';
  }
  const size = Math.abs(differencePence ?? 0);
  if (size > 1) {
    return `This bill asks ${poundsAndPence(size)} too ${differencePence! > 0 ? 'much' : 'little'}, by these figures.`;
  }
  const wrong = rows.filter(({ kind, difference = 0 }) => MONEY.includes(kind) && Math.abs(difference) > 1).length;
  const total = differencePence === undefined ? 'No total is given, and' : 'The total is right, but';
  return `${total} ${counted(wrong, 'line differs', 'lines differ')} from what ${wrong === 1 ? 'it' : 'they'} should be.`;
}
const MONEY: readonly BillRow['kind'][] = ['units', 'standing', 'vat'];

interface Data {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}
const kWh = (value: number) => `${grouped(value, Number.isInteger(Number(value.toFixed(2))) ? 0 : 1)} kWh`;
const plain = (value: number) => grouped(value, 3).replace(/\.?0+$/, '');
const apart = (a: number, b: number) => `${kWh(Math.abs(a - b))} too ${a > b ? 'many' : 'few'}`;

/** A bill's only register needs no name. */
const forMeter = (text: Data['text']): string =>
  text('meter') === 'gas' || text('meter') === 'all hours' ? '' : ` for “${text('meter')}”`;

const CATALOGUE: Readonly<Record<string, (data: Data) => string>> = {
  'estimated-reading': ({ number, text }) =>
    `The bill rests on an estimated reading. It charges ${kWh(number('billedKWh'))}${forMeter(text)}, your readings say ${kWh(number('ownKWh'))}. Give the supplier your reading.`,
  'reading-differs': ({ number, text }) =>
    `The bill charges ${kWh(number('billedKWh'))}${forMeter(text)}. Your own readings say ${kWh(number('ownKWh'))}. Look at the meter again, then tell the supplier.`,
  'units-not-from-readings': ({ number, text }) =>
    `The units${forMeter(text)} do not follow from the two readings. They are ${apart(number('billedKWh'), number('readKWh'))}.`,
  'old-rate': ({ text }) =>
    `${partOf(text('part'))} charged at the old price, that of ${longDate(text('versionFrom'))}. ${text('newerFrom') === '' ? 'Newer prices hold for some or all of the days.' : `A new price holds from ${longDate(text('newerFrom'))} on.`}`,
  'rate-too-early': ({ text }) =>
    `${partOf(text('part'))} charged at the price of ${longDate(text('versionFrom'))} on all days. That price begins later than the bill does.`,
  'calorific-value': ({ number, text }) =>
    `The units${forMeter(text)} were worked out with a calorific value of ${plain(number('used'))}. The bill says ${plain(number('printed'))} MJ/m³.`,
  'correction-missing': ({ number }) =>
    `The volume was not corrected. The gas should be multiplied by ${grouped(number('correction'), 5)} before it becomes kWh.`,
  'meter-unit': ({ text }) =>
    `The meter counts ${text('printed')}, but the bill was worked out as if it counted ${text('used')}.`,
  'registers-swapped': ({ text }) =>
    `“${text('first')}” and “${text('second')}” are swapped. The units of one were charged at the price of the other.`,
  'vat-rate': ({ number }) =>
    number('rate') === 0
      ? `No VAT was charged. It should be ${percent(number('expected'))}.`
      : `VAT was charged at ${percent(number('rate'))}. It should be ${percent(number('expected'))}.`,
  'vat-twice': ({ number }) => `VAT of ${percent(number('rate'))} was charged twice: it was already in the sum.`,
  'vat-order': () => 'VAT was worked out on the wrong side of the discounts and credits.',
  'standing-days': ({ number }) =>
    `The standing charge is for ${counted(number('days'), 'day')}. From the first day to the last there are ${grouped(number('expected'))}.`,
  'discount-missing': ({ number, text }) =>
    `“${text('name')}”, ${poundsAndPence(number('pence'))}, was not taken off the total.`,
};

const partOf = (part: string): string =>
  part === 'units'
    ? 'The units were'
    : part === 'standing'
      ? 'The standing charge was'
      : 'Units and standing charge were';

/** Causes that have words. */
export const BILL_CAUSE_CODES: readonly string[] = Object.keys(CATALOGUE);

export function billCauseSentence({ code, data }: Explanation['causes'][number]): string {
  const sentence = CATALOGUE[code];
  if (!sentence) return `${code.replaceAll('-', ' ')}.`;
  return sentence({
    number: (name) => Number(data[name] ?? Number.NaN),
    text: (name) => String(data[name] ?? ''),
  });
}

/** How far an explanation reaches: stands before its causes. */
export function reachSentence({ reach, causes, leftPence }: Explanation): string {
  if (reach === 'most') return `This would explain most of it, all but ${poundsAndPence(leftPence)}:`;
  return causes.length > 1
    ? 'These two together would explain it to the penny:'
    : 'This would explain it to the penny:';
}

/** What stands where no explanation fits. */
export const NO_EXPLANATION =
  'None of the usual slips explains this. Compare the readings, dates and prices with the paper once more, then ask the supplier.';

/** Name of a row in the table. */
export function rowName(row: BillRow, several: boolean): string {
  switch (row.kind) {
    case 'energy':
      return several ? `Units, ${row.name}` : 'Units';
    case 'units':
      return several ? `Charge for ${row.name}` : 'Charge for units';
    case 'days':
      return 'Days of standing charge';
    case 'standing':
      return 'Standing charge';
    case 'adjustment':
      return row.name;
    case 'net':
      return 'Before VAT';
    case 'vat':
      return 'VAT';
    case 'total':
      return 'Total';
  }
}

/** A value of a row with its unit: "900 kWh", "91", "£52.06". */
export function rowValue(row: BillRow, value: number | undefined): string {
  if (value === undefined) return '';
  if (row.unit === 'p') return poundsAndPence(value);
  return row.unit === 'kWh' ? kWh(value) : grouped(value);
}

/** The sum behind a row of money: "900 kWh at 24.67 p"; both prices where they change within it. */
export function rowSum({ kind, pieces = [], quantity = 0, per = 'day' }: BillRow): string {
  const days = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  if (kind === 'standing') {
    const said = (piece: Piece) => `${plain(piece.quantity)} ${per}${piece.quantity === 1 ? '' : 's'}`;
    return pieces.map((piece) => `${said(piece)} at ${plain(piece.price)} p`).join(', ');
  }
  if (kind !== 'units') return '';
  return pieces
    .map(({ price, quantity: part }) => `${kWh(days > 0 ? (quantity * part) / days : quantity)} at ${plain(price)} p`)
    .join(', ');
}

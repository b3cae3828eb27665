/** The sums of a bill in words: what it should come to, where it differs, and what would explain that. */

import type { CheckedBill, Explanation } from '../model/bill/check-bill-sums.ts';
import type { BillRow } from '../model/bill/compare-rows.ts';
import type { SuspicionCode } from '../model/bill/suspicions.ts';
import type { Piece } from '../model/bill/terms.ts';
import { counted, grouped, longDate, penceSign, percent, poundsAndPence } from './numbers.ts';
import { type GapReader, readGaps } from './read-gaps.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { lookUp, unknownSentence } from './unknown.ts';

/** The answer in one sentence. */
export function billSumsSentence(checked: CheckedBill): string {
  const { differencePence, reckonedPence, rows } = checked;
  if (checked.agrees) {
    return differencePence === undefined
      ? say('By these figures the bill comes to {amount}.', { amount: poundsAndPence(reckonedPence) })
      : say('The sums on this bill are right to the penny.');
  }
  const size = Math.abs(differencePence ?? 0);
  if (size > 1) {
    return say('This bill asks {amount} too {way, select, much {much} other {little}}, by these figures.', {
      amount: poundsAndPence(size),
      way: differencePence! > 0 ? 'much' : 'little',
    });
  }
  const count = rows.filter(({ kind, difference = 0 }) => MONEY.includes(kind) && Math.abs(difference) > 1).length;
  return say(
    '{total, select, none {No total is given, and} other {The total is right, but}} {count, plural, one {# line differs from what it should be} other {# lines differ from what they should be}}.',
    { total: differencePence === undefined ? 'none' : 'right', count },
  );
}
const MONEY: readonly BillRow['kind'][] = ['units', 'standing', 'vat'];

const kWh = (value: number) => `${grouped(value, Number.isInteger(Number(value.toFixed(2))) ? 0 : 1)} kWh`;
const plain = (value: number) => grouped(value, 3).replace(/[.,]?0+$/, '');
const price = (value: number) => `${plain(value)} ${penceSign()}`;

/** For "{named, select, yes { for “{meter}”} other {}}": a bill's only register needs no name. */
const meterOf = (text: GapReader['text']) => ({
  named: text('meter') === 'gas' || text('meter') === 'all hours' ? 'no' : 'yes',
  meter: sayTold(text('meter')),
});

const CATALOGUE: Readonly<Record<SuspicionCode, (data: GapReader) => string>> = {
  'estimated-reading': ({ number, text }) =>
    say(
      'The bill is based on an estimated reading. It charges {billed}{named, select, yes { for “{meter}”} other {}}, your readings say {own}. Give the supplier your reading.',
      { billed: kWh(number('billedKWh')), own: kWh(number('ownKWh')), ...meterOf(text) },
    ),
  'reading-differs': ({ number, text }) =>
    say(
      'The bill charges {billed}{named, select, yes { for “{meter}”} other {}}. Your own readings say {own}. Look at the meter again, then tell the supplier.',
      { billed: kWh(number('billedKWh')), own: kWh(number('ownKWh')), ...meterOf(text) },
    ),
  'units-not-from-readings': ({ number, text }) => {
    const apart = number('billedKWh') - number('readKWh');
    return say(
      'The kWh{named, select, yes { for “{meter}”} other {}} do not match the two readings. They are {apart} too {way, select, many {many} other {few}}.',
      { apart: kWh(Math.abs(apart)), way: apart > 0 ? 'many' : 'few', ...meterOf(text) },
    );
  },
  'old-rate': ({ text }) => {
    const old = say(
      '{part, select, units {The kWh were} standing {The standing charge was} other {kWh and standing charge were}} charged at the old price, that of {date}.',
      { part: text('part'), date: longDate(text('versionFrom')) },
    );
    const newer =
      text('newerFrom') === ''
        ? say('Newer prices apply on some or all of the days.')
        : say('A new price applies from {date} on.', { date: longDate(text('newerFrom')) });
    return `${old} ${newer}`;
  },
  'rate-too-early': ({ text }) =>
    say(
      '{part, select, units {The kWh were} standing {The standing charge was} other {kWh and standing charge were}} charged at the price of {date} on all days. That price begins later than the bill does.',
      { part: text('part'), date: longDate(text('versionFrom')) },
    ),
  'calorific-value': ({ number, text }) =>
    say(
      'The kWh{named, select, yes { for “{meter}”} other {}} were worked out with a calorific value of {used}. The bill says {printed} MJ/m³.',
      { used: plain(number('used')), printed: plain(number('printed')), ...meterOf(text) },
    ),
  'correction-missing': ({ number }) =>
    say('The volume was not corrected. The gas should be multiplied by {correction} before it becomes kWh.', {
      correction: grouped(number('correction'), 5),
    }),
  'meter-unit': ({ text }) =>
    say('The meter counts {printed}, but the bill was worked out as if it counted {used}.', {
      printed: sayTold(text('printed')),
      used: sayTold(text('used')),
    }),
  'registers-swapped': ({ text }) =>
    say('“{first}” and “{second}” are swapped. The kWh of one were charged at the price of the other.', {
      first: sayTold(text('first')),
      second: sayTold(text('second')),
    }),
  'vat-rate': ({ number }) => {
    const expected = percent(number('expected'));
    if (number('rate') === 0) return say('No VAT was charged. It should be {expected}.', { expected });
    return say('VAT was charged at {rate}. It should be {expected}.', { rate: percent(number('rate')), expected });
  },
  'vat-twice': ({ number }) =>
    say('VAT of {rate} was charged twice: it was already in the sum.', { rate: percent(number('rate')) }),
  'vat-order': () => say('VAT was worked out on the wrong side of the discounts and credits.'),
  'standing-days': ({ number }) =>
    say('The standing charge is for {days}. From the first day to the last there are {expected}.', {
      days: counted(number('days'), 'day'),
      expected: grouped(number('expected')),
    }),
  'discount-missing': ({ number, text }) =>
    say('“{name}”, {amount}, was not taken off the total.', {
      name: text('name'),
      amount: poundsAndPence(number('pence')),
    }),
};

export function billCauseSentence({ code, data }: Explanation['causes'][number]): string {
  const sentence = lookUp(CATALOGUE, code);
  return sentence ? sentence(readGaps(data)) : unknownSentence(code);
}

/** How far an explanation reaches: stands before its causes. */
export function reachSentence({ reach, causes, leftPence }: Explanation): string {
  if (reach === 'most')
    return say('This would explain most of it, all but {amount}:', { amount: poundsAndPence(leftPence) });
  return say(
    causes.length > 1 ? 'These two together would explain it to the penny:' : 'This would explain it to the penny:',
  );
}

/** What stands where no explanation fits. */
export const NO_EXPLANATION = phrase(
  'None of the usual mistakes explains this. Compare the readings, dates and prices with the paper once more, then ask the supplier.',
);

/** Name of a row in the table. */
export function rowName(row: BillRow, several: boolean): string {
  const name = sayTold(row.name);
  switch (row.kind) {
    case 'energy':
      return several ? say('kWh, {name}', { name }) : say('kWh');
    case 'units':
      return several ? say('Charge for {name}', { name }) : say('Charge for energy');
    case 'days':
      return say('Days of standing charge');
    case 'standing':
      return say('Standing charge');
    case 'adjustment':
      return row.name;
    case 'net':
      return say('Before VAT');
    case 'vat':
      return say('VAT');
    case 'total':
      return say('Total');
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
  const at = (amount: string, piece: Piece) => say('{amount} at {price}', { amount, price: price(piece.price) });
  if (kind === 'standing') {
    const amount = ({ quantity }: Piece) => `${plain(quantity)} ${say(quantity === 1 ? per : `${per}s`)}`;
    return pieces.map((piece) => at(amount(piece), piece)).join(', ');
  }
  if (kind !== 'units') return '';
  return pieces.map((piece) => at(kWh(days > 0 ? (quantity * piece.quantity) / days : quantity), piece)).join(', ');
}

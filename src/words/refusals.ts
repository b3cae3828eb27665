/** What is wrong with a tariff, with the hour named and what to do. */

import type { BillFault } from '../model/bill-gap/bill-faults.ts';
import type { TariffFaultCode } from '../model/tariff/check-tariff.ts';
import { counted, grouped, longDate, monthNames, pence, percent, poundsAndPence } from './numbers.ts';
import { type CodeData, type GapReader, readGaps } from './read-gaps.ts';
import { phrase, say } from './say.ts';
import { lookUp, unknownSentence } from './unknown.ts';

const DAYS: Readonly<Record<string, string>> = {
  mon: phrase('Mondays'),
  tue: phrase('Tuesdays'),
  wed: phrase('Wednesdays'),
  thu: phrase('Thursdays'),
  fri: phrase('Fridays'),
  sat: phrase('Saturdays'),
  sun: phrase('Sundays'),
  'bank-holiday': phrase('bank holidays'),
};

/** For "on Mondays in January from 00:30 to 05:30". */
const when = ({ number, text }: GapReader) => ({
  days: say(DAYS[text('day')] ?? text('day')),
  month: monthNames()[number('month') - 1] ?? say('every month'),
  from: text('from'),
  to: text('to'),
});
const oftener = ({ number }: GapReader): string => {
  const count = number('count') - 1;
  if (!(count > 0)) return '';
  return ` ${say('{count, plural, one {There is # more such stretch.} other {There are # more such stretches.}}', { count })}`;
};

const CATALOGUE: Readonly<Record<TariffFaultCode, (data: GapReader) => string>> = {
  'band-gap': (data) =>
    `${say('There is no price on {days} in {month} from {from} to {to}.', when(data))}${oftener(data)} ${say('Give the hours a band, or let one hold at all other times (“rest” in a file).')}`,
  'band-overlap': (data) => {
    const claim = say(
      'Two prices claim the same time on {days} in {month} from {from} to {to}: “{first}” and “{second}”.',
      { ...when(data), first: data.text('first'), second: data.text('second') },
    );
    return `${claim}${oftener(data)} ${say('Change the hours of one of them.')}`;
  },
  'versions-order': ({ text }) =>
    say('The prices from {from} stand after those from {previous}. Put them in order of date.', {
      from: longDate(text('from')),
      previous: longDate(text('previous')),
    }),
  'version-twice': ({ text }) =>
    say('Two sets of prices begin on {from}. Remove one of them.', { from: longDate(text('from')) }),
  'until-before-version': ({ text }) =>
    say('The prices end on {until}, before they begin on {from}. Correct one of the dates.', {
      until: longDate(text('until')),
      from: longDate(text('from')),
    }),
  'rest-twice': ({ text }) =>
    say('Both “{first}” and “{second}” claim the rest of the time. Only one band may.', {
      first: text('first'),
      second: text('second'),
    }),
  'rest-empty': ({ text }) =>
    say('No time is left for “{name}”. Remove it, or change the hours of the others.', { name: text('name') }),
  'band-name-twice': ({ text }) => say('Two bands are named “{name}”. Give each its own name.', { name: text('name') }),
  'window-empty': ({ text }) =>
    say('“{name}” begins and ends at {time}. Give it a time that lasts; a whole day is 00:00 to 24:00.', {
      name: text('name'),
      time: text('time'),
    }),
  'window-off-half-hour': ({ text }) =>
    say('“{name}” changes at {time}. Sums here go by the half-hour, so the change is taken at the next one.', {
      name: text('name'),
      time: text('time'),
    }),
  'standing-negative': ({ number }) =>
    say('A standing charge of {price} a day is below zero. Type what is paid for each day.', {
      price: pence(number('pence')),
    }),
  'standing-unusual': ({ number }) =>
    say('A standing charge of {price} a day is high. Is it perhaps for a month?', { price: pence(number('pence')) }),
  'standing-low': ({ number }) =>
    say('A standing charge of {price} a day is low. Is it in pence?', { price: pence(number('pence')) }),
  'price-unusual': ({ number, text }) =>
    say('“{name}” at {price} per kWh is unusual. Most lie between {low} and {high}. Is it in pence?', {
      name: text('name'),
      price: pence(number('pence')),
      low: pence(number('low')),
      high: pence(number('high')),
    }),
  'vat-unusual': ({ number }) =>
    say('VAT of {rate} is unusual. Homes pay 5% on energy. Check the bill.', { rate: percent(number('rate')) }),
  'holidays-without-region': ({ text }) =>
    say('“{name}” has a price for bank holidays. Say which country’s bank holidays count.', { name: text('name') }),
  'two-modules': () =>
    say(
      '§ 14a EnWG gives a sum by the year or a lower price on a meter of its own, never both. Remove one of the two.',
    ),
  'own-meter-unusual': ({ number }) =>
    say('{price} are taken off each kWh of the heat pump, so much that nothing is left of a price. Check the two.', {
      price: pence(number('pence')),
    }),
  'standing-twice': ({ number }) =>
    say('The standing charge stands twice: {daily} a day and {monthly} a month. Keep one.', {
      daily: pence(number('pence')),
      monthly: poundsAndPence(number('monthPence')),
    }),
  'blocks-order': ({ number, text }) =>
    say('The steps of “{name}” go back from {before} to {upTo} kWh. Put them in order.', {
      name: text('name'),
      before: grouped(number('before')),
      upTo: grouped(number('upTo')),
    }),
  'blocks-with-series': ({ text }) =>
    say(
      '“{name}” has steps, and each half-hour has its own price too. Take the steps out, or the half-hours. Prices that change over from one to the other are two versions, each with its first day.',
      { name: text('name') },
    ),
  'export-unusual': ({ number }) =>
    say('Export at {price} pays more than a kWh costs, {dearest}. Check the figure.', {
      price: pence(number('pence')),
      dearest: pence(number('dearest')),
    }),
  'series-order': ({ text }) =>
    say('The prices of {date} stand after those of {previous}. Put the days in order, each once.', {
      date: longDate(text('date')),
      previous: longDate(text('previous')),
    }),
  'series-hole': ({ number, text }) =>
    say('There is no price from {date} at {time} on, for {days}. Add the missing prices.', {
      date: longDate(text('date')),
      time: text('time'),
      days: counted(number('days'), 'day'),
    }),
  'series-gap': ({ number, text }) =>
    say(
      'There is no price on {date} at {time}. {count, plural, one {# half-hour is missing. Add it.} other {# half-hours are missing. Add them.}}',
      { date: longDate(text('date')), time: text('time'), count: number('count') },
    ),
  'series-day-length': ({ number, text }) =>
    say(
      '{date} has {found, plural, one {# price} other {# prices}}, yet only {expected, plural, one {# half-hour} other {# half-hours}}. Take out what is too much.',
      { date: longDate(text('date')), found: number('found'), expected: number('expected') },
    ),
  'series-part-year': ({ number }) =>
    say('The half-hourly prices cover {days} of a year. The other {without} take the price beside them.', {
      days: counted(number('days'), 'day'),
      without: counted(number('without'), 'day'),
    }),
  'gas-with-times': ({ text }) =>
    say('Gas seldom has a price by the hour, yet “{name}” has one. Is this electricity?', { name: text('name') }),
};

/** Codes that have a sentence. */
export const TARIFF_FAULT_CODES: readonly string[] = Object.keys(CATALOGUE);

export function tariffFaultSentence(fault: { readonly code: string; readonly data: CodeData }): string {
  const sentence = lookUp(CATALOGUE, fault.code);
  return sentence ? sentence(readGaps(fault.data)) : unknownSentence(fault.code);
}

const BILL_FAULTS: Readonly<Record<BillFault['code'], (data: GapReader) => string>> = {
  'bill-ends-before-it-begins': ({ text }) =>
    say('The bill ends on {to}, before it begins on {from}. Correct one of the dates.', {
      to: longDate(text('to')),
      from: longDate(text('from')),
    }),
  'bill-too-long': ({ number }) =>
    say('The bill covers {days}. At most {most} can be checked at once, so take them in parts.', {
      days: counted(number('days'), 'day'),
      most: counted(number('most'), 'day'),
    }),
  'bill-price-missing': () =>
    say('The bill has kWh but no price. Type the price per kWh, or what the kWh cost together.'),
  'bill-in-credit': () =>
    say('The kWh of the bill would have cost less than nothing. Type what they cost before credits and payments.'),
  'bill-price-unlikely': ({ number }) =>
    say('The bill comes to {price} per kWh. A home pays between {low} and {high}. Correct the price, total or kWh.', {
      price: pence(number('pence'), 2),
      low: pence(number('low'), 0),
      high: pence(number('high'), 0),
    }),
  'tariff-changed-later': ({ text }) =>
    say('The tariff changed on {on}, after the bill ends on {to}. Correct the day, or remove it.', {
      on: longDate(text('on')),
      to: longDate(text('to')),
    }),
  'estimate-without-heat-pump': () => say('This estimate has no heat pump in it, so no bill can be compared with it.'),
};

/** Why a bill check cannot be made. */
export function billFaultSentence(fault: { readonly code: string; readonly data: CodeData }): string {
  const sentence = lookUp(BILL_FAULTS, fault.code);
  return sentence ? sentence(readGaps(fault.data)) : unknownSentence(fault.code);
}

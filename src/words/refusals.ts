/** What is wrong with a tariff, with the hour named and what to do. */
import type { TariffFault } from '../model/tariff/check-tariff.ts';
import { capitalised, counted, grouped, longDate, monthNames, pence, percent, poundsAndPence } from './numbers.ts';

const DAYS: Readonly<Record<string, string>> = {
  mon: 'Mondays',
  tue: 'Tuesdays',
  wed: 'Wednesdays',
  thu: 'Thursdays',
  fri: 'Fridays',
  sat: 'Saturdays',
  sun: 'Sundays',
  'bank-holiday': 'bank holidays',
};

interface Data {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
}

/** "on Mondays in January from 00:30 to 05:30". */
const when = ({ number, text }: Data): string =>
  `on ${DAYS[text('day')] ?? text('day')} in ${monthNames()[number('month') - 1] ?? 'every month'} from ${text('from')} to ${text('to')}`;
const oftener = ({ number }: Data): string => {
  const others = number('count') - 1;
  return others > 0 ? ` There are ${counted(others, 'more such stretch', 'more such stretches')}.` : '';
};

const CATALOGUE: Readonly<Record<string, (data: Data) => string>> = {
  'band-gap': (data) =>
    `There is no price ${when(data)}.${oftener(data)} Give the hours a band, or name one band “rest”.`,
  'band-overlap': (data) =>
    `Two prices claim the same time ${when(data)}: “${data.text('first')}” and “${data.text('second')}”.${oftener(data)} Change the hours of one of them.`,
  'versions-order': ({ text }) =>
    `The prices from ${longDate(text('from'))} stand after those from ${longDate(text('previous'))}. Put them in order of date.`,
  'version-twice': ({ text }) => `Two sets of prices begin on ${longDate(text('from'))}. Take one of them out.`,
  'until-before-version': ({ text }) =>
    `The prices end on ${longDate(text('until'))}, before they begin on ${longDate(text('from'))}. Correct one of the dates.`,
  'rest-twice': ({ text }) =>
    `Both “${text('first')}” and “${text('second')}” claim the rest of the time. Only one band may.`,
  'rest-empty': ({ text }) => `No time is left for “${text('name')}”. Take it out, or change the hours of the others.`,
  'band-name-twice': ({ text }) => `Two bands are named “${text('name')}”. Give each its own name.`,
  'window-empty': ({ text }) => `“${text('name')}” begins and ends at ${text('time')}. Give it a time that lasts.`,
  'window-off-half-hour': ({ text }) =>
    `“${text('name')}” changes at ${text('time')}. Sums here go by the half-hour, so the change is taken at the next one.`,
  'standing-negative': ({ number }) =>
    `A standing charge of ${pence(number('pence'))} a day is below zero. Type what is paid for each day.`,
  'standing-unusual': ({ number }) =>
    `A standing charge of ${pence(number('pence'))} a day is high. Is it perhaps for a month?`,
  'price-unusual': ({ number, text }) =>
    `“${text('name')}” at ${pence(number('pence'))} a unit is unusual. Most lie between ${pence(number('low'))} and ${pence(number('high'))}. Is it in pence?`,
  'vat-unusual': ({ number }) =>
    `VAT of ${percent(number('rate'))} is unusual. Homes pay 5% on energy. Check the bill.`,
  'holidays-without-region': ({ text }) =>
    `“${text('name')}” has a price for bank holidays. Say which country's bank holidays count.`,
  'standing-twice': ({ number }) =>
    `The standing charge stands twice: ${pence(number('pence'))} a day and ${poundsAndPence(number('monthPence'))} a month. Keep one.`,
  'blocks-order': ({ number, text }) =>
    `The steps of “${text('name')}” go back from ${grouped(number('before'))} to ${grouped(number('upTo'))} units. Put them in order.`,
  'blocks-with-series': ({ text }) =>
    `“${text('name')}” has steps, and each half-hour has its own price too. Take the steps out, or the half-hours. Prices that change over from one to the other are two versions, each with its first day.`,
  'export-unusual': ({ number }) =>
    `Export at ${pence(number('pence'))} pays more than a unit costs, ${pence(number('dearest'))}. Check the figure.`,
  'series-order': ({ text }) =>
    `The prices of ${longDate(text('date'))} stand after those of ${longDate(text('previous'))}. Put the days in order, each once.`,
  'series-hole': ({ number, text }) =>
    `There is no price from ${longDate(text('date'))} at ${text('time')} on, for ${counted(number('days'), 'day')}. Add the missing prices.`,
  'series-gap': ({ number, text }) =>
    `There is no price on ${longDate(text('date'))} at ${text('time')}. ${counted(number('count'), 'half-hour is', 'half-hours are')} missing. Add ${number('count') === 1 ? 'it' : 'them'}.`,
  'series-day-length': ({ number, text }) =>
    `${longDate(text('date'))} has ${counted(number('found'), 'price')}, yet only ${counted(number('expected'), 'half-hour')}. Take out what is too much.`,
  'series-part-year': ({ number }) =>
    `The half-hourly prices cover ${counted(number('days'), 'day')} of a year. The other ${counted(number('without'), 'day')} take the price beside them.`,
  'gas-with-times': ({ text }) =>
    `Gas seldom has a price by the hour, yet “${text('name')}” has one. Is this electricity?`,
};

/** Codes that have a sentence. */
export const TARIFF_FAULT_CODES: readonly string[] = Object.keys(CATALOGUE);

export function tariffFaultSentence(fault: Pick<TariffFault, 'code' | 'data'>): string {
  const sentence = CATALOGUE[fault.code];
  if (!sentence) return `${capitalised(fault.code.replaceAll('-', ' '))}.`;
  return sentence({
    number: (name) => Number(fault.data[name] ?? Number.NaN),
    text: (name) => String(fault.data[name] ?? ''),
  });
}

const BILL_FAULTS: Readonly<Record<string, (data: Data) => string>> = {
  'bill-ends-before-it-begins': ({ text }) =>
    `The bill ends on ${longDate(text('to'))}, before it begins on ${longDate(text('from'))}. Correct one of the dates.`,
  'bill-too-long': ({ number }) =>
    `The bill covers ${counted(number('days'), 'day')}. At most ${counted(number('most'), 'day')} can be checked at once, so take them in parts.`,
  'bill-price-missing': () =>
    'The bill has units but no price. Type the price of a unit, or what the units cost together.',
  'promise-without-heat-pump': () => 'This promise holds no heat pump, so no bill can be checked against it.',
};

export const BILL_FAULT_CODES: readonly string[] = Object.keys(BILL_FAULTS);

/** Why a bill check cannot be made. */
export function billFaultSentence(fault: {
  readonly code: string;
  readonly data: Readonly<Record<string, string | number>>;
}): string {
  const sentence = BILL_FAULTS[fault.code];
  if (!sentence) return `${capitalised(fault.code.replaceAll('-', ' '))}.`;
  return sentence({
    number: (name) => Number(fault.data[name] ?? Number.NaN),
    text: (name) => String(fault.data[name] ?? ''),
  });
}

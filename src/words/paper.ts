/** What was read of a bill on paper, in words: what each value is, and how we know it. */
import type { PaperValue } from '../intake/intake.ts';
import { capitalised } from './numbers.ts';
import { phrase, say } from './say.ts';
import { carrierName } from './systems.ts';

const NAMES: Readonly<Record<PaperValue['kind'], string>> = {
  fuel: phrase('kind of energy'),
  period: phrase('days of the bill'),
  opening: phrase('earlier reading'),
  closing: phrase('later reading'),
  volume: phrase('volume of gas'),
  factor: phrase('correction of the volume'),
  calorific: phrase('calorific value'),
  use: phrase('energy'),
  price: phrase('price per kWh'),
  charge: phrase('charge for energy'),
  days: phrase('days of the standing charge'),
  'standing-price': phrase('standing charge, its price'),
  'standing-charge': phrase('standing charge'),
  levy: phrase('levy'),
  extra: phrase('taken off or laid on'),
  net: phrase('before VAT'),
  'vat-rate': phrase('rate of VAT'),
  vat: phrase('VAT'),
  total: phrase('total of the bill'),
  payment: phrase('payment, not a cost'),
  balance: phrase('balance carried over, not a cost'),
  due: phrase('due after payments'),
  'next-payment': phrase('payment from now on'),
};

const REGISTERS: Readonly<Record<string, string>> = {
  day: phrase('day'),
  night: phrase('night'),
  'off peak': phrase('off peak'),
  peak: phrase('peak'),
  shoulder: phrase('shoulder'),
  'evening and weekend': phrase('evening and weekend'),
  'other times': phrase('other times'),
};

const READINGS = {
  actual: phrase('actual'),
  estimated: phrase('estimated'),
  customer: phrase('read by the household'),
  unknown: phrase('not said whether read or estimated'),
} as const;

/** "Later reading, day, estimated". A name from the paper stands as it is there. */
export function paperValueName({ kind, name, fuel, reading }: PaperValue): string {
  const isOnly = name === undefined || name === fuel || name === 'all hours';
  const about = isOnly ? [] : [REGISTERS[name] ? say(REGISTERS[name]) : name];
  const how = reading === undefined ? [] : [say(READINGS[reading])];
  return [capitalised(say(NAMES[kind])), ...about, ...how].join(', ');
}

export const paperValueText = ({ kind, text }: PaperValue): string => (kind === 'fuel' ? carrierName(text) : text);

/** "Proved by 416 kWh × 30.40 p = £126.46". Of what contradicts, the sum that fails comes first, then those that hold. */
export function paperStateWords({ kind, state, isTyped, sums, meaning }: PaperValue): string {
  const listed = (some: readonly string[]) => some.slice(0, 2).join(say(' and '));
  if (state === 'typed')
    return sums.length === 0 ? say('typed by you') : say('typed by you; fits {sums}', { sums: listed(sums) });
  if (kind === 'fuel') return say('a word on the page says it');
  const [against = '', ...holding] = sums;
  const known =
    state === 'proved'
      ? say('proved by {sums}', { sums: listed(sums) })
      : state === 'read'
        ? say('read on the page, nothing proves it')
        : holding.length === 0
          ? say('contradicted: {sums}', { sums: against })
          : say('contradicted: {against}; yet {sums}', { against, sums: listed(holding) });
  const whose = isTyped ? say('typed by you; {known}', { known }) : known;
  return meaning === 'said' ? whose : say('{known}; what it is for was guessed', { known: whose });
}

/** What was read of a bill on paper, in words: what each value is, and how we know it. */
import type { PaperValue } from '../intake/intake.ts';
import { capitalised } from './numbers.ts';
import { phrase, say } from './say.ts';
import { carrierName } from './systems.ts';

const NAMES: Readonly<Record<PaperValue['kind'], string>> = {
  fuel: phrase('fuel'),
  period: phrase('days of the bill'),
  opening: phrase('earlier reading'),
  closing: phrase('later reading'),
  volume: phrase('volume of gas'),
  factor: phrase('correction of the volume'),
  calorific: phrase('calorific value'),
  use: phrase('units'),
  price: phrase('price of a unit'),
  charge: phrase('charge for units'),
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
  'all hours': phrase('all hours'),
  day: phrase('day'),
  night: phrase('night'),
  'off peak': phrase('off peak'),
  peak: phrase('peak'),
  'evening and weekend': phrase('evening and weekend'),
};

/** "Later reading, day". A name from the paper stands as it is there. */
export function paperValueName({ kind, name, fuel }: PaperValue): string {
  const about = name === undefined || name === fuel ? undefined : REGISTERS[name] ? say(REGISTERS[name]) : name;
  const what = capitalised(say(NAMES[kind]));
  return about === undefined ? what : say('{what}, {about}', { what, about });
}

const READINGS = {
  actual: phrase('actual'),
  estimated: phrase('estimated'),
  customer: phrase('read by the household'),
  unknown: phrase('not said whether read or estimated'),
} as const;

export function paperValueText({ kind, text, reading }: PaperValue): string {
  const shown = kind === 'fuel' ? carrierName(text) : text;
  return reading === undefined ? shown : say('{text}, {kind}', { text: shown, kind: say(READINGS[reading]) });
}

/** "Proved by 416 kWh × 30.40 p = £126.46". */
export function paperStateWords({ kind, state, sums, meaning }: PaperValue): string {
  if (state === 'typed') return say('typed by you');
  if (kind === 'fuel') return say('a word on the page says it');
  const known =
    state === 'proved'
      ? say('proved by {sums}', { sums: sums.slice(0, 3).join(say(' and ')) })
      : state === 'contradicted'
        ? say('contradicted: {sums}', { sums: sums.join('; ') })
        : say('read on the page, nothing proves it');
  return meaning === 'said' ? known : say('{known}; what it is for was guessed', { known });
}

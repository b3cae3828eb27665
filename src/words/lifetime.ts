/** What the next years may bring, in words. Money far ahead is said roughly, and always with its range and its cautions. */
import type { Lifetime, LifetimeNote, Payback } from '../model/lifetime/lifetime.ts';
import { exactPercent, poundsRange, roundTo, spokenPounds } from './numbers.ts';
import { systemInSentence } from './systems.ts';

/** Below this nobody can tell two sums over many years apart: £20 for each year. */
const SAME_PENCE_A_YEAR = 2000;
const TENTHS = 10;

/** Sums of many years to two leading digits: 12,345 pounds to 12,000, 870 to 870. */
export function roughPence(pence: number): number {
  const pounds = Math.abs(pence) / 100;
  if (!(pounds >= 1000)) return pence;
  return Math.sign(pence) * 100 * roundTo(pounds, 10 ** (Math.floor(Math.log10(pounds)) - 1));
}
const rough = (pence: number) => spokenPounds(roughPence(pence));

export const sayYears = (years: number): string => {
  const whole = Math.round(years);
  return whole === 1 ? 'one year' : `${whole} years`;
};

const isSame = ({ saved, years }: Lifetime) => Math.abs(saved.value) < SAME_PENCE_A_YEAR * years;
const othersName = ({ against }: Lifetime) => systemInSentence(against.id, against.kind);

/** The one sentence of the page. */
export function lifetimeSentence(lifetime: Lifetime): string {
  const { kind, years, saved, payback, fallsBehind } = lifetime;
  const over = `Over ${sayYears(years)}`;
  if (!Number.isFinite(saved.value)) return 'We cannot say yet what the next years may bring.';
  if (kind === 'running') {
    if (isSame(lifetime)) return `${over} both would cost about the same to run.`;
    return `${over} the heat pump might cost about ${rough(Math.abs(saved.value))} ${moreOrLess(saved.value)} to run.`;
  }
  const paid = payback?.simple.years ?? null;
  if (isSame(lifetime)) return `${over} both would cost about the same, the price of putting them in counted.`;
  if (paid === null) {
    const more = `about ${rough(Math.abs(saved.value))} more in all.`;
    if (fallsBehind === null) return `${over} the heat pump might cost ${more}`;
    return `At first the heat pump costs less. ${over} it might cost ${more}`;
  }
  const less = `${over} the heat pump might cost about ${rough(saved.value)} less in all`;
  if (paid < 0.5) return `${less}, from the first day on.`;
  if (!costsMoreToPutIn(lifetime)) return `${less}.`;
  return `The heat pump costs more to put in. After about ${sayYears(Math.max(1, paid))} it might have paid that back.`;
}

const costsMoreToPutIn = ({ pump, beside }: Lifetime) => pump[0]!.value > beside[0]!.value;

const moreOrLess = (savedPence: number) => (savedPence > 0 ? 'less' : 'more');

/** The difference over the years with its range, against what. */
export function savedSentence(lifetime: Lifetime): string {
  const { saved, kind } = lifetime;
  const what = kind === 'whole' ? 'in all' : 'to run';
  const against = `Against ${othersName(lifetime)}`;
  if (!Number.isFinite(saved.value)) return '';
  const range = `We are not sure: ${roughRange(saved.low, saved.high)} in 8 cases out of 10.`;
  if (isSame(lifetime)) return `${against} it comes out about the same ${what}. ${range}`;
  return `${against} it comes out about ${rough(Math.abs(saved.value))} ${moreOrLess(saved.value)} ${what}. ${range}`;
}

/** The range alone, where the sentence above it has said the amount. */
export function savedRangeSentence(lifetime: Lifetime): string {
  const { low, high } = lifetime.saved;
  return `We are not sure: against ${othersName(lifetime)} it is ${roughRange(low, high)} in 8 cases out of 10.`;
}

/** "£2,500 more to £9,300 less". */
export function roughRange(lowPence: number, highPence: number): string {
  const [low, high] = [roughPence(lowPence), roughPence(highPence)];
  if (low >= 0) return `${poundsRange(low, high)} less`;
  if (high <= 0) return `${poundsRange(-low, -high)} more`;
  return `${spokenPounds(-low)} more to ${spokenPounds(high)} less`;
}

/** How often it comes out ahead, both ways. */
export function chanceSentence({ chanceLess, years, kind }: Lifetime): string {
  const less = Math.round(chanceLess * TENTHS);
  const what = kind === 'whole' ? 'has cost less in all' : 'has cost less to run';
  const after = `After ${sayYears(years)}`;
  if (less === TENTHS) return `${after} it ${what} in nearly all futures. Nobody can be certain.`;
  if (less === 0) return `${after} it ${what} in hardly any future.`;
  return `${after} it ${what} in ${less} ${less === 1 ? 'future' : 'futures'} out of ${TENTHS}, and more in ${TENTHS - less}.`;
}

/** Payback with its range. "never" is not said: only that it is not within the years looked ahead. */
export function paybackSentence(lifetime: Lifetime): string {
  const { payback, years, fallsBehind } = lifetime;
  if (!payback) return '';
  const { simple } = payback;
  if (fallsBehind !== null)
    return `It costs less to put in, but after about ${sayYears(Math.max(1, fallsBehind))} it has cost more in all.`;
  if (!costsMoreToPutIn(lifetime)) return 'The heat pump costs no more to put in, so nothing has to be paid back.';
  const spread = paybackRange(simple, years);
  return simple.years === null
    ? `The price of putting it in is not paid back within ${sayYears(years)}. ${spread}`
    : `The price of putting it in might be paid back after about ${sayYears(simple.years)}. ${spread}`;
}

function paybackRange({ low, high }: Payback, years: number): string {
  if (low === null) return 'Hardly any of the futures we tried changes that.';
  if (high === null) return `It could be ${sayYears(low)}, or not within ${sayYears(years)} at all.`;
  const [from, to] = [sayYears(low), sayYears(high)];
  return from === to ? '' : `It could be ${from} or as many as ${to}.`;
}

/** Payback is not worth: what the sums come to once money later counts less. */
export function worthSentence({ netPresentValue, payback, inputs }: Lifetime): string {
  if (!netPresentValue || !payback) return '';
  const rate = exactPercent(inputs.discount.value);
  const counted = `Money later is worth less than money now, here by ${rate} a year.`;
  const value = Math.abs(netPresentValue.value);
  if (value < 10_000) return `${counted} Seen so, both come out about the same.`;
  const side = netPresentValue.value > 0 ? 'ahead' : 'behind';
  const warn =
    netPresentValue.value < 0 && payback.simple.years !== null
      ? ' So a price that is paid back can still be a loss.'
      : '';
  return `${counted} Seen so, the heat pump is about ${rough(value)} ${side}.${warn}`;
}

/** One level amount a year for each, purchase and all. */
export function annualSentence(lifetime: Lifetime): string {
  const { annual } = lifetime;
  if (!annual) return '';
  return `Spread evenly, all that is paid is about ${spokenPounds(annual.pump.value)} a year with the heat pump. With ${othersName(lifetime)} it is about ${spokenPounds(annual.beside.value)}.`;
}

/** What prices are taken to do. */
export function pathsSentence({ inputs, against }: Lifetime): string {
  const [electricity, fuel] = [inputs.electricityGrowth.value, inputs.fuelGrowth.value];
  const path = (share: number) =>
    share === 0
      ? 'keeps pace with other prices'
      : `${share > 0 ? 'rises' : 'falls'} ${exactPercent(Math.abs(share))} a year against other prices`;
  const electric = ['direct-electric', 'storage', 'heat-pump'].includes(against.kind);
  if (electric) return `We let the price of electricity go its own way: in the middle it ${path(electricity)}.`;
  if (electricity === fuel && electricity === 0)
    return 'In the middle, fuel and electricity keep pace with other prices.';
  return `In the middle, electricity ${path(electricity)}. The other fuel ${path(fuel)}.`;
}

/** What stands at the page whatever it says. */
export function lifetimeCautions(): string[] {
  return [
    'This is a picture of what may come, not advice.',
    'Nobody knows the prices of the years to come.',
    'All sums are in the money of today.',
  ];
}

const NOTES: Readonly<Record<LifetimeNote, string>> = {
  'no-purchase': 'What it costs to put in is not counted, as no price was given.',
  'no-grant': 'No grant is counted.',
  'no-replacement': 'Nothing is counted for a new boiler or heater later, as no price was given.',
  'present-due-now': 'What you have now is taken to be due for replacing today.',
  'renewal-at-full-price': 'At the end of its life the heat pump is bought again at its full price.',
};
export const NOTE_CODES = Object.keys(NOTES) as LifetimeNote[];

export const noteSentence = (note: LifetimeNote): string => NOTES[note];

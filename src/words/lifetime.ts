/** What the next years may bring, in words. Money far ahead is said roughly, and always with its range and its cautions. */
import { isEvenChance } from '../model/shapes/appraisal.ts';
import { carrierOf } from '../model/shapes/heating.ts';
import type { Lifetime, LifetimeNote, Payback } from '../model/shapes/lifetime.ts';
import { exactPercent, exactPounds, poundsRange, roundTo, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { systemInSentence } from './systems.ts';

/** Below this nobody can tell two sums over many years apart: £20 for each year. */
const SAME_PENCE_A_YEAR = 2000;
const TENTHS = 10;

/** Sums of many years to two leading digits, and halves between them below 2: 12,345 pounds to 12,500, 23,456 to 23,000, 870 to 870. No more than 2.5 % goes. */
export function roughPence(pence: number): number {
  const pounds = Math.abs(pence) / 100;
  if (!(pounds >= 1000)) return pence;
  const first = 10 ** Math.floor(Math.log10(pounds));
  return Math.sign(pence) * 100 * roundTo(pounds, pounds < 2 * first ? first / 20 : first / 10);
}
const rough = (pence: number) => spokenPounds(roughPence(pence));

export const sayYears = (years: number): string =>
  say('{years, plural, one {one year} other {# years}}', { years: Math.round(years) });

/** Neither side is named where they lie little apart or the chance is even. */
const isSame = ({ saved, years, chanceLess }: Lifetime) =>
  Math.abs(saved.value) < SAME_PENCE_A_YEAR * years || isEvenChance(chanceLess);
const othersName = ({ against }: Lifetime) => systemInSentence(against.id, against.kind);
const wayOf = (savedPence: number) => (savedPence > 0 ? 'less' : 'more');

/** The one sentence of the page. */
export function lifetimeSentence(lifetime: Lifetime): string {
  const { kind, saved, payback, fallsBehind } = lifetime;
  if (!Number.isFinite(saved.value)) return say('We cannot say yet what the next years may bring.');
  const years = Math.round(lifetime.years);
  const amount = rough(Math.abs(saved.value));
  if (kind === 'running') {
    if (isSame(lifetime))
      return say('Over {years, plural, one {one year} other {# years}} both would cost about the same to run.', {
        years,
      });
    return say(
      'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} {way, select, less {less} other {more}} to run.',
      { years, amount, way: wayOf(saved.value) },
    );
  }
  const paid = payback?.simple.years ?? null;
  if (isSame(lifetime))
    return say(
      'Over {years, plural, one {one year} other {# years}} both would cost about the same, installation included.',
      { years },
    );
  if (paid === null) {
    if (fallsBehind === null)
      return say(
        'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} more in all.',
        { years, amount },
      );
    return say(
      'At first the heat pump costs less. Over {years, plural, one {one year} other {# years}} it might cost about {amount} more in all.',
      { years, amount },
    );
  }
  if (paid < 0.5)
    return say(
      'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} less in all, from the first day on.',
      { years, amount },
    );
  if (!costsMoreToPutIn(lifetime))
    return say(
      'Over {years, plural, one {one year} other {# years}} the heat pump might cost about {amount} less in all.',
      { years, amount },
    );
  return say(
    'The heat pump costs more to install. It might pay that back after about {paid, plural, one {one year} other {# years}}.',
    { paid: Math.round(Math.max(1, paid)) },
  );
}

const costsMoreToPutIn = ({ pump, beside }: Lifetime) => pump[0]!.value > beside[0]!.value;

/** The difference over the years with its range, against what. */
export function savedSentence(lifetime: Lifetime): string {
  const { saved, kind } = lifetime;
  const other = othersName(lifetime);
  if (!Number.isFinite(saved.value)) return '';
  const range = say('We are not sure: {range} for 8 in 10 homes like yours.', {
    range: roughRange(saved.low, saved.high),
  });
  if (isSame(lifetime))
    return `${say('Compared with {other}, it comes out about the same {kind, select, whole {in total} other {to run}}.', { other, kind })} ${range}`;
  const first = say(
    'Compared with {other}, it comes out about {amount} {way, select, less {less} other {more}} {kind, select, whole {in total} other {to run}}.',
    { other, amount: rough(Math.abs(saved.value)), way: wayOf(saved.value), kind },
  );
  return `${first} ${range}`;
}

/** The range alone, where the sentence above it has said the amount. */
export function savedRangeSentence(lifetime: Lifetime): string {
  const { low, high } = lifetime.saved;
  return say('We are not sure. Compared with {other}, it is {range} for 8 in 10 homes like yours.', {
    other: othersName(lifetime),
    range: roughRange(low, high),
  });
}

/** "£2,500 more to £9,300 less". */
export function roughRange(lowPence: number, highPence: number): string {
  const [low, high] = [roughPence(lowPence), roughPence(highPence)];
  if (low >= 0) return say('{range} less', { range: poundsRange(low, high) });
  if (high <= 0) return say('{range} more', { range: poundsRange(-low, -high) });
  return say('{more} more to {less} less', { more: spokenPounds(-low), less: spokenPounds(high) });
}

/** How often it comes out ahead, both ways. */
export function chanceSentence({ chanceLess, years, kind }: Lifetime): string {
  const less = Math.round(chanceLess * TENTHS);
  const values = { years: Math.round(years), kind };
  if (less === TENTHS)
    return say(
      'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in at least 19 futures out of 20. Nobody can be certain.',
      values,
    );
  if (less === 0)
    return say(
      'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in fewer than 1 future out of 20.',
      values,
    );
  return say(
    'After {years, plural, one {one year} other {# years}} it has cost less {kind, select, whole {in all} other {to run}} in {less, plural, one {# future} other {# futures}} out of {all}, and more in {more}.',
    { ...values, less, all: TENTHS, more: TENTHS - less },
  );
}

/** Payback with its range. "never" is not said: only that it is not within the years looked ahead. */
export function paybackSentence(lifetime: Lifetime): string {
  const { payback, years, fallsBehind } = lifetime;
  if (!payback) return '';
  const { simple } = payback;
  if (fallsBehind !== null)
    return say(
      'It costs less to install, but after about {years, plural, one {one year} other {# years}} it has cost more in total.',
      { years: Math.round(Math.max(1, fallsBehind)) },
    );
  if (!costsMoreToPutIn(lifetime))
    return say('The heat pump costs no more to install, so nothing has to be paid back.');
  const first =
    simple.years === null
      ? say('The installation price is not paid back within {years, plural, one {one year} other {# years}}.', {
          years: Math.round(years),
        })
      : say('The installation price might be paid back after about {years, plural, one {one year} other {# years}}.', {
          years: Math.round(simple.years),
        });
  return `${first} ${paybackRange(simple, years)}`;
}

/** How far the payback may lie, where the headline has said when it comes; else all of it. */
export function paybackRangeSentence(lifetime: Lifetime): string {
  const { payback, years, fallsBehind } = lifetime;
  const isSaid = payback && payback.simple.years !== null && fallsBehind === null && costsMoreToPutIn(lifetime);
  return isSaid ? paybackRange(payback.simple, years) : paybackSentence(lifetime);
}

function paybackRange({ low, high }: Payback, years: number): string {
  if (low === null) return say('Fewer than 1 in 10 homes like yours would get there.');
  const from = sayYears(low);
  if (high === null)
    return say(
      'For 8 in 10 homes like yours it is {from} or more, perhaps not within {years, plural, one {one year} other {# years}} at all.',
      { from, years: Math.round(years) },
    );
  const to = sayYears(high);
  return from === to ? '' : say('For 8 in 10 homes like yours it is {from} to {to}.', { from, to });
}

/** Payback is not worth: what the sums come to once money later counts less. */
export function worthSentence({ netPresentValue, payback, inputs }: Lifetime): string {
  if (!netPresentValue || !payback) return '';
  const counted = say('Money later is worth less than money now, here by {rate} a year.', {
    rate: exactPercent(inputs.discount.value),
  });
  const value = Math.abs(netPresentValue.value);
  if (value < 10_000) return `${counted} ${say('Counted that way, both come out about the same.')}`;
  const sum = say('Counted that way, the heat pump is about {amount} {side, select, ahead {ahead} other {behind}}.', {
    amount: rough(value),
    side: netPresentValue.value > 0 ? 'ahead' : 'behind',
  });
  const { low, high } = netPresentValue;
  const range =
    high > low ? ` ${say('For 8 in 10 homes like yours it costs {range}.', { range: roughRange(low, high) })}` : '';
  if (netPresentValue.value >= 0 || payback.simple.years === null) return `${counted} ${sum}${range}`;
  return `${counted} ${sum}${range} ${say('So a price that is paid back can still be a loss.')}`;
}

/** One level amount a year for each, purchase and all. */
export function annualSentence(lifetime: Lifetime): string {
  const { annual } = lifetime;
  if (!annual) return '';
  return say(
    'Spread evenly, all that is paid is about {amount} a year with the heat pump. With {other} it is about {otherAmount}. What it is still worth at the end is taken off.',
    {
      amount: spokenPounds(annual.pump.value),
      other: othersName(lifetime),
      otherAmount: spokenPounds(annual.beside.value),
    },
  );
}

/** What either side costs to run by the month of the first year, without what is bought in it [pence]. */
export function runningByMonth({ pump, beside }: Pick<Lifetime, 'pump' | 'beside'>) {
  const ofFirstYear = (points: Lifetime['pump']) => (points[1]!.value - points[0]!.value - points[1]!.outlay) / 12;
  return { pump: ofFirstYear(pump), beside: ofFirstYear(beside) };
}

/** What instalments make of the price by the month, beside what heating costs to run on either side. */
export function instalmentSentence(lifetime: Lifetime): string {
  const { instalments } = lifetime;
  if (!instalments) return '';
  const running = runningByMonth(lifetime);
  return say(
    'In instalments over {years, plural, one {one year} other {# years}}, {interest, select, none {without interest} other {at {rate} interest}}, it is {instalment} a month. With running it that is {together}, compared with {amount} for {other}.',
    {
      years: instalments.years,
      interest: instalments.perYear > 0 ? 'some' : 'none',
      rate: exactPercent(instalments.perYear),
      instalment: exactPounds(instalments.pence),
      together: exactPounds(instalments.pence + running.pump),
      amount: exactPounds(running.beside),
      other: othersName(lifetime),
    },
  );
}

/** Why the years to come are no page yet. */
export const notYetSentence = (): string => say('Until price and grant are typed, this is not shown to the customer.');

const priceWay = (share: number) => (share === 0 ? 'level' : share > 0 ? 'up' : 'down');
const rateOf = (share: number) => exactPercent(Math.abs(share));

/** What prices are taken to do. */
export function pathsSentence({ inputs, against }: Lifetime): string {
  const [electricity, fuel] = [inputs.electricityGrowth.value, inputs.fuelGrowth.value];
  if (carrierOf(against.kind) === 'electricity')
    return say(
      'We let the price of electricity go its own way: in the middle it {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.',
      { way: priceWay(electricity), rate: rateOf(electricity) },
    );
  if (electricity === fuel && electricity === 0)
    return say('In the middle, fuel and electricity keep pace with other prices.');
  const first = say(
    'In the middle, electricity {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.',
    { way: priceWay(electricity), rate: rateOf(electricity) },
  );
  const second = say(
    'The other fuel {way, select, level {keeps pace with other prices} up {rises {rate} a year against other prices} other {falls {rate} a year against other prices}}.',
    { way: priceWay(fuel), rate: rateOf(fuel) },
  );
  return `${first} ${second}`;
}

/** What stands at the page whatever it says. */
export function lifetimeCautions(): string[] {
  return [
    say('This is a picture of what may come, not advice.'),
    say('Nobody knows the prices of the years to come.'),
    say('All amounts are in today’s money.'),
  ];
}

/** What a paper and a terminal say of putting it in and of the years to come, once price and grant are typed. */
export const purchaseSentences = (lifetime: Lifetime): string[] =>
  [
    lifetimeSentence(lifetime),
    savedRangeSentence(lifetime),
    paybackRangeSentence(lifetime),
    instalmentSentence(lifetime),
    ...lifetimeCautions(),
  ].filter((sentence) => sentence !== '');

const NOTES: Readonly<Record<LifetimeNote, string>> = {
  'no-purchase': phrase('The installation price is not counted, as none was given.'),
  'no-grant': phrase('No grant is counted.'),
  'no-replacement': phrase('Nothing is counted for a new boiler or heater later, as no price was given.'),
  'grant-above-price': phrase('The grant is more than the heat pump costs. Check both.'),
  'present-due-now': phrase('We assume that what you have now would be replaced today.'),
  'renewal-at-full-price': phrase('At the end of its life the heat pump is bought again at its full price.'),
};

export const noteSentence = (note: LifetimeNote): string => say(NOTES[note]);

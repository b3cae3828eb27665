/** What heating costs: the opening sentence and those around it. When the heat pump costs more, they say so as plainly. */
import { LEAST_FACTOR } from '../model/heat-pump/machine-questions.ts';
import { type Appraisal, type SystemResult, type Versus, verdictAgainst } from '../model/shapes/appraisal.ts';
import type { Household } from '../model/shapes/household.ts';
import { capitalised, exactPounds, factor, monthNames, pence, spokenPounds } from './numbers.ts';
import { say } from './say.ts';
import { homesOfHundred, homesSentence, savingRange } from './sure.ts';
import { systemInSentence, systemNumber } from './systems.ts';

/** Below £20 a year apart nobody can tell two costs from each other. */
const ABOUT_THE_SAME_PENCE = 2000;

type Systems = Pick<Appraisal, 'systems'>;
type Compared = Pick<Appraisal, 'systems' | 'versus'>;

/** The heat pump, and what it is held against: what the household has now, else the cheapest other. */
export function pairOf({ systems }: Systems): { pump: SystemResult | undefined; beside: SystemResult | undefined } {
  const others = systems.filter((system) => system.id !== 'heat-pump');
  const present = others.find((system) => system.id === 'present');
  const known = others.filter((system) => Number.isFinite(system.cost.value));
  return {
    pump: systems.find((system) => system.id === 'heat-pump'),
    beside: present ?? known.toSorted((a, b) => a.cost.value - b.cost.value)[0],
  };
}

/** Which side of the two may be named: neither where the chance is even or they lie less than £20 a year apart. */
export function standing(
  { versus }: Pick<Appraisal, 'versus'>,
  id: string,
): 'less' | 'more' | 'about-same' | 'unknown' {
  const one = versus.find(({ against }) => against === id);
  if (!one || !Number.isFinite(one.saving.value)) return 'unknown';
  return Math.abs(one.saving.value) < ABOUT_THE_SAME_PENCE ? 'about-same' : verdictAgainst(versus, id)!;
}

/** "If it works as designed: £1,420 a year; about 16 in 100 homes get there." Empty where no design stands behind it. */
export function designSentence({ cost, asDesigned }: Pick<SystemResult, 'cost' | 'asDesigned'>): string {
  if (!asDesigned || spokenPounds(asDesigned.costPence) === spokenPounds(cost.value)) return '';
  return say('If it works as designed: {amount} a year. In practice {homes} get there.', {
    amount: spokenPounds(asDesigned.costPence),
    homes: homesOfHundred(asDesigned.reachedShare),
  });
}

/** "Heating this home with a heat pump should cost about £1,190 a year. The gas boiler you have now costs about £1,600." */
export function costSentence(appraisal: Compared): string {
  const { pump, beside } = pairOf(appraisal);
  if (!pump || !Number.isFinite(pump.cost.value))
    return say('We do not know yet what heating this home with a heat pump would cost.');
  const first = say('Heating this home with a heat pump should cost about {amount} a year.', {
    amount: spokenPounds(pump.cost.value),
  });
  if (!beside) return first;
  const now = beside.id === 'present';
  if (!Number.isFinite(beside.cost.value)) {
    return now ? `${first} ${say('What you pay for heating now is not known yet.')}` : first;
  }
  const same = standing(appraisal, beside.id) === 'about-same' ? 'yes' : 'no';
  const other = capitalised(systemInSentence(beside.id, beside.kind));
  const amount = spokenPounds(beside.cost.value);
  const number = systemNumber(beside.id, beside.kind);
  const second = now
    ? say(
        '{other} {number, select, many {cost} other {costs}} about {same, select, yes {the same, {amount}} other {{amount}}}.',
        { other, number, same, amount },
      )
    : say('{other} would cost about {same, select, yes {the same, {amount}} other {{amount}}}.', {
        other,
        same,
        amount,
      });
  return `${first} ${second}`;
}

/** The heat pump's range, in the words that every range is said in. */
export function rangeSentence({ cost }: Pick<SystemResult, 'cost'>): string {
  const { low, high } = cost;
  return Number.isFinite(low) && Number.isFinite(high) ? homesSentence(low, high) : say('We cannot give a range yet.');
}

/** How far one home's bill moves with winter and prices, apart from how homes differ; empty for an estimate kept before it was reckoned. */
export function yearToYearSentence({ yearToYear }: Pick<SystemResult, 'yearToYear'>): string {
  if (!yearToYear) return '';
  return say('One home’s bill moves too: with winter and prices, 8 in 10 of its years lie between {low} and {high}.', {
    low: spokenPounds(yearToYear.lowPence),
    high: spokenPounds(yearToYear.highPence),
  });
}

/** What the cost of a year means by the month: an even payment, the dearest month, and what is enough for the first year. */
export function paymentSentence({ cost, monthly }: Pick<SystemResult, 'cost' | 'monthly'>): string {
  if (!Number.isFinite(cost.value)) return '';
  const { month, pence: dearest } = dearestMonth(monthly);
  return [
    say('An even payment is about {even} a month. The most expensive month is {month}, at about {amount}.', {
      even: exactPounds(cost.value / 12),
      month: monthNames()[month]!,
      amount: exactPounds(dearest),
    }),
    say('For the first year put {amount} a month aside: that is enough for 9 in 10 homes like yours.', {
      amount: exactPounds(cost.high / 12),
    }),
  ].join(' ');
}

/** The month [0 to 11] that costs most in a typical year, and what it costs [pence]. */
export function dearestMonth({ unitsPence, standingPence, servicePence }: SystemResult['monthly']) {
  const pence = unitsPence.map((units, month) => units + standingPence[month]! + servicePence[month]!);
  const month = pence.indexOf(Math.max(...pence));
  return { month, pence: pence[month]! };
}

/** The difference, always with its range. */
export function differenceSentence(appraisal: Compared): string {
  const { pump, beside } = pairOf(appraisal);
  const versus = appraisal.versus.find((one) => one.against === beside?.id);
  if (!pump || !beside || !versus) return '';
  const { value, low, high } = versus.saving;
  const other = systemInSentence(beside.id, beside.kind);
  if (!Number.isFinite(value)) return say('We cannot compare the heat pump with {other} yet.', { other });
  const range = savingRange(low, high);
  const side = standing(appraisal, beside.id);
  if (side === 'about-same')
    return say(
      'Compared with {other}, the heat pump costs about the same. For 8 in 10 homes like yours it is {range} a year.',
      {
        other,
        range,
      },
    );
  return say(
    'Compared with {other}, the heat pump should cost about {amount} a year {way, select, less {less} other {more}}. For 8 in 10 homes like yours it is {range}.',
    { other, amount: spokenPounds(Math.abs(value)), way: side, range },
  );
}

/** Why the standing charge of gas stays beside the heat pump or goes, and what leaving gas would change; empty without gas. */
export function gasStandingSentence(appraisal: Appraisal, { present }: Pick<Household, 'present'>): string {
  const pence = appraisal.prices.gasStandingPence;
  const { pump, beside } = pairOf(appraisal);
  if (!pence || !pump || !Number.isFinite(pump.cost.value)) return '';
  const amount = exactPounds(pence);
  if (present.cooksOnGas)
    return say(
      'If you still cook on gas, you go on paying the gas standing charge, {amount} a year. Without gas in the house it ends, and the heat pump costs about {less} a year. What an electric hob uses is not counted.',
      { amount, less: spokenPounds(pump.cost.value - pence) },
    );
  if (beside?.id !== 'present' || beside.carrier !== 'gas') return '';
  return say('The gas standing charge, {amount} a year, ends with the boiler, since nothing else here uses gas.', {
    amount,
  });
}

/** A cold and a mild winter, each met about 1 year in 10. */
export function winterSentence(system: Pick<SystemResult, 'coldYearPence' | 'mildYearPence'>): string {
  const { coldYearPence: cold, mildYearPence: mild } = system;
  if (!Number.isFinite(cold) || !Number.isFinite(mild)) return '';
  if (spokenPounds(cold) === spokenPounds(mild))
    return say('A cold winter and a mild one cost about the same, {amount}.', { amount: spokenPounds(cold) });
  return say(
    'A cold winter, as comes once in 10 years, would bring it to about {cold}. A mild one would bring it to {mild}.',
    { cold: spokenPounds(cold), mild: spokenPounds(mild) },
  );
}

/** Price of one unit of heat, side by side. */
export function heatPriceSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  if (!pump || !Number.isFinite(pump.pencePerKWhHeat.value)) return '';
  const price = pence(pump.pencePerKWhHeat.value);
  if (!beside || !Number.isFinite(beside.pencePerKWhHeat.value))
    return say('A kWh of heat costs {price} with the heat pump.', { price });
  return say('A kWh of heat costs {price} with the heat pump and {otherPrice} with {other}.', {
    price,
    otherPrice: pence(beside.pencePerKWhHeat.value),
    other: systemInSentence(beside.id, beside.kind),
  });
}

/** The rule of the trade on the spot: unit price over room factor or efficiency, to a hundredth of a penny. */
export function roomHeatPriceSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  const own = pump?.pencePerKWhSpaceHeat;
  const other = beside?.pencePerKWhSpaceHeat;
  if (!own || !other || !Number.isFinite(own) || !Number.isFinite(other)) return '';
  return say('For the rooms alone, with pumps left out, it is {price} and {otherPrice}.', {
    price: pence(own),
    otherPrice: pence(other),
  });
}

/** Said first where every estimate of the heat is assumed; empty otherwise. */
export function usualHomeSentence({ demand }: { readonly demand: Pick<Appraisal['demand'], 'estimates'> }): string {
  if (demand.estimates.some(({ grade }) => grade !== 'assumed')) return '';
  return say(
    'We have no bill, heat loss or certificate yet. So this is a typical home, with the heating chosen under “Heat needed”.',
  );
}

/** Where a unit of heat costs the same in both, and where the whole year does, standing charge and service counted. */
export function breakEvenSentence(
  versus: Pick<Versus, 'against' | 'breakEvenFactor' | 'breakEvenFactorAllCosts'>,
  kind: string,
): string {
  const other = systemInSentence(versus.against, kind);
  const { breakEvenFactor: even, breakEvenFactorAllCosts: all } = versus;
  if (even === null || !Number.isFinite(even))
    return say('At no seasonal factor does the heat pump cost the same as {other}.', { other });
  if (even < LEAST_FACTOR)
    return say('At any possible seasonal factor, heat costs less with the heat pump than with {other}.', { other });
  const heat = say('At a seasonal factor of {factor}, heat costs the same as with {other}.', {
    factor: factor(even),
    other,
  });
  if (!all || !Number.isFinite(all) || all < LEAST_FACTOR) return `${heat} ${say('Below that it costs more.')}`;
  const year = say(
    'With standing charge, service and pumps, the whole year costs the same at {factor}. Below that the heat pump costs more.',
    { factor: factor(all) },
  );
  return `${heat} ${year}`;
}

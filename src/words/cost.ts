/** What heating costs: the opening sentence and those around it. When the heat pump costs more, they say so as plainly. */
import type { Appraisal, SystemResult, Versus } from '../model/appraisal/appraisal.ts';
import { capitalised, factor, grouped, pence, poundsRange, spokenPounds } from './numbers.ts';
import { savingRange } from './sure.ts';
import { systemInSentence, systemVerb } from './systems.ts';

/** Below £20 a year apart nobody can tell two costs from each other. */
export const ABOUT_THE_SAME_PENCE = 2000;

type Systems = Pick<Appraisal, 'systems'>;

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

/** How two yearly costs stand to each other in words. */
export function standing(pumpPence: number, otherPence: number): 'less' | 'more' | 'same' | 'unknown' {
  const difference = otherPence - pumpPence;
  if (!Number.isFinite(difference)) return 'unknown';
  if (Math.abs(difference) < ABOUT_THE_SAME_PENCE) return 'same';
  return difference > 0 ? 'less' : 'more';
}

/** "Heating this home with a heat pump should cost about £1,190 a year. The gas boiler you have now costs about £1,600." */
export function costSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  if (!pump || !Number.isFinite(pump.cost.value))
    return 'We do not know yet what heating this home with a heat pump would cost.';
  const first = `Heating this home with a heat pump should cost about ${spokenPounds(pump.cost.value)} a year.`;
  if (!beside) return first;
  const other = capitalised(systemInSentence(beside.id, beside.kind));
  const now = beside.id === 'present';
  if (!Number.isFinite(beside.cost.value)) {
    return now ? `${first} What you pay for heating now is not known yet.` : first;
  }
  const costs = now ? systemVerb(beside.id, beside.kind, 'costs', 'cost') : 'would cost';
  const amount = spokenPounds(beside.cost.value);
  return standing(pump.cost.value, beside.cost.value) === 'same'
    ? `${first} ${other} ${costs} about the same, ${amount}.`
    : `${first} ${other} ${costs} about ${amount}.`;
}

/** The heat pump's range, and how often it will be missed. */
export function rangeSentence(system: Pick<SystemResult, 'cost'>): string {
  const { low, high } = system.cost;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return 'We cannot give a range yet.';
  return `We are not sure to the pound. In 8 cases out of 10 it should lie between ${poundsRange(low, high).replace(' to ', ' and ')}. In 2 it will not.`;
}

/** "By the month that is about £99. The gas boiler you have now costs about £130." */
export function monthSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  if (!pump || !Number.isFinite(pump.cost.value)) return '';
  const own = `By the month that is about ${spokenPounds(pump.cost.value / 12)}`;
  if (!beside || !Number.isFinite(beside.cost.value)) return `${own}.`;
  return `${own}, beside ${spokenPounds(beside.cost.value / 12)} for ${systemInSentence(beside.id, beside.kind)}.`;
}

/** The difference, always with its range. */
export function differenceSentence(appraisal: Pick<Appraisal, 'systems' | 'versus'>): string {
  const { pump, beside } = pairOf(appraisal);
  const versus = appraisal.versus.find((one) => one.against === beside?.id);
  if (!pump || !beside || !versus) return '';
  const { value, low, high } = versus.saving;
  const against = `Against ${systemInSentence(beside.id, beside.kind)} the heat pump`;
  if (!Number.isFinite(value)) return `${against} cannot be judged yet.`;
  const range = savingRange(low, high);
  if (Math.abs(value) < ABOUT_THE_SAME_PENCE) return `${against} costs about the same. It could be ${range} a year.`;
  return `${against} should cost about ${spokenPounds(Math.abs(value))} a year ${value > 0 ? 'less' : 'more'}. It could be ${range}.`;
}

/** Units, standing charge and service, leaving out what is nothing. */
export function splitSentence({ split }: Pick<SystemResult, 'split'>): string {
  const parts = [
    [split.unitsPence, 'for units'],
    [split.standingPence, 'for the standing charge'],
    [split.servicePence, 'for the yearly service'],
  ] as const;
  const shown = parts
    .filter(([amount]) => Math.abs(amount) >= 50)
    .map(([amount, what]) => `${spokenPounds(amount)} ${what}`);
  if (shown.length === 0) return 'Nothing is paid in a year.';
  return `That is ${shown.length === 1 ? shown[0] : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`}.`;
}

/** A cold and a mild winter, each met about 1 year in 10. */
export function winterSentence(system: Pick<SystemResult, 'coldYearPence' | 'mildYearPence'>): string {
  const { coldYearPence: cold, mildYearPence: mild } = system;
  if (!Number.isFinite(cold) || !Number.isFinite(mild)) return '';
  if (spokenPounds(cold) === spokenPounds(mild))
    return `A cold winter and a mild one cost about the same, ${spokenPounds(cold)}.`;
  return `A cold winter, as comes once in 10 years, would bring it to about ${spokenPounds(cold)}. A mild one would bring it to ${spokenPounds(mild)}.`;
}

/** Price of one unit of heat, side by side. */
export function heatPriceSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  if (!pump || !Number.isFinite(pump.pencePerKWhHeat.value)) return '';
  const own = `A unit of heat costs ${pence(pump.pencePerKWhHeat.value)} with the heat pump`;
  if (!beside || !Number.isFinite(beside.pencePerKWhHeat.value)) return `${own}.`;
  return `${own} and ${pence(beside.pencePerKWhHeat.value)} with ${systemInSentence(beside.id, beside.kind)}.`;
}

/** The rule of the trade on the spot: unit price over room factor or efficiency, to a hundredth of a penny. */
export function roomHeatPriceSentence(appraisal: Systems): string {
  const { pump, beside } = pairOf(appraisal);
  const own = pump?.pencePerKWhSpaceHeat;
  const other = beside?.pencePerKWhSpaceHeat;
  if (!own || !other || !Number.isFinite(own) || !Number.isFinite(other)) return '';
  return `For the rooms alone, with pumps left out, it is ${grouped(own, 2)} p and ${grouped(other, 2)} p.`;
}

/** A heat pump gives at least the electricity it takes, so that no seasonal factor lies below this. */
export const LEAST_FACTOR = 1;

/** Said first where every estimate of the heat is assumed; empty otherwise. */
export function usualHomeSentence({ demand }: { readonly demand: Pick<Appraisal['demand'], 'estimates'> }): string {
  if (demand.estimates.some(({ grade }) => grade !== 'assumed')) return '';
  return 'No bill, heat loss or certificate is known yet. So this is a usual home, with the heating set under “Heat needed”.';
}

/** Where a unit of heat costs the same in both, and where the whole year does, standing charge and service counted. */
export function breakEvenSentence(
  versus: Pick<Versus, 'against' | 'breakEvenFactor' | 'breakEvenFactorAllCosts'>,
  kind: string,
): string {
  const against = systemInSentence(versus.against, kind);
  const { breakEvenFactor: even, breakEvenFactorAllCosts: all } = versus;
  if (even === null || !Number.isFinite(even)) return `No factor makes the heat pump cost the same as ${against}.`;
  if (even < LEAST_FACTOR)
    return `At any factor it can have, a unit of heat costs less with the heat pump than with ${against}.`;
  const heat = `At a factor of ${factor(even)} a unit of heat costs the same as with ${against}.`;
  if (!all || !Number.isFinite(all) || all < LEAST_FACTOR) return `${heat} Below that it costs more.`;
  return `${heat} With standing charge, service and pumps in, the whole year costs the same at ${factor(all)}. Below that the heat pump costs more.`;
}

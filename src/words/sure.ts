/** How sure we are, counted both ways, and what the answer hangs on. */
import type { Appraisal, Versus } from '../model/appraisal/appraisal.ts';
import { capitalised, listed, spokenPounds } from './numbers.ts';
import { systemInSentence } from './systems.ts';

export interface Futures {
  readonly all: number;
  readonly less: number;
  readonly more: number;
  readonly same: number;
}

/** Counts equally likely savings (pence): above zero the heat pump costs less. */
export function countFutures(savingsPence: readonly number[]): Futures {
  const known = savingsPence.filter((saving) => !Number.isNaN(saving));
  const less = known.filter((saving) => saving > 0).length;
  const more = known.filter((saving) => saving < 0).length;
  return { all: known.length, less, more, same: known.length - less - more };
}

/** "In 18 futures out of 20 the heat pump costs less, in 2 it costs more." */
export function futuresSentence(savingsPence: readonly number[]): string {
  const { all, less, more, same } = countFutures(savingsPence);
  if (all === 0) return 'We cannot say yet how often the heat pump would cost less.';
  if (less === all)
    return `In all ${all} futures out of ${all} the heat pump costs less. It is likely, but nobody can be certain.`;
  if (more === all) return `In all ${all} futures out of ${all} the heat pump costs more.`;
  if (same === all) return `In all ${all} futures out of ${all} both cost the same.`;
  const rest = same > 0 ? ` In ${same} they cost the same.` : '';
  if (less === 0) return `In no future out of ${all} does the heat pump cost less. In ${more} it costs more.${rest}`;
  const first = `In ${less} ${less === 1 ? 'future' : 'futures'} out of ${all} the heat pump costs less`;
  return more === 0 ? `${first}.${rest}` : `${first}, in ${more} it costs more.${rest}`;
}

/** The futures, with what the heat pump is held against. */
export function sureSentence(versus: Pick<Versus, 'against' | 'twenty'>, kind: string): string {
  const against = systemInSentence(versus.against, kind);
  return `${futuresSentence(versus.twenty)} That is against ${against}.`;
}

export function dotsSentence(): string {
  return 'Each dot is one future, as likely as any other. It has its own winter, prices and way of living.';
}

const DRIVERS: Readonly<Record<string, string>> = {
  'electricity-price': 'the price of electricity',
  'other-fuel-price': 'the price of the other fuel',
  'space-factor': 'how well the machine heats the rooms',
  'water-factor': 'how well the machine makes hot water',
  'space-heat': 'how much heat the rooms need',
  'water-heat': 'how much hot water you use',
  winter: 'how cold the winter is',
  'other-efficiency': 'how well the other heating works',
  habits: 'how you live',
};

export function driverName(input: string): string {
  return DRIVERS[input] ?? input.replaceAll('-', ' ');
}

/** What the answer hangs on most: up to three things that carry at least a tenth of the doubt each. */
export function driversSentence(drivers: Appraisal['drivers']): string {
  const [first, ...rest] = drivers
    .filter((driver) => driver.share >= 0.1)
    .toSorted((a, b) => b.share - a.share)
    .slice(0, 3)
    .map((driver) => driverName(driver.input));
  if (first === undefined) return 'No single thing decides the answer.';
  const most = `What matters most is ${first}.`;
  return rest.length === 0
    ? most
    : `${most} ${capitalised(listed(rest))} ${rest.length === 1 ? 'comes' : 'come'} next.`;
}

/** A saving with its range: "£150 to £650 less", "from £100 more to £700 less". Never a bare promise. */
export function savingRange(lowPence: number, highPence: number): string {
  if (!Number.isFinite(lowPence) || !Number.isFinite(highPence)) return 'an unknown amount more or less';
  const [low, high] = [Math.min(lowPence, highPence), Math.max(lowPence, highPence)];
  if (low >= 0) return `${spokenPounds(low)} to ${spokenPounds(high)} less`;
  if (high <= 0) return `${spokenPounds(-high)} to ${spokenPounds(-low)} more`;
  return `from ${spokenPounds(-low)} more to ${spokenPounds(high)} less`;
}

/** How sure we are, counted both ways, and what the answer hangs on. */
import type { Appraisal, UnknownInput } from '../model/shapes/appraisal.ts';
import { listed, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { lookUp, unknownName } from './unknown.ts';

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
  if (all === 0) return say('We cannot say yet how often the heat pump would cost less.');
  if (less === all)
    return say('In all {all} futures the heat pump costs less. It is likely, but nobody can be certain.', {
      all,
    });
  if (more === all) return say('In all {all} futures the heat pump costs more.', { all });
  if (same === all) return say('In all {all} futures both cost the same.', { all });
  const rest = same > 0 ? ` ${say('In {same} they cost the same.', { same })}` : '';
  if (less === 0)
    return `${say('In no future out of {all} does the heat pump cost less. In {more} it costs more.', { all, more })}${rest}`;
  const first =
    more === 0
      ? say('In {less} {less, plural, one {future} other {futures}} out of {all} the heat pump costs less.', {
          less,
          all,
        })
      : say(
          'In {less} {less, plural, one {future} other {futures}} out of {all} the heat pump costs less, in {more} it costs more.',
          { less, all, more },
        );
  return `${first}${rest}`;
}

export function dotsSentence(): string {
  return say('Each dot is one future, as likely as any other. It has its own winter, prices and way of living.');
}

const DRIVERS: Readonly<Record<UnknownInput, string>> = {
  'electricity-price': phrase('the price of electricity'),
  'other-fuel-price': phrase('the price of the other fuel'),
  'space-factor': phrase('how well the heat pump works'),
  'space-heat': phrase('how much heat the rooms need'),
  'water-heat': phrase('how much hot water you use'),
  winter: phrase('how cold the winter is'),
  'other-efficiency': phrase('how well the other heating works'),
  habits: phrase('how you live'),
  'own-electricity': phrase('how much pumps, fans and standby use'),
  service: phrase('what a service costs'),
};

function driverName(input: string): string {
  const name = lookUp(DRIVERS, input);
  return name === undefined ? unknownName(input) : say(name);
}

/** What the answer hangs on most: up to three things that carry at least a tenth of the doubt each. */
export function driversSentence(drivers: Appraisal['drivers']): string {
  const [first, ...rest] = drivers
    .filter((driver) => driver.share >= 0.1)
    .toSorted((a, b) => b.share - a.share)
    .slice(0, 3)
    .map((driver) => driverName(driver.input));
  if (first === undefined) return say('No single thing decides the answer.');
  const most = say('What matters most is {driver}.', { driver: first });
  if (rest.length === 0) return most;
  return `${most} ${say('After that {count, plural, one {comes} other {come}} {next}.', { next: listed(rest), count: rest.length })}`;
}

/** The one meaning of a range of costs: "8 in 10 homes like yours should lie between £1,040 and £1,400, 2 outside." */
export const homesSentence = (lowPence: number, highPence: number): string =>
  say('8 in 10 homes like yours should lie between {low} and {high}, 2 outside.', {
    low: spokenPounds(lowPence),
    high: spokenPounds(highPence),
  });

/** "about 16 in 100 homes": a share of homes, 0 to 1, never made more of than it is. */
export function homesOfHundred(share: number): string {
  const homes = Math.floor(share * 100 + 1e-9);
  return homes < 1 ? say('fewer than 1 in 100 homes') : say('about {homes} in 100 homes', { homes });
}

/** A saving with its range: "£150 to £650 less", "from £100 more to £700 less". Never a bare promise. */
export function savingRange(lowPence: number, highPence: number): string {
  if (!Number.isFinite(lowPence) || !Number.isFinite(highPence)) return say('an unknown amount more or less');
  const [low, high] = [Math.min(lowPence, highPence), Math.max(lowPence, highPence)];
  if (low >= 0) return say('{low} to {high} less', { low: spokenPounds(low), high: spokenPounds(high) });
  if (high <= 0) return say('{low} to {high} more', { low: spokenPounds(-high), high: spokenPounds(-low) });
  return say('from {more} more to {less} less', { more: spokenPounds(-low), less: spokenPounds(high) });
}

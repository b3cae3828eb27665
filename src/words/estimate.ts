/** The written estimate in words: what was kept, when, and what it means. */
import type { Appraisal } from '../model/shapes/appraisal.ts';
import { longDate, spokenPounds } from './numbers.ts';
import { type Currency, say } from './say.ts';
import { homesSentence } from './sure.ts';

export interface SpokenEstimate {
  readonly number: number;
  readonly madeOn: string;
  readonly heatPumpPence: number;
  readonly lowPence: number;
  readonly highPence: number;
  readonly id?: string;
  /** Money of its amounts; absent means pounds. */
  readonly currency?: Currency | undefined;
}

/** "Promise 12 of 25 November 2026: about £1,190 a year. 8 in 10 homes like yours should lie between £1,040 and £1,400, 2 outside." */
export function writtenEstimateSentence(estimate: SpokenEstimate): string {
  const { number, madeOn, heatPumpPence, lowPence, highPence } = estimate;
  const first = say('Estimate no. {number} of {date}: about {amount} a year.', {
    number: String(number),
    date: longDate(madeOn.slice(0, 10)),
    amount: spokenPounds(heatPumpPence),
  });
  return `${first} ${homesSentence(lowPence, highPence)}`;
}

/** Said of what was kept before the step from the design to what homes get; empty of everything since. */
export function earlierRuleSentence({ modelVersion }: Pick<Appraisal, 'modelVersion'>): string {
  if (Number.parseInt(modelVersion, 10) >= 2) return '';
  return say(
    'These figures were made by an earlier rule (model {version}). It used the factor of the design, not the middle of what homes get.',
    { version: modelVersion },
  );
}

export function estimateMeaning(): string {
  return say(
    'The written estimate is a copy of these figures, with a number and a date. It stays the same, whatever you change here later.',
  );
}

export function noEstimateSentence(): string {
  return say('There is no written estimate yet. Save one when you hand the figures over.');
}

/** That it is no guarantee, and how often it is missed. */
export const guaranteeSentence = (): string =>
  say('This is an estimate, not a guarantee: about 2 in 10 homes like yours will fall outside its range.');

/** What the sums leave out, for the page that is handed over. */
export function limitsSentences(): string[] {
  return [
    say('The figures are for heating and hot water in a typical year, at the prices named.'),
    say('Whatever else the home uses is not counted.'),
  ];
}

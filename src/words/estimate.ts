/** The written estimate in words: what was kept, when, and what it means. */
import type { Appraisal } from '../model/shapes/appraisal.ts';
import { say } from './say.ts';

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

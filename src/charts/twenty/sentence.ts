import { say } from '../../words/say.ts';
import { futuresSentence } from '../../words/sure.ts';

export const twentyName = () => say('How sure we are');

/** Counted both ways: "In 18 futures out of 20 the heat pump costs less, in 2 it costs more." */
export function twentySentence(savingsPence: readonly number[]): string {
  return futuresSentence(savingsPence);
}

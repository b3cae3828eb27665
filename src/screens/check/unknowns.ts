/** What the evidence of a check cannot say, in sentences. */
import type { BillCheck } from '../../model/appraisal/promise.ts';
import { joinedSentence } from '../../words/check.ts';

export function unknownSentences({ input, parts }: Pick<BillCheck, 'input' | 'parts'>): string[] {
  const sentences = [joinedSentence()];
  if (!parts.some(({ cause }) => cause === 'weather')) {
    sentences.push('We have no weather of these days, so the weather is in that part too.');
  }
  if (input.readings === 'estimated') {
    sentences.push('The bill rests on an estimated reading. It may be put right by the next one.');
  }
  if (input.readings === 'unknown') sentences.push('The bill does not say whether the meter was read.');
  if (input.meter === 'whole-house') {
    sentences.push('How much of the bill went into other things was told, not metered.');
  }
  return sentences;
}

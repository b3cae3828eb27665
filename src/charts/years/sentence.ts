import type { Lifetime } from '../../model/shapes/lifetime.ts';
import { lifetimeSentence } from '../../words/lifetime.ts';
import { say } from '../../words/say.ts';

export const yearsName = () => say('What is paid over the years');

export function yearsSentence(lifetime: Lifetime): string {
  return lifetimeSentence(lifetime);
}

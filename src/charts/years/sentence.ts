import type { Lifetime } from '../../model/lifetime/lifetime.ts';
import { lifetimeSentence } from '../../words/lifetime.ts';

export const YEARS_NAME = 'What is paid over the years';

export function yearsSentence(lifetime: Lifetime): string {
  return lifetimeSentence(lifetime);
}

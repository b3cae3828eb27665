import { german } from '../../../src/words/german/german.ts';
import { reword } from '../../../src/words/reword.ts';
import { speak } from '../../../src/words/say.ts';

/** The texts anywhere in `value` whose German is found by pattern only, as it is for what was kept before there were codes; a number alone is written as German writes it. */
export function saidByPattern(value: unknown): string[] {
  speak({ language: 'de-DE', currency: 'GBP' }, german);
  const found = new Set<string>();
  const visit = (part: unknown): void => {
    if (typeof part === 'string') {
      if (german[part] === undefined && !/^[\d.,]+$/.test(part) && reword(part) !== part) found.add(part);
    } else if (typeof part === 'object' && part !== null) for (const inner of Object.values(part)) visit(inner);
  };
  visit(value);
  return [...found];
}

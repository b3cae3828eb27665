/** What the full way takes where a field is left empty: the very line that stands in its working. */

import type { Settled } from '../../model/heat-pump/full/settle.ts';
import { reword, say } from '../../words/say.ts';
import { type Fallback, shortSource } from '../shared/given.ts';
import { formatPlain } from '../shared/number-text.ts';

/** Decimals that a person would type: none in figures of two digits and more. */
const decimalsOf = (value: number) => (Math.abs(value) >= 10 ? 0 : 2);

/** The line of that name as a fallback, its value times `scale`; an assumption whose source is a custom says so. */
export function settledFallback({ inputs }: Pick<Settled, 'inputs'>, name: string, scale = 1): Fallback {
  const line = inputs.find((input) => input.name === name);
  if (!line) return { text: '', source: say('the data sheet’s output, once points are typed') };
  const shown = typeof line.value === 'number' ? line.value * scale : line.value;
  const text = typeof shown === 'number' ? formatPlain(Number(shown.toFixed(decimalsOf(shown)))) : shown;
  return { text: reword(text), source: plainOrigin(line.origin) };
}

/** Without the word for how a figure was come by, which the table of sources keeps in front. */
function plainOrigin(origin: string): string {
  const [first, ...rest] = origin.split(': ');
  if (rest.length === 0) return shortSource(reword(origin));
  if (first === 'memory')
    return shortSource(say('{source}, from memory', { source: reword(rest.join(': ').split(/[;(]/)[0]!.trim()) }));
  return shortSource(reword(rest.join(': ')));
}

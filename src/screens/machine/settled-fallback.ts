/** What the full way takes where a field is left empty: the very line that stands in its working. */

import type { Settled } from '../../model/heat-pump/full/settle.ts';
import type { Wording } from '../../model/shapes/told.ts';
import { say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { type Fallback, shortSource } from '../shared/given.ts';
import { formatPlain } from '../shared/number-text.ts';

/** Decimals that a person would type: none in figures of two digits and more. */
const decimalsOf = (value: number) => (Math.abs(value) >= 10 ? 0 : 2);

/** The line of that name as a fallback, its value times `scale`; an assumption whose source is a custom says so. */
export function settledFallback({ inputs }: Pick<Settled, 'inputs'>, name: string, scale = 1): Fallback {
  const line = inputs.find((input) => input.name === name);
  if (!line) return { text: '', source: say('the data sheet’s output, once points are typed') };
  const shown = typeof line.value === 'number' ? line.value * scale : line.value;
  const text = typeof shown === 'number' ? formatPlain(Number(shown.toFixed(decimalsOf(shown)))) : sayTold(shown);
  return { text, source: plainOrigin(line.origin) };
}

/** Without the word for how a figure was come by, which the table of sources keeps in front. */
function plainOrigin(origin: Wording): string {
  if (typeof origin !== 'string') return shortSource(sayTold(origin));
  const [first, ...rest] = origin.split(': ');
  if (rest.length === 0) return shortSource(sayTold(origin));
  if (first === 'memory')
    return shortSource(say('{source}, from memory', { source: sayTold(rest.join(': ').split(/[;(]/)[0]!.trim()) }));
  return shortSource(sayTold(rest.join(': ')));
}

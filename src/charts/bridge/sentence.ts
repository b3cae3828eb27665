import { spokenPounds, uncapitalised } from '../../words/numbers.ts';
import type { BridgeSeries } from './series.ts';

export const BRIDGE_NAME = 'From the promise to the bill';

export function bridgeSentence({ steps }: BridgeSeries): string {
  const promised = steps[0]?.amount ?? Number.NaN;
  const paid = steps.at(-1)?.amount ?? Number.NaN;
  const parts = steps.filter((step) => step.kind === 'part' && Number.isFinite(step.amount));
  const first = `From ${spokenPounds(promised)} promised to ${spokenPounds(paid)} paid.`;
  const largest = parts.toSorted((a, b) => Math.abs(b.amount) - Math.abs(a.amount))[0];
  if (!largest || Math.abs(largest.amount) < 100) return first;
  const way = largest.amount > 0 ? 'added' : 'took away';
  return `${first} The largest step is “${uncapitalised(largest.name)}”: it ${way} ${spokenPounds(Math.abs(largest.amount))}.`;
}

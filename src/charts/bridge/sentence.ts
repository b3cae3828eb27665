import { spokenPounds, uncapitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import type { BridgeSeries } from './series.ts';

export const bridgeName = () => say('From the estimate to the bill');

export function bridgeSentence({ steps }: BridgeSeries): string {
  const estimated = steps[0]?.amount ?? Number.NaN;
  const paid = steps.at(-1)?.amount ?? Number.NaN;
  const parts = steps.filter((step) => step.kind === 'part' && Number.isFinite(step.amount));
  const first = say('From {estimated} estimated to {paid} paid.', {
    estimated: spokenPounds(estimated),
    paid: spokenPounds(paid),
  });
  const largest = parts.toSorted((a, b) => Math.abs(b.amount) - Math.abs(a.amount))[0];
  if (!largest || Math.abs(largest.amount) < 100) return first;
  const step = say('The largest step is “{name}”: it {way, select, added {added} other {took away}} {amount}.', {
    name: uncapitalised(largest.name),
    way: largest.amount > 0 ? 'added' : 'took',
    amount: spokenPounds(Math.abs(largest.amount)),
  });
  return `${first} ${step}`;
}

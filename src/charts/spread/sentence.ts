import { listed, poundsRange, spokenPounds, uncapitalised } from '../../words/numbers.ts';
import type { SpreadRow } from './series.ts';

export const SPREAD_NAME = 'What heating costs in a year';

/** What the picture shows: the cheapest, the heat pump's place and range, what is not known. */
export function spreadSentence(rows: readonly SpreadRow[]): string {
  const known = rows.filter((row) => row.cost !== null);
  const ours = known.find((row) => row.ours);
  const unknown = rows.filter((row) => row.cost === null).map((row) => uncapitalised(row.name));
  const open = unknown.length > 0 ? ` Not known yet: ${listed(unknown)}.` : '';
  if (known.length === 0) return `No yearly cost is known yet.${open}`;
  if (!ours?.cost) return `The heat pump’s yearly cost is not known yet.`;
  const own = `The heat pump should cost about ${spokenPounds(ours.cost.middle)} a year.`;
  const sure = `We are not sure: ${poundsRange(ours.cost.low, ours.cost.high)} in 8 cases out of 10.`;
  const less = known.filter((row) => !row.ours && row.cost!.middle < ours.cost!.middle).length;
  const others = known.length - 1;
  const place =
    others === 0
      ? ''
      : less === 0
        ? ` No other way of heating shown here costs less.`
        : less === others
          ? ` Every other way of heating shown here costs less.`
          : ` Of the ${others} other ways shown here, ${less} ${less === 1 ? 'costs' : 'cost'} less.`;
  return `${own} ${sure}${place}${open}`;
}

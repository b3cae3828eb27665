import { listed, spokenPounds, uncapitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { homesSentence } from '../../words/sure.ts';
import type { SpreadRow } from './series.ts';

export const spreadName = () => say('What heating costs in a year');

/** What the picture shows: the cheapest, the heat pump's place and range, what is not known. */
export function spreadSentence(rows: readonly SpreadRow[]): string {
  const known = rows.filter((row) => row.cost !== null);
  const ours = known.find((row) => row.ours);
  const unknown = rows.filter((row) => row.cost === null).map((row) => uncapitalised(row.name));
  const open = unknown.length > 0 ? say('Not known yet: {names}.', { names: listed(unknown) }) : '';
  if (known.length === 0) return `${say('No yearly cost is known yet.')} ${open}`.trim();
  if (!ours?.cost) return say('The heat pump’s yearly cost is not known yet.');
  const own = say('The heat pump should cost about {amount} a year.', { amount: spokenPounds(ours.cost.middle) });
  const designed =
    ours.designed === undefined
      ? ''
      : say('The thin mark is its cost if it works as designed, {amount}.', { amount: spokenPounds(ours.designed) });
  const sure = homesSentence(ours.cost.low, ours.cost.high);
  return [own, sure, designed, placeSentence(known), open].filter(Boolean).join(' ');
}

/** How many of the others cost less than the heat pump; of an even chance neither is said. */
function placeSentence(known: readonly SpreadRow[]): string {
  const less = known.filter(({ ours, against }) => !ours && against === 'more').length;
  const same = known.filter(({ ours, against }) => !ours && against === 'about-same').length;
  const others = known.length - 1;
  if (others === 0) return '';
  if (same > 0)
    return say(
      'Of the {others} other ways shown here, {less, plural, =0 {none costs} one {# costs} other {# cost}} less and {same} about the same.',
      {
        others,
        less,
        same,
      },
    );
  if (less === 0) return say('No other way of heating shown here costs less.');
  if (less === others) return say('Every other way of heating shown here costs less.');
  return say('Of the {others} other ways shown here, {less} {less, plural, one {costs} other {cost}} less.', {
    others,
    less,
  });
}

/** Several offers to one home, side by side. */
import type { OfferResult } from '../model/shapes/offer-result.ts';
import { degrees, exactPounds, factor, poundsRange, spokenPounds } from './numbers.ts';
import { say } from './say.ts';

/** "Ground, 45 °C": what an offer is, beside its name. */
export const offerInShort = ({ source, flowC }: Pick<OfferResult, 'source' | 'flowC'>): string =>
  say('{source, select, air {air source} other {ground source}}, flow temperature {flow}', {
    source,
    flow: degrees(flowC),
  });

/** Heads of the table of offers, in the order of `offerCells`. */
export const offerHeads = (): readonly string[] => [
  say('Offer'),
  say('What it is'),
  say('seasonal factor'),
  say('cost a year'),
  say('8 in 10 homes like yours'),
  say('installation'),
  say('grant'),
];

export function offerCells(offer: OfferResult): readonly string[] {
  const { name, wholeFactor, yearPence, lowPence, highPence, pricePence, grantPence } = offer;
  return [
    name,
    offerInShort(offer),
    factor(wholeFactor),
    exactPounds(yearPence),
    poundsRange(lowPence, highPence),
    pricePence === undefined ? '–' : exactPounds(pricePence),
    grantPence === undefined ? '–' : exactPounds(grantPence),
  ];
}

/** Which offer costs less to run, where their ranges let that be said; empty for fewer than two. */
export function offersSentence(offers: readonly OfferResult[]): string {
  const [first, second] = offers.toSorted((a, b) => a.yearPence - b.yearPence);
  if (!first || !second) return '';
  const values = { first: first.name, amount: spokenPounds(first.yearPence), second: second.name };
  const apart = second.lowPence > first.yearPence && first.highPence < second.yearPence;
  return apart
    ? say('“{first}” should cost the least to run, about {amount} a year.', values)
    : say(
        '“{first}” comes out lowest, about {amount} a year. Its range overlaps that of “{second}”, so either may cost less.',
        values,
      );
}

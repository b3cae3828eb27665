import { poundsRange, spokenPounds } from '../../words/numbers.ts';
import { offerInShort, offersSentence } from '../../words/offers.ts';
import { say } from '../../words/say.ts';
import { useOffers } from '../shared/use-offers.ts';

/** Of a third offer the place is taken. */
const WITH_SENTENCE = 2;

/** The offers to this home side by side, where the page says what the one in hand costs. */
export function WalkOffers() {
  const offers = useOffers();
  return (
    <dl className="walk-facts">
      {offers.map((offer) => (
        <div key={offer.id}>
          <dt>{offer.name}</dt>
          <dd className="quiet">{offerInShort(offer)}</dd>
          <dd>
            {say('{amount} a year; 8 in 10 homes like yours: {range}', {
              amount: spokenPounds(offer.yearPence),
              range: poundsRange(offer.lowPence, offer.highPence),
            })}
          </dd>
        </div>
      ))}
      {offers.length > WITH_SENTENCE ? null : (
        <div>
          <dd>{offersSentence(offers)}</dd>
        </div>
      )}
    </dl>
  );
}

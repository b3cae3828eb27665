import { longDate } from '../../words/numbers.ts';
import { offerCells, offerHeads, offersSentence } from '../../words/offers.ts';
import { say } from '../../words/say.ts';
import { NumberTable } from '../number-table.tsx';
import type { EstimateParts } from '../parts.ts';

/** All offers to this home, where there are several; the one that this paper is about stands out. */
export function OffersPart({ parts }: { readonly parts: EstimateParts }) {
  const { offers, household } = parts.estimate;
  if (!offers) return null;
  return (
    <>
      <h3>{say('Offers side by side')}</h3>
      <p className="plain">
        {say('This paper is about “{name}”, as worked out on {date}.', {
          name: household.offer?.name ?? '',
          date: longDate(parts.madeOn),
        })}{' '}
        {offersSentence(offers)}
      </p>
      <NumberTable
        heads={offerHeads()}
        rows={offers.map((offer) => ({
          key: offer.id,
          cells: offerCells(offer),
          ours: offer.id === household.offer?.id,
        }))}
      />
    </>
  );
}

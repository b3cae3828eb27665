import { longDate } from '../../words/numbers.ts';
import { offerCells, offerHeads, offersSentence } from '../../words/offers.ts';
import { say } from '../../words/say.ts';
import { NumberHead } from '../number-head.tsx';
import type { EstimateParts } from '../parts.ts';

/** All offers to this home, where there are several; the one that this paper is about stands out. */
export function OffersPart({ parts }: { readonly parts: EstimateParts }) {
  const { offers, household } = parts.estimate;
  if (!offers) return null;
  const [name, ...heads] = offerHeads();
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
      <div className="wide">
        <table>
          <thead>
            <tr>
              <th scope="col">{name}</th>
              {heads.map((head) => (
                <NumberHead key={head}>{head}</NumberHead>
              ))}
            </tr>
          </thead>
          <tbody>
            {offers.map((offer) => {
              const [label, ...cells] = offerCells(offer);
              return (
                <tr key={offer.id} className={offer.id === household.offer?.id ? 'ours' : undefined}>
                  <th scope="row">{label}</th>
                  {cells.map((cell, i) => (
                    <td key={heads[i]} className="number">
                      {cell}
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </>
  );
}

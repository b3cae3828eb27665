import { takeInHand } from '../../model/offers.ts';
import { offerCells, offerHeads, offersSentence } from '../../words/offers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { useOffers } from '../shared/use-offers.ts';

/** All offers to this home side by side; each is kept as a written estimate of its own while it is in hand. */
export function OffersTable() {
  const { household, change } = useHousehold();
  const offers = useOffers();
  if (offers.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="offers-head">
      <h3 id="offers-head">{say('Offers side by side')}</h3>
      <p>{offersSentence(offers)}</p>
      <div className="scroll-x">
        <table className="systems">
          <thead>
            <tr>
              {offerHeads().map((head, i) => (
                <th key={head} scope="col" className={i > 1 ? 'number' : undefined}>
                  {head}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {offers.map((offer) => {
              const [name, ...cells] = offerCells(offer);
              const isInHand = offer.id === household.offer?.id;
              return (
                <tr key={offer.id} className={isInHand ? 'ours' : undefined}>
                  <th scope="row">{name}</th>
                  {cells.map((cell, i) => (
                    <td key={offerHeads()[i + 1]} className={i > 0 ? 'number' : undefined}>
                      {cell}
                    </td>
                  ))}
                  <td>
                    {isInHand ? (
                      say('shown')
                    ) : (
                      <button type="button" onClick={() => change((before) => takeInHand(before, offer.id))}>
                        {say('Show this offer')}
                      </button>
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </section>
  );
}

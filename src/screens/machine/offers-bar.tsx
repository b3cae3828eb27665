import { addOffer, dropOffer, offersOf, takeInHand } from '../../model/offers.ts';
import { say } from '../../words/say.ts';
import { useHousehold } from '../household-context.tsx';
import { PickField } from '../shared/choice-field.tsx';
import { TextField } from '../shared/text-field.tsx';

/** Which offer is worked on, and another one beside it: another machine, another flow temperature. */
export function OffersBar() {
  const { household, change } = useHousehold();
  const offers = offersOf(household);
  const { offer } = household;
  const names = { first: say('First offer'), next: say('Offer {number}', { number: offers.length + (offer ? 1 : 2) }) };
  return (
    <section className="fields" aria-label={say('Offers')}>
      {offer ? (
        <>
          <PickField
            label={say('Offer shown')}
            value={offer.id}
            choices={offers.map(({ id, name }) => ({ value: id, label: name }))}
            note={say('Heat pump and price below belong to this offer. Home, heat and prices are shared.')}
            onChange={(id) => change((before) => takeInHand(before, id))}
          />
          <TextField
            label={say('Its name')}
            value={offer.name}
            maxLength={80}
            refusal={offer.name.trim() === '' ? say('An offer needs a name.') : null}
            onChange={(name) => change((before) => ({ ...before, offer: { ...offer, name } }))}
          />
        </>
      ) : null}
      <div className="actions">
        <button type="button" onClick={() => change((before) => addOffer(before, names))}>
          {say('Add another offer')}
        </button>
        {offer ? (
          <button type="button" onClick={() => change(dropOffer)}>
            {say('Remove this offer')}
          </button>
        ) : null}
      </div>
    </section>
  );
}

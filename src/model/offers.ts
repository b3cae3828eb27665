/** Several offers to one home: two machines, or one at two flow temperatures, each reckoned by itself. */
import { type AppraiseInput, appraise } from './appraise.ts';
import { designFlow } from './heat-pump/flow.ts';
import type { Appraisal } from './shapes/appraisal.ts';
import type { Household, Offer } from './shapes/household.ts';
import type { OfferResult } from './shapes/offer-result.ts';

/** The offer in hand as one among the others; undefined where there is no other. */
function inHand({ offer, machine, purchase }: Household): Offer | undefined {
  return offer && { ...offer, machine, purchase };
}

/** All offers in the order of their making; empty where there is only one. */
export function offersOf(household: Household): Offer[] {
  const first = inHand(household);
  const all = [...(first ? [first] : []), ...(household.otherOffers ?? [])];
  return all.length < 2 ? [] : all.toSorted((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
}

/** The household with another of its offers in hand; unchanged where it has none of that id. */
export function takeInHand(household: Household, id: string): Household {
  const next = household.otherOffers?.find((one) => one.id === id);
  const before = inHand(household);
  if (!next || !before) return household;
  const { machine, purchase, ...offer } = next;
  const otherOffers = household.otherOffers!.map((one) => (one.id === id ? before : one));
  return { ...household, offer, machine, purchase, otherOffers };
}

/** One offer more, like the one in hand but for its name, and in hand from now on. */
export function addOffer(household: Household, names: { readonly first: string; readonly next: string }): Household {
  const before = inHand(household) ?? {
    id: 'offer-1',
    name: names.first,
    machine: household.machine,
    purchase: household.purchase,
  };
  const others = household.otherOffers ?? [];
  const last = Math.max(...[before, ...others].map(({ id }) => Number(id.replace(/\D/g, '')) || 0));
  return { ...household, offer: { id: `offer-${last + 1}`, name: names.next }, otherOffers: [...others, before] };
}

/** Without the offer in hand; the first of the others comes into hand, and the last one left needs no name. */
export function dropOffer(household: Household): Household {
  const [next, ...rest] = household.otherOffers ?? [];
  if (!next) return household;
  const { machine, purchase, ...offer } = next;
  const { offer: _, otherOffers: __, ...kept } = household;
  return rest.length > 0 ? { ...kept, machine, purchase, offer, otherOffers: rest } : { ...kept, machine, purchase };
}

/**
 * What each offer comes to on a day [pence a year, factor 1]; empty where there is only one. `known` is the appraisal of
 * the offer in hand. How the offers differ from each other has no range here: nobody knows how far the luck of two
 * machines in one home goes together.
 */
export function reckonOffers(input: AppraiseInput, known: Appraisal): OfferResult[] {
  const { household } = input;
  return offersOf(household).map(({ id, name, machine, purchase }) => {
    const appraisal = id === household.offer?.id ? known : appraise({ ...input, household: takeInHand(household, id) });
    const { value, low, high } = appraisal.systems[0]!.cost;
    const { heatPumpGBP, grantGBP } = purchase;
    return {
      id,
      name,
      source: machine.source,
      flowC: designFlow(machine).flowC,
      wholeFactor: appraisal.machine.whole.value,
      yearPence: value,
      lowPence: low,
      highPence: high,
      ...(heatPumpGBP ? { pricePence: 100 * heatPumpGBP.value } : {}),
      ...(grantGBP ? { grantPence: 100 * grantGBP.value } : {}),
    };
  });
}

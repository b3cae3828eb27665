import type { Store } from '../store/store.ts';
import { isDamage } from './damage-notes.ts';
import type { WholeHousehold } from './household-file.ts';
import { renewIds } from './renew-ids.ts';

/** A household from elsewhere, under new identifiers where any of its own is taken here, even by what is damaged or was taken back. */
export function renewIfKnown(store: Store, whole: WholeHousehold, newId: () => string): WholeHousehold {
  const { household, evidence, estimates } = whole;
  const isKnown =
    isThere(() => store.readHousehold(household.id)) ||
    evidence.some(
      ({ import: { id, series } }) =>
        isThere(() => store.findEvidence(id)) ||
        series.some((one) => isThere(() => store.findEvidenceOfSeries(one.id))),
    ) ||
    estimates.some(({ id }) => isThere(() => store.readEstimate(id)));
  return isKnown ? renewIds(whole, newId) : whole;
}

function isThere(find: () => unknown): boolean {
  try {
    return find() !== undefined;
  } catch (error) {
    if (isDamage(error)) return true;
    throw error;
  }
}

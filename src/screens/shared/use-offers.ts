import { useDeferredValue, useMemo } from 'react';
import { reckonOffers } from '../../model/offers.ts';
import type { OfferResult } from '../../model/shapes/offer-result.ts';
import { referenceOf } from '../../reference/index.ts';
import { useHousehold } from '../household-context.tsx';

/** What each offer to this home comes to; empty where there is only one. */
export function useOffers(): readonly OfferResult[] {
  const { household: typed, series, appraisal: now, today } = useHousehold();
  // Each offer is a whole comparison, so typing goes first; both must be of the same moment.
  const { household, appraisal } = useDeferredValue(
    useMemo(() => ({ household: typed, appraisal: now }), [typed, now]),
  );
  return useMemo(
    () => reckonOffers({ household, series, reference: referenceOf(household), asOf: today }, appraisal),
    [household, series, today, appraisal],
  );
}

import type { Store } from '../store/store.ts';
import type { WholeHousehold } from './household-file.ts';

/** Stores a household with all that belongs to it in one transaction. */
export function storeHousehold(store: Store, whole: WholeHousehold, now: string): void {
  store.together(() => {
    store.createHousehold(whole.household, now);
    for (const { import: evidence, rawFile, intervals } of whole.evidence) {
      store.addEvidence(evidence, rawFile, intervals);
    }
    for (const estimate of whole.estimates) store.addEstimate(estimate);
    for (const check of whole.checks) store.addCheck(check, whole.household.id);
  });
}

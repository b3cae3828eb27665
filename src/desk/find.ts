/** Finds what a request names, or refuses in words. */

import type { Evidence, Series } from '../model/shapes/evidence.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import type { Store, StoredHousehold } from '../store/store.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import { withCountry } from './settings.ts';

const gone = (message: string) =>
  new DeskError({
    code: 'not-there',
    message,
    remedy: say('Go back to the list of households; it may have been erased in the meantime.'),
  });

export function findHousehold(store: Store, id: string): StoredHousehold {
  const stored = store.readHousehold(id);
  if (!stored) throw gone(say('This household is not there any more.'));
  return { ...stored, household: withCountry(stored.household, store) };
}

export function findEvidence(store: Store, id: string): Evidence {
  const evidence = store.findEvidence(id);
  if (!evidence) throw gone(say('This import is not there any more.'));
  return evidence;
}

export function findEstimate(store: Store, id: string): WrittenEstimate {
  const estimate = store.readEstimate(id);
  if (!estimate) throw gone(say('This estimate is no longer there.'));
  return estimate;
}

export function findSeries(store: Store, id: string): { series: Series; evidence: Evidence } {
  const evidence = store.findEvidenceOfSeries(id);
  const series = evidence?.series.find((one) => one.id === id);
  if (!evidence || !series) throw gone(say('This series of readings is not there any more.'));
  return { series, evidence };
}

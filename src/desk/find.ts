/** Finds what a request names, or refuses in words. */

import type { Evidence, Series } from '../model/shapes/evidence.ts';
import type { KeptPromise } from '../model/shapes/promise.ts';
import type { Store, StoredHousehold } from '../store/store.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';

const gone = (message: string) =>
  new DeskError({
    code: 'not-there',
    message,
    remedy: say('Go back to the list of households; it may have been erased in the meantime.'),
  });

export function findHousehold(store: Store, id: string): StoredHousehold {
  const stored = store.readHousehold(id);
  if (!stored) throw gone(say('This household is not there any more.'));
  return stored;
}

export function findEvidence(store: Store, id: string): Evidence {
  const evidence = store.findEvidence(id);
  if (!evidence) throw gone(say('This import is not there any more.'));
  return evidence;
}

export function findPromise(store: Store, id: string): KeptPromise {
  const promise = store.readPromise(id);
  if (!promise) throw gone(say('This promise is not there any more.'));
  return promise;
}

export function findSeries(store: Store, id: string): { series: Series; evidence: Evidence } {
  const evidence = store.findEvidenceOfSeries(id);
  const series = evidence?.series.find((one) => one.id === id);
  if (!evidence || !series) throw gone(say('This series of readings is not there any more.'));
  return { series, evidence };
}

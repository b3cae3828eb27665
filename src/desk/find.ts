/** Finds what a request names, or refuses in words. */
import type { KeptPromise } from '../model/appraisal/promise.ts';
import type { Evidence, Series } from '../model/evidence/evidence.ts';
import type { Store, StoredHousehold } from '../store/store.ts';
import { DeskError } from './contract.ts';

const gone = (what: string) =>
  new DeskError({
    code: 'not-there',
    message: `This ${what} is not there any more.`,
    remedy: 'Go back to the list of households; it may have been erased in the meantime.',
  });

export function findHousehold(store: Store, id: string): StoredHousehold {
  const stored = store.readHousehold(id);
  if (!stored) throw gone('household');
  return stored;
}

export function findEvidence(store: Store, id: string): Evidence {
  const evidence = store.findEvidence(id);
  if (!evidence) throw gone('import');
  return evidence;
}

export function findPromise(store: Store, id: string): KeptPromise {
  const promise = store.readPromise(id);
  if (!promise) throw gone('promise');
  return promise;
}

export function findSeries(store: Store, id: string): { series: Series; evidence: Evidence } {
  const evidence = store.findEvidenceOfSeries(id);
  const series = evidence?.series.find((one) => one.id === id);
  if (!evidence || !series) throw gone('series of readings');
  return { series, evidence };
}

/** A household as the window gets it: the document with its evidence, promises and checks. */
import type { KeptPromise } from '../model/shapes/promise.ts';
import type { Store } from '../store/store.ts';
import type { OpenHousehold, PromiseSummary } from './contract.ts';
import { findHousehold } from './find.ts';
import { findOverlaps, withOverlaps } from './join/find-overlaps.ts';
import { joinEvidence } from './join/join-evidence.ts';
import { readFrom } from './join/stored-series.ts';

export function summarisePromise(promise: KeptPromise): PromiseSummary {
  const heatPump = promise.appraisal.systems.find(({ id }) => id === 'heat-pump')?.cost;
  return {
    id: promise.id,
    number: promise.number,
    madeOn: promise.madeOn,
    note: promise.note,
    heatPumpPence: heatPump?.value ?? 0,
    lowPence: heatPump?.low ?? 0,
    highPence: heatPump?.high ?? 0,
    ...(promise.currency === undefined ? {} : { currency: promise.currency }),
  };
}

export function openHousehold(store: Store, id: string): OpenHousehold {
  const { household, revision, archived } = findHousehold(store, id);
  const evidence = store.listEvidence(id);
  const read = readFrom(store);
  return {
    household,
    revision,
    archived,
    evidence: evidence.map((one, i) => withOverlaps(one, findOverlaps(evidence.slice(0, i + 1), read))),
    series: joinEvidence(evidence, household.zone, read),
    promises: store.listPromises(id).map(summarisePromise),
    checks: store.listChecks(id),
    undone: store.listUndone(id).map(({ id, fileName, importedOn }) => ({ id, fileName, importedOn })),
  };
}

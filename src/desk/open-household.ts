/** A household as the window gets it: the document with its evidence, written estimates and checks. */
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import type { Store } from '../store/store.ts';
import type { Damage } from '../store/store-fault.ts';
import type { EstimateSummary, OpenHousehold } from './contract.ts';
import { listDamage } from './damage-notes.ts';
import { findHousehold } from './find.ts';
import { findOverlaps, withOverlaps } from './join/find-overlaps.ts';
import { joinEvidence } from './join/join-evidence.ts';
import { askLoneParts } from './join/lone-parts.ts';
import { EVER, readFrom } from './join/stored-series.ts';
import { readUpkeep } from './upkeep.ts';

function summariseEstimate(estimate: WrittenEstimate): EstimateSummary {
  const heatPump = estimate.appraisal.systems.find(({ id }) => id === 'heat-pump')?.cost;
  return {
    id: estimate.id,
    number: estimate.number,
    madeOn: estimate.madeOn,
    note: estimate.note,
    heatPumpPence: heatPump?.value ?? 0,
    lowPence: heatPump?.low ?? 0,
    highPence: heatPump?.high ?? 0,
    grade: heatPump?.grade ?? 'assumed',
    ...(estimate.household.offer ? { offer: estimate.household.offer } : {}),
    ...(estimate.currency === undefined ? {} : { currency: estimate.currency }),
  };
}

export function openHousehold(store: Store, id: string): OpenHousehold {
  const { household, revision, archived } = findHousehold(store, id);
  // A household opens with what is whole of it, and says what is not.
  const damage = readUpkeep(store).damage.filter(({ householdId }) => householdId === id);
  const tell = (one: Damage) => void damage.push(one);
  const evidence = store.listEvidence(id, tell);
  const read = readFrom(store, EVER, tell);
  const parts = askLoneParts(evidence);
  const opened = {
    household,
    revision,
    archived,
    evidence: evidence.map((one, i) =>
      withOverlaps(one, [...(parts.get(one) ?? []), ...findOverlaps(evidence.slice(0, i + 1), read)]),
    ),
    series: joinEvidence(evidence, household.zone, read),
    estimates: store.listEstimates(id, tell).map(summariseEstimate),
    checks: store.listChecks(id, tell),
    undone: store.listUndone(id, tell).map(({ id, fileName, importedOn }) => ({ id, fileName, importedOn })),
  };
  return { ...opened, damage: listDamage(damage) };
}

/** Which two systems are spoken of together: the heat pump, and what it is held against. */
import type { Appraisal, SystemId, SystemResult, Versus } from '../shapes/appraisal.ts';

export interface SideBySide {
  readonly pump: SystemResult;
  readonly present: SystemResult | undefined;
  /** What the household has now, else the cheapest of the others. */
  readonly beside: SystemResult | undefined;
  readonly versus: Versus | undefined;
  /** Whether a record of the household's own stands behind the heat. */
  readonly hasRecord: boolean;
}

/** Finds the heat pump, the present system and what the heat pump is held against. Throws where no heat pump was reckoned. */
export function findSideBySide(appraisal: Appraisal): SideBySide {
  const pump = appraisal.systems.find((system) => system.id === 'heat-pump');
  if (!pump) throw new Error('an appraisal without a heat pump');
  const present = appraisal.systems.find((system) => system.id === 'present');
  const others = appraisal.systems.filter((system) => system.id !== 'heat-pump');
  const beside = present ?? others.toSorted((a, b) => a.cost.value - b.cost.value)[0];
  return {
    pump,
    present,
    beside,
    versus: appraisal.versus.find((versus) => versus.against === beside?.id),
    hasRecord: appraisal.demand.estimates.some((estimate) => estimate.way === 'record'),
  };
}

/** What a household asks about first, where a picture has no room for all. */
const ASKED_FIRST: readonly SystemId[] = [
  'heat-pump',
  'present',
  'gas-condensing',
  'oil',
  'direct-electric',
  'lpg',
  'air-source',
  'storage',
  'gas-old',
];

/** The `most` ways of heating that a picture shows: the heat pump, the present one, then those asked about first; none twice. */
export function pickForPicture(appraisal: Pick<Appraisal, 'systems'>, most: number): SystemResult[] {
  const presentKind = appraisal.systems.find(({ id }) => id === 'present')?.kind;
  return appraisal.systems
    .filter(({ id }) => id === 'present' || id !== presentKind)
    .toSorted((a, b) => ASKED_FIRST.indexOf(a.id) - ASKED_FIRST.indexOf(b.id))
    .slice(0, most);
}

/** Which two systems are spoken of together: the heat pump, and what it is held against. */
import type { Appraisal, SystemResult, Versus } from '../shapes/appraisal.ts';
import { SYSTEMS } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import { whyLeftOut } from './why-left-out.ts';

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

/**
 * The `most` ways of heating that a picture shows: the heat pump, the present one, then those that this home could
 * really have, in the order in which households ask about them; none twice. An estimate kept before the rule was there
 * has more of them, and shows those that the rule lets stand.
 */
export function pickForPicture(
  appraisal: Pick<Appraisal, 'systems' | 'leftOut'>,
  household: Household,
  most: number,
): SystemResult[] {
  const presentKind = appraisal.systems.find(({ id }) => id === 'present')?.kind;
  const why = appraisal.leftOut ? () => null : whyLeftOut(household);
  const place = ({ id }: SystemResult) => (id === 'heat-pump' ? -2 : id === 'present' ? -1 : SYSTEMS[id].asked);
  return appraisal.systems
    .filter(({ id }) => id === 'present' || id === 'heat-pump' || (id !== presentKind && why(id) === null))
    .toSorted((a, b) => place(a) - place(b))
    .slice(0, most);
}

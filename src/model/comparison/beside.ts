/** Which two systems are spoken of together: the heat pump, and what it is held against. */
import type { Appraisal, SystemResult, Versus } from '../shapes/appraisal.ts';
import { carrierOf, isFuel, SYSTEMS, type System, systemRow } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';

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
 * The `most` ways of heating that a picture shows: the heat pump, the present one, then what suits the home, then the
 * rest, in the order in which households ask about them; none twice.
 */
export function pickForPicture(
  appraisal: Pick<Appraisal, 'systems'>,
  household: Household,
  most: number,
): SystemResult[] {
  const presentKind = appraisal.systems.find(({ id }) => id === 'present')?.kind;
  const suits = suitsHome(household);
  const place = ({ id }: SystemResult) => {
    if (id === 'heat-pump' || id === 'present') return id === 'heat-pump' ? -2 : -1;
    return SYSTEMS[id].asked + (suits(id) ? 0 : LATER);
  };
  return appraisal.systems
    .filter(({ id }) => id === 'present' || id !== presentKind)
    .toSorted((a, b) => place(a) - place(b))
    .slice(0, most);
}

/** More than any place in the table. */
const LATER = 1000;

/** Whether a way of heating is a sensible rival in a home; what is not known of the home rules nothing out. */
function suitsHome({ home, present, prices }: Household): (system: System) => boolean {
  const now = present.assumed ? undefined : carrierOf(present.system);
  const gasGrid =
    now === 'gas' || present.cooksOnGas || prices.gasTariffId !== undefined ? true : isFuel(now) ? false : undefined;
  return (system) => {
    const { suits } = systemRow(system)!;
    return (
      (suits.gasGrid === undefined || gasGrid === undefined || suits.gasGrid === gasGrid) &&
      !(suits.house && home.kind === 'flat') &&
      !(suits.electricNow && now !== undefined && now !== 'electricity')
    );
  };
}

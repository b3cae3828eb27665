/** Whether a cylinder is heated to 60 °C once a week by its immersion heater, beside what the factors count. */

import type { Household } from '../shapes/household.ts';
import { tell } from '../shapes/told.ts';
import { CYLINDER_LITRES, HOT_C } from '../shapes/usual-home.ts';
import { isInside } from './boundaries.ts';
import { type Pasteurisation, pasteurisationKWh } from './extras.ts';
import type { SettledFactors } from './settle-factors.ts';

/** The weekly heating by immersion, unless it is switched off or already inside the hot-water factor (H3 and H4). */
export function findPasteurisation(
  { hotWater }: Household,
  settled: Pick<SettledFactors, 'water' | 'boundary'>,
): Pasteurisation | null {
  if (hotWater.pasteuriseWeekly === false) return null;
  if (settled.water.from !== 'derived' && isInside('H3', settled.boundary)) return null;
  const litres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const fromC = hotWater.hotC?.value ?? HOT_C;
  if (!(pasteurisationKWh(litres, fromC) > 0)) return null;
  return {
    litres,
    fromC,
    grade: hotWater.cylinderLitres?.grade ?? 'assumed',
    origin: hotWater.cylinderLitres?.origin ?? tell('usual-cylinder'),
  };
}

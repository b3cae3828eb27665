/** What the levers of the units are reckoned from. */

import type { BillCheckInput } from '../shapes/bill-check.ts';
import type { Grade } from '../shapes/working.ts';
import type { EstimateForDays } from './estimate-for-days.ts';

export interface UnitsInput {
  readonly bill: BillCheckInput;
  readonly estimated: EstimateForDays;
  readonly spaceFactor: number;
  readonly waterFactor: number;
  /** Units for the rooms expected in the weather that came, kWh. */
  readonly expectedSpaceKWh: number;
  readonly weatherGrade: Grade | null;
}

/** Causes that a meter or a reading could have told apart. */
export type Hidden = 'other-electricity' | 'metering' | 'backup';

/** What remains for the machine once metering, other electricity and heaters are taken off, as far as they are known. */
export interface UnitsLeft {
  readonly kWh: number;
  /** Causes that could not be taken off and are still inside. */
  readonly inside: readonly Hidden[];
}

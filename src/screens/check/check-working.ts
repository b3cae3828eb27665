import type { BillCheck } from '../../model/shapes/bill-check.ts';
import { estimatedForDaysPence, leftPence, partName } from '../../words/check.ts';
import { billWorking } from '../../words/explained/estimate-workings.ts';
import type { ShownWorking } from '../../words/working.ts';

/** The whole sum of a check, its parts named as the page names them. */
export const checkWorking = (check: BillCheck): ShownWorking =>
  billWorking(check, { estimatedPence: estimatedForDaysPence(check), leftPence: leftPence(check), partName });

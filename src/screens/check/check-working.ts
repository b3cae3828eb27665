import { billWorking } from '../../model/explained/estimate-workings.ts';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import type { Working } from '../../model/shapes/working.ts';
import { estimatedForDaysPence, leftPence, partName } from '../../words/check.ts';

/** The whole sum of a check, its parts named as the page names them. */
export const checkWorking = (check: BillCheck): Working =>
  billWorking(check, { estimatedPence: estimatedForDaysPence(check), leftPence: leftPence(check), partName });

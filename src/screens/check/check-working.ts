import { billWorking } from '../../model/explained/promise.ts';
import type { BillCheck } from '../../model/shapes/promise.ts';
import type { Working } from '../../model/shapes/working.ts';
import { leftPence, partName, promisedForDays } from '../../words/check.ts';

/** The whole sum of a check, its parts named as the page names them. */
export const checkWorking = (check: BillCheck): Working =>
  billWorking(check, { promisedPence: promisedForDays(check), leftPence: leftPence(check), partName });

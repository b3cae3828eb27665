/** What the letter speaks of, found once. */

import { civilDateOf } from '../../model/calendar/instant.ts';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import type { DocumentSettings } from '../parts.ts';

export interface LetterParts {
  readonly check: BillCheck;
  readonly estimate: WrittenEstimate;
  readonly household: Household;
  readonly settings: DocumentSettings;
  readonly writtenOn: CivilDate;
  readonly estimatedOn: CivilDate;
}

export function readLetter(
  check: BillCheck,
  estimate: WrittenEstimate,
  household: Household,
  settings: DocumentSettings,
): LetterParts {
  const { zone } = estimate.household;
  const [writtenOn, estimatedOn] = [civilDateOf(check.madeOn, zone), civilDateOf(estimate.madeOn, zone)];
  return { check, estimate, household, settings, writtenOn, estimatedOn };
}

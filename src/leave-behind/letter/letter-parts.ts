/** What the two papers of a check speak of, found once. */

import { civilDateOf } from '../../model/calendar/instant.ts';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { WrittenEstimate } from '../../model/shapes/written-estimate.ts';
import type { DocumentSettings } from '../parts.ts';

export interface LetterInput {
  readonly check: BillCheck;
  readonly estimate: WrittenEstimate;
  readonly household: Household;
  readonly settings: DocumentSettings;
}

export interface LetterParts extends LetterInput {
  readonly writtenOn: CivilDate;
  readonly estimatedOn: CivilDate;
}

export function readLetter(input: LetterInput): LetterParts {
  const { check, estimate } = input;
  const { zone } = estimate.household;
  return { ...input, writtenOn: civilDateOf(check.madeOn, zone), estimatedOn: civilDateOf(estimate.madeOn, zone) };
}

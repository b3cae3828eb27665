/** What the letter speaks of, found once. */

import { civilDateOf } from '../../model/calendar/instant.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { BillCheck, KeptPromise } from '../../model/shapes/promise.ts';
import type { DocumentSettings } from '../parts.ts';

export interface LetterParts {
  readonly check: BillCheck;
  readonly promise: KeptPromise;
  readonly household: Household;
  readonly settings: DocumentSettings;
  readonly writtenOn: CivilDate;
  readonly promisedOn: CivilDate;
}

export function readLetter(
  check: BillCheck,
  promise: KeptPromise,
  household: Household,
  settings: DocumentSettings,
): LetterParts {
  const { zone } = promise.household;
  const [writtenOn, promisedOn] = [civilDateOf(check.madeOn, zone), civilDateOf(promise.madeOn, zone)];
  return { check, promise, household, settings, writtenOn, promisedOn };
}

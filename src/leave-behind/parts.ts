/** What the document speaks of, found in the promise. */

import { civilDateOf } from '../model/calendar/instant.ts';
import { findSideBySide, type SideBySide } from '../model/comparison/beside.ts';
import type { Appraisal } from '../model/shapes/appraisal.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { KeptPromise } from '../model/shapes/promise.ts';

/** What of the settings the document shows. */
export interface DocumentSettings {
  readonly installerName: string;
  readonly installerContact: string;
  readonly paper: 'A4' | 'Letter';
  /** A picture as a data address; none when empty or absent. */
  readonly logo?: string;
}

export interface PromiseParts extends SideBySide {
  readonly promise: KeptPromise;
  readonly settings: DocumentSettings;
  readonly appraisal: Appraisal;
  readonly madeOn: CivilDate;
}

export function readPromise(promise: KeptPromise, settings: DocumentSettings): PromiseParts {
  const { appraisal, household } = promise;
  return {
    ...findSideBySide(appraisal),
    promise,
    settings,
    appraisal,
    madeOn: civilDateOf(promise.madeOn, household.zone),
  };
}

/** What the document speaks of, found in the written estimate. */

import { civilDateOf } from '../model/calendar/instant.ts';
import { findSideBySide, type SideBySide } from '../model/comparison/beside.ts';
import type { Appraisal } from '../model/shapes/appraisal.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';

/** What of the settings the document shows. */
export interface DocumentSettings {
  readonly installerName: string;
  readonly installerContact: string;
  readonly paper: 'A4' | 'Letter';
  /** A picture as a data address; none when empty or absent. */
  readonly logo?: string;
}

export interface EstimateParts extends SideBySide {
  readonly estimate: WrittenEstimate;
  readonly settings: DocumentSettings;
  readonly appraisal: Appraisal;
  readonly madeOn: CivilDate;
}

export function readEstimate(estimate: WrittenEstimate, settings: DocumentSettings): EstimateParts {
  const { appraisal, household } = estimate;
  return {
    ...findSideBySide(appraisal),
    estimate,
    settings,
    appraisal,
    madeOn: civilDateOf(estimate.madeOn, household.zone),
  };
}

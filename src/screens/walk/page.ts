/** One page of the walk-through as plain data: what is said, what is drawn, what stands behind it. */
import type { Change } from '../../charts/changes/series.ts';
import type { MonthParts } from '../../charts/month-parts/series.ts';
import type { YearsSeries } from '../../charts/years/series.ts';
import type { EstimateSummary, Settings } from '../../desk/contract.ts';
import type { Appraisal, Versus } from '../../model/shapes/appraisal.ts';
import type { CivilDate } from '../../model/shapes/dates.ts';
import type { Series } from '../../model/shapes/evidence.ts';
import type { Household } from '../../model/shapes/household.ts';
import type { Lifetime } from '../../model/shapes/lifetime.ts';
import type { ShownWorking } from '../../words/working.ts';
import type { KnobName } from '../cost/knobs.ts';

/** In the order in which customers ask; a household may have another. */
export const PAGE_NAMES = ['home', 'cost', 'source', 'change', 'living', 'next'] as const;
export type PageName = (typeof PAGE_NAMES)[number];

export interface WatchRow {
  readonly month: string;
  readonly units: number;
  /** From here on the household should call. */
  readonly callAbove: number;
  readonly pence: number;
}

export interface NamedFact {
  readonly what: string;
  readonly says: string;
}

export interface Years {
  readonly lifetime: Lifetime;
  readonly series: YearsSeries;
}

export type PagePicture =
  | { readonly kind: 'months'; readonly parts: MonthParts }
  | { readonly kind: 'units' }
  /** Every way of heating as a bar; beside it the offers where there are several, else the twenty futures where there is something to compare with. */
  | { readonly kind: 'cost'; readonly beside: 'offers' | Versus | null }
  | { readonly kind: 'changes'; readonly changes: readonly Change[] }
  | { readonly kind: 'living'; readonly facts: readonly NamedFact[]; readonly rows: readonly WatchRow[] }
  /** What comes next; beside it what it costs to put in and what the years may bring, where that is known. */
  | { readonly kind: 'next'; readonly steps: readonly string[]; readonly years: Years | null }
  /** Nothing can be drawn honestly; the sentence says why. */
  | { readonly kind: 'none' };

export interface WalkPage {
  readonly name: PageName;
  /** At most two lines at 44 px. */
  readonly sentence: string;
  readonly say: string;
  readonly foot: string;
  readonly picture: PagePicture;
  /** The sliders that help here; none where a what-if would only distract. */
  readonly knobs: readonly KnobName[];
  readonly workings: readonly ShownWorking[];
  /** Opens the round of the heat inside the machine. */
  readonly inside?: boolean;
  /** Has a second half: what the household can choose. */
  readonly choices?: boolean;
  /** For the installer only; folded away until asked for. */
  readonly notes: readonly string[];
}

export interface WalkInput {
  readonly household: Household;
  readonly appraisal: Appraisal;
  readonly series: readonly Series[];
  readonly estimates: readonly EstimateSummary[];
  readonly settings: Settings;
  readonly today: CivilDate;
  readonly changes: readonly Change[];
  /** Null where there is nothing to hold the heat pump against. */
  readonly lifetime: Lifetime | null;
  /** True while sliders stand elsewhere than today: nothing is then said of today. */
  readonly changed: boolean;
}

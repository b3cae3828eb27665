/** What the next years may bring: the shapes. `reckonLifetime()` beside this file fills them. Money in pence of today. */
import type { Figure, SystemResult } from '../appraisal/appraisal.ts';
import type { Working } from '../working.ts';
import type { LifetimeInputs } from './assumptions.ts';

/** A figure with its 50 % point besides: `value` is reckoned with every input at its middle. */
export interface LifetimeFigure extends Figure {
  readonly middle: number;
}

/** What has been paid by the end of a year, with the 10, 50 and 90 % points. */
export interface YearPoint {
  readonly year: number;
  readonly value: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Paid for equipment at the end of this year, contained in the figures above. */
  readonly outlay: number;
}

/** Years until a purchase is brought back. Null stands for: not within the years looked ahead. */
export interface Payback {
  readonly years: number | null;
  readonly low: number | null;
  readonly middle: number | null;
  readonly high: number | null;
  /** Share of the futures in which it is brought back within the years, 0 to 1. */
  readonly chance: number;
  readonly working: Working;
}

/** What was not given or had to be taken, to be said beside the figures. */
export type LifetimeNote = 'no-purchase' | 'no-grant' | 'no-replacement' | 'present-due-now' | 'renewal-at-full-price';

export interface Lifetime {
  /** `running` where the price of the heat pump was not given: then nothing is counted but running costs. */
  readonly kind: 'whole' | 'running';
  readonly years: number;
  readonly pumpSource: 'ground' | 'air';
  readonly against: Pick<SystemResult, 'id' | 'kind'>;
  readonly pump: readonly YearPoint[];
  readonly beside: readonly YearPoint[];
  /** What the heat pump has saved in all by the end of the years; positive means that it has cost less. */
  readonly saved: LifetimeFigure;
  /** Share of the futures in which it has cost less in all by the end, 0 to 1; the same counts half. */
  readonly chanceLess: number;
  readonly payback: { readonly simple: Payback; readonly discounted: Payback } | null;
  /** Years after which it falls behind, where it cost less before; null where it does not. */
  readonly fallsBehind: number | null;
  readonly netPresentValue: LifetimeFigure | null;
  readonly annual: { readonly pump: LifetimeFigure; readonly beside: LifetimeFigure } | null;
  readonly inputs: LifetimeInputs;
  readonly notes: readonly LifetimeNote[];
}

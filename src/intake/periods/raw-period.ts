/** A bill, a month or a delivery as its row gives it, before it stands among the others. */
import type { Quality } from '../layout/quality-marks.ts';

export interface RawPeriod {
  readonly fromDay: number;
  /** Exclusive. */
  readonly toDay: number;
  /** As written. */
  readonly quantity: number;
  readonly kWh: number;
  readonly costPence?: number;
  readonly quality: Quality;
  readonly line: number;
}

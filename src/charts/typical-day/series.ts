/** A day by the clock: the mean of the days with a finding, and of days as cold without it. */
import type { CheckFinding, TypicalDay } from '../../model/shapes/bill-check.ts';
import { findingName } from '../../words/findings.ts';

export interface DaySeries {
  readonly name: string;
  readonly minutes: number;
  /** Mean power in each reading of the clock, kW. */
  readonly seenKW: readonly number[];
  readonly otherwiseKW: readonly number[] | null;
  readonly seenDays: number;
}

export function daySeries(finding: Pick<CheckFinding, 'code' | 'kWh'>, day: TypicalDay): DaySeries {
  const toKW = (kWh: number) => (kWh * 60) / day.minutes;
  return {
    name: findingName(finding),
    minutes: day.minutes,
    seenKW: day.seen.map(toKW),
    otherwiseKW: day.otherwise?.map(toKW) ?? null,
    seenDays: day.seenDays,
  };
}

/** Reading of the clock at which the two days differ most; of one day alone, its highest. */
export function mostDifferent({ seenKW, otherwiseKW }: DaySeries): number {
  const apart = (i: number) => Math.abs(seenKW[i]! - (otherwiseKW?.[i] ?? 0));
  return seenKW.reduce((best, _, i) => (apart(i) > apart(best) ? i : best), 0);
}

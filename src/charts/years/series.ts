/** What has been paid in all by each year: the heat pump beside what it is held against. */
import type { Lifetime, YearPoint } from '../../model/shapes/lifetime.ts';
import { systemName } from '../../words/systems.ts';

export interface YearsLine {
  readonly name: string;
  /** Pence by year from 0, with the 10 and 90 % points. */
  readonly points: readonly YearPoint[];
}

export interface YearsSeries {
  readonly kind: Lifetime['kind'];
  readonly pump: YearsLine;
  readonly beside: YearsLine;
  /** Where both have cost the same in all: years and pence; null where there is nothing to mark. */
  readonly breakEven: { readonly years: number; readonly pence: number } | null;
}

export function yearsSeries(lifetime: Lifetime): YearsSeries {
  const { pump, beside, against, payback, fallsBehind, kind, pumpSource } = lifetime;
  const years = payback?.simple.years ?? fallsBehind;
  return {
    kind,
    pump: { name: systemName('heat-pump', 'heat-pump', pumpSource), points: pump },
    beside: { name: systemName(against.id, against.kind), points: beside },
    // At the first day there is nothing to wait for.
    breakEven: years !== null && years > 0 ? { years, pence: paidAfter(pump, years) } : null,
  };
}

/** Paid after a part of a year: what a year costs to run accrues evenly, equipment is paid at its end. */
export function paidAfter(points: readonly YearPoint[], years: number): number {
  const before = Math.min(Math.floor(years), points.length - 1);
  const from = points[before]!;
  const to = points[before + 1];
  return to ? from.value + (years - before) * (to.value - to.outlay - from.value) : from.value;
}

/** Radiators and a warm floor as rows of the picture of spreads; the top that neighbouring pictures share. */
import type { EmitterCase, WhatDrives } from '../../model/what-drives/what-drives.ts';
import { emitterName } from '../../words/drivers.ts';
import type { SpreadRow } from '../spread/series.ts';

export function emitterRows(cases: readonly EmitterCase[]): SpreadRow[] {
  return cases.map((one) => ({
    id: one.emitters,
    // A figure never stands on another line than its unit.
    name: emitterName(one).replaceAll(' °C', '\u00a0°C'),
    // Both are the heat pump, so both are green.
    ours: true,
    grade: one.now ? one.cost.grade : 'assumed',
    cost: { low: one.cost.low, middle: one.cost.value, high: one.cost.high },
  }));
}

export const highestPence = ({ drivers }: Pick<WhatDrives, 'drivers'>): number =>
  Math.max(0, ...drivers.flatMap(({ points }) => points.map(({ costPence }) => costPence)));

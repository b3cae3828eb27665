/**
 * Evidence as the model takes it. An overlapping file counts no day twice: where imports of one register differ, the
 * newest says what counts; where they agree, they are simply the same. Taking the newer one back brings the older again.
 */
import { settleBeside } from '../../model/evidence/rivals.ts';
import type { Evidence, Series } from '../../model/shapes/evidence.ts';
import type { ReadIntervals } from './day-layers.ts';
import { groupSeries } from './group-series.ts';
import { joinPeriods } from './join-periods.ts';
import { joinReadings } from './join-readings.ts';

/** @param evidence imports in force, the oldest first */
export function joinEvidence(evidence: readonly Evidence[], zone: string, read: ReadIntervals): Series[] {
  const joined = groupSeries(evidence).map((group) => {
    const newest = group.at(-1)!.series;
    if (group.length === 1) return newest;
    if (newest.resolution === 'period') return joinPeriods(group);
    return joinReadings(group, zone, read)?.series ?? newest;
  });
  return settleBeside(joined);
}

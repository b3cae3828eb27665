/** Findings never speak of days without readings: where some are missing, each stretch stands by itself. */
import { toCivilDate, toDayNumber } from '../calendar/civil.ts';
import type { Finding } from '../shapes/finding.ts';
import type { MeterDays } from './meter-days.ts';

/** Clock changes and a day's hole are no gap, days. */
const MOST_MISSING = 3;

/** A finding cut at gaps of more than three days; units [kWh] and cost [pence] fall on its days with readings alike. */
export function cutAtGaps(finding: Finding, { dayNumber }: MeterDays): Finding[] {
  const [first, end] = [toDayNumber(finding.from), toDayNumber(finding.to)];
  const stretches: number[][] = [];
  for (const day of dayNumber) {
    if (day < first || day >= end) continue;
    const last = stretches.at(-1);
    if (last && day - last.at(-1)! <= MOST_MISSING + 1) last.push(day);
    else stretches.push([day]);
  }
  if (stretches.length < 2) return [finding];
  const all = stretches.reduce((sum, { length }) => sum + length, 0);
  return stretches.map((stretch) => {
    const share = stretch.length / all;
    const { seen, kWh, pence } = finding;
    return {
      ...finding,
      from: toCivilDate(stretch[0]!),
      to: toCivilDate(stretch.at(-1)! + 1),
      seen: {
        ...seen,
        ...(typeof seen.days === 'number' ? { days: Math.max(1, Math.round(seen.days * share)) } : {}),
        ...(typeof seen.hours === 'number' ? { hours: seen.hours * share } : {}),
      },
      kWh: kWh * share,
      pence: pence * share,
    };
  });
}

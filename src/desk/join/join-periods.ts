/** One series from the bills or deliveries of several imports: each day counts once, the newest import of it wins. */
import { toCivilDate, toDayNumber } from '../../model/calendar/civil.ts';
import { isTemperature } from '../../model/shapes/carrier.ts';
import type { EvidencePeriod, Series } from '../../model/shapes/evidence.ts';
import type { Group } from './group-series.ts';

export function joinPeriods(group: Group): Series {
  const newest = group.at(-1)!.series;
  const covered = new Set<number>();
  const kept: EvidencePeriod[] = [];
  const inDegrees = isTemperature(newest.carrier);
  for (const { series } of group.toReversed()) {
    const ownDays: number[] = [];
    for (const period of series.periods ?? []) {
      kept.push(...uncovered(period, covered, inDegrees));
      for (let day = toDayNumber(period.from); day < toDayNumber(period.to); day++) ownDays.push(day);
    }
    // Bills of one import may overlap among themselves; that has its own remark and is not settled here.
    for (const day of ownDays) covered.add(day);
  }
  const periods = kept.toSorted((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : a.to < b.to ? -1 : 1));
  const from = periods[0]?.from ?? newest.from;
  const to =
    periods
      .map((period) => period.to)
      .toSorted()
      .at(-1) ?? from;
  const sum = periods.reduce((total, p) => total + p.kWh * (inDegrees ? length(p) : 1), 0);
  return {
    ...newest,
    from,
    to,
    total: inDegrees
      ? sum /
        Math.max(
          1,
          periods.reduce((days, p) => days + length(p), 0),
        )
      : sum,
    periods,
    present: covered.size,
    expected: toDayNumber(to) - toDayNumber(from),
    estimatedCount: periods.filter(({ quality }) => quality === 'estimated').length,
  };
}

const length = ({ from, to }: EvidencePeriod): number => toDayNumber(to) - toDayNumber(from);

/** The parts of a bill that no newer import covers; a part has its share by days and is an estimate. */
function uncovered(period: EvidencePeriod, covered: ReadonlySet<number>, inDegrees: boolean): EvidencePeriod[] {
  const [from, to] = [toDayNumber(period.from), toDayNumber(period.to)];
  const parts: EvidencePeriod[] = [];
  for (let day = from; day < to; day++) {
    if (covered.has(day)) continue;
    const start = day;
    while (day < to && !covered.has(day)) day++;
    if (start === from && day === to) return [period];
    parts.push(partOf(period, start, day, inDegrees));
  }
  return parts;
}

function partOf(period: EvidencePeriod, from: number, to: number, inDegrees: boolean): EvidencePeriod {
  const share = (to - from) / length(period);
  return {
    ...period,
    from: toCivilDate(from),
    to: toCivilDate(to),
    kWh: inDegrees ? period.kWh : period.kWh * share,
    ...(period.quantity === undefined ? {} : { quantity: period.quantity * share }),
    ...(period.costPence === undefined ? {} : { costPence: period.costPence * share }),
    quality: 'estimated',
  };
}

/** One series from the bills or deliveries of several imports: each day counts once, in the surest import of it. */
import { compareDates, toDayNumber } from '../../model/calendar/civil.ts';
import { cutPeriod } from '../../model/evidence/cut-periods.ts';
import { isTemperature } from '../../model/shapes/carrier.ts';
import type { EvidencePeriod, Series } from '../../model/shapes/evidence.ts';
import type { Group, Member } from './group-series.ts';

export function joinPeriods(group: Group): Series {
  const surest = group.at(-1)!.series;
  const inDegrees = isTemperature(surest.carrier);
  const kept: { readonly of: Member; readonly periods: readonly EvidencePeriod[] }[] = [];
  const take = (of: Member, periods: readonly EvidencePeriod[]) => {
    // Bills of one import may overlap among themselves; that has its own remark and is not settled here.
    const others = kept.filter((one) => one.of !== of);
    const known = others.flatMap((one) => one.periods);
    const cut = { inDegrees, agree: !others.some((one) => one.of.isTyped) };
    kept.push({ of, periods: periods.flatMap((period) => cutPeriod(period, known, cut)) });
  };
  const isEstimate = ({ quality }: EvidencePeriod) => quality === 'estimated';
  const files = group.filter(({ isTyped }) => !isTyped).reverse();
  for (const one of group.filter(({ isTyped }) => isTyped).reverse()) take(one, one.series.periods ?? []);
  for (const one of files)
    take(
      one,
      (one.series.periods ?? []).filter((period) => !isEstimate(period)),
    );
  for (const one of files) take(one, (one.series.periods ?? []).filter(isEstimate));
  const periods = kept
    .flatMap((one) => one.periods)
    .toSorted((a, b) => compareDates(a.from, b.from) || compareDates(a.to, b.to));
  const covered = new Set<number>();
  for (const { from, to } of periods) for (let day = toDayNumber(from); day < toDayNumber(to); day++) covered.add(day);
  const from = periods[0]?.from ?? surest.from;
  const to =
    periods
      .map((period) => period.to)
      .toSorted()
      .at(-1) ?? from;
  const sum = periods.reduce((total, p) => total + p.kWh * (inDegrees ? length(p) : 1), 0);
  return {
    ...surest,
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
    estimatedCount: periods.filter(isEstimate).length,
  };
}

const length = ({ from, to }: EvidencePeriod): number => toDayNumber(to) - toDayNumber(from);

/** One series from the bills or deliveries of several imports: each day counts once, in the surest import of it. */
import { compareDates, toDayNumber } from '../../model/calendar/civil.ts';
import { cutPeriod } from '../../model/evidence/cut-periods.ts';
import { isTemperature } from '../../model/shapes/carrier.ts';
import type { EvidencePeriod, Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import type { Group, Member } from './group-series.ts';

export function joinPeriods(group: Group): Series {
  const surest = group.at(-1)!.series;
  const inDegrees = isTemperature(surest.carrier);
  let kept: { readonly of: Member; readonly periods: readonly EvidencePeriod[] }[] = [];
  const take = (of: Member, periods: readonly EvidencePeriod[]) => {
    // Bills of one import may overlap among themselves; that has its own remark and is not settled here.
    const others = kept.filter((one) => one.of !== of);
    const known = others.flatMap((one) => one.periods);
    const cut = { inDegrees, agree: !others.some((one) => one.of.isTyped) };
    const pieces = periods.map((period) => ({ period, left: cutPeriod(period, known, cut) }));
    // What few days in its midst leave of a long bill would be shared out whatever the season: they give way to it.
    const whole = pieces.filter(({ period, left }) => cut.agree && !inDegrees && isMostOf(period, left));
    const givesWay = (one: EvidencePeriod) =>
      whole.some(({ period }) => period.from <= one.from && one.to <= period.to);
    kept = kept.map((one) => ({ ...one, periods: one.periods.filter((period) => !givesWay(period)) }));
    kept.push({ of, periods: pieces.flatMap((one) => (whole.includes(one) ? [one.period] : one.left)) });

    function isMostOf(period: EvidencePeriod, left: readonly EvidencePeriod[]): boolean {
      const within = known.filter((one) => one.from < period.to && period.from < one.to);
      const days = sumOf(left.map(length));
      const areWithin = within.every((one) => period.from <= one.from && one.to <= period.to);
      return left.length > 1 && areWithin && !isEstimate(period) && days > length(period) / 2;
    }
  };
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
  const sum = sumOf(periods.map((one) => one.kWh * (inDegrees ? length(one) : 1)));
  return {
    ...surest,
    from,
    to,
    total: inDegrees ? sum / Math.max(1, sumOf(periods.map(length))) : sum,
    periods,
    present: covered.size,
    expected: toDayNumber(to) - toDayNumber(from),
    estimatedCount: periods.filter(isEstimate).length,
  };
}

const isEstimate = ({ quality }: EvidencePeriod): boolean => quality === 'estimated';
const length = ({ from, to }: EvidencePeriod): number => toDayNumber(to) - toDayNumber(from);

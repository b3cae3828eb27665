/** What is to be added to what another file has is used nowhere until that file is there: so it is asked for. */
import { isLone, perDay } from '../../model/evidence/rivals.ts';
import type { Evidence, Remark } from '../../model/shapes/evidence.ts';
import { type Group, groupSeries } from './group-series.ts';

/** Groups that were said to be added, with no day of their kind that they could be added to. */
export function loneParts(groups: readonly Group[]): Group[] {
  const kinds = Map.groupBy(groups, ([one]) => `${one!.series.carrier} ${one!.series.role}`);
  return [...kinds.values()].flatMap((ofKind) => {
    const of = (beside: string | undefined) => ofKind.filter(([one]) => one!.series.beside === beside);
    const [added, bases] = [of('added'), [...of(undefined), ...of('instead')]];
    if (bases.length > 0) return added.filter((one) => !sharesDay(one, bases));
    if (isLone(added.map(([one]) => one!.series))) return added;
    return added.filter(
      (one) =>
        !sharesDay(
          one,
          added.filter((other) => other !== one),
        ),
    );
  });
}

const daysOf = (group: Group): number[] => group.flatMap(({ series }) => [...perDay(series).keys()]);

function sharesDay(one: Group, others: readonly Group[]): boolean {
  const days = new Set(others.flatMap(daysOf));
  return daysOf(one).some((day) => days.has(day));
}

/** A question for each import with such a part. */
export function askLoneParts(evidence: readonly Evidence[]): ReadonlyMap<Evidence, readonly Remark[]> {
  if (!evidence.some(({ series }) => series.some(({ beside }) => beside === 'added'))) return new Map();
  const members = loneParts(groupSeries(evidence)).flat();
  return Map.groupBy(
    members.map(({ series: { name, carrier }, fileName: file }): Remark => {
      const named = name === carrier ? { carrier } : { column: name };
      return { code: 'records-part-asked', weight: 'question', file, ...named };
    }),
    (_, i) => evidence[members[i]!.rank]!,
  );
}

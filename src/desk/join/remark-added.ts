/** Names the days that a further meter takes out of a sum: on each of them the use of one of the two is not known. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { LEAST_DAYS, perDay } from '../../model/evidence/rivals.ts';
import type { Evidence, Remark } from '../../model/shapes/evidence.ts';
import { type Group, groupSeries } from './group-series.ts';

/** Remarks for the newest of the imports. */
export function remarkAdded(evidence: readonly Evidence[]): Remark[] {
  if (!evidence.some(({ series }) => series.some(({ beside }) => beside === 'added'))) return [];
  const newest = evidence.at(-1)!;
  const groups = groupSeries(evidence);
  const isOf = (group: Group) => (other: Group) => {
    const [mine, theirs] = [group[0]!.series, other[0]!.series];
    return mine.carrier === theirs.carrier && mine.role === theirs.role;
  };
  return groups.filter(standsAs('added')).flatMap((added): Remark[] => {
    const bases = groups.filter(isOf(added)).filter((one) => standsAs(undefined)(one) || standsAs('instead')(one));
    const members = bases.flat();
    if (members.length === 0 || ![...added, ...members].some(({ rank }) => evidence[rank] === newest)) return [];
    const [own, others] = [daysOf(added), daysOf(members)];
    const all = [...own, ...[...others].filter((day) => !own.has(day))];
    const alone = all.filter((day) => !own.has(day) || !others.has(day)).sort((a, b) => a - b);
    if (alone.length < LEAST_DAYS) return [];
    return [
      {
        code: 'added-part',
        weight: 'note',
        file: newest.fileName,
        found: [...new Set(added.map(({ fileName }) => fileName))].join(', '),
        expected: [...new Set(members.map(({ fileName }) => fileName))].join(', '),
        count: alone.length,
        from: toCivilDate(alone[0]!),
        to: toCivilDate(alone.at(-1)! + 1),
      },
    ];
  });
}

const standsAs = (beside: 'added' | 'instead' | undefined) => (group: Group) => group[0]!.series.beside === beside;
const daysOf = (members: Group): Set<number> => new Set(members.flatMap(({ series }) => [...perDay(series).keys()]));

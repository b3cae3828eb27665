/** Series of several imports that are of the same register: same carrier, same role, same name of the register. */
import { findRivals } from '../../model/evidence/rivals.ts';
import type { Evidence, Series } from '../../model/shapes/evidence.ts';
import { registerName } from './register-name.ts';

export interface Member {
  readonly series: Series;
  readonly fileName: string;
  /** Place of its import, counted from the oldest; the higher wins where two say different things. */
  readonly rank: number;
}

/** Bills and readings of one meter are kept apart: neither can stand in for the other. */
export type Group = readonly Member[];

/**
 * Two series of one import are never the same register, whatever their names; nor are those of two sheets or columns
 * of one file that tell of the same days, nor those of which one makes much more of the same days than the other.
 */
export function groupSeries(evidence: readonly Evidence[]): Group[] {
  const groups = new Map<string, Member[]>();
  const isApart = (one: Evidence, series: Series) => (member: Member) => {
    const other = evidence[member.rank]!;
    if (other === one) return true;
    // What is typed puts right what was there.
    const isTyped = one.shape === 'typed' || other.shape === 'typed';
    return (
      meet(member.series, series) && (other.sha256 === one.sha256 || (!isTyped && contradict(member.series, series)))
    );
  };
  evidence.forEach((one, rank) => {
    for (const series of one.series) {
      const name = identityOf(series, one.shape);
      let occurrence = 1;
      while (groups.get(`${name}|${occurrence}`)?.some(isApart(one, series))) occurrence++;
      const key = `${name}|${occurrence}`;
      groups.set(key, [...(groups.get(key) ?? []), { series, fileName: one.fileName, rank }]);
    }
  });
  return [...groups.values()];
}

/** What was said of them does not matter here. */
const contradict = (a: Series, b: Series): boolean =>
  findRivals([a, b].map(({ beside: _, ...rest }) => rest)).length > 0;

export const meet = (a: Series, b: Series): boolean => a.from < b.to && b.from < a.to;

/** A name typed at the table is a title, not a register. */
function identityOf({ carrier, role, name, resolution }: Series, shape: string): string {
  const register = shape === 'typed' ? '' : registerName(name);
  return [carrier, role, register, resolution === 'period' ? 'bills' : 'readings'].join('|');
}

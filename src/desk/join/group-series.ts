/** Series of several imports that are of the same register: same carrier, same role, same name of the register. */
import type { Evidence, Series } from '../../model/evidence/evidence.ts';
import { registerName } from './register-name.ts';

export interface Member {
  readonly series: Series;
  readonly fileName: string;
  /** Place of its import, counted from the oldest; the higher wins where two say different things. */
  readonly rank: number;
}

/** Bills and readings of one meter are kept apart: neither can stand in for the other. */
export type Group = readonly Member[];

/** Two series of one import are never the same register, whatever their names. */
export function groupSeries(evidence: readonly Evidence[]): Group[] {
  const groups = new Map<string, Member[]>();
  evidence.forEach((one, rank) => {
    const seen = new Map<string, number>();
    for (const series of one.series) {
      const name = identityOf(series, one.shape);
      const occurrence = (seen.get(name) ?? 0) + 1;
      seen.set(name, occurrence);
      const key = `${name}|${occurrence}`;
      const group = groups.get(key) ?? [];
      group.push({ series, fileName: one.fileName, rank });
      groups.set(key, group);
    }
  });
  return [...groups.values()];
}

/** A name typed at the table is a title, not a register. */
function identityOf({ carrier, role, name, resolution }: Series, shape: string): string {
  const register = shape === 'typed' ? '' : registerName(name);
  return [carrier, role, register, resolution === 'period' ? 'bills' : 'readings'].join('|');
}

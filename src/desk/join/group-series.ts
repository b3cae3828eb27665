/** Series of several imports that are of the same register: same carrier, same role, same name of the register. */
import { compareDates, toDayNumber } from '../../model/calendar/civil.ts';
import { findRivals } from '../../model/evidence/rivals.ts';
import type { Evidence, Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { registerName } from './register-name.ts';

export interface Member {
  readonly series: Series;
  readonly fileName: string;
  /** Place of its import, counted from the oldest. */
  readonly rank: number;
  /** What is typed puts right what was there. */
  readonly isTyped: boolean;
}

/** Bills and readings of one meter are kept apart: neither can stand in for the other. The last counts where two say different things. */
export type Group = readonly Member[];

/**
 * Two series of one import are never the same register, whatever their names; nor are those of two sheets or columns
 * of one file that tell of the same days, nor those of which one makes much more of the same days than the other.
 * In which order the files were brought makes no odds; only what is typed counts before all that was there.
 */
export function groupSeries(evidence: readonly Evidence[]): Group[] {
  const groups = new Map<string, Member[]>();
  const isApart = (one: Member) => (other: Member) => {
    const [mine, theirs] = [evidence[one.rank]!, evidence[other.rank]!];
    if (mine === theirs) return true;
    return (
      meet(one.series, other.series) &&
      (mine.sha256 === theirs.sha256 || (!one.isTyped && !other.isTyped && contradict(one.series, other.series)))
    );
  };
  const members = inOrder(evidence).flatMap((rank) =>
    evidence[rank]!.series.map((series) => {
      const { fileName, shape } = evidence[rank]!;
      return { series, fileName, rank, isTyped: shape === 'typed' };
    }),
  );
  for (const member of members) {
    const name = identityOf(member.series, evidence[member.rank]!.shape);
    let occurrence = 1;
    while (groups.get(`${name}|${occurrence}`)?.some(isApart(member))) occurrence++;
    const key = `${name}|${occurrence}`;
    groups.set(key, [...(groups.get(key) ?? []), member]);
  }
  // Told in the order in which they came.
  const oldest = (group: Group) => Math.min(...group.map(({ rank }) => rank));
  return [...groups.values()].sort((a, b) => oldest(a) - oldest(b));
}

/** Places of the imports, from that which gives way to that which counts, whatever the order they came in. */
function inOrder(evidence: readonly Evidence[]): number[] {
  const places = [...evidence.keys()];
  const isTyped = (place: number) => evidence[place]!.shape === 'typed';
  const files = places.filter((place) => !isTyped(place)).map((place) => ({ place, ...sureness(evidence[place]!) }));
  files.sort(
    (a, b) =>
      b.daysOfPeriod - a.daysOfPeriod ||
      compareDates(a.to, b.to) ||
      compareDates(a.from, b.from) ||
      b.estimated - a.estimated ||
      compareDates(a.sha256, b.sha256),
  );
  return [...files.map(({ place }) => place), ...places.filter(isTyped)];
}

/** Finer bills count before coarser ones, what goes on later before what ends earlier, what was read before what was estimated. */
function sureness({ series, sha256 }: Evidence) {
  const ends = series.map(({ to }) => to).toSorted(compareDates);
  return {
    daysOfPeriod: Math.max(0, ...series.map(daysOfPeriod)),
    to: ends.at(-1) ?? '',
    from: series.map(({ from }) => from).toSorted(compareDates)[0] ?? '',
    estimated: sumOf(series.map((one) => one.estimatedCount)) / Math.max(1, sumOf(series.map((one) => one.present))),
    sha256,
  };
}

/** Days of a period to the next power of two, so that a month and four weeks are alike. */
const daysOfPeriod = ({ from, to, periods }: Series): number =>
  periods ? Math.round(Math.log2((toDayNumber(to) - toDayNumber(from)) / Math.max(1, periods.length))) : 0;

/** What was said of them does not matter here. */
const contradict = (a: Series, b: Series): boolean =>
  findRivals([a, b].map(({ beside: _, ...rest }) => rest)).length > 0;

export const meet = (a: Series, b: Series): boolean => a.from < b.to && b.from < a.to;

/** A name typed at the table is a title, not a register. What was said of one record does not hold for others. */
function identityOf({ carrier, role, name, resolution, beside }: Series, shape: string): string {
  const register = shape === 'typed' ? '' : registerName(name);
  return [carrier, role, register, resolution === 'period' ? 'bills' : 'readings', beside ?? ''].join('|');
}

/** What an import says again that an earlier one said: the days, and by how much it differs. */
import { toCivilDate } from '../../model/calendar/civil.ts';
import { perDay } from '../../model/evidence/rivals.ts';
import { isTemperature } from '../../model/shapes/carrier.ts';
import type { Evidence, Remark, Series } from '../../model/shapes/evidence.ts';
import { sumOf } from '../../model/units/sums.ts';
import { listed } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { DAY_MINUTES, layersOf, type ReadIntervals } from './day-layers.ts';
import { type Group, groupSeries, type Member, meet } from './group-series.ts';
import { remarkAdded } from './remark-added.ts';

/** Runs of differing days that are named one by one; the rest are put together. */
const LISTED_RUNS = 5;
/** Half a watt-hour a reading is rounding between two exports, no difference. */
const SAME_KWH = 0.0005;

/** One day in common, with what the newer import says more than the older ones [kWh or °C]. */
interface CommonDay {
  readonly day: number;
  readonly difference: number;
  readonly differs: boolean;
}

/** An import with what it repeats of the earlier ones; told anew each time, since earlier ones may be taken back. */
export const withOverlaps = (evidence: Evidence, overlaps: readonly Remark[]): Evidence =>
  overlaps.length === 0 ? evidence : { ...evidence, remarks: [...evidence.remarks, ...overlaps] };

/** Remarks for the newest of the imports, of what the ones before it say of the same days or lack. */
export function findOverlaps(evidence: readonly Evidence[], read: ReadIntervals): Remark[] {
  const newest = evidence.at(-1);
  if (!newest) return [];
  const overlaps = groupSeries(evidence).flatMap((group) => {
    const own = group.find(({ rank }) => rank === evidence.length - 1);
    const earlier = own ? group.filter((one) => one !== own && meet(one.series, own.series)) : [];
    if (!own || earlier.length === 0) return [];
    const common = own.series.resolution === 'period' ? commonPeriods(earlier, own) : commonDays(earlier, own, read);
    const counts = group.indexOf(own) > group.indexOf(earlier.at(-1)!);
    return remarksOf(newest.fileName, earlier, own.series, common, counts);
  });
  return [...overlaps, ...remarkAdded(evidence)];
}

function commonDays(earlier: Group, own: Member, read: ReadIntervals): CommonDay[] {
  const below = layersOf(earlier, read);
  const common = new Map<number, CommonDay>();
  for (const [minutes, layer] of layersOf([own], read)) {
    for (const [day, { values }] of layer) {
      const same = below.get(minutes)?.get(day)?.values;
      const pairs = same?.length === values.length ? pairsOf(values, same) : [];
      if (pairs.length > 0) common.set(day, compare(day, pairs));
    }
  }
  // Readings of another length can be held against each other by whole days only.
  const ofDay = perDay(own.series);
  for (const { series } of earlier) {
    if ((series.intervalMinutes ?? DAY_MINUTES) === (own.series.intervalMinutes ?? DAY_MINUTES)) continue;
    for (const [day, value] of perDay(series)) {
      const now = ofDay.get(day);
      if (now !== undefined && !common.has(day)) common.set(day, compare(day, [[now, value]]));
    }
  }
  return [...common.values()].sort((a, b) => a.day - b.day);
}

function pairsOf(now: Float64Array, before: Float64Array): [number, number][] {
  const pairs: [number, number][] = [];
  for (let slot = 0; slot < now.length; slot++) {
    if (!Number.isNaN(now[slot]!) && !Number.isNaN(before[slot]!)) pairs.push([now[slot]!, before[slot]!]);
  }
  return pairs;
}

const compare = (day: number, pairs: readonly (readonly [number, number])[]): CommonDay => ({
  day,
  difference: sumOf(pairs.map(([now, before]) => now - before)),
  differs: pairs.some(([now, before]) => Math.abs(now - before) > SAME_KWH),
});

/** Bills are held against each other by the day, each spread evenly over its days; only the whole differs or not. */
function commonPeriods(earlier: Group, own: Member): CommonDay[] {
  const before = new Map(earlier.flatMap(({ series }) => [...perDay(series)]));
  return [...perDay(own.series)]
    .flatMap(([day, now]) => {
      const known = before.get(day);
      return known === undefined ? [] : [compare(day, [[now, known]])];
    })
    .sort((a, b) => a.day - b.day);
}

function remarksOf(
  file: string,
  earlier: Group,
  { carrier }: Series,
  common: readonly CommonDay[],
  counts: boolean,
): Remark[] {
  if (common.length === 0) return [];
  const names = [...new Set(earlier.map(({ fileName }) => fileName))];
  const found =
    names.length > 2 ? say('{file} and {count} others', { file: names[0]!, count: names.length - 1 }) : listed(names);
  const effect = (days: readonly CommonDay[]) =>
    isTemperature(carrier)
      ? {}
      : { effectKWh: Math.round(sumOf(days.map(({ difference }) => difference)) * 1000) / 1000 };
  const remark = (code: string, days: readonly CommonDay[]): Remark => ({
    code,
    weight: 'note',
    file,
    found,
    from: toCivilDate(days[0]!.day),
    to: toCivilDate(days.at(-1)!.day + 1),
    count: days.length,
  });
  const different = (days: readonly CommonDay[]): Remark => ({
    ...remark('overlap-different', days),
    expected: counts ? file : found,
    ...effect(days),
  });
  const same = common.filter(({ differs }) => !differs);
  const runs = runsOf(common.filter(({ differs }) => differs));
  const rest = runs.slice(LISTED_RUNS).flat();
  return [
    ...(same.length > 0 ? [remark('overlap-same', same)] : []),
    ...runs.slice(0, LISTED_RUNS).map((run) => different(run)),
    ...(rest.length > 0 ? [different(rest)] : []),
  ];
}

/** Days one after the other, together. */
function runsOf(days: readonly CommonDay[]): CommonDay[][] {
  const runs: CommonDay[][] = [];
  for (const day of days) {
    const run = runs.at(-1);
    if (run && run.at(-1)!.day + 1 === day.day) run.push(day);
    else runs.push([day]);
  }
  return runs;
}

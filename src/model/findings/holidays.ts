/** Days on which a home took much less than before and after in the same weather: nobody was there. */
import { fitLine } from '../demand/least-squares.ts';
import { coldLine } from './cold-line.ts';
import { knownWeather, type MeterDays, meanOf, median } from './meter-days.ts';

/** First and last place of a spell of days. */
export type Spell = readonly [first: number, last: number];

/** A line through fewer days is not worth holding days against. */
const LINE_DAYS = 60;
/** Beyond this a spell is not a holiday but how the home is now. */
const LONGEST_DAYS = 21;
const SHORTEST_DAYS = 4;
/** A day with less than this share of what the cold explains is out of the ordinary. */
const OUT_SHARE = 0.5;
/** So much less than the days about it, a spell's days and all of it together; the days about it, on each side. */
const LOWER = { day: 0.78, spell: 0.7, aboutDays: 10 } as const;
/** Walls that have cooled take more for some days after. */
const REHEAT_DAYS = 3;

/**
 * Holidays, on whatever meter: four to twenty-one days that take much less than as cold days before and after. They are
 * nobody's change of habits, and no line of days may be drawn through them, nor through the days on which walls get warm again.
 */
export function holidays(days: MeterDays): Spell[] {
  const share = sharesOfUsual(days);
  const known = [...share.keys()].filter((day) => Number.isFinite(share[day]!));
  const shareAt = (i: number) => share[known[i]!]!;
  const spells: Spell[] = [];
  for (let from = 1; from < known.length; ) {
    const before = usualAbout(shareAt, from - LOWER.aboutDays, from);
    let to = from;
    while (to < known.length && shareAt(to) < LOWER.day * before) to++;
    const after = usualAbout(shareAt, to + 1, Math.min(known.length, to + 1 + LOWER.aboutDays));
    const mean = meanOf(Array.from({ length: to - from }, (_, i) => shareAt(from + i)));
    const isSpell = to - from >= SHORTEST_DAYS && to - from <= LONGEST_DAYS;
    if (!isSpell || !(mean < LOWER.spell * Math.min(before, after))) from++;
    else {
      spells.push([known[from]!, known[Math.min(known.length, to + REHEAT_DAYS) - 1]!]);
      from = to + REHEAT_DAYS;
    }
  }
  return spells;
}

function usualAbout(shareAt: (i: number) => number, from: number, to: number): number {
  const first = Math.max(0, from);
  return median(Array.from({ length: Math.max(0, to - first) }, (_, i) => shareAt(first + i)));
}

/** Each day's use beside that of ordinary days as cold; NaN where the weather is not known, or too little of it. */
export function sharesOfUsual(days: MeterDays): number[] {
  const known = knownWeather(days);
  if (known.length < LINE_DAYS) return Array.from({ length: days.count }, () => Number.NaN);
  const { below } = coldLine(
    known.map((day) => days.dayKWh[day]!),
    known.map((day) => days.outdoorC[day]!),
  );
  const belowOf = new Map(known.map((day, i) => [day, below[i]!]));
  const shares = (of: readonly number[]) => {
    const line = fitLine(
      of.map((day) => belowOf.get(day)!),
      of.map((day) => days.dayKWh[day]!),
    );
    return Array.from(
      days.dayKWh,
      (kWh, day) => kWh / (line.intercept + line.slope * (belowOf.get(day) ?? Number.NaN)),
    );
  };
  const first = shares(known);
  return shares(known.filter((day) => first[day]! >= OUT_SHARE));
}

/** Mean of such shares over a day and the three on either side. */
export const weekAbout = (share: readonly number[], day: number): number =>
  meanOf(share.slice(Math.max(0, day - 3), day + 4));

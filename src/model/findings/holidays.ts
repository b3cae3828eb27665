/** Days on which a home took much less than before and after in the same weather. */

import { fitLine } from '../demand/least-squares.ts';
import { meanOf } from '../units/sums.ts';
import { coldLine } from './cold-line.ts';
import { knownWeather, type MeterDays, median } from './meter-days.ts';

/** Days that are mostly warmer need hardly any heating, so that little of it says nothing, °C. */
const HEATED_C = 11;

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
 * Weeks of less are longer than a holiday nobody asks about, and end with what came before: all of them together, and their
 * first days, below a share of the days before; the days after above their last ones by so many times. Spring comes little by little.
 */
const WEEKS = { leastDays: 18, mostDays: 150, day: 0.85, endDays: 4, back: 1.4 } as const;
/** A car that is charged now and then makes such weeks on the house's meter too: there they must take less still. */
const WEEKS_SHARE = { 'heat-pump': 0.6, 'whole-house': 0.55 } as const;

/**
 * Holidays, on whatever meter: four to twenty-one days that take much less than as cold days before and after. They are
 * nobody's change of habits, and no line of days may be drawn through them, nor through the days on which walls get warm again.
 */
export function holidays(days: MeterDays, share = sharesOfUsual(days)): Spell[] {
  const known = [...share.keys()].filter((day) => Number.isFinite(share[day]!));
  const shares = known.map((day) => share[day]!);
  const spells: Spell[] = [];
  let tooLongTo = 0;
  for (let from = 1; from < known.length; ) {
    const before = median(shares.slice(Math.max(0, from - LOWER.aboutDays), from));
    let to = from;
    while (to < known.length && shares[to]! < LOWER.day * before) to++;
    // What lasts longer is not found from a later day of it either.
    const isRest = from < tooLongTo && shares[from - 1]! < LOWER.day * before;
    if (to - from > LONGEST_DAYS) tooLongTo = to;
    const isSpell = !isRest && to - from >= SHORTEST_DAYS && to - from <= LONGEST_DAYS;
    const after = isSpell ? median(shares.slice(to + 1, to + 1 + LOWER.aboutDays)) : Number.NaN;
    if (!(meanOf(shares.slice(from, to)) < LOWER.spell * Math.min(before, after))) from++;
    else {
      spells.push([known[from]!, known[Math.min(known.length, to + REHEAT_DAYS) - 1]!]);
      from = to + REHEAT_DAYS;
    }
  }
  return spells;
}

export interface WeeksOfLess {
  readonly spell: Spell;
  /** What they took of the days before and after, 0 to 1. */
  readonly share: number;
  /** Units less than these [kWh]. */
  readonly lessKWh: number;
}

/**
 * Weeks that take hardly more than half of as cold days before and after, and begin and end within a few days; on a meter that
 * `heats`, in the heating season, since a summer's line is hardly known.
 */
export function weeksOfLess(days: MeterDays, heats: boolean, share = sharesOfUsual(days)): WeeksOfLess[] {
  const known = [...share.keys()].filter((day) => Number.isFinite(share[day]!));
  const shares = known.map((day) => share[day]!);
  const least = WEEKS_SHARE[days.meter];
  const middle = shares.map((_, i) => median(shares.slice(Math.max(0, i - 1), i + 2)));
  const found: WeeksOfLess[] = [];
  for (let from: number = LOWER.aboutDays; from < known.length; from++) {
    const before = median(shares.slice(from - LOWER.aboutDays, from));
    if (!(shares[from]! < least * before)) continue;
    let to = from + 1;
    while (to < known.length && middle[to]! < WEEKS.day * before) to++;
    // The middle of three looks a day ahead and a day back.
    while (to > from && shares[to - 1]! >= WEEKS.day * before) to--;
    const weeks = shares.slice(from, to);
    const after = median(shares.slice(to, to + LOWER.aboutDays));
    const usual = Math.min(before, after);
    const [first, last] = [meanOf(weeks.slice(0, WEEKS.endDays)), meanOf(weeks.slice(-WEEKS.endDays))];
    // What lasts longer is not found from a later day of it either.
    if (weeks.length > WEEKS.mostDays) from = to;
    const isSpell = weeks.length >= WEEKS.leastDays && weeks.length <= WEEKS.mostDays;
    if (heats && !(median(known.slice(from, to).map((day) => days.outdoorC[day]!)) < HEATED_C)) continue;
    const isAbrupt = first < least * Math.min(1, before) && after >= WEEKS.back * last;
    if (!isSpell || !isAbrupt || !(meanOf(weeks) < least * Math.min(1, usual))) continue;
    const lessKWh = weeks.reduce((sum, one, i) => {
      const kWh = days.dayKWh[known[from + i]!]!;
      return sum + (one > 0 ? kWh * (usual / one - 1) : 0);
    }, 0);
    found.push({ spell: [known[from]!, known[to - 1]!], share: meanOf(weeks) / usual, lessKWh });
    from = to;
  }
  return found;
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

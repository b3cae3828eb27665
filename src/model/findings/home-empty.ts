/** Weeks in which nobody seems to live in the home: its meter has none of the ups and downs of a day. */
import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { type Spell, sharesOfUsual, type WeeksOfLess, weekAbout } from './holidays.ts';
import { type MeterDays, median, onlyDays, type Prices, unitsAndCost } from './meter-days.ts';

const DAY = { from: 6.5, to: 23 } as const;
/** What the sun gives hides people by day; their evenings stay. */
const EVENING = { from: 19.5, to: 23 } as const;
const NIGHT = { from: 1, to: 5 } as const;
/** Days that are looked at together. */
const ABOUT = 3;
/** A home is empty below these shares of its usual ups and downs: beyond those of the night, and of all by day. */
const MOST_SHARE = 0.25;
const MOST_BY_DAY = 0.4;
const USUAL = 0.7;
/** Shorter spells are holidays that nobody asks about, and chance. */
const LEAST_DAYS = 18;
/** Of a spell's own days so many are as quiet. */
const QUIET_SHARE = 0.75;
/** A home that is kept from freezing only, and draws no hot water, takes less than this share. Common practice, no source. */
const EMPTY_SHARE = 0.8;
const LEAST_KW = 0.02;
/** More than this at once counts as this: a compressor must not drown the kettle, kW. */
const MOST_KW = 0.25;

/** Spells of days, in which the house's meter went up and down little, and no more by day than by night; `sunny` where electricity is made at home. */
export function emptySpells(days: MeterDays, sunny: boolean, share = sharesOfUsual(days)): Spell[] {
  if (days.meter !== 'whole-house' || days.count < 2 * LEAST_DAYS) return [];
  const all = Array.from({ length: days.count }, (_, day) => day);
  const window = sunny ? EVENING : DAY;
  const ownByDay = all.map((day) => strayKW(days, day, window));
  const ownBeyond = all.map((day, i) => ownByDay[i]! - strayKW(days, day, NIGHT));
  const [byDay, beyondNight] = [smoothed(ownByDay), smoothed(ownBeyond)];
  const usualOf = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(USUAL * values.length)]!;
  const [usualByDay, usualBeyond] = [usualOf(byDay), usualOf(beyondNight)];
  if (usualBeyond < LEAST_KW) return [];
  const spells: [number, number][] = [];
  for (const day of all) {
    if (beyondNight[day]! > MOST_SHARE * usualBeyond || byDay[day]! > MOST_BY_DAY * usualByDay) continue;
    const last = spells.at(-1);
    if (last && last[1] === day - 1) last[1] = day;
    else spells.push([day, day]);
  }
  // The days about a spell make its ends long: they are those of its own quiet days.
  const isQuiet = (day: number) =>
    ownBeyond[day]! <= MOST_SHARE * usualBeyond && ownByDay[day]! <= MOST_BY_DAY * usualByDay;
  // A holiday and a quiet week beside it are no empty home: with nobody there each of its weeks takes less than others as cold.
  const isUsual = (day: number) => weekAbout(share, day) > EMPTY_SHARE;
  return spells.flatMap(([first, last]): Spell[] => {
    const quiet = all.slice(first, last + 1).filter(isQuiet);
    const length = quiet.length > 0 ? quiet.at(-1)! - quiet[0]! + 1 : 0;
    return length >= LEAST_DAYS && quiet.length >= QUIET_SHARE * length && !quiet.slice(ABOUT, -ABOUT).some(isUsual)
      ? [[quiet[0]!, quiet.at(-1)!]]
      : [];
  });
}

function smoothed(values: readonly number[]): number[] {
  return values.map((_, day) => median(values.slice(Math.max(0, day - ABOUT), day + ABOUT + 1)));
}

/** How far readings stray from the mean of their neighbours, kW: people by day, machines by night as well. */
function strayKW({ kWh, perDay, hours }: MeterDays, day: number, { from, to }: { from: number; to: number }): number {
  let sum = 0;
  let count = 0;
  for (let i = Math.ceil(from / hours); i < to / hours - 1; i++) {
    const place = day * perDay + i;
    sum += Math.min(MOST_KW * hours, Math.abs(kWh[place]! - (kWh[place - 1]! + kWh[place + 1]!) / 2));
    count++;
  }
  return sum / count / hours;
}

/** Weeks without ups and downs as a question; what they would have used is not known, so [kWh] and [pence] are zero. */
export function findHomeEmpty(days: MeterDays, spells: readonly Spell[]): Finding[] {
  return spells.map(
    ([first, last]): Finding => ({
      code: 'home-empty',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[first]!),
      to: toCivilDate(days.dayNumber[last]! + 1),
      sure: sureOf(0.7 + (last - first) / 300),
      grade: 'estimated',
      seen: { days: last - first + 1 },
      ...{ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 },
      ask: ['away'],
      check: [],
      cautions: [],
    }),
  );
}

/**
 * Weeks that took less than the days about them, in the same weather: units [kWh] below those, as a question, since heating
 * that is turned down or stands still looks the same. No year has them twice.
 */
export function findWeeksOfLess(days: MeterDays, weeks: readonly WeeksOfLess[], prices: Prices): Finding[] {
  return weeks.map(
    ({ spell: [first, last], share, lessKWh }): Finding => ({
      code: 'home-empty',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[first]!),
      to: toCivilDate(days.dayNumber[last]! + 1),
      sure: sureOf(0.75 + (0.5 - share) / 2),
      grade: 'estimated',
      seen: { days: last - first + 1, share },
      ...unitsAndCost(-lessKWh, -lessKWh, prices),
      may: ['home-empty', 'less-heat', ...(days.meter === 'whole-house' ? (['less-other-use'] as const) : [])],
      ask: ['away', 'settings-changed'],
      check: [],
      cautions: [],
    }),
  );
}

/** The days on which somebody was at home. */
export function livedInDays(days: MeterDays, spells: readonly Spell[]): MeterDays {
  return spells.length === 0
    ? days
    : onlyDays(days, (day) => !spells.some(([first, last]) => day >= first && day <= last));
}

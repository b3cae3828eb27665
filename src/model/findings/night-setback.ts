/** Nights let go cold and mornings that make up for it with hot water in the radiators. */

import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { meanOf } from '../units/sums.ts';
import { knownWeather, type MeterDays, median } from './meter-days.ts';

const LEAST_DAYS = 15;
/** Below this there is no heating to speak of on this meter, kW. */
const LEAST_KW = 0.15;
/** Outdoor temperature below which heating runs for most of the day, and above which it does not at all, °C. */
const COLD_C = 9;
const WARM_C = 16.5;
/** Days on which the rooms are heated, for how nights and days grow with the cold, looked at in spans of four weeks. */
const HEATED_C = 13;
const WINDOW_DAYS = 28;
const NIGHT_DEGREE_SHARE = 0.6;
/** Days that differ less from those about them say nothing of it, K². */
const LEAST_SPREAD_K2 = 0.5;
/** Night below this share of the day, morning above that one. Common practice, no source. */
const NIGHT_SHARE = 0.55;
const MORNING_SHARE = 1.5;
/** On the house's meter mornings have people in them. */
const MORNING_SHARE_OF_HOUSE = 1.75;
const NIGHT = { from: 0, to: 5, hours: 3 } as const;
const MORNING = { from: 4.5, to: 10, hours: 2 } as const;
const DAY = { from: 10, to: 22 } as const;
/**
 * A night with next to nothing in it, and as little for each degree colder, rests whatever the morning is like: a heavy house
 * makes up for it over the whole day. Common practice, no source.
 */
const RESTS = { nightShare: 0.25, degreeShare: 0.3 } as const;
/**
 * Cold days whose nights use less than 55 % of the day's power and whose mornings more than 150 %, hot water taken out by
 * the profile of the warm days. The cool night saves heat and the hot water of the morning costs some; which is more hangs on
 * the house and no share is proven, so [kWh] and [pence] are zero: only nights tried both ways tell.
 */
export function findNightSetback(days: MeterDays): Finding[] {
  const known = knownWeather(days);
  const cold = known.filter((day) => days.outdoorC[day]! < COLD_C);
  const warm = known.filter((day) => days.outdoorC[day]! > WARM_C);
  const knowsOther = warm.length >= LEAST_DAYS;
  if (cold.length < LEAST_DAYS || (days.meter === 'whole-house' && !knowsOther)) return [];
  const other = knowsOther ? profile(days, warm) : new Float64Array(days.perDay);
  const heat = profile(days, cold).map((kW, i) => Math.max(0, kW - other[i]!));
  const window = (from: number, to: number) => heat.slice(from / days.hours, to / days.hours);
  const dayKW = median([...window(DAY.from, DAY.to)]);
  const nightKW = extremeOf(window(NIGHT.from, NIGHT.to), NIGHT.hours / days.hours, Math.min);
  const morning = window(MORNING.from, MORNING.to);
  const morningKW = extremeOf(morning, MORNING.hours / days.hours, Math.max);
  const isHouse = days.meter === 'whole-house';
  if (!(dayKW > LEAST_KW) || nightKW > NIGHT_SHARE * dayKW) return [];
  const ofDegree = nightOfDegree(days, known);
  const rests = nightKW <= RESTS.nightShare * dayKW && ofDegree !== null && ofDegree.most <= RESTS.degreeShare;
  // A night with nothing left in it may have had something else in its warm days, such as a car.
  const peaks =
    morningKW >= (isHouse ? MORNING_SHARE_OF_HOUSE : MORNING_SHARE) * dayKW &&
    !(isHouse && nightKW <= 0) &&
    (ofDegree?.share ?? 0) <= NIGHT_DEGREE_SHARE;
  if (!rests && !peaks) return [];
  const recoveryKWh = morning.reduce((sum, kW) => sum + (kW > dayKW ? kW * days.hours : 0), 0);
  return [
    {
      code: 'night-setback',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[cold[0]!]!),
      to: toCivilDate(days.dayNumber[cold.at(-1)!]! + 1),
      sure: sureOf(0.5 + (NIGHT_SHARE - nightKW / dayKW) / 2 + Math.max(0, morningKW / dayKW - MORNING_SHARE) / 3),
      grade: 'estimated',
      seen: {
        nightShare: nightKW / dayKW,
        morningShare: morningKW / dayKW,
        days: cold.length,
        recoveryKWhPerDay: recoveryKWh,
      },
      ...{ kWh: 0, pence: 0, kWhYear: 0, penceYear: 0 },
      ask: ['night-setting', 'settings-changed'],
      check: ['night-setting', 'heating-curve'],
      cautions: [],
    },
  ];
}

/**
 * What the night takes more for a degree colder, beside the day, and the most it may be by the nights' own ups and downs, such as
 * a car that charges: near 1 the rooms are heated all night. Null where the days were all as cold.
 */
function nightOfDegree(days: MeterDays, known: readonly number[]): { share: number; most: number } | null {
  const heated = known.filter((day) => days.outdoorC[day]! < HEATED_C);
  const [night, day] = [perDegree(days, heated, NIGHT), perDegree(days, heated, DAY)];
  return night && day && { share: night.slope / day.slope, most: (night.slope + 2 * night.error) / day.slope };
}

/**
 * How much more is used between two hours for a degree colder [kW/K], days held against the others of their four weeks: what
 * came or went in between, such as heating left on in summer or a load since the winter, falls out.
 */
function perDegree(days: MeterDays, places: readonly number[], { from, to }: { from: number; to: number }) {
  const meanKW = (day: number) =>
    meanOf([
      ...days.kWh.subarray(
        day * days.perDay + Math.floor(from / days.hours),
        day * days.perDay + Math.floor(to / days.hours),
      ),
    ]) / days.hours;
  const months = [...Map.groupBy(places, (day) => Math.floor(days.dayNumber[day]! / WINDOW_DAYS)).values()];
  const pairs = months.flatMap((month) => {
    const [meanC, mean] = [meanOf(month.map((day) => days.outdoorC[day]!)), meanOf(month.map(meanKW))];
    return month.map((day) => ({ colder: meanC - days.outdoorC[day]!, more: meanKW(day) - mean }));
  });
  const square = pairs.reduce((sum, { colder }) => sum + colder ** 2, 0);
  if (square < LEAST_SPREAD_K2 * places.length) return null;
  const slope = pairs.reduce((sum, { colder, more }) => sum + colder * more, 0) / square;
  const left = pairs.reduce((sum, { colder, more }) => sum + (more - slope * colder) ** 2, 0);
  return { slope, error: Math.sqrt(left / Math.max(1, pairs.length - months.length - 1) / square) };
}

/** Mean power by reading of the day over some days, kW. */
function profile(days: MeterDays, places: readonly number[]): Float64Array {
  const sums = new Float64Array(days.perDay);
  for (const day of places) {
    for (let i = 0; i < days.perDay; i++) sums[i]! += days.kWh[day * days.perDay + i]! / days.hours / places.length;
  }
  return sums;
}

/** Smallest or largest mean of `length` neighbours. */
function extremeOf(values: Float64Array, length: number, pick: (a: number, b: number) => number): number {
  let best = Number.NaN;
  for (let start = 0; start + length <= values.length; start++) {
    const mean = values.slice(start, start + length).reduce((sum, value) => sum + value, 0) / length;
    best = Number.isNaN(best) ? mean : pick(best, mean);
  }
  return best;
}

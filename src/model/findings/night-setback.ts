/** Nights let go cold and mornings that make up for it with hot water in the radiators. */
import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { knownWeather, type MeterDays, meanOf, median } from './meter-days.ts';

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
  // A night with nothing left in it had something else in its warm days, such as a car.
  if (!(dayKW > LEAST_KW) || nightKW > NIGHT_SHARE * dayKW || (isHouse && nightKW <= 0)) return [];
  if (morningKW < (isHouse ? MORNING_SHARE_OF_HOUSE : MORNING_SHARE) * dayKW) return [];
  if (growsByNight(days, known)) return [];
  const recoveryKWh = morning.reduce((sum, kW) => sum + (kW > dayKW ? kW * days.hours : 0), 0);
  return [
    {
      code: 'night-setback',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[cold[0]!]!),
      to: toCivilDate(days.dayNumber[cold.at(-1)!]! + 1),
      sure: sureOf(0.5 + (NIGHT_SHARE - nightKW / dayKW) / 2 + (morningKW / dayKW - MORNING_SHARE) / 3),
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

/** Whether the night takes nearly as much more for a degree as the day does: then the rooms are heated all night. */
function growsByNight(days: MeterDays, known: readonly number[]): boolean {
  const degree = perDegree(
    days,
    known.filter((day) => days.outdoorC[day]! < HEATED_C),
  );
  const meanIn = ({ from, to }: { from: number; to: number }) =>
    meanOf([...degree!.slice(from / days.hours, to / days.hours)]);
  return degree !== null && meanIn(NIGHT) > NIGHT_DEGREE_SHARE * meanIn(DAY);
}

/**
 * How much more is used at each reading of the day for a degree colder [kW/K], days held against the others of their four
 * weeks: what came or went in between, such as heating left on in summer or a load since the winter, falls out. Null where the days were all as cold.
 */
function perDegree(days: MeterDays, places: readonly number[]): Float64Array | null {
  const months = [...Map.groupBy(places, (day) => Math.floor(days.dayNumber[day]! / WINDOW_DAYS)).values()];
  const slopes = new Float64Array(days.perDay);
  let square = 0;
  for (const month of months) {
    const meanC = meanOf(month.map((day) => days.outdoorC[day]!));
    for (const day of month) {
      const colder = meanC - days.outdoorC[day]!;
      square += colder ** 2;
      for (let i = 0; i < days.perDay; i++) slopes[i]! += (colder * days.kWh[day * days.perDay + i]!) / days.hours;
    }
  }
  return square < LEAST_SPREAD_K2 * places.length ? null : slopes.map((sum) => sum / square);
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

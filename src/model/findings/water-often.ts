/** Hot-water cycles on days without heating: how often the cylinder is brought up, and what it takes. */
import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf } from '../shapes/finding.ts';
import { dailyLow } from './base-load.ts';
import { knownWeather, type MeterDays, median, type Prices, unitsAndCost } from './meter-days.ts';

/** On days warmer than this nothing but hot water is asked for. Common practice, no source. */
const WARM_C = 16.5;
const LEAST_DAYS = 10;
/** Over what always runs, kW. */
const RUNNING_KW = 0.3;
/** Once or twice a day is usual, three times is a large family. Common practice, no source. */
const OFTEN = 3.5;
/** Starts of a cool night are of heating that is nearly over; so many begin by day as well, least. */
const BY_DAY = { from: 9, to: 23, least: 2 } as const;
/** Below this a family that draws much may be it as well. Common practice, no source. */
const MANY = 5;
const YEAR_DAYS = 365;

export interface WaterCycles {
  readonly days: readonly number[];
  readonly perDay: number;
  /** Of them those that begin by day. */
  readonly byDay: number;
  /** Units for hot water, standby left out, kWh a day. */
  readonly kWhPerDay: number;
}

/** Cycles a day over the warmer half of the warm days and units a day over all of them; null with fewer than ten. */
export function waterCycles(days: MeterDays): WaterCycles | null {
  const known = knownWeather(days);
  const warm = known.filter(
    (day, i) => days.outdoorC[day]! >= WARM_C && days.outdoorC[known[i - 1] ?? day]! >= WARM_C - 1,
  );
  if (days.meter !== 'heat-pump' || warm.length < LEAST_DAYS) return null;
  const low = dailyLow(days);
  const each = warm.map((day) => {
    let [cycles, byDay] = [0, 0];
    let running = false;
    for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) {
      const on = days.kWh[i]! / days.hours > low[day]! + RUNNING_KW;
      const hour = (i % days.perDay) * days.hours;
      if (on && !running) cycles++;
      if (on && !running && hour >= BY_DAY.from && hour < BY_DAY.to) byDay++;
      running = on;
    }
    return { cycles, byDay, outdoorC: days.outdoorC[day]!, kWh: days.dayKWh[day]! - low[day]! * 24 };
  });
  // Cool nights among warm days start a machine that still heats a little; the warmer half of the days has none.
  const warmer = each.toSorted((a, b) => b.outdoorC - a.outdoorC).slice(0, Math.ceil(warm.length / 2));
  return {
    days: warm,
    perDay: median(warmer.map(({ cycles }) => cycles)),
    byDay: median(warmer.map(({ byDay }) => byDay)),
    kWhPerDay: median(each.map(({ kWh }) => kWh)),
  };
}

/**
 * A cylinder that is brought up four times a day and more, or a home that is heated on warm days: both start the
 * machine again and again. Its units [kWh] are all those of the warm days beyond what always runs, and so are those of a year.
 */
export function findWaterOften(days: MeterDays, prices: Prices): Finding[] {
  const cycles = waterCycles(days);
  if (!cycles || cycles.perDay < OFTEN || cycles.byDay < BY_DAY.least) return [];
  const kWh = cycles.kWhPerDay * cycles.days.length;
  // Heating left on costs this on warm days only; a tank heated too often would on the others too, which nobody has seen.
  const kWhYear = (kWh * YEAR_DAYS) / Math.max(YEAR_DAYS, days.count);
  return [
    {
      code: 'water-often',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[cycles.days[0]!]!),
      to: toCivilDate(days.dayNumber[cycles.days.at(-1)!]! + 1),
      sure: sureOf(0.5 + (cycles.perDay - OFTEN) / 6),
      grade: 'estimated',
      seen: { cyclesPerDay: cycles.perDay, kWhPerDay: cycles.kWhPerDay, days: cycles.days.length },
      ...unitsAndCost(kWh, kWhYear, prices),
      may: ['water-often', 'summer-heating', ...(cycles.perDay < MANY ? (['more-water'] as const) : [])],
      ask: ['heating-in-summer', 'water-times', 'baths', 'more-people'],
      check: ['pipes-warm', 'water-setpoint', 'cylinder-loss', 'pasteurisation-setting'],
      cautions: ['scalding', 'legionella'],
    },
  ];
}

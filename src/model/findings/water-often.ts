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
const YEAR_DAYS = 365;

export interface WaterCycles {
  readonly days: readonly number[];
  readonly perDay: number;
  /** Units for hot water, standby left out, kWh a day. */
  readonly kWhPerDay: number;
}

/** Cycles and units a day over the warm days; null with fewer than ten of them. */
export function waterCycles(days: MeterDays): WaterCycles | null {
  const known = knownWeather(days);
  const warm = known.filter(
    (day, i) => days.outdoorC[day]! >= WARM_C && days.outdoorC[known[i - 1] ?? day]! >= WARM_C - 1,
  );
  if (days.meter !== 'heat-pump' || warm.length < LEAST_DAYS) return null;
  const low = dailyLow(days);
  const each = warm.map((day) => {
    let cycles = 0;
    let running = false;
    for (let i = day * days.perDay; i < (day + 1) * days.perDay; i++) {
      const on = days.kWh[i]! / days.hours > low[day]! + RUNNING_KW;
      if (on && !running) cycles++;
      running = on;
    }
    return { cycles, kWh: days.dayKWh[day]! - low[day]! * 24 };
  });
  return {
    days: warm,
    perDay: median(each.map(({ cycles }) => cycles)),
    kWhPerDay: median(each.map(({ kWh }) => kWh)),
  };
}

/**
 * A cylinder that is brought up four times a day and more, or a home that is heated on warm days: both start the
 * machine again and again. Its units [kWh] are all those of the warm days beyond what always runs, and so are those of a year.
 */
export function findWaterOften(days: MeterDays, prices: Prices): Finding[] {
  const cycles = waterCycles(days);
  if (!cycles || cycles.perDay < OFTEN) return [];
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
      may: ['water-often', 'summer-heating'],
      ask: ['heating-in-summer', 'water-times', 'baths', 'more-people'],
      check: ['pipes-warm', 'water-setpoint', 'cylinder-loss', 'pasteurisation-setting'],
      cautions: ['scalding', 'legionella'],
    },
  ];
}

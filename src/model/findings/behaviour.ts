/** A day from which more or less is used in the same weather. */
import { toCivilDate } from '../calendar/civil.ts';
import { type Finding, sureOf, yearOfDays } from '../shapes/finding.ts';
import { coldLine } from './cold-line.ts';
import { heatingDegrees, knownWeather, type MeterDays, type Prices, unitsAndCost } from './meter-days.ts';
import { changeKind, findLineChange } from './two-lines.ts';

const LEAST_DAYS = 28;
/** Less than this share of the use is the ordinary unsteadiness of a household, and of its lights on the house's meter. */
const LEAST_SHARE = { 'heat-pump': 0.1, 'whole-house': 0.18 } as const;
/** A whole year of days shows every season, so that a difference can be said for the year. */
const NEARLY_A_YEAR = 330;

/**
 * Change point of the energy signature: units [kWh] used since, less those that the line of the days before gives in
 * the same weather. Whether it follows the cold (rooms) or not (hot water, appliances) is in `seen.kind`.
 */
export function findBehaviour(days: MeterDays, prices: Prices): Finding[] {
  const known = knownWeather(days);
  const use = known.map((day) => days.dayKWh[day]!);
  const outdoor = known.map((day) => days.outdoorC[day]!);
  const { below } = coldLine(use, outdoor);
  const split = findLineChange(below, use, LEAST_DAYS);
  if (!split) return [];
  const { at, before, after } = split;
  const share = split.change / split.was;
  if (!(split.was > 0) || Math.abs(share) < LEAST_SHARE[days.meter]) return [];
  let kWh = 0;
  let year = 0;
  for (let i = 0; i < use.length; i++) {
    const was = before.intercept + before.slope * below[i]!;
    const difference = after.intercept - before.intercept + (after.slope - before.slope) * below[i]!;
    year += difference;
    if (i < at) continue;
    kWh += use[i]! - was;
  }
  const span = use.length >= NEARLY_A_YEAR;
  const kWhYear = span ? yearOfDays(year, use.length) : yearOfDays(kWh, use.length - at);
  const more = kWh > 0;
  return [
    {
      code: 'behaviour-changed',
      meter: days.meter,
      from: toCivilDate(days.dayNumber[known[at]!]!),
      to: toCivilDate(days.dayNumber[known.at(-1)!]! + 1),
      sure: sureOf(0.6 + Math.min(0.2, split.f / 200) + Math.min(0.15, Math.abs(share) / 2)),
      grade: span ? 'estimated' : 'assumed',
      seen: {
        share,
        kind: changeKind(split, below, use, outdoor.map(heatingDegrees)),
        kWhPerDay: kWh / (use.length - at),
      },
      ...unitsAndCost(kWh, kWhYear, prices),
      ask: more ? ['more-people', 'rooms-warmer', 'rooms-added', 'settings-changed'] : ['away', 'settings-changed'],
      check: more ? ['heating-curve', 'water-setpoint'] : ['heating-curve'],
      cautions: [],
    },
  ];
}

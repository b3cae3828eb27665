/** What running in the best hours of a tariff earns a household's heat pump. */
import { tenAndNinety } from '../chance/quantiles.ts';
import type { PricesInUse } from '../comparison/prices-of.ts';
import { type Settled, type SettleInput, settleFull } from '../heat-pump/full/settle.ts';
import { type BestHours, findBestHours, type HoursInput } from '../hours/best-hours.ts';
import { coldDay } from '../hours/cold-day.ts';
import { homeWarmth, shareCooled } from '../hours/warmth.ts';
import type { BestHoursCost } from '../shapes/tariff-choice.ts';
import { CYLINDER_LITRES, HOT_C } from '../shapes/usual-home.ts';
import { penceBySlot, rateBuckets } from '../tariff/slot-price.ts';
import { type SharedSpreads, simulateYears, type YearTerms } from '../uncertainty/simulate.ts';

/** Cold water, °C, and the share of a cylinder's heat that comes out hot. Common practice, no source. */
const COLD_C = 10;
const USABLE_SHARE = 0.8;
const KWH_PER_LITRE_K = 4.186 / 3600;
const COOLING_HOURS = 3;

/** The heat of a home and its machine, the same on every tariff. */
export interface HeatAndMachine {
  readonly settle: SettleInput;
  readonly year: Settled['input'];
}

export const heatAndMachine = (settle: SettleInput): HeatAndMachine => ({ settle, year: settleFull(settle).input });

/** Pence that the best hours save of the heat for rooms and of hot water, and what is shown of them. */
export interface HoursOn {
  readonly terms: YearTerms;
  readonly shown: Omit<BestHoursCost, 'saving' | 'counted'>;
}

/**
 * What is saved [pence a year] by running in the best hours of a tariff, as terms of a possible year; null where its price is
 * the same at all hours or there is no heat to move. The share saved is that of the home's own half-hours; a machine known by
 * its factors alone takes the COP of a usual machine from one half-hour to the next.
 */
export function hoursOn({ settle, year }: HeatAndMachine, prices: PricesInUse, terms: YearTerms): HoursOn | null {
  const { household, demand } = settle;
  const buckets = rateBuckets(prices.electricity.version, year.slots);
  if (new Set(buckets.penceOfSlot ?? buckets.pencePerKWh).size < 2 || !(demand.heatLossWPerK > 0)) return null;
  const comfort = household.comfort ?? {};
  const { hotWater, home } = household;
  const warmth = homeWarmth(comfort, demand.heatLossWPerK, home.floorAreaM2?.value);
  const litres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const hotC = hotWater.hotC?.value ?? HOT_C;
  const best = bestHoursOf({
    year,
    pencePerKWh: penceBySlot(buckets),
    warmth,
    roomC: demand.roomC,
    comfort,
    cylinderKWh: litres * KWH_PER_LITRE_K * Math.max(0, hotC - COLD_C) * USABLE_SHARE,
    movesWater: hotWater.hours !== 'night',
  });
  return {
    terms: {
      ...terms,
      spacePence: terms.spacePence * best.spaceSaved,
      waterPence: terms.waterPence * best.waterSaved,
      backupPence: 0,
      steadyPence: 0,
      ownElectricityPence: 0,
      electricWaterPence: 0,
      fixedPence: 0,
      servicePence: 0,
    },
    shown: {
      warmth: { known: warmth.known, timeConstantHours: warmth.timeConstantHours },
      coolsIn3HoursK: (demand.roomC - coldDay(year).meanC) * shareCooled(COOLING_HOURS, warmth.timeConstantHours),
      leastRoomC: best.roomC.reduce((least, one) => Math.min(least, one)),
      day: best.day,
      mostRoomC: best.roomC.reduce((most, one) => Math.max(most, one)),
    },
  };
}

/** What was searched for last, the newest first: a change of the household mostly leaves the hours of its tariffs as they are. */
const MOST_KEPT = 12;
let searched: readonly { readonly input: HoursInput; readonly found: BestHours }[] = [];

function bestHoursOf(input: HoursInput): BestHours {
  const before = searched.find((one) => isAlike(one.input, input));
  const now = before ?? { input, found: findBestHours(input) };
  searched = [now, ...searched.filter((one) => one !== now)].slice(0, MOST_KEPT);
  return now.found;
}

/** Whether two pieces of plain data hold the same values. */
function isAlike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (a instanceof Float64Array && b instanceof Float64Array)
    return a.length === b.length && a.every((value, i) => value === b[i]);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [one, other] = [Object.entries(a), new Map(Object.entries(b))];
  return one.length === other.size && one.every(([key, value]) => other.has(key) && isAlike(value, other.get(key)));
}

/** The saving [pence a year] with its range over the possible years. */
export function savingOf({ terms }: HoursOn, shared: SharedSpreads, draws: number): BestHoursCost['saving'] {
  const value = terms.spacePence + terms.waterPence;
  if (draws === 0) return { value, low: value, high: value };
  const [years] = simulateYears([terms], shared, draws);
  return { value, ...tenAndNinety(years!.costPence) };
}

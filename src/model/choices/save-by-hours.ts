/** What running in the best hours of a tariff earns a household's heat pump. */

import { balanceHome, type HomeBalance } from '../balance/balance-home.ts';
import type { YearSlots } from '../calendar/zone.ts';
import { tenAndNinety } from '../chance/quantiles.ts';
import type { PricesInUse } from '../comparison/prices-of.ts';
import { findRecord } from '../demand/record.ts';
import { type Settled, type SettleInput, settleFull } from '../heat-pump/full/settle.ts';
import { type BestHours, findBestHours, type HoursInput, type LaidHeat, layHeat } from '../hours/best-hours.ts';
import { coldDay } from '../hours/cold-day.ts';
import { type FittedWarmth, fitWarmth, outdoorByMonth } from '../hours/fit-warmth.ts';
import { homeWarmth, shareCooled } from '../hours/warmth.ts';
import type { Series } from '../shapes/evidence.ts';
import type { BestHoursCost } from '../shapes/tariff-choice.ts';
import { CYLINDER_LITRES, HOT_C } from '../shapes/usual-home.ts';
import { penceBySlot, rateBuckets } from '../tariff/slot-price.ts';
import { type SharedSpreads, simulateYears, type YearTerms } from '../uncertainty/simulate.ts';
import { meanOf, sumOf } from '../units/sums.ts';
import { meanDays, type RateBuckets } from '../year/share-out.ts';
import type { OwnEquipment } from './roof-battery-car.ts';

/** Cold water, °C, and the share of a cylinder's heat that comes out hot. Common practice, no source. */
const COLD_C = 10;
const USABLE_SHARE = 0.8;
const KWH_PER_LITRE_K = 4.186 / 3600;
const COOLING_HOURS = 3;

/** The heat of a home and its machine, the same on every tariff. */
export interface HeatAndMachine {
  readonly settle: SettleInput;
  readonly year: Settled['input'];
  readonly laid: () => LaidHeat;
  /** Time constant by the half-hours of its own heating, where they show it. */
  readonly fitted: FittedWarmth | null;
}

export const heatAndMachine = (settle: SettleInput, series: readonly Series[]): HeatAndMachine => {
  const year = settleFull(settle).input;
  return { settle, year, laid: keepOne(() => layHeat(year)), fitted: fitOwn(settle, year, series) };
};

/** Worked out when it is first asked for. */
export function keepOne<T>(of: () => T): () => T {
  let kept: { readonly value: T } | null = null;
  return () => {
    kept ??= { value: of() };
    return kept.value;
  };
}

/** By the meter of what heats the home now; one of everything electric holds too much else. */
function fitOwn({ household, demand }: SettleInput, year: Settled['input'], series: readonly Series[]) {
  const record = findRecord(household.present.system, series);
  const fine = record?.series.find(({ intervalMinutes = 60 }) => intervalMinutes <= 30);
  if (!fine?.dayShape || record?.meter === 'whole-house') return null;
  return fitWarmth(fine.dayShape, outdoorByMonth(year.outdoorC, year.slots), demand.roomC);
}

/** Pence that the best hours save of the heat for rooms and of hot water, and what is shown of them. */
export interface HoursOn {
  readonly terms: YearTerms;
  readonly shown: Omit<BestHoursCost, 'saving' | 'counted'>;
  /** Of a home with a roof or a battery what it then buys and sends out. */
  readonly balance: HomeBalance | null;
}

/** A home whose roof or battery moves electricity too, on one tariff. */
export interface OwnHome {
  readonly own: OwnEquipment;
  /** All that it needs beside the heat for rooms and hot water, kWh by half-hour. */
  readonly otherKWh: Float64Array;
  /** What a year of units by half-hour costs, pence. */
  readonly priceUnits: (kWh: Float64Array) => number;
}

/**
 * What is saved [pence a year] by running in the best hours of a tariff, as terms of a possible year; null where its price is
 * the same at all hours and no sun is made, or there is no heat to move. The share saved is that of the home's own
 * half-hours; a machine known by its factors alone takes the COP of a usual machine from one half-hour to the next.
 * With a roof or a battery the whole home is balanced with the hours found and with the usual ones. They are found for the
 * usual day of each month, since no control knows the sun ahead, and balanced on its days. The hours are chosen
 * first and the battery after them, so that both chosen together could save more and not less.
 */
export function hoursOn(
  { settle, year, laid, fitted }: HeatAndMachine,
  prices: PricesInUse,
  terms: YearTerms,
  home: OwnHome | null,
): HoursOn | null {
  const { household, demand } = settle;
  const buckets = rateBuckets(prices.electricity.version, year.slots);
  if (!(demand.heatLossWPerK > 0) || (!home?.own.sunKWh && isEvenEachDay(buckets, year.slots))) return null;
  const pencePerKWh = penceBySlot(buckets);
  const comfort = household.comfort ?? {};
  const { hotWater } = household;
  const warmth = homeWarmth(comfort, demand.heatLossWPerK, household.home.floorAreaM2?.value, fitted);
  const litres = hotWater.cylinderLitres?.value ?? CYLINDER_LITRES;
  const hotC = hotWater.hotC?.value ?? HOT_C;
  const input: HoursInput = {
    year,
    pencePerKWh,
    warmth,
    roomC: demand.roomC,
    comfort,
    cylinderKWh: litres * KWH_PER_LITRE_K * Math.max(0, hotC - COLD_C) * USABLE_SHARE,
    movesWater: hotWater.hours !== 'night',
  };
  const cold = coldDay(year);
  const { best, saved, balance } = home
    ? bestAtHome(input, laid(), terms, home)
    : savedByShare(bestHoursOf(input, laid()), terms);
  return {
    balance,
    terms: {
      ...terms,
      ...saved,
      backupPence: 0,
      steadyPence: 0,
      ownElectricityPence: 0,
      electricWaterPence: 0,
      fixedPence: 0,
      servicePence: 0,
    },
    shown: {
      warmth: {
        known: warmth.known,
        timeConstantHours: warmth.timeConstantHours,
        ...(warmth.fitted ? { fitted: warmth.fitted } : {}),
      },
      coolsIn3HoursK: (demand.roomC - cold.meanC) * shareCooled(COOLING_HOURS, warmth.timeConstantHours),
      leastRoomC: best.roomC.reduce((least, one) => Math.min(least, one)),
      day: { ...best.day, pencePerKWh: [...pencePerKWh.subarray(cold.start, cold.start + 48)] },
      mostRoomC: best.roomC.reduce((most, one) => Math.max(most, one)),
    },
  };
}

interface Found {
  readonly best: BestHours;
  readonly saved: Pick<YearTerms, 'spacePence' | 'waterPence'>;
  readonly balance: HomeBalance | null;
}

const savedByShare = (best: BestHours, { spacePence, waterPence }: YearTerms): Found => ({
  best,
  saved: { spacePence: spacePence * best.spaceSaved, waterPence: waterPence * best.waterSaved },
  balance: null,
});

function isEvenEachDay({ penceOfSlot, bucketOfSlot, pencePerKWh }: RateBuckets, { day, count }: YearSlots): boolean {
  const penceAt = (slot: number) => (penceOfSlot ? penceOfSlot[slot] : pencePerKWh[bucketOfSlot[slot]!]);
  for (let slot = 1; slot < count; slot++)
    if (day[slot] === day[slot - 1] && penceAt(slot) !== penceAt(slot - 1)) return false;
  return true;
}

/**
 * What a kWh more costs by half-hour beside a battery that is filled from the grid: where it gives all that the home needs,
 * no more than the day's cheapest and what the battery loses of it.
 */
function penceBehindBattery(
  pencePerKWh: Float64Array,
  loadKWh: Float64Array,
  boughtKWh: Float64Array,
  { dayStart }: YearSlots,
  roundTripShare: number,
): Float64Array {
  const pence = pencePerKWh.slice();
  for (let day = 0; day + 1 < dayStart.length; day++) {
    const [start, end] = [dayStart[day]!, dayStart[day + 1]!];
    const cheapest = pencePerKWh.subarray(start, end).reduce((least, one) => Math.min(least, one));
    for (let slot = start; slot < end; slot++)
      if (boughtKWh[slot]! < loadKWh[slot]! / 2)
        pence[slot] = Math.min(pence[slot]!, cheapest > 0 ? cheapest / roundTripShare : cheapest);
  }
  return pence;
}

/** The hours that cost the whole home least, of those searched for at several worths of the sun and with the battery's prices. */
function bestAtHome(
  plain: HoursInput,
  laid: LaidHeat,
  terms: YearTerms,
  { own, otherKWh, priceUnits }: OwnHome,
): Found {
  const { pencePerKWh } = plain;
  // A control knows the usual day of a month, and not when somebody cooks or whether the sun comes out.
  const usualDays = (kWh: Float64Array) => meanDays(kWh, plain.year.slots);
  const atHome = {
    otherKWh: usualDays(otherKWh),
    ...(own.sunKWh ? { madeKWh: usualDays(own.sunKWh) } : {}),
    sunPence: own.exportPence,
  };
  const balanced = (loadKWh: Float64Array) => {
    const balance = balanceHome({ ...own, loadKWh, pencePerKWh });
    return { ...balance, pence: priceUnits(balance.boughtKWh) - sumOf(balance.soldKWh) * own.exportPence };
  };
  const { battery, sunKWh } = own;
  const first = bestHoursOf({ ...plain, atHome }, laid);
  const { space, water } = first.electricity!.usual;
  const scale = { space: terms.spaceKWh / sumOf(space), water: terms.waterKWh / sumOf(water) };
  const loadWith = (ofRooms: Float64Array, ofWater: Float64Array, times = { space: 1, water: 1 }) =>
    otherKWh.map((kWh, i) => {
      const heat = (ofRooms[i]! * scale.space || 0) * times.space + (ofWater[i]! * scale.water || 0) * times.water;
      return kWh + heat;
    });
  const usualKWh = loadWith(space, water);
  const usual = balanced(usualKWh);
  const others: HoursInput[] = [];
  if (battery && sunKWh) {
    const storedPence = battery.roundTripShare * meanOf(pencePerKWh);
    if (storedPence > own.exportPence) others.push({ ...plain, atHome: { ...atHome, sunPence: storedPence } });
  }
  if (battery?.fromNight) {
    const behind = penceBehindBattery(pencePerKWh, usualKWh, usual.boughtKWh, plain.year.slots, battery.roundTripShare);
    others.push({ ...plain, pencePerKWh: behind, atHome });
  }
  const found = [first, ...others.map((other) => bestHoursOf(other, laid))].map((best) => {
    const { best: hours, heatShare } = best.electricity!;
    // What cooler rooms save by themselves is no merit of the hours.
    const same = balanced(loadWith(space, water, heatShare));
    const balance = balanced(loadWith(hours.space, hours.water));
    return { best, balance, savedPence: same.pence - balance.pence };
  });
  const { best, balance, savedPence } = found.reduce((most, one) => (one.savedPence > most.savedPence ? one : most));
  const earns = savedPence > 0;
  return { best, saved: { spacePence: earns ? savedPence : 0, waterPence: 0 }, balance: earns ? balance : usual };
}

/** What was searched for last, the newest first: a change of the household mostly leaves the hours of its tariffs as they are. */
const MOST_KEPT = 12;
let searched: readonly { readonly input: HoursInput; readonly found: BestHours }[] = [];

function bestHoursOf(input: HoursInput, laid: LaidHeat): BestHours {
  const before = searched.find((one) => isAlike(one.input, input));
  const now = before ?? { input, found: findBestHours(input, laid) };
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

/** A plan with its prices: energy and money by month and band, and the totals that the draws act on. */

import { COMMON_MONTH_DAYS } from '../calendar/civil.ts';
import type { YearSlots } from '../calendar/zone.ts';
import type { ExtraLine } from '../heat-pump/extras.ts';
import type { Demand } from '../shapes/appraisal.ts';
import type { WaterHours } from '../shapes/household.ts';
import { rateBuckets, standingPencePerDayInclVat } from '../tariff/slot-price.ts';
import type { YearTerms } from '../uncertainty/simulate.ts';
import {
  ALL_DAY,
  CYLINDER_BOOST_SHARE,
  CYLINDER_WINDOWS,
  DRAWN_WATER,
  EVENING,
  NIGHT,
  STEADY_HEATING,
  STORAGE_BOOST_SHARE,
  WAKING_HOURS,
} from '../year/day-profiles.ts';
import {
  type BandShares,
  blend,
  cheapestHours,
  daysFromMonths,
  type RateBuckets,
  shareOut,
  sharesByMonth,
  sharesOfSlots,
} from '../year/share-out.ts';
import { splitByBlocks } from './block-uses.ts';
import type { Hours, Plan } from './plan.ts';
import { type DayUse, heaviestOf, heaviestOfSlots, type PowerCharge, powerCharge } from './power-charge.ts';
import type { PricesInUse, TariffInUse } from './prices-of.ts';
import type { RestOfHome } from './rest-of-home.ts';
import { meanPrice, monthsOf, type Rate, type Rates, ratesOf, totalOf, type Use } from './uses.ts';

export interface PricedPlan {
  readonly plan: Plan;
  readonly monthly: {
    readonly boughtKWh: number[];
    readonly unitsPence: number[];
    readonly standingPence: number[];
    readonly servicePence: number[];
  };
  readonly rates: Rate[];
  readonly terms: YearTerms;
  /** What the charge on power adds to its prices, where they have one and it can be known. */
  readonly power: PowerCharge | null;
  /** When its hot water is made. */
  readonly waterHours: WaterHours;
  /** Other electricity of the home that fills the first steps of its prices, where they have steps. */
  readonly besideSteps: RestOfHome | null;
  /** Mean unit price of the main carrier over this system's own hours, p/kWh. */
  readonly meanPencePerKWh: number;
}

/** The year that is priced: half-hours, and the share of each day in heat for rooms and in hot water. */
export interface PricedYear {
  readonly slots: YearSlots;
  readonly spaceShare: ArrayLike<number>;
  readonly demand: Demand;
  /** What the home uses beside heating, where its prices hang on that. */
  readonly home: RestOfHome | null;
}

/** Prices plans over one year; what the plans have in common is sorted into bands once. */
export function createPricer(year: PricedYear, prices: PricesInUse) {
  const { slots, spaceShare, home } = year;
  const waterShare = daysFromMonths(year.demand.monthlyWaterKWh, slots);
  // Days of a month are alike to a price: which of its days is cold is made up, and must not favour a weekday.
  const spaceByMonth = daysFromMonths([...sharesByMonth(spaceShare, slots)], slots);
  const evenShare = new Float64Array(slots.dayStart.length - 1).fill(1 / (slots.dayStart.length - 1));
  const kept = new Map<string, { space: BandShares; water: BandShares; steady: BandShares }>();

  /** Shares of rooms, hot water and standby on a tariff, by the hours of the system. */
  function sharesOf(hours: Hours, waterHours: WaterHours, buckets: RateBuckets, key: string) {
    const known = kept.get(key);
    if (known) return known;
    const lay = (days: ArrayLike<number>, weights: readonly number[]) => shareOut(days, weights, slots, buckets);
    const steady = lay(evenShare, ALL_DAY);
    const blended = (days: ArrayLike<number>, [first, second, share]: TwoProfiles) =>
      share > 0 ? blend(lay(days, first), lay(days, second), share) : lay(days, first);
    const { space, water } = hoursOf(hours, waterHours, buckets);
    const shares = { space: blended(spaceByMonth, space), water: blended(waterShare, water), steady };
    kept.set(key, shares);
    return shares;
  }

  /** Electricity on the heaviest day of each month. */
  function heaviest(plan: Plan, buckets: RateBuckets) {
    if (plan.bySlot) return heaviestOfSlots(Object.values(plan.bySlot), slots);
    const hours = hoursOf(plan.hours, waterHoursOf(plan, buckets), buckets);
    const [space, water] = [mixed(hours.space), mixed(hours.water)];
    const day = (kWh: number, dayShare: ArrayLike<number>, weights: readonly number[]): DayUse => ({
      kWh,
      dayShare,
      weights,
    });
    if (plan.carrier !== 'electricity') {
      return heaviestOf([day(plan.pumpKWh, spaceShare, space), day(plan.electricWaterKWh, waterShare, water)], slots);
    }
    const usual = {
      standby: 'even',
      pasteurisation: 'water',
      'source-pump': 'space',
      backup: 'space',
      circulator: 'space',
    };
    const extras = plan.extras.map(({ name, kWh }) =>
      usual[name] === 'even'
        ? day(kWh, evenShare, ALL_DAY)
        : usual[name] === 'water'
          ? day(kWh, waterShare, water)
          : day(kWh, spaceShare, space),
    );
    return heaviestOf([day(plan.spaceKWh, spaceShare, space), day(plan.waterKWh, waterShare, water), ...extras], slots);
  }

  /** When hot water is made: as somebody has said, else a heat pump's by schedule, that of electricity in its cheap night, any other as drawn. */
  function waterHoursOf(plan: Plan, buckets: RateBuckets): WaterHours {
    if (plan.waterHours) return plan.waterHours;
    if (plan.hours === 'heat-pump') return 'schedule';
    if (plan.hours === 'storage') return 'night';
    const electric = plan.carrier === 'electricity' || plan.electricWaterKWh > 0;
    return electric && cheapestHours(slots, buckets) ? 'night' : 'drawn';
  }

  /** At which half-hours of the day rooms and hot water are bought, as weights. */
  function hoursOf(hours: Hours, waterHours: WaterHours, buckets: RateBuckets) {
    const night = cheapestHours(slots, buckets) ?? NIGHT;
    const space: { readonly [hours in Hours]: TwoProfiles } = {
      'heat-pump': [STEADY_HEATING, ALL_DAY, 0],
      panels: [WAKING_HOURS, ALL_DAY, 0],
      boiler: [WAKING_HOURS, ALL_DAY, 0],
      storage: [night, EVENING, STORAGE_BOOST_SHARE],
    };
    const water: { readonly [hours in WaterHours]: TwoProfiles } = {
      schedule: [CYLINDER_WINDOWS, ALL_DAY, 0],
      night: [night, DRAWN_WATER, CYLINDER_BOOST_SHARE],
      drawn: [DRAWN_WATER, ALL_DAY, 0],
    };
    return { space: space[hours], water: water[waterHours] };
  }

  function tariffUse(plan: Plan, hours: Hours, inUse: TariffInUse, share: number, prefix: string, beside = false) {
    const buckets = rateBuckets(inUse.version, slots);
    const waterHours = waterHoursOf(plan, buckets);
    const rates: Rates = {
      names: buckets.names.map((name) => (buckets.names.length > 1 ? `${prefix}, ${name}` : prefix)),
      pencePerKWh: buckets.pencePerKWh.map((pence) => pence * share),
      beside,
      times: share,
    };
    return {
      version: inUse.version,
      shares: sharesOf(hours, waterHours, buckets, `${hours} ${waterHours} ${inUse.tariff.fuel} ${inUse.tariff.id}`),
      rates,
      buckets,
      waterHours,
    };
  }

  function mainUse(plan: Plan) {
    const { carrier } = plan;
    if (carrier === 'electricity') {
      const inUse = plan.hours === 'storage' ? prices.storage : prices.electricity;
      return tariffUse(plan, plan.hours, inUse, prices.electricityShare, 'electricity');
    }
    if (carrier === 'gas') return tariffUse(plan, 'boiler', prices.gas, prices.fuelShare, 'gas');
    const flat: RateBuckets = { names: [carrier], pencePerKWh: [1], bucketOfSlot: NO_BUCKETS };
    const pencePerKWh = [prices[carrier].pencePerKWh * prices.fuelShare];
    const rates: Rates = { names: [carrier], pencePerKWh, beside: false };
    const shares = sharesOf('boiler', 'drawn', flat, 'flat');
    return { version: null, shares, rates, buckets: flat, waterHours: 'drawn' as const };
  }

  return function price(plan: Plan): PricedPlan {
    const main = mainUse(plan);
    const burns = plan.carrier !== 'electricity';
    const besideName = `electricity of pump${plan.electricWaterKWh > 0 ? ', fan and immersion heater' : ' and fan'}`;
    const beside = burns
      ? tariffUse(plan, 'boiler', prices.electricity, prices.electricityShare, besideName, true)
      : main;
    const { space, water, steady } = main.shares;
    const bySlot = plan.bySlot;
    // Pumps and the backup heater run when the rooms are heated, the immersion in the windows of hot water.
    const usual = { standby: steady, pasteurisation: water, 'source-pump': space, backup: space, circulator: space };
    // Only the weekly heating of the cylinder has a weekday of its own. The cheap hours of a night are the tariff's to say.
    const ownHours = (name: 'space' | 'water' | ExtraLine['name'], otherwise: BandShares) =>
      name === 'water' && plan.waterHours === 'night'
        ? otherwise
        : ((bySlot && sharesOfSlots(bySlot[name], slots, main.buckets, name === 'pasteurisation')) ?? otherwise);
    const use = (kWh: number, shares: BandShares, rates: Rates): Use => ({ kWh, shares, rates });
    const stepped = (list: readonly Use[]) => {
      const other = home?.monthlyKWh;
      const ofMain = plan.carrier === 'electricity' ? other : undefined;
      const split = main.version ? splitByBlocks(list, main.rates, main.version, slots, ofMain) : list;
      return burns && beside.version ? splitByBlocks(split, beside.rates, beside.version, slots, other) : split;
    };
    const electric = burns ? beside : main;
    const power = home && powerCharge(electric.version!, home.peaks, heaviest(plan, electric.buckets));
    const plainSpace = use(plan.spaceKWh, ownHours('space', space), main.rates);
    const plainWater = use(plan.waterKWh, ownHours('water', water), main.rates);
    const plainSteady = plan.extras.map((line) => use(line.kWh, ownHours(line.name, usual[line.name]), main.rates));
    const plainPump = use(burns ? plan.pumpKWh : 0, beside.shares.space, beside.rates);
    const plainElectricWater = use(burns ? plan.electricWaterKWh : 0, beside.shares.water, beside.rates);
    const uses = stepped([plainSpace, plainWater, plainPump, plainElectricWater, ...plainSteady]);
    const [spaceUse, waterUse, pumpUse, electricWaterUse, ...steadyUses] = uses as [Use, Use, Use, Use, ...Use[]];
    const standing = plan.standing === 'gas' ? standingPencePerDayInclVat(prices.gas.version) : 0;
    const servicePence = plan.serviceGBP.value * 100;
    const monthly = {
      ...monthsOf(uses),
      standingPence: COMMON_MONTH_DAYS.map((days, month) => days * standing + (power?.byMonthPence[month] ?? 0)),
      servicePence: COMMON_MONTH_DAYS.map((days) => (servicePence * days) / 365),
    };
    const isBackup = (_: Use, i: number) => plan.extras[i]?.name === 'backup';
    const ofBackup = totalOf(steadyUses.filter(isBackup));
    const ofSteady = totalOf(steadyUses.filter((one, i) => !isBackup(one, i)));
    return {
      plan,
      monthly,
      rates: ratesOf(uses),
      terms: {
        carrier: plan.carrier,
        spaceKWh: plan.spaceKWh,
        waterKWh: plan.waterKWh,
        backupKWh: ofBackup.kWh,
        steadyKWh: ofSteady.kWh,
        ownElectricityKWh: pumpUse.kWh,
        electricWaterKWh: electricWaterUse.kWh,
        spacePence: totalOf([spaceUse]).pence,
        waterPence: totalOf([waterUse]).pence,
        backupPence: ofBackup.pence,
        steadyPence: ofSteady.pence,
        ownElectricityPence: totalOf([pumpUse]).pence,
        electricWaterPence: totalOf([electricWaterUse]).pence,
        fixedPence: standing * 365 + (power?.pence ?? 0),
        servicePence,
        serviceSpread: plan.serviceSpread,
        spaceSpread: plan.spaceSpread,
        waterSpread: plan.waterSpread,
        moves: plan.moves,
      },
      power,
      waterHours: electric.waterHours,
      besideSteps: electric.version?.bands.some(({ blocks }) => blocks) ? home : null,
      meanPencePerKWh: meanPrice([spaceUse, waterUse, ...steadyUses]),
    };
  };
}

const NO_BUCKETS = new Uint8Array(0);

/** Weights of the half-hours of a day, and others that the share of the third place goes by. */
type TwoProfiles = readonly [first: readonly number[], second: readonly number[], secondShare: number];

/** The two as one set of weights that sums to 1. */
function mixed([first, second, secondShare]: TwoProfiles): number[] {
  const total = (weights: readonly number[]) => weights.reduce((sum, weight) => sum + weight, 0);
  return first.map(
    (weight, i) => (weight * (1 - secondShare)) / total(first) + (second[i]! * secondShare) / total(second),
  );
}

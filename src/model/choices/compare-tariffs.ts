/** Which tariff suits this home: everything it would buy priced on each of its tariffs, in the same possible years. */

import { type AppraiseInput, homeBeforePrices, USUAL_DRAWS } from '../appraise.ts';
import type { HomeBalance } from '../balance/balance-home.ts';
import { carByHalfHour } from '../balance/car-by-half-hour.ts';
import type { YearSlots } from '../calendar/zone.ts';
import { tenAndNinety } from '../chance/quantiles.ts';
import { dayShares, splitByBlocks } from '../comparison/block-uses.ts';
import { type PriceInput, presentFirst, priceSystems, sharedSpreads } from '../comparison/compare.ts';
import { withRange } from '../comparison/cost-figures.ts';
import { gradeOfPrice } from '../comparison/cost-working.ts';
import type { Plan } from '../comparison/plan.ts';
import { type PricedPlan, penceOfYear } from '../comparison/price-plan.ts';
import { choosePrices, type PricesInUse } from '../comparison/prices-of.ts';
import { type RestOfHome, restBySlot, restOfHome } from '../comparison/rest-of-home.ts';
import { type Rates, totalOf } from '../comparison/uses.ts';
import { heatOfHousehold } from '../heat-of-household.ts';
import type { Household } from '../shapes/household.ts';
import type { ClimateRegion } from '../shapes/reference.ts';
import type { PricedVersion, Tariff } from '../shapes/tariff.ts';
import type { OwnChange, TariffChoice, TariffCost } from '../shapes/tariff-choice.ts';
import { type Told, tell, type Wording } from '../shapes/told.ts';
import { type Grade, type Working, weakestGrade } from '../shapes/working.ts';
import { onOwnMeter } from '../tariff/own-meter.ts';
import { DAYS_A_YEAR, daysReached } from '../tariff/series-prices.ts';
import { inclVat, penceBySlot, rateBuckets, spanOfPence, standingPencePerDayInclVat } from '../tariff/slot-price.ts';
import { type SharedSpreads, simulateYears, type YearTerms } from '../uncertainty/simulate.ts';
import { sumOf } from '../units/sums.ts';
import { cheapestHours, sharesOfSlots } from '../year/share-out.ts';
import { changeByEquipment, factsOfRoof, layEquipment, type OwnEquipment } from './roof-battery-car.ts';
import { type HeatAndMachine, type HoursOn, heatAndMachine, hoursOn, keepOne, savingOf } from './save-by-hours.ts';

/** A tariff that can be priced, with the household on it and the ways of heating at its prices, the heat pump first. */
interface Priced {
  readonly tariff: Tariff | null;
  readonly household: Household;
  readonly prices: PricesInUse;
  readonly systems: readonly PricedPlan[];
  readonly restPence: number;
  readonly standingPence: number;
  /** What roof, battery and car change with a way of heating; null where there is none of them. */
  readonly ownWith: (plan: Plan) => OwnChange | null;
  /** What the best hours of the tariff save; null where nothing can be moved. */
  readonly hours: HoursOn | null;
}
type LeftOut = TariffChoice['leftOut'][number];

/** What is the same whichever tariff is tried. */
interface Home {
  readonly input: AppraiseInput;
  readonly rest: RestOfHome;
  readonly restKWh: number;
  readonly slots: YearSlots;
  readonly own: OwnEquipment | null;
  /** What it uses beside heating by half-hour, kWh. */
  readonly restBySlot: Float64Array;
  readonly toPrice: Required<Pick<PriceInput, 'laid'>> & Omit<PriceInput, 'prices'>;
  /** The same with hot water made in the cheap hours of the night. */
  readonly atNight: () => Omit<PriceInput, 'prices'>;
  readonly heat: () => HeatAndMachine;
  /** The other kind of machine at the same emitters, as the comparison has it. */
  readonly otherHeat: () => HeatAndMachine;
}

/**
 * The published average and each electricity tariff of the household, priced on the whole home over a typical year [pence
 * a year, VAT included]: heat pump, what the home uses beside heating, and the standing charge. Ranges and the share of
 * years in which each is the cheapest come from the same draws; a move of all electricity prices acts on each alike.
 * Heating runs at its usual hours on every tariff, or in the best of each where the household says so. With a roof, a battery or a car,
 * what they change is part of each. Null where the household has none of these and no electricity tariff.
 */
export function compareTariffs(input: AppraiseInput): TariffChoice | null {
  const { household, series, reference, asOf } = input;
  const own = household.tariffs.filter(({ fuel }) => fuel === 'electricity');
  // The published average stands beside, so one tariff of its own is enough.
  if (own.length === 0 && !household.roof && !household.battery && !household.car) return null;
  const { heat, toPrice } = homeBeforePrices(input);
  const rest = restOfHome(household, series, toPrice.mayHeatFrom);
  const { slots, region } = heat.year;
  const home: Home = {
    input,
    rest,
    restKWh: sumOf(rest.monthlyKWh),
    restBySlot: restBySlot(rest, slots, reference.homeHours),
    slots,
    own: layEquipment(household, region, slots, reference, asOf),
    toPrice,
    atNight: keepOne(() => {
      const atNight: Household = { ...household, hotWater: { ...household.hotWater, hours: 'night' } };
      // Only a machine that is worked out by the half-hour has its factors by the hours of hot water.
      const isFull = household.machine.way === 'full';
      return isFull ? homeBeforePrices({ ...input, household: atNight }).toPrice : { ...toPrice, household: atNight };
    }),
    heat: keepOne(() => heatAndMachine(heat, series)),
    otherHeat: keepOne(() =>
      heatAndMachine(heatOfHousehold({ ...input, household: withOtherSource(household) }), series),
    ),
  };
  const tried = [null, ...own].map((tariff) => tryTariff(tariff, home));
  const priced = tried.filter((one): one is Priced => 'systems' in one);
  const shared = sharedSpreads({ ...toPrice, prices: priced[0]!.prices }, priced[0]!.systems[1]);
  const draws = input.draws ?? USUAL_DRAWS;
  const years = draws > 0 ? simulateYears(priced.map(wholeOf), shared, draws).map(({ costPence }) => costPence) : null;
  return {
    rest: {
      kWh: home.restKWh,
      grade: rest.grade,
      origin: rest.origin,
      hours: rest.hours ? 'own' : 'published',
      ...(rest.hours ? {} : { hoursSource: reference.homeHours.source }),
    },
    ...roofOf(home, priced[0]!, region),
    costs: priced
      .map((one, i) => costOf(one, home, shared, years?.[i] ?? null, years ? cheapestShare(years, i) : 0))
      .toSorted((a, b) => a.whole.value - b.whole.value),
    leftOut: tried.filter((one): one is LeftOut => 'why' in one),
    source: household.machine.source,
    inUse: household.prices.electricityTariffId ?? null,
  };
}

/** The household with the other kind of heat pump, of which no more is known than its emitters. */
function withOtherSource({ machine, ...household }: Household): Household {
  const { source, emitters, flowC } = machine;
  const other = { source: source === 'ground' ? 'air' : 'ground', ...(emitters ? { emitters } : {}) } as const;
  return { ...household, machine: { ...other, ...(flowC ? { flowC } : {}) } };
}

/** The household on one of its tariffs; on the published average where that is null. */
function onTariff(household: Household, tariff: Tariff | null): Household {
  const { electricityTariffId: _, ...prices } = household.prices;
  return { ...household, prices: tariff ? { ...prices, electricityTariffId: tariff.id } : prices };
}

/** Worked out once for all ways of heating that take the same electricity, as most boilers do. */
function keepEach<T>(of: (plan: Plan) => T): (plan: Plan) => T {
  const kept = new Map<string, T>();
  return (plan) => {
    const { id, carrier, pumpKWh, electricWaterKWh, waterHours } = plan;
    const key = carrier === 'electricity' ? id : `${pumpKWh} ${electricWaterKWh} ${waterHours}`;
    if (!kept.has(key)) kept.set(key, of(plan));
    return kept.get(key)!;
  };
}

function tryTariff(tariff: Tariff | null, home: Home): Priced | LeftOut {
  const { input, rest } = home;
  const household = onTariff(input.household, tariff);
  const prices = choosePrices({ ...input, household });
  const { tariff: used, version } = prices.electricity;
  if (tariff && used.id !== tariff.id) return { name: tariff.name, why: 'faulty' };
  if (tariff && version.series && daysReached(version.series) < DAYS_A_YEAR)
    return { name: tariff.name, why: 'part-year' };
  if (tariff && version.demand && version.demand.agreedKW === undefined && !rest.peaks.known)
    return { name: tariff.name, why: 'power-unknown' };
  if (tariff && version.demand && version.demand.agreedKW === undefined && (home.own?.battery || home.own?.car))
    return { name: tariff.name, why: 'power-moved' };
  const systems = priceSystems({ ...home.toPrice, household, prices }).priced;
  return {
    tariff,
    household,
    prices,
    systems,
    hours: hoursOf(systems[0]!, home.heat(), prices, home),
    ownWith: keepEach((plan) => ownChange(plan, prices, home)),
    restPence: priceUnits(home.restBySlot, prices, home.slots),
    standingPence: 365 * standingPencePerDayInclVat(version) + powerOfHome(version, rest),
  };
}

function costOf(one: Priced, home: Home, shared: SharedSpreads, years: Float64Array | null, share: number): TariffCost {
  const { restPence, standingPence, tariff } = one;
  const { basis, version } = one.prices.electricity;
  const pump = one.systems[0]!;
  const saving = one.hours && savingOf(one.hours, shared, home.input.draws ?? USUAL_DRAWS);
  const counted = one.household.comfort?.hours === 'best';
  const heatingPence = penceOfYear(pump) - (counted ? (saving?.value ?? 0) : 0);
  const atUsualHours = one.ownWith(pump.plan);
  const own = atUsualHours && counted && one.hours?.balance ? movedBy(atUsualHours, one.hours.balance) : atUsualHours;
  const ownPence = penceOfOwn(own);
  const value = heatingPence + restPence + standingPence + ownPence;
  const grade = weakestGrade([pump.plan.grade, gradeOfPrice(pump.plan, one.prices), home.rest.grade]);
  const nightWaterPence = nightWaterSaving(one, home);
  return {
    tariffId: tariff?.id ?? null,
    basis,
    whole: withRange(value, years && tenAndNinety(years), {
      unit: 'p',
      grade,
      working: wholeWorking(
        {
          heating: heatingPence,
          rest: restPence,
          standing: standingPence,
          own: own ? ownPence : null,
          moved: counted && one.hours !== null,
        },
        value,
        grade,
        home.rest,
      ),
    }),
    heatingPence,
    restPence,
    standingPence,
    ...(own ? { own } : {}),
    others: otherWays(one, home),
    cheapestShare: share,
    ...(nightWaterPence === null ? {} : { nightWaterPence }),
    ...(one.hours && saving ? { bestHours: { saving, counted, ...one.hours.shown } } : {}),
    ...unitPenceOf(one.prices, home.slots),
    followsMarket: version.series !== undefined,
  };
}

/** What a unit costs in the cheapest and the most expensive half-hour of the year and as their mean; nothing where it hangs on how much is used. */
function unitPenceOf(prices: PricesInUse, slots: YearSlots): Pick<TariffCost, 'unitPence'> {
  if (prices.electricity.version.bands.some(({ blocks }) => blocks)) return {};
  const { least, most, mean } = spanOfPence(rateBuckets(prices.electricity.version, slots));
  const share = prices.electricityShare;
  return { unitPence: { least: least * share, most: most * share, mean: mean * share } };
}

/** The best hours of one heat pump on a tariff, beside what else the home has. */
function hoursOf({ terms }: PricedPlan, heat: HeatAndMachine, prices: PricesInUse, home: Home): HoursOn | null {
  const { electricity } = prices;
  if (electricity.version.ownMeter)
    return hoursOn(
      heat,
      { ...prices, electricity: { ...electricity, version: onOwnMeter(electricity.version) } },
      terms,
      null,
    );
  const own = home.own && ownOn(prices, home.own);
  if (!own?.sunKWh && !own?.battery) return hoursOn(heat, prices, terms, null);
  const pence = penceOf(prices, home.slots);
  const car = own.car && carByHalfHour(own.car, home.slots, pence);
  const evenKWh = (terms.backupKWh + terms.steadyKWh) / home.slots.count;
  return hoursOn(heat, prices, terms, {
    own,
    otherKWh: home.restBySlot.map((kWh, i) => kWh + evenKWh + (car?.[i] ?? 0)),
    priceUnits: (kWh) => priceUnits(kWh, prices, home.slots),
  });
}

/**
 * What hot water made in the tariff's cheap hours saves the whole home [pence], beside roof, battery and car where there are
 * any; null where it has none, or that is how it is made already, the best hours included.
 */
function nightWaterSaving({ household, prices, systems, ownWith }: Priced, home: Home): number | null {
  const { hotWater, comfort } = household;
  if (hotWater.hours === 'night' || comfort?.hours === 'best') return null;
  if (!cheapestHours(home.slots, rateBuckets(prices.electricity.version, home.slots))) return null;
  const [pump] = systems as [PricedPlan];
  const [moved] = priceSystems({ ...home.atNight(), prices }).priced as [PricedPlan];
  const own = ownChange(moved.plan, prices, home);
  return penceOfYear(pump) + penceOfOwn(ownWith(pump.plan)) - penceOfYear(moved) - penceOfOwn(own);
}

/** With the hours of the heat pump moved, other sun is used; what that saves is counted with the heating, so the pence of both together stay. */
function movedBy(
  own: OwnChange,
  { soldKWh, ownUseKWh, filledKWh, batteryLossKWh, sunLossKWh }: HomeBalance,
): OwnChange {
  const sold = sumOf(soldKWh);
  const exportPence = own.soldKWh > 0 ? (own.exportPence / own.soldKWh) * sold : own.exportPence;
  return {
    ...own,
    unitsPence: own.unitsPence + exportPence - own.exportPence,
    exportPence,
    soldKWh: sold,
    ownUseKWh,
    filledKWh,
    batteryLossKWh,
    sunLossKWh,
  };
}

const penceOfOwn = (own: OwnChange | null): number => (own ? own.unitsPence - own.exportPence : 0);

/** The heat pump's year with what else the home pays for electricity. */
function wholeOf({ systems, restPence, standingPence, ownWith, hours, household }: Priced): YearTerms {
  const { plan, terms } = systems[0]!;
  const saved = household.comfort?.hours === 'best' ? hours?.terms : undefined;
  const own = ownWith(plan);
  // Units move with the price of electricity; what is paid for the sun does not.
  return {
    ...terms,
    spacePence: terms.spacePence - (saved?.spacePence ?? 0),
    waterPence: terms.waterPence - (saved?.waterPence ?? 0),
    restPence: restPence + (own?.unitsPence ?? 0),
    fixedPence: terms.fixedPence + standingPence - (own?.exportPence ?? 0),
  };
}

/**
 * Electricity of the home without roof, battery and car by half-hour, with one way of heating at its usual hours [kWh]; without
 * a heat pump that has a meter of its own, which neither sun nor battery reaches.
 */
function loadWith(plan: Plan, prices: PricesInUse, home: Home) {
  if (plan.hours === 'heat-pump' && prices.electricity.version.ownMeter) return home.restBySlot;
  const heating = home.toPrice.laid.bySlot(plan, rateBuckets(prices.electricity.version, home.slots));
  return home.restBySlot.map((kWh, i) => kWh + heating[i]!);
}

/** The equipment where a tariff pays its own price for what is sent out. */
function ownOn({ electricity }: PricesInUse, own: OwnEquipment): OwnEquipment {
  const { exportPencePerKWh } = electricity.version;
  return own.sunKWh && exportPencePerKWh !== undefined ? { ...own, exportPence: exportPencePerKWh } : own;
}

function penceOf({ electricity, electricityShare }: PricesInUse, slots: YearSlots): Float64Array {
  const pence = penceBySlot(rateBuckets(electricity.version, slots));
  return electricityShare === 1 ? pence : pence.map((one) => one * electricityShare);
}

function ownChange(plan: Plan, prices: PricesInUse, home: Home): OwnChange | null {
  if (!home.own) return null;
  const { slots } = home;
  const { exportPencePerKWh } = prices.electricity.version;
  const own = ownOn(prices, home.own);
  const change = changeByEquipment(own, loadWith(plan, prices, home), penceOf(prices, slots), (kWh) =>
    // Steps fill up over a month, so that what is bought in it is priced together; when to fill a battery goes by the bands.
    priceUnits(kWh, prices, slots),
  );
  return own.sunKWh && exportPencePerKWh !== undefined ? { ...change, exportPencePerKWh } : change;
}

function roofOf(
  { own, input, ...home }: Home,
  { systems, prices }: Priced,
  region: ClimateRegion,
): Pick<TariffChoice, 'roof'> {
  if (!own?.sunKWh) return {};
  const load = loadWith(systems[0]!.plan, prices, { own, input, ...home });
  const roof = factsOfRoof(input.household, own, load, region, input.reference, input.asOf);
  return roof ? { roof } : {};
}

/** Pence a year of units by half-hour [kWh] that are bought by themselves, from the first steps of a stepped price on. */
function priceUnits(kWhBySlot: Float64Array, { electricity, electricityShare }: PricesInUse, slots: YearSlots): number {
  const { version } = electricity;
  const buckets = rateBuckets(version, slots);
  const shares = sharesOfSlots(kWhBySlot, slots, buckets);
  if (!shares) return 0;
  const what = tell('rest-of-home');
  const rates: Rates = {
    what,
    names: buckets.names.map((when) => tell('rate-at', { what, when })),
    pencePerKWh: buckets.pencePerKWh.map((pence) => pence * electricityShare),
    beside: false,
    times: electricityShare,
  };
  const year = { kWh: sumOf(kWhBySlot), shares, rates, ...dailyOf(kWhBySlot, version, slots) };
  return totalOf(splitByBlocks([year], rates, version, slots)).pence;
}

/** How much of each month falls on each of its days, where steps are filled by the day. */
function dailyOf(kWhBySlot: Float64Array, { bands }: PricedVersion, slots: YearSlots) {
  if (bands.every(({ blocks }) => blocks?.per !== 'day')) return {};
  const byDay = new Float64Array(slots.dayStart.length - 1);
  for (let slot = 0; slot < slots.count; slot++) byDay[slots.day[slot]!]! += kWhBySlot[slot]!;
  return { dayShare: dayShares(byDay, slots) };
}

/** A charge on power for the home without its heating [pence a year]: on the kW agreed, else on each month's highest half-hour. */
function powerOfHome(version: PricedVersion, { peaks }: RestOfHome): number {
  const { demand } = version;
  if (!demand) return 0;
  const price = inclVat(version, demand.pencePerKWPerMonth);
  if (demand.agreedKW !== undefined) return 12 * demand.agreedKW * price;
  return peaks.known ? peaks.kWh.reduce((sum, halves) => sum + 2 * Math.max(...halves) * price, 0) : 0;
}

/** The whole home with each way of heating beside the heat pump; null for storage heaters that have a tariff of their own. */
function otherWays(
  { systems, prices, restPence, standingPence, ownWith, household }: Priced,
  home: Home,
): TariffCost['others'] {
  const others = presentFirst(systems.slice(1), (one) => ({ id: one.plan.id, pence: penceOfYear(one) }));
  return others.map((system) => {
    const { plan } = system;
    const { id, kind } = plan;
    if (plan.hours === 'storage' && prices.storage?.tariff.id !== prices.electricity.tariff.id)
      return { id, kind, pence: null };
    const ownPence = penceOfOwn(ownWith(plan));
    // Another heat pump runs in its best hours where this one does.
    const moved =
      plan.hours === 'heat-pump' && household.comfort?.hours === 'best'
        ? hoursOf(system, id === 'present' ? home.heat() : home.otherHeat(), prices, home)
        : null;
    const savedPence = moved ? moved.terms.spacePence + moved.terms.waterPence : 0;
    return { id, kind, pence: penceOfYear(system) - savedPence + restPence + standingPence + ownPence };
  });
}

/** In how many of the possible years none of the others costs less. */
function cheapestShare(years: readonly Float64Array[], place: number): number {
  const own = years[place]!;
  let count = 0;
  for (let i = 0; i < own.length; i++) if (years.every((other) => own[i]! <= other[i]!)) count++;
  return count / own.length;
}

interface Parts {
  readonly heating: number;
  readonly rest: number;
  readonly standing: number;
  readonly own: number | null;
  /** Whether the heating runs in the best hours. */
  readonly moved: boolean;
}

function wholeWorking(
  { heating, rest, standing, own, moved }: Parts,
  value: number,
  grade: Grade,
  home: RestOfHome,
): Working {
  const line = (name: Told, value: number, origin: Wording) => ({ name, value, unit: 'p', grade, origin });
  return {
    title: tell('whole-electricity'),
    formula: tell(own === null ? 'heating-and-rest-and-standing' : 'heating-rest-standing-own'),
    inputs: [
      line(tell('heating-of-pump'), heating, tell(moved ? 'from-cost-in-best-hours' : 'from-cost-of-year-below')),
      line(tell('rest-of-home'), rest, home.origin),
      line(tell('standing-of-electricity'), standing, tell('the-prices')),
      ...(own === null ? [] : [line(tell('roof-battery-car'), own, tell('balanced-by-half-hours'))]),
    ],
    result: { value, unit: 'p' },
  };
}

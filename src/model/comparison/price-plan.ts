/** A plan with its prices: energy and money by month and band, and the totals that the draws act on. */

import type { ExtraLine } from '../heat-pump/extras.ts';

import type { WaterHours } from '../shapes/household.ts';
import { type Told, tell } from '../shapes/told.ts';
import { gridPencePerYear, onOwnMeter } from '../tariff/own-meter.ts';
import { rateBuckets, standingPencePerDayInclVat } from '../tariff/slot-price.ts';
import type { YearTerms } from '../uncertainty/simulate.ts';
import { type BandShares, type RateBuckets, sharesOfSlots } from '../year/share-out.ts';

import { dayShares, splitByBlocks } from './block-uses.ts';
import { type BuyingYear, type LaidHours, layHours } from './lay-hours.ts';
import type { Hours, Plan } from './plan.ts';
import { type PowerCharge, powerCharge } from './power-charge.ts';
import type { PricesInUse, TariffInUse } from './prices-of.ts';
import type { RestOfHome } from './rest-of-home.ts';
import { meanPrice, type Rates, totalOf, type Use } from './uses.ts';

export interface PricedPlan {
  readonly plan: Plan;
  readonly terms: YearTerms;
  /** Everything that is bought, sorted into the bands and steps of its prices. */
  readonly uses: readonly Use[];
  /** What the charge on power adds to its prices, where they have one and it can be known. */
  readonly power: PowerCharge | null;
  /** Standing charge of gas, and beside it its own meter, less what the grid takes off, pence a year. */
  readonly standingPence: number;
  readonly gridPence: number;
  /** When its hot water is made. */
  readonly waterHours: WaterHours;
  /** Other electricity of the home that fills the first steps of its prices, where they have steps. */
  readonly besideSteps: RestOfHome | null;
  /** Mean unit price of the main carrier over this system's own hours, p/kWh. */
  readonly meanPencePerKWh: number;
}

/** The year that is priced. */
export interface PricedYear extends BuyingYear {
  /** What the home uses beside heating, where its prices hang on that. */
  readonly home: RestOfHome | null;
  /** The same by half-hour, kWh. */
  readonly homeKWh: Float64Array | null;
}

/** At which rates each plan buys, and how its hours fall among them. */
function layTariffs({ slots }: PricedYear, prices: PricesInUse, { sharesOf, waterHoursOf }: LaidHours) {
  function tariffUse(plan: Plan, hours: Hours, inUse: TariffInUse, share: number, what: Told, beside = false) {
    const buckets = rateBuckets(inUse.version, slots);
    const waterHours = waterHoursOf(plan, buckets);
    const rates: Rates = {
      what,
      names: buckets.names.map((when) => (buckets.names.length > 1 ? tell('rate-at', { what, when }) : what)),
      pencePerKWh: buckets.pencePerKWh.map((pence) => pence * share),
      beside,
      times: share,
    };
    return {
      version: inUse.version,
      shares: sharesOf(hours, waterHours, buckets),
      rates,
      buckets,
      waterHours,
    };
  }

  /** A heat pump may have a meter of its own, and lower prices on it. */
  const electricityOf = ({ hours }: Plan): TariffInUse =>
    hours === 'heat-pump'
      ? { ...prices.electricity, version: onOwnMeter(prices.electricity.version) }
      : prices.electricity;

  function mainUse(plan: Plan) {
    const { carrier } = plan;
    const what = tell(`carrier-${carrier}`);
    if (carrier === 'electricity') {
      const inUse = plan.hours === 'storage' ? prices.storage! : electricityOf(plan);
      return tariffUse(plan, plan.hours, inUse, prices.electricityShare, what);
    }
    if (carrier === 'gas') return tariffUse(plan, 'boiler', prices.gas, prices.fuelShare, what);
    const pencePerKWh = [prices[carrier]!.pencePerKWh * prices.fuelShare];
    const rates: Rates = { what, names: [what], pencePerKWh, beside: false };
    const shares = sharesOf('boiler', 'drawn', FLAT);
    return { version: null, shares, rates, buckets: FLAT, waterHours: 'drawn' as const };
  }

  /** The electricity of a boiler's pump, and of an immersion heater beside it. */
  const besideUse = (plan: Plan) =>
    tariffUse(
      plan,
      'boiler',
      prices.electricity,
      prices.electricityShare,
      tell(plan.electricWaterKWh > 0 ? 'electricity-of-pump-and-immersion' : 'electricity-of-pump'),
      true,
    );

  return { mainUse, besideUse };
}

/** Prices plans over one year, laid out for another tariff before where `laid` is given. */
export function createPricer(year: PricedYear, prices: PricesInUse, laid: LaidHours = layHours(year)) {
  const { slots, home, homeKWh } = year;
  const { mainUse, besideUse } = layTariffs(year, prices, laid);
  const hasDailySteps = prices.electricity.version.bands.some(({ blocks }) => blocks?.per === 'day');
  const coldDays = hasDailySteps ? { dayShare: dayShares(year.spaceShare, slots) } : {};

  return function price(plan: Plan): PricedPlan {
    const main = mainUse(plan);
    const burns = plan.carrier !== 'electricity';
    const beside = burns ? besideUse(plan) : main;
    const { space, water, steady } = main.shares;
    const bySlot = plan.bySlot;
    // Pumps and the backup heater run when the rooms are heated, the immersion in the windows of hot water.
    const usual = { standby: steady, pasteurisation: water, 'source-pump': space, backup: space, circulator: space };
    // The cheap hours of a night are the tariff's to say.
    const ownHours = (name: 'space' | 'water' | ExtraLine['name'], otherwise: BandShares) =>
      name === 'water' && plan.waterHours === 'night'
        ? otherwise
        : ((bySlot && sharesOfSlots(laid.lineOf(bySlot, name), slots, main.buckets)) ?? otherwise);
    const use = (kWh: number, shares: BandShares, rates: Rates): Use => ({ kWh, shares, rates });
    const stepped = (list: readonly Use[]) => {
      // Behind a meter of its own no other use of the home fills the steps.
      const other = main.version?.ownMeter && plan.hours === 'heat-pump' ? undefined : (homeKWh ?? undefined);
      const ofMain = plan.carrier === 'electricity' ? other : undefined;
      const split = main.version ? splitByBlocks(list, main.rates, main.version, slots, ofMain) : list;
      return burns && beside.version ? splitByBlocks(split, beside.rates, beside.version, slots, other) : split;
    };
    const electric = burns ? beside : main;
    const power = home && powerCharge(electric.version!, home.peaks, laid.heaviest(plan, electric.buckets));
    const plainSpace = { ...use(plan.spaceKWh, ownHours('space', space), main.rates), ...coldDays };
    const plainWater = use(plan.waterKWh, ownHours('water', water), main.rates);
    const plainSteady = plan.extras.map((line) => ({
      ...use(line.kWh, ownHours(line.name, usual[line.name]), main.rates),
      ...(line.name === 'backup' ? coldDays : {}),
    }));
    const plainPump = { ...use(burns ? plan.pumpKWh : 0, beside.shares.space, beside.rates), ...coldDays };
    const plainElectricWater = use(burns ? plan.electricWaterKWh : 0, beside.shares.water, beside.rates);
    const uses = stepped([plainSpace, plainWater, plainPump, plainElectricWater, ...plainSteady]);
    const [spaceUse, waterUse, pumpUse, electricWaterUse, ...steadyUses] = uses as [Use, Use, Use, Use, ...Use[]];
    const standingPence = plan.standing === 'gas' ? 365 * standingPencePerDayInclVat(prices.gas.version) : 0;
    const gridPence = plan.hours === 'heat-pump' ? gridPencePerYear(prices.electricity.version) : 0;
    const servicePence = plan.serviceGBP.value * 100;
    const isBackup = (_: Use, i: number) => plan.extras[i]?.name === 'backup';
    const ofBackup = totalOf(steadyUses.filter(isBackup));
    const ofSteady = totalOf(steadyUses.filter((one, i) => !isBackup(one, i)));
    return {
      plan,
      uses,
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
        fixedPence: standingPence + gridPence + (power?.pence ?? 0),
        servicePence,
        serviceSpread: plan.serviceSpread,
        spaceSpread: plan.spaceSpread,
        waterSpread: plan.waterSpread,
        moves: plan.moves,
      },
      power,
      standingPence,
      gridPence,
      waterHours: electric.waterHours,
      besideSteps: electric.version?.bands.some(({ blocks }) => blocks) ? home : null,
      meanPencePerKWh: meanPrice([spaceUse, waterUse, ...steadyUses]),
    };
  };
}

/** One price at all hours. */
const FLAT: RateBuckets = { names: [''], pencePerKWh: [1], bucketOfSlot: new Uint8Array(0) };

/** What the year costs, pence. */
export const penceOfYear = ({ terms }: PricedPlan): number =>
  terms.spacePence +
  terms.waterPence +
  terms.backupPence +
  terms.steadyPence +
  terms.ownElectricityPence +
  terms.electricWaterPence +
  terms.fixedPence +
  terms.servicePence;

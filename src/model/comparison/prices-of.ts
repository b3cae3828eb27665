/** Which prices a comparison rests on: the household's own, else the built-in ones of the day. */
import { daysBetween } from '../calendar/civil.ts';
import type { PriceBasis, PriceKind, Question, WhatIf } from '../shapes/appraisal.ts';
import type { CivilDate } from '../shapes/dates.ts';
import { DELIVERED_FUELS, type DeliveredFuel, priceKey } from '../shapes/heating.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference, TwoRate } from '../shapes/reference.ts';
import type { PricedTariff, PricedVersion, Tariff } from '../shapes/tariff.ts';
import { tell } from '../shapes/told.ts';
import { deliveredPriceOn, quarterOn, tariffFromQuarter, twoRateTariff } from '../tariff/built-in.ts';
import { findTariffFaults, usualFuelPence } from '../tariff/check-tariff.ts';
import { deliveredPriceBasis, OLD_AFTER_DAYS, priceBasis } from '../tariff/price-basis.ts';
import { versionOn } from '../tariff/slot-price.ts';
import { askAboutPrices, type PriceQuestionCode } from './price-questions.ts';

export interface TariffInUse {
  readonly tariff: PricedTariff;
  readonly version: PricedVersion;
  readonly basis: PriceBasis;
}

export interface DeliveredInUse {
  readonly pencePerKWh: number;
  /** For one of the fuel's base unit. */
  readonly pencePerUnit: number;
  /** One relative standard deviation over the next twelve months. */
  readonly spread: number;
  readonly basis: PriceBasis;
}

/** Null for what has no price: nobody typed one, and none is built in for the country. */
export interface PricesInUse extends ByDelivered<DeliveredInUse | null> {
  readonly electricity: TariffInUse;
  readonly storage: TariffInUse | null;
  readonly gas: TariffInUse;
  /** What the unit prices are multiplied by, 1 = as they are. */
  readonly electricityShare: number;
  readonly fuelShare: number;
  readonly questions: Question[];
}

type ByDelivered<T> = { readonly [fuel in DeliveredFuel]: T };

/** Something of every fuel that is bought by amount. */
export const forDelivered = <T>(of: (fuel: DeliveredFuel) => T) =>
  Object.fromEntries(DELIVERED_FUELS.map((fuel) => [fuel, of(fuel)])) as ByDelivered<T>;

interface PricesInput {
  readonly household: Household;
  readonly reference: Reference;
  readonly asOf: CivilDate;
  readonly whatIf?: WhatIf;
}

/**
 * Prices of the day `asOf`. A tariff of the household is used where its id is named and it gives every hour one price;
 * else the built-in quarter that the day falls in, or the newest. Storage heaters go on the tariff named for them,
 * else on the household's own where it has more than one price, else on the built-in day and night pair.
 */
export function choosePrices({ household, reference, asOf, whatIf }: PricesInput): PricesInUse {
  const questions: Question[] = [];
  const find = (id: string | undefined, fuel: Tariff['fuel'], field: string) =>
    findTariff(household.tariffs, id, fuel, field, questions);
  const { prices } = household;
  const use = (tariff: PricedTariff, price: StoodPrice, kind: PriceKind): TariffInUse => {
    const basis = priceBasis(tariff, asOf, kind);
    return {
      tariff,
      version: versionOn(tariff, asOf),
      basis: { ...basis, ...standingOf(price, prices, basis.from, asOf) },
    };
  };
  const ownOr = (own: Tariff | undefined, fuel: 'electricity' | 'gas') =>
    own
      ? use(own, fuel, 'own')
      : use(keptQuarter(reference, fuel, asOf), fuel, reference.country === 'GB' ? 'cap' : 'average');
  const ownElectricity = find(prices.electricityTariffId, 'electricity', 'prices.electricityTariffId');
  const ownGas = find(prices.gasTariffId, 'gas', 'prices.gasTariffId');
  const ownStorage = find(prices.storageTariffId, 'electricity', 'prices.storageTariffId');
  const electricity = ownOr(ownElectricity, 'electricity');
  const { bands, series } = electricity.version;
  const manyPriced = ownElectricity && (bands.length > 1 || series) ? ownElectricity : undefined;
  const nightTariff = ownStorage ?? manyPriced;
  const delivered = forDelivered((fuel) => chooseDelivered(fuel, prices, reference, asOf));
  questions.push(...DELIVERED_FUELS.flatMap((fuel) => askUnusual(fuel, delivered[fuel], reference)));
  return {
    electricity,
    storage: nightTariff
      ? use(nightTariff, ownStorage ? 'two-rate' : 'electricity', 'own')
      : reference.twoRate && use(keptTwoRate(reference.twoRate), 'two-rate', 'assumed'),
    gas: ownOr(ownGas, 'gas'),
    ...delivered,
    electricityShare: whatIf?.electricityShare ?? 1,
    fuelShare: whatIf?.fuelShare ?? 1,
    questions,
  };
}

const faultsKept = new WeakMap<Tariff, ReturnType<typeof findTariffFaults>>();

function findTariff(
  tariffs: readonly Tariff[],
  id: string | undefined,
  fuel: Tariff['fuel'],
  field: string,
  questions: Question[],
): Tariff | undefined {
  if (id === undefined) return undefined;
  const ask = (code: PriceQuestionCode, weight: Question['weight'], data: Question['data']) =>
    questions.push(askAboutPrices(code, weight, data, field));
  const found = tariffs.find((tariff) => tariff.id === id);
  if (!found || found.fuel !== fuel) {
    ask(found ? 'tariff-other-fuel' : 'tariff-missing', 'refusal', { id, fuel });
    return undefined;
  }
  const faults = faultsKept.get(found) ?? findTariffFaults(found);
  faultsKept.set(found, faults);
  for (const { code, weight, version, data } of faults) {
    ask(`tariff-${code}`, weight, { ...data, tariff: found.name, version: version + 1 });
  }
  return faults.some(({ weight }) => weight === 'refusal') ? undefined : found;
}

/** Built-in tariffs are kept, so that their hours are sorted into bands once and not at every move of a slider. */
const quartersKept = new WeakMap<object, PricedTariff>();

function keptQuarter(reference: Reference, fuel: 'electricity' | 'gas', asOf: CivilDate): PricedTariff {
  const quarter = quarterOn(reference.quarters, fuel, asOf);
  const tariff = quartersKept.get(quarter) ?? tariffFromQuarter(quarter);
  quartersKept.set(quarter, tariff);
  return tariff;
}

function keptTwoRate(twoRate: TwoRate): PricedTariff {
  const tariff = quartersKept.get(twoRate) ?? twoRateTariff(twoRate);
  quartersKept.set(twoRate, tariff);
  return tariff;
}

/** One relative standard deviation of a fuel whose price nobody publishes here: that of the ones that are assumed. */
const UNKNOWN_SPREAD = 0.3;

type StoodPrice = NonNullable<Household['prices']['stand']>[number]['price'];

/** Somebody's word that a price stands as assumed. It is about the price of its day, and grows old as a price does; no word is given before its day. */
function standingOf(
  price: StoodPrice,
  { stand }: Household['prices'],
  from: CivilDate,
  asOf: CivilDate,
): Pick<PriceBasis, 'stands'> {
  const found = stand?.findLast(
    ({ price: of, on }) =>
      of === price && on <= asOf && (on >= from || from > asOf) && daysBetween(on, asOf) <= OLD_AFTER_DAYS.meanOfMonth,
  );
  return found ? { stands: { on: found.on, ...(found.said ? { said: found.said } : {}) } } : {};
}

function chooseDelivered(
  fuel: DeliveredFuel,
  prices: Household['prices'],
  reference: Reference,
  asOf: CivilDate,
): DeliveredInUse | null {
  const typed = prices[priceKey(fuel)];
  const builtIn = deliveredPriceOn(reference.deliveredPrices, fuel, asOf);
  const pencePerUnit = typed?.value ?? builtIn?.pencePerUnit;
  if (pencePerUnit === undefined) return null;
  const basis: PriceBasis = typed
    ? {
        name: tell('typed-price-of', { carrier: tell(`carrier-${fuel}`) }),
        from: asOf,
        grade: typed.grade,
        origin: typed.origin,
        kind: 'typed',
      }
    : { ...deliveredPriceBasis(builtIn!, asOf), ...standingOf(fuel, prices, builtIn!.from, asOf) };
  return {
    pencePerKWh: pencePerUnit / reference.kWhPerUnit[fuel].value,
    pencePerUnit,
    spread: builtIn?.spread ?? UNKNOWN_SPREAD,
    basis,
  };
}

/** A price typed in pounds, or for another amount, is asked about: for its energy it is far from what any fuel costs. */
function askUnusual(fuel: DeliveredFuel, price: DeliveredInUse | null, reference: Reference): Question[] {
  if (price?.basis.kind !== 'typed') return [];
  const { low, high, isUsual } = usualFuelPence(price.pencePerKWh);
  if (isUsual) return [];
  const kWh = reference.kWhPerUnit[fuel].value;
  const data = { fuel, pence: price.pencePerUnit, low: low * kWh, high: high * kWh };
  return [askAboutPrices('fuel-price-unusual', 'question', data, `prices.${priceKey(fuel)}`)];
}

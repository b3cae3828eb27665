/** Every system beside every other over one typical year, with ranges where draws are asked for. */

import type { YearSlots } from '../calendar/zone.ts';
import { spreadOfRange } from '../chance/multiplier.ts';
import { normalDraws } from '../chance/normals.ts';
import { restsOnRecord } from '../demand/choose.ts';
import { weightOf } from '../demand/combine.ts';
import { WATER_FOLLOWS } from '../demand/demand-assumptions.ts';
import type { ReckonedMachine } from '../heat-pump/spf-from-factors.ts';
import type { Appraisal, Demand, Question, WhatIf } from '../shapes/appraisal.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import type { PricedVersion } from '../shapes/tariff.ts';
import { inclVat } from '../tariff/slot-price.ts';
import { rankDrivers } from '../uncertainty/drivers.ts';
import { type SharedSpreads, simulateYears } from '../uncertainty/simulate.ts';
import { askAboutHome } from './ask-about-home.ts';
import { type ResultContext, systemResult } from './cost-figures.ts';
import type { LaidHours } from './lay-hours.ts';
import type { SystemName } from './plan.ts';
import { planSystems } from './plan-systems.ts';
import { createPricer, type PricedPlan } from './price-plan.ts';
import { forDelivered, type PricesInUse } from './prices-of.ts';
import { restBySlot, restOfHome } from './rest-of-home.ts';
import { holdAgainst, type Side, savingsOf } from './versus.ts';

export interface PriceInput {
  readonly household: Household;
  readonly demand: Demand;
  readonly machine: ReckonedMachine;
  /** The same without any what-if, for a home that has its heat pump already. */
  readonly presentMachine?: ReckonedMachine;
  readonly prices: PricesInUse;
  readonly reference: Reference;
  readonly slots: YearSlots;
  /** Share of each day in the year's heat for rooms; sums to 1. */
  readonly spaceShare: ArrayLike<number>;
  readonly whatIf?: WhatIf;
  /** Records of the household, for what its home uses beside heating. */
  readonly series?: readonly Series[];
  /** From this day on what is bought may hold heating that nobody named. */
  readonly mayHeatFrom?: CivilDate;
  /** The same year as it was laid out for another tariff. */
  readonly laid?: LaidHours;
}

export interface CompareInput extends PriceInput {
  /** Possible years to draw; 0 for none, and then every range is its value. */
  readonly draws: number;
}

/** What stands behind a comparison, for an engineer to follow: what each way buys, and how far each input may stray. */
export interface BehindComparison {
  readonly priced: readonly PricedPlan[];
  readonly shared: SharedSpreads;
}

export interface Comparison extends BehindComparison, Pick<Appraisal, 'systems' | 'leftOut' | 'versus' | 'drivers'> {
  readonly questions: Question[];
  /** Yearly mean unit price over the heat pump's own hours, and over a gas boiler's, p/kWh. */
  readonly electricityPencePerKWh: number;
  readonly gasPencePerKWh: number;
  /** Cost of each system in each possible year, pence; null without draws. */
  readonly yearsPence: ReadonlyMap<SystemName, Float64Array> | null;
}

/** Every way of heating priced over a typical year, without ranges: the heat pump first, the present system after it where it can be priced. */
export function priceSystems(input: PriceInput) {
  const { prices, reference } = input;
  const questions: Question[] = [];
  const { plans, leftOut } = planSystems(input, questions);
  const { electricity, storage } = prices;
  const hangsOnHome = [electricity, ...(storage ? [storage] : [])].some(
    ({ version }) => version.demand || version.bands.some(({ blocks }) => blocks),
  );
  const home = hangsOnHome ? restOfHome(input.household, input.series ?? [], input.mayHeatFrom) : null;
  const homeKWh = home && restBySlot(home, input.slots, reference.homeHours);
  const priced = plans.map(createPricer({ ...input, home, homeKWh }, prices, input.laid));
  if (home) questions.push(...askAboutHome(electricity, home, priced[0]!.power));
  return { priced, leftOut, questions };
}

/** Costs [pence], energy [kWh] and carbon [kg] of every system over a typical year; each heat pump saving with its chance. */
export function compare(input: CompareInput): Comparison {
  const { demand, machine, prices, reference, draws } = input;
  const { priced, leftOut, questions } = priceSystems(input);
  const shared = sharedSpreads(input, priced[1]);
  const years =
    draws > 0
      ? simulateYears(
          priced.map(({ terms }) => terms),
          shared,
          draws,
        )
      : null;
  const context: ResultContext = {
    demand,
    prices,
    winter: reference.spread.winter.value,
    carbonKgPerKWh: reference.carbonKgPerKWh,
  };
  const sides: Side[] = priced.map((one, i) => ({
    priced: one,
    result: systemResult(one, years?.[i] ?? null, context),
    costPence: years?.[i]?.costPence ?? null,
  }));
  const [pump, ...others] = sides as [Side, ...Side[]];
  const ordered = presentFirst(others, ({ result: { id, cost } }) => ({ id, pence: cost.value }));
  return {
    systems: [pump, ...ordered].map(({ result }) => result),
    leftOut,
    versus: ordered.map((other) => holdAgainst(pump, other, demand, machine.machine.whole.value)),
    drivers: findDrivers(pump, ordered[0], draws),
    questions,
    priced,
    shared,
    electricityPencePerKWh: pump.priced.meanPencePerKWh,
    gasPencePerKWh: meanOf(sides, 'gas') ?? restPence(prices.gas.version) * prices.fuelShare,
    yearsPence: years && new Map(priced.map(({ plan }, i) => [plan.id, years[i]!.costPence])),
  };
}

/** What the household has now first, then the others by cost. */
export function presentFirst<T>(others: readonly T[], of: (one: T) => { id: SystemName; pence: number }): T[] {
  const isPresent = (one: T) => Number(of(one).id === 'present');
  return others.toSorted((a, b) => isPresent(b) - isPresent(a) || of(a).pence - of(b).pence);
}

/** Drivers of the saving against what the heat pump is shown beside: the present system, else the cheapest other. */
function findDrivers(pump: Side, beside: Side | undefined, draws: number): Appraisal['drivers'] {
  if (!pump.costPence || !beside?.costPence) return [];
  return rankDrivers(savingsOf(pump.costPence, beside.costPence), normalDraws(draws));
}

const meanOf = (sides: readonly Side[], carrier: string) =>
  sides.find(({ result }) => result.carrier === carrier)?.priced.meanPencePerKWh;

/** Price of the hours that no other band claims, where nothing compared buys by this tariff. */
const restPence = (version: PricedVersion) =>
  inclVat(version, (version.bands.find(({ times }) => times === 'rest') ?? version.bands[0]!).pencePerKWh);

/** How far what acts on every way of heating may stray; `present` is the system that is there. */
export function sharedSpreads(input: PriceInput, present: PricedPlan | undefined): SharedSpreads {
  const { demand, prices, reference, whatIf } = input;
  const { spread } = reference;
  const chosenWinter = whatIf?.winter !== undefined && whatIf.winter !== 'typical';
  return {
    spaceHeat: spreadOfRange(demand.space),
    waterHeat: spreadOfRange(demand.water),
    waterFollows: restsOnRecord(demand) ? 0 : WATER_FOLLOWS,
    heatRestsOn: restsOn(demand, present),
    // A winter that was chosen is no longer unknown.
    winter: chosenWinter ? 0 : spread.winter.value,
    habits: spread.habits.value,
    electricityPrice: spread.electricityPrice.value,
    gasPrice: spread.gasPrice.value,
    priceCorrelation: spread.priceCorrelation.value,
    deliveredPrice: forDelivered((fuel) => prices[fuel]?.spread ?? 0),
    machineExtras: spread.machineExtras.value,
    boilerElectricity: spread.boilerElectricity.value,
    useful: { spaceKWh: demand.space.value, waterKWh: demand.water.value },
  };
}

/** How far the heat for the rooms rests on the present system's record, by inverse variance among the estimates. */
function restsOn(demand: Demand, present: PricedPlan | undefined): SharedSpreads['heatRestsOn'] {
  const record = demand.estimates.find(({ way }) => way === 'record');
  if (!record || present?.plan.id !== 'present') return null;
  const { moves, spaceSpread } = present.terms;
  if (moves !== 'machine' && moves !== 'efficiency') return null;
  if (!restsOnRecord(demand)) return null;
  const counts = (e: Demand['estimates'][number]) => weightOf({ value: e.spaceKWh, error: e.spaceErrorKWh });
  const all = demand.estimates.reduce((sum, estimate) => sum + counts(estimate), 0);
  const weight = demand.chosen === 'record' ? 1 : counts(record) / all;
  return { moves, spread: spaceSpread, weight };
}

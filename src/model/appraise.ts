/** The whole model of one household: heat, machine, prices, comparison, ranges and questions, from plain data. */

import { type BehindComparison, compare } from './comparison/compare.ts';
import { layHours } from './comparison/lay-hours.ts';
import type { SystemName } from './comparison/plan.ts';
import { askAboutPrices } from './comparison/price-questions.ts';
import { choosePrices, type PricesInUse } from './comparison/prices-of.ts';
import { estimateDemand } from './demand/estimate-demand.ts';
import { ask } from './demand/heat-questions.ts';
import { EVER } from './evidence/beside-heat-pump.ts';
import { commonYear } from './heat-of-household.ts';
import { type FullReckoned, reckonFullMachine } from './heat-pump/full/spf-by-half-hour.ts';
import { type MachineInput, type ReckonedMachine, reckonMachine } from './heat-pump/spf-from-factors.ts';
import { type Appraisal, carriersOf, type Question, type WhatIf } from './shapes/appraisal.ts';
import type { CivilDate } from './shapes/dates.ts';
import type { Series } from './shapes/evidence.ts';
import { carrierOf, DELIVERED_FUELS } from './shapes/heating.ts';
import type { Household } from './shapes/household.ts';
import { MODEL_VERSION } from './shapes/model-version.ts';
import type { Reference } from './shapes/reference.ts';
import { standingPencePerDayInclVat } from './tariff/slot-price.ts';
import { type FoundRegion, findRegion } from './weather/region.ts';
import type { TypicalYear } from './year/typical-year.ts';
import { typicalYear } from './year/typical-year.ts';

/** Possible years behind every range that is shown or kept: a power of two, for which the Sobol points lie evenly. */
export const USUAL_DRAWS = 4096;

export interface AppraiseInput {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly reference: Reference;
  readonly asOf: CivilDate;
  readonly whatIf?: WhatIf;
  /** 0 leaves the ranges out: every low and high is its value. */
  readonly draws?: number;
}

/**
 * What the model says of a household on a day [kWh, pence, °C a typical year]. Pure: the same input gives the same
 * answer to the last digit. Always answers; what it had to assume, refuse or leave open stands in `questions`.
 */
export const appraise = (input: AppraiseInput): Appraisal => appraiseYears(input).appraisal;

export interface AppraisedYears extends BehindComparison {
  readonly appraisal: Appraisal;
  readonly machine: ReckonedMachine | FullReckoned;
  /** Cost [pence] of each system in each possible year, the same years in the same order for the same `draws`. */
  readonly yearsPence: ReadonlyMap<SystemName, Float64Array> | null;
}

/** A home with its heat and its machine, before any price: the same whichever tariff is tried. */
export function homeBeforePrices({ household, series, reference, asOf, whatIf }: AppraiseInput) {
  const found = findRegion(household.home, reference);
  const year = typicalYear(found.region, commonYear(asOf), household.zone);
  const withWhatIf = whatIf ? { whatIf } : {};
  const estimated = estimateDemand({ household, series, reference, year, ...withWhatIf });
  const { demand } = estimated;
  const heat = { household, demand, reference, year, spaceShare: estimated.heatBySlot.spaceShare };
  const machine = reckonEitherWay({ ...heat, ...withWhatIf });
  // What rises with the cold may be heating, and says nothing of the rest of the home until somebody has said what it is.
  const inCold = estimated.questions.some(({ code }) => code === 'electricity-in-the-cold');
  const laidOver = { slots: year.slots, spaceShare: heat.spaceShare, demand };
  const toPrice = {
    household,
    machine,
    ...(whatIf?.flowC === undefined ? {} : { presentMachine: reckonEitherWay(heat) }),
    reference,
    series,
    ...(inCold ? { mayHeatFrom: EVER } : {}),
    ...withWhatIf,
    ...laidOver,
    laid: layHours(laidOver),
  };
  return { found, estimated, machine, heat: { ...heat, ...withWhatIf }, toPrice };
}

/** The same with the possible years themselves, so that two cases can be held against each other year by year. */
export function appraiseYears(input: AppraiseInput): AppraisedYears {
  const { household, reference, asOf, whatIf, draws = USUAL_DRAWS } = input;
  const { found, estimated, machine, toPrice } = homeBeforePrices(input);
  const { demand, climate } = estimated;
  const prices = choosePrices({ household, reference, asOf, ...(whatIf ? { whatIf } : {}) });
  const compared = compare({ ...toPrice, prices, draws });
  const appraisal: Appraisal = {
    modelVersion: MODEL_VERSION,
    asOf,
    climate,
    demand,
    machine: machine.machine,
    prices: {
      electricity: prices.electricity.basis,
      gas: prices.gas.basis,
      electricityPencePerKWh: compared.electricityPencePerKWh,
      gasPencePerKWh: compared.gasPencePerKWh,
      gasStandingPence: 365 * standingPencePerDayInclVat(prices.gas.version),
      ...Object.fromEntries(
        DELIVERED_FUELS.flatMap((fuel) => {
          const price = prices[fuel];
          return price
            ? [
                [fuel, price.basis],
                [`${fuel}PencePerKWh`, price.pencePerKWh * prices.fuelShare],
              ]
            : [];
        }),
      ),
      ...(prices.storage &&
      prices.storage.tariff !== prices.electricity.tariff &&
      compared.systems.some(({ kind }) => kind === 'storage')
        ? { 'two-rate': prices.storage.basis }
        : {}),
    },
    systems: compared.systems,
    ...(compared.leftOut ? { leftOut: compared.leftOut } : {}),
    versus: compared.versus,
    drivers: compared.drivers,
    questions: [
      ...askAboutRegion(household, reference, found),
      ...(reference.country === 'GB' ? [] : [ask('british-tables', 'note', {})]),
      ...estimated.questions,
      ...machine.questions,
      ...prices.questions,
      ...askAboutAge(prices, { household, asOf }, compared.systems),
      ...compared.questions,
    ],
  };
  return { appraisal, yearsPence: compared.yearsPence, machine, priced: compared.priced, shared: compared.shared };
}

/** A region or postcode that no table has; and the region itself where no table knows the postcodes of the country. */
function askAboutRegion({ home }: Household, reference: Reference, { region, grade }: FoundRegion): Question[] {
  const { regionId, postcode = '' } = home;
  if (regionId === region.id) return [];
  const stands = { region: region.name };
  if (regionId !== undefined) return [ask('region-not-listed', 'question', stands, 'home.regionId')];
  if (reference.country !== 'GB') return [ask('region-asked', 'question', stands, 'home.regionId')];
  const isUnknown = postcode.trim() !== '' && grade === 'assumed';
  return isUnknown ? [ask('postcode-not-listed', 'question', { ...stands, postcode }, 'home.postcode')] : [];
}

/** `prices-old` and `prices-not-yet`: prices of what is compared that ended before the day of the comparison, or begin after it; asked about where this home pays them. */
function askAboutAge(
  prices: PricesInUse,
  { household, asOf }: Pick<AppraiseInput, 'household' | 'asOf'>,
  systems: Appraisal['systems'],
): Question[] {
  const present = carrierOf(household.present.system);
  return [...carriersOf({ systems })].flatMap((fuel): Question[] => {
    const { staleDays, name, from, to } = prices[fuel]!.basis;
    const weight = fuel === 'electricity' || fuel === present ? 'question' : 'note';
    if (from > asOf) return [askAboutPrices('prices-not-yet', weight, { fuel, name, from })];
    if (staleDays === undefined) return [];
    const data = { fuel, name, from, to: to ?? '', days: staleDays };
    return [askAboutPrices('prices-old', weight, data)];
  });
}

interface YearOfHeat {
  readonly year: TypicalYear;
  /** Share of each day in the year's heat for rooms; sums to 1. */
  readonly spaceShare: ArrayLike<number>;
}

/** Factors [1] and electricity [kWh a year] of the machine: worked out by the half-hour where `machine.way` is full, else as typed. */
const reckonEitherWay = (input: MachineInput & YearOfHeat): ReckonedMachine | FullReckoned =>
  input.household.machine.way === 'full' ? reckonFullMachine(input) : reckonMachine(input);

/**
 * What the model says of one household: the shapes only; `appraise()` fills them.
 * Energies kWh, temperatures °C, money in pence, efficiencies and factors as fractions (0.84, 3.4).
 * Everything here is for one typical year unless its name says otherwise.
 */

import { z } from 'zod';
import { codeOf } from './code.ts';
import { CivilDate } from './dates.ts';
import {
  DELIVERED_FUELS,
  type DeliveredFuel,
  HEATERS,
  OFFERED,
  PRICED_CARRIERS,
  type PricedCarrier,
  RIVAL_MACHINES,
} from './heating.ts';
import { Boundary, DemandChoice } from './household.ts';
import { Wording } from './told.ts';
import { Grade, Working } from './working.ts';

/** A value with its range (10 and 90 % points) and the sum it came from. */
export const Figure = z.object({
  value: z.number(),
  low: z.number(),
  high: z.number(),
  unit: z.string(),
  grade: Grade,
  working: Working,
});
export type Figure = z.infer<typeof Figure>;

/** Something the numbers cannot settle: shown as a question with likely reasons. Words are in `words`. */
export const Question = z.object({
  code: z.string(),
  weight: z.enum(['note', 'question', 'refusal']),
  /** Where on the thread it belongs. */
  stage: z.enum(['evidence', 'heat', 'machine', 'prices', 'cost']),
  /** Path of the household field it is about, such as "machine.spaceFactor". */
  field: z.string().optional(),
  data: z.record(z.string(), z.union([z.number(), Wording])),
});
export type Question = z.infer<typeof Question>;

export const Climate = z.object({
  regionId: z.int(),
  regionName: z.string(),
  /** Mean outdoor temperature of each month of the typical year. */
  monthlyMeanC: z.array(z.number()).length(12),
  /** Degree days of the typical year to `baseC`. */
  baseC: z.number(),
  degreeDays: z.number(),
  /** Where the temperatures behind the record came from: the household's own file, or the typical year standing in. */
  recordWeather: z.enum(['own', 'typical', 'none']),
  grade: Grade,
  source: Wording,
});
export type Climate = z.infer<typeof Climate>;

/** Energy signature: use per day = base + slope × max(0, base temperature − outdoor temperature). */
export const Signature = z.object({
  carrier: z.string(),
  seriesId: z.string(),
  from: CivilDate,
  to: CivilDate,
  /** Days or periods the line was laid through. */
  count: z.int(),
  period: z.enum(['day', 'month', 'period']),
  baseC: z.number(),
  basePerDayKWh: z.number(),
  slopeKWhPerKDay: z.number(),
  slopeStandardError: z.number(),
  baseStandardError: z.number(),
  r2: z.number(),
  cvRmse: z.number(),
  /** Lag-1 correlation of the residuals. */
  rho: z.number(),
  /** Points for the picture, at most 400: mean outdoor °C, kWh per day. */
  points: z.array(z.object({ outdoorC: z.number(), kWhPerDay: z.number() })),
});
export type Signature = z.infer<typeof Signature>;

/** One side of a change in the house: the line through that part of the record. */
export const SignaturePart = z.object({
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  count: z.int(),
  baseC: z.number(),
  basePerDayKWh: z.number(),
  slopeKWhPerKDay: z.number(),
  r2: z.number(),
});
export type SignaturePart = z.infer<typeof SignaturePart>;

/** The house changed while the record ran: less or more use in the same weather from some day on. */
export const HouseChange = z.object({
  on: CivilDate,
  /** The change may as well lie between these. */
  earliest: CivilDate,
  latest: CivilDate,
  /** Heating use after over that before in the same weather, less 1; with its 10 and 90 % points. */
  share: z.number(),
  shareLow: z.number(),
  shareHigh: z.number(),
  /** Chance that it is more than habits and scatter, 0 to 1. */
  sure: z.number(),
  /** Whether the demand stands on the part after the change alone. */
  used: z.boolean(),
  before: SignaturePart,
  after: SignaturePart,
});
export type HouseChange = z.infer<typeof HouseChange>;

/** What the meter of the record should show in a year to come, with the 10 and 90 % points of a single year. */
export const YearAhead = z.object({
  winter: z.enum(['mild', 'typical', 'cold']),
  degreeDays: z.number(),
  kWh: z.number(),
  low: z.number(),
  high: z.number(),
});
export type YearAhead = z.infer<typeof YearAhead>;

export const DemandWay = z.enum(['record', 'heat-loss', 'certificate', 'floor-area']);
export type DemandWay = z.infer<typeof DemandWay>;

/** One of up to four independent estimates of yearly heat (delivered heat, not fuel). */
export const DemandEstimate = z.object({
  way: DemandWay,
  spaceKWh: z.number(),
  /** One standard error. */
  spaceErrorKWh: z.number(),
  waterKWh: z.number().optional(),
  waterErrorKWh: z.number().optional(),
  grade: Grade,
  working: Working,
});
export type DemandEstimate = z.infer<typeof DemandEstimate>;

export const Demand = z.object({
  estimates: z.array(DemandEstimate),
  /** Ways that could not be gone, with the reason: "no-record", "no-heat-loss", ... */
  missing: z.array(z.object({ way: DemandWay, reason: z.string() })),
  chosen: DemandChoice,
  space: Figure,
  /** Hot water incl. cylinder loss: heat that the heating system must make. */
  water: Figure,
  total: Figure,
  /** Heat by month; sums to `space.value` and `water.value`. */
  monthlySpaceKWh: z.array(z.number()).length(12),
  monthlyWaterKWh: z.array(z.number()).length(12),
  baseC: z.number(),
  roomC: z.number(),
  heatLossWPerK: z.number(),
  signature: Signature.optional(),
  change: HouseChange.optional(),
  /** Heat loss coefficient that the record shows, W/K, beside the one that the typed heat loss comes to. */
  recordHeatLoss: Figure.optional(),
  typedHeatLossWPerK: z.number().optional(),
  /** Use as metered in a mild, a typical and a cold year, in that order. */
  yearsAhead: z.array(YearAhead).optional(),
});
export type Demand = z.infer<typeof Demand>;

/** Published field measurements of the same kind of machine, for the installer's figure to be held against. */
export const FieldSpread = z.object({
  low: z.number(),
  middle: z.number(),
  high: z.number(),
  boundary: Boundary,
  count: z.int().optional(),
  /** Share of the homes, 0 to 1, whose machine reached the factor its designer had given. */
  reachedDesignShare: z.number().optional(),
  source: z.string(),
});
export type FieldSpread = z.infer<typeof FieldSpread>;

/** What the designer's own factors come to, beside the middle of what homes get. */
const AsDesigned = z.object({
  /** Share of homes, 0 to 1, that get there. */
  reachedShare: z.number(),
});

export const MachineResult = z.object({
  source: z.enum(['ground', 'air']),
  boundary: Boundary,
  /** Factors in the middle of what homes get, at `boundary`: measured and field ones as they are, a designer's after the step from design to field. */
  space: Figure,
  water: Figure,
  /** Space, water, backup, pumps and standby together: what the household's meter sees (H4). */
  whole: Figure,
  /** kWh a year counted outside the given boundary: pumps, standby, pasteurisation by the immersion heater. */
  extraKWh: z.number(),
  /** The same three factors as designed; absent where nothing of a design was taken off. */
  asDesigned: AsDesigned.extend({ space: z.number(), water: z.number(), whole: z.number() }).optional(),
  fieldSpread: FieldSpread,
});
export type MachineResult = z.infer<typeof MachineResult>;

export const SystemId = z.enum(['heat-pump', 'present', ...HEATERS, ...RIVAL_MACHINES]);
export type SystemId = z.infer<typeof SystemId>;

/** One way of heating over a typical year, heat for rooms and hot water together. */
export const SystemResult = z.object({
  id: SystemId,
  /** What `present` is, `gas-assumed` where nobody has said; for the others equal to `id`. */
  kind: z.string(),
  carrier: z.enum(PRICED_CARRIERS),
  spaceEfficiency: z.number(),
  waterEfficiency: z.number(),
  grade: Grade,
  /** Energy bought: fuel, and the system's own electricity where it burns a fuel. */
  bought: Figure,
  ownElectricityKWh: z.number(),
  cost: Figure,
  split: z.object({ unitsPence: z.number(), standingPence: z.number(), servicePence: z.number() }),
  monthly: z.object({
    boughtKWh: z.array(z.number()).length(12),
    unitsPence: z.array(z.number()).length(12),
    standingPence: z.array(z.number()).length(12),
    servicePence: z.array(z.number()).length(12),
  }),
  /** Bought energy by price band. */
  rates: z.array(z.object({ name: Wording, kWh: z.number(), pencePerKWh: z.number() })),
  /** Unit cost of one kWh of useful heat. */
  pencePerKWhHeat: Figure,
  /** The same for the rooms alone, by the room factor or efficiency and without pumps: 28 p / 4.0 = 7.0 p. */
  pencePerKWhSpaceHeat: z.number().optional(),
  carbonKg: Figure,
  /** The same system in a winter met 1 year in 10 on the cold and on the mild side. */
  coldYearPence: z.number(),
  mildYearPence: z.number(),
  /** Cost of the year if the machine works as designed, all else at its middle; absent where no design stands behind it. */
  asDesigned: AsDesigned.extend({ costPence: z.number() }).optional(),
  /** How far one home's bill moves from year to year, 10 and 90 % points: winter, habits and prices, the home itself at its middle. */
  yearToYear: z.object({ lowPence: z.number(), highPence: z.number() }).optional(),
});
export type SystemResult = z.infer<typeof SystemResult>;

/** Whether the heat pump costs less or more; neither is said of a chance of 45 to 55 %. */
export const Verdict = z.enum(['less', 'more', 'about-same']);
export type Verdict = z.infer<typeof Verdict>;

/** The heat pump against one other system. Positive differences mean the heat pump costs less. */
export const Versus = z.object({
  against: SystemId,
  /** Pence a year saved by the heat pump, 10/50/90 % points in the figure. */
  saving: Figure,
  /** Chance that the heat pump costs less, 0 to 1. */
  chanceLess: z.number(),
  /** Which side may be named; absent in what was kept before it was said (then `verdictOf` says it). */
  verdict: Verdict.optional(),
  /** Twenty equally likely savings in pence, ascending (5 % steps, middles of the slices). */
  twenty: z.array(z.number()).length(20),
  /** Whole-house seasonal factor at which a unit of heat costs the same in both; null where none does. */
  breakEvenFactor: z.number().nullable(),
  /** The same for the whole year's cost: standing charges, service and the boiler's own electricity counted in. */
  breakEvenFactorAllCosts: z.number().nullable().optional(),
  /** Electricity price over the other fuel's price, now and where both cost the same. */
  priceRatio: z.number().nullable(),
  breakEvenPriceRatio: z.number().nullable(),
});
export type Versus = z.infer<typeof Versus>;

/** The verdict against one system; what was kept before it was said takes it from its saving and chance. */
export function verdictAgainst(versus: Appraisal['versus'], id: string): Verdict | undefined {
  const one = versus.find(({ against }) => against === id);
  return one && (one.verdict ?? verdictOf(one));
}

/** Chances between which no side is named. */
const EVEN = { from: 0.45, to: 0.55 } as const;
export const isEvenChance = (chanceLess: number): boolean => chanceLess >= EVEN.from && chanceLess <= EVEN.to;

/** Which side may be named: only one that both the middle saving and the chance speak for, and the chance by more than 45 to 55 %. */
export function verdictOf({ saving, chanceLess }: Pick<Versus, 'chanceLess'> & { saving: { value: number } }): Verdict {
  if (chanceLess > EVEN.to && saving.value > 0) return 'less';
  if (chanceLess < EVEN.from && saving.value < 0) return 'more';
  return 'about-same';
}

/** What nobody knows for certain, under the names by which it is shown. */
export type UnknownInput =
  | 'electricity-price'
  | 'space-factor'
  | 'space-heat'
  | 'water-heat'
  | 'winter'
  | 'other-fuel-price'
  | 'other-efficiency'
  | 'habits'
  | 'own-electricity'
  | 'service';

/** Why a way of heating is left out of the comparison. */
export type WhyLeftOut =
  /** It runs on gas, and there is known to be none, or nobody has said that there is any. */
  | 'no-gas'
  | 'gas-not-said'
  /** It is for homes off the gas grid, and there is gas. */
  | 'gas-here'
  /** A flat has no room for a tank or a store. */
  | 'no-room'
  | 'no-ground'
  /** No electric heaters stand there now. */
  | 'not-electric'
  /** Nobody typed a price, and none is built in for the country. */
  | 'no-price'
  /** The installer wants it out. */
  | 'chosen';

export const Driver = z.object({
  input: codeOf<UnknownInput>(),
  /** Share of the variance of the saving against the present system (the cheapest other where it has no price), 0 to 1. */
  share: z.number(),
});

/** Where a price is from: a tariff of the household's own, a price typed for it, the cap of the regulator, another average, a guide page, or nobody. */
export const PriceKind = z.enum(['own', 'typed', 'cap', 'average', 'guide', 'assumed']);
export type PriceKind = z.infer<typeof PriceKind>;

export const PriceBasis = z.object({
  name: Wording,
  /** First and last day the prices hold; `to` absent for an open end. */
  from: CivilDate,
  to: CivilDate.optional(),
  grade: Grade,
  origin: Wording,
  /** Days since the prices ended, when they are older than a quarter; else absent. */
  staleDays: z.int().optional(),
  /** Absent in what was kept before it was said. */
  kind: PriceKind.optional(),
  /** Somebody said on that day that it stands as assumed, and why. */
  stands: z.object({ on: CivilDate, said: z.string().optional() }).optional(),
});

export type PriceBasis = z.infer<typeof PriceBasis>;

/** By fuel; an estimate kept before a fuel was known has nothing of it. */
const deliveredBases = Object.fromEntries(DELIVERED_FUELS.map((fuel) => [fuel, PriceBasis.optional()])) as {
  [fuel in DeliveredFuel]: z.ZodOptional<typeof PriceBasis>;
};
const deliveredPence = Object.fromEntries(
  DELIVERED_FUELS.map((fuel) => [`${fuel}PencePerKWh`, z.number().optional()]),
) as { [key in `${DeliveredFuel}PencePerKWh`]: z.ZodOptional<z.ZodNumber> };

export const Appraisal = z.object({
  modelVersion: z.string(),
  asOf: CivilDate,
  climate: Climate,
  demand: Demand,
  machine: MachineResult,
  prices: z.object({
    electricity: PriceBasis,
    gas: PriceBasis,
    ...deliveredBases,
    /** Day and night prices of storage heaters, where those are compared and are not on the household's own electricity tariff. */
    'two-rate': PriceBasis.optional(),
    /** Yearly mean over the heat pump's own hours, p/kWh. */
    electricityPencePerKWh: z.number(),
    gasPencePerKWh: z.number(),
    /** Standing charge of gas for a year, pence; absent in what was kept before it was said. */
    gasStandingPence: z.number().optional(),
    ...deliveredPence,
  }),
  /** Heat pump first, then the present system, then the others by cost. */
  systems: z.array(SystemResult),
  /** Ways of heating that this home could not really have, or that the installer wants out, each with its reason. */
  leftOut: z.array(z.object({ system: z.enum(OFFERED), why: codeOf<WhyLeftOut>() })).optional(),
  versus: z.array(Versus),
  drivers: z.array(Driver),
  questions: z.array(Question),
});
export type Appraisal = z.infer<typeof Appraisal>;

/** The price [p/kWh] of what is bought and what it rests on; undefined for a fuel that a kept estimate says nothing of. */
export function priceOf(
  prices: Appraisal['prices'],
  carrier: PricedCarrier,
): { readonly basis: PriceBasis; readonly pencePerKWh: number } | undefined {
  const [basis, pencePerKWh] = [prices[carrier], prices[`${carrier}PencePerKWh`]];
  return basis && pencePerKWh !== undefined ? { basis, pencePerKWh } : undefined;
}

/** What the ways of heating compared are bought with; every one of them buys electricity too. */
export const carriersOf = ({ systems }: Pick<Appraisal, 'systems'>): ReadonlySet<PricedCarrier> =>
  new Set<PricedCarrier>(['electricity', ...systems.map(({ carrier }) => carrier)]);

/** Whether a price is old or nobody publishes it. */
export const isOpenPrice = ({ staleDays, kind }: Pick<PriceBasis, 'staleDays' | 'kind'>): boolean =>
  staleDays !== undefined || kind === 'assumed';

/** The price that a way of heating is bought at, under the name by which it is said to stand; undefined for what was kept without. */
export function basisOf(
  prices: Appraisal['prices'],
  { carrier, kind }: Pick<SystemResult, 'carrier' | 'kind'>,
): { readonly price: PricedCarrier | 'two-rate'; readonly basis: PriceBasis } | undefined {
  const price = kind === 'storage' && prices['two-rate'] ? 'two-rate' : carrier;
  const basis = prices[price];
  return basis && { price, basis };
}

/** Units, standing charge and service of one month [pence]; month 0 is January. */
export const penceOfMonth = ({ monthly }: Pick<SystemResult, 'monthly'>, month: number): number =>
  monthly.unitsPence[month]! + monthly.standingPence[month]! + monthly.servicePence[month]!;

/** What the ways of heating compared are bought at, each price once. */
export function pricesUsed({ prices, systems }: Pick<Appraisal, 'prices' | 'systems'>) {
  return new Map(
    systems.flatMap((system) => {
      const found = basisOf(prices, system);
      return found ? [[found.price, found.basis] as const] : [];
    }),
  );
}

/** Prices of what is compared that are old or nobody's and that nobody has let stand: they go into no written estimate. */
export function openPrices(appraisal: Pick<Appraisal, 'prices' | 'systems'>) {
  return [...pricesUsed(appraisal)].flatMap(([price, basis]) =>
    isOpenPrice(basis) && !basis.stands ? [{ price, basis }] : [],
  );
}

/** What the household or the world may change; absent means as it is. */
export const WhatIf = z.object({
  flowC: z.number().min(25).max(75).optional(),
  roomC: z.number().min(10).max(30).optional(),
  /** Hot water against today's, 1 = the same. */
  waterShare: z.number().min(0).max(3).optional(),
  /** Electricity unit price against today's, 1 = the same. */
  electricityShare: z.number().min(0.1).max(5).optional(),
  fuelShare: z.number().min(0.1).max(5).optional(),
  winter: z.enum(['mild', 'typical', 'cold']).optional(),
});
export type WhatIf = z.infer<typeof WhatIf>;

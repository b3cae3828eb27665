/**
 * The household: everything the installer types about one case, as one plain document.
 * It is what the store keeps, what a household file holds and what a written estimate freezes.
 * A field that is absent is not zero: the model takes a default from the reference tables and grades it assumed.
 */
import { z } from 'zod';
import { Comfort, ElectricCar, HomeBattery, Roof } from './choices.ts';
import { COUNTRIES, Country } from './country.ts';
import { CivilDate, TimeZone } from './dates.ts';
import { given } from './given.ts';
import {
  DELIVERED_FUELS,
  FUEL_IDS,
  HEATERS,
  OFFERED,
  PRICED_CARRIERS,
  type PriceKey,
  priceKey,
  type ServiceKey,
  serviceKey,
} from './heating.ts';
import { RatedPoint } from './rated-point.ts';
import { RefrigerantName } from './refrigerant.ts';
import { SiteVisit } from './site-readings.ts';
import { Tariff } from './tariff.ts';

export { type Given, given } from './given.ts';
export { RatedPoint } from './rated-point.ts';
export const HOME_KINDS = ['detached', 'semi', 'terrace', 'bungalow', 'flat', 'other'] as const;
export const HomeKind = z.enum(HOME_KINDS);
export type HomeKind = z.infer<typeof HomeKind>;
export const AGE_BANDS = [
  'before 1930',
  '1930 to 1966',
  '1967 to 1982',
  '1983 to 2002',
  '2003 to 2012',
  '2013 or later',
] as const;
export const AgeBand = z.enum(AGE_BANDS);
export type AgeBand = z.infer<typeof AgeBand>;

/** What heats the home today. */
export const PRESENT_SYSTEMS = [...HEATERS, 'heat-pump', 'other'] as const;
export const PresentSystem = z.enum(PRESENT_SYSTEMS);
export type PresentSystem = z.infer<typeof PresentSystem>;

/** Boundary of a seasonal performance factor, H1 (compressor) to H4 (all pumps), as the SEPEMO project defines them. */
export const BOUNDARIES = ['H1', 'H2', 'H3', 'H4'] as const;
export const Boundary = z.enum(BOUNDARIES);
export type Boundary = z.infer<typeof Boundary>;

const positive = (max: number) => z.number().positive().max(max);

export const Home = z.object({
  kind: HomeKind.optional(),
  floorAreaM2: given(positive(5000)).optional(),
  ageBand: given(AgeBand).optional(),
  people: given(z.int().min(1).max(30)).optional(),
  /** Outward part is enough; it finds the climate region. */
  postcode: z.string().max(10).optional(),
  /** Climate region of the country's table, 0 to 21 in Britain, 101 to 115 in Germany; overrides the postcode. */
  regionId: z.int().min(0).max(199).optional(),
  /** Whether there is gas in the house or in the street; what burns it now says it too. */
  gasGrid: z.boolean().optional(),
});

/** When hot water is made: in set hours, in the cheap hours of the night, or as it is drawn. */
export const WaterHours = z.enum(['schedule', 'night', 'drawn']);
export type WaterHours = z.infer<typeof WaterHours>;

export const Present = z.object({
  system: PresentSystem,
  /** Nobody has said what heats the home: `system` only stands in. */
  assumed: z.boolean().optional(),
  /** Seasonal efficiency as a fraction, 0.84 for 84 %. At most 1.1. */
  efficiency: given(z.number().min(0.2).max(1.1)).optional(),
  hotWaterFrom: z.enum(['same', 'immersion', 'electric-shower']).optional(),
  /** Default: as drawn; made by electricity where the night is cheaper, the night; a heat pump, by schedule. */
  hotWaterHours: WaterHours.optional(),
  /** Gas burnt for cooking stays in the bill and keeps the gas standing charge. */
  cooksOnGas: z.boolean().optional(),
  /** Heat that no meter sees. */
  otherHeat: z.enum(['none', 'wood stove', 'open fire', 'electric heaters', 'solar thermal']).optional(),
});

/** Which estimate of the heat demand the comparison rests on. */
export const DemandChoice = z.enum(['together', 'record', 'heat-loss', 'certificate', 'floor-area']);
export type DemandChoice = z.infer<typeof DemandChoice>;

export const Heat = z.object({
  /** Heat loss at the design outdoor temperature, kW. */
  heatLossKW: given(positive(200)).optional(),
  designOutdoorC: given(z.number().min(-30).max(15)).optional(),
  /** Which of the two published sets of design temperatures the heat loss was worked out for. */
  designRule: z.enum(['99 %', '99.6 %', 'typed']).optional(),
  roomC: given(z.number().min(10).max(30)).optional(),
  /** Outdoor temperature above which no heating is needed, if known. */
  baseC: given(z.number().min(5).max(25)).optional(),
  certificateSpaceKWh: given(z.number().min(0).max(500_000)).optional(),
  certificateWaterKWh: given(z.number().min(0).max(50_000)).optional(),
  use: DemandChoice.optional(),
});

export const HotWater = z.object({
  litresPerDay: given(positive(3000)).optional(),
  hotC: given(z.number().min(35).max(80)).optional(),
  cylinderLitres: given(positive(2000)).optional(),
  cylinderLossKWhPerDay: given(z.number().min(0).max(20)).optional(),
  /** When the heat pump makes it. Default: by schedule. */
  hours: WaterHours.optional(),
  /** Weekly heating of the cylinder to 60 °C by the immersion heater. Default: yes. */
  pasteuriseWeekly: z.boolean().optional(),
});

/** Pipes in the ground. */
export const GroundArray = z.object({
  /** Boreholes, or pipes in a trench. */
  kind: z.enum(['vertical', 'horizontal']),
  depthM: given(z.number().min(0.3).max(400)).optional(),
  /** Brine entering below untouched ground after a long time at the design heat, K, for a usual size of array. */
  dropK: given(z.number().min(0).max(25)).optional(),
  /** Size against the usual one for this heat loss, 1 = usual; the drop goes the other way. */
  size: given(z.number().min(0.2).max(5)).optional(),
});

/** What the full way of working out the seasonal factor is told; everything absent is assumed and said to be. */
export const FullMachine = z.object({
  ratedPoints: given(z.array(RatedPoint).min(1).max(40)).optional(),
  /** Share of the rated COP that an installed machine reaches, 1 = as in the laboratory. */
  installedShare: given(z.number().min(0.5).max(1.1)).optional(),
  /** Most heat output at B0/W35, of an air unit at the design outdoor temperature, kW. */
  capacityKW: given(positive(200)).optional(),
  control: z.enum(['fixed-speed', 'variable']).optional(),
  /** Least share of its output that a variable machine runs at without stopping. */
  leastShare: given(z.number().min(0.1).max(1)).optional(),
  ground: GroundArray.optional(),
  /** Brine entering the machine in each month, °C; stands above `ground`. */
  brineMonthlyC: given(z.array(z.number().min(-15).max(25)).length(12)).optional(),
  flow: z.enum(['weather-compensated', 'fixed']).optional(),
  /** Heating curve set above what the emitters need, K. */
  curveShiftK: given(z.number().min(-10).max(25)).optional(),
  /** Flow less return at the design outdoor temperature, K. */
  spreadK: given(z.number().min(1).max(20)).optional(),
  sourcePumpW: given(z.number().min(0).max(5000)).optional(),
  circulatorW: given(z.number().min(0).max(2000)).optional(),
  standbyW: given(z.number().min(0).max(500)).optional(),
});
export type FullMachine = z.infer<typeof FullMachine>;

export const Machine = z.object({
  source: z.enum(['ground', 'air']),
  /** How the seasonal factors are come by: typed (quick, the default), or worked out half-hour by half-hour (full). */
  way: z.enum(['quick', 'full']).optional(),
  full: FullMachine.optional(),
  /** As on the plate; only the picture of its round and the site readings hang on it. */
  refrigerant: given(RefrigerantName).optional(),
  emitters: z.enum(['radiators', 'floor']).optional(),
  /** Seasonal performance factor for heating the rooms, at the boundary named. */
  spaceFactor: given(z.number().min(1).max(8)).optional(),
  /** The same for hot water; without it the model derives one with a wider range. */
  waterFactor: given(z.number().min(1).max(8)).optional(),
  boundary: Boundary.optional(),
  /** Design flow temperature that the factor was given for, °C. */
  flowC: given(z.number().min(25).max(75)).optional(),
  /** Share of all heat that a resistance heater gives, 0 to 1. */
  backupShare: given(z.number().min(0).max(1)).optional(),
});

const price = (most: number) => given(positive(most)).optional();
const service = given(z.number().min(0).max(5000)).optional();
/** Pence for a litre or a kilogram of what is bought by amount. */
const deliveredPrices = Object.fromEntries(DELIVERED_FUELS.map((fuel) => [priceKey(fuel), price(500)])) as {
  [key in PriceKey]: ReturnType<typeof price>;
};
const fuelServices = Object.fromEntries(FUEL_IDS.map((fuel) => [serviceKey(fuel), service])) as {
  [key in ServiceKey]: typeof service;
};

/** A price that is old or that nobody publishes, which stands all the same because somebody said so. The word holds for a quarter. */
export const StandingPrice = z.object({
  price: z.enum([...PRICED_CARRIERS, 'two-rate']),
  on: CivilDate,
  /** Why, in the words of whoever said it; printed on the paper. */
  said: z.string().max(400).optional(),
});

export const Prices = z.object({
  /** Ids in `tariffs`; without one the built-in price of the newest quarter is used and graded assumed. */
  electricityTariffId: z.string().optional(),
  gasTariffId: z.string().optional(),
  /** Two-rate tariff that storage heaters would be run on. */
  storageTariffId: z.string().optional(),
  ...deliveredPrices,
  /** What stands as assumed; without it an old price, or one that nobody publishes, goes into no written estimate. */
  stand: z.array(StandingPrice).max(10).optional(),
  /** Yearly service, pounds. */
  serviceHeatPumpGBP: service,
  ...fuelServices,
});

/**
 * What it costs to put in, for the page about the years to come. No price is assumed here: without `heatPumpGBP` only
 * running costs are shown. Growth and discount are a year and beyond general inflation, 0.02 for 2 %.
 */
export const Purchase = z.object({
  heatPumpGBP: given(z.number().min(0).max(500_000)).optional(),
  grantGBP: given(z.number().min(0).max(500_000)).optional(),
  /** What replacing the present system would cost instead. */
  replacementGBP: given(z.number().min(0).max(500_000)).optional(),
  /** Years the present system would still last; absent means that it is due now. */
  presentYearsLeft: given(z.int().min(0).max(40)).optional(),
  /** The machine again at the end of its life, while the pipes in the ground stay; absent means the whole price. */
  renewalGBP: given(z.number().min(0).max(500_000)).optional(),
  /** How long instalments would run, and the interest a year on them. */
  loanYears: given(z.int().min(1).max(40)).optional(),
  loanPerYear: given(z.number().min(0).max(0.3)).optional(),
  heatPumpLifeYears: given(z.int().min(5).max(50)).optional(),
  replacementLifeYears: given(z.int().min(5).max(50)).optional(),
  /** How far ahead is looked. */
  years: given(z.int().min(1).max(40)).optional(),
  electricityGrowthPerYear: given(z.number().min(-0.1).max(0.2)).optional(),
  fuelGrowthPerYear: given(z.number().min(-0.1).max(0.2)).optional(),
  /** One standard deviation of both growths. */
  growthSpreadPerYear: given(z.number().min(0).max(0.1)).optional(),
  discountPerYear: given(z.number().min(0).max(0.2)).optional(),
});

const OfferName = z.string().min(1).max(80);

/** Another machine offered to the same home, with what it costs to put in. */
export const Offer = z.object({ id: z.string().min(1).max(64), name: OfferName, machine: Machine, purchase: Purchase });
export type Offer = z.infer<typeof Offer>;

/** The installer's word on what stands beside the heat pump: true in, false out, absent as the home suggests. */
export const Beside = z.object(
  Object.fromEntries(OFFERED.map((system) => [system, z.boolean().optional()])) as {
    [system in (typeof OFFERED)[number]]: z.ZodOptional<z.ZodBoolean>;
  },
);

/** Of the letter about a bill: whom it greets, and whom the household may ring. Asked for before it is written. */
export const LetterNames = z.object({
  /** "Mrs Miller". */
  to: z.string().max(80).optional(),
  ringName: z.string().max(80).optional(),
  ringTelephone: z.string().max(40).optional(),
});
export type LetterNames = z.infer<typeof LetterNames>;

export const Household = z.object({
  format: z.literal('plainwarmth.household'),
  version: z.literal(1),
  id: z.string().min(1).max(64),
  name: z.string().min(1).max(120),
  /** The installer's own number for the job. */
  jobNumber: z.string().max(60).optional(),
  notes: z.string().max(20_000).optional(),
  /** Absent in households from before it was asked: Britain. */
  country: Country.optional(),
  zone: TimeZone.default('Europe/London'),
  home: Home,
  present: Present,
  heat: Heat,
  hotWater: HotWater,
  machine: Machine,
  prices: Prices,
  comfort: Comfort.optional(),
  purchase: Purchase,
  tariffs: z.array(Tariff).max(50),
  beside: Beside.optional(),
  roof: Roof.optional(),
  battery: HomeBattery.optional(),
  car: ElectricCar.optional(),
  /** The offer in hand, where there are several: its machine and purchase are those above. */
  offer: Offer.pick({ id: true, name: true }).optional(),
  otherOffers: z.array(Offer).max(11).optional(),
  /** The written estimate that the household took, and when; bills are held against it. */
  taken: z.object({ estimateId: z.string().max(64), on: CivilDate }).optional(),
  /** What was read at the plant, visit by visit. */
  siteReadings: z.array(SiteVisit).max(200).optional(),
  letter: LetterNames.optional(),
  /** Pages of the walk-through that this household is not shown, and the order of all where it is another than ours, by name. */
  walk: z
    .object({ leaveOut: z.array(z.string().max(20)).max(20), order: z.array(z.string().max(20)).max(20).optional() })
    .optional(),
  /** Customer's questions that were asked at the table, by name; their answers are printed in the household's paper. */
  asked: z.array(z.string().max(20)).max(40).optional(),
});
export type Household = z.infer<typeof Household>;

/** A household of which nothing is known yet but its name and its country. */
export function emptyHousehold(id: string, name: string, country: Country = 'GB'): Household {
  return {
    format: 'plainwarmth.household',
    version: 1,
    id,
    name,
    country,
    zone: COUNTRIES[country].zone,
    home: {},
    present: { system: 'gas-condensing', assumed: true },
    heat: {},
    hotWater: {},
    machine: { source: 'ground' },
    prices: {},
    purchase: {},
    tariffs: [],
  };
}

/**
 * What the model needs to be told about the outside world. The values, each with its source, are in `src/reference/`;
 * they come in as an argument, so that a written estimate can be reckoned again with the tables of its day.
 */
import type { Country } from './country.ts';
import type { CivilDate } from './dates.ts';
import type { DeliveredFuel, Fuel, Heater, PricedCarrier } from './heating.ts';
import type { RatedPoint } from './rated-point.ts';

export interface Sourced {
  /** Publication, table and edition. */
  readonly source: string;
  /** Whether the figure was seen in a stored public text, remembered, worked out, or is a custom of the trade. */
  readonly provenance: 'read' | 'memory' | 'computed' | 'common practice, no source';
}

export interface ClimateRegion extends Sourced {
  readonly id: number;
  readonly name: string;
  readonly monthlyMeanC: readonly number[];
  readonly latitudeN: number;
  readonly heightM: number;
}

export interface PostcodeRule {
  readonly area: string;
  readonly districtFrom?: number;
  readonly districtTo?: number;
  readonly regionId: number;
}

/** Prices of one quarter, pence incl. VAT. */
export interface PriceQuarter extends Sourced {
  readonly fuel: 'electricity' | 'gas';
  readonly from: string;
  readonly to: string;
  readonly pencePerKWh: number;
  readonly standingPencePerDay: number;
}

/** Price of a fuel bought by amount, over a month, a quarter or a year. */
export interface DeliveredPrice extends Sourced {
  readonly fuel: DeliveredFuel;
  readonly from: string;
  readonly to: string;
  /** For one of the fuel's base unit, VAT included. */
  readonly pencePerUnit: number;
  /** A mean that an office publishes, a figure of a guide page or of the trade, or one that only stands in. */
  readonly kind: 'average' | 'guide' | 'assumed';
  /** One relative standard deviation. */
  readonly spread: number;
}

export interface Value extends Sourced {
  readonly value: number;
  readonly unit: string;
}

/** A seasonal efficiency or factor with the spread met in the field (10 and 90 % points). */
export interface EfficiencyDefault extends Sourced {
  readonly middle: number;
  readonly low: number;
  readonly high: number;
}

/** Factors measured in homes, and the share of those homes that reached the designer's figure (0 to 1). */
export interface FieldFactor extends EfficiencyDefault {
  readonly count?: number;
  readonly reachedDesignShare: number;
  /** Standard deviation of ln(factor) from home to home. */
  readonly deviation: number;
}

/** Where panels face. */
export const FACINGS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
export type Facing = (typeof FACINGS)[number];
/** How much of the sky is hidden from panels. */
export const SHADINGS = ['little', 'some', 'much', 'heavy'] as const;
export type Shading = (typeof SHADINGS)[number];

/** What a law pays for electricity sent out, by the day on which panels first ran and their size. */
export interface FeedInLaw extends Sourced {
  /** Cents for a kWh before the deduction, at the start: of the first `smallKWp`, and above to `largeKWp`. */
  readonly smallCents: number;
  readonly largeCents: number;
  readonly smallKWp: number;
  readonly largeKWp: number;
  readonly lessCents: number;
  /** What is left of it each half-year from `countsFrom` on. */
  readonly keptPerHalfYear: number;
  readonly from: CivilDate;
  readonly countsFrom: CivilDate;
  /** Last day for which the rule is known. */
  readonly until: CivilDate;
}

/** The sun of a country by month, and what panels make of it. */
export interface SunFacts extends Sourced {
  /** Mean radiation on the flat by climate region, W/m², twelve months; a region that is not there takes the first. */
  readonly horizontalWPerM2: { readonly [regionId: number]: readonly number[] };
  readonly declinationDegrees: readonly number[];
  /** Nine constants for each direction. */
  readonly slope: { readonly [facing in Facing]: readonly number[] };
  readonly performance: Value;
  readonly shading: { readonly [shading in Shading]: Value };
  readonly longitudeE: Value;
  /** What is paid for a kWh sent out where nobody has said it: a mean, or what a law says. */
  readonly exportPay: Value | FeedInLaw;
}

/** The ground of Britain and the arrays laid in it. */
export interface GroundFacts {
  /** Yearly mean at 1 m over that of the air; half swing of the surface over half swing of the monthly air means. */
  readonly meanAboveAirK: Value;
  readonly swingOverAir: Value;
  /** Day of the year on which the surface is coldest. */
  readonly coldestDay: Value;
  readonly diffusivityM2PerS: Value;
  readonly gradientKPerM: Value;
  /** Usual depth, and how far entering brine lies below untouched ground after a long time at the design heat. */
  readonly arrays: {
    readonly [kind in 'vertical' | 'horizontal']: { readonly depthM: Value; readonly dropK: Value };
  };
}

/** A day and night pair that stands in until the household's own is typed. */
export interface TwoRate extends Sourced {
  readonly from: string;
  readonly to: string;
  readonly dayPence: number;
  readonly nightPence: number;
  readonly standingPencePerDay: number;
  readonly nightFrom: string;
  readonly nightTo: string;
}

export interface Reference {
  readonly country: Country;
  readonly edition: string;
  readonly regions: readonly ClimateRegion[];
  readonly postcodes: readonly PostcodeRule[];
  readonly quarters: readonly PriceQuarter[];
  readonly deliveredPrices: readonly DeliveredPrice[];
  /** Null where no pair stands in. */
  readonly twoRate: TwoRate | null;
  /** Energy in one of a fuel's base unit. */
  readonly kWhPerUnit: { readonly [fuel in DeliveredFuel]: Value };
  readonly gasVolume: {
    readonly correction: Value;
    readonly calorificMJPerM3: Value;
    readonly imperialM3PerHundredCubicFeet: Value;
  };
  readonly carbonKgPerKWh: { readonly [carrier in PricedCarrier]: Value };
  /** Seasonal efficiency for rooms and for hot water. */
  readonly efficiency: {
    readonly [heater in Heater]: {
      readonly space: EfficiencyDefault;
      readonly water: EfficiencyDefault;
      readonly ownElectricityKWh: Value;
    };
  };
  /** Measured seasonal factors at H4 by kind of machine. */
  readonly fieldFactor: {
    readonly ground: FieldFactor;
    readonly air: FieldFactor;
  };
  /** Standard deviation of ln(factor) among designers' figures. */
  readonly designDeviation: Value;
  /** Points of a usual machine, for where no data sheet is at hand. */
  readonly ratedPoints: {
    readonly [source in 'ground' | 'air']: Sourced & { readonly points: readonly RatedPoint[] };
  };
  /** Share of the rated COP that installed machines reach. */
  readonly installedShare: Value;
  readonly ground: GroundFacts;
  readonly service: { readonly [of in 'heat-pump' | 'electric' | Fuel]: Value };
  readonly hotWater: {
    readonly coldMainsC: readonly number[];
    readonly otherUseFactor: readonly number[];
    readonly behaviourFactor: readonly number[];
    readonly source: string;
  };
  readonly sun: SunFacts;
  /** Battery of which only the size is known. */
  readonly battery: { readonly powerPerKWh: Value; readonly roundTripShare: Value; readonly standbyW: Value };
  readonly car: { readonly kmPerYear: Value; readonly kWhPer100Km: Value; readonly chargerKW: Value };
  /** Weights of 48 half-hours of a home's electricity beside heating, by month, for where no meter shows them; Saturdays and Sundays apart where they are known, in the same unit. */
  readonly homeHours: Sourced & {
    readonly byMonth: readonly (readonly number[])[];
    readonly weekend?: readonly [saturday: readonly (readonly number[])[], sunday: readonly (readonly number[])[]];
    /** How far one home's half-hour strays from day to day: standard deviation over mean. */
    readonly stray: Value;
  };
  /** Heat demand by floor area and age, kWh of space heat per m² and year, with a wide spread. */
  readonly spacePerM2: readonly (EfficiencyDefault & { readonly ageBand: string })[];
  readonly designTemperatures: readonly (Sourced & {
    readonly place: string;
    readonly rule: '99 %' | '99.6 %';
    readonly outdoorC: number;
  })[];
  /** Relative standard deviations that the ranges rest on. */
  readonly spread: {
    /** Degree days of one winter about their mean. */
    readonly winter: Value;
    /** The same household's use from year to year in the same weather. */
    readonly habits: Value;
    /** Mean price of the next twelve months over today's. */
    readonly electricityPrice: Value;
    readonly gasPrice: Value;
    readonly priceCorrelation: Value;
    /** Pumps, standby and what else a machine's meter sees beside its factors; a boiler's pump and fan. */
    readonly machineExtras: Value;
    readonly boilerElectricity: Value;
    /** Price of a yearly service where nobody typed one. */
    readonly service: Value;
  };
}

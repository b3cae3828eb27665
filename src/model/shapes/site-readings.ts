/** What is read at the plant, every reading optional, and what is made of it. */
import { z } from 'zod';
import { CivilDate } from './dates.ts';
import type { Sourced } from './reference.ts';
import { RefrigerantName } from './refrigerant.ts';
import type { Told, Wording } from './told.ts';

export const PressureUnit = z.enum(['bar', 'psi', 'kPa']);
export type PressureUnit = z.infer<typeof PressureUnit>;
/** Gauge pressure counts from the air outside, absolute pressure from nothing. */
export const PressureBasis = z.enum(['gauge', 'absolute']);
export type PressureBasis = z.infer<typeof PressureBasis>;

export const GlycolKind = z.enum(['ethylene', 'propylene']);
export type GlycolKind = z.infer<typeof GlycolKind>;

const celsius = z.number().min(-40).max(160);
const PressureReading = z.object({ value: z.number().min(-1).max(6000), unit: PressureUnit, basis: PressureBasis });

/** All taken within the same few minutes of steady running; else they do not belong together. */
export const SiteReadings = z.object({
  brineInC: celsius.optional(),
  brineOutC: celsius.optional(),
  brineFlowLPerMin: z.number().positive().max(1000).optional(),
  /** The coldest brine of the season, where known; else the brine of today stands for it. */
  coldestBrineC: celsius.optional(),
  glycol: z
    .object({ kind: GlycolKind, percent: z.number().min(0).max(60), basis: z.enum(['mass', 'volume']) })
    .optional(),
  flowC: celsius.optional(),
  returnC: celsius.optional(),
  waterFlowLPerMin: z.number().positive().max(1000).optional(),
  /** Electricity into the machine at that moment. */
  inputKW: z.number().positive().max(200).optional(),
  refrigerant: RefrigerantName.optional(),
  suction: PressureReading.optional(),
  discharge: PressureReading.optional(),
  /** On the pipe as it leaves the evaporator, before the motor warms the gas. */
  suctionC: celsius.optional(),
  dischargeC: celsius.optional(),
  /** On the liquid pipe before the expansion valve. */
  liquidC: celsius.optional(),
});
export type SiteReadings = z.infer<typeof SiteReadings>;

/** One visit to the plant, kept with the household. */
export const SiteVisit = z.object({
  id: z.string().min(1).max(64),
  date: CivilDate,
  note: z.string().max(2000).optional(),
  readings: SiteReadings,
});
export type SiteVisit = z.infer<typeof SiteVisit>;
export type SiteField = keyof SiteReadings;

export type SiteQuantity =
  | 'brine-in'
  | 'brine-drop'
  | 'brine-heat'
  | 'flow'
  | 'water-spread'
  | 'water-heat'
  | 'heat-balance'
  | 'cop'
  | 'evaporating'
  | 'condensing'
  | 'evaporator-approach'
  | 'condenser-approach'
  | 'superheat'
  | 'subcooling'
  | 'discharge'
  | 'pressure-ratio'
  | 'glycol-share'
  | 'freezing'
  | 'frost-margin';
export type SiteUnit = '°C' | 'K' | 'kW' | '%' | '';

/** The usual band of a quantity. An open end is null. */
export interface Band extends Omit<Sourced, 'source'> {
  readonly source: Wording;
  readonly low: number | null;
  readonly high: number | null;
}
/** Bands that do not hang on the other readings. */
export type FixedBand =
  | 'brine-in'
  | 'brine-drop'
  | 'flow'
  | 'water-spread'
  | 'heat-balance'
  | 'evaporator-approach'
  | 'condenser-approach'
  | 'superheat'
  | 'subcooling'
  | 'glycol-share'
  | 'frost-margin';
export interface SiteBands {
  readonly fixed: Readonly<Record<FixedBand, Band>>;
  /** Share of Carnot between brine in and flow; low, high and the middle expected. */
  readonly carnotFraction: Band & { readonly low: number; readonly high: number; readonly middle: number };
  /** Ideal over real work of a sound compressor, for the discharge temperature to be expected. */
  readonly compression: Band & { readonly low: number; readonly high: number };
}

/** What an expected value is worked out from: this machine's data sheet, a usual machine of its kind, or any machine. */
export type ExpectedFrom = 'rated-points' | 'usual-machine' | 'any-machine';
export type Standing = 'inside' | 'below' | 'above' | 'no band';
export interface SiteValue {
  readonly quantity: SiteQuantity;
  readonly value: number;
  readonly unit: SiteUnit;
  readonly band: Band | null;
  readonly standing: Standing;
  /** What the model expects at these temperatures, where it does. */
  readonly expected?: number;
  readonly expectedFrom?: ExpectedFrom;
}

/** Readings that cannot be, or cannot belong together. */
export interface SiteRemark {
  readonly code:
    | 'brine-not-cooled'
    | 'flow-not-warmer'
    | 'pressure-outside-table'
    | 'pressures-swapped'
    | 'discharge-not-hotter'
    | 'glycol-outside-table'
    | 'water-outside-table'
    | 'refrigerant-missing';
  readonly where: SiteField;
  readonly found: number | string;
  readonly expected: Told;
}

/** A value that could be had, and what else to read for it. */
export interface SiteGap {
  readonly quantity: SiteQuantity;
  readonly needs: readonly SiteField[];
}

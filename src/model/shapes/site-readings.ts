/** What is read at the plant, every reading optional, and what is made of it. */
import { z } from 'zod';
import { CivilDate } from './dates.ts';
import type { Sourced } from './reference.ts';
import { RefrigerantName } from './refrigerant.ts';
import type { Told, Wording } from './told.ts';

export const PRESSURE_UNITS = ['bar', 'psi', 'kPa'] as const;
export const PressureUnit = z.enum(PRESSURE_UNITS);
export type PressureUnit = z.infer<typeof PressureUnit>;
/** Gauge pressure counts from the air outside, absolute pressure from nothing. */
export const PressureBasis = z.enum(['gauge', 'absolute']);
export type PressureBasis = z.infer<typeof PressureBasis>;

export const GlycolKind = z.enum(['ethylene', 'propylene']);
export type GlycolKind = z.infer<typeof GlycolKind>;

const celsius = z.number().min(-40).max(160);
const current = z.number().positive().max(400);
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
  /** Into the compressor, and what it takes at like temperatures: read earlier or from the data sheet. */
  currentA: current.optional(),
  usualCurrentA: current.optional(),
  /** How far an electronic expansion valve says that it is open. */
  valveOpenPercent: z.number().min(0).max(100).optional(),
  /** With the machine stopped until pressures are even: the pressure, and how warm the circuit then is. */
  restPressure: PressureReading.optional(),
  restC: celsius.optional(),
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
  | 'current'
  | 'valve-opening'
  | 'at-rest'
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
  | 'current'
  | 'valve-opening'
  | 'at-rest'
  | 'glycol-share'
  | 'frost-margin';
export interface SiteBands {
  readonly fixed: Readonly<Record<FixedBand, Band>>;
  /** Share of Carnot between brine in and flow; low, high and the middle expected. */
  readonly carnotFraction: Band & { readonly low: number; readonly high: number; readonly middle: number };
  /** Flow less return: the usual end at `coolC` and below, wider for hotter water, as radiators want it. */
  readonly waterSpread: { readonly hotHigh: number; readonly coolC: number; readonly hotC: number };
  /** Ideal over real work of the poorest sound compressor; what shell and pipe lose below the ideal [K]. */
  readonly compression: Band & { readonly low: number; readonly lostK: number };
  /** Hot gas [°C] from which oil and compressor are in danger. */
  readonly hotGas: Readonly<Record<RefrigerantName, number>>;
}

/** What an expected value is worked out from: this machine's data sheet, a usual machine of its kind, or any machine. */
export type ExpectedFrom = 'rated-points' | 'usual-machine' | 'any-machine';
export const STANDINGS = ['inside', 'below', 'above', 'no band'] as const;
export type Standing = (typeof STANDINGS)[number];
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

/** What somebody may have read or chosen wrongly, so that pressures do not fit the rest. */
export type Misreading =
  | { readonly kind: 'refrigerant'; readonly refrigerant: RefrigerantName }
  | { readonly kind: 'basis'; readonly basis: PressureBasis }
  | { readonly kind: 'unit'; readonly unit: PressureUnit }
  | { readonly kind: 'exchanged' };

/** Readings that cannot be; nothing is worked out from what is refused. */
const REFUSALS = [
  'brine-not-cooled',
  'flow-not-warmer',
  'no-pressure',
  'above-critical',
  'pressures-swapped',
  'condensing-below-flow',
  'boiling-above-brine',
  'suction-below-boiling',
  'liquid-above-condensing',
  'gas-below-condensing',
  'discharge-not-hotter',
  'cop-above-ideal',
] as const;
/** Readings that may be, but are not known here. */
const UNKNOWNS = [
  'pressure-outside-table',
  'glycol-outside-table',
  'water-outside-table',
  'refrigerant-missing',
] as const;
export interface SiteRemark {
  readonly code: (typeof REFUSALS)[number] | (typeof UNKNOWNS)[number];
  readonly where: SiteField;
  readonly found: number | string;
  readonly expected: Told;
  /** With which all would fit. */
  readonly likely?: readonly Misreading[];
}
export const isRefused = ({ code }: Pick<SiteRemark, 'code'>): boolean =>
  (REFUSALS as readonly string[]).includes(code);

/** A value that could be had, and what else to read for it. */
export interface SiteGap {
  readonly quantity: SiteQuantity;
  readonly needs: readonly SiteField[];
}

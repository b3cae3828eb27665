/** What a household has or may take beside its heating: panels on the roof, a battery, an electric car. */
import { z } from 'zod';
import { CivilDate, ClockTime } from './dates.ts';
import { given } from './given.ts';
import { FACINGS, SHADINGS } from './reference.ts';

/** Panels on one slope. */
export const PanelsOnSlope = z.object({
  kWp: z.number().positive().max(100),
  facing: z.enum(FACINGS),
  /** 0 lies flat, 90 hangs on a wall. */
  pitchDegrees: z.number().min(0).max(90),
  /** How much of the sky is hidden. */
  shading: z.enum(SHADINGS),
  /** Share of the light that shade leaves; stands above `shading`. */
  shadingFactor: z.number().positive().max(1).optional(),
});
export type PanelsOnSlope = z.infer<typeof PanelsOnSlope>;

export const Roof = z.object({
  panels: z.array(PanelsOnSlope).min(1).max(6),
  exportPencePerKWh: given(z.number().min(0).max(100)).optional(),
  /** Day on which they first ran or will: where a law pays for what is sent out, it pays by that day. */
  exportedOn: CivilDate.optional(),
});
export type Roof = z.infer<typeof Roof>;

/** A battery that holds nothing is none, so that it is left out instead. */
export const HomeBattery = z.object({
  usableKWh: z.number().positive().max(200),
  powerKW: given(z.number().positive().max(100)).optional(),
  /** Out over in, 0.85 for 85 %. */
  roundTripShare: given(z.number().min(0.3).max(1)).optional(),
  standbyW: given(z.number().min(0).max(500)).optional(),
  /** Whether it may be filled from the grid in cheap hours. Default: no. */
  fromNight: z.boolean().optional(),
});
export type HomeBattery = z.infer<typeof HomeBattery>;

export const ElectricCar = z.object({
  kmPerYear: given(z.number().min(0).max(150_000)).optional(),
  kWhPer100Km: given(z.number().min(5).max(60)).optional(),
  /** Share of its electricity that is charged at home. */
  homeShare: given(z.number().min(0).max(1)).optional(),
  chargerKW: given(z.number().min(1).max(22)).optional(),
  /** Clock times between which it stands plugged in, over midnight. */
  from: ClockTime.optional(),
  until: ClockTime.optional(),
});
export type ElectricCar = z.infer<typeof ElectricCar>;

/** What a household accepts when its heat pump moves its hours, and how much warmth its home holds. */
export const Comfort = z.object({
  /** Whether the heat pump runs in the best hours of the tariff. Default: its usual hours. */
  hours: z.enum(['usual', 'best']).optional(),
  /** How far the rooms may be below and above their usual temperature, K. */
  downK: z.number().min(0).max(5).optional(),
  upK: z.number().min(0).max(3).optional(),
  mass: z.enum(['very light', 'light', 'medium', 'heavy', 'very heavy']).optional(),
  timeConstantHours: z.number().min(3).max(400).optional(),
});
export type Comfort = z.infer<typeof Comfort>;

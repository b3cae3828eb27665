/**
 * A tariff as plain data. It is a list of dated versions, so that a price change in the middle
 * of a bill is one more version and never an overwritten number.
 */

import { z } from 'zod';
import { BANK_HOLIDAY_DIVISIONS, CivilDate, ClockTime, TimeZone, Weekday } from './dates.ts';
import { Wording } from './told.ts';

/** A weekday, or a bank holiday as a kind of day of its own; that needs `bankHolidays` on the version. */
export const DayKind = z.enum([...Weekday.options, 'bank-holiday']);
export type DayKind = z.infer<typeof DayKind>;

/**
 * When a band applies, in local clock time. `to` before `from` runs over midnight. Absent months or days mean all.
 * Months and days are those of the clock's own date: Friday 22:00 to 06:00 is the first six and the last two hours
 * of every Friday, so that each minute of a week belongs to one band whatever the neighbouring days say.
 */
export const TariffWindow = z.object({
  months: z.array(z.int().min(1).max(12)).min(1).optional(),
  days: z.array(DayKind).min(1).optional(),
  from: ClockTime,
  to: ClockTime,
});
export type TariffWindow = z.infer<typeof TariffWindow>;

/**
 * Units that cost another price until so many are used in a day or calendar month. Each step ends at `upToKWh`, counted
 * from the beginning of the day or month; what goes beyond the last costs the band's own price.
 */
export const TariffBlocks = z.object({
  per: z.enum(['day', 'month']),
  steps: z
    .array(z.object({ upToKWh: z.number().positive().max(1_000_000), pencePerKWh: z.number().min(-200).max(500) }))
    .min(1)
    .max(8),
});
export type TariffBlocks = z.infer<typeof TariffBlocks>;

/** A price and the times it applies at; `rest` is every time that no other band of the version claims. */
export const TariffBand = z.object({
  name: z.string().min(1),
  pencePerKWh: z.number().min(-200).max(500),
  times: z.union([z.literal('rest'), z.array(TariffWindow).min(1)]),
  blocks: TariffBlocks.optional(),
});
export type TariffBand = z.infer<typeof TariffBand>;

/**
 * A price for each half-hour of the local days from the first to the last: 48 a day, 46 and 50 where the clock changes.
 * The days follow each other without a hole; a null is a price that is missing, and is refused.
 */
export const PriceSeries = z.object({
  zone: TimeZone,
  days: z
    .array(z.object({ date: CivilDate, pencePerKWh: z.array(z.number().min(-1000).max(1000).nullable()).max(50) }))
    .min(1)
    .max(1200),
  /** What a half-hour costs at most, where the tariff promises that; stated as the series is. */
  mostPencePerKWh: z.number().min(0).max(1000).optional(),
});
export type PriceSeries = z.infer<typeof PriceSeries>;

/** A charge on power: on the kW agreed where they are named, else on the largest half-hour of each calendar month. */
export const DemandCharge = z.object({
  pencePerKWPerMonth: z.number().min(0).max(10_000),
  agreedKW: z.number().positive().max(1000).optional(),
});
export type DemandCharge = z.infer<typeof DemandCharge>;

export const TariffVersion = z.object({
  /** First day on which these prices hold. */
  from: CivilDate,
  /** 0 where the standing charge is by the month. */
  standingPencePerDay: z.number().min(0).max(1000),
  standingPencePerMonth: z.number().min(0).max(30_000).optional(),
  vat: z.object({ rate: z.number().min(0).max(0.3), included: z.boolean() }),
  /** With a series these are the prices of the days that it does not reach. */
  bands: z.array(TariffBand).min(1).max(24),
  series: PriceSeries.optional(),
  /** Whose bank holidays are days of their own kind; absent, a bank holiday is the weekday that it falls on. */
  bankHolidays: z.enum(BANK_HOLIDAY_DIVISIONS).optional(),
  /** The clock of its meter is never put forward: in summer its times come an hour later than on the wall. */
  staysOnWinterTime: z.boolean().optional(),
  demand: DemandCharge.optional(),
  /** Taken off by the year for a heat pump that the grid may slow down, stated as the prices are: § 14a EnWG, module 1. */
  reducedPencePerYear: z.number().min(0).max(100_000).optional(),
  /** For a heat pump on a meter of its own, stated as the prices are: taken off each of its kWh, and what that meter costs a year: § 14a EnWG, module 2. */
  ownMeter: z
    .object({
      lessPencePerKWh: z.number().min(0).max(200),
      pencePerYear: z.number().min(0).max(100_000).optional(),
    })
    .optional(),
  /** Paid for what is sent back to the grid. No VAT is charged on it. */
  exportPencePerKWh: z.number().min(-200).max(500).optional(),
});
export type TariffVersion = z.infer<typeof TariffVersion>;

export const Tariff = z.object({
  id: z.string().min(1),
  name: z.string().min(1).max(120),
  fuel: z.enum(['electricity', 'gas']),
  /** Where the prices were taken from: a bill, a letter, a published table with its edition. */
  origin: Wording,
  grade: z.enum(['measured', 'estimated', 'assumed']),
  versions: z.array(TariffVersion).min(1),
  /** Last day on which the newest version is known to hold; absent while no end is known. */
  until: CivilDate.optional(),
});
export type Tariff = z.infer<typeof Tariff>;

/** Prices as the sums take them: a tariff of the household, or one that is built in, whose names are told. */
export interface PricedBand extends Omit<TariffBand, 'name'> {
  readonly name: Wording;
}
export interface PricedVersion extends Omit<TariffVersion, 'bands'> {
  readonly bands: readonly PricedBand[];
}
export interface PricedTariff extends Omit<Tariff, 'name' | 'versions'> {
  readonly name: Wording;
  readonly versions: readonly PricedVersion[];
}

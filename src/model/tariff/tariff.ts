/**
 * A tariff as plain data. It is a list of dated versions, so that a price change in the middle
 * of a bill is one more version and never an overwritten number.
 */
import { z } from 'zod';

export const CivilDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a date written as year-month-day');
export type CivilDate = z.infer<typeof CivilDate>;
/** Local clock time, "00:30"; "24:00" is allowed as the end of a window. */
export const ClockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, 'a time written as 07:30');
export const Weekday = z.enum(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']);
export type Weekday = z.infer<typeof Weekday>;

/**
 * When a band applies, in local clock time. `to` before `from` runs over midnight. Absent months or days mean all.
 * Months and days are those of the clock's own date: Friday 22:00 to 06:00 is the first six and the last two hours
 * of every Friday, so that each minute of a week belongs to one band whatever the neighbouring days say.
 */
export const TariffWindow = z.object({
  months: z.array(z.int().min(1).max(12)).min(1).optional(),
  days: z.array(Weekday).min(1).optional(),
  from: ClockTime,
  to: ClockTime,
});
export type TariffWindow = z.infer<typeof TariffWindow>;

/** A price and the times it applies at; `rest` is every time that no other band of the version claims. */
export const TariffBand = z.object({
  name: z.string().min(1),
  pencePerKWh: z.number().min(-200).max(500),
  times: z.union([z.literal('rest'), z.array(TariffWindow).min(1)]),
});
export type TariffBand = z.infer<typeof TariffBand>;

export const TariffVersion = z.object({
  /** First day on which these prices hold. */
  from: CivilDate,
  standingPencePerDay: z.number().min(0).max(1000),
  vat: z.object({ rate: z.number().min(0).max(0.3), included: z.boolean() }),
  bands: z.array(TariffBand).min(1).max(24),
});
export type TariffVersion = z.infer<typeof TariffVersion>;

export const Tariff = z.object({
  id: z.string().min(1),
  name: z.string().min(1).max(120),
  fuel: z.enum(['electricity', 'gas']),
  /** Where the prices were taken from: a bill, a letter, a published table with its edition. */
  origin: z.string(),
  grade: z.enum(['measured', 'estimated', 'assumed']),
  versions: z.array(TariffVersion).min(1),
  /** Last day on which the newest version is known to hold; absent while no end is known. */
  until: CivilDate.optional(),
});
export type Tariff = z.infer<typeof Tariff>;

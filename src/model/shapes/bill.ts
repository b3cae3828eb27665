/** A bill as it stands on the paper: everything optional that a supplier may leave out. Money in pence. */
import { z } from 'zod';
import { CivilDate } from './dates.ts';

export const ReadingKind = z.enum(['actual', 'estimated', 'customer', 'unknown']);
export type ReadingKind = z.infer<typeof ReadingKind>;
export const MeterUnit = z.enum(['kWh', 'm³', 'hundred ft³']);
export type MeterUnit = z.infer<typeof MeterUnit>;

/** One register of the meter: "all hours", or "day" and "night". */
export const BillMeter = z.object({
  name: z.string().min(1).max(60),
  opening: z.number().min(0).optional(),
  openingKind: ReadingKind.optional(),
  closing: z.number().min(0).optional(),
  closingKind: ReadingKind.optional(),
  /** Units in the meter's own unit, where a bill prints them and no readings. */
  metered: z.number().min(0).optional(),
  /** Energy that the bill prints for the register, kWh. */
  kWh: z.number().optional(),
  /** Energy of the same days by the household's own readings, kWh; it goes before what the bill says. */
  ownKWh: z.number().min(0).optional(),
});
export type BillMeter = z.infer<typeof BillMeter>;

/** A line that charges for units. Days are those of the bill where none are named; `to` is exclusive. */
export const BillCharge = z.object({
  meter: z.string().min(1).max(60),
  from: CivilDate.optional(),
  to: CivilDate.optional(),
  kWh: z.number().optional(),
  pencePerKWh: z.number().optional(),
  pence: z.number().optional(),
});
export type BillCharge = z.infer<typeof BillCharge>;

export const BillStanding = z.object({
  from: CivilDate.optional(),
  to: CivilDate.optional(),
  days: z.number().min(0).optional(),
  pencePerDay: z.number().min(0).optional(),
  pence: z.number().optional(),
});
export type BillStanding = z.infer<typeof BillStanding>;

/** A discount or credit takes off, a charge adds; `pence` is without sign. */
export const BillAdjustment = z.object({
  kind: z.enum(['discount', 'credit', 'charge']),
  name: z.string().min(1).max(80),
  pence: z.number().min(0),
  /** Whether VAT is reckoned after it (as on a discount) or before (as on money brought forward). */
  vat: z.enum(['before', 'after']),
});
export type BillAdjustment = z.infer<typeof BillAdjustment>;

export const Bill = z.object({
  fuel: z.enum(['electricity', 'gas']),
  from: CivilDate,
  /** Exclusive: the first day that is not on the bill. */
  to: CivilDate,
  meterUnit: MeterUnit,
  /** As printed on a gas bill. */
  correction: z.number().min(0.85).max(1.15).optional(),
  calorificMJPerM3: z.number().min(30).max(50).optional(),
  meters: z.array(BillMeter).min(1).max(8),
  charges: z.array(BillCharge).min(1).max(40),
  standing: z.array(BillStanding).max(20),
  adjustments: z.array(BillAdjustment).max(20),
  vat: z.object({ included: z.boolean(), rate: z.number().min(0).max(0.3).optional(), pence: z.number().optional() }),
  /** Before VAT, where it is printed. */
  netPence: z.number().optional(),
  totalPence: z.number().optional(),
});
export type Bill = z.infer<typeof Bill>;

/** A bill as a row of a file gives it. */
export const FiledBill = z.object({
  /** Line of the file, counted from 1. */
  row: z.int(),
  bill: Bill,
});
export type FiledBill = z.infer<typeof FiledBill>;

/** A promise: a frozen snapshot of what was handed over. It is written once and never changed. */
import { z } from 'zod';
import { Series } from '../evidence/evidence.ts';
import { Household } from '../household/household.ts';
import { CivilDate } from '../tariff/tariff.ts';
import { Grade, Working } from '../working.ts';
import { Appraisal } from './appraisal.ts';

export const KeptPromise = z.object({
  id: z.string(),
  /** Counts up within one installation, from 1. */
  number: z.int(),
  householdId: z.string(),
  madeOn: z.iso.datetime(),
  note: z.string(),
  household: Household,
  evidence: z.array(Series),
  appraisal: Appraisal,
});
export type KeptPromise = z.infer<typeof KeptPromise>;

/** A later electricity bill of the heat pump, whole periods; typed or from evidence. */
export const BillCheckInput = z.object({
  promiseId: z.string(),
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  /** Units that heating and hot water used: the heat-pump sub-meter, or the whole house less `otherKWh`. */
  boughtKWh: z.number().min(0),
  /** Other electricity taken off a whole-house meter, kWh for the same days; 0 with a sub-meter. */
  otherKWh: z.number().min(0),
  meter: z.enum(['heat-pump', 'whole-house']),
  pencePerKWh: z.number().min(0),
  /** What the bill's units and service cost together for heating, if the bill says it otherwise than units × price. */
  totalPence: z.number().optional(),
  /** Degree days of those days to the promise's base temperature, if the household's own weather gives them. */
  degreeDays: z.number().min(0).optional(),
  readings: z.enum(['actual', 'estimated', 'unknown']),
});
export type BillCheckInput = z.infer<typeof BillCheckInput>;

export const BillCheckPart = z.object({
  /** "days", "price", "weather", "rest". */
  cause: z.string(),
  pence: z.number(),
  grade: Grade,
  working: Working,
});
export const BillCheck = z.object({
  id: z.string(),
  promiseId: z.string(),
  madeOn: z.string(),
  input: BillCheckInput,
  /** What the promise says for exactly those calendar days at its own prices and typical weather. */
  promisedPence: z.number(),
  /** The same put right for the actual price and weather, with its 10 and 90 % points. */
  expected: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  actualPence: z.number(),
  verdict: z.enum(['inside', 'above', 'below']),
  /** Sum to actual − promised, exactly. */
  parts: z.array(BillCheckPart),
  /** Codes of what to read or ask next. */
  next: z.array(z.string()),
});
export type BillCheck = z.infer<typeof BillCheck>;

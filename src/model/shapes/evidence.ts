/**
 * Evidence as the model sees it: energy by day or by period, temperatures by day, with what was remarked on the way in.
 * Half-hourly values stay in the store; a day's total and the mean shape of a day are enough for the sums here.
 */
import { z } from 'zod';
import { FiledBill } from './bill.ts';
import { Carrier, SeriesRole } from './carrier.ts';
import { CivilDate } from './dates.ts';
import { Wording } from './told.ts';

export { CARRIERS, Carrier, isEnergy, isTemperature, isUse, SeriesRole, standsBeside } from './carrier.ts';

/** A bill, a meter-reading period or a delivery. `to` is exclusive: the first day after it. */
export const EvidencePeriod = z.object({
  from: CivilDate,
  to: CivilDate,
  kWh: z.number(),
  /** As written on the paper, before conversion: 512 with unit "m³", 900 with unit "litre". */
  quantity: z.number().optional(),
  unit: z.string().optional(),
  costPence: z.number().optional(),
  quality: z.enum(['actual', 'estimated', 'customer', 'unknown']),
  /** Row of the file, counted from 1, for the working. */
  row: z.int().optional(),
});
export type EvidencePeriod = z.infer<typeof EvidencePeriod>;

export const Beside = z.enum(['added', 'aside', 'instead']);
export type Beside = z.infer<typeof Beside>;

/** The end of a number that a file gives of its supply point, its meter or its weather station; it tells two apart. */
export const OwnNumber = z.object({ of: z.enum(['point', 'meter', 'station']), end: z.string() });
export type OwnNumber = z.infer<typeof OwnNumber>;

export const Series = z.object({
  id: z.string(),
  evidenceId: z.string(),
  name: z.string(),
  carrier: Carrier,
  role: SeriesRole,
  /** Beside another record of its kind: a further meter whose use is added, one that counts in no sum, or one that counts on its days instead. */
  beside: Beside.optional(),
  /** Whether the installer said that it goes on in the home's others of its kind, though a number, a counter or its use says otherwise. */
  goesOn: z.boolean().optional(),
  numbers: z.array(OwnNumber).optional(),
  /** First and last reading of the counter that it was made of, in the counter's own unit. */
  counter: z.object({ first: z.number(), last: z.number(), unit: z.string() }).optional(),
  resolution: z.enum(['interval', 'day', 'period']),
  /** Minutes of one reading where resolution is `interval`. */
  intervalMinutes: z.number().optional(),
  from: CivilDate,
  /** Exclusive. */
  to: CivilDate,
  /** kWh, for temperatures the mean in °C, for water m³. */
  total: z.number(),
  /** kWh (or mean °C) by local day from `first` on; null where the day is missing or incomplete. Absent for periods. */
  days: z.object({ first: CivilDate, values: z.array(z.number().nullable()) }).optional(),
  periods: z.array(EvidencePeriod).optional(),
  /** Bills as the file prints them, with readings, prices and VAT; a bill of several registers stands with the first. */
  bills: z.array(FiledBill).optional(),
  /** Mean kWh in each of 48 half-hours of the day, by month (12 × 48), where readings are finer than a day. */
  dayShape: z.array(z.array(z.number())).optional(),
  /** The same of Mondays to Fridays and of Saturdays and Sundays (2 × 12 × 48); absent in what was kept before. */
  weekShape: z
    .array(z.array(z.array(z.number())))
    .length(2)
    .optional(),
  /** Most kWh met in each of 48 half-hours of the day, by month (12 × 48; 0 where a month has none), where readings are by the half-hour or finer. */
  dayPeaks: z.array(z.array(z.number())).optional(),
  /** How far days stray from the mean day of their month in each of 48 half-hours: standard deviation over mean; absent in what was kept before. */
  dayStray: z.array(z.number().min(0)).length(48).optional(),
  /** Readings there are, of readings there should be. */
  present: z.int(),
  expected: z.int(),
  estimatedCount: z.int(),
  /** Mean (°C) of a machine's temperature over the readings in which it made heat, and how many those are. */
  whileRunning: z.object({ meanC: z.number(), readings: z.int() }).optional(),
  /** Readings that were missing and were filled by rule, by local day; they count as estimated. A day that is one reading has one slot. */
  filled: z.array(z.object({ date: CivilDate, firstSlot: z.int(), slots: z.int(), kWh: z.number() })).optional(),
});
export type Series = z.infer<typeof Series>;

/** Whether its days were cut out of finer readings by the clock of the home. */
export const isCutByClock = ({ resolution, dayShape }: Series): boolean =>
  resolution === 'interval' || dayShape !== undefined;

/** A record without what its half-hours told of the day: sums of several, or a part of its days, do not tell that. */
export const withoutHours = ({ dayShape: _, weekShape: __, dayPeaks: ___, dayStray: ____, ...one }: Series): Series =>
  one;

/** What intake has to say about a file: data here, a sentence in `words`. */
export const Remark = z.object({
  code: z.string(),
  /** `refusal` stops the import, `question` waits for an answer, `note` is for information. */
  weight: z.enum(['note', 'question', 'refusal']),
  file: z.string(),
  /** Line of the file, counted from 1. */
  row: z.int().optional(),
  column: z.string().optional(),
  /** What the column is of, where the usual amount depends on it. */
  carrier: Carrier.optional(),
  /** As it stands in the file, or a code of the remark's own. */
  found: z.string().optional(),
  expected: z.string().optional(),
  /** The same where intake says it in words of its own. */
  foundTold: Wording.optional(),
  expectedTold: Wording.optional(),
  /** How often, where a remark stands for many rows. */
  count: z.int().optional(),
  from: z.string().optional(),
  to: z.string().optional(),
  effectKWh: z.number().optional(),
});
export type Remark = z.infer<typeof Remark>;

/** What of its file an import holds, where the file may hold more. */
export const FilePart = z.object({
  /** Sheet of a workbook of several. */
  sheet: z.string().optional(),
  /** Zero-based columns of the amounts; absent where all of it is read. */
  columns: z.array(z.int().min(0)).optional(),
});
export type FilePart = z.infer<typeof FilePart>;

/** What became of a column: used as something, or left out for a reason. */
export const ColumnUse = z.enum([
  'stamp',
  'time',
  'from',
  'to',
  'value',
  'cost',
  'quality',
  'detail',
  'kind',
  'empty',
  'money',
  'price',
  'calorific',
  'own-use',
  'weather',
  'not-energy',
  'other-time',
  'identifier',
  'marks',
  'words',
  'other-amount',
  'other-fuel',
  'to-compare',
  'sum',
  'unknown',
]);
export type ColumnUse = z.infer<typeof ColumnUse>;
export const ColumnAccount = z.object({ name: z.string(), use: ColumnUse });
export type ColumnAccount = z.infer<typeof ColumnAccount>;

/** What a comparison or a bill check uses a record for, or why it does not. */
export const RecordUse = z.enum([
  'heat',
  'heat-joined',
  'heat-register',
  'rest-of-home',
  'rest-in-part',
  'holds-heat-pump',
  'rises-with-cold',
  'too-short',
  'other-figure',
  'weather',
  'weather-aside',
  'machine',
  'joined',
  'added',
  'added-alone',
  'aside',
  'instead',
  'covered',
  'other-way',
  'sent-out',
  'made-here',
  'water',
  // Of a bill check.
  'bill-days',
  'bill-weather',
  'part-of-days',
  'causes',
  'months',
  'not-asked',
  'other-days',
  'other-energy',
  'said-otherwise',
]);
export type RecordUse = z.infer<typeof RecordUse>;
export const RecordAccount = z.object({
  name: z.string(),
  use: RecordUse,
  /** Days that it tells of the record of heating. */
  days: z.int().optional(),
});
export type RecordAccount = z.infer<typeof RecordAccount>;

/** What became of a file: every column of it and every record. */
export const FileAccount = z.object({
  fileName: z.string(),
  columns: z.array(ColumnAccount).optional(),
  records: z.array(RecordAccount),
});
export type FileAccount = z.infer<typeof FileAccount>;

/** One import, typed or from a file, with the series it gave. */
export const Evidence = z.object({
  id: z.string(),
  householdId: z.string(),
  fileName: z.string(),
  importedOn: z.string(),
  sha256: z.string(),
  part: FilePart.optional(),
  /** Clock that its days were cut by, where its readings are finer than a day. */
  zone: z.string().optional(),
  shape: z.string(),
  /** Of a table; absent in what was kept before columns were accounted for. */
  columns: z.array(ColumnAccount).optional(),
  series: z.array(Series),
  remarks: z.array(Remark),
});
export type Evidence = z.infer<typeof Evidence>;

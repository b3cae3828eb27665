/**
 * The door through which files come in: text or bytes in, typed evidence and remarks out. Pure: no clock, no disk, no database.
 * A new shape is one new file in `shapes/` that exports an `IntakeShape`, added to the list in `shapes/index.ts`.
 */
import { z } from 'zod';
import { Carrier, FilePart, Remark, Series, SeriesRole } from '../model/shapes/evidence.ts';
import { Tariff } from '../model/shapes/tariff.ts';

/**
 * Ten years of half-hours are 5 to 14 MB. A file is held as bytes, as text and as the places of its cells, and some
 * layouts as rows besides. Measured in the built host above idle, a file of 16 MB offered, previewed and kept takes
 * 130 MB of memory with its readings in two columns, 170 as XML, 210 across the day, and 265 as a counter or with rows
 * that have no date. We promise to stay within 300 whatever the file, so no larger one is taken. Reading in pieces would
 * take more, but each shape looks at the whole column to decide day and month, unit and clock.
 */
export const LARGEST_EVIDENCE_BYTES = 16 * 1024 * 1024;

export const EnergyUnit = z.enum(['Wh', 'kWh', 'MWh', 'GJ', 'm³', 'hundred ft³', 'therm', 'litre', '°C']);
export type EnergyUnit = z.infer<typeof EnergyUnit>;

/** What the installer may correct in the preview. Absent means: decide from the file. */
export const IntakeChoices = z.object({
  shape: z.string().optional(),
  /** Sheet of a workbook, by its name. */
  sheet: z.string().max(200).optional(),
  unit: EnergyUnit.optional(),
  /** Whether a stamp names the start or the end of its interval. */
  stamp: z.enum(['start', 'end']).optional(),
  /** Order of day and month in dates like 03/04/2025. */
  dayFirst: z.boolean().optional(),
  /** Clock the file is written in. `local` has both clock changes, `utc` none, `standard` is local winter time all year. */
  clock: z.enum(['local', 'utc', 'standard']).optional(),
  /** Zero-based columns. */
  columns: z
    .object({
      stamp: z.int().min(0).optional(),
      /** Clock time, where date and time stand in two columns. */
      time: z.int().min(0).optional(),
      from: z.int().min(0).optional(),
      to: z.int().min(0).optional(),
      value: z.int().min(0).optional(),
      cost: z.int().min(0).optional(),
      quality: z.int().min(0).optional(),
    })
    .optional(),
  decimal: z.enum(['.', ',']).optional(),
  /** Whether the last day written on a bill belongs to it. */
  toInclusive: z.boolean().optional(),
  /** Whether missing readings stay missing (as they do without this) or are filled by rule and marked. */
  fill: z.enum(['none', 'same weekday mean']).optional(),
  carrier: Carrier.optional(),
  role: SeriesRole.optional(),
  /** MJ per m³ as printed on the gas bill. */
  calorificMJPerM3: z.number().min(30).max(50).optional(),
  /** Sets aside what was chosen for an earlier file with the same headings. */
  anew: z.boolean().optional(),
});
export type IntakeChoices = z.infer<typeof IntakeChoices>;

/** What was understood of a file, before anything is stored. The import runs the very same function with the same choices. */
export const IntakePreview = z.object({
  fileName: z.string(),
  /** Name of the shape, or null when none fits; the remarks then say why. */
  shape: z.string().nullable(),
  /** Every shape's name, with how well it fits (0 to 1) and why, best first. */
  candidates: z.array(z.object({ shape: z.string(), fit: z.number(), reason: z.string() })),
  /** All choices as they were settled, from the file or by the installer. */
  choices: IntakeChoices,
  /** Sheets of a workbook that hold rows, in its own order; absent for other files. */
  sheets: z.array(z.string()).optional(),
  /** Column headings, or "column 1" ... where there are none. */
  columns: z.array(z.string()),
  /** The first rows as text, for the table in the preview; `line` counts from 1. */
  rows: z.array(z.object({ line: z.int(), cells: z.array(z.string()) })),
  dataRows: z.int(),
  /** What of the file was read; absent for files that are read whole. */
  part: FilePart.optional(),
  series: z.array(Series),
  /** The first days as a picture: local time (ISO without offset) and kWh or °C of each reading; at most 7 days of the first series. */
  firstDays: z.array(z.object({ at: z.string(), value: z.number().nullable() })),
  remarks: z.array(Remark),
  tariff: Tariff.optional(),
});
export type IntakePreview = z.infer<typeof IntakePreview>;

/** Half-hourly or hourly readings of one series as the store keeps them: one array a local day. */
export interface IntervalDays {
  readonly seriesId: string;
  readonly intervalMinutes: number;
  /** Local civil day, "2025-03-30"; values in order of time, NaN where missing; 46 or 50 half-hours on clock-change days. */
  readonly days: readonly { readonly date: string; readonly values: Float64Array }[];
}

export interface IntakeResult {
  readonly preview: IntakePreview;
  readonly intervals: readonly IntervalDays[];
}

export interface IntakeContext {
  /** IANA zone of the household. */
  readonly zone: string;
  /** Latest day a reading may bear without a remark, "2026-11-25"; the caller's clock, since intake has none. */
  readonly today: string;
  readonly kWhPerLitre: { readonly oil: number; readonly lpg: number };
  readonly gasVolume: {
    readonly correction: number;
    readonly calorificMJPerM3: number;
    readonly imperialM3PerHundredCubicFeet: number;
  };
  /** Called now and then with the share done; throw from it to cancel. */
  readonly onProgress?: (share: number) => void;
}

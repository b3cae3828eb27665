/** What comes out of a file: the preview, and the readings as the store keeps them. */

import { z } from 'zod';
import { ColumnUse, FilePart, RecordAccount, Remark, Series } from '../../model/shapes/evidence.ts';
import { Tariff } from '../../model/shapes/tariff.ts';
import { Wording } from '../../model/shapes/told.ts';
import { IntakeChoices } from './choices.ts';
import { PaperReading } from './paper-reading.ts';

/** What was understood of a file, before anything is stored. The import runs the very same function with the same choices. */
export const IntakePreview = z.object({
  fileName: z.string(),
  /** Name of the shape, or null when none fits; the remarks then say why. */
  shape: z.string().nullable(),
  /** Every shape's name, with how well it fits (0 to 1) and why, best first. */
  candidates: z.array(z.object({ shape: z.string(), fit: z.number(), reason: Wording })),
  /** All choices as they were settled, from the file or by the installer. */
  choices: IntakeChoices,
  /** Sheets of a workbook that hold rows, in its own order; absent for other files. */
  sheets: z.array(z.string()).optional(),
  /** Column headings, or "column 1" ... where there are none. */
  columns: z.array(z.string()),
  /** What became of each column of a table, one entry a column; its name as it may stand on a paper. */
  uses: z.array(z.object({ column: z.int(), name: z.string(), use: ColumnUse })).optional(),
  /** The first rows as text, for the table in the preview; `line` counts from 1. */
  rows: z.array(z.object({ line: z.int(), cells: z.array(z.string()) })),
  dataRows: z.int(),
  /** What of the file was read; absent for files that are read whole. */
  part: FilePart.optional(),
  series: z.array(Series),
  /** What a comparison would use each record for, beside what is kept; said by the desk. */
  records: z.array(RecordAccount).optional(),
  /** The first days as a picture: local time (ISO without offset) and kWh or °C of each reading; at most 7 days of the first series. */
  firstDays: z.array(z.object({ at: z.string(), value: z.number().nullable() })),
  remarks: z.array(Remark),
  tariff: Tariff.optional(),
  /** Of a bill on paper. */
  paper: PaperReading.optional(),
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
  /** Words of the file that are somebody's, which nothing that is kept or printed repeats. */
  readonly people?: readonly string[];
}

/**
 * One household with everything that belongs to it, as one JSON file: what `household.export` writes and
 * `household.import` reads. `household-file.schema.json` is made from this schema.
 */
import { Buffer } from 'node:buffer';
import { z } from 'zod';
import { type IntervalDays, PAPER_SHAPE } from '../intake/intake.ts';
import { BillCheck } from '../model/shapes/bill-check.ts';
import { CivilDate } from '../model/shapes/dates.ts';
import { Evidence } from '../model/shapes/evidence.ts';
import { Household } from '../model/shapes/household.ts';
import { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import type { OnDamage } from '../store/sealed.ts';
import type { Store } from '../store/store.ts';
import { orDamage } from './damage-notes.ts';
import { strictly } from './loose-section.ts';

/** Readings by local day; null where one is missing. */
const FileReadings = z.object({
  seriesId: z.string(),
  intervalMinutes: z.number().positive(),
  days: z.array(z.object({ date: CivilDate, values: z.array(z.number().nullable()) })),
});

/** Every field that any version has written is known here; what is not known was misspelt and would be left out in silence. */
export const HouseholdFile = strictly(
  z.object({
    format: z.literal('plainwarmth.household-file'),
    /** 1 was before a promise was called a written estimate; `old-names.ts` reads it. */
    version: z.literal(2),
    household: Household,
    evidence: z.array(
      z.object({
        import: Evidence,
        /** The file as it was imported, base64; null for what was typed, for papers, and where it stays behind. */
        rawFile: z.base64().nullable(),
        readings: z.array(FileReadings),
      }),
    ),
    estimates: z.array(WrittenEstimate),
    checks: z.array(BillCheck),
  }),
);
export type HouseholdFile = z.infer<typeof HouseholdFile>;

/** Everything kept of one household; imports that were taken back stay behind. */
export interface WholeHousehold {
  readonly household: Household;
  readonly evidence: readonly {
    readonly import: Evidence;
    readonly rawFile: Uint8Array | null;
    readonly intervals: readonly IntervalDays[];
  }[];
  readonly estimates: readonly WrittenEstimate[];
  readonly checks: readonly BillCheck[];
}

const EVER = { from: '1900-01-01', to: '9999-12-31' } as const;

interface Gathering {
  /** Hears of what is damaged and therefore left out; without it, it is a fault. */
  readonly onDamage?: OnDamage;
  /** Whether the files that were imported are wanted. */
  readonly withFiles: boolean;
}

export function gatherHousehold(
  store: Store,
  household: Household,
  { onDamage, withFiles }: Gathering,
): WholeHousehold {
  const whole = <T>(read: () => T): T | undefined => orDamage(read, onDamage);
  return {
    household,
    evidence: store.listEvidence(household.id, onDamage).map((evidence) => ({
      import: evidence,
      rawFile: withFiles ? (whole(() => store.readRawFile(evidence.id)) ?? null) : null,
      intervals: evidence.series
        .map(({ id }) => whole(() => store.readIntervals(id, EVER.from, EVER.to)))
        .filter((intervals) => intervals !== undefined),
    })),
    estimates: store.listEstimates(household.id, onDamage),
    checks: store.listChecks(household.id, onDamage),
  };
}

export function writeHouseholdFile(whole: WholeHousehold): HouseholdFile {
  return {
    format: 'plainwarmth.household-file',
    version: 2,
    household: whole.household,
    evidence: whole.evidence.map(({ import: evidence, rawFile, intervals }) => ({
      import: evidence,
      // Names and the numbers of accounts stand on a paper, so it never leaves with the household.
      rawFile: rawFile && evidence.shape !== PAPER_SHAPE ? Buffer.from(rawFile).toString('base64') : null,
      readings: intervals.map(({ seriesId, intervalMinutes, days }) => ({
        seriesId,
        intervalMinutes,
        days: days.map(({ date, values }) => ({
          date,
          values: Array.from(values, (value) => (Number.isNaN(value) ? null : value)),
        })),
      })),
    })),
    estimates: [...whole.estimates],
    checks: [...whole.checks],
  };
}

export function readHouseholdFile(file: HouseholdFile): WholeHousehold {
  return {
    household: file.household,
    evidence: file.evidence.map(({ import: evidence, rawFile, readings }) => ({
      import: evidence,
      rawFile: rawFile === null ? null : new Uint8Array(Buffer.from(rawFile, 'base64')),
      intervals: readings.map(({ seriesId, intervalMinutes, days }) => ({
        seriesId,
        intervalMinutes,
        days: days.map(({ date, values }) => ({
          date,
          values: Float64Array.from(values, (value) => value ?? Number.NaN),
        })),
      })),
    })),
    estimates: file.estimates,
    checks: file.checks,
  };
}

/**
 * What the services know of the store. SQL stays behind it, since PostgreSQL is to stand here one day.
 * Every method that writes is one transaction; the ids are made by the caller.
 */

import type { IntervalDays } from '../intake/intake.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import type { Tariff } from '../model/shapes/tariff.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';

export interface StoredHousehold {
  readonly household: Household;
  readonly revision: number;
  readonly archived: boolean;
  readonly changedOn: string;
}

export interface HouseholdRow extends StoredHousehold {
  readonly evidenceCount: number;
  readonly estimateCount: number;
}

export interface Store {
  listHouseholds(query: { find?: string; archived: boolean }): HouseholdRow[];
  readHousehold(id: string): StoredHousehold | undefined;
  createHousehold(household: Household, now: string): StoredHousehold;
  /** Answers undefined when `revision` is not the stored one: somebody else saved in between. */
  saveHousehold(household: Household, revision: number, now: string): StoredHousehold | undefined;
  archiveHousehold(id: string, archived: boolean, now: string): void;
  eraseHousehold(id: string): void;

  /** `onProgress` hears the share done; thrown from, nothing is stored. */
  addEvidence(
    evidence: Evidence,
    rawFile: Uint8Array | null,
    intervals: readonly IntervalDays[],
    onProgress?: (share: number) => void,
  ): void;
  listEvidence(householdId: string): Evidence[];
  /** Imports that were taken back and can be brought again. */
  listUndone(householdId: string): Evidence[];
  findEvidence(evidenceId: string): Evidence | undefined;
  findEvidenceOfSeries(seriesId: string): Evidence | undefined;
  readRawFile(evidenceId: string): Uint8Array | undefined;
  undoEvidence(evidenceId: string): void;
  /** Throws StoreFault `already-there` when the same file has been imported again meanwhile. */
  restoreEvidence(evidenceId: string): Evidence | undefined;
  readIntervals(seriesId: string, from: string, to: string): IntervalDays | undefined;

  nextEstimateNumber(): number;
  addEstimate(estimate: WrittenEstimate): void;
  listEstimates(householdId: string): WrittenEstimate[];
  readEstimate(id: string): WrittenEstimate | undefined;
  addCheck(check: BillCheck, householdId: string): void;
  listChecks(householdId: string): BillCheck[];
  readCheck(id: string): BillCheck | undefined;
  dropCheck(id: string): void;

  readSettings(): unknown;
  writeSettings(settings: unknown): void;
  /** What was chosen for files of one layout; undefined where nothing is remembered. */
  readLayout(key: string): unknown;
  /** Undefined forgets it. */
  writeLayout(key: string, layout: unknown): void;
  listShelf(): Tariff[];
  keepOnShelf(tariff: Tariff): void;
  dropFromShelf(id: string): void;

  /** All that `work` writes is one transaction: kept together, or not at all when it throws. */
  together<T>(work: () => T): T;
  backup(path: string): Promise<void>;
  close(): void;
}

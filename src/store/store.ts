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
import type { Looked } from './find-damage.ts';
import type { OnDamage } from './sealed.ts';

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
  /** Of its file. */
  readonly path: string;
  /** A list leaves damaged pieces out where `onDamage` hears of them; everywhere else they are a StoreFault `damaged`. */
  listHouseholds(query: { find?: string; archived: boolean }, onDamage?: OnDamage): HouseholdRow[];
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
  listEvidence(householdId: string, onDamage?: OnDamage): Evidence[];
  /** Imports that were taken back and can be brought again. */
  listUndone(householdId: string, onDamage?: OnDamage): Evidence[];
  findEvidence(evidenceId: string): Evidence | undefined;
  findEvidenceOfSeries(seriesId: string): Evidence | undefined;
  readRawFile(evidenceId: string): Uint8Array | undefined;
  /** Puts the file in the place of its damaged like; false where there is none. */
  mendRawFile(bytes: Uint8Array): boolean;
  /** Puts readings in the place of damaged ones, when they are to the last bit what was stored; else answers false. */
  mendReadings(readings: IntervalDays): boolean;
  undoEvidence(evidenceId: string): void;
  /** Throws StoreFault `already-there` when the same file has been imported again meanwhile. */
  restoreEvidence(evidenceId: string): Evidence | undefined;
  readIntervals(seriesId: string, from: string, to: string): IntervalDays | undefined;

  nextEstimateNumber(): number;
  /** Of the one with the highest number; undefined where there is none. */
  lastEstimate(): { readonly number: number; readonly madeOn: string } | undefined;
  addEstimate(estimate: WrittenEstimate): void;
  listEstimates(householdId: string, onDamage?: OnDamage): WrittenEstimate[];
  readEstimate(id: string): WrittenEstimate | undefined;
  addCheck(check: BillCheck, householdId: string): void;
  /** Puts the check in the place of the one with its id. */
  saveCheck(check: BillCheck): void;
  listChecks(householdId: string, onDamage?: OnDamage): BillCheck[];
  readCheck(id: string): BillCheck | undefined;
  dropCheck(id: string): void;

  readSettings(): unknown;
  writeSettings(settings: unknown): void;
  /** When copies were last saved and the pieces last checked. */
  readUpkeep(): unknown;
  writeUpkeep(upkeep: unknown): void;
  /** The signed file of prices and reference values that was brought in, as text. */
  readValues(): unknown;
  /** Null forgets it. */
  writeValues(file: string | null): void;
  /** What was chosen for files of one layout; undefined where nothing is remembered. */
  readLayout(key: string): unknown;
  /** Undefined forgets it. */
  writeLayout(key: string, layout: unknown): void;
  listShelf(): Tariff[];
  keepOnShelf(tariff: Tariff): void;
  dropFromShelf(id: string): void;

  /** All that `work` writes is one transaction: kept together, or not at all when it throws. */
  together<T>(work: () => T): T;
  /** Holds every piece against its hash, yielding after each. */
  findDamage(): Iterable<Looked>;
  /** One hash of everything: two stores that hold the same have the same. */
  sealOfAll(): string;
  /** Writes everything, as it is now, into a file of its own that must not exist yet. Throws the system's reason or StoreFault. */
  saveCopy(path: string): void;
  /** Puts everything in the database at `path`, which has the newest schema, in the place of what is here; all or nothing. */
  replaceBy(path: string): void;
  close(): void;
}

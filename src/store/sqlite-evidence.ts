/** Evidence in SQLite: the import's document, its raw file, and its readings. */
import type { Database } from 'better-sqlite3';
import type { IntervalDays } from '../intake/intake.ts';
import { toCivilDate, toDayNumber } from '../model/calendar/civil.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import { packDays, unpackDays } from './pack-days.ts';
import { packFile, unpackFile } from './pack-file.ts';
import { seal } from './seal.ts';
import { damaged, type Names, type OnDamage, readSealed, readWhole, type SealedRow } from './sealed.ts';
import type { Store } from './store.ts';
import { type Damage, StoreFault } from './store-fault.ts';

type EvidencePart = Pick<
  Store,
  | 'addEvidence'
  | 'listEvidence'
  | 'listUndone'
  | 'findEvidence'
  | 'findEvidenceOfSeries'
  | 'readRawFile'
  | 'mendRawFile'
  | 'mendReadings'
  | 'undoEvidence'
  | 'restoreEvidence'
  | 'readIntervals'
>;

interface DocumentRow extends SealedRow {
  id: string;
}

interface SeriesRow {
  evidenceId: string;
  minutes: number | null;
  sealed: string;
  readings: Uint8Array;
}

/** Nothing where the series was not read in steps. */
const pack = (interval: IntervalDays | undefined): Uint8Array =>
  packDays(
    (interval?.days ?? [])
      .map(({ date, values }) => ({
        day: toDayNumber(date),
        readings: new Uint8Array(values.buffer, values.byteOffset, values.byteLength),
      }))
      .sort((a, b) => a.day - b.day),
  );

/** The files as they were brought, packed, each under the hash of its bytes. */
function openRawFiles(database: Database, names: Names) {
  const add = database.prepare('INSERT OR REPLACE INTO raw_files (sha256, size, packed) VALUES (?, ?, ?)');
  const byHash = database.prepare<[string], { packed: Buffer }>('SELECT packed FROM raw_files WHERE sha256 = ?');
  const replace = database.prepare('UPDATE raw_files SET packed = ? WHERE sha256 = ?');
  const ofEvidence = database.prepare<[string], { packed: Buffer; sha256: string }>(
    'SELECT packed, raw_files.sha256 FROM raw_files JOIN evidence ON evidence.raw_sha256 = raw_files.sha256 WHERE evidence.id = ?',
  );

  /** Undefined when it is no longer what its name, the hash of it, says. */
  function unpackWhole(packed: Uint8Array, sha256: string): Uint8Array | undefined {
    try {
      const bytes = unpackFile(packed);
      return seal(bytes) === sha256 ? bytes : undefined;
    } catch {
      return undefined;
    }
  }
  function isKept(sha256: string): boolean {
    const row = byHash.get(sha256);
    return row !== undefined && unpackWhole(row.packed, sha256) !== undefined;
  }

  return {
    /** A file that was damaged is replaced by its like. */
    keep(sha256: string, bytes: Uint8Array): void {
      if (!isKept(sha256)) add.run(sha256, bytes.byteLength, packFile(bytes));
    },
    read(evidenceId: string): Uint8Array | undefined {
      const row = ofEvidence.get(evidenceId);
      if (!row) return undefined;
      const bytes = unpackWhole(row.packed, row.sha256);
      if (!bytes) throw damaged({ kind: 'raw-file', ...names.evidence(evidenceId) });
      return bytes;
    },
    mend(bytes: Uint8Array): boolean {
      const sha256 = seal(bytes);
      if (!byHash.get(sha256) || isKept(sha256)) return false;
      return replace.run(packFile(bytes), sha256).changes === 1;
    },
  };
}

/** A row for each series, with its readings where it was read in steps. */
function openReadings(database: Database, names: Names) {
  const addSeries = database.prepare(
    'INSERT INTO series (id, evidence_id, interval_minutes, sealed, readings) VALUES (?, ?, ?, ?, ?)',
  );
  const seriesRow = database.prepare<[string], SeriesRow>(
    'SELECT evidence_id AS evidenceId, interval_minutes AS minutes, sealed, readings FROM series WHERE id = ?',
  );
  const replace = database.prepare('UPDATE series SET readings = ? WHERE id = ? AND sealed = ?');

  return {
    add(seriesId: string, evidenceId: string, interval: IntervalDays | undefined): void {
      const readings = pack(interval);
      addSeries.run(seriesId, evidenceId, interval?.intervalMinutes ?? null, seal(readings), readings);
    },
    /** False when they are not those that were kept. */
    mend(interval: IntervalDays): boolean {
      const readings = pack(interval);
      return replace.run(readings, interval.seriesId, seal(readings)).changes === 1;
    },
    read(seriesId: string, from: CivilDate, to: CivilDate): IntervalDays | undefined {
      const series = seriesRow.get(seriesId);
      if (!series || series.minutes === null) return undefined;
      if (seal(series.readings) !== series.sealed)
        throw damaged({ kind: 'readings', ...names.evidence(series.evidenceId) });
      const [first, end] = [toDayNumber(from), toDayNumber(to)];
      return {
        seriesId,
        intervalMinutes: series.minutes,
        days: unpackDays(series.readings)
          .filter(({ day }) => day >= first && day < end)
          .map(({ day, values }) => ({ date: toCivilDate(day), values })),
      };
    },
  };
}

/** Packing the raw file takes about this share of storing. */
const PACKING_SHARE = 0.5;

export function openEvidence(database: Database, names: Names): EvidencePart {
  const addEvidence = database.prepare(
    `INSERT INTO evidence (id, place, household_id, document, sealed, sha256, raw_sha256)
     VALUES (?, (SELECT coalesce(max(place), 0) + 1 FROM evidence), ?, ?, ?, ?, ?)`,
  );
  const list = database.prepare<[string, number], DocumentRow>(
    'SELECT id, document, sealed FROM evidence WHERE household_id = ? AND undone = ? ORDER BY place',
  );
  const byId = database.prepare<[string], DocumentRow>('SELECT id, document, sealed FROM evidence WHERE id = ?');
  const bySeries = database.prepare<[string], DocumentRow>(
    `SELECT evidence.id, evidence.document, evidence.sealed FROM evidence JOIN series ON series.evidence_id = evidence.id WHERE series.id = ?`,
  );
  const setUndone = database.prepare('UPDATE evidence SET undone = ? WHERE id = ?');
  const rawFiles = openRawFiles(database, names);
  const readings = openReadings(database, names);

  const nameOf = (row: DocumentRow): Damage => ({ kind: 'import', ...names.evidence(row.id) });
  const read = (row: DocumentRow) => readSealed<Evidence>(row, () => nameOf(row));
  const readAll = (rows: readonly DocumentRow[], onDamage: OnDamage | undefined) => readWhole(rows, read, onDamage);

  function add(
    evidence: Evidence,
    rawFile: Uint8Array | null,
    intervals: readonly IntervalDays[],
    onProgress?: (share: number) => void,
  ): void {
    onProgress?.(0);
    if (rawFile) rawFiles.keep(evidence.sha256, rawFile);
    onProgress?.(PACKING_SHARE);
    const document = JSON.stringify(evidence);
    const rawSha256 = rawFile ? evidence.sha256 : null;
    addEvidence.run(evidence.id, evidence.householdId, document, seal(document), evidence.sha256, rawSha256);
    for (const [at, series] of evidence.series.entries()) {
      const interval = intervals.find(({ seriesId }) => seriesId === series.id);
      readings.add(series.id, evidence.id, interval);
      onProgress?.(PACKING_SHARE + ((1 - PACKING_SHARE) * (at + 1)) / evidence.series.length);
    }
  }

  return {
    addEvidence: add,
    listEvidence: (householdId, onDamage) => readAll(list.all(householdId, 0), onDamage),
    listUndone: (householdId, onDamage) => readAll(list.all(householdId, 1), onDamage),
    findEvidence(id) {
      const row = byId.get(id);
      return row && read(row);
    },
    findEvidenceOfSeries(seriesId) {
      const row = bySeries.get(seriesId);
      return row && read(row);
    },
    readRawFile: rawFiles.read,
    mendRawFile: rawFiles.mend,
    mendReadings: readings.mend,
    readIntervals: readings.read,
    undoEvidence(evidenceId) {
      setUndone.run(1, evidenceId);
    },
    restoreEvidence(evidenceId) {
      try {
        setUndone.run(0, evidenceId);
      } catch (error) {
        if ((error as { code?: string }).code !== 'SQLITE_CONSTRAINT_UNIQUE') throw error;
        throw new StoreFault({ code: 'already-there', path: evidenceId });
      }
      const row = byId.get(evidenceId);
      return row && read(row);
    },
  };
}

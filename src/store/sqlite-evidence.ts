/** Evidence in SQLite: the import's document, its raw file, and a row for every day of readings. */
import type { Database } from 'better-sqlite3';
import type { IntervalDays } from '../intake/intake.ts';
import { toCivilDate, toDayNumber } from '../model/calendar/civil.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import { packFile, unpackFile } from './pack-file.ts';
import { fromBlob, type StoredDay, seal, sealDays, toBlob } from './seal.ts';
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
  key: number;
  evidenceId: string;
  minutes: number | null;
  sealed: string;
}

/** In the order in which they are sealed and read. */
const rowsOf = (interval: IntervalDays | undefined): StoredDay[] =>
  (interval?.days ?? [])
    .map(({ date, values }) => ({ day: toDayNumber(date), readings: toBlob(values) }))
    .sort((a, b) => a.day - b.day);

/** Days stored by one statement, in half the time of one for each, and between two looks at whether to go on. */
const DAYS_A_STEP = 256;

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

/** A row for each series, and one for every day of those that were read in steps; a series is sealed over its days. */
function openReadings(database: Database, names: Names) {
  const addSeries = database.prepare(
    'INSERT INTO series (id, evidence_id, interval_minutes, sealed) VALUES (?, ?, ?, ?)',
  );
  const insertDays = (count: number) =>
    database.prepare(
      `INSERT INTO days (series_key, day, readings) VALUES ${new Array(count).fill('(?, ?, ?)').join(', ')}`,
    );
  const insertStep = insertDays(DAYS_A_STEP);
  const seriesRow = database.prepare<[string], SeriesRow>(
    'SELECT key, evidence_id AS evidenceId, interval_minutes AS minutes, sealed FROM series WHERE id = ?',
  );
  const days = database.prepare<[number], StoredDay>(
    'SELECT day, readings FROM days WHERE series_key = ? ORDER BY day',
  );
  const dropDays = database.prepare('DELETE FROM days WHERE series_key = ?');

  function addDays(key: number | bigint, rows: readonly StoredDay[], onStep?: (days: number) => void): void {
    for (let at = 0; at < rows.length; at += DAYS_A_STEP) {
      const some = rows.slice(at, at + DAYS_A_STEP);
      onStep?.(some.length);
      const insert = some.length === DAYS_A_STEP ? insertStep : insertDays(some.length);
      insert.run(some.flatMap(({ day, readings }) => [key, day, readings]));
    }
  }

  /** Readings and raw files are checked whole, whatever span is asked for. */
  function readDays(seriesId: string): { series: SeriesRow; rows: StoredDay[] } | undefined {
    const series = seriesRow.get(seriesId);
    if (!series || series.minutes === null) return undefined;
    const rows = days.all(series.key);
    if (sealDays(rows) !== series.sealed) throw damaged({ kind: 'readings', ...names.evidence(series.evidenceId) });
    return { series, rows };
  }

  return {
    /** @param onStep hears before each step how many days it holds */
    add(
      seriesId: string,
      evidenceId: string,
      interval: IntervalDays | undefined,
      onStep: (days: number) => void,
    ): void {
      const rows = rowsOf(interval);
      const minutes = interval?.intervalMinutes ?? null;
      addDays(addSeries.run(seriesId, evidenceId, minutes, sealDays(rows)).lastInsertRowid, rows, onStep);
    },
    /** False when they are not those that were kept. */
    mend(interval: IntervalDays): boolean {
      const series = seriesRow.get(interval.seriesId);
      const rows = rowsOf(interval);
      if (!series || sealDays(rows) !== series.sealed) return false;
      dropDays.run(series.key);
      addDays(series.key, rows);
      return true;
    },
    read(seriesId: string, from: CivilDate, to: CivilDate): IntervalDays | undefined {
      const found = readDays(seriesId);
      if (!found) return undefined;
      const [first, end] = [toDayNumber(from), toDayNumber(to)];
      return {
        seriesId,
        intervalMinutes: found.series.minutes!,
        days: found.rows
          .filter(({ day }) => day >= first && day < end)
          .map(({ day, readings }) => ({ date: toCivilDate(day), values: fromBlob(readings) })),
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
    const allDays = intervals.reduce((sum, { days }) => sum + days.length, 0);
    let stored = 0;
    const tell = (days: number) => {
      onProgress?.(PACKING_SHARE + ((1 - PACKING_SHARE) * stored) / allDays);
      stored += days;
    };
    onProgress?.(0);
    if (rawFile) rawFiles.keep(evidence.sha256, rawFile);
    const document = JSON.stringify(evidence);
    const rawSha256 = rawFile ? evidence.sha256 : null;
    addEvidence.run(evidence.id, evidence.householdId, document, seal(document), evidence.sha256, rawSha256);
    for (const series of evidence.series) {
      const interval = intervals.find(({ seriesId }) => seriesId === series.id);
      readings.add(series.id, evidence.id, interval, tell);
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

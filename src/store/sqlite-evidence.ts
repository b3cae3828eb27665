/** Evidence in SQLite: the import's document, its raw file, and a row for every day of readings. */
import type { Database } from 'better-sqlite3';
import type { IntervalDays } from '../intake/intake.ts';
import { toCivilDate, toDayNumber } from '../model/calendar/civil.ts';
import type { Evidence } from '../model/shapes/evidence.ts';
import { fromBlob, toBlob } from './day-blobs.ts';
import { packFile, unpackFile } from './pack-file.ts';
import type { Store } from './store.ts';
import { StoreFault } from './store-fault.ts';

type EvidencePart = Pick<
  Store,
  | 'addEvidence'
  | 'listEvidence'
  | 'listUndone'
  | 'findEvidence'
  | 'findEvidenceOfSeries'
  | 'readRawFile'
  | 'undoEvidence'
  | 'restoreEvidence'
  | 'readIntervals'
>;

interface DocumentRow {
  document: string;
}

const read = (row: DocumentRow | undefined) => (row ? (JSON.parse(row.document) as Evidence) : undefined);

/** Days stored between two looks at whether to go on. */
const DAYS_A_STEP = 256;
/** Packing the raw file takes about this share of storing. */
const PACKING_SHARE = 0.7;

export function openEvidence(database: Database): EvidencePart {
  const addRaw = database.prepare('INSERT OR IGNORE INTO raw_files (sha256, size, deflated) VALUES (?, ?, ?)');
  const addEvidence = database.prepare(
    `INSERT INTO evidence (id, place, household_id, document, sha256, raw_sha256)
     VALUES (?, (SELECT coalesce(max(place), 0) + 1 FROM evidence), ?, ?, ?, ?)`,
  );
  const addSeries = database.prepare('INSERT INTO series (id, evidence_id, interval_minutes) VALUES (?, ?, ?)');
  const addDay = database.prepare('INSERT INTO days (series_key, day, readings) VALUES (?, ?, ?)');
  const hasRaw = database.prepare<[string], { size: number }>('SELECT size FROM raw_files WHERE sha256 = ?');
  const list = database.prepare<[string, number], DocumentRow>(
    'SELECT document FROM evidence WHERE household_id = ? AND undone = ? ORDER BY place',
  );
  const byId = database.prepare<[string], DocumentRow>('SELECT document FROM evidence WHERE id = ?');
  const bySeries = database.prepare<[string], DocumentRow>(
    `SELECT evidence.document FROM evidence JOIN series ON series.evidence_id = evidence.id WHERE series.id = ?`,
  );
  const raw = database.prepare<[string], { deflated: Buffer }>(
    'SELECT deflated FROM raw_files JOIN evidence ON evidence.raw_sha256 = raw_files.sha256 WHERE evidence.id = ?',
  );
  const setUndone = database.prepare('UPDATE evidence SET undone = ? WHERE id = ?');
  const seriesRow = database.prepare<[string], { key: number; minutes: number | null }>(
    'SELECT key, interval_minutes AS minutes FROM series WHERE id = ?',
  );
  const days = database.prepare<[number, number, number], { day: number; readings: Buffer }>(
    'SELECT day, readings FROM days WHERE series_key = ? AND day >= ? AND day < ? ORDER BY day',
  );

  function add(
    evidence: Evidence,
    rawFile: Uint8Array | null,
    intervals: readonly IntervalDays[],
    onProgress?: (share: number) => void,
  ): void {
    const allDays = intervals.reduce((sum, { days }) => sum + days.length, 0);
    let stored = 0;
    if (rawFile && !hasRaw.get(evidence.sha256)) {
      const packed = packFile(rawFile, (share) => onProgress?.(share * PACKING_SHARE));
      addRaw.run(evidence.sha256, rawFile.byteLength, packed);
    }
    const document = JSON.stringify(evidence);
    addEvidence.run(evidence.id, evidence.householdId, document, evidence.sha256, rawFile ? evidence.sha256 : null);
    for (const series of evidence.series) {
      const interval = intervals.find(({ seriesId }) => seriesId === series.id);
      const key = addSeries.run(series.id, evidence.id, interval?.intervalMinutes ?? null).lastInsertRowid;
      for (const day of interval?.days ?? []) {
        if (stored++ % DAYS_A_STEP === 0) onProgress?.(PACKING_SHARE + ((1 - PACKING_SHARE) * stored) / allDays);
        addDay.run(key, toDayNumber(day.date), toBlob(day.values));
      }
    }
  }

  return {
    addEvidence: database.transaction(add),
    listEvidence: (householdId) => list.all(householdId, 0).map((row) => read(row)!),
    listUndone: (householdId) => list.all(householdId, 1).map((row) => read(row)!),
    findEvidence: (id) => read(byId.get(id)),
    findEvidenceOfSeries: (seriesId) => read(bySeries.get(seriesId)),
    readRawFile(evidenceId) {
      const row = raw.get(evidenceId);
      return row ? unpackFile(row.deflated) : undefined;
    },
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
      return read(byId.get(evidenceId));
    },
    readIntervals(seriesId, from, to) {
      const series = seriesRow.get(seriesId);
      if (!series || series.minutes === null) return undefined;
      const rows = days.all(series.key, toDayNumber(from), toDayNumber(to));
      return {
        seriesId,
        intervalMinutes: series.minutes,
        days: rows.map(({ day, readings }) => ({ date: toCivilDate(day), values: fromBlob(readings) })),
      };
    },
  };
}

/**
 * The schema, step by step. A step that has been released is never changed; the next change is a new step at the end.
 * `user_version` of the file counts the steps done.
 */
export interface Migration {
  readonly version: number;
  readonly what: string;
  readonly sql: string;
}

export const MIGRATIONS: readonly Migration[] = [
  {
    version: 1,
    what: 'households, their evidence, promises and checks; settings; tariffs kept for other households',
    sql: `
      CREATE TABLE households (
        id TEXT PRIMARY KEY,
        document TEXT NOT NULL CHECK (json_valid(document)),
        -- Name, job number and postcode in small letters, for finding.
        searched TEXT NOT NULL,
        revision INTEGER NOT NULL,
        archived INTEGER NOT NULL DEFAULT 0,
        changed_on TEXT NOT NULL
      ) STRICT;

      -- One raw file is kept once, however often it is imported.
      CREATE TABLE raw_files (
        sha256 TEXT PRIMARY KEY,
        size INTEGER NOT NULL,
        deflated BLOB NOT NULL
      ) STRICT;

      CREATE TABLE evidence (
        id TEXT PRIMARY KEY,
        place INTEGER NOT NULL,
        household_id TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
        document TEXT NOT NULL CHECK (json_valid(document)),
        sha256 TEXT NOT NULL,
        raw_sha256 TEXT REFERENCES raw_files (sha256),
        undone INTEGER NOT NULL DEFAULT 0
      ) STRICT;
      CREATE INDEX evidence_of_household ON evidence (household_id, place);
      CREATE INDEX evidence_of_raw_file ON evidence (raw_sha256);
      -- The same file counts once for a household; an import taken back does not count.
      CREATE UNIQUE INDEX evidence_once ON evidence (household_id, sha256) WHERE undone = 0;

      CREATE TABLE series (
        key INTEGER PRIMARY KEY,
        id TEXT NOT NULL UNIQUE,
        evidence_id TEXT NOT NULL REFERENCES evidence (id) ON DELETE CASCADE,
        interval_minutes REAL
      ) STRICT;
      CREATE INDEX series_of_evidence ON series (evidence_id);

      -- One local day of readings: 64-bit floating point, little-endian, in order of time.
      CREATE TABLE days (
        series_key INTEGER NOT NULL REFERENCES series (key) ON DELETE CASCADE,
        day INTEGER NOT NULL,
        readings BLOB NOT NULL,
        PRIMARY KEY (series_key, day)
      ) STRICT, WITHOUT ROWID;

      CREATE TABLE promises (
        id TEXT PRIMARY KEY,
        household_id TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
        number INTEGER NOT NULL,
        document TEXT NOT NULL CHECK (json_valid(document))
      ) STRICT;
      CREATE INDEX promises_of_household ON promises (household_id, number);
      CREATE TRIGGER promises_never_change BEFORE UPDATE ON promises
      BEGIN SELECT RAISE (ABORT, 'a promise never changes'); END;

      CREATE TABLE checks (
        id TEXT PRIMARY KEY,
        place INTEGER NOT NULL,
        household_id TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
        promise_id TEXT NOT NULL REFERENCES promises (id),
        document TEXT NOT NULL CHECK (json_valid(document))
      ) STRICT;
      CREATE INDEX checks_of_household ON checks (household_id, place);

      CREATE TABLE settings (
        name TEXT PRIMARY KEY,
        value TEXT NOT NULL CHECK (json_valid(value))
      ) STRICT;

      CREATE TABLE shelf (
        id TEXT PRIMARY KEY,
        document TEXT NOT NULL CHECK (json_valid(document))
      ) STRICT;
    `,
  },
  {
    version: 2,
    what: 'another sheet or another column of one file is an import of its own',
    sql: `
      DROP INDEX evidence_once;
      CREATE UNIQUE INDEX evidence_once
        ON evidence (household_id, sha256, coalesce(json_extract(document, '$.part'), '')) WHERE undone = 0;
    `,
  },
  {
    version: 3,
    what: 'what was called a promise is called a written estimate; its figures stay as they were',
    sql: `
      DROP TRIGGER promises_never_change;
      DROP INDEX promises_of_household;
      ALTER TABLE promises RENAME TO estimates;
      ALTER TABLE checks RENAME COLUMN promise_id TO estimate_id;
      CREATE INDEX estimates_of_household ON estimates (household_id, number);
      CREATE TRIGGER estimates_never_change BEFORE UPDATE ON estimates
      BEGIN SELECT RAISE (ABORT, 'a written estimate never changes'); END;

      UPDATE settings SET name = 'last estimate number' WHERE name = 'last promise number';
      -- Only a key is followed by a colon right after its quotation mark: in a text that mark would be escaped.
      UPDATE checks SET document = replace(replace(replace(replace(document,
        '"promiseId":', '"estimateId":'),
        '"promisedPence":', '"estimatedPence":'),
        '"promisedKWh":', '"estimatedKWh":'),
        '"promisedStandingPencePerDay":', '"estimatedStandingPencePerDay":');
    `,
  },
  {
    version: 4,
    what: 'every piece carries the hash of what was stored',
    sql: `
      ALTER TABLE households ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE evidence ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE series ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE estimates ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE checks ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE settings ADD COLUMN sealed TEXT NOT NULL DEFAULT '';
      ALTER TABLE shelf ADD COLUMN sealed TEXT NOT NULL DEFAULT '';

      UPDATE households SET sealed = seal(document);
      UPDATE evidence SET sealed = seal(document);
      UPDATE series SET sealed = (
        SELECT seal_days(day, readings)
        FROM (SELECT day, readings FROM days WHERE series_key = series.key ORDER BY day)
      );
      DROP TRIGGER estimates_never_change;
      UPDATE estimates SET sealed = seal(document);
      CREATE TRIGGER estimates_never_change BEFORE UPDATE ON estimates
      BEGIN SELECT RAISE (ABORT, 'a written estimate never changes'); END;
      UPDATE checks SET sealed = seal(document);
      UPDATE settings SET sealed = seal(value);
      UPDATE shelf SET sealed = seal(document);
    `,
  },
  {
    version: 5,
    what: 'raw files are packed by Zstandard too, which earlier programs take for damaged ones',
    sql: 'ALTER TABLE raw_files RENAME COLUMN deflated TO packed;',
  },
  {
    version: 6,
    what: 'the readings of a series lie in one piece, of which the hash was already',
    sql: `
      ALTER TABLE series ADD COLUMN readings BLOB NOT NULL DEFAULT x'';
      UPDATE series SET readings = (
        SELECT join_days(day, readings)
        FROM (SELECT day, days.readings FROM days WHERE series_key = series.key ORDER BY day)
      );
      DROP TABLE days;
    `,
  },
];

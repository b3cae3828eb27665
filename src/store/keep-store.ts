/**
 * What stands around every method of the store: a write is one transaction that counts itself; before it is said to be
 * kept, the file is looked for where it should be; and what SQLite throws for the disk's reasons becomes a StoreFault.
 */
import { existsSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Database } from 'better-sqlite3';
import { checkCopy } from './check-copy.ts';
import { freeName } from './open-database.ts';
import { StoreFault, withFaults } from './store-fault.ts';
import { type Counted, openTally, toHead } from './tally.ts';

/** Beyond this the log is carried over into the file; SQLite's own measure of 1,000 pages. */
const LONG_LOG_BYTES = 1000 * 4096;
/** More heads than this never come together: each is a carrying-over that failed. */
const MOST_HEADS = 12;

export interface Keeper {
  /** Answers what `work` answers, once it is kept. Inside another write it is a part of that one. */
  write<T>(work: () => T): T;
  read<T>(work: () => T): T;
  /** Carries the log over into the file, so that nothing of what was erased lives on in it. */
  carryOver(): void;
  close(): void;
}

/** Of a database that no file holds, nothing is kept. */
const keepInMemory = (database: Database): Keeper => ({
  write: (work) => database.transaction(work)(),
  read: (work) => work(),
  carryOver: () => undefined,
  close: () => database.close(),
});

export const keepIn = (database: Database, path: string, counted: Counted): Keeper =>
  path === ':memory:' ? keepInMemory(database) : keepInFile(database, path, counted);

function keepInFile(database: Database, path: string, counted: Counted): Keeper {
  const countHouseholds = database.prepare<[], number>('SELECT count(*) FROM households').pluck();
  const sizeOf = () => statSync(path, { throwIfNoEntry: false })?.size ?? 0;
  const identity = (file: string) => {
    const facts = statSync(file, { bigint: true, throwIfNoEntry: false });
    return facts === undefined ? undefined : `${facts.dev} ${facts.ino}`;
  };
  const own = identity(path);
  /** What the file had at least: it gets shorter by nobody but us. */
  let leastSize = sizeOf();
  const ownLog = () => identity(`${path}-wal`);
  const log = ownLog();
  const tally = openTally(path);
  let { count, heads } = counted;
  let fault: StoreFault | null = null;
  let isClosed = false;

  function note(): void {
    heads = heads.slice(-MOST_HEADS);
    tally.write({ count, heads, households: countHouseholds.get() ?? 0 });
  }

  function carryOver(): void {
    heads = [...new Set([...heads, count])];
    note();
    const [answer] = database.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
    if (answer?.busy === 0) heads = [count];
    leastSize = sizeOf();
    note();
  }

  /** What was taken back left the log as long as it had grown; carried over, it gives its room back. */
  function makeRoom(): void {
    try {
      carryOver();
    } catch {
      // There is no room even for that; the log keeps what is in it.
    }
  }

  /**
   * Whoever deleted the file left us its bytes as long as it is open, and of one that was emptied the memory may hold
   * all: if it is whole, it is written anew where it was.
   */
  function rescue(): boolean {
    if (!existsSync(dirname(path)) || (existsSync(path) && identity(path) !== own)) return false;
    const anew = freeName(path, 'written-anew');
    try {
      const households = countHouseholds.get() ?? 0;
      database.prepare('VACUUM INTO ?').run(anew);
      const { isSound, damage } = checkCopy(anew);
      if (!isSound || (damage.length > 0 && existsSync(path))) throw new Error('Not all of it is left.');
      database.close();
      rmSync(`${path}-wal`, { force: true });
      renameSync(anew, path);
      heads = [count];
      tally.write({ count, heads, households });
      return true;
    } catch {
      rmSync(anew, { force: true });
      return false;
    }
  }

  function refuseGone(): void {
    if (fault === null && (identity(path) !== own || sizeOf() < leastSize))
      fault = new StoreFault({ code: 'gone', path, rescued: rescue() });
    if (fault !== null) throw fault;
  }

  function keep<T>(work: () => T): T {
    const result = database.transaction(() => {
      const answer = work();
      database.pragma(`application_id = ${toHead(count + 1)}`);
      return answer;
    })();
    count++;
    refuseGone();
    note();
    // A log that somebody deleted takes what is in it along, unless it is carried over at once.
    if (ownLog() !== log || statSync(`${path}-wal`).size > LONG_LOG_BYTES) carryOver();
    return result;
  }

  note();
  return {
    write(work) {
      const isPart = database.inTransaction;
      try {
        return withFaults(path, () => {
          refuseGone();
          return isPart ? database.transaction(work)() : keep(work);
        });
      } catch (error) {
        if (!isPart && error instanceof StoreFault && error.data.code === 'disk-full') makeRoom();
        throw error;
      }
    },
    read(work) {
      if (fault !== null) throw fault;
      return withFaults(path, work);
    },
    carryOver: () => withFaults(path, carryOver),
    close() {
      if (isClosed) return;
      isClosed = true;
      try {
        if (fault === null && identity(path) === own) carryOver();
      } catch {
        // What is in the log is kept there, and carried over the next time.
      } finally {
        database.close();
        tally.close();
      }
    },
  };
}

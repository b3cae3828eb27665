/** One household file reckoned through: evidence, comparison, and where asked the promise and the bill check. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { DeskError, LARGEST_FILE_BYTES, refuseLargeFile } from '../desk/contract.ts';
import { billOf, gatherInput } from '../desk/gather-input.ts';
import type { WholeHousehold } from '../desk/household-file.ts';
import { readingsInMemory } from '../desk/join/meter-readings.ts';
import { seriesInMemory } from '../desk/join/stored-series.ts';
import { makePromise, takeSnapshot } from '../desk/keep-promise.ts';
import { parseHouseholdInput } from '../desk/parse-household.ts';
import { runCheck } from '../desk/run-check.ts';
import type { Series } from '../model/shapes/evidence.ts';
import type { BillCheck, KeptPromise } from '../model/shapes/promise.ts';

export interface Reckoned {
  readonly whole: WholeHousehold;
  readonly series: readonly Series[];
  /** The comparison as a promise of its day; nothing is stored. */
  readonly promise: KeptPromise;
  readonly check: BillCheck | null;
}

export function readOrRefuse(path: string): Uint8Array {
  if (!existsSync(path)) {
    throw new DeskError({
      code: 'no-such-file',
      message: `There is no file ${path}.`,
      where: path,
      remedy: 'Correct the path.',
    });
  }
  return readWithin(path);
}

/** The size is asked first: a file beyond the limit is refused before any of it is held. */
function readWithin(path: string): Uint8Array {
  const { size } = statSync(path);
  if (size > LARGEST_FILE_BYTES) throw refuseLargeFile(basename(path), size);
  return new Uint8Array(readFileSync(path));
}

/** Identifiers count up, so that the same file gives the same answer to the last character. */
function countedIds(): () => string {
  let last = 0;
  return () => `reckoned-${++last}`;
}

export interface ReckonTask {
  readonly withCheck: boolean;
  /** A document is handed over, so that it has to be fit to be promised. */
  readonly withDocument: boolean;
}

export function reckonHousehold(path: string, today: string, { withCheck, withDocument }: ReckonTask): Reckoned {
  const input = parseHouseholdInput(readOrRefuse(path), basename(path));
  const asOf = (withCheck ? input.promise?.asOf : undefined) ?? input.asOf ?? today;
  const newId = countedIds();
  const madeOn = `${asOf}T12:00:00.000Z`;
  const whole = gatherInput({
    input,
    readBeside: (name) => {
      const beside = join(dirname(path), name);
      return existsSync(beside) ? readWithin(beside) : undefined;
    },
    today,
    now: madeOn,
    newId,
  });
  const series = seriesInMemory(whole);
  const reckonDay = withCheck || withDocument ? makePromise : takeSnapshot;
  const promise = reckonDay({
    id: newId(),
    number: 1,
    madeOn,
    asOf,
    note: input.promise?.note ?? '',
    household: whole.household,
    series: withCheck && input.promise ? seriesInMemory(whole, input.promise.asOf) : series,
  });
  if (!withCheck) return { whole, series, promise, check: null };
  if (!input.check) {
    throw new DeskError({
      code: 'no-check',
      message: `${basename(path)} holds no bill to check.`,
      where: `${basename(path)}, check`,
      remedy: 'Add “check” with the dates, the units and the price of the bill.',
    });
  }
  const bill = billOf(input.check, promise.id, series);
  const known = { household: whole.household, series, readings: readingsInMemory(whole) };
  return {
    whole,
    series,
    promise,
    check: runCheck({ id: newId(), madeOn: `${today}T12:00:00.000Z`, promise, bill, ...known }),
  };
}

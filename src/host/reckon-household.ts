/** One household file reckoned through: evidence, comparison, and where asked the promise and the bill check. */
import { basename, dirname } from 'node:path';
import { DeskError } from '../desk/desk-error.ts';
import { billOf, gatherInput } from '../desk/gather-input.ts';
import type { WholeHousehold } from '../desk/household-file.ts';
import { readingsInMemory } from '../desk/join/meter-readings.ts';
import { seriesInMemory } from '../desk/join/stored-series.ts';
import { makePromise, takeSnapshot } from '../desk/keep-promise.ts';
import { parseHouseholdInput } from '../desk/parse-household.ts';
import { readFilesOf, readRegularFile } from '../desk/regular-file.ts';
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
  const input = parseHouseholdInput(readRegularFile(path), basename(path));
  const asOf = (withCheck ? input.promise?.asOf : undefined) ?? input.asOf ?? today;
  const newId = countedIds();
  const madeOn = `${asOf}T12:00:00.000Z`;
  const whole = gatherInput({
    input,
    readBeside: readFilesOf(dirname(path)),
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

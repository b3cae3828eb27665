/** One household file reckoned through: evidence, comparison, and where asked the estimate and the bill check. */
import { basename, dirname } from 'node:path';
import { DeskError } from '../desk/desk-error.ts';
import { billOf, gatherInput } from '../desk/gather-input.ts';
import type { WholeHousehold } from '../desk/household-file.ts';
import { inHandByName } from '../desk/household-input.ts';
import { readingsInMemory } from '../desk/join/meter-readings.ts';
import { importsInMemory, seriesInMemory } from '../desk/join/stored-series.ts';
import { estimateForCheck, makeEstimate, takeSnapshot } from '../desk/make-estimate.ts';
import { parseHouseholdInput } from '../desk/parse-household.ts';
import { type JudgedPlant, judgeVisits } from '../desk/plant.ts';
import type { ReadEvidence } from '../desk/ports.ts';
import { readFilesOf, readRegularFile } from '../desk/regular-file.ts';
import { refuseFaultyBill, runCheck } from '../desk/run-check.ts';
import { readEvidence as readHere } from '../intake/read-evidence.ts';
import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Series } from '../model/shapes/evidence.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { say } from '../words/say.ts';

export interface Reckoned {
  readonly whole: WholeHousehold;
  readonly series: readonly Series[];
  /** The comparison as a written estimate of its day; nothing is stored. */
  readonly estimate: WrittenEstimate;
  readonly check: BillCheck | null;
  /** The visits to the plant, judged; null where there was none. */
  readonly plant: JudgedPlant | null;
}

/** Identifiers count up, so that the same file gives the same answer to the last character. */
function countedIds(): () => string {
  let last = 0;
  return () => `reckoned-${++last}`;
}

const noonOf = (date: string): string => `${date}T12:00:00.000Z`;

export interface ReckonTask {
  readonly withCheck: boolean;
  /** A document is handed over, so that it has to be fit to be promised. */
  readonly withDocument: boolean;
  /** Name of the offer to be in hand; the one that the file says where absent. */
  readonly offer?: string;
  /** How files are read: here, or in a thread that has eyes for pictures. */
  readonly readEvidence?: ReadEvidence;
}

export async function reckonHousehold(
  path: string,
  today: string,
  { withCheck, withDocument, offer, readEvidence = readHere }: ReckonTask,
): Promise<Reckoned> {
  const input = parseHouseholdInput(readRegularFile(path), basename(path));
  const asOf = (withCheck ? input.estimate?.asOf : undefined) ?? input.asOf ?? today;
  const newId = countedIds();
  const madeOn = noonOf(asOf);
  const gathered = await gatherInput({
    input,
    readBeside: readFilesOf(dirname(path)),
    today,
    now: madeOn,
    newId,
    readEvidence,
  });
  const whole = { ...gathered, household: inHandByName(gathered.household, offer, '--offer') };
  const series = seriesInMemory(whole);
  const { estimate: asked, check } = input;
  const now = { imports: importsInMemory(whole), series };
  const then = asked ? { imports: importsInMemory(whole, asked.asOf), series: seriesInMemory(whole, asked.asOf) } : now;
  const { household } = whole;
  const day = { id: newId(), number: 1, note: asked?.note ?? '', household };
  // What the file says of an estimate and a bill is held to its rules on every run, whether or not it is asked for.
  // Only a bill is compared, so that the prices of other ways of heating do not matter.
  const make = withCheck && !withDocument ? estimateForCheck : makeEstimate;
  const promised = asked ? make({ ...day, madeOn: noonOf(asked.asOf), asOf: asked.asOf, ...then }) : null;
  const reckonDay = withCheck || withDocument ? make : takeSnapshot;
  const estimate = withCheck && promised ? promised : reckonDay({ ...day, madeOn, asOf, ...(withCheck ? then : now) });
  const known = { household, series, readings: check ? readingsInMemory(whole) : [] };
  const bill = check ? billOf(check, estimate.id, known) : null;
  if (bill) refuseFaultyBill(promised ?? estimate, bill);
  const plant = judgeVisits(estimate);
  if (!withCheck) return { whole, series, estimate, check: null, plant };
  if (!bill) {
    throw new DeskError({
      code: 'no-check',
      message: say('{file} holds no bill to check.', { file: basename(path) }),
      where: `${basename(path)}, check`,
      remedy: say('Add “check” with the dates, the kWh and the price of the bill.'),
    });
  }
  return {
    whole,
    series,
    estimate,
    plant,
    check: runCheck({ id: newId(), madeOn: noonOf(today), estimate, bill, ...known }),
  };
}

/** Puts an invented household into an empty store, through the same intake as an import by hand. */
import { join } from 'node:path';
import { readEvidence } from '../intake/read-evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import { billOf, gatherInput } from './gather-input.ts';
import { readingsInMemory } from './join/meter-readings.ts';
import { importsInMemory, seriesInMemory } from './join/stored-series.ts';
import { makeEstimate } from './make-estimate.ts';
import { parseHouseholdInput } from './parse-household.ts';
import type { DeskPorts } from './ports.ts';
import { readFilesOf, readRegularFile } from './regular-file.ts';
import { runCheck } from './run-check.ts';
import { storeHousehold } from './store-household.ts';

export type SamplePorts = Pick<DeskPorts, 'store' | 'today' | 'now' | 'newId'>;

/** `folder` holds household.json and the raw files that it names. Throws DeskError when it cannot be read. */
export async function loadSample(folder: string, { store, today, now, newId }: SamplePorts): Promise<Household> {
  const input = parseHouseholdInput(readRegularFile(join(folder, 'household.json')), 'household.json');
  const whole = await gatherInput({
    readEvidence,
    input,
    readBeside: readFilesOf(folder),
    today: today(),
    now: now(),
    newId,
  });
  const { household } = whole;
  const known = { household, series: seriesInMemory(whole), readings: readingsInMemory(whole) };
  const estimates = input.estimate
    ? [
        makeEstimate({
          id: newId(),
          number: store.nextEstimateNumber(),
          madeOn: `${input.estimate.asOf}T12:00:00.000Z`,
          asOf: input.estimate.asOf,
          note: input.estimate.note ?? '',
          household,
          imports: importsInMemory(whole, input.estimate.asOf),
          series: seriesInMemory(whole, input.estimate.asOf),
        }),
      ]
    : [];
  const checks = estimates.flatMap((estimate) =>
    input.check
      ? [
          runCheck({
            id: newId(),
            madeOn: now(),
            estimate,
            bill: billOf(input.check, estimate.id, known),
            ...known,
          }),
        ]
      : [],
  );
  const [first] = estimates;
  const taken = input.taken && first ? { taken: { estimateId: first.id, on: input.taken.on } } : {};
  storeHousehold(store, { ...whole, household: { ...household, ...taken }, estimates, checks }, now());
  return household;
}

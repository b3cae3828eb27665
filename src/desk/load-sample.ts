/** Puts an invented household into an empty store, through the same intake as an import by hand. */
import { join } from 'node:path';
import type { Household } from '../model/shapes/household.ts';
import { billOf, gatherInput } from './gather-input.ts';
import { readingsInMemory } from './join/meter-readings.ts';
import { seriesInMemory } from './join/stored-series.ts';
import { makePromise } from './keep-promise.ts';
import { parseHouseholdInput } from './parse-household.ts';
import type { DeskPorts } from './ports.ts';
import { readFilesOf, readRegularFile } from './regular-file.ts';
import { runCheck } from './run-check.ts';
import { storeHousehold } from './store-household.ts';

export type SamplePorts = Pick<DeskPorts, 'store' | 'today' | 'now' | 'newId'>;

/** `folder` holds household.json and the raw files that it names. Throws DeskError when it cannot be read. */
export function loadSample(folder: string, { store, today, now, newId }: SamplePorts): Household {
  const input = parseHouseholdInput(readRegularFile(join(folder, 'household.json')), 'household.json');
  const whole = gatherInput({
    input,
    readBeside: readFilesOf(folder),
    today: today(),
    now: now(),
    newId,
  });
  const { household } = whole;
  const known = { household, series: seriesInMemory(whole), readings: readingsInMemory(whole) };
  const promises = input.promise
    ? [
        makePromise({
          id: newId(),
          number: store.nextPromiseNumber(),
          madeOn: `${input.promise.asOf}T12:00:00.000Z`,
          asOf: input.promise.asOf,
          note: input.promise.note ?? '',
          household,
          series: seriesInMemory(whole, input.promise.asOf),
        }),
      ]
    : [];
  const checks = promises.flatMap((promise) =>
    input.check
      ? [
          runCheck({
            id: newId(),
            madeOn: now(),
            promise,
            bill: billOf(input.check, promise.id, known.series),
            ...known,
          }),
        ]
      : [],
  );
  storeHousehold(store, { ...whole, promises, checks }, now());
  return household;
}

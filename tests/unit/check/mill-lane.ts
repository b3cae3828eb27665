/** The invented household with a complaint, in a store in memory: a heater left on from 8 January to 18 February 2026. */
import { resolve } from 'node:path';
import type { Call, Output, RequestName } from '../../../src/desk/contract.ts';
import { loadSample } from '../../../src/desk/load-sample.ts';
import { openDesk } from '../desk/open-desk.ts';

const folder = resolve(import.meta.dirname, '../../../sample-bills/mill-lane');

export async function openMillLane() {
  const { desk, store, ports } = openDesk();
  const { id } = await loadSample(folder, ports);
  const call: Call = <N extends RequestName>(name: N, input: unknown) =>
    desk.handle(name, input, {}) as Promise<Output<N>>;
  return { call, store, householdId: id };
}

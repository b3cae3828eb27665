/** What a log says of the machine's water, beside what is typed or assumed for it. */
import type { Evidence, Series } from '../model/shapes/evidence.ts';
import { degrees, grouped } from './numbers.ts';
import { say } from './say.ts';

/** Of the log that was kept last; null where none has both the flow and the heat made by the reading. */
export function loggedFlowSentence(evidence: readonly Evidence[]): string | null {
  const flow = evidence
    .flatMap(({ series }) => series)
    .findLast(({ carrier, whileRunning }) => carrier === 'flow-temperature' && whileRunning !== undefined);
  if (!flow?.whileRunning) return null;
  const { meanC, readings } = flow.whileRunning;
  return say(
    'The log shows {mean} on average while the heat pump was heating, hot water included, in {readings} readings. The coldest day usually needs more.',
    { mean: degrees(meanC), readings: grouped(readings) },
  );
}

/** Ends the line of a kept record: "31.2 °C on average, 39.4 °C while it made heat". */
export function temperatureTotal({ total, whileRunning }: Series): string {
  const mean = say('{mean} on average', { mean: degrees(total) });
  return whileRunning
    ? `${mean}, ${say('{mean} while the heat pump was heating', { mean: degrees(whileRunning.meanC) })}`
    : mean;
}

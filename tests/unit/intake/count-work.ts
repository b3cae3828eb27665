/**
 * A thread that reads files and counts what that takes: patterns run, and texts cut out of the file. A thread of its own,
 * since a pattern that is counted runs slower from then on for all that share its thread.
 */
import { parentPort, workerData } from 'node:worker_threads';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';

export interface Work {
  readonly patterns: number;
  readonly texts: number;
  /** Readings of the first record. */
  readonly present: number;
}

const { files, context } = workerData as { files: readonly string[]; context: IntakeContext };
const [run, cut] = [RegExp.prototype.exec, String.prototype.slice];
let [patterns, texts] = [0, 0];
RegExp.prototype.exec = function (text) {
  patterns++;
  return run.call(this, text);
};
String.prototype.slice = function (from, to) {
  texts++;
  return cut.call(this, from, to);
};

parentPort!.postMessage(
  files.map((text): Work => {
    const bytes = new TextEncoder().encode(text);
    [patterns, texts] = [0, 0];
    const { preview } = readFile('made.csv', bytes, {}, context);
    return { patterns, texts, present: preview.series[0]?.present ?? 0 };
  }),
);

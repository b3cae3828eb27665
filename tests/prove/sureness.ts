/**
 * What "about 19 in 20 sure" is worth: of the findings named with such a figure, how many are true of their made
 * household. Each thing is there in 3 households of 10 (weekly pasteurisation and wrong estimates in 4).
 */
import { findInReadings } from '../../src/model/findings/find-in-readings.ts';
import { TRUE_FINDINGS } from '../../src/model/findings/measured.ts';
import { DETECTORS } from './false-alarms.ts';
import { drawCase } from './finding-case.ts';
import type { ProofTable } from './table.ts';

export function proveSureness(count = 1000, seed = 3): ProofTable {
  const classes = TRUE_FINDINGS.map(() => ({ named: 0, right: 0, sure: 0 }));
  for (let made = 0; made < count; made++) {
    const one = drawCase(seed * 100_000 + made);
    for (const { code, sure } of findInReadings(one.input)) {
      const able = DETECTORS.filter((detector) => detector.code === code && detector.applies(one));
      if (able.length === 0) continue;
      const of = classes[TRUE_FINDINGS.findLastIndex((least) => sure >= least.sure)]!;
      of.named++;
      of.sure += sure;
      if (able.some((detector) => detector.present(one) || detector.alsoTrue?.(one))) of.right++;
    }
  }
  const rows = classes.map(({ named, right, sure }, i) => {
    const limit = TRUE_FINDINGS[i]!;
    // A small run may miss the limit by chance: one standard error, nothing at full size.
    const slack = Math.sqrt((limit.leastTrue * (1 - limit.leastTrue)) / named);
    const pass = right / named >= limit.leastTrue - slack && right >= sure - named * slack;
    return { pass, cells: [limit.sure, named, (sure / named).toFixed(3), (right / named).toFixed(3)] };
  });
  return {
    title: `How sure findings say they are, and how many were true, over ${count} made households`,
    columns: ['sure from', 'named', 'sure in the mean', 'true', 'limit', 'pass'],
    rows: rows.map(({ cells, pass }, i) => [...cells, `≥ ${TRUE_FINDINGS[i]!.leastTrue}`, pass ? 'yes' : 'NO']),
    within: rows.every(({ pass }) => pass),
  };
}

/** Bills on paper: what is proved is right, what is not is asked, and scrambled numbers prove nothing. */
import { chanceOf } from './chance.ts';
import { LAYOUTS, layOutBill } from './paper/lay-out.ts';
import { holdAgainst, readLaidOut, scramble, tableOfBacks } from './paper/read-back.ts';
import type { ProofTable } from './table.ts';

const SCRAMBLED = 1000;
/** Of the scrambled bills: those with two values of the core proved. */
const MOST_SCRAMBLED = 2;
const CORE: ReadonlySet<string> = new Set(['period', 'use', 'total', 'standing-charge']);

/** @param count bills, over all layouts in turn */
export function provePaper(count = 20 * LAYOUTS): ProofTable {
  const backs = Array.from({ length: count }, (_, seed) => {
    const made = layOutBill(seed, seed);
    return holdAgainst(made, readLaidOut(made.pages));
  });
  return tableOfBacks(`Bills on paper: ${count} bills in ${LAYOUTS} layouts`, backs);
}

/** Every digit drawn anew: whatever is then proved is proved by chance. */
export function proveScrambled(count = SCRAMBLED): ProofTable {
  let two = 0;
  let any = 0;
  let kept = 0;
  for (let seed = 0; seed < count; seed++) {
    const { pages } = layOutBill(seed, 50_000 + seed);
    const { paper } = readLaidOut(scramble(pages, chanceOf(seed)));
    const proved = (paper?.values ?? []).filter(({ state, kind }) => state === 'proved' && kind !== 'fuel');
    const core = new Set(proved.filter(({ kind }) => CORE.has(kind)).map(({ kind }) => kind));
    if (proved.length > 0) any += 1;
    if (core.size >= 2) two += 1;
    if (paper?.isWhole) kept += 1;
  }
  return {
    title: `${count} bills with every digit scrambled`,
    columns: ['what', 'bills', 'at most'],
    rows: [
      ['anything proved', any, ''],
      ['two of days, use, standing charge and total proved', two, Math.ceil((count * MOST_SCRAMBLED) / SCRAMBLED)],
      ['could be kept with one key', kept, 0],
    ],
    within: two <= Math.ceil((count * MOST_SCRAMBLED) / SCRAMBLED) && kept === 0,
  };
}

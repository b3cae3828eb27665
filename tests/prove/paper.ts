/** Bills on paper: what is proved is right, what is not is asked, and scrambled numbers prove nothing. */
import { chanceOf } from './chance.ts';
import { LAYOUTS, layOutBill } from './paper/lay-out.ts';
import { holdAgainst, readLaidOut, scramble } from './paper/read-back.ts';
import type { ProofTable } from './table.ts';

/** Of values called proved. */
const MOST_WRONG = 1 / 1000;
const SCRAMBLED = 1000;
/** Of the scrambled bills: those with two values of the core proved. */
const MOST_SCRAMBLED = 2;
const CORE: ReadonlySet<string> = new Set(['period', 'use', 'total', 'standing-charge']);

/** @param count bills, over all layouts in turn */
export function provePaper(count = 20 * LAYOUTS): ProofTable {
  const sum = { proved: 0, read: 0, missing: 0, wrong: 0, wrongRead: 0, whole: 0, keptWrong: 0 };
  for (let seed = 0; seed < count; seed++) {
    const made = layOutBill(seed, seed);
    const back = holdAgainst(made, readLaidOut(made.pages));
    sum.proved += back.proved;
    sum.read += back.read;
    sum.missing += back.missing.length;
    sum.wrong += back.wrong.length;
    sum.wrongRead += back.wrongRead.length;
    sum.whole += back.isWhole ? 1 : 0;
    sum.keptWrong += back.keptWrong ? 1 : 0;
  }
  const all = sum.proved + sum.read + sum.missing;
  const share = (part: number, whole: number) => `${((part / whole) * 100).toFixed(2)} %`;
  return {
    title: `Bills on paper: ${count} bills in ${LAYOUTS} layouts`,
    columns: ['what', 'count', 'share'],
    rows: [
      ['fields right and proved', sum.proved, share(sum.proved, all)],
      ['fields right, not proved', sum.read, share(sum.read, all)],
      ['fields not found', sum.missing, share(sum.missing, all)],
      ['wrong but called proved (at most 1 in 1,000)', sum.wrong, share(sum.wrong, sum.proved + sum.wrong)],
      ['wrong, not called proved', sum.wrongRead, share(sum.wrongRead, all)],
      ['bills with nothing left to ask', sum.whole, share(sum.whole, count)],
      ['bills with something asked or refused', count - sum.whole, share(count - sum.whole, count)],
      ['kept with one key and wrong (none)', sum.keptWrong, share(sum.keptWrong, count)],
    ],
    within: sum.wrong <= (sum.proved + sum.wrong) * MOST_WRONG && sum.keptWrong === 0,
  };
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

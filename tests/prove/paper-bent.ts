/** Bills whose words were seen on paper that did not lie flat: what is proved is right, and what is kept unasked too. */
import { chanceOf } from './chance.ts';
import { BENDS, bentPage } from './paper/bend.ts';
import { LAYOUTS, layOutBill } from './paper/lay-out.ts';
import { holdAgainst, MOST_WRONG, type ReadBack, readSeen, wordsOf } from './paper/read-back.ts';
import type { ProofTable } from './table.ts';

/** @param count bills for each way of bending, over all layouts in turn */
export function provePaperBent(count = 2 * LAYOUTS): ProofTable {
  const ways = Object.entries(BENDS).map(([name, bendOf], way) => {
    const backs = Array.from({ length: count }, (_, i) => {
      const seed = way * 10_000 + i;
      const made = layOutBill(i, 120_000 + seed);
      const chance = chanceOf(70_000 + seed);
      const back = holdAgainst(made, readSeen(wordsOf(made.pages).map((page) => bentPage(page, bendOf(chance)))));
      for (const wrong of back.wrong) console.log(`${name}, ${i}, ${made.layout}: ${wrong}`);
      if (back.keptWrong) console.log(`kept and wrong: ${name}, ${i}, ${made.layout}`);
      return back;
    });
    return { name, backs };
  });
  const rowOf = (name: string, backs: readonly ReadBack[]) => {
    const sum = (of: (back: ReadBack) => number) => backs.reduce((all, back) => all + of(back), 0);
    return [
      name,
      sum(({ proved }) => proved),
      sum(({ read, missing }) => read + missing.length),
      sum(({ wrong }) => wrong.length),
      backs.length,
      sum(({ isWhole }) => Number(isWhole)),
      sum(({ keptWrong }) => Number(keptWrong)),
    ] as const;
  };
  const all = rowOf(
    'all (of values called proved at most 1 in 1,000 wrong, none kept and wrong)',
    ways.flatMap(({ backs }) => backs),
  );
  const [, proved, , wrong, , , keptWrong] = all;
  return {
    title: `Bills on paper that did not lie flat: ${all[4]} bills in ${LAYOUTS} layouts`,
    columns: ['bent by', 'right, proved', 'not proved', 'wrong, proved', 'bills', 'nothing to ask', 'kept and wrong'],
    rows: [...ways.map(({ name, backs }) => rowOf(name, backs)), all],
    within: wrong <= (proved + wrong) * MOST_WRONG && keptWrong === 0,
  };
}

/** Two looks at the same pages made into one: of each page the look that proves more, then of each word. */

import type { Page, Word } from '../terms/paper-reading.ts';
import type { IntakeResult } from '../terms/preview.ts';
import { REGISTERS } from './vocabulary.ts';

/** Words that differ between two looks and are tried, where dirt differs more often; leans of pages. */
const MOST_TRIED = 40;

/** @param first the look that stands where both prove alike */
export function provingMore(
  first: readonly Page[],
  second: readonly Page[],
  read: (pages: readonly Page[]) => IntakeResult,
): readonly Page[] {
  let best = first;
  let most = provedIn(read(best));
  const take = (pages: readonly Page[]) => {
    const proved = provedIn(read(pages));
    if (proved <= most) return false;
    [best, most] = [pages, proved];
    return true;
  };
  let tried = 0;
  first.forEach((page, number) => {
    const other = second[number]!;
    if (page === other) return;
    const beside = take(first.with(number, other)) ? page : other;
    best[number]!.words.forEach((word, at) => {
      if (tried >= MOST_TRIED || !/\d/.test(word.text)) return;
      const same = beside.words.find((one) => isSamePlace(one, word));
      if (!same || same.text === word.text) return;
      tried++;
      const now = best[number]!;
      take(best.with(number, { ...now, words: now.words.with(at, { ...now.words[at]!, text: same.text }) }));
    });
  });
  return best;
}

/** Steps of lean that are tried to both sides, and how many: at most half the distance of two rows from the middle to the side. */
const [LEAN, MOST_LEANS] = [0.006, 5];
/**
 * Pictures of pages that did not lie flat, with their rows as they lean where most is proved: of a wide gap between a
 * name and its sum nothing tells how the paper bends in it. With what is read on them.
 */
export function leaningRows(
  pages: readonly Page[],
  read: (pages: readonly Page[]) => IntakeResult,
): { pages: readonly Page[]; result: IntakeResult } {
  let best = { pages, result: read(pages) };
  if (best.result.preview.paper?.isWhole && !hasNamesakes(best.result)) return best;
  let most = worthOf(best.result);
  let tried = 0;
  pages.forEach((page, number) => {
    if (!page.picture || tried >= MOST_TRIED) return;
    for (let step = 1; step <= MOST_LEANS; step++) {
      for (const lean of [step * LEAN, -step * LEAN]) {
        tried++;
        const leaning = best.pages.with(number, { ...page, lean });
        const result = read(leaning);
        const worth = worthOf(result);
        if (worth > most) [best, most] = [{ pages: leaning, result }, worth];
      }
    }
  });
  return best;
}

const usesIn = ({ preview }: IntakeResult) => (preview.paper?.values ?? []).filter(({ kind }) => kind === 'use');
/** Two uses of one name: where the numbers prove each other, the names beside them may have slipped off their rows. */
const hasNamesakes = (result: IntakeResult): boolean => {
  const names = usesIn(result).map(({ fuel, name }) => `${fuel} ${name}`);
  return new Set(names).size < names.length;
};
/** What is proved, and the registers that are known by their names. */
const worthOf = (result: IntakeResult): number =>
  provedIn(result) + new Set(usesIn(result).flatMap(({ name }) => (REGISTER_NAMES.has(name) ? name : []))).size;
const REGISTER_NAMES: ReadonlySet<string | undefined> = new Set(REGISTERS.map(([, name]) => name));

const provedIn = ({ preview }: IntakeResult): number =>
  (preview.paper?.values ?? []).reduce(
    (sum, { state }) => sum + (state === 'proved' ? 1 : state === 'contradicted' ? -0.5 : 0),
    0,
  );

function isSamePlace(a: Word, b: Word): boolean {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return across > 0.8 * Math.max(a.width, b.width) && down > 0.5 * Math.max(a.height, b.height);
}

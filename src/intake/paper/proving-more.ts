/** Two looks at the same pages made into one: of each page the look that proves more, then of each word. */

import type { Page, Word } from '../terms/paper-reading.ts';
import type { IntakeResult } from '../terms/preview.ts';

/** Words that differ between two looks and are tried; dirt differs more often. */
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

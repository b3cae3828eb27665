/** A page as words with their places, wherever they came from, put into rows. */
import type { Page, Word } from '../terms/paper-reading.ts';

/** Words beside each other, from left to right. */
export interface Row {
  readonly page: number;
  readonly y: number;
  readonly height: number;
  readonly words: readonly Word[];
}

/** Words whose middles lie within half a line of each other stand in one row. */
export function rowsOf(pages: readonly Page[]): Row[] {
  return pages.flatMap((page, number) => {
    const rows: { middle: number; height: number; words: Word[] }[] = [];
    for (const word of page.words.toSorted((a, b) => a.y + a.height / 2 - b.y - b.height / 2)) {
      const middle = word.y + word.height / 2;
      const last = rows.at(-1);
      if (last && middle - last.middle < Math.min(last.height, word.height) * 0.5) {
        last.words.push(word);
        last.height = Math.max(last.height, word.height);
      } else rows.push({ middle, height: word.height, words: [word] });
    }
    return rows.map(({ middle, height, words }) => ({
      page: number,
      y: middle,
      height,
      words: words.toSorted((a, b) => a.x - b.x),
    }));
  });
}

/** A gap wider than this many heights of the letters begins another cell. */
const CELL_GAP = 1.1;

/** The row as text, a tab where a new cell begins, with the word that each letter belongs to (-1 between words). */
export function textOfRow({ words }: Row): { readonly text: string; readonly wordAt: readonly number[] } {
  let text = '';
  const wordAt: number[] = [];
  words.forEach((word, i) => {
    const before = words[i - 1];
    if (before) {
      const gap = word.x - before.x - before.width;
      text += gap > CELL_GAP * word.height ? '\t' : ' ';
      wordAt.push(-1);
    }
    text += word.text;
    for (let at = 0; at < word.text.length; at++) wordAt.push(i);
  });
  // Dots that lead from words to their number are no part of either.
  return { text: text.replaceAll(/([._·…])\1{2,}/g, (dots) => '\t'.padStart(dots.length)), wordAt };
}

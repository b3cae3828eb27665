/** A page as words with their places, wherever they came from, put into rows. */
import type { Page, Word } from '../terms/paper-reading.ts';
import { unsureRows } from './unsure-rows.ts';

/** Words beside each other, from left to right. */
export interface Row {
  readonly page: number;
  readonly y: number;
  readonly height: number;
  readonly words: readonly Word[];
  /** In a picture, whether some of its words might as well stand in the row above or below. */
  readonly isUnsure?: boolean;
}

/** Where a word stands, or would if the paper lay flat. */
export const middleOf = ({ y, height, level = y + height / 2 }: Word): number => level;

/** Words whose middles lie within half a line of each other, from above. */
export function inRows(words: readonly Word[], middleIs: (word: Word) => number) {
  const rows: { middle: number; height: number; words: Word[] }[] = [];
  for (const word of words.toSorted((a, b) => middleIs(a) - middleIs(b))) {
    const middle = middleIs(word);
    const last = rows.at(-1);
    if (last && middle - last.middle < Math.min(last.height, word.height) * 0.5) {
      last.words.push(word);
      last.height = Math.max(last.height, word.height);
    } else rows.push({ middle, height: word.height, words: [word] });
  }
  return rows;
}

export function rowsOf(pages: readonly Page[]): Row[] {
  return pages.flatMap((page, number) => {
    const { lean = 0 } = page;
    const rows = inRows(page.words, (word) => middleOf(word) - lean * (word.x + word.width / 2 - page.width / 2));
    const inOrder = rows.map(({ middle, height, words }) => ({
      page: number,
      y: middle,
      height,
      words: words.toSorted((a, b) => a.x - b.x),
    }));
    const joined = joinHalves(inOrder);
    if (page.picture === undefined) return joined;
    const unsure = unsureRows(
      joined.map((row) => row.words),
      lean,
    );
    return joined.map((row, at) => (unsure.has(at) ? { ...row, isUnsure: true } : row));
  });
}

/** The lines of a cell that has two stand half a line above and below the others of its row: together they are one row. */
function joinHalves(rows: readonly Row[]): Row[] {
  const joined: Row[] = [];
  for (let at = 0; at < rows.length; at++) {
    const [upper, row, lower] = [rows[at]!, rows[at + 1], rows[at + 2]];
    const words = row && lower ? wordsOfHalves(upper, row, lower) : undefined;
    if (!words) joined.push(upper);
    else {
      joined.push({ ...row!, words });
      at += 2;
    }
  }
  return joined;
}

/** Of a line's height: half the distance of two lines, and how far two such halves may differ. */
const [LEAST_HALF, MOST_HALF, UNEVEN] = [0.45, 0.8, 0.12];
function wordsOfHalves(upper: Row, row: Row, lower: Row): Word[] | undefined {
  const [above, below] = [row.y - upper.y, lower.y - row.y];
  const { height } = row;
  if (Math.max(above, below) > MOST_HALF * height || Math.min(above, below) < LEAST_HALF * height) return undefined;
  if (Math.abs(above - below) > UNEVEN * height) return undefined;
  const cells = cellsOf(upper.words);
  for (const cell of cellsOf(lower.words)) {
    const over = cells.find((one) => sharesColumn(one, cell));
    if (!over) return undefined;
    over.push(...cell);
  }
  const middle = cellsOf(row.words);
  if (middle.some((one) => cells.some((other) => sharesColumn(one, other)))) return undefined;
  const left = (cell: readonly Word[]) => Math.min(...cell.map(({ x }) => x));
  return [...cells, ...middle].toSorted((a, b) => left(a) - left(b)).flat();
}

const endOf = ({ x, width }: Word): number => x + width;
export function cellsOf(words: readonly Word[]): Word[][] {
  const cells: Word[][] = [];
  for (const word of words) {
    const last = cells.at(-1);
    if (last && word.x - endOf(last.at(-1)!) <= CELL_GAP * word.height) last.push(word);
    else cells.push([word]);
  }
  return cells;
}
const sharesColumn = (one: readonly Word[], other: readonly Word[]): boolean =>
  one.some((a) => other.some((b) => a.x < endOf(b) && endOf(a) > b.x));

/** A gap wider than this many heights of the letters begins another cell. */
const CELL_GAP = 1.1;

/** The row as text, a tab where a new cell begins, with the place at which each word begins. */
export function textOfRow({ words }: Row): { readonly text: string; readonly starts: readonly number[] } {
  let text = '';
  const starts: number[] = [];
  let end = Number.NaN;
  for (const word of words) {
    if (starts.length > 0) text += word.x - end > CELL_GAP * word.height ? '\t' : ' ';
    starts.push(text.length);
    text += word.text;
    end = word.x + word.width;
  }
  // Dots that lead from words to their number are no part of either.
  return { text: text.replaceAll(/\.{3,}|_{3,}|·{3,}|…{3,}/g, (dots) => '\t'.padStart(dots.length)), starts };
}

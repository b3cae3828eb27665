/** A digit that a recogniser may have misread: what it would be, by the sums that then come out. Only ever offered, never taken. */
import type { Page, PaperReading, PaperRepair, PaperValue } from '../terms/paper-reading.ts';

/** Of many ways to mend the same sum none is likely. */
const MOST_OFFERED = 3;

/**
 * One digit changed in one number of a sum that does not come out. It is offered where that sum holds then, with a
 * second one for the same number, and none fails that held before.
 * @param reread reads the pages with one word changed
 */
export function offerRepairs(
  { pages, values }: PaperReading,
  reread: (word: Pick<PaperRepair, 'page' | 'at' | 'text'>) => PaperReading | undefined,
): PaperRepair[] {
  const failing = values.filter(({ state }) => state === 'contradicted');
  const found = failing.flatMap((failed) =>
    wordsOf(failed, values, pages).flatMap(({ page, at }) => {
      const read = pages[page]!.words[at]!.text;
      return changesOf(read).flatMap((text): PaperRepair[] => {
        const after = reread({ page, at, text });
        const mended = after?.values.find(
          ({ boxes, state }) => state === 'typed' && boxes.some((box) => box.page === page),
        );
        const isBetter = after !== undefined && countOf(after, 'contradicted') < failing.length;
        return isBetter && mended && mended.sums.length > 1 ? [{ page, at, read, text, sum: mended.sums[0]! }] : [];
      });
    }),
  );
  return found.length > MOST_OFFERED ? [] : found;
}

const countOf = ({ values }: PaperReading, state: PaperValue['state']): number =>
  values.filter((value) => value.state === state).length;

/** The words with digits of the value that fails, and of those in its row. */
function wordsOf(failed: PaperValue, values: readonly PaperValue[], pages: readonly Page[]) {
  const [own] = failed.boxes;
  if (!own || !pages[own.page]?.picture) return [];
  const beside = values
    .flatMap(({ boxes }) => boxes)
    .filter((box) => box.page === own.page && Math.abs(box.y - own.y) < own.height / 2);
  const inBox = (word: Page['words'][number]) =>
    beside.some(
      (box) => word.x >= box.x - 1 && word.x < box.x + box.width && Math.abs(word.y - box.y) < box.height / 2,
    );
  return pages[own.page]!.words.flatMap((word, at) =>
    /\d/.test(word.text) && inBox(word) ? [{ page: own.page, at }] : [],
  );
}

/** The word with each of its digits changed to each other one. */
const changesOf = (text: string): string[] =>
  [...text.matchAll(/\d/g)].flatMap(({ 0: digit, index }) =>
    [...'0123456789']
      .filter((other) => other !== digit)
      .map((other) => text.slice(0, index) + other + text.slice(index + 1)),
  );

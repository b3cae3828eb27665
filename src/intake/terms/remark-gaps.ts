/** What is said of missing readings: the longest gaps one by one, and what the others come to. */
import type { RemarkBook } from './remark-book.ts';

/** More lines than these nobody reads. */
const LISTED = 5;

export interface Gap {
  readonly from: string;
  /** The end, or the last day. */
  readonly to: string;
  /** Readings that are missing. */
  readonly count: number;
}

/** @param likelyKWh what a missing reading would have used, judged by the rest of the file; NaN for temperatures */
export function remarkGapsIn(gaps: readonly Gap[], likelyKWh: number, book: RemarkBook): void {
  const effect = (count: number) =>
    Number.isNaN(likelyKWh) ? {} : { effectKWh: Math.round(count * likelyKWh * 10) / 10 };
  const longest = gaps.toSorted((a, b) => b.count - a.count);
  for (const gap of longest.slice(0, LISTED).sort((a, b) => (a.from < b.from ? -1 : 1)))
    book.add('gap', 'note', { ...gap, ...effect(gap.count) });
  const more = longest.slice(LISTED);
  const missing = more.reduce((sum, { count }) => sum + count, 0);
  if (more.length > 0) book.add('gaps-more', 'note', { count: more.length, ...effect(missing) });
}

/** "Last reading" is the one before where another column has this one's, and the latest where another has the first. */
import type { ColumnFacts } from './column-facts.ts';
import { plainWords } from './headings.ts';

const LAST = /\blast (meter )?(read(ing)?s?|index|register)\b/;

/** Gives such a column its part of a bill; other tables come back as they are. */
export function pairLastReadings(columns: readonly ColumnFacts[]): readonly ColumnFacts[] {
  const has = (part: 'opening' | 'closing') => columns.some((c) => c.meaning.bill === part);
  const bill = has('closing') ? 'opening' : has('opening') ? 'closing' : undefined;
  if (bill === undefined) return columns;
  return columns.map((c) =>
    c.meaning.bill === undefined && LAST.test(plainWords(c.heading))
      ? { ...c, meaning: { ...c.meaning, role: 'reading', bill } }
      : c,
  );
}

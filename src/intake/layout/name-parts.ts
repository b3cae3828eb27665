/** Columns that say "of which …": a part of what stands before them, which holds it already. */
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import { DRAWN, PART_OF, RATE_REGISTER } from './vocabulary.ts';

/**
 * Such a part is set aside, unless it went a way of its own, is the heat pump's, or is one of several registers, which take
 * the unit of their whole.
 */
export function nameParts(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isPart = (c: ColumnFacts) => PART_OF.test(plainWords(c.heading)) && isNumberColumn(c) && !isMoneyColumn(c);
  const parts = columns.filter(isPart);
  if (parts.length === 0) return [...columns];
  const registers = parts.filter((c) => RATE_REGISTER.test(plainWords(c.heading)));
  const isAmount = (c: ColumnFacts) =>
    isNumberColumn(c) && !parts.includes(c) && ['value', 'reading'].includes(c.meaning.role);
  const wholeOf = (c: ColumnFacts) => columns.findLast((one) => one.index < c.index && isAmount(one));
  const isDrawn = (c: ColumnFacts) => DRAWN.test(plainWords(c.heading));
  // The rest of a use of which some was drawn came from the roof.
  const uses = parts.filter(isDrawn).flatMap((c) => wholeOf(c) ?? []);
  return columns.map((c) => {
    if (uses.includes(c)) return { ...c, meaning: { role: 'beside' } };
    const whole = parts.includes(c) ? wholeOf(c) : undefined;
    if (!whole || ['cost', 'rate', 'bill'].includes(c.meaning.role)) return c;
    const { seriesRole = '' } = c.meaning;
    const isOfItsOwn =
      ['export', 'heat-pump'].includes(seriesRole) || isDrawn(c) || (registers.length > 1 && registers.includes(c));
    if (!isOfItsOwn) return { ...c, meaning: { role: 'beside' } };
    const { unit = whole.meaning.unit, role } = c.meaning;
    return { ...c, meaning: { ...c.meaning, ...(unit ? { unit } : {}), role: role === 'unknown' ? 'value' : role } };
  });
}

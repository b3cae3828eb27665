/** Columns that hold a part of another, or of what is in no column. */
import { type ColumnFacts, isMoneyColumn, isNumberColumn } from './column-facts.ts';
import { plainWords } from './headings.ts';
import { DRAWN, MADE, PART_OF, RATE_REGISTER } from './vocabulary.ts';

/**
 * "Of which …", a part of what stands before it and holds it already, is set aside, unless it went a way of its own, is
 * the heat pump's, or is one of several registers, which take the unit of their whole.
 */
export function nameParts(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isPart = (c: ColumnFacts) => PART_OF.test(plainWords(c.heading)) && isNumberColumn(c) && !isMoneyColumn(c);
  const parts = columns.filter(isPart);
  if (parts.length === 0) return [...columns];
  const registers = parts.filter((c) => RATE_REGISTER.test(plainWords(c.heading)));
  const isAmount = (c: ColumnFacts) =>
    isNumberColumn(c) && !parts.includes(c) && ['value', 'reading'].includes(c.meaning.role);
  const wholeOf = (c: ColumnFacts) => columns.findLast((one) => one.index < c.index && isAmount(one));
  const saysDrawn = (c: ColumnFacts) => DRAWN.test(plainWords(c.heading));
  // A register of what is drawn is a part of it; of another use the rest came from the roof.
  const isDrawn = (c: ColumnFacts) => {
    const whole = wholeOf(c);
    return whole !== undefined && saysDrawn(c) && !saysDrawn(whole) && !registers.includes(c);
  };
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

const FROM = /(?<![a-z])(?:from|von|vom|aus|bezug|du|de|del|dal|da|van|fra|fran)(?![a-z])/;
const GRID = /grid|netz|\bnett?et?\b|\bred\b|reseau|\brete\b/;

/** "From solar" beside "From grid" is what the home took of its roof, and not all that was made. */
export function nameTakenOfRoof(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const isFrom = (c: ColumnFacts) => isNumberColumn(c) && FROM.test(plainWords(c.heading));
  if (!columns.some((c) => isFrom(c) && GRID.test(plainWords(c.heading)))) return [...columns];
  const isTaken = (c: ColumnFacts) =>
    c.meaning.seriesRole === 'generation' &&
    isFrom(c) &&
    !MADE.test(plainWords(c.heading)) &&
    !/gener/i.test(c.heading);
  return columns.map((c) => (isTaken(c) ? { ...c, meaning: { role: 'beside' } } : c));
}

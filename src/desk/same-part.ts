import type { Evidence } from '../model/shapes/evidence.ts';

/** Whether two imports hold the same sheet and any column of it in common, so that both would count it twice. */
export function isSamePart(one: Pick<Evidence, 'sha256' | 'part'>, other: Pick<Evidence, 'sha256' | 'part'>): boolean {
  if (one.sha256 !== other.sha256) return false;
  if (!one.part || !other.part) return true;
  if (one.part.sheet !== other.part.sheet) return false;
  const [columns, others] = [one.part.columns, other.part.columns];
  return !columns || !others || columns.some((column) => others.includes(column));
}

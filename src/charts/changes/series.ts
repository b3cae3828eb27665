/** What single changes do to the yearly cost, the largest first. */
import { type ChangeCode, changeName } from '../../words/change.ts';

export interface Change {
  readonly code: ChangeCode;
  readonly pence: number;
}
export interface ChangeRow extends Change {
  readonly name: string;
}

export function changeRows(changes: readonly Change[]): ChangeRow[] {
  return changes
    .filter(({ pence }) => Number.isFinite(pence))
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence))
    .map((change) => ({ ...change, name: changeName(change.code) }));
}

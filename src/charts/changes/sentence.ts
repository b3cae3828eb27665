import { changeSentence } from '../../words/change.ts';
import type { ChangeRow } from './series.ts';

export const CHANGES_NAME = 'What could change the cost';

export function changesSentence(rows: readonly ChangeRow[]): string {
  const largest = rows[0];
  return largest ? changeSentence(largest.code, largest.pence) : 'We cannot say yet what would change the cost.';
}

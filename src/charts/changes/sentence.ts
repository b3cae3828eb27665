import { changeSentence } from '../../words/change.ts';
import { say } from '../../words/say.ts';
import type { ChangeRow } from './series.ts';

export const changesName = () => say('What could change the cost');

export function changesSentence(rows: readonly ChangeRow[]): string {
  const largest = rows[0];
  return largest ? changeSentence(largest.code, largest.pence) : say('We cannot say yet what would change the cost.');
}

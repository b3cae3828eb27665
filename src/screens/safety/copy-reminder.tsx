/** On the list: that a copy is due, that one failed, or that something is damaged. Silent when all is well. */
import { useEffect, useState } from 'react';
import type { DataState } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';

export function CopyReminder() {
  const [state, setState] = useState<DataState | null>(null);
  useEffect(() => {
    // The list itself says what is wrong with the desk.
    call('data.read', {}).then(setState, () => undefined);
  }, []);
  if (state === null) return null;
  const reasons = [
    ...(state.damage.length > 0
      ? [
          say('The weekly check found {count, plural, one {a damaged piece} other {# damaged pieces}}.', {
            count: state.damage.length,
          }),
        ]
      : []),
    ...(state.failure === undefined
      ? []
      : [say('The last copy of the day failed. {reason}', { reason: state.failure })]),
    ...(state.isCopyDue && state.households > 0 ? [say('No copy was saved for over a month.')] : []),
  ];
  if (reasons.length === 0) return null;
  return (
    <p className="refusal">
      {reasons.join(' ')} <a href="#/copies">{say('Copies of your data')}</a>
    </p>
  );
}

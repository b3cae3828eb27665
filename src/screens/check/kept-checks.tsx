import { useState } from 'react';
import { compareDates } from '../../model/calendar/civil.ts';
import type { BillCheck } from '../../model/shapes/bill-check.ts';
import { verdictSentence } from '../../words/check.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { HowWeKnow } from '../shared/how-we-know.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { dayBefore } from './bills.ts';
import { checkWorking } from './check-working.ts';

/** Every check of this household, to be looked at again or dropped. */
export function KeptChecks(props: { readonly shown: string | null; readonly onShow: (id: string) => void }) {
  const { checks, reload, tell } = useHousehold();
  const [failure, setFailure] = useState<string | null>(null);
  if (checks.length === 0) return null;
  const drop = async (check: BillCheck) => {
    setFailure(null);
    try {
      await call('check.drop', { checkId: check.id });
      await reload();
      tell(say('The check is removed. The estimate and the bills stay.'));
    } catch (reason) {
      setFailure(describeFailure(reason));
    }
  };
  return (
    <section aria-labelledby="checks-head">
      <h3 id="checks-head">{say('Saved checks')}</h3>
      <ul className="checks">
        {checks
          .toSorted((a, b) => compareDates(b.input.from, a.input.from))
          .map((check) => (
            <li key={check.id}>
              <span>
                {say('{low} to {high}', { low: longDate(check.input.from), high: longDate(dayBefore(check.input.to)) })}
                . {verdictSentence(check)}{' '}
                <HowWeKnow
                  find={() => [checkWorking(check)]}
                  about={say('the check of {from}', { from: longDate(check.input.from) })}
                  plain
                />
              </span>
              <span className="actions">
                <button
                  type="button"
                  aria-pressed={check.id === props.shown}
                  disabled={check.id === props.shown}
                  onClick={() => props.onShow(check.id)}
                >
                  {check.id === props.shown ? say('Shown above') : say('Show')}
                </button>
                <button type="button" className="plain" onClick={() => drop(check)}>
                  {say('Remove')}
                  <span className="unseen">: {say('the check of {from}', { from: longDate(check.input.from) })}</span>
                </button>
              </span>
            </li>
          ))}
      </ul>
      <Refused text={failure} />
    </section>
  );
}

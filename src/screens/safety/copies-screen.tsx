/** Safe to lose: copies, the way back, and whether everything kept is still what was kept. */
import { useCallback, useEffect, useState } from 'react';
import type { DataState } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { ListPage } from '../shared/list-page.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { RestoreCopy } from './restore-copy.tsx';
import { SaveCopy } from './save-copy.tsx';

export function CopiesScreen(props: {
  /** Settings come with the copy, language and theme too. */
  readonly onRestored: () => Promise<void>;
}) {
  const [state, setState] = useState<DataState | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const read = useCallback(
    () =>
      call('data.read', {}).then(setState, (reason) => {
        setFailure(describeFailure(reason));
      }),
    [],
  );
  useEffect(() => void read(), [read]);
  const check = () => {
    setShare(0);
    setFailure(null);
    call('data.check', {}, { onProgress: setShare })
      .then(setState, (reason) => setFailure(describeFailure(reason)))
      .finally(() => setShare(null));
  };

  return (
    <ListPage
      links={[
        ['#/', say('All households')],
        ['#/settings', say('Settings')],
        ['#/privacy', say('What is stored')],
      ]}
    >
      <h1 className="voice">{say('All your data fits into one file. Keep it somewhere other than this computer.')}</h1>
      <Refused text={failure} />
      {state === null ? null : (
        <>
          <SaveCopy state={state} onState={setState} />
          <RestoreCopy
            state={state}
            onRestored={async () => {
              await props.onRestored();
              await read();
            }}
          />
          <section className="stack" aria-labelledby="check-pieces">
            <h2 id="check-pieces">{say('Is everything still as it was saved?')}</h2>
            <p>
              {state.lastCheckOn === undefined
                ? say('Each piece is checked against its checksum when it is read, and all of them every week.')
                : say('All pieces were checked on {date}, and are again every week.', {
                    date: longDate(state.lastCheckOn.slice(0, 10)),
                  })}
            </p>
            {state.lastCheckOn !== undefined && state.damage.length === 0 ? <p>{say('Nothing was damaged.')}</p> : null}
            {state.damage.map(({ message, remedy }) => (
              <p key={message} className="refusal">
                {message} {remedy}
              </p>
            ))}
            <div className="actions">
              <button type="button" disabled={share !== null} onClick={check}>
                {share === null
                  ? say('Check now')
                  : say('Checking, {percent} %', { percent: String(Math.round(share * 100)) })}
              </button>
            </div>
          </section>
        </>
      )}
    </ListPage>
  );
}

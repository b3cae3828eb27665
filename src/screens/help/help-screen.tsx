/** Which Plainwarmth this is, how a newer one comes, where things lie, and how to end it. */
import { useState } from 'react';
import type { Output } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { ListPage } from '../shared/list-page.tsx';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { Stopped } from '../stopped.tsx';
import { ValuesSection } from './values-section.tsx';

export function HelpScreen({ app }: { readonly app: Output<'app.read'> }) {
  const [ended, setEnded] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const quit = () =>
    call('app.quit', {}).then(
      () => {
        setEnded(true);
        // A browser lets go only of a window that was opened as a program.
        window.close();
      },
      (reason) => setFailure(say('It could not be closed. {reason}', { reason: describeFailure(reason) })),
    );

  if (ended) {
    return (
      <Stopped
        sentence={say('Plainwarmth has ended.')}
        detail={say('Everything is saved. You can close this window.')}
      />
    );
  }
  return (
    <ListPage links={[['#/', say('All households')]]}>
      <h1 className="voice">
        {say('Plainwarmth, version {version} of {date}', { version: app.version, date: longDate(app.versionDate) })}
      </h1>
      <h2>{say('A newer version')}</h2>
      <p>
        {say(
          'Plainwarmth uses no network, so it cannot look for a newer version. Install the newer one over this one; your data stays. If the data has to be converted, a copy is saved first and you are told where.',
        )}
      </p>
      <ValuesSection />
      <h2>{say('Where it is stored')}</h2>
      <dl className="facts">
        <dt>{say('All your data')}</dt>
        <dd translate="no">{app.dataFolder}</dd>
        {app.host === 'loopback' ? (
          <>
            <dt>{say('Messages of the program')}</dt>
            <dd>{say('plainwarmth.log, in the same folder')}</dd>
          </>
        ) : null}
      </dl>
      <h2>{say('Closing the program')}</h2>
      {app.host === 'loopback' ? (
        <p>{say('Plainwarmth closes by itself five minutes after its last window was closed.')}</p>
      ) : null}
      <p>
        <button type="button" className="push" onClick={quit}>
          {say('Quit Plainwarmth')}
        </button>
      </p>
      <Refused text={failure} />
    </ListPage>
  );
}

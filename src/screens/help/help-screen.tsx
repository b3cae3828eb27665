/** Which Plainwarmth this is, how a newer one comes, where things lie, and how to end it. */
import { useState } from 'react';
import type { Output } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { ListPage } from '../shared/list-page.tsx';
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
      (reason) => setFailure(say('It could not be ended. {reason}', { reason: describeFailure(reason) })),
    );

  if (ended) {
    return <Stopped sentence={say('Plainwarmth has ended.')} detail={say('All is kept. You can close this window.')} />;
  }
  return (
    <ListPage links={[['#/', say('All households')]]}>
      <h1 className="voice">
        {say('Plainwarmth, version {version} of {date}', { version: app.version, date: longDate(app.versionDate) })}
      </h1>
      <h2>{say('A newer version')}</h2>
      <p>
        {say(
          'Plainwarmth looks for no newer version by itself, since it uses no network. Install the newer one over this one: what you keep stays. If its form has to change, a copy is made first, and you are told where it lies.',
        )}
      </p>
      <ValuesSection />
      <h2>{say('Where it lies')}</h2>
      <dl className="facts">
        <dt>{say('All you keep')}</dt>
        <dd>{app.dataFolder}</dd>
        {app.host === 'loopback' ? (
          <>
            <dt>{say('Messages of the program')}</dt>
            <dd>{say('plainwarmth.log, in the same folder')}</dd>
          </>
        ) : null}
      </dl>
      <h2>{say('Ending it')}</h2>
      {app.host === 'loopback' ? (
        <p>{say('When its last window has been closed for five minutes, Plainwarmth ends by itself.')}</p>
      ) : null}
      <p>
        <button type="button" className="push" onClick={quit}>
          {say('Quit Plainwarmth')}
        </button>
      </p>
      {failure ? (
        <p className="refusal" role="alert">
          {failure}
        </p>
      ) : null}
    </ListPage>
  );
}

/** What is stored, where, how to erase it, and what erasing cannot reach. */
import { useEffect, useState } from 'react';
import type { DataState, Output } from '../../desk/contract.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { ListPage } from '../shared/list-page.tsx';
import { sizeWords } from './folder-picker.tsx';

export function PrivacyScreen({ app }: { readonly app: Output<'app.read'> }) {
  const [state, setState] = useState<DataState | null>(null);
  useEffect(() => {
    call('data.read', {}).then(setState, () => undefined);
  }, []);
  return (
    <ListPage
      links={[
        ['#/', say('All households')],
        ['#/settings', say('Settings')],
        ['#/copies', say('Copies of your data')],
      ]}
    >
      <h1 className="voice">{say('Your data stays on this computer until you copy it elsewhere.')}</h1>
      <section className="stack">
        <h2>{say('What is stored')}</h2>
        <ul>
          <li>{say('Of each household: name, place, job number, notes, and all that was typed about the home.')}</li>
          <li>
            {say(
              'Every meter file that was imported, as it was, and its readings. Half-hourly readings show when people are at home.',
            )}
          </li>
          <li>
            {say('Of a bill on paper what was read, without names and numbers; the paper only where you say so.')}
          </li>
          <li>{say('Every written estimate and bill check, with all that went into it.')}</li>
          <li>{say('Your own name, address and logo, saved tariffs, and how files of one kind are read.')}</li>
        </ul>
        <p>
          {say(
            'An exported household holds all this without the files, unless you tick them; papers never leave in it. Names, addresses and long numbers that came from files are masked where they were recognised. A copy of your data holds everything.',
          )}
        </p>
        <p>
          {say(
            'Nothing is sent anywhere, nothing is counted, and no account is needed. Nothing here is encrypted on the disk: protect the computer with a password and its disk with the system’s own encryption.',
          )}
        </p>
      </section>
      <section className="stack">
        <h2>{say('Where')}</h2>
        <dl className="facts">
          <dt>{say('The data file and its log')}</dt>
          <dd translate="no">{app.dataFolder}</dd>
          {state?.folder === undefined ? null : (
            <>
              <dt>{say('Copies')}</dt>
              <dd translate="no">{state.folder}</dd>
            </>
          )}
        </dl>
      </section>
      <section className="stack">
        <h2>{say('How to erase it')}</h2>
        <p>
          {say(
            'A household: in the list, “More”, then “Erase for good”. Its bills, readings, estimates and checks go too, and its place in the data file is overwritten.',
          )}
        </p>
        <p>{say('Everything: close Plainwarmth and delete the folder named above. Uninstalling alone leaves it.')}</p>
      </section>
      <section className="stack">
        <h2>{say('What erasing cannot reach')}</h2>
        <ul>
          <li>
            {say('Copies that were saved elsewhere, exported household files, and papers that were printed or sent.')}
          </li>
          <li>
            {say('Cells of a solid-state disk that the disk itself has put aside, and backups made by the system.')}
          </li>
          <li>
            {say('Files that the browser downloaded, and what this window’s browser keeps of pages it has shown.')}
            {state?.windowFolder === undefined
              ? null
              : ` ${say('The latter lies in {path}. To erase it too, close Plainwarmth and delete that folder.', {
                  path: state.windowFolder,
                })}`}
          </li>
          {state && state.olderFiles.length > 0 ? (
            <li>
              {say('These older files beside the data; delete them in the folder when they are no longer wanted:')}
              <ul>
                {state.olderFiles.map(({ name, size }) => (
                  <li key={name}>
                    {name}, {sizeWords(size)}
                  </li>
                ))}
              </ul>
            </li>
          ) : null}
        </ul>
      </section>
    </ListPage>
  );
}

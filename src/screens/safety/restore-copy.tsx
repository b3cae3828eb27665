/** Looks into a copy, and brings all of it or one household back. */
import { type FormEvent, useState } from 'react';
import type { DataState, Output } from '../../desk/contract.ts';
import { DeskError } from '../../desk/desk-error.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { go } from '../use-route.ts';
import { FolderPicker } from './folder-picker.tsx';
import { PassphraseField } from './passphrase-field.tsx';

interface Chosen {
  readonly path: string;
  readonly name: string;
}

export function RestoreCopy(props: { readonly state: DataState; readonly onRestored: () => Promise<void> }) {
  const [picking, setPicking] = useState(false);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const [asks, setAsks] = useState(false);
  const [passphrase, setPassphrase] = useState('');
  const [inside, setInside] = useState<Output<'data.look'> | null>(null);
  const [working, setWorking] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const copy = chosen === null ? null : { path: chosen.path, ...(passphrase === '' ? {} : { passphrase }) };

  const attempt = async (work: () => Promise<void>) => {
    setWorking(true);
    setFailure(null);
    setSaid(null);
    try {
      await work();
    } catch (reason) {
      if (reason instanceof DeskError && reason.code === 'passphrase-needed') setAsks(true);
      else setFailure(describeFailure(reason));
    } finally {
      setWorking(false);
    }
  };
  const look = (one: Chosen, key: string) =>
    attempt(async () =>
      setInside(await call('data.look', { path: one.path, ...(key === '' ? {} : { passphrase: key }) })),
    );
  const choose = (path: string, name: string) => {
    const next = { path, name };
    setPicking(false);
    setChosen(next);
    setAsks(false);
    setPassphrase('');
    setInside(null);
    void look(next, '');
  };
  const restore = () =>
    attempt(async () => {
      const { households, keptAs } = await call('data.restore', copy!);
      setInside(null);
      setChosen(null);
      await props.onRestored();
      setSaid(
        [
          say('Restored: {count, plural, one {# household} other {# households}}.', { count: households }),
          ...(keptAs === undefined ? [] : [say('What was here before is saved as {path}.', { path: keptAs })]),
        ].join(' '),
      );
    });
  const bringIn = (householdId: string) =>
    attempt(async () => {
      const { id } = await call('data.bring-in', { ...copy!, householdId });
      go({ screen: 'household', id, stage: 'evidence' });
    });

  return (
    <section className="stack" aria-labelledby="restore-copy">
      <h2 id="restore-copy">{say('Restore')}</h2>
      <p>
        {say(
          'Choose a copy, see what is inside, then restore everything or one household. Copies of any earlier version work, and so does the file plainwarmth.sqlite with its log beside it.',
        )}
      </p>
      <div className="actions">
        <button type="button" disabled={working} onClick={() => setPicking(true)}>
          {say('Choose a copy …')}
        </button>
      </div>
      {working ? <p role="status">{say('Reading the copy …')}</p> : null}
      {asks && chosen ? (
        <form
          className="stack"
          onSubmit={(event: FormEvent) => {
            event.preventDefault();
            void look(chosen, passphrase);
          }}
        >
          <PassphraseField
            value={passphrase}
            onChange={setPassphrase}
            note={say('{file} is locked with a passphrase.', { file: chosen.name })}
          />
          <div className="actions">
            <button type="submit" disabled={working || passphrase === ''}>
              {say('Open it')}
            </button>
          </div>
        </form>
      ) : null}
      {inside && chosen ? (
        <InsideCopy
          inside={inside}
          file={chosen.name}
          here={props.state.households}
          working={working}
          onBringIn={(id) => void bringIn(id)}
          onRestore={() => void restore()}
        />
      ) : null}
      {said === null ? null : <p role="status">{said}</p>}
      <Refused text={failure} />
      {picking ? (
        <FolderPicker
          title={say('Which copy?')}
          start={props.state.folder}
          onCopy={choose}
          onClose={() => setPicking(false)}
        />
      ) : null}
    </section>
  );
}

/** What a copy holds, and the two ways to bring it back. */
function InsideCopy(props: {
  readonly inside: Output<'data.look'>;
  readonly file: string;
  /** Households that are here now. */
  readonly here: number;
  readonly working: boolean;
  readonly onBringIn: (householdId: string) => void;
  readonly onRestore: () => void;
}) {
  const { inside, file, here, working } = props;
  return (
    <>
      <h3>{say('Inside {file}', { file })}</h3>
      {inside.remark ? <p className="refusal">{inside.remark}</p> : null}
      {inside.damage.map(({ message }) => (
        <p key={message} className="refusal">
          {message}
        </p>
      ))}
      <table className="households">
        <thead>
          <tr>
            <th scope="col">{say('Home')}</th>
            <th scope="col">{say('Changed')}</th>
            <th scope="col">{say('Bills and readings')}</th>
            <th scope="col">
              <span className="unseen">{say('More')}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {inside.households.map(({ id, name, changedOn, evidenceCount }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              <td>{longDate(changedOn.slice(0, 10))}</td>
              <td>{say('{count, plural, =0 {none} one {1 piece} other {# pieces}}', { count: evidenceCount })}</td>
              <td>
                <button
                  type="button"
                  className="plain"
                  disabled={working}
                  aria-label={say('Restore {name} only', { name })}
                  onClick={() => props.onBringIn(id)}
                >
                  {say('Restore this one')}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="actions">
        <button type="button" className="main" disabled={working} onClick={props.onRestore}>
          {say('Restore everything')}
        </button>
        <span className="quiet">
          {here === 0
            ? say('There is nothing here to be replaced.')
            : say(
                'The {count, plural, one {household} other {# households}} here will be replaced, and saved as a copy first.',
                { count: here },
              )}
        </span>
      </div>
    </>
  );
}

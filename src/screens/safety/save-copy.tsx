/** Saves a copy now, and one every day. */
import { useState } from 'react';
import type { DataState } from '../../desk/contract.ts';
import { PASSPHRASE_LETTERS } from '../../desk/limits.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { Refused } from '../shared/refused.tsx';
import { describeFailure } from '../state/describe-failure.ts';
import { FolderPicker, sizeWords } from './folder-picker.tsx';
import { PassphraseField } from './passphrase-field.tsx';

function dailyWords({ daily, dailyLocked, folder = '' }: DataState, locks: boolean): string {
  if (!daily)
    return locks
      ? say('A copy every day into a folder, locked with this passphrase')
      : say('A copy every day into a folder');
  return dailyLocked
    ? say('A locked copy every day into {folder}', { folder })
    : say('A copy every day into {folder}', { folder });
}

export function SaveCopy(props: { readonly state: DataState; readonly onState: (state: DataState) => void }) {
  const { state, onState } = props;
  const [picking, setPicking] = useState<'once' | 'daily' | null>(null);
  const lock = useLock();
  const { locks, passphrase, isUnsettled, forget } = lock;
  const [said, setSaid] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);

  const attempt = async (work: () => Promise<void>) => {
    setSaving(true);
    setSaid(null);
    setFailure(null);
    try {
      await work();
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setSaving(false);
    }
  };
  const save = (folder: string) =>
    attempt(async () => {
      const saved = await call('data.save', locks ? { folder, passphrase } : { folder });
      forget();
      setSaid(
        [
          say('Saved and read back: {path}, {size}, {count, plural, one {# household} other {# households}}.', {
            path: saved.path,
            size: sizeWords(saved.size),
            count: saved.households,
          }),
          ...saved.damage.map(({ message }) => message),
        ].join(' '),
      );
      onState(await call('data.read', {}));
    });
  const setDaily = (folder: string | null) =>
    attempt(async () => {
      const lock = folder !== null && locks ? { passphrase } : {};
      onState(await call('data.daily', { folder, ...lock }));
      forget();
    });

  return (
    <section className="stack" aria-labelledby="save-copy">
      <h2 id="save-copy">{say('Save a copy')}</h2>
      <p>
        {state.lastCopyOn === undefined
          ? say('No copy has been saved yet.')
          : say('The last copy was saved on {date}: {path}', {
              date: longDate(state.lastCopyOn.slice(0, 10)),
              path: state.lastCopyPath ?? '',
            })}
      </p>
      <LockFields {...lock} />
      <div className="actions">
        <button type="button" className="main" disabled={saving || isUnsettled} onClick={() => setPicking('once')}>
          {saving ? say('Saving …') : say('Save a copy …')}
        </button>
        {state.folder === undefined ? null : (
          <button type="button" disabled={saving || isUnsettled} onClick={() => void save(state.folder!)}>
            {say('Save to {folder} again', { folder: state.folder })}
          </button>
        )}
      </div>
      {said === null ? null : <p role="status">{said}</p>}
      <Refused text={failure} />
      <label className="tick">
        <input
          type="checkbox"
          checked={state.daily}
          disabled={saving || (isUnsettled && !state.daily)}
          onChange={(event) => (event.target.checked ? setPicking('daily') : void setDaily(null))}
        />
        <span>{dailyWords(state, locks)}</span>
      </label>
      <p className="quiet">
        {say('On days when Plainwarmth is used. The last 14 copies stay.')}{' '}
        {state.daily && state.dailyLocked
          ? say('Each opens with the passphrase you typed. Its key lies beside the data, never in a copy.')
          : null}
      </p>
      {state.failure === undefined ? null : (
        <p className="refusal">{say('The last copy of the day failed. {reason}', { reason: state.failure })}</p>
      )}
      {picking === null ? null : (
        <FolderPicker
          title={say('Where should the copy go?')}
          start={state.folder}
          onFolder={(folder) => {
            setPicking(null);
            void (picking === 'once' ? save(folder) : setDaily(folder));
          }}
          onClose={() => setPicking(null)}
        />
      )}
    </section>
  );
}

/** Whether a copy is locked, and the passphrase for it. */
function useLock() {
  const [locks, setLocks] = useState(false);
  const [passphrase, setPassphrase] = useState('');
  // It is typed unseen, and with a slip in it nobody could open the copy.
  const [again, setAgain] = useState('');
  const isUnsettled = locks && (passphrase.length < PASSPHRASE_LETTERS.least || again !== passphrase);
  const forget = () => {
    setPassphrase('');
    setAgain('');
  };
  return { locks, setLocks, passphrase, setPassphrase, again, setAgain, isUnsettled, forget };
}

function LockFields({ locks, setLocks, passphrase, setPassphrase, again, setAgain }: ReturnType<typeof useLock>) {
  return (
    <>
      <label className="tick">
        <input type="checkbox" checked={locks} onChange={(event) => setLocks(event.target.checked)} />
        <span>{say('Lock it with a passphrase')}</span>
      </label>
      {locks ? (
        <>
          <PassphraseField
            value={passphrase}
            onChange={setPassphrase}
            note={say('At least 8 letters; four words are better. Without it nobody can open the copy, you neither.')}
          />
          <PassphraseField
            label={say('The passphrase once more')}
            value={again}
            onChange={setAgain}
            refusal={
              again !== '' && !passphrase.startsWith(again) ? say('This differs from the passphrase above.') : null
            }
          />
        </>
      ) : null}
    </>
  );
}

/** Chooses a folder of this computer, or a copy in one. The desk says what is there, since a page cannot look itself. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { FolderView } from '../../desk/contract.ts';
import { longDate } from '../../words/numbers.ts';
import { language, say } from '../../words/say.ts';
import { call } from '../desk.ts';
import { Dialog } from '../shared/dialog.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';

export const sizeWords = (bytes: number): string =>
  say('{size} MB', { size: (bytes / 1024 / 1024).toLocaleString(language(), { maximumFractionDigits: 1 }) });

export function FolderPicker(props: {
  readonly title: string;
  readonly start: string | undefined;
  /** With it the copies in the folder can be chosen; without it the folder itself. */
  readonly onCopy?: (path: string, name: string) => void;
  readonly onFolder?: (path: string) => void;
  readonly onClose: () => void;
}) {
  const [view, setView] = useState<FolderView | null>(null);
  const [typed, setTyped] = useState(props.start ?? '');
  const [failure, setFailure] = useState<string | null>(null);
  const [isLooking, setLooking] = useState(true);
  const asked = useRef(0);
  const inField = useRef(typed);
  inField.current = typed;
  /** Shows a folder. An answer that a later question has overtaken is dropped, and what is typed meanwhile stays. */
  const look = useCallback(async (path: string | undefined, otherwise?: () => Promise<void>): Promise<void> => {
    asked.current += 1;
    const question = asked.current;
    const stood = inField.current;
    setLooking(true);
    try {
      const seen = await call('data.folder', path === undefined || path === '' ? {} : { path });
      if (question !== asked.current) return;
      setView(seen);
      setTyped((now) => (now === stood ? seen.path : now));
      setFailure(null);
      setLooking(false);
    } catch (reason) {
      if (question !== asked.current) return;
      if (otherwise) return otherwise();
      setFailure(describeFailure(reason));
      setLooking(false);
    }
  }, []);
  useEffect(() => {
    // A stick that is no longer there leads to the home folder.
    void look(props.start, () => look(undefined));
  }, [look, props.start]);

  const open = (place: { readonly name: string; readonly path: string }) => (
    <li key={place.path}>
      <button type="button" className="plain" onClick={() => void look(place.path)}>
        {place.name}
      </button>
    </li>
  );
  return (
    <Dialog title={props.title} onClose={props.onClose}>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void look(typed);
        }}
      >
        <TextField
          label={say('Folder')}
          value={typed}
          maxLength={4000}
          refusal={failure}
          note={say('Type a path and press Enter, or go there below.')}
          onChange={setTyped}
        />
      </form>
      {view === null ? null : (
        <>
          <div className="folder-lists">
            <nav aria-label={say('Sticks and usual places')}>
              <h3>{say('Sticks and usual places')}</h3>
              <ul className="folder-list">{view.places.map(open)}</ul>
            </nav>
            <nav aria-label={say('Folders in {name}', { name: view.name })}>
              <h3>{say('Folders in {name}', { name: view.name })}</h3>
              <ul className="folder-list">
                {view.parent === null ? null : open({ name: say('One up'), path: view.parent })}
                {view.folders.map(open)}
              </ul>
            </nav>
          </div>
          {props.onCopy ? <CopyList view={view} onCopy={props.onCopy} /> : null}
          {props.onFolder ? (
            <div className="actions">
              {/* Only the folder that is shown is used, never the one before it or one that is being typed. */}
              <button
                type="button"
                className="main"
                disabled={isLooking || typed !== view.path}
                onClick={() => props.onFolder?.(view.path)}
              >
                {say('Use this folder')}
              </button>
              <button type="button" onClick={props.onClose}>
                {say('Cancel')}
              </button>
            </div>
          ) : null}
        </>
      )}
    </Dialog>
  );
}

function CopyList(props: { readonly view: FolderView; readonly onCopy: (path: string, name: string) => void }) {
  const { path, copies } = props.view;
  const separator = path.includes('\\') ? '\\' : '/';
  return (
    <section aria-label={say('Copies here')}>
      <h3>{say('Copies here')}</h3>
      {copies.length === 0 ? <p className="quiet">{say('There is no copy in this folder.')}</p> : null}
      <ul className="folder-list">
        {copies.map(({ name, size, changedOn }) => (
          <li key={name}>
            <button
              type="button"
              className="plain"
              onClick={() => props.onCopy(`${path}${path.endsWith(separator) ? '' : separator}${name}`, name)}
            >
              {name}
            </button>{' '}
            <span className="quiet">
              {longDate(changedOn.slice(0, 10))}, {sizeWords(size)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

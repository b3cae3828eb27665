/** The two papers of a check: the household's letter, which asks for its names first, and the installer's sheet. */

import { useState } from 'react';
import type { LetterNames } from '../../model/shapes/household.ts';
import { phrase, say } from '../../words/say.ts';
import { call, saveFile } from '../desk.ts';
import { useHousehold } from '../household-context.tsx';
import { Refused } from '../shared/refused.tsx';
import { TextField } from '../shared/text-field.tsx';
import { describeFailure } from '../state/describe-failure.ts';

type Paper = 'letter' | 'sheet';
type Format = 'pdf' | 'html';

const BUTTONS: readonly { readonly paper: Paper; readonly format: Format; readonly label: string }[] = [
  { paper: 'letter', format: 'pdf', label: phrase('Write the letter') },
  { paper: 'letter', format: 'html', label: phrase('The letter as HTML') },
  { paper: 'sheet', format: 'pdf', label: phrase('Installer’s sheet') },
  { paper: 'sheet', format: 'html', label: phrase('The sheet as HTML') },
];

const FIELDS: readonly { readonly key: keyof LetterNames; readonly label: string; readonly most: number }[] = [
  { key: 'to', label: phrase('Whom the letter greets, such as Mrs Miller'), most: 80 },
  { key: 'ringName', label: phrase('Whom they may ring'), most: 80 },
  { key: 'ringTelephone', label: phrase('On which telephone number'), most: 40 },
];

export function LetterButtons({ checkId }: { readonly checkId: string }) {
  const { household, reload, tell } = useHousehold();
  const [busy, setBusy] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const [asking, setAsking] = useState<Format | null>(null);
  const isWhole = FIELDS.every(({ key }) => (household.letter?.[key] ?? '').trim() !== '');

  const write = async (paper: Paper, format: Format) => {
    setBusy(`${paper} ${format}`);
    setFailure(null);
    try {
      await reload();
      const file = await call('check.print', { checkId, paper, format });
      if (await saveFile(file)) tell(say('{fileName} is saved.', { fileName: file.fileName }));
      setAsking(null);
    } catch (reason) {
      setFailure(describeFailure(reason));
    } finally {
      setBusy(null);
    }
  };
  return (
    <>
      {BUTTONS.map(({ paper, format, label }) => (
        <button
          key={label}
          type="button"
          className={paper === 'letter' && format === 'pdf' ? 'main' : ''}
          disabled={busy !== null}
          onClick={() => (paper === 'letter' && !isWhole ? setAsking(format) : write(paper, format))}
        >
          {busy === `${paper} ${format}` ? say('Writing …') : say(label)}
        </button>
      ))}
      {asking === null ? null : (
        <NamesQuestion isWhole={isWhole} onWrite={() => write('letter', asking)} onLeave={() => setAsking(null)} />
      )}
      {isWhole && asking === null ? (
        <button type="button" className="plain" onClick={() => setAsking('pdf')}>
          {say('Names in the letter')}
        </button>
      ) : null}
      <Refused text={failure} />
    </>
  );
}

/** Holds the letter back until there is somebody to greet and somebody to ring. */
function NamesQuestion(props: {
  readonly isWhole: boolean;
  readonly onWrite: () => void;
  readonly onLeave: () => void;
}) {
  const { household, settings, change } = useHousehold();
  const usual: LetterNames = {
    ringName: settings.installerName,
    ringTelephone: telephoneIn(settings.installerContact),
  };
  return (
    <form
      className="letter-names"
      aria-labelledby="letter-names-head"
      onSubmit={(event) => {
        event.preventDefault();
        if (props.isWhole) props.onWrite();
      }}
    >
      <h3 id="letter-names-head">{say('Before the letter is written')}</h3>
      {FIELDS.map(({ key, label, most }) => {
        const set = (text: string) => change((now) => ({ ...now, letter: { ...now.letter, [key]: text } }));
        const proposed = usual[key]?.slice(0, most) ?? '';
        return (
          <div key={key}>
            <TextField label={say(label)} maxLength={most} value={household.letter?.[key] ?? ''} onChange={set} />
            {proposed !== '' && !household.letter?.[key] ? (
              <button type="button" className="plain" onClick={() => set(proposed)}>
                {say('Take “{text}”', { text: proposed })}
              </button>
            ) : null}
          </div>
        );
      })}
      <div className="actions">
        <button type="submit" className="main" disabled={!props.isWhole}>
          {say('Write the letter now')}
        </button>
        <button type="button" className="plain" onClick={props.onLeave}>
          {say('Not now')}
        </button>
      </div>
    </form>
  );
}

/** The first line of a contact that reads as a telephone number: digits, spaces and signs, at least six digits. */
function telephoneIn(contact: string): string {
  const numbers = contact.match(/\+?[\d(][\d\s()/-]{5,}\d/g) ?? [];
  return numbers.find((text) => text.replace(/\D/g, '').length >= 6)?.trim() ?? '';
}

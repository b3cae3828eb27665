/** Types a tariff, version by version; an hour without a price, or with two, is refused and named. */

import { useState } from 'react';
import type { Tariff } from '../../model/shapes/tariff.ts';
import { findTariffFaults } from '../../model/tariff/check-tariff.ts';
import { tariffFaultSentence } from '../../words/refusals.ts';
import { phrase, say } from '../../words/say.ts';
import { sayTold } from '../../words/say-told.ts';
import { ChoiceField, sayChoices } from '../shared/choice-field.tsx';
import { TextField } from '../shared/text-field.tsx';
import { finishDraft, type TariffDraft, type VersionDraft } from './tariff-draft.ts';
import { VersionEditor } from './version-editor.tsx';

const GRADES = [
  { value: 'measured', label: phrase('measured: read from a bill or letter') },
  { value: 'estimated', label: phrase('estimated') },
  { value: 'assumed', label: phrase('assumed') },
] as const;

export function TariffEditor(props: {
  readonly start: TariffDraft;
  /** What had to be guessed of a file, to be looked at. */
  readonly guesses: readonly string[];
  readonly onKeep: (tariff: Tariff) => void;
  readonly onLeave: () => void;
}) {
  const [draft, setDraft] = useState(props.start);
  const [asked, setAsked] = useState(false);
  const finished = finishDraft(draft);
  const faults = 'tariff' in finished ? findTariffFaults(finished.tariff) : [];
  const refusals = faults.filter((fault) => fault.weight === 'refusal').map(tariffFaultSentence);
  const doubts = faults.filter((fault) => fault.weight === 'question').map(tariffFaultSentence);
  const questions = [...props.guesses, ...doubts];
  const missing = 'missing' in finished ? [...new Set(finished.missing)] : [];
  const wrong = [...(asked ? missing : []), ...refusals];

  const setVersion = (index: number, version: VersionDraft) =>
    setDraft({ ...draft, versions: draft.versions.map((before, at) => (at === index ? version : before)) });
  const addVersion = () => {
    const last = draft.versions.at(-1)!;
    setDraft({ ...draft, versions: [...draft.versions, { ...last, from: '' }] });
  };
  const keep = () => {
    setAsked(true);
    if ('tariff' in finished && refusals.length === 0) props.onKeep(finished.tariff);
  };

  return (
    <section
      className="tariff-editor"
      aria-label={say('Tariff for {fuel, select, gas {gas} other {electricity}}', { fuel: draft.fuel })}
    >
      <div className="fields">
        <TextField
          label={say('Name of the tariff')}
          value={draft.name}
          maxLength={120}
          onChange={(name) => setDraft({ ...draft, name })}
        />
        <TextField
          label={say('Price source')}
          value={sayTold(draft.origin)}
          maxLength={300}
          placeholder={say('such as: bill of March 2026')}
          onChange={(origin) => setDraft({ ...draft, origin })}
        />
        <ChoiceField
          label={say('How sure')}
          value={draft.grade}
          choices={sayChoices(GRADES)}
          onChange={(grade) => setDraft({ ...draft, grade: grade ?? draft.grade })}
        />
      </div>
      {draft.versions.map((version, index) => (
        <VersionEditor
          // biome-ignore lint/suspicious/noArrayIndexKey: a version is its place in time.
          key={index}
          version={version}
          fuel={draft.fuel}
          canDrop={draft.versions.length > 1}
          onChange={(next) => setVersion(index, next)}
          onDrop={() => setDraft({ ...draft, versions: draft.versions.filter((_, at) => at !== index) })}
        />
      ))}
      <div className="actions">
        <button type="button" className="plain" onClick={addVersion}>
          {say('Add prices from a later day')}
        </button>
      </div>
      {wrong.length === 0 ? null : (
        <ul className="refusal" role="alert">
          {wrong.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {questions.length === 0 ? null : (
        <ul className="ask">
          {questions.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <div className="actions">
        <button type="button" className="main" onClick={keep}>
          {say('Save this tariff')}
        </button>
        <button type="button" onClick={props.onLeave}>
          {say('Cancel')}
        </button>
      </div>
    </section>
  );
}

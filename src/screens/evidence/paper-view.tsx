/** A bill on paper before it is kept: the page beside what was read, each value with what proves it. */
import { useState } from 'react';
import type { IntakeChoices, PaperReading, PaperValue } from '../../intake/intake.ts';
import { paperStateWords, paperValueName, paperValueText } from '../../words/paper.ts';
import { say } from '../../words/say.ts';
import { DateEntry } from '../shared/date-entry.tsx';
import './paper.css';
import { PaperPage, type PlaceOnPage } from './paper-page.tsx';

export function PaperView(props: {
  readonly paper: PaperReading;
  readonly choices: IntakeChoices;
  readonly onChoose: (part: IntakeChoices) => void;
}) {
  const { paper, choices, onChoose } = props;
  const [shown, setShown] = useState<string | null>(null);
  const [page, setPage] = useState(0);
  const [place, setPlace] = useState<PlaceOnPage | null>(null);
  const said = choices.paper ?? {};
  const settle = (part: typeof said) => onChoose({ paper: { ...said, ...part } });
  const show = (value: PaperValue) => {
    setShown(value.key);
    const [box] = value.boxes;
    if (!box) return;
    setPage(box.page);
    setPlace(wordAt(paper, value) ?? null);
  };
  const putRight = (text: string) => {
    if (!place) return;
    const others = (said.words ?? []).filter(({ page, at }) => page !== place.page || at !== place.at);
    settle({ words: [...others, { page: place.page, at: place.at, text }] });
    setPlace(null);
  };
  return (
    <div className="paper">
      <div className="paper-side">
        {paper.pages.length < 2 ? null : (
          <div className="actions">
            {paper.pages.map((_, number) => (
              <button
                // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
                key={number}
                type="button"
                className="plain"
                aria-pressed={number === page}
                onClick={() => setPage(number)}
              >
                {say('Page {number}', { number: number + 1 })}
              </button>
            ))}
          </div>
        )}
        <PaperPage paper={paper} page={page} shown={shown} corrected={said.words ?? []} onPick={setPlace} />
        {place === null ? (
          <p className="quiet small">{say('A value shows its place; a click on the page corrects it.')}</p>
        ) : (
          <Correction key={`${place.page} ${place.at}`} printed={place.text} onPutRight={putRight} />
        )}
      </div>
      <div className="paper-values">
        <p className="quiet">{countsWords(paper.values)}</p>
        <table>
          <thead>
            <tr>
              <th>{say('Read')}</th>
              <th>{say('On the page')}</th>
              <th>{say('How we know')}</th>
            </tr>
          </thead>
          <tbody>
            {paper.values.map((value) => (
              <tr key={value.key} className={`is-${value.state}`}>
                <th scope="row">
                  <button
                    type="button"
                    className="plain"
                    aria-pressed={value.key === shown}
                    onClick={() => show(value)}
                  >
                    {paperValueName(value)}
                  </button>
                </th>
                <td className="paper-figure">{paperValueText(value)}</td>
                <td className={value.state === 'proved' ? '' : 'quiet'}>{paperStateWords(value)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {paper.values.some(({ kind }) => kind === 'period') ? null : (
          <div className="fields">
            <DayField label={say('First day of the bill')} value={said.from ?? ''} onDay={(from) => settle({ from })} />
            <DayField label={say('First day after it')} value={said.to ?? ''} onDay={(to) => settle({ to })} />
          </div>
        )}
        <label className="small">
          <input
            type="checkbox"
            checked={said.keepPaper ?? false}
            onChange={(event) => settle({ keepPaper: event.target.checked })}
          />{' '}
          {say('Save the paper itself too, with the names and numbers on it')}
        </label>
      </div>
    </div>
  );
}

function DayField(props: { readonly label: string; readonly value: string; readonly onDay: (day: string) => void }) {
  return (
    <div className="field">
      <span>{props.label}</span>
      <DateEntry
        label={props.label}
        value={props.value}
        onChange={(day) => {
          if (/^\d{4}-\d{2}-\d{2}$/.test(day)) props.onDay(day);
        }}
      />
    </div>
  );
}

function Correction(props: { readonly printed: string; readonly onPutRight: (text: string) => void }) {
  const [text, setText] = useState(props.printed);
  return (
    <form
      className="actions"
      onSubmit={(event) => {
        event.preventDefault();
        props.onPutRight(text.trim());
      }}
    >
      <label>
        {say('On the paper it says')}{' '}
        <input type="text" value={text} maxLength={60} onChange={(event) => setText(event.target.value)} />
      </label>
      <button type="submit" disabled={text.trim() === '' || text.trim() === props.printed}>
        {say('Correct')}
      </button>
    </form>
  );
}

/** The word with digits in it that a value stands on. */
function wordAt({ pages }: PaperReading, { boxes }: PaperValue): PlaceOnPage | undefined {
  const [box] = boxes;
  const words = box ? (pages[box.page]?.words ?? []) : [];
  const at = words.findIndex(
    (word) =>
      /\d/.test(word.text) &&
      word.x >= box!.x - 1 &&
      word.x + word.width <= box!.x + box!.width + 1 &&
      Math.abs(word.y - box!.y) < word.height,
  );
  return at < 0 ? undefined : { page: box!.page, at, text: words[at]!.text };
}

function countsWords(values: readonly PaperValue[]): string {
  const count = (state: PaperValue['state']) => values.filter((value) => value.state === state).length;
  return say(
    '{proved, plural, one {# value proved} other {# values proved}}, {read} read, {against} contradicted, {typed} typed by you',
    { proved: count('proved'), read: count('read'), against: count('contradicted'), typed: count('typed') },
  );
}

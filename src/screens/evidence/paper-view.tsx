/** A bill on paper before it is kept: the page beside what was read, each value with what proves it. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { IntakeChoices, PaperReading, PaperRepair, PaperValue } from '../../intake/intake.ts';
import { addDays } from '../../model/calendar/civil.ts';
import { keepTogether } from '../../words/keep-together.ts';
import { paperStateWords, paperValueName, paperValueText } from '../../words/paper.ts';
import { say } from '../../words/say.ts';
import { TickField } from '../shared/choice-field.tsx';
import { DateEntry } from '../shared/date-entry.tsx';
import { readDate } from '../shared/date-text.ts';
import { lastDayOf } from './day-words.ts';
import './paper.css';
import { PaperPage, type PlaceOnPage } from './paper-page.tsx';

export function PaperView(props: {
  readonly paper: PaperReading;
  readonly choices: IntakeChoices;
  readonly onChoose: (part: IntakeChoices) => void;
  /** Questions about it. */
  readonly children: ReactNode;
}) {
  const { paper, choices, onChoose } = props;
  const [shown, setShown] = useState<string | null>(null);
  const [page, setPage] = useState(0);
  const [large, setLarge] = useState(false);
  const [place, setPlace] = useState<PlaceOnPage | null>(null);
  const said = choices.paper ?? {};
  const settle = (part: typeof said) => onChoose({ paper: { ...said, ...part } });
  /** Where the focus goes back to after a correction. */
  const opener = useRef<Element | null>(null);
  const pick = (to: PlaceOnPage) => {
    opener.current = document.activeElement;
    setPlace(to);
  };
  const leave = () => {
    if (opener.current instanceof HTMLElement) opener.current.focus({ preventScroll: true });
    setPlace(null);
  };
  const show = (value: PaperValue) => {
    setShown(value.key);
    const [box] = value.boxes;
    if (!box) return;
    setPage(box.page);
    const word = wordAt(paper, value);
    const typed = said.words?.find(({ page, at }) => page === word?.page && at === word.at);
    if (word) pick({ ...word, ...typed });
    else setPlace(null);
  };
  const putRight = (text: string, word: Pick<PlaceOnPage, 'page' | 'at'> | null = place) => {
    if (!word) return;
    const others = (said.words ?? []).filter(({ page, at }) => page !== word.page || at !== word.at);
    const isPrinted = paper.pages[word.page]?.words[word.at]?.text === text;
    settle({ words: isPrinted ? others : [...others, { page: word.page, at: word.at, text }] });
    if (place !== null) leave();
  };
  return (
    <div className={large ? 'paper is-large' : 'paper'}>
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
        <PaperPage paper={paper} page={page} shown={shown} corrected={said.words ?? []} onPick={pick} />
        {place === null ? (
          <p className="quiet small">{say('A value shows its place; a click on the page corrects it.')}</p>
        ) : (
          <Correction key={`${place.page} ${place.at}`} printed={place.text} onPutRight={putRight} onLeave={leave} />
        )}
        <button type="button" className="plain" aria-pressed={large} onClick={() => setLarge(!large)}>
          {large ? say('Page smaller') : say('Page larger')}
        </button>
        {(paper.repairs ?? []).map((repair) => (
          <Repair
            key={`${repair.page} ${repair.at} ${repair.text}`}
            paper={paper}
            repair={repair}
            onTake={() => putRight(repair.text, repair)}
          />
        ))}
      </div>
      <div className="paper-values">
        {props.children}
        {paper.values.some(({ kind }) => kind === 'period') ? null : (
          <div className="fields">
            <DayField label={say('First day of the bill')} value={said.from ?? ''} onDay={(from) => settle({ from })} />
            <DayField
              label={say('Last day of the bill')}
              value={said.to ? lastDayOf(said.to) : ''}
              onDay={(last) => settle({ to: addDays(last, 1) })}
            />
          </div>
        )}
        <p className="quiet">{countsWords(paper.values)}</p>
        <table>
          <thead>
            <tr>
              <th>{say('Read')}</th>
              <th>{say('How we know')}</th>
            </tr>
          </thead>
          <tbody>
            {chargesOf(paper.values).map((own) => (
              <ValueRow key={own[0]!.key} values={own} shown={shown} onShow={show} />
            ))}
          </tbody>
        </table>
        <TickField
          label={say('Save the paper itself too, with the names and numbers on it')}
          checked={said.keepPaper ?? false}
          onChange={(keepPaper) => settle({ keepPaper })}
        />
      </div>
    </div>
  );
}

/** What stands in one sum stands in one row: a charge with its units and price, the two readings of a meter, VAT with its rate. */
const TOGETHER: Readonly<Partial<Record<PaperValue['kind'], readonly PaperValue['kind'][]>>> = {
  use: ['price', 'charge', 'levy'],
  price: ['charge', 'levy'],
  days: ['standing-price', 'standing-charge'],
  'standing-price': ['standing-charge'],
  'vat-rate': ['vat'],
};

function chargesOf(values: readonly PaperValue[]): PaperValue[][] {
  const rows: PaperValue[][] = [];
  for (const value of values) {
    const last = rows.at(-1)?.at(-1);
    const isSame = last && TOGETHER[last.kind]?.includes(value.kind) && last.fuel === value.fuel;
    if (isSame && last.name === value.name) rows.at(-1)!.push(value);
    else rows.push([value]);
  }
  return rows;
}

/** The least known of some values says how well they are known together. */
const LEAST: readonly PaperValue['state'][] = ['contradicted', 'read', 'typed', 'proved'];

function ValueRow(props: {
  readonly values: readonly PaperValue[];
  readonly shown: string | null;
  readonly onShow: (value: PaperValue) => void;
}) {
  const { values } = props;
  const named =
    values.find(({ kind }) => kind === 'vat' || kind === 'levy' || kind === 'standing-charge') ?? values[0]!;
  const state = LEAST.find((one) => values.some((value) => value.state === one))!;
  const least = values.find((value) => value.state === state)!;
  const own = values.filter((value) => value.state === state);
  const sums = state === 'contradicted' ? [...new Set(own.flatMap((value) => value.sums))] : sumsOfAll(own);
  const isGuessed = values.some(({ meaning }) => meaning === 'guessed');
  const known = useId();
  return (
    <tr className={`is-${state}`}>
      <th scope="row" className="paper-figure">
        <span>{paperValueName(named)}</span>
        {values.map((value) => (
          <button
            key={value.key}
            type="button"
            className={`mark-${value.state}`}
            aria-label={`${paperValueName(value)}: ${paperValueText(value)}`}
            aria-describedby={known}
            aria-pressed={value.key === props.shown}
            onClick={() => props.onShow(value)}
          >
            {paperValueText(value)}
          </button>
        ))}
      </th>
      <td id={known} className={state === 'proved' ? '' : 'quiet'}>
        {keepTogether(paperStateWords({ ...least, sums, meaning: isGuessed ? 'guessed' : 'said' }))}
      </td>
    </tr>
  );
}

/** The fewest sums in which each of some values stands; one sum often holds a whole row. */
function sumsOfAll(values: readonly PaperValue[]): string[] {
  const [best] = [...new Set(values.flatMap(({ sums }) => sums))]
    .map((sum) => ({ sum, without: values.filter(({ sums }) => !sums.includes(sum)) }))
    .toSorted((a, b) => a.without.length - b.without.length);
  return best === undefined ? [] : [best.sum, ...sumsOfAll(best.without)];
}

/** What a number may be in truth, beside its place on the picture: the person looks and decides. */
function Repair(props: { readonly paper: PaperReading; readonly repair: PaperRepair; readonly onTake: () => void }) {
  const { page, at, read, text, sum } = props.repair;
  const whole = props.paper.pages[page];
  const word = whole?.words[at];
  if (!whole || !word) return null;
  const margin = word.height;
  return (
    <div className="ask paper-repair">
      <svg
        viewBox={`${word.x - margin * 2} ${word.y - margin / 2} ${word.width + margin * 4} ${word.height + margin}`}
        role="img"
        aria-label={say('The place on the page that reads {text}', { text: read })}
      >
        <image href={whole.picture} width={whole.width} height={whole.height} />
      </svg>
      <p>
        {say('We read {read}. If it says {text}, the sums come out: {sum}. Look at the picture.', { read, text, sum })}
      </p>
      <button type="button" onClick={props.onTake}>
        {say('It says {text}', { text })}
      </button>
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
          if (readDate(day).kind === 'day') props.onDay(day);
        }}
      />
    </div>
  );
}

function Correction(props: {
  readonly printed: string;
  readonly onPutRight: (text: string) => void;
  readonly onLeave: () => void;
}) {
  const [text, setText] = useState(props.printed);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []);
  return (
    <form
      className="actions"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        // Only this is left, not the bill.
        event.stopPropagation();
        props.onLeave();
      }}
      onSubmit={(event) => {
        event.preventDefault();
        props.onPutRight(text.trim());
      }}
    >
      <label>
        {say('On the paper it says')}{' '}
        <input ref={field} type="text" value={text} maxLength={60} onChange={(event) => setText(event.target.value)} />
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
  const of = (state: PaperValue['state']) => ({ count: values.filter((value) => value.state === state).length });
  const [proved, read, against, typed] = [of('proved'), of('read'), of('contradicted'), of('typed')];
  return [
    say('{count, plural, one {# value proved} other {# values proved}}', proved),
    ...(read.count > 0 ? [say('{count} only read', read)] : []),
    ...(against.count > 0 ? [say('{count} contradicted', against)] : []),
    ...(typed.count > 0 ? [say('{count} typed by you', typed)] : []),
  ].join(', ');
}

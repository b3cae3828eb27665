/** Terms of the trade are explained where they stand: marked once a page, and opened by a press. */
import { createContext, type ReactNode, use, useCallback, useEffect, useId, useMemo, useRef, useState } from 'react';
import { findTerms, type Term } from '../../words/glossary.ts';
import { capitalised } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { closingMarks } from './split-spoken.ts';

interface GlossaryOfPage {
  /** Whether this place is the one where the page marks the term; the first to ask has it. */
  readonly claim: (term: string, place: string) => boolean;
  readonly release: (place: string) => void;
  readonly open: (entry: Term, button: HTMLElement) => void;
}

const Context = createContext<GlossaryOfPage | null>(null);

/** What belongs to one page; give it a key that changes with the page. */
export function GlossaryPage({ children }: { readonly children: ReactNode }) {
  const owners = useRef(new Map<string, string>());
  const note = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState<Term | null>(null);
  const claim = useCallback((term: string, place: string) => {
    const owner = owners.current.get(term);
    if (owner === undefined) owners.current.set(term, place);
    return owner === undefined || owner === place;
  }, []);
  const release = useCallback((place: string) => {
    for (const [term, owner] of owners.current) if (owner === place) owners.current.delete(term);
  }, []);
  const open = useCallback((entry: Term, button: HTMLElement) => {
    setShown(entry);
    note.current?.showPopover({ source: button });
  }, []);
  const glossary = useMemo(() => ({ claim, release, open }), [claim, release, open]);
  return (
    <Context value={glossary}>
      {children}
      <div ref={note} popover="auto" className="term-meaning" role="note">
        {shown ? (
          <>
            <strong>{capitalised(shown.term)}:</strong> {shown.meaning}
          </>
        ) : null}
      </div>
    </Context>
  );
}

/** The terms that this place explains: those that no other place of the page has claimed before. */
function useTerms(text: string) {
  const glossary = use(Context);
  const place = useId();
  useEffect(() => () => glossary?.release(place), [glossary, place]);
  const terms = glossary ? findTerms(text).filter(({ entry }) => glossary.claim(entry.term, place)) : [];
  return { terms, open: glossary?.open };
}

/** A button in a sentence with the marks behind it: a line may break beside a button, even before a full stop. */
export function Closed({ marks, children }: { readonly marks: string; readonly children: ReactNode }) {
  return marks === '' ? (
    children
  ) : (
    <span className="closed">
      {children}
      {marks}
    </span>
  );
}

/** Text whose terms open their meaning; `show` finishes what is shown of each piece. */
export function Glossed(props: { readonly text: string; readonly show?: (text: string) => string }) {
  const { text, show = (piece) => piece } = props;
  const { terms, open } = useTerms(text);
  const pieces: ReactNode[] = [];
  let done = 0;
  for (const { at, end, entry } of terms) {
    const marks = closingMarks(text.slice(end));
    pieces.push(
      show(text.slice(done, at)),
      <Closed key={at} marks={marks}>
        <button type="button" className="term" onClick={(event) => open?.(entry, event.currentTarget)}>
          {show(text.slice(at, end))}
        </button>
      </Closed>,
    );
    done = end + marks.length;
  }
  return [...pieces, show(text.slice(done))];
}

/** Beside a label, in which a button could not stand: a mark that opens what the label's term means. */
export function TermMark({ label }: { readonly label: string }) {
  const { terms, open } = useTerms(label);
  return terms.map(({ entry }) => (
    <button
      key={entry.term}
      type="button"
      className="term-mark"
      aria-label={say('What is “{term}”?', { term: entry.term })}
      onClick={(event) => open?.(entry, event.currentTarget)}
    >
      ?
    </button>
  ));
}

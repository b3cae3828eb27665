import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { findTerms } from '../../words/glossary.ts';
import { capitalised } from '../../words/numbers.ts';
import { language, say } from '../../words/say.ts';

const textOf = (part: ReactElement) => renderToStaticMarkup(part).replace(/<[^>]*>/g, ' ');

/** The terms of the glossary that stand in what the household reads, by the alphabet. */
export function WordsPart({ of }: { readonly of: ReactElement }) {
  const terms = findTerms(textOf(of))
    .map(({ entry }) => entry)
    .toSorted((a, b) => a.term.localeCompare(b.term, language()));
  if (terms.length === 0) return null;
  return (
    <section className="follows">
      <h2>{say('Words in this paper')}</h2>
      <dl className="words">
        {terms.map(({ term, meaning }) => (
          <div key={term}>
            <dt>{capitalised(term)}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

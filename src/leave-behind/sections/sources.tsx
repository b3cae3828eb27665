import { say } from '../../words/say.ts';
import { keyOf } from '../../words/say-told.ts';
import { listSources } from '../list-assumptions.ts';
import { Origin } from '../origin.tsx';
import type { EstimateParts } from '../parts.ts';

export function SourcesPart({ parts }: { readonly parts: EstimateParts }) {
  return (
    <section className="follows">
      <h2>{say('Sources')}</h2>
      <ol className="steps">
        {listSources(parts).map((source) => (
          <li key={keyOf(source)}>
            <Origin text={source} />
          </li>
        ))}
      </ol>
    </section>
  );
}

import { Reworded } from '../../charts/reworded.tsx';
import { say } from '../../words/say.ts';
import { keyOf } from '../../words/say-told.ts';
import { listSources } from '../list-assumptions.ts';
import type { EstimateParts } from '../parts.ts';

export function SourcesPart({ parts }: { readonly parts: EstimateParts }) {
  return (
    <section className="follows">
      <h2>{say('Sources')}</h2>
      <ol className="steps">
        {listSources(parts).map((source) => (
          <li key={keyOf(source)}>
            <Reworded text={source} />
          </li>
        ))}
      </ol>
    </section>
  );
}

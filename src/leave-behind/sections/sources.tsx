import { listSources } from '../assumptions.ts';
import type { PromiseParts } from '../parts.ts';

export function SourcesPart({ parts }: { readonly parts: PromiseParts }) {
  return (
    <section className="follows">
      <h2>Sources</h2>
      <ol className="steps">
        {listSources(parts).map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ol>
    </section>
  );
}

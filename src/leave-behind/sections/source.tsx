import { FlowPicture } from '../../charts/flow/picture.tsx';
import { FLOW_NAME, flowSentence } from '../../charts/flow/sentence.ts';
import { flowInput, flowSeries } from '../../charts/flow/series.ts';
import { say } from '../../words/say.ts';
import { PAPER_WIDTH } from '../paper.ts';
import type { PromiseParts } from '../parts.ts';

const HEIGHT = 170;

/** From ground and meter to rooms and taps; nothing where a part is not known. */
export function SourcePart({ parts }: { readonly parts: PromiseParts }) {
  const input = flowInput(parts.appraisal);
  if (!flowSeries(input)) return null;
  return (
    <section className="follows whole">
      <h2>{say('Where the heat comes from')}</h2>
      <p className="say">{flowSentence(input)}</p>
      <figure>
        <div role="img" aria-label={`${FLOW_NAME}. ${flowSentence(input)}`}>
          <FlowPicture input={input} size="paper" width={PAPER_WIDTH} height={HEIGHT} />
        </div>
        <figcaption>
          {say('Units of a typical year. Pumps and standby are counted in what the meter shows.')}
        </figcaption>
      </figure>
    </section>
  );
}

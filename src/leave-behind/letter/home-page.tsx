import { BridgePicture } from '../../charts/bridge/picture.tsx';
import { bridgeSentence } from '../../charts/bridge/sentence.ts';
import { bridgeSeries } from '../../charts/bridge/series.ts';
import { unknownSentences } from '../../words/check.ts';
import {
  askSentences,
  knownSentences,
  leaveItSentence,
  letterThanks,
  letterVerdict,
  weDoSentences,
} from '../../words/letter.ts';
import { longDate } from '../../words/numbers.ts';
import { GradeLegend } from '../grade-legend.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import type { LetterParts } from './letter-parts.ts';

const PICTURE_HEIGHT = 236;

/** The page for the household: verdict, picture, what is known, what is not, what happens next. */
export function HomePage({ parts }: { readonly parts: LetterParts }) {
  const { check, promise, household, settings, writtenOn, promisedOn } = parts;
  const series = bridgeSeries(check);
  const unknown = unknownSentences(check);
  const asks = askSentences(check);
  return (
    <section className="first">
      <div className="letterhead">
        <span className="contact">
          {[settings.installerName, settings.installerContact].filter(Boolean).join('\n')}
        </span>
        <span>{longDate(writtenOn)}</span>
      </div>
      <h1 className="long">
        {household.name}: your bill and our promise {promise.number} of {longDate(promisedOn)}
      </h1>
      <p className="say">
        {letterThanks()} {letterVerdict(check)}
      </p>
      <figure>
        <div role="img" aria-label={bridgeSentence(series)}>
          <BridgePicture series={series} size="paper" width={PAPER_WIDTH} height={PICTURE_HEIGHT} />
        </div>
        <figcaption>{bridgeSentence(series)}</figcaption>
      </figure>
      <GradeLegend />
      <h3>What we know</h3>
      <ul className="steps">
        {knownSentences(check).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {unknown.length > 0 ? (
        <>
          <h3>What we do not know yet</h3>
          <ul className="steps">
            {unknown.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      ) : null}
      <h3>What happens next</h3>
      <ul className="steps">
        {weDoSentences(check).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {asks.length > 0 ? <li>Please tell us: {asks.join(' ')}</li> : null}
        <li>{leaveItSentence()}</li>
      </ul>
    </section>
  );
}

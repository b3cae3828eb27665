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
import { say } from '../../words/say.ts';
import { GradeLegend } from '../grade-legend.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import { fitPage, isLong, type LetterRoom, type PageTexts, senderText } from './fit-page.ts';
import type { LetterParts } from './letter-parts.ts';

/** The page for the household: verdict, picture, what is known, what is not, what happens next. */
export function HomePage({ parts }: { readonly parts: LetterParts }) {
  const { check, settings, writtenOn } = parts;
  const room = fitPage((tried) => textsOf(parts, tried), settings.paper);
  const { sender, heading, opening, caption, lists } = textsOf(parts, room);
  const [known = [], unknown = [], next = []] = lists;
  return (
    <section className="first">
      <div className="letterhead">
        <span className="sender">
          {settings.logo ? (
            <img src={settings.logo} alt={settings.installerName ? '' : say('Logo of the installer')} />
          ) : null}
          <span className="contact">{sender}</span>
        </span>
        <span className="date">{longDate(writtenOn)}</span>
      </div>
      <h1 className={isLong(heading) ? 'long longer' : 'long'}>{heading}</h1>
      <p className="say">{opening}</p>
      <figure>
        <div role="img" aria-label={caption}>
          <BridgePicture series={bridgeSeries(check)} size="paper" width={PAPER_WIDTH} height={room.pictureHeight} />
        </div>
        <figcaption>{caption}</figcaption>
      </figure>
      <GradeLegend />
      <Steps heading={say('What we know')} sentences={known} />
      <Steps heading={say('What we do not know yet')} sentences={unknown} />
      <Steps heading={say('What happens next')} sentences={next} />
    </section>
  );
}

/** All the texts of the page with so much room. */
function textsOf({ check, estimate, household, settings, estimatedOn }: LetterParts, room: LetterRoom): PageTexts {
  const asks = askSentences(check, room);
  return {
    sender: senderText(settings),
    heading: say('{name}: your bill and our promise {number} of {date}', {
      name: household.name,
      number: String(estimate.number),
      date: longDate(estimatedOn),
    }),
    opening: `${letterThanks()} ${letterVerdict(check)}`,
    caption: bridgeSentence(bridgeSeries(check)),
    lists: [
      knownSentences(check, room),
      unknownSentences(check).slice(0, room.unknown),
      [
        ...weDoSentences(check, room),
        ...(asks.length > 0 ? [say('Please tell us: {questions}', { questions: asks.join(' ') })] : []),
        leaveItSentence(),
      ],
    ],
  };
}

function Steps({ heading, sentences }: { readonly heading: string; readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul className="steps">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

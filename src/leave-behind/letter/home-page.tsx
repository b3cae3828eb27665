import type { LetterNames } from '../../model/shapes/household.ts';
import { checkSentence } from '../../words/check.ts';
import {
  knownSentences,
  leaveItSentence,
  letterClosing,
  letterGreeting,
  letterHeading,
  letterSteps,
  letterThanks,
  letterUnknowns,
  letterVerdict,
  ringSentence,
  stepBy,
  stepWho,
  urgentSentence,
} from '../../words/letter.ts';
import { longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { fitPage, type LetterRoom, type PageTexts, senderText } from './fit-page.ts';
import type { LetterParts } from './letter-parts.ts';
import { dangerAtPlant } from './plant-section.tsx';

/** The page for the household: verdict, what is known, what is not, who does what by when, whom to ring. */
export function HomePage({ parts, names }: { readonly parts: LetterParts; readonly names: Required<LetterNames> }) {
  const { settings, writtenOn } = parts;
  // Judged once: a page is fitted by many tries.
  const danger = dangerAtPlant(parts);
  const textsIn = (room: LetterRoom) => textsOf(parts, names, danger, room);
  const texts = textsIn(fitPage(textsIn, settings.paper));
  const { sender, greeting, heading, urgent, opening, lists, steps, endings, signature } = texts;
  const [known = [], unknown = []] = lists;
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
      <p className="greeting">{greeting}</p>
      <h1>{heading}</h1>
      {urgent === '' ? null : <p className="say urgent">{urgent}</p>}
      <p className="say">
        {opening.thanks} <strong>{opening.headline}</strong> {opening.verdict}
      </p>
      <Sentences heading={say('What we know')} sentences={known} />
      <Sentences heading={say('What we do not know yet')} sentences={unknown} />
      <h3>{say('What happens next')}</h3>
      <table className="next">
        <thead>
          <tr>
            <th scope="col">{say('Who')}</th>
            <th scope="col">{say('What')}</th>
            <th scope="col">{say('By when')}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ who, what, by }) => (
            <tr key={what}>
              <td>{who}</td>
              <td>{what}</td>
              <td>{by}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {endings.map((ending) => (
        <p key={ending} className="ending">
          {ending}
        </p>
      ))}
      <p className="signature">{signature}</p>
    </section>
  );
}

/** All the texts of the page with so much room. */
function textsOf(
  { check, settings, estimatedOn, writtenOn }: LetterParts,
  names: Required<LetterNames>,
  danger: ReturnType<typeof dangerAtPlant>,
  room: LetterRoom,
): PageTexts {
  return {
    sender: senderText(settings) || `${names.ringName}\n${names.ringTelephone}`,
    greeting: letterGreeting(names),
    heading: letterHeading(check),
    urgent: danger ? urgentSentence(danger.date, danger.said) : '',
    opening: { thanks: letterThanks(estimatedOn), headline: checkSentence(check), verdict: letterVerdict(check) },
    lists: [knownSentences(check, room), letterUnknowns(check).slice(0, room.unknown)],
    steps: letterSteps(check, writtenOn, room, danger !== null).map((step) => ({
      who: stepWho(step),
      what: step.what,
      by: stepBy(step),
    })),
    endings: [leaveItSentence(), ringSentence(names)],
    signature: `${letterClosing()}\n${names.ringName}`,
  };
}

function Sentences({ heading, sentences }: { readonly heading: string; readonly sentences: readonly string[] }) {
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

import { FollowingPicture } from '../../charts/following/picture.tsx';
import { followingSentence } from '../../charts/following/sentence.ts';
import { readSentences, scheduleNote, scheduleSentence } from '../../words/letter.ts';
import { exactKWh, longDate } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { NumberHead } from '../number-head.tsx';
import { PAPER_WIDTH } from '../paper.ts';
import { isHomeMeter, readingDays } from '../schedule.ts';
import type { LetterParts } from './letter-parts.ts';

const PICTURE_HEIGHT = 200;

/** What to read from now on, with how it has gone so far. */
export function SchedulePage({ parts }: { readonly parts: LetterParts }) {
  const { check, estimate } = parts;
  const months = check.months ?? [];
  const days = readingDays(check, estimate);
  const other = days.reduce((sum, { expected }) => sum + (expected?.otherKWh ?? 0), 0) / (days.length - 1);
  const series = { months, pencePerKWh: check.input.pencePerKWh };
  return (
    <section className="letter-schedule">
      <h2>{say('What to read from now on')}</h2>
      {months.length > 0 ? (
        <figure>
          <div role="img" aria-label={followingSentence(series)}>
            <FollowingPicture series={series} size="paper" width={PAPER_WIDTH} height={PICTURE_HEIGHT} />
          </div>
          <figcaption>
            {say('kWh by month.')} {followingSentence(series)}
          </figcaption>
        </figure>
      ) : null}
      <p className="plain">{scheduleSentence()}</p>
      <table className="schedule">
        <thead>
          <tr>
            <th scope="col">{say('Read on')}</th>
            <th scope="col" className="write">
              {isHomeMeter(check) ? say('Meter of the home') : say('Heat pump’s meter')}
            </th>
            <th scope="col" className="write">
              {say('Heat made')}
            </th>
            <th scope="col" className="write">
              {say('Heater’s hours')}
            </th>
            <NumberHead>{say('kWh to expect')}</NumberHead>
            <NumberHead>{say('Ring us above')}</NumberHead>
          </tr>
        </thead>
        <tbody>
          {days.map(({ on, expected }) => (
            <tr key={on}>
              <td>{longDate(on)}</td>
              <td className="write" />
              <td className="write" />
              <td className="write" />
              <td className="number">{expected ? exactKWh(expected.kWh) : ''}</td>
              <td className="number">{expected ? exactKWh(expected.warnKWh) : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">{scheduleNote(check, other)}</p>
      <ul className="steps">
        {readSentences(check).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/**
 * The two papers that answer a bill: the household's letter (a page, and a second with what to read from now on) and the
 * installer's sheet with the working. Dates come from the check and the written estimate alone, so the same check gives the same bytes.
 */

import type { LetterNames } from '../model/shapes/household.ts';
import { letterHeading } from '../words/letter.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { HomePage } from './letter/home-page.tsx';
import { type LetterInput, readLetter } from './letter/letter-parts.ts';
import { SchedulePage } from './letter/schedule-page.tsx';
import { WorkingPage } from './letter/working-page.tsx';
import letterStyle from './letter.css?raw';

/** The household's two pages. */
export function renderLetter(input: LetterInput, names: Required<LetterNames>): string {
  const parts = readLetter(input);
  const { check, household, settings, writtenOn } = parts;
  return renderDocument({
    title: `${household.name}: ${letterHeading(check)}`,
    foot: say('Letter of {date} · {name}', { date: longDate(writtenOn), name: shorten(household.name, 28) }),
    settings,
    style: letterStyle,
    children: (
      <>
        <HomePage parts={parts} names={names} />
        <SchedulePage parts={parts} />
      </>
    ),
  });
}

/** The installer's working of the same check. */
export function renderSheet(input: LetterInput): string {
  const parts = readLetter(input);
  const { estimate, household, settings, writtenOn } = parts;
  const number = String(estimate.number);
  return renderDocument({
    title: say('{name}: working of a bill check, written estimate {number}', { name: household.name, number }),
    foot: say('Installer’s sheet of {date} · written estimate {number} · {name}', {
      date: longDate(writtenOn),
      number,
      name: shorten(household.name, 28),
    }),
    settings,
    style: letterStyle,
    children: <WorkingPage parts={parts} />,
  });
}

/**
 * The letter that answers a bill: a page for the household, the working for the installer, what to read from now on.
 * Dates come from the check and the written estimate alone, so the same check gives the same bytes.
 */

import type { BillCheck } from '../model/shapes/bill-check.ts';
import type { Household } from '../model/shapes/household.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { longDate } from '../words/numbers.ts';
import { say } from '../words/say.ts';
import { renderDocument, shorten } from './document.tsx';
import { HomePage } from './letter/home-page.tsx';
import { readLetter } from './letter/letter-parts.ts';
import { SchedulePage } from './letter/schedule-page.tsx';
import { WorkingPage } from './letter/working-page.tsx';
import letterStyle from './letter.css?raw';
import type { DocumentSettings } from './parts.ts';

export function renderLetter(
  check: BillCheck,
  estimate: WrittenEstimate,
  household: Household,
  settings: DocumentSettings,
): string {
  const parts = readLetter(check, estimate, household, settings);
  const number = String(estimate.number);
  return renderDocument({
    title: say('{name}: a bill held against promise {number}', { name: household.name, number }),
    foot: say('Letter of {date} · promise {number} · {name}', {
      date: longDate(parts.writtenOn),
      number,
      name: shorten(household.name, 28),
    }),
    settings,
    style: letterStyle,
    children: (
      <>
        <HomePage parts={parts} />
        <WorkingPage parts={parts} />
        <SchedulePage parts={parts} />
      </>
    ),
  });
}

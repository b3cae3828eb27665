/** The letter that answers a complaint: plain, exact and kind. */

import type { NextStep } from '../model/bill-gap/next-steps.ts';
import { addDays } from '../model/calendar/civil.ts';
import type { BillCheck, CheckFinding } from '../model/shapes/bill-check.ts';
import { causeSentence, checkSentence, doubtSentences, fairSentence, partsForDays, seasonSentence } from './check.ts';
import { askSentence, costOfFinding, homeSentence, sureShort } from './findings.ts';
import { longDate } from './numbers.ts';
import { phrase, say } from './say.ts';
import { lookUp } from './unknown.ts';
import { warningSentence } from './watch.ts';

/** Parts below this are left to the working. */
const LEAST_PENCE = 500;

/** How many sentences of each kind there is room for: the household's page is one page; the installer's has them all. */
export interface SentenceRoom {
  readonly parts: number;
  readonly findings: number;
  readonly steps: number;
  readonly asks: number;
}

/** "1 December 2025 to 28 February 2026". */
export const daysOfBill = ({ from, to }: Pick<BillCheck['input'], 'from' | 'to'>): string =>
  say('{low} to {high}', { low: longDate(from), high: longDate(addDays(to, -1)) });

/** Whether it is inside what was estimated stands first. */
export function letterVerdict(check: BillCheck): string {
  const { from, to } = check.input;
  const which = say('This is about your heating from {from} to {to}.', {
    from: longDate(from),
    to: longDate(addDays(to, -1)),
  });
  return [which, checkSentence(check), ...doubtSentences(check), fairSentence(check)].filter(Boolean).join(' ');
}

export function letterThanks(): string {
  return say('Thank you for telling us. We have held your bill against the paper that we gave you.');
}

/** The largest steps, then what the readings show. */
export function knownSentences(check: BillCheck, room: SentenceRoom): string[] {
  const parts = partsForDays(check)
    .filter(({ pence, joined }) => Math.abs(pence) >= LEAST_PENCE && !(joined && joined.length > 1))
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence))
    .slice(0, room.parts)
    .map(({ cause, pence }) => causeSentence(cause, pence));
  const season = seasonSentence(check);
  return [
    ...(season ? [season] : []),
    ...(parts.length > 0 ? [parts.join(' ')] : []),
    ...(check.findings ?? []).slice(0, room.findings).map(findingLine),
  ];
}

const findingLine = (finding: CheckFinding): string =>
  [homeSentence(finding), say('We are {sure}.', { sure: sureShort(finding) }), costOfFinding(finding)].join(' ');

type Asked = Extract<NextStep, 'actual-reading' | 'who-is-at-home'>;
const WE_DO: Readonly<Record<Exclude<NextStep, Asked>, string>> = {
  'outdoor-temperature': phrase('We will find out how cold those days were.'),
  'heat-pump-meter': phrase('We will read the heat pump’s own meter, or talk with you about having one.'),
  'heat-meter': phrase('We will read how much heat the machine has made. It tells us how well it works.'),
  'flow-temperature': phrase('We will see how hot the water to your radiators is, and whether it needs to be.'),
  'immersion-hours': phrase('We will see for how many hours the electric heater has run.'),
};
const YOU_TELL: Readonly<Record<Asked, string>> = {
  'actual-reading': phrase('What does the meter show today?'),
  'who-is-at-home': phrase('Are more people at home, are rooms warmer, or are more rooms heated than before?'),
};

const sayIf = (text: string | undefined): string[] => (text === undefined ? [] : [say(text)]);

/** What the installer does next. */
export function weDoSentences({ next, findings }: Pick<BillCheck, 'next' | 'findings'>, room: SentenceRoom): string[] {
  const heater = findings?.some(({ code }) => code === 'heater-running')
    ? [say('We will see why the electric heater came on, and set it right if you wish.')]
    : [];
  return [
    ...heater,
    ...next.flatMap((code) => sayIf(lookUp<string>(WE_DO, code))).slice(0, room.steps),
    say('Then we will write again, with what it was and what it saves.'),
  ];
}

/** What the household is asked; everyday questions first come from what the readings show. */
export function askSentences({ next, findings }: Pick<BillCheck, 'next' | 'findings'>, room: SentenceRoom): string[] {
  const asked = (findings ?? []).flatMap(({ ask }) => ask.map(askSentence));
  return [...new Set([...asked, ...next.flatMap((code) => sayIf(lookUp<string>(YOU_TELL, code)))])].slice(0, room.asks);
}

export function leaveItSentence(): string {
  return say('Please leave the machine as it is set, and do not open it. It holds pressure, hot water and live wires.');
}

export function scheduleSentence(): string {
  return say(
    'Read the meter on the first day of each month and write it here. Ring us if a month takes more than the last column says.',
  );
}
export function scheduleNote(): string {
  return say('The units are those of a usual year. In a cold month it may be more. {often}', {
    often: warningSentence(),
  });
}
/** What else to write down, and how often. */
export function readSentences({ next, input }: Pick<BillCheck, 'next' | 'input'>): string[] {
  return [
    say('Once a week: the outdoor temperature, and how hot the water to the radiators is at that hour.'),
    say('Once a month: the hours of the electric heater, if the control shows them.'),
    ...(input.heatKWh === undefined && next.includes('heat-meter')
      ? [say('Once a month: the heat made, from the heat meter or the machine’s own display.')]
      : []),
    say('On the day itself: any change of settings, people staying, or a window left open for long.'),
  ];
}

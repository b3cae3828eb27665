/** The letter that answers a bill: plain, exact and kind. What the household may have done is only ever asked. */

import { addDays } from '../model/calendar/civil.ts';
import { guidedSearch, LARGE_SHARE } from '../model/guided-search/guided-search.ts';
import type { BillCheck, BillDoubt, CheckFinding } from '../model/shapes/bill-check.ts';
import type { CivilDate } from '../model/shapes/dates.ts';
import type { LetterNames } from '../model/shapes/household.ts';
import {
  CONTRADICTIONS,
  causeSentence,
  checkSentence,
  doubtSentence,
  fairSentence,
  insideOf,
  partsForDays,
  unknownSentences,
  verdictSentence,
} from './check.ts';
import { askSentence, homeSentence, sureShort } from './findings.ts';
import { customerWords, likelyForHome } from './guided-search.ts';
import { longDate, spokenKWh, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { warningSentence } from './watch.ts';

/** Parts below this are left to the sheet. */
const LEAST_PENCE = 500;
/** From this share of what is left on, what was seen may explain it. Common practice, no source. */
const MUCH_OF_LEFT = 0.5;

/** How many sentences of each kind there is room for: the household's page is one page; the installer's sheet has them all. */
export interface SentenceRoom {
  readonly parts: number;
  readonly findings: number;
  readonly steps: number;
  readonly asks: number;
}

/** "1 December 2025 to 28 February 2026". */
export const daysOfBill = ({ from, to }: Pick<BillCheck['input'], 'from' | 'to'>): string =>
  say('{low} to {high}', { low: longDate(from), high: longDate(addDays(to, -1)) });

export const letterGreeting = ({ to }: Pick<Required<LetterNames>, 'to'>): string => say('Dear {to},', { to });

export const letterHeading = ({ input }: Pick<BillCheck, 'input'>): string =>
  say('Your electricity bill, {days}', { days: daysOfBill(input) });

export const letterThanks = (estimatedOn: CivilDate): string =>
  say('Thank you for telling us about your bill. We put it beside the written estimate of {date} that you have.', {
    date: longDate(estimatedOn),
  });

/** Inside or outside where the headline does not say that; the range that the bill is compared with. */
export function letterVerdict(check: BillCheck): string {
  const verdict = verdictSentence(check);
  return [checkSentence(check) === verdict ? '' : verdict, fairSentence(check)].filter(Boolean).join(' ');
}

/** What a visit to the machine found that cannot wait; it stands before anything of the bill. */
export const urgentSentence = (visitedOn: CivilDate, danger: string): string =>
  say('First of all, from our visit on {date}. {danger} Please ring us today, so that we can come.', {
    date: longDate(visitedOn),
    danger,
  });

/** Causes that a paper shows, or that lie with the machine: nobody in the house is asked about them. */
const SHOWN: readonly string[] = [
  'price',
  'tariff',
  'when',
  'standing-charge',
  'weather',
  'own-generation',
  'metering',
  'backup',
  'efficiency',
];
const isShown = ({ cause, joined = [] }: BillCheck['parts'][number]): boolean =>
  [cause, ...joined].every((one) => SHOWN.includes(one));

/** "The price and the hours of use together added about £136." */
function partSentence({ cause, joined, pence }: BillCheck['parts'][number]): string {
  const parts = insideOf({ ...(joined ? { joined } : {}) });
  if (parts === '') return causeSentence(cause, pence);
  return say('Together {parts} {way, select, added {added} other {took away}} about {amount}.', {
    parts,
    way: pence > 0 ? 'added' : 'took',
    amount: spokenPounds(Math.abs(pence)),
  });
}

/** What the papers show, the largest first; what is left over; what the readings show. */
export function knownSentences(check: BillCheck, room: SentenceRoom): string[] {
  const parts = partsForDays(check);
  const shown = parts
    .filter((part) => isShown(part) && Math.abs(part.pence) >= LEAST_PENCE)
    .toSorted((a, b) => Math.abs(b.pence) - Math.abs(a.pence))
    .slice(0, room.parts)
    .map(partSentence);
  return [
    ...contradictionsOf(check),
    ...heatPumpsPart(check),
    ...seasonSentences(check),
    ...(shown.length > 0 ? [shown.join(' ')] : []),
    ...leftSentences(
      parts.filter((part) => !isShown(part)).reduce((sum, { pence }) => sum + pence, 0),
      check,
    ),
    ...findingLines(check).slice(0, room.findings),
  ];
}

/** Both sides of evidence that contradicts itself, where the headline has not said them. */
function contradictionsOf(check: BillCheck): string[] {
  const told = (check.doubts ?? []).filter(({ code }) => CONTRADICTIONS.includes(code)).map(doubtSentence);
  return told.filter((sentence) => sentence !== checkSentence(check));
}

/** A bill of the whole home of which the heat pump's own meter tells its part: only that is compared. */
function heatPumpsPart({ input }: Pick<BillCheck, 'input'>): string[] {
  const { meter, heatPumpKWh, boughtKWh, otherKWh = 0 } = input;
  if (meter !== 'whole-house' || heatPumpKWh !== boughtKWh || !(otherKWh > 0)) return [];
  return [
    say(
      'Only the heat pump’s part of your bill is compared: {part} of {all}. The rest went into other things at home.',
      {
        part: spokenKWh(boughtKWh),
        all: spokenKWh(boughtKWh + otherKWh),
      },
    ),
  ];
}

/** A household that divides the year by four is told why a winter's quarter is no quarter. */
function seasonSentences({ estimatedPence, seasonPence }: BillCheck): string[] {
  if (seasonPence === undefined || !(Math.abs(seasonPence - estimatedPence) >= LEAST_PENCE)) return [];
  return [
    say(
      'A year’s cost is not spread evenly. In a usual year these days are {season, select, cold {colder} other {milder}} than the others. They cost about {amount} then, where an even share is {slice}.',
      {
        slice: spokenPounds(estimatedPence),
        season: seasonPence > estimatedPence ? 'cold' : 'mild',
        amount: spokenPounds(seasonPence),
      },
    ),
  ];
}

const byHowMuch = (pence: number) => ({
  amount: spokenPounds(Math.abs(pence)),
  way: pence > 0 ? 'more' : 'less',
});

function leftSentences(leftPence: number, check: BillCheck): string[] {
  const { verdict } = check;
  if (!(Math.abs(leftPence) >= LEAST_PENCE)) return [];
  // Where nobody has said what else the bill holds, nothing is more or less than expected.
  if (verdict === 'unknown') {
    return [
      say('About {amount} is left for what else the home used, and for any difference of the heating.', {
        amount: spokenPounds(Math.max(0, leftPence)),
      }),
    ];
  }
  if (Math.abs(leftPence) <= LARGE_SHARE * check.expected.value) {
    return [
      say(
        'After that the bill is about {amount} {way, select, more {more} other {less}} than expected. So much differs from one home to another, and from year to year.',
        byHowMuch(leftPence),
      ),
    ];
  }
  const seenPence = (check.findings ?? [])
    .filter(({ part }) => part !== undefined && !SHOWN.includes(part))
    .reduce((sum, { pence }) => sum + pence, 0);
  return [
    [
      say(
        'After that the bill is about {amount} {way, select, more {more} other {less}} than expected.',
        byHowMuch(leftPence),
      ),
      seenPence / leftPence >= MUCH_OF_LEFT
        ? say('What your meter shows may explain much of it.')
        : say('We do not know yet why.'),
    ].join(' '),
  ];
}

/** What is a part of the difference comes first; what was seen in several stretches may read the same. */
function findingLines({ findings = [], ...check }: BillCheck): string[] {
  const meters = new Set(findings.map(({ meter }) => meter));
  const isOneOfTwo = meters.has('heat-pump') && meters.has('whole-house');
  const ordered = findings.toSorted((a, b) => Number(a.part === undefined) - Number(b.part === undefined));
  return [...new Set(ordered.map((finding) => findingLine(finding, check, isOneOfTwo)))];
}

const findingLine = (finding: CheckFinding, { input }: Pick<BillCheck, 'input'>, isOneOfTwo: boolean): string =>
  [
    homeSentence(finding),
    ...(finding.code === 'large-load' && finding.part !== undefined && Math.abs(finding.pence) >= LEAST_PENCE
      ? [
          say('In the days of this bill it took about {units}, for about {amount}.', {
            units: spokenKWh(finding.kWh),
            amount: spokenPounds(finding.pence),
          }),
        ]
      : []),
    // The machine has a meter of its own, so that this is about all the others.
    ...(finding.meter === 'whole-house' && (isOneOfTwo || input.heatPumpKWh !== undefined)
      ? [say('This is the rest of the home, without the heat pump.')]
      : []),
    ...(finding.meter === 'heat-pump' && isOneOfTwo ? [say('This is the heat pump alone.')] : []),
    say('We are {sure}.', { sure: sureShort(finding) }),
  ].join(' ');

/** What nobody knows yet, for the household: the likely causes with their chances, else what cannot be told apart. */
export function letterUnknowns(check: BillCheck): string[] {
  const { input, parts } = check;
  const search = guidedSearch(check);
  const joined = parts.filter((part) => insideOf(part));
  const likely = likelyForHome(search);
  const open = search.direction === null ? joined.filter((part) => !isShown(part)) : [];
  return [
    ...(search.direction === null
      ? open
          .filter(() => check.verdict === 'unknown')
          .map((part) => say('We cannot tell apart yet: {parts}.', { parts: insideOf(part) }))
      : [[say('Most of the difference may come from one of these.'), ...likely].join(' ')]),
    ...(check.doubts ?? []).flatMap((doubt) => {
      if (doubt.code === 'other-unknown') return [doubtSentence(doubt)];
      return doubt.code === 'readings-cover-part' ? [coverSentence(doubt)] : [];
    }),
    ...unknownSentences({ input, parts: parts.filter((part) => !joined.includes(part)) }),
  ];
}

const coverSentence = ({ daysRead = 0, days = 0 }: BillDoubt): string =>
  daysRead === 0
    ? say('We have no readings of the meter for the days of this bill.')
    : say('Our readings of the meter cover {daysRead} of the bill’s {days} days.', { daysRead, days });

/** What a finding makes one ask and a question of the search says as well. */
const SAME_QUESTION: Readonly<Partial<Record<string, readonly string[]>>> = {
  'days-away': ['away'],
  panels: ['panels'],
  'heating-off': ['heating-in-summer'],
  'people-and-water': ['more-people', 'baths'],
  'other-loads': ['new-appliance'],
};

/** One line of what happens next. */
export interface LetterStep {
  readonly who: 'you' | 'we' | 'both';
  readonly what: string;
  /** Null where it holds from now on. */
  readonly by: CivilDate | null;
}

/** Days from the letter on by which each side has done its part. Common practice, no source. */
const DUE_DAYS = { you: 7, we: 14, both: 21 } as const;
/** What a visit found that cannot wait. Common practice, no source. */
const URGENT_DAYS = 2;

/**
 * What each side does next and by when: the questions that would tell most, then what the readings make one ask. To write
 * again is promised only where there is something to find out.
 */
export function letterSteps(
  check: BillCheck,
  writtenOn: CivilDate,
  room: SentenceRoom,
  isUrgent: boolean,
): LetterStep[] {
  const { next, direction } = guidedSearch(check);
  const has = (code: BillDoubt['code']) => (check.doubts ?? []).some((doubt) => doubt.code === code);
  const other = check.doubts?.find(({ code }) => code === 'other-unknown');
  const findings = check.findings ?? [];
  const words = (isHome: boolean) =>
    next
      .filter(({ who }) => (who === 'household') === isHome)
      // The meter is read for the supplier already.
      .filter(({ question }) => question !== 'meter-reading' || meter.length === 0)
      .map(({ question, who }) => customerWords(question, who));
  const isAsked = (code: string) => next.some(({ question }) => SAME_QUESTION[question]?.includes(code));
  const open = findings.flatMap(({ ask }) => ask.filter((code) => !isAsked(code)));
  const asks = [...new Set(open.map(askSentence))].slice(0, room.asks);
  const meter = [
    ...(has('bill-above-readings') || has('bill-below-readings')
      ? [say('Please read all figures on the meter, write down the day, and ask your supplier to check the bill.')]
      : []),
  ];
  const records = [
    ...(has('readings-cover-part') && direction !== null
      ? [say('Please ask your supplier for the meter’s readings of all the days of the bill, and send them to us.')]
      : []),
    ...(other && !other.fromRecord
      ? [say('Please look on a bill from before the heat pump: how many kWh of electricity did the home use?')]
      : []),
    // What it used before is known; whether that still holds, only the household knows.
    ...(other?.fromRecord && next.every(({ question }) => question !== 'other-loads')
      ? [customerWords('other-loads')]
      : []),
  ];
  const heater = findings.some(({ code }) => code === 'heater-running')
    ? [say('We see why the electric heater came on, and correct it if you wish.')]
    : [];
  const anew = has('units-hold-other') ? [say('We take off what else the home used, and compare again.')] : [];
  const ours = [...anew, ...heater, ...words(false)].slice(0, room.steps);
  const step = (who: LetterStep['who'], what: string): LetterStep => ({
    who,
    what,
    by: addDays(writtenOn, DUE_DAYS[who]),
  });
  return [
    ...(isUrgent
      ? [
          {
            who: 'we' as const,
            what: say('We come and see to what cannot wait at the machine.'),
            by: addDays(writtenOn, URGENT_DAYS),
          },
        ]
      : []),
    ...[...meter, ...records, ...words(true)].map((what) => step('you', what)),
    ...(asks.length > 0 ? [step('you', say('Please tell us: {questions}', { questions: asks.join(' ') }))] : []),
    ...ours.map((what) => step('we', what)),
    ...(isUrgent || meter.length + records.length + next.length + asks.length + ours.length > 0
      ? [step('both', say('We write again, with what we have learned by then.'))]
      : [{ who: 'you' as const, what: say('Nothing needs to be done. Please read the meter each month.'), by: null }]),
  ];
}

const WHO: Readonly<Record<LetterStep['who'], string>> = { you: phrase('You'), we: phrase('We'), both: phrase('We') };
export const stepWho = ({ who }: LetterStep): string => say(WHO[who]);
export const stepBy = ({ by }: LetterStep): string => (by === null ? say('from now on') : longDate(by));

export function leaveItSentence(): string {
  return say('Please leave the machine as it is set, and do not open it. It holds pressure, hot water and live wires.');
}

/** Whom to ring, and when not to wait. */
export function ringSentence({ ringName, ringTelephone }: Required<LetterNames>): string {
  return say(
    'For anything that is not clear, ring {name} on {telephone}. Ring at once if the rooms stay cold or the hot water runs out.',
    { name: ringName, telephone: ringTelephone },
  );
}

export const letterClosing = (): string => say('With kind regards');

export function scheduleSentence(): string {
  return say(
    'Read the meter on the first day of each month and write it here. Ring us if a month takes more than the last column says.',
  );
}
/** What the columns hold; `otherKWh` a month is what the meter of a home counts beside heating and hot water. */
export function scheduleNote({ input, doubts }: Pick<BillCheck, 'input' | 'doubts'>, otherKWh: number): string {
  if (otherKWh > 0)
    return say(
      'These are the kWh of a normal year for the whole home. About {other} a month go into other things, {told, select, told {as we took for this bill} before {as in the records from before} other {as is usual}}. In a cold month it may be more.',
      {
        other: spokenKWh(otherKWh),
        told: input.otherKWh !== undefined ? 'told' : doubts?.some(({ fromRecord }) => fromRecord) ? 'before' : 'usual',
      },
    );
  return say('These are the kWh of a normal year. In a cold month it may be more. {often}', {
    often: warningSentence(),
  });
}
/** What else to write down, and how often. */
export function readSentences({ next, input }: Pick<BillCheck, 'next' | 'input'>): string[] {
  return [
    say('Once a week: the outdoor temperature, and how hot the water to the radiators is at that hour.'),
    say('Once a month: the hours of the electric heater, if the control shows them.'),
    ...(input.heatKWh === undefined && next.includes('heat-made')
      ? [say('Once a month: the heat made, from the heat meter or the machine’s own display.')]
      : []),
    say('On the day itself: any change of settings, people staying, or a window left open for long.'),
  ];
}

/** A bill held against a written estimate: first whether it lies inside what was estimated, then why it differs. */

import type { NextStep } from '../model/bill-gap/next-steps.ts';
import type { BillCause, BillCheck } from '../model/shapes/bill-check.ts';
import { listed, poundsRange, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { lookUp, unknownName, unknownSentence } from './unknown.ts';

/** Differences below a pound are not spoken of. */
const NOTHING_PENCE = 100;

type Verdict = Pick<BillCheck, 'verdict' | 'expected' | 'actualPence'> & Partial<Pick<BillCheck, 'parts'>>;

/** Whether the weather of the bill's days was known; where it was not, nothing may be said to be put right for it. */
const knowsWeather = ({ parts }: Verdict): boolean =>
  parts === undefined || parts.some(({ cause }) => cause === 'weather');

/** First: inside, above or below what was estimated for these very days, price and weather. */
export function verdictSentence(check: Verdict, whose: 'the' | 'your' = 'the'): string {
  const fair = fairSentence(check, whose);
  return isJudged(check) && check.verdict === 'inside' ? `${fair} ${say('The bill lies inside.')}` : fair;
}

const isJudged = ({ expected, actualPence }: Verdict): boolean =>
  Number.isFinite(actualPence) && Number.isFinite(expected.value);

/** The same where the page has said already that the bill lies inside. */
export function fairSentence(check: Verdict, whose: 'the' | 'your' = 'the'): string {
  const { verdict, expected, actualPence } = check;
  if (!isJudged(check)) return say('This bill cannot be judged yet.');
  const fair = say(
    '{whose, select, your {Your} other {The}} bill is {amount}. For {weather, select, known {these days, this price and this weather} other {these days and this price}} the promise comes to {range}.',
    {
      whose,
      amount: spokenPounds(actualPence),
      weather: knowsWeather(check) ? 'known' : 'unknown',
      range: poundsRange(expected.low, expected.high),
    },
  );
  if (verdict === 'inside') return fair;
  const edge = Math.abs(verdict === 'above' ? actualPence - expected.high : expected.low - actualPence);
  const lies =
    edge < NOTHING_PENCE
      ? say('The bill lies just {verdict, select, above {above} other {below}} that.', { verdict })
      : say('The bill lies {amount} {verdict, select, above {above} other {below}} that.', {
          verdict,
          amount: spokenPounds(edge),
        });
  return `${fair} ${lies}`;
}

type Estimated = Pick<BillCheck, 'actualPence' | 'estimatedPence' | 'seasonPence'>;

/** The written estimate for exactly the days of the bill: winter days take more than their share of the year. */
export const estimatedForDaysPence = ({
  estimatedPence,
  seasonPence,
}: Pick<BillCheck, 'estimatedPence' | 'seasonPence'>) => seasonPence ?? estimatedPence;

/** The causes from the estimate for these days to the bill: the step from an even slice of the year is behind them. */
export const partsForDays = ({ parts, seasonPence }: Pick<BillCheck, 'parts' | 'seasonPence'>) =>
  seasonPence === undefined ? parts : parts.filter(({ cause }) => cause !== 'days');

/** Against the promise for these days: "The bill is £212 above the promise." */
export function differenceFromEstimate(check: Estimated): string {
  const difference = check.actualPence - estimatedForDaysPence(check);
  if (!Number.isFinite(difference)) return say('The bill and the promise cannot be compared yet.');
  if (Math.abs(difference) < NOTHING_PENCE) return say('The bill is as promised.');
  return say('The bill is {amount} {way, select, above {above} other {below}} the promise.', byHowMuch(difference));
}

/** The same where the sentence before has named the bill: "It is £212 above the promise." */
function andDifference(check: Estimated): string {
  const difference = check.actualPence - estimatedForDaysPence(check);
  if (!Number.isFinite(difference)) return differenceFromEstimate(check);
  if (Math.abs(difference) < NOTHING_PENCE) return say('It is as promised.');
  return say('It is {amount} {way, select, above {above} other {below}} the promise.', byHowMuch(difference));
}

const byHowMuch = (difference: number) => ({
  amount: spokenPounds(Math.abs(difference)),
  way: difference > 0 ? 'above' : 'below',
});

/** Causes that nobody in the house can help: what is left without them is what has to be explained. */
const PUT_RIGHT = ['days', 'price', 'when', 'standing-charge', 'weather'];

/** What stays when price and weather are put right: the rest of the same split that the picture shows [pence]. */
export const leftPence = ({ actualPence, expected, parts }: Verdict): number =>
  parts?.filter(({ cause }) => !PUT_RIGHT.includes(cause)).reduce((sum, { pence }) => sum + pence, 0) ??
  actualPence - expected.value;

function leftSentence(check: Verdict): string {
  const left = leftPence(check);
  if (!Number.isFinite(left)) return '';
  const right = knowsWeather(check) ? 'weather' : 'season';
  if (Math.abs(left) < NOTHING_PENCE)
    return say('With {right, select, weather {weather} other {season}} and price put right, the bill is as promised.', {
      right,
    });
  return say(
    'With {right, select, weather {weather} other {season}} and price put right, the bill is still {amount} {way, select, above {higher} other {lower}} than promised.',
    { right, ...byHowMuch(left) },
  );
}

/** The same with where that puts the bill. */
export function leftOverSentence(check: Verdict): string {
  const left = leftSentence(check);
  if (!(Math.abs(leftPence(check)) >= NOTHING_PENCE)) return left;
  return `${left} ${say(
    check.verdict === 'inside' ? 'That is within the range we gave.' : 'That is outside the range we gave.',
  )}`;
}

const LIES: Readonly<Record<BillCheck['verdict'], string>> = {
  inside: phrase('The bill lies inside the promised range.'),
  above: phrase('The bill lies above the promised range.'),
  below: phrase('The bill lies below the promised range.'),
};

/** The opening of the page: inside, above or below; then the difference, and what is left of it. */
export function checkSentence(check: Verdict & Estimated): string {
  const lies = Number.isFinite(check.actualPence) ? say(LIES[check.verdict]) : '';
  return [lies, andDifference(check), leftSentence(check)].filter(Boolean).join(' ');
}

/** Why a winter bill is no even slice of the yearly figure; empty where the season makes no odds. */
export function seasonSentence({
  estimatedPence,
  seasonPence,
}: Pick<BillCheck, 'estimatedPence' | 'seasonPence'>): string {
  if (seasonPence === undefined || !(Math.abs(seasonPence - estimatedPence) >= NOTHING_PENCE)) return '';
  return say(
    'An even slice of the year would be {slice}. These are {season, select, cold {cold} other {mild}} days, so the promise for them is {season, select, cold {more} other {less}}: {amount}.',
    {
      slice: spokenPounds(estimatedPence),
      season: seasonPence > estimatedPence ? 'cold' : 'mild',
      amount: spokenPounds(seasonPence),
    },
  );
}

const CAUSES: Readonly<Record<BillCause, { readonly up: string; readonly down: string }>> = {
  days: { up: phrase('Days of winter'), down: phrase('Days of summer') },
  price: { up: phrase('Dearer electricity'), down: phrase('Cheaper electricity') },
  weather: { up: phrase('Colder weather'), down: phrase('Milder weather') },
  when: { up: phrase('Used at dearer hours'), down: phrase('Used at cheaper hours') },
  'standing-charge': { up: phrase('Higher standing charge'), down: phrase('Lower standing charge') },
  'heat-used': { up: phrase('More heat used'), down: phrase('Less heat used') },
  'hot-water': { up: phrase('More hot water'), down: phrase('Less hot water') },
  efficiency: { up: phrase('Lower factor'), down: phrase('Better factor') },
  backup: { up: phrase('Backup heater'), down: phrase('Backup heater') },
  'other-electricity': { up: phrase('Other electricity'), down: phrase('Other electricity') },
  rooms: { up: phrase('More for warm rooms'), down: phrase('Less for warm rooms') },
  steady: { up: phrase('More all year round'), down: phrase('Less all year round') },
  metering: { up: phrase('Estimated reading'), down: phrase('Estimated reading') },
  rest: { up: phrase('All the rest'), down: phrase('All the rest') },
};

/** A cause as a short label, said by its direction: "Colder weather", "Cheaper electricity". */
export function causeName(cause: string, pence: number): string {
  const names = lookUp(CAUSES, cause);
  if (!names) return unknownName(cause);
  return say(pence < 0 ? names.down : names.up);
}

/** Causes that need another word where they do something. */
const DOERS: Readonly<Record<string, { readonly up: string; readonly down: string }>> = {
  'standing-charge': { up: phrase('A higher standing charge'), down: phrase('A lower standing charge') },
  'heat-used': { up: phrase('Using more heat'), down: phrase('Using less heat') },
  efficiency: { up: phrase('A lower factor'), down: phrase('A better factor') },
  backup: { up: phrase('The backup heater'), down: phrase('The backup heater') },
  metering: { up: phrase('An estimated reading'), down: phrase('An estimated reading') },
};

/** One step of the bridge: "Colder weather added about £58." */
export function causeSentence(cause: string, pence: number): string {
  const doer = DOERS[cause]?.[pence < 0 ? 'down' : 'up'];
  const name = doer === undefined ? causeName(cause, pence) : say(doer);
  if (!Number.isFinite(pence)) return say('{name}: not known.', { name });
  if (Math.abs(pence) < NOTHING_PENCE) return say('{name} made no difference.', { name });
  const amount = spokenPounds(Math.abs(pence));
  return say('{name} {way, select, added {added} other {took away}} about {amount}.', {
    name,
    way: pence > 0 ? 'added' : 'took',
    amount,
  });
}

type Part = Pick<BillCheck['parts'][number], 'cause' | 'joined' | 'pence'>;

/** A part's label; one that stands for several causes says so: "All the rest, joined". */
export function partName({ cause, joined, pence }: Part): string {
  const name = causeName(cause, pence);
  return joined && joined.length > 1 ? say('{name}, joined', { name }) : name;
}

const INSIDE: Readonly<Record<string, string>> = {
  price: phrase('the price'),
  when: phrase('the hours of use'),
  'heat-used': phrase('heat used'),
  'hot-water': phrase('hot water'),
  efficiency: phrase('how well the machine works'),
  backup: phrase('the backup heater'),
  'other-electricity': phrase('other electricity'),
  metering: phrase('an estimated reading'),
  weather: phrase('the weather'),
};

/** What is inside a joined part, "heat used and how well the machine works"; empty for one cause alone. */
export function insideOf({ joined }: Pick<Part, 'joined'>): string {
  return joined && joined.length > 1 ? listed(joined.map((cause) => say(INSIDE[cause] ?? cause))) : '';
}

/** What cannot be told apart with what is known. */
export function joinedSentence(part: Part): string {
  return say('“{name}” holds {parts}. They cannot be told apart yet, so they are shown as one.', {
    name: causeName(part.cause, part.pence),
    parts: insideOf(part),
  });
}

/** What the evidence of a check cannot say. */
export function unknownSentences({ input, parts }: Pick<BillCheck, 'input' | 'parts'>): string[] {
  const sentences = parts.filter(({ joined }) => joined && joined.length > 1).map(joinedSentence);
  if (!parts.some(({ cause }) => cause === 'weather')) {
    sentences.push(say('We have no weather of these days, so the weather is in that part too.'));
  }
  if (input.readings === 'estimated' && input.readKWh === undefined) {
    sentences.push(say('The bill rests on an estimated reading. It may be put right by the next one.'));
  }
  if (input.readings === 'unknown' && input.readKWh === undefined) {
    sentences.push(say('The bill does not say whether the meter was read.'));
  }
  if (input.meter === 'whole-house' && input.heatPumpKWh === undefined) {
    sentences.push(say('How much of the bill went into other things was told, not metered.'));
  }
  return sentences;
}

const NEXT: Readonly<Record<NextStep, string>> = {
  'actual-reading': phrase('Read the meter yourself today, since the bill rests on an estimate.'),
  'outdoor-temperature': phrase('Find how cold those days were, from a file of outdoor temperatures near the home.'),
  'heat-pump-meter': phrase('Read the machine’s own meter, or have one fitted by a licensed electrician.'),
  'heat-meter': phrase('Read how much heat the machine says it has made. It tells heat used from how well it works.'),
  'flow-temperature': phrase('Note how hot the water to the radiators is, and how cold it is outside at that hour.'),
  'immersion-hours': phrase('See how many hours the immersion or backup heater has run.'),
  'who-is-at-home': phrase('Ask who is at home, how warm the rooms are, and whether more rooms are heated.'),
};

export function nextSentence(code: string): string {
  const next = lookUp(NEXT, code);
  return next === undefined ? unknownSentence(code) : say(next);
}

export function checkCaution(): string {
  return say('Work on the cooling circuit is for certified people only. Isolate the unit before opening it.');
}

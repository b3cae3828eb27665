/** A bill held against a promise: first whether it lies inside what was promised, then why it differs. */
import type { BillCheck } from '../model/appraisal/promise.ts';
import { listed, poundsRange, spokenPounds } from './numbers.ts';

/** Differences below a pound are not spoken of. */
const NOTHING_PENCE = 100;

type Verdict = Pick<BillCheck, 'verdict' | 'expected' | 'actualPence'> & Partial<Pick<BillCheck, 'parts'>>;

/** Whether the weather of the bill's days was known; where it was not, nothing may be said to be put right for it. */
const knowsWeather = ({ parts }: Verdict): boolean =>
  parts === undefined || parts.some(({ cause }) => cause === 'weather');

/** First: inside, above or below what was promised for these very days, price and weather. */
export function verdictSentence(check: Verdict): string {
  const { verdict, expected, actualPence } = check;
  if (!Number.isFinite(actualPence) || !Number.isFinite(expected.value)) return 'This bill cannot be judged yet.';
  const range = poundsRange(expected.low, expected.high);
  const bill = `The bill is ${spokenPounds(actualPence)}.`;
  const days = knowsWeather(check) ? 'these days, this price and this weather' : 'these days and this price';
  const fair = `For ${days} the promise comes to ${range}.`;
  if (verdict === 'inside') return `${bill} ${fair} The bill lies inside.`;
  const edge = verdict === 'above' ? actualPence - expected.high : expected.low - actualPence;
  const by = Math.abs(edge) < NOTHING_PENCE ? 'just' : spokenPounds(Math.abs(edge));
  return `${bill} ${fair} The bill lies ${by} ${verdict} that.`;
}

/** The same where the page has said already that the bill lies inside. */
export function fairSentence(check: Verdict): string {
  return verdictSentence(check).replace(' The bill lies inside.', '');
}

type Promised = Pick<BillCheck, 'actualPence' | 'promisedPence' | 'seasonPence'>;

/** The promise for exactly the days of the bill: winter days take more than their share of the year. */
export const promisedForDays = ({ promisedPence, seasonPence }: Pick<BillCheck, 'promisedPence' | 'seasonPence'>) =>
  seasonPence ?? promisedPence;

/** The causes from the promise for these days to the bill: the step from an even slice of the year is behind them. */
export const partsForDays = ({ parts, seasonPence }: Pick<BillCheck, 'parts' | 'seasonPence'>) =>
  seasonPence === undefined ? parts : parts.filter(({ cause }) => cause !== 'days');

/** Against the promise for these days: "The bill is £212 above the promise." */
export function differenceFromPromise(check: Promised): string {
  const difference = check.actualPence - promisedForDays(check);
  if (!Number.isFinite(difference)) return 'The bill and the promise cannot be compared yet.';
  if (Math.abs(difference) < NOTHING_PENCE) return 'The bill is as promised.';
  return `The bill is ${spokenPounds(Math.abs(difference))} ${difference > 0 ? 'above' : 'below'} the promise.`;
}

/** Causes that nobody in the house can help: what is left without them is what has to be explained. */
const PUT_RIGHT = ['days', 'price', 'unit-price', 'when', 'standing-charge', 'weather'];

/** What stays when price and weather are put right: the rest of the same split that the picture shows [pence]. */
export const leftPence = ({ actualPence, expected, parts }: Verdict): number =>
  parts?.filter(({ cause }) => !PUT_RIGHT.includes(cause)).reduce((sum, { pence }) => sum + pence, 0) ??
  actualPence - expected.value;

function leftSentence(check: Verdict): string {
  const left = leftPence(check);
  const right = `With ${knowsWeather(check) ? 'weather' : 'season'} and price put right, the bill is`;
  if (!Number.isFinite(left)) return '';
  if (Math.abs(left) < NOTHING_PENCE) return `${right} as promised.`;
  return `${right} still ${spokenPounds(Math.abs(left))} ${left > 0 ? 'higher' : 'lower'} than promised.`;
}

/** The same with where that puts the bill. */
export function leftOverSentence(check: Verdict): string {
  const left = leftSentence(check);
  if (!(Math.abs(leftPence(check)) >= NOTHING_PENCE)) return left;
  return `${left} That is ${check.verdict === 'inside' ? 'within' : 'outside'} the range we gave.`;
}

const LIES: Readonly<Record<BillCheck['verdict'], string>> = {
  inside: 'The bill lies inside the promised range.',
  above: 'The bill lies above the promised range.',
  below: 'The bill lies below the promised range.',
};

/** The opening of the page: inside, above or below; then the difference, and what is left of it. */
export function checkSentence(check: Verdict & Promised): string {
  const difference = differenceFromPromise(check).replace(/^The bill is/, 'It is');
  const lies = Number.isFinite(check.actualPence) ? LIES[check.verdict] : '';
  return [lies, difference, leftSentence(check)].filter(Boolean).join(' ');
}

/** Why a winter bill is no even slice of the yearly figure; empty where the season makes no odds. */
export function seasonSentence({
  promisedPence,
  seasonPence,
}: Pick<BillCheck, 'promisedPence' | 'seasonPence'>): string {
  if (seasonPence === undefined || !(Math.abs(seasonPence - promisedPence) >= NOTHING_PENCE)) return '';
  const [season, share] = seasonPence > promisedPence ? ['cold', 'more'] : ['mild', 'less'];
  return `An even slice of the year would be ${spokenPounds(promisedPence)}. These are ${season} days, so the promise for them is ${share}: ${spokenPounds(seasonPence)}.`;
}

const CAUSES: Readonly<Record<string, { readonly up: string; readonly down: string }>> = {
  days: { up: 'Days of winter', down: 'Days of summer' },
  price: { up: 'Dearer electricity', down: 'Cheaper electricity' },
  'unit-price': { up: 'Dearer electricity', down: 'Cheaper electricity' },
  weather: { up: 'Colder weather', down: 'Milder weather' },
  when: { up: 'Used at dearer hours', down: 'Used at cheaper hours' },
  'standing-charge': { up: 'Higher standing charge', down: 'Lower standing charge' },
  'heat-used': { up: 'More heat used', down: 'Less heat used' },
  'hot-water': { up: 'More hot water', down: 'Less hot water' },
  efficiency: { up: 'Lower factor', down: 'Better factor' },
  backup: { up: 'Backup heater', down: 'Backup heater' },
  'other-electricity': { up: 'Other electricity', down: 'Other electricity' },
  rooms: { up: 'More for warm rooms', down: 'Less for warm rooms' },
  steady: { up: 'More all year round', down: 'Less all year round' },
  metering: { up: 'Estimated reading', down: 'Estimated reading' },
  rest: { up: 'All the rest', down: 'All the rest' },
};

/** A cause as a short label, said by its direction: "Colder weather", "Cheaper electricity". */
export function causeName(cause: string, pence: number): string {
  const names = CAUSES[cause];
  if (!names) return cause.replaceAll('-', ' ');
  return pence < 0 ? names.down : names.up;
}

/** Causes that need another word where they do something. */
const DOERS: Readonly<Record<string, { readonly up: string; readonly down: string }>> = {
  'standing-charge': { up: 'A higher standing charge', down: 'A lower standing charge' },
  'heat-used': { up: 'Using more heat', down: 'Using less heat' },
  efficiency: { up: 'A lower factor', down: 'A better factor' },
  backup: { up: 'The backup heater', down: 'The backup heater' },
  metering: { up: 'An estimated reading', down: 'An estimated reading' },
};

/** One step of the bridge: "Colder weather added about £58." */
export function causeSentence(cause: string, pence: number): string {
  const name = DOERS[cause]?.[pence < 0 ? 'down' : 'up'] ?? causeName(cause, pence);
  if (!Number.isFinite(pence)) return `${name}: not known.`;
  if (Math.abs(pence) < NOTHING_PENCE) return `${name} made no difference.`;
  return `${name} ${pence > 0 ? 'added' : 'took away'} about ${spokenPounds(Math.abs(pence))}.`;
}

type Part = Pick<BillCheck['parts'][number], 'cause' | 'joined' | 'pence'>;

/** A part's label; one that stands for several causes says so: "All the rest, joined". */
export function partName({ cause, joined, pence }: Part): string {
  return `${causeName(cause, pence)}${joined && joined.length > 1 ? ', joined' : ''}`;
}

const INSIDE: Readonly<Record<string, string>> = {
  price: 'the price',
  when: 'the hours of use',
  'heat-used': 'heat used',
  'hot-water': 'hot water',
  efficiency: 'how well the machine works',
  backup: 'the backup heater',
  'other-electricity': 'other electricity',
  metering: 'an estimated reading',
  weather: 'the weather',
};

/** What is inside a joined part, "heat used and how well the machine works"; empty for one cause alone. */
export function insideOf({ joined }: Pick<Part, 'joined'>): string {
  return joined && joined.length > 1 ? listed(joined.map((cause) => INSIDE[cause] ?? cause)) : '';
}

/** What cannot be told apart with what is known. */
export function joinedSentence(part: Part): string {
  return `“${causeName(part.cause, part.pence)}” holds ${insideOf(part)}. They cannot be told apart yet, so they are shown as one.`;
}

/** What the evidence of a check cannot say. */
export function unknownSentences({ input, parts }: Pick<BillCheck, 'input' | 'parts'>): string[] {
  const sentences = parts.filter(({ joined }) => joined && joined.length > 1).map(joinedSentence);
  if (!parts.some(({ cause }) => cause === 'weather')) {
    sentences.push('We have no weather of these days, so the weather is in that part too.');
  }
  if (input.readings === 'estimated' && input.readKWh === undefined) {
    sentences.push('The bill rests on an estimated reading. It may be put right by the next one.');
  }
  if (input.readings === 'unknown' && input.readKWh === undefined) {
    sentences.push('The bill does not say whether the meter was read.');
  }
  if (input.meter === 'whole-house' && input.heatPumpKWh === undefined) {
    sentences.push('How much of the bill went into other things was told, not metered.');
  }
  return sentences;
}

const NEXT: Readonly<Record<string, string>> = {
  'actual-reading': 'Read the meter yourself today, since the bill rests on an estimate.',
  'outdoor-temperature': 'Find how cold those days were, from a file of outdoor temperatures near the home.',
  'heat-pump-meter': 'Read the machine’s own meter, or have one fitted by a licensed electrician.',
  'heat-meter': 'Read how much heat the machine says it has made. It tells heat used from how well it works.',
  'flow-temperature': 'Note how hot the water to the radiators is, and how cold it is outside at that hour.',
  'immersion-hours': 'See how many hours the immersion or backup heater has run.',
  'who-is-at-home': 'Ask who is at home, how warm the rooms are, and whether more rooms are heated.',
};

export function nextSentence(code: string): string {
  return NEXT[code] ?? `${code.replaceAll('-', ' ')}.`;
}

/** Codes that have a sentence; a test holds the model's codes against it. */
export const NEXT_CODES: readonly string[] = Object.keys(NEXT);

export function checkCaution(): string {
  return 'Work on the cooling circuit is for certified people only. Isolate the unit before opening it.';
}

/** A bill held against a written estimate: first whether it lies inside what was estimated, then why it differs. */

import type { BillCause, BillCheck, BillDoubt, CheckFinding } from '../model/shapes/bill-check.ts';
import { findingName } from './findings.ts';
import { exactKWh, listed, pence, poundsRange, spokenKWh, spokenPounds } from './numbers.ts';
import { phrase, say } from './say.ts';
import { sayTold } from './say-told.ts';
import { lookUp, unknownName } from './unknown.ts';

/** Differences below a pound are not spoken of. */
const NOTHING_PENCE = 100;

type Verdict = Pick<BillCheck, 'verdict' | 'expected' | 'actualPence'> & Partial<Pick<BillCheck, 'parts'>>;

/** Whether the weather of the bill's days was known; where it was not, nothing may be said to be put right for it. */
export const knowsWeather = ({ parts }: Verdict): boolean =>
  parts === undefined || parts.some(({ cause }) => cause === 'weather');

const isJudged = ({ expected, actualPence }: Verdict): boolean =>
  Number.isFinite(actualPence) && Number.isFinite(expected.value);

type Doubted = Verdict & Partial<Pick<BillCheck, 'doubts'>>;

/** Evidence that contradicts itself. */
export const CONTRADICTIONS: readonly BillDoubt['code'][] = [
  'bill-above-readings',
  'bill-below-readings',
  'units-hold-other',
  'machine-above-home',
];

/** The headline, with one amount: evidence that contradicts itself, else inside, above or below the range. */
export function checkSentence(check: Doubted): string {
  const contradiction = (check.doubts ?? []).find(({ code }) => CONTRADICTIONS.includes(code));
  if (!contradiction || !isJudged(check)) return verdictSentence(check);
  const { code, pence, readKWh, billKWh } = contradiction;
  if (code === 'machine-above-home')
    return say('The heat pump’s own meter shows {more} more than the bill of the whole home.', {
      more: exactKWh(readKWh - billKWh),
    });
  const isAmount = code.startsWith('bill-') && Math.abs(pence) >= NOTHING_PENCE;
  return isAmount ? againstReadings(contradiction) : doubtSentence(contradiction);
}

/** How far the bill lies outside its range [pence]. */
const beyondRange = ({ verdict, expected, actualPence }: Verdict): number =>
  verdict === 'above' ? actualPence - expected.high : expected.low - actualPence;

/** Whether the verdict speaks the amount of the bill itself. */
const saysAmount = (check: Verdict): boolean => check.verdict === 'inside' || beyondRange(check) < NOTHING_PENCE;

/** Inside, above or below the range of the estimate. */
export function verdictSentence(check: Verdict): string {
  const { verdict, actualPence } = check;
  if (!isJudged(check)) return say('This bill cannot be judged yet.');
  const amount = spokenPounds(actualPence);
  if (verdict === 'inside') return say('The bill of {amount} lies inside the range of our estimate.', { amount });
  if (verdict === 'unknown')
    return say('The bill of {amount} is for the whole home, so it does not show yet what heating took.', { amount });
  const edge = beyondRange(check);
  if (edge < NOTHING_PENCE)
    return say(
      'The bill of {amount} lies just {verdict, select, above {above} other {below}} the range of our estimate.',
      { amount, verdict },
    );
  return say('The bill lies {amount} {verdict, select, above {above} other {below}} the range of our estimate.', {
    amount: spokenPounds(edge),
    verdict,
  });
}

const againstReadings = ({ pence }: BillDoubt): string =>
  say(
    'The bill charges about {amount} {way, select, more {more} other {less}} than the meter’s readings of the same days come to.',
    { amount: spokenPounds(Math.abs(pence)), way: pence > 0 ? 'more' : 'less' },
  );

/** The range behind the headline, and the bill beside it where the verdict has not said it. */
export function fairSentence(check: Verdict): string {
  if (!isJudged(check)) return '';
  const weather = knowsWeather(check) ? 'known' : 'unknown';
  const range = poundsRange(check.expected.low, check.expected.high);
  if (check.verdict === 'unknown')
    return say(
      'For {weather, select, known {these days, this price and this weather} other {these days and this price}} our estimate for heating and hot water alone is {range}.',
      { weather, range },
    );
  const estimate = say(
    'For {weather, select, known {these days, this price and this weather} other {these days and this price}} our estimate is {range} for 8 in 10 homes like yours.',
    { weather, range },
  );
  return saysAmount(check)
    ? estimate
    : `${estimate} ${say('The bill is {amount}.', { amount: spokenPounds(check.actualPence) })}`;
}

/** What is said before any cause, with what puts it right; then inside or outside, where the headline does not say it. */
export function doubtSentences(check: Doubted): string[] {
  const headline = checkSentence(check);
  const told = (check.doubts ?? []).map((doubt) => {
    const fact = doubtSentence(doubt);
    return fact === headline ? doubtRemedy(doubt) : `${fact} ${doubtRemedy(doubt)}`;
  });
  const verdict = verdictSentence(check);
  return headline === verdict ? told : [...told, verdict];
}

export function doubtSentence(doubt: BillDoubt): string {
  const { code, meterName = '', billKWh, readKWh, daysRead = 0, days = 0 } = doubt;
  const values = { meter: sayTold(meterName), bill: exactKWh(billKWh), read: exactKWh(readKWh) };
  switch (code) {
    case 'bill-above-readings':
    case 'bill-below-readings':
      if (daysRead < days) return partlyRead(values, daysRead, days, billKWh - readKWh);
      return say('The bill has {bill}. For the same days “{meter}” shows {read}.', values);
    case 'units-hold-other':
      return say('The kWh given for heating are all that “{meter}” shows, so other things are still in them.', values);
    case 'machine-above-home':
      return say('The heat pump’s own meter shows {read}, and the bill of the whole home only {bill}.', values);
    case 'readings-cover-part':
      if (daysRead === 0)
        return say('“{meter}” has no readings for the days of this bill, so nothing confirms its {bill}.', values);
      return partlyRead(values, daysRead, days, billKWh - readKWh);
    case 'other-unknown':
      if (doubt.fromRecord)
        return say(
          'Nobody has said how much of this bill went into other things. By its records from before, this home took about {units} for them in as many days.',
          { units: spokenKWh(readKWh) },
        );
      return say(
        'Nobody has said how much of this bill went into other things. In a home like this it is usually about {usual}.',
        { usual: spokenKWh(readKWh) },
      );
    case 'other-bill':
      return say('This bill has {bill}. A saved bill of the same days, “{meter}”, has {read}.', values);
    case 'before-estimate':
      return say('This bill ended before the estimate was written, so another heating may have warmed the home then.');
  }
}

const partlyRead = (values: Record<string, string>, daysRead: number, days: number, restKWh: number): string =>
  say(
    '“{meter}” has readings for {daysRead} of the bill’s {days} days, {read} in all. {missing, plural, one {The other day} other {The other days}} would have to hold {rest}.',
    { ...values, daysRead, days, missing: days - daysRead, rest: exactKWh(restKWh) },
  );

function doubtRemedy({ code, billKWh, readKWh, daysRead = 0, days = 0 }: BillDoubt): string {
  switch (code) {
    case 'bill-above-readings':
    case 'bill-below-readings':
      return say('Before anybody looks for a cause: read the meter today, and ask the supplier to check the bill.');
    case 'units-hold-other':
      return say('Give the kWh without other things, or leave out what went into them.');
    case 'machine-above-home':
      return say('Compare the numbers of both meters and the days of their readings.');
    case 'readings-cover-part':
      return daysRead > 0
        ? say('That is {rest} a day, against {read} on the days with readings. Bring in the missing days.', {
            rest: unitsADay(billKWh - readKWh, days - daysRead),
            read: unitsADay(readKWh, daysRead),
          })
        : say('Bring in readings of these days, or compare the meter with the bill’s last reading.');
    case 'other-unknown':
      return say('Until somebody says it, it stays in one part with the heating.');
    case 'before-estimate':
      return say('Compare its dates with the day on which the heat pump began. Earlier days say nothing of it.');
    case 'other-bill':
      return say('Compare both with the paper, and correct the one that is wrong.');
  }
}

const unitsADay = (kWh: number, days: number): string => exactKWh(kWh / days);

/** The written estimate for exactly the days of the bill: winter days take more than their share of the year. */
export const estimatedForDaysPence = ({
  estimatedPence,
  seasonPence,
}: Pick<BillCheck, 'estimatedPence' | 'seasonPence'>) => seasonPence ?? estimatedPence;

/** The causes from the estimate for these days to the bill: the step from an even slice of the year is behind them. */
export const partsForDays = ({ parts, seasonPence }: Pick<BillCheck, 'parts' | 'seasonPence'>) =>
  seasonPence === undefined ? parts : parts.filter(({ cause }) => cause !== 'days');

/** Causes that nobody in the house can help: what is left without them is what has to be explained. */
const PUT_RIGHT = ['days', 'price', 'tariff', 'when', 'standing-charge', 'weather'];

/** What stays when price and weather are put right: the rest of the same split that the picture shows [pence]. */
export const leftPence = ({ actualPence, expected, parts }: Verdict): number =>
  parts?.filter(({ cause }) => !PUT_RIGHT.includes(cause)).reduce((sum, { pence }) => sum + pence, 0) ??
  actualPence - expected.value;

/** Why a winter bill is no even slice of the yearly figure; empty where the season makes no odds. */
export function seasonSentence({
  estimatedPence,
  seasonPence,
}: Pick<BillCheck, 'estimatedPence' | 'seasonPence'>): string {
  if (seasonPence === undefined || !(Math.abs(seasonPence - estimatedPence) >= NOTHING_PENCE)) return '';
  return say(
    'An even slice of the year would be {slice}. In a usual year these days are {season, select, cold {colder} other {milder}} than the others, so the estimate for them is {season, select, cold {more} other {less}}: {amount}.',
    {
      slice: spokenPounds(estimatedPence),
      season: seasonPence > estimatedPence ? 'cold' : 'mild',
      amount: spokenPounds(seasonPence),
    },
  );
}

const CAUSES: Readonly<Record<BillCause, { readonly up: string; readonly down: string }>> = {
  days: { up: phrase('Days of winter'), down: phrase('Days of summer') },
  price: { up: phrase('Higher electricity price'), down: phrase('Lower electricity price') },
  weather: { up: phrase('Colder weather'), down: phrase('Milder weather') },
  tariff: { up: phrase('Another tariff'), down: phrase('Another tariff') },
  when: { up: phrase('More at high-price hours'), down: phrase('More at low-price hours') },
  'standing-charge': { up: phrase('Higher standing charge'), down: phrase('Lower standing charge') },
  'heat-used': { up: phrase('More heat made'), down: phrase('Less heat made') },
  'hot-water': { up: phrase('More for hot water'), down: phrase('Less for hot water') },
  efficiency: { up: phrase('More kWh for the heat'), down: phrase('Fewer kWh for the heat') },
  backup: { up: phrase('Backup heater'), down: phrase('Backup heater') },
  'other-electricity': { up: phrase('Other electricity'), down: phrase('Other electricity') },
  rooms: { up: phrase('More in the cold'), down: phrase('Less in the cold') },
  steady: { up: phrase('More in any weather'), down: phrase('Less in any weather') },
  'own-generation': { up: phrase('Electricity made at home'), down: phrase('Electricity made at home') },
  metering: { up: phrase('More billed than read'), down: phrase('Less billed than read') },
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
  price: { up: phrase('A higher electricity price'), down: phrase('A lower electricity price') },
  'standing-charge': { up: phrase('A higher standing charge'), down: phrase('A lower standing charge') },
  backup: { up: phrase('The backup heater'), down: phrase('The backup heater') },
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

/** The findings inside a part, and what is left of it beside them: together the part to the penny. */
export function insidePart(
  part: BillCheck['parts'][number],
  findings: readonly CheckFinding[] = [],
): { readonly name: string; readonly pence: number }[] {
  const inside = findings
    .map((one) => ({ ...one, pence: one.splitPence ?? one.pence }))
    .filter((one) => one.part === part.cause && Math.abs(one.pence) >= NOTHING_PENCE);
  if (inside.length === 0 || (inside.length === 1 && Math.abs(part.pence - inside[0]!.pence) < NOTHING_PENCE))
    return [];
  // What was seen in several stretches is one line.
  const named = [...Map.groupBy(inside, findingName)].map(([name, ofName]) => ({
    name: say('of it: {name}', { name }),
    pence: Math.round(ofName.reduce((sum, { pence }) => sum + pence, 0)),
  }));
  const left = part.pence - named.reduce((sum, { pence }) => sum + pence, 0);
  return [...named, ...(Math.abs(left) < NOTHING_PENCE ? [] : [{ name: say('of it: all else'), pence: left }])];
}

type Part = Pick<BillCheck['parts'][number], 'cause' | 'joined' | 'pence'>;

/** Parts that a table lists: a single cause that moved nothing, such as a price that stayed, has no row. */
export const partsWithRow = <P extends BillCheck['parts'][number]>(
  { findings }: Pick<BillCheck, 'findings'>,
  parts: readonly P[],
): readonly P[] =>
  parts.filter(
    (part) => Math.round(part.pence) !== 0 || insideOf(part) !== '' || insidePart(part, findings).length > 0,
  );

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
  metering: phrase('a wrong reading'),
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

/** A price that nobody has read on the bill; empty where somebody has. */
export const priceSentence = ({ input: { priceTariff, pencePerKWh } }: Pick<BillCheck, 'input'>): string =>
  priceTariff === undefined
    ? ''
    : say('The price of {price} a kWh is that of the tariff “{tariff}”: the price on the bill is not known.', {
        price: pence(pencePerKWh),
        tariff: priceTariff,
      });

/** What the evidence of a check cannot say. */
export function unknownSentences({ input, parts }: Pick<BillCheck, 'input' | 'parts'>): string[] {
  const sentences = parts.filter(({ joined }) => joined && joined.length > 1).map(joinedSentence);
  if (input.priceTariff !== undefined) sentences.push(priceSentence({ input }));
  if (!parts.some(({ cause }) => cause === 'weather')) {
    sentences.push(say('We have no weather of these days, so the weather is in that part too.'));
  }
  if (input.readings === 'estimated' && input.readKWh === undefined) {
    sentences.push(say('The bill is based on an estimated reading. The next one may correct it.'));
  }
  if (input.readings === 'unknown' && input.readKWh === undefined) {
    sentences.push(say('The bill does not say whether the meter was read.'));
  }
  if (input.meter === 'whole-house' && input.heatPumpKWh === undefined && input.otherKWh !== undefined) {
    sentences.push(say('How much of the bill went into other things was told, not metered.'));
  }
  return sentences;
}

export function checkCaution(): string {
  return say('Work on the cooling circuit is for certified people only. Isolate the unit before opening it.');
}

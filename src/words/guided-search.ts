/** The guided search in words: likely causes, the next question for the installer and as the customer hears it, what each outcome would mean. */
import type {
  GuidedSearch,
  NextQuestion,
  SearchAnswer,
  SearchCause,
  SearchQuestion,
} from '../model/shapes/guided-search.ts';
import { capitalised } from './numbers.ts';
import { phrase, say } from './say.ts';
import { lookUp, unknownName, unknownSentence } from './unknown.ts';

const CAUSES: Readonly<Record<SearchCause, string>> = {
  'reading-wrong': phrase('a reading on the bill that the meter did not show'),
  'meter-wrong': phrase('a meter that counts wrongly'),
  weather: phrase('weather that we do not know'),
  'other-use': phrase('other electricity on the same meter'),
  'own-generation': phrase('solar panels or a battery'),
  heater: phrase('an electric heater that ran'),
  'flow-too-hot': phrase('water to the radiators hotter than planned'),
  'machine-works-less': phrase('a machine that works less well than it should'),
  'rooms-warmer': phrase('more warmth in the rooms'),
  'more-water': phrase('more hot water'),
  'summer-heating': phrase('heating that stayed on in summer'),
  'newly-occupied': phrase('people who moved in or came back'),
  'less-other-use': phrase('less other electricity on the same meter'),
  'machine-works-better': phrase('a machine that works better than estimated'),
  'less-heat': phrase('less warmth in the rooms'),
  'less-water': phrase('less hot water'),
  'home-empty': phrase('days when nobody was at home'),
  'something-else': phrase('something else'),
};
/** In the middle of a sentence or at the head of a line. */
export function likelyCauseName(cause: string): string {
  const name = lookUp(CAUSES, cause);
  return name === undefined ? unknownName(cause) : say(name);
}

/** What only the household can tell: said to it as a question, never as the reason. */
const AT_HOME: readonly SearchCause[] = [
  'other-use',
  'rooms-warmer',
  'more-water',
  'newly-occupied',
  'less-other-use',
  'less-heat',
  'less-water',
  'home-empty',
];
const isAtHome = (cause: string): boolean => (AT_HOME as readonly string[]).includes(cause);

/** "7 in 20". */
export const inTwenty = (twentieths: number): string =>
  twentieths < 1 ? say('less than 1 in 20') : say('{count} in 20', { count: twentieths });

/** Every cause with its chance, a short sentence each. */
export const likelySentences = ({ causes }: GuidedSearch): string[] =>
  causes.map(({ cause, twentieths }) =>
    say('{name}: {chance}.', { name: capitalised(likelyCauseName(cause)), chance: inTwenty(twentieths) }),
  );

/** For the household, a short sentence each: what lies with the home is one, since only it can tell; 20 in all. */
export function likelyForHome({ causes }: GuidedSearch): string[] {
  const ours = causes.filter(({ cause }) => !isAtHome(cause) && cause !== 'something-else');
  const said = ours.slice(0, MOST_SAID).filter(({ twentieths }) => twentieths > 0);
  const home = causes.filter(({ cause }) => isAtHome(cause)).reduce((sum, { twentieths }) => sum + twentieths, 0);
  const rest = 20 - home - said.reduce((sum, { twentieths }) => sum + twentieths, 0);
  const isMore = rest > (causes.find(({ cause }) => cause === 'something-else')?.twentieths ?? 0);
  return [
    ...said.map(({ cause, twentieths }) => ({ name: likelyCauseName(cause), twentieths })),
    { name: say('something at home that we can only ask you about'), twentieths: home },
    // Under its own name it is what the installer's sheet says it is.
    {
      name: isMore ? say('less likely causes and anything else') : likelyCauseName('something-else'),
      twentieths: rest,
    },
  ]
    .filter(({ twentieths }) => twentieths > 0)
    .map(({ name, twentieths }) => say('{name}: {chance}.', { name: capitalised(name), chance: inTwenty(twentieths) }));
}
/** More would not be read in a letter. */
const MOST_SAID = 3;

/** Where the search stands, in one sentence. */
export function searchSentence({ state, causes }: GuidedSearch): string {
  const first = causes.find(({ cause }) => cause !== 'something-else');
  const values = { cause: first ? likelyCauseName(first.cause) : '', chance: first ? inTwenty(first.twentieths) : '' };
  const other = causes.find(({ cause }) => cause === 'something-else')?.twentieths ?? 0;
  if (first && other > first.twentieths)
    return say(
      'Likeliest is something that is not listed here, {other}; of what is listed it is {cause}, {chance}. {open, select, open {The next question would tell more.} other {No question that we have would tell the causes further apart.}}',
      { ...values, other: inTwenty(other), open: state },
    );
  switch (state) {
    case 'no-need':
      return say('There is no difference that needs a cause.');
    case 'not-judged':
      return say('Nobody knows yet whether there is a difference that needs a cause.');
    case 'one-likely':
      return say('One cause stands out: {cause}, {chance}. It is likely, not proven.', values);
    case 'nothing-more':
      return say(
        'Likeliest is {cause}, {chance}. No question that we have would tell the causes further apart.',
        values,
      );
    case 'open':
      return say('Likeliest so far is {cause}, {chance}. The next question would tell more.', values);
  }
}
export const twentiethsMeaning = (): string =>
  say(
    'Chances among the causes considered, 20 in all. They rest on judgement and on the answers so far; they prove nothing.',
  );

interface Words {
  /** For the installer. */
  readonly task: string;
  /** As the customer hears it, at the table or on the telephone. */
  readonly customer: string;
  readonly outcomes: Readonly<Record<string, string>>;
}

const QUESTIONS: Readonly<Record<SearchQuestion, Words>> = {
  'meter-reading': {
    task: phrase('Compare the meter’s reading today with the last reading on the bill, and count the days between.'),
    customer: phrase('Please read all figures on the meter, and then the last reading printed on your bill.'),
    outcomes: {
      fits: phrase('The reading fits the bill'),
      lower: phrase('The meter shows less than was billed'),
      higher: phrase('The meter shows more than was billed'),
    },
  },
  'meter-number': {
    task: phrase('Compare the number of the meter with the number on the bill, and ask whether the meter was changed.'),
    customer: phrase('Which number stands on the meter itself, and which meter number stands on the bill?'),
    outcomes: {
      same: phrase('The same number, no change'),
      other: phrase('Another number, or a new meter'),
    },
  },
  'known-load': {
    task: phrase(
      'Run a heater of known power for ten minutes with everything else off. The meter must add a sixth of its kW.',
    ),
    customer: phrase(
      'Please switch off what you can, read the meter, run a plug-in heater for 10 minutes, and read again.',
    ),
    outcomes: {
      right: phrase('It counts what it should'),
      'too-much': phrase('It counts too much'),
      'too-little': phrase('It counts too little'),
    },
  },
  'outdoor-record': {
    task: phrase('Bring in outdoor temperatures of the bill’s days from a place near the home.'),
    customer: phrase('We look up how cold it was in those weeks.'),
    outcomes: {
      usual: phrase('As cold as usual'),
      'as-bill': phrase('The weather would explain the bill'),
    },
  },
  'machine-meter': {
    task: phrase(
      'Read the machine’s own meter and the meter of the home over a week, or have a meter fitted on the machine.',
    ),
    customer: phrase('For one week we would like to count the heating apart from everything else.'),
    outcomes: {
      'as-estimated': phrase('The machine takes most of it'),
      'other-differs': phrase('Other things make the difference'),
    },
  },
  'other-loads': {
    task: phrase('Ask what else hangs on this meter and what is new or gone: a car, a hot tub, a freezer, a heater.'),
    customer: phrase('Is there anything new that runs on electricity, or anything that you no longer use?'),
    outcomes: {
      'as-before': phrase('Nothing has changed'),
      changed: phrase('Something is new or gone'),
    },
  },
  panels: {
    task: phrase('Ask whether there are solar panels or a battery, and since when.'),
    customer: phrase('Do you have solar panels or a battery, and since when?'),
    outcomes: {
      none: phrase('None, or unchanged'),
      changed: phrase('New, changed or out of order'),
    },
  },
  'heater-hours': {
    task: phrase('Read the hours of the backup and immersion heater on the control, twice with a week between.'),
    customer: phrase('On our next visit we read how long the electric heater has run.'),
    outcomes: {
      few: phrase('Few hours or none'),
      many: phrase('Many hours'),
      'not-shown': phrase('The control does not show it'),
    },
  },
  'flow-temperature': {
    task: phrase(
      'Read flow and outdoor temperature after 15 minutes of running, and compare with the planned heating curve.',
    ),
    customer: phrase('On our next visit we read how hot the heating water is, and whether it needs to be.'),
    outcomes: {
      'as-planned': phrase('As planned'),
      hotter: phrase('5 °C or more hotter'),
      cooler: phrase('Cooler than planned'),
    },
  },
  'heat-made': {
    task: phrase('Read heat made and electricity used on the heat meter or the display, and divide one by the other.'),
    customer: phrase('On our next visit we read how much heat the machine has made.'),
    outcomes: {
      'factor-as-estimated': phrase('The factor is about as estimated'),
      'factor-off': phrase('The factor is not as estimated'),
      'not-shown': phrase('Nothing shows the heat'),
    },
  },
  'source-side': {
    task: phrase('Look at brine in and out, filters, flow and pressures, without opening the cooling circuit.'),
    customer: phrase('On our next visit we look at the ground loop, the filters and the flow.'),
    outcomes: {
      'in-order': phrase('All in order'),
      'not-in-order': phrase('Something is not in order'),
    },
  },
  'room-temperature': {
    task: phrase('Have a thermometer read in the living room for a week, mornings and evenings.'),
    customer: phrase('Could you note for a week, morning and evening, what a thermometer in the living room shows?'),
    outcomes: {
      'as-agreed': phrase('About as agreed'),
      warmer: phrase('1 °C or more warmer'),
      cooler: phrase('1 °C or more cooler'),
    },
  },
  'people-and-water': {
    task: phrase('Ask whether as many people live there as before, and whether baths and showers are the same.'),
    customer: phrase('Are as many people at home as when we did the estimate, with about as many baths and showers?'),
    outcomes: {
      'as-before': phrase('As before'),
      changed: phrase('Changed'),
    },
  },
  'heating-off': {
    task: phrase(
      'Ask whether the pipes to the radiators are warm on a warm day, and see how the summer setting stands.',
    ),
    customer: phrase('On warm days, and in summer, are the radiators or the pipes to them warm?'),
    outcomes: {
      off: phrase('Cold: the heating is off'),
      on: phrase('Warm: the heating is on'),
    },
  },
  'days-away': {
    task: phrase('Ask whether the home stood empty for some of these days.'),
    customer: phrase('Were you away for a week or more in that time?'),
    outcomes: {
      no: phrase('Somebody was at home'),
      yes: phrase('It stood empty'),
    },
  },
};

const wordsOf = (question: string): Words | undefined => lookUp<Words>(QUESTIONS, question);
/** Of the heat pump's own meter nobody at home can test what it counts. */
const isOwnMeterTest = (question: string, who: string | undefined): boolean =>
  question === 'known-load' && who === 'electrician';
/** @param who as the search has it; absent where it makes no odds */
export function questionTask(question: string, who?: string): string {
  if (isOwnMeterTest(question, who))
    return say('Have the current to the heat pump measured for ten minutes. Its meter must add the same kWh.');
  const words = wordsOf(question);
  return words ? say(words.task) : unknownSentence(question);
}
export function customerWords(question: string, who?: string): string {
  if (isOwnMeterTest(question, who))
    return say('An electrician measures for ten minutes what the heat pump takes. We compare that with its meter.');
  const words = wordsOf(question);
  return words ? say(words.customer) : unknownSentence(question);
}
function outcomeName(question: string, outcome: string): string {
  const name = wordsOf(question)?.outcomes[outcome];
  return name === undefined ? unknownName(outcome) : say(name);
}

const WHO: Readonly<Record<NextQuestion['who'], string>> = {
  household: phrase('the household'),
  installer: phrase('the installer'),
  electrician: phrase('an electrician'),
};
/** "The household can do it, in about 5 minutes." */
export function effortSentence({ who, minutes }: NextQuestion): string {
  const days = Math.round(minutes / (24 * 60));
  return days >= 1
    ? say('Done by {who}; it takes {days} days.', { who: say(WHO[who]), days })
    : say('Done by {who}, in about {minutes} minutes.', { who: say(WHO[who]), minutes });
}

/** Where one outcome would lead. */
export function leadSentence(
  question: string,
  { outcome, leadsTo, twentieths }: NextQuestion['outcomes'][number],
): string {
  const name = outcomeName(question, outcome);
  if (leadsTo === undefined || twentieths === undefined) return say('{name}.', { name });
  return say('{name}: then likeliest is {cause}, {chance}.', {
    name,
    cause: likelyCauseName(leadsTo),
    chance: inTwenty(twentieths),
  });
}

/** An answer that was given: "As planned (41 °C at 3 °C outside)". */
export function answerSentence({ question, outcome, read }: SearchAnswer): string {
  const values = { task: questionTask(question), outcome: outcomeName(question, outcome) };
  return read ? say('{task} {outcome} ({read}).', { ...values, read }) : say('{task} {outcome}.', values);
}

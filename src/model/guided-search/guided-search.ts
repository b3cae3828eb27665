/** The likely causes of a bill's difference, and the one or two questions whose answers would tell most among them. */
import type { BillCheck, BillDoubt } from '../shapes/bill-check.ts';
import {
  type GuidedSearch,
  type NextQuestion,
  OUTCOMES,
  SEARCH_QUESTIONS,
  type SearchAnswer,
  type SearchCause,
  type SearchQuestion,
} from '../shapes/guided-search.ts';
import { chancesOf, QUESTIONS } from './search-questions.ts';
import { asSureAsSeen, type Direction, isHeatingAlone, type Weights, weighCauses } from './weigh-causes.ts';

/** From this share of the expected cost on a difference inside the range is looked into. Common practice, no source. */
export const LARGE_SHARE = 0.15;
/** The same of what the findings inside the bill come to. Common practice, no source. */
const SEEN_SHARE = 0.05;
/** One cause stands out from so many chances in 20 on; it is still no diagnosis. */
const STANDS_OUT = 16;
/** Less than this is not worth anybody's time, bits. Common practice, no source. */
const LEAST_BITS = 0.05;
/** What takes longer than a day goes behind what tells half as much at once. */
const DAY_MINUTES = 24 * 60;
const WAITING = 0.5;

/**
 * Whether the bill is to be looked into, and which way: outside its range, inside but far from its middle, or at its middle
 * with findings of some weight inside it, which something else has made up for.
 */
export function searchDirection(check: BillCheck): Direction | null {
  const { verdict, actualPence, expected, findings = [], doubts = [] } = check;
  if (verdict === 'unknown' || !(expected.value > 0)) return null;
  const left = actualPence / expected.value - 1;
  if (verdict === 'above' || (verdict === 'inside' && left > LARGE_SHARE)) return 'more';
  if (verdict === 'below' || (verdict === 'inside' && left < -LARGE_SHARE)) return 'less';
  // Readings that contradict the bill may be another meter's: the way to look is how they differ, not what they show.
  const contradiction = doubts.find(contradictsReadings);
  const seenPence =
    contradiction?.pence ?? findings.reduce((sum, { part, pence }) => (part === undefined ? sum : sum + pence), 0);
  if (Math.abs(seenPence) < SEEN_SHARE * expected.value) return null;
  return seenPence > 0 ? 'more' : 'less';
}

const contradictsReadings = ({ code }: BillDoubt): boolean => /^bill-.*-readings$/.test(code);

/** Estimated, not said, or contradicted by readings: then the meter is read before the machine is looked at. */
export function isReadingDoubtful({ input, doubts = [] }: Pick<BillCheck, 'input' | 'doubts'>): boolean {
  return (
    (input.readings !== 'actual' && input.readKWh === undefined) ||
    doubts.some((doubt) => contradictsReadings(doubt) || doubt.code === 'machine-above-home')
  );
}

/** The search as it stands after the answers that are kept with the check. */
export function guidedSearch(check: BillCheck): GuidedSearch {
  const answers = check.input.answers ?? [];
  const direction = searchDirection(check);
  if (direction === null) {
    const state = check.verdict === 'unknown' ? 'not-judged' : 'no-need';
    return { direction, state, causes: [], next: withoutCauses(check, answers) };
  }
  const seen = asSureAsSeen(weighCauses(check, direction), check, direction);
  const weights = answers.reduce((now, answer) => afterAnswer(now, answer, direction), seen);
  const counted = inTwentieths(weights);
  const causes = [...counted]
    .map(([cause, twentieths]) => ({ cause, twentieths }))
    .toSorted((a, b) => b.twentieths - a.twentieths || weights.get(b.cause)! - weights.get(a.cause)!);
  const first = causes.find(({ cause }) => cause !== 'something-else');
  const standsOut = first !== undefined && first.twentieths >= STANDS_OUT;
  // What only readings have shown is asked about once before it is left at that.
  if (standsOut && answers.length > 0) return { direction, state: 'one-likely', causes, next: [] };
  const next = questionsFor(check, weights, direction, answers);
  return { direction, state: standsOut ? 'one-likely' : next.length > 0 ? 'open' : 'nothing-more', causes, next };
}

/** The check with the codes of what to find out next. */
export const withNext = (check: Omit<BillCheck, 'next'>): BillCheck => {
  const whole = { ...check, next: [] };
  return { ...whole, next: guidedSearch(whole).next.map(({ question }) => question) };
};

/** Where no difference is to be explained: only what the bill itself rests on. */
function withoutCauses(check: BillCheck, answers: readonly SearchAnswer[]): NextQuestion[] {
  const asked: SearchQuestion[] = [
    ...(isReadingDoubtful(check) ? (['meter-reading'] as const) : []),
    ...(check.verdict === 'unknown' ? (['machine-meter'] as const) : []),
  ];
  return asked
    .filter((question) => !answers.some((answer) => answer.question === question))
    .map((question) => ({
      question,
      ...byWhom(question, check),
      bits: 0,
      outcomes: OUTCOMES[question].map((outcome) => ({ outcome })),
    }));
}

/** Bayes' rule over the causes; an answer that is not known here changes nothing. */
export function afterAnswer(weights: Weights, { question, outcome }: SearchAnswer, direction: Direction): Weights {
  const index = ((OUTCOMES[question] ?? []) as readonly string[]).indexOf(outcome);
  if (index < 0) return weights;
  const joint = [...weights].map(
    ([cause, weight]) => [cause, weight * chanceOf(question, cause, index, direction)] as const,
  );
  const whole = joint.reduce((total, [, both]) => total + both, 0);
  // No cause allows it: the answer speaks against the question, not for a cause.
  return whole > 0 ? new Map(joint.map(([cause, both]) => [cause, both / whole])) : weights;
}

const chanceOf = (question: SearchQuestion, cause: SearchCause, index: number, direction: Direction): number =>
  chancesOf(question, cause, direction)[index]!;

/**
 * Expected information of a question about the cause [bits]: I = Σ p(o) Σ p(c|o) log₂(p(c|o) / p(c)), standard text.
 */
export function bitsOf(question: SearchQuestion, weights: Weights, direction: Direction): number {
  return OUTCOMES[question].reduce((bits, _, index) => {
    const joint = [...weights].map(
      ([cause, weight]) => [weight, weight * chanceOf(question, cause, index, direction)] as const,
    );
    const chance = joint.reduce((total, [, both]) => total + both, 0);
    return (
      bits +
      joint.reduce((total, [weight, both]) => (both > 0 ? total + both * Math.log2(both / chance / weight) : total), 0)
    );
  }, 0);
}

function questionsFor(
  check: BillCheck,
  weights: Weights,
  direction: Direction,
  answers: readonly SearchAnswer[],
): NextQuestion[] {
  const open = SEARCH_QUESTIONS.filter(
    (question) => isAskable(question, check) && !answers.some((answer) => answer.question === question),
  );
  const meterFirst = isReadingDoubtful(check) && open.includes('meter-reading');
  const worth = (question: SearchQuestion) =>
    bitsOf(question, weights, direction) * (QUESTIONS[question].minutes > DAY_MINUTES ? WAITING : 1);
  const ranked = open
    .filter(
      (question) => bitsOf(question, weights, direction) >= LEAST_BITS || (meterFirst && question === 'meter-reading'),
    )
    .filter((question) => !(meterFirst && QUESTIONS[question].about === 'machine'))
    .toSorted((a, b) => worth(b) - worth(a) || QUESTIONS[a].minutes - QUESTIONS[b].minutes);
  const ordered: SearchQuestion[] = meterFirst
    ? ['meter-reading', ...ranked.filter((question) => question !== 'meter-reading')]
    : ranked;
  return pairOf(ordered, check).map((question) => ({
    ...byWhom(question, check),
    ...withLeads(question, weights, direction),
  }));
}

/** The one that tells most, and beside it one that the household can answer on the telephone, where there is one. */
function pairOf([first, ...others]: readonly SearchQuestion[], check: BillCheck): SearchQuestion[] {
  if (first === undefined) return [];
  const isHome = (question: SearchQuestion) => byWhom(question, check).who === 'household';
  const second = isHome(first) ? others[0] : (others.find(isHome) ?? others[0]);
  return second === undefined ? [first] : [first, second];
}

/** Nobody at home can put a known load on the heat pump's own meter: it is compared with what an electrician measures. */
function byWhom(question: SearchQuestion, check: BillCheck): Pick<NextQuestion, 'who' | 'minutes'> {
  const { who, minutes } = QUESTIONS[question];
  return question === 'known-load' && isHeatingAlone(check) ? ON_OWN_METER : { who, minutes };
}
const ON_OWN_METER = { who: 'electrician', minutes: 30 } as const;

/** What can be found out in this home: there is no second meter to read where the bill is that of the machine's own. */
function isAskable(question: SearchQuestion, check: BillCheck): boolean {
  const { input } = check;
  switch (question) {
    case 'meter-reading':
      return input.readKWh === undefined || isReadingDoubtful(check);
    case 'machine-meter':
      return input.meter === 'whole-house' && input.heatPumpKWh === undefined;
    case 'heat-made':
      return input.heatKWh === undefined;
    case 'known-load':
      // While electricity is made at home a meter counts less than is used.
      return isHeatingAlone(check) || !check.findings?.some(({ code }) => code === 'own-generation');
    default:
      return true;
  }
}

function withLeads(
  question: SearchQuestion,
  weights: Weights,
  direction: Direction,
): Omit<NextQuestion, 'who' | 'minutes'> {
  const outcomes = OUTCOMES[question].flatMap((outcome, index) => {
    if (![...weights.keys()].some((cause) => chanceOf(question, cause, index, direction) > 0)) return [];
    const after = inTwentieths(afterAnswer(weights, { question, outcome }, direction));
    // Of causes as likely, "something else" comes last.
    const [leadsTo, twentieths] = [...after]
      .toSorted(([a], [b]) => Number(a === 'something-else') - Number(b === 'something-else'))
      .reduce((best, one) => (one[1] > best[1] ? one : best));
    return [{ outcome, leadsTo, twentieths }];
  });
  return { question, bits: bitsOf(question, weights, direction), outcomes };
}

/**
 * Whole twentieths by largest remainder, 20 in all. "Something else" keeps at least one, so that nothing is ever certain.
 */
export function inTwentieths(weights: Weights): ReadonlyMap<SearchCause, number> {
  const exact = [...weights].map(([cause, weight]) => ({ cause, share: weight * 20 }));
  const counts = new Map(exact.map(({ cause, share }) => [cause, Math.floor(share)]));
  const byRemainder = exact.toSorted((a, b) => (b.share % 1) - (a.share % 1));
  let left = 20 - [...counts.values()].reduce((total, value) => total + value, 0);
  for (const { cause } of byRemainder) {
    if (left-- <= 0) break;
    counts.set(cause, counts.get(cause)! + 1);
  }
  const [largest, most] = [...counts].reduce((best, one) => (one[1] > best[1] ? one : best));
  const move = (to: SearchCause) => {
    counts.set(largest, most - 1);
    counts.set(to, counts.get(to)! + 1);
  };
  const other = byRemainder.find(({ cause }) => cause !== largest)?.cause;
  if (counts.get('something-else') === 0) move('something-else');
  else if (most === 20 && other) move(other);
  return counts;
}

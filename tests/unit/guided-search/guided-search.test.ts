import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkBill } from '../../../src/model/bill-gap/check-bill.ts';
import {
  afterAnswer,
  bitsOf,
  guidedSearch,
  inTwentieths,
  isReadingDoubtful,
  withNext,
} from '../../../src/model/guided-search/guided-search.ts';
import { chancesOf, QUESTIONS } from '../../../src/model/guided-search/search-questions.ts';
import { weighCauses } from '../../../src/model/guided-search/weigh-causes.ts';
import type { BillCheck, BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import type { LikelyCause } from '../../../src/model/shapes/finding.ts';
import {
  GuidedSearch,
  OUTCOMES,
  SEARCH_QUESTIONS,
  type SearchAnswer,
  SearchCause,
  TypedAnswer,
} from '../../../src/model/shapes/guided-search.ts';
import { searchSentence } from '../../../src/words/guided-search.ts';
import { sampleBill, sampleEstimate, spreads } from '../bill-gap/sample-estimate.ts';
import { made } from '../words/made-findings.ts';

const estimate = sampleEstimate();
/** 155 units were estimated for these days; 465 are far above and 20 far below. */
const check = (change: Partial<BillCheckInput> = {}, more: Partial<BillCheck> = {}): BillCheck => ({
  ...checkBill({
    estimate,
    bill: sampleBill({ degreeDays: 465, boughtKWh: 465, ...change }),
    reference: spreads,
    id: 'c',
    madeOn: '2027-02-10T09:00:00.000Z',
  }),
  ...more,
});
type Weighed = ReturnType<typeof weighCauses>;
const DIRECTIONS = ['more', 'less'] as const;
const ALL = SearchCause.options;
const twentiethsOf = ({ causes }: GuidedSearch, cause: string) =>
  causes.find((one) => one.cause === cause)?.twentieths ?? 0;
const told = (...answers: readonly [SearchAnswer['question'], string][]) => ({
  answers: answers.map(([question, outcome]) => ({ question, outcome })),
});

describe('the table of chances', () => {
  test.each(SEARCH_QUESTIONS)('%s: one chance an outcome, 1 in all, none certain, for every cause', (question) => {
    for (const direction of DIRECTIONS)
      for (const cause of ALL) {
        const chances = chancesOf(question, cause, direction);
        expect(chances).toHaveLength(OUTCOMES[question].length);
        expect(chances.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
        for (const one of chances) expect(one).toBeLessThan(1);
      }
  });
  test.each(SEARCH_QUESTIONS)('%s tells some cause from the rest', (question) => {
    const { when, less } = QUESTIONS[question];
    expect(Object.keys({ ...when, ...less?.when }).length).toBeGreaterThan(0);
  });
});

describe('twentieths', () => {
  const weights = fc
    .uniqueArray(fc.constantFrom(...ALL.filter((cause) => cause !== 'something-else')), { minLength: 1 })
    .chain((causes) =>
      fc
        .array(fc.double({ min: 1e-6, max: 1, noNaN: true }), {
          minLength: causes.length + 1,
          maxLength: causes.length + 1,
        })
        .map((raw) => {
          const whole = raw.reduce((sum, one) => sum + one, 0);
          return new Map([...causes, 'something-else' as const].map((cause, i) => [cause, raw[i]! / whole]));
        }),
    );
  test('whole, 20 in all, none negative, never 20 for one, something else at least 1', () =>
    fc.assert(
      fc.property(weights, (made) => {
        const counts = [...inTwentieths(made).values()];
        expect(counts.reduce((sum, one) => sum + one, 0)).toBe(20);
        for (const one of counts) expect(Number.isInteger(one) && one >= 0 && one < 20).toBe(true);
        expect(inTwentieths(made).get('something-else')).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 200 },
    ));
  test('each answer moves each cause the way its chance stands to the mean', () =>
    fc.assert(
      fc.property(
        weights,
        fc.constantFrom(...SEARCH_QUESTIONS),
        fc.constantFrom(...DIRECTIONS),
        (made, question, direction) => {
          OUTCOMES[question].forEach((outcome, index) => {
            const chance = (cause: SearchCause) => chancesOf(question, cause, direction)[index]!;
            const mean = [...made].reduce((sum, [cause, weight]) => sum + weight * chance(cause), 0);
            if (mean === 0) return;
            const after = afterAnswer(made, { question, outcome }, direction);
            for (const [cause, weight] of made)
              if (Math.abs(chance(cause) - mean) > 1e-9)
                expect(Math.sign(after.get(cause)! - weight)).toBe(Math.sign(chance(cause) - mean));
          });
        },
      ),
      { numRuns: 200 },
    ));
  test('information is never negative, and none where the answer is the same for all', () =>
    fc.assert(
      fc.property(
        weights,
        fc.constantFrom(...SEARCH_QUESTIONS),
        fc.constantFrom(...DIRECTIONS),
        (made, question, direction) => {
          const bits = bitsOf(question, made, direction);
          expect(bits).toBeGreaterThan(-1e-12);
          const alike = [...made.keys()].every(
            (cause) => chancesOf(question, cause, direction) === QUESTIONS[question].usual,
          );
          if (alike) expect(bits).toBeCloseTo(0, 12);
        },
      ),
      { numRuns: 200 },
    ));
  test('information by hand: two causes, one even question that tells them apart wholly but for 1 in 20', () => {
    const even = new Map([
      ['own-generation', 0.5],
      ['something-else', 0.5],
    ] as const);
    // panels: 0.96 and 0.1 for "changed". H(0.53) − (H(0.96) + H(0.1)) / 2 = 0.9974 − (0.2423 + 0.4690) / 2 = 0.6418 bits.
    expect(bitsOf('panels', even, 'more')).toBeCloseTo(0.6418, 3);
  });
});

describe('what is weighed', () => {
  test('20 twentieths, likeliest first, something else among them; fits its schema', () => {
    for (const change of [{}, { boughtKWh: 20 }, { meter: 'whole-house' as const, readings: 'unknown' as const }]) {
      const search = guidedSearch(check(change));
      expect(GuidedSearch.safeParse(search).error?.issues).toBeUndefined();
      expect(search.causes.reduce((sum, { twentieths }) => sum + twentieths, 0)).toBe(20);
      expect(twentiethsOf(search, 'something-else')).toBeGreaterThanOrEqual(1);
      const counts = search.causes.map(({ twentieths }) => twentieths);
      expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    }
  });
  test('a bill below is not asked for warmer rooms nor for causes of more', () => {
    const search = guidedSearch(check({ boughtKWh: 20 }));
    expect(search.direction).toBe('less');
    expect(search.causes.map(({ cause }) => cause)).not.toEqual(expect.arrayContaining(['rooms-warmer']));
    for (const cause of ['heater', 'flow-too-hot', 'more-water', 'summer-heating'])
      expect(search.causes.map((one) => one.cause)).not.toContain(cause);
    const answers: SearchAnswer[] = [];
    let rooms: readonly string[] | undefined;
    while (!rooms) {
      const { next } = guidedSearch(check({ boughtKWh: 20, answers }));
      rooms = next.find(({ question }) => question === 'room-temperature')?.outcomes.map(({ outcome }) => outcome);
      answers.push({ question: next[0]!.question, outcome: OUTCOMES[next[0]!.question][0] });
    }
    expect(rooms).toEqual(['as-agreed', 'cooler']);
  });
  test('inside and near the middle nothing is searched; an estimated reading still leads to the meter', () => {
    expect(guidedSearch(check({ boughtKWh: 155 }))).toEqual({
      direction: null,
      state: 'no-need',
      causes: [],
      next: [],
    });
    const { next } = guidedSearch(check({ boughtKWh: 155, readings: 'estimated' }));
    expect(next.map(({ question }) => question)).toEqual(['meter-reading']);
  });
  test('a bill at its middle is searched where a finding inside it weighs something; one of unknown share is not judged', () => {
    const found = (pence: number) => ({ ...made('behaviour-changed'), pence, part: 'rest' }) as never;
    const near = (pence: number) => guidedSearch(check({ boughtKWh: 155 }, { findings: [found(pence)] })).direction;
    expect([near(500), near(-500), near(100)]).toEqual(['more', 'less', null]);
    const unknown = check({ meter: 'whole-house', otherKWh: undefined });
    expect([unknown.verdict, guidedSearch(unknown).state]).toEqual(['unknown', 'not-judged']);
  });
  test('other electricity and panels are thought of on a meter of the whole home only', () => {
    const causes = (change: Partial<BillCheckInput>) => guidedSearch(check(change)).causes.map(({ cause }) => cause);
    expect(causes({})).not.toContain('other-use');
    expect(causes({})).not.toContain('own-generation');
    expect(causes({ meter: 'whole-house', ownUseKWh: 40 })).not.toContain('own-generation');
    expect(causes({ meter: 'whole-house' })).toEqual(expect.arrayContaining(['other-use', 'own-generation']));
  });
  test('use that doubled is hardly warmer rooms, a hotter flow or a worse machine, and rather a meter', () => {
    const seen = (share: number) =>
      check(
        {},
        {
          findings: [
            {
              ...made('behaviour-changed'),
              sure: 0.9,
              may: ['meter-wrong', 'machine-works-less', 'rooms-warmer', 'heater', 'more-water', 'newly-occupied'],
              seen: { share, kind: 'with-the-cold' },
              kWh: 200,
              pence: 5000,
              kWhYear: 200,
              penceYear: 5000,
            } as never,
          ],
        },
      );
    const [little, much, half] = [seen(0.3), seen(1), seen(0.7)].map((one) => weighCauses(one, 'more')) as [
      Weighed,
      Weighed,
      Weighed,
    ];
    const times = (cause: SearchCause, now = much) => now.get(cause)! / little.get(cause)!;
    // Beside a cause that may be of any size.
    expect(times('rooms-warmer') / times('more-water')).toBeCloseTo(0.25, 9);
    expect(times('flow-too-hot') / times('more-water')).toBeCloseTo(0.25, 9);
    expect(times('machine-works-less') / times('more-water')).toBeCloseTo(0.25, 9);
    expect(times('heater') / times('more-water')).toBeCloseTo(0.25, 9);
    // Twice as much is what an exchanged meter may count, and what people need who moved in.
    expect(times('meter-wrong') / times('more-water')).toBeCloseTo(12, 9);
    expect(times('newly-occupied') / times('more-water')).toBeCloseTo(3, 9);
    expect(times('meter-wrong', half) / times('more-water', half)).toBeCloseTo(4, 9);
    expect(times('newly-occupied', half) / times('more-water', half)).toBeCloseTo(1, 9);
  });
  test('what is seen in the rest of the house says nothing of what the heat pump alone takes', () => {
    const rest = { ...made('behaviour-changed'), meter: 'whole-house', may: ['heater', 'meter-wrong'], pence: 9000 };
    const weights = (heatPumpKWh: number) =>
      weighCauses(check({ meter: 'whole-house', boughtKWh: 465, heatPumpKWh }, { findings: [rest as never] }), 'more');
    expect(weights(465).has('own-generation')).toBe(false);
    expect(weights(400).has('own-generation')).toBe(true);
    const ofHeater = (heatPumpKWh: number) =>
      weights(heatPumpKWh).get('heater')! / weights(heatPumpKWh).get('rooms-warmer')!;
    expect(ofHeater(400) / ofHeater(465)).toBeGreaterThan(2);
  });
  test('people who moved in are thought of where a finding has them; what one names is in the part that it is in', () => {
    const seen = (may: readonly LikelyCause[]) =>
      weighCauses(
        check(
          {},
          {
            parts: [{ cause: 'rooms', joined: ['heat-used', 'efficiency'], pence: 10_000 } as never],
            findings: [{ ...made('behaviour-changed'), sure: 0.95, may, kWh: 200, pence: 10_000, seen: {} } as never],
          },
        ),
        'more',
      );
    expect(seen(['more-heat']).has('newly-occupied')).toBe(false);
    const weights = seen(['rooms-warmer', 'more-water', 'newly-occupied']);
    // Two to four as the usual weights are, though hot water is in no part of this sum.
    expect(weights.get('newly-occupied')! / weights.get('rooms-warmer')!).toBeCloseTo(0.5, 9);
    expect(weights.get('more-water')! / weights.get('rooms-warmer')!).toBeCloseTo(0.5, 9);
  });
  test('a curve too high weighs little in a summer bill, fully in that of a winter or a year', () => {
    const ratio = (change: Partial<BillCheckInput>) => {
      const weights = weighCauses(check(change), 'more');
      return weights.get('flow-too-hot')! / weights.get('machine-works-less')!;
    };
    expect(ratio({ from: '2026-10-01', to: '2027-10-01' }) / ratio({})).toBeGreaterThan(0.8);
    expect(ratio({ from: '2027-06-01', to: '2027-09-01', degreeDays: 0 }) / ratio({})).toBeCloseTo(0.2, 9);
  });
  test('heating by mistake is thought of in a summer bill, not in a winter one', () => {
    const causes = (change: Partial<BillCheckInput>) => guidedSearch(check(change)).causes.map(({ cause }) => cause);
    expect(causes({})).not.toContain('summer-heating');
    expect(causes({ from: '2027-06-01', to: '2027-09-01', degreeDays: 0 })).toContain('summer-heating');
  });
  test('a heater metered as nothing hardly counts; one that was found counts most', () => {
    const usual = twentiethsOf(guidedSearch(check()), 'heater');
    expect(twentiethsOf(guidedSearch(check({ immersionKWh: 0 })), 'heater')).toBeLessThan(usual);
    const heater = { ...made('heater-running'), pence: 8000, sure: 0.9 } as NonNullable<BillCheck['findings']>[number];
    const found = guidedSearch(check({}, { findings: [heater] }));
    expect(twentiethsOf(found, 'heater')).toBeGreaterThan(usual);
    expect(found.causes[0]!.cause).toBe('heater');
  });
  test('a finding that names several causes speaks for each of them, one without an amount for all of it', () => {
    type Found = NonNullable<BillCheck['findings']>[number];
    const may = ['machine-works-less', 'rooms-warmer'] as const;
    const seen = { ...made('behaviour-changed'), pence: 8000, sure: 0.9, may: [...may] } as Found;
    const [before, after] = [check(), check({}, { findings: [seen] })].map((one) => weighCauses(one, 'more'));
    for (const cause of ['machine-works-less', 'flow-too-hot', 'rooms-warmer'] as const)
      expect(after!.get(cause)).toBeGreaterThan(before!.get(cause)!);
    expect(after!.get('heater')).toBeLessThan(before!.get('heater')!);
    const panels = { ...made('own-generation'), pence: 0, sure: 0.95 } as Found;
    const home = check({ meter: 'whole-house' }, { findings: [panels] });
    expect(guidedSearch(home).causes[0]!.cause).toBe('own-generation');
  });
  test('a finding of a few pounds does not explain a hundred', () => {
    const small = { ...made('heater-running'), pence: 100, sure: 0.97 } as NonNullable<BillCheck['findings']>[number];
    const [before, after] = [check(), check({}, { findings: [small] })].map(
      (one) => weighCauses(one, 'more').get('heater')!,
    );
    expect(after! / before!).toBeLessThan(1.1);
  });
});

describe('the order of questions', () => {
  test('the one that tells most, and one for the telephone; a week’s wait halves what a question is worth', () => {
    const { next } = guidedSearch(check());
    const weights = weighCauses(check(), 'more');
    const worth = (question: (typeof SEARCH_QUESTIONS)[number]) =>
      bitsOf(question, weights, 'more') * (QUESTIONS[question].minutes > 1440 ? 0.5 : 1);
    const open = SEARCH_QUESTIONS.filter((question) => question !== 'machine-meter');
    const best = open.toSorted((a, b) => worth(b) - worth(a));
    const byHousehold = best.find((question) => QUESTIONS[question].who === 'household');
    expect(QUESTIONS[best[0]!].who).toBe('installer');
    expect(next.map(({ question }) => question)).toEqual([best[0], byHousehold]);
  });
  test.each([
    ['an estimated reading', check({ readings: 'estimated' })],
    ['one that nobody knows of', check({ readings: 'unknown' })],
    [
      'one that readings contradict, though marked as read',
      check({}, { doubts: [{ code: 'bill-above-readings', billKWh: 465, readKWh: 155, pence: 9000 }] }),
    ],
  ])('%s leads to the meter first, and to no machine before it is read', (_, one) => {
    expect(isReadingDoubtful(one)).toBe(true);
    const { next } = guidedSearch(one);
    expect(next[0]!.question).toBe('meter-reading');
    for (const { question } of next) expect(QUESTIONS[question].about).not.toBe('machine');
    const read = { ...one, input: { ...one.input, ...told(['meter-reading', 'fits']) } };
    expect(guidedSearch(read).next.some(({ question }) => QUESTIONS[question].about === 'machine')).toBe(true);
  });
  test('where each outcome leads is what the search says after it', () => {
    const one = check({ meter: 'whole-house' });
    for (const { question, outcomes } of guidedSearch(one).next)
      for (const { outcome, leadsTo, twentieths } of outcomes) {
        const after = guidedSearch({ ...one, input: { ...one.input, ...told([question, outcome]) } });
        expect(twentiethsOf(after, leadsTo!)).toBe(twentieths);
        expect(after.causes[0]!.twentieths).toBe(twentieths);
      }
  });
  test('where nothing listed is likeliest, that is said, and where an outcome leads there, too', () => {
    const doubts = [{ code: 'bill-above-readings' as const, billKWh: 900, readKWh: 300, pence: 20_000 }];
    const parts = [{ cause: 'metering', pence: 20_000 }] as unknown as BillCheck['parts'];
    const one = { ...check({}), doubts, parts };
    const fits = guidedSearch(one).next[0]!.outcomes[0]!;
    expect([fits.outcome, fits.leadsTo]).toEqual(['fits', 'something-else']);
    const after = guidedSearch({ ...one, input: { ...one.input, ...told(['meter-reading', 'fits']) } });
    expect(searchSentence(after)).toContain('Likeliest is something that is not listed here');
  });
  test('nothing is asked twice, and it ends, whatever is answered', () =>
    fc.assert(
      fc.property(
        fc.array(fc.nat(2), { minLength: 20, maxLength: 20 }),
        fc.constantFrom<Partial<BillCheckInput>>(
          {},
          { boughtKWh: 20 },
          { meter: 'whole-house', readings: 'estimated' },
        ),
        (choices, change) => {
          const one = check(change);
          const answers: SearchAnswer[] = [];
          for (const choice of choices) {
            const search = guidedSearch({ ...one, input: { ...one.input, answers } });
            const [next] = search.next;
            if (!next) {
              expect(['one-likely', 'nothing-more']).toContain(search.state);
              return;
            }
            expect(answers.map(({ question }) => question)).not.toContain(next.question);
            answers.push({ question: next.question, outcome: next.outcomes[choice % next.outcomes.length]!.outcome });
          }
          throw new Error('the search did not end');
        },
      ),
      { numRuns: 40 },
    ));
  test('what is true comes out: a search told by each cause ends with it likeliest', () => {
    const one = check({ meter: 'whole-house', readings: 'unknown' });
    for (const cause of [
      'reading-wrong',
      'other-use',
      'own-generation',
      'heater',
      'flow-too-hot',
      'rooms-warmer',
    ] as const) {
      const answers: SearchAnswer[] = [];
      for (;;) {
        const [next] = guidedSearch({ ...one, input: { ...one.input, answers } }).next;
        if (!next) break;
        const chances = chancesOf(next.question, cause, 'more');
        answers.push({
          question: next.question,
          outcome: OUTCOMES[next.question][chances.indexOf(Math.max(...chances))]!,
        });
      }
      expect(guidedSearch({ ...one, input: { ...one.input, answers } }).causes[0]!.cause, cause).toBe(cause);
    }
  });
  test('an answer of another version changes nothing', () => {
    const one = check();
    const foreign = { question: 'something-new' as SearchAnswer['question'], outcome: 'odd' };
    expect(guidedSearch({ ...one, input: { ...one.input, answers: [foreign] } })).toEqual(guidedSearch(one));
  });
  test('the codes of what comes next stand with the check', () => {
    const one = check();
    expect(one.next).toEqual(guidedSearch(one).next.map(({ question }) => question));
    expect(withNext({ ...one, input: { ...one.input, ...told(['panels', 'none']) } }).next).not.toContain('panels');
  });
});

test.each([
  [{ question: 'panels', outcome: 'changed', read: 'since May' }, true],
  [{ question: 'panels', outcome: 'hotter' }, false],
  [{ question: 'panel', outcome: 'changed' }, false],
  [{ question: 'panels', outcome: 'changed', note: 'x' }, false],
])('an answer as it comes in: %j is taken: %s', (answer, isTaken) =>
  expect(TypedAnswer.safeParse(answer).success).toBe(isTaken),
);

describe('readings that may be of another meter', () => {
  const inside = check({ boughtKWh: 155, readings: 'actual' });
  const doubt = (pence: number) => ({
    doubts: [
      {
        code: pence > 0 ? ('bill-above-readings' as const) : ('bill-below-readings' as const),
        billKWh: 155,
        readKWh: 130,
        pence,
      },
    ],
  });
  const less = { ...made('behaviour-changed'), kWh: -80, pence: -2000, part: 'rest' as const, working: [] as never };
  test('what they show is no way to look; that they differ from the bill is', () => {
    const largest = Math.round(0.2 * inside.expected.value);
    expect(guidedSearch({ ...inside, findings: [less] }).direction).toBe('less');
    expect(guidedSearch({ ...inside, ...doubt(largest), findings: [less] })).toMatchObject({ direction: 'more' });
    expect(guidedSearch({ ...inside, ...doubt(-largest), findings: [less] })).toMatchObject({ direction: 'less' });
    expect(guidedSearch({ ...inside, ...doubt(1), findings: [less] }).next.map(({ question }) => question)).toEqual([
      'meter-reading',
    ]);
  });
});

describe('a load of known power', () => {
  const changed = (share: number) => ({
    ...made('behaviour-changed'),
    seen: { share, kind: 'unclear', kWhPerDay: share },
    kWh: 400 * Math.sign(share),
    pence: 10_000 * Math.sign(share),
    may: ['meter-wrong', share < 0 ? 'less-heat' : 'more-heat'] satisfies LikelyCause[],
    part: 'rest' as const,
    working: [] as never,
  });
  const knownLoad = (one: BillCheck) => guidedSearch(one).next.find(({ question }) => question === 'known-load');
  test('is run at home on the meter of the home, and measured by an electrician on the machine’s own', () => {
    const home = { meter: 'whole-house', otherKWh: 100 } as const;
    expect(knownLoad(check(home, { findings: [{ ...changed(1), meter: 'whole-house' }] }))).toMatchObject({
      who: 'household',
    });
    expect(knownLoad(check({ meter: 'heat-pump' }, { findings: [changed(1)] }))).toMatchObject({ who: 'electrician' });
  });
  test('is not run while electricity is made at home', () => {
    const findings = [
      { ...changed(1), meter: 'whole-house' as const },
      { ...made('own-generation'), kWh: 0, pence: 0, working: [] as never },
    ];
    expect(knownLoad(check({ meter: 'whole-house', otherKWh: 100 }, { findings }))).toBeUndefined();
  });
  test('a meter that counts half is thought of as one that counts double', () => {
    const half = check({ boughtKWh: 20 }, { findings: [changed(-0.5)] });
    const tenth = check({ boughtKWh: 20 }, { findings: [changed(-0.25)] });
    expect(twentiethsOf(guidedSearch(half), 'meter-wrong')).toBeGreaterThan(
      twentiethsOf(guidedSearch(tenth), 'meter-wrong') + 2,
    );
  });
});

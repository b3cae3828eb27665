/**
 * Reading ease by page: Flesch 70 or more, or Flesch-Kincaid grade 6 or less, and no sentence over 22 words.
 * The gates are those of plain-language guidance for a reader of 12; formulae: Flesch 1948, Kincaid 1975.
 */
import { describe, expect, test } from 'vitest';
import type { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { BillDoubt } from '../../../src/model/shapes/bill-check.ts';
import { AskCode, CautionCode, FindingCheckCode, FindingCode } from '../../../src/model/shapes/finding.ts';
import { SEARCH_QUESTIONS } from '../../../src/model/shapes/guided-search.ts';
import { changeSentence } from '../../../src/words/change.ts';
import * as check from '../../../src/words/check.ts';
import * as cost from '../../../src/words/cost.ts';
import * as estimate from '../../../src/words/estimate.ts';
import * as findings from '../../../src/words/findings.ts';
import * as following from '../../../src/words/following.ts';
import { german } from '../../../src/words/german/german.ts';
import { glossary } from '../../../src/words/glossary.ts';
import * as search from '../../../src/words/guided-search.ts';
import * as heat from '../../../src/words/heat.ts';
import * as letter from '../../../src/words/letter.ts';
import * as machine from '../../../src/words/machine.ts';
import * as prices from '../../../src/words/prices.ts';
import { questionSentence } from '../../../src/words/questions.ts';
import { speak } from '../../../src/words/say.ts';
import * as sure from '../../../src/words/sure.ts';
import * as watch from '../../../src/words/watch.ts';
import { larchRise } from '../leave-behind/larch-rise.ts';
import { made } from './made-findings.ts';
import { germanEase, readingEase, sentencesOf, wordsOf } from './reading-ease.ts';

const NAMES = { to: 'Mrs Miller', ringName: 'Anna Hill', ringTelephone: '01632 960 123' };
/** All that the letter can say. */
const ROOM = { parts: 4, findings: 2, steps: 4, asks: 4 };
const signature = {
  carrier: 'gas',
  seriesId: 's',
  from: '2025-01-01',
  to: '2026-01-01',
  count: 365,
  period: 'day' as const,
  baseC: 15.5,
  basePerDayKWh: 7,
  slopeKWhPerKDay: 5.2,
  slopeStandardError: 0.1,
  baseStandardError: 0.3,
  r2: 0.9,
  cvRmse: 0.2,
  rho: 0.2,
  points: [],
};
const part = { from: '2025-01-01', to: '2025-10-01', count: 270, baseC: 15.5, basePerDayKWh: 7, r2: 0.9 };
const change = {
  on: '2025-10-01',
  earliest: '2025-09-20',
  latest: '2025-10-08',
  share: -0.29,
  shareLow: -0.35,
  shareHigh: -0.23,
  sure: 0.985,
  used: true,
  before: { ...part, slopeKWhPerKDay: 5.2 },
  after: { ...part, slopeKWhPerKDay: 3.7 },
};
const ofHeat = {
  unit: 'W/K',
  grade: 'estimated' as const,
  working: { title: '', formula: '', inputs: [], result: { value: 238, unit: 'W/K' } },
};
const recordHeatLoss = { value: 238, low: 205, high: 276, ...ofHeat };
const yearsAhead = (['mild', 'typical', 'cold'] as const).map((winter, i) => {
  return { winter, degreeDays: 1900 + 180 * i, kWh: 15_100 + 1100 * i, low: 13_000, high: 19_000 };
});
const rise = larchRise();
const dear = larchRise({ electricityShare: 2 });
const pump = rise.systems[0]!;
const versus = rise.versus[0]!;
const bill = {
  verdict: 'above' as const,
  expected: { value: 60_500, low: 54_000, high: 67_000 },
  actualPence: 67_400,
  estimatedPence: 46_200,
};

const { working } = rise.demand.total;
const complaint: BillCheck = {
  id: 'c',
  estimateId: 'p',
  madeOn: '2026-03-10T10:00:00Z',
  input: {
    estimateId: 'p',
    from: '2025-12-01',
    to: '2026-03-01',
    boughtKWh: 2264,
    otherKWh: 0,
    meter: 'whole-house',
    pencePerKWh: 27.7,
    readings: 'estimated',
  },
  ...bill,
  seasonPence: 52_000,
  parts: [
    { cause: 'price', pence: 3_900, grade: 'measured', working },
    { cause: 'backup', pence: 6_700, grade: 'estimated', working },
    {
      cause: 'rest',
      joined: ['heat-used', 'hot-water', 'efficiency', 'other-electricity', 'metering', 'weather'],
      pence: 4_000,
      grade: 'assumed',
      working,
    },
  ],
  next: [],
  findings: [{ ...made('heater-running'), working }],
};
const followed = {
  month: '2026-01',
  from: '2026-01-01',
  to: '2026-02-01',
  days: 31,
  estimatedKWh: 95,
  expectedKWh: 100,
  lowKWh: 70,
  highKWh: 130,
  actualKWh: 150,
  weatherKnown: true,
  verdict: 'above' as const,
  gapSoFarKWh: 50,
};

const DOUBTS = BillDoubt.shape.code.options.map((code) => ({
  code,
  meterName: 'meter.csv',
  billKWh: 1640,
  readKWh: 1190,
  days: 90,
  daysRead: 50,
  pence: 12_000,
}));

/** Said anew for each language. */
const pagesSaid = (): Record<string, string[]> => ({
  heat: [
    heat.heatSentence(rise.demand),
    heat.waterSentence(rise.demand),
    heat.basisSentence(rise.demand),
    heat.weatherSentence(rise.climate),
    heat.missingWaySentence('heat-loss', 'no-heat-loss'),
    heat.missingWaySentence('floor-area', 'no-floor-area'),
    heat.fitSentence(signature),
    heat.changeSentence({ change, signature }),
    heat.heatLossSentence({ recordHeatLoss, typedHeatLossWPerK: 261 }),
    heat.yearsAheadSentence({ yearsAhead, signature }),
    questionSentence({
      code: 'house-changed',
      data: { ...change, carrier: 'gas', used: 'after', before: 0, after: 0 },
    }),
  ],
  machine: [
    machine.addsSentence(rise.machine),
    machine.factorSentence(rise.machine),
    machine.shareSentence({ ...rise.machine, extraKWh: 380 }),
    machine.fieldSentence(rise.machine),
  ],
  prices: [
    prices.pricesSentence(rise.prices, 'gas'),
    prices.ageSentence({ staleDays: 130 }, 'gas'),
    prices.gradeSentence({ grade: 'assumed', origin: 'the price cap' }, 'gas'),
    prices.ratioSentence(3.3, 4.1, 'gas'),
  ],
  cost: [
    cost.costSentence(rise),
    cost.rangeSentence(pump),
    cost.differenceSentence(rise),
    cost.winterSentence(pump),
    cost.heatPriceSentence(rise),
    cost.breakEvenSentence(versus, 'gas-old'),
    cost.breakEvenSentence({ ...versus, breakEvenFactorAllCosts: 2.9 }, 'gas-old'),
  ],
  'cost, where the heat pump costs more': [
    cost.costSentence(dear),
    cost.rangeSentence(dear.systems[0]!),
    cost.differenceSentence(dear),
  ],
  sure: [sure.dotsSentence(), sure.driversSentence(rise.drivers)],
  change: (['electricity-up', 'flow-up', 'room-up', 'water-up', 'winter-cold'] as const).map((one) =>
    changeSentence(one, 12_000),
  ),
  watch: [
    ...watch.winterBillSentences(pump),
    ...watch.watchSentences(),
    ...watch.callSentences(),
    ...watch.cautionSentences(),
  ],
  estimate: [estimate.estimateMeaning(), ...estimate.limitsSentences()],
  check: [
    check.checkSentence(bill),
    check.fairSentence(bill),
    check.checkSentence({ ...bill, verdict: 'unknown' }),
    ...check.doubtSentences({ ...bill, doubts: DOUBTS }),
    check.causeSentence('weather', 5_800),
    check.causeSentence('price', 9_200),
    check.joinedSentence({ cause: 'rest', joined: ['heat-used', 'hot-water', 'efficiency', 'backup'], pence: 4_000 }),
    check.checkCaution(),
  ],
  'findings, at home': [
    ...FindingCode.options.flatMap((code) => [findings.homeSentence(made(code)), findings.costOfFinding(made(code))]),
    ...AskCode.options.map(findings.askSentence),
  ],
  'findings, for the installer': [
    ...FindingCode.options.map((code) => findings.seenSentence(made(code))),
    ...FindingCheckCode.options.map(findings.findingCheckSentence),
    ...CautionCode.options.map(findings.findingCaution),
    findings.noFindingsSentence(),
    findings.noReadingsSentence(),
  ],
  'the search, to the customer': [
    ...SEARCH_QUESTIONS.map((one) => search.customerWords(one)),
    search.customerWords('known-load', 'electrician'),
  ],
  'the search, for the installer': [
    ...SEARCH_QUESTIONS.map((one) => search.questionTask(one)),
    search.questionTask('known-load', 'electrician'),
    ...(['open', 'one-likely', 'nothing-more', 'no-need', 'not-judged'] as const).map((state) =>
      search.searchSentence({ direction: 'more', state, causes: [{ cause: 'heater', twentieths: 9 }], next: [] }),
    ),
    search.twentiethsMeaning(),
  ],
  following: [
    following.followedSentence([followed], 25),
    following.nextBillSentence([followed]),
    following.nextBillSentence([{ ...followed, verdict: 'inside', actualKWh: 105 }]),
    following.notFollowedSentence(true),
    following.notFollowedSentence(false),
  ],
  letter: [
    letter.letterGreeting(NAMES),
    letter.letterThanks('2026-11-25'),
    letter.urgentSentence('2026-11-25', 'Urgent: the brine could freeze in the machine.'),
    letter.letterVerdict(complaint),
    ...letter.knownSentences(complaint, ROOM),
    ...letter.letterUnknowns(complaint),
    ...letter.letterSteps(complaint, '2026-11-25', ROOM, true).map(({ what }) => what),
    letter.leaveItSentence(),
    letter.ringSentence(NAMES),
    letter.scheduleSentence(),
    letter.scheduleNote(complaint, 0),
    letter.scheduleNote(complaint, 240),
    ...letter.readSentences(complaint),
  ],
  glossary: glossary().map((entry) => entry.meaning),
});
const pages = pagesSaid();
speak({ language: 'de-DE', currency: 'GBP' }, german);
const germanPages = pagesSaid();
speak({ language: 'en-GB', currency: 'GBP' });

describe.each(Object.entries(pages))('%s', (name, texts) => {
  const text = texts.filter(Boolean).join(' ');
  const { ease, grade } = readingEase(text);
  test(`reads easily (ease ${ease.toFixed(0)}, grade ${grade.toFixed(1)})`, () => {
    expect(ease >= 70 || grade <= 6, `${name}: ease ${ease}, grade ${grade}`).toBe(true);
  });
  test('no sentence over 22 words, none that promises or shouts', () => {
    expect(text).not.toMatch(/will save|!|NaN|undefined/);
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(22);
  });
});

describe.each(Object.entries(germanPages))('%s, in German', (name, texts) => {
  const text = texts.filter(Boolean).join(' ');
  const ease = germanEase(text);
  test(`reads easily (Amstad ${ease.toFixed(0)})`, () => expect(ease, name).toBeGreaterThanOrEqual(60));
  test('no sentence over 22 words', () => {
    for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(22);
  });
});

test('the measure itself: short words are easier than long ones', () => {
  const easy = readingEase('The cat sat on the mat. It was warm.');
  const hard = readingEase(
    'Thermodynamic considerations necessitate comprehensive investigation of refrigeration machinery.',
  );
  expect(easy.ease).toBeGreaterThan(90);
  expect(hard.ease).toBeLessThan(0);
});

test('the glossary is there, alphabet or not: about 25 terms, no term twice', () => {
  expect(glossary().length).toBeGreaterThanOrEqual(25);
  expect(new Set(glossary().map((entry) => entry.term.toLowerCase())).size).toBe(glossary().length);
});

/** What each thing that is known makes of a cause, as so many times the weight that it has where nothing is known. */
import { describe, expect, test } from 'vitest';
import {
  afterAnswer,
  guidedSearch,
  inTwentieths,
  isReadingDoubtful,
  searchDirection,
} from '../../../src/model/guided-search/guided-search.ts';
import { asSureAsSeen, type Direction, weighCauses } from '../../../src/model/guided-search/weigh-causes.ts';
import type { BillCheck } from '../../../src/model/shapes/bill-check.ts';
import { OUTCOMES, type SearchCause } from '../../../src/model/shapes/guided-search.ts';

const winter = { from: '2026-12-01', to: '2027-02-01' };
type Change = {
  readonly input?: object;
  readonly parts?: readonly object[];
  readonly doubts?: readonly string[];
  readonly findings?: readonly object[];
};
const check = ({ input = {}, parts = [], doubts = [], findings = [] }: Change) =>
  ({
    input: { meter: 'whole-house', readings: 'actual', ...winter, ...input },
    parts,
    doubts: doubts.map((code) => ({ code })),
    findings,
  }) as unknown as BillCheck;
const weigh = (change: Change, direction: Direction) => weighCauses(check(change), direction);
/** Half of what a wrong meter has is 1, as where nothing is known. */
const weightsOf = (change: Change, direction: Direction = 'more') => {
  const weights = weigh(change, direction);
  return Object.fromEntries([...weights].map(([cause, one]) => [cause, (0.5 * one) / weights.get('meter-wrong')!]));
};
const rounded = (weights: Readonly<Record<string, number>>) =>
  Object.fromEntries(Object.entries(weights).map(([cause, one]) => [cause, Number(one.toFixed(6))]));
/** By how much the weights of causes change, those that do not left out. */
const timesOf = (change: Change, direction: Direction = 'more', before: Change = {}) => {
  const [now, usual] = [weightsOf(change, direction), weightsOf(before, direction)];
  const times = Object.keys(now)
    .filter((cause) => cause !== 'something-else')
    .map((cause) => [cause, now[cause]! / usual[cause]!] as const);
  return rounded(Object.fromEntries(times.filter(([, one]) => Math.abs(one - 1) > 1e-9)));
};

describe('where nothing is known', () => {
  test('a winter above: 32.5 in all and a tenth of everything for something else', () => {
    expect(rounded(weightsOf({}))).toEqual({
      'reading-wrong': 4,
      'meter-wrong': 0.5,
      weather: 4,
      'other-use': 6,
      'own-generation': 1,
      heater: 4,
      'flow-too-hot': 5,
      'machine-works-less': 2,
      'rooms-warmer': 4,
      'more-water': 2,
      'something-else': Number((32.5 / 9).toFixed(6)),
    });
    expect(weigh({}, 'more').get('something-else')).toBeCloseTo(0.1, 12);
  });
  test('a winter below', () => {
    expect(rounded(weightsOf({}, 'less'))).toEqual({
      'reading-wrong': 4,
      'meter-wrong': 0.5,
      weather: 4,
      'own-generation': 2,
      'less-other-use': 6,
      'machine-works-better': 2,
      'less-heat': 4,
      'less-water': 2,
      'home-empty': 3,
      'something-else': Number((27.5 / 9).toFixed(6)),
    });
  });
  test.each<readonly [string, Change, Direction, readonly SearchCause[]]>([
    ['a meter of its own', { input: { meter: 'heat-pump' } }, 'more', ['other-use', 'own-generation']],
    ['a second meter', { input: { heatPumpKWh: 5 } }, 'more', ['other-use']],
    ['a second meter', { input: { heatPumpKWh: 5 } }, 'less', ['less-other-use']],
    ['weather that is known', { parts: [{ cause: 'weather', pence: 0 }] }, 'more', ['weather']],
    ['weather that is known', { parts: [{ cause: 'weather', pence: 0 }] }, 'less', ['weather']],
  ])('%s leaves out for %#', (_, change, direction, without) => {
    const before = Object.keys(weightsOf({}, direction));
    expect(Object.keys(weightsOf(change, direction))).toEqual(before.filter((one) => !without.some((x) => x === one)));
  });
  test('other electricity that stands in the sum is thought of on any meter', () => {
    const parts = [{ cause: 'other-electricity', pence: 0 }];
    expect(weightsOf({ input: { meter: 'heat-pump' }, parts })['other-use']).toBeCloseTo(6, 9);
  });
});

describe('the season', () => {
  // Twelve equal pieces of the bill's days; so many of them lie in May to September.
  test.each([
    ['2027-05-01', '2027-10-01', 0.2, 3],
    ['2027-01-01', '2028-01-01', 1, 3],
    ['2027-07-01', '2028-01-01', 1, 3],
    ['2027-04-01', '2027-08-01', 0.5, 3],
    ['2027-08-01', '2027-12-01', 1, 3],
    ['2027-04-01', '2027-10-01', 1 / 3, 3],
    ['2026-10-01', '2027-05-01', 1, undefined],
    ['2027-02-10', '2027-06-01', 1, undefined],
    ['2027-01-23', '2027-06-15', 1, 3],
  ])('%s to %s: heating in the cold %d times, by mistake %d', (from, to, cold, mistaken) => {
    const times = weightsOf({ input: { from, to } });
    expect(times['flow-too-hot']! / 5).toBeCloseTo(cold, 9);
    expect(times['rooms-warmer']! / 4).toBeCloseTo(cold, 9);
    expect(weightsOf({ input: { from, to } }, 'less')['less-heat']! / 4).toBeCloseTo(cold, 9);
    expect([times['machine-works-less'], times['summer-heating']]).toEqual([
      expect.closeTo(2, 9),
      mistaken === undefined ? undefined : expect.closeTo(mistaken, 9),
    ]);
  });
});

describe('the parts of the sum', () => {
  const parts = [
    { cause: 'heat-used', pence: 500 },
    { cause: 'efficiency', pence: 300 },
    { cause: 'rest', joined: ['hot-water', 'backup'], pence: 200 },
    { cause: 'other-electricity', pence: -400 },
    { cause: 'metering', pence: 10 },
    ...['days', 'price', 'when', 'standing-charge'].map((cause) => ({ cause, pence: 9000 })),
  ];
  test('each cause by its part’s share of what is open, at least 3 in 100; one that is in none by all', () => {
    expect(timesOf({ parts })).toEqual(
      rounded({
        'reading-wrong': 0.03,
        weather: 0.03,
        'other-use': 0.03,
        heater: 200 / 1010,
        'flow-too-hot': 300 / 1010,
        'machine-works-less': 300 / 1010,
        'rooms-warmer': 500 / 1010,
        'more-water': 200 / 1010,
      }),
    );
    const summer = { from: '2027-01-01', to: '2028-01-01' };
    expect(timesOf({ parts, input: summer }, 'more', { input: summer })['summer-heating']).toBeCloseTo(500 / 1010, 6);
  });
  test('below, what is less counts; a part may hold two', () => {
    const less = parts.map((part) => ({ ...part, pence: -part.pence }));
    expect(timesOf({ parts: less }, 'less')).toEqual(
      rounded({
        'reading-wrong': 0.03,
        weather: 0.03,
        'less-other-use': 0.03,
        'machine-works-better': 300 / 1010,
        'less-heat': 500 / 1010,
        'less-water': 200 / 1010,
        'home-empty': 700 / 1010,
      }),
    );
  });
});

describe('doubts', () => {
  test.each<readonly [Change, Direction, Readonly<Record<string, number>>]>([
    [{ doubts: ['bill-above-readings'] }, 'more', { 'reading-wrong': 30 }],
    [{ doubts: ['bill-above-readings'] }, 'less', {}],
    [{ doubts: ['bill-below-readings'] }, 'less', { 'reading-wrong': 30 }],
    [{ doubts: ['bill-below-readings'] }, 'more', {}],
    [{ doubts: ['units-hold-other'] }, 'more', { 'other-use': 30 }],
    [{ doubts: ['readings-cover-part', 'other-unknown'] }, 'more', {}],
    [{ input: { readings: 'estimated' } }, 'more', { 'reading-wrong': 2 }],
    [{ input: { readings: 'estimated', readKWh: 7 } }, 'more', {}],
    [{ input: { readings: 'unknown' } }, 'more', {}],
  ])('%j %s: %j', (change, direction, times) => expect(timesOf(change, direction)).toEqual(times));
  test('a machine’s meter above the home’s: 30 times a wrong one', () => {
    const weights = weigh({ doubts: ['machine-above-home'] }, 'more');
    expect(weights.get('meter-wrong')! / weights.get('heater')!).toBeCloseTo((30 * 0.5) / 4, 9);
  });
});

describe('findings', () => {
  const parts = [
    {
      cause: 'rest',
      joined: ['backup', 'hot-water', 'efficiency', 'heat-used', 'metering', 'other-electricity'],
      pence: 1000,
    },
  ];
  const known = { parts, input: { from: '2027-01-01', to: '2028-01-01' } };
  const times = (finding: object, direction: Direction = 'more') =>
    timesOf(
      {
        ...known,
        parts: direction === 'more' ? parts : parts.map((part) => ({ ...part, pence: -1000 })),
        findings: [
          { code: 'heater-running', pence: direction === 'more' ? 1000 : -1000, sure: 0.75, seen: {}, ...finding },
        ],
      },
      direction,
      { ...known, parts: direction === 'more' ? parts : parts.map((part) => ({ ...part, pence: -1000 })) },
    );
  test.each<readonly [string, object, number]>([
    ['3 in 4 for all of it', {}, 3],
    ['for half of it: the root', { pence: 500 }, Math.sqrt(3)],
    ['for more than all of it', { pence: 4000 }, 3],
    ['without an amount: for all', { pence: 0 }, 3],
    ['no surer than 19 to 1', { sure: 0.99 }, 19],
    ['19 to 1', { sure: 0.95 }, 19],
    ['18 in 19', { sure: 18 / 19 }, 18],
    ['less sure than not speaks not against', { sure: 0.4 }, 1],
    ['the other way says nothing', { pence: -1 }, 1],
  ])('%s', (_, finding, odds) => {
    expect(times(finding)).toEqual(odds === 1 ? {} : rounded({ heater: odds }));
  });
  test('where nothing is dearer a finding counts in full', () => {
    expect(timesOf({ findings: [{ code: 'heater-running', pence: 5, sure: 0.75, seen: {} }] })).toEqual({ heater: 3 });
  });
  test.each<readonly [object, Direction, readonly string[]]>([
    [{ code: 'backup-in-cold' }, 'more', ['heater']],
    [{ code: 'water-often' }, 'more', ['more-water']],
    [{ code: 'base-load-rose' }, 'more', ['other-use']],
    [{ code: 'large-load' }, 'more', ['other-use']],
    [{ code: 'estimate-corrected' }, 'less', ['reading-wrong']],
    [{ code: 'own-generation' }, 'less', ['own-generation']],
    [{ code: 'home-empty' }, 'less', ['home-empty']],
    [{ code: 'night-setback' }, 'more', []],
    [
      { code: 'behaviour-changed', seen: { kind: 'with-the-cold' } },
      'more',
      ['heater', 'flow-too-hot', 'machine-works-less', 'rooms-warmer'],
    ],
    [
      { code: 'behaviour-changed', seen: { kind: 'all-year' } },
      'more',
      ['other-use', 'heater', 'more-water', 'summer-heating'],
    ],
    [
      { code: 'behaviour-changed', seen: { kind: 'with-the-cold' } },
      'less',
      ['machine-works-better', 'less-heat', 'home-empty'],
    ],
    [
      { code: 'behaviour-changed', seen: { kind: 'all-year' } },
      'less',
      ['own-generation', 'less-other-use', 'less-water', 'home-empty'],
    ],
    [{ may: ['more-heat', 'plug-in-heaters'] }, 'more', ['other-use', 'rooms-warmer']],
    [{ may: ['backup-heater', 'base-load', 'water-often'] }, 'more', ['other-use', 'heater', 'more-water']],
    [{ may: ['machine-works-less', 'large-load'] }, 'more', ['other-use', 'flow-too-hot', 'machine-works-less']],
    [{ may: ['heater-off', 'less-water'] }, 'less', ['less-other-use', 'less-water']],
    [{ may: ['rooms-warmer'] }, 'less', []],
  ])('%j %s speaks for %j', (finding, direction, causes) => {
    expect(times(finding, direction)).toEqual(Object.fromEntries(causes.map((cause) => [cause, 3])));
  });
  test('a meter that counts otherwise speaks for a wrong one', () => {
    const weights = weigh({ findings: [{ code: 'meter-scale', pence: 0, sure: 0.75, seen: {} }] }, 'more');
    expect(weights.get('meter-wrong')! / weights.get('heater')!).toBeCloseTo((3 * 0.5) / 4, 9);
  });
  test.each([
    [0.4, 3, 3, 3],
    [0.41, 0.75, 0.75, 3],
    [0.49, 0.75, 0.75, 3],
    [0.5, 0.75, 0.75, 12],
  ])('use that rose by %d: warmer rooms %d, flow %d and a meter %d times', (share, rooms, flow, meter) => {
    const change = {
      code: 'behaviour-changed',
      pence: 0,
      sure: 0.75,
      may: ['rooms-warmer', 'machine-works-less', 'meter-wrong'],
      seen: { share },
    };
    const now = weigh({ findings: [change] }, 'more');
    const times = (cause: SearchCause, usual: number) => ((now.get(cause)! / now.get('heater')!) * 4) / usual;
    expect(times('rooms-warmer', 4)).toBeCloseTo(rooms, 9);
    expect(times('flow-too-hot', 5)).toBeCloseTo(flow, 9);
    expect(times('machine-works-less', 2)).toBeCloseTo(3, 9);
    expect(times('meter-wrong', 0.5)).toBeCloseTo(meter, 9);
  });
});

test.each([
  // Twentieths of each, something else last; whole ones of them, the largest remainders first.
  [
    [7.2, 3.7, 5.6, 3.5],
    [7, 4, 6, 3],
  ],
  [
    [12.9, 0.6, 0.4, 6.1],
    [13, 1, 0, 6],
  ],
  [
    [1.6, 9.7, 8.2, 0.5],
    [2, 9, 8, 1],
  ],
  [
    [19.8, 0.1, 0.06, 0.04],
    [19, 0, 0, 1],
  ],
  [
    [0.03, 19.9, 0.05, 0.02],
    [0, 19, 0, 1],
  ],
  [
    [0.3, 0.2, 0.1, 19.4],
    [1, 0, 0, 19],
  ],
])('%j are %j twentieths', (shares, counts) => {
  const causes = ['heater', 'weather', 'rooms-warmer', 'something-else'] as const;
  const weights = new Map(causes.map((cause, i) => [cause, shares[i]! / 20]));
  expect(causes.map((cause) => inTwentieths(weights).get(cause))).toEqual(counts);
});

test('an answer multiplies by its chances: panels changed, 0.96 for own electricity and 0.1 for all others', () => {
  const even = new Map([
    ['own-generation', 0.25],
    ['heater', 0.25],
    ['something-else', 0.5],
  ] as const);
  const after = afterAnswer(even, { question: 'panels', outcome: 'changed' }, 'less');
  expect([...after.values()]).toEqual(
    [0.24 / 0.315, 0.025 / 0.315, 0.05 / 0.315].map((one) => expect.closeTo(one, 12)),
  );
  const sure = new Map([['heater', 1]] as const);
  // No cause leaves it possible: nothing is learnt.
  expect(afterAnswer(sure, { question: 'room-temperature', outcome: 'warmer' }, 'less')).toBe(sure);
});

describe('whether to search at all', () => {
  test.each([
    // Verdict, paid, expected, what findings come to in parts of it and beside; the direction.
    ['above', 100, 100, 0, 0, 'more'],
    ['below', 100, 100, 0, 0, 'less'],
    ['inside', 115, 100, 0, 0, null],
    ['inside', 115.1, 100, 0, 0, 'more'],
    ['inside', 85.1, 100, 0, 0, null],
    ['inside', 84.9, 100, 0, 0, 'less'],
    ['inside', 100, 100, 5, 0, 'more'],
    ['inside', 100, 100, 4.9, 90, null],
    ['inside', 100, 100, -5, 0, 'less'],
    ['unknown', 300, 100, 50, 0, null],
    ['above', 100, 0, 0, 0, null],
    ['above', 1, 0.5, 0, 0, 'more'],
  ] as const)(
    '%s, %d of %d, findings of %d and %d beside: %s',
    (verdict, actualPence, value, inside, beside, direction) => {
      const findings = [{ part: 'rest', pence: inside }, { pence: beside }];
      const one = { verdict, actualPence, expected: { value }, findings } as unknown as BillCheck;
      expect(searchDirection(one)).toBe(direction);
      if (inside === 0) expect(searchDirection({ ...one, findings: undefined })).toBe(direction);
    },
  );
  test.each([
    ['actual', undefined, [], false],
    ['estimated', undefined, [], true],
    ['unknown', undefined, [], true],
    ['estimated', 5, [], false],
    ['actual', undefined, ['bill-above-readings'], true],
    ['actual', undefined, ['bill-below-readings'], true],
    ['actual', undefined, ['machine-above-home'], true],
    ['actual', undefined, ['units-hold-other', 'readings-cover-part', 'other-unknown'], false],
  ] as const)('readings %s, read again %d, doubts %j: doubtful %s', (readings, readKWh, codes, doubtful) => {
    const doubts = codes.map((code) => ({ code }));
    expect(isReadingDoubtful({ input: { readings, readKWh }, doubts } as unknown as BillCheck)).toBe(doubtful);
    if (codes.length === 0)
      expect(isReadingDoubtful({ input: { readings, readKWh } } as unknown as BillCheck)).toBe(doubtful);
  });
  test('a difference that nobody can judge: first the meter, then the machine’s own meter, each once', () => {
    const unknown = { ...check({ input: { readings: 'estimated' } }), verdict: 'unknown', expected: { value: 5 } };
    const asked = (answers: readonly object[]) =>
      guidedSearch({ ...unknown, input: { ...unknown.input, answers } } as unknown as BillCheck).next;
    expect(asked([])).toEqual([
      {
        question: 'meter-reading',
        who: 'household',
        minutes: 5,
        bits: 0,
        outcomes: [{ outcome: 'fits' }, { outcome: 'lower' }, { outcome: 'higher' }],
      },
      {
        question: 'machine-meter',
        who: 'electrician',
        minutes: 10_080,
        bits: 0,
        outcomes: [{ outcome: 'as-estimated' }, { outcome: 'other-differs' }],
      },
    ]);
    expect(asked([{ question: 'meter-reading', outcome: 'fits' }]).map(({ question }) => question)).toEqual([
      'machine-meter',
    ]);
  });
});

describe('what findings show of the amount', () => {
  const parts = [{ cause: 'rest', pence: 9000 }];
  const found = (pence: number, more: object = {}) =>
    [{ code: 'meter-scale', meter: 'heat-pump', pence, sure: 0.9, seen: {}, ...more }] as const;
  const chances = (findings: readonly object[], input: object = {}) => {
    const one = check({ input, parts, findings });
    return inTwentieths(asSureAsSeen(weighCauses(one, 'more'), one, 'more'));
  };
  test('most of it: as likely as the finding is sure, so that both numbers are one', () => {
    expect(chances(found(8000)).get('meter-wrong')).toBe(18);
    expect(chances(found(6000)).get('meter-wrong')).toBe(18);
    expect(chances(found(8000, { sure: 0.99 })).get('meter-wrong')).toBe(19);
    expect(chances(found(8000, { sure: 0.99 })).get('something-else')).toBe(1);
  });
  test('a third of it: half as likely; on another meter, the other way or in the estimate: not at all', () => {
    expect(chances(found(3000)).get('meter-wrong')).toBe(9);
    const machineOnly = { meter: 'heat-pump' };
    const least = chances([], machineOnly).get('meter-wrong')!;
    expect(chances(found(8000, { meter: 'whole-house', code: 'large-load' }), machineOnly).get('meter-wrong')).toBe(
      least,
    );
    expect(chances(found(-8000)).get('meter-wrong')).toBe(chances([]).get('meter-wrong'));
  });
  test('a sum without a difference is left as it is', () => {
    const one = check({ parts: [], findings: found(8000) });
    const weights = weighCauses(one, 'more');
    expect(asSureAsSeen(weights, one, 'more')).toBe(weights);
  });
});

describe('heat that a meter counted over the bill’s days', () => {
  // 100 p are to be explained, all of it a change with the cold, which a meter of electricity alone lays on rooms and machine alike.
  const finding = {
    code: 'behaviour-changed',
    meter: 'heat-pump',
    sure: 0.9,
    pence: 100,
    seen: { kind: 'with-the-cold', share: 0.3 },
    may: ['machine-works-less', 'rooms-warmer', 'backup-heater'],
  };
  const search = (heatPence: number, heatKWh?: number) => {
    const metered = [
      { cause: 'heat-used', joined: ['heat-used', 'hot-water'], pence: heatPence },
      { cause: 'efficiency', joined: ['efficiency', 'backup'], pence: 100 - heatPence },
    ];
    const alone = [{ cause: 'rest', joined: ['heat-used', 'hot-water', 'efficiency', 'backup'], pence: 100 }];
    const input = { meter: 'heat-pump', ...(heatKWh === undefined ? {} : { heatKWh }) };
    const one = check({ input, parts: heatKWh === undefined ? alone : metered, findings: [finding] });
    return guidedSearch({ ...one, verdict: 'above', expected: { value: 50 } } as unknown as BillCheck);
  };
  const twentiethsOf = (found: ReturnType<typeof search>, ...causes: readonly string[]) =>
    found.causes.filter(({ cause }) => causes.includes(cause)).reduce((sum, { twentieths }) => sum + twentieths, 0);
  const OF_MACHINE = ['heater', 'flow-too-hot', 'machine-works-less'];
  test('without it both are open', () => {
    const found = search(100);
    expect(twentiethsOf(found, ...OF_MACHINE)).toBeGreaterThan(2);
    expect(twentiethsOf(found, 'rooms-warmer')).toBeGreaterThan(0);
  });
  test('more of it, made as well as estimated: the rooms, and no heater is asked for', () => {
    const found = search(100, 5000);
    expect(found.causes[0]!.cause).toBe('rooms-warmer');
    expect(twentiethsOf(found, ...OF_MACHINE)).toBe(0);
    expect(found.next.map(({ question }) => question)).not.toContain('heater-hours');
  });
  test('as much of it as estimated: the machine, and nobody measures the rooms', () => {
    const found = search(0, 3000);
    expect(twentiethsOf(found, ...OF_MACHINE)).toBeGreaterThan(14);
    expect(twentiethsOf(found, 'rooms-warmer')).toBe(0);
    expect(found.next.map(({ question }) => question)).not.toContain('room-temperature');
  });
});

test('one cause stands out from 16 in 20 on, and then nothing more is asked; something else never does', () => {
  const contradicted = { ...check({ doubts: ['bill-above-readings'] }), verdict: 'above', expected: { value: 5 } };
  const after = (...answers: readonly (readonly [question: string, outcome: string])[]) => {
    const told = answers.map(([question, outcome]) => ({ question, outcome }));
    return guidedSearch({ ...contradicted, input: { ...contradicted.input, answers: told } } as unknown as BillCheck);
  };
  // 120 of 148.5 and a ninth of that for something else: 14.5 twentieths.
  expect(after().causes.slice(0, 2)).toEqual([
    { cause: 'reading-wrong', twentieths: 15 },
    { cause: 'something-else', twentieths: 2 },
  ]);
  expect(after()).toMatchObject({ direction: 'more', state: 'open' });
  // Where no load is off, 0.95 for all but a wrong meter; where the number is another, 0.25 against 0.03.
  expect(after(['meter-number', 'other'])).toMatchObject({ state: 'one-likely', next: [] });
  const elsewhere = [
    'meter-reading',
    'meter-number',
    'known-load',
    'outdoor-record',
    'machine-meter',
    'other-loads',
    'panels',
    'heater-hours',
    'flow-temperature',
    'heat-made',
    'source-side',
    'room-temperature',
    'people-and-water',
    'heating-off',
    'days-away',
  ] as const;
  const all = after(...elsewhere.map((question) => [question, OUTCOMES[question][0]] as const));
  expect(all.causes[0]!.cause).toBe('something-else');
  expect(all).toMatchObject({ state: 'nothing-more', next: [] });
});

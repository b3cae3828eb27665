import { describe, expect, test } from 'vitest';
import type { Appraisal } from '../../../src/model/shapes/appraisal.ts';
import * as cost from '../../../src/words/cost.ts';
import { designedSentence } from '../../../src/words/machine.ts';
import { figure, larchRise, system } from '../leave-behind/larch-rise.ts';
import { sentencesOf, wordsOf } from './reading-ease.ts';

function pair(pumpPence: number, presentPence: number, kind = 'gas-old'): Pick<Appraisal, 'systems' | 'versus'> {
  const base = larchRise();
  const make = (id: 'heat-pump' | 'present', value: number) => ({
    ...system({
      id,
      kind: id === 'present' ? kind : id,
      carrier: 'electricity',
      kWh: 1,
      pence: 1,
      standing: 0,
      service: 0,
    }),
    cost: figure(value, value * 0.9, value * 1.2, 'pence'),
  });
  const saving = presentPence - pumpPence;
  return {
    systems: [make('heat-pump', pumpPence), make('present', presentPence)],
    versus: [
      {
        ...base.versus[0]!,
        against: 'present',
        saving: figure(saving, saving - 30_000, saving + 30_000, 'pence'),
        chanceLess: saving > 0 ? 0.8 : 0.2,
      },
    ],
  };
}

describe('the opening sentence over the whole range', () => {
  const first = (amount: string) => `Heating this home with a heat pump should cost about ${amount} a year.`;
  test.each([
    [119_000, 160_000, `${first('£1,190')} The gas boiler you have now costs about £1,600.`],
    [200_000, 160_000, `${first('£2,000')} The gas boiler you have now costs about £1,600.`],
    [159_000, 160_400, `${first('£1,590')} The gas boiler you have now costs about the same, £1,600.`],
    [0, 0, `${first('£0')} The gas boiler you have now costs about the same, £0.`],
    [40, 240, `${first('£0')} The gas boiler you have now costs about the same, £2.`],
    [-12_000, 160_000, `${first('−£120')} The gas boiler you have now costs about £1,600.`],
    [900_000_000, 1, `${first('£9,000,000')} The gas boiler you have now costs about £0.`],
    [119_000, Number.NaN, `${first('£1,190')} What you pay for heating now is not known yet.`],
    [Number.NaN, 160_000, 'We do not know yet what heating this home with a heat pump would cost.'],
  ])('%d against %d pence', (pump, present, said) => expect(cost.costSentence(pair(pump, present))).toBe(said));

  test('what nobody has said is not told as theirs', () =>
    expect(cost.costSentence(pair(119_000, 160_000, 'gas-assumed'))).toContain(
      'The gas boiler we assume you have costs about £1,600.',
    ));
  test('heaters are many', () =>
    expect(cost.costSentence(pair(119_000, 160_000, 'storage'))).toContain(
      'The storage heaters you have now cost about',
    ));
  test('without a present system the cheapest other is named', () =>
    expect(cost.costSentence(larchRise({ withoutPresent: true }))).toContain('An oil boiler would cost about £1,480.'));
  test('without any other there is one sentence', () =>
    expect(cost.costSentence({ systems: pair(119_000, 1).systems.slice(0, 1), versus: [] })).toBe(first('£1,190')));
});

describe('which side is named', () => {
  const withChance = (presentPence: number, chanceLess: number) => {
    const { systems, versus } = pair(119_000, presentPence);
    return { systems, versus: [{ ...versus[0]!, chanceLess }] };
  };
  test.each([
    [160_000, 0.9, 'less'],
    [160_000, 0.55, 'about-same'],
    [80_000, 0.1, 'more'],
    [80_000, 0.45, 'about-same'],
    // Saving and chance against each other, and less than £20 apart.
    [160_000, 0.4, 'about-same'],
    [120_000, 0.9, 'about-same'],
    [Number.NaN, 0.9, 'unknown'],
  ])('%d pence against 119,000 at a chance of %f: %s', (presentPence, chance, said) =>
    expect(cost.standing(withChance(presentPence, chance), 'present')).toBe(said),
  );

  test('an even chance is about the same, whatever the difference', () =>
    expect(cost.differenceSentence(withChance(160_000, 0.5))).toContain('costs about the same'));

  test('the design is a second mark, and how many get there', () => {
    const [pump] = pair(148_000, 160_000).systems;
    const designed = (costPence: number, reachedShare: number) =>
      cost.designSentence({ ...pump!, asDesigned: { costPence, reachedShare } });
    expect(designed(142_000, 0.165)).toBe(
      'If it works as designed: £1,420 a year. In practice about 16 in 100 homes get there.',
    );
    expect(designed(142_000, 0.41)).toContain('about 41 in 100 homes get there.');
    expect(designed(142_000, 0.004)).toContain('fewer than 1 in 100 homes get there.');
    expect(designed(148_010, 0.4)).toBe('');
    expect(cost.designSentence(pump!)).toBe('');
  });
});

test('what a month costs is said to the pound, so that twelve months make the year', () => {
  const unitsPence = [17, 15, 12, 8, 5, 3, 2, 3, 5, 9, 9, 12].map((share) => (share / 100) * 148_400);
  const monthly = { boughtKWh: unitsPence, unitsPence, standingPence: unitsPence.map(() => 0) };
  const paid = { ...monthly, servicePence: monthly.standingPence };
  // 1,484 / 12 = 123.67; 17 % of 1,484 = 252.28; 1,900 / 12 = 158.33.
  expect(cost.paymentSentence({ cost: figure(148_400, 118_000, 190_000, 'pence'), monthly: paid })).toBe(
    'An even payment is about £124 a month. The most expensive month is January, at about £252. For the first year put £158 a month aside: that is enough for 9 in 10 homes like yours.',
  );
});

test('one share of homes is said of a design, beside its cost and beside its factor', () => {
  const asDesigned = { space: 3.7, water: 2.8, whole: 3.3, reachedShare: 0.385 };
  expect(designedSentence({ whole: figure(3.1, 2.5, 3.9, ''), asDesigned })).toBe(
    'By design it would be 3.3. In practice about 38 in 100 homes get there. So we use 3.1, the middle of what homes get.',
  );
});

describe('around it', () => {
  test.each([
    [119_000, 160_000, 'should cost about £410 a year less. For 8 in 10 homes like yours it is £110 to £710 less.'],
    [160_000, 119_000, 'should cost about £410 a year more. For 8 in 10 homes like yours it is £110 to £710 more.'],
    [160_000, 160_000, 'costs about the same. For 8 in 10 homes like yours it is from £300 more to £300 less a year.'],
  ])('the difference of %d and %d always has its range', (pump, present, said) =>
    expect(cost.differenceSentence(pair(pump, present))).toBe(
      `Compared with the gas boiler you have now, the heat pump ${said}`,
    ),
  );
  test('a difference that is not known is no number', () =>
    expect(cost.differenceSentence(pair(Number.NaN, 1))).toBe(
      'We cannot compare the heat pump with the gas boiler you have now yet.',
    ));

  test('the range says how often it will be missed', () =>
    expect(cost.rangeSentence({ cost: figure(119_000, 104_000, 140_000, 'pence') })).toBe(
      '8 in 10 homes like yours should lie between £1,040 and £1,400, 2 outside.',
    ));
  test('heat of one unit side by side; break-even of 28 p, factor 4.0, gas at 7 p and 90 %', () => {
    // Common practice, no source: 28 / 4.0 = 7.0 p, 7 / 0.90 = 7.78 p, 28 / 7.78 = 3.6
    const { systems } = pair(1, 1);
    const priced = systems.map((one, i) => ({ ...one, pencePerKWhHeat: figure([28 / 4, 7 / 0.9][i]!, 1, 9, 'p/kWh') }));
    expect(cost.heatPriceSentence({ systems: priced })).toBe(
      'A kWh of heat costs 7.0 p with the heat pump and 7.8 p with the gas boiler you have now.',
    );
    const rooms = systems.map((one, i) => ({ ...one, pencePerKWhSpaceHeat: [28 / 4, 7 / 0.9][i]! }));
    expect(cost.roomHeatPriceSentence({ systems: rooms })).toBe(
      'For the rooms alone, with pumps left out, it is 7.0 p and 7.8 p.',
    );
    const even = { against: 'present', breakEvenFactor: 28 / (7 / 0.9) } as const;
    expect(cost.breakEvenSentence(even, 'gas-old')).toBe(
      'At a seasonal factor of 3.6, heat costs the same as with the gas boiler you have now. Below that it costs more.',
    );
    expect(cost.breakEvenSentence({ ...even, breakEvenFactorAllCosts: 3.39 }, 'gas-old')).toContain(
      'the whole year costs the same at 3.4. Below that the heat pump costs more.',
    );
    expect(cost.breakEvenSentence({ against: 'present', breakEvenFactor: null }, 'oil')).toContain(
      'At no seasonal factor',
    );
    expect(cost.breakEvenSentence({ against: 'storage', breakEvenFactor: 0.9 }, 'storage')).toContain(
      'At any possible',
    );
  });

  test('a home of which nothing is known is called a usual one', () => {
    const estimate = { way: 'floor-area', spaceKWh: 6680, spaceErrorKWh: 5530, working: { title: '' } };
    const home = (...grades: string[]) =>
      cost.usualHomeSentence({ demand: { estimates: grades.map((grade) => ({ ...estimate, grade })) } as never });
    expect(home('assumed')).toMatch(/^We have no bill, heat loss or certificate yet/);
    expect(home('estimated', 'assumed')).toBe('');
  });

  test('nothing is over 25 words, and nobody is told that something “will save”', () => {
    const values = [Number.NaN, -50_000, 0, 30, 119_000, 119_900, 5e9];
    for (const pump of values) {
      for (const present of values) {
        const both = pair(pump, present);
        const text = [
          cost.costSentence(both),
          cost.differenceSentence(both),
          cost.heatPriceSentence(both),
          ...both.systems.flatMap((one) => [cost.rangeSentence(one), cost.winterSentence(one)]),
        ].join(' ');
        expect(text).not.toMatch(/will save|NaN|undefined|−£0\b|!/);
        for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
      }
    }
  });
});

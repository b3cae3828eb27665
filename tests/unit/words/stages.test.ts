import { describe, expect, test } from 'vitest';
import { changeSentence } from '../../../src/words/change.ts';
import * as check from '../../../src/words/check.ts';
import * as heat from '../../../src/words/heat.ts';
import * as machine from '../../../src/words/machine.ts';
import * as prices from '../../../src/words/prices.ts';
import { systemInSentence, systemName } from '../../../src/words/systems.ts';
import { winterBillSentences } from '../../../src/words/watch.ts';
import { workingValue } from '../../../src/words/working.ts';
import { figure, larchRise } from '../leave-behind/larch-rise.ts';

const rise = larchRise();

test.each([
  [13_900, 12_800, 15_000, 'This home needs about 13,900 kWh of heat a year, give or take 1,100.'],
  [13_900, 13_900, 13_900, 'This home needs about 13,900 kWh of heat a year.'],
  [0, 0, 0, 'This home needs no heat.'],
  [-5, -9, 0, 'This home needs no heat.'],
  [2.2, 1, 4, 'This home needs about 2 kWh of heat a year, give or take 2.'],
  [9_876_543, 9e6, 11e6, 'This home needs about 9,880,000 kWh of heat a year, give or take 1,000,000.'],
  [Number.NaN, 0, 0, 'We do not know yet how much heat this home needs.'],
])('heat of %d kWh', (value, low, high, said) => {
  expect(heat.heatSentence({ total: figure(value, low, high, 'kWh') })).toBe(said);
});

const line = { carrier: 'gas', period: 'month' as const, r2: 0.94, cvRmse: 0.08, slopeKWhPerKDay: 5 };
test.each([
  [
    line,
    'The weather explains 94% of this home’s gas use. A single month is off by about 8%. Over a year that evens out.',
  ],
  [{ ...line, r2: 0.5, cvRmse: 0.71 }, 'A single month is off by about 71%. The habits of one home seldom do that.'],
  [{ ...line, r2: 0.996 }, 'The weather explains nearly all of this home’s gas use.'],
  [{ ...line, r2: 0.31, period: 'day' as const }, 'Most of the rest is how the home is lived in.'],
  [
    { ...line, carrier: 'electricity', slopeKWhPerKDay: 0 },
    'The weather explains nothing of this home’s electricity use.',
  ],
])('how well the line fits: %o', (signature, said) => expect(heat.fitSentence(signature)).toContain(said));

test.each([
  [undefined, 'loses about 240 W for each degree colder, 210 to 280.'],
  [240, 'The two agree.'],
  [330, 'That is more: rooms may be left cool'],
  [150, 'That is less: something the survey did not see'],
])('heat loss of the record beside a typed one of %s W/K', (typedHeatLossWPerK, said) => {
  const recordHeatLoss = figure(238, 205, 276, 'W/K');
  expect(heat.heatLossSentence({ recordHeatLoss, ...(typedHeatLossWPerK ? { typedHeatLossWPerK } : {}) })).toContain(
    said,
  );
});
test('without a line there is nothing to say of the loss, the years to come or a change', () => {
  expect([heat.heatLossSentence({}), heat.yearsAheadSentence({}), heat.changeSentence({})]).toEqual(['', '', '']);
});

test('the weather and the ways behind the heat', () => {
  expect(heat.weatherSentence(rise.climate)).toContain('so we use a typical year in your region (Midlands)');
  expect(heat.basisSentence(rise.demand)).toBe('The figure is based on your own bills and readings.');
  expect(heat.missingWaySentence('heat-loss', 'no-heat-loss')).toBe(
    'Nothing yet from the heat loss of the home. Type the heat loss at the design temperature.',
  );
});

test.each([
  [3.44, 'ground', 'For every kWh of electricity you buy, the ground adds about 2.4 kWh of heat.'],
  [3.0, 'air', 'For every kWh of electricity you buy, the air outside adds about two kWh of heat.'],
  [1.1, 'ground', 'For every kWh of electricity you buy, the ground adds almost no heat.'],
  [0.7, 'ground', 'For every kWh of electricity you buy, the ground adds almost no heat.'],
  [Number.NaN, 'ground', 'We do not know yet how much heat the heat pump makes from a kWh.'],
] as const)('a factor of %d from the %s', (value, source, said) => {
  expect(machine.addsSentence({ whole: figure(value, 1, 5, ''), source })).toBe(said);
});

describe('the factor inside the field spread', () => {
  test.each([
    [3.4, 'The figure used here is within that.'],
    [4.2, 'The figure used here is above that, so ask what makes this home better.'],
    [2.1, 'The figure used here is below that, so it is cautious.'],
  ])('%d', (value, said) => {
    const text = machine.fieldSentence({ ...rise.machine, whole: figure(value, 2, 5, '') });
    expect(text).toContain(said);
    expect(text).toContain('2.6 to 3.8');
  });
  test('the boundary is named, and that hot water and pumps take their share', () => {
    expect(machine.factorSentence(rise.machine)).toContain('(H4)');
    const text = machine.shareSentence(rise.machine);
    expect(text).toContain('counting the heat pump with all pumps and the backup heater (H4)');
    expect(text).toContain('Hot water, pumps and standby take their share.');
  });
});

test('prices carry their date and their age', () => {
  expect(prices.pricesSentence(rise.prices, 'gas')).toBe(
    'Electricity is priced at 26.3 p per kWh and gas at 8.0 p. These are prices of October to December 2026.',
  );
  const electricity = { ...rise.prices.electricity, kind: 'own' as const, from: '2026-01-02', to: undefined };
  expect(prices.pricesSentence({ ...rise.prices, electricity }, 'gas')).toBe(
    'Electricity is priced at 26.3 p per kWh and gas at 8.0 p.',
  );
  expect(prices.datesApart({ ...rise.prices, electricity }, 'gas')).toBe(
    'Electricity: prices from January 2026 on. Gas: prices of October to December 2026.',
  );
  expect(prices.datesApart(rise.prices, 'gas')).toBe('');
  expect(prices.allDatesInShort({ ...rise.prices, electricity }, 'gas')).toBe(
    'prices: electricity from Jan 2026, gas Oct–Dec 2026',
  );
  expect(prices.allDatesInShort(rise.prices, 'gas')).toBe('prices of October to December 2026');
  expect(prices.gradeSentence({ grade: 'assumed', kind: 'own', origin: 'a bill' }, 'electricity')).toBe(
    'The electricity price comes from a bill. A part of it is assumed, such as the hours of a night rate.',
  );
  expect(prices.gradeSentence({ grade: 'assumed', kind: 'cap', origin: 'a cap' }, 'gas')).toMatch(/^Nobody has given/);
  expect(prices.priceNotes({ grade: 'assumed', kind: 'own' })).toHaveLength(1);
  expect(prices.priceNotes({ grade: 'measured', kind: 'own' })).toEqual([]);
  expect(prices.ageSentence({}, 'gas')).toBe('');
  expect(prices.ageSentence({ staleDays: 130 }, 'gas')).toContain('The gas prices ended 130 days ago.');
  expect(prices.datesInShort({ from: '2026-10-01' })).toBe('prices from October 2026 on');
});

test.each([
  ['winter-cold', 11_000, 'In a cold winter the year costs about £110 more.'],
  ['electricity-up', -20_200, 'If electricity costs 5 p more per kWh, the year costs about £200 less.'],
  ['flow-up', 100, 'If the water to the radiators has to be 5 degrees hotter, the year costs about the same.'],
  ['winter-cold', Number.NaN, 'In a cold winter we cannot say what the year costs.'],
] as const)('%s by %d pence', (change, pence, said) => expect(changeSentence(change, pence)).toBe(said));

describe('a bill against the written estimate', () => {
  const expected = { value: 60_500, low: 54_000, high: 67_000 };
  test.each([
    ['inside', 62_000, 'The bill of £620 lies inside the range of our estimate.'],
    ['above', 75_000, 'The bill lies £80 above the range of our estimate.'],
    ['above', 67_050, 'The bill of £670 lies just above the range of our estimate.'],
    ['below', 40_000, 'The bill lies £140 below the range of our estimate.'],
    ['unknown', 75_000, 'The bill of £750 is for the whole home, so it does not show yet what heating took.'],
  ] as const)('%s at %d pence', (verdict, actualPence, said) => {
    expect(check.checkSentence({ verdict, expected, actualPence })).toBe(said);
  });
  test('evidence that contradicts itself first, then inside or outside', () => {
    const doubt = { code: 'bill-above-readings', meterName: 'meter.csv', billKWh: 1640, readKWh: 1190 } as const;
    const doubts = [{ ...doubt, days: 90, daysRead: 90, pence: 12_150 }];
    const inside = { verdict: 'inside', expected, actualPence: 62_000, doubts } as const;
    expect(check.checkSentence(inside)).toBe(
      'The bill charges about £120 more than the meter’s readings of the same days come to.',
    );
    expect(check.doubtSentences(inside)).toEqual([
      'The bill has 1,640 kWh. For the same days “meter.csv” shows 1,190 kWh. Before anybody looks for a cause: read the meter today, and ask the supplier to check the bill.',
      'The bill of £620 lies inside the range of our estimate.',
    ]);
  });
  test.each([
    ['weather', 5_800, 'Colder weather added about £58.'],
    ['weather', -5_800, 'Milder weather took away about £58.'],
    ['price', 20, 'A higher electricity price made no difference.'],
    ['rest', Number.NaN, 'All the rest: not known.'],
  ])('%s of %d pence', (cause, pence, said) => expect(check.causeSentence(cause, pence)).toBe(said));
});

test('systems by name and in a sentence', () => {
  expect(systemName('heat-pump', 'heat-pump', 'ground')).toBe('Ground-source heat pump');
  expect(systemName('present', 'gas-old')).toBe('Gas boiler, as now');
  expect(systemName('present', 'other')).toBe('Heating, as now');
  expect(systemInSentence('present', 'lpg')).toBe('the LPG boiler you have now');
  expect(systemInSentence('gas-condensing', 'gas-condensing')).toBe('a new gas boiler');
});

test('the first winter, from the machine’s own months', () => {
  const [winter, dearest] = winterBillSentences(rise.systems[0]!);
  // 17 + 15 + 12 + 8 + 12 + 16 = 80 % of 4,040
  expect(winter).toBe('Expect about 3,230 kWh of the year’s 4,040 kWh from October to March.');
  expect(dearest).toContain('January is likely to be the most expensive month');
});

test.each([
  [119_435, 'pence', '£1,194.35'],
  [26.3, 'p/kWh', '26.3 p per kWh'],
  [26.3, 'p', '26.3 p'],
  [13_874, 'kWh', '13,874 kWh'],
  [0.42, 'kWh', '0.420 kWh'],
  [45, '°C', '45 °C'],
  [3.4, '', '3.4'],
  [220.4, 'W/K', '220 W/K'],
  ['all day', undefined, 'all day'],
  [Number.NaN, 'kWh', 'not known'],
])('a working writes %s %s as %s', (value, unit, said) => expect(workingValue(value, unit)).toBe(said));

/** How signs add up to the order of the causes, with results given one by one. */
import { describe, expect, test } from 'vitest';
import type { Misreading, SiteQuantity, SiteReadings, SiteValue } from '../../../src/model/shapes/site-readings.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { likelyCauses } from '../../../src/model/site-readings/likely-causes.ts';
import { likelyMeant, type Meant } from '../../../src/model/site-readings/misreadings.ts';
import { siteBands } from '../../../src/reference/site-bands.ts';
import { siteTables } from '../../../src/reference/site-tables.ts';

/** Each with a band of 10 to 20: 5 lies below, 10.5 in its lowest eighth, 15 within, 19.5 in its highest, 25 above. */
const PLACES = { below: 5, low: 10.5, middle: 15, high: 19.5, above: 25 } as const;
type Place = keyof typeof PLACES;
const value = (quantity: SiteQuantity, number: number): SiteValue =>
  ({
    quantity,
    value: number,
    unit: 'K',
    band: { low: 10, high: 20 },
    standing: number < 10 ? 'below' : number > 20 ? 'above' : 'inside',
  }) as unknown as SiteValue;
type Results = Readonly<Partial<Record<SiteQuantity, Place>>>;
const valuesOf = (results: Results) =>
  Object.entries(results).map(([quantity, place]) => value(quantity as SiteQuantity, PLACES[place]));
const scoreOf = (cause: string, results: Results) =>
  likelyCauses(valuesOf(results))
    .flatMap((one) => [one, ...one.orElse.map((other) => ({ ...one, ...other }))])
    .find((one) => one.cause === cause && one.orElse.every((other) => other.cause !== cause))?.score;

test.each<readonly [string, string, Results, SiteQuantity, readonly [number, number, number, number, number]]>([
  // Beside three signs of 3.2 each, what each other place of a result adds: from far below its band to far above.
  [
    'seen above',
    'undercharge',
    { superheat: 'above', subcooling: 'below', 'valve-opening': 'above' },
    'evaporator-approach',
    [-2, -2, -1.9, 0.8, 3.2],
  ],
  [
    'seen below',
    'undercharge',
    { superheat: 'above', 'evaporator-approach': 'above', 'valve-opening': 'above' },
    'subcooling',
    [3.2, 0.8, -1.9, -2, -2],
  ],
  [
    'inside or a little above',
    'undercharge',
    { superheat: 'above', subcooling: 'below', 'valve-opening': 'above' },
    'discharge',
    [-0.9, -0.9, -0.2, 0.8, 2.2],
  ],
  [
    'inside or a little below',
    'undercharge',
    { superheat: 'above', subcooling: 'below', 'valve-opening': 'above' },
    'condenser-approach',
    [2.2, 0.8, -0.2, -0.9, -0.9],
  ],
  [
    'on either side',
    'compressor-weak',
    { 'evaporator-approach': 'below', discharge: 'above', 'brine-drop': 'below' },
    'superheat',
    [2.3, 0.5, -1.1, 0.5, 2.3],
  ],
])('a result that a cause has %s', (_, cause, sure, quantity, weights) => {
  const found = Object.keys(PLACES).map((place) => scoreOf(cause, { ...sure, [quantity]: place }));
  expect(found).toEqual(weights.map((weight) => expect.closeTo(9.6 + weight, 9)));
});

test('the eighths of a band, and a COP that errs by a tenth', () => {
  const high = (number: number) =>
    likelyCauses([...valuesOf({ superheat: 'above', subcooling: 'below' }), value('discharge', number)])[0]!.score;
  expect([10, 18.74, 18.76, 20].map(high)).toEqual([5.5, 6.2, 7.2, 7.2].map((one) => expect.closeTo(one, 9)));
  const low = (number: number) =>
    likelyCauses([...valuesOf({ superheat: 'above', subcooling: 'below' }), value('condenser-approach', number)])[0]!
      .score;
  expect([11.24, 11.26].map(low)).toEqual([7.2, 6.2].map((one) => expect.closeTo(one, 9)));
  // For a heater counted a COP far below speaks by 3.2, one within a tenth of its band by 0.8.
  const cop = (number: number) =>
    likelyCauses([value('cop', number)]).find(({ cause }) => cause === 'heater-counted')?.score;
  expect([8.9, 9.1].map(cop)).toEqual([expect.closeTo(3.2, 9), undefined]);
  const above = likelyCauses([...valuesOf({ superheat: 'above', subcooling: 'below' }), value('cop', 21.9)]);
  expect(above.find(({ cause }) => cause === 'undercharge')!.score).toBeCloseTo(6.4 - 0.9, 9);
});

describe('what is told of a cause', () => {
  test('its signs, what speaks against it, and what would strengthen it', () => {
    const [first] = likelyCauses(
      valuesOf({
        superheat: 'above',
        subcooling: 'below',
        'evaporator-approach': 'above',
        current: 'high',
        discharge: 'low',
      }),
    );
    expect(first).toMatchObject({
      cause: 'undercharge',
      level: 'cause',
      trade: 'refrigerant',
      signs: ['evaporator-approach', 'superheat', 'subcooling'],
      against: ['current'],
      unread: ['valve-opening'],
      score: expect.closeTo(9.6 - 2 - 0.9, 9),
    });
  });
  test('of one question the strictest trade, the causes near it, and the reading that tells them apart', () => {
    // Within 1.5 of each other; overcharge and air are disputed until the circuit is read at rest.
    const [first, ...others] = likelyCauses(valuesOf({ 'condenser-approach': 'above', current: 'above' }));
    expect(first).toMatchObject({ cause: 'condenser-fouled', trade: 'refrigerant', score: 6.4 });
    expect(first!.orElse.map(({ cause }) => cause)).toEqual(['air-in-circuit', 'overcharge']);
    expect(first!.settling).toEqual({
      by: 'subcooling',
      above: [{ cause: 'overcharge' }],
      inside: [{ cause: 'condenser-fouled' }],
      below: [],
    });
    expect(others.map(({ cause }) => cause)).not.toContain('overcharge');
    const known = likelyCauses(valuesOf({ 'condenser-approach': 'above', current: 'above', subcooling: 'above' }));
    expect([known[0]!.cause, ...known[0]!.orElse.map(({ cause }) => cause)]).toEqual(['overcharge', 'air-in-circuit']);
    expect(known[0]!.settling!.by).toBe('at-rest');
  });
  test('nothing is told where no sign is sure enough', () => {
    expect(likelyCauses(valuesOf({ subcooling: 'high' }))).toEqual([]);
    expect(likelyCauses([])).toEqual([]);
  });
});

describe('a slip in reading the pressures', () => {
  const misreading: Misreading = { kind: 'exchanged' };
  const typed = valuesOf({ superheat: 'above', subcooling: 'above', 'condenser-approach': 'middle' });
  const slip = (as: Results, more: readonly SiteValue[] = typed) =>
    likelyCauses(more, { ways: [{ misreading, values: valuesOf(as) }] })
      .flatMap((one) => [{ ...one, first: true }, ...one.orElse.map((other) => ({ ...one, ...other, first: false }))])
      .find(({ cause }) => cause === 'misread');
  test('explains each result that it brings back, less those that it spoils or leaves, and chance', () => {
    // Two come back: 3.2 each less 2 for chance; what is spoilt costs 3.2 and, being left outside, 1 more.
    const all = slip({ superheat: 'middle', subcooling: 'low', 'condenser-approach': 'middle' })!;
    expect(all).toMatchObject({ meant: misreading, trade: 'refrigerant' });
    const [alone] = likelyCauses(valuesOf({ 'brine-drop': 'middle', superheat: 'above', discharge: 'below' }), {
      ways: [{ misreading, values: valuesOf({ superheat: 'middle', discharge: 'middle' }) }],
    });
    expect(alone).toMatchObject({
      cause: 'misread',
      score: expect.closeTo(4.4, 9),
      signs: ['superheat', 'discharge'],
      against: [],
    });
    const mixed = { superheat: 'above', discharge: 'below', 'at-rest': 'above', current: 'middle' } as const;
    const [spoilt] = likelyCauses(valuesOf(mixed), {
      ways: [
        {
          misreading,
          values: valuesOf({ superheat: 'low', discharge: 'middle', 'at-rest': 'middle', current: 'above' }),
        },
      ],
    });
    expect(spoilt).toMatchObject({ cause: 'misread', score: expect.closeTo(3.2 * 2 - 2 - 1, 9), against: ['current'] });
  });
  test('that explains too little is not named', () => {
    expect(slip({ superheat: 'middle', subcooling: 'above', 'condenser-approach': 'middle' })).toBeUndefined();
  });
});

describe('as what pressures may have been meant', () => {
  const unit = (name: 'bar' | 'psi' | 'kPa'): Misreading => ({ kind: 'unit', unit: name });
  const way = (name: 'bar' | 'psi' | 'kPa', ...places: readonly Place[]): Meant => ({
    misreading: unit(name),
    values: places.map((place) => value('superheat', PLACES[place])),
  });
  test('what leaves the fewest outside, three at most, and no more outside than half', () => {
    const [bar, psi, kPa] = (['bar', 'psi', 'kPa'] as const).map(unit);
    expect(likelyMeant([way('bar', 'above', 'middle'), way('psi', 'middle', 'low')])).toEqual([psi]);
    expect(likelyMeant([way('bar', 'middle'), way('psi', 'middle'), way('kPa', 'high')])).toEqual([bar, psi, kPa]);
    expect(likelyMeant([way('bar', 'above', 'middle')])).toEqual([bar]);
    expect(likelyMeant([way('bar', 'above', 'below', 'middle'), way('kPa', 'above', 'above')])).toEqual([]);
    expect(likelyMeant(['bar', 'psi', 'kPa', 'bar'].map((name) => way(name as 'bar', 'middle')))).toHaveLength(3);
  });
});

describe('water and work', () => {
  const { fixed, waterSpread } = siteBands;
  const check = (readings: SiteReadings) => checkSite(readings, siteTables);
  test('the hotter the flow, the wider the spread may be', () => {
    const usual = fixed['water-spread'].high!;
    const { coolC, hotC, hotHigh } = waterSpread;
    const high = (flowC: number) =>
      check({ flowC, returnC: flowC - 5 }).values.find(({ quantity }) => quantity === 'water-spread')!.band!.high;
    expect([coolC - 5, coolC, (coolC + hotC) / 2, hotC, hotC + 5].map(high)).toEqual(
      [usual, usual, (usual + hotHigh) / 2, hotHigh, hotHigh].map((one) => expect.closeTo(one, 9)),
    );
  });
  test('no machine makes more than 318.15 / 40 of its work between 5 and 45 °C', () => {
    const found = (inputKW: number) => check({ brineInC: 5, flowC: 45, returnC: 40, waterFlowLPerMin: 20, inputKW });
    const heatKW = found(2).values.find(({ quantity }) => quantity === 'water-heat')!.value;
    const [less, more] = [7.95, 7.96].map((cop) => found(heatKW / cop));
    expect(less!.remarks).toEqual([]);
    expect(less!.values.find(({ quantity }) => quantity === 'cop')!.value).toBeCloseTo(7.95, 9);
    expect(more!.values.some(({ quantity }) => quantity === 'cop')).toBe(false);
    expect(more!.remarks).toEqual([
      {
        code: 'cop-above-ideal',
        where: 'inputKW',
        found: heatKW / 7.96,
        expected: tell('below-cop', { cop: 318.15 / 40 }),
      },
    ]);
  });
  test('an opening of the valve is told as it was read, and the current as a share of the usual one', () => {
    const { values } = check({ valveOpenPercent: 60, currentA: 9, usualCurrentA: 12 });
    expect(values.map(({ quantity, value: found, unit }) => [quantity, found, unit])).toEqual([
      ['current', 75, '%'],
      ['valve-opening', 60, '%'],
    ]);
  });
});

/** Tariffs of one home beside each other: all its electricity at the price of its half-hours, the same years for each. */
import { describe, expect, test } from 'vitest';
import { appraise } from '../../../src/model/appraise.ts';
import { compareTariffs } from '../../../src/model/choices/compare-tariffs.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import type { Household } from '../../../src/model/shapes/household.ts';
import type { Tariff } from '../../../src/model/shapes/tariff.ts';
import type { TariffChoice } from '../../../src/model/shapes/tariff-choice.ts';
import { reference } from '../../../src/reference/index.ts';
import { chooseSay } from '../../../src/words/tariff-choice.ts';
import { cheapestInShort } from '../../../src/words/which-tariff.ts';
import { makeHousehold, makeTariff } from '../appraisal/make-household.ts';

const asOf = '2026-11-28';
const night = (name: string, nightPence: number, dayPence: number): Tariff => ({
  ...makeTariff(name, [
    { name: 'night', pencePerKWh: nightPence, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: dayPence, times: 'rest' },
  ]),
  name,
});
const home = (tariffs: readonly Tariff[], more: Partial<Household> = {}) =>
  makeHousehold({ prices: { electricityTariffId: tariffs[0]!.id }, tariffs: [...tariffs], ...more });
const choose = (household: Household, series: readonly Series[] = [], draws = 256): TariffChoice =>
  compareTariffs({ household, series, reference, asOf, draws })!;
const costOn = ({ costs }: TariffChoice, id: string | null) => costs.find(({ tariffId }) => tariffId === id)!;
const otherOn = ({ others }: TariffChoice['costs'][number], system: string) =>
  others.find(({ id }) => id === system)?.pence ?? null;

/** Its use of a year, all of it in one half-hour of the day. */
function recordAt(half: number): Series {
  const days = Array.from({ length: 365 }, () => 10);
  const shape = Array.from({ length: 12 }, () => Array.from({ length: 48 }, (_, i) => (i === half ? 10 : 0)));
  return {
    id: 's',
    evidenceId: 'e',
    name: 'meter',
    carrier: 'electricity',
    role: 'import',
    resolution: 'interval',
    intervalMinutes: 30,
    from: '2025-10-01',
    to: '2026-10-01',
    total: 3650,
    days: { first: '2025-10-01', values: days },
    dayShape: shape,
    dayPeaks: shape,
    present: 17_520,
    expected: 17_520,
    estimatedCount: 0,
  };
}

describe('the whole home on one tariff', () => {
  test('is the heat pump as compared, the rest at its hours and the standing charge', () => {
    const household = home([makeTariff('flat', 20)]);
    const choice = choose(household);
    const cost = costOn(choice, 'flat');
    const pump = appraise({ household, series: [], reference, asOf, draws: 0 }).systems[0]!;
    expect(cost.heatingPence).toBeCloseTo(pump.cost.value, 6);
    expect(cost.restPence).toBeCloseTo(20 * choice.rest.kWh, 4);
    expect(cost.standingPence).toBeCloseTo(365 * 50, 6);
    expect(cost.heatingPence + cost.restPence + cost.standingPence).toBeCloseTo(cost.whole.value, 6);
    expect(cost.whole.low).toBeLessThan(cost.whole.value);
    expect(cost.whole.high).toBeGreaterThan(cost.whole.value);
    expect(otherOn(cost, 'present')).toBeGreaterThan(cost.restPence);
  });

  test('takes the published hours of a home where no meter shows them, and says so', () => {
    const choice = choose(home([night('two', 10, 30)]));
    const weights = reference.homeHours.byMonth[0]!;
    const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
    const share = sum(weights.slice(1, 15)) / sum(weights);
    // 00:30 to 07:30; the two days on which the clock changes move it by less than a thousandth.
    expect(costOn(choice, 'two').restPence / choice.rest.kWh).toBeCloseTo(30 - 20 * share, 1);
    expect(choice.rest).toMatchObject({ hours: 'published', grade: 'assumed' });
  });

  test('takes the hours of its own meter where that holds no heating', () => {
    const atNight = choose(home([night('two', 10, 30)]), [recordAt(6)]);
    const byDay = choose(home([night('two', 10, 30)]), [recordAt(30)]);
    expect(costOn(atNight, 'two').restPence).toBeCloseTo(10 * 3650, 0);
    expect(costOn(byDay, 'two').restPence).toBeCloseTo(30 * 3650, 0);
    expect(atNight.rest).toMatchObject({ hours: 'own', grade: 'measured' });
  });

  test('takes the weekdays of its own meter: a home that is in at weekends gains more by a cheap weekend', () => {
    const tariff = makeTariff('weekend', [
      { name: 'weekend', pencePerKWh: 10, times: [{ days: ['sat', 'sun'], from: '00:00', to: '24:00' }] },
      { name: 'week', pencePerKWh: 30, times: 'rest' },
    ]);
    const record = recordAt(20);
    // 1 October 2025 was a Wednesday: days 3 and 4 of the record are a weekend. 20 kWh there, 6 on the other days.
    const values = Array.from({ length: 365 }, (_, day) => ((day + 2) % 7 >= 5 ? 20 : 6));
    const choice = choose(home([tariff]), [{ ...record, days: { first: '2025-10-01', values } }]);
    // Of a week's 70 kWh 40 are cheap; months begin and end on any day of the week.
    expect(costOn(choice, 'weekend').restPence / choice.rest.kWh).toBeCloseTo((40 * 10 + 30 * 30) / 70, 0);
    expect(choice.rest.kWh).toBeCloseTo(
      values.reduce((sum, kWh) => sum + kWh, 0),
      6,
    );
  });

  test('fills the steps of a stepped price once: the rest from the first unit, the heat pump on top', () => {
    const steps = makeTariff('steps', [
      {
        name: 'all hours',
        pencePerKWh: 10,
        times: 'rest',
        blocks: { per: 'month', steps: [{ upToKWh: 200, pencePerKWh: 40 }] },
      },
    ]);
    const choice = choose(home([steps]), [recordAt(20)]);
    const { monthly } = appraise({ household: home([steps]), series: [recordAt(20)], reference, asOf, draws: 0 })
      .systems[0]!;
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const units = days.reduce((sum, count, month) => {
      const kWh = 10 * count + monthly.boughtKWh[month]!;
      return sum + 40 * Math.min(200, kWh) + 10 * Math.max(0, kWh - 200);
    }, 0);
    const { heatingPence, restPence } = costOn(choice, 'steps');
    const paidBeside = [monthly.standingPence, monthly.servicePence].flat().reduce((sum, pence) => sum + pence, 0);
    expect(heatingPence - paidBeside + restPence).toBeCloseTo(units, 3);
  });
});

describe('several tariffs', () => {
  test('stand with the cheapest first, and the published average beside them', () => {
    const choice = choose(home([makeTariff('dear', 40), { ...makeTariff('cheap', 15), id: 'cheap' }]));
    expect(choice.costs.map(({ tariffId }) => tariffId)).toEqual(['cheap', null, 'dear']);
    expect(choice.costs.map(({ cheapestShare }) => cheapestShare)).toEqual([1, 0, 0]);
    expect(choice.inUse).toBe('dear');
    // A count of all futures would read as certain, and one tariff may rise by itself.
    expect(choice.costs.map((cost) => cheapestInShort(cost, choice))).toEqual([
      'cheapest in at least 19 of 20',
      'hardly ever the cheapest',
      'hardly ever the cheapest',
    ]);
    expect(chooseSay(choice)).toMatch(
      /^It asks nothing of you: every hour costs the same\. With the tariff that suits each best, fuel counted in: about £[\d,]+ with the heat pump/,
    );
  });

  test('each is the cheapest in the years in which it costs least, and the shares make one', () => {
    // Nearly the same: more hot water and a colder winter tip it.
    const choice = choose(home([night('two', 14, 29), makeTariff('one', 24.9)]), [], 1024);
    const shares = choice.costs.map(({ cheapestShare }) => cheapestShare);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
    const [first, second] = choice.costs;
    if (second!.whole.value - first!.whole.value > 0.02 * first!.whole.value)
      expect(shares[0]).toBe(Math.max(...shares));
  });

  test('what hot water at night would save is told where there is a cheap night and it is not made then already', () => {
    const two = night('two', 10, 30);
    const cost = costOn(choose(home([two, makeTariff('one', 25)])), 'two');
    expect(cost.nightWaterPence).toBeGreaterThan(1000);
    const moved = choose(home([two], { hotWater: { hours: 'night' } }));
    expect(costOn(moved, 'two').nightWaterPence).toBeUndefined();
    expect(costOn(moved, 'two').heatingPence).toBeCloseTo(cost.heatingPence - cost.nightWaterPence!, 4);
    expect(costOn(choose(home([makeTariff('one', 25)])), 'one').nightWaterPence).toBeUndefined();
  });

  test('one with a charge on power is left out, and named, where nobody knows the half-hours', () => {
    const power = makeTariff('power', 20);
    const charged: Tariff = {
      ...power,
      name: 'On power',
      versions: [{ ...power.versions[0]!, demand: { pencePerKWPerMonth: 300 } }],
    };
    const without = choose(home([makeTariff('one', 25), charged]));
    expect(without.leftOut).toEqual([{ name: 'On power', why: 'power-unknown' }]);
    const known = choose(home([makeTariff('one', 25), charged]), [recordAt(20)]);
    expect(known.leftOut).toEqual([]);
    // 10 kWh in a half-hour are 20 kW, at 300 p a month.
    expect(costOn(known, 'power').standingPence).toBeCloseTo(365 * 50 + 12 * 20 * 300, 4);
  });

  test('storage heaters on prices of their own are not put on a tariff that they do not buy by', () => {
    const present = { system: 'storage', hotWaterFrom: 'immersion', cooksOnGas: false } as const;
    const choice = choose(home([makeTariff('one', 25), night('two', 10, 30)], { present }));
    expect(otherOn(costOn(choice, 'one'), 'present')).toBeNull();
    expect(otherOn(costOn(choice, 'two'), 'present')).not.toBeNull();
  });

  test('a household without a tariff of its own has nothing to choose from', () => {
    expect(compareTariffs({ household: makeHousehold({}), series: [], reference, asOf })).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { inHandByName, toHousehold } from '../../../src/desk/household-input.ts';
import { makeEstimate } from '../../../src/desk/make-estimate.ts';
import { parseHouseholdInput } from '../../../src/desk/parse-household.ts';
import { renderLeaveBehind } from '../../../src/leave-behind/leave-behind.tsx';
import { appraise } from '../../../src/model/appraise.ts';
import { addOffer, dropOffer, offersOf, reckonOffers, takeInHand } from '../../../src/model/offers.ts';
import { Household } from '../../../src/model/shapes/household.ts';
import { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';
import { reference } from '../../../src/reference/index.ts';
import { estimateInForce } from '../../../src/screens/check/bills.ts';
import { offersSentence } from '../../../src/words/offers.ts';
import { makeHousehold, typed } from './make-household.ts';

const NAMES = { first: 'Ground', next: 'Air' };
const ground = makeHousehold({ purchase: { heatPumpGBP: typed(24_000) } });
const both: Household = {
  ...addOffer(ground, NAMES),
  machine: { source: 'air', emitters: 'radiators', flowC: typed(50), spaceFactor: typed(2.9), boundary: 'H4' },
  purchase: { heatPumpGBP: typed(13_000), grantGBP: typed(7500) },
};
const asOf = '2026-11-25';
const on = (household: Household) => appraise({ household, series: [], reference, asOf });
const reckon = (household: Household) => reckonOffers({ household, series: [], reference, asOf }, on(household));

describe('offers of one household', () => {
  test('one alone needs no name, and is no list', () => {
    expect(offersOf(ground)).toEqual([]);
    expect(reckon(ground)).toEqual([]);
  });

  test('another stands beside it in the order of their making, whichever is in hand', () => {
    const names = (household: Household) => offersOf(household).map(({ name }) => name);
    expect(names(both)).toEqual(['Ground', 'Air']);
    expect(names(takeInHand(both, 'offer-1'))).toEqual(['Ground', 'Air']);
    expect(Household.parse(both)).toEqual(both);
  });

  test('the tenth comes after the ninth, and the next has a number of its own', () => {
    const { machine, purchase } = ground;
    const others = ['offer-10', 'offer-2', 'mine'].map((id) => ({ id, name: id, machine, purchase }));
    const many: Household = { ...ground, offer: { id: 'offer-9', name: 'nine' }, otherOffers: others };
    expect(offersOf(many).map(({ id }) => id)).toEqual(['mine', 'offer-2', 'offer-9', 'offer-10']);
    expect(addOffer(many, NAMES).offer).toEqual({ id: 'offer-11', name: 'Air' });
    expect(addOffer(many, NAMES).otherOffers?.map(({ id }) => id)).toEqual(['offer-10', 'offer-2', 'mine', 'offer-9']);
    expect(dropOffer(many)).toMatchObject({ offer: { id: 'offer-10' }, otherOffers: others.slice(1) });
  });

  test('taking one in hand and the other again changes nothing', () => {
    const other = takeInHand(both, 'offer-1');
    expect(other.machine).toEqual(ground.machine);
    expect(other.purchase).toEqual(ground.purchase);
    expect(takeInHand(other, 'offer-2')).toEqual(both);
    expect(takeInHand(both, 'nothing')).toBe(both);
  });

  test('the one in hand taken out leaves the other, and the last needs no name', () => {
    const { offer, otherOffers, ...left } = dropOffer(both);
    expect([offer, otherOffers]).toEqual([undefined, undefined]);
    expect(left).toEqual(ground);
    const third = addOffer(both, { first: '', next: 'Floor' });
    expect(third.offer).toEqual({ id: 'offer-3', name: 'Floor' });
    expect(offersOf(dropOffer(third)).map(({ name }) => name)).toEqual(['Ground', 'Air']);
  });

  test('each comes to what it comes to alone', () => {
    const [first, second] = reckon(both);
    expect(first!.yearPence).toBe(on(ground).systems[0]!.cost.value);
    expect(second!.yearPence).toBe(on({ ...ground, machine: both.machine }).systems[0]!.cost.value);
    expect(first).toMatchObject({ name: 'Ground', source: 'ground', flowC: 45, pricePence: 2_400_000 });
    expect(second).toMatchObject({ name: 'Air', source: 'air', flowC: 50, pricePence: 1_300_000, grantPence: 750_000 });
  });

  test('one is said to cost less only where neither range holds the other’s middle', () => {
    const [first, second] = reckon(both);
    const far = { ...second!, yearPence: 900_000, lowPence: 800_000, highPence: 990_000 };
    expect(offersSentence([first!, far])).toContain('should cost the least to run');
    const near = {
      ...second!,
      yearPence: first!.yearPence + 1,
      lowPence: first!.lowPence,
      highPence: first!.highPence,
    };
    expect(offersSentence([first!, near])).toContain('either may cost less');
    expect(offersSentence([first!])).toBe('');
  });
});

describe('a written estimate of one among several', () => {
  const keep = (household: Household) =>
    makeEstimate({
      id: 'e',
      number: 4,
      madeOn: `${asOf}T12:00:00.000Z`,
      asOf,
      note: '',
      household,
      imports: [],
      series: [],
    });
  test('freezes all offers, says on paper which it is of, and still reads', () => {
    const estimate = keep(both);
    expect(WrittenEstimate.parse(estimate)).toEqual(estimate);
    expect(estimate.offers?.map(({ name }) => name)).toEqual(['Ground', 'Air']);
    const paper = renderLeaveBehind(estimate, { installerName: '', installerContact: '', paper: 'A4' });
    expect(paper).toContain('This paper is about “Air”, as worked out on 25 November 2026.');
    expect(keep(ground).offers).toBeUndefined();
  });

  test('a bill is held against the one that was taken, else the newest', () => {
    const summary = (id: string, number: number) => ({
      id,
      number,
      madeOn: '',
      note: '',
      heatPumpPence: 1,
      lowPence: 1,
      highPence: 1,
      grade: 'estimated' as const,
    });
    const kept = [summary('a', 1), summary('b', 2)];
    expect(estimateInForce(kept, {}).id).toBe('b');
    expect(estimateInForce(kept, { taken: { estimateId: 'a', on: asOf } }).id).toBe('a');
    expect(estimateInForce(kept, { taken: { estimateId: 'erased', on: asOf } }).id).toBe('b');
  });
});

describe('offers in a household file', () => {
  const parse = (more: object) =>
    toHousehold(
      parseHouseholdInput(
        new TextEncoder().encode(
          JSON.stringify({
            name: 'Larch Rise',
            machine: { source: 'ground', flowC: 45 },
            offer: 'Ground',
            offers: [{ name: 'Air', machine: { source: 'air', flowC: 50 }, purchase: { heatPumpGBP: 13_000 } }],
            ...more,
          }),
        ),
        'household.json',
      ),
      'h',
    );
  test('are read, and the one that was taken is in hand', () => {
    expect(parse({}).offer?.name).toBe('Ground');
    const taken = parse({ taken: { offer: 'Air', on: '2026-11-20' } });
    expect([taken.offer?.name, taken.machine.source, taken.purchase.heatPumpGBP?.value]).toEqual([
      'Air',
      'air',
      13_000,
    ]);
    expect(inHandByName(taken, 'Ground', '--offer').machine.source).toBe('ground');
  });
  test('an unknown name and a misspelt key are refused', () => {
    expect(() => parse({ taken: { offer: 'Water', on: '2026-11-20' } })).toThrow('no offer called “Water”');
    expect(() => parse({ offers: [{ name: 'Air', machine: { source: 'air', flow: 50 } }] })).toThrow();
  });
});

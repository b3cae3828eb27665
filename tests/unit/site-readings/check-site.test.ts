import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pressureAt } from '../../../src/model/cycle/saturation.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import { SiteReadings } from '../../../src/model/shapes/site-readings.ts';
import { CAUTIONS } from '../../../src/model/site-readings/cautions.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { ownMachine } from '../../../src/model/site-readings/expected-cop.ts';
import { CAUSES, LEVELS } from '../../../src/model/site-readings/likely-causes.ts';
import { fluids } from '../../../src/reference/brine.ts';
import { reference } from '../../../src/reference/index.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { siteBands } from '../../../src/reference/site-bands.ts';
import * as words from '../../../src/words/site-readings.ts';
import { readingEase, sentencesOf, wordsOf } from '../words/reading-ease.ts';

const tables = { refrigerants, fluids, bands: siteBands };
const bar = (celsius: number, side: 'dew' | 'bubble') =>
  ({ value: pressureAt(refrigerants.R290, celsius, side)!, unit: 'bar', basis: 'absolute' }) as const;

/** A sound machine: everything inside its band. */
const sound: SiteReadings = {
  brineInC: 4,
  brineOutC: 1,
  brineFlowLPerMin: 31.3,
  glycol: { kind: 'propylene', percent: 25, basis: 'mass' },
  flowC: 40,
  returnC: 35,
  waterFlowLPerMin: 23.2,
  inputKW: 1.8,
  refrigerant: 'R290',
  suction: bar(-3, 'dew'),
  discharge: bar(43, 'bubble'),
  suctionC: 3,
  dischargeC: 70,
  liquidC: 38,
};
const check = (change: Partial<SiteReadings> = {}) => checkSite({ ...sound, ...change }, tables);
const standings = (change: Partial<SiteReadings> = {}) =>
  check(change)
    .values.filter((value) => value.standing === 'below' || value.standing === 'above')
    .map((value) => `${value.quantity} ${value.standing}`);

test('the sound machine: nothing outside, no cause', () => {
  expect(standings()).toEqual([]);
  expect(check().causes).toEqual([]);
  expect(check().remarks).toEqual([]);
  expect(check().gaps).toEqual([]);
  expect(check().values.map((value) => value.quantity)).toHaveLength(19);
});

describe('what stands outside, and what it most likely means', () => {
  test.each([
    [
      'brine filter blocked',
      {
        brineOutC: -4,
        brineFlowLPerMin: 12,
        glycol: { kind: 'propylene', percent: 30, basis: 'mass' },
        suction: bar(-12, 'dew'),
        suctionC: -8,
      },
      'brine-flow-low',
    ],
    [
      'loop over-drawn',
      {
        brineInC: -2,
        brineOutC: -4.5,
        inputKW: 2.1,
        brineFlowLPerMin: 37,
        glycol: { kind: 'propylene', percent: 30, basis: 'mass' },
        suction: bar(-9, 'dew'),
        suctionC: -3,
      },
      'ground-cold',
    ],
    ['brine too weak', { glycol: { kind: 'propylene', percent: 15, basis: 'mass' }, coldestBrineC: -3 }, 'glycol-weak'],
    ['brine too strong', { glycol: { kind: 'ethylene', percent: 38, basis: 'mass' } }, 'glycol-strong'],
    [
      'strainer blocked',
      { flowC: 45, waterFlowLPerMin: 11.6, inputKW: 2.05, discharge: bar(49, 'bubble'), liquidC: 44, dischargeC: 75 },
      'water-flow-low',
    ],
    ['condenser fouled', { discharge: bar(50, 'bubble'), liquidC: 45, dischargeC: 78 }, 'condenser-fouled'],
    ['short of refrigerant', { suction: bar(-14, 'dew'), suctionC: 2, liquidC: 42.5, dischargeC: 95 }, 'undercharge'],
    ['valve starving', { suction: bar(-14, 'dew'), suctionC: 2, liquidC: 31, dischargeC: 95 }, 'valve-starving'],
    ['valve flooding', { suctionC: -1, dischargeC: 58 }, 'valve-flooding'],
    ['hardly any superheat', { suctionC: -2.5 }, 'liquid-to-compressor'],
    ['heater in the input', { inputKW: 3.6 }, 'readings-apart'],
    [
      'flow far too hot',
      {
        flowC: 60,
        returnC: 55,
        discharge: bar(63, 'bubble'),
        liquidC: 58,
        dischargeC: 95,
        inputKW: 2.8,
        brineFlowLPerMin: 26,
      },
      'flow-set-high',
    ],
  ] as const)('%s', (_, change, cause) => {
    expect(check(change).causes[0]?.cause, standings(change).join(', ')).toBe(cause);
  });
  test('the backup heater is named where the COP alone is low', () => {
    const causes = check({ inputKW: 3.6, brineFlowLPerMin: undefined }).causes.map((cause) => cause.cause);
    expect(causes[0]).toBe('heater-counted');
  });
  test('low suction with a wide brine drop is not first called a leak', () => {
    const { causes } = check({
      brineOutC: -4,
      brineFlowLPerMin: undefined,
      glycol: { kind: 'ethylene', percent: 30, basis: 'mass' },
      suction: bar(-16, 'dew'),
      suctionC: -12,
    });
    const order = causes.map((cause) => cause.cause);
    expect(order[0]).toBe('brine-flow-low');
    expect(order.indexOf('undercharge')).not.toBe(0);
  });
});

describe('readings that cannot be', () => {
  test.each([
    [{ brineInC: 1, brineOutC: 4 }, 'brine-not-cooled'],
    [{ flowC: 35, returnC: 40 }, 'flow-not-warmer'],
    [{ suction: bar(43, 'dew'), discharge: bar(-3, 'bubble') }, 'pressures-swapped'],
    [{ suction: { value: 0.2, unit: 'bar', basis: 'absolute' } }, 'pressure-outside-table'],
    [{ dischargeC: 2 }, 'discharge-not-hotter'],
    [{ glycol: { kind: 'ethylene', percent: 50, basis: 'mass' } }, 'glycol-outside-table'],
    [{ flowC: 95, returnC: 90, discharge: undefined }, 'water-outside-table'],
    [{ refrigerant: undefined }, 'refrigerant-missing'],
  ] as const)('%o', (change, code) => {
    const { remarks } = check(change);
    expect(remarks.map((remark) => remark.code)).toContain(code);
    for (const remark of remarks) expect(words.siteRemarkSentence(remark)).not.toMatch(/NaN|undefined/);
  });
  test('the schema refuses what is no temperature', () => {
    expect(SiteReadings.safeParse({ brineInC: 900 }).success).toBe(false);
    expect(SiteReadings.safeParse({}).success).toBe(true);
  });
});

test('every reading is optional: any subset gives finite values, sentences and no false certainty', () => {
  const fields = Object.keys(sound) as (keyof SiteReadings)[];
  fc.assert(
    fc.property(fc.subarray(fields), fc.double({ min: -25, max: 25, noNaN: true }), (kept, shift) => {
      const some = Object.fromEntries(
        kept.map((field) => {
          const value = sound[field];
          return [field, typeof value === 'number' && field.endsWith('C') ? value + shift : value];
        }),
      ) as SiteReadings;
      const result = checkSite(some, tables);
      for (const value of result.values) {
        expect(Number.isFinite(value.value)).toBe(true);
        expect(words.standingSentence(value)).not.toMatch(/NaN|undefined|null/);
      }
      for (const gap of result.gaps) expect(gap.needs.length).toBeGreaterThan(0);
      for (const cause of result.causes) {
        expect(cause.signs.length).toBeGreaterThan(0);
        expect(words.evidenceSentence(cause)).not.toMatch(/NaN|undefined/);
      }
      const ranks = result.causes.map(({ level, score }) => 1000 * LEVELS.indexOf(level) - score);
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
      expect(result.cautions).toContain('local-codes');
      expect(words.siteSummary(result)).toMatch(/\.$/);
    }),
  );
});

describe('cautions', () => {
  test.each([
    [{}, ['local-codes']],
    [
      { refrigerant: 'R290', suction: bar(0, 'dew') },
      ['refrigerant', 'flammable', 'hot-pipe', 'pressure-switch', 'local-codes'],
    ],
    [{ inputKW: 2 }, ['electric', 'local-codes']],
    [{ flowC: 55 }, ['scald', 'local-codes']],
    [{ glycol: { kind: 'ethylene', percent: 25, basis: 'volume' } }, ['glycol', 'local-codes']],
  ] as const)('%o', (readings, cautions) => {
    expect(checkSite(readings as SiteReadings, tables).cautions).toEqual(cautions);
  });
});

describe('words', () => {
  const texts = [
    ...CAUSES.flatMap((cause) => [words.causeSentence({ cause }), words.firstCheckSentence(cause)]),
    ...CAUTIONS.map(words.cautionSentence),
    ...(['installer', 'electrician', 'refrigerant'] as const).map(words.tradeSentence),
  ];
  test('a meaning is always a may, never an is', () => {
    for (const cause of CAUSES) expect(words.causeSentence({ cause }), cause).toMatch(/\bmay\b/);
  });
  test('short, and no promise', () => {
    for (const text of texts)
      for (const sentence of sentencesOf(text)) expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(25);
    expect(texts.join(' ')).not.toMatch(/!|certainly|definitely|the fault is/);
  });
  test('reads easily for the installer who explains it', () => {
    const { ease, grade } = readingEase(texts.join(' '));
    expect(ease >= 60 || grade <= 7, `ease ${ease}, grade ${grade}`).toBe(true);
  });
  test('a value with its band', () => {
    const drop = check({ brineOutC: -4 }).values.find((value) => value.quantity === 'brine-drop')!;
    expect(words.standingSentence(drop)).toBe('Brine in less brine out: 8.0 K, above the usual 2.0 to 5.0 K.');
  });
  test('a gap says what else to read', () => {
    const { gaps } = checkSite({ flowC: 40, returnC: 35, inputKW: 2 }, tables);
    expect(gaps.map(words.gapSentence)).toContain(
      'For “heat for each unit of electricity just now (COP)” we also need: flow rate of the water.',
    );
  });
});

describe('COP to be expected of the household’s own machine', () => {
  const home = emptyHousehold('h', 'Fern Bank');
  const withPoints: Household = {
    ...home,
    machine: {
      ...home.machine,
      source: 'ground',
      full: {
        ratedPoints: {
          grade: 'measured',
          origin: 'data sheet',
          value: [
            { sourceC: 0, flowC: 35, cop: 5.4 },
            { sourceC: 0, flowC: 55, cop: 3.5 },
          ],
        },
        installedShare: { value: 0.8, grade: 'assumed', origin: 'ours' },
      },
    },
  };
  const copAt = (household: Household, brineInC: number, flowC: number) =>
    checkSite(
      { ...sound, brineInC, brineOutC: brineInC - 3, flowC, returnC: flowC - 5 },
      tables,
      ownMachine(household, reference),
    ).values.find(({ quantity }) => quantity === 'cop')!;
  const air: Household = { ...home, machine: { ...home.machine, source: 'air' } };
  const usual: Household = { ...home, machine: { ...home.machine, source: 'ground' } };
  test.each([
    // At a rated point: its COP by the share that an installed machine reaches.
    ['typed, B0/W35', withPoints, 0, 35, 5.4 * 0.8, 'rated-points'],
    ['typed, B0/W55', withPoints, 0, 55, 3.5 * 0.8, 'rated-points'],
    ['usual, B0/W34', usual, 0, 34, 4.59 * 0.9, 'usual-machine'],
    ['usual, B0/W52', usual, 0, 52, 3.14 * 0.9, 'usual-machine'],
    // No points for brine: the share of Carnot for any machine.
    ['air', air, 0, 35, (0.46 * 308.15) / 35, 'any-machine'],
  ] as const)('%s', (_, household, brineInC, flowC, cop, from) => {
    const { expected, expectedFrom, band } = copAt(household, brineInC, flowC);
    expect(expected).toBeCloseTo(cop, 2);
    expect(expectedFrom).toBe(from);
    expect(band!.low!).toBeLessThan(expected!);
    expect(band!.high!).toBeGreaterThan(expected!);
  });
  test('warmer brine and cooler water: more; the band of a data sheet is the narrower', () => {
    expect(copAt(withPoints, 8, 35).expected!).toBeGreaterThan(copAt(withPoints, 0, 35).expected!);
    const width = (household: Household) => copAt(household, 0, 40).band!.high! / copAt(household, 0, 40).band!.low!;
    expect(width(withPoints)).toBeCloseTo(Math.exp(2 * 1.2816 * 0.11), 3);
    expect(width(usual)).toBeCloseTo(Math.exp(2 * 1.2816 * 0.14), 3);
  });
  test('a COP that any machine may have is low for a very good one', () => {
    const readings = { ...sound, inputKW: 2.05 };
    const standing = (household: Household) =>
      checkSite(readings, tables, ownMachine(household, reference)).values.find(({ quantity }) => quantity === 'cop')!
        .standing;
    const good = structuredClone(withPoints);
    good.machine.full!.installedShare!.value = 1;
    expect([standing(usual), standing(good)]).toEqual(['inside', 'below']);
  });
  test('the sentence says from what', () => {
    const said = (household: Household) => words.standingSentence(copAt(household, 0, 35));
    expect(said(withPoints)).toContain('we expect about 4.32, from the rated points of this machine.');
    expect(said(usual)).toContain('from the points of a usual machine.');
    expect(said(air)).toContain('We expect about 4.05.');
    expect(words.expectedText(copAt(withPoints, 0, 35))).toBe('we expect 4.32, from its rated points');
  });
});

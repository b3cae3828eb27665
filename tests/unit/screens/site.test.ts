import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyHousehold, Household } from '../../../src/model/shapes/household.ts';
import type { SiteReadings, SiteVisit } from '../../../src/model/shapes/site-readings.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { toJudge } from '../../../src/model/site-readings/to-judge.ts';
import { fluids } from '../../../src/reference/brine.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { siteBands } from '../../../src/reference/site-bands.ts';
import { FLOW_UNITS, fromLPerMin, toLPerMin } from '../../../src/screens/site/readings-form.tsx';
import {
  beginVisit,
  cautionsShown,
  dropVisit,
  isEmptyVisit,
  keepVisit,
  newestFirst,
  patchReadings,
} from '../../../src/screens/site/visits.ts';
import { SHOWN, stepOf } from '../../../src/screens/walk/inside/inside-machine.tsx';
import { insideFoot } from '../../../src/words/cycle.ts';
import { visitSentence } from '../../../src/words/site-readings.ts';

const home = emptyHousehold('h', 'Fern Bank');
const visit = (id: string, date: string, readings: SiteReadings = { flowC: 38 }): SiteVisit => ({ id, date, readings });
const judge = (readings: SiteReadings) => checkSite(readings, { refrigerants, fluids, bands: siteBands });

describe('visits kept with the household', () => {
  test('a visit is added, changed in its place, and gone once it is empty', () => {
    const one = keepVisit(home, visit('a', '2026-11-25'));
    const two = keepVisit(one, visit('b', '2026-12-01'));
    const changed = keepVisit(two, visit('a', '2026-11-25', { flowC: 40 }));
    expect(changed.siteReadings!.map(({ id, readings }) => [id, readings.flowC])).toEqual([
      ['a', 40],
      ['b', 38],
    ]);
    expect(keepVisit(one, visit('a', '2026-11-25', {}))).toEqual(home);
    expect(dropVisit(two, 'b')).toEqual(one);
  });
  test('the household document takes it, and gives it back whole', () => {
    const kept = keepVisit(home, {
      ...visit('a', '2026-11-25', {
        suction: { value: 3.4, unit: 'bar', basis: 'gauge' },
        glycol: { kind: 'propylene', percent: 25, basis: 'volume' },
      }),
      note: 'filter dirty',
    });
    expect(Household.parse(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
  });
  test('newest first; of one day the one typed last', () =>
    expect(
      newestFirst([visit('a', '2026-01-01'), visit('b', '2026-03-01'), visit('c', '2026-01-01')]).map(({ id }) => id),
    ).toEqual(['b', 'c', 'a']));
  test('the refrigerant of the machine is laid ready, and is no reading by itself', () => {
    const machine = {
      ...home.machine,
      refrigerant: { value: 'R290' as const, grade: 'measured' as const, origin: 'plate' },
    };
    const begun = beginVisit('a', '2026-11-25', { machine });
    expect(begun.readings).toEqual({ refrigerant: 'R290' });
    expect(isEmptyVisit(begun)).toBe(true);
    expect(isEmptyVisit({ ...begun, note: 'no access' })).toBe(false);
  });
  test('a reading set to nothing is taken out', () =>
    expect(patchReadings({ flowC: 38, returnC: 33 }, { flowC: undefined } as Partial<SiteReadings>)).toEqual({
      returnC: 33,
    }));
});

describe('frost is judged by the winter', () => {
  const glycol = { kind: 'propylene', percent: 25, basis: 'volume' } as const;
  test.each([
    ['the coldest brine that was typed', { glycol, brineOutC: 2, coldestBrineC: -4 }, 1, -4],
    ['the coldest worked out', { glycol, brineOutC: 6 }, -2, -2],
    ['today’s, where it is colder', { glycol, brineOutC: -5 }, -2, -5],
    ['nothing without glycol', { brineOutC: 6 }, -2, undefined],
    ['nothing where none is known', { glycol, brineOutC: 6 }, null, undefined],
  ] as const)('%s', (_name, readings, workedOut, expected) =>
    expect(toJudge(readings, workedOut).coldestBrineC).toBe(expected),
  );
});

describe('what stands beside the form', () => {
  test('the five cautions always; others where the readings call for them', () => {
    expect(cautionsShown([])).toEqual(['refrigerant', 'electric', 'scald', 'glycol', 'local-codes']);
    expect(
      cautionsShown(judge({ refrigerant: 'R290', suction: { value: 3, unit: 'bar', basis: 'gauge' } }).cautions),
    ).toEqual([
      'refrigerant',
      'flammable',
      'electric',
      'scald',
      'hot-pipe',
      'glycol',
      'pressure-switch',
      'local-codes',
    ]);
  });
  test.each([
    [{}, 'Too little to judge by.'],
    [{ flowC: 40, returnC: 35 }, 'Nothing outside the usual band.'],
    [{ flowC: 60, returnC: 45 }, '2 results outside the usual band.'],
    [{ flowC: 60, returnC: 65 }, 'One reading cannot be.'],
    [{ flowC: 60, returnC: 65, brineInC: 4 }, 'One reading cannot be. Nothing outside the usual band.'],
    [{ dischargeC: 140 }, 'Urgent: the hot gas is so hot that it can harm the compressor.'],
  ])('%j: %s', (readings, sentence) => expect(visitSentence(judge(readings))).toBe(sentence));
});

test('a flow rate changed to another unit and back is the one that was typed', () =>
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom(...FLOW_UNITS), (hundredths, unit) => {
      const typed = hundredths / 100;
      expect(fromLPerMin(toLPerMin(typed, unit), unit)).toBe(typed);
    }),
  ));
test.each([
  ['l/min', 24, 24],
  ['l/s', 0.4, 24],
  ['m³/h', 1.44, 24],
] as const)('%s: %d is %d litres a minute', (unit, value, lPerMin) =>
  expect(toLPerMin(value, unit)).toBeCloseTo(lPerMin, 6),
);

describe('the round by keys', () => {
  test('right goes through the whole and the six places and stays at the last; left goes back', () => {
    let shown = stepOf('Home', 'valve');
    const seen = [shown];
    for (let press = 0; press < 8; press++) {
      shown = stepOf('ArrowRight', shown as (typeof SHOWN)[number]);
      if (seen.at(-1) !== shown) seen.push(shown);
    }
    expect(seen).toEqual(SHOWN);
    expect(stepOf('ArrowLeft', null)).toBeNull();
    expect(stepOf('ArrowLeft', 'evaporator')).toBe('ground');
    expect(stepOf('x', 'ground')).toBe('stay');
  });
  test('whose it is and what is assumed stands below it', () =>
    expect(insideFoot(home, -3.4)).toBe('Fern Bank · a very cold day, −3 °C outside · R407C, assumed'));
});

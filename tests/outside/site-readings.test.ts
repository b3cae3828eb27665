/** Whole sets of plant readings, invented but built from worked sums, with the result to be expected. */
import { describe, expect, test } from 'vitest';
import { checkSite } from '../../src/model/site-readings/check-site.ts';
import { fluids } from '../../src/reference/brine.ts';
import { refrigerants } from '../../src/reference/refrigerants.ts';
import { siteBands } from '../../src/reference/site-bands.ts';

const tables = { refrigerants, fluids, bands: siteBands };

describe('10 kW at COP 4.0: 7.5 kW from the ground, propylene 25 %, 37.76 l/min over 3 K', () => {
  // Source: worked sum with Melinder 2010 properties at 0 °C mean brine; water at 42.5 °C, IAPWS-95.
  const check = checkSite(
    {
      brineInC: 1.5,
      brineOutC: -1.5,
      brineFlowLPerMin: 37.76,
      glycol: { kind: 'propylene', percent: 25, basis: 'mass' },
      flowC: 45,
      returnC: 40,
      waterFlowLPerMin: 28.97,
      inputKW: 2.5,
    },
    tables,
  );
  const value = (quantity: string) => check.values.find((each) => each.quantity === quantity)!;
  test('brine 7.5 kW', () => expect(value('brine-heat').value).toBeCloseTo(7.5, 2));
  test('water 10 kW', () => expect(value('water-heat').value).toBeCloseTo(10, 1));
  test('COP 4.0', () => expect(value('cop').value).toBeCloseTo(4, 1));
  test('both sides agree', () => expect(Math.abs(value('heat-balance').value)).toBeLessThan(1));
  test('COP to be expected: 0.46 of Carnot 318.15 / 43.5', () =>
    // Fraction: judgement below declared certificates of 123 brine units (median 0.508); Carnot 1824.
    expect(value('cop').expected).toBeCloseTo((0.46 * 318.15) / 43.5, 6));
});

describe('R407C: the dew column for suction, the bubble column for liquid', () => {
  // Source: Lemmon 2003 evaluated with CoolProp 8.0.0: dew 0 °C at 4.607 bar, bubble 40 °C at 17.489 bar.
  const row = (celsius: number) => refrigerants.R407C.rows.find((each) => each.temperatureC === celsius)!;
  const check = checkSite(
    {
      refrigerant: 'R407C',
      suction: { value: row(0).dewBar, unit: 'bar', basis: 'absolute' },
      discharge: { value: row(40).bubbleBar, unit: 'bar', basis: 'absolute' },
      suctionC: 5,
      liquidC: 35,
      brineOutC: 3,
      flowC: 38,
    },
    tables,
  );
  const value = (quantity: string) => check.values.find((each) => each.quantity === quantity)!.value;
  // Between the same source's rows: bubble point −6.27 °C at 4.607 bar, dew point 44.90 °C at 17.489 bar. Boiling has its mean 0.35 of the
  // glide below the dew point, condensing half of it above the bubble point.
  test('the evaporator boils below its dew point: 3 − (0 − 0.35 × 6.27)', () =>
    expect(value('evaporator-approach')).toBeCloseTo(3 + 0.35 * 6.27, 2));
  test('the condenser condenses above its bubble point: 40 + 4.90 / 2 − 38', () =>
    expect(value('condenser-approach')).toBeCloseTo(2 + 4.9 / 2, 2));
  test('superheat 5 K, where the bubble column would say 11', () => expect(value('superheat')).toBeCloseTo(5, 6));
  test('subcooling 5 K', () => expect(value('subcooling')).toBeCloseTo(5, 6));
});

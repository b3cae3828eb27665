/** The refrigerant cycle against published tables and examples. Every bound is the one reached, rounded up a little. */
import { describe, expect, test } from 'vitest';
import { reckonLoop } from '../../src/model/cycle/household-loop.ts';
import { fromBarAbsolute } from '../../src/model/cycle/pressure.ts';
import { pressureAt, temperatureAt } from '../../src/model/cycle/saturation.ts';
import { type Cycle, reckonCycle } from '../../src/model/cycle/single-stage.ts';
import { liquidEnthalpy, vapourAt } from '../../src/model/cycle/states.ts';
import type { RefrigerantName } from '../../src/model/shapes/refrigerant.ts';
import { refrigerants } from '../../src/reference/refrigerants.ts';

function cycleOf(
  name: RefrigerantName,
  evaporatingC: number,
  condensingC: number,
  superheatK: number,
  subcoolingK: number,
  isentropicEfficiency: number,
): Cycle {
  const refrigerant = refrigerants[name];
  const result = reckonCycle({ refrigerant, evaporatingC, condensingC, superheatK, subcoolingK, isentropicEfficiency });
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.cycle;
}
const off = (found: number, published: number) => Math.abs(found / published - 1);

describe('worked example: −5 °C dew, 45 °C bubble, 5 K superheat, 5 K subcooling, efficiency 0.70', () => {
  // Source of the rows: the full equations of state named in the reference table, evaluated with CoolProp 8.0.0.
  test.each([
    // fluid, p low, p high, h1, h2s, h2, h3, discharge °C, flash share, COP, COP at efficiency 1
    ['R134a', 2.4334, 11.5992, 400.02, 433.45, 447.78, 256.38, 68.5, 0.3117, 4.0075, 5.2965],
    ['R410A', 6.7831, 27.3376, 425.1, 465.1, 482.24, 265.92, 85.6, 0.3236, 3.7857, 4.9796],
    ['R290', 4.0604, 15.3431, 577.8, 641.87, 669.34, 307.05, 67.6, 0.313, 3.9578, 5.2254],
    ['R32', 6.9058, 27.9478, 520.1, 579.81, 605.4, 275.28, 110.5, 0.26, 3.8701, 5.1002],
    ['R454B', 6.2209, 26.0483, 465, 514.39, 535.56, 269.82, 95.7, 0.297, 3.7663, 4.9518],
    ['R407C', 3.8534, 19.7216, 411.52, 452.71, 470.36, 260.25, 85.3, 0.3419, 3.5708, 4.6725],
  ] as const)('%s', (name, low, high, h1, h2s, h2, h3, dischargeC, flash, cop, idealCop) => {
    const cycle = cycleOf(name, -5, 45, 5, 5, 0.7);
    expect(off(cycle.evaporatingBar, low)).toBeLessThan(0.0001);
    expect(off(cycle.condensingBar, high)).toBeLessThan(0.0001);
    expect(Math.abs(cycle.kJPerKg.suction - h1)).toBeLessThan(0.04);
    expect(Math.abs(cycle.kJPerKg.idealDischarge - h2s)).toBeLessThan(0.06);
    expect(Math.abs(cycle.kJPerKg.discharge - h2)).toBeLessThan(0.06);
    expect(Math.abs(cycle.kJPerKg.liquid - h3)).toBeLessThan(0.1);
    expect(Math.abs(cycle.dischargeC - dischargeC)).toBeLessThan(0.1);
    expect(Math.abs(cycle.flashShare - flash)).toBeLessThan(0.0005);
    expect(off(cycle.cop, cop)).toBeLessThan(0.0006);
    expect(off(cycleOf(name, -5, 45, 5, 5, 1).cop, idealCop)).toBeLessThan(0.0006);
  });
});

/** Fluid, evaporating, condensing, superheat, efficiency; p low, p high, discharge °C, COP. Subcooling 4 K. */
const BETWEEN_ROWS: readonly (readonly [
  RefrigerantName,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
])[] = [
  // Source: the same equations evaluated with CoolProp 8.0.0; first of each fluid the worst of 147 tried.
  ['R410A', 2.5, 57.5, 0, 0.8, 8.6364, 36.3681, 87.33, 3.6404],
  ['R410A', -22.5, 57.5, 10, 0.65, 3.6307, 36.3681, 135.69, 2.1886],
  ['R410A', -7.5, 32.5, 3, 0.7, 6.238, 20.1387, 65.67, 4.7445],
  ['R410A', -2.5, 52.5, 10, 0.65, 7.3636, 32.5137, 104.88, 3.1975],
  ['R410A', 7.5, 42.5, 3, 0.7, 10.0685, 25.7618, 68.78, 5.4464],
  ['R407C', 12.5, 37.5, 0, 0.8, 6.9859, 16.4451, 55.04, 7.4627],
  ['R407C', -22.5, 57.5, 10, 0.65, 1.9323, 26.224, 128.47, 2.1575],
  ['R407C', -7.5, 32.5, 3, 0.7, 3.514, 14.4971, 67.99, 4.3068],
  ['R407C', -2.5, 52.5, 10, 0.65, 4.2174, 23.4577, 103.07, 3.0879],
  ['R407C', 7.5, 42.5, 3, 0.7, 5.9435, 18.5803, 71.25, 4.952],
  ['R134a', 2.5, 47.5, 0, 0.8, 3.2026, 12.3702, 58.33, 4.9423],
  ['R134a', -22.5, 57.5, 10, 0.65, 1.1899, 15.845, 104.39, 2.32],
  ['R134a', -7.5, 32.5, 3, 0.7, 2.2117, 8.2704, 52.15, 4.9529],
  ['R134a', -2.5, 52.5, 10, 0.65, 2.6719, 14.0269, 85.06, 3.4369],
  ['R134a', 7.5, 42.5, 3, 0.7, 3.8108, 10.8649, 57.54, 5.7962],
  ['R32', 12.5, 57.5, 0, 0.8, 11.9147, 37.2204, 96.57, 4.7455],
  ['R32', -22.5, 57.5, 10, 0.65, 3.6883, 37.2204, 184.94, 2.2798],
  ['R32', -7.5, 32.5, 3, 0.7, 6.3486, 20.5551, 85.97, 4.8081],
  ['R32', -2.5, 52.5, 10, 0.65, 7.4994, 33.2638, 134.17, 3.2925],
  ['R32', 7.5, 42.5, 3, 0.7, 10.2696, 26.3293, 83.82, 5.5686],
  ['R454B', -7.5, 32.5, 3, 0.7, 5.719, 19.233, 74.64, 4.6531],
  ['R454B', -2.5, 52.5, 10, 0.65, 6.7555, 30.9218, 116.27, 3.2117],
  ['R454B', 7.5, 42.5, 3, 0.7, 9.2497, 24.5599, 76.02, 5.346],
  ['R290', 12.5, 27.5, 0, 0.8, 6.8284, 10.1408, 31.45, 15.243],
  ['R290', -22.5, 57.5, 10, 0.65, 2.2325, 20.0994, 101.67, 2.2931],
  ['R290', -7.5, 32.5, 3, 0.7, 3.7474, 11.469, 51.53, 4.904],
  ['R290', -2.5, 52.5, 10, 0.65, 4.3925, 18.0833, 83.62, 3.388],
  ['R290', 7.5, 42.5, 3, 0.7, 5.9272, 14.5015, 57.14, 5.7107],
];
describe('half-way between the rows of the table', () => {
  test.each(BETWEEN_ROWS)(
    '%s %d to %d °C',
    (name, low, high, superheatK, efficiency, lowBar, highBar, dischargeC, cop) => {
      const cycle = cycleOf(name, low, high, superheatK, 4, efficiency);
      expect(off(cycle.evaporatingBar, lowBar)).toBeLessThan(0.0003);
      expect(off(cycle.condensingBar, highBar)).toBeLessThan(0.0003);
      expect(Math.abs(cycle.dischargeC - dischargeC)).toBeLessThan(0.08);
      expect(off(cycle.cop, cop)).toBeLessThan(0.0018);
    },
  );
});

describe('printed elsewhere', () => {
  test('R134a, cooling cycle from −20 °C to 1.2 MPa', () => {
    // Source: worked solution of a university course (Michigan State, ME 201, homework 22): h1 238.41, h2 284.48, h3 117.77.
    const condensingC = temperatureAt(refrigerants.R134a, 12, 'bubble')!;
    const cycle = cycleOf('R134a', -20, condensingC, 0, 0, 1);
    expect(Math.abs(condensingC - 46.29)).toBeLessThan(0.05); // same source
    expect(off(cycle.evaporatingBar, 1.3282)).toBeLessThan(0.001); // same source
    expect(off(cycle.kJPerKg.fromSource, 238.41 - 117.77)).toBeLessThan(0.0004);
    expect(off(cycle.kJPerKg.work, 284.48 - 238.41)).toBeLessThan(0.0004);
    expect(Math.abs(cycle.dischargeC - 55.5)).toBeLessThan(0.2);
  });
  test.each([
    // Liquid pressures of R407C, off by 1.1 to 1.7 %: a maker's service manual for computer-room cooling, table "for subcooling only".
    [5, 556],
    [10, 664],
    [20, 922],
    [40, 1624],
    [50, 2085],
  ])('R407C liquid at %d °C stands at %d kPa on the gauge', (celsius, kPa) => {
    expect(off(fromBarAbsolute(pressureAt(refrigerants.R407C, celsius, 'bubble')!, 'kPa', 'gauge'), kPa)).toBeLessThan(
      0.017,
    );
  });
  test('R134a at 0 °C: h_f 200.00, h_g 398.60 kJ/kg', () => {
    // Source: ASHRAE SI tables, from memory.
    const bar = pressureAt(refrigerants.R134a, 0, 'dew')!;
    expect(liquidEnthalpy(refrigerants.R134a, 0, bar)).toBeCloseTo(200, 2);
    expect(vapourAt(refrigerants.R134a, bar)!.enthalpy(0)).toBeCloseTo(398.6, 2);
  });
  test('R134a boils at −26.07 °C under one atmosphere', () => {
    // Source: Tillner-Roth and Baehr 1994; the handbook figure, from memory.
    expect(temperatureAt(refrigerants.R134a, 1.01325, 'dew')).toBeCloseTo(-26.07, 1);
  });
});

/*
 * No one flow temperature lands in every band with our usual efficiency of 0.7. A compressor of 0.75, the better end of
 * what is usual, comes nearest: at 39 °C to the floor all four stand within the distances below.
 */
describe('common practice, no source: all four together, R407C, brine 5/0, floor at 39 °C, efficiency 0.75', () => {
  const result = reckonLoop({
    refrigerant: refrigerants.R407C,
    brineInC: 5,
    brineOutC: 0,
    flowC: 39,
    returnC: 34,
    heatKW: 8,
    compression: { kind: 'efficiency', isentropic: 0.75 },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  const { low, high, afterMotorC, dischargeC } = result.loop;
  /** How far outside a band a value lies; 0 inside. */
  const outside = (value: number, from: number, to: number) => Math.max(0, from - value, value - to);
  test.each([
    ['suction, psi gauge', outside(low.psiGauge, 50, 50), 1],
    ['discharge, psi gauge (5.5 % under)', outside(high.psiGauge, 250, 250), 14],
    ['suction gas after the motor, K', outside(afterMotorC, 10, 15), 0],
    ['hot gas above 60 to 70 °C, K', outside(dischargeC, 60, 70), 2.2],
  ])('%s: off by %d, at most %d', (_, off, most) => expect(off).toBeLessThanOrEqual(most));
});

describe('common practice, no source: brine about 5 °C in and 0 °C out, feeding underfloor heating', () => {
  // R407C, brine 5/0, flow 38 °C, our usual exchangers and efficiency.
  const result = reckonLoop({
    refrigerant: refrigerants.R407C,
    brineInC: 5,
    brineOutC: 0,
    flowC: 38,
    returnC: 33,
    heatKW: 8,
    compression: { kind: 'efficiency', isentropic: 0.7 },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  const { loop } = result;
  test('suction near 50 psi: within 1 psi', () => expect(Math.abs(loop.low.psiGauge - 50)).toBeLessThan(1));
  test('discharge near 250 psi: 20 psi under it, and within 8 psi at 40 °C flow', () => {
    expect(Math.abs(loop.high.psiGauge - 250)).toBeGreaterThan(15);
    expect(Math.abs(loop.high.psiGauge - 250)).toBeLessThan(21);
    const warmer = reckonLoop({
      ...loop,
      refrigerant: refrigerants.R407C,
      flowC: 40,
      returnC: 35,
      heatKW: 8,
      compression: { kind: 'efficiency', isentropic: 0.7 },
    });
    expect(warmer.ok && Math.abs(warmer.loop.high.psiGauge - 250)).toBeLessThan(8);
  });
  test('suction gas 10 to 15 °C after cooling the motor: inside', () => {
    expect(loop.afterMotorC).toBeGreaterThan(10);
    expect(loop.afterMotorC).toBeLessThan(15);
  });
  test('discharge 60 to 70 °C: 4 K above, and inside at 35 °C flow', () => {
    expect(loop.dischargeC).toBeGreaterThan(70);
    expect(loop.dischargeC).toBeLessThan(74);
    const cooler = reckonLoop({
      ...loop,
      refrigerant: refrigerants.R407C,
      flowC: 35,
      returnC: 30,
      heatKW: 8,
      compression: { kind: 'efficiency', isentropic: 0.7 },
    });
    expect(cooler.ok && cooler.loop.dischargeC).toBeLessThan(70);
  });
  test('COP inside 0.42 to 0.54 of Carnot between brine in and flow', () => {
    // Source: declared certificates of 123 brine units, 10 to 90 % point 0.449 to 0.537.
    const fraction = loop.cop / ((38 + 273.15) / (38 - 5));
    expect(fraction).toBeGreaterThan(0.42);
    expect(fraction).toBeLessThan(0.54);
  });
});

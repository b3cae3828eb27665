import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressorCop, frostShare, reckonAirSide } from '../../../src/model/cycle/air-side.ts';
import { type LoopInput, reckonLoop } from '../../../src/model/cycle/household-loop.ts';
import { pressureAt, temperatureAt } from '../../../src/model/cycle/saturation.ts';
import { type CycleInput, reckonCycle } from '../../../src/model/cycle/single-stage.ts';
import { boilingEnthalpies, vapourAt } from '../../../src/model/cycle/states.ts';
import { REFRIGERANTS } from '../../../src/model/shapes/refrigerant.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { cycleFaultSentence } from '../../../src/words/cycle.ts';

const usual: LoopInput = {
  refrigerant: refrigerants.R407C,
  brineInC: 5,
  brineOutC: 1,
  flowC: 40,
  returnC: 35,
  heatKW: 8,
  compression: { kind: 'efficiency', isentropic: 0.7 },
};
function loopOf(change: Partial<LoopInput> = {}) {
  const result = reckonLoop({ ...usual, ...change });
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.loop;
}
const names = fc.constantFrom(...REFRIGERANTS);

test('the first law, and each kelvin of lift costs: for every fluid and temperature', () => {
  fc.assert(
    fc.property(
      names,
      fc.integer({ min: -8, max: 12 }),
      fc.integer({ min: 28, max: 50 }),
      fc.double({ min: 0.5, max: 0.85, noNaN: true }),
      (name, brineOutC, flowC, isentropic) => {
        const at = (flow: number) =>
          loopOf({
            refrigerant: refrigerants[name],
            brineInC: brineOutC + 4,
            brineOutC,
            flowC: flow,
            returnC: flow - 5,
            compression: { kind: 'efficiency', isentropic },
          });
        const loop = at(flowC);
        expect(loop.groundKW + loop.meterKW).toBeCloseTo(loop.houseKW, 9);
        expect(loop.houseKW / loop.meterKW).toBeCloseTo(loop.cop, 9);
        const { suction, discharge, idealDischarge, liquid, fromSource, work, toHouse } = loop.cycle.kJPerKg;
        expect(toHouse).toBeCloseTo(fromSource + work, 9);
        expect(discharge - suction).toBeCloseTo((idealDischarge - suction) / isentropic, 9);
        expect(fromSource).toBeCloseTo(suction - liquid, 9);
        expect(loop.dischargeC).toBeGreaterThan(loop.condensingC);
        expect(loop.afterMotorC).toBeGreaterThan(loop.suctionC);
        expect(loop.high.barGauge).toBeGreaterThan(loop.low.barGauge);
        const drop = 1 - at(flowC + 1).cop / loop.cop;
        expect(drop).toBeGreaterThan(0.012);
        expect(drop).toBeLessThan(0.05);
        // No machine beats Carnot between the temperatures of its refrigerant.
        expect(loop.cop).toBeLessThan((loop.condensingC + 273.15) / (loop.condensingC - loop.evaporatingC));
      },
    ),
  );
});

test.each([3, 3.5, 4.2])('told a COP of %d, the picture shows it', (cop) => {
  const loop = loopOf({ compression: { kind: 'cop', cop } });
  expect(loop.cop).toBeCloseTo(cop, 9);
  expect(loop.groundKW).toBeCloseTo(8 * (1 - 1 / cop), 9);
});

test('a pure fluid has no glide; a blend comes out of the valve colder than it boils on the mean', () => {
  const pure = loopOf({ refrigerant: refrigerants.R290 });
  expect(pure.afterValveC).toBeCloseTo(pure.evaporatingC, 6);
  const blend = loopOf();
  expect(blend.evaporatingC - blend.afterValveC).toBeGreaterThan(1);
});

describe('brine to 1 °C, flow at 40 °C: 3 K at each exchanger, 5 K of superheat and of subcooling (common practice)', () => {
  test('a pure fluid boils at −2 °C and condenses at 43 °C, its pressures on every gauge', () => {
    const { R290 } = refrigerants;
    const loop = loopOf({ refrigerant: R290 });
    expect([loop.evaporatingC, loop.condensingC, loop.suctionC, loop.liquidC]).toEqual([
      -2,
      43,
      expect.closeTo(3, 9),
      expect.closeTo(38, 9),
    ]);
    for (const [side, celsius] of [
      [loop.low, -2],
      [loop.high, 43],
    ] as const) {
      const bar = pressureAt(R290, celsius, 'dew')!;
      expect(side.barAbsolute).toBeCloseTo(bar, 9);
      expect(side.barGauge).toBeCloseTo(bar - 1.01325, 9);
      // 1 psi is 6.894757 kPa: NIST SP 811.
      expect(side.psiGauge).toBeCloseTo((bar - 1.01325) / 0.068_947_57, 6);
    }
  });
  test('flows follow from the heat wanted', () => {
    const loop = loopOf();
    const { fromSource, work, toHouse } = loop.cycle.kJPerKg;
    expect(loop.refrigerantGPerS).toBeCloseTo((8 / toHouse) * 1000, 9);
    expect(loop.groundKW).toBeCloseTo((8 * fromSource) / toHouse, 9);
    expect(loop.meterKW).toBeCloseTo((8 * work) / toHouse, 9);
    expect(loop.cycle.pressureRatio).toBeCloseTo(loop.high.barAbsolute / loop.low.barAbsolute, 12);
    expect(loop.isentropicEfficiency).toBe(0.7);
  });
  test('a blend has its means there: over the whole glide where it condenses, over what the valve left where it boils', () => {
    const { R407C } = refrigerants;
    const loop = loopOf();
    const at = (bar: number) => [temperatureAt(R407C, bar, 'dew')!, temperatureAt(R407C, bar, 'bubble')!] as const;
    const [dewHigh, bubbleHigh] = at(loop.high.barAbsolute);
    expect((dewHigh + bubbleHigh) / 2).toBeCloseTo(43, 5);
    expect(loop.liquidC).toBeCloseTo(bubbleHigh - 5, 5);
    const [dew, bubble] = at(loop.low.barAbsolute);
    const boiling = boilingEnthalpies(R407C, loop.low.barAbsolute)!;
    const vapourShare =
      (loop.cycle.kJPerKg.liquid - boiling.liquidKJPerKg) / (boiling.vapourKJPerKg - boiling.liquidKJPerKg);
    expect((dew + loop.afterValveC) / 2).toBeCloseTo(-2, 4);
    expect(loop.afterValveC).toBeCloseTo(dew - (dew - bubble) * (1 - vapourShare), 4);
    expect(loop.suctionC).toBeCloseTo(dew + 5, 6);
  });
  test('15 % of the electricity warms the gas on its way into the compressor', () => {
    const loop = loopOf();
    const vapour = vapourAt(refrigerants.R407C, loop.low.barAbsolute)!;
    const { suction, work } = loop.cycle.kJPerKg;
    expect(vapour.enthalpy(loop.afterMotorC - vapour.dewC)).toBeCloseTo(suction + 0.15 * work, 6);
  });
  test('other exchangers are taken as told', () => {
    const loop = loopOf({
      refrigerant: refrigerants.R290,
      exchange: { evaporatorApproachK: 5, condenserApproachK: 4, superheatK: 8, subcoolingK: 2 },
    });
    expect([loop.evaporatingC, loop.condensingC]).toEqual([-4, 44]);
    expect([loop.suctionC, loop.liquidC]).toEqual([expect.closeTo(4, 9), expect.closeTo(42, 9)]);
  });
});

test('entropy: s rises by ∫ dh/T along an isobar, added up in ten thousand steps', () => {
  const vapour = vapourAt(refrigerants.R32, 12)!;
  let sum = vapour.entropy(0);
  const steps = 10_000;
  for (let step = 0; step < steps; step++) {
    const [from, to] = [(step * 60) / steps, ((step + 1) * 60) / steps];
    sum += (vapour.enthalpy(to) - vapour.enthalpy(from)) / (vapour.dewC + 273.15 + (from + to) / 2);
  }
  expect(vapour.entropy(60)).toBeCloseTo(sum, 6);
  expect(vapour.superheatAtEntropy(sum)).toBeCloseTo(60, 2);
  expect(vapour.superheatAtEnthalpy(vapour.enthalpy(140) + 1)).toBeNull();
});

describe('beside the compressor of an air machine: 20 W of fan for a kW, a tenth of all for frost from −10 to 6 °C (common practice)', () => {
  test.each([
    [-10.1, 0],
    [-10, 0.1],
    [6, 0.1],
    [6.1, 0],
  ])('air at %d °C: frost takes %d', (airC, share) => expect(frostShare(airC)).toBe(share));
  test.each([
    // 8 kW of heat: 0.16 kW of fan; of 2 + 0.16 kW that are nine tenths, a ninth more.
    [2, 0.24],
    [10, 0],
  ])('8 kW by a compressor of 2 kW at %i °C', (airC, frostKW) => {
    const side = reckonAirSide(8, 2, airC);
    expect([side.fanKW, side.frostKW]).toEqual([expect.closeTo(0.16, 12), expect.closeTo(frostKW, 12)]);
    expect(8 / compressorCop(8 / (2 + 0.16 + frostKW), airC)).toBeCloseTo(2, 12);
  });
});

describe('what cannot be', () => {
  test.each([
    [{ brineOutC: 6 }, 'brine-not-cooled'],
    [{ returnC: 45 }, 'flow-not-warmer'],
    [{ brineOutC: 5 }, 'brine-not-cooled'],
    [{ returnC: 40 }, 'flow-not-warmer'],
    [{ heatKW: Number.POSITIVE_INFINITY }, 'bad-heat'],
    [{ heatKW: 0 }, 'bad-heat'],
    [{ heatKW: Number.NaN }, 'bad-heat'],
    [{ compression: { kind: 'cop', cop: 1 } }, 'cop-out-of-reach'],
    [{ compression: { kind: 'cop', cop: 9 } }, 'cop-out-of-reach'],
    [{ compression: { kind: 'efficiency', isentropic: 1.2 } }, 'bad-efficiency'],
    [{ flowC: 90, returnC: 80 }, 'outside-table'],
    [{ brineOutC: -45 }, 'outside-table'],
  ] as const)('%o is refused as %s, in a sentence', (change, code) => {
    const result = reckonLoop({ ...usual, ...change });
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.fault.code).toBe(code);
    expect(cycleFaultSentence(result.fault)).toMatch(/we expect .+\./);
    expect(cycleFaultSentence(result.fault)).not.toMatch(/NaN|undefined/);
  });
  test.each<[string, Partial<LoopInput>, object]>([
    ['too hot a flow', { flowC: 90, returnC: 80 }, { code: 'outside-table', where: 'condensingC', found: 93 }],
    ['too cold a brine', { brineOutC: -45 }, { code: 'outside-table', where: 'evaporatingC', found: -48 }],
    ['a brine not cooled', { brineOutC: 5 }, { where: 'brineOutC', found: 5 }],
    ['a flow not warmer', { returnC: 41 }, { where: 'returnC', found: 41 }],
    ['no heat', { heatKW: -1 }, { where: 'heatKW', found: -1 }],
    ['a COP of nothing', { compression: { kind: 'cop', cop: Number.NaN } }, { where: 'cop', found: Number.NaN }],
  ])('%s: where it lies and what was found', (_, change, fault) =>
    expect(reckonLoop({ ...usual, ...change })).toMatchObject({ ok: false, fault }),
  );
  const R32: CycleInput = {
    refrigerant: refrigerants.R32,
    evaporatingC: 0,
    condensingC: 40,
    superheatK: 5,
    subcoolingK: 5,
    isentropicEfficiency: 0.7,
  };
  test.each<[string, Partial<CycleInput>, object]>([
    ['no lift', { evaporatingC: 20, condensingC: 10 }, { code: 'no-lift', where: 'condensingC', found: 10 }],
    ['no lift at all', { evaporatingC: 20, condensingC: 20 }, { code: 'no-lift', found: 20 }],
    ['work for nothing', { isentropicEfficiency: 0 }, { code: 'bad-efficiency', found: 0 }],
    ['better than ideal', { isentropicEfficiency: 1.001 }, { code: 'bad-efficiency', found: 1.001 }],
    ['superheat below nought', { superheatK: -0.1 }, { code: 'outside-table', where: 'superheatK', found: -0.1 }],
    ['superheat beyond the table', { superheatK: 140.1 }, { code: 'outside-table', where: 'superheatK', found: 140.1 }],
    ['liquid not all liquid', { subcoolingK: -0.1 }, { code: 'outside-table', where: 'subcoolingK', found: -0.1 }],
    ['liquid too cold', { subcoolingK: 71 }, { code: 'outside-table', where: 'subcoolingK', found: 71 }],
    [
      'hot beyond the table, even ideally',
      { superheatK: 139 },
      { code: 'discharge-beyond-table', where: 'dischargeC' },
    ],
    ['hot beyond the table by a poor compressor', { isentropicEfficiency: 0.2 }, { code: 'discharge-beyond-table' }],
    [
      'a blend whose bubble side lies below the table',
      { refrigerant: refrigerants.R407C, evaporatingC: -29 },
      { code: 'outside-table', where: 'evaporatingC', found: -29 },
    ],
    [
      'a blend whose dew side lies above it',
      { refrigerant: refrigerants.R407C, condensingC: 69 },
      { code: 'outside-table', where: 'condensingC', found: 69 },
    ],
  ])('a cycle with %s', (_, change, fault) =>
    expect(reckonCycle({ ...R32, ...change })).toMatchObject({ ok: false, fault }),
  );
  test.each<[string, Partial<CycleInput>]>([
    ['an ideal compressor', { isentropicEfficiency: 1 }],
    ['no superheat', { superheatK: 0 }],
    ['no subcooling', { subcoolingK: 0 }],
  ])('a cycle with %s can be', (_, change) => expect(reckonCycle({ ...R32, ...change }).ok).toBe(true));
  test('a COP beyond reach names the highest within it', () => {
    const result = reckonLoop({ ...usual, compression: { kind: 'cop', cop: 9 } });
    const best = result.ok ? Number.NaN : Number(result.fault.expected.data?.cop);
    expect(loopOf({ compression: { kind: 'efficiency', isentropic: 1 } }).cop).toBeCloseTo(best, 6);
  });
});

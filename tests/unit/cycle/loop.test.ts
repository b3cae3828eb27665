import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LoopInput, reckonLoop } from '../../../src/model/cycle/household-loop.ts';
import { reckonCycle } from '../../../src/model/cycle/single-stage.ts';
import { RefrigerantName } from '../../../src/model/shapes/refrigerant.ts';
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
const names = fc.constantFrom(...RefrigerantName.options);

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

describe('what cannot be', () => {
  test.each([
    [{ brineOutC: 6 }, 'brine-not-cooled'],
    [{ returnC: 45 }, 'flow-not-warmer'],
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
    expect(cycleFaultSentence(result.fault)).toMatch(/expected is .+\./);
    expect(cycleFaultSentence(result.fault)).not.toMatch(/NaN|undefined/);
  });
  test('a cycle without lift', () => {
    const result = reckonCycle({
      refrigerant: refrigerants.R32,
      evaporatingC: 20,
      condensingC: 10,
      superheatK: 5,
      subcoolingK: 5,
      isentropicEfficiency: 0.7,
    });
    expect(result).toMatchObject({ ok: false, fault: { code: 'no-lift' } });
  });
  test('a COP beyond reach names the highest within it', () => {
    const result = reckonLoop({ ...usual, compression: { kind: 'cop', cop: 9 } });
    const best = result.ok ? Number.NaN : Number(result.fault.expected.match(/[\d.]+/)?.[0]);
    expect(loopOf({ compression: { kind: 'efficiency', isentropic: 1 } }).cop).toBeCloseTo(best, 1);
  });
});

import { describe, expect, test } from 'vitest';
import { spellOut } from '../../../src/host/reckon-command.ts';
import { FAN_W_PER_KW, frostShare } from '../../../src/model/cycle/air-side.ts';
import { USUAL_EFFICIENCY } from '../../../src/model/cycle/household-loop.ts';
import { loopWorking } from '../../../src/model/cycle/loop-working.ts';
import { designLoop, usualRefrigerant } from '../../../src/model/heat-pump/full/design-loop.ts';
import { settleFull } from '../../../src/model/heat-pump/full/settle.ts';
import { readSurface } from '../../../src/model/heat-pump/full/surface.ts';
import type { FullMachine } from '../../../src/model/shapes/household.ts';
import { REFRIGERANTS } from '../../../src/model/shapes/refrigerant.ts';
import type { Told, Wording } from '../../../src/model/shapes/told.ts';
import type { Working } from '../../../src/model/shapes/working.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { sayTold } from '../../../src/words/say-told.ts';
import { type HouseholdChange, makeHousehold } from '../appraisal/make-household.ts';
import { fullHousehold, reckonFull, settleInput } from './make-year.ts';

function loopOf(full: FullMachine = {}, change: HouseholdChange = {}, flowC?: number) {
  const settle = settleInput(fullHousehold(full, change), flowC === undefined ? undefined : { flowC });
  const design = designLoop(settle, refrigerants);
  if (!design?.result.ok) throw new Error(JSON.stringify(design?.result));
  return { settle, design, loop: design.result.loop };
}
const typed = <T>(value: T) => ({ value, grade: 'estimated' as const, origin: 'typed' });

describe('the loop stands on the household’s own numbers', () => {
  test('brine in is the coldest of its year, brine out below it', () => {
    const { loop } = loopOf();
    expect(loop.brineInC).toBeCloseTo(reckonFull().full.coldestSourceC, 9);
    // EN 14511 rates at 0 °C in and −3 °C out; from memory.
    expect(loop.brineInC - loop.brineOutC).toBeCloseTo(3, 9);
  });
  test('typed brine stands: the coldest month lies at its figure or a little under it', () => {
    const brineMonthlyC = typed([4, 3, 3, 4, 6, 8, 10, 10, 9, 8, 6, 5]);
    const { loop, design } = loopOf({ brineMonthlyC });
    expect(loop.brineInC).toBeGreaterThan(2);
    expect(loop.brineInC).toBeLessThanOrEqual(3);
    expect(design.inputs[0]!.grade).toBe('estimated');
  });
  test('the full way gives its own COP at these temperatures; the quick way a usual compressor', () => {
    const { settle, loop } = loopOf();
    const { input } = settleFull(settle);
    expect(loop.cop).toBeCloseTo(1 / readSurface(input.perHeat, loop.brineInC, loop.flowC), 6);
    expect(loopOf({}, { machine: { way: 'quick' } }).loop.isentropicEfficiency).toBe(USUAL_EFFICIENCY);
  });
  test('ground and meter make what the house gets', () => {
    const { loop } = loopOf();
    expect(loop.groundKW + loop.meterKW).toBeCloseTo(loop.houseKW, 9);
  });
  test('a machine of fixed speed gives its output, a variable one what the design day asks, and no more than it can', () => {
    const heatOf = (full: FullMachine) => loopOf({ capacityKW: typed(9), ...full }).loop;
    const most = (full: FullMachine, { brineInC, flowC }: { brineInC: number; flowC: number }) =>
      readSurface(settleFull(settleInput(fullHousehold(full))).input.outputKW, brineInC, flowC);
    const fixed = heatOf({ control: 'fixed-speed' });
    expect(fixed.houseKW).toBeCloseTo(most({ capacityKW: typed(9) }, fixed), 9);
    expect(heatOf({ control: 'variable' }).houseKW).toBe(6.1);
    const small = loopOf({ capacityKW: typed(4), control: 'variable' }).loop;
    expect(small.houseKW).toBeCloseTo(most({ capacityKW: typed(4) }, small), 9);
  });
  test('a home reckoned the quick way, of whose machine nothing is typed, has its round as well', () => {
    const settle = settleInput(makeHousehold());
    expect(settle.household.machine.full).toBeUndefined();
    const { result, inputs } = designLoop(settle, refrigerants);
    expect(result.ok && [result.loop.isentropicEfficiency, result.loop.flowC, result.loop.houseKW > 0]).toEqual([
      0.7,
      45,
      true,
    ]);
    expect(inputs.map(({ name }) => (name as Told).code)).toContain('ideal-over-real');
  });
  test('a COP that no such round has: a usual compressor stands in, and the lines say which', () => {
    const codes = (full: FullMachine) => loopOf(full).design.inputs.map(({ name }) => (name as Told).code);
    const points = typed([{ sourceC: 0, flowC: 35, cop: 8 }]);
    expect(loopOf({ ratedPoints: points }).loop.isentropicEfficiency).toBe(0.7);
    expect(codes({ ratedPoints: points })).toContain('ideal-over-real');
    expect(codes({})).toEqual(
      [
        'coldest-brine',
        'brine-in-less-out',
        'design-flow',
        'heat-while-running',
        'refrigerant',
        'cop-at-these',
        'below-brine-out',
        'above-flow',
        'superheat',
        'subcooling',
      ].flatMap((code) => (code === 'design-flow' ? [code, 'flow-spread'] : [code])),
    );
  });
  test('a curve set too high lifts the flow of the design day', () =>
    expect(loopOf({ curveShiftK: typed(4) }).loop.flowC).toBe(49));
  test('brine is as sure as what it was worked out from', () => {
    const grade = (ground: FullMachine['ground']) => loopOf(ground ? { ground } : {}).design.inputs[0]!.grade;
    const [depthM, dropK] = [typed(90), typed(12)];
    expect([undefined, { kind: 'vertical' as const, depthM }, { kind: 'vertical' as const, dropK }].map(grade)).toEqual(
      ['assumed', 'assumed', 'assumed'],
    );
    expect(grade({ kind: 'vertical', depthM, dropK })).toBe('estimated');
  });
  test('cooler water: less from the meter', () => {
    const [cool, warm] = [loopOf({}, {}, 35).loop, loopOf({}, {}, 55).loop];
    expect(cool.meterKW / cool.houseKW).toBeLessThan(warm.meterKW / warm.houseKW);
    expect(cool.flowC).toBe(35);
  });
  test.each(REFRIGERANTS)('%s, once it is chosen', (name) => {
    const { loop, design } = loopOf({}, { machine: { refrigerant: typed(name) } });
    expect(loop.refrigerant).toBe(name);
    expect(design.inputs.find((input) => sayTold(input.name) === 'Refrigerant')!.grade).toBe('estimated');
  });
  test('none chosen: the usual one, graded assumed', () => {
    const { loop, design } = loopOf();
    expect(loop.refrigerant).toBe(usualRefrigerant('ground'));
    expect(design.inputs.find((input) => sayTold(input.name) === 'Refrigerant')!.grade).toBe('assumed');
  });
  test('an air machine draws in the air of the design day; its gas, air and drop are named', () => {
    const { loop, design } = loopOf({}, { machine: { source: 'air' } });
    expect(design.from).toBe('air');
    expect(loop.brineInC).toBe(design.designOutdoorC);
    // 5 K: common practice, no source.
    expect(loop.brineInC - loop.brineOutC).toBeCloseTo(5, 9);
    expect(loop.refrigerant).toBe(usualRefrigerant('air'));
    expect(loop.groundKW + loop.meterKW).toBeCloseTo(loop.houseKW, 9);
    const working = loopWorking(loop, design, refrigerants[loop.refrigerant].source);
    const said = JSON.stringify(spellOut(working), (key, value) => (key.endsWith('Told') ? undefined : value));
    expect(said).toContain('Heat from the air');
    expect(said).not.toMatch(/[Bb]rine|ground\b/);
  });
});

describe('an air machine: fan and frost stand beside the compressor', () => {
  const airLoop = (flowC: number, full: FullMachine = {}) => loopOf(full, { machine: { source: 'air' } }, flowC);

  test.each([35, 45, 55])('at %d °C the compressor and its hot gas are those of a house machine', (flowC) => {
    const { loop } = airLoop(flowC);
    // Scroll and rotary compressors with their motor reach 0.5 to 0.75; from memory. So does the ground machine here.
    expect(loop.isentropicEfficiency).toBeGreaterThan(0.48);
    expect(loop.isentropicEfficiency).toBeLessThan(0.75);
    // Discharge of propane is kept under about 110 °C; from memory.
    expect(loop.dischargeC).toBeLessThan(110);
  });
  test.each([35, 45, 55])('at %d °C compressor, fan and frost are together what the rated points tell', (flowC) => {
    const { settle, design, loop } = airLoop(flowC);
    const cop = 1 / readSurface(settleFull(settle).input.perHeat, loop.brineInC, flowC);
    const { fanKW, frostKW } = design.air!;
    expect(loop.houseKW / (loop.meterKW + fanKW + frostKW)).toBeCloseTo(cop, 9);
    expect(loop.groundKW + loop.meterKW).toBeCloseTo(loop.houseKW, 9);
    expect(frostKW / (loop.meterKW + fanKW + frostKW)).toBeCloseTo(frostShare(loop.brineInC), 9);
    expect(fanKW / loop.houseKW).toBeCloseTo(FAN_W_PER_KW / 1000, 9);
  });
  test('air too cold and dry for frost brings none', () => {
    const designOutdoorC = { value: -15, grade: 'estimated' as const, origin: 'typed' };
    const { design, loop } = loopOf({}, { machine: { source: 'air' }, heat: { designOutdoorC } });
    expect(loop.brineInC).toBe(-15);
    expect(design.air!.frostKW).toBe(0);
  });
  test('its working sums all that the meter gives', () => {
    const { design, loop } = airLoop(45);
    const { steps } = loopWorking(loop, design, refrigerants[loop.refrigerant].source);
    const all = steps!.find(({ title }) => sayTold(title) === 'All from the meter')!;
    expect(all.inputs.map(({ name }) => sayTold(name))).toEqual(['Compressor, from the meter', 'Fan', 'Melting frost']);
    expect(all.inputs.reduce((sum, { value }) => sum + Number(value), 0)).toBeCloseTo(all.result.value, 9);
  });
  test('the ground machine has neither', () => expect(loopOf().design.air).toBeNull());
});

describe('the working of the loop', () => {
  const { design, loop } = loopOf();
  const working = loopWorking(loop, design, refrigerants[loop.refrigerant].source);
  const value = (name: string) => working.inputs.find((input) => sayTold(input.name) === name)!.value as number;
  const step = (title: string) => working.steps!.find((one) => sayTold(one.title) === title)!;

  test('its formula, filled with its own inputs, gives its result', () => {
    const [suction, discharge, liquid] = ['at suction', 'at discharge', 'of the liquid'].map((at) =>
      value(`Heat content ${at}`),
    );
    expect((discharge! - liquid!) / (discharge! - suction!)).toBeCloseTo(working.result.value, 9);
  });
  test('every number of the picture has its step', () => {
    expect(step('Boiling point').result.value).toBe(loop.evaporatingC);
    expect(step('Condensing point').result.value).toBe(loop.condensingC);
    expect(step('Low pressure on the gauge').result.value).toBe(loop.low.barGauge);
    expect(step('High pressure on the gauge').result.value).toBe(loop.high.barGauge);
    expect(step('Hot gas').result.value).toBe(loop.dischargeC);
    const parts = step('Heat to the house').inputs.map((input) => input.value as number);
    expect(parts[0]! + parts[1]!).toBeCloseTo(step('Heat to the house').result.value, 9);
  });
  const codeOf = (wording: Wording) => (wording as Told).code;
  const about = (which: typeof design, round: typeof loop) =>
    loopWorking(round, which, refrigerants[round.refrigerant].source);
  /** By its code, what comes out of a step and what goes into it. */
  const stepsOf = ({ steps }: Working) =>
    steps!.map(({ title, result, inputs }) => [codeOf(title), result.value, inputs.map((one) => one.value)]);
  test('each step holds what it is reckoned from', () => {
    const { suction, discharge, idealDischarge, liquid } = loop.cycle.kJPerKg;
    const round = loop.refrigerantGPerS;
    const share = loop.isentropicEfficiency;
    expect(stepsOf(working)).toEqual([
      ['boiling-point', loop.evaporatingC, [loop.brineOutC]],
      ['low-pressure', loop.low.barGauge, [loop.evaporatingC]],
      ['condensing-point', loop.condensingC, [loop.flowC]],
      ['high-pressure', loop.high.barGauge, [loop.condensingC]],
      ['hot-gas', loop.dischargeC, [suction, idealDischarge - suction, share]],
      ['heat-from-ground', loop.groundKW, [round, suction, liquid]],
      ['from-meter', loop.meterKW, [round, suction, discharge]],
      ['heat-to-house', loop.houseKW, [loop.groundKW, loop.meterKW]],
    ]);
    expect(discharge).toBeCloseTo(suction + (idealDischarge - suction) / share, 9);
    expect((round * (suction - liquid)) / 1000).toBeCloseTo(loop.groundKW, 9);
    expect((round * (discharge - suction)) / 1000).toBeCloseTo(loop.meterKW, 9);
    expect(codeOf(working.title)).toBe('cop-of-moment');
  });
  test('of an air machine they speak of air, and fan and frost come on top', () => {
    const { design: airDesign, loop: airLoop } = loopOf({}, { machine: { source: 'air' } });
    const found = about(airDesign, airLoop);
    const { fanKW, frostKW } = airDesign.air!;
    expect(codeOf(found.title)).toBe('compressor-cop-of-moment');
    expect(stepsOf(found).slice(5)).toEqual([
      ['heat-from-air', airLoop.groundKW, expect.anything()],
      ['compressor-from-meter', airLoop.meterKW, expect.anything()],
      ['heat-to-house', airLoop.houseKW, [airLoop.groundKW, airLoop.meterKW]],
      ['all-from-meter', airLoop.meterKW + fanKW + frostKW, [airLoop.meterKW, fanKW, frostKW]],
    ]);
    const brineOut = found.steps![0]!.inputs.map(({ name }) => codeOf(name));
    expect(brineOut).toEqual(['air-out']);
  });
  test('it is as sure as its least sure input', () =>
    expect(working.inputs.find((input) => sayTold(input.name) === 'Heat content at suction')!.grade).toBe('assumed'));
});

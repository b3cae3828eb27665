import { describe, expect, test } from 'vitest';
import { copThrough } from '../../../src/model/heat-pump/full/cop-shape.ts';
import { carnotLimit, throughPoints } from '../../../src/model/heat-pump/full/rated-points.ts';
import { outputSurface, perHeatSurface, readSurface } from '../../../src/model/heat-pump/full/surface.ts';

describe('a table of one node a kelvin, sources −30 to 40 °C and flows 15 to 80 °C', () => {
  // Straight along either, so that it comes back between the nodes as well.
  const plane = (s: number, f: number) => 2 + 0.01 * s + 0.003 * f + 0.0001 * s * f;
  const surface = Float64Array.from({ length: 71 * 66 }, (_, i) => plane(-30 + Math.floor(i / 66), 15 + (i % 66)));
  test.each([
    [-30, 15],
    [40, 80],
    [-30, 80],
    [40, 15],
    [0, 35],
    [2.5, 41.25],
    [-29.5, 79.5],
    [39.75, 15.5],
  ])('at %d/%d', (s, f) => expect(readSurface(surface, s, f)).toBeCloseTo(plane(s, f), 12));
  test.each([
    [-45, 35, -30, 35],
    [55, 35, 40, 35],
    [0, 5, 0, 15],
    [0, 95, 0, 80],
  ])('%d/%d lies beyond it and is taken at %d/%d', (s, f, edgeS, edgeF) =>
    expect(readSurface(surface, s, f)).toBeCloseTo(plane(edgeS, edgeF), 12),
  );
});

test('each node is read as it stands, those at the edges too', () => {
  const value = (i: number) => (i * 7919) % 101;
  const surface = Float64Array.from({ length: 71 * 66 }, (_, i) => value(i));
  for (const s of [-30, -29, 0, 38, 39, 40])
    for (const f of [15, 16, 47, 78, 79, 80]) expect(readSurface(surface, s, f)).toBe(value((s + 30) * 66 + f - 15));
  // A quarter of the way to the next source, three quarters to the next flow.
  const [here, flow, source, both] = [0, 1, 66, 67].map((more) => value(38 * 66 + 20 + more)) as [
    number,
    number,
    number,
    number,
  ];
  const expected = 0.75 * (0.25 * here + 0.75 * flow) + 0.25 * (0.25 * source + 0.75 * both);
  expect(readSurface(surface, 8.25, 35.75)).toBeCloseTo(expected, 12);
  expect(perHeatSurface([{ sourceC: 0, flowC: 35, cop: 4 }]).surface).toHaveLength(71 * 66);
});

test('Carnot: T / lift in kelvin, a lift of less than 15 K being one of 15', () => {
  expect(carnotLimit(5, 40)).toBeCloseTo(313.15 / 35, 12);
  expect(carnotLimit(25, 40)).toBeCloseTo(313.15 / 15, 12);
  expect(carnotLimit(25, 39)).toBeCloseTo(313.15 / 15, 12);
});

describe('a value through points: the flow with most of them gives the run, the others are lifted or lowered', () => {
  // At 55 °C three quarters of what is known at 35 °C. The two at 5/35 are taken for their mean.
  const points = [
    { sourceC: 0, flowC: 55, value: 9 },
    { sourceC: 5, flowC: 35, value: 13 },
    { sourceC: -5, flowC: 35, value: 10 },
    { sourceC: 0, flowC: 35, value: 12 },
    { sourceC: 5, flowC: 35, value: 15 },
  ];
  test.each([
    [-5, 35, 10],
    [0, 35, 12],
    [5, 35, 14],
    [2.5, 35, 13],
    [-2, 35, 11.2],
    [0, 55, 9],
    [5, 55, 10.5],
    [0, 45, 10.5],
    [0, 40, 11.25],
    [-10, 35, 10],
    [10, 60, 10.5],
    [0, 20, 12],
  ])('at %d/%d: %d', (s, f, value) => {
    for (const list of [points, points.toReversed()]) expect(throughPoints(list)(s, f)).toBeCloseTo(value, 12);
  });
});

describe('COP between points', () => {
  const exponential = (s: number, f: number) => 4.5 * Math.exp(0.02 * s - 0.018 * (f - 35));
  const grid = [-5, 0, 7].flatMap((sourceC) =>
    [35, 45, 55].map((flowC) => ({ sourceC, flowC, cop: exponential(sourceC, flowC) })),
  );
  test('that fall by an even share a kelvin is found again; beyond them its share of Carnot’s limit stays', () => {
    const cop = copThrough(grid);
    for (const [s, f] of [
      [-5, 35],
      [3.3, 41],
      [7, 55],
      [-1, 52],
    ] as const)
      expect(cop(s, f)).toBeCloseTo(exponential(s, f), 9);
    for (const [s, f, edgeS, edgeF] of [
      [-12, 40, -5, 40],
      [3, 62, 3, 55],
      [12, 30, 7, 35],
    ] as const)
      expect(cop(s, f) / carnotLimit(s, f)).toBeCloseTo(exponential(edgeS, edgeF) / carnotLimit(edgeS, edgeF), 9);
  });
  test('two unlike points at one place: each counts by one over its squared distance', () => {
    // A tenth above and a tenth below in ln COP leave the slopes as they are.
    const [more, less] = [exponential(0, 40) * 1.1, exponential(0, 40) / 1.1];
    const odd = [more, less].map((cop) => ({ sourceC: 0, flowC: 40, cop }));
    const [s, f] = [2, 43];
    let [sum, weights] = [0, 0];
    for (const one of [...grid, ...odd]) {
      const weight = 1 / ((s - one.sourceC) ** 2 + (f - one.flowC) ** 2);
      sum += (weight * one.cop) / exponential(one.sourceC, one.flowC);
      weights += weight;
    }
    expect(copThrough([...grid, ...odd])(s, f) / exponential(s, f)).toBeCloseTo(sum / weights, 6);
  });
  test.each([
    ['a better COP at the hotter flow', 1.2, 1.05],
    ['a worse one at the warmer source', 0.8, 0.9],
  ])('%s is no shape of a heat pump: Carnot’s limit it is', (_, hotter, warmer) => {
    const points = [0, 5].flatMap((sourceC) =>
      [35, 55].map((flowC) => ({
        sourceC,
        flowC,
        cop: 3 * (flowC === 55 ? hotter : 1) * (sourceC === 5 ? warmer : 1),
      })),
    );
    const share = (flowC: number) => (3 * (flowC === 55 ? hotter : 1)) / carnotLimit(0, flowC);
    expect(copThrough(points)(0, 45)).toBeCloseTo(((share(35) + share(55)) / 2) * carnotLimit(0, 45), 9);
  });
  // Sources −10, 0, 10 and flows that follow them but for a bend: of their spread 2 d² / (200/3 + 2 d²) is their own.
  test.each([
    [1.359, 0.0525, true],
    [1.2893, 0.0475, false],
  ])('points on all but one line (bend %d, %d of its own): two slopes are told apart: %s', (d, own, told) => {
    expect((2 * d * d) / (200 / 3 + 2 * d * d)).toBeCloseTo(own, 4);
    const points = [1, -2, 1].map((bend, i) => {
      const sourceC = 10 * (i - 1);
      const flowC = 45 + sourceC + d * bend;
      return { sourceC, flowC, cop: exponential(sourceC, flowC) };
    });
    expect(Math.abs(copThrough(points)(5, 45) / exponential(5, 45) - 1) < 1e-6).toBe(told);
  });
});

describe('electricity for a unit of heat', () => {
  const one = [{ sourceC: 0, flowC: 35, cop: 4 }];
  test('is one over COP, that of installed machines, and no more than a resistance heater takes', () => {
    expect(readSurface(perHeatSurface(one).surface, 0, 35)).toBeCloseTo(1 / 4, 12);
    expect(readSurface(perHeatSurface(one, 0.8).surface, 0, 35)).toBeCloseTo(1 / 3.2, 12);
    expect(readSurface(perHeatSurface([{ ...one[0]!, cop: 1.2 }]).surface, -30, 80)).toBe(1);
  });
  test('is made once for a list of points and a share', () => {
    expect(perHeatSurface(one)).toBe(perHeatSurface(one, 1));
    expect(perHeatSurface(one, 0.9)).not.toBe(perHeatSurface(one));
  });
  /** Two points of which the second ought not to be the better one. */
  const two = (first: [number, number], second: [number, number], better: number) =>
    perHeatSurface(
      [first, second].map(([sourceC, flowC], i) => ({ sourceC, flowC, cop: i === 0 ? 2.5 : 2.5 * better })),
    );
  test.each<[string, [number, number], [number, number], number, boolean]>([
    ['a hotter flow better by 1.9 %', [-10, 35], [-10, 55], 1.019, false],
    ['a hotter flow better by 2.1 %', [-10, 35], [-10, 55], 1.0215, true],
    ['a colder source, where homes have it', [16, 45], [15, 45], 1.03, true],
    ['a colder source, warmer than homes have', [17, 45], [16, 45], 1.03, false],
    ['up to 60 °C', [0, 59], [0, 60], 1.04, true],
    ['beyond', [0, 60], [0, 61], 1.04, false],
  ])('%s: points count as bent: %s', (_, first, second, better, bent) => {
    const found = two(first, second, better);
    expect(found.bent).toBe(bent);
    // Bent or not, the second takes no less than the first.
    expect(readSurface(found.surface, ...second)).toBeGreaterThanOrEqual(readSurface(found.surface, ...first) - 1e-12);
  });
});

describe('output', () => {
  test.each([
    [2, 8],
    [12, 8 * 1.3],
    [-8, 8 * 0.7],
    [-30, 8 * 0.4],
    [21, 8 * 1.57],
    [40, 8 * 1.6],
  ])('known at one source, it grows by 3 %% of that a kelvin: at %d °C %d kW', (sourceC, kW) =>
    expect(readSurface(outputSurface([{ sourceC: 2, flowC: 35, outputKW: 8 }]), sourceC, 50)).toBeCloseTo(kW, 12),
  );
  test('known at two sources, it runs straight between them and stays beyond', () => {
    const surface = outputSurface([
      { sourceC: -5, flowC: 35, outputKW: 6 },
      { sourceC: 5, flowC: 35, outputKW: 9 },
    ]);
    expect([-20, -5, 0, 5, 20].map((sourceC) => readSurface(surface, sourceC, 35))).toEqual(
      [6, 6, 7.5, 9, 9].map((kW) => expect.closeTo(kW, 12)),
    );
  });
});

/** Each sum at the plant by hand, the edges of each band, and what each sign weighs for the order of the causes. */
import { describe, expect, test } from 'vitest';
import { pressureAt, temperatureAt } from '../../../src/model/cycle/saturation.ts';
import { reckonCycle } from '../../../src/model/cycle/single-stage.ts';
import type { SiteQuantity, SiteReadings, Standing } from '../../../src/model/shapes/site-readings.ts';
import { tell } from '../../../src/model/shapes/told.ts';
import {
  brineProperties,
  freezingPoint,
  heatOfFlowKW,
  massPercent,
  waterProperties,
} from '../../../src/model/site-readings/brine.ts';
import { cautionsFor } from '../../../src/model/site-readings/cautions.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { expectedCop } from '../../../src/model/site-readings/expected-cop.ts';
import type { CauseId } from '../../../src/model/site-readings/likely-causes.ts';
import type { Trade } from '../../../src/model/site-readings/signs.ts';
import { toJudge } from '../../../src/model/site-readings/to-judge.ts';
import { fluids } from '../../../src/reference/brine.ts';
import { refrigerants } from '../../../src/reference/refrigerants.ts';
import { siteBands } from '../../../src/reference/site-bands.ts';

const tables = { refrigerants, fluids, bands: siteBands };
const bar = (celsius: number, side: 'dew' | 'bubble') =>
  ({ value: pressureAt(refrigerants.R290, celsius, side)!, unit: 'bar', basis: 'absolute' }) as const;
const ofR407C = (celsius: number) =>
  ({ value: pressureAt(refrigerants.R407C, celsius, 'dew')!, unit: 'bar', basis: 'absolute' }) as const;
const valuesOf = (readings: SiteReadings) =>
  new Map(checkSite(readings, tables).values.map((value) => [value.quantity, value]));
const codesOf = (readings: SiteReadings) => checkSite(readings, tables).remarks.map(({ code }) => code);

describe('brine and water, by straight lines in their tables', () => {
  test.each([
    // Rows of Melinder 2010 (IIR): at 25 % 1,026.9, 1,024.5 and 1,021.2 kg/m³ at −5, 5 and 15 °C; at 20 % 1,019.1 at 5 °C.
    ['on a row', 25, 5, 1024.5, 3884.2],
    ['between temperatures', 25, 0, 1025.7, 3872.2],
    ['between shares', 22.5, 5, 1021.8, 3915.05],
    ['warmer than the table', 25, 30, 1021.2, 3908.4],
    ['colder than the table', 25, -9, 1026.9, 3860.2],
    ['frozen at −5 °C: as at 5 °C', 10, -5, 1008.9, 4062.5],
    ['the weaker neighbour frozen', 17.5, -5, (1013.9 + 1020.8) / 2, (4004 + 3926.1) / 2],
    ['no glycol', 0, 15, 999.1, 4188.1],
    ['40 %', 40, 15, 1035, 3690.5],
  ])('%s: propylene %d %% at %d °C', (_, percent, celsius, kgPerM3, jPerKgK) => {
    const found = brineProperties(fluids, 'propylene', percent, celsius)!;
    expect(found.kgPerM3).toBeCloseTo(kgPerM3, 9);
    expect(found.jPerKgK).toBeCloseTo(jPerKgK, 9);
  });
  test.each([-0.1, 40.1, Number.NaN])('no table at %d %%', (percent) => {
    expect(brineProperties(fluids, 'ethylene', percent, 0)).toBeNull();
    expect(freezingPoint(fluids, 'ethylene', percent)).toBeNull();
  });
  test.each([
    [0, 0],
    [2.5, -0.605],
    [22.5, -8.48], // (7.17 + 9.79) / 2
    [40, -20.57],
  ])('propylene %d %% freezes at %d °C', (percent, celsius) => {
    expect(freezingPoint(fluids, 'propylene', percent)).toBeCloseTo(celsius, 9);
  });
  test('shares by volume: 24 × 1,036 / (24 × 1,036 + 76 × 998.2), 28 × 1,113 / (28 × 1,113 + 72 × 998.2)', () => {
    expect(massPercent(fluids, 'propylene', 24)).toBeCloseTo(24.684_5, 4);
    expect(massPercent(fluids, 'ethylene', 28)).toBeCloseTo(30.2462, 4);
    expect(massPercent(fluids, 'ethylene', 100)).toBeCloseTo(100, 9);
  });
  test.each([
    [5, 1000, 4204.6],
    [30, 995.585, 4180],
    [75, 974.9, 4193],
  ])('water at %d °C', (celsius, kgPerM3, jPerKgK) => {
    expect(waterProperties(fluids, celsius)!.kgPerM3).toBeCloseTo(kgPerM3, 9);
    expect(waterProperties(fluids, celsius)!.jPerKgK).toBeCloseTo(jPerKgK, 9);
  });
  test('no water below 5 and above 75 °C; 60 l/min of 1 kg/l and 4 kJ/kgK over 3 K carry 12 kW', () => {
    expect([4.9, 75.1].map((celsius) => waterProperties(fluids, celsius))).toEqual([null, null]);
    expect(heatOfFlowKW(60, { kgPerM3: 1000, jPerKgK: 4000 }, 3)).toBeCloseTo(12, 12);
  });
});

const SOUND: SiteReadings = {
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
// Brine at 2.5 °C: 1,025.1 kg/m³ and 3,878.2 J/kgK; water at 37.5 °C: 993.1175 kg/m³ and 4,179.225 J/kgK.
const BRINE_KW = (31.3 / 60) * 1.0251 * 3.8782 * 3;
const WATER_KW = (23.2 / 60) * 0.993_117_5 * 4.179_225 * 5;

describe('the sums of a sound machine', () => {
  test.each([
    ['brine-in', 4, '°C'],
    ['brine-drop', 3, 'K'],
    ['brine-heat', BRINE_KW, 'kW'],
    ['flow', 40, '°C'],
    ['water-spread', 5, 'K'],
    ['water-heat', WATER_KW, 'kW'],
    ['heat-balance', (WATER_KW / (BRINE_KW + 1.8) - 1) * 100, '%'],
    ['cop', WATER_KW / 1.8, ''],
    ['evaporating', -3, '°C'],
    ['condensing', 43, '°C'],
    ['pressure-ratio', SOUND.discharge!.value / SOUND.suction!.value, ''],
    ['superheat', 6, 'K'],
    ['subcooling', 5, 'K'],
    ['evaporator-approach', 4, 'K'],
    ['condenser-approach', 3, 'K'],
    ['discharge', 70, '°C'],
    ['glycol-share', 25, '%'],
    ['freezing', -9.79, '°C'],
    ['frost-margin', 10.79, 'K'],
  ] as [SiteQuantity, number, string][])('%s %d', (quantity, value, unit) => {
    expect(valuesOf(SOUND).get(quantity)!.value).toBeCloseTo(value, 6);
    expect(valuesOf(SOUND).get(quantity)!.unit).toBe(unit);
  });
  test('in the order of the machine: brine, water, refrigerant, frost', () => {
    expect([...valuesOf(SOUND).keys()].join(' ')).toBe(
      'brine-in brine-drop brine-heat flow water-spread water-heat heat-balance cop evaporating condensing pressure-ratio superheat subcooling evaporator-approach condenser-approach discharge glycol-share freezing frost-margin',
    );
  });
  test.each([
    ['no pressure', { refrigerant: 'R290', brineOutC: 1, flowC: 40, suctionC: 4, liquidC: 30 }, 'flow'],
    [
      'suction alone',
      { refrigerant: 'R290', suction: bar(-3, 'dew'), brineOutC: 1, flowC: 40 },
      'flow evaporating evaporator-approach',
    ],
    [
      'discharge alone',
      { refrigerant: 'R290', discharge: bar(43, 'bubble'), brineOutC: 1, flowC: 40 },
      'flow condensing condenser-approach',
    ],
    [
      'pressures alone',
      { refrigerant: 'R290', suction: bar(-3, 'dew'), discharge: bar(43, 'bubble') },
      'evaporating condensing pressure-ratio',
    ],
    [
      'no suction pressure at all',
      { refrigerant: 'R290', suction: { value: 0, unit: 'bar', basis: 'absolute' }, discharge: bar(43, 'bubble') },
      '',
    ],
    ['water hardly warmer', { flowC: 40, returnC: 39.5, waterFlowLPerMin: 20 }, 'flow water-spread water-heat'],
    ['brine hardly cooler', { ...SOUND, brineInC: 1.5 }, [...valuesOf(SOUND).keys()].join(' ')],
  ] as [string, SiteReadings, string][])('what there is of %s', (_, readings, quantities) => {
    expect([...valuesOf(readings).keys()].join(' ')).toBe(quantities);
  });
  test('at the ends of a blend’s table the other column has nothing: no glide', () => {
    const blend = { refrigerant: 'R407C', brineOutC: -20, flowC: 60 } as const;
    const rows = refrigerants.R407C.rows;
    const low = { value: (rows[0]!.dewBar + rows[0]!.bubbleBar) / 2, unit: 'bar', basis: 'absolute' } as const;
    const cold = valuesOf({ ...blend, suction: low });
    expect(cold.get('evaporator-approach')!.value).toBeCloseTo(-20 - cold.get('evaporating')!.value, 9);
    const high = { value: (rows.at(-1)!.dewBar + rows.at(-1)!.bubbleBar) / 2, unit: 'bar', basis: 'absolute' } as const;
    const hot = valuesOf({ ...blend, discharge: high });
    expect(hot.get('condenser-approach')!.value).toBeCloseTo(hot.get('condensing')!.value - 60, 9);
  });
  test('a blend boils at 0.35 of its glide below its dew point, in the mean', () => {
    const found = valuesOf({ refrigerant: 'R407C', brineOutC: 1, suction: ofR407C(-3) });
    const bubbleC = temperatureAt(refrigerants.R407C, ofR407C(-3).value, 'bubble')!;
    expect(-3 - bubbleC).toBeGreaterThan(4);
    expect(found.get('evaporator-approach')!.value).toBeCloseTo(1 + 3 + 0.35 * (-3 - bubbleC), 6);
  });
  // Critical pressures [bar, absolute] of their equations of state, from memory.
  test.each([
    ['R290', 42.5],
    ['R32', 57.8],
  ] as const)(
    'a pressure of %s beyond its table is told from one above %d bar, the critical one',
    (refrigerant, bar) => {
      const codeAt = (share: number) =>
        codesOf({ refrigerant, discharge: { value: share * bar, unit: 'bar', basis: 'absolute' } });
      expect([0.97, 1.03].map(codeAt)).toEqual([['pressure-outside-table'], ['above-critical']]);
    },
  );
  test('without the flow of the water the COP is that of the brine', () => {
    const { waterFlowLPerMin, ...rest } = SOUND;
    expect(valuesOf(rest).get('cop')!.value).toBeCloseTo((BRINE_KW + 1.8) / 1.8, 6);
    expect(valuesOf(rest).has('heat-balance')).toBe(false);
    expect(valuesOf({ ...SOUND, inputKW: undefined }).has('cop')).toBe(false);
  });
  test('the coldest brine of the season goes before today’s; a share by volume is turned', () => {
    expect(valuesOf({ ...SOUND, coldestBrineC: -2 }).get('frost-margin')!.value).toBeCloseTo(7.79, 9);
    const byVolume = { kind: 'propylene', percent: 24, basis: 'volume' } as const;
    expect(valuesOf({ ...SOUND, glycol: byVolume }).get('glycol-share')!.value).toBeCloseTo(24.6845, 4);
  });
  test.each([
    ['the superheat measured', {}, 6],
    ['no suction temperature: the usual 5 K', { suctionC: undefined }, 5],
    ['a suction colder than its dew point: none', { suctionC: -4 }, 0],
  ] as [string, Partial<SiteReadings>, number][])('discharge band by %s', (_, change, superheatK) => {
    const at = (isentropicEfficiency: number) => {
      const input = { refrigerant: refrigerants.R290, evaporatingC: -3, condensingC: 43, superheatK, subcoolingK: 0 };
      const result = reckonCycle({ ...input, isentropicEfficiency });
      return result.ok ? result.cycle.dischargeC : Number.NaN;
    };
    const { band } = valuesOf({ ...SOUND, ...change }).get('discharge')!;
    // A perfect compressor, less 10 K on the way to the pipe's clip.
    expect(band!.low).toBeCloseTo(at(1) - 10, 6);
    expect(band!.high).toBeCloseTo(at(siteBands.compression.low), 6);
  });
  // At 20 °C R407C has 10.4 bar at its bubble and 8.8 at its dew point, R410A 14.4 at both, by the tables of the equation of state.
  test.each([
    ['R407C', 10.4, 'inside'],
    ['R407C', 8.8, 'inside'],
    ['R407C', 7.8, 'below'],
    ['R407C', 11.6, 'above'],
    ['R410A', 14.4, 'inside'],
    ['R410A', 12.9, 'below'],
  ] as const)(
    '%s at rest at 20 °C and %f bar: a blend lies anywhere between bubble and dew point',
    (refrigerant, value, standing) => {
      const restPressure = { value, unit: 'bar', basis: 'absolute' } as const;
      const found = valuesOf({
        ...SOUND,
        suction: undefined,
        discharge: undefined,
        refrigerant,
        restC: 20,
        restPressure,
      }).get('at-rest')!;
      expect([found.standing, found.band!.high]).toEqual([standing, 2]);
    },
  );
  test('without both pressures there is no discharge band', () => {
    expect(valuesOf({ ...SOUND, suction: undefined }).get('discharge')!.standing).toBe('no band');
    expect(valuesOf({ ...SOUND, discharge: undefined }).get('discharge')!.standing).toBe('no band');
  });
});

test.each([
  ['brine-in', { brineInC: 0 }, 'inside'],
  ['brine-in', { brineInC: -0.1 }, 'below'],
  ['brine-in', { brineInC: 15 }, 'inside'],
  ['brine-in', { brineInC: 15.1 }, 'above'],
  ['frost-margin', { glycol: { kind: 'propylene', percent: 25, basis: 'mass' }, coldestBrineC: -4.18 }, 'inside'],
  ['frost-margin', { glycol: { kind: 'propylene', percent: 25, basis: 'mass' }, coldestBrineC: -4.2 }, 'below'],
  ['freezing', { glycol: { kind: 'propylene', percent: 25, basis: 'mass' } }, 'no band'],
] as [SiteQuantity, SiteReadings, Standing][])('%s of %j stands %s', (quantity, readings, standing) => {
  expect(valuesOf(readings).get(quantity)!.standing).toBe(standing);
});

describe('readings that cannot be, to either side of the edge', () => {
  test.each([
    ['brine as warm as before', { brineInC: 4, brineOutC: 4 }, ['brine-not-cooled']],
    ['brine a little cooler', { brineInC: 4, brineOutC: 3.9 }, []],
    ['water as cold as before', { flowC: 40, returnC: 40 }, ['flow-not-warmer']],
    ['water a little warmer', { flowC: 40, returnC: 39.9 }, []],
    ['water at 76 °C', { flowC: 80, returnC: 72 }, ['water-outside-table']],
    [
      'equal pressures',
      { refrigerant: 'R290', suction: bar(0, 'dew'), discharge: bar(0, 'dew') },
      ['pressures-swapped'],
    ],
    ['suction alone', { suction: bar(0, 'dew') }, ['refrigerant-missing']],
    ['discharge alone', { discharge: bar(0, 'dew') }, ['refrigerant-missing']],
    ['neither', { suctionC: 4 }, []],
    ['discharge as hot as suction', { refrigerant: 'R290', suctionC: 9, dischargeC: 9 }, ['discharge-not-hotter']],
    ['discharge a little hotter', { refrigerant: 'R290', suctionC: 9, dischargeC: 9.1 }, []],
    ['too much glycol', { glycol: { kind: 'ethylene', percent: 41, basis: 'mass' } }, ['glycol-outside-table']],
  ] as [string, SiteReadings, string[]][])('%s', (_, readings, codes) => expect(codesOf(readings)).toEqual(codes));
  test('each is said in its turn', () => {
    const low = { value: 0.2, unit: 'bar', basis: 'absolute' } as const;
    const glycol = { kind: 'ethylene', percent: 50, basis: 'mass' } as const;
    const wrong = { brineInC: 4, brineOutC: 4, flowC: 80, returnC: 72, glycol, suctionC: 9, dischargeC: 2 };
    const first = ['brine-not-cooled', 'water-outside-table'];
    expect(codesOf({ ...wrong, returnC: 80 })).not.toContain('water-outside-table');
    expect(codesOf({ ...wrong, refrigerant: 'R290', suction: low })).toEqual([
      ...first,
      'pressure-outside-table',
      'discharge-not-hotter',
      'glycol-outside-table',
    ]);
    expect(codesOf({ ...wrong, suction: low })).toEqual([...first, 'refrigerant-missing', 'glycol-outside-table']);
    const swapped = { refrigerant: 'R290', suction: bar(40, 'dew'), discharge: bar(0, 'dew') } as const;
    expect(codesOf({ ...wrong, ...swapped })).toEqual([...first, 'pressures-swapped', 'glycol-outside-table']);
    const expectedOf = (code: string) =>
      checkSite(wrong, tables).remarks.find((remark) => remark.code === code)!.expected;
    expect(expectedOf('water-outside-table')).toEqual(tell('celsius-between', { low: 5, high: 75 }));
    expect(expectedOf('glycol-outside-table')).toEqual(tell('mass-between', { low: 0, high: 40 }));
    // All was read: what the table lacks is no gap to be filled by reading.
    const { waterFlowLPerMin, ...noWater } = SOUND;
    expect(checkSite({ ...noWater, glycol }, tables).gaps.map(({ quantity }) => quantity)).toEqual([
      'water-heat',
      'cop',
    ]);
  });
  test('swapped pressures give no temperatures, a brine that was not cooled no heat', () => {
    const swapped = valuesOf({ ...SOUND, suction: SOUND.discharge, discharge: SOUND.suction });
    expect(['evaporating', 'superheat', 'discharge'].some((one) => swapped.has(one as SiteQuantity))).toBe(false);
    expect(valuesOf({ ...SOUND, brineOutC: 4 }).has('brine-heat')).toBe(false);
    expect(valuesOf({ ...SOUND, returnC: 40 }).has('water-heat')).toBe(false);
  });
  test('what the table reaches is said: R290 from −30 to 70 °C', () => {
    const low = { value: 0.2, unit: 'bar', basis: 'absolute' } as const;
    const [remark] = checkSite({ refrigerant: 'R290', suction: low }, tables).remarks;
    const { rows } = refrigerants.R290;
    expect(remark).toMatchObject({ where: 'suction', found: 0.2 });
    expect(remark!.expected).toEqual(tell('bar-between', { low: rows[0]!.dewBar, high: rows.at(-1)!.dewBar }));
    const blend = { ...low, value: 99 };
    const [above] = checkSite({ refrigerant: 'R407C', discharge: blend }, tables).remarks;
    const blendRows = refrigerants.R407C.rows;
    expect(above).toMatchObject({ where: 'discharge', found: 99 });
    expect(above!.expected).toEqual(
      tell('bar-between', { low: blendRows[0]!.bubbleBar, high: blendRows.at(-1)!.bubbleBar }),
    );
  });
  test.each([
    [{}, []],
    [{ brineInC: 4 }, ['brine-drop', 'brine-heat']],
    [{ brineInC: 4, brineOutC: 1 }, ['brine-heat', 'frost-margin']],
    [{ flowC: 40, returnC: 35, inputKW: 2 }, ['water-heat', 'cop']],
    [{ refrigerant: 'R290' }, ['superheat', 'subcooling']],
    [SOUND, []],
    // The COP is there by the brine: its water flow is no gap.
    [{ ...SOUND, waterFlowLPerMin: undefined }, ['water-heat']],
  ] as [SiteReadings, string[]][])('%j leaves open %j', (readings, gaps) => {
    expect(checkSite(readings, tables).gaps.map(({ quantity }) => quantity)).toEqual(gaps);
  });
});

test('COP of any machine: 0.42, 0.46 and 0.54 of Carnot; none where the flow is not above the brine', () => {
  const found = expectedCop(5, 45, null, siteBands.carnotFraction)!;
  const carnot = 318.15 / 40;
  expect(found.value).toBeCloseTo(0.46 * carnot, 9);
  expect(found.band.low).toBeCloseTo(0.42 * carnot, 9);
  expect(found.band.high).toBeCloseTo(0.54 * carnot, 9);
  expect([44.9, 45].map((flowC) => expectedCop(45, flowC, null, siteBands.carnotFraction))).toEqual([null, null]);
  expect(expectedCop(45, 45.1, null, siteBands.carnotFraction)).not.toBeNull();
});

describe('cautions', () => {
  const of = (readings: SiteReadings, cause?: CauseId, trade: Trade = 'installer') =>
    cautionsFor(
      readings,
      cause
        ? [{ cause, trade, level: 'cause', orElse: [], settling: null, signs: [], against: [], unread: [], score: 1 }]
        : [],
    ).slice(0, -1);
  test.each([
    [{}, undefined, undefined, []],
    [{ suction: bar(0, 'dew') }, undefined, undefined, ['refrigerant', 'hot-pipe', 'pressure-switch']],
    [{ discharge: bar(40, 'dew') }, undefined, undefined, ['refrigerant', 'hot-pipe', 'pressure-switch']],
    [{ dischargeC: 70 }, undefined, undefined, ['hot-pipe']],
    [{ refrigerant: 'R32' }, undefined, undefined, ['flammable']],
    [{ refrigerant: 'R290' }, undefined, undefined, ['flammable']],
    [{ refrigerant: 'R410A' }, undefined, undefined, []],
    [{ flowC: 45 }, undefined, undefined, ['scald']],
    [{ flowC: 44.9 }, undefined, undefined, []],
    [{}, 'undercharge', 'refrigerant', ['refrigerant']],
    [{}, 'heater-counted', 'electrician', ['electric']],
    [{}, 'water-flow-low', 'installer', ['scald']],
    [{}, 'flow-set-high', 'installer', ['scald']],
    [{}, 'ground-cold', 'installer', ['glycol']],
    [{}, 'readings-apart', 'installer', []],
  ] as [SiteReadings, CauseId | undefined, Trade | undefined, string[]][])(
    '%j, %s: %j',
    (readings, cause, trade, cautions) => {
      expect(of(readings, cause, trade)).toEqual(cautions);
    },
  );
});

test.each([
  ['the coldest brine of the year stands for one not read', {}, -2, -2],
  ['today’s where it is colder', { brineOutC: -3 }, -2, -3],
  ['today’s not read', { brineOutC: undefined }, -2, -2],
  ['one that was read stays', { coldestBrineC: 0 }, -2, 0],
  ['no year worked out', {}, null, undefined],
  ['no glycol, no frost to judge', { glycol: undefined }, -2, undefined],
])('%s', (_, change, coldest, judged) => {
  expect(toJudge({ ...SOUND, ...change }, coldest).coldestBrineC).toBe(judged);
});

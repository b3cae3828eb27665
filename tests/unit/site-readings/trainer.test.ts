/** What a trainer would say of a set of readings: danger, contradiction, then the fault or the question. */
import { describe, expect, test } from 'vitest';
import type { SiteReadings } from '../../../src/model/shapes/site-readings.ts';
import { checkSite } from '../../../src/model/site-readings/check-site.ts';
import { siteTables } from '../../../src/reference/site-tables.ts';
import {
  alikeSentence,
  firstChecks,
  settlingSentence,
  siteRemarkSentence,
  siteSummary,
} from '../../../src/words/site-readings.ts';

const gauge = (value: number) => ({ value, unit: 'bar', basis: 'gauge' }) as const;
const psi = (value: number) => ({ value, unit: 'psi', basis: 'gauge' }) as const;

/** R407C by its printed table: dew −1.6 °C at 3.9 bar absolute… all inside the usual bands. */
const SOUND: SiteReadings = {
  refrigerant: 'R407C',
  brineInC: 4,
  brineOutC: 1,
  flowC: 40,
  returnC: 35,
  suction: gauge(2.9),
  discharge: gauge(16.3),
  suctionC: 2,
  liquidC: 36,
  dischargeC: 75,
  currentA: 6,
  usualCurrentA: 6,
};
const of = (change: Partial<SiteReadings>) => checkSite({ ...SOUND, ...change }, siteTables);
const firstOf = (change: Partial<SiteReadings>) => {
  const [first] = of(change).causes;
  return first && [first.cause, ...first.orElse.map(({ cause }) => cause)];
};

test.each([
  ['an older machine at 50 and 250 psi, hot gas 60 °C', { suction: psi(50), discharge: psi(250), dischargeC: 60 }],
  ['the same, hot gas 70 °C', { suction: psi(50), discharge: psi(250), dischargeC: 70 }],
] as [string, SiteReadings][])('no flag: %s', (_, pressures) => {
  // Common practice, no source: usual for an older ground-source machine on R407C.
  const brine = { brineInC: 5, brineOutC: 2 };
  const readBeside = { ...brine, flowC: 42, returnC: 36, suctionC: 5, liquidC: 37 };
  // Water at 45 °C is warmer than the middle of the glide, and still colder than its hot end.
  // A floor at 40 °C on such a machine; and autumn brine.
  const floor = { brineInC: 5, brineOutC: 0, flowC: 40, returnC: 35 };
  const autumn = { brineInC: 8, brineOutC: 5, flowC: 46, returnC: 40 };
  for (const around of [{}, readBeside, { ...brine, flowC: 45, returnC: 39 }, floor, autumn]) {
    const check = checkSite({ refrigerant: 'R407C', ...around, ...pressures }, siteTables);
    expect(check.values.filter(({ standing }) => standing === 'above' || standing === 'below')).toEqual([]);
    expect([check.causes, check.remarks]).toEqual([[], []]);
  }
});

test.each([
  ['sound', {}, undefined],
  [
    'overcharge: never scale alone',
    { discharge: gauge(19.5), liquidC: 33, currentA: 7.2 },
    ['overcharge', 'air-in-circuit'],
  ],
  [
    'short of refrigerant',
    { suction: gauge(1.8), discharge: gauge(15.6), liquidC: 37.6, currentA: 4.8 },
    ['undercharge'],
  ],
  ['a blocked filter', { suction: gauge(1.8), liquidC: 26.5, currentA: 4.8 }, ['valve-starving', 'suction-restricted']],
  ['scale', { discharge: gauge(19.5), liquidC: 43, currentA: 7.2 }, ['condenser-fouled', 'air-in-circuit']],
  ['too little brine', { brineOutC: -4, suction: gauge(1.9), suctionC: -5 }, ['brine-flow-low']],
  ['too little water', { flowC: 47, discharge: gauge(19), liquidC: 42 }, ['water-flow-low']],
  [
    'a valve that floods, or a weak compressor',
    { suction: gauge(3.5), suctionC: 0.5, discharge: gauge(15.5), liquidC: 36.5, dischargeC: 70 },
    ['valve-flooding'],
  ],
] as [string, Partial<SiteReadings>, string[] | undefined][])('%s', (_, change, causes) => {
  expect(firstOf(change)).toEqual(causes);
});

test('a low COP alone names nothing in the circuit, of which nothing was read', () => {
  const check = checkSite(
    { brineInC: 4, brineOutC: 1, flowC: 40, returnC: 35, waterFlowLPerMin: 18, inputKW: 3.2 },
    siteTables,
  );
  expect(check.causes.map(({ cause, orElse }) => [cause, orElse])).toEqual([['heater-counted', []]]);
});

// Pressures by CoolProp 8.0.0: dew at −5 °C and bubble at 36 °C; then at 7 and 49 °C.
test.each([
  { refrigerant: 'R290', winter: [4.06, 12.47, 58], summer: [5.84, 16.76, 65] },
  { refrigerant: 'R32', winter: [6.91, 22.45, 92], summer: [10.11, 30.69, 100] },
  { refrigerant: 'R410A', winter: [6.78, 21.98, 72], summer: [9.91, 30.01, 77] },
  { refrigerant: 'R134a', winter: [2.43, 9.12, 57], summer: [3.74, 12.85, 64] },
  { refrigerant: 'R454B', winter: [6.22, 20.98, 84], summer: [9.11, 28.56, 90] },
] as const)(
  'a sound machine on $refrigerant, heating in winter and making hot water in summer',
  ({ refrigerant, winter, summer }) => {
    const absolute = (value: number) => ({ value, unit: 'bar', basis: 'absolute' }) as const;
    const seen = (around: SiteReadings, [suction, discharge, dischargeC]: readonly [number, number, number]) => {
      const pressures = { suction: absolute(suction), discharge: absolute(discharge) };
      const check = checkSite({ refrigerant, ...around, ...pressures, dischargeC }, siteTables);
      const outside = check.values.filter(({ standing }) => standing === 'above' || standing === 'below');
      return [...outside, ...check.causes, ...check.remarks];
    };
    expect(seen({ brineInC: 2, brineOutC: -1, flowC: 35, returnC: 30, suctionC: 1, liquidC: 32 }, winter)).toEqual([]);
    expect(seen({ brineInC: 14, brineOutC: 11, flowC: 48, returnC: 41, suctionC: 13, liquidC: 44 }, summer)).toEqual(
      [],
    );
  },
);

// Freezing points of a printed table by volume; at least 10 °F below the coldest brine (a guide that cites IGSHPA and ASHRAE).
test.each([
  [25, -3, true],
  [25, -5, false],
  [30, -5, true],
])('propylene glycol at %s %% by volume with brine leaving at %s °C is enough: %s', (percent, brineOutC, isEnough) => {
  const glycol = { kind: 'propylene', percent, basis: 'volume' } as const;
  const { causes } = checkSite({ brineInC: brineOutC + 3, brineOutC, glycol }, siteTables);
  expect(causes.some(({ cause }) => cause === 'glycol-weak')).toBe(!isEnough);
});

describe('the order of what is said', () => {
  test('brine at its freezing point goes before sums that do not meet', () => {
    const check = of({
      brineInC: 0,
      brineOutC: -2.9,
      suction: gauge(2.3),
      suctionC: -2,
      glycol: { kind: 'propylene', percent: 10, basis: 'mass' },
      waterFlowLPerMin: 20,
      brineFlowLPerMin: 5,
      inputKW: 2,
    });
    expect(check.values.find(({ quantity }) => quantity === 'frost-margin')!.value).toBeCloseTo(0, 1);
    expect(check.causes.map(({ level, cause }) => `${level} ${cause}`).slice(0, 2)).toEqual([
      'danger glycol-weak',
      'balance readings-apart',
    ]);
    expect(siteSummary(check)).toBe('Urgent: the brine could freeze in the machine.');
  });
  test.each([
    [{ dischargeC: 116 }, 'gas-too-hot'],
    [{ suctionC: -4.5 }, 'liquid-to-compressor'],
  ] as const)('danger: %j', (change, cause) => {
    expect(of(change).causes[0]).toMatchObject({ level: 'danger', cause });
  });
  test('R32 may run at 120 °C', () => {
    expect(checkSite({ refrigerant: 'R32', dischargeC: 120 }, siteTables).causes).toEqual([]);
    expect(checkSite({ dischargeC: 120 }, siteTables).causes[0]!.cause).toBe('gas-too-hot');
  });
});

describe('readings that cannot be, and the slip behind them', () => {
  test.each([
    [
      'another refrigerant chosen',
      { refrigerant: 'R410A' },
      'condensing-below-flow',
      'All would fit if the refrigerant is R407C.',
    ],
    [
      'psi for bar',
      { suction: psi(2.9), discharge: psi(16.3) },
      'condensing-below-flow',
      'All would fit if the pressures are in bar.',
    ],
    [
      'exchanged',
      { suction: gauge(16.3), discharge: gauge(2.9) },
      'pressures-swapped',
      'All would fit if suction and discharge were exchanged.',
    ],
    ['a pressure beyond the critical point', { discharge: gauge(60) }, 'above-critical', ''],
    [
      'psi typed as bar',
      { suction: gauge(50), discharge: gauge(250) },
      'above-critical',
      'All would fit if the pressures are in psi.',
    ],
    ['no pressure at all', { suction: { value: -1, unit: 'bar', basis: 'absolute' } }, 'no-pressure', ''],
    ['boiling above the brine', { suction: gauge(5), suctionC: 8 }, 'boiling-above-brine', ''],
    ['liquid too warm', { liquidC: 50 }, 'liquid-above-condensing', ''],
    ['hot gas too cold', { dischargeC: 38 }, 'gas-below-condensing', ''],
    ['a suction pipe too cold', { suctionC: -14 }, 'suction-below-boiling', ''],
  ] as [string, Partial<SiteReadings>, string, string][])('%s', (_, change, code, likely) => {
    const { remarks, values, causes } = of(change);
    const remark = remarks.find((one) => one.code === code)!;
    expect(siteRemarkSentence(remark)).toMatch(/^This cannot be\./);
    expect(remarks.map(siteRemarkSentence).join(' ')).toContain(likely);
    // Nothing is made of them.
    expect(values.some(({ quantity }) => ['superheat', 'subcooling', 'condensing'].includes(quantity))).toBe(false);
    expect(causes.filter(({ trade }) => trade === 'refrigerant')).toEqual([]);
  });
  test('more heat than any machine can give', () => {
    const { remarks, values } = of({ waterFlowLPerMin: 60, inputKW: 2 });
    expect(remarks.map(({ code }) => code)).toEqual(['cop-above-ideal']);
    expect(values.some(({ quantity }) => quantity === 'cop')).toBe(false);
  });
  test('brine in and out exchanged: no approach from them, but frost by the colder', () => {
    const glycol = { kind: 'propylene', percent: 10, basis: 'mass' } as const;
    const { values, causes } = of({ brineInC: -2.5, brineOutC: 1, glycol });
    expect(values.some(({ quantity }) => quantity === 'evaporator-approach' || quantity === 'brine-in')).toBe(false);
    expect(causes[0]!.cause).toBe('glycol-weak');
  });
});

describe('a question and what settles it', () => {
  const absolute = (value: number) => ({ value, unit: 'bar', basis: 'absolute' }) as const;
  const slip = { suction: absolute(2.9), discharge: absolute(16.3) };
  test('absolute for gauge looks like a leak until the current is read', () => {
    const [first] = of({ ...slip, currentA: undefined }).causes;
    expect([first!.cause, ...first!.orElse.map(({ cause }) => cause)]).toEqual(['undercharge', 'misread']);
    expect(settlingSentence(first!)).toContain('In the usual band: the pressures are gauge.');
    expect(settlingSentence(first!)).toContain('Below the usual: too little refrigerant.');
    expect(of(slip).causes[0]).toMatchObject({ cause: 'misread', meant: { kind: 'basis', basis: 'gauge' } });
    expect(of({ ...slip, currentA: 4.7 }).causes[0]!.cause).toBe('undercharge');
  });
  test('overcharge or air: at rest it shows', () => {
    const high = { discharge: gauge(19.5), liquidC: 33, currentA: 7.2 };
    const [first] = of(high).causes;
    expect(first!.settling).toMatchObject({ by: 'at-rest', above: [{ cause: 'air-in-circuit' }] });
    // R407C at 20 °C: bubble 10.4 bar absolute, by the tables of the equation of state.
    expect(of({ ...high, restC: 20, restPressure: absolute(11.6) }).causes[0]!.cause).toBe('air-in-circuit');
    const settled = of({ ...high, restC: 20, restPressure: absolute(10) }).causes[0]!;
    expect([settled.cause, settled.orElse]).toEqual(['overcharge', []]);
  });
});

describe('refrigerants with nearly the same pressures', () => {
  // R410A at −3.6 and 40 °C, within a kelvin the pressures of R32; its hot gas by a usual compressor is 79 °C, that of R32 98 °C.
  const pressures = { suction: gauge(6.1), discharge: gauge(23.5), suctionC: 1.5, liquidC: 35, flowC: 39, returnC: 34 };
  test.each([
    ['R32', 79, { others: ['R410A', 'R454B'], by: 'hot-gas' }, 'The hot gas fits R410A or R454B better'],
    ['R32', 98, null, ''],
    ['R410A', 79, null, ''],
    ['R32', undefined, { others: ['R410A', 'R454B'], by: 'pressures' }, 'only the name on the plate or the hot gas'],
    ['R290', 79, null, ''],
  ] as const)('%s chosen, hot gas %s °C', (refrigerant, dischargeC, alike, said) => {
    const check = of({ ...pressures, refrigerant, dischargeC });
    expect(check.alike).toEqual(alike);
    expect(alikeSentence(check)).toContain(said);
  });
  test('no suction pressure: nothing to say', () =>
    expect(of({ ...pressures, refrigerant: 'R32', suction: undefined, dischargeC: undefined }).alike).toBeNull());
  test('a slip among the causes is looked for first', () => {
    const absolute = {
      suction: { ...gauge(2.9), basis: 'absolute' },
      discharge: { ...gauge(16.3), basis: 'absolute' },
    } as const;
    const [first] = of({ ...absolute, currentA: undefined }).causes;
    expect(firstChecks(first!)).toMatch(/^Read the plate .* Rule out low brine flow first\./);
    expect(firstChecks({ ...first!, orElse: [] })).toMatch(/^Rule out low brine flow first\./);
  });
});

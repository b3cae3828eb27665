/** An invented written estimate with figures that hang together, for the tests of the document and of the pages. */
import type { Appraisal, Figure, SystemId, SystemResult, Versus } from '../../../src/model/shapes/appraisal.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import type { Grade, Working } from '../../../src/model/shapes/working.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';

const working = (title: string, value: number, unit: string, grade: Grade = 'estimated'): Working => ({
  title,
  formula: 'units × price',
  inputs: [
    { name: 'Units bought', value, unit, grade, origin: 'gas-2024.csv, row 12' },
    {
      name: 'Price per kWh',
      value: 26.3,
      unit: 'p',
      grade: 'measured',
      origin: 'typed from the bill, 25 November 2026',
    },
  ],
  result: { value, unit },
  source: 'Invented table for tests, edition 1',
  steps: [
    {
      title: 'Heat of the year',
      formula: 'slope × degree days',
      inputs: [{ name: 'Degree days', value: 2200, unit: 'K day', grade: 'assumed', origin: 'regional table' }],
      result: { value: 13_900, unit: 'kWh' },
    },
  ],
});

export const figure = (value: number, low: number, high: number, unit: string, title = 'A figure'): Figure => ({
  value,
  low,
  high,
  unit,
  grade: 'estimated',
  working: working(title, value, unit),
});

const WINTER = [17, 15, 12, 8, 4, 2, 1.5, 1.5, 3, 8, 12, 16];
const spreadOver = (total: number) => WINTER.map((share) => (total * share) / 100);

interface Rough {
  readonly id: SystemId;
  readonly kind: string;
  readonly carrier: SystemResult['carrier'];
  readonly kWh: number;
  readonly pence: number;
  readonly standing: number;
  readonly service: number;
}

export function system({ id, kind, carrier, kWh, pence, standing, service }: Rough): SystemResult {
  const unitsPence = kWh * pence;
  const together = unitsPence + standing + service;
  return {
    id,
    kind,
    carrier,
    spaceEfficiency: id === 'heat-pump' ? 3.7 : 0.85,
    waterEfficiency: id === 'heat-pump' ? 2.6 : 0.8,
    grade: 'estimated',
    bought: figure(kWh, kWh * 0.88, kWh * 1.16, 'kWh', `Units bought, ${kind}`),
    ownElectricityKWh: carrier === 'electricity' ? 0 : 120,
    cost: figure(together, together * 0.88, together * 1.17, 'p', `Cost of a year, ${kind}`),
    split: { unitsPence, standingPence: standing, servicePence: service },
    monthly: {
      boughtKWh: spreadOver(kWh),
      unitsPence: spreadOver(unitsPence),
      standingPence: Array.from({ length: 12 }, () => standing / 12),
      servicePence: Array.from({ length: 12 }, () => service / 12),
    },
    rates: [{ name: 'All day', kWh, pencePerKWh: pence }],
    pencePerKWhHeat: figure(unitsPence / 13_900, 6, 9, 'p/kWh', 'Cost of a kWh of heat'),
    carbonKg: figure(kWh * 0.13, kWh * 0.1, kWh * 0.2, 'kg', 'Carbon of a year'),
    coldYearPence: together + unitsPence * 0.08,
    mildYearPence: together - unitsPence * 0.08,
  };
}

const ROUGH: readonly Rough[] = [
  { id: 'heat-pump', kind: 'heat-pump', carrier: 'electricity', kWh: 4040, pence: 26.3, standing: 0, service: 13_000 },
  { id: 'present', kind: 'gas-old', carrier: 'gas', kWh: 17_380, pence: 8, standing: 10_800, service: 11_000 },
  {
    id: 'gas-condensing',
    kind: 'gas-condensing',
    carrier: 'gas',
    kWh: 15_800,
    pence: 8,
    standing: 10_800,
    service: 11_000,
  },
  { id: 'oil', kind: 'oil', carrier: 'oil', kWh: 16_200, pence: 8.4, standing: 0, service: 12_000 },
  {
    id: 'direct-electric',
    kind: 'direct-electric',
    carrier: 'electricity',
    kWh: 13_900,
    pence: 26.3,
    standing: 0,
    service: 0,
  },
];

export interface Variant {
  /** Multiplies what a unit for the heat pump costs: 2 makes it dearer than everything but direct electric. */
  readonly electricityShare?: number;
  readonly withoutPresent?: boolean;
  readonly withoutRecord?: boolean;
  readonly source?: 'ground' | 'air';
  readonly name?: string;
}

export function larchRise(variant: Variant = {}): Appraisal {
  const share = variant.electricityShare ?? 1;
  const systems = ROUGH.filter(({ id }) => !(variant.withoutPresent && id === 'present')).map((rough) =>
    system(rough.id === 'heat-pump' ? { ...rough, pence: rough.pence * share } : rough),
  );
  const pump = systems[0]!;
  const versus: Versus[] = systems.slice(1).map((other) => {
    const saving = other.cost.value - pump.cost.value;
    const twenty = Array.from({ length: 20 }, (_, i) => saving + (i - 9.5) * 5200);
    return {
      against: other.id,
      saving: figure(saving, saving - 42_000, saving + 42_000, 'p', 'Difference of a year'),
      chanceLess: twenty.filter((pence) => pence > 0).length / 20,
      twenty,
      breakEvenFactor: 2.9,
      priceRatio: 3.29,
      breakEvenPriceRatio: 4.1,
    };
  });
  const basis = {
    name: 'Day and night from October',
    from: '2026-10-01',
    to: '2026-12-31',
    grade: 'measured' as const,
  };
  return {
    modelVersion: '0.1.0',
    asOf: '2026-11-25',
    climate: {
      regionId: 6,
      regionName: 'Midlands',
      monthlyMeanC: [4.3, 4.5, 6.1, 8.4, 11.5, 14.5, 16.6, 16.4, 14.1, 10.7, 7.2, 4.7],
      baseC: 15.5,
      degreeDays: 2228,
      recordWeather: variant.withoutRecord ? 'none' : 'typical',
      grade: 'assumed',
      source: 'Regional monthly means, invented edition',
    },
    demand: {
      estimates: variant.withoutRecord
        ? []
        : [
            {
              way: 'record',
              spaceKWh: 11_600,
              spaceErrorKWh: 700,
              grade: 'measured',
              working: working('From the record', 11_600, 'kWh', 'measured'),
            },
          ],
      missing: variant.withoutRecord ? [{ way: 'record', reason: 'no-record' }] : [],
      chosen: 'together',
      space: figure(11_600, 10_700, 12_500, 'kWh', 'Heat for the rooms'),
      water: figure(2300, 1800, 2800, 'kWh', 'Heat for hot water'),
      total: figure(13_900, 12_800, 15_000, 'kWh', 'Heat needed'),
      monthlySpaceKWh: spreadOver(11_600),
      monthlyWaterKWh: Array.from({ length: 12 }, () => 2300 / 12),
      baseC: 15.5,
      roomC: 20,
      heatLossWPerK: 220,
    },
    machine: {
      source: variant.source ?? 'ground',
      boundary: 'H4',
      space: figure(3.7, 3.2, 4.1, '', 'Seasonal factor, rooms'),
      water: figure(2.6, 2.2, 3, '', 'Factor for hot water'),
      whole: figure(3.44, 3, 3.8, '', 'Factor for heat and hot water together'),
      extraKWh: 0,
      fieldSpread: { low: 2.6, middle: 3.2, high: 3.8, boundary: 'H4', count: 90, source: 'Invented field trial' },
    },
    prices: {
      electricity: { ...basis, origin: 'typed from the bill' },
      gas: { ...basis, name: 'Gas from October', origin: 'typed from the bill' },
      oil: { name: 'Oil', from: '2026-10-01', to: '2026-10-31', grade: 'assumed', origin: 'table' },
      lpg: { name: 'LPG', from: '2026-10-01', to: '2026-10-31', grade: 'assumed', origin: 'table' },
      electricityPencePerKWh: 26.3 * share,
      gasPencePerKWh: 8,
      oilPencePerKWh: 8.4,
      lpgPencePerKWh: 11,
    },
    systems,
    versus,
    drivers: [
      { input: 'electricity-price', share: 0.5 },
      { input: 'space-factor', share: 0.2 },
      { input: 'winter', share: 0.1 },
    ],
    questions: [],
  };
}

export function larchRiseHousehold(variant: Variant = {}): Household {
  return {
    ...emptyHousehold('h1', variant.name ?? 'Larch Rise'),
    home: { kind: 'semi', people: { value: 3, grade: 'measured', origin: 'told by the household' } },
    present: { system: 'gas-old' },
    machine: { source: variant.source ?? 'ground', emitters: 'radiators' },
  };
}

export function larchRiseEstimate(variant: Variant = {}): WrittenEstimate {
  return {
    id: '0192-larch',
    number: 12,
    householdId: 'h1',
    madeOn: '2026-11-25T14:30:00.000Z',
    note: '',
    household: larchRiseHousehold(variant),
    evidence: [],
    appraisal: larchRise(variant),
  };
}

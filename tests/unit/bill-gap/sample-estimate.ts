import { COMMON_MONTH_DAYS } from '../../../src/model/calendar/civil.ts';
import type { Figure } from '../../../src/model/shapes/appraisal.ts';
import type { BillCheckInput } from '../../../src/model/shapes/bill-check.ts';
import { emptyHousehold } from '../../../src/model/shapes/household.ts';
import type { Reference } from '../../../src/model/shapes/reference.ts';
import type { WrittenEstimate } from '../../../src/model/shapes/written-estimate.ts';

const figure = (value: number, unit: string, low = value, high = value): Figure => ({
  value,
  low,
  high,
  unit,
  grade: 'estimated',
  working: { title: 'invented', formula: 'invented', inputs: [], result: { value, unit } },
});

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const monthly = (value: (month: number) => number) => Array.from({ length: 12 }, (_, m) => value(m));

/**
 * An estimate small enough for a pencil: 5 °C every month and a base of 20 °C, so that no day is ever above the base and
 * each month has 15 degree days a day; space heat 9 kWh a day from October to March at a factor of 3 = 3 units a day,
 * none in summer unless told; 2 units a day for all else; 25 p a unit.
 */
export function sampleEstimate(
  change: { price?: (month: number) => number; meanC?: readonly number[] } = {},
): WrittenEstimate {
  const price = change.price ?? (() => 25);
  const winter = (m: number) => m < 3 || m > 8;
  const space = monthly((m) => (winter(m) ? 9 * COMMON_MONTH_DAYS[m]! : 0));
  const water = monthly((m) => 4 * COMMON_MONTH_DAYS[m]!);
  const bought = monthly((m) => space[m]! / 3 + 2 * COMMON_MONTH_DAYS[m]!);
  const units = monthly((m) => bought[m]! * price(m));
  const zero = monthly(() => 0);
  const basis = { name: 'Invented price', from: '2026-10-01', grade: 'measured' as const, origin: 'invented' };
  const pump = {
    id: 'heat-pump' as const,
    kind: 'heat-pump',
    carrier: 'electricity' as const,
    spaceEfficiency: 3,
    waterEfficiency: 2.5,
    grade: 'estimated' as const,
    bought: figure(sum(bought), 'kWh', sum(bought) * 0.85, sum(bought) * 1.2),
    ownElectricityKWh: 0,
    cost: figure(sum(units), 'pence'),
    split: { unitsPence: sum(units), standingPence: 0, servicePence: 0 },
    monthly: { boughtKWh: bought, unitsPence: units, standingPence: zero, servicePence: zero },
    rates: [],
    pencePerKWhHeat: figure(9, 'p/kWh'),
    carbonKg: figure(0, 'kg'),
    coldYearPence: 0,
    mildYearPence: 0,
  };
  return {
    id: 'p1',
    number: 1,
    householdId: 'h1',
    madeOn: '2026-11-25T10:00:00Z',
    note: '',
    household: emptyHousehold('h1', 'Invented household'),
    evidence: [],
    appraisal: {
      modelVersion: '1',
      asOf: '2026-11-25',
      climate: {
        regionId: 0,
        regionName: 'nowhere',
        monthlyMeanC: [...(change.meanC ?? monthly(() => 5))],
        baseC: 20,
        degreeDays: 5475,
        recordWeather: 'typical',
        grade: 'assumed',
        source: 'invented',
      },
      demand: {
        estimates: [],
        missing: [],
        chosen: 'together',
        space: figure(sum(space), 'kWh'),
        water: figure(sum(water), 'kWh'),
        total: figure(sum(space) + sum(water), 'kWh'),
        monthlySpaceKWh: space,
        monthlyWaterKWh: water,
        baseC: 20,
        roomC: 20,
        heatLossWPerK: 100,
      },
      machine: {
        source: 'ground',
        boundary: 'H4',
        space: figure(3, ''),
        water: figure(2.5, ''),
        whole: figure(2.8, ''),
        extraKWh: 0,
        fieldSpread: { low: 2.6, middle: 3.2, high: 3.8, boundary: 'H4', source: 'invented' },
      },
      prices: {
        electricity: basis,
        gas: basis,
        oil: basis,
        lpg: basis,
        electricityPencePerKWh: 25,
        gasPencePerKWh: 7,
        oilPencePerKWh: 6,
        lpgPencePerKWh: 10,
      },
      systems: [pump],
      versus: [],
      drivers: [],
      questions: [],
    },
  };
}

const value = (spread: number) => ({
  value: spread,
  unit: 'fraction',
  source: 'invented',
  provenance: 'computed' as const,
});

export const spreads: Pick<Reference, 'spread'> = {
  spread: {
    winter: value(0.08),
    habits: value(0.06),
    electricityPrice: value(0.09),
    gasPrice: value(0.11),
    priceCorrelation: value(0.88),
    machineExtras: value(0.3),
    boilerElectricity: value(0.3),
    service: value(0.25),
  },
};

/** January 2027: 31 days, 5 units a day estimated. */
export function sampleBill(change: Partial<BillCheckInput> = {}): BillCheckInput {
  return {
    estimateId: 'p1',
    from: '2027-01-01',
    to: '2027-02-01',
    boughtKWh: 155,
    otherKWh: 0,
    meter: 'heat-pump',
    pencePerKWh: 25,
    readings: 'actual',
    ...change,
  };
}

/**
 * Seasonal factors of many typical British homes, worked out by the half-hour, beside those measured in the field.
 * How the homes are spread is a judgement made from what installers see; nothing in it is fitted to the answer.
 */

import { normalQuantile, Z90 } from '../../src/model/chance/normal-quantile.ts';
import { quantileOf } from '../../src/model/chance/quantiles.ts';
import { estimateDemand } from '../../src/model/demand/estimate-demand.ts';
import { reckonFullMachine } from '../../src/model/heat-pump/full/spf-by-half-hour.ts';
import { emptyHousehold, type Given, type Household, type RatedPoint } from '../../src/model/shapes/household.ts';
import { typicalYear } from '../../src/model/year/typical-year.ts';
import { reference } from '../../src/reference/index.ts';

/** A generator of even numbers from 0 to 1, the same for the same seed (mulberry32, public domain). */
function evenNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Source = 'ground' | 'air';

interface Habits {
  readonly heatLossKW: readonly [number, number];
  readonly floorShare: number;
  readonly radiatorFlowC: readonly [number, number];
  readonly floorFlowC: readonly [number, number];
  readonly fixedFlowShare: number;
  readonly fixedSpeedShare: number;
  readonly trenchShare: number;
  /** Carnot fraction at test point A of declared units: 10, 50 and 90 % points, of an open certification dump (2024). */
  readonly fraction: readonly [number, number, number];
}

/** Homes with a heat pump as installers see them. Common practice, no source, but for the fractions. */
const HABITS: { readonly [source in Source]: Habits } = {
  ground: {
    heatLossKW: [6, 16],
    floorShare: 0.45,
    radiatorFlowC: [42, 55],
    floorFlowC: [33, 42],
    fixedFlowShare: 0.15,
    fixedSpeedShare: 0.6,
    trenchShare: 0.55,
    fraction: [0.449, 0.508, 0.537],
  },
  air: {
    heatLossKW: [4, 11],
    floorShare: 0.2,
    radiatorFlowC: [40, 55],
    floorFlowC: [33, 42],
    fixedFlowShare: 0.15,
    fixedSpeedShare: 0.1,
    trenchShare: 0,
    // Declared COP at A-7/W34 of 2.58, 2.98 and 3.29 over a Carnot COP of 7.49.
    fraction: [0.344, 0.398, 0.439],
  },
};

const typed = <T>(value: T): Given<T> => ({ value, grade: 'estimated', origin: 'sampled' });

function sampleHome(source: Source, even: () => number): Household {
  const habits = HABITS[source];
  const from = ([low, high]: readonly [number, number]) => low + (high - low) * even();
  const chance = (share: number) => even() < share;
  const floor = chance(habits.floorShare);
  const heatLossKW = from(habits.heatLossKW);
  const z = normalQuantile(0.005 + 0.99 * even());
  const [low, middle, high] = habits.fraction;
  const better = 1 + ((z < 0 ? middle - low : high - middle) / Z90 / middle) * z;
  const ratedPoints = reference.ratedPoints[source].points.map(
    (point): RatedPoint => ({ ...point, cop: point.cop * better }),
  );
  const capacityKW = heatLossKW * from([0.9, 1.4]);
  return {
    ...emptyHousehold('sampled', 'Sampled home'),
    home: { regionId: 1 + Math.floor(even() * 16), people: typed(1 + Math.floor(even() * 5)) },
    heat: { heatLossKW: typed(heatLossKW), roomC: typed(from([19, 22])) },
    hotWater: { hotC: typed(from([48, 55])), pasteuriseWeekly: chance(0.7), cylinderLitres: typed(from([150, 300])) },
    machine: {
      source,
      way: 'full',
      emitters: floor ? 'floor' : 'radiators',
      flowC: typed(from(floor ? habits.floorFlowC : habits.radiatorFlowC)),
      backupShare: typed(chance(0.3) ? from([0, 0.04]) : 0),
      full: {
        ratedPoints: typed(ratedPoints),
        installedShare: typed(from([0.82, 0.98])),
        capacityKW: typed(capacityKW),
        control: chance(habits.fixedSpeedShare) ? 'fixed-speed' : 'variable',
        flow: chance(habits.fixedFlowShare) ? 'fixed' : 'weather-compensated',
        curveShiftK: typed(from([0, 6])),
        circulatorW: typed(from([30, 90])),
        ...(source === 'ground'
          ? {
              sourcePumpW: typed(capacityKW * from([8, 20])),
              ground: { kind: chance(habits.trenchShare) ? 'horizontal' : 'vertical', size: typed(from([0.7, 1.5])) },
            }
          : {}),
      },
    },
  };
}

/** The same home as an installer describes it: heat loss, data sheet, emitters, flow and kind of array; the rest is not told. */
function asDescribed(home: Household): Household {
  const { source, way, emitters, flowC, full } = home.machine;
  const ground = full?.ground?.kind;
  return {
    ...home,
    heat: { heatLossKW: home.heat.heatLossKW },
    hotWater: {},
    machine: {
      ...{ source, way, emitters, flowC },
      full: { ratedPoints: full?.ratedPoints, ...(ground ? { ground: { kind: ground } } : {}) },
    },
  };
}

function factorOf(household: Household): number {
  const region = reference.regions.find(({ id }) => id === household.home.regionId)!;
  const year = typicalYear(region, 2026, household.zone);
  const { demand, heatBySlot } = estimateDemand({ household, series: [], reference, year });
  return reckonFullMachine({ household, demand, reference, year, spaceShare: heatBySlot.spaceShare }).full.year.factors!
    .H4;
}

export interface SpreadRow {
  readonly source: Source;
  readonly what: string;
  readonly reckoned: number;
  readonly field: number;
}

export interface SpfSpread {
  readonly count: number;
  readonly rows: readonly SpreadRow[];
  /** Whether the middle of the homes reckoned, with all that is so within 5 % and as described within 6 % of the field's, by source. */
  readonly medianInside: Readonly<Record<Source, boolean>>;
}

/** The half-hour way takes its own step by the share of the rated COP that is reached, so its middle is held to the field's. */
const MOST_APART = 0.05;
/** Of homes of which less is told, a little more. */
const MOST_APART_DESCRIBED = 0.06;
/** Quartiles lie at 0.6745 standard deviations of a normal spread. */
const Z75 = 0.6745;

/**
 * Factors at H4 [1] of `count` sampled homes of each source: 10, 25, 50, 75 and 90 % points beside the field's.
 * Ground: 286 metered sites, mean 3.24, 67 % at 3.0 or more and 33 % at 3.5 or more (Ofgem data 2017-2022, for DESNZ,
 * RECC and GSHPA, 2024). Air: deciles 2.17, 2.75 and 3.32 of up to 742 homes (Electrification of Heat, for DESNZ, 2024).
 * Neither prints quartiles: they are worked out from the deciles above as of a normal spread on either side.
 */
export function spfSpread(count: number, seed = 20_261): SpfSpread {
  const rows: SpreadRow[] = [];
  const medianInside = { ground: false, air: false };
  for (const source of ['ground', 'air'] as const) {
    const even = evenNumbers(seed + (source === 'air' ? 1 : 0));
    const homes = Array.from({ length: count }, () => sampleHome(source, even));
    const factors = Float64Array.from(homes, factorOf).sort();
    const described = quantileOf(
      Float64Array.from(homes, (home) => factorOf(asDescribed(home))),
      0.5,
    );
    const at = (share: number) => factors[Math.min(count - 1, Math.floor(share * count))]!;
    const { low, middle, high } = reference.fieldFactor[source];
    const quartiles = { low: middle - ((middle - low) / Z90) * Z75, high: middle + ((high - middle) / Z90) * Z75 };
    const row = (what: string, reckoned: number, field: number) => rows.push({ source, what, reckoned, field });
    row('10 % point', at(0.1), low);
    row('25 % point', at(0.25), quartiles.low);
    row('middle', at(0.5), middle);
    row('middle, as described', described, middle);
    row('75 % point', at(0.75), quartiles.high);
    row('90 % point', at(0.9), high);
    const shareFrom = (least: number) => factors.filter((factor) => factor >= least).length / count;
    const published = source === 'ground' ? { three: 0.67, more: 0.33 } : { three: 0.3, more: 0.08 };
    row('share at 3.0 or more', shareFrom(3), published.three);
    row('share at 3.5 or more', shareFrom(3.5), published.more);
    medianInside[source] =
      Math.abs(at(0.5) / middle - 1) <= MOST_APART && Math.abs(described / middle - 1) <= MOST_APART_DESCRIBED;
  }
  return { count, rows, medianInside };
}

/** The comparison as lines of plain text, two decimals. */
export function spfSpreadTable({ count, rows, medianInside }: SpfSpread): string {
  const lines = rows.map(
    ({ source, what, reckoned, field }) =>
      `${source.padEnd(8)}${what.padEnd(24)}${reckoned.toFixed(2).padStart(9)}${field.toFixed(2).padStart(9)}`,
  );
  const inside = (source: Source) =>
    `${source}: middle ${medianInside[source] ? 'within' : 'NOT WITHIN'} 5 % of the field's`;
  return [
    `Seasonal factor of the whole house (H4), ${count} typical homes of each source`,
    `${''.padEnd(32)}${'reckoned'.padStart(9)}${'field'.padStart(9)}`,
    ...lines,
    inside('ground'),
    inside('air'),
  ].join('\n');
}

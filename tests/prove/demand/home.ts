/**
 * Made homes whose true heat is known: what they ask for, how they are metered, and what the installer is told. Their
 * nature and their warts are drawn from a seed; the model under test sees the record and the form alone.
 */
import { COMMON_MONTH_DAYS, toDayNumber } from '../../../src/model/calendar/civil.ts';
import { cookingGasKWh } from '../../../src/model/demand/demand-assumptions.ts';
import { reckonHotWater } from '../../../src/model/demand/hot-water.ts';
import { UNCOUNTED_KWH } from '../../../src/model/demand/known-base.ts';
import { typicalOn } from '../../../src/model/demand/record-weather.ts';
import type { Series } from '../../../src/model/shapes/evidence.ts';
import { emptyHousehold, type Household } from '../../../src/model/shapes/household.ts';
import { type TypicalYear, typicalYear } from '../../../src/model/year/typical-year.ts';
import { reference } from '../../../src/reference/index.ts';
import { about, madeTemperatures, normal, type Random, seeded, spells } from './made-weather.ts';
import { madeSeries } from './record.ts';

export const KINDS = [
  'gas by day, own weather',
  'gas bills by month, own weather',
  'gas bills by month, typical weather',
  'gas bills by quarter, own weather',
  'oil deliveries',
  'all electric by day, own weather',
  'all electric by day, typical weather',
  'all electric bills by month, typical weather',
] as const;
export type Kind = (typeof KINDS)[number];

export interface MadeDay {
  readonly day: number;
  readonly outdoorC: number;
  readonly kWh: number;
}

export interface MadeHome {
  readonly kind: Kind;
  readonly household: Household;
  readonly series: readonly Series[];
  readonly year: TypicalYear;
  /** Heat for the rooms in a typical year at the household's usual habits, kWh. */
  readonly spaceKWh: number;
  /** Heat for hot water in a year at the household's usual habits, kWh. */
  readonly waterKWh: number;
  /** Heat loss, W/K. */
  readonly wPerK: number;
  /** The days of the record, and those of a year after it. */
  readonly record: readonly MadeDay[];
  readonly after: readonly MadeDay[];
}

export interface MadeOptions {
  /** Heat loss after half of the record over that before: 0.7 for a home that was insulated meanwhile. */
  readonly changeTo?: number;
  /** Days of the record; drawn where absent. */
  readonly recordDays?: number;
}

interface Nature {
  readonly wPerK: number;
  readonly baseC: number;
  readonly sunK: number;
  readonly efficiency: number;
  readonly waterKWh: number;
  readonly basePerDay: number;
  readonly swing: number;
  readonly peakDay: number;
}

const YEAR_DAYS = 365;
/** Months differ in the same weather about as much as those of the one real home in the open data do. */
const MONTH_SPREAD = 0.12;
/**
 * How far one home's years stray at the same weather, relative standard deviation, in each home whose years are published;
 * a made home is as steady as one of them. A home in Minnesota by its gas bills (`Utilities` of the R package mosaicData;
 * Kaplan, Statistical Modeling, 2009), each year from July over a line in the bills' temperatures, one line for each of
 * its boilers, two years with a bad reading or nobody at home left out: 1.017, 0.973, 1.004, 1.014; then 1.011, 0.988,
 * 0.966, 1.014, 1.022. The British home of the open data: two years 12 % apart, 0.12 / √2; the model's spread is from it too.
 */
const YEAR_SPREADS = [0.022, 0.085] as const;
export const YEARS_FROM =
  'Their years stray at the same weather as those of two homes with published years: 2.2 % in Minnesota, 8.5 % in Britain. ' +
  'The model takes 8.5 % from the second. No published spread over many homes was found.';
const wave = (day: number, peakDay: number) => Math.cos((2 * Math.PI * (day - peakDay)) / 365.25);

/** Degrees asked for on a day: in spring the sun warms more than in autumn at the same temperature. */
function degreesAsked(nature: Nature, day: number, outdoorC: number): number {
  const ofSun = nature.sunK * (0.3 - 0.7 * wave(day, 355));
  return Math.max(0, nature.baseC - ofSun - outdoorC);
}

const given = <T>(value: T) => ({ value, grade: 'measured' as const, origin: 'made' });

/** A home of a kind out of a seed. */
export function madeHome(kind: Kind, seed: number, options: MadeOptions = {}): MadeHome {
  const random = seeded(seed * 7919 + KINDS.indexOf(kind) * 104_729 + 1);
  const region = reference.regions[1 + Math.floor(random() * 20)]!;
  const year = typicalYear(region, 2025, 'Europe/London');
  const carrier = kind.startsWith('gas') ? 'gas' : kind.startsWith('oil') ? 'oil' : 'electricity';
  const system = { gas: 'gas-condensing', oil: 'oil', electricity: 'direct-electric' } as const;
  const household = madeHousehold(random, region.id, system[carrier]);
  const nature = madeNature(random, household, seeded(seed * 6_700_417 + KINDS.indexOf(kind) + 1));
  const first = toDayNumber('2022-01-01') + Math.floor(random() * 365);
  const drawn = carrier === 'oil' ? 700 + 500 * random() : 335 + (random() < 0.3 ? 400 : 60) * random();
  const recordDays = options.recordDays ?? Math.floor(drawn);
  const temperatures = madeTemperatures(random, region, first, recordDays + YEAR_DAYS);
  const share = (i: number) => (i * 2 >= recordDays ? (options.changeTo ?? 1) : 1);
  const use = madeUse(random, nature, first, temperatures, share);
  const days = use.map((kWh, i) => ({ day: first + i, outdoorC: temperatures[i]!, kWh }));
  const record = days.slice(0, recordDays);
  const wPerK = nature.wPerK * (options.changeTo ?? 1);
  let spaceKWh = 0;
  const start = toDayNumber('2025-01-01');
  for (let i = 0; i < YEAR_DAYS; i++) {
    spaceKWh += (wPerK * 24 * degreesAsked(nature, start + i, typicalOn(year, start + i))) / 1000;
  }
  const series = madeSeries(random, kind, carrier, record);
  const { waterKWh } = nature;
  return { kind, household, series, year, spaceKWh, waterKWh, wPerK, record, after: days.slice(recordDays) };
}

function madeHousehold(random: Random, regionId: number, system: Household['present']['system']): Household {
  const areaM2 = Math.round(50 + 130 * random());
  const people = 1 + Math.floor(random() * 5);
  return {
    ...emptyHousehold('made', 'Made home'),
    home: { regionId, floorAreaM2: given(areaM2), people: given(people) },
    present: { system, hotWaterFrom: 'same', cooksOnGas: system === 'gas-condensing' && random() < 0.5 },
    heat: { use: 'record' },
  };
}

function madeNature(random: Random, household: Household, apart: Random): Nature {
  const areaM2 = household.home.floorAreaM2!.value;
  const people = household.home.people!.value;
  const { system, cooksOnGas } = household.present;
  const water = reckonHotWater(household, COMMON_MONTH_DAYS, reference);
  const table = reference.efficiency[system as 'gas-condensing'];
  const spreadOf = (row: { low: number; high: number }) => Math.log(row.high / row.low) / 2.5631;
  const efficiency = about(random, table.space.middle, spreadOf(table.space));
  const ofWater = about(random, table.water.middle, spreadOf(table.water));
  const cooking = cooksOnGas ? about(random, cookingGasKWh(people), 0.4) : 0;
  const other = system === 'direct-electric' ? about(random, 231 * (areaM2 * people) ** 0.4714, 0.35) : cooking;
  // Pipes between boiler and cylinder lose heat in any weather, in some homes hardly any and in others much.
  const uncountedKWh = system === 'direct-electric' ? 0 : -UNCOUNTED_KWH * Math.log(1 - apart());
  const wPerK = areaM2 * (0.9 + 2.4 * random());
  const baseC = Math.min(18.5, Math.max(11.5, 15 + 1.4 * normal(random)));
  const sunK = 1.2 * random();
  const waterKWh = about(random, water.kWh, water.errorKWh / water.kWh);
  return {
    wPerK,
    baseC,
    sunK,
    efficiency,
    waterKWh,
    basePerDay: ((waterKWh + uncountedKWh) / ofWater + other) / 365.25,
    swing: 0.08 + 0.22 * random(),
    peakDay: -10 + 45 * random(),
  };
}

/** Ups and downs that come out even: their mean is 1, so that the heat of a usual year is what the years come to. */
const evenly = (spread: number, z: number): number => Math.exp(spread * z - spread ** 2 / 2);

/** Metered use by day: each year's habits, months away or cosy, days that are not alike. */
function madeUse(
  random: Random,
  nature: Nature,
  first: number,
  temperatures: readonly number[],
  lossShare: (i: number) => number,
): number[] {
  const count = temperatures.length;
  const habits = YEAR_SPREADS[Math.floor(YEAR_SPREADS.length * seeded(first)())]!;
  const years = Array.from({ length: Math.ceil(count / YEAR_DAYS) }, () => about(random, 1, habits));
  const months = spells(random, Math.ceil(count / 30), 0.3);
  const days = spells(random, count, 0.4);
  return temperatures.map((outdoorC, i) => {
    const habit = years[Math.floor(i / YEAR_DAYS)]!;
    const month = evenly(MONTH_SPREAD, months[Math.floor(i / 30)]!);
    const asked = (nature.wPerK * lossShare(i) * 24 * degreesAsked(nature, first + i, outdoorC)) / 1000;
    const steady = nature.basePerDay * (1 + nature.swing * wave(first + i, nature.peakDay));
    const space = (asked / nature.efficiency) * habit * month * evenly(0.12, days[i]!);
    return space + steady * habit * month * evenly(0.25, normal(random));
  });
}

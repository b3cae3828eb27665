/**
 * Readings at made plants: a fault or a slip in reading, its handbook's signs in a size of our own, over conditions that
 * vary as they do from home to home. Nothing here is taken from the model: pressures stand in a table of their own (equations
 * of state evaluated with CoolProp 8.0.0), blends are read at mid-point, hot gas by a table for one compressor.
 */
import type { RefrigerantName } from '../../src/model/shapes/refrigerant.ts';
import type { PressureBasis, PressureUnit, SiteReadings } from '../../src/model/shapes/site-readings.ts';
import { type Chance, chanceOf } from './chance.ts';

/** °C; bubble and dew [bar absolute]. */
const AT_C = [-15, -10, -5, 0, 5, 35, 40, 45, 50, 55, 60] as const;
const BAR: Readonly<Record<RefrigerantName, readonly [bubble: readonly number[], dew: readonly number[]]>> = {
  R407C: [
    [3.38, 4.05, 4.81, 5.68, 6.66, 15.45, 17.49, 19.72, 22.16, 24.81, 27.69],
    [2.63, 3.2, 3.85, 4.61, 5.47, 13.49, 15.41, 17.53, 19.88, 22.45, 25.29],
  ],
  R410A: [
    [4.82, 5.75, 6.81, 8.01, 9.36, 21.45, 24.26, 27.34, 30.71, 34.4, 38.43],
    [4.8, 5.73, 6.78, 7.98, 9.33, 21.38, 24.19, 27.26, 30.63, 34.32, 38.35],
  ],
  R32: alike([4.88, 5.83, 6.91, 8.13, 9.51, 21.9, 24.78, 27.95, 31.41, 35.2, 39.33]),
  R290: alike([2.92, 3.45, 4.06, 4.74, 5.51, 12.18, 13.69, 15.34, 17.13, 19.07, 21.17]),
  R454B: [
    [4.62, 5.51, 6.53, 7.67, 8.97, 20.47, 23.14, 26.05, 29.23, 32.69, 36.46],
    [4.4, 5.25, 6.22, 7.32, 8.57, 19.72, 22.33, 25.18, 28.32, 31.75, 35.5],
  ],
  R134a: alike([1.64, 2.01, 2.43, 2.93, 3.5, 8.87, 10.17, 11.6, 13.18, 14.92, 16.82]),
};
function alike(bar: readonly number[]): readonly [readonly number[], readonly number[]] {
  return [bar, bar];
}
/** Glide at one pressure [K], boiling and condensing. */
const GLIDE: Readonly<Partial<Record<RefrigerantName, readonly [number, number]>>> = {
  R407C: [6.3, 5],
  R454B: [1.5, 1.5],
};
/** Hot gas [°C] boiling at −5 and condensing at 45 °C with 5 K of superheat; more for each K of either and of superheat. */
const HOT_GAS: Readonly<
  Record<RefrigerantName, readonly [at: number, boiling: number, condensing: number, superheat: number]>
> = {
  R407C: [79, -0.8, 1.45, 1.1],
  R410A: [85, -0.9, 1.55, 1.15],
  R32: [110, -1.6, 2.05, 1.33],
  R454B: [96, -1.1, 1.67, 1.2],
  R290: [68, -0.5, 1.2, 1],
  R134a: [68, -0.5, 1.2, 1.05],
};

function pressureOf(name: RefrigerantName, celsius: number, side: 0 | 1): number {
  const bars = BAR[name][side];
  let i = 0;
  while (i < AT_C.length - 2 && AT_C[i + 1]! < celsius) i++;
  const share =
    (1 / (celsius + 273.15) - 1 / (AT_C[i]! + 273.15)) / (1 / (AT_C[i + 1]! + 273.15) - 1 / (AT_C[i]! + 273.15));
  return bars[i]! * (bars[i + 1]! / bars[i]!) ** share;
}

/** What a plant does, before anybody reads it. Temperatures in °C, differences in K, currents and heat as shares of usual. */
export interface Plant {
  brineInC: number;
  brineDropK: number;
  flowC: number;
  spreadK: number;
  /** Brine out less boiling, condensing less flow, at mid-point. */
  boilingBelowK: number;
  condensingAboveK: number;
  superheatK: number;
  subcoolingK: number;
  current: number;
  /** Hot gas beyond that of the table. */
  hotterK: number;
  valveOpen: number;
  /** At rest: pressure over that of the temperature, as a share. */
  restShare: number;
  heaterKW: number;
  glycolPercent: number;
}

type Change = (plant: Plant, size: number, chance: Chance) => void;
const change =
  (parts: Partial<Record<keyof Plant, number>>): Change =>
  (plant, size) => {
    for (const [name, by] of Object.entries(parts) as [keyof Plant, number][]) plant[name] += by * size;
  };
const both =
  (...changes: Change[]): Change =>
  (plant, size, chance) => {
    for (const one of changes) one(plant, size, chance);
  };
/** Of two texts that disagree, one or the other. */
const either =
  (one: Change, other: Change): Change =>
  (plant, size, chance) =>
    (chance.yes(0.5) ? one : other)(plant, size, chance);
const heat =
  (share: number): Change =>
  (plant, size) => {
    plant.brineDropK *= 1 - share * size;
    plant.spreadK *= 1 - share * size;
  };

/** Signs as handbooks tabulate them (ACHR News; refrigeration-engineer.com; TM 55-1930-209-14P-15); sizes are ours. */
export const FAULTS: Readonly<Record<string, Change>> = {
  undercharge: both(
    change({
      boilingBelowK: 7,
      condensingAboveK: -0.6,
      superheatK: 8,
      subcoolingK: -6,
      current: -0.2,
      hotterK: 3,
      valveOpen: 50,
    }),
    heat(0.2),
  ),
  'valve-starving': both(
    change({ boilingBelowK: 7, condensingAboveK: -0.5, superheatK: 8, subcoolingK: 6, current: -0.18, hotterK: 2 }),
    heat(0.2),
  ),
  'suction-restricted': both(
    change({ boilingBelowK: 8, condensingAboveK: -0.5, superheatK: 8, subcoolingK: 1.5, current: -0.2, hotterK: 2 }),
    heat(0.2),
  ),
  overcharge: either(
    change({ condensingAboveK: 5, subcoolingK: 8, current: 0.2, hotterK: 2 }),
    change({ condensingAboveK: 5, subcoolingK: 8, current: 0.2, superheatK: -2, boilingBelowK: -1 }),
  ),
  'air-in-circuit': both(
    change({ condensingAboveK: 6, current: 0.2, hotterK: 8, restShare: 0.15 }),
    either(change({ subcoolingK: -4 }), change({ subcoolingK: 6 })),
  ),
  'compressor-weak': both(
    change({ boilingBelowK: -4, condensingAboveK: -1.5, current: -0.22, hotterK: 15, valveOpen: -45 }),
    heat(0.35),
    either(change({ superheatK: 5, subcoolingK: -4 }), change({ superheatK: -4, subcoolingK: 5 })),
  ),
  'brine-flow-low': both(
    change({ boilingBelowK: 1, superheatK: -1, subcoolingK: 0.5, valveOpen: -15 }),
    (plant, size) => {
      plant.brineDropK *= 1 + 0.9 * size;
    },
  ),
  'water-flow-low': both(
    change({ condensingAboveK: 1, superheatK: -1, subcoolingK: -1, current: 0.05, hotterK: 2 }),
    (plant, size) => {
      plant.spreadK *= 1 + 0.9 * size;
    },
  ),
  'evaporator-fouled': both(change({ boilingBelowK: 5, current: -0.05, valveOpen: -10 }), heat(0.05)),
  'condenser-fouled': both(change({ condensingAboveK: 5, current: 0.2, hotterK: 4 }), heat(0.03)),
  'valve-flooding': change({ superheatK: -5, boilingBelowK: -1, hotterK: -3, valveOpen: 35 }),
  'heater-counted': change({ heaterKW: 3 }),
  'ground-cold': (plant, _size, chance) => {
    plant.brineInC = chance.uniform(-4, -1);
    plant.glycolPercent = chance.uniform(28, 33);
  },
  'glycol-weak': (plant, _size, chance) => {
    plant.glycolPercent = chance.uniform(8, 12);
    plant.brineInC = chance.uniform(0.5, 2.5);
  },
};

export type Slip = 'refrigerant' | 'basis' | 'unit' | 'exchanged' | 'brine exchanged' | 'water exchanged';
export const SLIPS: readonly Slip[] = [
  'refrigerant',
  'basis',
  'unit',
  'exchanged',
  'brine exchanged',
  'water exchanged',
];

export interface PlantCase {
  readonly readings: SiteReadings;
  /** What the plant is filled with and how the gauges really show it, whatever was typed. */
  readonly really: {
    readonly refrigerant: RefrigerantName;
    readonly basis: PressureBasis;
    readonly unit: PressureUnit;
  };
  /** All that can be read, for what is asked for. */
  readonly later: SiteReadings;
}

const NAMES = Object.keys(BAR) as RefrigerantName[];
const UNITS: readonly PressureUnit[] = ['bar', 'psi', 'kPa'];
const GAUGE: Readonly<Record<PressureUnit, readonly [perBar: number, step: number]>> = {
  bar: [1, 0.1],
  psi: [14.5038, 1],
  kPa: [100, 5],
};

function drawPlant(name: RefrigerantName, chance: Chance): Plant {
  // R32 in a machine without injection is not run to the hottest water.
  const flowC = chance.uniform(30, name === 'R32' ? 46 : 54);
  return {
    brineInC: chance.uniform(1.5, 11),
    brineDropK: chance.uniform(2.6, 4.3),
    flowC,
    spreadK: chance.uniform(4, flowC > 45 ? 8 : 7),
    boilingBelowK: chance.uniform(3, 6),
    condensingAboveK: chance.uniform(0.7, 3),
    superheatK: chance.uniform(4, 8),
    subcoolingK: chance.uniform(3.5, 7.5),
    current: chance.uniform(0.93, 1.07),
    hotterK: chance.uniform(-5, 5),
    valveOpen: chance.uniform(32, 68),
    restShare: 0,
    heaterKW: 0,
    glycolPercent: chance.uniform(22, 30),
  };
}

export function drawPlantCase(seed: number, fault: string | null, slip: Slip | null): PlantCase {
  const chance = chanceOf(seed);
  const refrigerant = chance.pick(NAMES);
  const plant = drawPlant(refrigerant, chance);
  if (fault) FAULTS[fault]!(plant, chance.uniform(0.7, 1.3), chance);
  plant.boilingBelowK = Math.max(0.3, plant.boilingBelowK);
  plant.condensingAboveK = Math.max(0, plant.condensingAboveK);
  plant.superheatK = Math.max(0.2, plant.superheatK);
  plant.subcoolingK = Math.max(0, Math.min(plant.subcoolingK, plant.condensingAboveK + plant.spreadK));
  plant.valveOpen = Math.min(100, Math.max(3, plant.valveOpen));
  const unit = chance.pick(UNITS);
  const basis: PressureBasis = chance.yes(0.7) ? 'gauge' : 'absolute';
  const read = readPlant(plant, { refrigerant, unit, basis }, chance);
  const { currentA, usualCurrentA, valveOpenPercent, restPressure, restC, ...always } = read;
  const readings: SiteReadings = { ...always, ...(chance.yes(0.5) ? { currentA, usualCurrentA } : {}) };
  // One pipe in four plants is not reached at once.
  if (chance.yes(0.25)) delete readings[chance.pick(['suctionC', 'liquidC', 'dischargeC'] as const)];
  return {
    readings: slip ? slipInto(readings, slip, chance) : readings,
    really: { refrigerant, basis, unit },
    later: read,
  };
}

function readPlant(plant: Plant, { refrigerant, unit, basis }: PlantCase['really'], chance: Chance): SiteReadings {
  const [boilingGlide, condensingGlide] = GLIDE[refrigerant] ?? [0, 0];
  const brineOutC = plant.brineInC - plant.brineDropK;
  const dewC = brineOutC - plant.boilingBelowK + boilingGlide / 2;
  const bubbleC = plant.flowC + plant.condensingAboveK - condensingGlide / 2;
  const [at, byBoiling, byCondensing, bySuperheat] = HOT_GAS[refrigerant];
  const hotC =
    at +
    byBoiling * (dewC + 5) +
    byCondensing * (bubbleC + condensingGlide - 45) +
    bySuperheat * (plant.superheatK - 5) +
    plant.hotterK;
  // A thermometer is good for a fifth of a kelvin or so, a gauge for half a hundredth.
  const celsius = (value: number) => Math.round((value + chance.normal(0, 0.2)) * 10) / 10;
  const pressure = (bar: number) => {
    const [perBar, step] = GAUGE[unit];
    const shown = (bar * (1 + chance.normal(0, 0.005)) - (basis === 'gauge' ? 1.01325 : 0)) * perBar;
    return { value: Math.round(shown / step) * step, unit, basis };
  };
  const inputKW = chance.uniform(1.5, 4);
  const carnot = (plant.flowC + 273.15) / (plant.flowC - plant.brineInC);
  const heatKW = inputKW * carnot * chance.uniform(0.45, 0.51);
  const usualCurrentA = Math.round(chance.uniform(4, 20) * 10) / 10;
  const restC = chance.uniform(8, 20);
  return {
    refrigerant,
    brineInC: celsius(plant.brineInC),
    brineOutC: celsius(brineOutC),
    glycol: { kind: 'propylene', percent: Math.round(plant.glycolPercent), basis: 'mass' },
    flowC: celsius(plant.flowC),
    returnC: celsius(plant.flowC - plant.spreadK),
    waterFlowLPerMin: Math.round((heatKW / (4.15 * plant.spreadK)) * 600) / 10,
    inputKW: Math.round((inputKW + plant.heaterKW) * 100) / 100,
    suction: pressure(pressureOf(refrigerant, dewC, 1)),
    discharge: pressure(pressureOf(refrigerant, bubbleC, 0)),
    suctionC: celsius(dewC + plant.superheatK),
    liquidC: celsius(bubbleC - plant.subcoolingK),
    dischargeC: celsius(hotC),
    currentA: Math.round(usualCurrentA * plant.current * 10) / 10,
    usualCurrentA,
    valveOpenPercent: Math.round(plant.valveOpen),
    restPressure: pressure(pressureOf(refrigerant, restC, 0) * (1 + plant.restShare)),
    restC: celsius(restC),
  };
}

function slipInto(readings: SiteReadings, slip: Slip, chance: Chance): SiteReadings {
  const { suction, discharge, brineInC, brineOutC, flowC, returnC } = readings as Required<SiteReadings>;
  if (slip === 'exchanged') return { ...readings, suction: discharge, discharge: suction };
  if (slip === 'brine exchanged') return { ...readings, brineInC: brineOutC, brineOutC: brineInC };
  if (slip === 'water exchanged') return { ...readings, flowC: returnC, returnC: flowC };
  if (slip === 'refrigerant')
    return { ...readings, refrigerant: chance.pick(NAMES.filter((name) => name !== readings.refrigerant)) };
  const wrong =
    slip === 'basis'
      ? { basis: suction.basis === 'gauge' ? ('absolute' as const) : ('gauge' as const) }
      : { unit: chance.pick(UNITS.filter((unit) => unit !== suction.unit)) };
  return { ...readings, suction: { ...suction, ...wrong }, discharge: { ...discharge, ...wrong } };
}

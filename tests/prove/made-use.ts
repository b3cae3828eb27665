/** How the units of a made day fall on its half-hours. */
import type { Chance } from './chance.ts';
import type { MadeHome, MadeRecord } from './made-home.ts';

const SLOTS = 48;

export interface DayShape {
  readonly setback: boolean;
  /** Hours at which the machine is kept off. */
  readonly keepsFree: readonly [number, number] | null;
  readonly waterHours: readonly number[];
}

interface MachineDay {
  readonly home: MadeHome;
  readonly record: MadeRecord;
  readonly shape: DayShape;
  /** Units that an on-off machine still owes from the day before, kWh. */
  readonly owed: number;
  readonly chance: Chance;
}

/** Adds rooms, hot water and standby of one day to the machine's half-hours; answers what is still owed at midnight. */
export function addMachineDay(kWh: Float64Array, day: number, made: MachineDay): number {
  const { home, record, shape, chance } = made;
  const first = day * SLOTS;
  for (let i = 0; i < SLOTS; i++) kWh[first + i]! += (home.standbyKW / 2) * chance.uniform(0.85, 1.15);
  // The machine heats the cylinder or the rooms, never both at once.
  const water = new Float64Array(SLOTS);
  const each = record.waterUnits[day]! / shape.waterHours.length;
  for (const hour of shape.waterHours) addWaterCycle(water, each, hour + chance.normal(0, 0.2), home, chance);
  const weights = roomWeights(shape, chance).map((weight, i) => (water[i]! > 0 ? weight * 0.15 : weight));
  const units = record.spaceUnits[day]!;
  for (let i = 0; i < SLOTS; i++) kWh[first + i]! += water[i]!;
  if (home.onOff) {
    const powerKW = (home.lossWPerK * 22) / 1000 / home.spaceFactor;
    return addOnOff(kWh, first, { units, weights, powerKW, owed: made.owed }, chance);
  }
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  for (let i = 0; i < SLOTS; i++) kWh[first + i]! += (units * weights[i]!) / total;
  return 0;
}

function roomWeights({ setback, keepsFree }: DayShape, chance: Chance): Float64Array {
  return Float64Array.from({ length: SLOTS }, (_, i) => {
    const hour = i / 2;
    if (keepsFree && hour >= keepsFree[0] && hour < keepsFree[1]) return 0;
    const noise = chance.uniform(0.85, 1.15);
    if (setback) return noise * (hour < 5 || hour >= 22.5 ? 0.15 : hour < 8 ? 2.2 : 1);
    return noise * (1 + 0.12 * Math.cos(((hour - 5) / 12) * Math.PI));
  });
}

interface OnOffDay {
  readonly units: number;
  readonly weights: Float64Array;
  readonly powerKW: number;
  readonly owed: number;
}

/** A compressor that is on or off: an hour and a half at a time, its power a little different from day to day. */
function addOnOff(kWh: Float64Array, first: number, day: OnOffDay, chance: Chance): number {
  const total = day.weights.reduce((sum, weight) => sum + weight, 0);
  const run = 3;
  const whole = (day.powerKW * chance.normal(1, 0.03) * run) / 2;
  let owed = day.owed;
  for (let i = 0; i < SLOTS; i += run) {
    for (let k = i; k < i + run; k++) owed += (day.units * day.weights[k]!) / total;
    if (owed < whole || day.weights[i]! < 0.01) continue;
    for (let k = i; k < i + run; k++) kWh[first + k]! += (whole / run) * chance.uniform(0.97, 1.03);
    owed -= whole;
  }
  return owed;
}

/** The cylinder is heated: the power rises as its water gets hot. */
function addWaterCycle(kWh: Float64Array, units: number, hour: number, home: MadeHome, chance: Chance): void {
  const powerKW = ((home.lossWPerK * 22) / 1000 / home.waterFactor) * chance.normal(1, 0.04);
  const hours = units / powerKW;
  spread(kWh, 0, hour, hours, (through) => powerKW * (0.85 + 0.3 * through));
}

/** A resistance or a charger: one power, the mains' voltage apart. */
export function addEvenLoad(
  kWh: Float64Array,
  day: number,
  load: { readonly kW: number; readonly hour: number; readonly hours: number },
  chance: Chance,
): void {
  const powerKW = load.kW * chance.normal(1, 0.008);
  spread(kWh, day * SLOTS, load.hour, load.hours, () => powerKW);
}

function spread(
  kWh: Float64Array,
  first: number,
  hour: number,
  hours: number,
  powerAt: (through: number) => number,
): void {
  const end = hour + hours;
  for (let slot = Math.floor(hour * 2); slot / 2 < end; slot++) {
    const on = Math.min(end, (slot + 1) / 2) - Math.max(hour, slot / 2);
    const place = first + slot;
    if (place >= 0 && place < kWh.length) kWh[place]! += Math.max(0, on) * powerAt((slot / 2 - hour) / hours);
  }
}

interface Appliances {
  readonly kWh: number;
  readonly month: number;
  /** Share that runs all the time. */
  readonly shape: number;
  readonly oven: number;
  readonly shower: boolean;
}

/** Lights, kitchen, laundry: what runs always, a morning, an evening, and appliances of even power for a while. */
export function addAppliances(kWh: Float64Array, day: number, made: Appliances, chance: Chance): void {
  const first = day * SLOTS;
  const dark = 1 + 0.2 * Math.cos((made.month / 6) * Math.PI);
  const mean = (made.kWh / SLOTS) * dark * chance.normal(1, 0.12);
  for (let i = 0; i < SLOTS; i++) {
    const hour = i / 2;
    const busy = 0.9 * bump(hour, 7.5, 1.3) + 0.4 * bump(hour, 13, 2.5) + 1.7 * bump(hour, 18.7, 2);
    kWh[first + i]! += mean * (made.shape + busy * (0.4 + 1.2 * chance.random()) * 0.9);
  }
  if (chance.yes(made.oven)) addRun(kWh, day, 2.1, chance.uniform(17, 18.5), chance.uniform(0.5, 1.2), chance);
  if (chance.yes(0.5)) addRun(kWh, day, 2, chance.uniform(8, 20), 0.4, chance);
  if (chance.yes(0.4)) addRun(kWh, day, 1.9, chance.uniform(19, 22), 0.5, chance);
  if (chance.yes(0.25)) addRun(kWh, day, 2.3, chance.uniform(9, 20), chance.uniform(0.7, 1.3), chance);
  if (made.shower) addRun(kWh, day, 8.5, chance.uniform(6.5, 8), 0.14, chance);
}

const addRun = (kWh: Float64Array, day: number, kW: number, hour: number, hours: number, chance: Chance) =>
  addEvenLoad(kWh, day, { kW: kW * chance.uniform(0.8, 1), hour, hours }, chance);

const bump = (hour: number, centre: number, width: number) => Math.exp(-(((hour - centre) / width) ** 2));

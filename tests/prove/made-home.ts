/** An invented home with a heat pump, half-hour by half-hour, in which every cause of its use is known. */

import { madeDays } from '../../sample-bills/made-weather.ts';
import { toDayNumber } from '../../src/model/calendar/civil.ts';
import { type Chance, chanceOf } from './chance.ts';
import { addAppliances, addEvenLoad, addMachineDay, type DayShape } from './made-use.ts';

/** What goes on in the home beyond the ordinary; days count from the first. */
export interface MadeEffects {
  readonly heater?: {
    readonly kW: number;
    readonly hours: number;
    readonly hour: number;
    readonly from: number;
    readonly days: number;
  };
  readonly vehicle?: {
    readonly kW: number;
    readonly hours: number;
    readonly hour: number;
    readonly share: number;
    readonly from: number;
  };
  readonly waterOften?: boolean;
  readonly setback?: boolean;
  readonly baseLoad?: { readonly kW: number; readonly from: number };
  readonly dearHours?: { readonly from: number };
  readonly behaviour?: { readonly from: number; readonly heatShare: number; readonly waterShare: number };
}

/** The home itself. */
export interface MadeHome {
  readonly seed: number;
  readonly regionId: number;
  readonly from: string;
  readonly to: string;
  readonly shiftK: number;
  readonly lossWPerK: number;
  readonly baseC: number;
  readonly spaceFactor: number;
  readonly waterFactor: number;
  /** Change of the factor with the outdoor temperature, share a kelvin. */
  readonly factorPerK: number;
  readonly waterHeatKWhPerDay: number;
  readonly standbyKW: number;
  readonly otherKWhPerDay: number;
  /** Fixed speed: the compressor is on or off. */
  readonly onOff: boolean;
  readonly weeklyPasteurisation: boolean;
  readonly effects: MadeEffects;
}

/** What the meters of the home have seen. Every day has 48 half-hours here; the clock changes are left to other tests. */
export interface MadeRecord {
  readonly first: number;
  readonly count: number;
  readonly outdoorC: Float64Array;
  /** kWh by half-hour: the machine's meter without heaters, heaters alone, all the rest of the house. */
  readonly machine: Float64Array;
  readonly heater: Float64Array;
  readonly rest: Float64Array;
  /** By day, kWh: heat for rooms and for hot water, and the units spent on each. */
  readonly spaceHeat: Float64Array;
  readonly waterHeat: Float64Array;
  readonly spaceUnits: Float64Array;
  readonly waterUnits: Float64Array;
}

const SLOTS = 48;

/** Factor of a machine at an outdoor temperature, `at 5 °C` being the home's own. */
export const factorAt = (home: Pick<MadeHome, 'spaceFactor' | 'factorPerK'>, outdoorC: number): number =>
  Math.max(1.2, home.spaceFactor * (1 + home.factorPerK * (outdoorC - 5)));

export function makeRecord(home: MadeHome): MadeRecord {
  const chance = chanceOf(home.seed);
  const days = madeDays(home.regionId, home.from, home.to, home.seed, home.shiftK);
  const count = days.length;
  const record: MadeRecord = {
    first: toDayNumber(home.from),
    count,
    outdoorC: Float64Array.from(days, ({ meanC }) => meanC),
    machine: new Float64Array(count * SLOTS),
    heater: new Float64Array(count * SLOTS),
    rest: new Float64Array(count * SLOTS),
    spaceHeat: new Float64Array(count),
    waterHeat: new Float64Array(count),
    spaceUnits: new Float64Array(count),
    waterUnits: new Float64Array(count),
  };
  const habits = {
    drift: 0,
    owed: 0,
    waterHour: chance.pick([2, 5, 13]) + chance.uniform(0, 1),
    pasteuriseOn: Math.floor(chance.uniform(0, 7)),
  };
  const appliances = { shape: chance.uniform(0.35, 0.6), oven: chance.uniform(0.3, 0.8), shower: chance.yes(0.4) };
  for (let day = 0; day < count; day++) {
    const shape = shapeOf(home, day, habits.waterHour);
    spendHeat(home, record, day, habits, chance);
    if (shape.waterHours.length === 0) {
      record.waterHeat[day] = 0;
      record.waterUnits[day] = 0;
    }
    habits.owed = addMachineDay(record.machine, day, { home, record, shape, owed: habits.owed, chance });
    addAppliances(
      record.rest,
      day,
      { kWh: home.otherKWhPerDay, month: monthOfYear(record.first + day), ...appliances },
      chance,
    );
    if (home.weeklyPasteurisation && (record.first + day) % 7 === habits.pasteuriseOn) {
      addEvenLoad(
        record.heater,
        day,
        { kW: 2.85, hour: 3 + chance.uniform(0, 0.4), hours: chance.uniform(1, 1.6) },
        chance,
      );
    }
    addEffects(home, record, day, chance);
  }
  return record;
}

function spendHeat(home: MadeHome, record: MadeRecord, day: number, habits: { drift: number }, chance: Chance): void {
  const { behaviour } = home.effects;
  const changed = behaviour && day >= behaviour.from ? behaviour : { heatShare: 1, waterShare: 1 };
  const outdoorC = record.outdoorC[day]!;
  habits.drift = 0.5 * habits.drift + chance.normal(0, 0.06);
  const asked = (home.lossWPerK * 24 * Math.max(0, home.baseC - outdoorC)) / 1000;
  record.spaceHeat[day] = Math.max(0, asked * (1 + habits.drift) * changed.heatShare);
  record.spaceUnits[day] = record.spaceHeat[day]! / factorAt(home, outdoorC);
  record.waterHeat[day] = Math.max(0.5, home.waterHeatKWhPerDay * chance.normal(1, 0.15)) * changed.waterShare;
  record.waterUnits[day] = record.waterHeat[day]! / home.waterFactor;
}

/** Hours at which the machine runs: setback, hours kept free, and when the cylinder is heated. */
function shapeOf({ effects }: MadeHome, day: number, waterHour: number): DayShape {
  const moved = effects.dearHours && day >= effects.dearHours.from;
  const hours = effects.waterOften
    ? [1, 6, 11, 15, 20].map((hour) => hour + (waterHour % 1))
    : [moved ? 16.5 : waterHour];
  return {
    setback: effects.setback ?? false,
    keepsFree: effects.dearHours && !moved ? [16, 19] : null,
    waterHours: hours.filter((hour) => !isHotAlready(effects.heater, day, hour)),
  };
}

/** A cylinder that the heater has just heated does not ask the machine. */
function isHotAlready(heater: MadeEffects['heater'], day: number, hour: number): boolean {
  if (!heater || day < heater.from || day >= heater.from + heater.days) return false;
  return hour > heater.hour - 1 && hour < heater.hour + heater.hours + 2;
}

function addEffects({ effects }: MadeHome, record: MadeRecord, day: number, chance: Chance): void {
  const { heater, vehicle, baseLoad } = effects;
  if (heater && day >= heater.from && day < heater.from + heater.days) {
    addEvenLoad(record.heater, day, { ...heater, hour: heater.hour + chance.uniform(-0.1, 0.1) }, chance);
  }
  if (vehicle && day >= vehicle.from && chance.yes(vehicle.share)) {
    addEvenLoad(record.rest, day, { ...vehicle, hours: vehicle.hours * chance.uniform(0.6, 1.4) }, chance);
  }
  if (baseLoad && day >= baseLoad.from) {
    for (let i = day * SLOTS; i < (day + 1) * SLOTS; i++) record.rest[i]! += baseLoad.kW / 2;
  }
}

const monthOfYear = (dayNumber: number) => new Date(dayNumber * 86_400_000).getUTCMonth();

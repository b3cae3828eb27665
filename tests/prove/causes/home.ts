/**
 * An invented home by rules of its own, none of them the model's: rooms that warm and cool with their own weight under
 * sun and people, a machine with a water temperature that follows the air, a tank that is drawn from and reheated, and
 * other use that comes and goes. Everything that costs is known half-hour by half-hour.
 */
import { type Chance, chanceOf } from '../chance.ts';
import { type MadeAir, SLOTS } from './weather.ts';

/** What goes on beyond the ordinary; days count from the first, `to` is exclusive. */
export interface Effects {
  readonly worse?: { readonly from: number; readonly share: number };
  readonly heater?: Timed & { readonly to: number };
  readonly coldHeater?: { readonly from: number; readonly kW: number; readonly belowC: number };
  readonly pasteurise?: Timed & { readonly everyDays: number };
  readonly summerHeat?: { readonly from: number; readonly kW: number };
  readonly waterOften?: boolean;
  readonly setback?: boolean;
  readonly baseLoad?: { readonly from: number; readonly kW: number };
  readonly vehicle?: Timed & { readonly share: number };
  readonly dearHours?: { readonly from: number };
  readonly warmer?: { readonly from: number; readonly kelvin: number };
  readonly moreHeat?: { readonly from: number; readonly share: number };
  readonly moreWater?: { readonly from: number; readonly share: number };
  readonly otherUse?: { readonly from: number; readonly kWhPerDay: number };
  readonly meter?: { readonly from: number; readonly share: number };
  readonly solar?: { readonly from: number; readonly peakKW: number };
  readonly empty?: { readonly from: number; readonly to: number };
}

interface Timed {
  readonly from: number;
  readonly kW: number;
  readonly hour: number;
  readonly hours: number;
}

export interface Home {
  readonly seed: number;
  readonly lossKWPerK: number;
  readonly weightKWhPerK: number;
  readonly windowM2: number;
  readonly roomC: number;
  readonly nightK: number;
  readonly cutC: number;
  readonly mostHeatKW: number;
  readonly quality: number;
  readonly curve: number;
  readonly ground: boolean;
  readonly onOff: boolean;
  readonly standbyKW: number;
  readonly people: number;
  readonly tankKWh: number;
  readonly tankLossKW: number;
  readonly tankHours: readonly number[];
  readonly waterFactor: number;
  readonly idleKW: number;
  readonly otherKWhPerDay: number;
  readonly awayEach: number;
}

/** By half-hour, kWh: the machine without heaters, electric heaters, all the rest of the house, a car, and what the sun gave; days with nobody at home. */
export interface Used {
  readonly nobody: Uint8Array;
  readonly machine: Float64Array;
  readonly heater: Float64Array;
  readonly rest: Float64Array;
  readonly car: Float64Array;
  readonly own: Float64Array;
}

export function drawHome(seed: number, chance: Chance): Home {
  const lossKWPerK = chance.uniform(0.12, 0.32);
  const tankHour = chance.pick([2, 4.5, 5.5, 12.5, 13.5]) + chance.pick([0, 0, 0.25]);
  return {
    seed,
    lossKWPerK,
    weightKWhPerK: lossKWPerK * chance.uniform(25, 90),
    windowM2: chance.uniform(1, 3.5),
    roomC: chance.uniform(19.2, 21.3),
    nightK: chance.yes(0.4) ? chance.uniform(0.3, 1) : 0,
    cutC: chance.uniform(14.5, 16.5),
    mostHeatKW: lossKWPerK * chance.uniform(22, 29),
    quality: chance.uniform(0.4, 0.52),
    curve: chance.uniform(0.55, 1.1),
    ground: chance.yes(0.25),
    onOff: chance.yes(0.3),
    standbyKW: chance.uniform(0.015, 0.07),
    people: chance.pick([1, 2, 2, 3, 4, 4]),
    tankKWh: chance.uniform(6, 10),
    tankLossKW: chance.uniform(0.04, 0.08),
    tankHours: chance.yes(0.35) ? [tankHour, (tankHour + chance.pick([9, 11, 12])) % 24] : [tankHour],
    waterFactor: chance.uniform(2.1, 3),
    idleKW: chance.uniform(0.07, 0.2),
    otherKWhPerDay: chance.uniform(3, 8),
    awayEach: chance.pick([0, 0.01, 0.015]),
  };
}

interface Day {
  readonly atHome: boolean;
  readonly empty: boolean;
  readonly roomK: number;
  readonly lively: number;
  readonly draws: Float64Array;
}

export function runHome(home: Home, air: MadeAir, effects: Effects): Used {
  const length = air.count * SLOTS;
  const used = {
    nobody: new Uint8Array(air.count),
    machine: new Float64Array(length),
    heater: new Float64Array(length),
    rest: new Float64Array(length),
    car: new Float64Array(length),
    own: new Float64Array(length),
  };
  const state = {
    roomC: home.roomC,
    tankKWh: home.tankKWh * 0.9,
    heating: false,
    owedKWh: 0,
    reheat: false,
    mildC: 10,
  };
  const spells = { away: 0, roomK: 0, lively: 1 };
  for (let day = 0; day < air.count; day++) {
    const chance = chanceOf(home.seed * 1009 + day * 7 + 3);
    const kind = kindOfDay(home, effects, day, spells, air.first + day, chance);
    used.nobody[day] = kind.atHome ? 0 : 1;
    addRest(used, home, effects, day, kind, air, chance);
    addHeat(used, home, effects, day, kind, air, state, chance);
    const { solar } = effects;
    if (solar && day >= solar.from) {
      for (let i = day * SLOTS; i < (day + 1) * SLOTS; i++) used.own[i] = (solar.peakKW * 0.85 * air.sun[i]!) / 2;
    }
  }
  return used;
}

function kindOfDay(
  home: Home,
  { empty, moreWater }: Effects,
  day: number,
  spells: { away: number; roomK: number; lively: number },
  dayNumber: number,
  chance: Chance,
): Day {
  spells.away = spells.away > 0 ? spells.away - 1 : chance.yes(home.awayEach) ? Math.floor(chance.uniform(3, 12)) : 0;
  spells.roomK = 0.8 * spells.roomK + chance.normal(0, 0.2);
  spells.lively = 1 + 0.6 * (spells.lively - 1) + chance.normal(0, 0.14);
  const isEmpty = empty !== undefined && day >= empty.from && day < empty.to;
  const atHome = spells.away === 0 && !isEmpty;
  const weekend = dayNumber % 7 >= 5;
  const draws = new Float64Array(SLOTS);
  const share = moreWater && day >= moreWater.from ? moreWater.share : 1;
  const people = home.people * share;
  for (let one = 0; one < Math.ceil(people); one++) {
    const weight = Math.min(1, people - one);
    if (chance.yes(0.8)) {
      const hour = chance.yes(0.65) ? chance.normal(weekend ? 8.8 : 7.2, 0.7) : chance.normal(20.5, 1.2);
      draws[Math.min(47, Math.max(0, Math.floor(hour * 2)))]! += weight * chance.uniform(0.9, 1.9);
    }
    for (let n = 0; n < 3; n++) draws[Math.floor(chance.uniform(14, 45))]! += weight * 0.2;
  }
  return {
    atHome,
    empty: isEmpty,
    roomK: spells.roomK,
    lively: Math.max(0.4, spells.lively) * (weekend ? 1.15 : 0.95),
    draws: atHome ? draws : new Float64Array(SLOTS),
  };
}

/** What is neither machine nor heater. */
function addRest(used: Used, home: Home, effects: Effects, day: number, kind: Day, air: MadeAir, chance: Chance) {
  const kWh = used.rest;
  const { otherUse, baseLoad, vehicle } = effects;
  const first = day * SLOTS;
  const dark = 1 + 0.22 * Math.cos((2 * Math.PI * ((air.first + day) % 365.25)) / 365.25);
  for (let i = 0; i < SLOTS; i++) {
    const fridge = chance.yes(0.4) ? 0.03 : 0;
    kWh[first + i]! += (home.idleKW * (kind.empty ? 0.6 : 1)) / 2 + fridge;
  }
  let left = home.otherKWhPerDay * dark * kind.lively;
  // What is drawn is drawn on empty days too, so that the same chance falls on the days beside them.
  while (left > 0) {
    const kWhEach = chance.pick([0.12, 0.25, 0.5, 0.8, 1.1, 1.6]);
    const kW = Math.min(2.6, kWhEach * chance.uniform(0.8, 2.2));
    const hour = chance.yes(0.55)
      ? chance.normal(18.8, 1.9)
      : chance.yes(0.5)
        ? chance.normal(8, 1.1)
        : chance.uniform(9, 22);
    if (kind.atHome) addBlock(kWh, first, kW, hour, kWhEach / kW);
    left -= kWhEach;
  }
  const more = otherUse && day >= otherUse.from ? otherUse.kWhPerDay * chance.uniform(0.6, 1.4) : 0;
  for (let i = 0; more > 0 && i < 8; i++) {
    if (kind.atHome) addBlock(kWh, first, 0.4, chance.uniform(8, 20), more / 8 / 0.4);
  }
  if (baseLoad && day >= baseLoad.from) for (let i = 0; i < SLOTS; i++) kWh[first + i]! += baseLoad.kW / 2;
  const charges = chance.yes(vehicle?.share ?? 0.5);
  const long = chance.uniform(0.6, 1.4);
  if (vehicle && day >= vehicle.from && charges && kind.atHome) {
    addBlock(used.car, first, vehicle.kW * chance.normal(1, 0.006), vehicle.hour, vehicle.hours * long);
  }
}

interface State {
  roomC: number;
  tankKWh: number;
  heating: boolean;
  owedKWh: number;
  reheat: boolean;
  /** Air of the last day, smoothed, °C. */
  mildC: number;
}

function addHeat(
  used: Used,
  home: Home,
  effects: Effects,
  day: number,
  kind: Day,
  air: MadeAir,
  state: State,
  chance: Chance,
) {
  const { worse, heater, coldHeater, pasteurise, summerHeat, warmer, moreHeat } = effects;
  const mains = chance.normal(1, 0.008);
  const lossKWPerK = home.lossKWPerK * (moreHeat && day >= moreHeat.from ? moreHeat.share : 1);
  const badly = worse && day >= worse.from ? worse.share : 1;
  const setC = kind.empty
    ? 14
    : home.roomC + kind.roomK + (warmer && day >= warmer.from ? warmer.kelvin : 0) - (kind.atHome ? 0 : 1.5);
  const moved = effects.dearHours && day >= effects.dearHours.from;
  const tankHours = moved ? [16.5] : home.tankHours;
  const heaterOn = heater !== undefined && day >= heater.from && day < heater.to;
  const hotDay =
    pasteurise !== undefined && day >= pasteurise.from && (day - pasteurise.from) % pasteurise.everyDays === 0;
  for (let i = 0; i < SLOTS; i++) {
    const place = day * SLOTS + i;
    const hour = i / 2;
    const outC = air.airC[place]!;
    state.mildC += (outC - state.mildC) / SLOTS;
    // The tank: drawn from, cooling, heated by what is there.
    const often = effects.waterOften && !kind.empty;
    state.tankKWh -= kind.draws[i]! + (home.tankLossKW + (often ? 0.12 : 0)) / 2;
    const heaterKW = heaterOn ? heater.kW * overlap(i, heater.hour, heater.hours) : 0;
    const hotKW = hotDay ? pasteurise.kW * overlap(i, pasteurise.hour, pasteurise.hours) : 0;
    const electric = (heaterKW + hotKW) * mains * 0.5;
    used.heater[place]! += electric;
    state.tankKWh = Math.min(home.tankKWh * 1.35, state.tankKWh + electric);
    const timed = tankHours.some((at) => hour >= at && hour < at + 0.5);
    if (timed && state.tankKWh < 0.86 * home.tankKWh) state.reheat = true;
    else if (state.tankKWh < (often ? 0.9 : 0.2) * home.tankKWh) state.reheat = true;
    if (kind.empty) state.reheat = false;
    state.tankKWh = Math.max(0, state.tankKWh);
    let running = (home.standbyKW * chance.uniform(0.85, 1.15)) / 2;
    let heatKWh = 0;
    if (state.reheat) {
      const full = state.tankKWh / home.tankKWh;
      const give = Math.min(home.mostHeatKW * 0.7 * 0.5, home.tankKWh - state.tankKWh + 0.05);
      state.tankKWh += give;
      state.reheat = state.tankKWh < home.tankKWh;
      const factor =
        home.waterFactor * (1.12 - 0.3 * full) * (1 + 0.008 * (outC - 8)) * (badly < 1 ? 0.5 + badly / 2 : 1);
      running += give / factor;
    } else {
      heatKWh = heatOf(home, effects, state, { hour, outC, setC, lossKWPerK, empty: kind.empty }) / 2;
      if (summerHeat && day >= summerHeat.from && state.mildC > home.cutC - 1)
        heatKWh = Math.max(heatKWh, summerHeat.kW / 2);
    }
    if (effects.dearHours && !moved && hour >= 16 && hour < 19) heatKWh = 0;
    let backup = 0;
    if (coldHeater && day >= coldHeater.from && outC < coldHeater.belowC && !state.reheat) {
      backup = Math.min(coldHeater.kW * mains * 0.5, Math.max(0, heatKWh + 0.5));
      used.heater[place]! += backup;
    }
    const byMachine = Math.max(0, heatKWh - backup * 0.25);
    running += byMachine > 0.02 ? spend(home, state, byMachine, factorAt(home, outC, badly), chance) + 0.03 : 0;
    used.machine[place]! += running;
    const gains =
      home.windowM2 * air.sun[place]! * 0.5 + (kind.atHome ? home.people * 0.08 : 0) + used.rest[place]! * 1.2;
    state.roomC += (0.5 * (gains - lossKWPerK * (state.roomC - outC)) + heatKWh + backup * 0.75) / home.weightKWhPerK;
  }
}

/** Heat for a unit at an outdoor temperature [°C], `share` of what it should be; a coil in the air takes on ice. */
function factorAt(home: Home, outC: number, share: number): number {
  const sourceC = home.ground ? 7 + 0.2 * (outC - 8) : outC;
  const flowC = Math.max(28, 27 + home.curve * (20 - outC));
  const icing = home.ground ? 1 : 1 - 0.08 * Math.exp(-(((outC - 1) / 3) ** 2));
  return share * Math.min(6, (home.quality * (flowC + 273)) / (flowC - sourceC + 9)) * icing;
}

interface Moment {
  readonly hour: number;
  readonly outC: number;
  readonly setC: number;
  readonly lossKWPerK: number;
  readonly empty: boolean;
}

/** Heat asked for, kW: by the air, put right by the room, off in mild weather. */
function heatOf(
  home: Home,
  { setback }: Effects,
  state: State,
  { hour, outC, setC, lossKWPerK, empty }: Moment,
): number {
  const night = hour < 5.5 || hour >= 22.5;
  if (state.mildC > home.cutC && outC > home.cutC - 4) return 0;
  if (setback && night && !empty && state.roomC > 14) return 0;
  const wantC = setC - (night ? home.nightK : 0);
  const byAir = lossKWPerK * (wantC - outC) * 0.85;
  const asked = byAir + (wantC - state.roomC) * lossKWPerK * (setback ? 9 : 5);
  return Math.min(home.mostHeatKW, Math.max(0, asked));
}

/** Units for heat, kWh: an on-off machine, and one at less than its least, runs by turns. */
function spend(home: Home, state: State, heatKWh: number, factor: number, chance: Chance): number {
  const least = (home.onOff ? 0.85 : 0.3) * home.mostHeatKW * 0.5;
  if (!home.onOff && heatKWh >= least) return (heatKWh / factor) * chance.uniform(0.95, 1.05);
  state.owedKWh += heatKWh;
  if (state.owedKWh < least) return 0;
  const give = Math.max(least, Math.min(state.owedKWh, home.mostHeatKW * 0.5 * 0.9));
  state.owedKWh -= give;
  return (give / factor) * chance.uniform(0.97, 1.03);
}

/** Share of a half-hour of the clock that a timed load takes. */
function overlap(slot: number, hour: number, hours: number): number {
  const one = Math.min(slot / 2 + 0.5, hour + hours) - Math.max(slot / 2, hour);
  const next = Math.min(slot / 2 + 24.5, hour + hours) - Math.max(slot / 2 + 24, hour);
  return Math.min(1, Math.max(0, one, next) * 2);
}

function addBlock(kWh: Float64Array, first: number, kW: number, hour: number, hours: number): void {
  for (let slot = Math.floor(hour * 2); slot / 2 < hour + hours; slot++) {
    const on = Math.min(hour + hours, slot / 2 + 0.5) - Math.max(hour, slot / 2);
    const place = first + slot;
    if (place >= 0 && place < kWh.length) kWh[place]! += kW * Math.max(0, on);
  }
}

/**
 * Homes by another physics than `home.ts`, so that detectors are not tried only where they were made: light air before heavy
 * walls, a room thermostat with hysteresis that switches the machine, people who come and go by shifts and weekends, baths on
 * no timetable, a tank that is heated when its sensor asks, weather of its own. One cause a home, from a day on or always.
 */
import { type Chance, chanceOf } from '../chance.ts';

export const OTHER_CAUSES = [
  'none',
  'worse',
  'heater',
  'cold heater',
  'rooms warmer',
  'more water',
  'summer heating',
  'setback',
  'base load',
  'vehicle',
  'meter wrong',
  'own generation',
  'empty',
] as const;
export type OtherCause = (typeof OTHER_CAUSES)[number];

export interface OtherHome {
  readonly days: number;
  /** Day from which the cause is there. */
  readonly from: number;
  readonly meanC: Float64Array;
  /** By half-hour, kWh. */
  readonly machine: Float64Array;
  readonly house: Float64Array;
  /** Days with nobody at home. */
  readonly nobody: Uint8Array;
}

const SLOTS = 48;
/** 1 September. */
const FIRST_OF_YEAR = 243;

export function makeOtherHome(cause: OtherCause, seed: number): OtherHome {
  const chance = chanceOf(seed * 7919 + 5);
  const days = 365;
  const from = 100 + Math.floor(chance.uniform(0, 40));
  const air = makeAir(days, chance);
  const people = makePeople(days, cause === 'empty' ? [from, from + 35] : null, chance);
  const machine = new Float64Array(days * SLOTS);
  const house = new Float64Array(days * SLOTS);
  const lossKW = chance.uniform(0.13, 0.26);
  const home = {
    lossKW,
    airKWhPerK: lossKW * 6,
    wallKWhPerK: lossKW * chance.uniform(30, 80),
    betweenKW: lossKW * chance.uniform(5, 9),
    mostKW: lossKW * 24,
    setC: chance.uniform(19.5, 21),
    standbyKW: chance.uniform(0.01, 0.04),
    idleKW: chance.uniform(0.06, 0.25),
    tankKWh: chance.uniform(6, 11),
    bathKWh: chance.uniform(2.5, 4),
    quality: chance.uniform(0.38, 0.5),
    heaterHour: chance.uniform(0, 22),
    heaterHours: chance.uniform(1.5, 2.5),
    carHour: chance.pick([0.5, 18.5]),
  };
  const state = { airC: home.setC, wallC: home.setC, on: false, fullKWh: home.tankKWh, reheat: false, carKWh: 0 };
  for (let i = 0; i < days * SLOTS; i++) {
    const [day, hour] = [Math.floor(i / SLOTS), (i % SLOTS) / 2];
    const since = day >= from;
    const is = (one: OtherCause) => cause === one && since;
    const here = people.atHome[i]!;
    const outC = air.outC[i]!;
    const events = appliances(here, hour, chance);
    const baths =
      here * (chance.yes(0.02 + (hour > 6 && hour < 9 ? 0.05 : 0)) ? home.bathKWh : chance.yes(0.1) ? 0.25 : 0);
    state.fullKWh -= Math.min(state.fullKWh, baths * (is('more water') ? 2.2 : 1) + 0.03);
    // Heat for the tank by its sensor; heat for the rooms by the thermostat, never both at once.
    if (state.fullKWh < 0.45 * home.tankKWh && people.lived[day]!) state.reheat = true;
    const flowC = state.reheat ? 52 : 30 + 0.8 * Math.max(0, 18 - outC);
    const factor = Math.max(1.3, (home.quality * (flowC + 273)) / (flowC - outC + 10)) * (is('worse') ? 0.78 : 1);
    let spentKWh = home.standbyKW / 2;
    let heaterKWh = 0;
    let warmthKWh = 0;
    if (is('heater') && hour + 0.5 > home.heaterHour && hour < home.heaterHour + home.heaterHours) {
      const share = Math.min(0.5, hour + 0.5 - home.heaterHour, home.heaterHour + home.heaterHours - hour);
      heaterKWh = 2.9 * chance.normal(1, 0.008) * share;
      state.fullKWh = Math.min(1.3 * home.tankKWh, state.fullKWh + heaterKWh);
    }
    if (state.reheat) {
      const give = Math.min(0.35 * home.mostKW, home.tankKWh - state.fullKWh + 0.05);
      state.fullKWh += give;
      spentKWh += give / factor;
      state.reheat = state.fullKWh < home.tankKWh;
    } else {
      const night = hour < 6 || hour >= 22;
      const wantC = !people.lived[day]!
        ? 12
        : home.setC + (is('rooms warmer') ? 2 : 0) - (cause === 'setback' && night ? 4 : 0);
      if (state.airC < wantC - 0.3) state.on = true;
      if (state.airC > wantC + 0.3) state.on = false;
      const summer = cause === 'summer heating' && outC > 10 && chance.yes(0.5);
      if ((state.on && air.meanC[day]! < 15.5) || summer) {
        const power = summer && !state.on ? 0.25 : 0.4 + 0.6 * Math.min(1, Math.max(0, (wantC + 1 - state.airC) / 1.5));
        warmthKWh = (home.mostKW * power) / 2;
        spentKWh += warmthKWh / factor + 0.02;
        if (cause === 'cold heater' && outC < 1) heaterKWh += 1.5;
      }
    }
    machine[i] = spentKWh + heaterKWh;
    const carKW = cause === 'vehicle' && since ? car(state, home.carHour, hour, here, chance) : 0;
    const restKWh = home.idleKW / 2 + events + carKW / 2 + (is('base load') ? 0.11 : 0);
    const gainKW = air.sun[i]! * 2 + here * 0.1 + restKWh * 1.5;
    const toWallKW = home.betweenKW * (state.airC - state.wallC);
    state.airC +=
      (warmthKWh +
        (cause === 'cold heater' ? heaterKWh : 0) +
        (gainKW - toWallKW - 0.5 * home.lossKW * (state.airC - outC)) / 2) /
      home.airKWhPerK;
    state.wallC += (toWallKW - 0.5 * home.lossKW * (state.wallC - outC)) / 2 / home.wallKWhPerK;
    const sunKWh = cause === 'own generation' ? air.sun[i]! * 1.7 : 0;
    const count = is('meter wrong') ? 2 : 1;
    machine[i]! *= count;
    house[i] = Math.max(machine[i]! + restKWh * count - sunKWh, sunKWh > 0 ? 0.01 : 0);
  }
  return { days, from, meanC: air.meanC, machine, house, nobody: people.lived.map((lived) => 1 - lived) };
}

/** A year from September: slow swings of days, clear and dull ones, warm afternoons. */
function makeAir(days: number, chance: Chance) {
  const outC = new Float64Array(days * SLOTS);
  const sun = new Float64Array(days * SLOTS);
  const meanC = new Float64Array(days);
  let [drift, clear] = [0, 0.5];
  for (let day = 0; day < days; day++) {
    const ofYear = (2 * Math.PI * (FIRST_OF_YEAR + day - 20)) / 365;
    drift = 0.82 * drift + chance.normal(0, 1.6);
    clear = Math.min(1, Math.max(0.05, 0.6 * clear + 0.4 * chance.uniform(-0.1, 1.1)));
    meanC[day] = 10.2 - 6 * Math.cos(ofYear) + drift;
    const half = 6 - 2.2 * Math.cos(ofYear);
    for (let i = 0; i < SLOTS; i++) {
      const fromNoon = i / 2 - 12.3;
      outC[day * SLOTS + i] = meanC[day]! + (1 + 3 * clear) * Math.cos((2 * Math.PI * (i / 2 - 15)) / 24);
      const high = Math.abs(fromNoon) < half ? Math.cos((Math.PI * fromNoon) / (2 * half)) : 0;
      sun[day * SLOTS + i] = high * (0.25 + 0.75 * clear) * (0.35 - 0.2 * Math.cos(ofYear)) * 1.6;
    }
  }
  return { outC, sun, meanC };
}

/** Who is at home by half-hour: shifts, evenings out, a holiday of ten days. */
function makePeople(days: number, empty: readonly [number, number] | null, chance: Chance) {
  const count = chance.pick([1, 2, 2, 3, 4]);
  const home = new Float64Array(days * SLOTS);
  const holiday = Math.floor(chance.uniform(20, days - 20));
  const lived = Uint8Array.from({ length: days }, (_, day) =>
    (day >= holiday && day < holiday + 10) || (empty && day >= empty[0] && day < empty[1]) ? 0 : 1,
  );
  for (let one = 0; one < count; one++) {
    const leaves = chance.pick([0, 7, 7.5, 8.5, 13]);
    const away = leaves === 0 ? 0 : chance.uniform(5, 10);
    for (let day = 0; day < days; day++) {
      const stays = chance.yes(day % 7 >= 5 ? 0.8 : 0.15);
      for (let i = 0; i < SLOTS; i++) {
        const out = !stays && i / 2 >= leaves && i / 2 < leaves + away;
        home[day * SLOTS + i]! += lived[day]! && !out ? 1 : 0;
      }
    }
  }
  return { atHome: home, lived };
}

/** Kettles, ovens, washing: more of them with people who are awake, each of its own size, kWh in a half-hour. */
function appliances(here: number, hour: number, chance: Chance): number {
  if (here === 0) return 0;
  const awake = hour >= 7 && hour < 23 ? 1 : 0.06;
  let kWh = here * awake * 0.03;
  if (chance.yes(awake * (hour >= 17 && hour < 20 ? 0.4 : 0.14))) kWh += Math.exp(chance.normal(-1.6, 0.6));
  return kWh;
}

/** A charger at a socket that is plugged in about every other day, kW. */
function car(state: { carKWh: number }, from: number, hour: number, here: number, chance: Chance): number {
  if (hour === from && here > 0 && chance.yes(0.5)) state.carKWh = chance.uniform(6, 14);
  const kW = state.carKWh > 0 ? Math.min(2.3, state.carKWh * 2) : 0;
  state.carKWh -= kW / 2;
  return kW;
}

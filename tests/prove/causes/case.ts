/** One invented home with one cause or two, as its meters show it, and what the causes truly cost. */
import { toCivilDate, toDayNumber } from '../../../src/model/calendar/civil.ts';
import type { FindingsInput } from '../../../src/model/findings/find-in-readings.ts';
import type { MeterReadings } from '../../../src/model/findings/meter-days.ts';
import type { EvidencePeriod } from '../../../src/model/shapes/evidence.ts';
import type { TariffVersion } from '../../../src/model/shapes/tariff.ts';
import { type Chance, chanceOf } from '../chance.ts';
import { drawHome, type Effects, type Home, runHome, type Used } from './home.ts';
import { type MadeAir, makeAir, SLOTS } from './weather.ts';

const CROSSINGS = ['plain', 'solar', 'car', 'gap', 'new meter', 'empty'] as const;
type Crossing = (typeof CROSSINGS)[number];

export interface Drawn {
  readonly days: number;
  readonly home: Home;
  readonly dayMeanC: Float64Array;
  readonly chance: Chance;
}

/** Every cause that is put into a home; `bill` ones touch no reading. */
export const TRUTHS = {
  worse: (d) => ({ worse: { from: fromOf(d), share: d.chance.uniform(0.75, 0.82) } }),
  heater: (d) => ({ heater: timed(d, d.chance.uniform(0, 22), d.chance.uniform(1.5, 3)) }),
  'heater beside the reheat': (d) => ({ heater: timed(d, besideReheat(d), d.chance.pick([1.5, 2, 2])) }),
  'heater in the cold': (d) => ({
    coldHeater: { from: 0, kW: d.chance.uniform(2.75, 3.05), belowC: d.chance.uniform(0.5, 2.5) },
  }),
  'weekly pasteurisation': (d) => ({
    pasteurise: { ...hot(d), everyDays: 7, from: Math.floor(d.chance.uniform(0, 7)) },
  }),
  'daily pasteurisation': (d) => ({ pasteurise: { ...hot(d), everyDays: 1, from: d.chance.yes(0.5) ? 0 : fromOf(d) } }),
  'summer heating': (d) => ({ summerHeat: { from: 0, kW: d.chance.uniform(1, 2.2) } }),
  'water often': () => ({ waterOften: true }),
  setback: () => ({ setback: true }),
  'base load': (d) => ({ baseLoad: { from: fromOf(d), kW: d.chance.uniform(0.12, 0.3) } }),
  'dear hours': (d) => ({ dearHours: { from: fromOf(d) } }),
  'rooms warmer': (d) => ({ warmer: { from: fromOf(d), kelvin: d.chance.uniform(1.7, 2.5) } }),
  'more heat': (d) => ({ moreHeat: { from: fromOf(d), share: d.chance.uniform(1.2, 1.35) } }),
  'more water': (d) => ({ moreWater: { from: fromOf(d), share: d.chance.uniform(1.7, 2.4) } }),
  'other use': (d) => ({ otherUse: { from: fromOf(d), kWhPerDay: d.chance.uniform(3, 5) } }),
  vehicle: (d) => ({ vehicle: { ...charger(d), from: fromOf(d) } }),
  'meter wrong': (d) => ({ meter: { from: fromOf(d), share: d.chance.pick([2, 2, 1.5, 0.5]) } }),
  'own generation': (d) => ({ solar: { from: d.chance.yes(0.6) ? 0 : fromOf(d), peakKW: d.chance.uniform(2, 5) } }),
  'newly occupied': (d) => ({ empty: { from: 0, to: fromOf(d) } }),
  'reading carried over': () => ({}),
  none: () => ({}),
} as const satisfies Readonly<Record<string, (drawn: Drawn) => Effects>>;
export type Truth = keyof typeof TRUTHS;

/** Pairs that one meter confuses. */
export const PAIRS: readonly (readonly [Truth, Truth])[] = [
  ['worse', 'rooms warmer'],
  ['worse', 'heater'],
  ['worse', 'heater in the cold'],
  ['worse', 'own generation'],
  ['worse', 'newly occupied'],
  ['worse', 'base load'],
  ['more heat', 'meter wrong'],
  ['more heat', 'daily pasteurisation'],
  ['heater', 'more water'],
  ['heater', 'weekly pasteurisation'],
  ['heater beside the reheat', 'rooms warmer'],
  ['heater', 'setback'],
  ['heater', 'vehicle'],
  ['daily pasteurisation', 'more water'],
  ['daily pasteurisation', 'vehicle'],
  ['summer heating', 'more water'],
  ['summer heating', 'base load'],
  ['base load', 'other use'],
  ['water often', 'more water'],
  ['own generation', 'other use'],
  ['heater in the cold', 'setback'],
];

/** A day on which something begins: with days as cold before it as after. */
function fromOf({ days, dayMeanC, chance }: Drawn): number {
  const cold = Array.from({ length: days }, (_, day) => day).filter((day) => dayMeanC[day]! < 9);
  const share = cold.length > 60 ? cold[Math.floor(chance.uniform(0.3, 0.65) * cold.length)]! : Math.floor(days * 0.5);
  return Math.min(days - 50, Math.max(50, share));
}

function timed(drawn: Drawn, hour: number, hours: number) {
  const from = fromOf(drawn);
  const to = drawn.chance.yes(0.5) ? drawn.days : Math.min(drawn.days, from + Math.floor(drawn.chance.uniform(30, 90)));
  return { from, to, kW: drawn.chance.uniform(2.75, 3.05), hour, hours };
}

const besideReheat = ({ home, chance }: Drawn) => home.tankHours[0]! + chance.pick([0.5, 1, 1.5]);
const hot = ({ chance }: Drawn) => ({
  kW: chance.uniform(2.75, 3.05),
  hour: 3 + chance.uniform(0, 1),
  hours: chance.uniform(0.7, 1.2),
});
const charger = ({ chance }: Drawn) => ({
  kW: chance.pick([2.3, 3.6, 7.2]),
  hours: chance.uniform(3, 5.5),
  hour: chance.pick([0.5, 1, 18.5, 22]),
  share: chance.uniform(0.3, 0.8),
});

/** What the crossings add to a home, and what of it may be named besides the cause. */
const CROSSED: Readonly<Partial<Record<Crossing, (drawn: Drawn) => Effects>>> = {
  solar: ({ chance }) => ({ solar: { from: 0, peakKW: chance.uniform(2, 5) } }),
  car: (drawn) => ({ vehicle: { ...charger(drawn), from: 0 } }),
  empty: ({ days, chance }) => {
    const from = Math.floor(chance.uniform(60, days - 110));
    return { empty: { from, to: from + Math.floor(chance.uniform(21, 42)) } };
  },
};

/** What one meter shows, and the true cost of the causes on its days [pence]. */
export interface Shown {
  readonly input: FindingsInput;
  readonly pence: () => number;
}

export interface CauseCase {
  readonly truths: readonly Truth[];
  readonly crossing: Crossing;
  /** By meter; the two ways of having the house's meter see the same readings. */
  readonly machine: Shown;
  readonly house: Shown;
  readonly home: Home;
  readonly effects: Effects;
  readonly air: MadeAir;
  /** Days with nobody at home, whether they are the cause or holidays. */
  readonly nobody: Uint8Array;
  readonly dayOf: (date: string) => number;
}

const PENCE = 27;
const PEAK_PENCE = 42;
const REST_PENCE = 24;
const MEAN_PENCE = (3 * PEAK_PENCE + 21 * REST_PENCE) / 24;
const CARRIED_KWH = 450;
const version: TariffVersion = {
  from: '2023-01-01',
  standingPencePerDay: 50,
  vat: { rate: 0.05, included: true },
  bands: [
    { name: 'peak', pencePerKWh: PEAK_PENCE, times: [{ from: '16:00', to: '19:00' }] },
    { name: 'rest', pencePerKWh: REST_PENCE, times: 'rest' },
  ],
};

export function drawCauseCase(truths: readonly Truth[], seed: number): CauseCase {
  const chance = chanceOf(seed * 31 + 11);
  const days = Math.floor(chance.uniform(300, 366));
  const start = toDayNumber('2024-07-15') + Math.floor(chance.uniform(0, 120));
  const air = makeAir(chance.pick([1, 4, 6, 7, 9, 13]), toCivilDate(start), toCivilDate(start + days), seed, chance);
  const home = drawHome(seed, chance);
  const drawn = { days, home, dayMeanC: air.dayMeanC, chance };
  const crossing = CROSSINGS[seed % CROSSINGS.length]!;
  const beside = CROSSED[crossing]?.(drawn) ?? {};
  const effects: Effects = Object.assign({}, beside, ...truths.map((truth) => TRUTHS[truth](drawn)));
  const used = runHome(home, air, effects);
  // A home that people have moved into is held against one that stayed empty; hours that are used since, against hours kept free.
  const without: Effects = {
    ...beside,
    ...(truths.includes('newly occupied') ? { empty: { from: 0, to: days } } : {}),
    ...(truths.includes('dear hours') ? { dearHours: { from: days } } : {}),
  };
  // Half of the time of making a home, and only what is named rightly asks for it.
  let ran: Used | undefined;
  const plain = () => (ran ??= runHome(home, air, without));
  const missing = missingDays(crossing, days, chance);
  const minutes = chance.yes(0.8) ? 30 : 60;
  const coarse = chance.yes(0.25) ? 100 : 1000;
  const offsetK = chance.normal(0, 0.4);
  const outdoor = {
    first: toCivilDate(start),
    values: Array.from(air.dayMeanC, (meanC) => meanC + offsetK + chance.normal(0, 0.4)),
  };
  const isDear = truths.includes('dear hours');
  const isCarried = truths.includes('reading carried over');
  const show = (meter: MeterReadings['meter']): Shown => {
    const kWh = countedBy(meter, used, effects);
    const pence = () => {
      const otherwise = countedBy(meter, plain(), beside);
      let sum = isCarried ? CARRIED_KWH * PENCE : 0;
      for (let i = 0; i < kWh.length; i++) {
        const hour = (i % SLOTS) / 2;
        // Hours cost what lies beyond the plain mean; that the rooms are warmer without the pause is units, and told as such.
        const price = !isDear ? PENCE : (hour >= 16 && hour < 19 ? PEAK_PENCE : REST_PENCE) - MEAN_PENCE;
        if (!missing(Math.floor(i / SLOTS))) sum += (kWh[i]! - otherwise[i]!) * price;
      }
      return sum;
    };
    return {
      pence,
      input: {
        readings: [readingsOf(kWh, { meter, start, minutes, coarse, missing })],
        outdoor,
        prices: { pencePerKWh: PENCE, versions: isDear ? [version] : [] },
        periods: billsOf(kWh, start, isCarried, seed),
      },
    };
  };
  const dayOf = (date: string) => toDayNumber(date) - start;
  return {
    truths,
    crossing,
    machine: show('heat-pump'),
    house: show('whole-house'),
    home,
    effects,
    air,
    nobody: used.nobody,
    dayOf,
  };
}

/** The machine's meter has the heaters; the house's has all, less what the sun gives, and never runs backwards. */
function countedBy(of: MeterReadings['meter'], used: Used, { meter }: Effects): Float64Array {
  return used.machine.map((kWh, i) => {
    const share = meter && i >= meter.from * SLOTS ? meter.share : 1;
    const ofMachine = kWh + used.heater[i]!;
    if (of === 'heat-pump') return ofMachine * share;
    const house = ofMachine + used.rest[i]! + used.car[i]!;
    // Clouds and kettles change within the half-hour: a little is bought even when the sun gives enough.
    return (used.own[i]! > 0 ? Math.max(house - used.own[i]!, 0.02 * house) : house) * share;
  });
}

function missingDays(crossing: Crossing, days: number, chance: Chance): (day: number) => boolean {
  const first = Math.floor(chance.uniform(0.2, 0.8) * (days - 45));
  const count = crossing === 'gap' ? Math.floor(chance.uniform(20, 45)) : crossing === 'new meter' ? 3 : 0;
  return (day) => day >= first && day < first + count;
}

interface Read {
  readonly meter: MeterReadings['meter'];
  readonly start: number;
  readonly minutes: number;
  /** Steps of the register in a kWh. */
  readonly coarse: number;
  readonly missing: (day: number) => boolean;
}

function readingsOf(kWh: Float64Array, { meter, start, minutes, coarse, missing }: Read): MeterReadings {
  const each = minutes / 30;
  let before = 0;
  let sum = 0;
  const values: number[] = [];
  for (let i = 0; i < kWh.length; i += each) {
    for (let k = 0; k < each; k++) sum += kWh[i + k]!;
    const now = Math.floor(sum * coarse) / coarse;
    values.push(Math.round((now - before) * 1000) / 1000);
    before = now;
  }
  const perDay = SLOTS / each;
  return {
    meter,
    intervalMinutes: minutes,
    days: Array.from({ length: values.length / perDay }, (_, day) => day)
      .filter((day) => !missing(day))
      .map((day) => ({ date: toCivilDate(start + day), values: values.slice(day * perDay, (day + 1) * perDay) })),
  };
}

/** Bills of four weeks, marked as read; one of them with units that the meter had not counted. */
function billsOf(kWh: Float64Array, start: number, carried: boolean, seed: number): EvidencePeriod[] {
  const length = 28;
  const count = Math.floor(kWh.length / SLOTS / length);
  const wrong = 1 + (seed % (count - 2));
  return Array.from({ length: count }, (_, i) => ({
    from: toCivilDate(start + i * length),
    to: toCivilDate(start + (i + 1) * length),
    kWh: Math.round(sumDays(kWh, i * length, (i + 1) * length)) + (carried && i === wrong ? CARRIED_KWH : 0),
    quality: 'actual' as const,
  }));
}

function sumDays(kWh: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from * SLOTS; i < to * SLOTS; i++) sum += kWh[i]!;
  return sum;
}

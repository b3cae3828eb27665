/** A made household as the detectors meet it: some meters, a thermometer that is a little off, bills by the month. */
import { toCivilDate, toDayNumber } from '../../src/model/calendar/civil.ts';
import type { FindingsInput } from '../../src/model/findings/find-in-readings.ts';
import type { MeterReadings } from '../../src/model/findings/meter-days.ts';
import { registersOf, type TwoRegisters } from '../../src/model/findings/two-registers.ts';
import type { EvidencePeriod, Series } from '../../src/model/shapes/evidence.ts';
import type { TariffVersion } from '../../src/model/shapes/tariff.ts';
import { type Chance, chanceOf } from './chance.ts';
import { type MadeEffects, type MadeHome, type MadeRecord, makeRecord } from './made-home.ts';

export interface MadeCase {
  readonly home: MadeHome;
  readonly record: MadeRecord;
  readonly meters: readonly ('machine' | 'house')[];
  /** Whether the heater hangs on the machine's meter. */
  readonly heaterOnMachine: boolean;
  readonly minutes: number;
  readonly warmDays: number;
  readonly coldDays: number;
  readonly wrongEstimate: boolean;
  readonly swapped: boolean;
  readonly prices: 'two' | 'three' | 'dated' | 'changed';
  readonly input: FindingsInput;
  readonly dayOf: (date: string) => number;
}

const SLOTS = 48;
const vat = { rate: 0.05, included: true };
const THREE_PRICES: TariffVersion = {
  from: '2024-01-01',
  standingPencePerDay: 50,
  vat,
  bands: [
    { name: 'peak', pencePerKWh: 42, times: [{ from: '16:00', to: '19:00' }] },
    { name: 'night', pencePerKWh: 17, times: [{ from: '00:00', to: '05:00' }] },
    { name: 'day', pencePerKWh: 28, times: 'rest' },
  ],
};
const TWO_PRICES: TariffVersion = {
  from: '2024-01-01',
  standingPencePerDay: 50,
  vat,
  bands: [
    { name: 'night', pencePerKWh: 16, times: [{ from: '00:30', to: '07:30' }] },
    { name: 'day', pencePerKWh: 32, times: 'rest' },
  ],
};

/** Every half-hour at a price of its own: dear from 16:00 to 19:00 and in winter, with days that are dear or cheap all day. */
function datedPrices(first: number, days: number, seed: number): TariffVersion {
  const chance = chanceOf(seed + 29);
  const ofDay = (day: number) => {
    const level = 21 + 5 * Math.cos((2 * Math.PI * (first + day)) / 365.25) + chance.normal(0, 4);
    return Array.from({ length: SLOTS }, (_, half) => {
      const byClock = half < 10 ? -6 : half >= 32 && half < 38 ? 13 : 0;
      return Math.round(100 * (level + byClock + chance.normal(0, 1.5))) / 100;
    });
  };
  const series = Array.from({ length: days }, (_, day) => ({
    date: toCivilDate(first + day),
    pencePerKWh: ofDay(day),
  }));
  return { ...THREE_PRICES, series: { zone: 'Etc/UTC', days: series } };
}

/** The same hours at other prices from the middle on. */
const changedPrices = (first: number, days: number): TariffVersion[] => [
  THREE_PRICES,
  {
    ...THREE_PRICES,
    from: toCivilDate(first + Math.floor(days / 2)),
    bands: THREE_PRICES.bands.map((band, i) => ({ ...band, pencePerKWh: [52, 15, 31][i]! })),
  },
];

/** A home drawn by chance: no effects unless they are given. */
export function drawHome(seed: number, chance: Chance, effects: MadeEffects, days = 365): MadeHome {
  const start = toDayNumber('2024-09-01') + Math.floor(chance.uniform(0, 240));
  return {
    seed,
    regionId: chance.pick([1, 4, 6, 7, 9, 13]),
    from: toCivilDate(start),
    to: toCivilDate(start + days),
    shiftK: chance.normal(0, 0.7),
    lossWPerK: chance.uniform(120, 330),
    baseC: chance.uniform(14.2, 16.8),
    spaceFactor: chance.uniform(2.6, 4.3),
    waterFactor: chance.uniform(2, 3),
    factorPerK: chance.uniform(0.004, 0.018),
    waterHeatKWhPerDay: chance.uniform(4, 11),
    standbyKW: chance.uniform(0.02, 0.07),
    otherKWhPerDay: chance.uniform(5, 12),
    onOff: chance.yes(0.3),
    weeklyPasteurisation: chance.yes(0.4),
    effects,
  };
}

/** Each effect with a chance of 3 in 10, its size and day drawn as well. */
function drawEffects(chance: Chance, days: number): MadeEffects {
  const at = (draw: () => object) => (chance.yes(0.3) ? draw() : undefined);
  const from = () => Math.floor(chance.uniform(45, days - 60));
  const drawn = {
    heater: at(() => ({
      kW: chance.uniform(2.7, 3.05),
      hours: chance.uniform(1.2, 3.5),
      hour: chance.uniform(0, 21),
      from: Math.floor(chance.uniform(10, days - 80)),
      days: Math.floor(chance.uniform(21, 70)),
    })),
    vehicle: at(() => ({
      kW: chance.pick([2.3, 3.6, 7.2]),
      hours: chance.uniform(3.5, 6),
      hour: chance.pick([0.5, 1, 18, 22]),
      share: chance.uniform(0.25, 0.8),
      from: chance.yes(0.5) ? 0 : from(),
    })),
    baseLoad: at(() => ({ kW: chance.uniform(0.1, 0.3), from: from() })),
    dearHours: at(() => ({ from: from() })),
    behaviour: at(() => ({
      from: from(),
      heatShare: chance.uniform(1.2, 1.5),
      waterShare: chance.uniform(1, 1.6),
    })),
    waterOften: chance.yes(0.3),
    setback: chance.yes(0.3),
  };
  return Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)) as MadeEffects;
}

export function drawCase(seed: number): MadeCase {
  const chance = chanceOf(seed + 17);
  const days = Math.floor(chance.uniform(200, 366));
  const home = drawHome(seed, chance, drawEffects(chance, days), days);
  const record = makeRecord(home);
  const meters = chance.pick([['machine'], ['house'], ['machine', 'house'], ['machine', 'house']] as const);
  const heaterOnMachine = chance.yes(0.75);
  const minutes = chance.pick([30, 30, 30, 60]);
  const offsetK = chance.normal(0, 0.4);
  const thermometer = Array.from(record.outdoorC, (outdoorC) => outdoorC + offsetK + chance.normal(0, 0.4));
  const house = record.rest.map((kWh, i) => kWh + record.machine[i]! + record.heater[i]!);
  const machine = record.machine.map((kWh, i) => kWh + (heaterOnMachine ? record.heater[i]! : 0));
  const wrongEstimate = chance.yes(0.4);
  const swapped = chance.yes(0.3);
  const twoPrices = chance.yes(0.5) && home.effects.dearHours === undefined;
  const { first } = record;
  const prices = twoPrices ? 'two' : seed % 4 === 0 ? 'dated' : seed % 4 === 1 ? 'changed' : 'three';
  const versions = {
    two: () => [TWO_PRICES],
    three: () => [THREE_PRICES],
    dated: () => [datedPrices(first, days, seed)],
    changed: () => changedPrices(first, days),
  }[prices]();
  return {
    home,
    record,
    meters,
    heaterOnMachine,
    minutes,
    warmDays: thermometer.filter((outdoorC) => outdoorC >= 16.5).length,
    coldDays: thermometer.filter((outdoorC) => outdoorC < 9).length,
    wrongEstimate,
    swapped: swapped && twoPrices,
    prices,
    dayOf: (date) => toDayNumber(date) - first,
    input: {
      readings: [
        ...(meters.some((meter) => meter === 'machine') ? [readingsOf('heat-pump', machine, first, minutes)] : []),
        ...(meters.some((meter) => meter === 'house') ? [readingsOf('whole-house', house, first, minutes)] : []),
      ],
      outdoor: { first: toCivilDate(first), values: thermometer },
      prices: { pencePerKWh: 27, versions },
      periods: billsOf(record, house, wrongEstimate, chance),
      ...(twoPrices ? { registers: twoRegisters(record, house, swapped) } : {}),
    },
  };
}

function readingsOf(meter: MeterReadings['meter'], kWh: Float64Array, first: number, minutes: number): MeterReadings {
  const count = kWh.length / SLOTS;
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return {
    meter,
    intervalMinutes: minutes,
    days: Array.from({ length: count }, (_, day) => {
      const values = kWh.slice(day * SLOTS, (day + 1) * SLOTS);
      const date = toCivilDate(first + day);
      if (minutes === 30) return { date, values: values.map(round) };
      return { date, values: Float64Array.from({ length: 24 }, (_, i) => round(values[2 * i]! + values[2 * i + 1]!)) };
    }),
  };
}

/** Bills of four weeks; one in the middle estimated, wrongly or well, and the next one right again at the meter. */
function billsOf(record: MadeRecord, house: Float64Array, wrong: boolean, chance: Chance): EvidencePeriod[] {
  const length = 28;
  const count = Math.floor(record.count / length);
  const used = Array.from({ length: count }, (_, i) => sumOf(house, i * length, (i + 1) * length));
  const estimated = Math.floor(chance.uniform(1, count - 1));
  const share = wrong ? chance.pick([chance.uniform(0.45, 0.7), chance.uniform(1.35, 1.7)]) : chance.normal(1, 0.03);
  const error = used[estimated]! * (share - 1);
  return used.map((kWh, i) => ({
    from: toCivilDate(record.first + i * length),
    to: toCivilDate(record.first + (i + 1) * length),
    kWh: kWh + (i === estimated ? error : i === estimated + 1 ? -error : 0),
    quality: i === estimated ? 'estimated' : 'actual',
  }));
}

function twoRegisters(record: MadeRecord, house: Float64Array, swapped: boolean): TwoRegisters[] {
  const days = Math.min(84, record.count);
  let night = 0;
  for (let day = 0; day < days; day++) {
    for (let i = 1; i < 15; i++) night += house[day * SLOTS + i]!;
  }
  const day = sumOf(house, 0, days) - night;
  const span = { from: toCivilDate(record.first), to: toCivilDate(record.first + days) };
  const [billedDay, billedNight] = swapped ? [night, day] : [day, night];
  return registersOf([billed('Day units (kWh)', billedDay, span), billed('Night units (kWh)', billedNight, span)]);
}

/** One register of a bill, as an import has it. */
function billed(name: string, kWh: number, { from, to }: { from: string; to: string }): Series {
  return {
    ...{ id: name, evidenceId: 'bill', name, carrier: 'electricity', role: 'import', resolution: 'period', from, to },
    ...{ total: kWh, periods: [{ from, to, kWh, quality: 'actual' }], present: 1, expected: 1, estimatedCount: 0 },
  };
}

function sumOf(kWh: Float64Array, fromDay: number, toDay: number): number {
  let sum = 0;
  for (let i = fromDay * SLOTS; i < toDay * SLOTS; i++) sum += kWh[i]!;
  return sum;
}

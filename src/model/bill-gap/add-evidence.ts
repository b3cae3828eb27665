/** What the readings say for the days of a bill, in the fields that separate the causes of a difference. */

import { compareDates, daysBetween, toDayNumber } from '../calendar/civil.ts';
import { coldLine } from '../findings/cold-line.ts';
import { isHeater, isWeekly } from '../findings/heater.ts';
import { loadsOf } from '../findings/loads-of.ts';
import { type MeterDays, type MeterReadings, meterDays, type OutdoorDays } from '../findings/meter-days.ts';
import { bandPrices, bandsOf } from '../findings/slot-prices.ts';
import type { BillCheckInput } from '../shapes/bill-check.ts';
import type { Series } from '../shapes/evidence.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { onOwnMeter } from '../tariff/own-meter.ts';
import { sumOf } from '../units/sums.ts';
import { contradictingUnits, unitsOfMeter } from './bill-doubts.ts';

export interface BillEvidence {
  readonly series: readonly Series[];
  /** Half-hours or hours of the meters, if the store has them. */
  readonly readings: readonly MeterReadings[];
  /** Prices of the bill's days, where they hang on the hour. */
  readonly version?: TariffVersion;
}

/** Days of which readings must be there to speak for a bill. Common practice, no source. */
const LEAST_SHARE = 0.95;
/** Days without heating from which the line takes what does not follow the cold. */
const LEAST_WARM = 15;
const LEAST_DAYS = 60;
/** Older days are of another year's habits. */
const MOST_DAYS_BACK = 400;
const WARM_C = 16;
/** Day number of a 23 January, the darkest day for appliances by SAP's formula. */
const DARKEST_DAY = toDayNumber('2020-01-23');

/**
 * The bill with what the readings add to it [kWh]; what somebody typed stands.
 * Sub-meter and heat meter: sums of their days, or of what was read from the bill’s beginning to its end. Own use of panels: what was made less what was sent out. Heater: even steps on the machine's meter, the weekly one left out since
 * the estimate has it; where none was seen it stays unknown. Units that rose with the cold: all units less the line's
 * use on warm days. Units by price: by the clock. Where nobody has said what a bill of the whole home holds beside
 * heating, the machine's meter says it; where the readings of the bill's own meter contradict it, they stand beside it.
 */
export function withEvidence(given: BillCheckInput, evidence: BillEvidence): BillCheckInput {
  const { series, readings, version } = evidence;
  const used: string[] = [];
  const totalOf = (role: Series['role'], carrier: Series['carrier']): number | undefined => {
    for (const one of series) {
      if (one.role !== role || one.carrier !== carrier) continue;
      const kWh = sumOfDays(one, given) ?? sumOfReadings(one, given);
      if (kWh === undefined) continue;
      used.push(one.id);
      return kWh;
    }
    return undefined;
  };
  const machineKWh = totalOf('heat-pump', 'electricity');
  const heatKWh = totalOf('heat-output', 'heat');
  const bill = otherByMeter(given, given.heatPumpKWh ?? machineKWh);
  // The machine's own meter counts what it used, wherever that came from.
  const ownUseKWh = given.meter === 'whole-house' && bill === given ? ownUse(totalOf) : undefined;
  const outdoor = outdoorOf(series);
  const machine = readings.find(({ meter }) => meter === 'heat-pump');
  const machineDays = machine ? meterDays(machine, outdoor) : null;
  const heater = machineDays ? heaterByDay(machineDays) : null;
  const immersionKWh = machineDays && heater ? heaterOf(machineDays, heater, bill) : undefined;
  // Days bought are no days used where panels give some of it.
  const byDays = outdoor && (ownUseKWh === undefined || machineKWh !== undefined);
  const spaceKWh = byDays ? spaceOf(bill, series, outdoor, heater, machineKWh, immersionKWh ?? 0) : undefined;
  const ratesKWh = machineDays && version ? ratesOf(machineDays, version, bill) : undefined;
  const found = {
    heatPumpKWh: bill.meter === 'whole-house' ? machineKWh : undefined,
    readKWh: readUnits(bill, series, machineKWh),
    ownUseKWh,
    heatKWh,
    immersionKWh,
    spaceKWh,
    ratesKWh,
    seriesIds: used.length > 0 ? used : undefined,
  };
  const known = Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
  return { ...known, ...bill };
}

/** What was made at home and not sent out; undefined where one of the two was not read. */
function ownUse(totalOf: (role: Series['role'], carrier: Series['carrier']) => number | undefined): number | undefined {
  const [made, sent] = [totalOf('generation', 'electricity'), totalOf('export', 'electricity')];
  return made === undefined || sent === undefined ? undefined : Math.max(0, made - sent);
}

/** What nobody has said of the whole home's bill, by the machine's own meter; all of its cost is shared out by units. */
function otherByMeter(bill: BillCheckInput, machineKWh: number | undefined): BillCheckInput {
  const { boughtKWh, totalPence } = bill;
  if (bill.meter !== 'whole-house' || bill.otherKWh !== undefined) return bill;
  if (machineKWh === undefined || machineKWh > boughtKWh) return bill;
  const pence = totalPence === undefined ? {} : { totalPence: (totalPence * machineKWh) / boughtKWh };
  return { ...bill, boughtKWh: machineKWh, otherKWh: boughtKWh - machineKWh, ...pence };
}

/** The bill's units by the readings, where it rests on an estimate or they contradict it. */
function readUnits(bill: BillCheckInput, series: readonly Series[], machineKWh: number | undefined) {
  if (bill.meter === 'heat-pump' && bill.readings !== 'actual') return machineKWh;
  const kWh = contradictingUnits(bill, series);
  return kWh === undefined ? undefined : Math.max(0, kWh - unitsOfMeter(bill) + bill.boughtKWh);
}

/** Units of a series over the bill's days; undefined where a day is missing. */
function sumOfDays({ days }: Series, { from, to }: BillCheckInput): number | undefined {
  if (!days) return undefined;
  const offset = toDayNumber(from) - toDayNumber(days.first);
  let sum = 0;
  for (let i = 0; i < toDayNumber(to) - toDayNumber(from); i++) {
    const value = days.values[offset + i] ?? null;
    if (value === null) return undefined;
    sum += value;
  }
  return sum;
}

/** A reading may have been taken on the evening before the bill's first day, or on its morning. */
const READ_DAYS_OFF = 1;

/** Units of a meter read by hand at the bill's beginning and its end, for as many days as the bill has; undefined where it was not read then. */
function sumOfReadings({ periods = [], beside }: Series, bill: BillCheckInput): number | undefined {
  const within = periods
    .filter(
      ({ from, to }) => daysBetween(from, bill.from) <= READ_DAYS_OFF && daysBetween(bill.to, to) <= READ_DAYS_OFF,
    )
    .toSorted((a, b) => compareDates(a.from, b.from));
  const [first, last] = [within[0], within.at(-1)];
  if (!first || !last || beside === 'aside' || within.some(({ quality }) => quality === 'estimated')) return undefined;
  const isWhole = within.every(({ from }, i) => i === 0 || from === within[i - 1]!.to);
  const off = Math.max(daysBetween(bill.from, first.from), daysBetween(last.to, bill.to));
  if (!isWhole || off > READ_DAYS_OFF) return undefined;
  return (sumOf(within.map(({ kWh }) => kWh)) * daysBetween(bill.from, bill.to)) / daysBetween(first.from, last.to);
}

function outdoorOf(series: readonly Series[]): OutdoorDays | undefined {
  return series.find(({ carrier, days }) => carrier === 'outdoor-temperature' && days)?.days;
}

const isInBill = (dayNumber: number, { from, to }: BillCheckInput) =>
  dayNumber >= toDayNumber(from) && dayNumber < toDayNumber(to);

const covers = ({ dayNumber }: MeterDays, bill: BillCheckInput) =>
  dayNumber.filter((day) => isInBill(day, bill)).length >=
  LEAST_SHARE * (toDayNumber(bill.to) - toDayNumber(bill.from));

/** Units of heaters other than the weekly one, by day number, kWh. */
function heaterByDay(days: MeterDays): Map<number, number> {
  const byDay = new Map<number, number>();
  for (const load of loadsOf(days)) {
    if (!isHeater(load, days) || isWeekly(load, days)) continue;
    for (const { day, kWh } of load.steps) {
      byDay.set(days.dayNumber[day]!, (byDay.get(days.dayNumber[day]!) ?? 0) + kWh);
    }
  }
  return byDay;
}

function heaterOf(days: MeterDays, byDay: ReadonlyMap<number, number>, bill: BillCheckInput): number | undefined {
  if (!covers(days, bill)) return undefined;
  let sum = 0;
  for (const [day, kWh] of byDay) if (isInBill(day, bill)) sum += kWh;
  // One heater in eight is not seen on half-hours, four in ten by the hour (see the proof): none seen is not known to be none.
  return sum > 0 ? sum : undefined;
}

/** Units of the bill that followed the cold; undefined without warm days to take the others from. */
function spaceOf(
  bill: BillCheckInput,
  series: readonly Series[],
  outdoor: OutdoorDays,
  heater: ReadonlyMap<number, number> | null,
  machineKWh: number | undefined,
  immersionKWh: number,
): number | undefined {
  const ofMachine =
    machineKWh !== undefined &&
    series.some((one) => one.role === 'heat-pump' && one.carrier === 'electricity' && one.days);
  const role = ofMachine ? 'heat-pump' : 'import';
  const meter = series.find((one) => one.role === role && one.carrier === 'electricity' && one.days);
  if (!meter?.days || (!ofMachine && (bill.meter === 'heat-pump' || bill.otherKWh === undefined))) return undefined;
  const first = toDayNumber(meter.days.first);
  const end = toDayNumber(bill.to);
  const otherOn = otherByDay(bill);
  const rows: { kWh: number; outdoorC: number }[] = [];
  for (let day = Math.max(first, end - MOST_DAYS_BACK); day < end; day++) {
    const kWh = meter.days.values[day - first] ?? null;
    const outdoorC = outdoor.values[day - toDayNumber(outdoor.first)] ?? null;
    if (kWh === null || outdoorC === null) continue;
    rows.push({ kWh: kWh - (heater?.get(day) ?? 0) - (ofMachine ? 0 : otherOn(day)), outdoorC });
  }
  const warm = rows.filter(({ outdoorC }) => outdoorC > WARM_C).length;
  if (rows.length < LEAST_DAYS || warm < LEAST_WARM) return undefined;
  const line = coldLine(
    rows.map(({ kWh }) => kWh),
    rows.map(({ outdoorC }) => outdoorC),
  );
  const steadyKWh = line.intercept * (end - toDayNumber(bill.from));
  const totalKWh = machineKWh ?? bill.boughtKWh;
  return Math.max(0, totalKWh - immersionKWh - steadyKWh);
}

/**
 * The usual other electricity of a day [kWh]: the bill's, with more of it in the dark months.
 * Source of the shape: use of appliances by month in SAP, 1 + 0.157 cos(2π (month − 1.78) / 12), here by days (from memory).
 */
function otherByDay({ from, to, otherKWh = 0 }: BillCheckInput): (dayNumber: number) => number {
  const share = (day: number) => 1 + 0.157 * Math.cos((2 * Math.PI * (day - DARKEST_DAY)) / 365.25);
  let sum = 0;
  for (let day = toDayNumber(from); day < toDayNumber(to); day++) sum += share(day);
  return (day) => (otherKWh * share(day)) / sum;
}

/** The machine's units in the bill's days by the tariff's bands. */
function ratesOf(days: MeterDays, version: TariffVersion, bill: BillCheckInput): BillCheckInput['ratesKWh'] {
  const prices = bandPrices(onOwnMeter(version));
  if (new Set(prices).size < 2 || !covers(days, bill)) return undefined;
  const bands = bandsOf(days, version);
  const sums = prices.map(() => 0);
  for (let i = 0; i < days.kWh.length; i++) {
    const band = bands[i]!;
    if (band >= 0 && isInBill(days.dayNumber[Math.floor(i / days.perDay)]!, bill)) sums[band]! += days.kWh[i]!;
  }
  return version.bands.map(({ name }, i) => ({ name, kWh: sums[i]!, pencePerKWh: prices[i]! }));
}

/** What is said of a bill before any cause: where it and the readings of the same days differ, and where nobody can say. */

import { settleCar } from '../balance/settle-home.ts';
import { addDays, COMMON_MONTH_DAYS, daysBetween, monthOf } from '../calendar/civil.ts';
import { restOfHome } from '../comparison/rest-of-home.ts';
import { EVER } from '../evidence/beside-heat-pump.ts';
import type { BillCheckInput, BillDoubt } from '../shapes/bill-check.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Series } from '../shapes/evidence.ts';
import type { Household } from '../shapes/household.ts';
import type { Reference } from '../shapes/reference.ts';
import { sumOf } from '../units/sums.ts';
import { priceOf } from './price-levers.ts';

/** A bill is in whole units, at its beginning and at its end, kWh. */
const WHOLE_UNITS_KWH = 2;
/** A reading is taken at some hour of its day, the half-hours are cut at midnight: half a day may stand on either side. */
const ONE_DAY_SHARE = 0.5;

/** Days that were not read hold no more than this many times the day with the most. Common practice, no source. */
const MOST_OF_MISSING = 2;

export interface MeterOnBill {
  readonly id: string;
  readonly name: string;
  /** Units of the days that were read, kWh. */
  readonly kWh: number;
  readonly daysRead: number;
  readonly days: number;
  /** Of the day with the most, kWh. */
  readonly mostKWh: number;
}

/** The meter of the bill by its own readings: the one that has the most of the bill's days; null without any meter of its kind. */
export function readBillMeter(bill: BillCheckInput, series: readonly Series[]): MeterOnBill | null {
  const meters = series
    .filter((one) => one.carrier === 'electricity' && one.role === roleOf(bill) && one.beside !== 'aside')
    .flatMap((one) => readMeter(one, bill) ?? []);
  return meters.toSorted((a, b) => b.daysRead - a.daysRead)[0] ?? null;
}

function readMeter({ id, name, days }: Series, { from, to }: BillCheckInput): MeterOnBill | null {
  if (!days) return null;
  const offset = daysBetween(days.first, from);
  const count = daysBetween(from, to);
  const read = Array.from({ length: count }, (_, i) => days.values[offset + i] ?? null).filter((kWh) => kWh !== null);
  return {
    id,
    name,
    kWh: sumOf(read),
    daysRead: read.length,
    days: count,
    mostKWh: Math.max(0, ...read),
  };
}

const roleOf = ({ meter }: Pick<BillCheckInput, 'meter'>) => (meter === 'heat-pump' ? 'heat-pump' : 'import');

/** What bills that were saved say of all days of this one [kWh], where they begin and end with it. */
function savedBill(bill: BillCheckInput, series: readonly Series[]) {
  const days = daysBetween(bill.from, bill.to);
  return series
    .filter((one) => one.carrier === 'electricity' && one.role === roleOf(bill) && one.beside !== 'aside')
    .map(({ name, periods = [] }) => {
      const within = periods.filter(({ from, to }) => from >= bill.from && to <= bill.to);
      const told = sumOf(within.map(({ from, to }) => daysBetween(from, to)));
      return { name, days, told, kWh: sumOf(within.map(({ kWh }) => kWh)) };
    })
    .find(({ told }) => told === days);
}

/** All units of the bill's meter, what was taken off for other things put back [kWh]. */
export const unitsOfMeter = ({ boughtKWh, otherKWh, meter }: BillCheckInput): number =>
  boughtKWh + (meter === 'whole-house' ? (otherKWh ?? 0) : 0);

/** Whether two counts of the same days [kWh] differ by more than whole units and the hour of a reading. */
const differs = (billKWh: number, readKWh: number, days: number): boolean =>
  Math.abs(billKWh - readKWh) > WHOLE_UNITS_KWH + (ONE_DAY_SHARE * Math.max(billKWh, readKWh)) / days;

/** Units that the readings show where they cover every day and contradict the bill [kWh]; undefined where they agree, or where only other things are counted twice. */
export function contradictingUnits(bill: BillCheckInput, series: readonly Series[]): number | undefined {
  const read = readBillMeter(bill, series);
  if (!read || read.daysRead < read.days || !differs(unitsOfMeter(bill), read.kWh, read.days)) return undefined;
  return holdsOther(bill, read) ? undefined : read.kWh;
}

/**
 * Doubts about a bill, before any cause: bill and readings that differ, readings that do not reach over its days, a
 * machine that took more than the whole home, other electricity that nobody has said, a saved bill of the same days, a
 * bill that ended before the estimate was written for a home that another heating warmed.
 */
export function doubtsOf(
  bill: BillCheckInput,
  series: readonly Series[],
  household: Household,
  reference: Pick<Reference, 'car'>,
  writtenOn?: CivilDate,
): BillDoubt[] {
  const read = readBillMeter(bill, series);
  const doubts: BillDoubt[] = [];
  const billKWh = unitsOfMeter(bill);
  const isBefore = writtenOn !== undefined && bill.to <= writtenOn && household.present.system !== 'heat-pump';
  if (isBefore) doubts.push({ code: 'before-estimate', billKWh, readKWh: billKWh, pence: 0 });
  if (read) {
    const { name: meterName, kWh: readKWh, daysRead, days, mostKWh } = read;
    const missing = days - daysRead;
    // Days that were not read are taken at the mean of those that were, for what the bill charges beyond them.
    const likelyKWh = daysRead > 0 ? (readKWh * days) / daysRead : billKWh;
    const pence = Math.round((billKWh - likelyKWh) * priceOf(bill));
    const about = { meterName, billKWh, readKWh, daysRead, days, pence };
    const tooMuch = daysRead > 0 && billKWh > readKWh + MOST_OF_MISSING * mostKWh * missing;
    const tooLittle = readKWh > billKWh;
    if ((tooMuch || tooLittle) && differs(billKWh, readKWh, days)) {
      const way = billKWh > readKWh ? 'bill-above-readings' : 'bill-below-readings';
      doubts.push({ code: holdsOther(bill, read) ? 'units-hold-other' : way, ...about });
    } else if (missing > 0) doubts.push({ code: 'readings-cover-part', ...about, pence: 0 });
  }
  const saved = read ? undefined : savedBill(bill, series);
  if (saved && differs(billKWh, saved.kWh, saved.days))
    doubts.push({ code: 'other-bill', meterName: saved.name, billKWh, readKWh: saved.kWh, pence: 0 });
  const { heatPumpKWh } = bill;
  if (bill.meter === 'whole-house' && heatPumpKWh !== undefined && heatPumpKWh > billKWh + WHOLE_UNITS_KWH) {
    doubts.push({ code: 'machine-above-home', billKWh, readKWh: heatPumpKWh, pence: 0 });
  }
  if (isOtherUnknown(bill)) {
    const { kWh, isOwn } = usualOther(household, bill, reference, series, writtenOn ?? EVER);
    doubts.push({ code: 'other-unknown', billKWh, readKWh: kWh, ...(isOwn ? { fromRecord: true } : {}), pence: 0 });
  }
  return doubts;
}

/** Whether what is given for heating alone is all that the meter shows: then other things are still in it. */
const holdsOther = (
  { otherKWh = 0, meter, boughtKWh }: BillCheckInput,
  { kWh, days }: { readonly kWh: number; readonly days: number },
): boolean => meter === 'whole-house' && otherKWh > 0 && !differs(boughtKWh, kWh, days);

/** A bill of the whole home of which nobody knows, by word or by meter, how much went into other things. */
export const isOtherUnknown = ({ meter, otherKWh, heatPumpKWh }: BillCheckInput): boolean =>
  meter === 'whole-house' && otherKWh === undefined && heatPumpKWh === undefined;

/**
 * Electricity for all but heating and hot water in these days [kWh], its car included: by the home's own records from before
 * `mayHeatFrom`, or with the heat pump's own meter beside them (`isOwn`), where those are a year without heating in them,
 * else as usual for its people and its floor.
 */
export function usualOther(
  household: Household,
  { from, to }: { readonly from: string; readonly to: string },
  reference: Pick<Reference, 'car'>,
  series: readonly Series[],
  mayHeatFrom: CivilDate,
): { readonly kWh: number; readonly isOwn: boolean } {
  const { monthlyKWh, grade } = restOfHome(household, series, mayHeatFrom);
  const carKWh = household.car ? settleCar(household.car, reference).kWhPerYear / 365 : 0;
  let kWh = 0;
  for (let day = from; day < to; day = addDays(day, 1)) {
    const month = monthOf(day) - 1;
    kWh += monthlyKWh[month]! / COMMON_MONTH_DAYS[month]! + carKWh;
  }
  return { kWh, isOwn: grade !== 'assumed' };
}

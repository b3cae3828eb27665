/** Holds a written estimate against a later bill, with everything that the evidence says about its days. */

import { accountCheck } from '../model/bill-gap/account-check.ts';
import { withEvidence } from '../model/bill-gap/add-evidence.ts';
import { doubtsOf, readBillMeter } from '../model/bill-gap/bill-doubts.ts';
import { findBillFaults } from '../model/bill-gap/bill-faults.ts';
import { checkBill } from '../model/bill-gap/check-bill.ts';
import { findingsInBill, paidPence } from '../model/bill-gap/findings-in-bill.ts';
import { followEstimate } from '../model/bill-gap/follow-months.ts';
import type { ChangedTariff } from '../model/bill-gap/price-levers.ts';
import { addDays, compareDates, toDayNumber } from '../model/calendar/civil.ts';
import { priceChange } from '../model/choices/price-change.ts';
import { sumRegisters } from '../model/evidence/sum-registers.ts';
import { isPricedByAmount } from '../model/findings/clock-prices.ts';
import { findInReadings } from '../model/findings/find-in-readings.ts';
import { findingWorking } from '../model/findings/finding-working.ts';
import { meterDays, type OutdoorDays } from '../model/findings/meter-days.ts';
import { notRuledOut } from '../model/findings/not-ruled-out.ts';
import { registersOf } from '../model/findings/two-registers.ts';
import { typicalDay } from '../model/findings/typical-day.ts';
import { searchDirection, withNext } from '../model/guided-search/guided-search.ts';
import { isAgainstHeat } from '../model/guided-search/weigh-causes.ts';
import type { BillCheck, BillCheckInput, CheckFinding, NotSeen } from '../model/shapes/bill-check.ts';
import type { EvidencePeriod, RecordAccount, Series } from '../model/shapes/evidence.ts';
import type { Household } from '../model/shapes/household.ts';
import type { Tariff, TariffVersion } from '../model/shapes/tariff.ts';
import type { WrittenEstimate } from '../model/shapes/written-estimate.ts';
import { versionOn } from '../model/tariff/slot-price.ts';
import { sumOf } from '../model/units/sums.ts';
import { referenceOf } from '../reference/index.ts';
import { billFaultSentence } from '../words/refusals.ts';
import { say } from '../words/say.ts';
import { DeskError } from './desk-error.ts';
import type { LookedThrough } from './join/meter-readings.ts';

/** What is known of a household today: its own tariffs, and what its meters and its weather say. */
export interface KnownSince {
  readonly household: Household;
  readonly series: readonly Series[];
  readonly readings: readonly LookedThrough[];
}

export interface CheckRun extends KnownSince {
  readonly id: string;
  readonly madeOn: string;
  readonly estimate: WrittenEstimate;
  readonly bill: BillCheckInput;
}

/** Readings older than this before the end of the bill are of another year's habits, days. */
const LOOK_BACK_DAYS = 400;

/** A bill that cannot be held against a written estimate is refused in words. */
export function refuseFaultyBill(estimate: WrittenEstimate, bill: BillCheckInput): void {
  const [fault] = findBillFaults(estimate, bill);
  if (fault) throw new DeskError({ code: fault.code, message: billFaultSentence(fault), where: say('the bill') });
}

/** Without the price before and without both tariffs nobody could say what the change did. */
function refuseUnknownChange({ tariffChange }: BillCheckInput, changed: ChangedTariff | null): void {
  if (!tariffChange || tariffChange.beforePencePerKWh !== undefined || changed) return;
  throw new DeskError({
    code: 'tariff-before-unknown',
    message: say('What the tariff before would have cost is not known, so what the change did cannot be said.'),
    where: say('the bill'),
    remedy: say('Type the price per kWh on the tariff before, or keep both tariffs with this home.'),
  });
}

export function runCheck(run: CheckRun): BillCheck {
  const { id, madeOn, estimate, readings } = run;
  const series = sumRegisters(run.series);
  refuseFaultyBill(estimate, run.bill);
  const reference = referenceOf(estimate.household);
  const version = tariffOn(run.household, run.bill.from);
  const bill = withEvidence(run.bill, { series, readings, ...(version ? { version } : {}) });
  const weather = series.find(
    ({ carrier, from, to }) => carrier === 'outdoor-temperature' && from <= bill.from && to >= bill.to,
  );
  const changed = bill.tariffChange?.beforePencePerKWh === undefined ? priceChange({ ...run, bill, reference }) : null;
  refuseUnknownChange(bill, changed);
  const check = checkBill({
    estimate,
    bill,
    reference,
    id,
    madeOn,
    ...(weather ? { weather } : {}),
    ...(changed ? { changed } : {}),
  });
  const months = followEstimate(estimate, series, reference);
  const findings = findingsOf({ ...run, meters: series }, check);
  const notSeen = notSeenIn({ ...run, meters: series }, { ...check, findings });
  const doubts = doubtsOf(bill, series, run.household, reference, estimate.madeOn.slice(0, 10));
  return withNext({
    ...check,
    ...(doubts.length > 0 ? { doubts } : {}),
    ...(readings.length > 0 || findings.length > 0 ? { findings } : {}),
    ...(months.length > 0 ? { months } : {}),
    ...(notSeen.length > 0 ? { notSeen } : {}),
    ...(run.series.length > 0
      ? { records: recordsOf({ ...run, meters: series }, bill, weather, months.length > 0) }
      : {}),
  });
}

/** What each record was used for, as the parts of the check above take them. */
function recordsOf(
  { series, meters, readings }: MetersRun,
  bill: BillCheckInput,
  weather: Series | undefined,
  hasMonths: boolean,
): RecordAccount[] {
  const idsOf = (list: readonly (Series | { readonly id: string } | null | undefined)[]) =>
    list.flatMap((one) => (one ? [one.id] : []));
  const readMeter = readBillMeter(bill, meters);
  const since = addDays(bill.to, -LOOK_BACK_DAYS);
  const pumps = meters.filter(({ role, carrier, days }) => role === 'heat-pump' && carrier === 'electricity' && days);
  const [newest] = pumps.toSorted((a, b) => compareDates(b.to, a.to));
  const outdoor = meters.find(isOutdoor);
  // The line through the days of a meter needs their weather, bill or none.
  const byDays = meters.some(({ carrier, days }) => carrier === 'electricity' && days);
  return accountCheck(bill, series, {
    bill: new Set([...(bill.seriesIds ?? []), ...idsOf([readMeter?.daysRead ? readMeter : undefined])]),
    weather: new Set(idsOf([weather])),
    causes: new Set([
      ...readings.flatMap(({ seriesIds }) => seriesIds),
      ...idsOf([billsRecord(meters)].filter((one) => one && one.to > since)),
      ...idsOf(byDays ? [outdoor] : []),
    ]),
    months: new Set(hasMonths ? idsOf([newest]) : []),
  });
}

const isOutdoor = ({ carrier, days }: Series): boolean => carrier === 'outdoor-temperature' && days !== undefined;

/** `series` are the registers one by one, `meters` the same with those of one meter added. */
type MetersRun = CheckRun & { readonly meters: readonly Series[] };

const outdoorOf = (meters: readonly Series[]): OutdoorDays | undefined => meters.find(isOutdoor)?.days;

/** Reasons why findings may be missing that are no fault of the house. */
function notSeenIn(
  { household, bill, readings, meters }: MetersRun,
  check: BillCheck & { readonly findings: readonly CheckFinding[] },
): NotSeen[] {
  const { findings } = check;
  const direction = searchDirection(check);
  const tariff = tariffOf(household);
  const stepped = readings.length > 0 && tariff && isPricedByAmount(versionOn(tariff, bill.from));
  const open = notRuledOut(readings, outdoorOf(meters), findings, {
    pencePerKWh: bill.pencePerKWh,
    ...(tariff ? { versions: tariff.versions, zone: household.zone } : {}),
  }).filter((cause) => direction === null || !isAgainstHeat(cause, check, direction));
  return [
    ...(open.length > 0 ? [{ code: 'not-ruled-out' as const, names: open }] : []),
    ...(readings.length === 0 && findings.length > 0 ? [{ code: 'no-readings' as const, names: [] }] : []),
    ...(stepped ? [{ code: 'prices-by-amount' as const, names: [tariff.name] }] : []),
    ...readings.flatMap(({ name, leftOut }) =>
      leftOut.length > 0 ? [{ code: 'registers-left-out' as const, names: [name, ...leftOut] }] : [],
    ),
  ];
}

/** The household's own tariff of electricity. */
export const tariffOf = ({ tariffs, prices }: Household): Tariff | undefined =>
  tariffs.find(({ id }) => id === prices.electricityTariffId);

/** Prices of a day by the clock, where the household has a tariff of its own; none where they hang on the date or the amount. */
export function tariffOn(household: Household, date: string): TariffVersion | undefined {
  const tariff = tariffOf(household);
  const version = tariff && versionOn(tariff, date);
  return version && !version.series && version.bands.every(({ blocks }) => !blocks) ? version : undefined;
}

function findingsOf({ household, series, meters, readings }: MetersRun, check: BillCheck): CheckFinding[] {
  const tariff = tariffOf(household);
  const bill = check.input;
  const pencePerKWh = paidPence(check);
  const since = addDays(bill.to, -LOOK_BACK_DAYS);
  const looked = readings.map((one) => ({
    ...one,
    days: one.days.filter(({ date }) => date >= since && date < bill.to),
  }));
  const outdoor = outdoorOf(meters);
  const periods = billsSince(meters, since);
  const registers = registersOf(series).filter(({ from, to }) => from >= since && to <= bill.to);
  const found = findInReadings({
    readings: looked,
    prices: { pencePerKWh, ...(tariff ? { versions: tariff.versions, zone: household.zone } : {}) },
    ...(outdoor ? { outdoor } : {}),
    ...(periods ? { periods } : {}),
    ...(registers.length > 0 ? { registers } : {}),
  });
  const days = looked.flatMap((one) => meterDays(one, outdoor) ?? []);
  const inDays = found.filter(({ from, to }) => from < bill.to && to > bill.from);
  return findingsInBill(inDays, check, days).map((finding) => {
    const meter = days.find((one) => one.meter === finding.meter);
    const day = meter ? typicalDay(meter, finding) : null;
    const working = findingWorking(finding);
    return { ...finding, working, ...(day ? { typicalDay: day } : {}) };
  });
}

/** Electricity bills and meter readings by hand, for estimates that were put right: by a bill after this one too. */
function billsSince(series: readonly Series[], since: string): EvidencePeriod[] | undefined {
  return billsRecord(series)?.periods?.filter((period) => period.from >= since);
}

const billsRecord = (series: readonly Series[]): Series | undefined =>
  series.find(
    ({ carrier, role, periods }) => carrier === 'electricity' && (role === 'import' || role === 'heat-pump') && periods,
  );

/** Units that the heat pump's own meter shows for the days of a bill; undefined where days are missing. */
export function heatPumpUnits(series: readonly Series[], from: string, to: string): number | undefined {
  const [first, last] = [toDayNumber(from), toDayNumber(to)];
  for (const { role, carrier, days } of series) {
    if (role !== 'heat-pump' || carrier !== 'electricity' || !days) continue;
    const start = toDayNumber(days.first);
    const values = Array.from({ length: last - first }, (_, i) => days.values[first - start + i] ?? null);
    if (values.every((value) => value !== null)) return sumOf(values);
  }
  return undefined;
}

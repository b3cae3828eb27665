/** Bills as the rows of a file print them: readings, units, prices, standing charge, VAT, discounts and total. */

import { toCivilDate } from '../../model/calendar/civil.ts';
import {
  Bill,
  type BillAdjustment,
  type BillCharge,
  type BillMeter,
  type FiledBill,
  type MeterUnit,
  type ReadingKind,
} from '../../model/shapes/bill.ts';
import { tell } from '../../model/shapes/told.ts';
import { MJ_PER_KWH } from '../../model/units/gas-volume.ts';
import { knownNumbers } from '../../model/units/known-numbers.ts';
import type { ShapeInput } from '../importer/shape.ts';
import { type BillPart, registerWord } from '../layout/bill-headings.ts';
import { type ColumnFacts, isMarkColumn, isNumberColumn, isWordColumn } from '../layout/column-facts.ts';
import { plainWords } from '../layout/headings.ts';
import { readQuality } from '../layout/quality-marks.ts';
import type { Dates } from '../layout/read-dates.ts';
import type { Quantity } from '../layout/settle-unit.ts';
import { readValues } from '../layout/value-cells.ts';
import { GAS_FACTOR } from '../layout/vocabulary.ts';
import { isVolumeOfGas } from '../terms/units.ts';
import { billPartColumns, isOfRegister, volumesBeside } from './bill-columns.ts';
import { penceOf, priceOf, settleStanding, vatShare } from './bill-money.ts';
import { pricesHoldVat } from './bill-vat.ts';
import type { Costs } from './costs.ts';
import type { RowPeriods } from './row-periods.ts';

export interface Energy {
  readonly facts: ColumnFacts;
  readonly quantity: Quantity;
  readonly costs: Costs;
  readonly values: Float64Array;
}

export interface BillRows {
  readonly dates: Dates;
  readonly periods: RowPeriods;
  readonly decimal: '.' | ',';
  readonly quality: number | undefined;
  readonly energies: readonly Energy[];
}

export interface FiledBills {
  /** By energy; those of several registers stand with the first. */
  readonly bills: readonly FiledBill[][];
  /** Columns that something was made of. */
  readonly used: readonly number[];
}

type Fuel = Bill['fuel'];

/** Bills of electricity and gas that say more than units and what they cost. */
export function fileBills(input: ShapeInput, rows: BillRows): FiledBills {
  const used = new Set(rows.energies.flatMap(({ costs }) => costs.column ?? []));
  const bills = rows.energies.map((first, place) => {
    const fuel = first.quantity.carrier;
    if ((fuel !== 'electricity' && fuel !== 'gas') || first.quantity.role !== 'import') return [];
    const own = rows.energies.filter(({ quantity }) => quantity.carrier === fuel && quantity.role === 'import');
    if (rows.energies.indexOf(own[0]!) !== place) return [];
    const several = rows.energies.some(({ quantity }) => quantity.carrier !== fuel);
    return billsOf(input, rows, { fuel, own, several, used });
  });
  return { bills, used: [...used] };
}

interface Group {
  readonly fuel: Fuel;
  readonly own: readonly Energy[];
  /** Whether other fuels stand in the file, so that a column must name its own. */
  readonly several: boolean;
  readonly used: Set<number>;
}

function billsOf(input: ShapeInput, rows: BillRows, group: Group): FiledBill[] {
  const columns = findColumns(input, rows, group);
  const { meters, standingPrice, standingCharge, vatRate, vatCharge, adjustments } = columns;
  const saysMore =
    meters.some((m) => m.opening.column ?? m.price.column ?? m.charge.column) ||
    (standingPrice.column ?? standingCharge.column ?? vatRate.column ?? vatCharge.column ?? adjustments[0]) !==
      undefined;
  if (!saysMore) return [];
  return Array.from({ length: rows.dates.count }, (_, i) => i).flatMap((i) =>
    billOfRow(input, rows, group, columns, i),
  );
}

/** Which columns hold the parts of the bill, each with its values; a column that is found is noted as used. */
function findColumns(input: ShapeInput, rows: BillRows, { fuel, own, several, used }: Group) {
  const { sheet, book } = input;
  const { dates, decimal } = rows;
  const registers = own.map(({ facts }) => registerWord(plainWords(facts.heading)));
  const isOfFuel = ({ meaning: { carrier } }: ColumnFacts) => (carrier === undefined ? !several : carrier === fuel);
  const free = (part: BillPart) => billPartColumns(sheet, part).filter(isOfFuel);
  const numbers = (column: ColumnFacts | undefined): Float64Array | undefined => {
    if (!column) return undefined;
    used.add(column.index);
    return readValues(sheet, column.index, dates.rows, dates.count, decimal, tell('a-number'), book);
  };
  const ofWhole = (part: BillPart) => {
    const column = free(part)[0];
    return { column, values: numbers(column) };
  };
  const ofRegister = (part: BillPart, at: number) => {
    const column = free(part).find((c) => !isEnergy(c) && isMine(c, at));
    return { column, values: numbers(column) };
  };
  const isEnergy = (c: ColumnFacts) => own.some(({ facts }) => facts === c && c.meaning.bill !== 'closing');
  const isMine = (c: ColumnFacts, at: number) =>
    own.length === 1
      ? isOfRegister(c, registers[0]) || registers[0] === undefined
      : isOfRegister(c, registers[at]) && registerWord(plainWords(c.heading)) !== undefined;
  const kinds = (part: 'opening-kind' | 'closing-kind') => {
    const column = sheet.columns.find((c) => c.meaning.bill === part && (isWordColumn(c) || isMarkColumn(c)));
    if (column) used.add(column.index);
    return column?.index;
  };

  const fuelCost = free('total').length > 0 ? 'fuel-cost' : 'unit-charge';
  const chargeOf = (at: number) => {
    const units = ofRegister('unit-charge', at);
    return units.column ? units : ofRegister(fuelCost, at);
  };
  const meters = own.map((energy, at) => ({
    energy,
    name: (registers[at] ?? (fuel === 'gas' ? 'gas' : 'all hours')).replaceAll('-', ' '),
    opening: ofRegister('opening', at),
    closing: ofRegister('closing', at),
    price: ofRegister('unit-price', at),
    charge: chargeOf(at),
  }));
  const volume = fuel === 'gas' ? volumesBeside(sheet)[0] : undefined;
  const volumes = numbers(volume);
  const calorific = sheet.columns.find((c) => c.meaning.role === 'calorific' && isNumberColumn(c));
  const calorifics = fuel === 'gas' ? numbers(calorific) : undefined;
  const correction = fuel === 'gas' ? ofWhole('correction').values : undefined;
  const isOneFactor = calorific !== undefined && GAS_FACTOR.test(plainWords(calorific.heading));
  const standing = settleStanding(free('standing')[0], free('standing-price').length > 0, input);
  const [standingPrice, standingCharge] = [
    standing === 'price' ? ofWhole('standing') : ofWhole('standing-price'),
    standing === 'charge' ? ofWhole('standing') : ofWhole('standing-charge'),
  ];
  const days = ofWhole('days').values;
  const vat = ofWhole('vat');
  const isShare = vatShare(vat.column);
  const [vatRate, vatCharge] = [isShare ? vat : ofWhole('vat-rate'), isShare === false ? vat : ofWhole('vat-charge')];
  const net = ofWhole('net');
  const total = totalOf(own, free('total'), numbers);
  const adjustments = (['discount', 'credit', 'charge'] as const).flatMap((kind) =>
    free(kind).map((column) => ({ kind, column, values: numbers(column)! })),
  );
  const [openingKind, closingKind] = [kinds('opening-kind'), kinds('closing-kind') ?? rows.quality];
  return {
    meters,
    volume,
    volumes,
    calorifics,
    correction,
    isOneFactor,
    standingPrice,
    standingCharge,
    days,
    vatRate,
    vatCharge,
    net,
    total,
    adjustments,
    openingKind,
    closingKind,
  };
}

/** The bill of one row; none where its days or all its amounts are missing, or it would be no bill. */
function billOfRow(
  input: ShapeInput,
  rows: BillRows,
  { fuel, own }: Group,
  columns: ReturnType<typeof findColumns>,
  i: number,
): FiledBill[] {
  const { sheet } = input;
  const { meters, volume, volumes, calorifics, correction, isOneFactor } = columns;
  const { standingPrice, standingCharge, days, vatRate, vatCharge, net, total, adjustments } = columns;
  const { openingKind, closingKind } = columns;
  const headings = [...meters.flatMap(({ price, charge }) => [price.column, charge.column]), standingPrice.column];
  const row = rows.dates.rows[i]!;
  const [from, to] = [rows.periods.fromDay[i]!, rows.periods.toDay[i]!];
  const stated = meters.map(({ energy }) => energy.values[i]!);
  if (Number.isNaN(from) || Number.isNaN(to) || stated.every(Number.isNaN)) return [];
  const kindAt = (column: number | undefined, beside: ColumnFacts | undefined): ReadingKind => {
    const marked = beside ? readQuality(sheet, beside.index, row) : 'unknown';
    return marked === 'unknown' && column !== undefined ? readQuality(sheet, column, row) : marked;
  };
  const meterOf = ({ energy, name, opening, closing }: (typeof meters)[number]): BillMeter => {
    const fromReadings = energy.facts === closing.column;
    const asVolume = isVolumeOfGas(energy.quantity.unit);
    const read = known(opening.values, i) !== undefined && known(closing.values, i) !== undefined;
    const value = Number.isNaN(energy.values[i]!) ? undefined : energy.values[i]!;
    const metered = read ? undefined : (known(volumes, i) ?? (asVolume ? value : undefined));
    return {
      name,
      ...knownNumbers({ opening: known(opening.values, i), closing: known(closing.values, i), metered }),
      ...(opening.column ? { openingKind: kindAt(openingKind, opening.column) } : {}),
      closingKind: kindAt(closingKind, closing.column),
      ...(fromReadings || asVolume
        ? {}
        : knownNumbers({ kWh: value === undefined ? undefined : exact(value * energy.quantity.kWhPerUnit) })),
    };
  };
  const billMeters = meters.map(meterOf);
  const charges = meters.map(
    (meter, at): BillCharge => ({
      meter: meter.name,
      ...knownNumbers({
        kWh: billMeters[at]!.kWh,
        pencePerKWh: priceOf(meter.price.column, known(meter.price.values, i), 1.5),
        pence: penceOf(meter.charge.column, known(meter.charge.values, i)),
      }),
    }),
  );
  const standingLine = knownNumbers({
    days: within(known(days, i), 0, 1000),
    pencePerDay: within(priceOf(standingPrice.column, known(standingPrice.values, i), 3), 0, 1000),
    pence: penceOf(standingCharge.column, known(standingCharge.values, i)),
  });
  const rate = known(vatRate.values, i);
  const share = within(rate !== undefined && rate > 1 ? exact(rate / 100) : rate, 0, 0.3);
  const meterUnit = meterUnitOf(fuel, own[0]!, volume, meters[0]!, billMeters[0]!);
  const isWhole = isOneFactor || input.context.gasVolume.isByKWh;
  const draft: Bill = {
    fuel,
    from: toCivilDate(from),
    to: toCivilDate(to),
    meterUnit,
    ...knownNumbers({
      correction: within(known(correction, i), 0.85, 1.15) ?? (isWhole && meterUnit !== 'kWh' ? 1 : undefined),
      calorificMJPerM3:
        calorificOf(known(calorifics, i)) ?? (fuel === 'gas' ? input.choices.calorificMJPerM3 : undefined),
    }),
    meters: billMeters,
    charges,
    standing: Object.keys(standingLine).length > 0 ? [standingLine] : [],
    adjustments: adjustments.flatMap(({ kind, column, values }) => adjustmentOf(kind, column, known(values, i))),
    vat: {
      included: false,
      ...knownNumbers({ rate: share, pence: penceOf(vatCharge.column, known(vatCharge.values, i)) }),
    },
    ...knownNumbers({
      netPence: penceOf(net.column, known(net.values, i)),
      totalPence: penceOf(total.column, known(total.values, i)),
    }),
  };
  const vatIncluded = pricesHoldVat(draft, headings.map((c) => plainWords(c?.heading ?? '')).join(' '));
  const bill = Bill.safeParse({ ...draft, vat: { ...draft.vat, included: vatIncluded } });
  return bill.success ? [{ row: sheet.table.lineOfRow[row]!, bill: bill.data }] : [];
}

/** The total of the bill, also where it is one amount for several registers and so no cost of either. */
function totalOf(
  own: readonly Energy[],
  totals: readonly ColumnFacts[],
  numbers: (column: ColumnFacts | undefined) => Float64Array | undefined,
): { column: ColumnFacts | undefined; values: Float64Array | undefined } {
  const { costs } = own[0]!;
  const chosen = totals.find(({ index }) => index === costs.column) ?? totals[0];
  if (chosen) return { column: chosen, values: numbers(chosen) };
  if (own.length > 1 || costs.pence === undefined || costs.isUnits) return { column: undefined, values: undefined };
  return { column: undefined, values: costs.pence };
}

/** As named; where a gas meter's unit is not named, by what a unit of it comes to in kWh. */
function meterUnitOf(
  fuel: Fuel,
  { quantity }: Energy,
  volume: ColumnFacts | undefined,
  { opening, closing }: { readonly opening: Found; readonly closing: Found },
  meter: BillMeter,
): MeterUnit {
  if (fuel !== 'gas') return 'kWh';
  const named = [quantity.unit, opening.column?.meaning.unit, closing.column?.meaning.unit, volume?.meaning.unit];
  const unit = named.find((one) => one !== undefined && isVolumeOfGas(one));
  if (unit === 'm³' || unit === 'hundred ft³') return unit;
  if (meter.kWh === undefined || meter.opening === undefined || meter.closing === undefined) return 'kWh';
  const kWhPerUnit = meter.kWh / (meter.closing - meter.opening);
  return kWhPerUnit > 20 ? 'hundred ft³' : kWhPerUnit > 4 ? 'm³' : 'kWh';
}
interface Found {
  readonly column: ColumnFacts | undefined;
}

function adjustmentOf(kind: BillAdjustment['kind'], column: ColumnFacts, value: number | undefined): BillAdjustment[] {
  const pence = penceOf(column, value);
  if (pence === undefined || pence === 0) return [];
  // A charge below nothing is money given back.
  const settled = kind === 'charge' && pence < 0 ? 'credit' : kind;
  const name = column.heading.replace(/\s*[([]?\s*(£|gbp)\s*[)\]]?\s*$/i, '').slice(0, 80) || kind;
  return [{ kind: settled, name, pence: Math.abs(pence), vat: settled === 'discount' ? 'before' : 'after' }];
}

const known = (values: Float64Array | undefined, at: number): number | undefined =>
  values === undefined || Number.isNaN(values[at]!) ? undefined : values[at]!;
/** In MJ, whether it is written so or in kWh. */
const calorificOf = (said: number | undefined): number | undefined =>
  within(said, 30, 50) ?? (within(said, 8, 13.8) === undefined ? undefined : exact(said! * MJ_PER_KWH));

const within = (value: number | undefined, low: number, high: number): number | undefined =>
  value !== undefined && value >= low && value <= high ? value : undefined;
/** Without the last bits that a product of decimals leaves. */
const exact = (value: number): number => Number(value.toFixed(6));

/** Each line of a bill recomputed: its dates and readings, at the tariff's prices where there is a tariff. */

import { daysBetween } from '../calendar/civil.ts';
import type { Bill, BillAdjustment, BillCharge, BillMeter, BillStanding } from '../shapes/bill.ts';
import type { CivilDate } from '../shapes/dates.ts';
import type { Tariff, TariffVersion } from '../shapes/tariff.ts';
import { monthsBetween } from '../tariff/blocks.ts';
import { exclVat, inclVat, versionOn } from '../tariff/slot-price.ts';
import { sumOf } from '../units/sums.ts';
import { agrees, type GasConstants, printedKWh, readingsKWh } from './energy.ts';
import type { AdjustmentTerm, BillTerms, Piece } from './terms.ts';

export interface TermsInput {
  readonly bill: Bill;
  readonly gas: GasConstants;
  /** What homes pay, where no tariff says it: 0.05. A rate printed on the bill is not believed, but held against it. */
  readonly vatRate: number;
  readonly tariff?: Tariff | undefined;
}

/** kWh: a bill that rounds volumes on the way differs by about this. */
const KWH_STEPS = 0.02;
/** p/kWh or p/day: a price printed with VAT and turned into one without, or the other way. */
const PRICE_STEPS = 0.006;

/** Terms by readings, dates and tariff; what nothing else tells is taken as the bill prints it. */
export function expectedTerms(input: TermsInput): BillTerms {
  const { bill, tariff } = input;
  const energy = new Map(bill.meters.map((meter) => [meter.name, expectedKWh(input, meter)]));
  return {
    units: bill.charges.map((charge) => {
      const from = charge.from ?? bill.from;
      const to = charge.to ?? bill.to;
      return {
        meter: charge.meter,
        from,
        to,
        kWh: kWhOfCharge(bill, charge, energy.get(charge.meter)),
        pieces: unitPieces(input, charge, from, to),
      };
    }),
    standing: bill.standing.map((line) => standingTerm(input, line)),
    adjustments: bill.adjustments.map(signed),
    vatRate: (tariff && versionOn(tariff, bill.from).vat.rate) ?? input.vatRate,
    vat: bill.vat.included ? 'inside' : 'added',
  };
}

/** Own readings before the bill's, the bill's before its units; a printed figure that agrees stands, so that pennies come out alike. */
function expectedKWh({ bill, gas }: TermsInput, meter: BillMeter): number | undefined {
  const printed = printedKWh(bill, meter);
  const reckoned = meter.ownKWh ?? readingsKWh(bill, meter, gas);
  if (reckoned === undefined) return printed;
  return printed !== undefined && agrees(printed, reckoned, KWH_STEPS) ? printed : reckoned;
}

/** The units of a meter on one of its lines: in the bill's own proportion, else by days. */
function kWhOfCharge(bill: Bill, charge: BillCharge, kWh: number | undefined): number {
  if (kWh === undefined) return charge.kWh ?? 0;
  const own = bill.charges.filter(({ meter }) => meter === charge.meter);
  if (own.length === 1) return kWh;
  const weight = (one: BillCharge) => one.kWh ?? Number.NaN;
  const printed = sumOf(own.map(weight));
  if (printed > 0) return (kWh * weight(charge)) / printed;
  const days = (one: BillCharge) => daysBetween(one.from ?? bill.from, one.to ?? bill.to);
  return (kWh * days(charge)) / sumOf(own.map(days));
}

/**
 * The band that a meter's units are charged at: the one of its name, or the only one. None where the price hangs on the
 * half-hour or on how many units came before, which a bill's own lines cannot tell.
 */
export function bandFor(version: TariffVersion, meter: string) {
  if (version.series) return undefined;
  const plain = (name: string) => name.trim().toLowerCase();
  const named = version.bands.find(({ name }) => plain(name) === plain(meter));
  const found = named ?? (version.bands.length === 1 ? version.bands[0] : undefined);
  return found?.blocks ? undefined : found;
}

/** Whether a tariff leaves some unit price of the bill unchecked. */
export function leavesPricesOpen(bill: Bill, tariff: Tariff): boolean {
  const spans = cutByVersion(tariff, bill.from, bill.to);
  return bill.charges.some(({ meter }) => spans.some(({ version }) => bandFor(version, meter) === undefined));
}

/** A price of the tariff as the bill states its prices, with or without VAT. */
export const asBilled = (bill: Bill, version: TariffVersion, pence: number): number =>
  bill.vat.included ? inclVat(version, pence) : exclVat(version, pence);

/** Standing charge [pence a day or month] as the bill states it; the one is turned into the other by a common year. */
export function standingPrice(bill: Bill, version: TariffVersion, unit: 'day' | 'month'): number {
  const { standingPencePerDay: byDay, standingPencePerMonth: byMonth = 0 } = version;
  return asBilled(bill, version, unit === 'month' ? byMonth + (byDay * 365) / 12 : byDay + (byMonth * 12) / 365);
}

const settled = (printed: number | undefined, expected: number): number =>
  printed !== undefined && agrees(printed, expected, PRICE_STEPS) ? printed : expected;

function unitPieces({ bill, tariff }: TermsInput, charge: BillCharge, from: CivilDate, to: CivilDate): Piece[] {
  const printed: Piece[] = [{ quantity: daysBetween(from, to), price: charge.pencePerKWh ?? 0 }];
  if (!tariff) return printed;
  const pieces = cutByVersion(tariff, from, to).map(({ version, days }) => {
    const band = bandFor(version, charge.meter);
    return band && { quantity: days, price: settled(charge.pencePerKWh, asBilled(bill, version, band.pencePerKWh)) };
  });
  return pieces.every((piece): piece is Piece => piece !== undefined) ? pieces : printed;
}

function standingTerm({ bill, tariff }: TermsInput, line: BillStanding) {
  const from = line.from ?? bill.from;
  const to = line.to ?? bill.to;
  const days = daysBetween(from, to);
  if (!tariff) {
    // A line without a price keeps the money that it prints.
    const price = line.pencePerDay ?? (line.pence ?? 0) / (line.days ?? days);
    return { from, to, unit: 'day' as const, pieces: [{ quantity: days, price }] };
  }
  const spans = cutByVersion(tariff, from, to);
  if (spans.every(({ version }) => (version.standingPencePerMonth ?? 0) > 0)) {
    const pieces = spans.map((span) => ({
      quantity: monthsBetween(span.from, span.to),
      price: standingPrice(bill, span.version, 'month'),
    }));
    return { from, to, unit: 'month' as const, pieces };
  }
  const pieces = spans.map(({ version, days }) => ({
    quantity: days,
    price: settled(line.pencePerDay, standingPrice(bill, version, 'day')),
  }));
  return { from, to, unit: 'day' as const, pieces };
}

function signed({ kind, name, pence, vat }: BillAdjustment): AdjustmentTerm {
  return { name, pence: kind === 'charge' ? pence : -pence, vat };
}

/** The days of a bill that one version prices; `to` exclusive. */
interface BillSpan {
  readonly version: TariffVersion;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
}

/** Cuts the days from `from` to `to` (exclusive) where a new version of the tariff begins. */
function cutByVersion(tariff: Tariff, from: CivilDate, to: CivilDate): BillSpan[] {
  const begins = tariff.versions.map((version) => version.from).filter((date) => date > from && date < to);
  const cuts = [from, ...[...new Set(begins)].sort(), to];
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!;
    return { version: versionOn(tariff, start), from: start, to: end, days: daysBetween(start, end) };
  });
}

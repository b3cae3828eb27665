/** What may have gone wrong with a bill, each as a change of the terms that can be reckoned again. */
import { daysBetween } from '../calendar/civil.ts';
import type { TariffVersion } from '../shapes/tariff.ts';
import { agrees, energyOfUnits, meteredUnits, printedKWh, readingsKWh } from './energy.ts';
import { asBilled, bandFor, standingPrice, type TermsInput } from './recompute-lines.ts';
import type { BillTerms, Piece, StandingTerm, UnitTerm } from './terms.ts';

export type SuspicionCode =
  /** The bill rests on an estimated reading. data: meter, billedKWh, ownKWh */
  | 'estimated-reading'
  /** The bill's reading is not the household's own. data as above */
  | 'reading-differs'
  /** The units charged do not follow from the bill's readings. data: meter, billedKWh, readKWh */
  | 'units-not-from-readings'
  /** Prices from before a change. data: versionFrom, newerFrom, part ('units', 'standing', 'all') */
  | 'old-rate'
  /** Prices of a later change. data: versionFrom, part */
  | 'rate-too-early'
  /** data: used, printed (MJ/m³), meter */
  | 'calorific-value'
  /** data: correction */
  | 'correction-missing'
  /** data: used ('m³' or 'hundred ft³'), printed */
  | 'meter-unit'
  /** data: first, second */
  | 'registers-swapped'
  /** data: rate, expected */
  | 'vat-rate'
  /** data: rate */
  | 'vat-twice'
  /** VAT reckoned on the wrong side of discounts and credits. data: none */
  | 'vat-order'
  /** data: days, expected */
  | 'standing-days'
  /** data: name, pence */
  | 'discount-missing';

export interface Suspicion {
  readonly code: SuspicionCode;
  readonly data: { readonly [name: string]: string | number };
  readonly change: (terms: BillTerms) => BillTerms;
}

/** Calorific values met in Britain [MJ/m³], with room for a slip; what lies outside is another mistake. Common practice, no source. */
const CALORIFIC = { low: 35, high: 43.5 };
const VAT_RATES: readonly number[] = [0, 0.05, 0.2];

/** Every suspicion worth reckoning for this bill; none of them is an accusation yet. */
export function listSuspicions(input: TermsInput, expected: BillTerms): Suspicion[] {
  return [
    ...readingSuspicions(input),
    ...gasSuspicions(input),
    ...rateSuspicions(input),
    ...swapSuspicions(expected),
    ...vatSuspicions(expected, input.bill.vat.rate),
    ...standingSuspicions(input, expected),
    ...expected.adjustments.flatMap(({ name, pence }, place): Suspicion[] =>
      pence >= 0
        ? []
        : [
            {
              code: 'discount-missing',
              data: { name, pence: -pence },
              change: (terms) => ({ ...terms, adjustments: terms.adjustments.filter((_, i) => i !== place) }),
            },
          ],
    ),
  ];
}

/** The units of a meter set to another amount, kept in the proportion of its lines. */
export function withMeterKWh(terms: BillTerms, meter: string, kWh: number): BillTerms {
  const own = terms.units.filter((unit) => unit.meter === meter);
  const before = own.reduce((sum, unit) => sum + unit.kWh, 0);
  const units = terms.units.map((unit) =>
    unit.meter === meter ? { ...unit, kWh: before > 0 ? (unit.kWh * kWh) / before : kWh / own.length } : unit,
  );
  return { ...terms, units };
}

function readingSuspicions({ bill, gas }: TermsInput): Suspicion[] {
  return bill.meters.flatMap((meter): Suspicion[] => {
    const read = readingsKWh(bill, meter, gas);
    const printed = printedKWh(bill, meter);
    const billed = printed ?? read;
    const { name, ownKWh } = meter;
    if (ownKWh !== undefined && billed !== undefined) {
      const estimated = meter.openingKind === 'estimated' || meter.closingKind === 'estimated';
      const data = { meter: name, billedKWh: billed, ownKWh };
      const change = (terms: BillTerms) => withMeterKWh(terms, name, billed);
      return [{ code: estimated ? 'estimated-reading' : 'reading-differs', data, change }];
    }
    if (read === undefined || printed === undefined || agrees(printed, read, 0.02)) return [];
    const data = { meter: name, billedKWh: printed, readKWh: read };
    return [{ code: 'units-not-from-readings', data, change: (terms) => withMeterKWh(terms, name, printed) }];
  });
}

function gasSuspicions({ bill, gas }: TermsInput): Suspicion[] {
  if (bill.meterUnit === 'kWh') return [];
  return bill.meters.flatMap((meter): Suspicion[] => {
    const units = meteredUnits(meter);
    const printed = printedKWh(bill, meter);
    if (units === undefined || units <= 0) return [];
    const by = (code: SuspicionCode, data: Suspicion['data'], kWh: number): Suspicion => ({
      code,
      data: { meter: meter.name, ...data },
      change: (terms) => withMeterKWh(terms, meter.name, kWh),
    });
    const list: Suspicion[] = [];
    const correction = bill.correction ?? gas.correction;
    const stated = bill.calorificMJPerM3 ?? gas.calorificMJPerM3;
    if (printed !== undefined) {
      // The calorific value that the printed units rest on, to one decimal as bills print it, if that gives them again.
      const used = stated * (printed / energyOfUnits(bill, units, gas));
      const shown = Math.round(used * 10) / 10;
      if (used >= CALORIFIC.low && used <= CALORIFIC.high && shown !== stated) {
        list.push(by('calorific-value', { used: shown, printed: stated }, printed));
      }
    }
    const uncorrected = energyOfUnits(bill, units, gas) / correction;
    list.push(by('correction-missing', { correction }, settle(printed, uncorrected)));
    const other = bill.meterUnit === 'm³' ? 'hundred ft³' : 'm³';
    const mistaken = energyOfUnits(bill, units, gas, { meterUnit: other });
    list.push(by('meter-unit', { used: other, printed: bill.meterUnit }, settle(printed, mistaken)));
    return list;
  });
}

const settle = (printed: number | undefined, reckoned: number): number =>
  printed !== undefined && agrees(printed, reckoned, 0.02) ? printed : reckoned;

function rateSuspicions({ bill, tariff }: TermsInput): Suspicion[] {
  if (!tariff || tariff.versions.length < 2) return [];
  return tariff.versions.flatMap((version): Suspicion[] => {
    const code = version.from < bill.from || tariff.versions[0] === version ? 'old-rate' : 'rate-too-early';
    const units = (terms: BillTerms) => ({
      ...terms,
      units: terms.units.map((unit) => atVersion(bill, unit, version)),
    });
    const standing = (terms: BillTerms) => ({
      ...terms,
      standing: terms.standing.map((term) => standingAt(bill, term, version)),
    });
    const newer = tariff.versions.map(({ from }) => from).filter((from) => from > version.from && from < bill.to);
    const newerFrom = newer.toSorted()[0];
    const data = (part: string) => ({ versionFrom: version.from, part, ...(newerFrom ? { newerFrom } : {}) });
    // The part alone comes first: where only one of the two changed, both together fit as well.
    return [
      { code, data: data('units'), change: units },
      { code, data: data('standing'), change: standing },
      { code, data: data('all'), change: (terms) => standing(units(terms)) },
    ];
  });
}

function atVersion(bill: TermsInput['bill'], unit: UnitTerm, version: TariffVersion): UnitTerm {
  const band = bandFor(version, unit.meter);
  if (!band) return unit;
  const printed = bill.charges.find(({ meter }) => meter === unit.meter)?.pencePerKWh;
  const expected = asBilled(bill, version, band.pencePerKWh);
  const price = printed !== undefined && agrees(printed, expected, 0.006) ? printed : expected;
  return { ...unit, pieces: [{ quantity: daysBetween(unit.from, unit.to), price }] };
}

function standingAt(bill: TermsInput['bill'], term: StandingTerm, version: TariffVersion): StandingTerm {
  const quantity = term.pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  return { ...term, pieces: [{ quantity, price: standingPrice(bill, version, term.unit) }] };
}

function swapSuspicions(expected: BillTerms): Suspicion[] {
  const names = [...new Set(expected.units.map(({ meter }) => meter))];
  const list: Suspicion[] = [];
  for (let a = 0; a < names.length; a++) {
    for (let b = a + 1; b < names.length; b++) {
      const [first, second] = [names[a]!, names[b]!];
      const data = { first, second };
      const kWhOf = (terms: BillTerms, name: string) =>
        terms.units.reduce((sum, unit) => sum + (unit.meter === name ? unit.kWh : 0), 0);
      const swapUnits = (terms: BillTerms) =>
        withMeterKWh(withMeterKWh(terms, first, kWhOf(terms, second)), second, kWhOf(terms, first));
      const swapPrices = (terms: BillTerms) => {
        const piecesOf = (name: string): readonly Piece[] => terms.units.find(({ meter }) => meter === name)!.pieces;
        const units = terms.units.map((unit) => {
          if (unit.meter === first) return { ...unit, pieces: piecesOf(second) };
          return unit.meter === second ? { ...unit, pieces: piecesOf(first) } : unit;
        });
        return { ...terms, units };
      };
      list.push({ code: 'registers-swapped', data, change: swapUnits });
      list.push({ code: 'registers-swapped', data, change: swapPrices });
    }
  }
  return list;
}

function vatSuspicions({ vat, vatRate, adjustments }: BillTerms, printedRate?: number): Suspicion[] {
  const list: Suspicion[] = [];
  for (const rate of new Set([...VAT_RATES, printedRate ?? vatRate])) {
    if (rate === vatRate) continue;
    // Prices with VAT in them and another rate: the price without VAT, at that rate.
    const change = (terms: BillTerms): BillTerms => {
      if (terms.vat !== 'inside') return { ...terms, vatRate: rate };
      const times = (1 + rate) / (1 + terms.vatRate);
      const dearer = <T extends { readonly pieces: readonly Piece[] }>(term: T): T => ({
        ...term,
        pieces: term.pieces.map((piece) => ({ ...piece, price: piece.price * times })),
      });
      return { ...terms, units: terms.units.map(dearer), standing: terms.standing.map(dearer), vatRate: rate };
    };
    list.push({ code: 'vat-rate', data: { rate, expected: vatRate }, change });
  }
  if (vatRate > 0) {
    const twice = vat === 'inside' ? 'added' : 'twice';
    list.push({ code: 'vat-twice', data: { rate: vatRate }, change: (terms) => ({ ...terms, vat: twice }) });
  }
  if (vat === 'added' && vatRate > 0 && adjustments.length > 0) {
    const turned = (terms: BillTerms): BillTerms => ({
      ...terms,
      adjustments: terms.adjustments.map((one) => ({ ...one, vat: one.vat === 'before' ? 'after' : 'before' })),
    });
    list.push({ code: 'vat-order', data: {}, change: turned });
  }
  return list;
}

function standingSuspicions({ bill }: TermsInput, expected: BillTerms): Suspicion[] {
  return expected.standing.flatMap((term, place): Suspicion[] => {
    if (term.unit !== 'day') return [];
    const days = term.pieces.reduce((sum, piece) => sum + piece.quantity, 0);
    const printed = bill.standing[place]!.days;
    const others = [days + 1, days - 1, ...(printed === undefined ? [] : [printed])];
    return [...new Set(others)]
      .filter((one) => one !== days && one >= 0)
      .map((one) => ({
        code: 'standing-days',
        data: { days: one, expected: days },
        change: (terms) => ({
          ...terms,
          standing: terms.standing.map((before, i) => (i === place ? withDays(before, one - days) : before)),
        }),
      }));
  });
}

/** Days more or fewer, laid on the last price. */
function withDays(term: StandingTerm, more: number): StandingTerm {
  const last = term.pieces.length - 1;
  const pieces = term.pieces.map((piece, i) => (i === last ? { ...piece, quantity: piece.quantity + more } : piece));
  return { ...term, pieces };
}

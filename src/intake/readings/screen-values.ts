/** Takes out what no house can have used and no weather can have been; each with its line and its effect. */

import type { Carrier } from '../../model/shapes/evidence.ts';
import { type Told, tell } from '../../model/shapes/told.ts';
import type { RemarkBook } from '../terms/remark-book.ts';

/**
 * What a house can take for long [kW]: its fuses, or the largest gas meter of homes (16 m³ an hour) and what may stand
 * behind it. Common practice, no source.
 */
export const mostKW = (carrier: Carrier): number => (carrier === 'electricity' ? 50 : 180);
const COLDEST_C = -40;
const HOTTEST_C = 50;
/** Water in a heating circuit does not boil. */
const HOTTEST_WATER_C = 100;

interface Screen {
  readonly values: Float64Array;
  readonly count: number;
  readonly hours: number;
  /** Least step of a counter: of what was used before, so much may show in one reading. */
  readonly roomKWh?: number;
  readonly lineOf: (index: number) => number;
  readonly column: string;
  /** Time or day of a reading as the file has it. */
  readonly whenOf?: (index: number) => string;
}

/** A defrost is over within the hour, and a machine defrosts in one reading of five at most. A judgement. */
const LONGEST_DEFROST_HOURS = 1;
const MOST_DEFROSTS = 0.2;
/** So far away the heat is found that it took from the house. */
const PAID_WITHIN_HOURS = 24;

/**
 * Heat below nought, which a machine takes from the house while it defrosts, is taken off the heat within a day after it
 * (or before it, at the end), so that the sum holds. Long or frequent heat below nought is cooling and stays.
 */
function takeOffDefrosts(
  { values, count, hours, lineOf, column, whenOf }: Screen,
  most: number,
  book: RemarkBook,
): void {
  let [below, there, longest, run] = [0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    if (values[i]! !== 0 && !Number.isNaN(values[i]!)) there++;
    run = values[i]! < 0 ? run + 1 : 0;
    if (run > 0) below++;
    longest = Math.max(longest, run);
  }
  if (below === 0 || below > there * MOST_DEFROSTS || longest > Math.max(1, LONGEST_DEFROST_HOURS / hours)) return;
  const reach = Math.max(1, Math.round(PAID_WITHIN_HOURS / hours));
  const heatAt = (at: number) => (values[at]! > 0 && values[at]! <= most ? values[at]! : 0);
  for (let i = 0; i < count; i++) {
    const taken = values[i]!;
    if (!(taken < 0) || taken < -most) continue;
    const near = Array.from({ length: 2 * reach }, (_, n) => (n < reach ? i + 1 + n : i - 1 - (n - reach))).filter(
      (at) => at >= 0 && at < count && heatAt(at) > 0,
    );
    if (near.reduce((sum, at) => sum + heatAt(at), 0) < -taken) continue;
    let rest = -taken;
    for (const at of near) {
      const part = Math.min(rest, values[at]!);
      values[at]! -= part;
      rest -= part;
      if (rest <= 0) break;
    }
    values[i] = 0;
    const foundTold = tellAmount(taken);
    book.tally('heat-taken-back', 'note', { row: lineOf(i), column, foundTold, effectKWh: taken, ...when(i, whenOf) });
  }
}

/** Energies in kWh: negative readings and spikes become missing; heat that a defrost took is taken off. */
export function screenEnergy(screen: Screen, carrier: Carrier, book: RemarkBook): void {
  const { values, count, hours, roomKWh = 0, lineOf, column, whenOf } = screen;
  const most = mostKW(carrier) * hours + roomKWh;
  if (carrier === 'heat') takeOffDefrosts(screen, most, book);
  // Whether they are faults or were sent out.
  const isAsked = book.has('net-asked');
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    if (value < 0) {
      if (!isAsked)
        book.tally('negative', 'note', {
          row: lineOf(i),
          column,
          foundTold: tellAmount(value),
          effectKWh: value,
          ...when(i, whenOf),
        });
      values[i] = Number.NaN;
    } else if (value > most) {
      book.tally('spike', 'note', {
        row: lineOf(i),
        column,
        foundTold: tellAmount(value),
        expectedTold: tell('at-most-kwh', { kWh: fourDigits(most) }),
        effectKWh: value,
        ...when(i, whenOf),
      });
      values[i] = Number.NaN;
    }
  }
}

export function screenTemperature(
  { values, count, lineOf, column, whenOf }: Screen,
  carrier: Carrier,
  book: RemarkBook,
): void {
  const hottest = carrier === 'outdoor-temperature' ? HOTTEST_C : HOTTEST_WATER_C;
  for (let i = 0; i < count; i++) {
    const value = values[i]!;
    if (value >= COLDEST_C && value <= hottest) continue;
    if (Number.isNaN(value)) continue;
    const foundTold = tellAmount(value, '°C');
    book.tally('temperature-absurd', 'note', { row: lineOf(i), column, foundTold, ...when(i, whenOf) });
    values[i] = Number.NaN;
  }
}

/** More times than this with two values, and more than a few, are no slips: the rows are of two kinds. A judgement. */
const DOUBLED_SHARE = 0.2;
const FEW_DOUBLED = 5;

/** Refuses a record whose times stand twice with different values, since nothing says which of them is meant. */
export function refuseDoubled(different: number, present: number, row: number, column: string, book: RemarkBook): void {
  // Of a few bills most may be such.
  const isMost = different > 1 && different >= present;
  if (!isMost && (different < FEW_DOUBLED || different < present * DOUBLED_SHARE)) return;
  if (!book.has('times-doubled')) book.add('times-doubled', 'refusal', { row, column, count: different });
}

const when = (i: number, whenOf: Screen['whenOf']) => (whenOf ? { from: whenOf(i) } : {});

const fourDigits = (value: number): number => Number(value.toPrecision(4));
/** What a reading comes to. */
export const tellAmount = (amount: number, unit: 'kWh' | '°C' = 'kWh'): Told =>
  tell('so-much-of', { amount: fourDigits(amount), unit });

/** What stands on a paper and became part of no value, so that nothing of it is left out without a word. */
import type { PaperValue } from '../terms/paper-reading.ts';
import type { Figure } from './figures.ts';
import { isCompared } from './groups.ts';
import { fuelFinder, nameOf } from './lines.ts';
import { isMoney } from './relations.ts';
import type { Understanding } from './understand.ts';
import { BALANCE, DUE, NEXT_PAYMENT, PAYMENT, TOTAL } from './vocabulary.ts';

export interface LeftOver {
  /** Money and use of a fuel that none of the charges is for. */
  readonly ofOtherFuel: readonly Figure[];
  /** Amounts that are no value and say none again. */
  readonly money: readonly Figure[];
}

export function findLeftOver(understood: Understanding, values: readonly PaperValue[]): LeftOver {
  const { rows, sections, leftOut, settling } = understood;
  const fuelOf = fuelFinder(rows);
  const fuels = new Set(sections.map(({ fuel }) => fuel));
  const boxes = new Set(values.flatMap((value) => value.boxes));
  const used = rows.flatMap(({ figures }) => figures).filter(({ box }) => boxes.has(box));
  const known = new Set([...used, ...settling.kept.map(({ figure }) => figure)].map(({ value }) => value));
  const aside = new Set(leftOut.flatMap(({ quantity, price, amount }) => [quantity, price, amount]));
  const free = rows
    .flatMap(({ figures }) => figures)
    .filter((one) => one.value > 0 && !known.has(one.value) && !aside.has(one));
  const isSettled = ({ row }: Figure) =>
    [BALANCE, DUE, NEXT_PAYMENT, PAYMENT].some((words) => words.test(rows[row]!.words));
  const money = free.filter((one) => isMoney(one) && !isSettled(one) && one.kind !== 'price');
  const ofOtherFuel = [...money, ...free.filter(({ kind }) => kind === 'energy')].filter((one) => {
    const fuel = fuelOf(one);
    const isElse = (fuel === 'gas' || fuel === 'electricity') && !fuels.has(fuel) && !fuels.has(undefined);
    return isElse && !TOTAL.test(rows[one.row]!.words) && !isCompared([{ amount: one }], rows);
  });
  return { ofOtherFuel, money: money.filter((one) => !ofOtherFuel.includes(one)) };
}

/** "Gas, as per your plan £94.00". */
export const textOfLeft = (figure: Figure, { rows }: Understanding): string =>
  `${nameOf(rows[figure.row]!.words)} ${figure.text}`.trim();

/** Pages set by hand in a grid of letters: cells stand where they stand in the text, two spaces or more between them. */
import { type PlacedText, widthOf } from '../../../sample-bills/write-pdf.ts';

/** A period that is to be read: fuel, first day, first day after, kWh, hundredths of money with tax and without credits. */
export type SetPeriod = readonly [fuel: 'electricity' | 'gas', from: string, to: string, kWh: number, pence: number];
export interface SetBill {
  readonly name: string;
  readonly zone: string;
  readonly pages: readonly (readonly PlacedText[])[];
  readonly truth: readonly SetPeriod[];
  /** What stands on the paper and is no value of this bill: comparisons, projections, other bills. */
  readonly foreign: readonly (readonly PlacedText[])[];
}

const [LEFT, TOP, SIZE, ACROSS, DOWN] = [36, 48, 9, 5, 14];
const isNumber = (text: string): boolean =>
  /^[-+−(£€]*\d[\d.,' ]*(?: ?(?:kWh|m³|%|€|£|p|ct|EUR|CR|Tage|days))?[-)]?$/.test(text);

/** A cell that begins with "~" is foreign, a line that begins with "!" is so as a whole; "\f" turns the page. */
export function setBill(name: string, zone: string, text: string, truth: readonly SetPeriod[]): SetBill {
  const pages = text.replace(/^\n/, '').split('\f\n').map(setPage);
  return {
    name,
    zone,
    truth,
    pages: pages.map((cells) => cells.map(({ placed }) => placed)),
    foreign: pages.map((cells) => cells.filter(({ isForeign }) => isForeign).map(({ placed }) => placed)),
  };
}

interface Box {
  readonly page: number;
  readonly x: number;
  readonly y: number;
}
/** Whether a value stands on what must not be taken. */
export const isOn = ({ page, x, y }: Box, pages: SetBill['foreign']): boolean =>
  (pages[page] ?? []).some(
    (cell) => Math.abs(cell.y - 0.8 * SIZE - y) < SIZE / 2 && x >= cell.x - 1 && x <= cell.x + widthOf(cell.text, SIZE),
  );

function setPage(text: string) {
  return text.split('\n').flatMap((line, row) => {
    const isAll = line.startsWith('!');
    const bare = isAll ? ` ${line.slice(1)}` : line;
    return [...bare.matchAll(/\S+(?: \S+)*/g)].map(({ 0: cell, index }) => {
      const isForeign = isAll || cell.startsWith('~');
      const words = cell.replace(/^~/, '');
      const end = LEFT + (index + cell.length) * ACROSS;
      const x = isNumber(words) && index > 0 ? end - widthOf(words, SIZE) : LEFT + index * ACROSS;
      return { isForeign, placed: { text: words, x, y: TOP + row * DOWN, size: SIZE } };
    });
  });
}

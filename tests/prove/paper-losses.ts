/** Bills that lost a line, a cell or a digit, as a bad scan or a missing page does: what is read of them is right, or asked. */
import { type PlacedText, writePdf } from '../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../src/desk/take-in.ts';
import { readPaper } from '../../src/intake/read-paper.ts';
import { SET_BILLS } from './paper/set-bills.ts';
import type { SetBill } from './paper/set-page.ts';
import type { ProofTable } from './table.ts';

interface Loss {
  readonly bill: SetBill;
  readonly what: string;
  readonly pages: SetBill['pages'];
}

/** Each line left out, each cell with a number left out, and in each number one digit changed. */
function lossesOf(bill: SetBill): Loss[] {
  return bill.pages.flatMap((page, number) => {
    const loss = (what: string, cells: readonly PlacedText[]): Loss => ({
      bill,
      what,
      pages: bill.pages.with(number, cells),
    });
    const lines = [...new Set(page.map(({ y }) => y))].map((y) =>
      loss(
        `line ${page.find((cell) => cell.y === y)!.text}`,
        page.filter((cell) => cell.y !== y),
      ),
    );
    const cells = page.flatMap((cell, at) => {
      if (!/\d/.test(cell.text)) return [];
      const digits = [...cell.text.matchAll(/\d+/g)].map(({ 0: run, index }) => {
        const place = index + (run.length >> 1);
        const digit = (Number(cell.text[place]) + 3) % 10;
        const text = cell.text.slice(0, place) + digit + cell.text.slice(place + 1);
        return loss(`${cell.text} as ${text}`, page.with(at, { ...cell, text }));
      });
      return [loss(`cell ${cell.text}`, page.toSpliced(at, 1)), ...digits];
    });
    return [...lines, ...cells];
  });
}

/** @param count of all losses, spread over the bills */
export async function proveLosses(count = Number.POSITIVE_INFINITY): Promise<ProofTable> {
  const all = SET_BILLS.flatMap(lossesOf);
  const step = Math.max(1, all.length / count);
  const taken = Array.from({ length: Math.min(count, all.length) }, (_, i) => all[Math.floor(i * step)]!);
  let [right, asked] = [0, 0];
  const wrong: string[] = [];
  for (const { bill, what, pages } of taken) {
    const context = intakeContext(bill.zone, '2026-11-25');
    const { remarks, series } = (await readPaper('bill.pdf', writePdf(pages), {}, context)).preview;
    const periods = series.flatMap(({ carrier, periods: own }) =>
      own!.map(({ from, to, kWh, costPence }) => [carrier, from, to, kWh, costPence]),
    );
    if (remarks.some(({ weight }) => weight !== 'note')) asked++;
    else if (JSON.stringify(periods) === JSON.stringify(bill.truth)) right++;
    else wrong.push(`${bill.name}: ${what}`);
  }
  for (const one of wrong) console.log(`wrong without a word: ${one}`);
  return {
    title: `Bills on paper with one loss each: ${taken.length} of ${all.length} losses in ${SET_BILLS.length} layouts`,
    columns: ['what', 'count'],
    rows: [
      ['read right without a question', right],
      ['asked or refused', asked],
      ['wrong without a word (none)', wrong.length],
    ],
    within: wrong.length === 0,
  };
}

/** A made bill read by the program and held against the truth. */

import { A4, type PlacedText, widthOf } from '../../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../../src/desk/take-in.ts';
import type { IntakePreview, PaperValue } from '../../../src/intake/intake.ts';
import { levelWords } from '../../../src/intake/paper/level-words.ts';
import { leaningRows } from '../../../src/intake/paper/proving-more.ts';
import { readPages } from '../../../src/intake/read-paper.ts';
import type { Page } from '../../../src/intake/terms/paper-reading.ts';
import type { Chance } from '../chance.ts';
import type { ProofTable } from '../table.ts';
import type { LaidOutBill, PrintedField } from './lay-out.ts';

type Pages = LaidOutBill['pages'];
const context = intakeContext('Europe/London', '2026-11-25');

/** The words of the pages as a PDF of them gives them. */
export const wordsOf = (pages: Pages): Page[] =>
  pages.map((texts) => ({
    width: A4.width,
    height: A4.height,
    words: texts.flatMap(({ text, x, y, size }) =>
      [...text.matchAll(/\S+/g)].map(({ 0: word, index }) => ({
        text: word,
        x: x + widthOf(text.slice(0, index), size),
        y: y - size * 0.8,
        width: widthOf(word, size),
        height: size,
      })),
    ),
  }));

export const readLaidOut = (pages: Pages): IntakePreview => readPages('bill.pdf', wordsOf(pages), {}, context).preview;

/** The same of words that were seen in pictures, whose rows are tried as they may lean. */
export const readSeen = (pages: readonly Page[]): IntakePreview =>
  leaningRows(
    pages.map((page) => ({ ...levelWords(page), picture: 'data:' })),
    (leaning) => readPages('bill.jpg', leaning, {}, context),
  ).result.preview;

export interface ReadBack {
  /** Fields of the paper that are proved and right, read and right, and missing. */
  readonly proved: number;
  readonly read: number;
  readonly missing: readonly string[];
  /** Values that are called proved and are not what the paper says. */
  readonly wrong: readonly string[];
  readonly wrongRead: readonly string[];
  readonly isWhole: boolean;
  readonly isAsked: boolean;
  /** It could be kept with one key, and its days, use or cost are not those of the bill, or a register bears another's name. */
  readonly keptWrong: boolean;
}

const digitsOf = (text: string): string => text.replaceAll(/m3|[^\d]/g, '').replace(/^0+(?=\d)/, '');
const same = (kind: string, a: string, b: string): boolean => {
  if (kind === 'fuel') return a === b;
  if (kind === 'vat-rate') return Number.parseFloat(a.replace(',', '.')) === Number.parseFloat(b.replace(',', '.'));
  return digitsOf(a) === digitsOf(b);
};

const REGISTERS: Readonly<Record<string, readonly string[]>> = {
  '': ['all hours', 'gas'],
  evening: ['evening and weekend'],
};
const COMPARED: ReadonlySet<string> = new Set([
  'fuel',
  'period',
  'opening',
  'closing',
  'use',
  'price',
  'charge',
  'days',
  'standing-price',
  'standing-charge',
  'extra',
  'net',
  'vat-rate',
  'vat',
  'total',
  'volume',
  'factor',
  'calorific',
]);

export function holdAgainst(made: LaidOutBill, preview: IntakePreview): ReadBack {
  const values = (preview.paper?.values ?? []).filter(({ kind }) => COMPARED.has(kind));
  const left = [...made.fields];
  let proved = 0;
  let read = 0;
  const wrong: string[] = [];
  const wrongRead: string[] = [];
  let isMisnamed = false;
  const isOf = (value: PaperValue, field: PrintedField) =>
    field.kind === value.kind &&
    (value.fuel === undefined || field.fuel === '' || field.fuel === value.fuel) &&
    (value.meaning === 'guessed' ||
      field.register === '' ||
      value.name === undefined ||
      [field.register, ...(REGISTERS[field.register] ?? [])].includes(value.name)) &&
    (value.meaning === 'guessed' ||
      field.register !== '' ||
      value.kind === 'extra' ||
      value.name === undefined ||
      REGISTERS['']!.includes(value.name)) &&
    same(value.kind, field.text, value.text);
  for (const value of values) {
    const at = left.findIndex((field) => isOf(value, field));
    const shared = made.fields.some((field) => isOf(value, field));
    if (at >= 0 && value.kind !== 'period') left.splice(at, 1);
    if (shared) {
      if (value.state === 'proved') proved += 1;
      else read += 1;
      continue;
    }
    if (value.kind === 'use') isMisnamed = true;
    if (value.state === 'proved')
      wrong.push(`${value.kind} ${value.name ?? ''} ${value.text}: ${value.sums.join(' | ')}`);
    else wrongRead.push(`${value.kind} ${value.name ?? ''} ${value.text}`);
  }
  const missing = left
    .filter((field) => field.kind !== 'period' || !values.some(({ kind }) => kind === 'period'))
    .map(({ kind, register, text }) => `${kind} ${register} ${text}`);
  const isWhole = preview.paper?.isWhole === true;
  return {
    proved,
    read,
    missing,
    wrong,
    wrongRead,
    isWhole,
    isAsked: !isWhole,
    keptWrong: isWhole && (isMisnamed || !isRight(made, preview)),
  };
}

/** Days, use and cost of each fuel, as they would be kept. */
function isRight({ bill }: LaidOutBill, { series }: IntakePreview): boolean {
  const dayOf = (date: string) => Date.parse(date) / 86_400_000;
  return (
    series.length === bill.sections.length &&
    bill.sections.every((section) => {
      const period = series.find(({ carrier }) => carrier === section.fuel)?.periods?.[0];
      const kWh = section.charges.reduce((sum, one) => sum + one.kWh, 0);
      return (
        period !== undefined &&
        dayOf(period.from) === bill.from &&
        dayOf(period.to) === bill.to &&
        period.kWh === kWh &&
        Math.abs((period.costPence ?? 0) - section.totalPence) <= 2
      );
    })
  );
}

/** The same pages with every digit drawn anew. */
export const scramble = (pages: Pages, chance: Chance): PlacedText[][] =>
  pages.map((texts) =>
    texts.map((one) => ({ ...one, text: one.text.replaceAll(/\d/g, () => String(Math.floor(chance.random() * 10))) })),
  );

/** Of values called proved. */
export const MOST_WRONG = 1 / 1000;

/** What came back of many bills, field by field; within its limits where at most 1 in 1,000 called proved is wrong. */
export function tableOfBacks(title: string, backs: readonly ReadBack[]): ProofTable {
  const total = (of: (back: ReadBack) => number) => backs.reduce((sum, back) => sum + of(back), 0);
  const [proved, read, missing] = [
    total((back) => back.proved),
    total((back) => back.read),
    total((back) => back.missing.length),
  ];
  const [wrong, wrongRead] = [total((back) => back.wrong.length), total((back) => back.wrongRead.length)];
  const [whole, keptWrong] = [total((back) => Number(back.isWhole)), total((back) => Number(back.keptWrong))];
  const [all, count] = [proved + read + missing, backs.length];
  const share = (part: number, of: number) => `${((part / of) * 100).toFixed(2)} %`;
  return {
    title,
    columns: ['what', 'count', 'share'],
    rows: [
      ['fields right and proved', proved, share(proved, all)],
      ['fields right, not proved', read, share(read, all)],
      ['fields not found', missing, share(missing, all)],
      ['wrong but called proved (at most 1 in 1,000)', wrong, share(wrong, proved + wrong)],
      ['wrong, not called proved', wrongRead, share(wrongRead, all)],
      ['bills with nothing left to ask', whole, share(whole, count)],
      ['bills with something asked or refused', count - whole, share(count - whole, count)],
      ['kept with one key and wrong (none)', keptWrong, share(keptWrong, count)],
    ],
    within: wrong <= (proved + wrong) * MOST_WRONG && keptWrong === 0,
  };
}

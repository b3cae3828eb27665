/** Numbers by which a file names its supply point, its meter or its weather station. Only their ends are kept. */
import type { OwnNumber } from '../../model/shapes/evidence.ts';
import { cellText } from '../text/table.ts';
import { plainWords } from './headings.ts';
import type { Sheet } from './sheet.ts';

/** The first that fits counts: "meter point" is no meter. How files of the trade write; from public descriptions and from memory. */
const NAMES: readonly (readonly [OwnNumber['of'], RegExp])[] = [
  ['station', /(?<![a-z])(stn|stations? ?(id|nr|no|number|code)|num poste|wmo)(?![a-z])/],
  [
    'point',
    /(?<![a-z])(mpan|mprn|nmi|icp|pdl|prm|cups|pod|esi ?id|numer ppe)(?![a-z])|(supply|meter(ing)?|delivery) ?point|zahlpunkt|marktlokation|messlokation|malepunkt|anlaggnings.?id|point de livraison|punto de suministro|punto di prelievo/,
  ],
  [
    'meter',
    /(meter|zahler|compteur|contador|contatore)[ .-]?(no\b|nr\b|num|id\b|serial|serie)|(meter|zahler|maler|matar)nummer|(?<!inverter )\bserial (no|number)(?! of )|\bn(umero|[°ºo.])? ?(de |di |du |del )?(compteur|contador|contatore)|matricola|matricule|numer licznika|^(meter|zahler|compteur|contador|contatore|maler)$/,
  ],
];
const LEAST_LENGTH = 5;
const LEAST_DIGITS = 4;
const SHOWN = 4;
/** Rows looked at, from the first to the last: a meter may have been exchanged between. */
const SAMPLED = 60;
/** Files of more are of many homes. */
const MOST = 6;

const kindOf = (words: string): OwnNumber['of'] | undefined => NAMES.find(([, name]) => name.test(words))?.[0];

/** The last four signs of a number; a spreadsheet's "1.01E+12" has lost them. */
function endOf(text: string): string | undefined {
  if (/^\d[.,]\d+e\+?\d+$/i.test(text)) return undefined;
  const signs = text
    .replace(/[.,]0+$/, '')
    .replaceAll(/[^\p{L}\d]/gu, '')
    .toUpperCase();
  const digits = signs.replaceAll(/\D/g, '').length;
  return signs.length >= LEAST_LENGTH && digits >= LEAST_DIGITS ? signs.slice(-SHOWN) : undefined;
}

/** @param kindColumn tells several meters of the file apart, so that none of its numbers is that of all */
export function numbersOfSheet(sheet: Sheet, kindColumn: number | undefined): OwnNumber[] {
  const { table, firstRow, columns, preamble } = sheet;
  const rows = table.rowCount - firstRow;
  const sampled = Array.from({ length: Math.min(rows, SAMPLED) }, (_, i) =>
    rows <= SAMPLED ? firstRow + i : firstRow + Math.round((i * (rows - 1)) / (SAMPLED - 1)),
  );
  const inColumns = columns.flatMap(({ index, heading }) => {
    const of = index === kindColumn || heading === '' ? undefined : kindOf(plainWords(heading));
    return of === undefined
      ? []
      : listed(
          of,
          sampled.map((row) => cellText(table, row, index)),
        );
  });
  return [...inColumns, ...numbersInText(preamble.map(({ text }) => text))];
}

/** Behind their names in lines of text. */
export function numbersInText(lines: readonly string[]): OwnNumber[] {
  return lines.flatMap((line) => {
    if (!MAY_HOLD.test(line)) return [];
    const words = plainWords(line);
    const found = NAMES.flatMap(([of, name]) => {
      const at = name.exec(words);
      return at ? [{ of, rest: words.slice(at.index + at[0].length) }] : [];
    })[0];
    const number = found && NUMBER.exec(found.rest)?.[1];
    return number ? listed(found.of, [number]) : [];
  });
}

/** Soon after its name, in one or in groups of digits; a date has too few signs before its own. */
const NUMBER = /^[^\d]{0,24}?(?<![a-z\d])(\d{2,}(?: \d{2,}){2,}|[a-z]{0,4}\d[a-z\d]{4,})(?![\d/.:-])/;

/** Most lines hold none: money, days and plain words. */
const MAY_HOLD = /\d[\p{L}\d]{4}|\d\d[\s_]+\d\d/u;

function listed(of: OwnNumber['of'], texts: readonly string[]): OwnNumber[] {
  const ends = new Set(texts.flatMap((text) => endOf(text.trim()) ?? []));
  return ends.size > MOST ? [] : [...ends].sort().map((end) => ({ of, end }));
}

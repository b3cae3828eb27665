/** Numbers as people and machines write them, read straight from the text where they are plain. */

import type { Codes } from '../text/table.ts';

const POWERS = Array.from({ length: 23 }, (_, n) => 10 ** n);
const MISSING = new Set([
  '',
  '-',
  '--',
  '–',
  '—',
  'n/a',
  'na',
  '#n/a',
  'null',
  'none',
  'nan',
  'missing',
  '.',
  '?',
  'x',
]);

/** Whether a cell says that there is no value. Missing is not zero. */
export const isMissing = (cell: string): boolean => MISSING.has(cell.trim().toLowerCase());

/**
 * Value of text between two offsets; NaN where it is missing or no number.
 * Up to 15 digits the quotient of two exact doubles is the nearest double, so nothing is lost against the long way.
 */
export function readNumber(text: string, from: number, to: number, decimal: '.' | ','): number {
  const point = decimal === '.' ? 46 : 44;
  let at = from;
  let code = text.charCodeAt(at);
  const negative = code === 45;
  if (negative || code === 43) at++;
  let mantissa = 0;
  let digits = 0;
  let afterPoint = -1;
  for (; at < to; at++) {
    code = text.charCodeAt(at) - 48;
    if (code >= 0 && code <= 9) {
      mantissa = mantissa * 10 + code;
      digits++;
      if (afterPoint >= 0) afterPoint++;
    } else if (code + 48 === point && afterPoint < 0) afterPoint = 0;
    else return readAwkwardNumber(text.slice(from, to), decimal);
  }
  if (digits === 0) return Number.NaN;
  if (digits > 15) return readAwkwardNumber(text.slice(from, to), decimal);
  const value = afterPoint > 0 ? mantissa / POWERS[afterPoint]! : mantissa;
  return negative ? -value : value;
}

/** Digits with a decimal sign or without, as nearly all cells are: what `readNumber` says of them, in a third of its time; else NaN. */
export function readPlainNumber(codes: Codes, from: number, to: number, decimal: '.' | ','): number {
  const point = decimal === '.' ? 46 : 44;
  let mantissa = 0;
  let afterPoint = -1;
  for (let at = from; at < to; at++) {
    const code = codes[at]!;
    if (code >= 48 && code <= 57) {
      mantissa = (mantissa * 10 + code - 48) | 0;
      if (afterPoint >= 0) afterPoint++;
    } else if (code === point && afterPoint < 0) afterPoint = 0;
    else return Number.NaN;
  }
  const digits = to - from - (afterPoint < 0 ? 0 : 1);
  if (digits < 1 || digits > 9) return Number.NaN;
  return afterPoint > 0 ? mantissa / POWERS[afterPoint]! : mantissa;
}

const MOST = 1e15;
/**
 * What may stand behind a number; any other letters make it a word with digits in it, such as 8O0 with a letter O.
 * A single l is a litre only after a space, since 1l may be 11.
 */
const UNIT =
  /^([kmg]?wh|[gkm]j|g ?cal|(mm|k)?btu|dth|k?w|[ns]?m[3³]|smc|mcf|cu ?m|ft3|ft³|cu ?ft|[hc]cf|cf|gal(lons?)?|k|kgs?|t(o|onnen|onnes?)?|l(itres?|iters?|tr?s?)|th(er)?ms?|°?[cf]|°|%|p(ence)?|gbp|eur|usd|[£€])$/i;
const AWKWARD =
  /^(\()?\s*([£€$]?)\s*([-+−]?)\s*[£€$]?\s*([\d.,'’ \u00a0\u202f\u2009]+)(?:(e[-+]?\d{1,3})|(?<=\d)([-−]))?\s*(%|[a-zµ³°£€]{0,8}\d?)\s*(\))?$/i;

/** A mark of how a reading came about behind its number: "12345 E", "12345E", "12345 (A)", "900 est.", "236 kWh (est.)" */
const MARK_BEHIND =
  /^(.*\d)(?:\s*[([]\s*(e|a|c|est\.?|estimated?|actual|customer|approx\.?)\s*[)\]]|\s*(e|a|est\.?|estimated?|actual|customer|approx\.?))$/i;
const MARK_BEHIND_UNIT =
  /^(.*\d\s*[a-z]{1,4}[³3]?)(?:\s*[([]\s*(e|a|c|est\.?|estimated?|actual|customer|approx\.?)\s*[)\]]|\s+(est\.?|estimated?|actual|customer|approx\.?)|\s*[([]?([*†‡#]{1,3})[)\]]?)$/i;
/** The same before it: "E12345", "est. 900". Three digits at least, for "A1" is a name. */
const MARK_BEFORE = /^(e|a|est\.?|estimated?|actual)[\s:]*(\d[\d.,'’ ]*\d{2})$/i;

/** A sign of a footnote behind it, "364*", "364 (*)" or "364¹"; "m³" is none. */
const NOTE_BEHIND = /^(.*\d)\s*[([]?([*†‡#¹²³⁴⁵]{1,3})[)\]]?$/;
/** "~8.5", "ca. 900": about so much. */
const ABOUT = /^(~|≈|approx\.?|about|circa|ca\.?|c\.|env\.?|environ)\s*(\d.*)$/i;

/** Number and mark of a cell that has both, in its own letters. */
function splitMark(cell: string): { readonly number: string; readonly mark: string } | undefined {
  if (cell.length > 40) return undefined;
  const behind = MARK_BEHIND.exec(cell) ?? MARK_BEHIND_UNIT.exec(cell);
  if (behind) return { number: behind[1]!.trim(), mark: (behind[2] ?? behind[3] ?? behind[4])! };
  const noted = NOTE_BEHIND.exec(cell);
  if (noted) return { number: noted[1]!, mark: noted[2]! };
  const before = MARK_BEFORE.exec(cell) ?? ABOUT.exec(cell);
  return before ? { number: before[2]!, mark: before[1]! } : undefined;
}

/** The mark behind or before a number, in its own letters; undefined where there is none. */
export const markBeside = (cell: string): string | undefined => splitMark(cell.trim())?.mark;

/** Thousands signs, exponents, currency before, unit behind, minus signs of the typographer and behind the number, brackets for negative. */
export function readAwkwardNumber(cell: string, decimal: '.' | ','): number {
  const outer = cell.trim();
  if (outer.length > 40) return Number.NaN;
  const trimmed = splitMark(outer)?.number ?? outer;
  const match = AWKWARD.exec(trimmed);
  if (!match) return Number.NaN;
  const [, open, , sign, body, exponent, signBehind, unit, close] = match;
  if (Boolean(open) !== Boolean(close) || (signBehind && (sign || open))) return Number.NaN;
  if (unit && !UNIT.test(unit) && !(/^l$/i.test(unit) && /\s$/.test(body!))) return Number.NaN;
  const digits = plainDigits(body!.trim(), decimal);
  if (digits === undefined) return Number.NaN;
  const value = Number(digits + (exponent ?? ''));
  // Nothing on a bill or a meter is that large; it would only spoil the sums.
  if (value > MOST) return Number.NaN;
  return open || sign === '-' || sign === '−' || signBehind ? -value : value;
}

/** Digits with a decimal point, thousands taken out; undefined where the groups are not of three. */
function plainDigits(body: string, decimal: '.' | ','): string | undefined {
  const [whole, fraction, more] = body.split(decimal);
  if (more !== undefined || whole === undefined) return undefined;
  if (fraction !== undefined && !/^\d*$/.test(fraction)) return undefined;
  const group = decimal === '.' ? ',' : '.';
  if (!/^\d*$/.test(whole)) {
    const sign = whole.includes(group) ? group : /['’ \u00a0\u202f\u2009]/.exec(whole)?.[0];
    if (sign === undefined) return undefined;
    const parts = whole.split(sign);
    const grouped = parts.every((part, i) => (i === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(part));
    if (!grouped) return undefined;
    return `${parts.join('')}.${fraction ?? ''}`;
  }
  return whole === '' && !fraction ? undefined : `${whole}.${fraction ?? ''}`;
}

/** A day or second number of a computer, with whichever decimal sign. */
export function countAsNumber(cell: string): number {
  const point = readAwkwardNumber(cell, '.');
  return Number.isNaN(point) || /^\d{1,3},\d{3}$/.test(cell) ? readAwkwardNumber(cell, ',') : point;
}

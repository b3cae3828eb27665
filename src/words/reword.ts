/**
 * Texts that were kept before there were codes, in estimates, remarks and households of that time: English, with what
 * differs written into it. They are found again by pattern. Nothing new is said so; a text without gaps is looked up whole.
 */
import { type Catalogue, language, say, spokenCatalogue } from './say.ts';
import { TOLD } from './told/all.ts';

interface Pattern {
  readonly match: RegExp;
  readonly gaps: readonly string[];
  readonly text: string;
}

/** "25 November 2026", "November 2026" or "November". */
const KEPT_DATE =
  /^(\d{1,2} )?(January|February|March|April|May|June|July|August|September|October|November|December)( \d{4})?$/;
function sayKeptDate([, day, month, year]: RegExpExecArray): string {
  const date = new Date(`${day ?? 1} ${month} ${year ?? 2000} UTC`);
  const parts: Intl.DateTimeFormatOptions = { month: 'long', timeZone: 'UTC' };
  if (day) parts.day = 'numeric';
  if (year) parts.year = 'numeric';
  return new Intl.DateTimeFormat(language(), parts).format(date);
}
/** As the model writes numbers: "38.5", "−1,234.5 kWh". A bare whole number may be a year and stays. */
const KEPT_NUMBER = /^([-−]?)(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+\.\d+)( ?[^\s\d.,]{1,5})?$/;
function sayKeptNumber([, sign, size = '', unit = '']: RegExpExecArray): string {
  const digits = size.split('.')[1]?.length ?? 0;
  const format = new Intl.NumberFormat(language(), {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: size.includes(','),
  });
  return `${sign}${format.format(Number(size.replaceAll(',', '')))}${unit}`;
}
/** What has to be typed as it is, one or several: only its marks are those of the language. */
const QUOTED = /^“[^“”]*”(, “[^“”]*”)*$/;
/** `{0}` in texts that only old estimates have, `{days}` or `{days, number}` in those that are still told. */
const GAP = /\{(\w+)(?:, [^{}]*)?\}/g;
const WORD = /[A-Za-z]{3}/;
/** Came with the codes and was never kept as a text; "bill of September" is what somebody typed. */
const NEVER_KEPT: readonly string[] = [TOLD['from-file'], TOLD['from-bill']];

/** Texts with gaps; the longest comes first, since it fits least by chance. */
function patternsOf(translated: Catalogue): readonly Pattern[] {
  const told = Object.values(TOLD).filter(
    (english) => english.includes('{') && WORD.test(english.replace(GAP, '')) && !NEVER_KEPT.includes(english),
  );
  return [...told, ...Object.keys(translated).filter((english) => /\{\d+\}/.test(english))]
    .toSorted((a, b) => b.length - a.length)
    .map((english) => {
      const gaps = [...english.matchAll(GAP)].map(([, name]) => name!);
      const parts = english.replace(GAP, '\0').split('\0');
      const match = parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('(.*)');
      return { match: new RegExp(`^${match}$`), gaps, text: translated[english] ?? english };
    });
}

let patterns: { readonly of: Catalogue; readonly all: readonly Pattern[] } | null = null;

/** Such a text in the language spoken. What stands in its gaps is reworded too. */
export function reword(text: string): string {
  const catalogue = spokenCatalogue();
  if (catalogue === null) return text;
  const whole = catalogue[text];
  if (whole !== undefined) return whole;
  const date = KEPT_DATE.exec(text);
  if (date) return sayKeptDate(date);
  const [from, to] = text.split(' to ');
  if (to !== undefined && KEPT_DATE.test(from!) && KEPT_DATE.test(to))
    return say('{low} to {high}', { low: reword(from!), high: reword(to) });
  if (QUOTED.test(text)) return text.replaceAll(/“([^“”]*)”/g, (_, own: string) => say('“{text}”', { text: own }));
  const number = KEPT_NUMBER.exec(text);
  if (number) return sayKeptNumber(number);
  if (patterns?.of !== catalogue) patterns = { of: catalogue, all: patternsOf(catalogue) };
  for (const { match, gaps, text: translated } of patterns.all) {
    const found = match.exec(text);
    if (found) return translated.replace(GAP, (_, gap: string) => reword(found[gaps.indexOf(gap) + 1] ?? ''));
  }
  return text;
}

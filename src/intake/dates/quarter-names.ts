/** Quarters of a year by their names, without the year: "Q1", "1st quarter", "1. Quartal", "II kwartał", "Jan-Mar". */
import { monthOfName } from './month-names.ts';

/** Words for a quarter, as the inside of a group. */
export const QUARTER_WORDS = 'quarter|quartal|kvartal|kwarta[lł]|kwartaal|trim(?:estre)?|trimester|[cč]tvrtlet[ií]';
const WORD = `(?:q|t|k|${QUARTER_WORDS})`;
const NAME = new RegExp(
  `^(?:${WORD}[ .]*([1-4])|([1-4])(?:st|nd|rd|th|er|eme|e|[.ºª°]{1,2})? ?${WORD}|(i{1,3}|iv)[ .]*${WORD})$`,
);
const ROMAN = ['i', 'ii', 'iii', 'iv'];
/** "3" or "iii" as a number. */
export const quarterNumber = (text: string): number => Number(text) || ROMAN.indexOf(text.toLowerCase()) + 1;
const SPAN = /^([a-z]{3,12})\.? ?[-–/] ?([a-z]{3,12})\.?$/;

/** Quarter 1 to 4, or 0 where the text names none. */
export function quarterOfName(text: string): number {
  if (text.length > 24) return 0;
  const plain = text
    .trim()
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/\p{Mark}/gu, '')
    .replaceAll('ł', 'l');
  const named = NAME.exec(plain);
  if (named) return quarterNumber(named[1] ?? named[2] ?? named[3]!);
  const span = SPAN.exec(plain);
  const [first, last] = span ? [monthOfName(span[1]!), monthOfName(span[2]!)] : [0, 0];
  return first % 3 === 1 && last === first + 2 ? (first + 2) / 3 : 0;
}

/** What a recogniser found in a picture, as words of a page: lines level, letters of one size in each, places in points. */
import type { Grey, Page, SeenWord } from '../terms/paper-reading.ts';
import { levelWords } from './level-words.ts';

/** The long side of a page, points. */
const LONG_SIDE = 842;
/** Capitals and digits, and letters like x, are so high, of the size of the letters; letters stand that far below the top of it. */
const [CAPITALS, SMALL] = [0.72, 0.52];
const BASE = 0.8;

const isTall = (text: string): boolean => /[A-Z\dbdfhklt£€$]/.test(text);
const isBelow = (text: string): boolean => /[gjpqyQ,;()|/§ß]/.test(text);
/** Signs that reach above capitals and below the line. */
const isBeyond = (text: string): boolean => /[()|/§]/.test(text);
/** Lines, frames and dirt that were taken for letters. */
const isDirt = ({ text, sure }: SeenWord): boolean =>
  /^[^\p{L}\p{N}£€$%×=+@–−-]+$/u.test(text) || (sure < 15 && !/\d|kWh|Tag|day/i.test(text));

/** Points of the page for one of the picture. */
export const pointsOf = ({ width, height }: Grey): number => LONG_SIDE / Math.max(width, height);

export function pageOfWords(picture: Grey, seen: readonly SeenWord[]): Page {
  const { width, height } = picture;
  const scale = pointsOf(picture);
  const lines = Map.groupBy(
    seen.filter((word) => !isDirt(word)),
    ({ line }) => line,
  );
  return levelWords({
    width: width * scale,
    height: height * scale,
    words: [...lines.values()].flatMap((words) => {
      const plain = words.filter(({ text }) => isTall(text) && !isBelow(text));
      const tall = plain.length > 0 ? plain : words;
      const size = median(tall.map((word) => word.height)) / CAPITALS;
      const base = median(tall.map((word) => word.y + word.height));
      return words.map((word) => {
        // A line that is not quite level carries each word at its own height; what hangs below it is measured from its top.
        const high = isTall(word.text) || isBeyond(word.text) ? CAPITALS : SMALL;
        const ownBase = isBelow(word.text) ? word.y + high * size : word.y + word.height;
        const own = /[\p{L}\p{N}]/u.test(word.text) ? ownBase : base;
        const bottom = Math.abs(own - base) < size * 0.4 ? own : base;
        return {
          text: tidied(word.text),
          x: word.x * scale,
          y: (bottom - BASE * size) * scale,
          width: word.width * scale,
          height: size * scale,
        };
      });
    }),
  });
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1]!;

/** Signs and units that recognisers confuse where nothing else can stand; numbers are never touched. */
const tidied = (text: string): string =>
  text
    .replace(/^((?:MJ|kWh)\/)?m[?°*®>»"'’”]$/i, (_, per: string | undefined) => `${per ?? ''}m³`)
    .replace(/^[kK]+[wW][hHn]$/, 'kWh')
    .replace(/(?<=^|\d)p[|lI]?(?=(?:kWh|day)$)/, 'p/')
    .replace(/^c[tUVlI1]{0,2}[/|]?(?=(?:kWh|Tag)$)/, 'ct/')
    .replace(/^[|'‘’“"_]+(?=[\p{L}\d£€])/u, '')
    .replace(/(?<=[\p{L}\d%])[|'‘’“"_]+$/u, '');

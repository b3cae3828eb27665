/** The pictures among the sheets of a bill recognised, look after look: each may find what another misses. */
import type { Grey, Page, PageMode, Recognise, SeenWord, Word } from '../terms/paper-reading.ts';
import { type Progress, stageOf } from '../terms/progress.ts';
import type { Box } from './figures.ts';
import { withoutRules } from './flatten.ts';
import type { Sheet } from './gather-sheets.ts';
import { shrink, turnQuarters } from './grey.ts';
import { pageOfWords, pointsOf } from './picture-words.ts';
import { encodePng } from './png.ts';

type Language = 'eng' | 'deu';
/** A page the right way up is recognised with more than that much sureness, of 100, or has so many common words. */
const UPRIGHT = 80;
const COMMON_WORDS = 5;
const GERMAN =
  /^(und|der|die|das|f[uü]r|bis|rechnung\w*|betrag|z[aä]hler\w*|verbrauch\w*|ihre?|strom\w*|mwst\.?|kunden\w*|netto\w*|brutto\w*|preis|menge)[.,:]?$/i;
const ENGLISH =
  /^(and|the|of|your|for|bill|charges?|meter|readings?|total|used?|account|from|to|days|vat|rate|units)[.,:]?$/i;

export interface Looks {
  /**
   * All pages after one more look; undefined when there is none left to take.
   * @param settled places that the looks before settled: what stands in them is not looked at again
   */
  next(onProgress?: Progress, settled?: readonly Box[]): Promise<Look | undefined>;
}
interface Look {
  readonly pages: readonly Page[];
  /** Taken in the language of the page, as the look before was not. */
  readonly isSurer: boolean;
}

/** @param zone where the home is, which says in which language to look first */
export function lookAtSheets(sheets: readonly Sheet[], recognise: Recognise, zone: string): Looks {
  const flats = sheets.map((sheet) => ('points' in sheet ? sheet : undefined));
  const pictures = new Map<Grey, string>();
  const seenBefore: (readonly SeenWord[])[] = [];
  let language: Language = /^Europe\/(Berlin|Busingen|Vienna|Zurich|Vaduz)$/.test(zone) ? 'deu' : 'eng';
  const left: PageMode[] = ['block', 'sparse'];
  let first = true;
  let isSurer = false;
  return {
    async next(onProgress, settled = []) {
      const mode = left.shift();
      if (mode === undefined) return undefined;
      const pages: Page[] = [];
      const count = Math.max(1, flats.filter((flat) => flat !== undefined).length);
      let done = 0;
      for (const [i, sheet] of sheets.entries()) {
        const flat = flats[i];
        if (!flat) {
          pages.push(sheet as Page);
          continue;
        }
        const tell = stageOf(onProgress, done / count, (done + 1) / count);
        const own = settled.filter(({ page }) => page === i);
        pages.push(await lookAt(i, flat, mode, own, tell));
        done++;
      }
      const look = { pages, isSurer };
      const other = first ? (languageOf(pages) ?? language) : language;
      first = false;
      // Labels read in the wrong language are worth another look of the same kind.
      isSurer = other !== language;
      if (isSurer) left.unshift('block');
      language = other;
      if (seenBefore.every((seen) => sureWords(seen) < seen.length * LEAST_SURE)) left.length = 0;
      return look;
    },
  };

  async function lookAt(
    at: number,
    flat: Grey,
    mode: PageMode,
    settled: readonly Box[],
    tell: Progress,
  ): Promise<Page> {
    let upright = flat;
    const scale = pointsOf(flat);
    const isSettled = ({ x, y, width, height }: SeenWord) => {
      const [across, down] = [(x + width / 2) * scale, (y + height / 2) * scale];
      return settled.some((box) => isWithin(across - box.x, box.width) && isWithin(down - box.y, box.height));
    };
    const sure = mode === 'sparse' ? sureLines(seenBefore[at] ?? [], isSettled) : [];
    const bare = withoutRules(flat);
    const isNoise = isNoWriting(bare);
    let seen = isNoise ? [] : await recognise(whitened(bare, sure), { mode, language }, tell);
    if (
      first &&
      !isNoise &&
      surenessOf(seen) < UPRIGHT &&
      countOf([seen], ENGLISH) + countOf([seen], GERMAN) < COMMON_WORDS
    ) {
      const turned = turnQuarters(flat, 2);
      const others = await recognise(withoutRules(turned), { mode, language }, tell);
      if (surenessOf(others) > surenessOf(seen)) {
        [upright, seen] = [turned, others];
        flats[at] = turned;
      }
    }
    if (!pictures.has(upright)) pictures.set(upright, asDataUrl(upright));
    seenBefore[at] = seen;
    // The lines of each look have numbers of their own.
    const others = Math.max(0, ...seen.map(({ line }) => line)) + 1;
    const all = [...seen, ...sure.map((word) => ({ ...word, line: word.line + others }))];
    const isClear = surenessOf(all) >= UPRIGHT && sureWords(all) >= COMMON_WORDS;
    return { ...pageOfWords(upright, all), picture: pictures.get(upright)!, ...(isClear ? { isClear } : {}) };
  }
}

/** Shapes on a page: bills have some thousand, noise has tens of thousands, over each of which the recogniser ponders for minutes. */
const [MANY_SHAPES, MOST_SHAPES, SPECK] = [12_000, 40_000, 6];
/** Noise, gravel, cloth or a lens that was covered: more shapes than a page has letters, many that are specks, or the dark. */
export function isNoWriting({ points, width }: Grey): boolean {
  let dark = 0;
  let shapes = 0;
  for (let at = width + 1; at < points.length - 1; at++) {
    if (points[at]! >= HALF) continue;
    dark++;
    const above = at - width;
    if (points[at - 1]! >= HALF && points[above - 1]! >= HALF && points[above]! >= HALF && points[above + 1]! >= HALF)
      shapes++;
  }
  return shapes > MOST_SHAPES || dark > points.length / 2 || (shapes > MANY_SHAPES && dark < SPECK * shapes);
}
const HALF = 128;

/** A word that is read as surely as that, of 100, is not looked at again. */
const SURE = 85;
/** Lines of sure words without a number, or about settled numbers: a second look costs time and cannot better them. */
const sureLines = (words: readonly SeenWord[], isSettled: (word: SeenWord) => boolean): readonly SeenWord[] =>
  [...Map.groupBy(words, ({ line }) => line).values()]
    .filter((own) => {
      const numbers = own.filter(({ text }) => /[\d£€%]/.test(text));
      const open = numbers.filter((word) => !isSettled(word));
      if (open.length < numbers.length) return open.every(({ sure }) => sure >= SURE);
      return open.length === 0 && own.every(({ sure }) => sure >= SURE);
    })
    .flat();

const isWithin = (from: number, length: number): boolean => from > 0 && from < length;

/** The picture without some of its words. */
function whitened(picture: Grey, words: readonly SeenWord[]): Grey {
  if (words.length === 0) return picture;
  const points = picture.points.slice();
  for (const { x, y, width, height } of words) {
    for (let row = y; row < Math.min(picture.height, y + height); row++)
      points.fill(255, row * picture.width + x, row * picture.width + Math.min(picture.width, x + width));
  }
  return { ...picture, points };
}

/** Of the words of a bill a third or more are sure. Where next to none is, no other look helps, and over dirt each takes a minute. */
const LEAST_SURE = 0.05;
const sureWords = (words: readonly SeenWord[]): number =>
  words.filter(({ text, sure }) => sure >= SURE_OF_A_WORD && /\p{L}{3}/u.test(text)).length;
const SURE_OF_A_WORD = 70;

/** Mean sureness of the letters; dirt between the lines is short. */
function surenessOf(words: readonly SeenWord[]): number {
  const letters = words.reduce((sum, { text }) => sum + text.length, 0);
  return letters === 0 ? 0 : words.reduce((sum, { text, sure }) => sum + sure * text.length, 0) / letters;
}

const countOf = (pages: readonly (readonly Word[])[], words: RegExp): number =>
  pages.reduce((sum, page) => sum + page.filter(({ text }) => words.test(text)).length, 0);

function languageOf(pages: readonly Page[]): Language | undefined {
  const all = pages.map(({ words }) => words);
  const [german, english] = [countOf(all, GERMAN), countOf(all, ENGLISH)];
  return german === english ? undefined : german > english ? 'deu' : 'eng';
}

/** Half the resolution is enough to see a page by. */
function asDataUrl(flat: Grey): string {
  const bytes = encodePng(shrink(flat, 2));
  let letters = '';
  for (let at = 0; at < bytes.length; at += 0x2000) letters += String.fromCharCode(...bytes.subarray(at, at + 0x2000));
  return `data:image/png;base64,${btoa(letters)}`;
}

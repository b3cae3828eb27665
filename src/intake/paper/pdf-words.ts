/** A PDF to words with their places. Nothing of it is run or fetched: scripts, links and fonts stay where they are. */
import { Inflate } from 'fflate';
import type { Grey, Page, Word } from '../terms/paper-reading.ts';
import { pictureOfPage } from './pdf-picture.ts';
import { PdfPort } from './pdf-port.ts';
import { MOST_POINTS } from './picture.ts';

export type PdfFault = 'locked' | 'broken' | 'many-pages' | 'bomb' | 'no-text' | 'packed';

/** A bill has two to eight pages; what is longer is a contract or a book. */
export const MOST_PAGES = 20;
const MOST_WORDS = 20_000;
/** What one part of a file may unpack to, bytes; a page of text has some 100 kB. */
const MOST_UNPACKED = 32 * 1024 * 1024;
const MOST_UNPACKED_TOGETHER = 128 * 1024 * 1024;
const MOST_PACKED = 1032;
const PIECE = 64 * 1024;

const LATIN1 = new TextDecoder('latin1');
export const isPdf = (bytes: Uint8Array): boolean => LATIN1.decode(bytes.subarray(0, 1024)).includes('%PDF-');

interface Item {
  readonly str: string;
  readonly transform: readonly number[];
  readonly width: number;
}

/** A page with fewer words may be a picture with a stamp or a number on it. */
const FEW_WORDS = 12;

/**
 * Reads the words of each page, and the picture of a page that has hardly any; a fault where there is neither.
 * `onProgress` may throw to cancel.
 */
export async function readPdfWords(
  bytes: Uint8Array,
  takePicture: (picture: Grey) => readonly Grey[],
  onProgress?: (share: number) => void,
): Promise<{ readonly sheets: readonly (Page | Grey)[] } | { readonly fault: PdfFault }> {
  if (unpacksTooMuch(bytes)) return { fault: 'bomb' };
  reader ??= loadReader();
  const { getDocument, worker } = await reader;
  const opening = getDocument({
    worker,
    data: bytes.slice(),
    verbosity: 0,
    useSystemFonts: false,
    disableFontFace: true,
    useWasm: false,
    useWorkerFetch: false,
    stopAtErrors: false,
    enableXfa: false,
    BinaryDataFactory: Nothing,
    maxImageSize: MOST_POINTS,
  });
  try {
    const document = await opening.promise;
    if (document.numPages > MOST_PAGES) return { fault: 'many-pages' };
    const sheets: (Page | Grey)[] = [];
    let count = 0;
    for (let number = 1; number <= document.numPages && count < MOST_WORDS; number++) {
      onProgress?.((number - 1) / document.numPages);
      const page = await document.getPage(number);
      const { width, height, transform } = page.getViewport({ scale: 1 });
      const { items } = await page.getTextContent({ disableNormalization: false });
      const written = items.filter((item) => 'str' in item && item.str.trim() !== '') as Item[];
      if (!written.every(isSomewhere)) return { fault: 'broken' };
      const view = straight(written, transform);
      const upright = turnUpright(overprintDropped(written.flatMap((item) => wordsOf(item, view))), width, height);
      const picture = upright.words.length < FEW_WORDS ? await pictureOfPage(page) : undefined;
      if (picture === 'packed') return { fault: 'packed' };
      sheets.push(
        ...(picture
          ? takePicture(picture)
          : [{ ...upright, words: joinSpaced(joinPieces(inReadingOrder(joinPowers(upright.words)))) }]),
      );
      count += upright.words.length + (picture ? 1 : 0);
      if (picture) page.cleanup();
    }
    return count === 0 ? { fault: 'no-text' } : { sheets };
  } catch (error) {
    if (error instanceof Error && error.name === 'PasswordException') return { fault: 'locked' };
    if (error instanceof Error && /Exception$/.test(error.name)) return { fault: 'broken' };
    throw error;
  } finally {
    await opening.destroy();
  }
}

/** Fonts and tables of characters that the file asks for and does not hold stay where they are. */
class Nothing {
  fetch(): Promise<never> {
    return Promise.reject(NOTHING);
  }
}
const NOTHING = new Error('nothing is fetched');

let reader: ReturnType<typeof loadReader> | undefined;

/** Loaded once, when the first PDF comes, and one worker serves them all; while it loads, it says on the console that it cannot draw, which nobody asks of it. */
async function loadReader() {
  const { warn } = console;
  console.warn = () => undefined;
  try {
    const { WorkerMessageHandler } = await import('pdfjs-dist/legacy/build/pdf.worker.mjs');
    const { getDocument, PDFWorker } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const port = new PdfPort();
    const worker = PDFWorker.create({ port: port as unknown as Worker, verbosity: 0 });
    WorkerMessageHandler.initializeFromPort(port);
    return { getDocument, worker };
  } finally {
    console.warn = warn;
  }
}

/** Whether some packed part of the file grows beyond all that a page of text needs. Two packings in each other are none either. */
function unpacksTooMuch(bytes: Uint8Array): boolean {
  const text = LATIN1.decode(bytes);
  if (/\/F(ilter)?\s*\[[^\]]*(FlateDecode|LZWDecode|\/Fl\b)[^\]]*(FlateDecode|LZWDecode|\/Fl\b)/.test(text))
    return true;
  const packed: Uint8Array[] = [];
  for (let at = text.indexOf('stream'); at >= 0; at = text.indexOf('stream', at + 6)) {
    if (text.startsWith('end', at - 3)) continue;
    const from = at + (text[at + 6] === '\r' ? 8 : 7);
    const end = text.indexOf('endstream', from);
    const before = text.slice(Math.max(0, at - 400), at);
    const dictionary = before.slice(before.lastIndexOf(' obj') + 1);
    if (/LZWDecode/.test(dictionary) && end - from > PIECE) return true;
    if (/FlateDecode|\/Fl\b/.test(dictionary)) packed.push(bytes.subarray(from, end < 0 ? bytes.length : end));
  }
  // Deflate packs at most 1,032 to one: what is small enough need not be unpacked to know.
  const all = packed.reduce((sum, { length }) => sum + length, 0);
  const doubtful = all * MOST_PACKED > MOST_UNPACKED_TOGETHER ? packed : packed.filter(isDoubtful);
  let together = 0;
  for (const one of doubtful) {
    together += unpackedSize(one);
    if (together > MOST_UNPACKED_TOGETHER) return true;
  }
  return false;
}
const isDoubtful = ({ length }: Uint8Array): boolean => length * MOST_PACKED > MOST_UNPACKED;

function unpackedSize(packed: Uint8Array): number {
  let size = 0;
  // Two bytes of head stand before what is packed.
  const inflate = new Inflate((piece) => {
    size += piece.length;
  });
  try {
    for (let at = 2; at < packed.length && size <= MOST_UNPACKED; at += PIECE)
      inflate.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
  } catch {
    // What cannot be unpacked grows no further; the reader will say what is wrong with it.
  }
  return size > MOST_UNPACKED ? Number.POSITIVE_INFINITY : size;
}

interface Placed extends Word {
  /** Quarter turns of its line of writing. */
  readonly turns: number;
}

/** In a damaged file a place may be no number. */
const isSomewhere = ({ transform, width }: Item): boolean =>
  Number.isFinite(transform.reduce((sum, one) => sum + one, width));

/** An item may hold a whole line: its words share its width by their letters. */
function wordsOf({ str, transform, width }: Item, view: readonly number[]): Placed[] {
  const [a, b, c, d, e, f] = multiply(view, transform) as [number, number, number, number, number, number];
  const size = Math.hypot(c, d) || Math.hypot(a, b);
  const turns = (((Math.round(Math.atan2(b, a) / (Math.PI / 2)) % 4) + 4) % 4) as 0 | 1 | 2 | 3;
  const [alongX, alongY] = ALONG[turns];
  const letter = str.length > 0 ? width / str.length : 0;
  const wordAt = (text: string, index: number): Placed => ({
    text,
    x: e + alongX * letter * index,
    y: f + alongY * letter * index,
    width: letter * text.length,
    height: size,
    turns,
  });
  const words: Placed[] = [];
  for (let found = NO_GAP.exec(str); found; found = NO_GAP.exec(str)) words.push(wordAt(found[0], found.index));
  return words;
}
const NO_GAP = /\S+/g;
/** Which way writing runs after each number of quarter turns. */
const ALONG = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** Slopes above this many radians are meant, below the other they do no harm. */
const [MOST_SLOPE, LEAST_SLOPE] = [0.12, 0.002];
/** The view turned by the slope that most letters have, as on a page that was laid askew on a scanner. */
function straight(items: readonly Item[], view: readonly number[]): readonly number[] {
  const offOf = ({ transform }: Item) => {
    const angle = Math.atan2(transform[1]!, transform[0]!);
    return angle - Math.round(angle / (Math.PI / 2)) * (Math.PI / 2);
  };
  if (items.every((item) => item.transform[1] === 0 || Math.abs(offOf(item)) < LEAST_SLOPE)) return view;
  const slopes = items.flatMap((item) => new Array<number>(item.str.length).fill(offOf(item)));
  const slope = slopes.toSorted((a, b) => a - b)[slopes.length >> 1] ?? 0;
  if (Math.abs(slope) < LEAST_SLOPE || Math.abs(slope) > MOST_SLOPE) return view;
  const [cos, sin] = [Math.cos(slope), Math.sin(slope)];
  return multiply(view, [cos, -sin, sin, cos, 0, 0]);
}

/** Letters printed twice, a hair's breadth apart, are bold; the second time says nothing. */
function overprintDropped(words: readonly Placed[]): Placed[] {
  const seen = new Map<string, Placed[]>();
  return words.filter((word) => {
    const same = seen.get(word.text);
    const isAgain = same?.some(({ x, y, height }) => Math.hypot(x - word.x, y - word.y) < 0.15 * height);
    if (same) same.push(word);
    else seen.set(word.text, [word]);
    return !isAgain;
  });
}

const multiply = ([a1, b1, c1, d1, e1, f1]: readonly number[], [a2, b2, c2, d2, e2, f2]: readonly number[]) => [
  a1! * a2! + c1! * b2!,
  b1! * a2! + d1! * b2!,
  a1! * c2! + c1! * d2!,
  b1! * c2! + d1! * d2!,
  a1! * e2! + c1! * f2! + e1!,
  b1! * e2! + d1! * f2! + f1!,
];

/** Turns the page so that most of its words stand upright; those that stand otherwise are left out. */
function turnUpright(words: readonly Placed[], width: number, height: number): Page {
  const counts = [0, 0, 0, 0];
  for (const { turns, text } of words) counts[turns]! += text.length;
  const most = counts.indexOf(Math.max(...counts));
  const turned = words.filter(({ turns }) => turns === most);
  return {
    ...(most % 2 === 0 ? { width, height } : { width: height, height: width }),
    words: turned.map((word) => {
      const [x, foot] = turnBack(word, width, height);
      return { text: word.text, x, y: foot - word.height * FOOT, width: word.width, height: word.height };
    }),
  };
}

function turnBack({ x, y, turns }: Placed, width: number, height: number): readonly [number, number] {
  if (turns === 1) return [y, width - x];
  if (turns === 2) return [width - x, height - y];
  if (turns === 3) return [height - y, x];
  return [x, y];
}

/** What letters of any size stand on. */
const footOf = ({ y, height }: Word): number => y + height * FOOT;
const FOOT = 0.8;
const inReadingOrder = (words: readonly Word[]): Word[] =>
  words.toSorted((a, b) => Math.round(2 * footOf(a)) - Math.round(2 * footOf(b)) || a.x - b.x);

/** Fewer letters at even steps may be signs of a chart. */
const LEAST_SPACED = 3;
/** Letters set apart at even steps are one word. Takes and gives words in reading order. */
function joinSpaced(words: Word[]): Word[] {
  const isLetter = (word: Word | undefined): boolean => word?.text.length === 1;
  if (!words.some((word, i) => isLetter(word) && isLetter(words[i + 1]) && isLetter(words[i + 2]))) return words;
  const runs: Word[][] = [];
  for (const word of words) {
    const run = runs.at(-1);
    const [last, before] = [run?.at(-1), run?.at(-2)];
    const step = last ? word.x - last.x : 0;
    const isNext =
      last &&
      isLetter(last) &&
      isLetter(word) &&
      last.y === word.y &&
      last.height === word.height &&
      step > 0 &&
      step < 1.3 * word.height &&
      (!before || Math.abs(step - (last.x - before.x)) < 0.15 * word.height);
    if (isNext) run!.push(word);
    else runs.push([word]);
  }
  return runs.flatMap((run) => {
    const [first, last] = [run[0]!, run.at(-1)!];
    if (run.length < LEAST_SPACED) return run;
    return [{ ...first, text: run.map(({ text }) => text).join(''), width: last.x + last.width - first.x }];
  });
}

/** What small raised or lowered figures belong to, and how both are written in one. */
const RAISED: readonly (readonly [figure: RegExp, word: RegExp])[] = [
  [/^[23]$/, /(?<!\p{L})(?:m|ft|CO)$/iu],
  // Pence of a sum in large letters.
  [/^\d\d$/, /\d[.,]$/],
  [/^[.,]\d\d$/, /\d$/],
];

/** A small raised or lowered figure belongs to what stands before it: m³, ft³, CO2, £389.42. */
function joinPowers(words: readonly Word[]): readonly Word[] {
  const powers = new Map(
    words.flatMap((small) => {
      const kinds = RAISED.filter(([figure]) => figure.test(small.text));
      if (kinds.length === 0) return [];
      const unit = words.find(
        ({ text, x, y, width, height }) =>
          small.height < 0.85 * height &&
          Math.abs(small.x - x - width) < 0.15 * height &&
          Math.abs(small.y + small.height / 2 - y - height / 2) < height &&
          kinds.some(([, word]) => word.test(text)),
      );
      return unit ? [[unit, small] as const] : [];
    }),
  );
  if (powers.size === 0) return words;
  const joined = new Set(powers.values());
  return words.flatMap((word) => {
    const small = powers.get(word);
    if (joined.has(word)) return [];
    if (!small) return [word];
    const isPower = /(?:m|ft)$/i.test(word.text);
    const power = isPower ? (small.text === '3' ? '³' : '²') : small.text;
    return [{ ...word, text: word.text + power, width: small.x + small.width - word.x }];
  });
}

/** Pieces of one word set by themselves come together again. Takes words in reading order. */
function joinPieces(words: readonly Word[]): Word[] {
  const joined: Word[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    const gap = last ? word.x - last.x - last.width : Number.NaN;
    // A capital may be larger than the small capitals behind it.
    const touches =
      last && Math.abs(footOf(last) - footOf(word)) < 0.5 && gap > -0.1 * word.height && gap < 0.14 * word.height;
    if (touches)
      joined[joined.length - 1] = { ...last, text: last.text + word.text, width: word.x + word.width - last.x };
    else joined.push(word);
  }
  return joined;
}

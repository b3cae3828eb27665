/** Finds the words of a picture with Tesseract, compiled to WebAssembly; program and language data lie in node_modules, nothing is fetched. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { gunzipSync } from 'node:zlib';
import type { PageMode, Recognise, SeenWord } from '../intake/intake.ts';

/** What of the compiled program is used here. */
interface Tesseract {
  readonly FS: { writeFile(path: string, bytes: Uint8Array): void; unlink(path: string): void };
  readonly TessBaseAPI: new () => {
    Init(path: null, languages: string, engine: number): number;
    SetPageSegMode(mode: number): void;
    SetVariable(name: string, value: string): boolean;
    SetImageFile(exif: number, angle: number): number;
    Recognize(monitor: null): number;
    GetTSVText(page: number): string;
    Clear(): void;
  };
}
type Load = (options: {
  readonly TesseractProgress: (percent: number) => void;
  readonly print: (line: string) => void;
  readonly printErr: (line: string) => void;
}) => Promise<Tesseract>;

/** Page segmentation modes of Tesseract: one block of text; text here and there. */
const MODES: Readonly<Record<PageMode, number>> = { block: 6, sparse: 11 };
/** Its neural engine alone. */
const NEURAL = 1;

const require = createRequire(import.meta.url);
const CORE = 'tesseract.js-core/tesseract-core-simd-lstm.js';
const dataOf = (language: string) =>
  gunzipSync(readFileSync(require.resolve(`@tesseract.js-data/${language}/4.0.0_best_int/${language}.traineddata.gz`)));

/** Loads what it needs when the first picture comes, and each language once. */
export function makeRecogniser(): Recognise {
  let tell: ((share: number) => void) | undefined;
  const progress = (percent: number) => tell?.(percent / 100);
  const silent = () => undefined;
  let core: Promise<Tesseract> | undefined;
  const engines = new Map<string, InstanceType<Tesseract['TessBaseAPI']>>();

  async function engineFor(language: string) {
    core ??= (require(CORE) as Load)({ TesseractProgress: progress, print: silent, printErr: silent });
    const tesseract = await core;
    const ready = engines.get(language);
    if (ready) return { tesseract, engine: ready };
    const file = `${language}.traineddata`;
    tesseract.FS.writeFile(file, dataOf(language));
    const engine = new tesseract.TessBaseAPI();
    if (engine.Init(null, language, NEURAL) !== 0) throw new Error(`the language data of ${language} cannot be used`);
    tesseract.FS.unlink(file);
    engine.SetVariable('debug_file', '/dev/null');
    engines.set(language, engine);
    return { tesseract, engine };
  }

  return async ({ width, height, points }, { mode, language }, onProgress) => {
    const { tesseract, engine } = await engineFor(language);
    tell = onProgress;
    const head = new TextEncoder().encode(`P5\n${width} ${height}\n255\n`);
    const image = new Uint8Array(head.length + points.length);
    image.set(head);
    image.set(points, head.length);
    tesseract.FS.writeFile('/input', image);
    try {
      engine.SetPageSegMode(MODES[mode]);
      engine.SetImageFile(1, 0);
      if (engine.Recognize(null) !== 0) return [];
      return wordsOf(engine.GetTSVText(0));
    } finally {
      tell = undefined;
      engine.Clear();
      tesseract.FS.unlink('/input');
    }
  };
}

/** Rows of level 5 are words: level, page, block, paragraph, line, word, left, top, width, height, confidence, text. */
function wordsOf(table: string): SeenWord[] {
  const lines = new Map<string, number>();
  return table.split('\n').flatMap((row) => {
    const cells = row.split('\t');
    if (cells[0] !== '5' || !cells[11]?.trim()) return [];
    const [x, y, width, height, sure] = cells.slice(6, 11).map(Number) as [number, number, number, number, number];
    const key = cells.slice(1, 5).join(' ');
    if (!lines.has(key)) lines.set(key, lines.size);
    return [{ text: cells[11].trim(), x, y, width, height, sure, line: lines.get(key)! }];
  });
}

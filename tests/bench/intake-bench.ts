/** Speed of intake beside general CSV readers that only split the text. */
import { parse as parseSync } from 'csv-parse/sync';
import Papa from 'papaparse';
import { asJpeg } from '../../sample-bills/draw-page.ts';
import { drawPictures, PAPERS } from '../../sample-bills/make-paper.ts';
import { makeRecogniser } from '../../src/host/recogniser.ts';
import type { IntakeContext, Recognise } from '../../src/intake/intake.ts';
import { decodePicture } from '../../src/intake/paper/picture.ts';
import { readFile } from '../../src/intake/read-file.ts';
import { readPaper } from '../../src/intake/read-paper.ts';
import type { Grey } from '../../src/intake/terms/paper-reading.ts';
import { kWhPerUnit } from '../../src/reference/fuels.ts';
import { type BenchRow, medianMs, mediansInTurn } from './bench-row.ts';

const ROWS = 175_200;
const WHAT = `${ROWS.toLocaleString('en-GB')} half-hours, bytes to checked days and series`;

const context: IntakeContext = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

/** Ten years of half-hours in UTC from a fixed seed. */
export function tenYears(rows = ROWS): Uint8Array {
  const lines = ['start,Electricity (kWh)'];
  let seed = 12_345;
  let at = Date.UTC(2015, 0, 1);
  for (let i = 0; i < rows; i++, at += 1_800_000) {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    lines.push(`${new Date(at).toISOString().slice(0, 19)}Z,${((seed >>> 12) % 2000) / 1000}`);
  }
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
}

/** A page of a bill, its words found and understood, beside the words alone. */
export async function paperBench(): Promise<BenchRow[]> {
  const [name, bytes] = PAPERS.find(([one]) => one === 'two-rates-new-price.pdf')!;
  const { preview } = await readPaper(name, bytes, {}, context);
  if (!preview.paper?.isWhole) throw new Error(`${name} is not read whole`);
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const readWords = async () => {
    const opening = getDocument({ data: bytes.slice(), verbosity: 0 });
    await (await (await opening.promise).getPage(1)).getTextContent();
    await opening.destroy();
  };
  const [value, words] = await mediansInTurn([() => readPaper(name, bytes, {}, context), readWords], 81, 20);
  const peer = { what: 'pdfjs-dist, the words of the page alone', value: words! };
  return [{ what: 'A bill as PDF, one page, to proved values', value: value!, unit: 'ms', peer, aim: 2 * words! }];
}

/** A photographed page in full, beside one plain pass of the recogniser over the same picture. */
export async function pictureBench(): Promise<BenchRow[]> {
  const [, bytes] = drawPictures()[1]!;
  const photo = await decodePicture(bytes);
  if (typeof photo === 'string') throw new Error(`the photograph is not read: ${photo}`);
  const recognise = makeRecogniser();
  let passes = 0;
  const counted: Recognise = (...input) => {
    passes++;
    return recognise(...input);
  };
  const seeing = { ...context, recognise: counted };
  const read = (picture: Uint8Array, glance = false) => readPaper('photo.jpg', picture, { paper: { glance } }, seeing);
  const spoilt = stained(photo);
  const { preview } = await read(spoilt);
  if (preview.paper?.isWhole !== false || passes !== 2) throw new Error('the stained bill is not looked at twice');
  const plain = await medianMs(() => recognise(photo, { mode: 'block', language: 'eng' }), 5, 1);
  const peer = { what: 'Tesseract, one plain pass over the photograph', value: plain };
  const row = (what: string, value: number, times: number): BenchRow => ({
    what,
    value,
    unit: 'ms',
    peer,
    aim: times * plain,
  });
  const whole = await medianMs(() => read(bytes), 5, 1);
  const both = await medianMs(() => read(spoilt), 5, 1);
  // Another byte at its end each time, since what was seen at a glance is kept for the whole reading.
  const other = () => Buffer.concat([spoilt, Uint8Array.of(passes % 256)]);
  const first = await medianMs(() => read(other(), true), 5, 1);
  return [
    row('A photographed bill whose first look proves all', whole, 2.5),
    row('A photographed bill with a stain, in need of both looks', both, 2.5),
    row('… its first fields', first, 2),
  ];
}

/** A stain over the middle of one charge, so that no sum proves it. */
function stained({ width, height, points }: Grey): Uint8Array {
  const picture = { width, height, points: points.slice() };
  const [left, top] = [Math.round(width * 0.2), Math.round(height * 0.45)];
  for (let y = top; y < top + height * 0.012; y++)
    picture.points.fill(120, y * width + left, y * width + left + Math.round(width * 0.5));
  return asJpeg(picture, 90);
}

export async function intakeBench(): Promise<BenchRow[]> {
  const bytes = tenYears();
  const { intervals, preview } = readFile('ten-years.csv', bytes, {}, context);
  const present = preview.series[0]?.present;
  if (present !== ROWS || intervals.length !== 1) throw new Error(`intake kept ${present} of ${ROWS} readings`);
  const ours = await medianMs(() => readFile('ten-years.csv', bytes, {}, context));
  const text = () => new TextDecoder().decode(bytes);
  const papa = await medianMs(() => Papa.parse(text(), { skipEmptyLines: true }));
  const csvParse = await medianMs(() => parseSync(text(), { skip_empty_lines: true }), 5, 1);
  const row = (peer: string, value: number): BenchRow => ({
    what: WHAT,
    value: ours,
    unit: 'ms',
    peer: { what: peer, value },
    aim: 150,
  });
  return [
    row('papaparse, the same file to strings only', papa),
    row('csv-parse, the same file to strings only', csvParse),
  ];
}

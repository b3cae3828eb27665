import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { makeHeicUnpacker } from '../../../src/host/heic.ts';
import { makeRecogniser } from '../../../src/host/recogniser.ts';
import { bundle, type IntakePreview, type Recognise } from '../../../src/intake/intake.ts';
import { findSheets } from '../../../src/intake/paper/find-sheet.ts';
import { flatten, withoutRules } from '../../../src/intake/paper/flatten.ts';
import { isNoWriting, lookAtSheets } from '../../../src/intake/paper/look-at-sheets.ts';
import { decodePicture } from '../../../src/intake/paper/picture.ts';
import { encodePng } from '../../../src/intake/paper/png.ts';
import { readPages, readPaper } from '../../../src/intake/read-paper.ts';
import type { Grey } from '../../../src/intake/terms/paper-reading.ts';

const unpackHeic = makeHeicUnpacker();
const context = { ...intakeContext('Europe/London', '2026-11-25'), recognise: makeRecogniser(), unpackHeic };
/** The photograph among the samples, as a telephone would have kept it. */
const heic = () => new Uint8Array(readFileSync('tests/unit/intake/two-rates-photo.heic'));
const read = async (name: string, bytes: Uint8Array) => (await readPaper(name, bytes, {}, context)).preview;
const refusals = ({ remarks }: IntakePreview) =>
  remarks.filter(({ weight }) => weight === 'refusal').map(({ code }) => code);

describe('a scanned bill', () => {
  test('its words are recognised, and its sums prove them', async () => {
    const { paper, series } = await read('gas-scan.png', readFileSync('sample-bills/paper/gas-scan.png'));
    expect(paper!.isWhole).toBe(true);
    expect(paper!.pages[0]!.picture).toMatch(/^data:image\/png;base64,/);
    expect(series[0]!.periods).toEqual([
      { from: '2026-03-01', to: '2026-06-01', kWh: 3559, costPence: 26_729, quality: 'estimated', row: 1 },
    ]);
  });
});

describe('a picture that is no bill, or none that can be read', () => {
  const plain = (width: number, height: number, shade: number) =>
    encodePng({ width, height, points: new Uint8Array(width * height).fill(shade) });
  const huge = () => {
    const bytes = plain(400, 400, 255);
    new DataView(bytes.buffer).setUint32(16, 60_000);
    new DataView(bytes.buffer).setUint32(20, 60_000);
    return bytes;
  };
  /** A round head, two pointed ears, eyes, mouth and whiskers. */
  const cat = () => {
    const [width, height] = [420, 420];
    const points = new Uint8Array(width * height).fill(235);
    const isCat = (x: number, y: number) => {
      const [u, v] = [Math.abs(x - 210), y - 230];
      const isHead = u * u + v * v < 120 * 120;
      const isEar = v < -60 && v > -170 && u > 40 && u < 40 + (v + 170) * 0.6;
      const isEye = (u - 45) ** 2 + (v + 20) ** 2 < 18 * 18;
      const isWhisker = v > 20 && v < 60 && v % 14 < 2 && u > 30 && u < 180;
      return ((isHead || isEar) && !isEye) !== isWhisker;
    };
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++) if (isCat(x, y)) points[y * width + x] = 60 + ((x * 7 + y * 13) % 40);
    return encodePng({ width, height, points });
  };
  const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const cases: readonly (readonly [string, () => Uint8Array, string])[] = [
    ['an empty page', () => plain(400, 500, 250), 'picture-no-bill'],
    ['a cat', cat, 'picture-no-bill'],
    ['60,000 points wide and high', huge, 'picture-large'],
    ['a stamp', () => plain(40, 50, 250), 'picture-small'],
    ['cut short', () => plain(400, 500, 250).subarray(0, 60), 'picture-broken'],
    ['AVIF', () => latin('\0\0\0\u0018ftypavif\0\0\0\0mif1avif'), 'picture-kind'],
    ['a head of HEIC and no more', () => latin('\0\0\0\u0018ftypheic\0\0\0\0mif1heic'), 'picture-broken'],
    ['HEIC cut short', () => heic().subarray(0, 9000), 'picture-broken'],
  ];
  test.each(cases)('%s', async (_name, make, code) => {
    const preview = await read('picture.png', make());
    expect(refusals(preview)).toEqual([code]);
    expect(preview.series).toEqual([]);
  });
});

test('a page among several that is not read here is refused by its name, and never left out', async () => {
  const webp = Uint8Array.from('RIFF\0\0\0\0WEBPVP8 ', (letter) => letter.charCodeAt(0));
  const scan = new Uint8Array(readFileSync('sample-bills/paper/gas-scan.png'));
  const { bytes: pages } = await bundle([
    ['front.png', scan],
    ['back.webp', webp],
  ]);
  const { remarks, series } = await read('front (2).zip', pages);
  expect(remarks.map(({ code, file }) => [code, file])).toEqual([['picture-kind', 'back.webp']]);
  expect(series).toEqual([]);
});

test('half a bill in a picture says how to take it again; the same in a PDF does not', () => {
  const words = ['Units', '416', 'kWh', 'at', '30.40p', '£126.46'].map((text, i) => ({
    text,
    x: 50 + 70 * i,
    y: 60,
    width: 6 * text.length,
    height: 10,
  }));
  const page = { width: 600, height: 800, words };
  const codes = (own: object) =>
    readPages('half.jpg', [{ ...page, ...own }], { carrier: 'electricity' }, context).preview.remarks.map(
      ({ code }) => code,
    );
  expect(codes({ picture: 'data:image/png;base64,' })).toEqual(
    expect.arrayContaining(['paper-total-asked', 'paper-period-asked', 'picture-unclear']),
  );
  expect(codes({})).not.toContain('picture-unclear');
});

describe('a picture without a bill', () => {
  const sheet = { width: 300, height: 400, points: new Uint8Array(120_000).fill(255) };
  const seen = (sure: number) =>
    'Statement of account with the savings bank of a small town'
      .split(' ')
      .map((text, i) => ({ text, x: 10, y: 10 + 20 * i, width: 40, height: 12, sure, line: i }));
  const looksAt = async (sure: number) => {
    let count = 0;
    const recognise: Recognise = async () => {
      count++;
      return seen(sure);
    };
    const looks = lookAtSheets([sheet], recognise, 'Europe/London');
    const { pages } = (await looks.next())!;
    const once = count;
    await looks.next();
    const { remarks } = readPages('bank.jpg', pages, {}, context).preview;
    return { again: count > once, codes: remarks.map(({ code }) => code) };
  };
  test('that is read with certainty needs another paper, not a better picture', async () => {
    expect(await looksAt(95)).toEqual({ again: true, codes: ['picture-no-use'] });
  });
  test('of which no word is sure is not looked at again', async () => {
    expect(await looksAt(25)).toEqual({ again: false, codes: ['picture-no-bill'] });
  });
});

describe('a page upside down', () => {
  const flat = (width: number, height: number, first: number) => {
    const points = new Uint8Array(width * height).fill(255);
    points[0] = first;
    return { width, height, points };
  };
  const seen = (text: string, sure: number) => [{ text, x: 10, y: 10, width: 40, height: 12, sure, line: 0 }];
  test('is turned where that is recognised with more sureness', async () => {
    // The first point is dark when the page stands upright.
    const recognise: Recognise = async ({ points }) => (points[0] === 0 ? seen('Electricity', 95) : seen('ʎʇı', 30));
    const upright = flat(300, 400, 0);
    const turned = { ...upright, points: upright.points.toReversed() };
    const look = await lookAtSheets([turned], recognise, 'Europe/London').next();
    expect(look!.pages[0]!.words.map(({ text }) => text)).toEqual(['Electricity']);
  });
});

describe('a picture without writing', () => {
  /** Even numbers of 8 bits from one seed (the generator of Park and Miller, 1988). */
  function* chances() {
    for (let at = 4711; ; ) {
      at = (at * 48_271) % 2_147_483_647;
      yield at % 256;
    }
  }
  test('the recogniser never ponders over noise', async () => {
    const drawn = chances();
    const points = Uint8Array.from({ length: 1500 * 1200 }, () => drawn.next().value!);
    const recognise: Recognise = () => Promise.reject(new Error('noise was recognised'));
    const look = await lookAtSheets([{ width: 1200, height: 1500, points }], recognise, 'Europe/London').next();
    expect(look!.pages[0]!.words).toEqual([]);
  });
  test('a covered lens is no writing, and a page with some dark bands is', () => {
    const [width, height] = [400, 500];
    const dark = (share: number) =>
      Uint8Array.from({ length: width * height }, (_, i) => (i < share * width * height ? 10 : 255));
    expect(isNoWriting({ width, height, points: dark(1) })).toBe(true);
    expect(isNoWriting({ width, height, points: dark(0.3) })).toBe(false);
  });
  test('a page full of small print is none', () => {
    const [width, height] = [1650, 2340];
    const points = new Uint8Array(width * height).fill(255);
    // 19,000 letters of two strokes each, in 110 lines.
    for (let line = 0; line < 110; line++)
      for (let x = 60; x < width - 60; x += 9)
        for (let y = 40 + line * 20; y < 54 + line * 20; y++)
          for (const at of [x, x + 4]) points.fill(0, y * width + at, y * width + at + 2);
    expect(isNoWriting({ width, height, points })).toBe(false);
  });
});

describe('reading that is stopped', () => {
  test('ends with the look that was under way', async () => {
    const bytes = encodePng({ width: 400, height: 500, points: new Uint8Array(200_000).fill(250) });
    const stop = (share: number) => {
      if (share > 0.2) throw new Error('stopped');
    };
    const told: Recognise = async (_, __, onProgress) => {
      onProgress?.(0.5);
      return [];
    };
    const reading = readPaper('bill.png', bytes, {}, { ...context, recognise: told, onProgress: stop });
    await expect(reading).rejects.toThrow('stopped');
  });
});

test('a picture of a telephone shows what its JPEG shows', async () => {
  const jpeg = new Uint8Array(readFileSync('sample-bills/paper/two-rates-photo.jpg'));
  const [seen, meant] = [await decodePicture(heic(), unpackHeic), await decodePicture(jpeg)];
  if (typeof seen === 'string' || typeof meant === 'string') throw new Error(`${seen} ${meant}`);
  expect([seen.width, seen.height]).toEqual([meant.width, meant.height]);
  const apart = meant.points.reduce((sum, point, i) => sum + Math.abs(point - seen.points[i]!), 0);
  expect(apart / meant.points.length).toBeLessThan(8);
  expect(unpackHeic(heic(), 1_000_000)).toBe('large');
  expect(await decodePicture(heic())).toBe('picture-kind');
});

test('bands of colour and bars on a page do not lay it on its side', async () => {
  const scan = await decodePicture(readFileSync('sample-bills/paper/gas-scan.png'));
  if (typeof scan === 'string') throw new Error(scan);
  const points = scan.points.slice();
  // In the empty foot of the page, as under the letters of a bill.
  for (let band = 0; band < 6; band++) {
    const top = Math.round(scan.height * (0.7 + band * 0.045));
    for (let y = top; y < top + scan.height * 0.022; y++)
      points.fill(40, y * scan.width + 40, (y + 1) * scan.width - 40);
  }
  const [page] = flatten({ ...scan, points });
  expect(page!.height).toBeGreaterThan(page!.width);
});

test('of a screen at night the light letters are read as dark ones on white', async () => {
  const scan = await decodePicture(readFileSync('sample-bills/paper/gas-scan.png'));
  if (typeof scan === 'string') throw new Error(scan);
  const night = scan.points.map((point) => 20 + ((255 - point) * 200) / 255);
  const [[page], [same]] = [flatten({ ...scan, points: night }), flatten(scan)];
  const darkIn = ({ points }: Grey) => points.filter((point) => point < 128).length / points.length;
  expect(page!.height).toBeGreaterThan(page!.width);
  expect(Math.abs(darkIn(page!) / darkIn(same!) - 1)).toBeLessThan(0.15);
});

test('the rules of a table are taken out, letters and bars stay', () => {
  const [width, height] = [400, 200];
  const points = new Uint8Array(width * height).fill(255);
  const ink = (left: number, top: number, across: number, down: number) => {
    for (let y = top; y < top + down; y++) points.fill(20, y * width + left, y * width + left + across);
  };
  const rules: Parameters<typeof ink>[] = [
    [20, 50, 360, 3],
    [20, 100, 360, 3],
    [200, 20, 3, 160],
  ];
  for (const rule of rules) ink(...rule);
  // A stem of a letter, one that stands on a rule, and a bar of a chart.
  ink(60, 60, 4, 30);
  ink(100, 70, 4, 30);
  ink(40, 130, 300, 20);
  const bare = withoutRules({ width, height, points }).points;
  const at = (x: number, y: number) => bare[y * width + x];
  expect([at(30, 51), at(300, 101), at(201, 30), at(201, 80)]).toEqual([255, 255, 255, 255]);
  expect([at(61, 75), at(102, 80), at(60, 140)]).toEqual([20, 20, 20]);
});

describe('sheets on a table', () => {
  const [width, height] = [600, 440];
  const draw = (brightness: (x: number, y: number) => number) => {
    const points = Uint8Array.from({ length: width * height }, (_, i) => brightness(i % width, Math.floor(i / width)));
    return findSheets({ width, height, points }).map((corners) => corners.flat().map((at) => Math.round(at / 10)));
  };
  test('two in one picture are two, from the left', () => {
    const isSheet = (x: number, y: number) => y > 30 && y < 410 && ((x > 30 && x < 280) || (x > 320 && x < 570));
    expect(draw((x, y) => (isSheet(x, y) ? 230 : 70))).toEqual([
      [3, 3, 28, 3, 28, 41, 3, 41],
      [32, 3, 57, 3, 57, 41, 32, 41],
    ]);
  });
  test('under light that makes part of the table brighter than part of the sheet', () => {
    const isSheet = (x: number, y: number) => x > 60 && x < 540 && y > 40 && y < 400;
    const light = (x: number) => 0.35 + (0.65 * x) / width;
    const found = draw((x, y) => (isSheet(x, y) ? 230 : 130) * light(x));
    expect(found).toHaveLength(1);
    found[0]!.forEach((at, i) => {
      expect(Math.abs(at - [6, 4, 54, 4, 54, 40, 6, 40][i]!)).toBeLessThan(2);
    });
  });
  test('a dark head across a page is part of the page', () => {
    expect(draw((_, y) => (y < 60 ? 50 : 240))).toEqual([]);
  });
  test('a frame on a page is no sheet', () => {
    const [left, right, top, bottom] = [100, 500, 60, 380];
    const isIn = (x: number, y: number, by: number) =>
      x > left - by && x < right + by && y > top - by && y < bottom + by;
    expect(draw((x, y) => (isIn(x, y, 3) && !isIn(x, y, -3) ? 20 : 240))).toEqual([]);
  });
  test('a shadow over a sheet is cut out with it', () => {
    const isSheet = (x: number, y: number) => x > 60 && x < 540 && y > 40 && y < 400;
    const isShaded = (x: number, y: number) => (x - 100) ** 2 + (y - 300) ** 2 < 130 ** 2;
    expect(draw((x, y) => (isSheet(x, y) ? (isShaded(x, y) ? 118 : 230) : isShaded(x, y) ? 30 : 60))).toEqual([
      [6, 4, 54, 4, 54, 40, 6, 40],
    ]);
  });
});

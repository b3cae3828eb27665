/** Pages that do not lie flat: curled, and in the shade of their own folds. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { makeRecogniser } from '../../../src/host/recogniser.ts';
import { flatten } from '../../../src/intake/paper/flatten.ts';
import { gatherSheets } from '../../../src/intake/paper/gather-sheets.ts';
import { redraw } from '../../../src/intake/paper/grey.ts';
import { levelWords } from '../../../src/intake/paper/level-words.ts';
import { decodePicture } from '../../../src/intake/paper/picture.ts';
import { encodePng } from '../../../src/intake/paper/png.ts';
import { wavesOf } from '../../../src/intake/paper/waves.ts';
import { readPages, readPaper } from '../../../src/intake/read-paper.ts';
import type { Grey, Page, Recognise } from '../../../src/intake/terms/paper-reading.ts';
import { chanceOf } from '../../prove/chance.ts';
import { BENDS, bentPage } from '../../prove/paper/bend.ts';
import { layOutBill } from '../../prove/paper/lay-out.ts';
import { holdAgainst, readSeen, wordsOf } from '../../prove/paper/read-back.ts';

async function scan(): Promise<Grey> {
  const picture = await decodePicture(readFileSync('sample-bills/paper/gas-scan.png'));
  if (typeof picture === 'string') throw new Error(picture);
  return picture;
}

test('a page whose right side rises, with the shade of a crease across it, is read to its last penny', async () => {
  const { width, height, points } = await scan();
  const rises = (x: number) => 0.045 * height * Math.max(0, x / width - 0.25) ** 2 * 1.8;
  const curled = redraw({ width, height, points }, { width, height }, (x, y, into) => {
    into[0] = x;
    into[1] = y - rises(x);
  });
  const lit = curled.points.map((point, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    const off = (y - 0.22 * height - 0.3 * x) / (0.012 * height);
    return point * (1 - 0.45 * Math.exp(-off * off));
  });
  const context = { ...intakeContext('Europe/London', '2026-11-25'), recognise: makeRecogniser() };
  const { preview } = await readPaper('curled.png', encodePng({ width, height, points: lit }), {}, context);
  expect(preview.paper!.isWhole).toBe(true);
  const [period] = preview.series[0]!.periods!;
  expect(period).toMatchObject({ from: '2026-03-01', to: '2026-06-01', kWh: 3559, costPence: 26_729 });
});

test('sums that lie half a row above their names, with nothing between them, are read beside them', async () => {
  const gathered = await gatherSheets(new Uint8Array(readFileSync('sample-bills/paper/gas.pdf')), undefined);
  const [page] = (gathered as { sheets: readonly Page[] }).sheets;
  const [fall, height] = [-0.018, 842];
  const recognise: Recognise = async (picture) => {
    const scale = height / picture.height;
    return page!.words.map((word, line) => {
      const y = word.y + fall * (word.x - page!.width / 2) + 0.08 * word.height;
      const box = { x: word.x / scale, y: y / scale, width: word.width / scale, height: (0.72 * word.height) / scale };
      return { text: word.text, ...box, sure: 95, line };
    });
  };
  const context = { ...intakeContext('Europe/London', '2026-11-25'), recognise };
  const blank = encodePng({ width: 420, height: 594, points: new Uint8Array(420 * 594).fill(250) });
  const { paper } = (await readPaper('bent.png', blank, {}, context)).preview;
  expect(paper!.isWhole).toBe(true);
});

test.each([
  ['waves', 33],
  ['a curled edge', 26],
  ['a fold', 30],
])('%s: where the words alone do not tell how a row leans, the lean that proves more does', (bend, number) => {
  const made = layOutBill(number, 120_000 + number);
  const chance = chanceOf(70_000 + number);
  const pages = wordsOf(made.pages).map((page) => bentPage(page, BENDS[bend]!(chance)));
  const context = intakeContext('Europe/London', '2026-11-25');
  const level = pages.map((page) => ({ ...levelWords(page), picture: 'data:' }));
  expect(readPages('bill.jpg', level, {}, context).preview.paper!.isWhole).toBe(false);
  const seen = readSeen(pages);
  expect(seen.paper!.isWhole).toBe(true);
  expect(holdAgainst(made, seen)).toMatchObject({ wrong: [], keptWrong: false });
});

describe('waves of lines', () => {
  const size = { width: 560, height: 800 };
  /** Thirty lines of short strokes, each point moved down by so much. */
  const lines = (down: (x: number, y: number) => number) => {
    const ink: number[] = [];
    for (let y = 60; y < 740; y += 23)
      for (let x = 50; x < 510; x++)
        if (x % 7 < 3) for (let high = 0; high < 6; high++) ink.push(x, y + high + down(x, y));
    return Float32Array.from(ink);
  };
  test('are found where a page bulges and leans otherwise below than above', () => {
    const down = (x: number, y: number) => 14 * Math.sin(x / 180) * (y / 800) + 9 * (x / 560 - 0.5) ** 2;
    const waves = wavesOf(lines(down), size)!;
    for (const y of [100, 400, 700]) {
      const start = waves(280, y) - y - down(280, y);
      for (const x of [80, 180, 380, 480]) expect(Math.abs(waves(x, y) - y - down(x, y) - start)).toBeLessThan(1.6);
    }
  });
  test('are none where lines lie level', () => {
    expect(
      wavesOf(
        lines(() => 0),
        size,
      ),
    ).toBeUndefined();
  });
});

test('the shade of a fold goes, a band of colour with white letters stays', () => {
  const [width, height] = [1200, 1700];
  const points = new Uint8Array(width * height).fill(235);
  const set = (left: number, right: number, top: number, bottom: number, value: (now: number) => number) => {
    for (let y = top; y < bottom; y++)
      for (let x = left; x < right; x++) points[y * width + x] = value(points[y * width + x]!);
  };
  const letters = (top: number, shade: number) => {
    for (let x = 150; x < 1000; x += (x - 150) % 60 < 40 ? 8 : 20) set(x, x + 4, top, top + 22, () => shade);
  };
  for (let top = 200; top < 1500; top += 60) letters(top, 30);
  set(100, 1100, 1190, 1270, () => 140);
  letters(1218, 235);
  for (let y = 550; y < 750; y++)
    set(0, width, y, y + 1, (now) => now * (1 - 0.45 * Math.exp(-(((y - 650) / 50) ** 2))));
  const [page] = flatten({ width, height, points });
  const scale = page!.height / height;
  const at = (x: number, y: number) => page!.points[Math.round(y * scale) * page!.width + Math.round(x * scale)]!;
  const paper = [120, 560, 1080].map((x) => at(x, 655));
  expect(Math.min(...paper)).toBeGreaterThan(225);
  expect(Math.max(at(152, 630), at(152, 690))).toBeLessThan(60);
  expect(at(152, 1230) - at(148, 1230)).toBeGreaterThan(90);
});

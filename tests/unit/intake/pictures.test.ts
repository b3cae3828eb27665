import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { makeRecogniser } from '../../../src/host/recogniser.ts';
import type { IntakePreview } from '../../../src/intake/intake.ts';
import { encodePng } from '../../../src/intake/paper/png.ts';
import { readPaper } from '../../../src/intake/read-paper.ts';

const context = { ...intakeContext('Europe/London', '2026-11-25'), recognise: makeRecogniser() };
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
  const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const cases: readonly (readonly [string, () => Uint8Array, string])[] = [
    ['an empty page', () => plain(400, 500, 250), 'picture-no-bill'],
    ['60,000 points wide and high', huge, 'picture-large'],
    ['a stamp', () => plain(40, 50, 250), 'picture-small'],
    ['cut short', () => plain(400, 500, 250).subarray(0, 60), 'picture-broken'],
    ['HEIC', () => latin('\0\0\0\u0018ftypheic\0\0\0\0mif1heic'), 'picture-kind'],
  ];
  test.each(cases)('%s', async (_name, make, code) => {
    const preview = await read('picture.png', make());
    expect(refusals(preview)).toEqual([code]);
    expect(preview.series).toEqual([]);
  });
});

/** Bills as photographs and scans: what is proved of what was recognised is right, what is not is asked. */
import { asJpeg, drawPage, flatView, type View } from '../../sample-bills/draw-page.ts';
import type { PlacedText } from '../../sample-bills/write-pdf.ts';
import { intakeContext } from '../../src/desk/take-in.ts';
import { makeRecogniser } from '../../src/host/recogniser.ts';
import { bundle } from '../../src/intake/intake.ts';
import { turnQuarters } from '../../src/intake/paper/grey.ts';
import { readPaper } from '../../src/intake/read-paper.ts';
import { type Chance, chanceOf } from './chance.ts';
import { LAYOUTS, layOutBill } from './paper/lay-out.ts';
import { holdAgainst, type ReadBack, tableOfBacks } from './paper/read-back.ts';
import type { ProofTable } from './table.ts';

/** One in three lies on a scanner, the others are held over a table; some are turned or upside down. */
export function takePicture(texts: readonly PlacedText[], chance: Chance): Uint8Array {
  const isScan = chance.yes(1 / 3);
  const drawn = drawPage(texts, isScan ? scanView(chance) : photoView(chance));
  const quarters = chance.yes(0.2) ? chance.pick([1, 2, 3]) : 0;
  return asJpeg(turnQuarters(drawn, quarters), chance.pick([60, 75, 90]));
}

function scanView(chance: Chance): View {
  const flat = flatView(chance.pick([150, 200, 300]), chance.random);
  const lean = chance.uniform(-0.02, 0.02);
  const [dx, dy] = [(lean * flat.height) / 2, (lean * flat.width) / 2];
  const { width, height } = flat;
  const corners = [
    [dx, -dy],
    [width + dx, dy],
    [width - dx, height + dy],
    [-dx, height - dy],
  ] as const;
  return { ...flat, corners, noise: chance.uniform(0, 8) };
}

function photoView(chance: Chance): View {
  const [width, height] = [chance.uniform(1700, 2600), 0].map(Math.round) as [number, number];
  const high = Math.round(width * 1.33) + height;
  const far = chance.uniform(0.06, 0.14);
  const lean = chance.uniform(-0.09, 0.09);
  const corner = (x: number, y: number) => {
    const [u, v] = [
      (x - 0.5) * (1 - far) + chance.uniform(-0.04, 0.04),
      (y - 0.5) * (1 - far) + chance.uniform(-0.04, 0.04),
    ];
    const [a, b] = [u * width, v * high];
    return [
      width / 2 + a * Math.cos(lean) - b * Math.sin(lean),
      high / 2 + a * Math.sin(lean) + b * Math.cos(lean),
    ] as const;
  };
  return {
    width,
    height: high,
    corners: [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)],
    shade: chance.uniform(0, 0.55),
    light: chance.uniform(0, 6.28),
    noise: chance.uniform(2, 12),
    blur: chance.pick([0, 0, 1]),
    random: chance.random,
  };
}

/** @param count bills; a page takes seconds, so that all layouts have their turn only from 76 on */
export async function provePictures(count = 60): Promise<ProofTable> {
  const recognise = makeRecogniser();
  const backs: ReadBack[] = [];
  for (let seed = 0; seed < count; seed++) {
    const made = layOutBill(seed * 7, 90_000 + seed);
    const chance = chanceOf(40_000 + seed);
    const pages = made.pages.map((texts, i) => [`page ${i + 1}.jpg`, takePicture(texts, chance)] as const);
    const { bytes } = await bundle(pages);
    const zone = made.bill.language === 'de' ? 'Europe/Berlin' : 'Europe/London';
    const { preview } = await readPaper('bill.zip', bytes, {}, { ...intakeContext(zone, '2026-11-25'), recognise });
    const back = holdAgainst(made, preview);
    if (back.wrong.length > 0 || back.keptWrong) console.log(`seed ${seed}, ${made.layout}: ${back.wrong.join('; ')}`);
    backs.push(back);
  }
  return tableOfBacks(`Bills as photographs and scans: ${count} bills in ${LAYOUTS} layouts`, backs);
}

/** Damaged copies of the corpus: bytes, spans, cells and lines changed, and parts within workbooks. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { unzipSync, zipSync } from 'fflate';

const CORPUS = fileURLToPath(new URL('../tests/corpus/', import.meta.url));

export interface CorpusFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly isWorkbook: boolean;
}

/** Small seeded generator (mulberry32), so that a failing run can be had again. */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const TOKENS = [
  '"',
  '""',
  ',',
  ';',
  '\t',
  '\r',
  '\n',
  '\r\n',
  '\u0000',
  '-',
  '-1',
  '1e308',
  '1e-308',
  'NaN',
  'Infinity',
  '1,234,567.8',
  '1.234,5',
  '2025-02-30',
  '31/12/2025',
  '13/13/2025',
  '2025-03-30 01:30',
  '2025-10-26 01:30',
  '9999-12-31',
  '0001-01-01',
  '24:00',
  '25:61',
  '+14:00',
  'Z',
  'kWh',
  'Wh',
  'm3',
  '°C',
  'Total',
  'From',
  'To',
  'Date',
  '£',
  '999999999999999999999',
  '[',
  '{',
  '}',
  'null',
  '0',
  '00:00',
  'HH01',
  'Q1 2025',
  '\uFEFF',
  'é',
  '=cmd',
  '<',
  '</IntervalReading>',
  '<value>',
  '<!DOCTYPE a [<!ENTITY b "c">]>',
  '&b;',
  '<![CDATA[',
  '-->',
  '<powerOfTenMultiplier>12</powerOfTenMultiplier>',
  '<duration>0</duration>',
  '<duration>7200</duration>',
  '<uom>999</uom>',
  '<c r="XFD1048576"><v>1</v></c>',
  '<v>1e300</v>',
  '99.9',
  'LOCATION,',
  'Import',
  '12345 E',
  ' '.repeat(50),
  '9'.repeat(400),
];

/** One to six changes of a file: bytes flipped, spans cut, doubled, moved, tokens put in, lines swapped, two files joined. */
export function mutate(bytes: Uint8Array, other: Uint8Array, random: () => number): Uint8Array {
  let now = Buffer.from(bytes);
  const below = (n: number): number => Math.floor(random() * n);
  for (let changes = 1 + below(6); changes > 0; changes--) {
    const at = below(now.length + 1);
    const end = Math.min(now.length, at + below(random() < 0.2 ? 2000 : 40));
    switch (below(8)) {
      case 0:
        if (at < now.length) now[at] = below(256);
        break;
      case 1:
        now = Buffer.concat([now.subarray(0, at), now.subarray(end)]);
        break;
      case 2:
        now = Buffer.concat([now.subarray(0, end), now.subarray(at)]);
        break;
      case 3:
        now = Buffer.concat([now.subarray(0, at), Buffer.from(TOKENS[below(TOKENS.length)]!), now.subarray(at)]);
        break;
      case 4:
        now = Buffer.from(now.subarray(0, at));
        break;
      case 5: {
        const lines = now.toString('latin1').split('\n');
        const a = below(lines.length);
        const b = below(lines.length);
        [lines[a], lines[b]] = [lines[b]!, lines[a]!];
        now = Buffer.from(lines.join('\n'), 'latin1');
        break;
      }
      case 6:
        now = Buffer.concat([now.subarray(0, at), other.subarray(below(other.length + 1))]);
        break;
      default: {
        // One cell of one line becomes something else.
        const lines = now.toString('latin1').split('\n');
        const line = below(lines.length);
        const cells = lines[line]!.split(/([,;\t|])/);
        cells[below(cells.length)] = TOKENS[below(TOKENS.length)]!;
        lines[line] = cells.join('');
        now = Buffer.from(lines.join('\n'), 'latin1');
      }
    }
    if (now.length > 400_000) now = Buffer.from(now.subarray(0, 400_000));
  }
  return new Uint8Array(now);
}

/** Damage inside a workbook: one of its parts is changed and all are packed again, so that the archive itself is whole. */
function mutateInside(bytes: Uint8Array, other: Uint8Array, random: () => number): Uint8Array {
  const parts = unzipSync(bytes);
  const names = Object.keys(parts).filter((name) => name.startsWith('xl/'));
  const name = names[Math.floor(random() * names.length)];
  if (name === undefined) return mutate(bytes, other, random);
  return zipSync({ ...parts, [name]: mutate(parts[name]!, other, random) }, { level: 1 });
}

function isWorkbook(bytes: Uint8Array): boolean {
  try {
    return 'xl/workbook.xml' in unzipSync(bytes);
  } catch {
    return false;
  }
}

/** One file of the corpus, damaged. */
export function damagedFile(
  corpus: readonly CorpusFile[],
  random: () => number,
): { readonly name: string; readonly bytes: Uint8Array } {
  const file = corpus[Math.floor(random() * corpus.length)]!;
  const other = corpus[Math.floor(random() * corpus.length)]!;
  const inside = file.isWorkbook && random() < 0.7;
  const bytes = inside ? mutateInside(file.bytes, other.bytes, random) : mutate(file.bytes, other.bytes, random);
  return { name: file.name, bytes };
}

export function readCorpus(): CorpusFile[] {
  return readdirSync(CORPUS)
    .sort()
    .map((name) => {
      const bytes = new Uint8Array(readFileSync(`${CORPUS}${name}`));
      return { name, bytes, isWorkbook: isWorkbook(bytes) };
    });
}

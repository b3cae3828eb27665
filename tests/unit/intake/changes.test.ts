import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../build/damage.ts';
import type { IntakeContext } from '../../../src/intake/intake.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { HARMLESS, SUMMED, tableOf, textOf, UNITS, type WrittenTable, withUnit } from '../../dialects/changes.ts';
import { drawDialect } from '../../dialects/draw.ts';
import { writeDialect } from '../../dialects/write.ts';

const contextOf = (zone: string): IntakeContext => ({
  zone,
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
});

interface Answer {
  readonly isRefused: boolean;
  readonly asked: ReadonlySet<string>;
  /** Of each record what, which way, its days and its amount. */
  readonly records: readonly { readonly what: string; readonly total: number }[];
}

function answer(fileName: string, bytes: Uint8Array, zone: string): Answer {
  const { remarks, series } = readFile(fileName, bytes, {}, contextOf(zone)).preview;
  return {
    isRefused: remarks.some(({ weight }) => weight === 'refusal'),
    asked: new Set(remarks.flatMap(({ weight, code }) => (weight === 'question' ? [code] : []))),
    records: series
      .map(({ carrier, role, from, to, total }) => ({ what: `${carrier} ${role} ${from} ${to}`, total }))
      .sort((a, b) => a.what.localeCompare(b.what) || a.total - b.total),
  };
}

/** What became wrong without a word; undefined where it is as it should be, asked or refused. */
function wrongInSilence(before: Answer, after: Answer, times = 1): string | undefined {
  if (after.isRefused || [...after.asked].some((code) => !before.asked.has(code))) return undefined;
  const isSame =
    before.records.length === after.records.length &&
    before.records.every(({ what, total }, i) => {
      const now = after.records[i]!;
      return now.what === what && Math.abs(now.total - total * times) <= 0.02 + Math.abs(total * times) * 1e-3;
    });
  const said = ({ records }: Answer) => records.map(({ what, total }) => `${what} ${total.toFixed(2)}`).join('; ');
  return isSame ? undefined : `${said(after)}, not ${said(before)} × ${times}`;
}

const bytesOf = (changed: WrittenTable | string | Uint8Array): Uint8Array =>
  changed instanceof Uint8Array
    ? changed
    : new TextEncoder().encode(typeof changed === 'string' ? changed : textOf(changed));

const COUNT = 6;
/** Eight days of hours. */
const ROWS = 200;
const tables: {
  seed: number;
  zone: string;
  fileName: string;
  isSummed: boolean;
  table: WrittenTable;
  before: Answer;
}[] = [];
for (let seed = 3001; tables.length < COUNT; seed++) {
  const d = drawDialect(seed);
  // Water beside heat may be left out: nobody prices it.
  if ((d.minutes > 0 && d.minutes < 60) || d.what === 'heat and water') continue;
  const written = writeDialect(d);
  const table = tableOf(d, written, ROWS);
  if (!table) continue;
  const before = answer(written.fileName, bytesOf(table), d.zone);
  if (before.isRefused || before.records.length === 0) continue;
  const isSummed = d.measure === 'energy';
  tables.push({ seed, zone: d.zone, fileName: written.fileName, isSummed, table, before });
}

describe('a change of how a table is written', () => {
  test.each(Object.entries({ ...HARMLESS, ...SUMMED }))('%s', (name, change) => {
    const wrong = tables.flatMap(({ seed, zone, fileName, isSummed, table, before }) => {
      const changed = name in HARMLESS || isSummed ? change(table, seededRandom(seed)) : undefined;
      const fault = changed && wrongInSilence(before, answer(fileName, bytesOf(changed), zone));
      return fault ? [`${seed}: ${fault}`] : [];
    });
    expect(wrong).toEqual([]);
  });
});

test.each(UNITS)('%s changed to %s makes just so much of it, or is asked about', (from, to, times) => {
  const wrong = tables.flatMap(({ seed, zone, fileName, table, before }) => {
    const changed = withUnit(table, from, to);
    const fault = changed && wrongInSilence(before, answer(fileName, bytesOf(changed), zone), times);
    return fault ? [`${seed}: ${fault}`] : [];
  });
  expect(wrong).toEqual([]);
});

/** Files that were read wrong without a word. */
describe('the same is found', () => {
  const lines = (heads: string, row: (i: number) => string, count = 20) =>
    [heads, ...Array.from({ length: count }, (_, i) => row(i))].join('\n');
  const day = (i: number) => `2025-01-${String(i + 1).padStart(2, '0')}`;
  const use = (i: number) => 8 + ((i * 7) % 5);
  const marked = (i: number) => `${day(i)},${1000 + 9 * i + (i % 3)},${i % 4 === 1 ? 'Stimata' : 'Effettiva'}`;
  const fuel = (i: number) => `${day(i >> 1)},${i % 2 ? 'Gas' : 'Electricity'},${use(i)},kWh`;
  const slips = ['2024-01-10,900,520.00', '2024-06-10,700,410.00', '2025-01-10,1100,640.00'].join('\n');
  const daily = lines('Date,Electricity (kWh)', (i) => `${day(i)},${use(i)}`);
  const read = (text: string) => answer('file.csv', new TextEncoder().encode(text), 'Europe/London');

  test.each([
    [
      'each row of a counter twice, beside marks of estimates',
      lines('Data,Lettura calore (kWh),Stato', marked),
      lines('Data,Lettura calore (kWh),Stato', (i) => marked(i >> 1), 40),
    ],
    [
      'a column again with other decimals',
      lines('Date,Gas (kWh)', (i) => `${day(i)},${use(i)}`),
      lines('Date,Gas (kWh),Gas (kWh)', (i) => `${day(i)},${use(i)},${use(i)}.00`),
    ],
    [
      'megawatt-hours in small letters',
      lines('Date,Heat energy (MWh)', (i) => `${day(i)},0.0${10 + use(i)}`),
      lines('date,heat energy (mwh)', (i) => `${day(i)},0.0${10 + use(i)}`),
    ],
    ['slips of fuel twice', `Date,Oil litres,Paid £\n${slips}`, `Date,Oil litres,Paid £\n${slips}\n${slips}`],
    [
      'the sum of all under the last date',
      daily,
      `${daily}\n${day(19)},${Array.from({ length: 20 }, (_, i) => use(i)).reduce((a, b) => a + b)}`,
    ],
    [
      'numbers of no meaning beside fuels by the row',
      lines('Date,Type,Value,Unit', fuel, 40),
      lines('Date,Type,Value,Unit,Qx', (i) => `${fuel(i)},${3 + (i % 3)}`, 40),
    ],
    [
      'remarks with numbers now and then',
      lines('Date,Outdoor temperature (°C)', (i) => `${day(i)},${use(i)}.5`),
      lines('Notes,Date,Outdoor temperature (°C)', (i) => `${i % 5 === 3 ? i : ''},${day(i)},${use(i)}.5`),
    ],
    [
      'cells that a spreadsheet shall leave alone',
      daily,
      lines('Date,Electricity (kWh)', (i) => `"=""${day(i)}""","=""${use(i)}"""`),
    ],
  ])('%s', (_, before, after) => {
    const [known, now] = [read(before), read(after)];
    expect(known.isRefused).toBe(false);
    expect(now.records).toEqual(known.records);
  });

  test.each([
    [
      'a total that runs on',
      lines('Date,Electricity (kWh)', (i) => `${day(i)},${9 * (i + 1) + (i % 3)}`),
      'register-rising-asked',
    ],
    [
      'a counter of what was sent out',
      'Read on,Export (kWh)\n2024-12-31,12345\n2025-01-31,12900\n2025-02-28,13400\n2025-03-31,13700',
      'register-rising-asked',
    ],
    [
      'a second counter under the same words',
      'Read on,Meter reading (kWh),Meter reading (kWh)\n2025-01-01,900,500\n2025-02-01,1200,700\n2025-03-01,1500,90\n2025-04-01,1700,300',
      'column-asked',
    ],
    [
      'energy under unknown words beside what is made',
      lines('Date,Solar generation (kWh),Blurb (kWh)', (i) => `${day(i)},${use(i)},${use(i + 2)}`),
      'direction-asked',
    ],
  ])('%s is asked about', (_, text, code) => {
    expect([...read(text).asked]).toContain(code);
  });
});

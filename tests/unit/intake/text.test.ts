import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { readFile } from '../../../src/intake/read-file.ts';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { decodeText } from '../../../src/intake/text/decode.ts';
import { recogniseForeign } from '../../../src/intake/text/foreign.ts';
import { DEEPEST, nestsTooDeep } from '../../../src/intake/text/nesting.ts';
import { findSeparator } from '../../../src/intake/text/separator.ts';
import { rowTexts, splitTable } from '../../../src/intake/text/table.ts';
import { kWhPerUnit } from '../../../src/reference/fuels.ts';
import { cpuMs } from '../cpu-ms.ts';

const CONTEXT = {
  zone: 'Europe/London',
  today: '2026-11-25',
  kWhPerUnit,
  gasVolume: { correction: 1.02264, calorificMJPerM3: 39.5, imperialM3PerHundredCubicFeet: 2.83 },
};

const rowsOf = (text: string, separator = ',') => {
  const table = splitTable(text, separator, 0)!;
  return Array.from({ length: table.rowCount }, (_, row) => rowTexts(table, row));
};

describe('what a file is that lies beside bills and readings', () => {
  const packed = (...names: string[]) =>
    zipSync(Object.fromEntries(names.map((name) => [name, strToU8(name.repeat(900))])));
  const stored = (mime: string) => zipSync({ mimetype: [strToU8(`application/vnd.oasis.${mime}`), { level: 0 }] });
  const old = (part: string) =>
    Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, ...new Array(508).fill(0), ...Buffer.from(part, 'utf16le'));
  const message =
    'Subject: Your bill\r\nX-Long: a\r\n b\r\nMessage-ID: <1@mail.example>\r\n\r\nDate,kWh\r\n2026-01-01,3';
  // Signatures as the formats' own descriptions give them: RFC 5322, ECMA-376 part 2, ODF 1.3 part 2, MS-CFB, MS-SHLLINK.
  test.each<[string, string | Uint8Array, string | undefined]>([
    ['a message', message, 'e-mail'],
    ['a message out of a mailbox', `From a@b.example Mon Nov  2 10:00:00 2026\n${message}`, 'e-mail'],
    [
      'a page with its pictures',
      'From: <Saved>\nSnapshot-Content-Location: https://a.example\nMIME-Version: 1.0\n',
      'web page',
    ],
    ['title lines with colons', 'From: 1 January 2026\nTo: 31 January 2026\n\nDate,kWh\n2026-01-01,3\n', undefined],
    ['a message of an office program', old('__substg1.0_0037001F'), 'e-mail'],
    ['a letter of an older office program', old('WordDocument'), 'document'],
    ['a table of an older office program', old('Workbook'), 'old spreadsheet'],
    ['a letter', packed('[Content_Types].xml', '_rels/.rels', 'word/document.xml', 'word/styles.xml'), 'document'],
    ['a workbook', packed('[Content_Types].xml', 'xl/workbook.xml'), 'spreadsheet'],
    ['an open letter', stored('opendocument.text'), 'document'],
    ['an open workbook', stored('opendocument.spreadsheet'), 'open spreadsheet'],
    [
      'a symbolic link of tables',
      new TextEncoder().encode('ID;PWXL;N;E\r\nP;PGeneral\r\nC;Y1;X1;K"Date"'),
      'old spreadsheet',
    ],
    ['a data interchange', new TextEncoder().encode('TABLE\r\n0,1\r\n"a"\r\n'), 'old spreadsheet'],
    ['a list whose second column begins with P', new TextEncoder().encode('ID;Period;kWh\n1;2025-01;300'), undefined],
    ['a folder of tables', packed('use.csv', 'readme.txt'), 'archive'],
    ['a rich text', '{\\rtf1\\ansi Bill}', 'document'],
    ['a link', '[InternetShortcut]\r\nURL=https://a.example/bill\r\n', 'shortcut'],
    ['a link of the desktop', Uint8Array.of(0x4c, 0, 0, 0, 1, 0x14, 2, 0, 0), 'shortcut'],
  ])('%s', (_, content, kind) =>
    expect(recogniseForeign(typeof content === 'string' ? strToU8(content) : content)).toBe(kind),
  );
});

describe('JSON too deep to be read', () => {
  const deep = (levels: number, inmost = '') => '[{"a":'.repeat(levels / 2) + inmost + '}]'.repeat(levels / 2);
  test.each<[string, string, boolean]>([
    ['as deep as is taken', deep(DEEPEST, '1'), false],
    ['one deeper', deep(DEEPEST, '[]'), true],
    ['brackets in texts', deep(DEEPEST, JSON.stringify('[[{{"[\\')), false],
    ['behind a text that ends in backslashes', `["\\\\",${deep(DEEPEST, '1')}]`, true],
    ['side by side', `[${'[],'.repeat(1000)}{}]`, false],
    ['a text that never ends', `["${'['.repeat(1000)}`, false],
  ])('%s', (_, text, expected) => {
    expect(nestsTooDeep(text)).toBe(expected);
  });

  test('a tariff of brackets alone is refused before it is parsed', () => {
    const text = '['.repeat(2_000_000);
    const before = cpuMs();
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
    const parsing = cpuMs() - before;
    const { remarks } = readTariff('deep.json', new TextEncoder().encode(text), CONTEXT);
    expect(remarks.map(({ code }) => code)).toEqual(['tariff-not-json']);
    expect(cpuMs() - before - parsing).toBeLessThan(parsing / 2);
  });
});

describe('rows and cells', () => {
  test('of a file of quotation marks alone, one cell of millions, no more is looked at than any cell has', () => {
    const [row] = rowsOf('"'.repeat(15 * 1024 * 1024));
    expect(row!.map((cell) => cell.length)).toEqual([500]);
  });

  test.each<[string, string, string[][]]>([
    [
      'plain',
      'a,b\n1,2\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['no line end', 'a,b', [['a', 'b']]],
    ['all three line ends', 'a\r\nb\rc\nd', [['a'], ['b'], ['c'], ['d']]],
    ['spaces', ' a , b ', [['a', 'b']]],
    ['blank rows go', 'a\n\n,,\n \nb', [['a'], ['b']]],
    ['quotes', '"a,b","c ""d"""', [['a,b', 'c "d"']]],
    [
      'a line end in a cell',
      '"a\nb",c\nd,e',
      [
        ['a\nb', 'c'],
        ['d', 'e'],
      ],
    ],
    [
      'a quote inside a cell is a quote',
      '5" pipe,1\n6" pipe,2',
      [
        ['5" pipe', '1'],
        ['6" pipe', '2'],
      ],
    ],
    [
      'a quote never closed',
      'a,"b\nc,d',
      [
        ['a', '"b'],
        ['c', 'd'],
      ],
    ],
    ['an empty last cell', 'a,\n', [['a', '']]],
  ])('%s', (_, text, rows) => {
    expect(rowsOf(text)).toEqual(rows);
  });
  test('of the width of a spreadsheet that rows are filled up to, no cell is kept', () => {
    const width = ';'.repeat(16_382);
    expect(rowsOf(`date;kWh${width}\n2025-01-01;5${width}\n2025-01-02;${width}\n`, ';')).toEqual([
      ['date', 'kWh'],
      ['2025-01-01', '5'],
      ['2025-01-02'],
    ]);
    expect(rowsOf('a;b;;;\n', ';')).toEqual([['a', 'b', '', '', '']]);
  });

  test('a file that is a million separators takes time in proportion: three seconds of the processor at most', () => {
    const bytes = new TextEncoder().encode(`date;kWh${';'.repeat(1_000_000)}\n2025-01-01;5\n2025-02-01;6\n`);
    const begun = cpuMs();
    readFile('wide.csv', bytes, {}, CONTEXT);
    expect(cpuMs() - begun).toBeLessThan(3000);
  });

  test('lines are counted through quoted line ends', () => {
    const table = splitTable('a\n"b\nc",d\n\ne', ',', 0)!;
    expect(Array.from(table.lineOfRow)).toEqual([1, 2, 5]);
  });
  test('what a general writer writes is read as written', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '1', '.', ',', ';', '"', '\n', ' x', '°'), maxLength: 6 });
    // A row needs something in it, since rows of empty cells are left out.
    const row = fc.array(cell, { minLength: 1, maxLength: 4 }).map((cells) => ['k', ...cells]);
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 6 }), fc.constantFrom(',', ';', '\t'), (rows, delimiter) => {
        const text = Papa.unparse(rows, { delimiter, quotes: true, newline: '\n' });
        expect(rowsOf(text, delimiter)).toEqual(rows.map((cells) => cells.map((c) => c.trim())));
      }),
    );
  });
  test('a quoted file takes time in proportion: 100,000 rows within three seconds of the processor', () => {
    const rows = Array.from(
      { length: 100_000 },
      (_, i) => `"${new Date(1.6e12 + i * 1_800_000).toISOString()}","0.${i % 9}5"`,
    );
    const bytes = new TextEncoder().encode(`"Start","Electricity kWh"\n${rows.join('\n')}`);
    const begun = cpuMs();
    const { preview } = readFile('quoted.csv', bytes, {}, CONTEXT);
    expect(cpuMs() - begun).toBeLessThan(3000);
    expect(preview.series[0]?.present).toBe(100_000);
  });
});

describe('separators', () => {
  test.each([
    ['a,b\n1,2', ','],
    ['a;b\n1,5;2,5', ';'],
    ['a\tb\n1,5\t2,5', '\t'],
    ['a|b\n1|2', '|'],
    ['"a;b","c"\n"1;2","3"', ','],
    ['Title, with a comma\na;b\n1,5;2,5\n1,6;2,6', ';'],
  ])('%j', (text, separator) => {
    expect(findSeparator(text).separator).toBe(separator);
  });
  test('a sep= line decides and is skipped', () => {
    expect(findSeparator('sep=;\r\na,b;c')).toMatchObject({ separator: ';', start: 7 });
  });
});

describe('bytes to text', () => {
  const utf16 = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));
  test.each<[string, Uint8Array, unknown]>([
    ['UTF-8', new TextEncoder().encode('m³,°C'), { text: 'm³,°C', encoding: 'UTF-8' }],
    ['Latin-1', Uint8Array.from([0x6d, 0xb3, 0x2c, 0xb0, 0x43]), { text: 'm³,°C', encoding: 'Latin-1' }],
    ['UTF-16 without a mark', utf16('Start,kWh\n1,2'), { text: 'Start,kWh\n1,2', encoding: 'UTF-16' }],
    [
      'UTF-8 cut within a character',
      new TextEncoder().encode('a,m³').subarray(0, 4),
      { text: 'a,m', encoding: 'UTF-8' },
    ],
    ['blank', new TextEncoder().encode(' \n\t'), { fault: 'empty' }],
    ['control characters', Uint8Array.from([1, 2, 3, 4, 5, 6, 7, 8]), { fault: 'binary' }],
  ])('%s', (_, bytes, decoded) => {
    expect(decodeText(bytes)).toEqual(decoded);
  });
});

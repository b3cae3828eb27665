/** What is remarked of the files of the corpus, as a home in Germany hears it: no number, day or money of ours in British dress. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { intakeContext } from '../../../src/desk/take-in.ts';
import { readFile } from '../../../src/intake/read-file.ts';
import { readTariff } from '../../../src/intake/read-tariff.ts';
import { german } from '../../../src/words/german/german.ts';
import { remarkSentence } from '../../../src/words/remarks.ts';
import { speak } from '../../../src/words/say.ts';
import { writeWorkbook } from '../intake/write-workbook.ts';

const CORPUS = fileURLToPath(new URL('../../corpus/', import.meta.url));
const context = { ...intakeContext('Europe/Berlin', '2026-11-25'), money: '€' as const };
/** A point that sets thousands apart, or stands in a date, is German. */
const DECIMAL_POINT = /(?<![\d.,])-?\d+\.(?!\d{3}(?!\d))\d+(?![\d.])/g;
const DAY = /\b\d{4}-\d{2}-\d{2}\b/g;
/** How a day may be written is shown by one. */
const SHOWN = ['2025-03-01', '2026-10-01'];

test.each(readdirSync(CORPUS))('%s', (file) => {
  const bytes = new Uint8Array(readFileSync(`${CORPUS}${file}`));
  const { columns, ...read } = file.startsWith('tariff')
    ? { ...readTariff(file, bytes, context), columns: [] }
    : readFile(file, bytes, {}, context).preview;
  const written = [file, new TextDecoder().decode(bytes), ...columns, ...SHOWN].join('\n');
  speak({ language: 'de-DE', currency: 'EUR' }, german);
  for (const said of read.remarks.map(remarkSentence))
    for (const british of [DECIMAL_POINT, DAY, /£|\bPence\b|\bPfund\b/g])
      expect(
        (said.match(british) ?? []).filter((one) => !written.includes(one)),
        said,
      ).toEqual([]);
});

test('wherever a workbook is damaged, no word of a library is said of it', () => {
  const rows = Array.from({ length: 60 }, (_, i) => [`2025-01-${(i % 28) + 1}`, i]);
  const whole = writeWorkbook([{ name: 'Use', rows: [['Date', 'kWh'], ...rows] }]);
  speak({ language: 'de-DE', currency: 'EUR' }, german);
  const said = new Set<string>();
  for (let at = 30; at < whole.length - 30; at += 7) {
    const damaged = whole.map((byte, i) => (i >= at && i < at + 30 ? 255 - byte : byte));
    for (const remark of readFile('Strom.xlsx', damaged, {}, context).preview.remarks)
      if (remark.code === 'workbook-broken') said.add(/\((.*)\)/.exec(remarkSentence(remark))![1]!);
  }
  expect([...said].sort()).toEqual([
    'ihr Blatt lässt sich nicht lesen',
    'ihre Packung ist beschädigt',
    'sie ist abgeschnitten',
  ]);
});

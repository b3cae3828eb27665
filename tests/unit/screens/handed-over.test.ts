import { expect, test } from 'vitest';
import { filesOf } from '../../../src/screens/evidence/handed-over.ts';

const picture = new File(['a picture'], 'image.png', { type: 'image/png' });
const cells = 'Date\tkWh\n2026-01-01\t8.5\n2026-01-02\t7.5\n';

test.each<[string, readonly File[], string, readonly string[]]>([
  ['a picture', [picture], '', ['image.png']],
  ['a picture out of a page, with its words', [picture], 'Bill of 2026\nTotal 12', ['image.png']],
  ['cells of a sheet, beside which lies their picture', [picture], cells, ['pasted table.txt']],
  ['a table by commas', [], cells.replaceAll('\t', ','), ['pasted table.txt']],
  ['a word', [], 'kWh', []],
  ['one number', [], '416', []],
  ['a letter', [], 'Dear customer,\nhere is your bill.\n', []],
])('of the clipboard is taken: %s', async (_, files, text, taken) => {
  const own = filesOf({ files, text });
  expect(own.map(({ name }) => name)).toEqual(taken);
  if (taken[0]?.endsWith('.txt')) expect(await own[0]!.text()).toBe(text);
});

/** Where a page did not lie flat: its rows, and which of them may be other rows. */
import { expect, test } from 'vitest';
import { levelWords } from '../../../src/intake/paper/level-words.ts';
import { rowsOf } from '../../../src/intake/paper/page.ts';
import type { Word } from '../../../src/intake/terms/paper-reading.ts';

const LINES = ['Standing charge', 'Day units', 'Night units', 'Value added tax', 'Total charges'];
const PITCH = 15;

/** Names at the left and a sum at the right in rows, each word moved down by so much. */
function pageOf(down: (x: number, row: number) => number, panel: readonly Word[] = []) {
  const word = (text: string, x: number, row: number): Word => ({
    text,
    x,
    y: 100 + row * PITCH + down(x, row),
    width: text.length * 4.5,
    height: 9,
  });
  const words = LINES.flatMap((line, row) => [
    ...line.split(' ').map((text, i) => word(text, 50 + i * 45, row)),
    word(`${31 + row * 7}.4${row}`, 400, row),
  ]);
  return { width: 595, height: 842, words: [...words, ...panel], picture: 'data:' };
}
const unsureOf = (page: ReturnType<typeof pageOf>) =>
  rowsOf([page]).flatMap(({ isUnsure, words }) => (isUnsure ? words.map(({ text }) => text).join(' ') : []));

test('rows that lie level, or all fall alike, are sure', () => {
  expect(unsureOf(pageOf(() => 0))).toEqual([]);
  expect(unsureOf(pageOf((x, row) => ((x + row) % 3) * 0.3))).toEqual([]);
  const leaning = { ...pageOf((x) => 0.03 * x), lean: 0.03 };
  expect(rowsOf([leaning])).toHaveLength(LINES.length);
  expect(unsureOf(leaning)).toEqual([]);
});

test('a column of its own beside them leaves them sure', () => {
  const panel = ['Good to know', 'No exit fee', 'Last year 812 kWh'].flatMap((line, row) =>
    line.split(' ').map((text, i) => ({ text, x: 480 + i * 30, y: 104 + row * 12.5, width: 24, height: 8 })),
  );
  const unsure = unsureOf(pageOf(() => 0, panel));
  expect(unsure.filter((row) => LINES.some((line) => row.startsWith(line)))).toEqual([]);
});

test('sums half a row below their names are of no row for sure', () => {
  expect(unsureOf(pageOf((x) => (x < 300 ? 0 : PITCH / 2)))).not.toEqual([]);
  for (const line of LINES.slice(1, -1))
    expect(unsureOf(pageOf((x) => (x < 300 ? 0 : PITCH / 2))).join()).toContain(line);
});

test('names that fall towards the row below make it unsure whose the sum is, though it stands level with one', () => {
  const unsure = unsureOf(pageOf((x) => (x < 300 ? 0.06 * (x - 50) : PITCH)));
  for (const line of LINES.slice(1)) expect(unsure.join()).toContain(line.split(' ')[0]);
});

test('sums that sink ever farther below their names are followed down the page, and are sure', () => {
  const many = Array.from({ length: 16 }, (_, row) => `Charge number ${row + 1}`);
  const words = many.flatMap((name, row) => [
    ...name.split(' ').map((text, i) => ({ text, x: 50 + i * 45, y: 100 + row * PITCH, width: 36, height: 9 })),
    { text: `${row + 2}.15`, x: 400, y: 100 + row * PITCH + row * 0.6, width: 30, height: 9 },
  ]);
  const page = { width: 595, height: 842, words, picture: 'data:' };
  const rows = rowsOf([levelWords(page)]);
  expect(rows.map((row) => row.words.map(({ text }) => text).join(' '))).toEqual(
    many.map((name, row) => `${name} ${row + 2}.15`),
  );
  expect(rows.some(({ isUnsure }) => isUnsure)).toBe(false);
  expect(rowsOf([page]).length).toBeGreaterThan(many.length);
});

test('of words in a document nothing is unsure', () => {
  const { picture: _, ...page } = pageOf((x) => (x < 300 ? 0 : PITCH / 2));
  expect(rowsOf([page]).some(({ isUnsure }) => isUnsure)).toBe(false);
});

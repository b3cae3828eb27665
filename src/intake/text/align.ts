/** Tables whose columns are lined up with spaces: no sign stands between the cells. */

const SAMPLE_LINES = 200;
const LEAST_LINES = 5;
const SAMPLE_CHARACTERS = 8192;
/** A gap of one space stands inside dates and words. */
const NARROWEST = 2;

/** The text with a tab in each gap that every line leaves free; undefined where lines have no such gaps, or cross them. */
export function tabsForGaps(text: string): string | undefined {
  const begin = text
    .slice(0, SAMPLE_CHARACTERS)
    .split(/\r\n|\n|\r/)
    .filter((line) => line.trim() !== '');
  const spaced = begin.filter((line) => /\S {2,}\S/.test(line));
  if (spaced.length < begin.length / 2 || spaced.some((line) => /[,;|]"? {2,}/.test(line))) return undefined;
  const lines = text.split(/\r\n|\n|\r/);
  const usual = spaced.map(fieldsOf).toSorted((a, b) => a - b)[spaced.length >> 1]!;
  // A title may have a gap of two spaces somewhere.
  const isRow = (line: string) => fieldsOf(line) > 1 && fieldsOf(line) * 2 >= usual;
  const table = lines.filter(isRow);
  // Headings stand at the beginning, the widest numbers and stamps anywhere.
  const every = Math.ceil(table.length / SAMPLE_LINES);
  const between = table.filter((_, i) => i % every === 0);
  const sample = [...table.slice(0, SAMPLE_LINES), ...between, ...table.slice(-SAMPLE_LINES)];
  if (sample.length < LEAST_LINES) return undefined;
  const width = Math.max(...sample.map((line) => line.length));
  const gaps: { from: number; to: number }[] = [];
  for (let at = 0; at < width; at++) {
    if (sample.some((line) => (line[at] ?? ' ') !== ' ')) continue;
    const from = at;
    while (at < width && sample.every((line) => (line[at] ?? ' ') === ' ')) at++;
    if (from > 0 && at < width && at - from >= NARROWEST) gaps.push({ from, to: at });
  }
  if (gaps.length === 0) return undefined;
  const cut = lines.map((line) => {
    if (!isRow(line)) return line;
    if (gaps.some(({ from, to }) => line.slice(from, to).trim() !== '')) return undefined;
    return [0, ...gaps.map(({ to }) => to)]
      .map((start, i) => line.slice(start, gaps[i]?.from ?? line.length).trim())
      .join('\t');
  });
  return cut.includes(undefined) ? undefined : cut.join('\n');
}

const fieldsOf = (line: string): number => line.trim().split(/ {2,}/).length;

/** A number, a date, a clock time or a sign that there is none. */
const CELL = /^([-+]?\d[\d.,:/TZ+-]*|nan|n\/?a|-+|\*+)$/i;
const LEAST_ALIKE = 0.9;

/** The text with a tab in each gap of tables of numbers that stand one space apart; undefined for any other text. */
export function tabsForSpaces(text: string): string | undefined {
  const lines = text.split(/\r\n|\r|\n/);
  const cut = lines.map((line) => line.trim().split(/ +/));
  const filled = cut.filter((cells) => cells[0] !== '');
  const width = filled.at(-1)?.length ?? 0;
  const rows = filled.filter((cells) => cells.length === width && cells.every((cell) => CELL.test(cell)));
  if (width < 2 || rows.length < LEAST_LINES || rows.length < filled.length * LEAST_ALIKE) return undefined;
  return cut.map((cells, i) => (cells.length === width ? cells.join('\t') : lines[i]!)).join('\n');
}

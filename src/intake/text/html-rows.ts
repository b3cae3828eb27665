/** Tables of a web page, or of a page that calls itself a spreadsheet, as lines: tables of one width are one, each with the headings before it. */

/** With their text, which is no cell. */
const UNSEEN = ['script', 'style', 'template', 'noscript', 'svg', 'select'];
const TITLES = /^(?:h[1-4]|caption)$/;
/** A cell over more columns or rows than the first is no cell of data; more cells than the second no page shows. */
const MOST_SPAN = 100;
const MOST_SPANNED = 100_000;
const SIGNS: Readonly<Record<string, string>> = {
  nbsp: ' ',
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  pound: '£',
  euro: '€',
  cent: '¢',
  sup2: '²',
  sup3: '³',
  deg: '°',
  minus: '−',
  ndash: '–',
  mdash: '—',
  times: '×',
  middot: '·',
  szlig: 'ß',
  oslash: 'ø',
  Oslash: 'Ø',
  aelig: 'æ',
  AElig: 'Æ',
};
const ACCENTS: Readonly<Record<string, string>> = {
  acute: '\u0301',
  grave: '\u0300',
  circ: '\u0302',
  tilde: '\u0303',
  uml: '\u0308',
  ring: '\u030A',
  cedil: '\u0327',
};

function signOf(whole: string, name: string): string {
  if (name.startsWith('#')) {
    const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number.parseInt(name.slice(1), 10);
    return code > 0 && code <= 0x10_ff_ff ? String.fromCodePoint(code) : ' ';
  }
  const [, letter, accent] = /^([a-z])(acute|grave|circ|tilde|uml|ring|cedil)$/i.exec(name) ?? [];
  return letter ? (letter + ACCENTS[accent!.toLowerCase()]!).normalize('NFC') : (SIGNS[name] ?? whole);
}

const textOf = (written: string): string =>
  written
    .replaceAll(/&(#\d{1,7}|#x[\da-f]{1,6}|[a-z]{2,8}\d?);/gi, signOf)
    .replaceAll(/[\s"\u00a0]+/g, ' ')
    .trim();

interface Cell {
  text: string;
  readonly across: number;
  readonly down: number;
}
interface Open {
  readonly titles: readonly string[];
  readonly rows: Cell[][];
  cell?: Cell | undefined;
}

/** The lines of each width, the most cells first; none where the page has no table. */
export function linesOfHtml(page: string): string[] {
  const open: Open[] = [];
  const byWidth = new Map<number, string[][]>();
  let titles: string[] = [];
  let title: string | undefined;
  const write = (words: string) => {
    const cell = open.at(-1)?.cell;
    if (title !== undefined) title += words;
    else if (cell) cell.text += words;
  };
  const close = () => {
    const table = open.pop();
    const rows = table ? gridOf(table.rows) : [];
    const width = Math.max(0, ...rows.map((row) => row.length));
    if (!table || width < 2) return;
    const known = byWidth.get(width) ?? [];
    for (const row of [...table.titles.map((one) => [one]), ...rows]) known.push(row);
    byWidth.set(width, known);
  };
  for (let at = 0; at < page.length; ) {
    const start = page.indexOf('<', at);
    write(page.slice(at, start < 0 ? page.length : start));
    if (start < 0) break;
    const isComment = page.startsWith('<!--', start);
    const end = page.indexOf(isComment ? '-->' : '>', start);
    if (end < 0) break;
    at = end + (isComment ? 3 : 1);
    if (isComment) continue;
    const tag = page.slice(start + 1, end);
    const [, slash, written] = /^(\/?)([a-z][a-z\d]*)/i.exec(tag) ?? [];
    const name = written?.toLowerCase() ?? '';
    const table = open.at(-1);
    if (slash === '' && UNSEEN.includes(name) && !tag.endsWith('/')) {
      const rest = new RegExp(`</${name}`, 'gi');
      rest.lastIndex = at;
      at = rest.exec(page)?.index ?? page.length;
    } else if (TITLES.test(name)) {
      const said = textOf(title ?? '');
      if (slash === '/' && said !== '' && said.length <= 200) titles.push(said);
      title = slash === '' ? '' : undefined;
    } else if (name === 'table') {
      if (slash === '/') close();
      else {
        open.push({ titles, rows: [] });
        titles = [];
      }
    } else if (!table) continue;
    else if (name === 'tr' && slash === '') {
      table.rows.push([]);
      table.cell = undefined;
    } else if (name === 'td' || name === 'th') {
      table.cell = slash === '' ? cellOf(tag) : undefined;
      if (table.cell) {
        if (table.rows.length === 0) table.rows.push([]);
        table.rows.at(-1)!.push(table.cell);
      }
    } else if (/^(?:br|p|div|li|hr)$/.test(name)) write(' ');
  }
  while (open.length > 0) close();
  return [...byWidth]
    .toSorted(([a, one], [b, other]) => b * other.length - a * one.length)
    .map(([, rows]) => `${rows.map((row) => row.join('\t')).join('\n')}\n`);
}

function cellOf(tag: string): Cell {
  const span = (name: string) => {
    const said = Number(new RegExp(`\\b${name}\\s*=\\s*["']?(\\d{1,5})`, 'i').exec(tag)?.[1] ?? 1);
    return said >= 1 && said <= MOST_SPAN ? said : 1;
  };
  return { text: '', across: span('colspan'), down: span('rowspan') };
}

/** A cell over several rows stands in each, one over several columns in the first. */
function gridOf(rows: readonly (readonly Cell[])[]): string[][] {
  const grid: string[][] = rows.map(() => []);
  let spanned = 0;
  rows.forEach((cells, row) => {
    let column = 0;
    for (const cell of cells) {
      while (grid[row]![column] !== undefined) column++;
      const text = textOf(cell.text);
      spanned += cell.across * cell.down - 1;
      const [wide, high] = spanned > MOST_SPANNED ? [1, 1] : [cell.across, Math.min(cell.down, grid.length - row)];
      for (let down = 0; down < high; down++)
        for (let across = 0; across < wide; across++) grid[row + down]![column + across] = across === 0 ? text : '';
      column += wide;
    }
  });
  return grid.map((row) => Array.from(row, (text) => text ?? '')).filter((row) => row.some((text) => text !== ''));
}
